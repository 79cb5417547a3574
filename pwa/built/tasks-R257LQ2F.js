import{Ab as ot,Nb as Gt,Pb as Xt,Qb as nt,Sb as st,Tb as rt,Va as Wt,Wa as Ht,Xa as Zt,fb as Kt,tb as et,vb as at,wa as jt,wb as dt,xa as Vt,xb as Qt,ya as qt}from"./chunk-63OKULQF.js";import{Aa as Dt,Ba as At,Ca as Q,E as o,Gb as xt,Gc as G,Hc as V,Ib as Mt,Ic as X,J as vt,K as S,Mc as f,Ob as Nt,Pd as h,Q as F,R as U,Rb as Yt,T as L,Td as Y,U as z,Ub as j,V as bt,Vc as zt,Xb as Ct,Ya as Et,Yb as Ot,b as kt,bd as lt,cb as D,g as Z,gc as k,gd as ct,h as i,hc as u,id as Bt,jc as v,kc as b,nb as St,nc as Rt,nd as w,od as J,pc as A,pd as E,qd as q,rd as Ft,sc as It,sd as tt,td as Ut,ud as Pt,wc as g,xc as Lt,za as Tt}from"./chunk-AQMFKDZO.js";import{a as M,b as N,c as gt,d as it,e as I,g as P,h as K}from"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import{v as wt,z as ht}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var x=29;function te(t,e){let a=Math.floor(N(t,e)/864e5)*864e5;return{often:"daily",every:2,weekdays:[ae(a)],month_day:oe(a),day:a,minutes:480}}function W({starts_at:t,rule:e,zone:a}){let n=N(Date.parse(t),M(a)),s=Math.floor(n/864e5)*864e5;return{...{every:2,weekdays:[ae(s)],month_day:oe(s),day:s,minutes:(n-s)/6e4},...we(e)}}function we(t){if(!t)return{often:"once"};try{let{FREQ:e,INTERVAL:a,BYDAY:n,BYMONTHDAY:s,WKST:r,...l}=K(t),d=Object.keys(l).length===0;if(d&&e==="DAILY"&&!n&&!s)return a===1?{often:"daily"}:{often:"days",every:a};if(d&&e==="WEEKLY"&&a===1)return{often:"weekdays",...n?{weekdays:n.map(([,m])=>m)}:{}};let c=s?.length===1?s[0]:s?null:void 0;if(d&&e==="MONTHLY"&&a===1&&!n&&c!==null&&(c===void 0||c===-1||c>0&&c<x))return{often:"monthly",...c===void 0?{}:{month_day:c===-1?x:c}}}catch(e){if(!(e instanceof P))throw e}return{often:"own"}}function ee(t,e){let a=new Date(gt(t.day+t.minutes*6e4,e)).toISOString(),n=I.filter(r=>t.weekdays.includes(r)),s={once:null,daily:"FREQ=DAILY",days:`FREQ=DAILY;INTERVAL=${t.every}`,weekdays:`FREQ=WEEKLY;BYDAY=${n.join(",")}`,monthly:`FREQ=MONTHLY;BYMONTHDAY=${t.month_day===x?-1:t.month_day}`};return t.often==="own"?{starts_at:a,zone:e}:{starts_at:a,zone:e,rule:s[t.often]}}var ae=t=>I[(new Date(t).getUTCDay()+6)%7],oe=t=>Math.min(new Date(t).getUTCDate(),x);function mt(t,e=""){let a={time:F(t.minutes),day:z(t.day)};if(t.often==="own")return o("task.said_own",{rule:e});if(t.often==="days")return o("task.said_days",{...a,count:t.every});if(t.often==="monthly")return t.month_day===x?o("task.said_last_day",a):o("task.said_monthly",{...a,count:t.month_day});if(t.often!=="weekdays")return o(`task.said_${t.often}`,a);let n=I.flatMap((s,r)=>t.weekdays.includes(s)?[U(r)]:[]);return n.length===7?o("task.said_daily",a):o("task.said_weekdays",{...a,days:L(n)})}function C(t){let e=mt(W(t),t.rule),a=M(t.zone);return a===E()?e:`${e} ${o("task.zone",{zone:a})}`}var O=t=>z(N(t,E()));var he=3,ve=["steady","watch","change today","act now"],be=["food","power","water","hands","vet"];function ge(){let t=Q(v("away_sheet"),u.value),e=k.value.may("away_sheet");if(!t)return i`
    <${h} title=${o("away.title")} up="/room" act=${e&&i`<a class="main" href="/away/edit"><${g}
      name="plus" />${o("away.new")}</a>`}>
      <p class="sentence">${o("away.none")}</p><p class="soft">${o("away.none_more")}</p>
    <//>`;let a=()=>V([{type:"del",kind:"away_sheet",id:t.id}],o("saved.removed",{what:o("away.title")}));return i`
    <${h} title=${o("away.title")} up="/room"
      act=${i`${e&&i`<a class="quiet tall" href="/away/edit">${o("edit")}</a>`}<button class="main"
        type="button" onClick=${f(()=>{nt("limnary-away-sheet")})}>${o("away.print")}</button>`}>
      <${Te} sheet=${t} />
      ${e&&i`<p class="section not-printed"><button class="quiet" type="button"
        onClick=${f(()=>{a()})}>${o("away.remove")}</button></p>`}
    <//>`}function Te({sheet:t}){let e=J(),{calls:a=[]}=t,n={from:Date.parse(t.from_at),to:Date.parse(t.to_at),feed_every_days:t.feed_every_days},s=v("task_done"),r=D(A).filter(c=>t.tanks.includes(c.id)),l=()=>[],d=At(q(null),s,n,e??l);return i`
    <div class="away">
      <p class="sentence">${o("away.span",{from:O(n.from),to:O(n.to)})}</p>
      ${a.length>0&&i`
        <section><h2>${o("away.calls")}</h2>
          <ul class="calls">${a.map(({who:c,phone:m})=>i`<li key=${m}><span>${c}
            </span> <a class="quiet" href=${`tel:${m.replace(/[^+\d]/g,"")}`}>${m}</a></li>`)}</ul>
            </section>`}
      ${t.note&&i`<section><h2>${o("away.note")}</h2><p>${t.note}</p></section>`}
      <div class="away-tanks">${r.map(c=>{let{facts:m,advice:$}=It(c);return i`<${De} key=${c.id}
          said=${Dt({facts:m,advice:$,meal:St(c,m.feedings)},n,q(c.id),s,e??l)} />`})}</div>
      ${d.length>0&&i`<section><h2>${o("tasks.room")}</h2><${ne} tasks=${d} /></section>`}
      <section><h2>${o("away.states")}</h2>
        <ul class="away-states">
          ${ve.map(c=>i`<li key=${c}><b class="state"><${Lt} state=${c} size=${16} />
          ${o(`state.${c}`)}</b> ${o(`away.do.${c}`)}</li>`)}</ul></section>
      <section><h2>${o("away.mind")}</h2><ul class="why">
        ${be.map(c=>i`<li key=${c}>${o(`away.mind.${c}`)}</li>`)}</ul></section>
    </div>`}function De({said:{tank:t,feed:e,test:a,change:n,limits:s,bases:r,tasks:l}}){let d=n.dose.amount===void 0?"":Ot(n.dose),c=e&&{amount:Ct(e.feed_g),food:e.food??"",count:e.every_days},m=$=>`${Yt($,s[$],r[$])} ${Nt($,r[$])}`;return i`
    <article><h2>${t.name} <span class="soft small">
      ${[j(t.water_l),t.place].filter(Boolean).join("\xA0\xB7 ")}</span></h2>
      <dl>
        <dt>${o("away.feed")}</dt><dd>${c?o(e.food?"away.feed_food":"away.feed_plain",c):o("away.feed_none")}</dd>
        <dt>${o("away.test")}</dt><dd>${o("away.test_every",{count:a.every_days,first:O(a.first)})}
          </dd>
        <dt>${o("away.change")}</dt><dd>
          ${o(d?"away.change_dose":"away.change_plain",{litres:j(n.litres),dose:d,label:n.dose.label?.name??"",ammonia:m("total_ammonia"),nitrite:m("nitrite")})}
          ${n.dose.missing&&i` <b>${o("away.dose_unknown")}</b>`}</dd>
        ${l.length>0&&i`<dt>${o("tasks.title")}</dt><dd><${ne} tasks=${l} /></dd>`}
      </dl></article>`}var ne=({tasks:t})=>i`
  <ul>${t.map(({task:e,days:a})=>i`<li key=${e.id}><b>${w(e)}</b> <span>
    ${a.length>he?C(e):L(a.map(O))}</span></li>`)}</ul>`;var R=({label:t,said:e,on_step:a,can:n={less:!0,more:!0}})=>i`
  <div class="field">
    <span class="label">${t}</span>
    <div class="stepper in-words" role="group" aria-label=${t}>
      <button class="quiet" type="button" disabled=${!n.less} aria-label=${o("task_form.less",{what:t})}
        onClick=${()=>a(-1)}><${g} name="minus" size=${28} /></button>
      <output class="amount" aria-live="polite">${e}</output>
      <button class="quiet" type="button" disabled=${!n.more} aria-label=${o("task_form.more",{what:t})}
        onClick=${()=>a(1)}><${g} name="plus" size=${28} /></button>
    </div>
  </div>`;var Ae=7,Ee=[1,2,3,0],ft=["calls","note"],Se=["from_at","to_at","tanks","feed_every_days",...ft];function xe(){let t=Q(v("away_sheet"),u.value),e=st({name:`away.${t?.id??"new"}`,held:t,first:()=>Me(t)}),a=e.draft.value,n=e.set,s=()=>a.tanks.length===0?e.refuse(o("away.need_tank")):e.save(()=>{let r=Ne(a,t,e.opened);return{writes:Object.keys(r).length?[{type:"put",kind:"away_sheet",id:t?.id??G(),fields:r}]:[],said:o("saved.away_sheet"),to:"/away"}});return i`
    <${h} title=${o("away.title")} up="/away" news=${i`<${at} opened=${e.opened} held=${t}
      names=${Se} said=${{tanks:Ce,feed_every_days:se}} />`}
      act=${k.value.may("away_sheet")&&i`<button class="main" type="button" onClick=${f(()=>{s()})}>
        ${o("away.save")}</button>`}>
      <${R} label=${o("away.from")} said=${O(a.from)}
        on_step=${r=>n({from:a.from+r*864e5,to:Math.max(a.to,a.from+r*864e5)})} />
      <${R} label=${o("away.to")} said=${O(a.to)}
        can=${{less:a.to-864e5>=a.from,more:!0}}
        on_step=${r=>n({to:a.to+r*864e5})} />
      <${Ye} chosen=${a.tanks} on_choose=${r=>n({tanks:r})} />
      <fieldset class="field"><legend class="label">${o("away.feed_how_often")}</legend>
        <div class="tiles two">${Ee.map(r=>i`<label key=${r}><input class="unseen" type="radio" name="every"
            checked=${a.feed_every_days===r} onChange=${()=>n({feed_every_days:r})} />
          ${se({feed_every_days:r})}</label>`)}</div>
        <p class="help">${o("away.feed_help")}</p></fieldset>
      <${Zt} specs=${pt()} raw=${a.typed} errors=${e.errors.value} tried=${!0}
        on_raw=${r=>n({typed:r})} />
      <${rt} form=${e} kind="away_sheet" beside=${ft} />
    <//>`}var pt=()=>ft.map(t=>ht(wt().away_sheet.fields,t));function Me(t){if(t)return{from:Date.parse(t.from_at),to:Date.parse(t.to_at),tanks:t.tanks,feed_every_days:t.feed_every_days,typed:Ht(pt(),t)};let{from:e}=it(u.value,E());return{from:e+864e5/2,to:e+864e5/2+Ae*864e5,tanks:D(A).map(({id:a})=>a),feed_every_days:2,typed:{calls:[{}]}}}function Ne({from:t,to:e,tanks:a,feed_every_days:n,typed:s},r,l){let{calls:d=[],note:c=null}=Wt(pt(),s),m={from_at:new Date(t).toISOString(),to_at:new Date(it(e,E()).to).toISOString(),tanks:a,feed_every_days:n,calls:d};return r?et(l,{...m,note:c}):c===null?m:{...m,note:c}}function Ye({chosen:t,on_choose:e}){let a=n=>t.includes(n)?t.filter(s=>s!==n):[...t,n];return i`
    <fieldset class="field"><legend class="label">${o("away.tanks")}</legend>
      <div class="tiles two">
        ${D(A).map(({id:n,name:s})=>i`<button type="button" key=${n} aria-pressed=${t.includes(n)}
          onClick=${f(()=>e(a(n)))}>${s}</button>`)}</div></fieldset>`}var Ce=({tanks:t})=>L(t.flatMap(e=>b("tank",e)?.name??[])),se=({feed_every_days:t})=>t?o("task_form.every_said",{count:t}):o("away.feed_none");var de=12*366*864e5,Oe=1,Re=12,Ie=75,Le=8,ze=12;function me({room_name:t,tasks:e,tanks:a,dones:n,now:s},r,l){let d=[...e.filter(y=>!y.over&&(!y.tank||a.has(y.tank)))].sort((y,B)=>y.id<B.id?-1:1),c=Be(d.map(re)),m=d.flatMap(y=>{let B=re(y),_t=n.flatMap(({task:ye,skipped:ke,due_at:yt})=>ye===y.id&&ke&&yt?[Date.parse(yt)]:[]),_e=B&&!c.includes(B)?Pe(y,_t,s,r):Ue(y,_t,r,l);return Fe(y,a,s,_e)}),$=new Date(s).getUTCFullYear();return["BEGIN:VCALENDAR","VERSION:2.0","PRODID:-//Limnary//Tasks//EN",`X-WR-CALNAME:${pe(t)}`,...c.sort().flatMap(y=>Ve(y,$-Oe,$+Re)),...m,"END:VCALENDAR"].map(y=>`${He(y)}\r
