var s=(n,m)=>({one:n,many:m,other:m});export{s as a};
//# sourceMappingURL=chunk-ZFCHFSJ4.js.map
