import{a,b,c,d,e,f}from"./chunk-D5TNDRM3.js";import"./chunk-K6XNGF2V.js";import"./chunk-HKACATZB.js";import"./chunk-TFRVTPET.js";import"./chunk-C7L4J3Q5.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-RRTTQLYT.js.map
