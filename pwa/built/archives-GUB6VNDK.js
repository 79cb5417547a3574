import{a,b,c,d,e,f}from"./chunk-Z7MFPATF.js";import"./chunk-K6XNGF2V.js";import"./chunk-YEDKVJKV.js";import"./chunk-VKME45NK.js";import"./chunk-SPUEHQJY.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-GUB6VNDK.js.map
