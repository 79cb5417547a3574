import{a,b,c,d,e,f}from"./chunk-2G6XCZG4.js";import"./chunk-K6XNGF2V.js";import"./chunk-QJIVAMQ5.js";import"./chunk-L4XXRPZC.js";import"./chunk-6UPJYMBG.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-IZDG3ZGI.js.map
