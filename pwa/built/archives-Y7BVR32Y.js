import{a,b,c,d,e}from"./chunk-5WA7JBGK.js";import"./chunk-JVORRLE3.js";import"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv};
//# sourceMappingURL=archives-Y7BVR32Y.js.map
