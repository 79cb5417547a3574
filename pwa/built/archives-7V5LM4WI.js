import{a,b,c,d,e,f}from"./chunk-YMTKE4SN.js";import"./chunk-K6XNGF2V.js";import"./chunk-BEOBSI6V.js";import"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-7V5LM4WI.js.map
