import{a,b,c,d,e,f}from"./chunk-74EJX4OL.js";import"./chunk-K6XNGF2V.js";import"./chunk-YPWVV2AZ.js";import"./chunk-ZABPB457.js";import"./chunk-J2IGEXLH.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-XB5YD5AE.js.map
