import{$ as ie,Ba as ce,Ca as ue,D as ee,Da as K,G as ne,I as oe,Ia as me,K as ae,M as re,N as se,O as N,Va as pe,Wa as fe,Ya as de,c as Kt,g as Vt,h as Jt,i as Qt,j as Xt,k as Zt,l as te,qa as le}from"./chunk-RGGLVA7F.js";import{Ab as At,B as l,C as Mt,D as H,Db as It,Ec as B,F as Z,Fb as Lt,G as b,Hc as zt,Ib as rt,Jb as Ht,N as q,Q as Dt,Qc as Ft,S as St,Tb as g,Ua as Rt,Ub as f,Wb as Wt,Wc as E,Xb as d,Xc as Bt,Y as Ct,Ya as W,Yb as O,Yc as Y,Z as tt,Zb as Gt,_ as Ot,aa as Et,ac as U,b as _t,c as gt,ca as et,d as C,e as kt,fb as ot,fc as z,g as j,h as u,hb as Tt,na as Nt,nd as Yt,oa as Pt,pc as Ut,qc as F,rb as jt,rd as k,ua as nt,ub as at,vb as G,vc as h,vd as x,xb as D,zb as qt}from"./chunk-CZTD35Z6.js";import"./chunk-HZWNA2UL.js";import"./chunk-BEOBSI6V.js";import{A as xt,f as vt,o as X,r as wt,t as yt,w as bt}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";var P={reading:"tests",water_change:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},Pe=Object.keys(P),$e=[...new Set(Object.values(P))],S={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function R(t,{tank:e,group:n}={}){let a=qe(t);return Pe.filter(s=>!n||P[s]===n).flatMap(s=>Ae(t,s,a)).map(s=>Le(t,s)).filter(s=>!e||s.tank===e||Re(s)===e).sort((s,o)=>s.at<o.at?1:s.at>o.at?-1:0)}var Re=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function he(t){let e=[];for(let n of t){let a=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==a&&e.push({day:a,events:[]}),e.at(-1)?.events.push(n)}return e}var _e=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:a})=>({type:"del",kind:n,id:a}));function ge(t,e,{one:n,value:a,at:r,tank:s},o){let i=o(),m=r!==void 0||s!==void 0||n.kind==="water_change";return e.records.filter(c=>m||c===n).map(c=>{let p={};return r!==void 0&&(p.at=Kt(c.at,e.at,r)),s!==void 0&&(p.tank=s),c===n&&a!==void 0&&(p[S[c.kind]]=a===""?void 0:a),c===n&&c.kind==="note"&&a!==void 0&&Object.assign(p,{quick:void 0,incident:void 0,step:void 0}),c.kind==="water_change"&&Object.assign(p,Te(t,{...c,...p},c)),e.kind==="water_change"&&c.kind==="dose"&&(p.water_change=i),je(c,c===n?i:o(),p)})}function Te(t,{litres:e,tank:n,from_tank:a},r){let{water_l:s}=t.get("tank",n),o=n===r.tank?r.fraction/r.litres:1/s;return{fraction:Math.min(1,o*Number(e)),...a===n?{from_tank:void 0}:{}}}function je({id:t,kind:e,meta:n,...a},r,s){return{type:"put",kind:e,id:r,fields:{...a,...s,supersedes:t}}}function qe(t){let e=new Map;for(let{id:s,supersedes:o}of t.all("water_change")){e.set(s,s);for(let i of o?t.earlier("water_change",s):[])e.set(i.id,s)}let n=new Set(t.all("note").map(({entry:s})=>s)),a=it(t.all("dose"),({water_change:s})=>e.get(s??"")),r=it(t.all("photo"),({entry:s})=>s&&n.has(s)?s:void 0);return{doses:a.lists,apart:a.rest,photos:r.lists,loose:r.rest}}function it(t,e){let n=new Map,a=[];for(let r of t){let s=e(r);s===void 0?a.push(r):n.get(s)?.push(r)||n.set(s,[r])}return{lists:n,rest:a}}function Ae(t,e,{doses:n,photos:a,apart:r,loose:s}){return e==="reading"?st(t.all(e),({test:o})=>o).map(o=>Ie(t,o)):e==="water_change"?t.all(e).map(o=>[o,...n.get(o.id)??[]]):e==="dose"?r.map(o=>[o]):e==="note"?st(t.all(e),({entry:o})=>o).map(o=>[...[...o].sort((i,m)=>i.at<m.at?-1:i.at>m.at?1:i.id<m.id?-1:1),...a.get(o[0].entry??"")??[]]):e==="photo"?st(s,({entry:o})=>o):t.all(e).map(o=>[o])}var st=(t,e)=>[...it(t,n=>e(n)??n.id).lists.values()];function Ie(t,e){let n=({kind:a,id:r,supersedes:s})=>(s?t.earlier(a,r).at(-1)?.id:null)??r;return[...e].sort((a,r)=>n(a)<n(r)?-1:1)}function Le(t,e){let[n]=e,a=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,r=e.flatMap(({kind:s,id:o,supersedes:i})=>i?t.earlier(s,o):[]);return{at:n.at,tank:a??null,group:P[n.kind],kind:n.kind,records:e,earlier:r}}var T=({kind:t,records:e=[]})=>lt(e)?l("history.incident"):He[t]?.()??l(`kind.${t}`),lt=t=>t.some(({kind:e,incident:n})=>e==="note"&&n),He={reading:()=>l("history.test"),water_change:()=>l("history.change"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},V=({records:t})=>t.flatMap(e=>[...A(e),...e.note?e.note.split(`
`):[]]);function ke({at:t,tank:e,earlier:n}){let a=n.flatMap(r=>[...A(r),...r.at===t?[]:[b(r.at,f.value)],...!r.tank||r.tank===e?[]:[d("tank",r.tank)?.name??l("life.a_tank")]]);return[...new Set(a)]}function A(t){let e=t;return e.kind==="reading"?[We(e)]:e.kind==="water_change"?[l("history.changed",{litres:Lt(e.litres)})]:e.kind==="dose"?[`${Ht(e)} ${Bt(e)}`]:e.kind==="feeding"?[Ge(e)]:e.kind==="note"?E(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[Ue(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:xt(bt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>d("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[me(e)]:[]}function We(t){let{value:e,unit:n}=At(t);return`${D(t.parameter)} ${e} ${n}`.trim()}function Ge({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:rt(t),food:e}):l("history.fed",{amount:rt(t)})}function Ue({task:t,skipped:e}){let n=d("task",t),a=n?Y(n):l("kind.task_done");return e?l("history.task_skipped",{title:a}):a}var ct={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},ut={note:{says:({text:t,quick:e})=>E({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function ze({kind:t,id:e}){let n=`correct.${t}.${e}`,a=pe({name:n,first:()=>({of:e,typed:null,tank:""})}),r=t in S&&g.value.may(t)&&Gt(t,e)?R(g.value).find(({records:$})=>$.some(Q=>Q.id===e)):null;if(!r)return u`<${x} up="/" />`;let s=r.records.filter($=>$.kind===t),o=s.find($=>$.id===a.draft.value.of)??s[0],{typed:i,at:m,tank:c}=a.draft.value,p=ut[t],v=p?Be(p,o,i):Ye(t,o,a.draft.value),y=Fe(o,v,d("tank",c||o.tank)),I=(v!==void 0||c!==""||m!==void 0&&m!==r.at)&&!y&&!ce(m)&&!(i===""&&!p?.may_be_empty),L=r.tank?`/tank/${r.tank}/history`:"/timeline",_=()=>a.save(()=>({writes:ge(g.value,r,{one:o,value:v,at:m,tank:c||void 0},Ut),said:l("correct.saved",{what:T(r)}),to:L}));return u`
    <${k} title=${l("correct.title")} up=${L} aside=${u`<span class="soft">${T(r)}</span>`}
      act=${u`<button class="main" type="button" disabled=${!I} onClick=${h(()=>{_()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:A(o).join("\xA0\xB7 ")||T(r),when:b(o.at,f.value)})}</p>
      ${s.length>1&&u`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${s.map(($,Q)=>u`<button key=${$.id} type="button" aria-pressed=${$===o}
          onClick=${h(()=>a.set({of:$.id,typed:null}))}>
          ${A($).join(" ")||l("photo.numbered",{at:Q+1})}</button>`)}</div>`}
      <${fe} form=${a} kind=${t} />
      ${y&&u`<div role="alert"><${ie} ...${y} /></div>`}
      <${Ke} kind=${t} record=${o} form=${a} />
      <${ue} at=${m} was=${r.at}
        on_at=${$=>a.set({at:$})} />
      ${r.tank&&u`<${le} was=${r.tank} tank=${c} on_pick=${$=>a.set({tank:$})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function Fe(t,e,n){if(t.kind==="water_change"&&n){let i=Pt(n,Number(e??t.litres));return i&&{spec:Nt(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:a,unit:r}=t,s=Zt({parameter:a,unit:r},D(a)),o=te(s,Number(e));return o&&{spec:s,error:o}}function Be({says:t},e,n){let a=n?.trim();return a===void 0||a===t(e).trim()?void 0:a}function Ye(t,e,{typed:n,keyed_in:a}){if(n===null||n==="")return;let r=t==="reading"&&(e.steps??[]).length>0,s=Number(r?n:G(ct[t](e)).hold(Number(n),a).toPrecision(12));return s===e[S[t]]?void 0:s}function Ke({kind:t,record:e,form:n}){let{typed:a,keyed_in:r}=n.draft.value,s=ut[t],o=yt(wt(t).fields,S[t]),i=c=>n.set({typed:c,keyed_in:s?void 0:G(ct[t](e)).unit}),m=t==="reading"?`${D(e.parameter)} ${qt(e.parameter,e.basis)}`.trim():o.label;return u`
    <section class="section"><h2>${m}</h2>
      <${Ve} kind=${t} record=${e} said=${s?a??s.says(e):a}
        keyed_in=${r} spec=${o} on_say=${i} /></section>`}function Ve({kind:t,record:e,said:n,keyed_in:a,spec:r,on_say:s}){if(t in ut)return u`<div class="field"><textarea aria-label=${r.label} rows="5" maxlength=${r.max_length}
      value=${n} onInput=${B(s)}></textarea></div>`;let o=t==="reading"?e.steps??[]:[];if(o.length===0){let{label:i,text:m}=G(ct[t](e));return u`<${ne} label=${r.label} unit=${i} value=${m(n,a)} on_value=${s} />`}return u`<div class="tiles steps" role="group" aria-label=${r.label}>
    ${o.map(i=>u`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${h(()=>s(String(i)))}>${H(i)}</button>`)}</div>`}var mt=40,pt=kt(null);function Je({id:t}){let e=t?d("tank",t):null,n=j(mt),a=[...Object.keys(P),"task"].map(O),r=C(()=>R(g.value,{tank:t}),[t,...a]);if(t&&!e)return u`<${x} up="/" />`;let s=t?`/tank/${t}/history`:"/timeline",o=$e.filter(p=>r.some(v=>v.group===p)),i=o.includes(pt.value??"")?pt.value:null,m=i?r.filter(({group:p})=>p===i):r,c=p=>h(()=>{pt.value=p,n.value=mt});return u`
    <${k} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&u`<span class="soft">${e.name}</span>`}>
      ${r.length===0&&u`<p class="sentence">${l("history.empty")}</p>`}
      ${o.length>1&&u`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${c(null)}>
          ${l("history.group.all")}</button>
        ${o.map(p=>u`<button key=${p} class="quiet" type="button" aria-pressed=${i===p}
          onClick=${c(p)}>${l(`history.group.${p}`)}</button>`)}
      </div>`}
      ${he(m.slice(0,n.value)).map(({day:p,events:v})=>u`
        <section class="section" key=${p}><h2>${q(p,f.value)}</h2>
          <ol class="lines">
            ${v.map(y=>u`<${Qe} key=${y.records[0].id} event=${y} here=${s}
            tank=${t?null:d("tank",y.tank??void 0)} />`)}</ol>
        </section>`)}
      ${m.length>n.value&&u`<p class="center section"><button class="quiet tall" type="button"
        onClick=${h(()=>n.value+=mt)}>${l("history.more")}</button></p>`}
    <//>`}function Qe({event:t,here:e,tank:n}){let{records:a}=t,[r]=a,s=r.meta.made_by===null?null:g.value.name_of(r.meta.made_by),o=a.map(({meta:_})=>_.state),i=o.includes("needs you")?"needs_you":o.every(_=>_==="shared")?"shared":"saved",m=a.every(({kind:_})=>g.value.may(_)),c=T(t),p=`${c}, ${q(Date.parse(t.at),f.value)} ${Z(t.at)}`,v=a.filter(({kind:_})=>_==="photo"),y=ke(t),J=Vt(r),I=t.kind in S?`/correct/${t.kind}/${r.id}`:J?Qt(r,Wt(r.kind),e):null,L=()=>F(J?Jt(g.value,r):_e(t),l("saved.removed",{what:c}));return u`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&u`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${Z(t.at)}</time>${s&&` \xB7 ${s}`}</span></p>
        <div class="said">${V(t).map(_=>u`<span key=${_}>${_}</span>`)}</div>
        ${y.length>0&&u`<p class="soft small">${l("history.corrected",{before:y.join("\xA0\xB7 ")})}
          </p>`}
        ${lt(a)&&t.tank&&u`<a class="quiet small" href=${`/trace?tank=${t.tank}&days=30`}>${l("trace.who")}</a>`}
        <${Xe} photos=${v} named=${p} />
        <span class="soft small row tight"><${z} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${m&&u`<div class="stack">
        ${I&&u`<a class="quiet square" href=${I}
          aria-label=${l("history.correct_named",{what:p})}><${z} name="note" size=${20} /></a>`}
        <button class="quiet square" type="button" aria-label=${l("remove_named",{what:p})}
          onClick=${h(()=>{L()})}><${z} name="remove" size=${20} /></button>
      </div>`}
    </li>`}var Xe=({photos:t,named:e})=>t.length>0&&u`<ul class="pictures small">${t.map((n,a)=>u`
    <li key=${n.id}><a href=${`/photo/${n.id}`}
      aria-label=${`${l("photo.numbered",{at:a+1})}, ${e}`}><${K} photo=${n}
      said=${n.caption??""} /></a></li>`)}</ul>`;function Ze({id:t}){let e=d("photo",t);if(!e)return u`<${x} up="/" />`;let n=d("tank",e.tank),a=n?`/tank/${n.id}/history`:"/timeline",r=R(g.value,{group:"notes"}).find(({records:i})=>i.includes(e)),s=r?V(r):[],o=async()=>{await F([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&Yt(a,{replace:!0})};return u`
    <${k} title=${l("kind.photo")} up=${a} aside=${n&&u`<span class="soft">${n.name}</span>`}>
      <figure><${K} photo=${e} said=${s.join(" ")} large />
        <figcaption>${s.map(i=>u`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:oe(e.meta.made_by),when:b(e.at,f.value)})}
            </p></figcaption></figure>
      ${g.value.may("photo")&&u`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${h(()=>{o()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var tn=["tank","incident","animals","plants","task","note","label","calculation"],en=["label","source_water","test_kit","own_species","own_plant"];function ve(t,e,n,a){let r=t.all("tank"),s=o=>r.find(i=>i.id===o)?.name??"";return[...r.map(({id:o,name:i,place:m,note:c})=>M("tank",i,m,`/tank/${o}`,[c])),...(r.length===0?[]:a.incidents??[]).map(({code:o,name:i,words:m})=>M("incident",i,"",`/incidents?what=${o}`,[m])),...r.flatMap(o=>nn(t,o,n)),...t.all("note").map(o=>{let i=o.tank?`/tank/${o.tank}/history`:"/";return M("note",a.note(o),s(o.tank),i,[o.text],o.at)}),...t.all("task").map(o=>M("task",a.task(o),s(o.tank),`/task/${o.id}`,[o.title,o.note])),...en.flatMap(o=>t.all(o).map(({id:i,name:m,note:c})=>M("label",m,"",`/room/${o}/${i}`,[c]))),...Object.values(e).flatMap(o=>o?[M("calculation",o.title,o.purpose,we(o.name))]:[])]}function nn(t,{id:e,name:n},a){let{animals:r}=Et(nt(t.all("stock_change"),e),a),{growing:s}=Xt(nt(t.all("planting"),e));return[...r.map(({species:o})=>M("animals",et("species",o),n,`/tank/${e}/stock`,[o])),...s.map(({species:o})=>M("plants",et("plants",o),n,`/tank/${e}/plants`,[o]))]}var M=(t,e,n="",a,r=[],s="")=>({kind:t,title:e,also:n,path:a,at:s,words:W([e,n,...r].join(" "))}),we=t=>`/bench/${t}`;function ye(t,e,n){let a=W(e).split(/\s+/).filter(Boolean);if(a.length===0)return[];let r=new Set(n(e).map(({name:m})=>we(m))),s=t.filter(m=>m.kind==="calculation"?r.has(m.path):a.every(c=>m.words.includes(c))),o=m=>{let c=W(m.title);return c.startsWith(a.join(" "))?2:a.every(p=>c.includes(p))?1:0},i=[...s].sort((m,c)=>o(c)-o(m)||(m.at<c.at?1:m.at>c.at?-1:m.title.localeCompare(c.title)));return tn.map(m=>({kind:m,found:i.filter(c=>c.kind===m)})).filter(m=>m.found.length>0)}var on=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],an=()=>({note:E,task:Y,incidents:zt.map(t=>({code:t,name:Ft(t),words:`${l("incident.title")} ${l(`incident.words.${t}`)}`}))}),ft=12,be=140;function rn(){let t=jt("search",()=>""),e=C(()=>ve(U,X(),f.peek(),an()),on.map(O)),n=s=>ee(X(),s).flatMap(({entries:o})=>o),a=ye(e,t.value,n),r=a.reduce((s,{found:o})=>s+o.length,0);return u`
    <${k} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${B(s=>t.value=s)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):r?l("search.found",{count:r}):l("search.nothing",{words:t.value.trim()})}</p>
      ${a.map(({kind:s,found:o})=>u`
        <section class="section" key=${s}><h2>${l(`search.group_${s}`)}</h2>
          <ul class="lines">${o.slice(0,ft).map(({path:i,title:m,also:c})=>u`
            <li key=${i+m}><a class="line" href=${i}><span class="grow"><b>${sn(m)}</b>
              ${c&&u`<br /><span class="soft small">${c}</span>`}</span></a></li>`)}</ul>
          ${o.length>ft&&u`<p class="soft small">${l("life.more_rows",{count:o.length-ft})}
            </p>`}
        </section>`)}
    <//>`}var sn=t=>t.length>be?`${t.slice(0,be).trimEnd()} \u2026`:t;var De=[7,30,90,365],$t={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...ot,temperature:"\xB0C",feed:"g",changed:"L"};function Se(t,e,n){let a=e.now,r=new Date(a-(n-1)*864e5).setHours(0,0,0,0),s=c=>Date.parse(c.at)>=r&&Date.parse(c.at)<=a,o=e.changes.filter(s),i={what:t,unit:$t[t],from:r,to:a,marks:t==="changed"?[]:o.map(({at:c})=>Date.parse(c))};if(t==="feed"){let c=e.feedings.filter(s).map(p=>({at:un(Date.parse(p.at)),value:p.feed_g}));return{...i,points:xe(c),bars:!0,step:864e5}}if(t==="changed"){let c=o.map(p=>({at:Me(Date.parse(p.at)),value:p.litres}));return{...i,points:c.length?cn(xe(c),Me(a)):[],bars:!0,step:7*864e5}}let m=e.readings.filter(c=>c.parameter===t&&s(c)).flatMap(c=>{let p=ln(c);return p===void 0?[]:[{at:Date.parse(c.at),value:p}]});return{...i,points:m,bars:!1,step:0}}function ln(t){return St(t.parameter)?vt(t).value:t.parameter in ot?Tt(t):t.value}function Ce({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,a)=>n+a,0)/e.length}}function Oe({what:t,points:e}){let n=e.map(({value:o})=>o),a=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,a>0?a*1.12:1];let r=Math.min(...n),s=Math.max((a-r)*.2,.5);return[r-s,a+s]}function xe(t){let e=[];for(let{at:n,value:a}of t){let r=e.at(-1);r?.at===n?r.value+=a:e.push({at:n,value:a})}return e}function cn(t,e){let n=[];for(let a=t[0].at;a<=e;a=mn(a))n.push(t.find(r=>r.at===a)??{at:a,value:0});return n}var un=t=>new Date(t).setHours(0,0,0,0);function Me(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function mn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var pn=432e5;function Ee({trend:t}){let e=gt(null);return _t(()=>{let n=e.current,a=()=>{},r=new IntersectionObserver(s=>{s.some(({isIntersecting:o})=>o)&&(r.disconnect(),a=fn(n,t))},{rootMargin:"200px"});return r.observe(n),()=>{r.disconnect(),a()}},[t]),u`<div class="chart" ref=${e} aria-hidden="true"></div>`}function fn(t,e){let{points:n,bars:a,step:r,marks:s,from:o,to:i}=e,m={marks:s.map(p=>({at:p,kind:"change"})),now:i,to:i},c=[n.map(({at:p})=>(p+r/2)/1e3),n.map(({value:p})=>p)];return re(t,p=>({scales:{x:{time:!0,range:[o/1e3,(i+Math.max(r/2,pn))/1e3]},y:{range:Oe(e)}},series:[{},a?{stroke:()=>N("--action"),fill:()=>N("--fan"),width:1.5,points:{show:!1},paths:p.paths.bars({size:[.7,40]})}:{stroke:()=>N("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>N("--action")}}],axes:se(),hooks:{drawAxes:[v=>ae(v,m,N)]}}),c)}var $n=30,ht=60;function hn({id:t}){let e=d("tank",t),n=j($n),a=j(!1),r=Math.floor(f.value/36e5),s=C(()=>{if(!e)return[];let o=Rt(U,e,f.value);return Object.keys($t).map(i=>_n(Se(i,o,n.value))).filter(({points:i})=>i.length>0)},[e,n.value,r,at.value,...["reading","water_change","feeding"].map(O)]);return e?u`
    <${k} title=${l("trends.title")} up=${`/tank/${t}`} aside=${u`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${De.map(o=>u`<button key=${o} class="quiet" type="button"
          aria-pressed=${n.value===o} onClick=${h(()=>n.value=o)}>${l("trends.days",{count:o})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${a.value}
          onClick=${h(()=>a.value=!a.value)}>${l("outlook.as_table")}</button>
      </div>
      ${s.length===0&&u`<p class="sentence section">${l("trends.none")}</p>`}
      ${s.map(o=>u`<${gn} key=${o.what} trend=${o} as_table=${a.value} />`)}
    <//>`:u`<${x} up="/" />`}function _n(t){let{unit:e,points:n}=t,a=Ct({name:"",unit:e},at.value);return{...t,unit:a,points:n.map(({at:r,value:s})=>({at:r,value:Ot(s,e,a)}))}}function gn({trend:t,as_table:e}){let{what:n,unit:a}=t,r=`trend-${n}`,s=Ce(t);if(!s)return null;let o=m=>wn(n,m),i={last:o(s.last.value),when:b(s.last.at,f.value),low:o(s.low),high:o(s.high),mean:o(s.mean),count:s.count};return u`
    <section class="parameter" aria-labelledby=${r}>
      <h2 id=${r}>${Ne(n)} <span class="unit">${tt(a)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?u`<${kn} trend=${t} said=${o} />`:u`<${Ee} trend=${t} />`}
    </section>`}function kn({trend:{what:t,unit:e,points:n,bars:a,marks:r},said:s}){let o=[...n.map(({at:i,value:m})=>({at:i,label:a?q(i,f.value):b(i,f.value),value:s(m)})),...r.map(i=>({at:i,label:b(i,f.value),value:l("trends.changed")}))].sort((i,m)=>m.at-i.at);return u`
    <table class="measured"><caption class="unseen">${Ne(t)} ${tt(e)}</caption>
      <tbody>${o.slice(0,ht).map(({at:i,label:m,value:c},p)=>u`<tr key=${`${i}-${p}`}><th scope="row">
        ${m}</th><td>${c}</td></tr>`)}</tbody></table>
    ${o.length>ht&&u`<p class="soft small">${l("trends.rows",{count:ht,of:o.length})}</p>`}`}var vn={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},Ne=t=>vn[t]?.()??D(t),wn=(t,e)=>t in Dt?It(e):t==="feed"?H(e,2):Mt(e,1);function yn({id:t}){let e=d("tank",t);return e?u`
    <${k} title=${l("water.short")} up=${`/tank/${t}`} aside=${u`<span class="soft">${e.name}</span>`}>
      <${de} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:u`<${x} up="/tanks" />`}export{ze as Correct,Je as History,Ze as Photo,rn as Search,hn as Trends,yn as Water};
//# sourceMappingURL=journal-AUZHSHLQ.js.map
