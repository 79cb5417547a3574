import{A as ce,B as le,C as ue,D as pe,E as me,G as O,H as fe,I as $e,J as de,K as he,Ma as be,Na as we,Oa as _e,Pa as ye,Qa as ke,Ta as ge,Ua as ve}from"./chunk-63OKULQF.js";import{Ac as te,Bb as V,D as T,Db as z,E as i,Eb as Q,Fb as y,Fc as oe,Gb as X,Gc as re,H as Y,Hc as se,Ic as ae,Jb as C,Mc as k,Pd as f,Vc as g,Xc as ie,a as b,b as v,c as x,d as $,ea as D,f as I,fa as J,ga as K,gc as Z,h as a,jc as q,rc as ee,x as S,y as E,yc as ne}from"./chunk-AQMFKDZO.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import{J as H,N as W,b as G,u as w,y as U}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var Be=y("bench.opened",()=>[]),Re=()=>{let[e,n]=b(""),t=$e(w(),e),o=e?[]:Be.value.map(r=>w()[r]).filter(Boolean);return a`
    <${f} title=${i("bench.title")} place="bench">
      <div class="field search">
        <label for="bench-search">${i("bench.search")}</label>
        <input id="bench-search" type="search" autocomplete="off" enterkeyhint="search" value=${e}
          onInput=${g(n)} />
      </div>
      <p class="unseen" role="status">
        ${e&&i("bench.found",{count:t.reduce((r,{entries:s})=>r+s.length,0)})}</p>
      ${o.length>0&&a`<${xe} title=${i("bench.last")} entries=${o} />`}
      ${t.map(({moment:r,entries:s})=>a`<${xe} key=${r} title=${i(`bench.moment.${r}`)}
        entries=${s} />`)}
      ${t.length===0&&a`<p>${i("bench.nothing",{words:e})}</p>`}
    </${f}>`},xe=({title:e,entries:n})=>a`
  <section class="section">
    <h2>${e}</h2>
    <ul class="lines">
      ${n.map(t=>a`
        <li key=${t.name}><a class="line" href="/bench/${t.name}"><span><strong>${t.title}</strong><span
          class="soft small purpose">${t.purpose}</span></span></a></li>`)}
    </ul>
  </section>`;var Le=5e3;function Se(e,n,t,o){let r=O(e,t,o).map(u=>E(u.label,j(u),o.marks)),s=W(e,n),c=e.inputs.filter(u=>n[u.name]!==void 0).map(u=>E(u.label,F(u,s[u.name],o),o.marks)),l=t.notes??[];return[e.title,...r,...l,E(o.from??"From","",o.marks).trimEnd(),...c].join(`
