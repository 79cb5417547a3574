import{a,b,c,d,e,f}from"./chunk-JWJ75B67.js";import"./chunk-K6XNGF2V.js";import"./chunk-HUU73SPY.js";import"./chunk-DKQSE4J2.js";import"./chunk-M3MFIEEJ.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-GZFS4QIY.js.map
