import{a,b,c,d,e,f}from"./chunk-A3PVDU26.js";import"./chunk-K6XNGF2V.js";import"./chunk-2IGGAAQL.js";import"./chunk-U7V6UPBE.js";import"./chunk-G3AMN4OA.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-GVGGFR2M.js.map