`).join("")}function re({zone:t}){let e=M(t);return e==="UTC"?"":e}function Be(t){let e=new Map;for(let a of t)a&&e.set(a,(e.get(a)??0)+1);return[...e].sort(([,a],[,n])=>n-a).slice(0,Le).map(([a])=>a)}var Fe=(t,e,a,n)=>["BEGIN:VEVENT",`UID:${t.id}@limnary`,`DTSTAMP:${H(Date.parse(t.meta?.changed_at??"")||a)}`,`SUMMARY:${pe(t.tank?`${e.get(t.tank)}: ${t.title}`:t.title)}`,"DURATION:PT15M","TRANSP:TRANSPARENT",...n,"END:VEVENT"];function Ue(t,e,a,n){let s=fe(t),r=M(t.zone),l,d=[];try{l=a(t,s,s+de,1)[0],t.rule&&l!==void 0&&(d=[`RRULE:${je(t.rule,r,n)}`])}catch(m){if(!(m instanceof P))throw m;r="UTC"}let c=e.sort((m,$)=>m-$).map(m=>`EXDATE${ce(m,r)}`);return[`DTSTART${ce(l??s,r)}`,...d,...c]}function Pe(t,e,a,n){let s=fe(t),r=Math.max(s,a-7*864e5),l=[];try{l=n(t,r,r+de,ze)}catch(m){if(!(m instanceof P))throw m}let[d=s,...c]=l.filter(m=>!e.includes(m));return[`DTSTART:${H(d)}`,...c.length?[`RDATE:${c.map(H).join(",")}`]:[]]}var fe=({starts_at:t})=>Math.floor(Date.parse(t)/1e3)*1e3;function je(t,e,a){let n=K(t);return Object.entries(n).filter(([s,r])=>s!=="INTERVAL"||r!==1).map(([s,r])=>s==="UNTIL"?`UNTIL=${H(a(n,e))}`:s==="BYDAY"?`BYDAY=${(n.BYDAY??[]).map(([l,d])=>`${l||""}${d}`).join(",")}`:`${s}=${r}`).join(";")}function Ve(t,e,a){let n=l=>(N(l,t)-Math.floor(l/1e3)*1e3)/1e3,s=Date.UTC(e,0,1),r=ie("STANDARD",s+n(s)*1e3,n(s),n(s));for(let l=s;l<Date.UTC(a,0,1);l+=864e5){let[d,c]=[n(l),n(l+864e5)];if(d===c)continue;let m=qe(c,l,l+864e5,n);r.push(...ie(c>d?"DAYLIGHT":"STANDARD",m+d*1e3,d,c))}return["BEGIN:VTIMEZONE",`TZID:${t}`,...r,"END:VTIMEZONE"]}function qe(t,e,a,n){let[s,r]=[e,a];for(;r-s>1e3;){let l=Math.floor((s+r)/2e3)*1e3;n(l)===t?r=l:s=l}return r}var ie=(t,e,a,n)=>[`BEGIN:${t}`,`DTSTART:${$t(e)}`,`TZOFFSETFROM:${le(a)}`,`TZOFFSETTO:${le(n)}`,`END:${t}`];function le(t){let[e,a,n]=[3600,60,1].map((s,r)=>String(Math.floor(Math.abs(t)/s)%(r?60:100)).padStart(2,"0"));return`${t<0?"-":"+"}${e}${a}${n==="00"?"":n}`}var ce=(t,e)=>e==="UTC"?`:${H(t)}`:`;TZID=${e}:${$t(N(t,e))}`,H=t=>`${$t(t)}Z`,$t=t=>new Date(t).toISOString().slice(0,19).replace(/[-:]/g,""),We=/[\x00-\x08\x0b-\x1f\x7f]/g,pe=t=>t.replace(We,"").replace(/\\/g,"\\\\").replace(/;/g,"\\;").replace(/,/g,"\\,").replace(/\r?\n/g,"\\n");function He(t){let e="",a=0;for(let n of t){let s=new TextEncoder().encode(n).length;a+s>Ie&&(e+=`\r
 `,a=1),e+=n,a+=s}return e}function Ze(){let t=async()=>{let{occurrences:e,until_of:a}=await import("./recurrence-IKOFY3JI.js"),n=new Map(D(A).map(d=>[d.id,d.name])),s=k.value.about()?.name??o("room.title"),r=me({room_name:s,tasks:v("task").map(d=>({...d,title:w(d)})),tanks:n,dones:v("task_done"),now:u.value},e,a),l=Kt(new Blob([r],{type:"text/calendar"}),"tasks","ics");X(o("archive.kept",{file:l}))};return i`
    <${h} title=${o("calendar.title")} up="/tasks">
      <p class="sentence">${o("calendar.why")}</p>
      <section class="section"><h2>${o("calendar.file")}</h2>
        <p class="soft">${o("calendar.file_why")}</p>
        <p><button class="quiet tall" type="button" onClick=${f(()=>{t()})}>${o("calendar.keep")}</button></p>
          </section>
      <section class="section"><h2>${o("calendar.subscribe")}</h2>
        ${Rt().joined?i`<${Ke} />`:i`<p class="soft">${o("calendar.need_room")}</p>`}</section>
    <//>`}function Ke(){let t=Z(null),e=Z(null),a=Z(!1),{problem:n,busy:s,ask:r}=Gt();kt(()=>{r(async()=>{e.value=await jt(k.value)})},[]);let l=()=>r(async()=>{t.value=await Vt(k.value),a.value=!1}),d=()=>r(async()=>{await qt(k.value),t.value=e.value=null,X(o("calendar.closed"))}),c=t.value?.link,m=async()=>{await navigator.clipboard.writeText(c),a.value=!0};return i`
    <p class="soft">${o("calendar.subscribe_why")}</p>
    ${c?i`<${ot} text=${c} label=${o("calendar.qr")} />
          <p class="small link" aria-label=${o("calendar.link")}>${c}</p>
          ${!!navigator.clipboard&&i`<p><button class="quiet tall" type="button"
            onClick=${f(()=>{m().catch(()=>X(c))})}>
            ${o(a.value?"calendar.copied":"calendar.copy")}</button></p>`}`:e.value&&i`<p>${o("calendar.since",{when:S(e.value,u.value)})}</p>`}
    <${Xt} text=${n.value} />
    <div class="row">
      ${!c&&i`<button class="quiet tall" type="button" disabled=${s.value} onClick=${f(()=>{l()})}>
        ${o(e.value?"calendar.renew":"calendar.make")}</button>`}
      ${(c||e.value)&&i`<button class="quiet tall" type="button" disabled=${s.value}
        onClick=${f(()=>{d()})}>${o("calendar.close")}</button>`}
    </div>`}function Qe({id:t}){let e=t?b("tank",t):null;if(t&&!e)return i`<${Y} up="/" />`;let a=e?[e]:D(A);return i`
    <${h} title=${o(e?"labels.title_one":"labels.title")} up=${e?`/tank/${t}`:"/tanks"}
      act=${a.length>0&&i`<button class="main" type="button"
          onClick=${f(()=>{nt("limnary-labels")})}>${o("away.print")}
        </button>`}>
      <p class="soft not-printed">${o(a.length?"labels.why":"tanks.empty")}</p>
      <ul class="labels">${a.map(n=>i`
        <li key=${n.id}><${ot} text=${`${location.origin}/tank/${n.id}`}
          label=${o("labels.qr",{tank:n.name})} />
          <b>${n.name}</b><span>${j(Et(n).water_l)}</span></li>`)}</ul>
    <//>`}var Ge=20;function Xe({id:t}){let e=b("task",t),a=`task.${t}.done`,n=xt(a,()=>({}));if(!e)return i`<${Y} up="/tasks" />`;let s=tt(e),r=e.tank?b("tank",e.tank):null,l=k.value.may("task_done")&&s&&!e.over&&!s.unread,d=s?.due[0]??s?.next??null,{when:c}=n.value,m=async $=>{await Ut(e,d,{skipped:$,when:c})&&(n.value={},Mt(a))};return i`
    <${h} title=${w(e)} up=${r?`/tank/${r.id}/tasks`:"/tasks"} aside=${i`<span></span>`}
      act=${l&&d!==null&&i`
        <button class="quiet tall" type="button" disabled=${dt(c)} onClick=${f(()=>{m(!0)})}>
          ${o("task.skip")}</button>
        <button class="main" type="button" disabled=${dt(c)} onClick=${f(()=>{m(!1)})}>
          <${g} name="done" />
          ${o(s.due.length?"task.done":"task.done_early")}</button>`}>
      <p class="soft">${r?.name??o("tasks.room")}</p>
      <p class="sentence">${C(e)}</p>
      ${s?.unread&&i`<p class="wrong"><${g} name="needs" size=${20} /><span>
        ${o("task.unread",{rule:e.rule})}</span></p>`}
      ${s&&!e.over&&!s.unread&&i`<p>${Je(s)}</p>`}
      ${e.note&&i`<p>${e.note}</p>`}
      ${l&&i`<${Qt} at=${c}
          on_at=${$=>n.value={when:$}} />`}
      <p class="caution small">${o("task.hands")}</p>
      <${ea} task=${e} />
      ${k.value.may("task")&&i`
        <ul class="lines section">
          <li><a class="line" href=${`/task/${t}/edit`}>${o("task.edit")}</a></li>
          <li><button class="line whole" type="button" onClick=${f(()=>{ta(e)})}><span>
            ${o(e.over?"task.resume":"task.end")}${!e.over&&i`<br /><span class="soft small">
            ${o("task.end_why")}</span>`}</span></button></li>
        </ul>`}
    <//>`}function Je({due:t,overdue:e,next:a}){return t.length>0?e?o("task.since",{when:S(t[0],u.value)}):S(t[0],u.value):a===null?o("task.no_next"):o("task.next",{when:S(a,u.value)})}var ta=t=>V([{type:"put",kind:"task",id:t.id,fields:{over:!t.over}}],o(t.over?"saved.task_resumed":"saved.task_ended",{title:w(t)}));function ea({task:t}){let e=[...v("task_done").filter(n=>n.task===t.id)].sort((n,s)=>n.at<s.at?1:-1);if(e.length===0)return i`<p class="soft">${o("task.never")}</p>`;let a=(n,s)=>V([{type:"del",kind:"task_done",id:n}],o("saved.removed",{what:s}));return i`
    <section class="section"><h2>${o("task.history")}</h2>
      <ul class="lines">${e.slice(0,Ge).map(n=>{let s=o(n.skipped?"task.was_skipped":"task.was_done"),r=k.value.name_of(n.meta.made_by);return i`<li key=${n.id}><div class="line"><span class="grow">${s} <span class="soft">
          ${[S(n.at,u.value),r].filter(Boolean).join("\xA0\xB7 ")}</span></span>
          ${k.value.may("task_done")&&i`<button class="quiet square" type="button"
            aria-label=${o("remove_named",{what:`${s}, ${S(n.at,u.value)}`})}
            onClick=${f(()=>{a(n.id,s)})}><${g} name="remove" size=${20} /></button>`}</div></li>`})}</ul></section>`}var aa=["once","daily","days","weekdays","monthly"],oa=[420,480,720,1020,1080,1200],na=15,$e=90,sa=["title","tank","starts_at","rule"];function ra({id:t,query:e}){let a=t?b("task",t):null,n=e.get("tank")??"",s=a?M(a.zone):E(),r=st({name:t?`task.${t}`:`task.new.${n}${e.get("title")??""}`,held:a,first:()=>ia(a,e,s)});if(t&&!a)return i`<${Y} up="/tasks" />`;let l=r.draft.value,d=r.set,c=t?`/task/${t}`:l.tank?`/tank/${l.tank}/tasks`:"/tasks",m=[...aa,...a&&W(a).often==="own"?["own"]:[]],$=()=>{let p=l.title.trim();return p?l.often==="weekdays"&&l.weekdays.length===0?r.refuse(o("task_form.need_weekday")):r.save(()=>{let y=la(l,s,a,r.opened);return{writes:Object.keys(y).length?[{type:"put",kind:"task",id:t??G(),fields:y}]:[],said:o("saved.task",{title:p}),to:c}}):r.refuse(o("task_form.need_title"))};return i`
    <${h} title=${o(t?"task_form.edit":"task_form.new")} up=${c} news=${i`<${at}
      opened=${r.opened} held=${a} names=${sa} said=${{rule:C}} />`}
      act=${k.value.may("task")&&i`<button class="main" type="button" onClick=${f(()=>{$()})}>
        ${o("task_form.save")}</button>`}>
      <${ca} form=${l} set=${d} />
      <${ut} label=${o("task_form.where")} name="tank" chosen=${l.tank}
        on_choose=${p=>d({tank:p})}
        choices=${[...D(A).map(p=>[p.id,p.name]),["",o("tasks.room")]]} />
      <${ut} label=${o("task_form.often")} name="often" chosen=${l.often}
        on_choose=${p=>d({often:p})}
        choices=${m.map(p=>[p,o(`task_form.often.${p}`)])} />
      <${da} form=${l} set=${d} />
      <${ut} label=${o("task_form.time")} name="time" chosen=${l.minutes}
        on_choose=${p=>d({minutes:p})} three
        choices=${oa.map(p=>[p,F(p)])} />
      <${R} label=${o("task_form.other_time")} said=${F(l.minutes)}
        on_step=${p=>d({minutes:(l.minutes+p*na+1440)%1440})}
        />
      <p class="sentence" role="status">${mt(l,a?.rule)}</p>
      <${rt} form=${r} kind="task" />
    <//>`}function ia(t,e,a){if(t)return{...W(t),title:w(t),tank:t.tank??"",own_words:!0};let n=e.get("title")??"",s=Number(e.get("every")??0),r=s>1?{often:"days",every:Math.min(Math.round(s),$e)}:{};return{...te(u.value,a),...r,title:n,tank:e.get("tank")??"",own_words:n!==""}}function la(t,e,a,n){let s=t.title.trim(),{rule:r,...l}=ee(t,e),d=Bt(lt,ct,s),c=n&&s===w(n)?{title:n.title}:{title:s,...d?{from_tile:{code:d,words:s}}:{}},m=t.often==="own"?a?.rule:r,$={...c,tank:t.tank||null,rule:m??null,...l};return a?et(n,$):Object.fromEntries(Object.entries($).filter(([,p])=>p!==null))}function ca({form:t,set:e}){let a=lt.map(ct),n=t.own_words||t.title!==""&&!a.includes(t.title);return i`
    <fieldset class="field"><legend class="label">${o("task_form.what")}</legend>
      <div class="tiles two">
        ${a.map(s=>i`<button type="button" key=${s} aria-pressed=${t.title===s}
          onClick=${f(()=>e({title:s,own_words:!1}))}>${s}</button>`)}
        <button type="button" class="across" aria-pressed=${n} onClick=${f(()=>e({own_words:!0}))}>
          ${o("task_form.own_words")}</button>
      </div></fieldset>
    ${n&&i`<div class="field"><label for="task-title">${o("task_form.title")}</label>
      <input id="task-title" type="text" autocomplete="off" maxlength="120" value=${t.title}
        onInput=${zt(s=>e({title:s,own_words:!0}))} /></div>`}`}function da({form:t,set:e}){let a=i`<${R} label=${o("task_form.first_day")} said=${z(t.day)}
    on_step=${s=>e({day:t.day+s*864e5})} />`;if(t.often==="once")return a;if(t.often==="days")return i`
    <${R} label=${o("task_form.every")} said=${o("task_form.every_said",{count:t.every})}
      can=${{less:t.every>2,more:t.every<$e}}
      on_step=${s=>e({every:t.every+s})} />
    ${a}`;if(t.often==="monthly")return i`
    <${R} label=${o("task_form.month_day")} said=${t.month_day===x?o("task_form.last_day"):o("task_form.month_day_said",{count:t.month_day})}
      on_step=${s=>e({month_day:(t.month_day+s+x-1)%x+1})} />`;if(t.often!=="weekdays")return null;let n=s=>t.weekdays.includes(s)?t.weekdays.filter(r=>r!==s):[...t.weekdays,s];return i`
    <fieldset class="field"><legend class="label">${o("task_form.weekdays")}</legend>
      <div class="tiles four">${I.map((s,r)=>i`
        <button type="button" key=${s} aria-pressed=${t.weekdays.includes(s)} aria-label=${U(r)}
          onClick=${f(()=>e({weekdays:n(s)}))}>${U(r,"short")}</button>`)}</div>
    </fieldset>`}var ut=({label:t,name:e,chosen:a,choices:n,three:s,on_choose:r})=>i`
  <fieldset class="field"><legend class="label">${t}</legend>
    <div class=${s?"tiles":"tiles two"}>${n.map(([l,d])=>i`
      <label key=${l}><input class="unseen" type="radio" name=${e} value=${l} checked=${l===a}
        onChange=${()=>r(l)} />${d}</label>`)}</div>
  </fieldset>`;var ma=7;function fa({id:t}){let e=t?b("tank",t):null;if(t&&!e)return i`<${Y} up="/" />`;let a=q(t),n=k.value.may("task")&&i`<a class="main" href=${t?`/task/new?tank=${t}`:"/task/new"}><${g} name="plus" />${o("tasks.new")}
      </a>`;return i`
    <${h} title=${o("tasks.title")} place=${t?void 0:"round"} up=${t?`/tank/${t}`:"/"} act=${n}
      aside=${i`<span class="soft">${e?.name??""}</span>`}>
      ${a.length===0&&i`<p class="sentence">${o("tasks.empty")}</p><p class="soft">${o("tasks.empty_more")}
        </p>`}
      ${a.length>0&&i`
        <${$a} id=${t} />
        <${ua} tasks=${a} named=${!t} />
        <section class="section"><h2>${o("tasks.all")}</h2>
          <ul class="lines">
            ${[...a].sort(pa).map(s=>i`<${_a} key=${s.id} task=${s} named=${!t} />`)}</ul>
            </section>`}
      ${!t&&i`<p class="section"><a class="quiet" href="/calendar"><${g} name="clock" size=${20} />
        ${o("calendar.title")}</a></p>`}
    <//>`}var pa=(t,e)=>+!!t.over-+!!e.over||w(t).localeCompare(w(e));function $a({id:t}){let e=Ft(t);return i`
    <section><h2>${o("tasks.today")}</h2>
      ${e.length>0?i`<ul class="lines tasks">
            ${e.map(a=>i`<${Pt} key=${`${a.task.id}.${a.at}`} ...${a} named=${!t} />`)}</ul>`:i`<p class="soft">${o("tasks.none_today")}</p>`}</section>`}function ua({tasks:t,named:e}){let a=J();return(a?Tt(t,v("task_done"),u.value,E(),ma,a):[]).map(s=>i`
    <section class="section" key=${s.day}><h2>${bt(s.day,u.value)}</h2>
      <ul class="lines">${s.items.map(({task:r,at:l})=>i`
        <li key=${r.id+l}><a class="line" href=${`/task/${r.id}`}><span class="grow">${w(r)}<span
          class="soft small"> ${[vt(l),e&&ue(r)].filter(Boolean).join("\xA0\xB7 ")}</span></span></a>
          </li>`)}</ul></section>`)}function _a({task:t,named:e}){let a=tt(t),n=t.over?o("tasks.ended"):a?.next?o("task.next",{when:S(a.next,u.value)}):"";return i`<li><a class="line" href=${`/task/${t.id}`}><span class="grow"><b>${w(t)}</b>
    ${e&&i` <span class="soft">${ue(t)}</span>`}<br />
    <span class="soft small">${[C(t),n].filter(Boolean).join(" ")}</span></span></a></li>`}var ue=t=>t.tank?b("tank",t.tank)?.name??"":o("tasks.room");export{ge as Away,xe as AwayForm,Ze as CalendarPage,Qe as Labels,Xe as Task,ra as TaskForm,fa as Tasks};
//# sourceMappingURL=tasks-R257LQ2F.js.map
