import{b as a}from"./chunk-6X2OK5SW.js";import"./chunk-6DDWCW7N.js";import"./chunk-XOQ5JX2K.js";import"./chunk-NFWFDEJA.js";export{a as shown_of};
//# sourceMappingURL=tank_shown-DA3DS32F.js.map
