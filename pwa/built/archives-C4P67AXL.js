import{a,b,c,d,e,f}from"./chunk-TFJWWIYI.js";import"./chunk-K6XNGF2V.js";import"./chunk-PTUYR7AT.js";import"./chunk-WM4QSHAH.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-C4P67AXL.js.map
