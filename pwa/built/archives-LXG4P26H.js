import{a,b,c,d,e,f}from"./chunk-WAM2VE45.js";import"./chunk-K6XNGF2V.js";import"./chunk-7MQBDFEH.js";import"./chunk-ACNHLQSA.js";import"./chunk-EHBDNMSN.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-LXG4P26H.js.map
