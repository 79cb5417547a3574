import{a,b,c,d,e,f}from"./chunk-CGVD4CNA.js";import"./chunk-K6XNGF2V.js";import"./chunk-HVFK5PJC.js";import"./chunk-DJK2Q2IL.js";import"./chunk-Y3M2S5ZZ.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-BNZ33RDA.js.map
