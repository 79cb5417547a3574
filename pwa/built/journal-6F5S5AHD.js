import{$a as Ae,Ca as Pe,D as ye,Da as Ce,Ea as pt,Fa as Ne,G as ke,H as ve,J as we,Ja as Ee,L as be,N as xe,O as De,P as I,Sa as Re,Wa as ut,Ya as je,Za as Te,aa as Me,c as ue,g as fe,h as de,i as $e,j as he,k as _e,l as ge,ra as Se,va as Oe}from"./chunk-G5XCVV2Q.js";import{$b as v,C as l,Cb as Dt,D as Ut,Db as ot,Dd as mt,E as x,Ec as $,Fb as C,G as ht,Gb as at,H as O,Hb as st,Hd as h,Ib as N,K as _t,Kb as oe,L as gt,Lb as ae,Ld as w,M as W,Nb as T,Nc as lt,Qb as A,Qc as ce,Rb as se,S as U,V as Bt,X as L,Y as yt,Z as Kt,Za as B,Zc as me,_ as kt,_a as K,ac as f,b as et,ba as Vt,bb as nt,c as Lt,ca as vt,cc as re,d as M,da as Jt,dc as d,dd as H,e as Ht,ec as D,ed as pe,fa as Qt,fb as te,fc as ie,fd as ct,g as P,h as c,ha as wt,ic as S,nb as xt,oc as rt,pb as ee,sa as Xt,ta as Zt,yc as le,za as bt,zb as ne,zc as it}from"./chunk-BVTFX4IR.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-HUU73SPY.js";import{A as Wt,f as It,o as $t,r as Yt,t as zt,w as Gt}from"./chunk-DKQSE4J2.js";import"./chunk-M3MFIEEJ.js";var E={reading:"tests",water_change:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},hn=Object.keys(E),qe=[...new Set(Object.values(E))],q={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function R(t,{tank:e,group:o}={}){let n=kn(t);return hn.filter(r=>!o||E[r]===o).flatMap(r=>vn(t,r,n)).map(r=>bn(t,r)).filter(r=>!e||r.tank===e||_n(r)===e).sort((r,a)=>r.at<a.at?1:r.at>a.at?-1:0)}var _n=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function V(t){let e=[];for(let o of t){let n=new Date(o.at).setHours(0,0,0,0);e.at(-1)?.day!==n&&e.push({day:n,events:[]}),e.at(-1)?.events.push(o)}return e}var Fe=({records:t,earlier:e})=>[...t,...e].map(({kind:o,id:n})=>({type:"del",kind:o,id:n}));function Le(t,e,{one:o,value:n,at:s,tank:r},a){let i=a(),p=s!==void 0||r!==void 0||o.kind==="water_change";return e.records.filter(m=>p||m===o).map(m=>{let u={};return s!==void 0&&(u.at=ue(m.at,e.at,s)),r!==void 0&&(u.tank=r),m===o&&n!==void 0&&(u[q[m.kind]]=n===""?void 0:n),m===o&&m.kind==="note"&&n!==void 0&&Object.assign(u,{quick:void 0,incident:void 0,step:void 0}),m.kind==="water_change"&&Object.assign(u,gn(t,{...m,...u},m)),e.kind==="water_change"&&m.kind==="dose"&&(u.water_change=i),yn(m,m===o?i:a(),u)})}function gn(t,{litres:e,tank:o,from_tank:n},s){let{water_l:r}=t.get("tank",o),a=o===s.tank?s.fraction/s.litres:1/r;return{fraction:Math.min(1,a*Number(e)),...n===o?{from_tank:void 0}:{}}}function yn({id:t,kind:e,meta:o,...n},s,r){return{type:"put",kind:e,id:s,fields:{...n,...r,supersedes:t}}}function kn(t){let e=new Map;for(let{id:r,supersedes:a}of t.all("water_change")){e.set(r,r);for(let i of a?t.earlier("water_change",r):[])e.set(i.id,r)}let o=new Set(t.all("note").map(({entry:r})=>r)),n=St(t.all("dose"),({water_change:r})=>e.get(r??"")),s=St(t.all("photo"),({entry:r})=>r&&o.has(r)?r:void 0);return{doses:n.lists,apart:n.rest,photos:s.lists,loose:s.rest}}function St(t,e){let o=new Map,n=[];for(let s of t){let r=e(s);r===void 0?n.push(s):o.get(r)?.push(s)||o.set(r,[s])}return{lists:o,rest:n}}function vn(t,e,{doses:o,photos:n,apart:s,loose:r}){return e==="reading"?Mt(t.all(e),({test:a})=>a).map(a=>wn(t,a)):e==="water_change"?t.all(e).map(a=>[a,...o.get(a.id)??[]]):e==="dose"?s.map(a=>[a]):e==="note"?Mt(t.all(e),({entry:a})=>a).map(a=>[...[...a].sort((i,p)=>i.at<p.at?-1:i.at>p.at?1:i.id<p.id?-1:1),...n.get(a[0].entry??"")??[]]):e==="photo"?Mt(r,({entry:a})=>a):t.all(e).map(a=>[a])}var Mt=(t,e)=>[...St(t,o=>e(o)??o.id).lists.values()];function wn(t,e){let o=({kind:n,id:s,supersedes:r})=>(r?t.earlier(n,s).at(-1)?.id:null)??s;return[...e].sort((n,s)=>o(n)<o(s)?-1:1)}function bn(t,e){let[o]=e,n=o.kind==="task_done"?t.get("task",o.task)?.tank:o.tank,s=e.flatMap(({kind:r,id:a,supersedes:i})=>i?t.earlier(r,a):[]);return{at:o.at,tank:n??null,group:E[o.kind],kind:o.kind,records:e,earlier:s}}var Y=({kind:t,records:e=[]})=>Ot(e)?l("history.incident"):xn[t]?.()??l(`kind.${t}`),Ot=t=>t.some(({kind:e,incident:o})=>e==="note"&&o),xn={reading:()=>l("history.test"),water_change:()=>l("history.change"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},z=({records:t})=>t.flatMap(e=>[...J(e),...e.note?e.note.split(`
`):[]]);function He({at:t,tank:e,earlier:o}){let n=o.flatMap(s=>[...J(s),...s.at===t?[]:[O(s.at,f.value)],...!s.tank||s.tank===e?[]:[d("tank",s.tank)?.name??l("life.a_tank")]]);return[...new Set(n)]}function J(t){let e=t;return e.kind==="reading"?[Dn(e)]:e.kind==="water_change"?[l("history.changed",{litres:T(e.litres)})]:e.kind==="dose"?[`${se(e)} ${pe(e)}`]:e.kind==="feeding"?[Mn(e)]:e.kind==="note"?H(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[Sn(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:Wt(Gt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(o=>d("tank",o)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[Ee(e)]:[]}function Dn(t){let{value:e,unit:o}=N(t);return`${C(t.parameter)} ${e} ${o}`.trim()}function Mn({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:A(t),food:e}):l("history.fed",{amount:A(t)})}function Sn({task:t,skipped:e}){let o=d("task",t),n=o?ct(o):l("kind.task_done");return e?l("history.task_skipped",{title:n}):n}var Pt={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},Ct={note:{says:({text:t,quick:e})=>H({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function On({kind:t,id:e}){let o=`correct.${t}.${e}`,n=je({name:o,first:()=>({of:e,typed:null,tank:""})}),s=t in q&&v.value.may(t)&&ie(t,e)?R(v.value).find(({records:k})=>k.some(dt=>dt.id===e)):null;if(!s)return c`<${w} up="/" />`;let r=s.records.filter(k=>k.kind===t),a=r.find(k=>k.id===n.draft.value.of)??r[0],{typed:i,at:p,tank:m}=n.draft.value,u=Ct[t],_=u?Cn(u,a,i):Nn(t,a,n.draft.value),y=Pn(a,_,d("tank",m||a.tank)),Z=(_!==void 0||m!==""||p!==void 0&&p!==s.at)&&!y&&!Pe(p)&&!(i===""&&!u?.may_be_empty),tt=s.tank?`/tank/${s.tank}/history`:"/timeline",b=()=>n.save(()=>({writes:Le(v.value,s,{one:a,value:_,at:p,tank:m||void 0},le),said:l("correct.saved",{what:Y(s)}),to:tt}));return c`
    <${h} title=${l("correct.title")} up=${tt} aside=${c`<span class="soft">${Y(s)}</span>`}
      act=${c`<button class="main" type="button" disabled=${!Z} onClick=${$(()=>{b()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:J(a).join("\xA0\xB7 ")||Y(s),when:O(a.at,f.value)})}</p>
      ${r.length>1&&c`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${r.map((k,dt)=>c`<button key=${k.id} type="button" aria-pressed=${k===a}
          onClick=${$(()=>n.set({of:k.id,typed:null}))}>
          ${J(k).join(" ")||l("photo.numbered",{at:dt+1})}</button>`)}</div>`}
      <${Te} form=${n} kind=${t} />
      ${y&&c`<div role="alert"><${Me} ...${y} /></div>`}
      <${En} kind=${t} record=${a} form=${n} />
      <${Ce} at=${p} was=${s.at}
        on_at=${k=>n.set({at:k})} />
      ${s.tank&&c`<${Se} was=${s.tank} tank=${m} on_pick=${k=>n.set({tank:k})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function Pn(t,e,o){if(t.kind==="water_change"&&o){let i=Zt(o,Number(e??t.litres));return i&&{spec:Xt(o,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:n,unit:s}=t,r=_e({parameter:n,unit:s},C(n)),a=ge(r,Number(e));return a&&{spec:r,error:a}}function Cn({says:t},e,o){let n=o?.trim();return n===void 0||n===t(e).trim()?void 0:n}function Nn(t,e,{typed:o,keyed_in:n}){if(o===null||o==="")return;let s=t==="reading"&&(e.steps??[]).length>0,r=Number(s?o:ot(Pt[t](e)).hold(Number(o),n).toPrecision(12));return r===e[q[t]]?void 0:r}function En({kind:t,record:e,form:o}){let{typed:n,keyed_in:s}=o.draft.value,r=Ct[t],a=zt(Yt(t).fields,q[t]),i=m=>o.set({typed:m,keyed_in:r?void 0:ot(Pt[t](e)).unit}),p=t==="reading"?`${C(e.parameter)} ${st(e.parameter,e.basis)}`.trim():a.label;return c`
    <section class="section"><h2>${p}</h2>
      <${Rn} kind=${t} record=${e} said=${r?n??r.says(e):n}
        keyed_in=${s} spec=${a} on_say=${i} /></section>`}function Rn({kind:t,record:e,said:o,keyed_in:n,spec:s,on_say:r}){if(t in Ct)return c`<div class="field"><textarea aria-label=${s.label} rows="5" maxlength=${s.max_length}
      value=${o} onInput=${lt(r)}></textarea></div>`;let a=t==="reading"?e.steps??[]:[];if(a.length===0){let{label:i,text:p}=ot(Pt[t](e));return c`<${ve} label=${s.label} unit=${i} value=${p(o,n)} on_value=${r} />`}return c`<div class="tiles steps" role="group" aria-label=${s.label}>
    ${a.map(i=>c`<button type="button" key=${i}
      aria-pressed=${o===null?e.value===i:Number(o)===i}
      onClick=${$(()=>r(String(i)))}>${x(i)}</button>`)}</div>`}var Nt=40,Et=Ht(null);function jn({id:t}){let e=t?d("tank",t):null,o=P(Nt),n=[...Object.keys(E),"task"].map(D),s=M(()=>R(v.value,{tank:t}),[t,...n]);if(t&&!e)return c`<${w} up="/" />`;let r=t?`/tank/${t}/history`:"/timeline",a=qe.filter(u=>s.some(_=>_.group===u)),i=a.includes(Et.value??"")?Et.value:null,p=i?s.filter(({group:u})=>u===i):s,m=u=>$(()=>{Et.value=u,o.value=Nt});return c`
    <${h} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&c`<span class="soft">${e.name}</span>`}>
      ${s.length===0&&c`<p class="sentence">${l("history.empty")}</p>`}
      ${a.length>1&&c`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${m(null)}>
          ${l("history.group.all")}</button>
        ${a.map(u=>c`<button key=${u} class="quiet" type="button" aria-pressed=${i===u}
          onClick=${m(u)}>${l(`history.group.${u}`)}</button>`)}
      </div>`}
      ${s.length>0&&c`<p class="ways">
        ${t&&c`<a href=${`/tank/${t}/month`}>${l("month.title")}</a>`}
        <a href=${t?`/tank/${t}/year`:"/year"}>${l("year.title")}</a></p>`}
      ${V(p.slice(0,o.value)).map(({day:u,events:_})=>c`
        <section class="section" key=${u}><h2>${U(u,f.value)}</h2>
          <ol class="lines">
            ${_.map(y=>c`<${Tn} key=${y.records[0].id} event=${y} here=${r}
            tank=${t?null:d("tank",y.tank??void 0)} />`)}</ol>
        </section>`)}
      ${p.length>o.value&&c`<p class="center section"><button class="quiet tall" type="button"
        onClick=${$(()=>o.value+=Nt)}>${l("history.more")}</button></p>`}
    <//>`}function Tn({event:t,here:e,tank:o}){let{records:n}=t,[s]=n,r=s.meta.made_by===null?null:v.value.name_of(s.meta.made_by),a=n.map(({meta:b})=>b.state),i=a.includes("needs you")?"needs_you":a.every(b=>b==="shared")?"shared":"saved",p=n.every(({kind:b})=>v.value.may(b)),m=Y(t),u=`${m}, ${U(Date.parse(t.at),f.value)} ${ht(t.at)}`,_=n.filter(({kind:b})=>b==="photo"),y=He(t),F=fe(s),Z=t.kind in q?`/correct/${t.kind}/${s.id}`:F?$e(s,re(s.kind),e):null,tt=()=>it(F?de(v.value,s):Fe(t),l("saved.removed",{what:m}));return c`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${o&&c`<a class="of-tank" href=${`/tank/${o.id}`}>${o.name}</a> `}<span
          class="who"><time datetime=${t.at}>${ht(t.at)}</time>${r&&` \xB7 ${r}`}</span></p>
        <div class="said">${z(t).map(b=>c`<span key=${b}>${b}</span>`)}</div>
        ${y.length>0&&c`<p class="soft small">${l("history.corrected",{before:y.join("\xA0\xB7 ")})}
          </p>`}
        ${Ot(n)&&t.tank&&c`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${An} photos=${_} named=${u} />
        <span class="soft small row tight"><${rt} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${p&&c`<div class="stack">
        ${Z&&c`<a class="quiet square" href=${Z}
          aria-label=${l("history.correct_named",{what:u})}><${rt} name="note" size=${20} /></a>`}
        <button class="quiet square" type="button" aria-label=${l("remove_named",{what:u})}
          onClick=${$(()=>{tt()})}><${rt} name="remove" size=${20} /></button>
      </div>`}
    </li>`}var An=({photos:t,named:e})=>t.length>0&&c`<ul class="pictures small">${t.map((o,n)=>c`
    <li key=${o.id}><a href=${`/photo/${o.id}`}
      aria-label=${`${l("photo.numbered",{at:n+1})}, ${e}`}><${pt} photo=${o}
      said=${o.caption??""} /></a></li>`)}</ul>`;var ze=[7,30,90,365],Q={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...xt,temperature:"\xB0C",feed:"g",changed:"L"};function Ge(t,e,o){let n=e.now,s=new Date(n-(o-1)*864e5).setHours(0,0,0,0),r=m=>Date.parse(m.at)>=s&&Date.parse(m.at)<=n,a=e.changes.filter(r),i={what:t,unit:Q[t],from:s,to:n,marks:t==="changed"?[]:a.map(({at:m})=>Date.parse(m))};if(t==="feed"){let m=e.feedings.filter(r).map(u=>({at:Ln(Date.parse(u.at)),value:u.feed_g}));return{...i,points:Ie(m),bars:!0,step:864e5}}if(t==="changed"){let m=a.map(u=>({at:Ye(Date.parse(u.at)),value:u.litres}));return{...i,points:m.length?Fn(Ie(m),Ye(n)):[],bars:!0,step:7*864e5}}let p=e.readings.filter(m=>m.parameter===t&&r(m)).flatMap(m=>{let u=qn(m);return u===void 0?[]:[{at:Date.parse(m.at),value:u}]});return{...i,points:p,bars:!1,step:0}}function qn(t){return L(t.parameter)?It(t).value:t.parameter in xt?ee(t):t.value}function We({points:t}){if(t.length===0)return null;let e=t.map(({value:o})=>o);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((o,n)=>o+n,0)/e.length}}function Ue({what:t,points:e}){let o=e.map(({value:a})=>a),n=Math.max(...o);if(t!=="ph"&&t!=="temperature")return[0,n>0?n*1.12:1];let s=Math.min(...o),r=Math.max((n-s)*.2,.5);return[s-r,n+r]}function Ie(t){let e=[];for(let{at:o,value:n}of t){let s=e.at(-1);s?.at===o?s.value+=n:e.push({at:o,value:n})}return e}function Fn(t,e){let o=[];for(let n=t[0].at;n<=e;n=Hn(n))o.push(t.find(s=>s.at===n)??{at:n,value:0});return o}var Ln=t=>new Date(t).setHours(0,0,0,0);function Ye(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function Hn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var Be=(t,e)=>({from:+new Date(t,e,1),to:+new Date(t,e+1,1)});function Ke(t,e){let o=/^(\d{4})-(0[1-9]|1[0-2])$/.exec(t??""),n=new Date(e);return o?{year:Number(o[1]),month:Number(o[2])-1}:{year:n.getFullYear(),month:n.getMonth()}}function Ve(t,e,{from:o,to:n}){let s=Yn(R(t,{tank:e}),o,n).reverse(),r=s.filter(({kind:u})=>u==="reading"),a=V(r).map(({day:u,events:_})=>({day:u,figures:In(_.flatMap(({records:y})=>y))})),i=s.flatMap(u=>u.records),p=(u,_)=>i.reduce((y,F)=>y+(F.kind===u?F[_]:0),0),m=u=>i.filter(_=>_.kind===u).length;return{parameters:zn(i.flatMap(u=>u.kind==="reading"?[u.parameter]:[])),tested:a,done:V(s.filter(({kind:u})=>u!=="reading")),totals:{tests:r.length,changes:m("water_change"),litres:p("water_change","litres"),meals:m("feeding"),feed_g:p("feeding","feed_g"),doses:m("dose")}}}function In(t){let e={};for(let o of t)e[o.parameter]=[...e[o.parameter]??[],o];return e}var Yn=(t,e,o)=>t.filter(({at:n})=>Date.parse(n)>=e&&Date.parse(n)<o);function zn(t){let e=Object.keys(Q),o=n=>e.includes(n)?e.indexOf(n):e.length;return[...new Set(t)].sort((n,s)=>o(n)-o(s))}function Gn({id:t,query:e}){let o=d("tank",t),{year:n,month:s}=Ke(e.get("at"),f.value),r=Be(n,s),a=Object.keys(E).map(D),i=M(()=>Ve(v.value,t,r),[t,r.from,...a]);if(!o)return c`<${w} up="/" />`;let p=_t(r.from),m=i.tested.length+i.done.length===0;return c`
    <${h} title=${p} up=${`/tank/${t}/history`} aside=${c`<span class="soft">${o.name}</span>`}
      act=${!m&&c`<button class="main" type="button"
        onClick=${$(()=>{ut(`limnary-${Qe(r.from)}`)})}>${l("away.print")}</button>`}>
      <nav class="row not-printed" aria-label=${l("month.other")}>
        <${Je} id=${t} at=${+new Date(n,s-1,1)} />
        ${r.to<=f.value&&c`<${Je} id=${t} at=${r.to} />`}</nav>
      ${m?c`<p class="sentence">${l("month.none")}</p>`:c`<${Wn} told=${i} />`}
    <//>`}function Qe(t){let e=new Date(t);return`${e.getFullYear()}-${String(e.getMonth()+1).padStart(2,"0")}`}var Je=({id:t,at:e})=>c`<a class="quiet" href=${`/tank/${t}/month?at=${Qe(e)}`}>${_t(e)}</a>`;function Wn({told:{parameters:t,tested:e,done:o,totals:n}}){let s=[n.tests>0&&l("month.tests",{count:n.tests}),n.changes>0&&l("month.changes",{count:n.changes,litres:T(n.litres)}),n.meals>0&&l("month.meals",{count:n.meals,amount:A(n.feed_g)}),n.doses>0&&l("month.doses",{count:n.doses})].filter(Boolean),r=Object.fromEntries(t.map(a=>[a,Un(e,a)]));return c`
    <div class="wide month">
      ${s.length>0&&c`<p>${s.join("\xA0\xB7 ")}</p>`}
      ${e.length>0&&c`<section class="section"><h2 id="month-readings">${l("month.readings")}</h2>
        <div class="scrolled" role="region" aria-labelledby="month-readings" tabindex="0">
          <table class="measured by-day">
          <thead><tr><th scope="col">${l("month.day")}</th>${t.map(a=>c`<th key=${a} scope="col">${at(a)}${r[a]&&c`<br /><span class="soft small">${r[a]}</span>`}</th>`)}</tr></thead>
          <tbody>${e.map(({day:a,figures:i})=>c`<tr key=${a}><th scope="row">${gt(a)}</th>${t.map(p=>c`<td key=${p}>${(i[p]??[]).map(m=>Bn(m,r[p])).join(", ")}</td>`)}</tr>`)}</tbody></table></div></section>`}
      ${o.length>0&&c`<section class="section"><h2>${l("month.done")}</h2>
        <dl class="days">${o.map(({day:a,events:i})=>c`<div key=${a}><dt>${gt(a)}</dt><dd>${i.flatMap(z).filter(Boolean).join("\xA0\xB7 ")}</dd></div>`)}</dl></section>`}
    </div>`}function Un(t,e){let o=new Set(t.flatMap(({figures:n})=>(n[e]??[]).map(s=>Xe(s).unit)));return o.size===1?[...o][0]:""}function Bn(t,e){let{value:o,unit:n}=Xe(t);return n===e?o:`${o} ${n}`}var Xe=t=>N(t);function Kn({id:t}){let e=d("photo",t);if(!e)return c`<${w} up="/" />`;let o=d("tank",e.tank),n=o?`/tank/${o.id}/history`:"/timeline",s=R(v.value,{group:"notes"}).find(({records:i})=>i.includes(e)),r=s?z(s):[],a=async()=>{await it([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&mt(n,{replace:!0})};return c`
    <${h} title=${l("kind.photo")} up=${n} aside=${o&&c`<span class="soft">${o.name}</span>`}>
      <figure><${pt} photo=${e} said=${r.join(" ")} large />
        <figcaption>${r.map(i=>c`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:we(e.meta.made_by),when:O(e.at,f.value)})}
            </p></figcaption></figure>
      ${v.value.may("photo")&&c`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${$(()=>{a()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var Vn=["tank","incident","animals","plants","task","note","label","calculation"],Jn=["label","source_water","test_kit","own_species","own_plant"];function Ze(t,e,o,n){let s=t.all("tank"),r=a=>s.find(i=>i.id===a)?.name??"";return[...s.map(({id:a,name:i,place:p,note:m})=>j("tank",i,p,`/tank/${a}`,[m])),...(s.length===0?[]:n.incidents??[]).map(({code:a,name:i,words:p})=>j("incident",i,"",`/incidents?what=${a}`,[p])),...s.flatMap(a=>Qn(t,a,o)),...t.all("note").map(a=>{let i=a.tank?`/tank/${a.tank}/history`:"/";return j("note",n.note(a),r(a.tank),i,[a.text],a.at)}),...t.all("task").map(a=>j("task",n.task(a),r(a.tank),`/task/${a.id}`,[a.title,a.note])),...Jn.flatMap(a=>t.all(a).map(({id:i,name:p,note:m})=>j("label",p,"",`/room/${a}/${i}`,[m]))),...Object.values(e).flatMap(a=>a?[j("calculation",a.title,a.purpose,tn(a.name))]:[])]}function Qn(t,{id:e,name:o},n){let{animals:s}=Qt(bt(t.all("stock_change"),e),n),{growing:r}=he(bt(t.all("planting"),e));return[...s.map(({species:a})=>j("animals",wt("species",a),o,`/tank/${e}/stock`,[a])),...r.map(({species:a})=>j("plants",wt("plants",a),o,`/tank/${e}/plants`,[a]))]}var j=(t,e,o="",n,s=[],r="")=>({kind:t,title:e,also:o,path:n,at:r,words:nt([e,o,...s].join(" "))}),tn=t=>`/bench/${t}`;function en(t,e,o){let n=nt(e).split(/\s+/).filter(Boolean);if(n.length===0)return[];let s=new Set(o(e).map(({name:p})=>tn(p))),r=t.filter(p=>p.kind==="calculation"?s.has(p.path):n.every(m=>p.words.includes(m))),a=p=>{let m=nt(p.title);return m.startsWith(n.join(" "))?2:n.every(u=>m.includes(u))?1:0},i=[...r].sort((p,m)=>a(m)-a(p)||(p.at<m.at?1:p.at>m.at?-1:p.title.localeCompare(m.title)));return Vn.map(p=>({kind:p,found:i.filter(m=>m.kind===p)})).filter(p=>p.found.length>0)}var Xn=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],Zn=()=>({note:H,task:ct,incidents:ce.map(t=>({code:t,name:me(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),Rt=12,nn=140;function to(){let t=ne("search",()=>""),e=M(()=>Ze(S,$t(),f.peek(),Zn()),Xn.map(D)),o=r=>ye($t(),r).flatMap(({entries:a})=>a),n=en(e,t.value,o),s=n.reduce((r,{found:a})=>r+a.length,0);return c`
    <${h} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${lt(r=>t.value=r)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):s?l("search.found",{count:s}):l("search.nothing",{words:t.value.trim()})}</p>
      ${n.map(({kind:r,found:a})=>c`
        <section class="section" key=${r}><h2>${l(`search.group_${r}`)}</h2>
          <ul class="lines">${a.slice(0,Rt).map(({path:i,title:p,also:m})=>c`
            <li key=${i+p}><a class="line" href=${i}><span class="grow"><b>${eo(p)}</b>
              ${m&&c`<br /><span class="soft small">${m}</span>`}</span></a></li>`)}</ul>
          ${a.length>Rt&&c`<p class="soft small">${l("life.more_rows",{count:a.length-Rt})}
            </p>`}
        </section>`)}
    <//>`}var eo=t=>t.length>nn?`${t.slice(0,nn).trimEnd()} \u2026`:t;var jt="limnary-shared-photos";async function on(){if(typeof caches>"u"||!await caches.has(jt))return[];let t=await caches.open(jt),e=[...await t.keys()].sort((n,s)=>n.url<s.url?-1:1),o=await Promise.all(e.map(n=>t.match(n)));return Promise.all(o.flatMap(n=>n?[n.blob()]:[]))}var an=()=>caches.delete(jt);var no=ke();function oo(){let t=P(null),e=P(!1),o=P("");et(()=>{on().then(r=>t.value=r)},[]);let n=async r=>{e.value=!0;try{for(let a of t.value??[])await no.add(`note.${r}`,await Re(a));await an(),mt(`/tank/${r}/note`,{replace:!0})}catch(a){let i=a instanceof RangeError?"note.no_picture":"note.photos_not_kept";o.value=l(i,{file:l("note.photos")}),e.value=!1}};if(!t.value)return null;let s=t.value.length>0;return c`
    <${h} title=${l("shared.title")} up="/">
      <p class="sentence">${l(s?"shared.which":"shared.none")}</p>
      <ul class="pictures">${t.value.map((r,a)=>c`<li key=${a}><${Ne} picture=${r} said=${l("photo.numbered",{at:a+1})} />
        </li>`)}</ul>
      <${Oe} text=${o.value} />
      <ul class="lines">${s&&K(S).map(({id:r,name:a})=>c`<li key=${r}><button class="line whole" type="button" disabled=${e.value}
          onClick=${$(()=>{n(r)})}><span class="grow"><b>${a}</b></span></button></li>`)}</ul>
    <//>`}var ao=432e5;function sn({trend:t}){let e=Lt(null);return et(()=>{let o=e.current,n=()=>{},s=new IntersectionObserver(r=>{r.some(({isIntersecting:a})=>a)&&(s.disconnect(),n=so(o,t))},{rootMargin:"200px"});return s.observe(o),()=>{s.disconnect(),n()}},[t]),c`<div class="chart" ref=${e} aria-hidden="true"></div>`}function so(t,e){let{points:o,bars:n,step:s,marks:r,from:a,to:i}=e,p={marks:r.map(u=>({at:u,kind:"change"})),now:i,to:i},m=[o.map(({at:u})=>(u+s/2)/1e3),o.map(({value:u})=>u)];return xe(t,u=>({scales:{x:{time:!0,range:[a/1e3,(i+Math.max(s/2,ao))/1e3]},y:{range:Ue(e)}},series:[{},n?{stroke:()=>I("--action"),fill:()=>I("--fan"),width:1.5,points:{show:!1},paths:u.paths.bars({size:[.7,40]})}:{stroke:()=>I("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>I("--action")}}],axes:De(),hooks:{drawAxes:[_=>be(_,p,I)]}}),m)}var io=30,Tt=60;function lo({id:t}){let e=d("tank",t),o=P(io),n=P(!1),s=Math.floor(f.value/36e5),r=M(()=>{if(!e)return[];let a=B(S,e,f.value);return Object.keys(Q).map(i=>co(Ge(i,a,o.value))).filter(({points:i})=>i.length>0)},[e,o.value,s,Dt.value,...["reading","water_change","feeding"].map(D)]);return e?c`
    <${h} title=${l("trends.title")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${ze.map(a=>c`<button key=${a} class="quiet" type="button"
          aria-pressed=${o.value===a} onClick=${$(()=>o.value=a)}>${l("trends.days",{count:a})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${n.value}
          onClick=${$(()=>n.value=!n.value)}>${l("outlook.as_table")}</button>
      </div>
      ${r.length===0&&c`<p class="sentence section">${l("trends.none")}</p>`}
      <div class="wide side-by-side">${r.map(a=>c`<${mo} key=${a.what} trend=${a} as_table=${n.value} />`)}</div>
    <//>`:c`<${w} up="/" />`}function co(t){let{unit:e,points:o}=t,n=Vt({name:"",unit:e},Dt.value);return{...t,unit:n,points:o.map(({at:s,value:r})=>({at:s,value:Jt(r,e,n)}))}}function mo({trend:t,as_table:e}){let{what:o,unit:n}=t,s=`trend-${o}`,r=We(t);if(!r)return null;let a=p=>fo(o,p),i={last:a(r.last.value),when:O(r.last.at,f.value),low:a(r.low),high:a(r.high),mean:a(r.mean),count:r.count};return c`
    <section class="parameter" aria-labelledby=${s}>
      <h2 id=${s}>${rn(o)} <span class="unit">${vt(n)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${o}`:"trends.brief",i)}</p>
      ${e?c`<${po} trend=${t} said=${a} />`:c`<${sn} trend=${t} />`}
    </section>`}function po({trend:{what:t,unit:e,points:o,bars:n,marks:s},said:r}){let a=[...o.map(({at:i,value:p})=>({at:i,label:n?U(i,f.value):O(i,f.value),value:r(p)})),...s.map(i=>({at:i,label:O(i,f.value),value:l("trends.changed")}))].sort((i,p)=>p.at-i.at);return c`
    <table class="measured"><caption class="unseen">${rn(t)} ${vt(e)}</caption>
      <tbody>${a.slice(0,Tt).map(({at:i,label:p,value:m},u)=>c`<tr key=${`${i}-${u}`}><th scope="row">
        ${p}</th><td>${m}</td></tr>`)}</tbody></table>
    ${a.length>Tt&&c`<p class="soft small">${l("trends.rows",{count:Tt,of:a.length})}</p>`}`}var uo={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},rn=t=>uo[t]?.()??C(t),fo=(t,e)=>t in Bt?ae(e):t==="feed"?x(e,2):Ut(e,1);function $o({id:t}){let e=d("tank",t);return e?c`
    <${h} title=${l("water.short")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <${Ae} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:c`<${w} up="/tanks" />`}var ho=["total_ammonia","nitrite","nitrate","ph","temperature"],At=t=>({from:+new Date(t,0,1),to:+new Date(t+1,0,1)}),qt=(t,e)=>/^\d{4}$/.test(t??"")?Number(t):new Date(e).getFullYear();function Ft(t,{from:e,to:o}){let n=({at:i})=>Date.parse(i)>=e&&Date.parse(i)<o,s=t.readings.filter(n),r=s.filter(i=>L(i.parameter)&&kt(i)).map(i=>ko(t,i)),a=r.filter(({mg_n_l:i,limit_mg_n_l:p})=>i>p);return{counts:go(t,n,s),extremes:ho.flatMap(i=>yo(i,s)),worst:a.reduce((i,p)=>!i||ln(p)>ln(i)?p:i,null),over:new Set(a.map(({reading:i})=>X(i))).size,best:wo(r)}}function cn(t){let{refills:e,...o}=_o;return t.reduce((n,s)=>Object.fromEntries(Object.entries(n).map(([r,a])=>[r,a+s[r]])),o)}var _o={changes:0,litres:0,refills:0,tests:0,readings:0,meals:0,feed_g:0,doses:0,arrivals:0,births:0,deaths:0,removals:0};function go(t,e,o){let n=t.changes.filter(e),s=t.feedings.filter(a=>e(a)&&a.feed_g>0),r=a=>ft(t.stock.filter(i=>e(i)&&i.change===a).map(({count:i})=>i));return{changes:n.length,litres:ft(n.map(({litres:a})=>a)),refills:ft(n.map(({fraction:a})=>a)),tests:new Set(o.map(X)).size,readings:o.length,meals:s.length,feed_g:ft(s.map(({feed_g:a})=>a)),doses:t.doses.filter(e).length,arrivals:r("arrival"),births:r("birth"),deaths:r("death"),removals:r("removal")}}var ft=t=>t.reduce((e,o)=>e+o,0),X=({test:t,at:e})=>t??e;function yo(t,e){let o=e.filter(r=>r.parameter===t&&(!L(t)||kt(r)));if(o.length===0)return[];let n=r=>L(t)?yt(r):r.value,s=r=>o.reduce((a,i)=>r*n(i)<r*n(a)?i:a);return[{parameter:t,low:s(1),high:s(-1)}]}function ko(t,e){let o=Date.parse(e.at),n=({at:m})=>Date.parse(m)<=o,s=t.readings.filter(m=>n(m)&&o-Date.parse(m.at)<=vo),[r,a]=[t.changes.filter(n),t.doses.filter(n)],i=te({...t,now:o,readings:s,changes:r,doses:a}),p=e.parameter;return{reading:e,mg_n_l:yt(e),limit_mg_n_l:i[p].mg_n_l}}var vo=14*864e5,ln=({mg_n_l:t,limit_mg_n_l:e})=>t/e;function wo(t){let e=[[]],o=new Set(t.filter(n=>n.mg_n_l>n.limit_mg_n_l).map(({reading:n})=>X(n)));for(let n of t)o.has(X(n.reading))?e[e.length-1].length&&e.push([]):e[e.length-1].push(n);return e.filter(n=>n.length>0).map(n=>{let[s,r]=[n[0],n[n.length-1]].map(({reading:i})=>Date.parse(i.at)),a=new Set(n.map(({reading:i})=>X(i))).size;return{from:s,to:r,days:Math.round((r-s)/864e5),tests:a}}).reduce((n,s)=>!n||s.days>n.days?s:n,null)}var mn=["reading","water_change","dose","feeding","stock_change","source_water","label"];function bo({id:t,query:e}){let o=d("tank",t),n=qt(e.get("at"),f.value),s=M(()=>o&&Ft(B(S,o,f.value),At(n)),[o,n,...mn.map(D)]);return!o||!s?c`<${w} up="/" />`:c`
    <${un} year=${n} path=${`/tank/${t}/year`} up=${`/tank/${t}/history`} of=${o.name}>
      ${pn(s.counts)?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year">
      <section class="section"><h2>${l("year.kept")}</h2><${Mo} told=${s} /></section>
      <${fn} counts=${s.counts} refills=${s.counts.refills} />
      <${dn} counts=${s.counts} />
      <${Po} extremes=${s.extremes} /></div>`}
    <//>`}function xo({query:t}){let e=qt(t.get("at"),f.value),o=[...K(S),...K(S,{resting:!0})],s=M(()=>o.map(a=>({tank:a,...Ft(B(S,a,f.value),At(e))})),[e,D("tank"),...mn.map(D)]).filter(({counts:a})=>!pn(a)),r=cn(s.map(({counts:a})=>a));return c`
    <${un} year=${e} path="/year" up="/timeline" of=${l("history.all_tanks")}>
      ${s.length===0?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year"><${fn} counts=${r} /><${dn} counts=${r} />
      <section class="section"><h2>${l("place.tanks")}</h2><ul class="lines">${s.map(({tank:a,counts:i,over:p})=>c`<li key=${a.id}><a class="line" href=${`/tank/${a.id}/year?at=${e}`}>
          <span><b>${a.name}</b><br /><span class="soft small">${Do(i,p)}</span></span></a></li>`)}</ul></section></div>`}
    <//>`}var pn=t=>Object.values(t).every(e=>e===0),Do=(t,e)=>[l("month.tests",{count:t.tests}),e>0&&l("year.over",{count:e}),l("month.changes",{count:t.changes,litres:T(t.litres)}),t.deaths>0&&l("year.died",{count:t.deaths})].filter(Boolean).join("\xA0\xB7 "),un=({year:t,path:e,up:o,of:n,children:s})=>c`
  <${h} title=${l("year.of",{year:String(t)})} up=${o} aside=${c`<span class="soft">${n}</span>`}
    act=${c`<button class="main" type="button" onClick=${$(()=>{ut(`limnary-${t}`)})}>
      ${l("away.print")}</button>`}>
    <nav class="row not-printed" aria-label=${l("year.other")}>
      <a class="quiet" href=${`${e}?at=${t-1}`}>${t-1}</a>
      ${t<new Date(f.value).getFullYear()&&c`<a class="quiet" href=${`${e}?at=${t+1}`}>${t+1}</a>`}</nav>
    ${s}
  <//>`,Mo=({told:{counts:t,over:e,best:o,worst:n}})=>c`
  <p class="sentence">${e>0?l("year.over_of",{count:e,total:t.tests}):l("year.over_none")}</p>
  ${o&&o.tests>1&&c`<p>${l("year.best",{from:W(o.from),to:W(o.to),tests:x(o.tests,0),count:o.days})}</p>`}
  ${n&&c`<p>${l("year.worst",{what:Oo(n.reading),day:W(n.reading.at),limit:So(n)})}</p>`}`;function So({reading:t,limit_mg_n_l:e}){let o=Kt({reading:t});return`${oe(t.parameter,e,o)} ${st(t.parameter,o)}`}function Oo(t){let{value:e,unit:o}=N(t);return`${C(t.parameter)} ${e} ${o}`.trim()}var fn=({counts:t,refills:e})=>c`
  <${$n} title=${l("month.done")} rows=${[[l("year.changes"),x(t.changes,0),[T(t.litres),e&&l("year.refills",{times:x(e,1)})]],[l("year.tests"),x(t.tests,0),[l("year.readings",{count:t.readings})]],[l("year.meals"),x(t.meals,0),[A(t.feed_g)]],[l("year.doses"),x(t.doses,0),[]]]} />`,dn=({counts:t})=>c`
  <${$n} title=${l("year.animals")} rows=${["arrivals","births","deaths","removals"].map(e=>[l(`year.${e}`),x(t[e],0),[]])} />`,$n=({title:t,rows:e})=>c`
  <section class="section"><h2>${t}</h2><table class="measured"><caption class="unseen">${t}</caption>
    <tbody>${e.map(([o,n,s])=>c`<tr key=${o}><th scope="row">${o}</th><td>${n}${s.filter(Boolean).map(r=>c`<span class="also" key=${r}>${r}</span>`)}</td></tr>`)}</tbody></table></section>`,Po=({extremes:t})=>t.length>0&&c`
  <section class="section"><h2>${l("year.low_high")}</h2><table class="measured"><caption class="unseen">
    ${l("year.low_high")}</caption>
    <thead><tr><td></td><th scope="col">${l("year.low")}</th><th scope="col">${l("year.high")}</th></tr></thead>
    <tbody>${t.map(({parameter:e,low:o,high:n})=>{let[s,r]=[N(o),N(n)],a=s.unit===r.unit,i=({value:p,unit:m},u)=>c`<td>${p} ${!a&&m}<span class="also">${W(u.at)}</span></td>`;return c`<tr key=${e}><th scope="row">${at(e)}${a&&s.unit&&c`<br /><span class="soft small">${s.unit}</span>`}</th>${i(s,o)}${i(r,n)}</tr>`})}</tbody></table></section>`;export{On as Correct,jn as History,Gn as MonthPage,Kn as Photo,xo as RoomYear,to as Search,oo as Shared,lo as Trends,$o as Water,bo as YearPage};
//# sourceMappingURL=journal-6F5S5AHD.js.map
