import{b as a}from"./chunk-LUILQWSY.js";import"./chunk-OD7ENOTX.js";import"./chunk-RRSGUVAI.js";import"./chunk-RPZJUJ5I.js";export{a as shown_of};
//# sourceMappingURL=tank_shown-RQ2SFVYS.js.map
