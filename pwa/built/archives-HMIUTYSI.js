import{a,b,c,d,e,f}from"./chunk-FJTLPYQU.js";import"./chunk-UIOLMFZE.js";import"./chunk-YYHVYFUF.js";import"./chunk-CPI66KYQ.js";export{c as export_needs_you,a as export_room,b as export_unshared,d as import_room,e as readings_csv,f as tables_zip};
//# sourceMappingURL=archives-HMIUTYSI.js.map
