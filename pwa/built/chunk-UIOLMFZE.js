var s=/(?:^|[;,\t\r\n])[ \t\r\n]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/,f=t=>s.test(t??"")?`'${t}`:t??"",r=t=>t.startsWith("'")&&s.test(t.slice(1))?t.slice(1):t;export{f as a,r as b};
//# sourceMappingURL=chunk-UIOLMFZE.js.map
