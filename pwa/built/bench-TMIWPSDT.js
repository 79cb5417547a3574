import{A as ue,B as pe,D as C,E as me,F as fe,G as $e,H as de,Ja as he,Ka as be,La as we,Ma as _e,Na as ye,Qa as ke,Ra as ge,x as ie,y as ce,z as le}from"./chunk-VO4XJGUN.js";import"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{Db as y,Mb as k,Ob as ae,_a as X,bb as Z,jb as q,pb as ee,rb as ne,wb as te,xb as oe,yb as re,zb as se,zc as f}from"./chunk-74NNJKGA.js";import{H as w,L as G,Ta as Y,Ua as D,V as U,Va as J,Z as H,c as b,ca as x,d as g,da as S,f as v,g as $,ib as K,j as P,ja as j,kb as V,la as i,lb as z,m as a,mb as _,nb as Q,o as I,oa as W,qb as E}from"./chunk-NRUJ6FXV.js";var Ae=_("bench.opened",()=>[]),Be=()=>{let[e,n]=b(""),t=fe(w(),e),o=e?[]:Ae.value.map(r=>w()[r]).filter(Boolean);return a`
    <${f} title=${i("bench.title")} place="bench">
      <div class="field search">
        <label for="bench-search">${i("bench.search")}</label>
        <input id="bench-search" type="search" autocomplete="off" enterkeyhint="search" value=${e}
          onInput=${k(n)} />
      </div>
      <p class="unseen" role="status">
        ${e&&i("bench.found",{count:t.reduce((r,{entries:s})=>r+s.length,0)})}</p>
      ${o.length>0&&a`<${ve} title=${i("bench.last")} entries=${o} />`}
      ${t.map(({moment:r,entries:s})=>a`<${ve} key=${r} title=${i(`bench.moment.${r}`)}
        entries=${s} />`)}
      ${t.length===0&&a`<p>${i("bench.nothing",{words:e})}</p>`}
    </${f}>`},ve=({title:e,entries:n})=>a`
  <section class="section">
    <h2>${e}</h2>
    <ul class="lines">
      ${n.map(t=>a`
        <li key=${t.name}><a class="line" href="/bench/${t.name}"><span><strong>${t.title}</strong><span
          class="soft small purpose">${t.purpose}</span></span></a></li>`)}
    </ul>
  </section>`;var Re=5e3;function xe(e,n,t,o){let r=C(e,t,o).map(u=>S(u.label,O(u),o.marks)),s=H(e,n),c=e.inputs.filter(u=>n[u.name]!==void 0).map(u=>S(u.label,T(u,s[u.name],o),o.marks)),l=t.notes??[];return[e.title,...r,...l,S(o.from??"From","",o.marks).trimEnd(),...c].join(`
