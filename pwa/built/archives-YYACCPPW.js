import{a,b,c,d,e,f}from"./chunk-6MPQAYTO.js";import"./chunk-K6XNGF2V.js";import"./chunk-GFRB7GT7.js";import"./chunk-V4MGOPFD.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-YYACCPPW.js.map