`).slice(0,Le)}function j(e){return e.rows?e.rows.map(n=>n.map(t=>`${t.label} ${j(t)}`.trim()).join(n.some(t=>t.label)?", ":" ")).join("; "):[e.text,e.unit||e.aside&&`(${e.aside})`].filter(Boolean).join(" ")}function F(e,n,t){if(e.type==="list")return n.map(r=>F(e.item,r,t)).join("; ");if(e.type==="object"){let r=n;return e.fields.filter(c=>r[c.name]!==void 0).map(c=>`${c.label} ${F(c,r[c.name],t)}`).join(", ")}let o=typeof n=="number"?K(J(e,t.system??"metric")):"";return`${fe(e,n,t)}${o?` ${o}`:""}`}function Ee({ask:e,told:n}){let t=null,o=!1;async function r(s){o=!0;try{let c=await e(s);t?.key===s.key&&n(s,c)}finally{o=!1,t?.key===s.key&&(t=null),t&&r(t)}}return{async want(s){t=s,o||await r(s)},drop(){t=null}}}function Ce({worker:e,here:n}){let t=!1,o=!1;return{async ask({name:r,input:s}){if(o)return n(r,s);try{let{answer:c,errors:l}=await e({tank_id:"bench",name:r,input:s});return t=!0,l?{errors:l}:{answer:c}}catch{return o=!t,n(r,s)}},holds_up:()=>o}}var Me=["outlook","change_plan","stock_headroom","oxygen_night","water_blend"],Pe=150,Ie=400,Ge={needed:[],wrong:[],payload:{}},{ask:Ue,holds_up:He}=Ce({worker:ee(),here:ue}),Oe=(e,n)=>Me.includes(e.name)?Ye(e,n):We(e,n);function We(e,n){return{outcome:$(()=>ce(e,n),[e,n.draft,n.tank]),waiting:!1}}function Ye(e,n){let t=$(()=>le(e,n),[e,n.draft,n.tank]),o="wrong"in t?null:JSON.stringify(t.payload),[r,s]=b(null),c=$(()=>Ee({ask:Ue,told:(m,d)=>s({spec:e,key:m.key,found:d})}),[e]),l=r!==null&&r.spec===e&&r.key===o;v(()=>{if(o===null||l)return;let m=setTimeout(()=>{c.want({key:o,name:e.name,input:t.payload})},He()?Ie:Pe);return()=>{clearTimeout(m),c.drop()}},[c,o,l]);let u=x(Ge);if("wrong"in t)return{outcome:t,waiting:!1};if(!l)return{outcome:u.current,waiting:!0};let{found:p}=r;return"errors"in p?{outcome:pe(e,n,t.payload,p.errors),waiting:!1}:(u.current={answer:p.answer,payload:t.payload},{outcome:u.current,waiting:!1})}var je=({form:e,...n})=>a`
  <form class="contract" autocomplete="off" onSubmit=${t=>t.preventDefault()}>
    <${ge} views=${e} hands=${{...n,look:ve}} />
  </form>`;var Fe=y("bench.tank",()=>null),Te=y("bench.opened",()=>[]),De=({name:e})=>{let n=w()[e];return Object.hasOwn(w(),e)?a`<${Je} key=${e} spec=${n} />`:a`<${f} title=${i("bench.title")} up="/bench" place="bench"><p>${i("bench.unknown",{name:e})}</p>
      </${f}>`},Je=({spec:e})=>{let n=X(`bench.${e.name}`,()=>({})),t=q("tank"),o=Ze(n.value.tank,t),r=$(()=>I(()=>de(e.inputs,ke(o))),[e,o]),s=$(qe,[]);v(()=>{Te.value=[e.name,...Te.value.filter(h=>h!==e.name)].slice(0,3)},[e.name]);let c=C.value,l={draft:n.value,tank:r.value,system:c,marks:s},u=Oe(e,l),{outcome:p}=u,m={system:c,marks:s,yes:i("bench.yes"),no:i("bench.no"),from:i("bench.from_inputs")},d=()=>"answer"in p?Se(e,p.payload,p.answer,m):"",Ne="answer"in p?O(e,p.answer,m):[],N={...u,spec:e,rows:Ne,words:d},A={errors:en(e,p,c,s),...Ve(e,n,r.value)},B=t.find(({id:h})=>h===o),R=x(null),L=()=>R.current?.scrollIntoView(),{copy:M,by_hand:P}=Ke(d,L),Ae=h=>{Fe.value=h,n.value={...n.value,tank:h}};return a`
    <${f} title=${e.title} up="/bench"
      act=${a`<${rn} ...${N} tank=${B} copy=${M} show=${L} />`}>
      <p class="soft sheet-purpose">${e.purpose}</p>
      <div class="bench-for">
        ${t.length>0&&a`<${nn} tanks=${t} id=${o} pick=${Ae} />`}
        <${tn} />
      </div>
      <${je} form=${ne(e,l)} ...${A} />
      <section class="section answer" ref=${R} aria-label=${i("bench.answer")}>
        <h2>${i("bench.answer")}</h2>
        <${ze} ...${N} errors=${A.errors} manner=${m} />
        ${P&&a`<textarea class="to-copy" readonly rows="6" aria-label=${i("bench.copy_by_hand")}
          onFocus=${ie}>${P}</textarea>`}
        <div class="row">
          ${B&&"answer"in p&&a`<button type="button" class="quiet" disabled=${u.waiting}
            onClick=${k(()=>{M()})}>${i("bench.copy")}</button>`}
          <${Qe} draft=${n} />
        </div>
      </section>
    </${f}>`};function Ke(e,n){let[t,o]=b("");return{copy:async()=>{try{await navigator.clipboard.writeText(e()),ae(i("bench.copied"))}catch{o(e()),n()}},by_hand:t}}function Ve(e,n,t){let o=r=>n.value=r;return{edit:(r,s)=>o(V(e.inputs,n.value,t,r,s)),add:r=>o(z(e.inputs,n.value,t,r)),remove:(r,s)=>o(Q(e.inputs,n.value,t,r,s)),choose:(r,s)=>o({...n.value,chosen:{...n.value.chosen,[r]:s}})}}var ze=({spec:e,outcome:n,waiting:t,rows:o,errors:r,manner:s})=>{let c=t?"place-kept":"";return a`
    ${"answer"in n?a`<div class="in-one-place" aria-busy=${t}>
            ${t&&a`<p class="soft meanwhile">${i("bench.working_on_it")}</p>`}
            <div class=${c}><${be} rows=${o} notes=${n.answer.notes} /></div></div>`:a`<${on} spec=${e} outcome=${n} errors=${r} />`}
    <${we} cautions=${H(e.name)} />
    ${"answer"in n&&a`<div class=${c}>
        <${_e} steps=${he(e,n.payload,n.answer,s)} /></div>`}
    <${ye} spec=${e} sources=${e.sources.map(l=>({key:l,...G("sources").sources[l]}))} />`},Qe=({draft:e})=>{let{typed:n={},chosen:t,tank:o}=e.value;return Object.keys(n).length===0&&!t?null:a`<button type="button" class="quiet" onClick=${k(()=>{let s=e.value;e.value={tank:o},oe.value={said:i("bench.emptied"),undo:async()=>{e.value=s}}})}>${i("bench.empty")}</button>`},Xe=40;function Ze(e,n){let t=new URLSearchParams(location.search).get("tank")??e??Fe.value;return t===""?"":t&&n.some(({id:o})=>o===t)?t:n.length===1?n[0].id:""}function qe(){let e=S(T());return{...e,group:S(navigator.language).group===e.group?e.group:""}}function en(e,n,t,o){let r=new Map;for(let s of"wrong"in n?n.wrong:[]){let c=U(e.inputs,s.field),l=c&&(c.type==="number"||c.type==="integer")?te(c,t,o):"";r.set(s.field,l?i("bench.wrong_in",{message:s.message,range:l}):s.message)}return r}var nn=({tanks:e,id:n,pick:t})=>a`
  <div class="field">
    <label for="bench-tank">${i("bench.for_tank")}</label>
    <select id="bench-tank" onChange=${g(t)}>
      <option value="" selected=${n===""}>${i("bench.no_tank")}</option>
      ${e.map(o=>a`<option value=${o.id} selected=${o.id===n}>${o.name}</option>`)}
    </select>
  </div>`,tn=()=>a`
  <div class="field">
    <label for="bench-units">${i("bench.units")}</label>
    <select id="bench-units" onChange=${g(e=>C.value=e)}>
      ${D().map(({key:e})=>a`<option value=${e} selected=${e===C.value}>
        ${i(`bench.system.${e}`)}</option>`)}
    </select>
  </div>`,on=({spec:e,outcome:n,errors:t})=>a`
  ${n.needed.length+n.wrong.length===0&&a`<p>${i("bench.working_on_it")}</p>`}
  ${n.needed.length>0&&a`<p>${i("bench.needed")}</p><ul class="why">
    ${n.needed.map(o=>a`<li>${o}</li>`)}</ul>`}
  ${n.wrong.length>0&&a`
    <ul>${n.wrong.map(o=>a`<li class="wrong">
      ${Y(me(e,o.field,S(T())),t.get(o.field)??"")}</li>`)}</ul>`}`,rn=({spec:e,outcome:n,waiting:t,rows:o,words:r,tank:s,copy:c,show:l})=>{let u="answer"in n&&!t,p=({id:m,name:d})=>se([{type:"put",kind:"note",id:re(),fields:{tank:m,at:Z.value.now(),text:r()}}],i("bench.kept",{title:e.title,tank:d}));return a`
    <button type="button" class="in-brief in-one-place" onClick=${l} aria-live="polite">
      ${t&&a`<span class="meanwhile">${i("bench.working_on_it")}</span>`}
      ${(!t||"answer"in n)&&a`<span class=${t?"place-kept":""}>${sn(n,o)}
      </span>`}</button>
    ${s?a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${k(()=>{p(s)})}
          aria-label=${i("bench.keep_for",{tank:s.name})}>${i("bench.keep")}</button>`:a`<button type="button" class="main bench-keep" disabled=${!u} onClick=${k(()=>{c()})}>
          ${i("bench.copy")}</button>`}`};function sn(e,n){let t=o=>a`<span class="clipped">${o}</span>`;if("answer"in e){let[o]=n,r=o?j(o):"";if(!r||r.length>Xe)return i("bench.answer_below");let s=o.unit?a`${o.text} <span class="unit">${o.unit.replaceAll(" ","\xA0")}</span>`:r;return a`${t(o.label)}<strong class="clipped">${s}</strong>`}return e.wrong.length?i("bench.to_mend",{count:e.wrong.length}):t(i("bench.still_needed",{fields:e.needed.join(", ")}))}export{Re as Bench,De as BenchSheet};
//# sourceMappingURL=bench-7UIK62S5.js.map
