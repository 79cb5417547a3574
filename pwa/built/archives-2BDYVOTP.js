import{a,b,c,d,e,f}from"./chunk-YJH6TDQ2.js";import"./chunk-K6XNGF2V.js";import"./chunk-2TJPQAR7.js";import"./chunk-TBYX5NQB.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-2BDYVOTP.js.map
