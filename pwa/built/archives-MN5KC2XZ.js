import{a,b,c,d,e,f}from"./chunk-ZW4VV6FG.js";import"./chunk-K6XNGF2V.js";import"./chunk-T3QCFS65.js";import"./chunk-YCTEXHP2.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-MN5KC2XZ.js.map
