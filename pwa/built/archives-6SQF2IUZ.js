import{a,b,c,d,e,f}from"./chunk-3AN6SGX5.js";import"./chunk-K6XNGF2V.js";import"./chunk-GTWYWVDK.js";import"./chunk-QN3HABRZ.js";import"./chunk-WK7VWSJL.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-6SQF2IUZ.js.map
