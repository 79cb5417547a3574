import{a,b,c,d,e}from"./chunk-T5P62UWI.js";import"./chunk-BEOBSI6V.js";import"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv};
//# sourceMappingURL=archives-7V6PVIRZ.js.map
