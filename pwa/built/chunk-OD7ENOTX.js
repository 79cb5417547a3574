import{Za as t}from"./chunk-RPZJUJ5I.js";var a=["total_ammonia","nitrite","nitrate","ph","temperature"],i=Object.keys(t),e=[...a,...i],m=r=>[...r].sort((o,n)=>e.indexOf(o.parameter)-e.indexOf(n.parameter));export{a,i as b,m as c};
//# sourceMappingURL=chunk-OD7ENOTX.js.map
