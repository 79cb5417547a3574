import{a,b,c,d}from"./chunk-7QFFUBP5.js";import"./chunk-JUGPZGK6.js";import"./chunk-GIANC5NE.js";import"./chunk-SMT73DPE.js";export{b as export_needs_you,a as export_room,c as import_room,d as readings_csv};
//# sourceMappingURL=archives-KAIV2Z3C.js.map
