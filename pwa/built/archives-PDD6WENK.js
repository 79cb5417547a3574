import{a,b,c,d,e,f}from"./chunk-Z3RFZYGY.js";import"./chunk-UIOLMFZE.js";import"./chunk-RRSGUVAI.js";import"./chunk-RPZJUJ5I.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-PDD6WENK.js.map
