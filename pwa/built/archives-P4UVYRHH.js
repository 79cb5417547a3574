import{a,b,c}from"./chunk-ULV2SZDC.js";import"./chunk-7H76YFUJ.js";import"./chunk-6UTYOQ2U.js";import"./chunk-W57AQPC6.js";export{b as export_needs_you,a as export_room,c as import_room};
//# sourceMappingURL=archives-P4UVYRHH.js.map
