import{a,b,c,d,e,f}from"./chunk-33CPZS33.js";import"./chunk-K6XNGF2V.js";import"./chunk-IAFF6U4V.js";import"./chunk-CVPOIOYL.js";import"./chunk-SZHINRPN.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-JZIIYRPM.js.map
