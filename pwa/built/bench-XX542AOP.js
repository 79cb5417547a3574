import{A as ae,B as ie,C as ce,D as le,E as ue,G as C,H as pe,I as me,J as fe,K as $e,ia as de,ja as he,ka as be,la as we,ma as _e,pa as ye,qa as ke}from"./chunk-KDE7LMYX.js";import{Ab as V,Bb as y,Bc as ne,C as H,Cb as z,Cc as te,D as i,Dc as oe,Ec as re,Fb as S,Ic as k,Ld as f,Rc as g,Tc as se,a as b,b as v,c as x,ca as W,cc as Q,d as $,da as Y,ea as D,f as M,fc as X,h as a,nc as Z,uc as q,wc as ee,x as O,xb as J,zb as K}from"./chunk-ZT3OBA4U.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-FANV26R3.js";import{D as G,H as U,a as P,o as w,s as I}from"./chunk-G5BJQNXH.js";import"./chunk-T3RUV5D3.js";var Ne=y("bench.opened",()=>[]),Be=()=>{let[e,n]=b(""),t=me(w(),e),o=e?[]:Ne.value.map(r=>w()[r]).filter(Boolean);return a`
    <${f} title=${i("bench.title")} place="bench">
      <div class="field search">
        <label for="bench-search">${i("bench.search")}</label>
        <input id="bench-search" type="search" autocomplete="off" enterkeyhint="search" value=${e}
          onInput=${g(n)} />
      </div>
      <p class="unseen" role="status">
        ${e&&i("bench.found",{count:t.reduce((r,{entries:s})=>r+s.length,0)})}</p>
      ${o.length>0&&a`<${ge} title=${i("bench.last")} entries=${o} />`}
      ${t.map(({moment:r,entries:s})=>a`<${ge} key=${r} title=${i(`bench.moment.${r}`)}
        entries=${s} />`)}
      ${t.length===0&&a`<p>${i("bench.nothing",{words:e})}</p>`}
    </${f}>`},ge=({title:e,entries:n})=>a`
  <section class="section">
    <h2>${e}</h2>
    <ul class="lines">
      ${n.map(t=>a`
        <li key=${t.name}><a class="line" href="/bench/${t.name}"><span><strong>${t.title}</strong><span
          class="soft small purpose">${t.purpose}</span></span></a></li>`)}
    </ul>
  </section>`;var Ae=5e3;function ve(e,n,t,o){let r=C(e,t,o).map(u=>`${u.label}: ${E(u)}`),s=U(e,n),c=e.inputs.filter(u=>n[u.name]!==void 0).map(u=>`${u.label}: ${j(u,s[u.name],o)}`),l=t.notes??[];return[e.title,...r,...l,`${o.from??"From"}:`,...c].join(`
`).slice(0,Ae)}function E(e){return e.rows?e.rows.map(n=>n.map(t=>`${t.label} ${E(t)}`.trim()).join(n.some(t=>t.label)?", ":" ")).join("; "):[e.text,e.unit||e.aside&&`(${e.aside})`].filter(Boolean).join(" ")}function j(e,n,t){if(e.type==="list")return n.map(r=>j(e.item,r,t)).join("; ");if(e.type==="object"){let r=n;return e.fields.filter(c=>r[c.name]!==void 0).map(c=>`${c.label} ${j(c,r[c.name],t)}`).join(", ")}let o=typeof n=="number"?D(Y(e,t.system??"metric")):"";return`${pe(e,n,t)}${o?` ${o}`:""}`}function xe({ask:e,told:n}){let t=null,o=!1;async function r(s){o=!0;try{let c=await e(s);t?.key===s.key&&n(s,c)}finally{o=!1,t?.key===s.key&&(t=null),t&&r(t)}}return{async want(s){t=s,o||await r(s)},drop(){t=null}}}function Se({worker:e,here:n}){let t=!1,o=!1;return{async ask({name:r,input:s}){if(o)return n(r,s);try{let{answer:c,errors:l}=await e({tank_id:"bench",name:r,input:s});return t=!0,l?{errors:l}:{answer:c}}catch{return o=!t,n(r,s)}},holds_up:()=>o}}var Re=["outlook","change_plan","stock_headroom","oxygen_night","water_blend"],Le=150,Me=400,Pe={needed:[],wrong:[],payload:{}},{ask:Ie,holds_up:Ge}=Se({worker:Z(),here:ce}),Ce=(e,n)=>Re.includes(e.name)?He(e,n):Ue(e,n);function Ue(e,n){return{outcome:$(()=>ae(e,n),[e,n.draft,n.tank]),waiting:!1}}function He(e,n){let t=$(()=>ie(e,n),[e,n.draft,n.tank]),o="wrong"in t?null:JSON.stringify(t.payload),[r,s]=b(null),c=$(()=>xe({ask:Ie,told:(m,d)=>s({spec:e,key:m.key,found:d})}),[e]),l=r!==null&&r.spec===e&&r.key===o;v(()=>{if(o===null||l)return;let m=setTimeout(()=>{c.want({key:o,name:e.name,input:t.payload})},Ge()?Me:Le);return()=>{clearTimeout(m),c.drop()}},[c,o,l]);let u=x(Pe);if("wrong"in t)return{outcome:t,waiting:!1};if(!l)return{outcome:u.current,waiting:!0};let{found:p}=r;return"errors"in p?{outcome:le(e,n,t.payload,p.errors),waiting:!1}:(u.current={answer:p.answer,payload:t.payload},{outcome:u.current,waiting:!1})}var Ee=({form:e,...n})=>a`
  <form class="contract" autocomplete="off" onSubmit=${t=>t.preventDefault()}>
    <${ye} views=${e} hands=${{...n,look:ke}} />
  </form>`;var je=y("bench.tank",()=>null),Oe=y("bench.opened",()=>[]),We=({name:e})=>{let n=w()[e];return Object.hasOwn(w(),e)?a`<${Ye} key=${e} spec=${n} />`:a`<${f} title=${i("bench.title")} up="/bench" place="bench"><p>${i("bench.unknown",{name:e})}</p>
      </${f}>`},Ye=({spec:e})=>{let n=z(`bench.${e.name}`,()=>({})),t=X("tank"),o=Qe(n.value.tank,t),r=$(()=>M(()=>fe(e.inputs,_e(o))),[e,o]),s=$(Xe,[]);v(()=>{Oe.value=[e.name,...Oe.value.filter(h=>h!==e.name)].slice(0,3)},[e.name]);let c=S.value,l={draft:n.value,tank:r.value,system:c,marks:s},u=Ce(e,l),{outcome:p}=u,m={system:c,marks:s,yes:i("bench.yes"),no:i("bench.no"),from:i("bench.from_inputs")},d=()=>"answer"in p?ve(e,p.payload,p.answer,m):"",Te="answer"in p?C(e,p.answer,m):[],T={...u,spec:e,rows:Te,words:d},F={errors:Ze(e,p,c,s),...Je(e,n,r.value)},N=t.find(({id:h})=>h===o),B=x(null),A=()=>B.current?.scrollIntoView(),{copy:R,by_hand:L}=De(d,A),Fe=h=>{je.value=h,n.value={...n.value,tank:h}};return a`
    <${f} title=${e.title} up="/bench"
      act=${a`<${tn} ...${T} tank=${N} copy=${R} show=${A} />`}>
      <p class="soft sheet-purpose">${e.purpose}</p>
      <div class="bench-for">
        ${t.length>0&&a`<${qe} tanks=${t} id=${o} pick=${Fe} />`}
        <${en} />
      </div>
      <${Ee} form=${q(e,l)} ...${F} />
      <section class="section answer" ref=${B} aria-label=${i("bench.answer")}>
        <h2>${i("bench.answer")}</h2>
        <${Ke} ...${T} errors=${F.errors} manner=${m} />
        ${L&&a`<textarea class="to-copy" readonly rows="6" aria-label=${i("bench.copy_by_hand")}
          onFocus=${se}>${L}</textarea>`}
        <div class="row">
          ${N&&"answer"in p&&a`<button type="button" class="quiet" disabled=${u.waiting}
            onClick=${k(()=>{R()})}>${i("bench.copy")}</button>`}
          <${Ve} draft=${n} />
        </div>
      </section>
    </${f}>`};function De(e,n){let[t,o]=b("");return{copy:async()=>{try{await navigator.clipboard.writeText(e()),re(i("bench.copied"))}catch{o(e()),n()}},by_hand:t}}function Je(e,n,t){let o=r=>n.value=r;return{edit:(r,s)=>o(J(e.inputs,n.value,t,r,s)),add:r=>o(K(e.inputs,n.value,t,r)),remove:(r,s)=>o(V(e.inputs,n.value,t,r,s)),choose:(r,s)=>o({...n.value,chosen:{...n.value.chosen,[r]:s}})}}var Ke=({spec:e,outcome:n,waiting:t,rows:o,errors:r,manner:s})=>{let c=t?"place-kept":"";return a`
    ${"answer"in n?a`<div class="in-one-place" aria-busy=${t}>
            ${t&&a`<p class="soft meanwhile">${i("bench.working_on_it")}</p>`}
            <div class=${c}><${de} rows=${o} notes=${n.answer.notes} /></div></div>`:a`<${nn} spec=${e} outcome=${n} errors=${r} />`}
    <${he} cautions=${G(e.name)} />
    ${"answer"in n&&a`<div class=${c}>
        <${be} steps=${$e(e,n.payload,n.answer,s)} /></div>`}
    <${we} spec=${e} sources=${e.sources.map(l=>({key:l,...P("sources").sources[l]}))} />`},Ve=({draft:e})=>{let{typed:n={},chosen:t,tank:o}=e.value;return Object.keys(n).length===0&&!t?null:a`<button type="button" class="quiet" onClick=${k(()=>{let s=e.value;e.value={tank:o},ne.value={said:i("bench.emptied"),undo:async()=>{e.value=s}}})}>${i("bench.empty")}</button>`},ze=40;function Qe(e,n){let t=new URLSearchParams(location.search).get("tank")??e??je.value;return t===""?"":t&&n.some(({id:o})=>o===t)?t:n.length===1?n[0].id:""}function Xe(){let e=O(H());return{...e,group:O(navigator.language).group===e.group?e.group:""}}function Ze(e,n,t,o){let r=new Map;for(let s of"wrong"in n?n.wrong:[]){let c=I(e.inputs,s.field),l=c&&(c.type==="number"||c.type==="integer")?ee(c,t,o):"";r.set(s.field,l?i("bench.wrong_in",{message:s.message,range:l}):s.message)}return r}var qe=({tanks:e,id:n,pick:t})=>a`
  <div class="field">
    <label for="bench-tank">${i("bench.for_tank")}</label>
    <select id="bench-tank" onChange=${g(t)}>
      <option value="" selected=${n===""}>${i("bench.no_tank")}</option>
      ${e.map(o=>a`<option value=${o.id} selected=${o.id===n}>${o.name}</option>`)}
    </select>
  </div>`,en=()=>a`
  <div class="field">
    <label for="bench-units">${i("bench.units")}</label>
    <select id="bench-units" onChange=${g(e=>S.value=e)}>
      ${W().map(({key:e})=>a`<option value=${e} selected=${e===S.value}>
        ${i(`bench.system.${e}`)}</option>`)}
    </select>
  </div>`,nn=({spec:e,outcome:n,errors:t})=>a`
  ${n.needed.length+n.wrong.length===0&&a`<p>${i("bench.working_on_it")}</p>`}
  ${n.needed.length>0&&a`<p>${i("bench.needed")}</p><ul class="why">
    ${n.needed.map(o=>a`<li>${o}</li>`)}</ul>`}
  ${n.wrong.length>0&&a`
    <ul>${n.wrong.map(o=>a`<li class="wrong">
      ${ue(e,o.field)}: ${t.get(o.field)}</li>`)}</ul>`}`,tn=({spec:e,outcome:n,waiting:t,rows:o,words:r,tank:s,copy:c,show:l})=>{let u="answer"in n&&!t,p=({id:m,name:d})=>oe([{type:"put",kind:"note",id:te(),fields:{tank:m,at:Q.value.now(),text:r()}}],i("bench.kept",{title:e.title,tank:d}));return a`
    <button type="button" class="in-brief in-one-place" onClick=${l} aria-live="polite">
      ${t&&a`<span class="meanwhile">${i("bench.working_on_it")}</span>`}
      ${(!t||"answer"in n)&&a`<span class=${t?"place-kept":""}>${on(n,o)}
      </span>`}</button>
    ${s?a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${k(()=>{p(s)})}
          aria-label=${i("bench.keep_for",{tank:s.name})}>${i("bench.keep")}</button>`:a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${k(()=>{c()})}>
          ${i("bench.copy")}</button>`}`};function on(e,n){let t=o=>a`<span class="clipped">${o}</span>`;if("answer"in e){let o=n.length?E(n[0]):"";return o&&o.length<=ze?a`${t(n[0].label)}<strong class="clipped">${o}</strong>`:i("bench.answer_below")}return e.wrong.length?i("bench.to_mend",{count:e.wrong.length}):t(i("bench.still_needed",{fields:e.needed.join(", ")}))}export{Be as Bench,We as BenchSheet};
//# sourceMappingURL=bench-XX542AOP.js.map
