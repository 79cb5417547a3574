import{a,b,c,d,e,f}from"./chunk-XEMTQ4AT.js";import"./chunk-UIOLMFZE.js";import"./chunk-XOQ5JX2K.js";import"./chunk-NFWFDEJA.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-AEXLWYN2.js.map
