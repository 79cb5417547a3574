import{a,b,c,d,e,f}from"./chunk-CUW34CPW.js";import"./chunk-K6XNGF2V.js";import"./chunk-5EEWICIN.js";import"./chunk-H2DZ5U2R.js";import"./chunk-EIYJ3RSU.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-CYE6LUIC.js.map
