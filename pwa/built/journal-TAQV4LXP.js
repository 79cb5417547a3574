import{$a as qe,Ca as Pe,D as ke,Da as Ce,Ea as ut,Fa as Ee,G as ve,H as we,J as be,Ja as Re,L as xe,N as De,O as Me,P as Y,Sa as je,Wa as ft,Ya as Te,Za as Ae,aa as Se,c as fe,g as de,h as $e,i as he,j as _e,k as ge,l as ye,ra as Oe,va as Ne}from"./chunk-GSGJTTTH.js";import{$ as vt,$a as K,Aa as xt,Ab as ne,Ac as lt,C as l,D as Bt,Db as Mt,E as x,Eb as at,Ed as pt,Fc as $,G as _t,Gb as C,H as O,Hb as st,Ib as rt,Id as h,Jb as E,K as gt,L as yt,Lb as oe,M as W,Mb as ae,Md as w,Nb as se,Ob as A,Oc as ct,Rb as q,Rc as me,S as U,Sb as re,X as P,Y as kt,Z as nt,_ as Kt,_a as B,_c as pe,ac as v,b as et,bc as f,c as Ht,ca as Vt,cb as ot,d as M,da as wt,dc as ie,e as Yt,ea as Jt,ec as d,ed as H,fc as D,fd as ue,g as N,ga as Qt,gb as te,gc as le,gd as mt,h as c,ia as bt,jc as S,ob as Dt,pc as it,qb as ee,ta as Xt,ua as Zt,zc as ce}from"./chunk-VA4ONH74.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-GTWYWVDK.js";import{A as Ut,f as It,o as ht,r as zt,t as Gt,w as Wt}from"./chunk-QN3HABRZ.js";import"./chunk-WK7VWSJL.js";var R={reading:"tests",water_change:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},_n=Object.keys(R),Le=[...new Set(Object.values(R))],L={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function j(t,{tank:e,group:n}={}){let o=vn(t);return _n.filter(r=>!n||R[r]===n).flatMap(r=>wn(t,r,o)).map(r=>xn(t,r)).filter(r=>!e||r.tank===e||gn(r)===e).sort((r,a)=>r.at<a.at?1:r.at>a.at?-1:0)}var gn=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function V(t){let e=[];for(let n of t){let o=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==o&&e.push({day:o,events:[]}),e.at(-1)?.events.push(n)}return e}var Fe=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:o})=>({type:"del",kind:n,id:o}));function He(t,e,{one:n,value:o,at:s,tank:r},a){let i=a(),m=s!==void 0||r!==void 0||n.kind==="water_change";return e.records.filter(p=>m||p===n).map(p=>{let u={};return s!==void 0&&(u.at=fe(p.at,e.at,s)),r!==void 0&&(u.tank=r),p===n&&o!==void 0&&(u[L[p.kind]]=o===""?void 0:o),p===n&&p.kind==="note"&&o!==void 0&&Object.assign(u,{quick:void 0,incident:void 0,step:void 0}),p.kind==="water_change"&&Object.assign(u,yn(t,{...p,...u},p)),e.kind==="water_change"&&p.kind==="dose"&&(u.water_change=i),kn(p,p===n?i:a(),u)})}function yn(t,{litres:e,tank:n,from_tank:o},s){let{water_l:r}=t.get("tank",n),a=n===s.tank?s.fraction/s.litres:1/r;return{fraction:Math.min(1,a*Number(e)),...o===n?{from_tank:void 0}:{}}}function kn({id:t,kind:e,meta:n,...o},s,r){return{type:"put",kind:e,id:s,fields:{...o,...r,supersedes:t}}}function vn(t){let e=new Map;for(let{id:r,supersedes:a}of t.all("water_change")){e.set(r,r);for(let i of a?t.earlier("water_change",r):[])e.set(i.id,r)}let n=new Set(t.all("note").map(({entry:r})=>r)),o=Ot(t.all("dose"),({water_change:r})=>e.get(r??"")),s=Ot(t.all("photo"),({entry:r})=>r&&n.has(r)?r:void 0);return{doses:o.lists,apart:o.rest,photos:s.lists,loose:s.rest}}function Ot(t,e){let n=new Map,o=[];for(let s of t){let r=e(s);r===void 0?o.push(s):n.get(r)?.push(s)||n.set(r,[s])}return{lists:n,rest:o}}function wn(t,e,{doses:n,photos:o,apart:s,loose:r}){return e==="reading"?St(t.all(e),({test:a})=>a).map(a=>bn(t,a)):e==="water_change"?t.all(e).map(a=>[a,...n.get(a.id)??[]]):e==="dose"?s.map(a=>[a]):e==="note"?St(t.all(e),({entry:a})=>a).map(a=>[...[...a].sort((i,m)=>i.at<m.at?-1:i.at>m.at?1:i.id<m.id?-1:1),...o.get(a[0].entry??"")??[]]):e==="photo"?St(r,({entry:a})=>a):t.all(e).map(a=>[a])}var St=(t,e)=>[...Ot(t,n=>e(n)??n.id).lists.values()];function bn(t,e){let n=({kind:o,id:s,supersedes:r})=>(r?t.earlier(o,s).at(-1)?.id:null)??s;return[...e].sort((o,s)=>n(o)<n(s)?-1:1)}function xn(t,e){let[n]=e,o=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,s=e.flatMap(({kind:r,id:a,supersedes:i})=>i?t.earlier(r,a):[]);return{at:n.at,tank:o??null,group:R[n.kind],kind:n.kind,records:e,earlier:s}}var I=({kind:t,records:e=[]})=>Nt(e)?l("history.incident"):Dn[t]?.()??l(`kind.${t}`),Nt=t=>t.some(({kind:e,incident:n})=>e==="note"&&n),Dn={reading:()=>l("history.test"),water_change:()=>l("history.change"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},z=({records:t})=>t.flatMap(e=>[...J(e),...e.note?e.note.split(`
`):[]]);function Ye({at:t,tank:e,earlier:n}){let o=n.flatMap(s=>[...J(s),...s.at===t?[]:[O(s.at,f.value)],...!s.tank||s.tank===e?[]:[d("tank",s.tank)?.name??l("life.a_tank")]]);return[...new Set(o)]}function J(t){let e=t;return e.kind==="reading"?[Mn(e)]:e.kind==="water_change"?[l("history.changed",{litres:A(e.litres)})]:e.kind==="dose"?[`${re(e)} ${ue(e)}`]:e.kind==="feeding"?[Sn(e)]:e.kind==="note"?H(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[On(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:Ut(Wt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>d("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[Re(e)]:[]}function Mn(t){let{value:e,unit:n}=E(t);return`${C(t.parameter)} ${e} ${n}`.trim()}function Sn({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:q(t),food:e}):l("history.fed",{amount:q(t)})}function On({task:t,skipped:e}){let n=d("task",t),o=n?mt(n):l("kind.task_done");return e?l("history.task_skipped",{title:o}):o}var Pt={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},Ct={note:{says:({text:t,quick:e})=>H({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function Nn({kind:t,id:e}){let n=`correct.${t}.${e}`,o=Te({name:n,first:()=>({of:e,typed:null,tank:""})}),s=t in L&&v.value.may(t)&&le(t,e)?j(v.value).find(({records:k})=>k.some($t=>$t.id===e)):null;if(!s)return c`<${w} up="/" />`;let r=s.records.filter(k=>k.kind===t),a=r.find(k=>k.id===o.draft.value.of)??r[0],{typed:i,at:m,tank:p}=o.draft.value,u=Ct[t],_=u?Cn(u,a,i):En(t,a,o.draft.value),y=Pn(a,_,d("tank",p||a.tank)),Z=(_!==void 0||p!==""||m!==void 0&&m!==s.at)&&!y&&!Pe(m)&&!(i===""&&!u?.may_be_empty),tt=s.tank?`/tank/${s.tank}/history`:"/timeline",b=()=>o.save(()=>({writes:He(v.value,s,{one:a,value:_,at:m,tank:p||void 0},ce),said:l("correct.saved",{what:I(s)}),to:tt}));return c`
    <${h} title=${l("correct.title")} up=${tt} aside=${c`<span class="soft">${I(s)}</span>`}
      act=${c`<button class="main" type="button" disabled=${!Z} onClick=${$(()=>{b()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:J(a).join("\xA0\xB7 ")||I(s),when:O(a.at,f.value)})}</p>
      ${r.length>1&&c`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${r.map((k,$t)=>c`<button key=${k.id} type="button" aria-pressed=${k===a}
          onClick=${$(()=>o.set({of:k.id,typed:null}))}>
          ${J(k).join(" ")||l("photo.numbered",{at:$t+1})}</button>`)}</div>`}
      <${Ae} form=${o} kind=${t} />
      ${y&&c`<div role="alert"><${Se} ...${y} /></div>`}
      <${Rn} kind=${t} record=${a} form=${o} />
      <${Ce} at=${m} was=${s.at}
        on_at=${k=>o.set({at:k})} />
      ${s.tank&&c`<${Oe} was=${s.tank} tank=${p} on_pick=${k=>o.set({tank:k})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function Pn(t,e,n){if(t.kind==="water_change"&&n){let i=Zt(n,Number(e??t.litres));return i&&{spec:Xt(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:o,unit:s}=t,r=ge({parameter:o,unit:s},C(o)),a=ye(r,Number(e));return a&&{spec:r,error:a}}function Cn({says:t},e,n){let o=n?.trim();return o===void 0||o===t(e).trim()?void 0:o}function En(t,e,{typed:n,keyed_in:o}){if(n===null||n==="")return;let s=t==="reading"&&(e.steps??[]).length>0,r=Number(s?n:at(Pt[t](e)).hold(Number(n),o).toPrecision(12));return r===e[L[t]]?void 0:r}function Rn({kind:t,record:e,form:n}){let{typed:o,keyed_in:s}=n.draft.value,r=Ct[t],a=Gt(zt(t).fields,L[t]),i=p=>n.set({typed:p,keyed_in:r?void 0:at(Pt[t](e)).unit}),m=t==="reading"?`${C(e.parameter)} ${rt(e.parameter,e.basis)}`.trim():a.label;return c`
    <section class="section"><h2>${m}</h2>
      <${jn} kind=${t} record=${e} said=${r?o??r.says(e):o}
        keyed_in=${s} spec=${a} on_say=${i} /></section>`}function jn({kind:t,record:e,said:n,keyed_in:o,spec:s,on_say:r}){if(t in Ct)return c`<div class="field"><textarea aria-label=${s.label} rows="5" maxlength=${s.max_length}
      value=${n} onInput=${ct(r)}></textarea></div>`;let a=t==="reading"?e.steps??[]:[];if(a.length===0){let{label:i,text:m}=at(Pt[t](e));return c`<${we} label=${s.label} unit=${i} value=${m(n,o)} on_value=${r} />`}return c`<div class="tiles steps" role="group" aria-label=${s.label}>
    ${a.map(i=>c`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${$(()=>r(String(i)))}>${x(i)}</button>`)}</div>`}var Et=40,Rt=Yt(null);function Tn({id:t}){let e=t?d("tank",t):null,n=N(Et),o=[...Object.keys(R),"task"].map(D),s=M(()=>j(v.value,{tank:t}),[t,...o]);if(t&&!e)return c`<${w} up="/" />`;let r=t?`/tank/${t}/history`:"/timeline",a=Le.filter(u=>s.some(_=>_.group===u)),i=a.includes(Rt.value??"")?Rt.value:null,m=i?s.filter(({group:u})=>u===i):s,p=u=>$(()=>{Rt.value=u,n.value=Et});return c`
    <${h} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&c`<span class="soft">${e.name}</span>`}>
      ${s.length===0&&c`<p class="sentence">${l("history.empty")}</p>`}
      ${a.length>1&&c`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${p(null)}>
          ${l("history.group.all")}</button>
        ${a.map(u=>c`<button key=${u} class="quiet" type="button" aria-pressed=${i===u}
          onClick=${p(u)}>${l(`history.group.${u}`)}</button>`)}
      </div>`}
      ${s.length>0&&c`<p class="ways">
        ${t&&c`<a href=${`/tank/${t}/month`}>${l("month.title")}</a>`}
        <a href=${t?`/tank/${t}/year`:"/year"}>${l("year.title")}</a></p>`}
      ${V(m.slice(0,n.value)).map(({day:u,events:_})=>c`
        <section class="section" key=${u}><h2>${U(u,f.value)}</h2>
          <ol class="lines">
            ${_.map(y=>c`<${An} key=${y.records[0].id} event=${y} here=${r}
            tank=${t?null:d("tank",y.tank??void 0)} />`)}</ol>
        </section>`)}
      ${m.length>n.value&&c`<p class="center section"><button class="quiet tall" type="button"
        onClick=${$(()=>n.value+=Et)}>${l("history.more")}</button></p>`}
    <//>`}function An({event:t,here:e,tank:n}){let{records:o}=t,[s]=o,r=s.meta.made_by===null?null:v.value.name_of(s.meta.made_by),a=o.map(({meta:b})=>b.state),i=a.includes("needs you")?"needs_you":a.every(b=>b==="shared")?"shared":"saved",m=o.every(({kind:b})=>v.value.may(b)),p=I(t),u=`${p}, ${U(Date.parse(t.at),f.value)} ${_t(t.at)}`,_=o.filter(({kind:b})=>b==="photo"),y=Ye(t),F=de(s),Z=t.kind in L?`/correct/${t.kind}/${s.id}`:F?he(s,ie(s.kind),e):null,tt=()=>lt(F?$e(v.value,s):Fe(t),l("saved.removed",{what:p}));return c`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&c`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${_t(t.at)}</time>${r&&` \xB7 ${r}`}</span></p>
        <div class="said">${z(t).map(b=>c`<span key=${b}>${b}</span>`)}</div>
        ${y.length>0&&c`<p class="soft small">${l("history.corrected",{before:y.join("\xA0\xB7 ")})}
          </p>`}
        ${Nt(o)&&t.tank&&c`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${qn} photos=${_} named=${u} />
        <span class="soft small row tight"><${it} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${m&&c`<div class="stack">
        ${Z&&c`<a class="quiet square" href=${Z}
          aria-label=${l("history.correct_named",{what:u})}><${it} name="note" size=${20} /></a>`}
        <button class="quiet square" type="button" aria-label=${l("remove_named",{what:u})}
          onClick=${$(()=>{tt()})}><${it} name="remove" size=${20} /></button>
      </div>`}
    </li>`}var qn=({photos:t,named:e})=>t.length>0&&c`<ul class="pictures small">${t.map((n,o)=>c`
    <li key=${n.id}><a href=${`/photo/${n.id}`}
      aria-label=${`${l("photo.numbered",{at:o+1})}, ${e}`}><${ut} photo=${n}
      said=${n.caption??""} /></a></li>`)}</ul>`;var Ge=[7,30,90,365],Q={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...Dt,temperature:"\xB0C",feed:"g",changed:"L"};function We(t,e,n){let o=e.now,s=new Date(o-(n-1)*864e5).setHours(0,0,0,0),r=p=>Date.parse(p.at)>=s&&Date.parse(p.at)<=o,a=e.changes.filter(r),i={what:t,unit:Q[t],from:s,to:o,marks:t==="changed"?[]:a.map(({at:p})=>Date.parse(p))};if(t==="feed"){let p=e.feedings.filter(r).map(u=>({at:Hn(Date.parse(u.at)),value:u.feed_g}));return{...i,points:Ie(p),bars:!0,step:864e5}}if(t==="changed"){let p=a.map(u=>({at:ze(Date.parse(u.at)),value:u.litres}));return{...i,points:p.length?Fn(Ie(p),ze(o)):[],bars:!0,step:7*864e5}}let m=e.readings.filter(p=>p.parameter===t&&r(p)).flatMap(p=>{let u=Ln(p);return u===void 0?[]:[{at:Date.parse(p.at),value:u}]});return{...i,points:m,bars:!1,step:0}}function Ln(t){return P(t.parameter)?It(t).value:t.parameter in Dt?ee(t):t.value}function Ue({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,o)=>n+o,0)/e.length}}function Be({what:t,points:e}){let n=e.map(({value:a})=>a),o=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,o>0?o*1.12:1];let s=Math.min(...n),r=Math.max((o-s)*.2,.5);return[s-r,o+r]}function Ie(t){let e=[];for(let{at:n,value:o}of t){let s=e.at(-1);s?.at===n?s.value+=o:e.push({at:n,value:o})}return e}function Fn(t,e){let n=[];for(let o=t[0].at;o<=e;o=Yn(o))n.push(t.find(s=>s.at===o)??{at:o,value:0});return n}var Hn=t=>new Date(t).setHours(0,0,0,0);function ze(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function Yn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var Ke=(t,e)=>({from:+new Date(t,e,1),to:+new Date(t,e+1,1)});function Ve(t,e){let n=/^(\d{4})-(0[1-9]|1[0-2])$/.exec(t??""),o=new Date(e);return n?{year:Number(n[1]),month:Number(n[2])-1}:{year:o.getFullYear(),month:o.getMonth()}}function Je(t,e,{from:n,to:o}){let s=zn(j(t,{tank:e}),n,o).reverse(),r=s.filter(({kind:u})=>u==="reading"),a=V(r).map(({day:u,events:_})=>({day:u,figures:In(_.flatMap(({records:y})=>y))})),i=s.flatMap(u=>u.records),m=(u,_)=>i.reduce((y,F)=>y+(F.kind===u?F[_]:0),0),p=u=>i.filter(_=>_.kind===u).length;return{parameters:Gn(i.flatMap(u=>u.kind==="reading"?[u.parameter]:[])),tested:a,done:V(s.filter(({kind:u})=>u!=="reading")),totals:{tests:r.length,changes:p("water_change"),litres:m("water_change","litres"),meals:p("feeding"),feed_g:m("feeding","feed_g"),doses:p("dose")}}}function In(t){let e={};for(let n of t)e[n.parameter]=[...e[n.parameter]??[],n];return e}var zn=(t,e,n)=>t.filter(({at:o})=>Date.parse(o)>=e&&Date.parse(o)<n);function Gn(t){let e=Object.keys(Q),n=o=>e.includes(o)?e.indexOf(o):e.length;return[...new Set(t)].sort((o,s)=>n(o)-n(s))}function Wn({id:t,query:e}){let n=d("tank",t),{year:o,month:s}=Ve(e.get("at"),f.value),r=Ke(o,s),a=Object.keys(R).map(D),i=M(()=>Je(v.value,t,r),[t,r.from,...a]);if(!n)return c`<${w} up="/" />`;let m=gt(r.from),p=i.tested.length+i.done.length===0;return c`
    <${h} title=${m} up=${`/tank/${t}/history`} aside=${c`<span class="soft">${n.name}</span>`}
      act=${!p&&c`<button class="main" type="button"
        onClick=${$(()=>{ft(`limnary-${Xe(r.from)}`)})}>${l("away.print")}</button>`}>
      <nav class="row not-printed" aria-label=${l("month.other")}>
        <${Qe} id=${t} at=${+new Date(o,s-1,1)} />
        ${r.to<=f.value&&c`<${Qe} id=${t} at=${r.to} />`}</nav>
      ${p?c`<p class="sentence">${l("month.none")}</p>`:c`<${Un} told=${i} />`}
    <//>`}function Xe(t){let e=new Date(t);return`${e.getFullYear()}-${String(e.getMonth()+1).padStart(2,"0")}`}var Qe=({id:t,at:e})=>c`<a class="quiet" href=${`/tank/${t}/month?at=${Xe(e)}`}>${gt(e)}</a>`;function Un({told:{parameters:t,tested:e,done:n,totals:o}}){let s=[o.tests>0&&l("month.tests",{count:o.tests}),o.changes>0&&l("month.changes",{count:o.changes,litres:A(o.litres)}),o.meals>0&&l("month.meals",{count:o.meals,amount:q(o.feed_g)}),o.doses>0&&l("month.doses",{count:o.doses})].filter(Boolean),r=Object.fromEntries(t.map(a=>[a,Bn(e,a)]));return c`
    <div class="wide month">
      ${s.length>0&&c`<p>${s.join("\xA0\xB7 ")}</p>`}
      ${e.length>0&&c`<section class="section"><h2 id="month-readings">${l("month.readings")}</h2>
        <div class="scrolled" role="region" aria-labelledby="month-readings" tabindex="0">
          <table class="measured by-day">
          <thead><tr><th scope="col">${l("month.day")}</th>${t.map(a=>c`<th key=${a} scope="col">${st(a)}${r[a]&&c`<br /><span class="soft small">${r[a]}</span>`}</th>`)}</tr></thead>
          <tbody>${e.map(({day:a,figures:i})=>c`<tr key=${a}><th scope="row">${yt(a)}</th>${t.map(m=>c`<td key=${m}>${(i[m]??[]).map(p=>Kn(p,r[m])).join(", ")}</td>`)}</tr>`)}</tbody></table></div></section>`}
      ${n.length>0&&c`<section class="section"><h2>${l("month.done")}</h2>
        <dl class="days">${n.map(({day:a,events:i})=>c`<div key=${a}><dt>${yt(a)}</dt><dd>${i.flatMap(z).filter(Boolean).join("\xA0\xB7 ")}</dd></div>`)}</dl></section>`}
    </div>`}function Bn(t,e){let n=new Set(t.flatMap(({figures:o})=>(o[e]??[]).map(s=>Ze(s).unit)));return n.size===1?[...n][0]:""}function Kn(t,e){let{value:n,unit:o}=Ze(t);return o===e?n:`${n} ${o}`}var Ze=t=>E(t);function Vn({id:t}){let e=d("photo",t);if(!e)return c`<${w} up="/" />`;let n=d("tank",e.tank),o=n?`/tank/${n.id}/history`:"/timeline",s=j(v.value,{group:"notes"}).find(({records:i})=>i.includes(e)),r=s?z(s):[],a=async()=>{await lt([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&pt(o,{replace:!0})};return c`
    <${h} title=${l("kind.photo")} up=${o} aside=${n&&c`<span class="soft">${n.name}</span>`}>
      <figure><${ut} photo=${e} said=${r.join(" ")} large />
        <figcaption>${r.map(i=>c`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:be(e.meta.made_by),when:O(e.at,f.value)})}
            </p></figcaption></figure>
      ${v.value.may("photo")&&c`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${$(()=>{a()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var Jn=["tank","incident","animals","plants","task","note","label","calculation"],Qn=["label","source_water","test_kit","own_species","own_plant"];function tn(t,e,n,o){let s=t.all("tank"),r=a=>s.find(i=>i.id===a)?.name??"";return[...s.map(({id:a,name:i,place:m,note:p})=>T("tank",i,m,`/tank/${a}`,[p])),...(s.length===0?[]:o.incidents??[]).map(({code:a,name:i,words:m})=>T("incident",i,"",`/incidents?what=${a}`,[m])),...s.flatMap(a=>Xn(t,a,n)),...t.all("note").map(a=>{let i=a.tank?`/tank/${a.tank}/history`:"/";return T("note",o.note(a),r(a.tank),i,[a.text],a.at)}),...t.all("task").map(a=>T("task",o.task(a),r(a.tank),`/task/${a.id}`,[a.title,a.note])),...Qn.flatMap(a=>t.all(a).map(({id:i,name:m,note:p})=>T("label",m,"",`/room/${a}/${i}`,[p]))),...Object.values(e).flatMap(a=>a?[T("calculation",a.title,a.purpose,en(a.name))]:[])]}function Xn(t,{id:e,name:n},o){let{animals:s}=Qt(xt(t.all("stock_change"),e),o),{growing:r}=_e(xt(t.all("planting"),e));return[...s.map(({species:a})=>T("animals",bt("species",a),n,`/tank/${e}/stock`,[a])),...r.map(({species:a})=>T("plants",bt("plants",a),n,`/tank/${e}/plants`,[a]))]}var T=(t,e,n="",o,s=[],r="")=>({kind:t,title:e,also:n,path:o,at:r,words:ot([e,n,...s].join(" "))}),en=t=>`/bench/${t}`;function nn(t,e,n){let o=ot(e).split(/\s+/).filter(Boolean);if(o.length===0)return[];let s=new Set(n(e).map(({name:m})=>en(m))),r=t.filter(m=>m.kind==="calculation"?s.has(m.path):o.every(p=>m.words.includes(p))),a=m=>{let p=ot(m.title);return p.startsWith(o.join(" "))?2:o.every(u=>p.includes(u))?1:0},i=[...r].sort((m,p)=>a(p)-a(m)||(m.at<p.at?1:m.at>p.at?-1:m.title.localeCompare(p.title)));return Jn.map(m=>({kind:m,found:i.filter(p=>p.kind===m)})).filter(m=>m.found.length>0)}var Zn=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],to=()=>({note:H,task:mt,incidents:me.map(t=>({code:t,name:pe(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),jt=12,on=140;function eo(){let t=ne("search",()=>""),e=M(()=>tn(S,ht(),f.peek(),to()),Zn.map(D)),n=r=>ke(ht(),r).flatMap(({entries:a})=>a),o=nn(e,t.value,n),s=o.reduce((r,{found:a})=>r+a.length,0);return c`
    <${h} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${ct(r=>t.value=r)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):s?l("search.found",{count:s}):l("search.nothing",{words:t.value.trim()})}</p>
      ${o.map(({kind:r,found:a})=>c`
        <section class="section" key=${r}><h2>${l(`search.group_${r}`)}</h2>
          <ul class="lines">${a.slice(0,jt).map(({path:i,title:m,also:p})=>c`
            <li key=${i+m}><a class="line" href=${i}><span class="grow"><b>${no(m)}</b>
              ${p&&c`<br /><span class="soft small">${p}</span>`}</span></a></li>`)}</ul>
          ${a.length>jt&&c`<p class="soft small">${l("life.more_rows",{count:a.length-jt})}
            </p>`}
        </section>`)}
    <//>`}var no=t=>t.length>on?`${t.slice(0,on).trimEnd()} \u2026`:t;var Tt="limnary-shared-photos";async function an(){if(typeof caches>"u"||!await caches.has(Tt))return[];let t=await caches.open(Tt),e=[...await t.keys()].sort((o,s)=>o.url<s.url?-1:1),n=await Promise.all(e.map(o=>t.match(o)));return Promise.all(n.flatMap(o=>o?[o.blob()]:[]))}var sn=()=>caches.delete(Tt);var oo=ve();function ao(){let t=N(null),e=N(!1),n=N("");et(()=>{an().then(r=>t.value=r)},[]);let o=async r=>{e.value=!0;try{for(let a of t.value??[])await oo.add(`note.${r}`,await je(a));await sn(),pt(`/tank/${r}/note`,{replace:!0})}catch(a){let i=a instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=l(i,{file:l("note.photos")}),e.value=!1}};if(!t.value)return null;let s=t.value.length>0;return c`
    <${h} title=${l("shared.title")} up="/">
      <p class="sentence">${l(s?"shared.which":"shared.none")}</p>
      <ul class="pictures">${t.value.map((r,a)=>c`<li key=${a}><${Ee} picture=${r} said=${l("photo.numbered",{at:a+1})} />
        </li>`)}</ul>
      <${Ne} text=${n.value} />
      <ul class="lines">${s&&K(S).map(({id:r,name:a})=>c`<li key=${r}><button class="line whole" type="button" disabled=${e.value}
          onClick=${$(()=>{o(r)})}><span class="grow"><b>${a}</b></span></button></li>`)}</ul>
    <//>`}var so=432e5;function rn({trend:t}){let e=Ht(null);return et(()=>{let n=e.current,o=()=>{},s=new IntersectionObserver(r=>{r.some(({isIntersecting:a})=>a)&&(s.disconnect(),o=ro(n,t))},{rootMargin:"200px"});return s.observe(n),()=>{s.disconnect(),o()}},[t]),c`<div class="chart" ref=${e} aria-hidden="true"></div>`}function ro(t,e){let{points:n,bars:o,step:s,marks:r,from:a,to:i}=e,m={marks:r.map(u=>({at:u,kind:"change"})),now:i,to:i},p=[n.map(({at:u})=>(u+s/2)/1e3),n.map(({value:u})=>u)];return De(t,u=>({scales:{x:{time:!0,range:[a/1e3,(i+Math.max(s/2,so))/1e3]},y:{range:Be(e)}},series:[{},o?{stroke:()=>Y("--action"),fill:()=>Y("--fan"),width:1.5,points:{show:!1},paths:u.paths.bars({size:[.7,40]})}:{stroke:()=>Y("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>Y("--action")}}],axes:Me(),hooks:{drawAxes:[_=>xe(_,m,Y)]}}),p)}var lo=30,At=60;function co({id:t}){let e=d("tank",t),n=N(lo),o=N(!1),s=Math.floor(f.value/36e5),r=M(()=>{if(!e)return[];let a=B(S,e,f.value);return Object.keys(Q).map(i=>mo(We(i,a,n.value),a)).filter(({points:i})=>i.length>0)},[e,n.value,s,Mt.value,...["reading","water_change","feeding"].map(D)]);return e?c`
    <${h} title=${l("trends.title")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${Ge.map(a=>c`<button key=${a} class="quiet" type="button"
          aria-pressed=${n.value===a} onClick=${$(()=>n.value=a)}>${l("trends.days",{count:a})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${$(()=>o.value=!o.value)}>${l("outlook.as_table")}</button>
      </div>
      ${r.length===0&&c`<p class="sentence section">${l("trends.none")}</p>`}
      <div class="wide side-by-side">${r.map(a=>c`<${po} key=${a.what} trend=${a} as_table=${o.value} />`)}</div>
    <//>`:c`<${w} up="/" />`}function mo(t,{readings:e}){let{what:n,unit:o,points:s}=t;if(P(n)){let a=nt({reading:e.findLast(({parameter:m})=>m===n)??null}),i=Kt(n,a);return{...t,unit:se(n,a),points:s.map(({at:m,value:p})=>({at:m,value:i(p)}))}}let r=Vt({name:"",unit:o},Mt.value);return{...t,unit:r,points:s.map(({at:a,value:i})=>({at:a,value:Jt(i,o,r)}))}}function po({trend:t,as_table:e}){let{what:n,unit:o}=t,s=`trend-${n}`,r=Ue(t);if(!r)return null;let a=m=>$o(n,m),i={last:a(r.last.value),when:O(r.last.at,f.value),low:a(r.low),high:a(r.high),mean:a(r.mean),count:r.count};return c`
    <section class="parameter" aria-labelledby=${s}>
      <h2 id=${s}>${ln(n)} <span class="unit">${wt(o)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?c`<${uo} trend=${t} said=${a} />`:c`<${rn} trend=${t} />`}
    </section>`}function uo({trend:{what:t,unit:e,points:n,bars:o,marks:s},said:r}){let a=[...n.map(({at:i,value:m})=>({at:i,label:o?U(i,f.value):O(i,f.value),value:r(m)})),...s.map(i=>({at:i,label:O(i,f.value),value:l("trends.changed")}))].sort((i,m)=>m.at-i.at);return c`
    <table class="measured"><caption class="unseen">${ln(t)} ${wt(e)}</caption>
      <tbody>${a.slice(0,At).map(({at:i,label:m,value:p},u)=>c`<tr key=${`${i}-${u}`}><th scope="row">
        ${m}</th><td>${p}</td></tr>`)}</tbody></table>
    ${a.length>At&&c`<p class="soft small">${l("trends.rows",{count:At,of:a.length})}</p>`}`}var fo={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},ln=t=>fo[t]?.()??C(t),$o=(t,e)=>P(t)?ae(e):t==="feed"?x(e,2):Bt(e,1);function ho({id:t}){let e=d("tank",t);return e?c`
    <${h} title=${l("water.short")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <${qe} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:c`<${w} up="/tanks" />`}var _o=["total_ammonia","nitrite","nitrate","ph","temperature"],qt=t=>({from:+new Date(t,0,1),to:+new Date(t+1,0,1)}),Lt=(t,e)=>/^\d{4}$/.test(t??"")?Number(t):new Date(e).getFullYear();function Ft(t,{from:e,to:n}){let o=({at:i})=>Date.parse(i)>=e&&Date.parse(i)<n,s=t.readings.filter(o),r=s.filter(i=>P(i.parameter)&&vt(i)).map(i=>vo(t,i)),a=r.filter(({mg_n_l:i,limit_mg_n_l:m})=>i>m);return{counts:yo(t,o,s),extremes:_o.flatMap(i=>ko(i,s)),worst:a.reduce((i,m)=>!i||cn(m)>cn(i)?m:i,null),over:new Set(a.map(({reading:i})=>X(i))).size,best:bo(r)}}function mn(t){let{refills:e,...n}=go;return t.reduce((o,s)=>Object.fromEntries(Object.entries(o).map(([r,a])=>[r,a+s[r]])),n)}var go={changes:0,litres:0,refills:0,tests:0,readings:0,meals:0,feed_g:0,doses:0,arrivals:0,births:0,deaths:0,removals:0};function yo(t,e,n){let o=t.changes.filter(e),s=t.feedings.filter(a=>e(a)&&a.feed_g>0),r=a=>dt(t.stock.filter(i=>e(i)&&i.change===a).map(({count:i})=>i));return{changes:o.length,litres:dt(o.map(({litres:a})=>a)),refills:dt(o.map(({fraction:a})=>a)),tests:new Set(n.map(X)).size,readings:n.length,meals:s.length,feed_g:dt(s.map(({feed_g:a})=>a)),doses:t.doses.filter(e).length,arrivals:r("arrival"),births:r("birth"),deaths:r("death"),removals:r("removal")}}var dt=t=>t.reduce((e,n)=>e+n,0),X=({test:t,at:e})=>t??e;function ko(t,e){let n=e.filter(r=>r.parameter===t&&(!P(t)||vt(r)));if(n.length===0)return[];let o=r=>P(t)?kt(r):r.value,s=r=>n.reduce((a,i)=>r*o(i)<r*o(a)?i:a);return[{parameter:t,low:s(1),high:s(-1)}]}function vo(t,e){let n=Date.parse(e.at),o=({at:p})=>Date.parse(p)<=n,s=t.readings.filter(p=>o(p)&&n-Date.parse(p.at)<=wo),[r,a]=[t.changes.filter(o),t.doses.filter(o)],i=te({...t,now:n,readings:s,changes:r,doses:a}),m=e.parameter;return{reading:e,mg_n_l:kt(e),limit_mg_n_l:i[m].mg_n_l}}var wo=14*864e5,cn=({mg_n_l:t,limit_mg_n_l:e})=>t/e;function bo(t){let e=[[]],n=new Set(t.filter(o=>o.mg_n_l>o.limit_mg_n_l).map(({reading:o})=>X(o)));for(let o of t)n.has(X(o.reading))?e[e.length-1].length&&e.push([]):e[e.length-1].push(o);return e.filter(o=>o.length>0).map(o=>{let[s,r]=[o[0],o[o.length-1]].map(({reading:i})=>Date.parse(i.at)),a=new Set(o.map(({reading:i})=>X(i))).size;return{from:s,to:r,days:Math.round((r-s)/864e5),tests:a}}).reduce((o,s)=>!o||s.days>o.days?s:o,null)}var pn=["reading","water_change","dose","feeding","stock_change","source_water","label"];function xo({id:t,query:e}){let n=d("tank",t),o=Lt(e.get("at"),f.value),s=M(()=>n&&Ft(B(S,n,f.value),qt(o)),[n,o,...pn.map(D)]);return!n||!s?c`<${w} up="/" />`:c`
    <${fn} year=${o} path=${`/tank/${t}/year`} up=${`/tank/${t}/history`} of=${n.name}>
      ${un(s.counts)?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year">
      <section class="section"><h2>${l("year.kept")}</h2><${So} told=${s} /></section>
      <${dn} counts=${s.counts} refills=${s.counts.refills} />
      <${$n} counts=${s.counts} />
      <${Po} extremes=${s.extremes} /></div>`}
    <//>`}function Do({query:t}){let e=Lt(t.get("at"),f.value),n=[...K(S),...K(S,{resting:!0})],s=M(()=>n.map(a=>({tank:a,...Ft(B(S,a,f.value),qt(e))})),[e,D("tank"),...pn.map(D)]).filter(({counts:a})=>!un(a)),r=mn(s.map(({counts:a})=>a));return c`
    <${fn} year=${e} path="/year" up="/timeline" of=${l("history.all_tanks")}>
      ${s.length===0?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year"><${dn} counts=${r} /><${$n} counts=${r} />
      <section class="section"><h2>${l("place.tanks")}</h2><ul class="lines">${s.map(({tank:a,counts:i,over:m})=>c`<li key=${a.id}><a class="line" href=${`/tank/${a.id}/year?at=${e}`}>
          <span><b>${a.name}</b><br /><span class="soft small">${Mo(i,m)}</span></span></a></li>`)}</ul></section></div>`}
    <//>`}var un=t=>Object.values(t).every(e=>e===0),Mo=(t,e)=>[l("month.tests",{count:t.tests}),e>0&&l("year.over",{count:e}),l("month.changes",{count:t.changes,litres:A(t.litres)}),t.deaths>0&&l("year.died",{count:t.deaths})].filter(Boolean).join("\xA0\xB7 "),fn=({year:t,path:e,up:n,of:o,children:s})=>c`
  <${h} title=${l("year.of",{year:String(t)})} up=${n} aside=${c`<span class="soft">${o}</span>`}
    act=${c`<button class="main" type="button" onClick=${$(()=>{ft(`limnary-${t}`)})}>
      ${l("away.print")}</button>`}>
    <nav class="row not-printed" aria-label=${l("year.other")}>
      <a class="quiet" href=${`${e}?at=${t-1}`}>${t-1}</a>
      ${t<new Date(f.value).getFullYear()&&c`<a class="quiet" href=${`${e}?at=${t+1}`}>${t+1}</a>`}</nav>
    ${s}
  <//>`,So=({told:{counts:t,over:e,best:n,worst:o}})=>c`
  <p class="sentence">${e>0?l("year.over_of",{count:e,total:t.tests}):l("year.over_none")}</p>
  ${n&&n.tests>1&&c`<p>${l("year.best",{from:W(n.from),to:W(n.to),tests:x(n.tests,0),count:n.days})}</p>`}
  ${o&&c`<p>${l("year.worst",{what:No(o.reading),day:W(o.reading.at),limit:Oo(o)})}</p>`}`;function Oo({reading:t,limit_mg_n_l:e}){let n=nt({reading:t});return`${oe(t.parameter,e,n)} ${rt(t.parameter,n)}`}function No(t){let{value:e,unit:n}=E(t);return`${C(t.parameter)} ${e} ${n}`.trim()}var dn=({counts:t,refills:e})=>c`
  <${hn} title=${l("month.done")} rows=${[[l("year.changes"),x(t.changes,0),[A(t.litres),e&&l("year.refills",{times:x(e,1)})]],[l("year.tests"),x(t.tests,0),[l("year.readings",{count:t.readings})]],[l("year.meals"),x(t.meals,0),[q(t.feed_g)]],[l("year.doses"),x(t.doses,0),[]]]} />`,$n=({counts:t})=>c`
  <${hn} title=${l("year.animals")} rows=${["arrivals","births","deaths","removals"].map(e=>[l(`year.${e}`),x(t[e],0),[]])} />`,hn=({title:t,rows:e})=>c`
  <section class="section"><h2>${t}</h2><table class="measured"><caption class="unseen">${t}</caption>
    <tbody>${e.map(([n,o,s])=>c`<tr key=${n}><th scope="row">${n}</th><td>${o}${s.filter(Boolean).map(r=>c`<span class="also" key=${r}>${r}</span>`)}</td></tr>`)}</tbody></table></section>`,Po=({extremes:t})=>t.length>0&&c`
  <section class="section"><h2>${l("year.low_high")}</h2><table class="measured"><caption class="unseen">
    ${l("year.low_high")}</caption>
    <thead><tr><td></td><th scope="col">${l("year.low")}</th><th scope="col">${l("year.high")}</th></tr></thead>
    <tbody>${t.map(({parameter:e,low:n,high:o})=>{let[s,r]=[E(n),E(o)],a=s.unit===r.unit,i=({value:m,unit:p},u)=>c`<td>${m} ${!a&&p}<span class="also">${W(u.at)}</span></td>`;return c`<tr key=${e}><th scope="row">${st(e)}${a&&s.unit&&c`<br /><span class="soft small">${s.unit}</span>`}</th>${i(s,n)}${i(r,o)}</tr>`})}</tbody></table></section>`;export{Nn as Correct,Tn as History,Wn as MonthPage,Vn as Photo,Do as RoomYear,eo as Search,ao as Shared,co as Trends,ho as Water,xo as YearPage};
//# sourceMappingURL=journal-TAQV4LXP.js.map
