import{Ca as et,Ea as at,Ja as ot,Va as jt,Xa as qt,Za as nt,_a as st,aa as Bt,ba as Ft,c as zt,ca as Ut,ma as Pt}from"./chunk-VAPY72Y6.js";import{$c as Lt,A as o,Bb as Nt,Cb as Yt,E as ht,F as S,H as vt,I as F,J as U,Jc as lt,K as L,L as z,La as At,Mb as y,Nb as $,Nc as it,Pb as v,Pc as Ot,Qb as b,Ra as D,Tb as Ct,Ub as A,Uc as h,Vc as J,Wa as Et,Wc as E,Xb as Mt,Xc as V,Yc as It,Zb as g,Zc as tt,_b as Rt,_c as ct,b as yt,bd as C,g as Z,h as r,hc as G,ic as q,jc as X,ma as gt,md as Vt,na as Tt,nc as p,nd as Wt,oa as Dt,od as Ht,pa as Q,sb as St,tc as w,vb as xt,yb as j}from"./chunk-6UKWFE3K.js";import{p as kt,t as wt}from"./chunk-NE5DRRVS.js";import{a as N,b as Y,c as bt,d as rt,e as I,g as P,h as K}from"./chunk-HZWNA2UL.js";import"./chunk-I3X6XWMK.js";var x=29;function Kt(t,e){let a=Math.floor(Y(t,e)/864e5)*864e5;return{often:"daily",every:2,weekdays:[Gt(a)],month_day:Xt(a),day:a,minutes:480}}function W({starts_at:t,rule:e,zone:a}){let n=Y(Date.parse(t),N(a)),s=Math.floor(n/864e5)*864e5;return{...{every:2,weekdays:[Gt(s)],month_day:Xt(s),day:s,minutes:(n-s)/6e4},...fe(e)}}function fe(t){if(!t)return{often:"once"};try{let{FREQ:e,INTERVAL:a,BYDAY:n,BYMONTHDAY:s,WKST:l,...i}=K(t),d=Object.keys(i).length===0;if(d&&e==="DAILY"&&!n&&!s)return a===1?{often:"daily"}:{often:"days",every:a};if(d&&e==="WEEKLY"&&a===1)return{often:"weekdays",...n?{weekdays:n.map(([,m])=>m)}:{}};let c=s?.length===1?s[0]:s?null:void 0;if(d&&e==="MONTHLY"&&a===1&&!n&&c!==null&&(c===void 0||c===-1||c>0&&c<x))return{often:"monthly",...c===void 0?{}:{month_day:c===-1?x:c}}}catch(e){if(!(e instanceof P))throw e}return{often:"own"}}function Qt(t,e){let a=new Date(bt(t.day+t.minutes*6e4,e)).toISOString(),n=I.filter(l=>t.weekdays.includes(l)),s={once:null,daily:"FREQ=DAILY",days:`FREQ=DAILY;INTERVAL=${t.every}`,weekdays:`FREQ=WEEKLY;BYDAY=${n.join(",")}`,monthly:`FREQ=MONTHLY;BYMONTHDAY=${t.month_day===x?-1:t.month_day}`};return t.often==="own"?{starts_at:a,zone:e}:{starts_at:a,zone:e,rule:s[t.often]}}var Gt=t=>I[(new Date(t).getUTCDay()+6)%7],Xt=t=>Math.min(new Date(t).getUTCDate(),x);function dt(t,e=""){let a={time:F(t.minutes),day:z(t.day)};if(t.often==="own")return o("task.said_own",{rule:e});if(t.often==="days")return o("task.said_days",{...a,count:t.every});if(t.often==="monthly")return t.month_day===x?o("task.said_last_day",a):o("task.said_monthly",{...a,count:t.month_day});if(t.often!=="weekdays")return o(`task.said_${t.often}`,a);let n=I.flatMap((s,l)=>t.weekdays.includes(s)?[U(l)]:[]);return n.length===7?o("task.said_daily",a):o("task.said_weekdays",{...a,days:L(n)})}function M(t){let e=dt(W(t),t.rule),a=N(t.zone);return a===E()?e:`${e} ${o("task.zone",{zone:a})}`}var R=t=>z(Y(t,E()));var ue=3,$e=["steady","watch","change today","act now"],_e=["food","power","water","hands","vet"];function ye(){let t=Q(v("away_sheet"),$.value),e=y.value.may("away_sheet");if(!t)return r`
    <${w} title=${o("away.title")} up="/room" act=${e&&r`<a class="main" href="/away/edit"><${g}
      name="plus" />${o("away.new")}</a>`}>
      <p class="sentence">${o("away.none")}</p><p class="soft">${o("away.none_more")}</p>
    <//>`;let a=()=>q([{type:"del",kind:"away_sheet",id:t.id}],o("saved.removed",{what:o("away.title")}));return r`
    <${w} title=${o("away.title")} up="/room"
      act=${r`${e&&r`<a class="quiet tall" href="/away/edit">${o("edit")}</a>`}<button class="main"
        type="button" onClick=${p(()=>print())}>${o("away.print")}</button>`}>
      <${ke} sheet=${t} />
      ${e&&r`<p class="section not-printed"><button class="quiet" type="button"
        onClick=${p(()=>{a()})}>${o("away.remove")}</button></p>`}
    <//>`}function ke({sheet:t}){let e=J(),{calls:a=[]}=t,n={from:Date.parse(t.from_at),to:Date.parse(t.to_at),feed_every_days:t.feed_every_days},s=v("task_done"),l=D(A).filter(c=>t.tanks.includes(c.id)),i=()=>[],d=Dt(V(null),s,n,e??i);return r`
    <div class="away">
      <p class="sentence">${o("away.span",{from:R(n.from),to:R(n.to)})}</p>
      ${a.length>0&&r`
        <section><h2>${o("away.calls")}</h2>
          <ul class="calls">${a.map(({who:c,phone:m})=>r`<li key=${m}><span>${c}
            </span> <a class="quiet" href=${`tel:${m.replace(/[^+\d]/g,"")}`}>${m}</a></li>`)}</ul>
            </section>`}
      ${t.note&&r`<section><h2>${o("away.note")}</h2><p>${t.note}</p></section>`}
      <div class="away-tanks">${l.map(c=>{let{facts:m,advice:k}=Mt(c);return r`<${we} key=${c.id}
          said=${Tt({facts:m,advice:k,meal:Et(c,m.feedings)},n,V(c.id),s,e??i)} />`})}</div>
      ${d.length>0&&r`<section><h2>${o("tasks.room")}</h2><${Jt} tasks=${d} /></section>`}
      <section><h2>${o("away.states")}</h2>
        <ul class="away-states">
          ${$e.map(c=>r`<li key=${c}><b class="state"><${Rt} state=${c} size=${16} />
          ${o(`state.${c}`)}</b> ${o(`away.do.${c}`)}</li>`)}</ul></section>
      <section><h2>${o("away.mind")}</h2><ul class="why">
        ${_e.map(c=>r`<li key=${c}>${o(`away.mind.${c}`)}</li>`)}</ul></section>
    </div>`}function we({said:{tank:t,feed:e,test:a,change:n,limits:s,bases:l,tasks:i}}){let d=n.dose.amount===void 0?"":Yt(n.dose),c=e&&{amount:Nt(e.feed_g),food:e.food??"",count:e.every_days},m=k=>`${xt(k,s[k],l[k])} ${St(k,l[k])}`;return r`
    <article><h2>${t.name} <span class="soft small">
      ${[j(t.water_l),t.place].filter(Boolean).join("\xA0\xB7 ")}</span></h2>
      <dl>
        <dt>${o("away.feed")}</dt><dd>${c?o(e.food?"away.feed_food":"away.feed_plain",c):o("away.feed_none")}</dd>
        <dt>${o("away.test")}</dt><dd>${o("away.test_every",{count:a.every_days,first:R(a.first)})}
          </dd>
        <dt>${o("away.change")}</dt><dd>
          ${o(d?"away.change_dose":"away.change_plain",{litres:j(n.litres),dose:d,label:n.dose.label?.name??"",ammonia:m("total_ammonia"),nitrite:m("nitrite")})}
          ${n.dose.missing&&r` <b>${o("away.dose_unknown")}</b>`}</dd>
        ${i.length>0&&r`<dt>${o("tasks.title")}</dt><dd><${Jt} tasks=${i} /></dd>`}
      </dl></article>`}var Jt=({tasks:t})=>r`
  <ul>${t.map(({task:e,days:a})=>r`<li key=${e.id}><b>${h(e)}</b> <span>
    ${a.length>ue?M(e):L(a.map(R))}</span></li>`)}</ul>`;var O=({label:t,said:e,on_step:a,can:n={less:!0,more:!0}})=>r`
  <div class="field">
    <span class="label">${t}</span>
    <div class="stepper in-words" role="group" aria-label=${t}>
      <button class="quiet" type="button" disabled=${!n.less} aria-label=${o("task_form.less",{what:t})}
        onClick=${()=>a(-1)}><${g} name="minus" size=${28} /></button>
      <output class="amount" aria-live="polite">${e}</output>
      <button class="quiet" type="button" disabled=${!n.more} aria-label=${o("task_form.more",{what:t})}
        onClick=${()=>a(1)}><${g} name="plus" size=${28} /></button>
    </div>
  </div>`;var he=7,ve=[1,2,3,0],mt=["calls","note"],be=["from_at","to_at","tanks","feed_every_days",...mt];function ge(){let t=Q(v("away_sheet"),$.value),e=nt({name:`away.${t?.id??"new"}`,held:t,first:()=>Te(t)}),a=e.draft.value,n=e.set,s=()=>a.tanks.length===0?e.refuse(o("away.need_tank")):e.save(()=>{let l=De(a,t,e.opened);return{writes:Object.keys(l).length?[{type:"put",kind:"away_sheet",id:t?.id??G(),fields:l}]:[],said:o("saved.away_sheet"),to:"/away"}});return r`
    <${w} title=${o("away.title")} up="/away" news=${r`<${at} opened=${e.opened} held=${t}
      names=${be} said=${{tanks:Ee,feed_every_days:te}} />`}
      act=${y.value.may("away_sheet")&&r`<button class="main" type="button" onClick=${p(()=>{s()})}>
        ${o("away.save")}</button>`}>
      <${O} label=${o("away.from")} said=${R(a.from)}
        on_step=${l=>n({from:a.from+l*864e5,to:Math.max(a.to,a.from+l*864e5)})} />
      <${O} label=${o("away.to")} said=${R(a.to)}
        can=${{less:a.to-864e5>=a.from,more:!0}}
        on_step=${l=>n({to:a.to+l*864e5})} />
      <${Ae} chosen=${a.tanks} on_choose=${l=>n({tanks:l})} />
      <fieldset class="field"><legend class="label">${o("away.feed_how_often")}</legend>
        <div class="tiles two">${ve.map(l=>r`<label key=${l}><input class="unseen" type="radio" name="every"
            checked=${a.feed_every_days===l} onChange=${()=>n({feed_every_days:l})} />
          ${te({feed_every_days:l})}</label>`)}</div>
        <p class="help">${o("away.feed_help")}</p></fieldset>
      <${Ut} specs=${pt()} raw=${a.typed} errors=${e.errors.value} tried=${!0}
        on_raw=${l=>n({typed:l})} />
      <${st} form=${e} kind="away_sheet" beside=${mt} />
    <//>`}var pt=()=>mt.map(t=>wt(kt().away_sheet.fields,t));function Te(t){if(t)return{from:Date.parse(t.from_at),to:Date.parse(t.to_at),tanks:t.tanks,feed_every_days:t.feed_every_days,typed:Ft(pt(),t)};let{from:e}=rt($.value,E());return{from:e+864e5/2,to:e+864e5/2+he*864e5,tanks:D(A).map(({id:a})=>a),feed_every_days:2,typed:{calls:[{}]}}}function De({from:t,to:e,tanks:a,feed_every_days:n,typed:s},l,i){let{calls:d=[],note:c=null}=Bt(pt(),s),m={from_at:new Date(t).toISOString(),to_at:new Date(rt(e,E()).to).toISOString(),tanks:a,feed_every_days:n,calls:d};return l?et(i,{...m,note:c}):c===null?m:{...m,note:c}}function Ae({chosen:t,on_choose:e}){let a=n=>t.includes(n)?t.filter(s=>s!==n):[...t,n];return r`
    <fieldset class="field"><legend class="label">${o("away.tanks")}</legend>
      <div class="tiles two">
        ${D(A).map(({id:n,name:s})=>r`<button type="button" key=${n} aria-pressed=${t.includes(n)}
          onClick=${p(()=>e(a(n)))}>${s}</button>`)}</div></fieldset>`}var Ee=({tanks:t})=>L(t.flatMap(e=>b("tank",e)?.name??[])),te=({feed_every_days:t})=>t?o("task_form.every_said",{count:t}):o("away.feed_none");var se=12*366*864e5,Se=1,xe=12,Ne=75,Ye=20,Ce=12;function re({room_name:t,tasks:e,tanks:a,dones:n,now:s},l,i){let d=e.filter(_=>!_.over&&(!_.tank||a.has(_.tank))).toSorted((_,B)=>_.id<B.id?-1:1),c=Me(d.map(ee)),m=d.flatMap(_=>{let B=ee(_),$t=n.flatMap(({task:me,skipped:pe,due_at:_t})=>me===_.id&&pe&&_t?[Date.parse(_t)]:[]),de=B&&!c.includes(B)?Ie(_,$t,s,l):Oe(_,$t,l,i);return Re(_,a,s,de)}),k=new Date(s).getUTCFullYear();return["BEGIN:VCALENDAR","VERSION:2.0","PRODID:-//Limnary//Tasks//EN",`X-WR-CALNAME:${ie(t)}`,...c.sort().flatMap(_=>ze(_,k-Se,k+xe)),...m,"END:VCALENDAR"].map(_=>`${Ue(_)}\r
`).join("")}function ee({zone:t}){let e=N(t);return e==="UTC"?"":e}function Me(t){let e=new Map;for(let a of t)a&&e.set(a,(e.get(a)??0)+1);return[...e].sort(([,a],[,n])=>n-a).slice(0,Ye).map(([a])=>a)}var Re=(t,e,a,n)=>["BEGIN:VEVENT",`UID:${t.id}@limnary`,`DTSTAMP:${H(Date.parse(t.meta?.changed_at??"")||a)}`,`SUMMARY:${ie(t.tank?`${e.get(t.tank)}: ${t.title}`:t.title)}`,"DURATION:PT15M","TRANSP:TRANSPARENT",...n,"END:VEVENT"];function Oe(t,e,a,n){let s=le(t),l=N(t.zone),i,d=[];try{i=a(t,s,s+se,1)[0],t.rule&&i!==void 0&&(d=[`RRULE:${Le(t.rule,l,n)}`])}catch(m){if(!(m instanceof P))throw m;l="UTC"}let c=e.sort((m,k)=>m-k).map(m=>`EXDATE${ne(m,l)}`);return[`DTSTART${ne(i??s,l)}`,...d,...c]}function Ie(t,e,a,n){let s=le(t),l=Math.max(s,a-7*864e5),i=[];try{i=n(t,l,l+se,Ce)}catch(m){if(!(m instanceof P))throw m}let[d=s,...c]=i.filter(m=>!e.includes(m));return[`DTSTART:${H(d)}`,...c.length?[`RDATE:${c.map(H).join(",")}`]:[]]}var le=({starts_at:t})=>Math.floor(Date.parse(t)/1e3)*1e3;function Le(t,e,a){let n=K(t);return Object.entries(n).filter(([s,l])=>s!=="INTERVAL"||l!==1).map(([s,l])=>s==="UNTIL"?`UNTIL=${H(a(n,e))}`:s==="BYDAY"?`BYDAY=${(n.BYDAY??[]).map(([i,d])=>`${i||""}${d}`).join(",")}`:`${s}=${l}`).join(";")}function ze(t,e,a){let n=i=>(Y(i,t)-Math.floor(i/1e3)*1e3)/1e3,s=Date.UTC(e,0,1),l=ae("STANDARD",s+n(s)*1e3,n(s),n(s));for(let i=s;i<Date.UTC(a,0,1);i+=864e5){let[d,c]=[n(i),n(i+864e5)];if(d===c)continue;let m=Be(c,i,i+864e5,n);l.push(...ae(c>d?"DAYLIGHT":"STANDARD",m+d*1e3,d,c))}return["BEGIN:VTIMEZONE",`TZID:${t}`,...l,"END:VTIMEZONE"]}function Be(t,e,a,n){let[s,l]=[e,a];for(;l-s>1e3;){let i=Math.floor((s+l)/2e3)*1e3;n(i)===t?l=i:s=i}return l}var ae=(t,e,a,n)=>[`BEGIN:${t}`,`DTSTART:${ft(e)}`,`TZOFFSETFROM:${oe(a)}`,`TZOFFSETTO:${oe(n)}`,`END:${t}`];function oe(t){let[e,a,n]=[3600,60,1].map((s,l)=>String(Math.floor(Math.abs(t)/s)%(l?60:100)).padStart(2,"0"));return`${t<0?"-":"+"}${e}${a}${n==="00"?"":n}`}var ne=(t,e)=>e==="UTC"?`:${H(t)}`:`;TZID=${e}:${ft(Y(t,e))}`,H=t=>`${ft(t)}Z`,ft=t=>new Date(t).toISOString().slice(0,19).replace(/[-:]/g,""),Fe=/[\x00-\x08\x0b-\x1f\x7f]/g,ie=t=>t.replace(Fe,"").replace(/\\/g,"\\\\").replace(/;/g,"\\;").replace(/,/g,"\\,").replace(/\r?\n/g,"\\n");function Ue(t){let e="",a=0;for(let n of t){let s=new TextEncoder().encode(n).length;a+s>Ne&&(e+=`\r
 `,a=1),e+=n,a+=s}return e}function Pe(){let t=async()=>{let{occurrences:e,until_of:a}=await import("./recurrence-YYMJPC3H.js"),n=new Map(D(A).map(d=>[d.id,d.name])),s=y.value.about()?.name??o("room.title"),l=re({room_name:s,tasks:v("task").map(d=>({...d,title:h(d)})),tanks:n,dones:v("task_done"),now:$.value},e,a),i=Pt(new Blob([l],{type:"text/calendar"}),"tasks","ics");X(o("archive.kept",{file:i}))};return r`
    <${w} title=${o("calendar.title")} up="/tasks">
      <p class="sentence">${o("calendar.why")}</p>
      <section class="section"><h2>${o("calendar.file")}</h2>
        <p class="soft">${o("calendar.file_why")}</p>
        <p><button class="quiet tall" type="button" onClick=${p(()=>{t()})}>${o("calendar.keep")}</button></p>
          </section>
      <section class="section"><h2>${o("calendar.subscribe")}</h2>
        ${Ct().joined?r`<${je} />`:r`<p class="soft">${o("calendar.need_room")}</p>`}</section>
    <//>`}function je(){let t=Z(null),e=Z(null),a=Z(!1),{problem:n,busy:s,ask:l}=jt();yt(()=>{l(async()=>{e.value=await Vt(y.value)})},[]);let i=()=>l(async()=>{t.value=await Wt(y.value),a.value=!1}),d=()=>l(async()=>{await Ht(y.value),t.value=e.value=null,X(o("calendar.closed"))}),c=t.value?.link,m=async()=>{await navigator.clipboard.writeText(c),a.value=!0};return r`
    <p class="soft">${o("calendar.subscribe_why")}</p>
    ${c?r`<${ot} text=${c} label=${o("calendar.qr")} />
          <p class="small link" aria-label=${o("calendar.link")}>${c}</p>
          ${!!navigator.clipboard&&r`<p><button class="quiet tall" type="button"
            onClick=${p(()=>{m().catch(()=>X(c))})}>
            ${o(a.value?"calendar.copied":"calendar.copy")}</button></p>`}`:e.value&&r`<p>${o("calendar.since",{when:S(e.value,$.value)})}</p>`}
    <${qt} text=${n.value} />
    <div class="row">
      ${!c&&r`<button class="quiet tall" type="button" disabled=${s.value} onClick=${p(()=>{i()})}>
        ${o(e.value?"calendar.renew":"calendar.make")}</button>`}
      ${(c||e.value)&&r`<button class="quiet tall" type="button" disabled=${s.value}
        onClick=${p(()=>{d()})}>${o("calendar.close")}</button>`}
    </div>`}function qe({id:t}){let e=t?b("tank",t):null;if(t&&!e)return r`<${C} up="/" />`;let a=e?[e]:D(A);return r`
    <${w} title=${o(e?"labels.title_one":"labels.title")} up=${e?`/tank/${t}`:"/tanks"}
      act=${a.length>0&&r`<button class="main" type="button" onClick=${p(()=>print())}>${o("away.print")}
        </button>`}>
      <p class="soft not-printed">${o(a.length?"labels.why":"tanks.empty")}</p>
      <ul class="labels">${a.map(n=>r`
        <li key=${n.id}><${ot} text=${`${location.origin}/tank/${n.id}`}
          label=${o("labels.qr",{tank:n.name})} />
          <b>${n.name}</b><span>${j(At(n).water_l)}</span></li>`)}</ul>
    <//>`}var Ve=20;function We({id:t}){let e=b("task",t);if(!e)return r`<${C} up="/tasks" />`;let a=tt(e),n=e.tank?b("tank",e.tank):null,s=y.value.may("task_done")&&a&&!e.over&&!a.unread,l=a?.due[0]??a?.next??null;return r`
    <${w} title=${h(e)} up=${n?`/tank/${n.id}/tasks`:"/tasks"} aside=${r`<span></span>`}
      act=${s&&l!==null&&r`
        <button class="quiet tall" type="button" onClick=${p(()=>{ct(e,l,{skipped:!0})})}>
          ${o("task.skip")}</button>
        <button class="main" type="button" onClick=${p(()=>{ct(e,l)})}><${g} name="done" />
          ${o(a.due.length?"task.done":"task.done_early")}</button>`}>
      <p class="soft">${n?.name??o("tasks.room")}</p>
      <p class="sentence">${M(e)}</p>
      ${a?.unread&&r`<p class="wrong"><${g} name="needs" size=${20} /><span>
        ${o("task.unread",{rule:e.rule})}</span></p>`}
      ${a&&!e.over&&!a.unread&&r`<p>${He(a)}</p>`}
      ${e.note&&r`<p>${e.note}</p>`}
      <p class="caution small">${o("task.hands")}</p>
      <${Ke} task=${e} />
      ${y.value.may("task")&&r`
        <ul class="lines section">
          <li><a class="line" href=${`/task/${t}/edit`}>${o("task.edit")}</a></li>
          <li><button class="line whole" type="button" onClick=${p(()=>{Ze(e)})}><span>
            ${o(e.over?"task.resume":"task.end")}${!e.over&&r`<br /><span class="soft small">
            ${o("task.end_why")}</span>`}</span></button></li>
        </ul>`}
    <//>`}function He({due:t,overdue:e,next:a}){return t.length>0?e?o("task.since",{when:S(t[0],$.value)}):S(t[0],$.value):a===null?o("task.no_next"):o("task.next",{when:S(a,$.value)})}var Ze=t=>q([{type:"put",kind:"task",id:t.id,fields:{over:!t.over}}],o(t.over?"saved.task_resumed":"saved.task_ended",{title:h(t)}));function Ke({task:t}){let e=v("task_done").filter(n=>n.task===t.id).toSorted((n,s)=>n.at<s.at?1:-1);if(e.length===0)return r`<p class="soft">${o("task.never")}</p>`;let a=(n,s)=>q([{type:"del",kind:"task_done",id:n}],o("saved.removed",{what:s}));return r`
    <section class="section"><h2>${o("task.history")}</h2>
      <ul class="lines">${e.slice(0,Ve).map(n=>{let s=o(n.skipped?"task.was_skipped":"task.was_done"),l=y.value.name_of(n.meta.made_by);return r`<li key=${n.id}><div class="line"><span class="grow">${s} <span class="soft">
          ${[S(n.at,$.value),l].filter(Boolean).join("\xA0\xB7 ")}</span></span>
          ${y.value.may("task_done")&&r`<button class="quiet square" type="button"
            aria-label=${o("remove_named",{what:`${s}, ${S(n.at,$.value)}`})}
            onClick=${p(()=>{a(n.id,s)})}><${g} name="remove" size=${20} /></button>`}</div></li>`})}</ul></section>`}var Qe=["once","daily","days","weekdays","monthly"],Ge=[420,480,720,1020,1080,1200],Xe=15,Je=["title","tank","starts_at","rule"];function ta({id:t,query:e}){let a=t?b("task",t):null,n=e.get("tank")??"",s=a?N(a.zone):E(),l=nt({name:t?`task.${t}`:`task.new.${n}`,held:a,first:()=>ea(a,n,s)});if(t&&!a)return r`<${C} up="/tasks" />`;let i=l.draft.value,d=l.set,c=t?`/task/${t}`:i.tank?`/tank/${i.tank}/tasks`:"/tasks",m=[...Qe,...a&&W(a).often==="own"?["own"]:[]],k=()=>{let f=i.title.trim();return f?i.often==="weekdays"&&i.weekdays.length===0?l.refuse(o("task_form.need_weekday")):l.save(()=>{let _=aa(i,s,a,l.opened);return{writes:Object.keys(_).length?[{type:"put",kind:"task",id:t??G(),fields:_}]:[],said:o("saved.task",{title:f}),to:c}}):l.refuse(o("task_form.need_title"))};return r`
    <${w} title=${o(t?"task_form.edit":"task_form.new")} up=${c} news=${r`<${at}
      opened=${l.opened} held=${a} names=${Je} said=${{rule:M}} />`}
      act=${y.value.may("task")&&r`<button class="main" type="button" onClick=${p(()=>{k()})}>
        ${o("task_form.save")}</button>`}>
      <${oa} form=${i} set=${d} />
      <${ut} label=${o("task_form.where")} name="tank" chosen=${i.tank}
        on_choose=${f=>d({tank:f})}
        choices=${[...D(A).map(f=>[f.id,f.name]),["",o("tasks.room")]]} />
      <${ut} label=${o("task_form.often")} name="often" chosen=${i.often}
        on_choose=${f=>d({often:f})}
        choices=${m.map(f=>[f,o(`task_form.often.${f}`)])} />
      <${na} form=${i} set=${d} />
      <${ut} label=${o("task_form.time")} name="time" chosen=${i.minutes}
        on_choose=${f=>d({minutes:f})} three
        choices=${Ge.map(f=>[f,F(f)])} />
      <${O} label=${o("task_form.other_time")} said=${F(i.minutes)}
        on_step=${f=>d({minutes:(i.minutes+f*Xe+1440)%1440})}
        />
      <p class="sentence" role="status">${dt(i,a?.rule)}</p>
      <${st} form=${l} kind="task" />
    <//>`}var ea=(t,e,a)=>t?{...W(t),title:h(t),tank:t.tank??"",own_words:!0}:{...Kt($.value,a),title:"",tank:e,own_words:!1};function aa(t,e,a,n){let s=t.title.trim(),{rule:l,...i}=Qt(t,e),d=Ot(lt,it,s),c=n&&s===h(n)?{title:n.title}:{title:s,...d?{from_tile:{code:d,words:s}}:{}},m=t.often==="own"?a?.rule:l,k={...c,tank:t.tank||null,rule:m??null,...i};return a?et(n,k):Object.fromEntries(Object.entries(k).filter(([,f])=>f!==null))}function oa({form:t,set:e}){let a=lt.map(it),n=t.own_words||t.title!==""&&!a.includes(t.title);return r`
    <fieldset class="field"><legend class="label">${o("task_form.what")}</legend>
      <div class="tiles two">
        ${a.map(s=>r`<button type="button" key=${s} aria-pressed=${t.title===s}
          onClick=${p(()=>e({title:s,own_words:!1}))}>${s}</button>`)}
        <button type="button" class="wide" aria-pressed=${n} onClick=${p(()=>e({own_words:!0}))}>
          ${o("task_form.own_words")}</button>
      </div></fieldset>
    ${n&&r`<div class="field"><label for="task-title">${o("task_form.title")}</label>
      <input id="task-title" type="text" autocomplete="off" maxlength="120" value=${t.title}
        onInput=${zt(s=>e({title:s,own_words:!0}))} /></div>`}`}function na({form:t,set:e}){let a=r`<${O} label=${o("task_form.first_day")} said=${z(t.day)}
    on_step=${s=>e({day:t.day+s*864e5})} />`;if(t.often==="once")return a;if(t.often==="days")return r`
    <${O} label=${o("task_form.every")} said=${o("task_form.every_said",{count:t.every})}
      can=${{less:t.every>2,more:t.every<90}}
      on_step=${s=>e({every:t.every+s})} />
    ${a}`;if(t.often==="monthly")return r`
    <${O} label=${o("task_form.month_day")} said=${t.month_day===x?o("task_form.last_day"):o("task_form.month_day_said",{count:t.month_day})}
      on_step=${s=>e({month_day:(t.month_day+s+x-1)%x+1})} />`;if(t.often!=="weekdays")return null;let n=s=>t.weekdays.includes(s)?t.weekdays.filter(l=>l!==s):[...t.weekdays,s];return r`
    <fieldset class="field"><legend class="label">${o("task_form.weekdays")}</legend>
      <div class="tiles four">${I.map((s,l)=>r`
        <button type="button" key=${s} aria-pressed=${t.weekdays.includes(s)} aria-label=${U(l)}
          onClick=${p(()=>e({weekdays:n(s)}))}>${U(l,"short")}</button>`)}</div>
    </fieldset>`}var ut=({label:t,name:e,chosen:a,choices:n,three:s,on_choose:l})=>r`
  <fieldset class="field"><legend class="label">${t}</legend>
    <div class=${s?"tiles":"tiles two"}>${n.map(([i,d])=>r`
      <label key=${i}><input class="unseen" type="radio" name=${e} value=${i} checked=${i===a}
        onChange=${()=>l(i)} />${d}</label>`)}</div>
  </fieldset>`;var sa=7;function ra({id:t}){let e=t?b("tank",t):null;if(t&&!e)return r`<${C} up="/" />`;let a=V(t),n=y.value.may("task")&&r`<a class="main" href=${t?`/task/new?tank=${t}`:"/task/new"}><${g} name="plus" />${o("tasks.new")}
      </a>`;return r`
    <${w} title=${o("tasks.title")} place=${t?void 0:"round"} up=${t?`/tank/${t}`:"/"} act=${n}
      aside=${r`<span class="soft">${e?.name??""}</span>`}>
      ${a.length===0&&r`<p class="sentence">${o("tasks.empty")}</p><p class="soft">${o("tasks.empty_more")}
        </p>`}
      ${a.length>0&&r`
        <${ia} id=${t} />
        <${ca} tasks=${a} named=${!t} />
        <section class="section"><h2>${o("tasks.all")}</h2>
          <ul class="lines">
            ${a.toSorted(la).map(s=>r`<${da} key=${s.id} task=${s} named=${!t} />`)}</ul>
            </section>`}
      ${!t&&r`<p class="section"><a class="quiet" href="/calendar"><${g} name="clock" size=${20} />
        ${o("calendar.title")}</a></p>`}
    <//>`}var la=(t,e)=>+!!t.over-+!!e.over||h(t).localeCompare(h(e));function ia({id:t}){let e=It(t);return r`
    <section><h2>${o("tasks.today")}</h2>
      ${e.length>0?r`<ul class="lines tasks">
            ${e.map(a=>r`<${Lt} key=${`${a.task.id}.${a.at}`} ...${a} named=${!t} />`)}</ul>`:r`<p class="soft">${o("tasks.none_today")}</p>`}</section>`}function ca({tasks:t,named:e}){let a=J();return(a?gt(t,v("task_done"),$.value,E(),sa,a):[]).map(s=>r`
    <section class="section" key=${s.day}><h2>${vt(s.day)}</h2>
      <ul class="lines">${s.items.map(({task:l,at:i})=>r`
        <li key=${l.id+i}><a class="line" href=${`/task/${l.id}`}><span class="grow">${h(l)}<span
          class="soft small"> ${[ht(i),e&&ce(l)].filter(Boolean).join("\xA0\xB7 ")}</span></span></a>
          </li>`)}</ul></section>`)}function da({task:t,named:e}){let a=tt(t),n=t.over?o("tasks.ended"):a?.next?o("task.next",{when:S(a.next,$.value)}):"";return r`<li><a class="line" href=${`/task/${t.id}`}><span class="grow"><b>${h(t)}</b>
    ${e&&r` <span class="soft">${ce(t)}</span>`}<br />
    <span class="soft small">${[M(t),n].filter(Boolean).join(" ")}</span></span></a></li>`}var ce=t=>t.tank?b("tank",t.tank)?.name??"":o("tasks.room");export{ye as Away,ge as AwayForm,Pe as CalendarPage,qe as Labels,We as Task,ta as TaskForm,ra as Tasks};
//# sourceMappingURL=tasks-7TEIYC7V.js.map
