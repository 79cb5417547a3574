import{Aa as so,Ab as ho,Ba as io,Fa as ue,Ga as ro,Nb as C,Ob as te,Pb as j,Sb as _o,Tb as yo,Va as lo,Wa as po,Xa as co,fb as A,gb as F,hb as uo,na as Ke,oa as ee,pa as oe,qa as Xe,ra as eo,sa as oo,ta as to,tb as mo,ua as no,ub as $o,va as ce,vb as fo,y as pe,yb as vo,z as Ve,za as ao}from"./chunk-63OKULQF.js";import{C as Ae,E as e,Ec as V,Fb as Ne,G as M,Gb as T,Gc as Ye,Ib as U,Ic as w,J as Z,Jb as Be,Jc as re,K as P,L as J,Ld as q,Mb as Le,Mc as d,Oc as K,Pc as le,Pd as y,Qc as X,Rc as Ze,Sc as Je,Td as Qe,Ub as Q,Ud as wo,Vb as Ue,Vc as B,Wb as Fe,Wd as bo,Xd as go,Y as Me,b as x,c as xe,e as je,ea as Te,g as h,gc as m,h as a,hc as k,i as Se,ic as D,j as Pe,k as Ie,kc as We,l as se,lc as He,mc as Ge,n as qe,nc as z,p as Ee,q as G,r as Re,s as Y,t as Oe,tb as De,u as ze,ub as ie,v as L,wc as b}from"./chunk-AQMFKDZO.js";import"./chunk-HZWNA2UL.js";import"./chunk-PWM3XKEL.js";import"./chunk-K6XNGF2V.js";import{v as H,x as Ce,y as ae}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var N=je(null),me=Ne("taking_in",()=>""),$e=()=>N.value?"":me.value;async function de(o,t,n=""){o==="taking_in"&&(me.value=n),N.value={work:o,count:0,total:0};try{return await t((s,i)=>N.value={work:o,count:s,total:i})}finally{N.value=null,o==="taking_in"&&(me.value="")}}function Wo(){let{problem:o,busy:t,ask:n}=C(),s=t.value||N.value!==null,i=m.value,r=f=>n(async()=>w(await f())),l=f=>n(async()=>{let _=await f();_&&w(e("archive.kept",{file:_}))}),c=async()=>A(await de("making",f=>i.export(f)),"limnary-room","zip"),p=async()=>A(new Blob([await i.readings()],{type:"text/csv"}),"limnary-readings","csv"),u=async()=>A(await i.tables(),"limnary-tables","zip"),$=({currentTarget:f})=>{let _=f.files?.[0];f.value="",_&&r(async()=>{let{records:v,ops:I,photos:E}=await de("taking_in",S=>i.import(_,S),_.name),O=v+I+E;return O?e("archive.taken_in",{count:O}):e("archive.nothing_new")})};return a`
    <${y} title=${e("archive.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${a`<button class="main" type="button" disabled=${s} onClick=${d(()=>{l(c)})}>
        ${e("archive.export")}</button>`}>
      <p class="sentence">${e("archive.why")}</p>
      <${Ho} />
      <p>${e("archive.export_why")}</p>
      <section class="section"><h2>${e("archive.readings")}</h2><p>${e("archive.readings_why")}</p>
        <p><button class="quiet" type="button" onClick=${d(()=>{l(p)})}>${e("archive.readings")}
          </button></p></section>
      <section class="section"><h2>${e("archive.tables")}</h2><p>${e("archive.tables_why")}</p>
        <p><button class="quiet" type="button" onClick=${d(()=>{l(u)})}>${e("archive.tables")}
          </button></p></section>
      ${i.may("reading")&&!i.about()?.ended&&a`<section class="section"><h2>${e("archive.import")}</h2><p>${e("archive.import_why")}</p>
        <label class="quiet file">${e("archive.import")}<input class="unseen" type="file"
          accept=".zip,.jsonl,application/zip" disabled=${s} onChange=${$} /></label></section>`}
      <${j} text=${o.value} />
    <//>`}function Ho(){let o=N.value;if(o&&o.total>0){let t={count:M(o.count,0),total:M(o.total,0)};return a`<p role="status">${e(`archive.${o.work}`,t)}</p>`}return $e()&&a`<p role="status">${e("archive.interrupted",{file:$e()})}</p>`}var ko={litres:22.5,temperature_c:24.5};function Go(){let o=[{value:"phone",label:e("display.as_phone")},...Object.entries(Ae).map(([n,s])=>({value:n,label:s,lang:n}))],t=Te().map(({key:n})=>({value:n,label:e(`display.${n}`)}));return a`
    <${y} title=${e("display.title")} place="room" up="/room">
      <${xo} name="language" label=${e("display.language")} choices=${o} wanted=${wo} />
      <${xo} name="units" label=${e("display.units")} choices=${t} wanted=${Be} />
      <section class="section">
        <h2>${e("display.sample")}</h2>
        <p class="sentence">
          ${e("display.sample_said",{litres:Q(ko.litres),temperature:Ue(ko.temperature_c)})}</p>
        <p class="soft">${e("display.kept")}</p>
        <p class="soft">${e("display.kept_units")}</p>
      </section>
    <//>`}var xo=({name:o,label:t,choices:n,wanted:s})=>a`
  <fieldset class="field">
    <legend class="label">${t}</legend>
    <div class="chips">
      ${n.map(({value:i,label:r,lang:l})=>a`
        <label key=${i} lang=${l}><input class="unseen" type="radio" name=${o} value=${i}
          checked=${i===s.value} onChange=${()=>s.value=i} />${r}</label>`)}
    </div>
  </fieldset>`;var Yo={ios:["ios_1","ios_2","ios_3"],android:["android_1","android_2"],other:["other_1"]};function Zo(){let o=Ze();return X()?a`<${Vo} />`:a`
    <${y} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${K.value&&a`<button class="main" type="button" onClick=${d(()=>{Jo()})}>${e("install.do")}</button>`}>
      <p class="sentence">${e("install.why")}</p>
      <ol class="told">${Yo[o].map(t=>a`<li key=${t}>${e(`install.${t}`)}</li>`)}</ol>
      ${o==="ios"?a`<${Qo} />`:a`<p>${e("install.same")}</p>`}
    <//>`}async function Jo(){let o=K.value;K.value=null,await o?.prompt()}function Qo(){let{waiting:o,sending:t,photos_waiting:n,needs_you:s,joined:i}=z(),r=o+t+n+s.length,{problem:l,busy:c,ask:p}=C(),u=h(null),$=async()=>{let _=m.value.me()?.id,v=await ee(m.value,{keeper:_,hours:1});u.value=await oe(m.value,v)},f=async()=>{let _=await A(await m.value.export_unshared(),"limnary-unshared","zip");_&&w(e("archive.kept",{file:_}))};return a`
    <section class="section"><h2>${e("install.along")}</h2><p>${e("install.apart")}</p>
      ${i&&a`<p>${e("install.as_phone")}</p>
        ${u.value?a`<p class="code" role="status"><b class="figures">${u.value.code}</b>
              ${e("invite.code_until",{until:Z(u.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${c.value}
              onClick=${d(()=>{p($)})}>${e("invite.code")}</button></p>`}`}
      ${r>0&&a`<p>${e(i?"install.unshared":"install.only_here",{count:r})}</p>
        <p><button class="quiet" type="button" disabled=${c.value} onClick=${d(()=>{p(f)})}>
          ${e("install.keep")}</button></p>`}
      <${j} text=${l.value} />
    </section>`}var Vo=()=>a`
  <${y} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}>
    <p class="sentence">${e("install.here")}</p>
    <p>${e("install.bring")}</p>
    <p class="row"><a class="quiet" href="/join">${e("join.title")}</a>
      <a class="quiet" href="/room/copy">${e("archive.import")}</a></p>
  <//>`;var Ko=["keeper","helper","viewer","owner"],Xo=[1,48,168,720];function et({query:o}){let t=o.get("keeper"),n=o.get("name")??"",s=t?`/room/person/${t}`:"/room/people",i=T("invite",()=>({role:"keeper",hours:48})),r=h(null),{problem:l,busy:c,ask:p}=C(),{role:u,hours:$}=i.value,f=()=>p(async()=>{r.value=await ee(m.value,t?{keeper:t,hours:$}:{role:u,hours:$})}),_=e(t?"invite.title_phone":"invite.title");return r.value?a`<${ot} made=${r.value} name=${n} title=${_} up=${s} />`:a`
    <${y} title=${_} up=${s}
      act=${a`<button class="main" type="button" disabled=${c.value} onClick=${d(()=>{f()})}>
        ${e("invite.make")}</button>`}>
      ${t?a`<p class="sentence">${e("invite.phone_why",{name:n})}</p>`:a`<${jo} label=${e("invite.role")} name="role" chosen=${u}
            on_choose=${v=>i.value={...i.value,role:v}}
            choices=${Ko.map(v=>[v,a`<b>${e(`role.${v}`)}</b><span class="soft small">
              ${e(`role_may.${v}`)}</span>`])} />`}
      <${jo} label=${e("invite.hours")} name="hours" chosen=${$}
        on_choose=${v=>i.value={...i.value,hours:v}}
        choices=${Xo.map(v=>[v,e(`invite.hours.${v}`)])} />
      <${j} text=${l.value} />
    <//>`}var jo=({label:o,name:t,chosen:n,choices:s,on_choose:i})=>a`
  <fieldset class="field"><legend>${o}</legend>
    <div class="tiles two">${s.map(([r,l])=>a`
      <label key=${r}><input class="unseen" type="radio" name=${t} value=${r} checked=${r===n}
        onChange=${()=>i(r)} />${l}</label>`)}</div>
  </fieldset>`;function ot({made:o,name:t,title:n,up:s}){let i=h(!1),r=h(null),{problem:l,busy:c,ask:p}=C(),u=()=>p(async()=>{r.value=await oe(m.value,o)}),$=P(o.expires_at,k.value),f=async()=>{await navigator.clipboard.writeText(o.link),i.value=!0},_=async()=>{try{await navigator.share({title:e("invite.share_title",{room:m.value.about()?.name??""}),url:o.link})}catch(O){if(!(O instanceof DOMException))throw O}},v=typeof navigator.share=="function",I=!!navigator.clipboard;return a`
    <${y} title=${n} up=${s}
      act=${a`
        <button class=${v||I?"quiet":"main"} type="button" onClick=${d(()=>q(s,{replace:!0}))}>${e("invite.close")}
          </button>
        ${I&&a`<button class=${v?"quiet":"main"} type="button"
          onClick=${d(()=>{f().catch(()=>w(o.link))})}>
          ${e(i.value?"invite.copied":"invite.copy")}</button>`}
        ${v&&a`<button class="main" type="button" onClick=${d(()=>{_()})}>${e("invite.share")}
          </button>`}`}>
      <div class="invitation">
        <p class="sentence">${o.keeper?e("invite.how_phone",{name:t,until:$}):e("invite.how",{role:e(`role.${o.role}`),until:$})}</p>
        <${ho} text=${o.link} label=${e("invite.qr")} />
        ${r.value?a`<p class="code" role="status"><b class="figures">${r.value.code}</b>
              ${e("invite.code_until",{until:Z(r.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${c.value}
              onClick=${d(()=>{u()})}>${e("invite.code")}</button></p>`}
        <${j} text=${l.value} />
        <p class="soft small">${e("invite.once")}</p>
        <p class="small link" aria-label=${e("invite.link")}>${o.link}</p>
      </div>
    <//>`}function Co(o){let[,t]=/\/join\/?#([A-Za-z0-9_-]{8,200})/.exec(o)??[];if(t)return{secret:t};let[,n]=/^\s*#?([A-Za-z0-9_-]{20,200})\s*$/.exec(o)??[];if(n)return{secret:n};let s=o.replace(/[\s-]/g,"").toUpperCase();return/^[A-Z0-9]{8}$/.test(s)?{code:s}:null}async function So(o,t){return"secret"in t?t.secret:(await Ie(o,{method:"POST",path:"/api/v1/join/code",body:t})).secret}var Po="qr_code",tt=[1600,700];async function fe(){let o=await nt();if(o)return async n=>(await o.detect(n))[0]?.rawValue??null;let{default:t}=await import("./jsqr-X2OFFJAU.js");return async n=>{let{data:s,width:i,height:r}=qo(n).getImageData(0,0,n.width,n.height);return t(s,i,r)?.data??null}}async function nt(){let{BarcodeDetector:o}=globalThis,t=await o?.getSupportedFormats().catch(()=>[])??[];return o&&t.includes(Po)?new o({formats:[Po]}):null}async function Io(o){let[t,n]=await Promise.all([fe(),createImageBitmap(o)]),s=document.createElement("canvas");for(let i of tt){ve(s,n,n.width,n.height,i);let r=await t(s);if(r)return r}return null}function ve(o,t,n,s,i){let r=Math.min(1,i/Math.max(n,s));o.width=Math.round(n*r),o.height=Math.round(s*r),qo(o).drawImage(t,0,0,o.width,o.height)}var qo=o=>o.getContext("2d",{willReadFrequently:!0});var at=800,st=150,Eo=()=>!!navigator.mediaDevices?.getUserMedia;function Ro({on_text:o,on_fail:t}){let n=xe(null);return x(()=>{let s=!1,i,r=()=>{s=!0;for(let c of i?.getTracks()??[])c.stop()};return(async()=>{i=await navigator.mediaDevices.getUserMedia({video:{facingMode:"environment"}});let p=await fe(),u=n.current;if(s||!u)return r();u.srcObject=i,await u.play();let $=document.createElement("canvas");for(;!s;){if(u.videoWidth){ve($,u,u.videoWidth,u.videoHeight,at);let f=await p($);if(f&&!s)return o(f)}await new Promise(f=>setTimeout(f,st))}})().catch(c=>{s||(console.warn("No camera:",c),t())}),r},[]),a`<video class="camera" ref=${n} muted playsinline aria-label=${e("join.camera")}></video>`}function Oo(){let{typed:o,scanning:t,problem:n,busy:s,take:i,paste:r,look_at:l,no_camera:c}=it(),p=!!navigator.clipboard?.readText;return a`
    <${y} title=${e("join.title")} up="/room"
      act=${a`<button class="main" type="button" disabled=${s.value||!o.value.trim()}
        onClick=${d(()=>{i(o.value)})}>${e("join.on")}</button>`}>
      <p class="sentence">${e("join.how")}</p>
      <div class="field"><label for="way-in">${e("join.way")}</label>
        <input id="way-in" type="text" autocomplete="off" autocapitalize="off" spellcheck=${!1}
          value=${o.value} onInput=${B(u=>o.value=u)} /></div>
      <${j} text=${n.value} />
      <div class="row">
        ${p&&a`<button class="quiet tall" type="button" onClick=${d(()=>{r()})}>${e("join.paste")}
          </button>`}
        ${Eo()&&a`<button class="quiet tall" type="button" aria-pressed=${t.value}
          onClick=${d(()=>t.value=!t.value)}><${b} name="camera" />${e("join.scan")}</button>`}
        <label class="quiet tall file"><${b} name="camera" />${e("join.photo")}<input class="unseen" type="file"
          accept="image/*" onChange=${l} /></label>
      </div>
      ${t.value&&a`<${Ro} on_text=${u=>{i(u)}} on_fail=${c} />`}
    <//>`}function it(){let o=h(""),t=h(!1),n=h(""),s=h(!1),i=async p=>{t.value=!1,n.value="";let u=Co(p);if(!u)return void(n.value=e("join.not_way"));s.value=!0;try{q(`/join#${await So(await qe(),u)}`,{replace:!0})}catch($){let f=$ instanceof Pe&&$.status===404;n.value=f?e("join.code_unknown"):V($)}finally{s.value=!1}};return{typed:o,scanning:t,problem:n,busy:s,take:i,paste:async()=>{let p=await navigator.clipboard.readText().catch(()=>"");o.value=p,p&&await i(p)},look_at:async({currentTarget:p})=>{let u=p.files?.[0];if(p.value="",!u)return;let $=await Io(u).catch(f=>{console.warn("No code:",f)});$?await i($):n.value=e("join.no_code")},no_camera:()=>{t.value=!1,n.value=e("join.no_camera")}}}function rt({secret:o,enter:t}){let n=m.value.me(),s=T("join",()=>({keeper:"",phone:""})),i=h(""),r=h(!1),{keeper:l,phone:c}=s.value,p=c.trim()!==""&&(n||l.trim()!==""),u=async()=>{i.value="",r.value=!0;try{let $=await Oe({secret:o,device_name:c.trim(),...n?{}:{keeper_name:l.trim()}});await Ee($),U("join"),await t(),q("/",{replace:!0}),w(e("join.done",{room:m.value.about()?.name??""}))}catch($){i.value=$ instanceof Se?e("join.unreachable"):V($)}finally{r.value=!1}};return o?a`
    <${y} title=${e("join.title")} up="/"
      act=${a`<button class="main" type="button" disabled=${!p||r.value}
        onClick=${d(()=>{u()})}>${e(r.value?"join.asking":"join.do")}</button>`}>
      <p class="sentence">${e("join.why")}</p>
      ${!n&&a`<${zo} id="keeper" label=${e("join.keeper")} value=${l} autocomplete="name"
        on_value=${$=>s.value={...s.value,keeper:$}} />`}
      <${zo} id="phone" label=${e("join.phone")} value=${c} autocomplete="off"
        on_value=${$=>s.value={...s.value,phone:$}} />
      ${i.value&&a`<p class="wrong" role="alert"><${b} name="needs" size=${20} /><span>${i.value}
        </span></p>`}
    <//>`:a`<${Oo} />`}var zo=({id:o,label:t,value:n,autocomplete:s,on_value:i})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete=${s} value=${n}
      onInput=${B(i)} /></div>`;var lt=["role","fields","envelope","other-kind","insert-only","membership-ended","too-large","invalid"],Ao=(o,t)=>[...o].sort((n,s)=>n.n-s.n).map(n=>pt(n,t));function pt({op:o,by:t,at:n,creates:s=!1,reason:i="",errors:r=[]},l){let c=l.kinds[o.kind]?.fields??[],p=l.get(o.kind,o.id),{fields:u={}}=o,$=o.type==="put"?s?"new":"change":o.type==="del"?"remove":"restore",f=he(u.tank)??p?.tank,_=["tank","at",...$==="new"?["name"]:[]];return{op:o.op,kind:o.kind,doing:$,name:he(u.name)??p?.name??null,tank:f&&l.get("tank",f)?.name||null,said:Object.entries(u).filter(([v])=>!_.includes(v)).map(([v,I])=>{let E=ae(c,v);return{label:pe(E,v),value:Ve(E,I,l)}}),by:t,at:he(u.at)??n,why:lt.includes(i)?i:"other",reason:i,may_now:l.may(o.kind),wrong:r.map(({field:v,message:I,allowed:E})=>({label:pe(ae(c,v),v),message:I,allowed:E})),follows:s?(l.held??[]).filter(v=>v.kind===o.kind&&v.id===o.id).length:0}}var he=o=>typeof o=="string"?o:void 0;function ct(){let{needs_you:o,photos_need_you:t}=z(),n=m.value,s=Ao(o,{...$o,kinds:H(),may:l=>n.may(l),held:n.unshared()}),i=s.length+t>0,r=async()=>{let l=await A(await n.export_needs_you(),"limnary-needs-you","jsonl");l&&w(e("archive.kept",{file:l}))};return a`
    <${y} title=${e("needs_you.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${i&&a`
        ${s.length>0&&a`<button class="quiet" type="button" onClick=${d(()=>{r()})}>
          ${e("needs_you.export")}</button>`}
        <button class="main" type="button" disabled=${n.about()?.ended} onClick=${d(()=>{n.try_again()})}>
          ${e("needs_you.all_again")}</button>`}>
      <p class=${i?"":"sentence"}>${e(i?"needs_you.why":"needs_you.none")}</p>
      <ul class="lines">${s.map(l=>a`<${mt} key=${l.op} refusal=${l} />`)}</ul>
      ${t>0&&a`<section class="section"><h2>${e("needs_you.photos",{count:t})}
        </h2><p>${e("needs_you.photos_why")}</p><${ut} count=${t} /></section>`}
    <//>`}function ut({count:o}){let t=m.value,n=h([]);x(()=>{t.refused_photos().then(i=>n.value=i)},[t,o]);let s=async i=>re(e("needs_you.discarded",{what:e("kind.photo")}),await t.discard_photo(i));return a`
    <ul class="lines">${n.value.map(({sha256:i,reason:r},l)=>{let[c]=t.all("photo").filter(u=>u.sha256===i),p=e("photo.numbered",{at:l+1});return a`
        <li class="refused" key=${i}>
          <${vo} photo=${{...c,sha256:i}} said=${p} />
          ${c&&a`<p class="soft small">
            ${e("needs_you.by",{who:ue(c.meta.made_by),when:P(c.at,k.value)})}</p>`}
          <p class="wrong"><${b} name="needs" size=${20} /><span>${e("why_not.other",{reason:r})}</span></p>
          <div class="row"><button class="quiet" type="button" onClick=${d(()=>{s(i)})}>
            ${e("needs_you.discard")}<span class="unseen"> ${p}</span></button></div>
        </li>`})}</ul>`}function mt({refusal:o}){let t=m.value,n=e(`kind.${o.kind}`),s=o.name?e("needs_you.named",{kind:n,name:o.name}):o.tank?`${n} ${e("needs_you.in_tank",{tank:o.tank})}`:n,i=async()=>re(e("needs_you.discarded",{what:s}),await t.discard([o.op]));return a`
    <li class="refused">
      <h2>${e(`needs_you.${o.doing}`,{what:s})}</h2>
      <p class="soft small">${e("needs_you.by",{who:ue(o.by),when:P(o.at,k.value)})}</p>
      ${o.said.map(({label:r,value:l})=>a`<p class="said-field" key=${r}><span class="soft">${r}
        </span> ${l}</p>`)}
      <p class="wrong"><${b} name="needs" size=${20} /><span>${$t(o)}</span></p>
      ${o.wrong.map(r=>a`<p class="small" key=${r.label}>${e("needs_you.wrong",r)}</p>`)}
      ${o.follows>0&&a`<p class="soft small">${e("needs_you.follows",{count:o.follows})}</p>`}
      <div class="row">
        ${!t.about()?.ended&&a`<button class="quiet" type="button"
          onClick=${d(()=>{t.try_again([o.op])})}>${e("needs_you.again")}<span class="unseen"> ${s}
          </span></button>`}
        <button class="quiet" type="button" onClick=${d(()=>{i()})}>${e("needs_you.discard")}<span
          class="unseen"> ${s}</span></button>
      </div>
    </li>`}function $t({why:o,reason:t,kind:n,may_now:s}){if(o!=="role")return e(`why_not.${o}`,{reason:t});if(s)return e("why_not.role_now");let i=Ce(n).written_by.map(l=>e(`role.${l}`)).join(", "),r=m.value.about()?.role;return r?e("why_not.role",{role:e(`role.${r}`),roles:i}):e("why_not.role_then",{roles:i})}function ne(){let o=h(null),t=C(),n=async()=>{o.value=await Ke(m.value)};return x(()=>{t.ask(n)},[D.value,m.value]),{found:o,again:n,...t}}function dt(){let{found:o,problem:t}=ne(),n=m.value.about()?.role==="owner",s=m.value.me()?.id;return a`
    <${y} title=${e("people.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${n&&a`<a class="main" href="/room/invite"><${b} name="plus" />${e("people.invite")}</a>`}>
      ${!o.value&&(t.value?a`<p class="sentence">${e("people.unreachable")}</p>`:a`<p
        class="soft">${e("people.asking")}</p>`)}
      ${t.value!==e("refusal.unreachable")&&a`<${j} text=${t.value} />`}
      <ul class="lines">${(o.value??[]).map(i=>a`
        <li key=${i.id}><a class="line" href=${`/room/person/${i.id}`}><span class="grow"><b>${i.name}</b> <span
          class="soft">${[e(`role.${i.role}`),i.id===s&&e("people.you")].filter(Boolean).join(", ")}</span><br
          />
          <span class="soft small">${ft(i.devices)}</span></span></a></li>`)}</ul>
      ${o.value&&!n&&a`<p class="soft">${e("people.ask_owner")}</p>`}
      ${o.value&&n&&a`<${vt} people=${o.value} />`}
    <//>`}function ft(o){let t=[...o.flatMap(n=>n.last_seen??[])].sort().at(-1);return t?e("people.phones",{count:o.length,when:J(t,k.value)}):e("people.no_phone")}function vt({people:o}){let t=h(null),{problem:n,ask:s}=C(),i=async()=>{t.value=await Xe(m.value)};x(()=>{s(i)},[]);let r=c=>o.find(p=>p.id===c)?.name??m.value.name_of(c)??e("invite.the_server"),l=async c=>{await eo(m.value,c),await i(),w(e("invite.withdrawn"))};return t.value&&a`
    <section class="section"><h2>${e("invite.open")}</h2>
      ${t.value.length===0&&a`<p class="soft">${e("invite.open_none")}</p>`}
      <ul class="lines">${t.value.map(c=>{let p=c.keeper?e("invite.open_phone",{name:r(c.keeper)}):e(`role.${c.role}`);return a`<li class="line" key=${c.id}><span class="grow"><b>${p}</b><br /><span class="soft small">
          ${e("invite.until",{until:P(c.expires_at,k.value),who:r(c.made_by)})}</span></span>
          <button class="quiet" type="button" onClick=${d(()=>{s(()=>l(c.id))})}>
            ${e("invite.withdraw")}<span class="unseen"> ${p}</span></button></li>`})}</ul>
      <${j} text=${n.value} />
    </section>`}var Mo=["owner","keeper","helper","viewer"];function To(o,{people:t,me:n,role:s}){let i=s==="owner",r=o.id===n,l=o.role==="owner"&&t.filter(c=>c.role==="owner").length===1;return{self:r,last_owner:l,change_role:i&&!l,hand_over:i&&!r&&o.role!=="owner",remove:i&&!r,leave:r&&!l,phones:i||r}}function _t({id:o}){let{found:t,again:n,problem:s,busy:i,ask:r}=ne(),l=t.value?.find(v=>v.id===o),c=m.value,p=(v,I)=>a`<${y} title=${v} up="/room/people" place="room" aside=${a`<span></span>`}>${I}<${j}
      text=${s.value} /><//>`;if(!t.value)return p(e("people.title"),a`<p class="soft">${e(s.value?"people.unreachable":"people.asking")}</p>`);if(!l)return p(e("people.title"),a`<p class="sentence">${e("people.gone")}</p>`);let u=To(l,{people:t.value,me:c.me()?.id,role:c.about()?.role}),{name:$}=l,f=yt(l,u,n),_=v=>d(()=>{r(v)});return p($,a`
    <${wt} person=${l} can=${u} busy=${i.value} doing=${_} on_choose=${f.become} />
    <section class="section"><h2>${e("people.phones_title")}</h2>
      <${bt} devices=${l.devices} may=${u.phones} doing=${_} on_revoke=${f.shut_out} />
      ${u.phones&&a`<p><a class="quiet" href=${`/room/invite?keeper=${o}&name=${encodeURIComponent($)}`}>
        <${b} name="plus" size=${20} />${e("people.add_phone")}</a></p>`}
    </section>
    ${u.hand_over&&a`<${_e} title=${e("people.hand_over")} why=${e("people.hand_over_why",{name:$})}
      words=${e("people.hand_over_do",{name:$})} on_do=${_(f.give)} />`}
    ${u.remove&&a`<${_e} title=${e("people.remove")} why=${e("people.remove_why",{name:$})}
      words=${e("people.remove_do",{name:$})} on_do=${_(f.take_out)} />`}
    ${u.leave&&a`<${_e} title=${e("people.leave")} why=${e("people.leave_why")}
      words=${e("people.leave_do",{room:c.about()?.name??""})} on_do=${_(f.go_away)} />`}`)}function yt({id:o,name:t,role:n},s,i){let r=m.value,l=async()=>{await r.refresh_role(),await i()},c=async p=>{await to(r,o,p),await l()};return{become:async p=>{if(p===n)return;await c(p);let u=e("people.role_changed",{name:t,role:e(`role.${p}`)});s.self?w(u):te(u,()=>c(n))},shut_out:async p=>{await so(r,p.id),await i(),w(e("people.revoked",{phone:p.name}))},give:async()=>{await no(r,o,r.me()?.id??"").finally(l),w(e("people.handed_over",{name:t}))},take_out:async()=>{await ce(r,o),w(e("people.removed",{name:t})),q("/room/people",{replace:!0})},go_away:async()=>{let p=r.about()?.name??"";await L(),await ce(r,o),await L(),w(e("people.left",{room:p})),q("/room",{replace:!0})}}}var wt=({person:o,can:t,busy:n,doing:s,on_choose:i})=>a`
  <section class="section"><h2>${e("people.role")}</h2>
    ${t.change_role?a`<div class="tiles two" role="group" aria-label=${e("people.role")}>${Mo.map(r=>a`
          <button key=${r} type="button" aria-pressed=${r===o.role} disabled=${n}
            onClick=${s(()=>i(r))}><b>${e(`role.${r}`)}</b><span
            class="soft small">${e(`role_may.${r}`)}</span></button>`)}</div>`:a`<p><b>${e(`role.${o.role}`)}</b>, ${e(`role_may.${o.role}`)}</p>`}
    ${t.self&&t.last_owner&&a`<p class="soft">${e("people.last_owner")}</p>`}
  </section>`;function bt({devices:o,may:t,doing:n,on_revoke:s}){let i=h("");x(()=>{Y().then(({device:l})=>i.value=l)},[]);let r=o.filter(({id:l})=>l!==i.value);return a`
    <ul class="lines">${o.map(({id:l,name:c,last_seen:p})=>a`
      <li class="line" key=${l}><span class="grow">${c}<br /><span class="soft small">
        ${l===i.value?e("people.this_phone"):p&&e("people.seen",{when:J(p,k.value)})}</span></span></li>`)}</ul>
    ${o.length===0&&a`<p class="soft">${e("people.no_phone")}</p>`}
    ${t&&r.length>0&&a`
      <p class="soft">${e("people.revoke_why")}</p>
      <div class="stack">
        ${r.map(l=>a`<button class="quiet grave" key=${l.id} type="button"
        onClick=${n(()=>s(l))}>${e("people.revoke",{phone:l.name})}</button>`)}</div>`}`}var _e=({title:o,why:t,words:n,on_do:s})=>a`
  <section class="section"><h2>${o}</h2><p>${t}</p>
    <p><button class="quiet grave" type="button" onClick=${s}>${n}</button></p></section>`;function Do(){let o=h(null),{ask:t}=C();if(x(()=>{t(async()=>o.value=await ao(m.value))},[D.value,m.value]),!o.value)return null;let{automatic:n,last_good_at:s,faults:i}=o.value.backups;return a`
    <section class="section" aria-label=${e("upkeep.title")}>
      <h2>${e("upkeep.title")}</h2>
      ${i.map(r=>a`
      <p class="wrong" key=${r}><${b} name="needs" size=${20} /><span>${kt(r)}</span></p>`)}
      ${i.length>0&&a`<p>${e("upkeep.tell")}</p>`}
      <p class="soft">${n?s?e("upkeep.last",{when:P(s,k.value)}):e("upkeep.none_yet"):e("upkeep.off")}</p>
    </section>`}var gt=new Set(["data-damaged","disk-full","folder","not-whole","backup-damaged","missing","too-large","late"]),kt=o=>e(`upkeep.${gt.has(o)?o:"failed"}`);function xt(){let o=z(),t=m.value.about(),n=o.needs_you.length+o.photos_need_you,s=h(0);return x(()=>{G().then(i=>s.value=i.length)},[m.value,t?.ended]),a`
    <${y} title=${t?.name??e("room.title")} place="room" aside=${a`<span></span>`}>
      <${Ct} state=${o} ended=${!!t?.ended} />
      <ul class="lines section">
        ${n>0&&a`<${R} to="/room/needs-you" title=${e("needs_you.title")}
          said=${e("needs_you.count",{count:n})} icon="needs" />`}
        ${o.joined&&a`<${R} to="/room/people" title=${e("people.title")}
          said=${e("room.you_are",{role:e(`role.${t?.role}`)})} />`}
        <${R} to="/room/rooms" title=${e("rooms.title")} said=${e("rooms.count",{count:s.value})} />
        ${!t?.ended&&a`<${R} to="/away" title=${e("away.title")} said=${e("away.short")} />`}
        ${!o.joined&&a`<${R} to="/join" title=${e("join.title")} said=${e("join.short")} />`}
        ${!X()&&a`<${R} to="/room/install" title=${e("install.title")} said=${e("install.short")} />`}
        ${m.value.may("tank")&&a`<${R} to="/room/notebook" title=${e("notebook.title")} said=${e("notebook.short")} />`}
        <${R} to="/room/copy" title=${e("archive.title")} said=${e("archive.short")} />
        <${R} to="/room/display" title=${e("display.title")} said=${e("display.short")} />
        ${D.value&&a`<${R} to="/check" title=${e("upkeep.check")} said=${e("upkeep.check_short")} outside />`}
      </ul>
      ${!t?.ended&&a`
        <${W} kind="test_kit" said=${i=>Le(i.parameter)} />
        <${W} kind="source_water"
          said=${({disinfectant:i})=>e(`disinfectant.${i}`)} />
        <${W} kind="label"
          said=${({amount:i,unit:r,per_l:l})=>e("label.line",{amount:M(i),unit:e(`unit.${r}`),litres:Q(l)})}
          />
        <${W} kind="own_species"
          said=${({length_cm:i})=>Fe(i,"cm",1)} />
        <${W} kind="own_plant" said=${()=>""} />`}
      ${o.joined&&t?.role==="owner"&&a`<${Do} />`}
    <//>`}var R=({to:o,title:t,said:n,icon:s,outside:i})=>a`
  <li><a class="line" href=${o} target=${i&&"_self"}>${s&&a`<${b} name=${s} />`}<span
    class="grow"><b>${t}</b><br /><span class="soft small">${n}</span></span></a></li>`,jt=({state:{photos_waiting:o,photos_shared:t,not_back:n,put_aside:s}})=>a`
  ${o>0&&t>0&&a`<p class="soft" role="status">
    ${e("sharing.photos_so_far",No(t,t+o))}</p>`}
  ${n>0&&n<s&&a`<p class="soft" role="status">${e("sharing.back_so_far",No(s-n,s))}</p>`}`,No=(o,t)=>({count:M(o,0),total:M(t,0)});function Ct({state:o,ended:t}){let{lastShared:n,joined:s,problem:i}=o,r=h(!1),l=Date.now(),c=async()=>{r.value=!0,await L().finally(()=>r.value=!1)},p=async()=>{await(await navigator.serviceWorker?.getRegistration())?.update()},[u,...$]=bo({...o,joined:s||t});return a`
    <section class="section" aria-label=${e("sharing.title")}>
      ${t?a`<p class="sentence">${e("problem.ended")}</p>`:a`<p class="sentence">${e(`sharing.${u.line}`,{count:u.count})}</p>`}
      ${(t&&u.line!=="all_long"?[u,...$]:$).map(({line:f,count:_})=>a`<p key=${f}>
        ${e(`sharing.${f}`,{count:_})}</p>`)}
      <${jt} state=${o} />
      <${St} state=${o} />
      ${s&&n&&a`<p class="soft">${e("sharing.last",{when:P(n,l)})}</p>`}
      ${s&&go(l,k.value)&&a`<p class="soft">
        ${e("sharing.clock",{here:P(l,k.value),there:P(k.value,k.value)})}</p>`}
      ${D.value?i&&!t&&a`<p class="wrong">
        <${b} name="needs" size=${20} /><span>${e(`problem.${i}`)}</span></p>`:a`<p class="soft">${e("sharing.offline")}</p>`}
      <div class="row">
        ${s&&a`<button class="quiet" type="button" disabled=${r.value}
          onClick=${d(()=>{c()})}>${e(r.value?"sharing.trying":"sharing.now")}</button>`}
        ${i==="upgrade"&&a`<button class="quiet" type="button" onClick=${d(()=>{p()})}>
          ${e("sharing.newer")}</button>`}
      </div>
      ${!s&&!t&&a`<p class="soft">${e("sharing.how_to_join")}</p>`}
    </section>`}function St({state:{waiting:o,sending:t,oldest:n,joined:s}}){let i=o+t;x(()=>{Je()},[i]);let r=n&&{count:i,when:P(n,k.value)};return a`
    ${r&&a`<p>${e(s?"sharing.oldest":"sharing.oldest_here",r)}</p>`}
    ${le.value!==null&&a`<p class="soft">${e(le.value?"storage.kept":"storage.may_go")}</p>`}`}var W=({kind:o,said:t})=>a`
  <section class="section">
    <h2>${e(`settings.${o}`)}</h2>
    <ul class="lines">${He(o).filter(({retired:n})=>!n).map(n=>a`
      <li key=${n.id}><a class="line" href=${`/room/${o}/${n.id}`}><span><b>${n.name}</b><br /><span
        class="soft small">${t(n)}</span></span></a></li>`)}</ul>
    ${m.value.may(o)&&a`<p><a class="quiet" href=${`/room/${o}/new`}><${b} name="plus" size=${20} />
      ${e(`water.new_${o}`)}</a></p>`}
  </section>`;function Pt({enter:o}){let t=h([]),n=h(!1),s=async()=>{t.value=await G(),n.value=(await Y()).signed_in},{waiting:i,needs_you:r}=z();x(()=>{s()},[m.value,i,r.length,m.value.about()?.name]);let l=m.value.about(),c=async p=>{await o(p),q("/room",{replace:!0})};return a`
    <${y} title=${e("rooms.title")} place="room" up="/room" aside=${a`<span></span>`}>
      <ul class="lines">${t.value.map(p=>{let u=a`<span class="grow"><b>${p.name??e("rooms.local")}</b><br /><span class="soft small">
          ${It(p).join(", ")}</span></span>`;return a`<li key=${p.id}>${p.id===m.value.id?a`<div class="line" aria-current="true">${u}<span class="row tight"><${b} name="room" size=${20}
              />${e("rooms.here")}</span></div>`:a`<button class="line whole" type="button" onClick=${d(()=>{c(p.id)})}>${u}<span
              class="onward" aria-hidden="true"></span></button>`}</li>`})}</ul>
      <p><a class="quiet" href="/join">${e("join.title")}</a></p>
      ${l?.ended&&a`<${qt} about=${l} left=${r.length} on_done=${o} />`}
      ${l?.role==="owner"&&a`<${Et} key=${`${l.id} ${l.name}`} name=${l.name} />`}
      ${n.value?a`<${Rt} enter=${o} />`:a`<p class="soft section">${e("rooms.need_link")}
        </p>`}
    <//>`}function It(o){let t=o.unshared&&e(o.id===se?"rooms.local_holds":"rooms.unshared",{count:o.unshared}),n=[o.ended?e("rooms.ended"):o.role&&e(`role.${o.role}`),t,o.needs_you&&e("sharing.needs_you",{count:o.needs_you}),o.photos_unshared&&e("rooms.photos",{count:o.photos_unshared})].filter(Boolean);return o.id===se||o.ended||t||o.needs_you||o.photos_unshared?n:[...n,e("rooms.shared")]}function qt({about:o,left:t,on_done:n}){if(t)return null;let s=async()=>{await Re(o.id),await n(),w(e("rooms.forgotten",{name:o.name}))};return a`<section class="section"><p>${e("rooms.forget_why")}</p><p><button class="quiet grave" type="button"
    onClick=${d(()=>{s()})}>${e("rooms.forget")}</button></p></section>`}function Et({name:o}){let t=T(`room.name.${m.value.id}`,()=>o),{problem:n,busy:s,ask:i}=C(),r=m.value,l=async u=>{await oo(r,u),U(`room.name.${r.id}`),await r.refresh_role()},c=t.value.trim(),p=async()=>{await i(()=>l(c))&&te(e("rooms.renamed",{name:c}),()=>l(o))};return a`
    <section class="section"><${Bo} id="rename" label=${e("rooms.rename")} value=${t.value}
      on_value=${u=>t.value=u} />
      <button class="quiet" type="button" disabled=${s.value||!c||c===o}
        onClick=${d(()=>{p()})}>${e("setting.save")}</button>
      <${j} text=${n.value} />
    </section>`}function Rt({enter:o}){let t=T("room.new",()=>""),{problem:n,busy:s,ask:i}=C(),r=t.value.trim(),l=async()=>{await i(async()=>{let p=await ze(r);U("room.new"),await o(p)})&&(q("/room",{replace:!0}),w(e("rooms.made",{name:r})))};return a`
    <section class="section"><h2>${e("rooms.new")}</h2><p class="soft">${e("rooms.new_why")}</p>
      <${Bo} id="new-room" label=${e("rooms.name")} value=${t.value} on_value=${c=>t.value=c} />
      <button class="quiet" type="button" disabled=${s.value||!r} onClick=${d(()=>{l()})}>
        ${e("rooms.make")}</button>
      <${j} text=${n.value} />
    </section>`}var Bo=({id:o,label:t,value:n,on_value:s})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete="off" value=${n}
      onInput=${B(s)} /></div>`;var Lo={test_kit:null,label:"dechlorinator",source_water:"source_water",own_species:null,own_plant:null},Fo=["own_species","own_plant"],Uo={basis:{parameter:Object.keys(Me)},steps:{entry:["steps"]},per_drop:{parameter:Object.keys(De),entry:["keypad"]}},Ot={test_kit:{},label:{use:"dechlorinator",unit:"ml",basis:"new_water"},source_water:{},own_species:{shape:"fusiform"},own_plant:{}};function zt({kind:o,id:t,query:n}){let s=Ge(o,t),i=n.get("parameter"),r=n.get("name"),l=[o,t??"new",i,r].filter(Boolean).join("."),c=At(o,t),p=_o({name:l,held:s,first:()=>s?po(c,s):Mt(o,i,r)}),u=p.draft.value,$=c.map(S=>o==="test_kit"&&S.name==="unit"?Nt(S,u.parameter):S);if(!(o in Lo)||t&&!s)return a`<${Qe} up="/room" />`;let f=n.get("then")??"/room",_=()=>p.save(()=>{let S=lo($,u),ye=t??Ye(),we=mo(p.opened,{...Tt($,S,s),...S}),be=Object.keys(we).length?[{type:"put",kind:o,id:ye,fields:we}]:[],ge=We("tank",n.get("tank")??void 0),ke=Lo[o];return ge&&ke&&be.push({type:"put",kind:"tank",id:ge.id,fields:{[ke]:ye}}),{writes:be,said:e("saved.setting",{name:S.name??s?.name}),to:f}}),v=()=>p.save(()=>({writes:[{type:"del",kind:o,id:t}],said:e("saved.removed",{what:s?.name??""}),to:f})),I=S=>p.set(o==="test_kit"?Bt(u,S):S),E=$.map(S=>S.name),O=m.value.may(o);return a`
    <${y} title=${e(`setting.${o}`)} up=${f} news=${a`<${fo} opened=${p.opened} held=${s}
      names=${E} />`}
      act=${a`<button class="main" type="button" disabled=${!O} onClick=${d(()=>{_()})}>
        ${e("setting.save")}</button>`}>
      ${s&&Fo.includes(o)&&a`<h2>${s.name}</h2>`}
      <p class="soft">${e(O?`setting.${o}_why`:"looking_only.this")}</p>
      <${co} specs=${$} raw=${u} on_raw=${I} errors=${p.errors.value} tried=${p.tried.value} />
      <${yo} form=${p} kind=${o} beside=${E} />
      ${s&&a`<${ro} meta=${s.meta} />`}
      ${t&&O&&a`<p><button class="quiet" type="button" onClick=${d(()=>{v()})}>
        ${e("setting.remove")}</button></p>`}
    <//>`}var At=(o,t)=>(H()[o]?.fields??[]).filter(n=>n.name!=="retired"||t).filter(n=>n.name!=="name"||!t||!Fo.includes(o)).map(n=>o==="test_kit"&&Uo[n.name]?{...n,when:Uo[n.name]}:n),Mt=(o,t,n)=>({...Ot[o],...t?Dt(t):{},...n?{name:n}:{}}),Tt=(o,t,n)=>Object.fromEntries(o.filter(({name:s,required:i})=>n&&!i&&!(s in t)&&n[s]!==void 0).map(({name:s})=>[s,null])),Dt=o=>{let{entry:t,basis:n}=uo(o);return{parameter:o,entry:t,...n?{basis:n}:{},...F[o]?{unit:F[o]}:{}}};function Nt(o,t){let n=ie(t);return n?{...o,type:"choice",default:n[0],choices:n.map(s=>({value:s,label:s}))}:o}function Bt(o,t){let[n,s]=[o.parameter,t.parameter];return n===s||t.unit&&t.unit!==F[n]&&![n,s].some(ie)?t:{...t,unit:F[s]}}export{Wo as Copy,Go as Display,Zo as Install,et as Invite,rt as Join,ct as NeedsYou,dt as People,_t as Person,xt as Room,Pt as Rooms,zt as Setting,io as people};
//# sourceMappingURL=room-YQXDMQOB.js.map
