import{a,b,c,d,e,f}from"./chunk-ZTNBATEO.js";import"./chunk-K6XNGF2V.js";import"./chunk-22R63VQI.js";import"./chunk-4BJ4H3VK.js";import"./chunk-NVLCFLDW.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-56FCWA4O.js.map
