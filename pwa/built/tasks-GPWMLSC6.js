import{Kb as Qt,Mb as Gt,Nb as ot,Pb as nt,Qb as st,Sa as qt,Ta as Wt,Ua as Ht,cb as Zt,qb as tt,sb as et,ta as Pt,tb as ct,ua as jt,ub as Kt,va as Vt,xb as at}from"./chunk-VO4XJGUN.js";import"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{$ as K,$a as u,$b as zt,Ba as T,Db as f,Dc as N,Ma as Et,Mb as Lt,Q as x,R as M,S as bt,T as rt,U as R,Ub as it,W as U,X as Z,Y as gt,Z as Tt,Zb as lt,_ as Dt,_a as k,bb as v,cb as b,ec as w,fb as Ot,fc as X,gc as A,hb as D,hc as V,ic as Bt,jc as J,kb as Rt,kc as Ft,lc as Ut,va as At,xb as Q,yb as j,zb as G,zc as h}from"./chunk-74NNJKGA.js";import{Aa as I,Ba as L,Bb as P,Ca as vt,Eb as Yt,Fb as Ct,Gb as g,Hb as It,I as kt,M as wt,d as yt,l as H,la as o,m as i,nb as St,pb as xt,qa as ht,ra as E,vb as Mt,xa as B,ya as F,yb as Nt}from"./chunk-NRUJ6FXV.js";var S=29;function Jt(t,e){let a=Math.floor(M(t,e)/864e5)*864e5;return{often:"daily",every:2,weekdays:[ee(a)],month_day:ae(a),day:a,minutes:480}}function q({starts_at:t,rule:e,zone:a}){let n=M(Date.parse(t),x(a)),s=Math.floor(n/864e5)*864e5;return{...{every:2,weekdays:[ee(s)],month_day:ae(s),day:s,minutes:(n-s)/6e4},...ke(e)}}function ke(t){if(!t)return{often:"once"};try{let{FREQ:e,INTERVAL:a,BYDAY:n,BYMONTHDAY:s,WKST:r,...l}=Z(t),d=Object.keys(l).length===0;if(d&&e==="DAILY"&&!n&&!s)return a===1?{often:"daily"}:{often:"days",every:a};if(d&&e==="WEEKLY"&&a===1)return{often:"weekdays",...n?{weekdays:n.map(([,m])=>m)}:{}};let c=s?.length===1?s[0]:s?null:void 0;if(d&&e==="MONTHLY"&&a===1&&!n&&c!==null&&(c===void 0||c===-1||c>0&&c<S))return{often:"monthly",...c===void 0?{}:{month_day:c===-1?S:c}}}catch(e){if(!(e instanceof U))throw e}return{often:"own"}}function te(t,e){let a=new Date(bt(t.day+t.minutes*6e4,e)).toISOString(),n=R.filter(r=>t.weekdays.includes(r)),s={once:null,daily:"FREQ=DAILY",days:`FREQ=DAILY;INTERVAL=${t.every}`,weekdays:`FREQ=WEEKLY;BYDAY=${n.join(",")}`,monthly:`FREQ=MONTHLY;BYMONTHDAY=${t.month_day===S?-1:t.month_day}`};return t.often==="own"?{starts_at:a,zone:e}:{starts_at:a,zone:e,rule:s[t.often]}}var ee=t=>R[(new Date(t).getUTCDay()+6)%7],ae=t=>Math.min(new Date(t).getUTCDate(),S);function dt(t,e=""){let a={time:B(t.minutes),day:L(t.day)};if(t.often==="own")return o("task.said_own",{rule:e});if(t.often==="days")return o("task.said_days",{...a,count:t.every});if(t.often==="monthly")return t.month_day===S?o("task.said_last_day",a):o("task.said_monthly",{...a,count:t.month_day});if(t.often!=="weekdays")return o(`task.said_${t.often}`,a);let n=R.flatMap((s,r)=>t.weekdays.includes(s)?[F(r)]:[]);return n.length===7?o("task.said_daily",a):o("task.said_weekdays",{...a,days:I(n)})}function Y(t){let e=dt(q(t),t.rule),a=x(t.zone);return a===A()?e:`${e} ${o("task.zone",{zone:a})}`}var C=t=>L(M(t,A()));var we=3,he=["steady","watch","change today","act now"],ve=["food","power","water","hands","vet"];function be(){let t=K(v("away_sheet"),u.value),e=k.value.may("away_sheet");if(!t)return i`
    <${h} title=${o("away.title")} up="/room" act=${e&&i`<a class="main" href="/away/edit"><${g}
      name="plus" />${o("away.new")}</a>`}>
      <p class="sentence">${o("away.none")}</p><p class="soft">${o("away.none_more")}</p>
    <//>`;let a=()=>j([{type:"del",kind:"away_sheet",id:t.id}],o("saved.removed",{what:o("away.title")}));return i`
    <${h} title=${o("away.title")} up="/room"
      act=${i`${e&&i`<a class="quiet tall" href="/away/edit">${o("edit")}</a>`}<button class="main"
        type="button" onClick=${f(()=>{ot("limnary-away-sheet")})}>${o("away.print")}</button>`}>
      <${ge} sheet=${t} />
      ${e&&i`<p class="section not-printed"><button class="quiet" type="button"
        onClick=${f(()=>{a()})}>${o("away.remove")}</button></p>`}
    <//>`}function ge({sheet:t}){let e=X(),{calls:a=[]}=t,n={from:Date.parse(t.from_at),to:Date.parse(t.to_at),feed_every_days:t.feed_every_days},s=v("task_done"),r=T(D).filter(c=>t.tanks.includes(c.id)),l=()=>[],d=Dt(V(null),s,n,e??l);return i`
    <div class="away">
      <p class="sentence">${o("away.span",{from:C(n.from),to:C(n.to)})}</p>
      ${a.length>0&&i`
        <section><h2>${o("away.calls")}</h2>
          <ul class="calls">${a.map(({who:c,phone:m})=>i`<li key=${m}><span>${c}
            </span> <a class="quiet" href=${`tel:${m.replace(/[^+\d]/g,"")}`}>${m}</a></li>`)}</ul>
            </section>`}
      ${t.note&&i`<section><h2>${o("away.note")}</h2><p>${t.note}</p></section>`}
      <div class="away-tanks">${r.map(c=>{let{facts:m,advice:$}=Rt(c);return i`<${Te} key=${c.id}
          said=${Tt({facts:m,advice:$,meal:Et(c,m.feedings)},n,V(c.id),s,e??l)} />`})}</div>
      ${d.length>0&&i`<section><h2>${o("tasks.room")}</h2><${oe} tasks=${d} /></section>`}
      <section><h2>${o("away.states")}</h2>
        <ul class="away-states">
          ${he.map(c=>i`<li key=${c}><b class="state"><${It} state=${c} size=${16} />
          ${o(`state.${c}`)}</b> ${o(`away.do.${c}`)}</li>`)}</ul></section>
      <section><h2>${o("away.mind")}</h2><ul class="why">
        ${ve.map(c=>i`<li key=${c}>${o(`away.mind.${c}`)}</li>`)}</ul></section>
    </div>`}function Te({said:{tank:t,feed:e,test:a,change:n,limits:s,bases:r,tasks:l}}){let d=n.dose.amount===void 0?"":Ct(n.dose),c=e&&{amount:Yt(e.feed_g),food:e.food??"",count:e.every_days},m=$=>`${Nt($,s[$],r[$])} ${Mt($,r[$])}`;return i`
    <article><h2>${t.name} <span class="soft small">
      ${[P(t.water_l),t.place].filter(Boolean).join("\xA0\xB7 ")}</span></h2>
      <dl>
        <dt>${o("away.feed")}</dt><dd>${c?o(e.food?"away.feed_food":"away.feed_plain",c):o("away.feed_none")}</dd>
        <dt>${o("away.test")}</dt><dd>${o("away.test_every",{count:a.every_days,first:C(a.first)})}
          </dd>
        <dt>${o("away.change")}</dt><dd>
          ${o(d?"away.change_dose":"away.change_plain",{litres:P(n.litres),dose:d,label:n.dose.label?.name??"",ammonia:m("total_ammonia"),nitrite:m("nitrite")})}
          ${n.dose.missing&&i` <b>${o("away.dose_unknown")}</b>`}</dd>
        ${l.length>0&&i`<dt>${o("tasks.title")}</dt><dd><${oe} tasks=${l} /></dd>`}
      </dl></article>`}var oe=({tasks:t})=>i`
  <ul>${t.map(({task:e,days:a})=>i`<li key=${e.id}><b>${w(e)}</b> <span>
    ${a.length>we?Y(e):I(a.map(C))}</span></li>`)}</ul>`;var O=({label:t,said:e,on_step:a,can:n={less:!0,more:!0}})=>i`
  <div class="field">
    <span class="label">${t}</span>
    <div class="stepper in-words" role="group" aria-label=${t}>
      <button class="quiet" type="button" disabled=${!n.less} aria-label=${o("task_form.less",{what:t})}
        onClick=${()=>a(-1)}><${g} name="minus" size=${28} /></button>
      <output class="amount" aria-live="polite">${e}</output>
      <button class="quiet" type="button" disabled=${!n.more} aria-label=${o("task_form.more",{what:t})}
        onClick=${()=>a(1)}><${g} name="plus" size=${28} /></button>
    </div>
  </div>`;var De=7,Ae=[1,2,3,0],mt=["calls","note"],Ee=["from_at","to_at","tanks","feed_every_days",...mt];function Se(){let t=K(v("away_sheet"),u.value),e=nt({name:`away.${t?.id??"new"}`,held:t,first:()=>xe(t)}),a=e.draft.value,n=e.set,s=()=>a.tanks.length===0?e.refuse(o("away.need_tank")):e.save(()=>{let r=Me(a,t,e.opened);return{writes:Object.keys(r).length?[{type:"put",kind:"away_sheet",id:t?.id??Q(),fields:r}]:[],said:o("saved.away_sheet"),to:"/away"}});return i`
    <${h} title=${o("away.title")} up="/away" news=${i`<${et} opened=${e.opened} held=${t}
      names=${Ee} said=${{tanks:Ye,feed_every_days:ne}} />`}
      act=${k.value.may("away_sheet")&&i`<button class="main" type="button" onClick=${f(()=>{s()})}>
        ${o("away.save")}</button>`}>
      <${O} label=${o("away.from")} said=${C(a.from)}
        on_step=${r=>n({from:a.from+r*864e5,to:Math.max(a.to,a.from+r*864e5)})} />
      <${O} label=${o("away.to")} said=${C(a.to)}
        can=${{less:a.to-864e5>=a.from,more:!0}}
        on_step=${r=>n({to:a.to+r*864e5})} />
      <${Ne} chosen=${a.tanks} on_choose=${r=>n({tanks:r})} />
      <fieldset class="field"><legend class="label">${o("away.feed_how_often")}</legend>
        <div class="tiles two">${Ae.map(r=>i`<label key=${r}><input class="unseen" type="radio" name="every"
            checked=${a.feed_every_days===r} onChange=${()=>n({feed_every_days:r})} />
          ${ne({feed_every_days:r})}</label>`)}</div>
        <p class="help">${o("away.feed_help")}</p></fieldset>
      <${Ht} specs=${ft()} raw=${a.typed} errors=${e.errors.value} tried=${!0}
        on_raw=${r=>n({typed:r})} />
      <${st} form=${e} kind="away_sheet" beside=${mt} />
    <//>`}var ft=()=>mt.map(t=>wt(kt().away_sheet.fields,t));function xe(t){if(t)return{from:Date.parse(t.from_at),to:Date.parse(t.to_at),tanks:t.tanks,feed_every_days:t.feed_every_days,typed:Wt(ft(),t)};let{from:e}=rt(u.value,A());return{from:e+864e5/2,to:e+864e5/2+De*864e5,tanks:T(D).map(({id:a})=>a),feed_every_days:2,typed:{calls:[{}]}}}function Me({from:t,to:e,tanks:a,feed_every_days:n,typed:s},r,l){let{calls:d=[],note:c=null}=qt(ft(),s),m={from_at:new Date(t).toISOString(),to_at:new Date(rt(e,A()).to).toISOString(),tanks:a,feed_every_days:n,calls:d};return r?tt(l,{...m,note:c}):c===null?m:{...m,note:c}}function Ne({chosen:t,on_choose:e}){let a=n=>t.includes(n)?t.filter(s=>s!==n):[...t,n];return i`
    <fieldset class="field"><legend class="label">${o("away.tanks")}</legend>
      <div class="tiles two">
        ${T(D).map(({id:n,name:s})=>i`<button type="button" key=${n} aria-pressed=${t.includes(n)}
          onClick=${f(()=>e(a(n)))}>${s}</button>`)}</div></fieldset>`}var Ye=({tanks:t})=>I(t.flatMap(e=>b("tank",e)?.name??[])),ne=({feed_every_days:t})=>t?o("task_form.every_said",{count:t}):o("away.feed_none");var ce=12*366*864e5,Ce=1,Oe=12,Re=75,Ie=8,Le=12;function de({room_name:t,tasks:e,tanks:a,dones:n,now:s},r,l){let d=[...e.filter(y=>!y.over&&(!y.tank||a.has(y.tank)))].sort((y,z)=>y.id<z.id?-1:1),c=ze(d.map(se)),m=d.flatMap(y=>{let z=se(y),ut=n.flatMap(({task:_e,skipped:ye,due_at:_t})=>_e===y.id&&ye&&_t?[Date.parse(_t)]:[]),ue=z&&!c.includes(z)?Ue(y,ut,s,r):Fe(y,ut,r,l);return Be(y,a,s,ue)}),$=new Date(s).getUTCFullYear();return["BEGIN:VCALENDAR","VERSION:2.0","PRODID:-//Limnary//Tasks//EN",`X-WR-CALNAME:${fe(t)}`,...c.sort().flatMap(y=>je(y,$-Ce,$+Oe)),...m,"END:VCALENDAR"].map(y=>`${We(y)}\r
