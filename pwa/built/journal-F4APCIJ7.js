import{Aa as Se,Ab as Ie,Ca as Oe,Ea as Ce,F as xe,Ga as Ne,Ha as Pe,Ia as G,Jb as Fe,Nb as dt,Pb as Le,Qb as He,Sb as Ye,Va as Ee,c as ut,d as Q,e as ge,i as Nt,ib as Re,j as ye,ja as De,k as ve,l as ke,m as we,mb as je,n as be,tb as Te,ub as qe,vb as ft,wb as Ae,za as Me}from"./chunk-VO4XJGUN.js";import{c as fe}from"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{$a as f,A as ee,Aa as V,Ba as J,C as Mt,Db as $,Dc as k,Ea as at,Ja as ae,Mb as ct,N as ne,O as oe,Pb as $e,Yb as he,_a as v,aa as St,bb as pe,cb as h,cc as Y,db as D,dc as _e,eb as ue,ec as mt,hb as O,vc as pt,xb as de,yb as lt,zc as _}from"./chunk-74NNJKGA.js";import{$a as se,Ab as ce,Bb as T,Ca as K,Eb as F,Fa as Qt,Fb as me,Gb as H,H as yt,Ja as P,K as Wt,Ka as bt,La as ot,M as Ut,Ma as Xt,Na as xt,Q as Bt,T as Kt,Ua as Zt,Va as Dt,Wa as te,Za as Ot,d as nt,f as zt,g as M,i as gt,l as S,la as l,m as c,ma as Vt,na as x,nb as re,qa as vt,qb as Ct,ra as N,rb as st,ta as Jt,tb as E,ua as kt,ub as rt,va as wt,vb as it,wa as B,wb as j,yb as ie,zb as le}from"./chunk-NRUJ6FXV.js";var q={reading:"tests",water_change:"water",tank:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},bn=Object.keys(q),Ge=[...new Set(Object.values(q))],L={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function A(t,{tank:e,group:n}={}){let o=Sn(t);return bn.filter(r=>!n||q[r]===n).flatMap(r=>On(t,r,o)).map(r=>Nn(t,r)).filter(r=>!e||r.tank===e||xn(r)===e).sort((r,a)=>r.at<a.at?1:r.at>a.at?-1:0)}var xn=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function X(t){let e=[];for(let n of t){let o=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==o&&e.push({day:o,events:[]}),e.at(-1)?.events.push(n)}return e}var ze=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:o})=>({type:"del",kind:n,id:o}));function We(t,e,{one:n,value:o,at:s,tank:r},a){let i=a(),m=s!==void 0||r!==void 0||n.kind==="water_change";return e.records.filter(p=>m||p===n).map(p=>{let u={};return s!==void 0&&(u.at=ge(p.at,e.at,s)),r!==void 0&&(u.tank=r),p===n&&o!==void 0&&(u[L[p.kind]]=o===""?void 0:o),p===n&&p.kind==="note"&&o!==void 0&&Object.assign(u,{quick:void 0,incident:void 0,step:void 0}),p.kind==="water_change"&&Object.assign(u,Dn(t,{...p,...u},p)),e.kind==="water_change"&&p.kind==="dose"&&(u.water_change=i),Mn(p,p===n?i:a(),u)})}function Dn(t,{litres:e,tank:n,from_tank:o},s){let{water_l:r}=t.get("tank",n),a=n===s.tank?s.fraction/s.litres:1/r;return{fraction:Math.min(1,a*Number(e)),...o===n?{from_tank:void 0}:{}}}function Mn({id:t,kind:e,meta:n,...o},s,r){return{type:"put",kind:e,id:s,fields:{...o,...r,supersedes:t}}}function Sn(t){let e=new Map;for(let{id:r,supersedes:a}of t.all("water_change")){e.set(r,r);for(let i of a?t.earlier("water_change",r):[])e.set(i.id,r)}let n=new Set(t.all("note").map(({entry:r})=>r)),o=Et(t.all("dose"),({water_change:r})=>e.get(r??"")),s=Et(t.all("photo"),({entry:r})=>r&&n.has(r)?r:void 0);return{doses:o.lists,apart:o.rest,photos:s.lists,loose:s.rest}}function Et(t,e){let n=new Map,o=[];for(let s of t){let r=e(s);r===void 0?o.push(s):n.get(r)?.push(s)||n.set(r,[s])}return{lists:n,rest:o}}function On(t,e,{doses:n,photos:o,apart:s,loose:r}){return e==="reading"?Pt(t.all(e),({test:a})=>a).map(fe):e==="water_change"?t.all(e).map(a=>[a,...n.get(a.id)??[]]):e==="dose"?s.map(a=>[a]):e==="note"?Pt(t.all(e),({entry:a})=>a).map(a=>[...[...a].sort((i,m)=>i.at<m.at?-1:i.at>m.at?1:i.id<m.id?-1:1),...o.get(a[0].entry??"")??[]]):e==="photo"?Pt(r,({entry:a})=>a):e==="tank"?t.all(e).flatMap(a=>a.started_at?[[Cn(a,a.started_at)]]:[]):t.all(e).map(a=>[a])}var Cn=({id:t,kind:e,meta:n,water_l:o},s)=>({id:t,kind:e,meta:n,water_l:o,at:s,tank:t}),Pt=(t,e)=>[...Et(t,n=>e(n)??n.id).lists.values()];function Nn(t,e){let[n]=e,o=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,s=e.flatMap(({kind:r,id:a,supersedes:i})=>i?t.earlier(r,a):[]);return{at:n.at,tank:o??null,group:q[n.kind],kind:n.kind,records:e,earlier:s}}var z=({kind:t,records:e=[]})=>Rt(e)?l("history.incident"):Pn[t]?.()??l(`kind.${t}`),Rt=t=>t.some(({kind:e,incident:n})=>e==="note"&&n),Pn={reading:()=>l("history.test"),water_change:()=>l("history.change"),tank:()=>l("history.filling"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},W=({records:t})=>t.flatMap(e=>[...Z(e),...e.note?e.note.split(`
`):[]]);function Ue({at:t,tank:e,earlier:n}){let o=n.flatMap(s=>[...Z(s),...s.at===t?[]:[N(s.at,f.value)],...!s.tank||s.tank===e?[]:[h("tank",s.tank)?.name??l("life.a_tank")]]);return[...new Set(o)]}function Z(t){let e=t;return e.kind==="reading"?[En(e)]:e.kind==="water_change"?[l("history.changed",{litres:T(e.litres)})]:e.kind==="tank"?[l("history.filled",{litres:T(e.water_l)})]:e.kind==="dose"?[`${me(e)} ${_e(e)}`]:e.kind==="feeding"?[Rn(e)]:e.kind==="note"?Y(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[jn(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:Kt(Bt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>h("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[Ie(e)]:[]}function En(t){let{value:e,unit:n}=j(t);return`${E(t.parameter)} ${e} ${n}`.trim()}function Rn({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:F(t),food:e}):l("history.fed",{amount:F(t)})}function jn({task:t,skipped:e}){let n=h("task",t),o=n?mt(n):l("kind.task_done");return e?l("history.task_skipped",{title:o}):o}var jt={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},Tt={note:{says:({text:t,quick:e})=>Y({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function Tn({kind:t,id:e}){let n=`correct.${t}.${e}`,o=Le({name:n,first:()=>({of:e,typed:null,tank:""})}),s=t in L&&v.value.may(t)&&ue(t,e)?A(v.value).find(({records:y})=>y.some(_t=>_t.id===e)):null;if(!s)return c`<${k} up="/" />`;let r=s.records.filter(y=>y.kind===t),a=r.find(y=>y.id===o.draft.value.of)??r[0],{typed:i,at:m,tank:p}=o.draft.value,u=Tt[t],g=u?An(u,a,i):In(t,a,o.draft.value),w=qn(a,g,h("tank",p||a.tank)),C=(g!==void 0||p!==""||m!==void 0&&m!==s.at)&&!w&&!Te(m)&&!(i===""&&!u?.may_be_empty),R=s.tank?`/tank/${s.tank}/history`:"/timeline",b=()=>o.save(()=>({writes:We(v.value,s,{one:a,value:g,at:m,tank:p||void 0},de),said:l("correct.saved",{what:z(s)}),to:R}));return c`
    <${_} title=${l("correct.title")} up=${R} aside=${c`<span class="soft">${z(s)}</span>`}
      act=${c`<button class="main" type="button" disabled=${!C} onClick=${$(()=>{b()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:Z(a).join("\xA0\xB7 ")||z(s),when:N(a.at,f.value)})}</p>
      ${r.length>1&&c`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${r.map((y,_t)=>c`<button key=${y.id} type="button" aria-pressed=${y===a}
          onClick=${$(()=>o.set({of:y.id,typed:null}))}>
          ${Z(y).join(" ")||l("photo.numbered",{at:_t+1})}</button>`)}</div>`}
      <${He} form=${o} kind=${t} />
      ${w&&c`<div role="alert"><${Ee} ...${w} /></div>`}
      <${Fn} kind=${t} record=${a} form=${o} />
      <${qe} at=${m} was=${s.at}
        on_at=${y=>o.set({at:y})} />
      ${s.tank&&c`<${Re} was=${s.tank} tank=${p} on_pick=${y=>o.set({tank:y})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function qn(t,e,n){if(t.kind==="water_change"&&n){let i=oe(n,Number(e??t.litres));return i&&{spec:ne(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:o,unit:s}=t,r=we({parameter:o,unit:s},E(o)),a=be(r,Number(e));return a&&{spec:r,error:a}}function An({says:t},e,n){let o=n?.trim();return o===void 0||o===t(e).trim()?void 0:o}function In(t,e,{typed:n,keyed_in:o}){if(n===null||n==="")return;let s=t==="reading"&&(e.steps??[]).length>0,r=Number(s?n:st(jt[t](e)).hold(Number(n),o).toPrecision(12));return r===e[L[t]]?void 0:r}function Fn({kind:t,record:e,form:n}){let{typed:o,keyed_in:s}=n.draft.value,r=Tt[t],a=Ut(Wt(t).fields,L[t]),i=p=>n.set({typed:p,keyed_in:r?void 0:st(jt[t](e)).unit}),m=t==="reading"?`${E(e.parameter)} ${it(e.parameter,e.basis)}`.trim():a.label;return c`
    <section class="section"><h2>${m}</h2>
      <${Ln} kind=${t} record=${e} said=${r?o??r.says(e):o}
        keyed_in=${s} spec=${a} on_say=${i} /></section>`}function Ln({kind:t,record:e,said:n,keyed_in:o,spec:s,on_say:r}){if(t in Tt)return c`<div class="field"><textarea aria-label=${s.label} rows="5" maxlength=${s.max_length}
      value=${n} onInput=${ct(r)}></textarea></div>`;let a=t==="reading"?e.steps??[]:[];if(a.length===0){let{label:i,text:m}=st(jt[t](e));return c`<${Se} label=${s.label} unit=${i} value=${m(n,o)} on_value=${r} />`}return c`<div class="tiles steps" role="group" aria-label=${s.label}>
    ${a.map(i=>c`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${$(()=>r(String(i)))}>${x(i)}</button>`)}</div>`}function Be({chosen:t,newest:e,on_day:n}){let o=t===null?null:Q(t),s=S(!1),r=a=>{let{value:i,validity:m}=a.currentTarget;s.value=m.badInput||i!==""&&Q(i)===null,s.value||n(i||null)};return c`
    <details class="more" open=${t!==null}>
      <summary>${l("history.go_to_day")}</summary>
      <div class="field"><label for="history-day">${l("history.day")}</label>
        <input id="history-day" type="date" max=${ut(f.value)} value=${t??""}
          aria-invalid=${s.value} onInput=${r} />
        <div aria-live="polite">${s.value&&c`<p class="wrong"><${H} name="needs" size=${20} /><span>${l("history.no_day")}</span></p>`}</div></div>
    </details>
    <div role="status">${o!==null&&c`<p>${Hn(o-1,e)}</p>
      <p><button class="quiet" type="button" onClick=${$(()=>n(null))}>${l("history.newest")}</button></p>`}</div>`}function Hn(t,e){let n=Jt(t,f.value);if(!e)return l("history.none_until",{day:n});let o=ut(Date.parse(e.at))===ut(t);return l(o?"history.until":"history.none_on",{day:n})}var $t=40,qt=gt(null),At=gt({here:"",day:null});function Yn({id:t}){let e=t?h("tank",t):null,n=S($t),o=[...Object.keys(q),"task"].map(D),s=M(()=>A(v.value,{tank:t}),[t,...o]);if(t&&!e)return c`<${k} up="/" />`;let r=t?`/tank/${t}/history`:"/timeline",a=Ge.filter(d=>s.some(C=>C.group===d)),i=a.includes(qt.value??"")?qt.value:null,m=At.value.here===r?At.value.day:null,p=m&&Q(m)||1/0,u=s.filter(({group:d,at:C})=>(!i||d===i)&&Date.parse(C)<p),g=d=>$(()=>{qt.value=d,n.value=$t}),w=d=>{At.value={here:r,day:d},n.value=$t};return c`
    <${_} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&c`<span class="soft">${e.name}</span>`}>
      ${s.length===0&&c`<p class="sentence">${l("history.empty")}</p>`}
      ${a.length>1&&c`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${g(null)}>
          ${l("history.group.all")}</button>
        ${a.map(d=>c`<button key=${d} class="quiet" type="button" aria-pressed=${i===d}
          onClick=${g(d)}>${l(`history.group.${d}`)}</button>`)}
      </div>`}
      ${s.length>0&&c`<p class="ways">
        ${t&&c`<a href=${`/tank/${t}/month`}>${l("month.title")}</a>`}
        <a href=${t?`/tank/${t}/year`:"/year"}>${l("year.title")}</a></p>
        <${Be} chosen=${m} newest=${u[0]} on_day=${w} />`}
      ${X(u.slice(0,n.value)).map(({day:d,events:C})=>c`
        <section class="section" key=${d}><h2>${K(d,f.value)}</h2>
          <ol class="lines">
            ${C.map(R=>c`<${Gn} key=${R.records[0].id} event=${R} here=${r}
            tank=${t?null:h("tank",R.tank??void 0)} />`)}</ol>
        </section>`)}
      ${u.length>n.value&&c`<p class="center section"><button class="quiet tall" type="button"
        onClick=${$(()=>n.value+=$t)}>${l("history.more")}</button></p>`}
    <//>`}function Gn({event:t,here:e,tank:n}){let{records:o}=t,[s]=o,r=s.meta.made_by===null?null:v.value.name_of(s.meta.made_by),a=o.map(({meta:b})=>b.state),i=a.includes("needs you")?"needs_you":a.every(b=>b==="shared")?"shared":"saved",m=o.every(({kind:b})=>v.value.may(b)),p=z(t),u=`${p}, ${K(Date.parse(t.at),f.value)} ${vt(t.at)}`,g=o.filter(({kind:b})=>b==="photo"),w=Ue(t),d=Nt(s),C=zn(t,e),R=()=>lt(d?ye(v.value,s):ze(t),l("saved.removed",{what:p}));return c`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&c`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${vt(t.at)}</time>${r&&` \xB7 ${r}`}</span></p>
        <div class="said">${W(t).map(b=>c`<span key=${b}>${b}</span>`)}</div>
        ${w.length>0&&c`<p class="soft small">${l("history.corrected",{before:w.join("\xA0\xB7 ")})}
          </p>`}
        ${Rt(o)&&t.tank&&c`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${Wn} photos=${g} named=${u} />
        <span class="soft small row tight"><${H} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${m&&c`<div class="stack">
        ${C&&c`<a class="quiet square" href=${C}
          aria-label=${l("history.correct_named",{what:u})}><${H} name="note" size=${20} /></a>`}
        ${t.kind!=="tank"&&c`<button class="quiet square" type="button" aria-label=${l("remove_named",{what:u})}
          onClick=${$(()=>{R()})}><${H} name="remove" size=${20} /></button>`}
      </div>`}
    </li>`}function zn({kind:t,records:[e]},n){return t==="tank"?`/tank/${e.id}/edit`:t in L?`/correct/${t}/${e.id}`:Nt(e)?ve(e,pe(e.kind),n):null}var Wn=({photos:t,named:e})=>t.length>0&&c`<ul class="pictures small">${t.map((n,o)=>c`
    <li key=${n.id}><a href=${`/photo/${n.id}`}
      aria-label=${`${l("photo.numbered",{at:o+1})}, ${e}`}><${ft} photo=${n}
      said=${n.caption??""} /></a></li>`)}</ul>`;var Je=[7,30,90,365],tt={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...Ot,temperature:"\xB0C",feed:"g",changed:"L"};function Qe(t,e,n){let o=e.now,s=new Date(o-(n-1)*864e5).setHours(0,0,0,0),r=p=>Date.parse(p.at)>=s&&Date.parse(p.at)<=o,a=e.changes.filter(r),i={what:t,unit:tt[t],from:s,to:o,marks:t==="changed"?[]:a.map(({at:p})=>Date.parse(p))};if(t==="feed"){let p=e.feedings.filter(r).map(u=>({at:Kn(Date.parse(u.at)),value:u.feed_g}));return{...i,points:Ke(p),bars:!0,step:864e5}}if(t==="changed"){let p=a.map(u=>({at:Ve(Date.parse(u.at)),value:u.litres}));return{...i,points:p.length?Bn(Ke(p),Ve(o)):[],bars:!0,step:7*864e5}}let m=e.readings.filter(p=>p.parameter===t&&r(p)).flatMap(p=>{let u=Un(p);return u===void 0?[]:[{at:Date.parse(p.at),value:u}]});return{...i,points:m,bars:!1,step:0}}function Un(t){return P(t.parameter)?De(t).value:t.parameter in Ot?se(t):t.value}function Xe({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,o)=>n+o,0)/e.length}}function Ze({what:t,points:e}){let n=e.map(({value:a})=>a),o=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,o>0?o*1.12:1];let s=Math.min(...n),r=Math.max((o-s)*.2,.5);return[s-r,o+r]}function Ke(t){let e=[];for(let{at:n,value:o}of t){let s=e.at(-1);s?.at===n?s.value+=o:e.push({at:n,value:o})}return e}function Bn(t,e){let n=[];for(let o=t[0].at;o<=e;o=Vn(o))n.push(t.find(s=>s.at===o)??{at:o,value:0});return n}var Kn=t=>new Date(t).setHours(0,0,0,0);function Ve(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function Vn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var tn=(t,e)=>({from:+new Date(t,e,1),to:+new Date(t,e+1,1)});function en(t,e){let n=/^(\d{4})-(0[1-9]|1[0-2])$/.exec(t??""),o=new Date(e);return n?{year:Number(n[1]),month:Number(n[2])-1}:{year:o.getFullYear(),month:o.getMonth()}}function nn(t,e,{from:n,to:o}){let s=Qn(A(t,{tank:e}),n,o).reverse(),r=s.filter(({kind:u})=>u==="reading"),a=X(r).map(({day:u,events:g})=>({day:u,figures:Jn(g.flatMap(({records:w})=>w))})),i=s.flatMap(u=>u.records),m=(u,g)=>i.reduce((w,d)=>w+(d.kind===u?d[g]:0),0),p=u=>i.filter(g=>g.kind===u).length;return{parameters:Xn(i.flatMap(u=>u.kind==="reading"?[u.parameter]:[])),tested:a,done:X(s.filter(({kind:u})=>u!=="reading")),totals:{tests:r.length,changes:p("water_change"),litres:m("water_change","litres"),meals:p("feeding"),feed_g:m("feeding","feed_g"),doses:p("dose")}}}function Jn(t){let e={};for(let n of t)e[n.parameter]=[...e[n.parameter]??[],n];return e}var Qn=(t,e,n)=>t.filter(({at:o})=>Date.parse(o)>=e&&Date.parse(o)<n);function Xn(t){let e=Object.keys(tt),n=o=>e.includes(o)?e.indexOf(o):e.length;return[...new Set(t)].sort((o,s)=>n(o)-n(s))}function Zn({id:t,query:e}){let n=h("tank",t),{year:o,month:s}=en(e.get("at"),f.value),r=tn(o,s),a=Object.keys(q).map(D),i=M(()=>nn(v.value,t,r),[t,r.from,...a]);if(!n)return c`<${k} up="/" />`;let m=kt(r.from),p=i.tested.length+i.done.length===0;return c`
    <${_} title=${m} up=${`/tank/${t}/history`} aside=${c`<span class="soft">${n.name}</span>`}
      act=${!p&&c`<button class="main" type="button"
        onClick=${$(()=>{dt(`limnary-${an(r.from)}`)})}>${l("away.print")}</button>`}>
      <nav class="row not-printed" aria-label=${l("month.other")}>
        <${on} id=${t} at=${+new Date(o,s-1,1)} />
        ${r.to<=f.value&&c`<${on} id=${t} at=${r.to} />`}</nav>
      ${p?c`<p class="sentence">${l("month.none")}</p>`:c`<${to} told=${i} />`}
    <//>`}function an(t){let e=new Date(t);return`${e.getFullYear()}-${String(e.getMonth()+1).padStart(2,"0")}`}var on=({id:t,at:e})=>c`<a class="quiet" href=${`/tank/${t}/month?at=${an(e)}`}>${kt(e)}</a>`;function to({told:{parameters:t,tested:e,done:n,totals:o}}){let s=[o.tests>0&&l("month.tests",{count:o.tests}),o.changes>0&&l("month.changes",{count:o.changes,litres:T(o.litres)}),o.meals>0&&l("month.meals",{count:o.meals,amount:F(o.feed_g)}),o.doses>0&&l("month.doses",{count:o.doses})].filter(Boolean),r=Object.fromEntries(t.map(a=>[a,eo(e,a)]));return c`
    <div class="wide month">
      ${s.length>0&&c`<p>${s.join("\xA0\xB7 ")}</p>`}
      ${e.length>0&&c`<section class="section"><h2 id="month-readings">${l("month.readings")}</h2>
        <div class="scrolled" role="region" aria-labelledby="month-readings" tabindex="0">
          <table class="measured by-day">
          <thead><tr><th scope="col">${l("month.day")}</th>${t.map(a=>c`<th key=${a} scope="col">${rt(a)}${r[a]&&c`<br /><span class="soft small">${r[a]}</span>`}</th>`)}</tr></thead>
          <tbody>${e.map(({day:a,figures:i})=>c`<tr key=${a}><th scope="row">${wt(a)}</th>${t.map(m=>c`<td key=${m}>${(i[m]??[]).map(p=>no(p,r[m])).join(", ")}</td>`)}</tr>`)}</tbody></table></div></section>`}
      ${n.length>0&&c`<section class="section"><h2>${l("month.done")}</h2>
        <dl class="days">${n.map(({day:a,events:i})=>c`<div key=${a}><dt>${wt(a)}</dt><dd>${i.flatMap(W).filter(Boolean).join("\xA0\xB7 ")}</dd></div>`)}</dl></section>`}
    </div>`}function eo(t,e){let n=new Set(t.flatMap(({figures:o})=>(o[e]??[]).map(s=>sn(s).unit)));return n.size===1?[...n][0]:""}function no(t,e){let{value:n,unit:o}=sn(t);return o===e?n:`${n} ${o}`}var sn=t=>j(t);function oo({id:t}){let e=h("photo",t);if(!e)return c`<${k} up="/" />`;let n=h("tank",e.tank),o=n?`/tank/${n.id}/history`:"/timeline",s=A(v.value,{group:"notes"}).find(({records:i})=>i.includes(e)),r=s?W(s):[],a=async()=>{await lt([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&pt(o,{replace:!0})};return c`
    <${_} title=${l("kind.photo")} up=${o} aside=${n&&c`<span class="soft">${n.name}</span>`}>
      <figure><${ft} photo=${e} said=${r.join(" ")} large />
        <figcaption>${r.map(i=>c`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:Oe(e.meta.made_by),when:N(e.at,f.value)})}
            </p></figcaption></figure>
      ${v.value.may("photo")&&c`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${$(()=>{a()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var ao=["tank","incident","animals","plants","task","note","label","calculation"],so=["label","source_water","test_kit","own_species","own_plant"];function rn(t,e,n,o){let s=t.all("tank"),r=a=>s.find(i=>i.id===a)?.name??"";return[...s.map(({id:a,name:i,place:m,note:p})=>I("tank",i,m,`/tank/${a}`,[p])),...(s.length===0?[]:o.incidents??[]).map(({code:a,name:i,words:m})=>I("incident",i,"",`/incidents?what=${a}`,[m])),...s.flatMap(a=>ro(t,a,n)),...t.all("note").map(a=>{let i=a.tank?`/tank/${a.tank}/history`:"/";return I("note",o.note(a),r(a.tank),i,[a.text],a.at)}),...t.all("task").map(a=>I("task",o.task(a),r(a.tank),`/task/${a.id}`,[a.title,a.note])),...so.flatMap(a=>t.all(a).map(({id:i,name:m,note:p})=>I("label",m,"",`/room/${a}/${i}`,[p]))),...Object.values(e).flatMap(a=>a?[I("calculation",a.title,a.purpose,ln(a.name))]:[])]}function ro(t,{id:e,name:n},o){let{animals:s}=ee(St(t.all("stock_change"),e),o),{growing:r}=ke(St(t.all("planting"),e));return[...s.map(({species:a})=>I("animals",Mt("species",a),n,`/tank/${e}/stock`,[a])),...r.map(({species:a})=>I("plants",Mt("plants",a),n,`/tank/${e}/plants`,[a]))]}var I=(t,e,n="",o,s=[],r="")=>({kind:t,title:e,also:n,path:o,at:r,words:at([e,n,...s].join(" "))}),ln=t=>`/bench/${t}`;function cn(t,e,n){let o=at(e).split(/\s+/).filter(Boolean);if(o.length===0)return[];let s=new Set(n(e).map(({name:m})=>ln(m))),r=t.filter(m=>m.kind==="calculation"?s.has(m.path):o.every(p=>m.words.includes(p))),a=m=>{let p=at(m.title);return p.startsWith(o.join(" "))?2:o.every(u=>p.includes(u))?1:0},i=[...r].sort((m,p)=>a(p)-a(m)||(m.at<p.at?1:m.at>p.at?-1:m.title.localeCompare(p.title)));return ao.map(m=>({kind:m,found:i.filter(p=>p.kind===m)})).filter(m=>m.found.length>0)}var io=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],lo=()=>({note:Y,task:mt,incidents:$e.map(t=>({code:t,name:he(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),It=12,mn=140;function co(){let t=re("search",()=>""),e=M(()=>rn(O,yt(),f.peek(),lo()),io.map(D)),n=r=>xe(yt(),r).flatMap(({entries:a})=>a),o=cn(e,t.value,n),s=o.reduce((r,{found:a})=>r+a.length,0);return c`
    <${_} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${ct(r=>t.value=r)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):s?l("search.found",{count:s}):l("search.nothing",{words:t.value.trim()})}</p>
      ${o.map(({kind:r,found:a})=>c`
        <section class="section" key=${r}><h2>${l(`search.group_${r}`)}</h2>
          <ul class="lines">${a.slice(0,It).map(({path:i,title:m,also:p})=>c`
            <li key=${i+m}><a class="line" href=${i}><span class="grow"><b>${mo(m)}</b>
              ${p&&c`<br /><span class="soft small">${p}</span>`}</span></a></li>`)}</ul>
          ${a.length>It&&c`<p class="soft small">${l("life.more_rows",{count:a.length-It})}
            </p>`}
        </section>`)}
    <//>`}var mo=t=>t.length>mn?`${t.slice(0,mn).trimEnd()} \u2026`:t;var Ft="limnary-shared-photos";async function pn(){if(typeof caches>"u"||!await caches.has(Ft))return[];let t=await caches.open(Ft),e=[...await t.keys()].sort((o,s)=>o.url<s.url?-1:1),n=await Promise.all(e.map(o=>t.match(o)));return Promise.all(n.flatMap(o=>o?[o.blob()]:[]))}var un=()=>caches.delete(Ft);var po=Me();function uo(){let t=S(null),e=S(!1),n=S("");nt(()=>{pn().then(r=>t.value=r)},[]);let o=async r=>{e.value=!0;try{for(let a of t.value??[])await po.add(`note.${r}`,await Fe(a));await un(),pt(`/tank/${r}/note`,{replace:!0})}catch(a){let i=a instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=l(i,{file:l("note.photos")}),e.value=!1}};if(!t.value)return null;let s=t.value.length>0;return c`
    <${_} title=${l("shared.title")} up="/">
      <p class="sentence">${l(s?"shared.which":"shared.none")}</p>
      <ul class="pictures">${t.value.map((r,a)=>c`<li key=${a}><${Ae} picture=${r} said=${l("photo.numbered",{at:a+1})} />
        </li>`)}</ul>
      <${je} text=${n.value} />
      <ul class="lines">${s&&J(O).map(({id:r,name:a})=>c`<li key=${r}><button class="line whole" type="button" disabled=${e.value}
          onClick=${$(()=>{o(r)})}><span class="grow"><b>${a}</b></span></button></li>`)}</ul>
    <//>`}var fo=432e5;function fn({trend:t}){let e=zt(null);return nt(()=>{let n=e.current,o=()=>{},s=new IntersectionObserver(r=>{r.some(({isIntersecting:a})=>a)&&(s.disconnect(),o=$o(n,t))},{rootMargin:"200px"});return s.observe(n),()=>{s.disconnect(),o()}},[t]),c`<div class="chart" ref=${e} aria-hidden="true"></div>`}function $o(t,e){let{points:n,bars:o,step:s,marks:r,from:a,to:i}=e,m={marks:r.map(u=>({at:u,kind:"change"})),now:i,to:i},p=[n.map(({at:u})=>(u+s/2)/1e3),n.map(({value:u})=>u)];return Ne(t,u=>({scales:{x:{time:!0,range:[a/1e3,(i+Math.max(s/2,fo))/1e3]},y:{range:Ze(e)}},series:[{},o?{stroke:()=>G("--action"),fill:()=>G("--fan"),width:1.5,points:{show:!1},paths:u.paths.bars({size:[.7,40]})}:{stroke:()=>G("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>G("--action")}}],axes:Pe(),hooks:{drawAxes:[g=>Ce(g,m,G)]}}),p)}var _o=30,Lt=60;function go({id:t}){let e=h("tank",t),n=S(_o),o=S(!1),s=Math.floor(f.value/36e5),r=M(()=>{if(!e)return[];let a=V(O,e,f.value);return Object.keys(tt).map(i=>yo(Qe(i,a,n.value),a)).filter(({points:i})=>i.length>0)},[e,n.value,s,Ct.value,...["reading","water_change","feeding"].map(D)]);return e?c`
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
    <//>`:c`<${k} up="/" />`}function yo(t,{readings:e}){let{what:n,unit:o,points:s}=t;if(P(n)){let a=ot({reading:Qt(e,n).at(-1)??null}),i=Xt(n,a);return{...t,unit:ce(n,a),points:s.map(({at:m,value:p})=>({at:m,value:i(p)}))}}let r=Zt({name:"",unit:o},Ct.value);return{...t,unit:r,points:s.map(({at:a,value:i})=>({at:a,value:te(i,o,r)}))}}function vo({trend:t,as_table:e}){let{what:n,unit:o}=t,s=`trend-${n}`,r=Xe(t);if(!r)return null;let a=m=>bo(n,m),i={last:a(r.last.value),when:N(r.last.at,f.value),low:a(r.low),high:a(r.high),mean:a(r.mean),count:r.count};return c`
    <section class="parameter" aria-labelledby=${s}>
      <h2 id=${s}>${dn(n)} <span class="unit">${Dt(o)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?c`<${ko} trend=${t} said=${a} />`:c`<${fn} trend=${t} />`}
    </section>`}function ko({trend:{what:t,unit:e,points:n,bars:o,marks:s},said:r}){let a=[...n.map(({at:i,value:m})=>({at:i,label:o?K(i,f.value):N(i,f.value),value:r(m)})),...s.map(i=>({at:i,label:N(i,f.value),value:l("trends.changed")}))].sort((i,m)=>m.at-i.at);return c`
    <table class="measured"><caption class="unseen">${dn(t)} ${Dt(e)}</caption>
      <tbody>${a.slice(0,Lt).map(({at:i,label:m,value:p},u)=>c`<tr key=${`${i}-${u}`}><th scope="row">
        ${m}</th><td>${p}</td></tr>`)}</tbody></table>
    ${a.length>Lt&&c`<p class="soft small">${l("trends.rows",{count:Lt,of:a.length})}</p>`}`}var wo={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},dn=t=>wo[t]?.()??E(t),bo=(t,e)=>P(t)?le(e):t==="feed"?x(e,2):Vt(e,1);function xo({id:t}){let e=h("tank",t);return e?c`
    <${_} title=${l("water.short")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <${Ye} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:c`<${k} up="/tanks" />`}var Do=["total_ammonia","nitrite","nitrate","ph","temperature"],Ht=t=>({from:+new Date(t,0,1),to:+new Date(t+1,0,1)}),Yt=(t,e)=>/^\d{4}$/.test(t??"")?Number(t):new Date(e).getFullYear();function Gt(t,{from:e,to:n}){let o=({at:i})=>Date.parse(i)>=e&&Date.parse(i)<n,s=t.readings.filter(o),r=s.filter(i=>P(i.parameter)&&xt(i)).map(i=>Co(t,i)),a=r.filter(({mg_n_l:i,limit_mg_n_l:m})=>i>m);return{counts:So(t,o,s),extremes:Do.flatMap(i=>Oo(i,s)),worst:a.reduce((i,m)=>!i||$n(m)>$n(i)?m:i,null),over:new Set(a.map(({reading:i})=>et(i))).size,best:Po(r)}}function hn(t){let{refills:e,...n}=Mo;return t.reduce((o,s)=>Object.fromEntries(Object.entries(o).map(([r,a])=>[r,a+s[r]])),n)}var Mo={changes:0,litres:0,refills:0,tests:0,readings:0,meals:0,feed_g:0,doses:0,arrivals:0,births:0,deaths:0,removals:0};function So(t,e,n){let o=t.changes.filter(e),s=t.feedings.filter(a=>e(a)&&a.feed_g>0),r=a=>ht(t.stock.filter(i=>e(i)&&i.change===a).map(({count:i})=>i));return{changes:o.length,litres:ht(o.map(({litres:a})=>a)),refills:ht(o.map(({fraction:a})=>a)),tests:new Set(n.map(et)).size,readings:n.length,meals:s.length,feed_g:ht(s.map(({feed_g:a})=>a)),doses:t.doses.filter(e).length,arrivals:r("arrival"),births:r("birth"),deaths:r("death"),removals:r("removal")}}var ht=t=>t.reduce((e,n)=>e+n,0),et=({test:t,at:e})=>t??e;function Oo(t,e){let n=e.filter(r=>r.parameter===t&&(!P(t)||xt(r)));if(n.length===0)return[];let o=r=>P(t)?bt(r):r.value,s=r=>n.reduce((a,i)=>r*o(i)<r*o(a)?i:a);return[{parameter:t,low:s(1),high:s(-1)}]}function Co(t,e){let n=Date.parse(e.at),o=({at:p})=>Date.parse(p)<=n,s=t.readings.filter(p=>o(p)&&n-Date.parse(p.at)<=No),[r,a]=[t.changes.filter(o),t.doses.filter(o)],i=ae({...t,now:n,readings:s,changes:r,doses:a}),m=e.parameter;return{reading:e,mg_n_l:bt(e),limit_mg_n_l:i[m].mg_n_l}}var No=14*864e5,$n=({mg_n_l:t,limit_mg_n_l:e})=>t/e;function Po(t){let e=[[]],n=new Set(t.filter(o=>o.mg_n_l>o.limit_mg_n_l).map(({reading:o})=>et(o)));for(let o of t)n.has(et(o.reading))?e[e.length-1].length&&e.push([]):e[e.length-1].push(o);return e.filter(o=>o.length>0).map(o=>{let[s,r]=[o[0],o[o.length-1]].map(({reading:i})=>Date.parse(i.at)),a=new Set(o.map(({reading:i})=>et(i))).size;return{from:s,to:r,days:Math.round((r-s)/864e5),tests:a}}).reduce((o,s)=>!o||s.days>o.days?s:o,null)}var _n=["reading","water_change","dose","feeding","stock_change","source_water","label"];function Eo({id:t,query:e}){let n=h("tank",t),o=Yt(e.get("at"),f.value),s=M(()=>n&&Gt(V(O,n,f.value),Ht(o)),[n,o,..._n.map(D)]);return!n||!s?c`<${k} up="/" />`:c`
    <${yn} year=${o} path=${`/tank/${t}/year`} up=${`/tank/${t}/history`} of=${n.name}>
      ${gn(s.counts)?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year">
      <section class="section"><h2>${l("year.kept")}</h2><${To} told=${s} /></section>
      <${vn} counts=${s.counts} refills=${s.counts.refills} />
      <${kn} counts=${s.counts} />
      <${Io} extremes=${s.extremes} /></div>`}
    <//>`}function Ro({query:t}){let e=Yt(t.get("at"),f.value),n=[...J(O),...J(O,{resting:!0})],s=M(()=>n.map(a=>({tank:a,...Gt(V(O,a,f.value),Ht(e))})),[e,D("tank"),..._n.map(D)]).filter(({counts:a})=>!gn(a)),r=hn(s.map(({counts:a})=>a));return c`
    <${yn} year=${e} path="/year" up="/timeline" of=${l("history.all_tanks")}>
      ${s.length===0?c`<p class="sentence">${l("year.none")}</p>`:c`<div class="year"><${vn} counts=${r} /><${kn} counts=${r} />
      <section class="section"><h2>${l("place.tanks")}</h2><ul class="lines">${s.map(({tank:a,counts:i,over:m})=>c`<li key=${a.id}><a class="line" href=${`/tank/${a.id}/year?at=${e}`}>
          <span><b>${a.name}</b><br /><span class="soft small">${jo(i,m)}</span></span></a></li>`)}</ul></section></div>`}
    <//>`}var gn=t=>Object.values(t).every(e=>e===0),jo=(t,e)=>[l("month.tests",{count:t.tests}),e>0&&l("year.over",{count:e}),l("month.changes",{count:t.changes,litres:T(t.litres)}),t.deaths>0&&l("year.died",{count:t.deaths})].filter(Boolean).join("\xA0\xB7 "),yn=({year:t,path:e,up:n,of:o,children:s})=>c`
  <${_} title=${l("year.of",{year:String(t)})} up=${n} aside=${c`<span class="soft">${o}</span>`}
    act=${c`<button class="main" type="button" onClick=${$(()=>{dt(`limnary-${t}`)})}>
      ${l("away.print")}</button>`}>
    <nav class="row not-printed" aria-label=${l("year.other")}>
      <a class="quiet" href=${`${e}?at=${t-1}`}>${t-1}</a>
      ${t<new Date(f.value).getFullYear()&&c`<a class="quiet" href=${`${e}?at=${t+1}`}>${t+1}</a>`}</nav>
    ${s}
  <//>`,To=({told:{counts:t,over:e,best:n,worst:o}})=>c`
  <p class="sentence">${e>0?l("year.over_of",{count:e,total:t.tests}):l("year.over_none")}</p>
  ${n&&n.tests>1&&c`<p>${l("year.best",{from:B(n.from),to:B(n.to),tests:x(n.tests,0),count:n.days})}</p>`}
  ${o&&c`<p>${l("year.worst",{what:Ao(o.reading),day:B(o.reading.at),limit:qo(o)})}</p>`}`;function qo({reading:t,limit_mg_n_l:e}){let n=ot({reading:t});return`${ie(t.parameter,e,n)} ${it(t.parameter,n)}`}function Ao(t){let{value:e,unit:n}=j(t);return`${E(t.parameter)} ${e} ${n}`.trim()}var vn=({counts:t,refills:e})=>c`
  <${wn} title=${l("month.done")} rows=${[[l("year.changes"),x(t.changes,0),[T(t.litres),e&&l("year.refills",{times:x(e,1)})]],[l("year.tests"),x(t.tests,0),[l("year.readings",{count:t.readings})]],[l("year.meals"),x(t.meals,0),[F(t.feed_g)]],[l("year.doses"),x(t.doses,0),[]]]} />`,kn=({counts:t})=>c`
  <${wn} title=${l("year.animals")} rows=${["arrivals","births","deaths","removals"].map(e=>[l(`year.${e}`),x(t[e],0),[]])} />`,wn=({title:t,rows:e})=>c`
  <section class="section"><h2>${t}</h2><table class="measured"><caption class="unseen">${t}</caption>
    <tbody>${e.map(([n,o,s])=>c`<tr key=${n}><th scope="row">${n}</th><td>${o}${s.filter(Boolean).map(r=>c`<span class="also" key=${r}>${r}</span>`)}</td></tr>`)}</tbody></table></section>`,Io=({extremes:t})=>t.length>0&&c`
  <section class="section"><h2>${l("year.low_high")}</h2><table class="measured"><caption class="unseen">
    ${l("year.low_high")}</caption>
    <thead><tr><td></td><th scope="col">${l("year.low")}</th><th scope="col">${l("year.high")}</th></tr></thead>
    <tbody>${t.map(({parameter:e,low:n,high:o})=>{let[s,r]=[j(n),j(o)],a=s.unit===r.unit,i=({value:m,unit:p},u)=>c`<td>${m} ${!a&&p}<span class="also">${B(u.at)}</span></td>`;return c`<tr key=${e}><th scope="row">${rt(e)}${a&&s.unit&&c`<br /><span class="soft small">${s.unit}</span>`}</th>${i(s,n)}${i(r,o)}</tr>`})}</tbody></table></section>`;export{Tn as Correct,Yn as History,Zn as MonthPage,oo as Photo,Ro as RoomYear,co as Search,uo as Shared,go as Trends,xo as Water,Eo as YearPage};
//# sourceMappingURL=journal-F4APCIJ7.js.map