`).slice(0,Re)}function O(e){return e.rows?e.rows.map(n=>n.map(t=>`${t.label} ${O(t)}`.trim()).join(n.some(t=>t.label)?", ":" ")).join("; "):[e.text,e.unit||e.aside&&`(${e.aside})`].filter(Boolean).join(" ")}function T(e,n,t){if(e.type==="list")return n.map(r=>T(e.item,r,t)).join("; ");if(e.type==="object"){let r=n;return e.fields.filter(c=>r[c.name]!==void 0).map(c=>`${c.label} ${T(c,r[c.name],t)}`).join(", ")}let o=typeof n=="number"?J(D(e,t.system??"metric")):"";return`${me(e,n,t)}${o?` ${o}`:""}`}function Se({ask:e,told:n}){let t=null,o=!1;async function r(s){o=!0;try{let c=await e(s);t?.key===s.key&&n(s,c)}finally{o=!1,t?.key===s.key&&(t=null),t&&r(t)}}return{async want(s){t=s,o||await r(s)},drop(){t=null}}}function Ee({worker:e,here:n}){let t=!1,o=!1;return{async ask({name:r,input:s}){if(o)return n(r,s);try{let{answer:c,errors:l}=await e({tank_id:"bench",name:r,input:s});return t=!0,l?{errors:l}:{answer:c}}catch{return o=!t,n(r,s)}},holds_up:()=>o}}var Le=["outlook","change_plan","stock_headroom","oxygen_night","water_blend"],Me=150,Pe=400,Ie={needed:[],wrong:[],payload:{}},{ask:Ge,holds_up:Ue}=Ee({worker:q(),here:le}),Ce=(e,n)=>Le.includes(e.name)?We(e,n):He(e,n);function He(e,n){return{outcome:$(()=>ie(e,n),[e,n.draft,n.tank]),waiting:!1}}function We(e,n){let t=$(()=>ce(e,n),[e,n.draft,n.tank]),o="wrong"in t?null:JSON.stringify(t.payload),[r,s]=b(null),c=$(()=>Se({ask:Ge,told:(m,d)=>s({spec:e,key:m.key,found:d})}),[e]),l=r!==null&&r.spec===e&&r.key===o;g(()=>{if(o===null||l)return;let m=setTimeout(()=>{c.want({key:o,name:e.name,input:t.payload})},Ue()?Pe:Me);return()=>{clearTimeout(m),c.drop()}},[c,o,l]);let u=v(Ie);if("wrong"in t)return{outcome:t,waiting:!1};if(!l)return{outcome:u.current,waiting:!0};let{found:p}=r;return"errors"in p?{outcome:ue(e,n,t.payload,p.errors),waiting:!1}:(u.current={answer:p.answer,payload:t.payload},{outcome:u.current,waiting:!1})}var Oe=({form:e,...n})=>a`
  <form class="contract" autocomplete="off" onSubmit=${t=>t.preventDefault()}>
    <${ke} views=${e} hands=${{...n,look:ge}} />
  </form>`;var Te=_("bench.tank",()=>null),je=_("bench.opened",()=>[]),Ye=({name:e})=>{let n=w()[e];return Object.hasOwn(w(),e)?a`<${De} key=${e} spec=${n} />`:a`<${f} title=${i("bench.title")} up="/bench" place="bench"><p>${i("bench.unknown",{name:e})}</p>
      </${f}>`},De=({spec:e})=>{let n=Q(`bench.${e.name}`,()=>({})),t=Z("tank"),o=Xe(n.value.tank,t),r=$(()=>P(()=>$e(e.inputs,ye(o))),[e,o]),s=$(Ze,[]);g(()=>{je.value=[e.name,...je.value.filter(h=>h!==e.name)].slice(0,3)},[e.name]);let c=E.value,l={draft:n.value,tank:r.value,system:c,marks:s},u=Ce(e,l),{outcome:p}=u,m={system:c,marks:s,yes:i("bench.yes"),no:i("bench.no"),from:i("bench.from_inputs")},d=()=>"answer"in p?xe(e,p.payload,p.answer,m):"",Fe="answer"in p?C(e,p.answer,m):[],F={...u,spec:e,rows:Fe,words:d},N={errors:qe(e,p,c,s),...Ke(e,n,r.value)},A=t.find(({id:h})=>h===o),B=v(null),R=()=>B.current?.scrollIntoView(),{copy:L,by_hand:M}=Je(d,R),Ne=h=>{Te.value=h,n.value={...n.value,tank:h}};return a`
    <${f} title=${e.title} up="/bench"
      act=${a`<${on} ...${F} tank=${A} copy=${L} show=${R} />`}>
      <p class="soft sheet-purpose">${e.purpose}</p>
      <div class="bench-for">
        ${t.length>0&&a`<${en} tanks=${t} id=${o} pick=${Ne} />`}
        <${nn} />
      </div>
      <${Oe} form=${ee(e,l)} ...${N} />
      <section class="section answer" ref=${B} aria-label=${i("bench.answer")}>
        <h2>${i("bench.answer")}</h2>
        <${Ve} ...${F} errors=${N.errors} manner=${m} />
        ${M&&a`<textarea class="to-copy" readonly rows="6" aria-label=${i("bench.copy_by_hand")}
          onFocus=${ae}>${M}</textarea>`}
        <div class="row">
          ${A&&"answer"in p&&a`<button type="button" class="quiet" disabled=${u.waiting}
            onClick=${y(()=>{L()})}>${i("bench.copy")}</button>`}
          <${ze} draft=${n} />
        </div>
      </section>
    </${f}>`};function Je(e,n){let[t,o]=b("");return{copy:async()=>{try{await navigator.clipboard.writeText(e()),se(i("bench.copied"))}catch{o(e()),n()}},by_hand:t}}function Ke(e,n,t){let o=r=>n.value=r;return{edit:(r,s)=>o(K(e.inputs,n.value,t,r,s)),add:r=>o(V(e.inputs,n.value,t,r)),remove:(r,s)=>o(z(e.inputs,n.value,t,r,s)),choose:(r,s)=>o({...n.value,chosen:{...n.value.chosen,[r]:s}})}}var Ve=({spec:e,outcome:n,waiting:t,rows:o,errors:r,manner:s})=>{let c=t?"place-kept":"";return a`
    ${"answer"in n?a`<div class="in-one-place" aria-busy=${t}>
            ${t&&a`<p class="soft meanwhile">${i("bench.working_on_it")}</p>`}
            <div class=${c}><${he} rows=${o} notes=${n.answer.notes} /></div></div>`:a`<${tn} spec=${e} outcome=${n} errors=${r} />`}
    <${be} cautions=${U(e.name)} />
    ${"answer"in n&&a`<div class=${c}>
        <${we} steps=${de(e,n.payload,n.answer,s)} /></div>`}
    <${_e} spec=${e} sources=${e.sources.map(l=>({key:l,...I("sources").sources[l]}))} />`},ze=({draft:e})=>{let{typed:n={},chosen:t,tank:o}=e.value;return Object.keys(n).length===0&&!t?null:a`<button type="button" class="quiet" onClick=${y(()=>{let s=e.value;e.value={tank:o},te.value={said:i("bench.emptied"),undo:async()=>{e.value=s}}})}>${i("bench.empty")}</button>`},Qe=40;function Xe(e,n){let t=new URLSearchParams(location.search).get("tank")??e??Te.value;return t===""?"":t&&n.some(({id:o})=>o===t)?t:n.length===1?n[0].id:""}function Ze(){let e=x(j());return{...e,group:x(navigator.language).group===e.group?e.group:""}}function qe(e,n,t,o){let r=new Map;for(let s of"wrong"in n?n.wrong:[]){let c=G(e.inputs,s.field),l=c&&(c.type==="number"||c.type==="integer")?ne(c,t,o):"";r.set(s.field,l?i("bench.wrong_in",{message:s.message,range:l}):s.message)}return r}var en=({tanks:e,id:n,pick:t})=>a`
  <div class="field">
    <label for="bench-tank">${i("bench.for_tank")}</label>
    <select id="bench-tank" onChange=${k(t)}>
      <option value="" selected=${n===""}>${i("bench.no_tank")}</option>
      ${e.map(o=>a`<option value=${o.id} selected=${o.id===n}>${o.name}</option>`)}
    </select>
  </div>`,nn=()=>a`
  <div class="field">
    <label for="bench-units">${i("bench.units")}</label>
    <select id="bench-units" onChange=${k(e=>E.value=e)}>
      ${Y().map(({key:e})=>a`<option value=${e} selected=${e===E.value}>
        ${i(`bench.system.${e}`)}</option>`)}
    </select>
  </div>`,tn=({spec:e,outcome:n,errors:t})=>a`
  ${n.needed.length+n.wrong.length===0&&a`<p>${i("bench.working_on_it")}</p>`}
  ${n.needed.length>0&&a`<p>${i("bench.needed")}</p><ul class="why">
    ${n.needed.map(o=>a`<li>${o}</li>`)}</ul>`}
  ${n.wrong.length>0&&a`
    <ul>${n.wrong.map(o=>a`<li class="wrong">
      ${W(pe(e,o.field,x(j())),t.get(o.field)??"")}</li>`)}</ul>`}`,on=({spec:e,outcome:n,waiting:t,rows:o,words:r,tank:s,copy:c,show:l})=>{let u="answer"in n&&!t,p=({id:m,name:d})=>re([{type:"put",kind:"note",id:oe(),fields:{tank:m,at:X.value.now(),text:r()}}],i("bench.kept",{title:e.title,tank:d}));return a`
    <button type="button" class="in-brief in-one-place" onClick=${l} aria-live="polite">
      ${t&&a`<span class="meanwhile">${i("bench.working_on_it")}</span>`}
      ${(!t||"answer"in n)&&a`<span class=${t?"place-kept":""}>${rn(n,o)}
      </span>`}</button>
    ${s?a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${y(()=>{p(s)})}
          aria-label=${i("bench.keep_for",{tank:s.name})}>${i("bench.keep")}</button>`:a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${y(()=>{c()})}>
          ${i("bench.copy")}</button>`}`};function rn(e,n){let t=o=>a`<span class="clipped">${o}</span>`;if("answer"in e){let[o]=n,r=o?O(o):"";if(!r||r.length>Qe)return i("bench.answer_below");let s=o.unit?a`${o.text} <span class="unit">${o.unit.replaceAll(" ","\xA0")}</span>`:r;return a`${t(o.label)}<strong class="clipped">${s}</strong>`}return e.wrong.length?i("bench.to_mend",{count:e.wrong.length}):t(i("bench.still_needed",{fields:e.needed.join(", ")}))}export{Be as Bench,Ye as BenchSheet};
//# sourceMappingURL=bench-TMIWPSDT.js.map
