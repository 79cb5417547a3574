import{b as a}from"./chunk-4K3KBZAC.js";import"./chunk-2EP5VS3D.js";import"./chunk-74NNJKGA.js";import"./chunk-NRUJ6FXV.js";export{a as shown_of};
//# sourceMappingURL=tank_shown-33EYU2W4.js.map
