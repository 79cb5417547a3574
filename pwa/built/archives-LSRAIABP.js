import{a,b,c,d,e,f}from"./chunk-AEQHWD3F.js";import"./chunk-UIOLMFZE.js";import"./chunk-5EBVLFGH.js";import"./chunk-ENV4QE2F.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-LSRAIABP.js.map
