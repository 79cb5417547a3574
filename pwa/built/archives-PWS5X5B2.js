import{a,b,c,d,e,f}from"./chunk-BLP5AEWW.js";import"./chunk-K6XNGF2V.js";import"./chunk-7MQMYS6Z.js";import"./chunk-CZVJYDCN.js";import"./chunk-AXOWO3EG.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-PWS5X5B2.js.map
