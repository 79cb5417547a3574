import"./chunk-7QFFUBP5.js";import{Ca as ze,Da as Ae,Ea as Me,Ha as Be,Ja as Te,Q as ee,R as Re,U as oe,V as Ie,Va as P,Wa as Y,Xa as S,Za as De,_a as Fe,aa as qe,ba as Oe,c as W,ca as Le,ma as A,pa as M,qa as Ne}from"./chunk-RZQ73XFX.js";import{A as he,Bb as G,Cb as ke,D as j,Db as xe,E as F,N as _e,Pb as u,Qb as b,Rb as H,Tb as Ce,U as ye,Ub as Se,Vb as je,Wb as O,b as C,bb as we,bc as g,cb as X,fd as Ue,g as _,gd as Ge,h as s,i as me,id as He,j as V,jc as Pe,jd as We,kd as Ye,l as ue,lc as Ee,ld as Je,m as U,md as Ke,n as $e,nb as q,nc as y,nd as Qe,o as D,oc as Z,od as Ve,p as de,pb as z,pd as te,q as fe,qb as be,r as N,rc as f,tb as ge,tc as E,td as Xe,w as ve,xc as h,y as e}from"./chunk-OWP3R32J.js";import"./chunk-JUGPZGK6.js";import{p as T,r as ce,s as Q}from"./chunk-GIANC5NE.js";import"./chunk-HZWNA2UL.js";import"./chunk-SMT73DPE.js";function uo(){let{problem:o,busy:t,ask:n}=P(),a=u.value,i=p=>n(async()=>y(await p())),r=async()=>e("archive.kept",{file:A(await a.export(),"limnary-room","zip")}),l=async()=>e("archive.kept",{file:A(new Blob([await a.readings()],{type:"text/csv"}),"limnary-readings","csv")}),c=({currentTarget:p})=>{let m=p.files?.[0];p.value="",m&&i(async()=>{let{records:$,ops:v,photos:w}=await a.import(m),d=$+v+w;return d?e("archive.taken_in",{count:d}):e("archive.nothing_new")})};return s`
    <${h} title=${e("archive.title")} place="room" up="/room" aside=${s`<span></span>`}
      act=${s`<button class="main" type="button" disabled=${t.value} onClick=${f(()=>{i(r)})}>
        ${e("archive.export")}</button>`}>
      <p class="sentence">${e("archive.why")}</p>
      <p>${e("archive.export_why")}</p>
      <section class="section"><h2>${e("archive.readings")}</h2><p>${e("archive.readings_why")}</p>
        <p><button class="quiet" type="button" onClick=${f(()=>{i(l)})}>${e("archive.readings")}
          </button></p></section>
      ${a.may("tank")&&!a.about()?.ended&&s`<section class="section"><h2>${e("archive.import")}</h2><p>${e("archive.import_why")}</p>
        <label class="quiet file">${e("archive.import")}<input class="unseen" type="file"
          accept=".zip,.jsonl,application/zip" disabled=${t.value} onChange=${c} /></label></section>`}
      <${S} text=${o.value} />
    <//>`}var Ze={litres:22.5,temperature_c:24.5};function $o(){let o=[{value:"phone",label:e("display.as_phone")},...Object.entries(ve).map(([n,a])=>({value:n,label:a,lang:n}))],t=ye().map(({key:n})=>({value:n,label:e(`display.${n}`)}));return s`
    <${h} title=${e("display.title")} place="room" up="/room">
      <${eo} name="language" label=${e("display.language")} choices=${o} wanted=${Ge} />
      <${eo} name="units" label=${e("display.units")} choices=${t} wanted=${be} />
      <section class="section">
        <h2>${e("display.sample")}</h2>
        <p class="sentence">
          ${e("display.sample_said",{litres:G(Ze.litres),temperature:ke(Ze.temperature_c)})}</p>
        <p class="soft">${e("display.kept")}</p>
        <p class="soft">${e("display.kept_units")}</p>
      </section>
    <//>`}var eo=({name:o,label:t,choices:n,wanted:a})=>s`
  <fieldset class="field">
    <legend class="label">${t}</legend>
    <div class="chips">
      ${n.map(({value:i,label:r,lang:l})=>s`
        <label key=${i} lang=${l}><input class="unseen" type="radio" name=${o} value=${i}
          checked=${i===a.value} onChange=${()=>a.value=i} />${r}</label>`)}
    </div>
  </fieldset>`;var fo=["keeper","helper","viewer","owner"],vo=[1,48,168,720];function ho({query:o}){let t=o.get("keeper"),n=o.get("name")??"",a=t?`/room/person/${t}`:"/room/people",i=q("invite",()=>({role:"keeper",hours:48})),r=_(null),{problem:l,busy:c,ask:p}=P(),{role:m,hours:$}=i.value,v=()=>p(async()=>{r.value=await We(u.value,t?{keeper:t,hours:$}:{role:m,hours:$})}),w=e(t?"invite.title_phone":"invite.title");return r.value?s`<${_o} made=${r.value} name=${n} title=${w} up=${a} />`:s`
    <${h} title=${w} up=${a}
      act=${s`<button class="main" type="button" disabled=${c.value} onClick=${f(()=>{v()})}>
        ${e("invite.make")}</button>`}>
      ${t?s`<p class="sentence">${e("invite.phone_why",{name:n})}</p>`:s`<${oo} label=${e("invite.role")} name="role" chosen=${m}
            on_choose=${d=>i.value={...i.value,role:d}}
            choices=${fo.map(d=>[d,s`<b>${e(`role.${d}`)}</b><span class="soft small">
              ${e(`role_may.${d}`)}</span>`])} />`}
      <${oo} label=${e("invite.hours")} name="hours" chosen=${$}
        on_choose=${d=>i.value={...i.value,hours:d}}
        choices=${vo.map(d=>[d,e(`invite.hours.${d}`)])} />
      <${S} text=${l.value} />
    <//>`}var oo=({label:o,name:t,chosen:n,choices:a,on_choose:i})=>s`
  <fieldset class="field"><legend>${o}</legend>
    <div class="tiles two">${a.map(([r,l])=>s`
      <label key=${r}><input class="unseen" type="radio" name=${t} value=${r} checked=${r===n}
        onChange=${()=>i(r)} />${l}</label>`)}</div>
  </fieldset>`;function _o({made:o,name:t,title:n,up:a}){let i=_(!1),r=j(o.expires_at,b.value),l=async()=>{await navigator.clipboard.writeText(o.link),i.value=!0},c=async()=>{try{await navigator.share({title:e("invite.share_title",{room:u.value.about()?.name??""}),url:o.link})}catch(v){if(!(v instanceof DOMException))throw v}},p=typeof navigator.share=="function",m=!!navigator.clipboard;return s`
    <${h} title=${n} up=${a}
      act=${s`
        <button class=${p||m?"quiet":"main"} type="button" onClick=${f(()=>E(a,{replace:!0}))}>${e("invite.close")}
          </button>
        ${m&&s`<button class=${p?"quiet":"main"} type="button"
          onClick=${f(()=>{l().catch(()=>y(o.link))})}>
          ${e(i.value?"invite.copied":"invite.copy")}</button>`}
        ${p&&s`<button class="main" type="button" onClick=${f(()=>{c()})}>${e("invite.share")}
          </button>`}`}>
      <div class="invitation">
        <p class="sentence">${o.keeper?e("invite.how_phone",{name:t,until:r}):e("invite.how",{role:e(`role.${o.role}`),until:r})}</p>
        <${Te} text=${o.link} label=${e("invite.qr")} />
        <p class="soft small">${e("invite.once")}</p>
        <p class="small link" aria-label=${e("invite.link")}>${o.link}</p>
      </div>
    <//>`}function yo({secret:o,enter:t}){let n=u.value.me(),a=q("join",()=>({keeper:"",phone:""})),i=_(""),r=_(!1),{keeper:l,phone:c}=a.value,p=c.trim()!==""&&(n||l.trim()!==""),m=async()=>{i.value="",r.value=!0;try{let $=await de({secret:o,device_name:c.trim(),...n?{}:{keeper_name:l.trim()}});await ue($),z("join"),await t(),E("/",{replace:!0}),y(e("join.done",{room:u.value.about()?.name??""}))}catch($){i.value=$ instanceof me?e("join.unreachable"):Pe($)}finally{r.value=!1}};return o?s`
    <${h} title=${e("join.title")} up="/"
      act=${s`<button class="main" type="button" disabled=${!p||r.value}
        onClick=${f(()=>{m()})}>${e(r.value?"join.asking":"join.do")}</button>`}>
      <p class="sentence">${e("join.why")}</p>
      ${!n&&s`<${to} id="keeper" label=${e("join.keeper")} value=${l} autocomplete="name"
        on_value=${$=>a.value={...a.value,keeper:$}} />`}
      <${to} id="phone" label=${e("join.phone")} value=${c} autocomplete="off"
        on_value=${$=>a.value={...a.value,phone:$}} />
      ${i.value&&s`<p class="wrong" role="alert"><${g} name="needs" size=${20} /><span>${i.value}
        </span></p>`}
    <//>`:s`<${h} title=${e("join.title")} up="/"><p class="sentence">${e("join.no_secret")}</p><//>`}var to=({id:o,label:t,value:n,autocomplete:a,on_value:i})=>s`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete=${a} value=${n}
      onInput=${W(i)} /></div>`;var wo=["role","fields","envelope","other-kind","insert-only","membership-ended","too-large","invalid"],no=(o,t)=>o.toSorted((n,a)=>n.n-a.n).map(n=>bo(n,t));function bo({op:o,by:t,at:n,creates:a=!1,reason:i="",errors:r=[]},l){let c=l.kinds[o.kind]?.fields??[],p=l.get(o.kind,o.id),{fields:m={}}=o,$=o.type==="put"?a?"new":"change":o.type==="del"?"remove":"restore",v=ne(m.tank)??p?.tank,w=["tank","at",...$==="new"?["name"]:[]];return{op:o.op,kind:o.kind,doing:$,name:ne(m.name)??p?.name??null,tank:v&&l.get("tank",v)?.name||null,said:Object.entries(m).filter(([d])=>!w.includes(d)).map(([d,R])=>{let I=Q(c,d);return{label:ee(I,d),value:Re(I,R,l)}}),by:t,at:ne(m.at)??n,why:wo.includes(i)?i:"other",reason:i,may_now:l.may(o.kind),wrong:r.map(({field:d,message:R,allowed:I})=>({label:ee(Q(c,d),d),message:R,allowed:I})),follows:a?(l.held??[]).filter(d=>d.kind===o.kind&&d.id===o.id).length:0}}var ne=o=>typeof o=="string"?o:void 0;function go(){let{needs_you:o,photos_need_you:t}=O(),n=u.value,a=no(o,{...Ae,kinds:T(),may:l=>n.may(l),held:n.unshared()}),i=a.length+t>0,r=async()=>y(e("archive.kept",{file:A(await n.export_needs_you(),"limnary-needs-you","jsonl")}));return s`
    <${h} title=${e("needs_you.title")} place="room" up="/room" aside=${s`<span></span>`}
      act=${i&&s`
        ${a.length>0&&s`<button class="quiet" type="button" onClick=${f(()=>{r()})}>
          ${e("needs_you.export")}</button>`}
        <button class="main" type="button" disabled=${n.about()?.ended} onClick=${f(()=>{n.try_again()})}>
          ${e("needs_you.all_again")}</button>`}>
      <p class=${i?"":"sentence"}>${e(i?"needs_you.why":"needs_you.none")}</p>
      <ul class="lines">${a.map(l=>s`<${xo} key=${l.op} refusal=${l} />`)}</ul>
      ${t>0&&s`<section class="section"><h2>${e("needs_you.photos",{count:t})}
        </h2><p>${e("needs_you.photos_why")}</p><${ko} count=${t} /></section>`}
    <//>`}function ko({count:o}){let t=u.value,n=_([]);C(()=>{t.refused_photos().then(i=>n.value=i)},[t,o]);let a=async i=>Z(e("needs_you.discarded",{what:e("kind.photo")}),await t.discard_photo(i));return s`
    <ul class="lines">${n.value.map(({sha256:i,reason:r},l)=>{let[c]=t.all("photo").filter(m=>m.sha256===i),p=e("photo.numbered",{at:l+1});return s`
        <li class="refused" key=${i}>
          <${Be} photo=${{...c,sha256:i}} said=${p} />
          ${c&&s`<p class="soft small">
            ${e("needs_you.by",{who:oe(c.meta.made_by),when:j(c.at,b.value)})}</p>`}
          <p class="wrong"><${g} name="needs" size=${20} /><span>${e("why_not.other",{reason:r})}</span></p>
          <div class="row"><button class="quiet" type="button" onClick=${f(()=>{a(i)})}>
            ${e("needs_you.discard")}<span class="unseen"> ${p}</span></button></div>
        </li>`})}</ul>`}function xo({refusal:o}){let t=u.value,n=e(`kind.${o.kind}`),a=o.name?e("needs_you.named",{kind:n,name:o.name}):o.tank?`${n} ${e("needs_you.in_tank",{tank:o.tank})}`:n,i=async()=>Z(e("needs_you.discarded",{what:a}),await t.discard([o.op]));return s`
    <li class="refused">
      <h2>${e(`needs_you.${o.doing}`,{what:a})}</h2>
      <p class="soft small">${e("needs_you.by",{who:oe(o.by),when:j(o.at,b.value)})}</p>
      ${o.said.map(({label:r,value:l})=>s`<p class="said-field" key=${r}><span class="soft">${r}
        </span> ${l}</p>`)}
      <p class="wrong"><${g} name="needs" size=${20} /><span>${Co(o)}</span></p>
      ${o.wrong.map(r=>s`<p class="small" key=${r.label}>${e("needs_you.wrong",r)}</p>`)}
      ${o.follows>0&&s`<p class="soft small">${e("needs_you.follows",{count:o.follows})}</p>`}
      <div class="row">
        ${!t.about()?.ended&&s`<button class="quiet" type="button"
          onClick=${f(()=>{t.try_again([o.op])})}>${e("needs_you.again")}<span class="unseen"> ${a}
          </span></button>`}
        <button class="quiet" type="button" onClick=${f(()=>{i()})}>${e("needs_you.discard")}<span
          class="unseen"> ${a}</span></button>
      </div>
    </li>`}function Co({why:o,reason:t,kind:n,may_now:a}){if(o!=="role")return e(`why_not.${o}`,{reason:t});if(a)return e("why_not.role_now");let i=ce(n).written_by.map(l=>e(`role.${l}`)).join(", "),r=u.value.about()?.role;return r?e("why_not.role",{role:e(`role.${r}`),roles:i}):e("why_not.role_then",{roles:i})}function J(){let o=_(null),t=P(),n=async()=>{o.value=await He(u.value)};return C(()=>{t.ask(n)},[H.value,u.value]),{found:o,again:n,...t}}function So(){let{found:o,problem:t}=J(),n=u.value.about()?.role==="owner",a=u.value.me()?.id;return s`
    <${h} title=${e("people.title")} place="room" up="/room" aside=${s`<span></span>`}
      act=${n&&s`<a class="main" href="/room/invite"><${g} name="plus" />${e("people.invite")}</a>`}>
      ${!o.value&&(t.value?s`<p class="sentence">${e("people.unreachable")}</p>`:s`<p
        class="soft">${e("people.asking")}</p>`)}
      ${t.value!==e("refusal.unreachable")&&s`<${S} text=${t.value} />`}
      <ul class="lines">${(o.value??[]).map(i=>s`
        <li key=${i.id}><a class="line" href=${`/room/person/${i.id}`}><span class="grow"><b>${i.name}</b> <span
          class="soft">${[e(`role.${i.role}`),i.id===a&&e("people.you")].filter(Boolean).join(", ")}</span><br
          />
          <span class="soft small">${jo(i.devices)}</span></span></a></li>`)}</ul>
      ${o.value&&!n&&s`<p class="soft">${e("people.ask_owner")}</p>`}
      ${o.value&&n&&s`<${Po} people=${o.value} />`}
    <//>`}function jo(o){let t=o.flatMap(n=>n.last_seen??[]).toSorted().at(-1);return t?e("people.phones",{count:o.length,when:F(t,b.value)}):e("people.no_phone")}function Po({people:o}){let t=_(null),{problem:n,ask:a}=P(),i=async()=>{t.value=await Ye(u.value)};C(()=>{a(i)},[]);let r=c=>o.find(p=>p.id===c)?.name??u.value.name_of(c)??e("invite.the_server"),l=async c=>{await Je(u.value,c),await i(),y(e("invite.withdrawn"))};return t.value&&s`
    <section class="section"><h2>${e("invite.open")}</h2>
      ${t.value.length===0&&s`<p class="soft">${e("invite.open_none")}</p>`}
      <ul class="lines">${t.value.map(c=>{let p=c.keeper?e("invite.open_phone",{name:r(c.keeper)}):e(`role.${c.role}`);return s`<li class="line" key=${c.id}><span class="grow"><b>${p}</b><br /><span class="soft small">
          ${e("invite.until",{until:j(c.expires_at,b.value),who:r(c.made_by)})}</span></span>
          <button class="quiet" type="button" onClick=${f(()=>{a(()=>l(c.id))})}>
            ${e("invite.withdraw")}<span class="unseen"> ${p}</span></button></li>`})}</ul>
      <${S} text=${n.value} />
    </section>`}var so=["owner","keeper","helper","viewer"];function ao(o,{people:t,me:n,role:a}){let i=a==="owner",r=o.id===n,l=o.role==="owner"&&t.filter(c=>c.role==="owner").length===1;return{self:r,last_owner:l,change_role:i&&!l,hand_over:i&&!r&&o.role!=="owner",remove:i&&!r,leave:r&&!l,phones:i||r}}function Ro({id:o}){let{found:t,again:n,problem:a,busy:i,ask:r}=J(),l=t.value?.find(d=>d.id===o),c=u.value,p=(d,R)=>s`<${h} title=${d} up="/room/people" place="room" aside=${s`<span></span>`}>${R}<${S}
      text=${a.value} /><//>`;if(!t.value)return p(e("people.title"),s`<p class="soft">${e(a.value?"people.unreachable":"people.asking")}</p>`);if(!l)return p(e("people.title"),s`<p class="sentence">${e("people.gone")}</p>`);let m=ao(l,{people:t.value,me:c.me()?.id,role:c.about()?.role}),{name:$}=l,v=Io(l,m,n),w=d=>f(()=>{r(d)});return p($,s`
    <${qo} person=${l} can=${m} busy=${i.value} doing=${w} on_choose=${v.become} />
    <section class="section"><h2>${e("people.phones_title")}</h2>
      <${Oo} devices=${l.devices} may=${m.phones} doing=${w} on_revoke=${v.shut_out} />
      ${m.phones&&s`<p><a class="quiet" href=${`/room/invite?keeper=${o}&name=${encodeURIComponent($)}`}>
        <${g} name="plus" size=${20} />${e("people.add_phone")}</a></p>`}
    </section>
    ${m.hand_over&&s`<${se} title=${e("people.hand_over")} why=${e("people.hand_over_why",{name:$})}
      words=${e("people.hand_over_do",{name:$})} on_do=${w(v.give)} />`}
    ${m.remove&&s`<${se} title=${e("people.remove")} why=${e("people.remove_why",{name:$})}
      words=${e("people.remove_do",{name:$})} on_do=${w(v.take_out)} />`}
    ${m.leave&&s`<${se} title=${e("people.leave")} why=${e("people.leave_why")}
      words=${e("people.leave_do",{room:c.about()?.name??""})} on_do=${w(v.go_away)} />`}`)}function Io({id:o,name:t,role:n},a,i){let r=u.value,l=async()=>{await r.refresh_role(),await i()},c=async p=>{await Qe(r,o,p),await l()};return{become:async p=>{if(p===n)return;await c(p);let m=e("people.role_changed",{name:t,role:e(`role.${p}`)});a.self?y(m):Y(m,()=>c(n))},shut_out:async p=>{await Xe(r,p.id),await i(),y(e("people.revoked",{phone:p.name}))},give:async()=>{await Ve(r,o,r.me()?.id??"").finally(l),y(e("people.handed_over",{name:t}))},take_out:async()=>{await te(r,o),y(e("people.removed",{name:t})),E("/room/people",{replace:!0})},go_away:async()=>{let p=r.about()?.name??"";await N(),await te(r,o),await N(),y(e("people.left",{room:p})),E("/room",{replace:!0})}}}var qo=({person:o,can:t,busy:n,doing:a,on_choose:i})=>s`
  <section class="section"><h2>${e("people.role")}</h2>
    ${t.change_role?s`<div class="tiles two" role="group" aria-label=${e("people.role")}>${so.map(r=>s`
          <button key=${r} type="button" aria-pressed=${r===o.role} disabled=${n}
            onClick=${a(()=>i(r))}><b>${e(`role.${r}`)}</b><span
            class="soft small">${e(`role_may.${r}`)}</span></button>`)}</div>`:s`<p><b>${e(`role.${o.role}`)}</b>, ${e(`role_may.${o.role}`)}</p>`}
    ${t.self&&t.last_owner&&s`<p class="soft">${e("people.last_owner")}</p>`}
  </section>`;function Oo({devices:o,may:t,doing:n,on_revoke:a}){let i=_("");C(()=>{D().then(({device:l})=>i.value=l)},[]);let r=o.filter(({id:l})=>l!==i.value);return s`
    <ul class="lines">${o.map(({id:l,name:c,last_seen:p})=>s`
      <li class="line" key=${l}><span class="grow">${c}<br /><span class="soft small">
        ${l===i.value?e("people.this_phone"):p&&e("people.seen",{when:F(p,b.value)})}</span></span></li>`)}</ul>
    ${o.length===0&&s`<p class="soft">${e("people.no_phone")}</p>`}
    ${t&&r.length>0&&s`
      <p class="soft">${e("people.revoke_why")}</p>
      <div class="stack">
        ${r.map(l=>s`<button class="quiet grave" key=${l.id} type="button"
        onClick=${n(()=>a(l))}>${e("people.revoke",{phone:l.name})}</button>`)}</div>`}`}var se=({title:o,why:t,words:n,on_do:a})=>s`
  <section class="section"><h2>${o}</h2><p>${t}</p>
    <p><button class="quiet grave" type="button" onClick=${a}>${n}</button></p></section>`;function io({waiting:o,sending:t,needs_you:n,photos_waiting:a,photos_need_you:i,not_back:r,joined:l}){let c=[{line:"waiting_long",count:o},{line:"sending_long",count:t},{line:"photos_waiting",count:a},{line:"needs_you_long",count:n.length},{line:"photos_need_you",count:i},{line:"not_back",count:r}].filter(({count:p})=>p>0);return l?c.length?c:[{line:"all_long"}]:[{line:"only_here"},...c.filter(({line:p})=>p.includes("need"))]}var No=5*6e4,ro=(o,t)=>Math.abs(o-t)>No;function zo(){let o=O(),t=u.value.about(),n=o.needs_you.length+o.photos_need_you,a=_(0);return C(()=>{U().then(i=>a.value=i.length)},[u.value,t?.ended]),s`
    <${h} title=${t?.name??e("room.title")} place="room" aside=${s`<span></span>`}>
      <${Ao} state=${o} ended=${!!t?.ended} />
      <ul class="lines section">
        ${n>0&&s`<${L} to="/room/needs-you" title=${e("needs_you.title")}
          said=${e("needs_you.count",{count:n})} icon="needs" />`}
        ${o.joined&&s`<${L} to="/room/people" title=${e("people.title")}
          said=${e("room.you_are",{role:e(`role.${t?.role}`)})} />`}
        <${L} to="/room/rooms" title=${e("rooms.title")} said=${e("rooms.count",{count:a.value})} />
        ${!t?.ended&&s`<${L} to="/away" title=${e("away.title")} said=${e("away.short")} />`}
        <${L} to="/room/copy" title=${e("archive.title")} said=${e("archive.short")} />
        <${L} to="/room/display" title=${e("display.title")} said=${e("display.short")} />
      </ul>
      ${!t?.ended&&s`
        <${B} kind="test_kit" said=${i=>ge(i.parameter)} />
        <${B} kind="source_water"
          said=${({disinfectant:i})=>e(`disinfectant.${i}`)} />
        <${B} kind="label"
          said=${({amount:i,unit:r,per_l:l})=>e("label.line",{amount:he(i),unit:e(`unit.${r}`),litres:G(l)})}
          />
        <${B} kind="own_species"
          said=${({length_cm:i})=>xe(i,"cm",1)} />
        <${B} kind="own_plant" said=${()=>""} />`}
    <//>`}var L=({to:o,title:t,said:n,icon:a})=>s`
  <li><a class="line" href=${o}>${a&&s`<${g} name=${a} />`}<span class="grow"><b>${t}</b><br /><span
    class="soft small">${n}</span></span></a></li>`;function Ao({state:o,ended:t}){let{lastShared:n,joined:a,problem:i}=o,r=_(!1),l=Date.now(),c=async()=>{r.value=!0,await N().finally(()=>r.value=!1)},p=async()=>{await(await navigator.serviceWorker?.getRegistration())?.update()},[m,...$]=io({...o,joined:a||t});return s`
    <section class="section" aria-label=${e("sharing.title")}>
      ${t?s`<p class="sentence">${e("problem.ended")}</p>`:s`<p class="sentence">${e(`sharing.${m.line}`,{count:m.count})}</p>`}
      ${(t&&m.line!=="all_long"?[m,...$]:$).map(({line:v,count:w})=>s`<p key=${v}>
        ${e(`sharing.${v}`,{count:w})}</p>`)}
      ${a&&n&&s`<p class="soft">${e("sharing.last",{when:j(n,l)})}</p>`}
      ${a&&ro(l,b.value)&&s`<p class="soft">
        ${e("sharing.clock",{here:j(l,b.value),there:j(b.value,b.value)})}</p>`}
      ${H.value?i&&!t&&s`<p class="wrong">
        <${g} name="needs" size=${20} /><span>${e(`problem.${i}`)}</span></p>`:s`<p class="soft">${e("sharing.offline")}</p>`}
      <div class="row">
        ${a&&s`<button class="quiet" type="button" disabled=${r.value}
          onClick=${f(()=>{c()})}>${e(r.value?"sharing.trying":"sharing.now")}</button>`}
        ${i==="upgrade"&&s`<button class="quiet" type="button" onClick=${f(()=>{p()})}>
          ${e("sharing.newer")}</button>`}
      </div>
      ${!a&&!t&&s`<p class="soft">${e("sharing.how_to_join")}</p>`}
    </section>`}var B=({kind:o,said:t})=>s`
  <section class="section">
    <h2>${e(`settings.${o}`)}</h2>
    <ul class="lines">${Se(o).filter(({retired:n})=>!n).map(n=>s`
      <li key=${n.id}><a class="line" href=${`/room/${o}/${n.id}`}><span><b>${n.name}</b><br /><span
        class="soft small">${t(n)}</span></span></a></li>`)}</ul>
    ${u.value.may(o)&&s`<p><a class="quiet" href=${`/room/${o}/new`}><${g} name="plus" size=${20} />
      ${e(`water.new_${o}`)}</a></p>`}
  </section>`;function Mo({enter:o}){let t=_([]),n=_(!1),a=async()=>{t.value=await U(),n.value=(await D()).signed_in},{waiting:i,needs_you:r}=O();C(()=>{a()},[u.value,i,r.length,u.value.about()?.name]);let l=u.value.about(),c=async p=>{await o(p),E("/room",{replace:!0})};return s`
    <${h} title=${e("rooms.title")} place="room" up="/room" aside=${s`<span></span>`}>
      <ul class="lines">${t.value.map(p=>{let m=s`<span class="grow"><b>${p.name??e("rooms.local")}</b><br /><span class="soft small">
          ${Bo(p).join(", ")}</span></span>`;return s`<li key=${p.id}>${p.id===u.value.id?s`<div class="line" aria-current="true">${m}<span class="row tight"><${g} name="room" size=${20}
              />${e("rooms.here")}</span></div>`:s`<button class="line whole" type="button" onClick=${f(()=>{c(p.id)})}>${m}<span
              class="onward" aria-hidden="true"></span></button>`}</li>`})}</ul>
      ${l?.ended&&s`<${To} about=${l} left=${r.length} on_done=${o} />`}
      ${l?.role==="owner"&&s`<${Uo} key=${`${l.id} ${l.name}`} name=${l.name} />`}
      ${n.value?s`<${Do} enter=${o} />`:s`<p class="soft section">${e("rooms.need_link")}
        </p>`}
    <//>`}function Bo(o){let t=o.unshared&&e(o.id===V?"rooms.local_holds":"rooms.unshared",{count:o.unshared}),n=[o.ended?e("rooms.ended"):o.role&&e(`role.${o.role}`),t,o.needs_you&&e("sharing.needs_you",{count:o.needs_you}),o.photos_unshared&&e("rooms.photos",{count:o.photos_unshared})].filter(Boolean);return o.id===V||o.ended||t||o.needs_you||o.photos_unshared?n:[...n,e("rooms.shared")]}function To({about:o,left:t,on_done:n}){if(t)return null;let a=async()=>{await $e(o.id),await n(),y(e("rooms.forgotten",{name:o.name}))};return s`<section class="section"><p>${e("rooms.forget_why")}</p><p><button class="quiet grave" type="button"
    onClick=${f(()=>{a()})}>${e("rooms.forget")}</button></p></section>`}function Uo({name:o}){let t=q(`room.name.${u.value.id}`,()=>o),{problem:n,busy:a,ask:i}=P(),r=u.value,l=async m=>{await Ke(r,m),z(`room.name.${r.id}`),await r.refresh_role()},c=t.value.trim(),p=async()=>{await i(()=>l(c))&&Y(e("rooms.renamed",{name:c}),()=>l(o))};return s`
    <section class="section"><${lo} id="rename" label=${e("rooms.rename")} value=${t.value}
      on_value=${m=>t.value=m} />
      <button class="quiet" type="button" disabled=${a.value||!c||c===o}
        onClick=${f(()=>{p()})}>${e("setting.save")}</button>
      <${S} text=${n.value} />
    </section>`}function Do({enter:o}){let t=q("room.new",()=>""),{problem:n,busy:a,ask:i}=P(),r=t.value.trim(),l=async()=>{await i(async()=>{let p=await fe(r);z("room.new"),await o(p)})&&(E("/room",{replace:!0}),y(e("rooms.made",{name:r})))};return s`
    <section class="section"><h2>${e("rooms.new")}</h2><p class="soft">${e("rooms.new_why")}</p>
      <${lo} id="new-room" label=${e("rooms.name")} value=${t.value} on_value=${c=>t.value=c} />
      <button class="quiet" type="button" disabled=${a.value||!r} onClick=${f(()=>{l()})}>
        ${e("rooms.make")}</button>
      <${S} text=${n.value} />
    </section>`}var lo=({id:o,label:t,value:n,on_value:a})=>s`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete="off" value=${n}
      onInput=${W(a)} /></div>`;var po={test_kit:null,label:"dechlorinator",source_water:"source_water",own_species:null,own_plant:null},mo=["own_species","own_plant"],co={basis:{parameter:Object.keys(_e)},steps:{entry:["steps"]},per_drop:{parameter:Object.keys(we),entry:["keypad"]}},Fo={test_kit:{},label:{use:"dechlorinator",unit:"ml",basis:"new_water"},source_water:{},own_species:{shape:"fusiform"},own_plant:{}};function Go({kind:o,id:t,query:n}){let a=je(o,t),i=n.get("parameter"),r=n.get("name"),l=[o,t??"new",i,r].filter(Boolean).join("."),c=Ho(o,t),p=De({name:l,held:a,first:()=>a?Oe(c,a):Wo(o,i,r)}),m=p.draft.value,$=c.map(x=>o==="test_kit"&&x.name==="unit"?Ko(x,m.parameter):x);if(!(o in po)||t&&!a)return s`<${Ue} up="/room" />`;let v=n.get("then")??"/room",w=()=>p.save(()=>{let x=qe($,m),ae=t??Ee(),ie=ze(p.opened,{...Yo($,x,a),...x}),re=Object.keys(ie).length?[{type:"put",kind:o,id:ae,fields:ie}]:[],le=Ce("tank",n.get("tank")??void 0),pe=po[o];return le&&pe&&re.push({type:"put",kind:"tank",id:le.id,fields:{[pe]:ae}}),{writes:re,said:e("saved.setting",{name:x.name??a?.name}),to:v}}),d=()=>p.save(()=>({writes:[{type:"del",kind:o,id:t}],said:e("saved.removed",{what:a?.name??""}),to:v})),R=x=>p.set(o==="test_kit"?Qo(m,x):x),I=$.map(x=>x.name),K=u.value.may(o);return s`
    <${h} title=${e(`setting.${o}`)} up=${v} news=${s`<${Me} opened=${p.opened} held=${a}
      names=${I} />`}
      act=${s`<button class="main" type="button" disabled=${!K} onClick=${f(()=>{w()})}>
        ${e("setting.save")}</button>`}>
      ${a&&mo.includes(o)&&s`<h2>${a.name}</h2>`}
      <p class="soft">${e(K?`setting.${o}_why`:"looking_only.this")}</p>
      <${Le} specs=${$} raw=${m} on_raw=${R} errors=${p.errors.value} tried=${p.tried.value} />
      <${Fe} form=${p} kind=${o} beside=${I} />
      ${a&&s`<${Ie} meta=${a.meta} />`}
      ${t&&K&&s`<p><button class="quiet" type="button" onClick=${f(()=>{d()})}>
        ${e("setting.remove")}</button></p>`}
    <//>`}var Ho=(o,t)=>(T()[o]?.fields??[]).filter(n=>n.name!=="retired"||t).filter(n=>n.name!=="name"||!t||!mo.includes(o)).map(n=>o==="test_kit"&&co[n.name]?{...n,when:co[n.name]}:n),Wo=(o,t,n)=>({...Fo[o],...t?Jo(t):{},...n?{name:n}:{}}),Yo=(o,t,n)=>Object.fromEntries(o.filter(({name:a,required:i})=>n&&!i&&!(a in t)&&n[a]!==void 0).map(({name:a})=>[a,null])),Jo=o=>{let{entry:t,basis:n}=Ne(o);return{parameter:o,entry:t,...n?{basis:n}:{},...M[o]?{unit:M[o]}:{}}};function Ko(o,t){let n=X(t);return n?{...o,type:"choice",default:n[0],choices:n.map(a=>({value:a,label:a}))}:o}function Qo(o,t){let[n,a]=[o.parameter,t.parameter];return n===a||t.unit&&t.unit!==M[n]&&![n,a].some(X)?t:{...t,unit:M[a]}}export{uo as Copy,$o as Display,ho as Invite,yo as Join,go as NeedsYou,So as People,Ro as Person,zo as Room,Mo as Rooms,Go as Setting};
//# sourceMappingURL=room-GX273JOP.js.map
