import{a,b,c,d,e,f}from"./chunk-EY4NV2JA.js";import"./chunk-UIOLMFZE.js";import"./chunk-M6LIX5ZS.js";import"./chunk-3LU5Z4AW.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-YRDLGISM.js.map
