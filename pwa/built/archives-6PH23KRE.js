import{a,b,c,d,e,f}from"./chunk-6C257JZA.js";import"./chunk-K6XNGF2V.js";import"./chunk-6XVJUZBC.js";import"./chunk-NOZSTOPY.js";import"./chunk-ATTEJUSI.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-6PH23KRE.js.map
