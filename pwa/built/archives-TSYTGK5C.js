import{a,b,c,d,e,f}from"./chunk-PUMFMZ63.js";import"./chunk-K6XNGF2V.js";import"./chunk-OGW5ZRA2.js";import"./chunk-CK72YRHZ.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-TSYTGK5C.js.map
