import{$a as ve,Ca as fe,D as oe,Da as de,Ea as J,Fa as he,G as ae,H as re,J as se,Ja as $e,L as ie,N as le,O as ce,P as R,Sa as _e,Ya as ge,Za as ke,aa as pe,c as Jt,g as Qt,h as Xt,i as Zt,j as te,k as ee,l as ne,ra as ue,va as me}from"./chunk-YUMVSDZA.js";import{$ as Pt,Ab as Ht,Bb as It,C as l,D as Dt,E as G,Eb as Wt,G as et,Gb as Gt,Gc as Y,H as b,Jb as it,Jc as Yt,Kb as Ut,O as q,R as Ct,Sc as Kt,T as Et,Ub as v,Va as jt,Vb as f,Wa as At,Xb as Ft,Yb as d,Yc as N,Z as Ot,Za as U,Zb as O,Zc as Vt,_ as nt,_b as zt,_c as K,b as W,ba as Nt,bc as P,c as vt,d as E,da as ot,e as wt,g as S,gb as rt,h as c,hc as z,ib as qt,oa as Rt,pa as Tt,pd as V,rc as Bt,sb as Lt,sc as B,td as _,va as at,vb as st,wb as F,xc as h,xd as x,yb as D}from"./chunk-CY5ZB7SK.js";import"./chunk-HZWNA2UL.js";import"./chunk-BEOBSI6V.js";import{A as Mt,f as yt,o as tt,r as bt,t as xt,w as St}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";var T={reading:"tests",water_change:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},Ie=Object.keys(T),we=[...new Set(Object.values(T))],C={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function j(t,{tank:e,group:n}={}){let a=Fe(t);return Ie.filter(r=>!n||T[r]===n).flatMap(r=>ze(t,r,a)).map(r=>Ye(t,r)).filter(r=>!e||r.tank===e||We(r)===e).sort((r,o)=>r.at<o.at?1:r.at>o.at?-1:0)}var We=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function ye(t){let e=[];for(let n of t){let a=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==a&&e.push({day:a,events:[]}),e.at(-1)?.events.push(n)}return e}var be=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:a})=>({type:"del",kind:n,id:a}));function xe(t,e,{one:n,value:a,at:s,tank:r},o){let i=o(),u=s!==void 0||r!==void 0||n.kind==="water_change";return e.records.filter(p=>u||p===n).map(p=>{let m={};return s!==void 0&&(m.at=Jt(p.at,e.at,s)),r!==void 0&&(m.tank=r),p===n&&a!==void 0&&(m[C[p.kind]]=a===""?void 0:a),p===n&&p.kind==="note"&&a!==void 0&&Object.assign(m,{quick:void 0,incident:void 0,step:void 0}),p.kind==="water_change"&&Object.assign(m,Ge(t,{...p,...m},p)),e.kind==="water_change"&&p.kind==="dose"&&(m.water_change=i),Ue(p,p===n?i:o(),m)})}function Ge(t,{litres:e,tank:n,from_tank:a},s){let{water_l:r}=t.get("tank",n),o=n===s.tank?s.fraction/s.litres:1/r;return{fraction:Math.min(1,o*Number(e)),...a===n?{from_tank:void 0}:{}}}function Ue({id:t,kind:e,meta:n,...a},s,r){return{type:"put",kind:e,id:s,fields:{...a,...r,supersedes:t}}}function Fe(t){let e=new Map;for(let{id:r,supersedes:o}of t.all("water_change")){e.set(r,r);for(let i of o?t.earlier("water_change",r):[])e.set(i.id,r)}let n=new Set(t.all("note").map(({entry:r})=>r)),a=ct(t.all("dose"),({water_change:r})=>e.get(r??"")),s=ct(t.all("photo"),({entry:r})=>r&&n.has(r)?r:void 0);return{doses:a.lists,apart:a.rest,photos:s.lists,loose:s.rest}}function ct(t,e){let n=new Map,a=[];for(let s of t){let r=e(s);r===void 0?a.push(s):n.get(r)?.push(s)||n.set(r,[s])}return{lists:n,rest:a}}function ze(t,e,{doses:n,photos:a,apart:s,loose:r}){return e==="reading"?lt(t.all(e),({test:o})=>o).map(o=>Be(t,o)):e==="water_change"?t.all(e).map(o=>[o,...n.get(o.id)??[]]):e==="dose"?s.map(o=>[o]):e==="note"?lt(t.all(e),({entry:o})=>o).map(o=>[...[...o].sort((i,u)=>i.at<u.at?-1:i.at>u.at?1:i.id<u.id?-1:1),...a.get(o[0].entry??"")??[]]):e==="photo"?lt(r,({entry:o})=>o):t.all(e).map(o=>[o])}var lt=(t,e)=>[...ct(t,n=>e(n)??n.id).lists.values()];function Be(t,e){let n=({kind:a,id:s,supersedes:r})=>(r?t.earlier(a,s).at(-1)?.id:null)??s;return[...e].sort((a,s)=>n(a)<n(s)?-1:1)}function Ye(t,e){let[n]=e,a=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,s=e.flatMap(({kind:r,id:o,supersedes:i})=>i?t.earlier(r,o):[]);return{at:n.at,tank:a??null,group:T[n.kind],kind:n.kind,records:e,earlier:s}}var A=({kind:t,records:e=[]})=>pt(e)?l("history.incident"):Ke[t]?.()??l(`kind.${t}`),pt=t=>t.some(({kind:e,incident:n})=>e==="note"&&n),Ke={reading:()=>l("history.test"),water_change:()=>l("history.change"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},Q=({records:t})=>t.flatMap(e=>[...L(e),...e.note?e.note.split(`
`):[]]);function Se({at:t,tank:e,earlier:n}){let a=n.flatMap(s=>[...L(s),...s.at===t?[]:[b(s.at,f.value)],...!s.tank||s.tank===e?[]:[d("tank",s.tank)?.name??l("life.a_tank")]]);return[...new Set(a)]}function L(t){let e=t;return e.kind==="reading"?[Ve(e)]:e.kind==="water_change"?[l("history.changed",{litres:Gt(e.litres)})]:e.kind==="dose"?[`${Ut(e)} ${Vt(e)}`]:e.kind==="feeding"?[Je(e)]:e.kind==="note"?N(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[Qe(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:Mt(St("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>d("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[$e(e)]:[]}function Ve(t){let{value:e,unit:n}=It(t);return`${D(t.parameter)} ${e} ${n}`.trim()}function Je({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:it(t),food:e}):l("history.fed",{amount:it(t)})}function Qe({task:t,skipped:e}){let n=d("task",t),a=n?K(n):l("kind.task_done");return e?l("history.task_skipped",{title:a}):a}var ut={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},mt={note:{says:({text:t,quick:e})=>N({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function Xe({kind:t,id:e}){let n=`correct.${t}.${e}`,a=ge({name:n,first:()=>({of:e,typed:null,tank:""})}),s=t in C&&v.value.may(t)&&zt(t,e)?j(v.value).find(({records:$})=>$.some(Z=>Z.id===e)):null;if(!s)return c`<${x} up="/" />`;let r=s.records.filter($=>$.kind===t),o=r.find($=>$.id===a.draft.value.of)??r[0],{typed:i,at:u,tank:p}=a.draft.value,m=mt[t],w=m?tn(m,o,i):en(t,o,a.draft.value),y=Ze(o,w,d("tank",p||o.tank)),H=(w!==void 0||p!==""||u!==void 0&&u!==s.at)&&!y&&!fe(u)&&!(i===""&&!m?.may_be_empty),I=s.tank?`/tank/${s.tank}/history`:"/timeline",k=()=>a.save(()=>({writes:xe(v.value,s,{one:o,value:w,at:u,tank:p||void 0},Bt),said:l("correct.saved",{what:A(s)}),to:I}));return c`
    <${_} title=${l("correct.title")} up=${I} aside=${c`<span class="soft">${A(s)}</span>`}
      act=${c`<button class="main" type="button" disabled=${!H} onClick=${h(()=>{k()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:L(o).join("\xA0\xB7 ")||A(s),when:b(o.at,f.value)})}</p>
      ${r.length>1&&c`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${r.map(($,Z)=>c`<button key=${$.id} type="button" aria-pressed=${$===o}
          onClick=${h(()=>a.set({of:$.id,typed:null}))}>
          ${L($).join(" ")||l("photo.numbered",{at:Z+1})}</button>`)}</div>`}
      <${ke} form=${a} kind=${t} />
      ${y&&c`<div role="alert"><${pe} ...${y} /></div>`}
      <${nn} kind=${t} record=${o} form=${a} />
      <${de} at=${u} was=${s.at}
        on_at=${$=>a.set({at:$})} />
      ${s.tank&&c`<${ue} was=${s.tank} tank=${p} on_pick=${$=>a.set({tank:$})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function Ze(t,e,n){if(t.kind==="water_change"&&n){let i=Tt(n,Number(e??t.litres));return i&&{spec:Rt(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:a,unit:s}=t,r=ee({parameter:a,unit:s},D(a)),o=ne(r,Number(e));return o&&{spec:r,error:o}}function tn({says:t},e,n){let a=n?.trim();return a===void 0||a===t(e).trim()?void 0:a}function en(t,e,{typed:n,keyed_in:a}){if(n===null||n==="")return;let s=t==="reading"&&(e.steps??[]).length>0,r=Number(s?n:F(ut[t](e)).hold(Number(n),a).toPrecision(12));return r===e[C[t]]?void 0:r}function nn({kind:t,record:e,form:n}){let{typed:a,keyed_in:s}=n.draft.value,r=mt[t],o=xt(bt(t).fields,C[t]),i=p=>n.set({typed:p,keyed_in:r?void 0:F(ut[t](e)).unit}),u=t==="reading"?`${D(e.parameter)} ${Ht(e.parameter,e.basis)}`.trim():o.label;return c`
    <section class="section"><h2>${u}</h2>
      <${on} kind=${t} record=${e} said=${r?a??r.says(e):a}
        keyed_in=${s} spec=${o} on_say=${i} /></section>`}function on({kind:t,record:e,said:n,keyed_in:a,spec:s,on_say:r}){if(t in mt)return c`<div class="field"><textarea aria-label=${s.label} rows="5" maxlength=${s.max_length}
      value=${n} onInput=${Y(r)}></textarea></div>`;let o=t==="reading"?e.steps??[]:[];if(o.length===0){let{label:i,text:u}=F(ut[t](e));return c`<${re} label=${s.label} unit=${i} value=${u(n,a)} on_value=${r} />`}return c`<div class="tiles steps" role="group" aria-label=${s.label}>
    ${o.map(i=>c`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${h(()=>r(String(i)))}>${G(i)}</button>`)}</div>`}var ft=40,dt=wt(null);function an({id:t}){let e=t?d("tank",t):null,n=S(ft),a=[...Object.keys(T),"task"].map(O),s=E(()=>j(v.value,{tank:t}),[t,...a]);if(t&&!e)return c`<${x} up="/" />`;let r=t?`/tank/${t}/history`:"/timeline",o=we.filter(m=>s.some(w=>w.group===m)),i=o.includes(dt.value??"")?dt.value:null,u=i?s.filter(({group:m})=>m===i):s,p=m=>h(()=>{dt.value=m,n.value=ft});return c`
    <${_} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&c`<span class="soft">${e.name}</span>`}>
      ${s.length===0&&c`<p class="sentence">${l("history.empty")}</p>`}
      ${o.length>1&&c`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${p(null)}>
          ${l("history.group.all")}</button>
        ${o.map(m=>c`<button key=${m} class="quiet" type="button" aria-pressed=${i===m}
          onClick=${p(m)}>${l(`history.group.${m}`)}</button>`)}
      </div>`}
      ${ye(u.slice(0,n.value)).map(({day:m,events:w})=>c`
        <section class="section" key=${m}><h2>${q(m,f.value)}</h2>
          <ol class="lines">
            ${w.map(y=>c`<${rn} key=${y.records[0].id} event=${y} here=${r}
            tank=${t?null:d("tank",y.tank??void 0)} />`)}</ol>
        </section>`)}
      ${u.length>n.value&&c`<p class="center section"><button class="quiet tall" type="button"
        onClick=${h(()=>n.value+=ft)}>${l("history.more")}</button></p>`}
    <//>`}function rn({event:t,here:e,tank:n}){let{records:a}=t,[s]=a,r=s.meta.made_by===null?null:v.value.name_of(s.meta.made_by),o=a.map(({meta:k})=>k.state),i=o.includes("needs you")?"needs_you":o.every(k=>k==="shared")?"shared":"saved",u=a.every(({kind:k})=>v.value.may(k)),p=A(t),m=`${p}, ${q(Date.parse(t.at),f.value)} ${et(t.at)}`,w=a.filter(({kind:k})=>k==="photo"),y=Se(t),X=Qt(s),H=t.kind in C?`/correct/${t.kind}/${s.id}`:X?Zt(s,Ft(s.kind),e):null,I=()=>B(X?Xt(v.value,s):be(t),l("saved.removed",{what:p}));return c`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&c`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${et(t.at)}</time>${r&&` \xB7 ${r}`}</span></p>
        <div class="said">${Q(t).map(k=>c`<span key=${k}>${k}</span>`)}</div>
        ${y.length>0&&c`<p class="soft small">${l("history.corrected",{before:y.join("\xA0\xB7 ")})}
          </p>`}
        ${pt(a)&&t.tank&&c`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${sn} photos=${w} named=${m} />
        <span class="soft small row tight"><${z} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${u&&c`<div class="stack">
        ${H&&c`<a class="quiet square" href=${H}
          aria-label=${l("history.correct_named",{what:m})}><${z} name="note" size=${20} /></a>`}
        <button class="quiet square" type="button" aria-label=${l("remove_named",{what:m})}
          onClick=${h(()=>{I()})}><${z} name="remove" size=${20} /></button>
      </div>`}
    </li>`}var sn=({photos:t,named:e})=>t.length>0&&c`<ul class="pictures small">${t.map((n,a)=>c`
    <li key=${n.id}><a href=${`/photo/${n.id}`}
      aria-label=${`${l("photo.numbered",{at:a+1})}, ${e}`}><${J} photo=${n}
      said=${n.caption??""} /></a></li>`)}</ul>`;function ln({id:t}){let e=d("photo",t);if(!e)return c`<${x} up="/" />`;let n=d("tank",e.tank),a=n?`/tank/${n.id}/history`:"/timeline",s=j(v.value,{group:"notes"}).find(({records:i})=>i.includes(e)),r=s?Q(s):[],o=async()=>{await B([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&V(a,{replace:!0})};return c`
    <${_} title=${l("kind.photo")} up=${a} aside=${n&&c`<span class="soft">${n.name}</span>`}>
      <figure><${J} photo=${e} said=${r.join(" ")} large />
        <figcaption>${r.map(i=>c`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:se(e.meta.made_by),when:b(e.at,f.value)})}
            </p></figcaption></figure>
      ${v.value.may("photo")&&c`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${h(()=>{o()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var cn=["tank","incident","animals","plants","task","note","label","calculation"],pn=["label","source_water","test_kit","own_species","own_plant"];function Me(t,e,n,a){let s=t.all("tank"),r=o=>s.find(i=>i.id===o)?.name??"";return[...s.map(({id:o,name:i,place:u,note:p})=>M("tank",i,u,`/tank/${o}`,[p])),...(s.length===0?[]:a.incidents??[]).map(({code:o,name:i,words:u})=>M("incident",i,"",`/incidents?what=${o}`,[u])),...s.flatMap(o=>un(t,o,n)),...t.all("note").map(o=>{let i=o.tank?`/tank/${o.tank}/history`:"/";return M("note",a.note(o),r(o.tank),i,[o.text],o.at)}),...t.all("task").map(o=>M("task",a.task(o),r(o.tank),`/task/${o.id}`,[o.title,o.note])),...pn.flatMap(o=>t.all(o).map(({id:i,name:u,note:p})=>M("label",u,"",`/room/${o}/${i}`,[p]))),...Object.values(e).flatMap(o=>o?[M("calculation",o.title,o.purpose,De(o.name))]:[])]}function un(t,{id:e,name:n},a){let{animals:s}=Nt(at(t.all("stock_change"),e),a),{growing:r}=te(at(t.all("planting"),e));return[...s.map(({species:o})=>M("animals",ot("species",o),n,`/tank/${e}/stock`,[o])),...r.map(({species:o})=>M("plants",ot("plants",o),n,`/tank/${e}/plants`,[o]))]}var M=(t,e,n="",a,s=[],r="")=>({kind:t,title:e,also:n,path:a,at:r,words:U([e,n,...s].join(" "))}),De=t=>`/bench/${t}`;function Ce(t,e,n){let a=U(e).split(/\s+/).filter(Boolean);if(a.length===0)return[];let s=new Set(n(e).map(({name:u})=>De(u))),r=t.filter(u=>u.kind==="calculation"?s.has(u.path):a.every(p=>u.words.includes(p))),o=u=>{let p=U(u.title);return p.startsWith(a.join(" "))?2:a.every(m=>p.includes(m))?1:0},i=[...r].sort((u,p)=>o(p)-o(u)||(u.at<p.at?1:u.at>p.at?-1:u.title.localeCompare(p.title)));return cn.map(u=>({kind:u,found:i.filter(p=>p.kind===u)})).filter(u=>u.found.length>0)}var mn=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],fn=()=>({note:N,task:K,incidents:Yt.map(t=>({code:t,name:Kt(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),ht=12,Ee=140;function dn(){let t=Lt("search",()=>""),e=E(()=>Me(P,tt(),f.peek(),fn()),mn.map(O)),n=r=>oe(tt(),r).flatMap(({entries:o})=>o),a=Ce(e,t.value,n),s=a.reduce((r,{found:o})=>r+o.length,0);return c`
    <${_} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${Y(r=>t.value=r)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):s?l("search.found",{count:s}):l("search.nothing",{words:t.value.trim()})}</p>
      ${a.map(({kind:r,found:o})=>c`
        <section class="section" key=${r}><h2>${l(`search.group_${r}`)}</h2>
          <ul class="lines">${o.slice(0,ht).map(({path:i,title:u,also:p})=>c`
            <li key=${i+u}><a class="line" href=${i}><span class="grow"><b>${hn(u)}</b>
              ${p&&c`<br /><span class="soft small">${p}</span>`}</span></a></li>`)}</ul>
          ${o.length>ht&&c`<p class="soft small">${l("life.more_rows",{count:o.length-ht})}
            </p>`}
        </section>`)}
    <//>`}var hn=t=>t.length>Ee?`${t.slice(0,Ee).trimEnd()} \u2026`:t;var $t="limnary-shared-photos";async function Oe(){if(typeof caches>"u"||!await caches.has($t))return[];let t=await caches.open($t),e=[...await t.keys()].sort((a,s)=>a.url<s.url?-1:1),n=await Promise.all(e.map(a=>t.match(a)));return Promise.all(n.flatMap(a=>a?[a.blob()]:[]))}var Pe=()=>caches.delete($t);var $n=ae();function _n(){let t=S(null),e=S(!1),n=S("");W(()=>{Oe().then(r=>t.value=r)},[]);let a=async r=>{e.value=!0;try{for(let o of t.value??[])await $n.add(`note.${r}`,await _e(o));await Pe(),V(`/tank/${r}/note`,{replace:!0})}catch(o){let i=o instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=l(i,{file:l("note.photos")}),e.value=!1}};if(!t.value)return null;let s=t.value.length>0;return c`
    <${_} title=${l("shared.title")} up="/">
      <p class="sentence">${l(s?"shared.which":"shared.none")}</p>
      <ul class="pictures">${t.value.map((r,o)=>c`<li key=${o}><${he} picture=${r} said=${l("photo.numbered",{at:o+1})} />
        </li>`)}</ul>
      <${me} text=${n.value} />
      <ul class="lines">${s&&At(P).map(({id:r,name:o})=>c`<li key=${r}><button class="line whole" type="button" disabled=${e.value}
          onClick=${h(()=>{a(r)})}><span class="grow"><b>${o}</b></span></button></li>`)}</ul>
    <//>`}var Te=[7,30,90,365],gt={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...rt,temperature:"\xB0C",feed:"g",changed:"L"};function je(t,e,n){let a=e.now,s=new Date(a-(n-1)*864e5).setHours(0,0,0,0),r=p=>Date.parse(p.at)>=s&&Date.parse(p.at)<=a,o=e.changes.filter(r),i={what:t,unit:gt[t],from:s,to:a,marks:t==="changed"?[]:o.map(({at:p})=>Date.parse(p))};if(t==="feed"){let p=e.feedings.filter(r).map(m=>({at:vn(Date.parse(m.at)),value:m.feed_g}));return{...i,points:Ne(p),bars:!0,step:864e5}}if(t==="changed"){let p=o.map(m=>({at:Re(Date.parse(m.at)),value:m.litres}));return{...i,points:p.length?kn(Ne(p),Re(a)):[],bars:!0,step:7*864e5}}let u=e.readings.filter(p=>p.parameter===t&&r(p)).flatMap(p=>{let m=gn(p);return m===void 0?[]:[{at:Date.parse(p.at),value:m}]});return{...i,points:u,bars:!1,step:0}}function gn(t){return Et(t.parameter)?yt(t).value:t.parameter in rt?qt(t):t.value}function Ae({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,a)=>n+a,0)/e.length}}function qe({what:t,points:e}){let n=e.map(({value:o})=>o),a=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,a>0?a*1.12:1];let s=Math.min(...n),r=Math.max((a-s)*.2,.5);return[s-r,a+r]}function Ne(t){let e=[];for(let{at:n,value:a}of t){let s=e.at(-1);s?.at===n?s.value+=a:e.push({at:n,value:a})}return e}function kn(t,e){let n=[];for(let a=t[0].at;a<=e;a=wn(a))n.push(t.find(s=>s.at===a)??{at:a,value:0});return n}var vn=t=>new Date(t).setHours(0,0,0,0);function Re(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function wn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var yn=432e5;function Le({trend:t}){let e=vt(null);return W(()=>{let n=e.current,a=()=>{},s=new IntersectionObserver(r=>{r.some(({isIntersecting:o})=>o)&&(s.disconnect(),a=bn(n,t))},{rootMargin:"200px"});return s.observe(n),()=>{s.disconnect(),a()}},[t]),c`<div class="chart" ref=${e} aria-hidden="true"></div>`}function bn(t,e){let{points:n,bars:a,step:s,marks:r,from:o,to:i}=e,u={marks:r.map(m=>({at:m,kind:"change"})),now:i,to:i},p=[n.map(({at:m})=>(m+s/2)/1e3),n.map(({value:m})=>m)];return le(t,m=>({scales:{x:{time:!0,range:[o/1e3,(i+Math.max(s/2,yn))/1e3]},y:{range:qe(e)}},series:[{},a?{stroke:()=>R("--action"),fill:()=>R("--fan"),width:1.5,points:{show:!1},paths:m.paths.bars({size:[.7,40]})}:{stroke:()=>R("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>R("--action")}}],axes:ce(),hooks:{drawAxes:[w=>ie(w,u,R)]}}),p)}var Sn=30,kt=60;function Mn({id:t}){let e=d("tank",t),n=S(Sn),a=S(!1),s=Math.floor(f.value/36e5),r=E(()=>{if(!e)return[];let o=jt(P,e,f.value);return Object.keys(gt).map(i=>Dn(je(i,o,n.value))).filter(({points:i})=>i.length>0)},[e,n.value,s,st.value,...["reading","water_change","feeding"].map(O)]);return e?c`
    <${_} title=${l("trends.title")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${Te.map(o=>c`<button key=${o} class="quiet" type="button"
          aria-pressed=${n.value===o} onClick=${h(()=>n.value=o)}>${l("trends.days",{count:o})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${a.value}
          onClick=${h(()=>a.value=!a.value)}>${l("outlook.as_table")}</button>
      </div>
      ${r.length===0&&c`<p class="sentence section">${l("trends.none")}</p>`}
      <div class="wide side-by-side">${r.map(o=>c`<${Cn} key=${o.what} trend=${o} as_table=${a.value} />`)}</div>
    <//>`:c`<${x} up="/" />`}function Dn(t){let{unit:e,points:n}=t,a=Ot({name:"",unit:e},st.value);return{...t,unit:a,points:n.map(({at:s,value:r})=>({at:s,value:Pt(r,e,a)}))}}function Cn({trend:t,as_table:e}){let{what:n,unit:a}=t,s=`trend-${n}`,r=Ae(t);if(!r)return null;let o=u=>Pn(n,u),i={last:o(r.last.value),when:b(r.last.at,f.value),low:o(r.low),high:o(r.high),mean:o(r.mean),count:r.count};return c`
    <section class="parameter" aria-labelledby=${s}>
      <h2 id=${s}>${He(n)} <span class="unit">${nt(a)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?c`<${En} trend=${t} said=${o} />`:c`<${Le} trend=${t} />`}
    </section>`}function En({trend:{what:t,unit:e,points:n,bars:a,marks:s},said:r}){let o=[...n.map(({at:i,value:u})=>({at:i,label:a?q(i,f.value):b(i,f.value),value:r(u)})),...s.map(i=>({at:i,label:b(i,f.value),value:l("trends.changed")}))].sort((i,u)=>u.at-i.at);return c`
    <table class="measured"><caption class="unseen">${He(t)} ${nt(e)}</caption>
      <tbody>${o.slice(0,kt).map(({at:i,label:u,value:p},m)=>c`<tr key=${`${i}-${m}`}><th scope="row">
        ${u}</th><td>${p}</td></tr>`)}</tbody></table>
    ${o.length>kt&&c`<p class="soft small">${l("trends.rows",{count:kt,of:o.length})}</p>`}`}var On={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},He=t=>On[t]?.()??D(t),Pn=(t,e)=>t in Ct?Wt(e):t==="feed"?G(e,2):Dt(e,1);function Nn({id:t}){let e=d("tank",t);return e?c`
    <${_} title=${l("water.short")} up=${`/tank/${t}`} aside=${c`<span class="soft">${e.name}</span>`}>
      <${ve} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:c`<${x} up="/tanks" />`}export{Xe as Correct,an as History,ln as Photo,dn as Search,_n as Shared,Mn as Trends,Nn as Water};
//# sourceMappingURL=journal-CGILZSMT.js.map
