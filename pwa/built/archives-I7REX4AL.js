import{a,b,c,d,e,f}from"./chunk-5SBED3RA.js";import"./chunk-K6XNGF2V.js";import"./chunk-JZHG7PWB.js";import"./chunk-KXFCXJ7K.js";import"./chunk-2PC7OCBU.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-I7REX4AL.js.map
