import{a,b,c,d,e,f}from"./chunk-MU5JOZ6H.js";import"./chunk-UIOLMFZE.js";import"./chunk-74NNJKGA.js";import"./chunk-NRUJ6FXV.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-CC6AZEB5.js.map
