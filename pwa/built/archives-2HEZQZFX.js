import{a,b,c,d,e,f}from"./chunk-FUMQ2YEU.js";import"./chunk-UIOLMFZE.js";import"./chunk-4MIYZL5K.js";import"./chunk-TW2BAU5A.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-2HEZQZFX.js.map
