var s=/(?:^|[;,\t\r\n])[ \t\r\n]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/,r=t=>s.test(t??"")?`'${t}`:t??"",n=t=>t.startsWith("'")&&s.test(t.slice(1))?t.slice(1):t;export{r as a,n as b};
//# sourceMappingURL=chunk-K6XNGF2V.js.map
