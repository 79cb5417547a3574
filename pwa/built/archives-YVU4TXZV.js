import{a,b,c,d,e,f}from"./chunk-UQB4AEOG.js";import"./chunk-UIOLMFZE.js";import"./chunk-Y6W3POPS.js";import"./chunk-JDRMJC5G.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-YVU4TXZV.js.map
