import{a,b,c,d,e,f}from"./chunk-4UEVFJ4A.js";import"./chunk-K6XNGF2V.js";import"./chunk-EIPO4DOC.js";import"./chunk-IVLIJJUO.js";import"./chunk-BR3GVPHY.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-7HLHTEOK.js.map
