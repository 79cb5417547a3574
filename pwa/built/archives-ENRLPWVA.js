import{a,b,c,d,e,f}from"./chunk-PWM3XKEL.js";import"./chunk-K6XNGF2V.js";import"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-ENRLPWVA.js.map