`).join("")}function se({zone:t}){let e=x(t);return e==="UTC"?"":e}function ze(t){let e=new Map;for(let a of t)a&&e.set(a,(e.get(a)??0)+1);return[...e].sort(([,a],[,n])=>n-a).slice(0,Ie).map(([a])=>a)}var Be=(t,e,a,n)=>["BEGIN:VEVENT",`UID:${t.id}@limnary`,`DTSTAMP:${W(Date.parse(t.meta?.changed_at??"")||a)}`,`SUMMARY:${fe(t.tank?`${e.get(t.tank)}: ${t.title}`:t.title)}`,"DURATION:PT15M","TRANSP:TRANSPARENT",...n,"END:VEVENT"];function Fe(t,e,a,n){let s=me(t),r=x(t.zone),l,d=[];try{l=a(t,s,s+ce,1)[0],t.rule&&l!==void 0&&(d=[`RRULE:${Pe(t.rule,r,n)}`])}catch(m){if(!(m instanceof U))throw m;r="UTC"}let c=e.sort((m,$)=>m-$).map(m=>`EXDATE${le(m,r)}`);return[`DTSTART${le(l??s,r)}`,...d,...c]}function Ue(t,e,a,n){let s=me(t),r=Math.max(s,a-7*864e5),l=[];try{l=n(t,r,r+ce,Le)}catch(m){if(!(m instanceof U))throw m}let[d=s,...c]=l.filter(m=>!e.includes(m));return[`DTSTART:${W(d)}`,...c.length?[`RDATE:${c.map(W).join(",")}`]:[]]}var me=({starts_at:t})=>Math.floor(Date.parse(t)/1e3)*1e3;function Pe(t,e,a){let n=Z(t);return Object.entries(n).filter(([s,r])=>s!=="INTERVAL"||r!==1).map(([s,r])=>s==="UNTIL"?`UNTIL=${W(a(n,e))}`:s==="BYDAY"?`BYDAY=${(n.BYDAY??[]).map(([l,d])=>`${l||""}${d}`).join(",")}`:`${s}=${r}`).join(";")}function je(t,e,a){let n=l=>(M(l,t)-Math.floor(l/1e3)*1e3)/1e3,s=Date.UTC(e,0,1),r=re("STANDARD",s+n(s)*1e3,n(s),n(s));for(let l=s;l<Date.UTC(a,0,1);l+=864e5){let[d,c]=[n(l),n(l+864e5)];if(d===c)continue;let m=Ve(c,l,l+864e5,n);r.push(...re(c>d?"DAYLIGHT":"STANDARD",m+d*1e3,d,c))}return["BEGIN:VTIMEZONE",`TZID:${t}`,...r,"END:VTIMEZONE"]}function Ve(t,e,a,n){let[s,r]=[e,a];for(;r-s>1e3;){let l=Math.floor((s+r)/2e3)*1e3;n(l)===t?r=l:s=l}return r}var re=(t,e,a,n)=>[`BEGIN:${t}`,`DTSTART:${pt(e)}`,`TZOFFSETFROM:${ie(a)}`,`TZOFFSETTO:${ie(n)}`,`END:${t}`];function ie(t){let[e,a,n]=[3600,60,1].map((s,r)=>String(Math.floor(Math.abs(t)/s)%(r?60:100)).padStart(2,"0"));return`${t<0?"-":"+"}${e}${a}${n==="00"?"":n}`}var le=(t,e)=>e==="UTC"?`:${W(t)}`:`;TZID=${e}:${pt(M(t,e))}`,W=t=>`${pt(t)}Z`,pt=t=>new Date(t).toISOString().slice(0,19).replace(/[-:]/g,""),qe=/[\x00-\x08\x0b-\x1f\x7f]/g,fe=t=>t.replace(qe,"").replace(/\\/g,"\\\\").replace(/;/g,"\\;").replace(/,/g,"\\,").replace(/\r?\n/g,"\\n");function We(t){let e="",a=0;for(let n of t){let s=new TextEncoder().encode(n).length;a+s>Re&&(e+=`\r
 `,a=1),e+=n,a+=s}return e}function He(){let t=async()=>{let{occurrences:e,until_of:a}=await import("./recurrence-ZHLEH2MV.js"),n=new Map(T(D).map(d=>[d.id,d.name])),s=k.value.about()?.name??o("room.title"),r=de({room_name:s,tasks:v("task").map(d=>({...d,title:w(d)})),tanks:n,dones:v("task_done"),now:u.value},e,a),l=Zt(new Blob([r],{type:"text/calendar"}),"tasks","ics");G(o("archive.kept",{file:l}))};return i`
    <${h} title=${o("calendar.title")} up="/tasks">
      <p class="sentence">${o("calendar.why")}</p>
      <section class="section"><h2>${o("calendar.file")}</h2>
        <p class="soft">${o("calendar.file_why")}</p>
        <p><button class="quiet tall" type="button" onClick=${f(()=>{t()})}>${o("calendar.keep")}</button></p>
          </section>
      <section class="section"><h2>${o("calendar.subscribe")}</h2>
        ${Ot().joined?i`<${Ze} />`:i`<p class="soft">${o("calendar.need_room")}</p>`}</section>
    <//>`}function Ze(){let t=H(null),e=H(null),a=H(!1),{problem:n,busy:s,ask:r}=Qt();yt(()=>{r(async()=>{e.value=await Pt(k.value)})},[]);let l=()=>r(async()=>{t.value=await jt(k.value),a.value=!1}),d=()=>r(async()=>{await Vt(k.value),t.value=e.value=null,G(o("calendar.closed"))}),c=t.value?.link,m=async()=>{await navigator.clipboard.writeText(c),a.value=!0};return i`
    <p class="soft">${o("calendar.subscribe_why")}</p>
    ${c?i`<${at} text=${c} label=${o("calendar.qr")} />
          <p class="small link" aria-label=${o("calendar.link")}>${c}</p>
          ${!!navigator.clipboard&&i`<p><button class="quiet tall" type="button"
            onClick=${f(()=>{m().catch(()=>G(c))})}>
            ${o(a.value?"calendar.copied":"calendar.copy")}</button></p>`}`:e.value&&i`<p>${o("calendar.since",{when:E(e.value,u.value)})}</p>`}
    <${Gt} text=${n.value} />
    <div class="row">
      ${!c&&i`<button class="quiet tall" type="button" disabled=${s.value} onClick=${f(()=>{l()})}>
        ${o(e.value?"calendar.renew":"calendar.make")}</button>`}
      ${(c||e.value)&&i`<button class="quiet tall" type="button" disabled=${s.value}
        onClick=${f(()=>{d()})}>${o("calendar.close")}</button>`}
    </div>`}function Ke({id:t}){let e=t?b("tank",t):null;if(t&&!e)return i`<${N} up="/" />`;let a=e?[e]:T(D);return i`
    <${h} title=${o(e?"labels.title_one":"labels.title")} up=${e?`/tank/${t}`:"/tanks"}
      act=${a.length>0&&i`<button class="main" type="button"
          onClick=${f(()=>{ot("limnary-labels")})}>${o("away.print")}
        </button>`}>
      <p class="soft not-printed">${o(a.length?"labels.why":"tanks.empty")}</p>
      <ul class="labels">${a.map(n=>i`
        <li key=${n.id}><${at} text=${`${location.origin}/tank/${n.id}`}
          label=${o("labels.qr",{tank:n.name})} />
          <b>${n.name}</b><span>${P(At(n).water_l)}</span></li>`)}</ul>
    <//>`}var Qe=20;function Ge({id:t}){let e=b("task",t),a=`task.${t}.done`,n=St(a,()=>({}));if(!e)return i`<${N} up="/tasks" />`;let s=J(e),r=e.tank?b("tank",e.tank):null,l=k.value.may("task_done")&&s&&!e.over&&!s.unread,d=s?.due[0]??s?.next??null,{when:c}=n.value,m=async $=>{await Ft(e,d,{skipped:$,when:c})&&(n.value={},xt(a))};return i`
    <${h} title=${w(e)} up=${r?`/tank/${r.id}/tasks`:"/tasks"} aside=${i`<span></span>`}
      act=${l&&d!==null&&i`
        <button class="quiet tall" type="button" disabled=${ct(c)} onClick=${f(()=>{m(!0)})}>
          ${o("task.skip")}</button>
        <button class="main" type="button" disabled=${ct(c)} onClick=${f(()=>{m(!1)})}>
          <${g} name="done" />
          ${o(s.due.length?"task.done":"task.done_early")}</button>`}>
      <p class="soft">${r?.name??o("tasks.room")}</p>
      <p class="sentence">${Y(e)}</p>
      ${s?.unread&&i`<p class="wrong"><${g} name="needs" size=${20} /><span>
        ${o("task.unread",{rule:e.rule})}</span></p>`}
      ${s&&!e.over&&!s.unread&&i`<p>${Xe(s)}</p>`}
      ${e.note&&i`<p>${e.note}</p>`}
      ${l&&i`<${Kt} at=${c}
          on_at=${$=>n.value={when:$}} />`}
      <p class="caution small">${o("task.hands")}</p>
      <${ta} task=${e} />
      ${k.value.may("task")&&i`
        <ul class="lines section">
          <li><a class="line" href=${`/task/${t}/edit`}>${o("task.edit")}</a></li>
          <li><button class="line whole" type="button" onClick=${f(()=>{Je(e)})}><span>
            ${o(e.over?"task.resume":"task.end")}${!e.over&&i`<br /><span class="soft small">
            ${o("task.end_why")}</span>`}</span></button></li>
        </ul>`}
    <//>`}function Xe({due:t,overdue:e,next:a}){return t.length>0?e?o("task.since",{when:E(t[0],u.value)}):E(t[0],u.value):a===null?o("task.no_next"):o("task.next",{when:E(a,u.value)})}var Je=t=>j([{type:"put",kind:"task",id:t.id,fields:{over:!t.over}}],o(t.over?"saved.task_resumed":"saved.task_ended",{title:w(t)}));function ta({task:t}){let e=[...v("task_done").filter(n=>n.task===t.id)].sort((n,s)=>n.at<s.at?1:-1);if(e.length===0)return i`<p class="soft">${o("task.never")}</p>`;let a=(n,s)=>j([{type:"del",kind:"task_done",id:n}],o("saved.removed",{what:s}));return i`
    <section class="section"><h2>${o("task.history")}</h2>
      <ul class="lines">${e.slice(0,Qe).map(n=>{let s=o(n.skipped?"task.was_skipped":"task.was_done"),r=k.value.name_of(n.meta.made_by);return i`<li key=${n.id}><div class="line"><span class="grow">${s} <span class="soft">
          ${[E(n.at,u.value),r].filter(Boolean).join("\xA0\xB7 ")}</span></span>
          ${k.value.may("task_done")&&i`<button class="quiet square" type="button"
            aria-label=${o("remove_named",{what:`${s}, ${E(n.at,u.value)}`})}
            onClick=${f(()=>{a(n.id,s)})}><${g} name="remove" size=${20} /></button>`}</div></li>`})}</ul></section>`}var ea=["once","daily","days","weekdays","monthly"],aa=[420,480,720,1020,1080,1200],oa=15,pe=90,na=["title","tank","starts_at","rule"];function sa({id:t,query:e}){let a=t?b("task",t):null,n=e.get("tank")??"",s=a?x(a.zone):A(),r=nt({name:t?`task.${t}`:`task.new.${n}${e.get("title")??""}`,held:a,first:()=>ra(a,e,s)});if(t&&!a)return i`<${N} up="/tasks" />`;let l=r.draft.value,d=r.set,c=t?`/task/${t}`:l.tank?`/tank/${l.tank}/tasks`:"/tasks",m=[...ea,...a&&q(a).often==="own"?["own"]:[]],$=()=>{let p=l.title.trim();return p?l.often==="weekdays"&&l.weekdays.length===0?r.refuse(o("task_form.need_weekday")):r.save(()=>{let y=ia(l,s,a,r.opened);return{writes:Object.keys(y).length?[{type:"put",kind:"task",id:t??Q(),fields:y}]:[],said:o("saved.task",{title:p}),to:c}}):r.refuse(o("task_form.need_title"))};return i`
    <${h} title=${o(t?"task_form.edit":"task_form.new")} up=${c} news=${i`<${et}
      opened=${r.opened} held=${a} names=${na} said=${{rule:Y}} />`}
      act=${k.value.may("task")&&i`<button class="main" type="button" onClick=${f(()=>{$()})}>
        ${o("task_form.save")}</button>`}>
      <${la} form=${l} set=${d} />
      <${$t} label=${o("task_form.where")} name="tank" chosen=${l.tank}
        on_choose=${p=>d({tank:p})}
        choices=${[...T(D).map(p=>[p.id,p.name]),["",o("tasks.room")]]} />
      <${$t} label=${o("task_form.often")} name="often" chosen=${l.often}
        on_choose=${p=>d({often:p})}
        choices=${m.map(p=>[p,o(`task_form.often.${p}`)])} />
      <${ca} form=${l} set=${d} />
      <${$t} label=${o("task_form.time")} name="time" chosen=${l.minutes}
        on_choose=${p=>d({minutes:p})} three
        choices=${aa.map(p=>[p,B(p)])} />
      <${O} label=${o("task_form.other_time")} said=${B(l.minutes)}
        on_step=${p=>d({minutes:(l.minutes+p*oa+1440)%1440})}
        />
      <p class="sentence" role="status">${dt(l,a?.rule)}</p>
      <${st} form=${r} kind="task" />
    <//>`}function ra(t,e,a){if(t)return{...q(t),title:w(t),tank:t.tank??"",own_words:!0};let n=e.get("title")??"",s=Number(e.get("every")??0),r=s>1?{often:"days",every:Math.min(Math.round(s),pe)}:{};return{...Jt(u.value,a),...r,title:n,tank:e.get("tank")??"",own_words:n!==""}}function ia(t,e,a,n){let s=t.title.trim(),{rule:r,...l}=te(t,e),d=zt(it,lt,s),c=n&&s===w(n)?{title:n.title}:{title:s,...d?{from_tile:{code:d,words:s}}:{}},m=t.often==="own"?a?.rule:r,$={...c,tank:t.tank||null,rule:m??null,...l};return a?tt(n,$):Object.fromEntries(Object.entries($).filter(([,p])=>p!==null))}function la({form:t,set:e}){let a=it.map(lt),n=t.own_words||t.title!==""&&!a.includes(t.title);return i`
    <fieldset class="field"><legend class="label">${o("task_form.what")}</legend>
      <div class="tiles two">
        ${a.map(s=>i`<button type="button" key=${s} aria-pressed=${t.title===s}
          onClick=${f(()=>e({title:s,own_words:!1}))}>${s}</button>`)}
        <button type="button" class="across" aria-pressed=${n} onClick=${f(()=>e({own_words:!0}))}>
          ${o("task_form.own_words")}</button>
      </div></fieldset>
    ${n&&i`<div class="field"><label for="task-title">${o("task_form.title")}</label>
      <input id="task-title" type="text" autocomplete="off" maxlength="120" value=${t.title}
        onInput=${Lt(s=>e({title:s,own_words:!0}))} /></div>`}`}function ca({form:t,set:e}){let a=i`<${O} label=${o("task_form.first_day")} said=${L(t.day)}
    on_step=${s=>e({day:t.day+s*864e5})} />`;if(t.often==="once")return a;if(t.often==="days")return i`
    <${O} label=${o("task_form.every")} said=${o("task_form.every_said",{count:t.every})}
      can=${{less:t.every>2,more:t.every<pe}}
      on_step=${s=>e({every:t.every+s})} />
    ${a}`;if(t.often==="monthly")return i`
    <${O} label=${o("task_form.month_day")} said=${t.month_day===S?o("task_form.last_day"):o("task_form.month_day_said",{count:t.month_day})}
      on_step=${s=>e({month_day:(t.month_day+s+S-1)%S+1})} />`;if(t.often!=="weekdays")return null;let n=s=>t.weekdays.includes(s)?t.weekdays.filter(r=>r!==s):[...t.weekdays,s];return i`
    <fieldset class="field"><legend class="label">${o("task_form.weekdays")}</legend>
      <div class="tiles four">${R.map((s,r)=>i`
        <button type="button" key=${s} aria-pressed=${t.weekdays.includes(s)} aria-label=${F(r)}
          onClick=${f(()=>e({weekdays:n(s)}))}>${F(r,"short")}</button>`)}</div>
    </fieldset>`}var $t=({label:t,name:e,chosen:a,choices:n,three:s,on_choose:r})=>i`
  <fieldset class="field"><legend class="label">${t}</legend>
    <div class=${s?"tiles":"tiles two"}>${n.map(([l,d])=>i`
      <label key=${l}><input class="unseen" type="radio" name=${e} value=${l} checked=${l===a}
        onChange=${()=>r(l)} />${d}</label>`)}</div>
  </fieldset>`;var da=7;function ma({id:t}){let e=t?b("tank",t):null;if(t&&!e)return i`<${N} up="/" />`;let a=V(t),n=k.value.may("task")&&i`<a class="main" href=${t?`/task/new?tank=${t}`:"/task/new"}><${g} name="plus" />${o("tasks.new")}
      </a>`;return i`
    <${h} title=${o("tasks.title")} place=${t?void 0:"round"} up=${t?`/tank/${t}`:"/"} act=${n}
      aside=${i`<span class="soft">${e?.name??""}</span>`}>
      ${a.length===0&&i`<p class="sentence">${o("tasks.empty")}</p><p class="soft">${o("tasks.empty_more")}
        </p>`}
      ${a.length>0&&i`
        <${pa} id=${t} />
        <${$a} tasks=${a} named=${!t} />
        <section class="section"><h2>${o("tasks.all")}</h2>
          <ul class="lines">
            ${[...a].sort(fa).map(s=>i`<${ua} key=${s.id} task=${s} named=${!t} />`)}</ul>
            </section>`}
      ${!t&&i`<p class="section"><a class="quiet" href="/calendar"><${g} name="clock" size=${20} />
        ${o("calendar.title")}</a></p>`}
    <//>`}var fa=(t,e)=>+!!t.over-+!!e.over||w(t).localeCompare(w(e));function pa({id:t}){let e=Bt(t);return i`
    <section><h2>${o("tasks.today")}</h2>
      ${e.length>0?i`<ul class="lines tasks">
            ${e.map(a=>i`<${Ut} key=${`${a.task.id}.${a.at}`} ...${a} named=${!t} />`)}</ul>`:i`<p class="soft">${o("tasks.none_today")}</p>`}</section>`}function $a({tasks:t,named:e}){let a=X();return(a?gt(t,v("task_done"),u.value,A(),da,a):[]).map(s=>i`
    <section class="section" key=${s.day}><h2>${vt(s.day,u.value)}</h2>
      <ul class="lines">${s.items.map(({task:r,at:l})=>i`
        <li key=${r.id+l}><a class="line" href=${`/task/${r.id}`}><span class="grow">${w(r)}<span
          class="soft small"> ${[ht(l),e&&$e(r)].filter(Boolean).join("\xA0\xB7 ")}</span></span></a>
          </li>`)}</ul></section>`)}function ua({task:t,named:e}){let a=J(t),n=t.over?o("tasks.ended"):a?.next?o("task.next",{when:E(a.next,u.value)}):"";return i`<li><a class="line" href=${`/task/${t.id}`}><span class="grow"><b>${w(t)}</b>
    ${e&&i` <span class="soft">${$e(t)}</span>`}<br />
    <span class="soft small">${[Y(t),n].filter(Boolean).join(" ")}</span></span></a></li>`}var $e=t=>t.tank?b("tank",t.tank)?.name??"":o("tasks.room");export{be as Away,Se as AwayForm,He as CalendarPage,Ke as Labels,Ge as Task,sa as TaskForm,ma as Tasks};
//# sourceMappingURL=tasks-GPWMLSC6.js.map
