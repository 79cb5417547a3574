import{a,b,c,d}from"./chunk-W32USZTM.js";import"./chunk-7H76YFUJ.js";import"./chunk-6UTYOQ2U.js";import"./chunk-W57AQPC6.js";export{b as export_needs_you,a as export_room,c as import_room,d as readings_csv};
//# sourceMappingURL=archives-NMEQLOJJ.js.map
