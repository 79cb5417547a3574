import{a,b,c,d}from"./chunk-BVM5VWBC.js";import"./chunk-XLUTYHWB.js";import"./chunk-JA4V76BL.js";import"./chunk-MPBM5YXA.js";export{b as export_needs_you,a as export_room,c as import_room,d as readings_csv};
//# sourceMappingURL=archives-TUHG47HO.js.map
