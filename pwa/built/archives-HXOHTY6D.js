import{a,b,c,d,e,f}from"./chunk-XBPCUDO2.js";import"./chunk-K6XNGF2V.js";import"./chunk-QVIJW3ST.js";import"./chunk-VBHYD5YS.js";import"./chunk-CRYQDRUL.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-HXOHTY6D.js.map
