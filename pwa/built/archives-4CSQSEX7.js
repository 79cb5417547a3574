import{a,b,c,d,e,f}from"./chunk-AZYTHKRL.js";import"./chunk-K6XNGF2V.js";import"./chunk-Q3WZW5LD.js";import"./chunk-MP5NRCGQ.js";import"./chunk-R6KMN7GA.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-4CSQSEX7.js.map
