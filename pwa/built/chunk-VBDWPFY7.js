var o=(n,m)=>({one:n,many:m,other:m});export{o as a};
//# sourceMappingURL=chunk-VBDWPFY7.js.map
