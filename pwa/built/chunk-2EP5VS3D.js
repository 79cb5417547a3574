import{Za as t}from"./chunk-NRUJ6FXV.js";var a=["total_ammonia","nitrite","nitrate","ph","temperature"],i=Object.keys(t),e=[...a,...i],m=r=>[...r].sort((o,n)=>e.indexOf(o.parameter)-e.indexOf(n.parameter));export{a,i as b,m as c};
//# sourceMappingURL=chunk-2EP5VS3D.js.map
