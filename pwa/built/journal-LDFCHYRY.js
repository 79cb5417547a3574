import{D as Bt,E as Yt,F as Kt,Fa as re,G as Vt,Ga as se,H as Jt,Ha as K,I as Qt,Ma as ie,S as Xt,U as Zt,W as te,Y as ee,Z as ne,Za as le,_ as P,_a as ce,a as B,ab as ue,b as zt,c as Y,da as oe,ua as ae,z as Ft}from"./chunk-RZQ73XFX.js";import{$ as et,A as I,Bb as qt,C as Z,D as b,Eb as rt,Fb as Lt,K as j,N as xt,P as St,Pb as k,Qb as f,Ra as Pt,Sb as Ht,Tb as h,Ub as O,V as Mt,Vb as It,W as tt,Wc as E,X as Dt,Xb as G,Xc as Ut,Yc as F,Z as Ct,b as $t,bb as ot,bc as U,c as ht,d as C,db as Nt,e as _t,fd as x,g as A,h as u,ka as Ot,la as Et,lc as Wt,mc as z,nb as Rt,qb as at,ra as nt,rb as W,rc as _,tb as S,tc as Gt,vb as Tt,wb as At,xc as v,y as l,z as bt,zb as jt}from"./chunk-OWP3R32J.js";import"./chunk-JUGPZGK6.js";import{A as wt,f as gt,o as X,r as kt,t as vt,w as yt}from"./chunk-GIANC5NE.js";import"./chunk-HZWNA2UL.js";import"./chunk-SMT73DPE.js";var N={reading:"tests",water_change:"water",dose:"water",feeding:"food",stock_change:"animals",planting:"plants",note:"notes",photo:"notes",task_done:"tasks",shared_tool:"tools"},Oe=Object.keys(N),me=[...new Set(Object.values(N))],M={reading:"value",water_change:"litres",dose:"amount",feeding:"feed_g",note:"text",photo:"caption"};function R(t,{tank:e,group:n}={}){let a=Re(t);return Oe.filter(s=>!n||N[s]===n).flatMap(s=>Te(t,s,a)).map(s=>je(t,s)).filter(s=>!e||s.tank===e||Ee(s)===e).sort((s,o)=>s.at<o.at?1:s.at>o.at?-1:0)}var Ee=({kind:t,records:e})=>t==="shared_tool"?e[0].other_tank:null;function fe(t){let e=[];for(let n of t){let a=new Date(n.at).setHours(0,0,0,0);e.at(-1)?.day!==a&&e.push({day:a,events:[]}),e.at(-1)?.events.push(n)}return e}var de=({records:t,earlier:e})=>[...t,...e].map(({kind:n,id:a})=>({type:"del",kind:n,id:a}));function $e(t,e,{one:n,value:a,at:r,tank:s},o){let i=o(),p=r!==void 0||s!==void 0||n.kind==="water_change";return e.records.filter(c=>p||c===n).map(c=>{let m={};return r!==void 0&&(m.at=Ft(c.at,e.at,r)),s!==void 0&&(m.tank=s),c===n&&a!==void 0&&(m[M[c.kind]]=a===""?void 0:a),c===n&&c.kind==="note"&&a!==void 0&&(m.quick=void 0),c.kind==="water_change"&&Object.assign(m,Pe(t,{...c,...m},c)),e.kind==="water_change"&&c.kind==="dose"&&(m.water_change=i),Ne(c,c===n?i:o(),m)})}function Pe(t,{litres:e,tank:n,from_tank:a},r){let{water_l:s}=t.get("tank",n),o=n===r.tank?r.fraction/r.litres:1/s;return{fraction:Math.min(1,o*Number(e)),...a===n?{from_tank:void 0}:{}}}function Ne({id:t,kind:e,meta:n,...a},r,s){return{type:"put",kind:e,id:r,fields:{...a,...s,supersedes:t}}}function Re(t){let e=new Map;for(let{id:s,supersedes:o}of t.all("water_change")){e.set(s,s);for(let i of o?t.earlier("water_change",s):[])e.set(i.id,s)}let n=new Set(t.all("note").map(({entry:s})=>s)),a=st(t.all("dose"),({water_change:s})=>e.get(s??"")),r=st(t.all("photo"),({entry:s})=>s&&n.has(s)?s:void 0);return{doses:a.lists,apart:a.rest,photos:r.lists,loose:r.rest}}function st(t,e){let n=new Map,a=[];for(let r of t){let s=e(r);s===void 0?a.push(r):n.get(s)?.push(r)||n.set(s,[r])}return{lists:n,rest:a}}function Te(t,e,{doses:n,photos:a,apart:r,loose:s}){return e==="reading"?pe(t.all(e),({test:o})=>o).map(o=>Ae(t,o)):e==="water_change"?t.all(e).map(o=>[o,...n.get(o.id)??[]]):e==="dose"?r.map(o=>[o]):e==="note"?t.all(e).map(o=>[o,...a.get(o.entry??"")??[]]):e==="photo"?pe(s,({entry:o})=>o):t.all(e).map(o=>[o])}var pe=(t,e)=>[...st(t,n=>e(n)??n.id).lists.values()];function Ae(t,e){let n=({kind:a,id:r,supersedes:s})=>(s?t.earlier(a,r).at(-1)?.id:null)??r;return e.toSorted((a,r)=>n(a)<n(r)?-1:1)}function je(t,e){let[n]=e,a=n.kind==="task_done"?t.get("task",n.task)?.tank:n.tank,r=e.flatMap(({kind:s,id:o,supersedes:i})=>i?t.earlier(s,o):[]);return{at:n.at,tank:a??null,group:N[n.kind],kind:n.kind,records:e,earlier:r}}var T=({kind:t})=>qe[t]?.()??l(`kind.${t}`),qe={reading:()=>l("history.test"),water_change:()=>l("history.change"),dose:()=>l("history.dose"),feeding:()=>l("history.feeding"),note:()=>l("history.note")},V=({records:t})=>t.flatMap(e=>[...q(e),...e.note?e.note.split(`
`):[]]);function he({at:t,tank:e,earlier:n}){let a=n.flatMap(r=>[...q(r),...r.at===t?[]:[b(r.at,f.value)],...!r.tank||r.tank===e?[]:[h("tank",r.tank)?.name??l("life.a_tank")]]);return[...new Set(a)]}function q(t){let e=t;return e.kind==="reading"?[Le(e)]:e.kind==="water_change"?[l("history.changed",{litres:qt(e.litres)})]:e.kind==="dose"?[`${Lt(e)} ${Ut(e)}`]:e.kind==="feeding"?[He(e)]:e.kind==="note"?E(e).split(`
`):e.kind==="photo"?e.caption?[e.caption]:[]:e.kind==="task_done"?[Ie(e)]:e.kind==="shared_tool"?[l("history.shared_tool",{tool:wt(yt("shared_tool","tool"),e.tool),tanks:[e.tank,e.other_tank].map(n=>h("tank",n)?.name).filter(Boolean).join("\xA0\xB7 ")})]:e.kind==="stock_change"||e.kind==="planting"?[ie(e)]:[]}function Le(t){let{value:e,unit:n}=At(t);return`${S(t.parameter)} ${e} ${n}`.trim()}function He({feed_g:t,food:e}){return t===0?l("history.fed_none"):e?l("history.fed_food",{amount:rt(t),food:e}):l("history.fed",{amount:rt(t)})}function Ie({task:t,skipped:e}){let n=h("task",t),a=n?F(n):l("kind.task_done");return e?l("history.task_skipped",{title:a}):a}var it={reading:({unit:t=""})=>t,water_change:()=>"L",dose:({unit:t})=>l(`unit.${t}`),feeding:()=>"g"},lt={note:{says:({text:t,quick:e})=>E({text:t,quick:e}),may_be_empty:!1},photo:{says:({caption:t=""})=>t,may_be_empty:!0}};function We({kind:t,id:e}){let n=`correct.${t}.${e}`,a=le({name:n,first:()=>({of:e,typed:null,tank:""})}),r=t in M&&k.value.may(t)&&It(t,e)?R(k.value).find(({records:$})=>$.some(Q=>Q.id===e)):null;if(!r)return u`<${x} up="/" />`;let s=r.records.filter($=>$.kind===t),o=s.find($=>$.id===a.draft.value.of)??s[0],{typed:i,at:p,tank:c}=a.draft.value,m=lt[t],g=m?Ue(m,o,i):ze(t,o,a.draft.value),w=Ge(o,g,h("tank",c||o.tank)),L=(g!==void 0||c!==""||p!==void 0&&p!==r.at)&&!w&&!re(p)&&!(i===""&&!m?.may_be_empty),H=r.tank?`/tank/${r.tank}/history`:"/timeline",d=()=>a.save(()=>({writes:$e(k.value,r,{one:o,value:g,at:p,tank:c||void 0},Wt),said:l("correct.saved",{what:T(r)}),to:H}));return u`
    <${v} title=${l("correct.title")} up=${H} aside=${u`<span class="soft">${T(r)}</span>`}
      act=${u`<button class="main" type="button" disabled=${!L} onClick=${_(()=>{d()})}>
        ${l("correct.save")}</button>`}>
      <p class="soft">
        ${l("correct.stands",{said:q(o).join("\xA0\xB7 ")||T(r),when:b(o.at,f.value)})}</p>
      ${s.length>1&&u`<div class="tiles two short" role="group" aria-label=${l("correct.which")}>
        ${s.map(($,Q)=>u`<button key=${$.id} type="button" aria-pressed=${$===o}
          onClick=${_(()=>a.set({of:$.id,typed:null}))}>
          ${q($).join(" ")||l("photo.numbered",{at:Q+1})}</button>`)}</div>`}
      <${ce} form=${a} kind=${t} />
      ${w&&u`<div role="alert"><${oe} ...${w} /></div>`}
      <${Fe} kind=${t} record=${o} form=${a} />
      <${se} at=${p} was=${r.at}
        on_at=${$=>a.set({at:$})} />
      ${r.tank&&u`<${ae} was=${r.tank} tank=${c} on_pick=${$=>a.set({tank:$})} />`}
      <p class="soft small">${l("correct.kept")}</p>
    <//>`}function Ge(t,e,n){if(t.kind==="water_change"&&n){let i=Et(n,Number(e??t.litres));return i&&{spec:Ot(n,l("change.litres")),error:i}}if(t.kind!=="reading"||e===void 0)return null;let{parameter:a,unit:r}=t,s=Jt({parameter:a,unit:r},S(a)),o=Qt(s,Number(e));return o&&{spec:s,error:o}}function Ue({says:t},e,n){let a=n?.trim();return a===void 0||a===t(e).trim()?void 0:a}function ze(t,e,{typed:n,keyed_in:a}){if(n===null||n==="")return;let r=t==="reading"&&(e.steps??[]).length>0,s=Number(r?n:W(it[t](e)).hold(Number(n),a).toPrecision(12));return s===e[M[t]]?void 0:s}function Fe({kind:t,record:e,form:n}){let{typed:a,keyed_in:r}=n.draft.value,s=lt[t],o=vt(kt(t).fields,M[t]),i=c=>n.set({typed:c,keyed_in:s?void 0:W(it[t](e)).unit}),p=t==="reading"?`${S(e.parameter)} ${Tt(e.parameter,e.basis)}`.trim():o.label;return u`
    <section class="section"><h2>${p}</h2>
      <${Be} kind=${t} record=${e} said=${s?a??s.says(e):a}
        keyed_in=${r} spec=${o} on_say=${i} /></section>`}function Be({kind:t,record:e,said:n,keyed_in:a,spec:r,on_say:s}){if(t in lt)return u`<div class="field"><textarea aria-label=${r.label} rows="5" maxlength=${r.max_length}
      value=${n} onInput=${Y(s)}></textarea></div>`;let o=t==="reading"?e.steps??[]:[];if(o.length===0){let{label:i,text:p}=W(it[t](e));return u`<${Xt} label=${r.label} unit=${i} value=${p(n,a)} on_value=${s} />`}return u`<div class="tiles steps" role="group" aria-label=${r.label}>
    ${o.map(i=>u`<button type="button" key=${i}
      aria-pressed=${n===null?e.value===i:Number(n)===i}
      onClick=${_(()=>s(String(i)))}>${I(i)}</button>`)}</div>`}var ct=40,ut=_t(null);function Ye({id:t}){let e=t?h("tank",t):null,n=A(ct),a=[...Object.keys(N),"task"].map(O),r=C(()=>R(k.value,{tank:t}),[t,...a]);if(t&&!e)return u`<${x} up="/" />`;let s=t?`/tank/${t}/history`:"/timeline",o=me.filter(m=>r.some(g=>g.group===m)),i=o.includes(ut.value??"")?ut.value:null,p=i?r.filter(({group:m})=>m===i):r,c=m=>_(()=>{ut.value=m,n.value=ct});return u`
    <${v} title=${l(t?"history.title":"history.all_tanks")} up=${t?`/tank/${t}`:"/tanks"}
      aside=${e&&u`<span class="soft">${e.name}</span>`}>
      ${r.length===0&&u`<p class="sentence">${l("history.empty")}</p>`}
      ${o.length>1&&u`<div class="row chips" role="group" aria-label=${l("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${i===null} onClick=${c(null)}>
          ${l("history.group.all")}</button>
        ${o.map(m=>u`<button key=${m} class="quiet" type="button" aria-pressed=${i===m}
          onClick=${c(m)}>${l(`history.group.${m}`)}</button>`)}
      </div>`}
      ${fe(p.slice(0,n.value)).map(({day:m,events:g})=>u`
        <section class="section" key=${m}><h2>${j(m,f.value)}</h2>
          <ol class="lines">
            ${g.map(w=>u`<${Ke} key=${w.records[0].id} event=${w} here=${s}
            tank=${t?null:h("tank",w.tank??void 0)} />`)}</ol>
        </section>`)}
      ${p.length>n.value&&u`<p class="center section"><button class="quiet tall" type="button"
        onClick=${_(()=>n.value+=ct)}>${l("history.more")}</button></p>`}
    <//>`}function Ke({event:t,here:e,tank:n}){let{records:a}=t,[r]=a,s=r.meta.made_by===null?null:k.value.name_of(r.meta.made_by),o=a.map(({meta:d})=>d.state),i=o.includes("needs you")?"needs_you":o.every(d=>d==="shared")?"shared":"saved",p=a.every(({kind:d})=>k.value.may(d)),c=T(t),m=`${c}, ${j(Date.parse(t.at),f.value)} ${Z(t.at)}`,g=a.filter(({kind:d})=>d==="photo"),w=he(t),J=Bt(r),L=t.kind in M?`/correct/${t.kind}/${r.id}`:J?Kt(r,Ht(r.kind),e):null,H=()=>z(J?Yt(k.value,r):de(t),l("saved.removed",{what:c}));return u`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${n&&u`<a class="of-tank" href=${`/tank/${n.id}`}>${n.name}</a> `}<span
          class="who"><time datetime=${t.at}>${Z(t.at)}</time>${s&&` \xB7 ${s}`}</span></p>
        <div class="said">${V(t).map(d=>u`<span key=${d}>${d}</span>`)}</div>
        ${w.length>0&&u`<p class="soft small">${l("history.corrected",{before:w.join("\xA0\xB7 ")})}
          </p>`}
        ${g.length>0&&u`<ul class="pictures small">${g.map((d,$)=>u`
          <li key=${d.id}><a href=${`/photo/${d.id}`}
            aria-label=${`${l("photo.numbered",{at:$+1})}, ${m}`}><${K} photo=${d}
            said=${d.caption??""} /></a></li>`)}</ul>`}
        <span class="soft small row tight"><${U} name=${i==="needs_you"?"needs":i} size=${16} />
          ${l(`record.${i}`)}</span>
      </div>
      ${p&&u`<div class="stack">
        ${L&&u`<a class="quiet square" href=${L}
          aria-label=${l("history.correct_named",{what:m})}><${U} name="note" size=${20} /></a>`}
        <button class="quiet square" type="button" aria-label=${l("remove_named",{what:m})}
          onClick=${_(()=>{H()})}><${U} name="remove" size=${20} /></button>
      </div>`}
    </li>`}function Ve({id:t}){let e=h("photo",t);if(!e)return u`<${x} up="/" />`;let n=h("tank",e.tank),a=n?`/tank/${n.id}/history`:"/timeline",r=R(k.value,{group:"notes"}).find(({records:i})=>i.includes(e)),s=r?V(r):[],o=async()=>{await z([{type:"del",kind:"photo",id:t}],l("saved.removed",{what:l("kind.photo")}))&&Gt(a,{replace:!0})};return u`
    <${v} title=${l("kind.photo")} up=${a} aside=${n&&u`<span class="soft">${n.name}</span>`}>
      <figure><${K} photo=${e} said=${s.join(" ")} large />
        <figcaption>${s.map(i=>u`<p key=${i}>${i}</p>`)}
          <p class="soft small">${l("photo.by",{who:Zt(e.meta.made_by),when:b(e.at,f.value)})}
            </p></figcaption></figure>
      ${k.value.may("photo")&&u`<p class="row section"><a class="quiet" href=${`/correct/photo/${t}`}>
        ${l("photo.correct")}</a><button class="quiet" type="button" onClick=${_(()=>{o()})}>
        ${l("photo.remove")}</button></p>`}
    <//>`}var Je=["tank","animals","plants","task","note","label","calculation"],Qe=["label","source_water","test_kit","own_species","own_plant"];function _e(t,e,n,a){let r=t.all("tank"),s=o=>r.find(i=>i.id===o)?.name??"";return[...r.map(({id:o,name:i,place:p,note:c})=>D("tank",i,p,`/tank/${o}`,[c])),...r.flatMap(o=>Xe(t,o,n)),...t.all("note").map(o=>{let i=o.tank?`/tank/${o.tank}/history`:"/";return D("note",a.note(o),s(o.tank),i,[o.text],o.at)}),...t.all("task").map(o=>D("task",a.task(o),s(o.tank),`/task/${o.id}`,[o.title,o.note])),...Qe.flatMap(o=>t.all(o).map(({id:i,name:p,note:c})=>D("label",p,"",`/room/${o}/${i}`,[c]))),...Object.values(e).flatMap(o=>o?[D("calculation",o.title,o.purpose,ge(o.name))]:[])]}function Xe(t,{id:e,name:n},a){let{animals:r}=Ct(nt(t.all("stock_change"),e),a),{growing:s}=Vt(nt(t.all("planting"),e));return[...r.map(({species:o})=>D("animals",et("species",o),n,`/tank/${e}/stock`,[o])),...s.map(({species:o})=>D("plants",et("plants",o),n,`/tank/${e}/plants`,[o]))]}var D=(t,e,n="",a,r=[],s="")=>({kind:t,title:e,also:n,path:a,at:s,words:B([e,n,...r].join(" "))}),ge=t=>`/bench/${t}`;function ke(t,e,n){let a=B(e).split(/\s+/).filter(Boolean);if(a.length===0)return[];let r=new Set(n(e).map(({name:p})=>ge(p))),s=t.filter(p=>p.kind==="calculation"?r.has(p.path):a.every(c=>p.words.includes(c))),o=p=>{let c=B(p.title);return c.startsWith(a.join(" "))?2:a.every(m=>c.includes(m))?1:0},i=s.toSorted((p,c)=>o(c)-o(p)||(p.at<c.at?1:p.at>c.at?-1:p.title.localeCompare(c.title)));return Je.map(p=>({kind:p,found:i.filter(c=>c.kind===p)})).filter(p=>p.found.length>0)}var Ze=["tank","stock_change","planting","note","task","label","source_water","test_kit","own_species","own_plant"],tn={note:E,task:F},pt=12,ve=140;function en(){let t=Rt("search",()=>""),e=C(()=>_e(G,X(),f.peek(),tn),Ze.map(O)),n=s=>zt(X(),s).flatMap(({entries:o})=>o),a=ke(e,t.value,n),r=a.reduce((s,{found:o})=>s+o.length,0);return u`
    <${v} title=${l("search.title")} up="/tanks">
      <div class="field"><label for="search">${l("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${t.value}
          onInput=${Y(s=>t.value=s)} /></div>
      <p class="soft" role="status">${t.value.trim()===""?l("search.why"):r?l("search.found",{count:r}):l("search.nothing",{words:t.value.trim()})}</p>
      ${a.map(({kind:s,found:o})=>u`
        <section class="section" key=${s}><h2>${l(`search.group_${s}`)}</h2>
          <ul class="lines">${o.slice(0,pt).map(({path:i,title:p,also:c})=>u`
            <li key=${i+p}><a class="line" href=${i}><span class="grow"><b>${nn(p)}</b>
              ${c&&u`<br /><span class="soft small">${c}</span>`}</span></a></li>`)}</ul>
          ${o.length>pt&&u`<p class="soft small">${l("life.more_rows",{count:o.length-pt})}
            </p>`}
        </section>`)}
    <//>`}var nn=t=>t.length>ve?`${t.slice(0,ve).trimEnd()} \u2026`:t;var be=[7,30,90,365],ft={total_ammonia:"mg N/L",nitrite:"mg N/L",nitrate:"mg N/L",ph:"",...ot,temperature:"\xB0C",feed:"g",changed:"L"};function xe(t,e,n){let a=e.now,r=new Date(a-(n-1)*864e5).setHours(0,0,0,0),s=c=>Date.parse(c.at)>=r&&Date.parse(c.at)<=a,o=e.changes.filter(s),i={what:t,unit:ft[t],from:r,to:a,marks:t==="changed"?[]:o.map(({at:c})=>Date.parse(c))};if(t==="feed"){let c=e.feedings.filter(s).map(m=>({at:rn(Date.parse(m.at)),value:m.feed_g}));return{...i,points:ye(c),bars:!0,step:864e5}}if(t==="changed"){let c=o.map(m=>({at:we(Date.parse(m.at)),value:m.litres}));return{...i,points:c.length?an(ye(c),we(a)):[],bars:!0,step:7*864e5}}let p=e.readings.filter(c=>c.parameter===t&&s(c)).flatMap(c=>{let m=on(c);return m===void 0?[]:[{at:Date.parse(c.at),value:m}]});return{...i,points:p,bars:!1,step:0}}function on(t){return St(t.parameter)?gt(t).value:t.parameter in ot?Nt(t):t.value}function Se({points:t}){if(t.length===0)return null;let e=t.map(({value:n})=>n);return{count:t.length,last:t[t.length-1],low:Math.min(...e),high:Math.max(...e),mean:e.reduce((n,a)=>n+a,0)/e.length}}function Me({what:t,points:e}){let n=e.map(({value:o})=>o),a=Math.max(...n);if(t!=="ph"&&t!=="temperature")return[0,a>0?a*1.12:1];let r=Math.min(...n),s=Math.max((a-r)*.2,.5);return[r-s,a+s]}function ye(t){let e=[];for(let{at:n,value:a}of t){let r=e.at(-1);r?.at===n?r.value+=a:e.push({at:n,value:a})}return e}function an(t,e){let n=[];for(let a=t[0].at;a<=e;a=sn(a))n.push(t.find(r=>r.at===a)??{at:a,value:0});return n}var rn=t=>new Date(t).setHours(0,0,0,0);function we(t){let e=new Date(t);return e.setDate(e.getDate()-(e.getDay()+6)%7),e.setHours(0,0,0,0)}function sn(t){let e=new Date(t);return e.setDate(e.getDate()+7)}var ln=432e5;function De({trend:t}){let e=ht(null);return $t(()=>{let n=e.current,a=()=>{},r=new IntersectionObserver(s=>{s.some(({isIntersecting:o})=>o)&&(r.disconnect(),a=cn(n,t))},{rootMargin:"200px"});return r.observe(n),()=>{r.disconnect(),a()}},[t]),u`<div class="chart" ref=${e} aria-hidden="true"></div>`}function cn(t,e){let{points:n,bars:a,step:r,marks:s,from:o,to:i}=e,p={marks:s.map(m=>({at:m,kind:"change"})),now:i,to:i},c=[n.map(({at:m})=>(m+r/2)/1e3),n.map(({value:m})=>m)];return ee(t,m=>({scales:{x:{time:!0,range:[o/1e3,(i+Math.max(r/2,ln))/1e3]},y:{range:Me(e)}},series:[{},a?{stroke:()=>P("--action"),fill:()=>P("--fan"),width:1.5,points:{show:!1},paths:m.paths.bars({size:[.7,40]})}:{stroke:()=>P("--action"),width:2,points:{show:!0,size:7,width:1,fill:()=>P("--action")}}],axes:ne(),hooks:{drawAxes:[g=>te(g,p,P)]}}),c)}var pn=30,dt=60;function mn({id:t}){let e=h("tank",t),n=A(pn),a=A(!1),r=Math.floor(f.value/36e5),s=C(()=>{if(!e)return[];let o=Pt(G,e,f.value);return Object.keys(ft).map(i=>fn(xe(i,o,n.value))).filter(({points:i})=>i.length>0)},[e,n.value,r,at.value,...["reading","water_change","feeding"].map(O)]);return e?u`
    <${v} title=${l("trends.title")} up=${`/tank/${t}`} aside=${u`<span class="soft">${e.name}</span>`}>
      <div class="row chips" role="group" aria-label=${l("trends.how")}>
        ${be.map(o=>u`<button key=${o} class="quiet" type="button"
          aria-pressed=${n.value===o} onClick=${_(()=>n.value=o)}>${l("trends.days",{count:o})}
          </button>`)}
        <button class="quiet" type="button" aria-pressed=${a.value}
          onClick=${_(()=>a.value=!a.value)}>${l("outlook.as_table")}</button>
      </div>
      ${s.length===0&&u`<p class="sentence section">${l("trends.none")}</p>`}
      ${s.map(o=>u`<${dn} key=${o.what} trend=${o} as_table=${a.value} />`)}
    <//>`:u`<${x} up="/" />`}function fn(t){let{unit:e,points:n}=t,a=Mt({name:"",unit:e},at.value);return{...t,unit:a,points:n.map(({at:r,value:s})=>({at:r,value:Dt(s,e,a)}))}}function dn({trend:t,as_table:e}){let{what:n,unit:a}=t,r=`trend-${n}`,s=Se(t);if(!s)return null;let o=p=>_n(n,p),i={last:o(s.last.value),when:b(s.last.at,f.value),low:o(s.low),high:o(s.high),mean:o(s.mean),count:s.count};return u`
    <section class="parameter" aria-labelledby=${r}>
      <h2 id=${r}>${Ce(n)} <span class="unit">${tt(a)}</span></h2>
      <p class="soft">${l(t.bars?`trends.brief_${n}`:"trends.brief",i)}</p>
      ${e?u`<${$n} trend=${t} said=${o} />`:u`<${De} trend=${t} />`}
    </section>`}function $n({trend:{what:t,unit:e,points:n,bars:a,marks:r},said:s}){let o=[...n.map(({at:i,value:p})=>({at:i,label:a?j(i,f.value):b(i,f.value),value:s(p)})),...r.map(i=>({at:i,label:b(i,f.value),value:l("trends.changed")}))].toSorted((i,p)=>p.at-i.at);return u`
    <table class="measured"><caption class="unseen">${Ce(t)} ${tt(e)}</caption>
      <tbody>${o.slice(0,dt).map(({at:i,label:p,value:c},m)=>u`<tr key=${`${i}-${m}`}><th scope="row">
        ${p}</th><td>${c}</td></tr>`)}</tbody></table>
    ${o.length>dt&&u`<p class="soft small">${l("trends.rows",{count:dt,of:o.length})}</p>`}`}var hn={feed:()=>l("trends.feed"),changed:()=>l("trends.water")},Ce=t=>hn[t]?.()??S(t),_n=(t,e)=>t in xt?jt(e):t==="feed"?I(e,2):bt(e,1);function gn({id:t}){let e=h("tank",t);return e?u`
    <${v} title=${l("water.short")} up=${`/tank/${t}`} aside=${u`<span class="soft">${e.name}</span>`}>
      <${ue} tank=${e} here=${`/tank/${t}/water`} />
    <//>`:u`<${x} up="/tanks" />`}export{We as Correct,Ye as History,Ve as Photo,en as Search,mn as Trends,gn as Water};
//# sourceMappingURL=journal-LDFCHYRY.js.map
