import{a,b,c,d,e,f}from"./chunk-XIQRPGI4.js";import"./chunk-K6XNGF2V.js";import"./chunk-UEGJK4JL.js";import"./chunk-ZELOYE6K.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-VDATTM6T.js.map
