import{a,b,c,d,e,f}from"./chunk-V65RGHKB.js";import"./chunk-K6XNGF2V.js";import"./chunk-5DH2R444.js";import"./chunk-QSYQZ5DT.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-CPFXUREG.js.map
