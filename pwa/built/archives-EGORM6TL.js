import{a,b,c,d,e,f}from"./chunk-HQLLPTBR.js";import"./chunk-K6XNGF2V.js";import"./chunk-FANV26R3.js";import"./chunk-G5BJQNXH.js";import"./chunk-T3RUV5D3.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-EGORM6TL.js.map
