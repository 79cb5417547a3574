import{Ca as Me,Da as Se,Db as Ie,Fa as Oe,Ha as Ce,I as xe,Ja as Ne,Ka as Pe,La as z,Mb as Le,Qb as $t,Sb as Fe,Tb as He,Vb as Ye,Ya as Ee,c as ft,d as X,e as _e,h as ge,l as Pt,lb as Re,m as ye,ma as De,n as ve,o as ke,p as we,pb as je,q as be,wb as Te,xb as qe,yb as dt,zb as Ae}from"./chunk-63OKULQF.js";import{$ as xt,Da as Ot,E as l,F as Jt,G as D,Gb as re,Gc as fe,Hc as ct,J as kt,Jb as Nt,K as P,Kb as rt,Ld as ut,M as Qt,Mb as R,Mc as $,N as wt,Nb as it,O as bt,Ob as lt,P as K,Pb as T,Pd as _,Rb as ie,Sb as le,Tb as ce,Td as w,Ub as q,V,Vc as mt,Xb as F,Yb as me,Yc as de,_ as E,aa as at,b as ot,ba as Xt,bb as J,c as Wt,ca as Dt,cb as Q,d as S,e as yt,fa as Zt,fb as st,fd as $e,g as O,ga as Mt,gc as k,h as c,ha as te,hc as f,ja as ee,jc as pe,kb as ae,kc as h,la as St,lc as M,ld as G,mc as ue,md as he,nd as pt,pc as C,tb as Ct,vb as se,wa as ne,wc as Y,xa as oe}from"./chunk-AQMFKDZO.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import{D as Kt,H as Vt,u as vt,x as Ut,z as Bt}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var A={reading:"tests",water_change:"water",tank:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},bn=Object.keys(A),Ge=[...new Set(Object.values(A))],H={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function I(t,{tank:e,group:n}={}){let o=Sn(t);return bn.filter(r=>!n||A[r]===n).flatMap(r=>On(t,r,o)).map(r=>Nn(t,r)).filter(r=>!e||r.tank===e||xn(r)===e).sort((r,a)=>r.at<a.at?1:r.at>a.at?-1:0)}var xn=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function Z(t){let e=[];for(let n of t){let o=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==o&&e.push({day:o,events:[]}),e.at(-1)?.events.push(n)}return e}var ze=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:o})=>({type:"del",kind:n,id:o}));function We(t,e,{one:n,value:o,at:s,tank:r},a){let i=a(),m=s!==void 0||r!==void 0||n.kind==="water_change";return e.records.filter(p=>m||p===n).map(p=>{let u={};return s!==void 0&&(u.at=_e(p.at,e.at,s)),r!==void 0&&(u.tank=r),p===n&&o!==void 0&&(u[H[p.kind]]=o===""?void 0:o),p===n&&p.kind==="note"&&o!==void 0&&Object.assign(u,{quick:void 0,incident:void 0,step:void 0}),p.kind==="water_change"&&Object.assign(u,Dn(t,{...p,...u},p)),e.kind==="water_change"&&p.kind==="dose"&&(u.water_change=i),Mn(p,p===n?i:a(),u)})}function Dn(t,{litres:e,tank:n,from_tank:o},s){let{water_l:r}=t.get("tank",n),a=n===s.tank?s.fraction/s.litres:1/r;return{fraction:Math.min(1,a*Number(e)),...o===n?{from_tank:void 0}:{}}}function Mn({id:t,kind:e,meta:n,...o},s,r){return{type:"put",kind:e,id:s,fields:{...o,...r,supersedes:t}}}function Sn(t){let e=new Map;for(let{id:r,supersedes:a}of t.all("water_change")){e.set(r,r);for(let i of a?t.earlier("water_change",r):[])e.set(i.id,r)}let n=new Set(t.all("note").map(({entry:r})=>r)),o=Rt(t.all("dose"),({water_change:r})=>e.get(r??"")),s=Rt(t.all("photo"),({entry:r})=>r&&n.has(r)?r:void 0);return{doses:o.lists,apart:o.rest,photos:s.lists,loose:s.rest}}function Rt(t,e){let n=new Map,o=[];for(let s of t){let r=e(s);r===void 0?o.push(s):n.get(r)?.push(s)||n.set(r,[s])}return{lists:n,rest:o}}function On(t,e,{doses:n,photos:o,apart:s,loose:r}){return e==="reading"?Et(t.all(e),({test:a})=>a).map(ge):e==="water_change"?t.all(e).map(a=>[a,...n.get(a.id)??[]]):e==="dose"?s.map(a=>[a]):e==="note"?Et(t.all(e),({entry:a})=>a).map(a=>[...[...a].sort((i,m)=>i.at<m.at?-1:i.at>m.at?1:i.id<m.id?-1:1),...o.get(a[0].entry??"")??[]]):e==="photo"?Et(r,({entry:a})=>a):e==="tank"?t.all(e).flatMap(a=>a.started_at?[[Cn(a,a.started_at)]]:[]):t.all(e).map(a=>[a])}var Cn=({id:t,kind:e,meta:n,water_l:o},s)=>({id:t,kind:e,meta:n,water_l:o,at:s,tank:t}),Et=(t,e)=>[...Rt(t,n=>e(n)??n.id).lists.values()];function Nn(t,e){let[n]=e,o=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,s=e.flatMap(({kind:r,id:a,supersedes:i})=>i?t.earlier(r,a):[]);return{at:n.at,tank:o??null,group:A[n.kind],kind:n.kind,records:e,earlier:s}}var W=({kind:t,records:e=[]})=>jt(e)?l("history.incident"):Pn[t]?.()??l(`kind.${t}`),jt=t=>t.some(({kind:e,incident:n})=>e==="note"&&n),Pn={reading:()=>l("history.test"),water_change:()=>l("history.change"),tank:()=>l("history.filling"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},U=({records:t})=>t.flatMap(e=>[...tt(e),...e.note?e.note.split(`
`):[]]);function Ue({at:t,tank:e,earlier:n}){let o=n.flatMap(s=>[...tt(s),...s.at===t?[]:[P(s.at,f.value)],...!s.tank||s.tank===e?[]:[h("tank",s.tank)?.name??l("life.a_tank")]]);return[...new Set(o)]}function tt(t){let e=t;return e.kind==="reading"?[En(e)]:e.kind==="water_change"?[l("history.changed",{litres:q(e.litres)})]:e.kind==="tank"?[l("history.filled",{litres:q(e.water_l)})]:e.kind==="dose"?[`${me(e)} ${he(e)}`]:e.kind==="feeding"?[Rn(e)]:e.kind==="note"?G(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[jn(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:Vt(Kt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>h("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[Ie(e)]:[]}function En(t){let{value:e,unit:n}=T(t);return`${R(t.parameter)} ${e} ${n}`.trim()}function Rn({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:F(t),food:e}):l("history.fed",{amount:F(t)})}function jn({task:t,skipped:e}){let n=h("task",t),o=n?pt(n):l("kind.task_done");return e?l("history.task_skipped",{title:o}):o}var Tt={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},qt={note:{says:({text:t,quick:e})=>G({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function Tn({kind:t,id:e}){let n=`correct.${t}.${e}`,o=Fe({name:n,first:()=>({of:e,typed:null,tank:""})}),s=t in H&&k.value.may(t)&&ue(t,e)?I(k.value).find(({records:v})=>v.some(gt=>gt.id===e)):null;if(!s)return c`<${w} up="/" />`;let r=s.records.filter(v=>v.kind===t),a=r.find(v=>v.id===o.draft.value.of)??r[0],{typed:i,at:m,tank:p}=o.draft.value,u=qt[t],y=u?An(u,a,i):In(t,a,o.draft.value),b=qn(a,y,h("tank",p||a.tank)),N=(y!==void 0||p!==""||m!==void 0&&m!==s.at)&&!b&&!Te(m)&&!(i===""&&!u?.may_be_empty),j=s.tank?`/tank/${s.tank}/history`:"/timeline",x=()=>o.save(()=>({writes:We(k.value,s,{one:a,value:y,at:m,tank:p||void 0},fe),said:l("correct.saved",{what:W(s)}),to:j}));return c`
    <${_} title=${l("correct.title")} up=${j} aside=${c`<span class="soft">${W(s)}</span>`}
      act=${c`<button class="main" type="button" disabled=${!N} onClick=${$(()=>{x()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:tt(a).join("\xA0\xB7 ")||W(s),when:P(a.at,f.value)})}</p>
      ${r.length>1&&c`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${r.map((v,gt)=>c`<button key=${v.id} type="button" aria-pressed=${v===a}
          onClick=${$(()=>o.set({of:v.id,typed:null}))}>
          ${tt(v).join(" ")||l("photo.numbered",{at:gt+1})}</button>`)}</div>`}
      <${He} form=${o} kind=${t} />
      ${b&&c`<div role="alert"><${Ee} ...${b} /></div>`}
      <${Ln} kind=${t} record=${a} form=${o} />
      <${qe} at=${m} was=${s.at}
        on_at=${v=>o.set({at:v})} />
      ${s.tank&&c`<${Re} was=${s.tank} tank=${p} on_pick=${v=>o.set({tank:v})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function qn(t,e,n){if(t.kind==="water_change"&&n){let i=oe(n,Number(e??t.litres));return i&&{spec:ne(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:o,unit:s}=t,r=we({parameter:o,unit:s},R(o)),a=be(r,Number(e));return a&&{spec:r,error:a}}function An({says:t},e,n){let o=n?.trim();return o===void 0||o===t(e).trim()?void 0:o}function In(t,e,{typed:n,keyed_in:o}){if(n===null||n==="")return;let s=t==="reading"&&(e.steps??[]).length>0,r=Number(s?n:rt(Tt[t](e)).hold(Number(n),o).toPrecision(12));return r===e[H[t]]?void 0:r}function Ln({kind:t,record:e,form:n}){let{typed:o,keyed_in:s}=n.draft.value,r=qt[t],a=Bt(Ut(t).fields,H[t]),i=p=>n.set({typed:p,keyed_in:r?void 0:rt(Tt[t](e)).unit}),m=t==="reading"?`${R(e.parameter)} ${lt(e.parameter,e.basis)}`.trim():a.label;return c`
    <section class="section"><h2>${m}</h2>
      <${Fn} kind=${t} record=${e} said=${r?o??r.says(e):o}
        keyed_in=${s} spec=${a} on_say=${i} /></section>`}function Fn({kind:t,record:e,said:n,keyed_in:o,spec:s,on_say:r}){if(t in qt)return c`<div class="field"><textarea aria-label=${s.label} rows="5" maxlength=${s.max_length}
      value=${n} onInput=${mt(r)}></textarea></div>`;let a=t==="reading"?e.steps??[]:[];if(a.length===0){let{label:i,text:m}=rt(Tt[t](e));return c`<${Se} label=${s.label} unit=${i} value=${m(n,o)} on_value=${r} />`}return c`<div class="tiles steps" role="group" aria-label=${s.label}>
    ${a.map(i=>c`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${$(()=>r(String(i)))}>${D(i)}</button>`)}</div>`}function Be({chosen:t,newest:e,on_day:n}){let o=t===null?null:X(t),s=O(!1),r=a=>{let{value:i,validity:m}=a.currentTarget;s.value=m.badInput||i!==""&&X(i)===null,s.value||n(i||null)};return c`
    <details class="more" open=${t!==null}>
      <summary>${l("history.go_to_day")}</summary>
      <div class="field"><label for="history-day">${l("history.day")}</label>
        <input id="history-day" type="date" max=${ft(f.value)} value=${t??""}
          aria-invalid=${s.value} onInput=${r} />
        <div aria-live="polite">${s.value&&c`<p class="wrong"><${Y} name="needs" size=${20} /><span>${l("history.no_day")}</span></p>`}</div></div>
    </details>
    <div role="status">${o!==null&&c`<p>${Hn(o-1,e)}</p>
      <p><button class="quiet" type="button" onClick=${$(()=>n(null))}>${l("history.newest")}</button></p>`}</div>`}function Hn(t,e){let n=Qt(t,f.value);if(!e)return l("history.none_until",{day:n});let o=ft(Date.parse(e.at))===ft(t);return l(o?"history.until":"history.none_on",{day:n})}var ht=40,At=yt(null),It=yt({here:"",day:null});function Yn({id:t}){let e=t?h("tank",t):null,n=O(ht),o=[...Object.keys(A),"task"].map(M),s=S(()=>I(k.value,{tank:t}),[t,...o]);if(t&&!e)return c`<${w} up="/" />`;let r=t?`/tank/${t}/history`:"/timeline",a=Ge.filter(d=>s.some(N=>N.group===d)),i=a.includes(At.value??"")?At.value:null,m=It.value.here===r?It.value.day:null,p=m&&X(m)||1/0,u=s.filter(({group:d,at:N})=>(!i||d===i)&&Date.parse(N)<p),y=d=>$(()=>{At.value=d,n.value=ht}),b=d=>{It.value={here:r,day:d},n.value=ht};return c`
    <${_} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&c`<span class="soft">${e.name}</span>`}>
      ${s.length===0&&c`<p class="sentence">${l("history.empty")}</p>`}
      ${a.length>1&&c`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${y(null)}>
          ${l("history.group.all")}</button>
        ${a.map(d=>c`<button key=${d} class="quiet" type="button" aria-pressed=${i===d}
          onClick=${y(d)}>${l(`history.group.${d}`)}</button>`)}
      </div>`}
      ${s.length>0&&c`<p class="ways">
        ${t&&c`<a href=${`/tank/${t}/month`}>${l("month.title")}</a>`}
        <a href=${t?`/tank/${t}/year`:"/year"}>${l("year.title")}</a></p>
        <${Be} chosen=${m} newest=${u[0]} on_day=${b} />`}
      ${Z(u.slice(0,n.value)).map(({day:d,events:N})=>c`
        <section class="section" key=${d}><h2>${V(d,f.value)}</h2>
          <ol class="lines">
            ${N.map(j=>c`<${Gn} key=${j.records[0].id} event=${j} here=${r}
            tank=${t?null:h("tank",j.tank??void 0)} />`)}</ol>
        </section>`)}
      ${u.length>n.value&&c`<p class="center section"><button class="quiet tall" type="button"
        onClick=${$(()=>n.value+=ht)}>${l("history.more")}</button></p>`}
    <//>`}function Gn({event:t,here:e,tank:n}){let{records:o}=t,[s]=o,r=s.meta.made_by===null?null:k.value.name_of(s.meta.made_by),a=o.map(({meta:x})=>x.state),i=a.includes("needs you")?"needs_you":a.every(x=>x==="shared")?"shared":"saved",m=o.every(({kind:x})=>k.value.may(x)),p=W(t),u=`${p}, ${V(Date.parse(t.at),f.value)} ${kt(t.at)}`,y=o.filter(({kind:x})=>x==="photo"),b=Ue(t),d=Pt(s),N=zn(t,e),j=()=>ct(d?ye(k.value,s):ze(t),l("saved.removed",{what:p}));return c`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&c`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${kt(t.at)}</time>${r&&` \xB7 ${r}`}</span></p>
        <div class="said">${U(t).map(x=>c`<span key=${x}>${x}</span>`)}</div>
        ${b.length>0&&c`<p class="soft small">${l("history.corrected",{before:b.join("\xA0\xB7 ")})}
          </p>`}
        ${jt(o)&&t.tank&&c`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${Wn} photos=${y} named=${u} />
        <span class="soft small row tight"><${Y} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${m&&c`<div class="stack">
        ${N&&c`<a class="quiet square" href=${N}
          aria-label=${l("history.correct_named",{what:u})}><${Y} name="note" size=${20} /></a>`}
        ${t.kind!=="tank"&&c`<button class="quiet square" type="button" aria-label=${l("remove_named",{what:u})}
          onClick=${$(()=>{j()})}><${Y} name="remove" size=${20} /></button>`}
      </div>`}
    </li>`}function zn({kind:t,records:[e]},n){return t==="tank"?`/tank/${e.id}/edit`:t in H?`/correct/${t}/${e.id}`:Pt(e)?ve(e,pe(e.kind),n):null}var Wn=({photos:t,named:e})=>t.length>0&&c`<ul class="pictures small">${t.map((n,o)=>c`
    <li key=${n.id}><a href=${`/photo/${n.id}`}
      aria-label=${`${l("photo.numbered",{at:o+1})}, ${e}`}><${dt} photo=${n}
      said=${n.caption??""} /></a></li>`)}</ul>`;var Je=[7,30,90,365],et={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...Ct,temperature:"\xB0C",feed:"g",changed:"L"};function Qe(t,e,n){let o=e.now,s=new Date(o-(n-1)*864e5).setHours(0,0,0,0),r=p=>Date.parse(p.at)>=s&&Date.parse(p.at)<=o,a=e.changes.filter(r),i={what:t,unit:et[t],from:s,to:o,marks:t==="changed"?[]:a.map(({at:p})=>Date.parse(p))};if(t==="feed"){let p=e.feedings.filter(r).map(u=>({at:Kn(Date.parse(u.at)),value:u.feed_g}));return{...i,points:Ke(p),bars:!0,step:864e5}}if(t==="changed"){let p=a.map(u=>({at:Ve(Date.parse(u.at)),value:u.litres}));return{...i,points:p.length?Bn(Ke(p),Ve(o)):[],bars:!0,step:7*864e5}}let m=e.readings.filter(p=>p.parameter===t&&r(p)).flatMap(p=>{let u=Un(p);return u===void 0?[]:[{at:Date.parse(p.at),value:u}]});return{...i,points:m,bars:!1,step:0}}function Un(t){return E(t.parameter)?De(t).value:t.parameter in Ct?se(t):t.value}function Xe({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,o)=>n+o,0)/e.length}}function Ze({what:t,points:e}){let n=e.map(({value:a})=>a),o=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,o>0?o*1.12:1];let s=Math.min(...n),r=Math.max((o-s)*.2,.5);return[s-r,o+r]}function Ke(t){let e=[];for(let{at:n,value:o}of t){let s=e.at(-1);s?.at===n?s.value+=o:e.push({at:n,value:o})}return e}function Bn(t,e){let n=[];for(let o=t[0].at;o<=e;o=Vn(o))n.push(t.find(s=>s.at===o)??{at:o,value:0});return n}var Kn=t=>new Date(t).setHours(0,0,0,0);function Ve(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function Vn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var tn=(t,e)=>({from:+new Date(t,e,1),to:+new Date(t,e+1,1)});function en(t,e){let n=/^(\d{4})-(0[1-9]|1[0-2])$/.exec(t??""),o=new Date(e);return n?{year:Number(n[1]),month:Number(n[2])-1}:{year:o.getFullYear(),month:o.getMonth()}}function nn(t,e,{from:n,to:o}){let s=Qn(I(t,{tank:e}),n,o).reverse(),r=s.filter(({kind:u})=>u==="reading"),a=Z(r).map(({day:u,events:y})=>({day:u,figures:Jn(y.flatMap(({records:b})=>b))})),i=s.flatMap(u=>u.records),m=(u,y)=>i.reduce((b,d)=>b+(d.kind===u?d[y]:0),0),p=u=>i.filter(y=>y.kind===u).length;return{parameters:Xn(i.flatMap(u=>u.kind==="reading"?[u.parameter]:[])),tested:a,done:Z(s.filter(({kind:u})=>u!=="reading")),totals:{tests:r.length,changes:p("water_change"),litres:m("water_change","litres"),meals:p("feeding"),feed_g:m("feeding","feed_g"),doses:p("dose")}}}function Jn(t){let e={};for(let n of t)e[n.parameter]=[...e[n.parameter]??[],n];return e}var Qn=(t,e,n)=>t.filter(({at:o})=>Date.parse(o)>=e&&Date.parse(o)<n);function Xn(t){let e=Object.keys(et),n=o=>e.includes(o)?e.indexOf(o):e.length;return[...new Set(t)].sort((o,s)=>n(o)-n(s))}function Zn({id:t,query:e}){let n=h("tank",t),{year:o,month:s}=en(e.get("at"),f.value),r=tn(o,s),a=Object.keys(A).map(M),i=S(()=>nn(k.value,t,r),[t,r.from,...a]);if(!n)return c`<${w} up="/" />`;let m=wt(r.from),p=i.tested.length+i.done.length===0;return c`
    <${_} title=${m} up=${`/tank/${t}/history`} aside=${c`<span class="soft">${n.name}</span>`}
      act=${!p&&c`<button class="main" type="button"
        onClick=${$(()=>{$t(`limnary-${an(r.from)}`)})}>${l("away.print")}</button>`}>
      <nav class="row not-printed" aria-label=${l("month.other")}>
        <${on} id=${t} at=${+new Date(o,s-1,1)} />
        ${r.to<=f.value&&c`<${on} id=${t} at=${r.to} />`}</nav>
      ${p?c`<p class="sentence">${l("month.none")}</p>`:c`<${to} told=${i} />`}
    <//>`}function an(t){let e=new Date(t);return`${e.getFullYear()}-${String(e.getMonth()+1).padStart(2,"0")}`}var on=({id:t,at:e})=>c`<a class="quiet" href=${`/tank/${t}/month?at=${an(e)}`}>${wt(e)}</a>`;function to({told:{parameters:t,tested:e,done:n,totals:o}}){let s=[o.tests>0&&l("month.tests",{count:o.tests}),o.changes>0&&l("month.changes",{count:o.changes,litres:q(o.litres)}),o.meals>0&&l("month.meals",{count:o.meals,amount:F(o.feed_g)}),o.doses>0&&l("month.doses",{count:o.doses})].filter(Boolean),r=Object.fromEntries(t.map(a=>[a,eo(e,a)]));return c`
    <div class="wide month">
      ${s.length>0&&c`<p>${s.join("\xA0\xB7 ")}</p>`}
      ${e.length>0&&c`<section class="section"><h2 id="month-readings">${l("month.readings")}</h2>
        <div class="scrolled" role="region" aria-labelledby="month-readings" tabindex="0">
          <table class="measured by-day">
          <thead><tr><th scope="col">${l("month.day")}</th>${t.map(a=>c`<th key=${a} scope="col">${it(a)}${r[a]&&c`<br /><span class="soft small">${r[a]}</span>`}</th>`)}</tr></thead>
          <tbody>${e.map(({day:a,figures:i})=>c`<tr key=${a}><th scope="row">${bt(a)}</th>${t.map(m=>c`<td key=${m}>${(i[m]??[]).map(p=>no(p,r[m])).join(", ")}</td>`)}</tr>`)}</tbody></table></div></section>`}
      ${n.length>0&&c`<section class="section"><h2>${l("month.done")}</h2>
        <dl class="days">${n.map(({day:a,events:i})=>c`<div key=${a}><dt>${bt(a)}</dt><dd>${i.flatMap(U).filter(Boolean).join("\xA0\xB7 ")}</dd></div>`)}</dl></section>`}
    </div>`}function eo(t,e){let n=new Set(t.flatMap(({figures:o})=>(o[e]??[]).map(s=>sn(s).unit)));return n.size===1?[...n][0]:""}function no(t,e){let{value:n,unit:o}=sn(t);return o===e?n:`${n} ${o}`}var sn=t=>T(t);function oo({id:t}){let e=h("photo",t);if(!e)return c`<${w} up="/" />`;let n=h("tank",e.tank),o=n?`/tank/${n.id}/history`:"/timeline",s=I(k.value,{group:"notes"}).find(({records:i})=>i.includes(e)),r=s?U(s):[],a=async()=>{await ct([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&ut(o,{replace:!0})};return c`
    <${_} title=${l("kind.photo")} up=${o} aside=${n&&c`<span class="soft">${n.name}</span>`}>
      <figure><${dt} photo=${e} said=${r.join(" ")} large />
        <figcaption>${r.map(i=>c`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:Oe(e.meta.made_by),when:P(e.at,f.value)})}
            </p></figcaption></figure>
      ${k.value.may("photo")&&c`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${$(()=>{a()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var ao=["tank","incident","animals","plants","task","note","label","calculation"],so=["label","source_water","test_kit","own_species","own_plant"];function rn(t,e,n,o){let s=t.all("tank"),r=a=>s.find(i=>i.id===a)?.name??"";return[...s.map(({id:a,name:i,place:m,note:p})=>L("tank",i,m,`/tank/${a}`,[p])),...(s.length===0?[]:o.incidents??[]).map(({code:a,name:i,words:m})=>L("incident",i,"",`/incidents?what=${a}`,[m])),...s.flatMap(a=>ro(t,a,n)),...t.all("note").map(a=>{let i=a.tank?`/tank/${a.tank}/history`:"/";return L("note",o.note(a),r(a.tank),i,[a.text],a.at)}),...t.all("task").map(a=>L("task",o.task(a),r(a.tank),`/task/${a.id}`,[a.title,a.note])),...so.flatMap(a=>t.all(a).map(({id:i,name:m,note:p})=>L("label",m,"",`/room/${a}/${i}`,[p]))),...Object.values(e).flatMap(a=>a?[L("calculation",a.title,a.purpose,ln(a.name))]:[])]}function ro(t,{id:e,name:n},o){let{animals:s}=ee(Ot(t.all("stock_change"),e),o),{growing:r}=ke(Ot(t.all("planting"),e));return[...s.map(({species:a})=>L("animals",St("species",a),n,`/tank/${e}/stock`,[a])),...r.map(({species:a})=>L("plants",St("plants",a),n,`/tank/${e}/plants`,[a]))]}var L=(t,e,n="",o,s=[],r="")=>({kind:t,title:e,also:n,path:o,at:r,words:st([e,n,...s].join(" "))}),ln=t=>`/bench/${t}`;function cn(t,e,n){let o=st(e).split(/\s+/).filter(Boolean);if(o.length===0)return[];let s=new Set(n(e).map(({name:m})=>ln(m))),r=t.filter(m=>m.kind==="calculation"?s.has(m.path):o.every(p=>m.words.includes(p))),a=m=>{let p=st(m.title);return p.startsWith(o.join(" "))?2:o.every(u=>p.includes(u))?1:0},i=[...r].sort((m,p)=>a(p)-a(m)||(m.at<p.at?1:m.at>p.at?-1:m.title.localeCompare(p.title)));return ao.map(m=>({kind:m,found:i.filter(p=>p.kind===m)})).filter(m=>m.found.length>0)}var io=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],lo=()=>({note:G,task:pt,incidents:de.map(t=>({code:t,name:$e(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),Lt=12,mn=140;function co(){let t=re("search",()=>""),e=S(()=>rn(C,vt(),f.peek(),lo()),io.map(M)),n=r=>xe(vt(),r).flatMap(({entries:a})=>a),o=cn(e,t.value,n),s=o.reduce((r,{found:a})=>r+a.length,0);return c`
    <${_} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${mt(r=>t.value=r)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):s?l("search.found",{count:s}):l("search.nothing",{words:t.value.trim()})}</p>
      ${o.map(({kind:r,found:a})=>c`
        <section class="section" key=${r}><h2>${l(`search.group_${r}`)}</h2>
          <ul class="lines">${a.slice(0,Lt).map(({path:i,title:m,also:p})=>c`
            <li key=${i+m}><a class="line" href=${i}><span class="grow"><b>${mo(m)}</b>
              ${p&&c`<br /><span class="soft small">${p}</span>`}</span></a></li>`)}</ul>
          ${a.length>Lt&&c`<p class="soft small">${l("life.more_rows",{count:a.length-Lt})}
            </p>`}
        </section>`)}
    <//>`}var mo=t=>t.length>mn?`${t.slice(0,mn).trimEnd()} \u2026`:t;var Ft="limnary-shared-photos";async function pn(){if(typeof caches>"u"||!await caches.has(Ft))return[];let t=await caches.open(Ft),e=[...await t.keys()].sort((o,s)=>o.url<s.url?-1:1),n=await Promise.all(e.map(o=>t.match(o)));return Promise.all(n.flatMap(o=>o?[o.blob()]:[]))}var un=()=>caches.delete(Ft);var po=Me();function uo(){let t=O(null),e=O(!1),n=O("");ot(()=>{pn().then(r=>t.value=r)},[]);let o=async r=>{e.value=!0;try{for(let a of t.value??[])await po.add(`note.${r}`,await Le(a));await un(),ut(`/tank/${r}/note`,{replace:!0})}catch(a){let i=a instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=l(i,{file:l("note.photos")}),e.value=!1}};if(!t.value)return null;let s=t.value.length>0;return c`
    <${_} title=${l("shared.title")} up="/">
      <p class="sentence">${l(s?"shared.which":"shared.none")}</p>
      <ul class="pictures">${t.value.map((r,a)=>c`<li key=${a}><${Ae} picture=${r} said=${l("photo.numbered",{at:a+1})} />
        </li>`)}</ul>
      <${je} text=${n.value} />
      <ul class="lines">${s&&Q(C).map(({id:r,name:a})=>c`<li key=${r}><button class="line whole" type="button" disabled=${e.value}
          onClick=${$(()=>{o(r)})}><span class="grow"><b>${a}</b></span></button></li>`)}</ul>
    <//>`}var fo=432e5;function fn({trend:t}){let e=Wt(null);return ot(()=>{let n=e.current,o=()=>{},s=new IntersectionObserver(r=>{r.some(({isIntersecting:a})=>a)&&(s.disconnect(),o=$o(n,t))},{rootMargin:"200px"});return s.observe(n),()=>{s.disconnect(),o()}},[t]),c`<div class="chart" ref=${e} aria-hidden="true"></div>`}function $o(t,e){let{points:n,bars:o,step:s,marks:r,from:a,to:i}=e,m={marks:r.map(u=>({at:u,kind:"change"})),now:i,to:i},p=[n.map(({at:u})=>(u+s/2)/1e3),n.map(({value:u})=>u)];return Ne(t,u=>({scales:{x:{time:!0,range:[a/1e3,(i+Math.max(s/2,fo))/1e3]},y:{range:Ze(e)}},series:[{},o?{stroke:()=>z("--action"),fill:()=>z("--fan"),width:1.5,points:{show:!1},paths:u.paths.bars({size:[.7,40]})}:{stroke:()=>z("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>z("--action")}}],axes:Pe(),hooks:{drawAxes:[y=>Ce(y,m,z)]}}),p)}var _o=30,Ht=60;function go({id:t}){let e=h("tank",t),n=O(_o),o=O(!1),s=Math.floor(f.value/36e5),r=S(()=>{if(!e)return[];let a=J(C,e,f.value);return Object.keys(et).map(i=>yo(Qe(i,a,n.value),a)).filter(({points:i})=>i.length>0)},[e,n.value,s,Nt.value,...["reading","water_change","feeding"].map(M)]);return e?c`
    <${_} title=${l("trends.title")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${Je.map(a=>c`<button key=${a} class="quiet" type="button"
          aria-pressed=${n.value===a} onClick=${$(()=>n.value=a)}>${l("trends.days",{count:a})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${$(()=>o.value=!o.value)}>${l("outlook.as_table")}</button>
      </div>
      ${r.length===0&&c`<p class="sentence section">${l("trends.none")}</p>`}
      <div class="wide side-by-side">${r.map(a=>c`<${vo} key=${a.what} trend=${a} as_table=${o.value} />`)}</div>
    <//>`:c`<${w} up="/" />`}function yo(t,{readings:e}){let{what:n,unit:o,points:s}=t;if(E(n)){let a=at({reading:e.findLast(({parameter:m})=>m===n)??null}),i=Xt(n,a);return{...t,unit:ce(n,a),points:s.map(({at:m,value:p})=>({at:m,value:i(p)}))}}let r=Zt({name:"",unit:o},Nt.value);return{...t,unit:r,points:s.map(({at:a,value:i})=>({at:a,value:te(i,o,r)}))}}function vo({trend:t,as_table:e}){let{what:n,unit:o}=t,s=`trend-${n}`,r=Xe(t);if(!r)return null;let a=m=>bo(n,m),i={last:a(r.last.value),when:P(r.last.at,f.value),low:a(r.low),high:a(r.high),mean:a(r.mean),count:r.count};return c`
    <section class="parameter" aria-labelledby=${s}>
      <h2 id=${s}>${dn(n)} <span class="unit">${Mt(o)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?c`<${ko} trend=${t} said=${a} />`:c`<${fn} trend=${t} />`}
    </section>`}function ko({trend:{what:t,unit:e,points:n,bars:o,marks:s},said:r}){let a=[...n.map(({at:i,value:m})=>({at:i,label:o?V(i,f.value):P(i,f.value),value:r(m)})),...s.map(i=>({at:i,label:P(i,f.value),value:l("trends.changed")}))].sort((i,m)=>m.at-i.at);return c`
    <table class="measured"><caption class="unseen">${dn(t)} ${Mt(e)}</caption>
      <tbody>${a.slice(0,Ht).map(({at:i,label:m,value:p},u)=>c`<tr key=${`${i}-${u}`}><th scope="row">
        ${m}</th><td>${p}</td></tr>`)}</tbody></table>
    ${a.length>Ht&&c`<p class="soft small">${l("trends.rows",{count:Ht,of:a.length})}</p>`}`}var wo={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},dn=t=>wo[t]?.()??R(t),bo=(t,e)=>E(t)?le(e):t==="feed"?D(e,2):Jt(e,1);function xo({id:t}){let e=h("tank",t);return e?c`
    <${_} title=${l("water.short")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <${Ye} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:c`<${w} up="/tanks" />`}var Do=["total_ammonia","nitrite","nitrate","ph","temperature"],Yt=t=>({from:+new Date(t,0,1),to:+new Date(t+1,0,1)}),Gt=(t,e)=>/^\d{4}$/.test(t??"")?Number(t):new Date(e).getFullYear();function zt(t,{from:e,to:n}){let o=({at:i})=>Date.parse(i)>=e&&Date.parse(i)<n,s=t.readings.filter(o),r=s.filter(i=>E(i.parameter)&&Dt(i)).map(i=>Co(t,i)),a=r.filter(({mg_n_l:i,limit_mg_n_l:m})=>i>m);return{counts:So(t,o,s),extremes:Do.flatMap(i=>Oo(i,s)),worst:a.reduce((i,m)=>!i||$n(m)>$n(i)?m:i,null),over:new Set(a.map(({reading:i})=>nt(i))).size,best:Po(r)}}function hn(t){let{refills:e,...n}=Mo;return t.reduce((o,s)=>Object.fromEntries(Object.entries(o).map(([r,a])=>[r,a+s[r]])),n)}var Mo={changes:0,litres:0,refills:0,tests:0,readings:0,meals:0,feed_g:0,doses:0,arrivals:0,births:0,deaths:0,removals:0};function So(t,e,n){let o=t.changes.filter(e),s=t.feedings.filter(a=>e(a)&&a.feed_g>0),r=a=>_t(t.stock.filter(i=>e(i)&&i.change===a).map(({count:i})=>i));return{changes:o.length,litres:_t(o.map(({litres:a})=>a)),refills:_t(o.map(({fraction:a})=>a)),tests:new Set(n.map(nt)).size,readings:n.length,meals:s.length,feed_g:_t(s.map(({feed_g:a})=>a)),doses:t.doses.filter(e).length,arrivals:r("arrival"),births:r("birth"),deaths:r("death"),removals:r("removal")}}var _t=t=>t.reduce((e,n)=>e+n,0),nt=({test:t,at:e})=>t??e;function Oo(t,e){let n=e.filter(r=>r.parameter===t&&(!E(t)||Dt(r)));if(n.length===0)return[];let o=r=>E(t)?xt(r):r.value,s=r=>n.reduce((a,i)=>r*o(i)<r*o(a)?i:a);return[{parameter:t,low:s(1),high:s(-1)}]}function Co(t,e){let n=Date.parse(e.at),o=({at:p})=>Date.parse(p)<=n,s=t.readings.filter(p=>o(p)&&n-Date.parse(p.at)<=No),[r,a]=[t.changes.filter(o),t.doses.filter(o)],i=ae({...t,now:n,readings:s,changes:r,doses:a}),m=e.parameter;return{reading:e,mg_n_l:xt(e),limit_mg_n_l:i[m].mg_n_l}}var No=14*864e5,$n=({mg_n_l:t,limit_mg_n_l:e})=>t/e;function Po(t){let e=[[]],n=new Set(t.filter(o=>o.mg_n_l>o.limit_mg_n_l).map(({reading:o})=>nt(o)));for(let o of t)n.has(nt(o.reading))?e[e.length-1].length&&e.push([]):e[e.length-1].push(o);return e.filter(o=>o.length>0).map(o=>{let[s,r]=[o[0],o[o.length-1]].map(({reading:i})=>Date.parse(i.at)),a=new Set(o.map(({reading:i})=>nt(i))).size;return{from:s,to:r,days:Math.round((r-s)/864e5),tests:a}}).reduce((o,s)=>!o||s.days>o.days?s:o,null)}var _n=["reading","water_change","dose","feeding","stock_change","source_water","label"];function Eo({id:t,query:e}){let n=h("tank",t),o=Gt(e.get("at"),f.value),s=S(()=>n&&zt(J(C,n,f.value),Yt(o)),[n,o,..._n.map(M)]);return!n||!s?c`<${w} up="/" />`:c`
    <${yn} year=${o} path=${`/tank/${t}/year`} up=${`/tank/${t}/history`} of=${n.name}>
      ${gn(s.counts)?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year">
      <section class="section"><h2>${l("year.kept")}</h2><${To} told=${s} /></section>
      <${vn} counts=${s.counts} refills=${s.counts.refills} />
      <${kn} counts=${s.counts} />
      <${Io} extremes=${s.extremes} /></div>`}
    <//>`}function Ro({query:t}){let e=Gt(t.get("at"),f.value),n=[...Q(C),...Q(C,{resting:!0})],s=S(()=>n.map(a=>({tank:a,...zt(J(C,a,f.value),Yt(e))})),[e,M("tank"),..._n.map(M)]).filter(({counts:a})=>!gn(a)),r=hn(s.map(({counts:a})=>a));return c`
    <${yn} year=${e} path="/year" up="/timeline" of=${l("history.all_tanks")}>
      ${s.length===0?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year"><${vn} counts=${r} /><${kn} counts=${r} />
      <section class="section"><h2>${l("place.tanks")}</h2><ul class="lines">${s.map(({tank:a,counts:i,over:m})=>c`<li key=${a.id}><a class="line" href=${`/tank/${a.id}/year?at=${e}`}>
          <span><b>${a.name}</b><br /><span class="soft small">${jo(i,m)}</span></span></a></li>`)}</ul></section></div>`}
    <//>`}var gn=t=>Object.values(t).every(e=>e===0),jo=(t,e)=>[l("month.tests",{count:t.tests}),e>0&&l("year.over",{count:e}),l("month.changes",{count:t.changes,litres:q(t.litres)}),t.deaths>0&&l("year.died",{count:t.deaths})].filter(Boolean).join("\xA0\xB7 "),yn=({year:t,path:e,up:n,of:o,children:s})=>c`
  <${_} title=${l("year.of",{year:String(t)})} up=${n} aside=${c`<span class="soft">${o}</span>`}
    act=${c`<button class="main" type="button" onClick=${$(()=>{$t(`limnary-${t}`)})}>
      ${l("away.print")}</button>`}>
    <nav class="row not-printed" aria-label=${l("year.other")}>
      <a class="quiet" href=${`${e}?at=${t-1}`}>${t-1}</a>
      ${t<new Date(f.value).getFullYear()&&c`<a class="quiet" href=${`${e}?at=${t+1}`}>${t+1}</a>`}</nav>
    ${s}
  <//>`,To=({told:{counts:t,over:e,best:n,worst:o}})=>c`
  <p class="sentence">${e>0?l("year.over_of",{count:e,total:t.tests}):l("year.over_none")}</p>
  ${n&&n.tests>1&&c`<p>${l("year.best",{from:K(n.from),to:K(n.to),tests:D(n.tests,0),count:n.days})}</p>`}
  ${o&&c`<p>${l("year.worst",{what:Ao(o.reading),day:K(o.reading.at),limit:qo(o)})}</p>`}`;function qo({reading:t,limit_mg_n_l:e}){let n=at({reading:t});return`${ie(t.parameter,e,n)} ${lt(t.parameter,n)}`}function Ao(t){let{value:e,unit:n}=T(t);return`${R(t.parameter)} ${e} ${n}`.trim()}var vn=({counts:t,refills:e})=>c`
  <${wn} title=${l("month.done")} rows=${[[l("year.changes"),D(t.changes,0),[q(t.litres),e&&l("year.refills",{times:D(e,1)})]],[l("year.tests"),D(t.tests,0),[l("year.readings",{count:t.readings})]],[l("year.meals"),D(t.meals,0),[F(t.feed_g)]],[l("year.doses"),D(t.doses,0),[]]]} />`,kn=({counts:t})=>c`
  <${wn} title=${l("year.animals")} rows=${["arrivals","births","deaths","removals"].map(e=>[l(`year.${e}`),D(t[e],0),[]])} />`,wn=({title:t,rows:e})=>c`
  <section class="section"><h2>${t}</h2><table class="measured"><caption class="unseen">${t}</caption>
    <tbody>${e.map(([n,o,s])=>c`<tr key=${n}><th scope="row">${n}</th><td>${o}${s.filter(Boolean).map(r=>c`<span class="also" key=${r}>${r}</span>`)}</td></tr>`)}</tbody></table></section>`,Io=({extremes:t})=>t.length>0&&c`
  <section class="section"><h2>${l("year.low_high")}</h2><table class="measured"><caption class="unseen">
    ${l("year.low_high")}</caption>
    <thead><tr><td></td><th scope="col">${l("year.low")}</th><th scope="col">${l("year.high")}</th></tr></thead>
    <tbody>${t.map(({parameter:e,low:n,high:o})=>{let[s,r]=[T(n),T(o)],a=s.unit===r.unit,i=({value:m,unit:p},u)=>c`<td>${m} ${!a&&p}<span class="also">${K(u.at)}</span></td>`;return c`<tr key=${e}><th scope="row">${it(e)}${a&&s.unit&&c`<br /><span class="soft small">${s.unit}</span>`}</th>${i(s,n)}${i(r,o)}</tr>`})}</tbody></table></section>`;export{Tn as Correct,Yn as History,Zn as MonthPage,oo as Photo,Ro as RoomYear,co as Search,uo as Shared,go as Trends,xo as Water,Eo as YearPage};
//# sourceMappingURL=journal-IHY25TRD.js.map
