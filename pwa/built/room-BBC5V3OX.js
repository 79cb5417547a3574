import{$ as Je,Aa as Ke,Ba as Xe,Ea as eo,Ga as oo,J as le,K as He,Ta as C,Ua as K,Va as j,Ya as to,Z as Ye,Za as no,_ as Ze,ja as M,ma as L,na as Qe,t as re,u as Ge,za as Ve}from"./chunk-YUMVSDZA.js";import{$b as O,A as Ie,Ac as ie,Ad as so,Bc as V,Bd as X,C as e,Cc as Ue,Cd as ee,Dc as We,Dd as io,E as qe,Ed as ro,Fd as lo,G as H,Gb as Z,Gc as D,Gd as po,H as S,Hb as Me,Hd as co,I as Y,Ib as Te,Id as pe,Md as uo,Nd as mo,Pd as $o,Qd as fo,R as Ee,Ub as $,Vb as k,Wb as A,Y as Re,Yb as De,Zb as Ne,_b as Be,b as x,c as ye,g as h,gb as Oe,h as a,hb as ae,hc as b,i as be,j as ge,k as ke,l as ne,m as xe,o as je,p as F,pc as J,pd as q,q as Ce,r as G,rc as Le,s as Se,sb as z,t as Pe,tc as w,td as _,u as N,ub as B,uc as se,vb as ze,xc as d,xd as Fe,yb as Ae,yd as ao,zc as Q}from"./chunk-CY5ZB7SK.js";import"./chunk-HZWNA2UL.js";import"./chunk-T5P62UWI.js";import"./chunk-BEOBSI6V.js";import{p as W,r as we,s as te}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";function Mo(){let{problem:o,busy:t,ask:n}=C(),s=$.value,i=c=>n(async()=>w(await c())),r=c=>n(async()=>{let m=await c();m&&w(e("archive.kept",{file:m}))}),l=async()=>M(await s.export(),"limnary-room","zip"),u=async()=>M(new Blob([await s.readings()],{type:"text/csv"}),"limnary-readings","csv"),p=({currentTarget:c})=>{let m=c.files?.[0];c.value="",m&&i(async()=>{let{records:v,ops:y,photos:f}=await s.import(m),P=v+y+f;return P?e("archive.taken_in",{count:P}):e("archive.nothing_new")})};return a`
    <${_} title=${e("archive.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${a`<button class="main" type="button" disabled=${t.value} onClick=${d(()=>{r(l)})}>
        ${e("archive.export")}</button>`}>
      <p class="sentence">${e("archive.why")}</p>
      <p>${e("archive.export_why")}</p>
      <section class="section"><h2>${e("archive.readings")}</h2><p>${e("archive.readings_why")}</p>
        <p><button class="quiet" type="button" onClick=${d(()=>{r(u)})}>${e("archive.readings")}
          </button></p></section>
      ${s.may("reading")&&!s.about()?.ended&&a`<section class="section"><h2>${e("archive.import")}</h2><p>${e("archive.import_why")}</p>
        <label class="quiet file">${e("archive.import")}<input class="unseen" type="file"
          accept=".zip,.jsonl,application/zip" disabled=${t.value} onChange=${p} /></label></section>`}
      <${j} text=${o.value} />
    <//>`}var vo={litres:22.5,temperature_c:24.5};function To(){let o=[{value:"phone",label:e("display.as_phone")},...Object.entries(Ie).map(([n,s])=>({value:n,label:s,lang:n}))],t=Re().map(({key:n})=>({value:n,label:e(`display.${n}`)}));return a`
    <${_} title=${e("display.title")} place="room" up="/room">
      <${ho} name="language" label=${e("display.language")} choices=${o} wanted=${ao} />
      <${ho} name="units" label=${e("display.units")} choices=${t} wanted=${ze} />
      <section class="section">
        <h2>${e("display.sample")}</h2>
        <p class="sentence">
          ${e("display.sample_said",{litres:Z(vo.litres),temperature:Me(vo.temperature_c)})}</p>
        <p class="soft">${e("display.kept")}</p>
        <p class="soft">${e("display.kept_units")}</p>
      </section>
    <//>`}var ho=({name:o,label:t,choices:n,wanted:s})=>a`
  <fieldset class="field">
    <legend class="label">${t}</legend>
    <div class="chips">
      ${n.map(({value:i,label:r,lang:l})=>a`
        <label key=${i} lang=${l}><input class="unseen" type="radio" name=${o} value=${i}
          checked=${i===s.value} onChange=${()=>s.value=i} />${r}</label>`)}
    </div>
  </fieldset>`;var Do={ios:["ios_1","ios_2","ios_3"],android:["android_1","android_2"],other:["other_1"]};function No(){let o=Ue();return V()?a`<${Uo} />`:a`
    <${_} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${Q.value&&a`<button class="main" type="button" onClick=${d(()=>{Bo()})}>${e("install.do")}</button>`}>
      <p class="sentence">${e("install.why")}</p>
      <ol class="told">${Do[o].map(t=>a`<li key=${t}>${e(`install.${t}`)}</li>`)}</ol>
      ${o==="ios"?a`<${Lo} />`:a`<p>${e("install.same")}</p>`}
    <//>`}async function Bo(){let o=Q.value;Q.value=null,await o?.prompt()}function Lo(){let{waiting:o,sending:t,photos_waiting:n,needs_you:s,joined:i}=O(),r=o+t+n+s.length,{problem:l,busy:u,ask:p}=C(),c=h(null),m=async()=>{let y=$.value.me()?.id,f=await X($.value,{keeper:y,hours:1});c.value=await ee($.value,f)},v=async()=>{let y=await M(await $.value.export_unshared(),"limnary-unshared","zip");y&&w(e("archive.kept",{file:y}))};return a`
    <section class="section"><h2>${e("install.along")}</h2><p>${e("install.apart")}</p>
      ${i&&a`<p>${e("install.as_phone")}</p>
        ${c.value?a`<p class="code" role="status"><b class="figures">${c.value.code}</b>
              ${e("invite.code_until",{until:H(c.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${u.value}
              onClick=${d(()=>{p(m)})}>${e("invite.code")}</button></p>`}`}
      ${r>0&&a`<p>${e(i?"install.unshared":"install.only_here",{count:r})}</p>
        <p><button class="quiet" type="button" disabled=${u.value} onClick=${d(()=>{p(v)})}>
          ${e("install.keep")}</button></p>`}
      <${j} text=${l.value} />
    </section>`}var Uo=()=>a`
  <${_} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}>
    <p class="sentence">${e("install.here")}</p>
    <p>${e("install.bring")}</p>
    <p class="row"><a class="quiet" href="/join">${e("join.title")}</a>
      <a class="quiet" href="/room/copy">${e("archive.import")}</a></p>
  <//>`;var Wo=["keeper","helper","viewer","owner"],Fo=[1,48,168,720];function Go({query:o}){let t=o.get("keeper"),n=o.get("name")??"",s=t?`/room/person/${t}`:"/room/people",i=z("invite",()=>({role:"keeper",hours:48})),r=h(null),{problem:l,busy:u,ask:p}=C(),{role:c,hours:m}=i.value,v=()=>p(async()=>{r.value=await X($.value,t?{keeper:t,hours:m}:{role:c,hours:m})}),y=e(t?"invite.title_phone":"invite.title");return r.value?a`<${Ho} made=${r.value} name=${n} title=${y} up=${s} />`:a`
    <${_} title=${y} up=${s}
      act=${a`<button class="main" type="button" disabled=${u.value} onClick=${d(()=>{v()})}>
        ${e("invite.make")}</button>`}>
      ${t?a`<p class="sentence">${e("invite.phone_why",{name:n})}</p>`:a`<${_o} label=${e("invite.role")} name="role" chosen=${c}
            on_choose=${f=>i.value={...i.value,role:f}}
            choices=${Wo.map(f=>[f,a`<b>${e(`role.${f}`)}</b><span class="soft small">
              ${e(`role_may.${f}`)}</span>`])} />`}
      <${_o} label=${e("invite.hours")} name="hours" chosen=${m}
        on_choose=${f=>i.value={...i.value,hours:f}}
        choices=${Fo.map(f=>[f,e(`invite.hours.${f}`)])} />
      <${j} text=${l.value} />
    <//>`}var _o=({label:o,name:t,chosen:n,choices:s,on_choose:i})=>a`
  <fieldset class="field"><legend>${o}</legend>
    <div class="tiles two">${s.map(([r,l])=>a`
      <label key=${r}><input class="unseen" type="radio" name=${t} value=${r} checked=${r===n}
        onChange=${()=>i(r)} />${l}</label>`)}</div>
  </fieldset>`;function Ho({made:o,name:t,title:n,up:s}){let i=h(!1),r=h(null),{problem:l,busy:u,ask:p}=C(),c=()=>p(async()=>{r.value=await ee($.value,o)}),m=S(o.expires_at,k.value),v=async()=>{await navigator.clipboard.writeText(o.link),i.value=!0},y=async()=>{try{await navigator.share({title:e("invite.share_title",{room:$.value.about()?.name??""}),url:o.link})}catch(T){if(!(T instanceof DOMException))throw T}},f=typeof navigator.share=="function",P=!!navigator.clipboard;return a`
    <${_} title=${n} up=${s}
      act=${a`
        <button class=${f||P?"quiet":"main"} type="button" onClick=${d(()=>q(s,{replace:!0}))}>${e("invite.close")}
          </button>
        ${P&&a`<button class=${f?"quiet":"main"} type="button"
          onClick=${d(()=>{v().catch(()=>w(o.link))})}>
          ${e(i.value?"invite.copied":"invite.copy")}</button>`}
        ${f&&a`<button class="main" type="button" onClick=${d(()=>{y()})}>${e("invite.share")}
          </button>`}`}>
      <div class="invitation">
        <p class="sentence">${o.keeper?e("invite.how_phone",{name:t,until:m}):e("invite.how",{role:e(`role.${o.role}`),until:m})}</p>
        <${oo} text=${o.link} label=${e("invite.qr")} />
        ${r.value?a`<p class="code" role="status"><b class="figures">${r.value.code}</b>
              ${e("invite.code_until",{until:H(r.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${u.value}
              onClick=${d(()=>{c()})}>${e("invite.code")}</button></p>`}
        <${j} text=${l.value} />
        <p class="soft small">${e("invite.once")}</p>
        <p class="small link" aria-label=${e("invite.link")}>${o.link}</p>
      </div>
    <//>`}function yo(o){let[,t]=/\/join\/?#([A-Za-z0-9_-]{8,200})/.exec(o)??[];if(t)return{secret:t};let[,n]=/^\s*#?([A-Za-z0-9_-]{20,200})\s*$/.exec(o)??[];if(n)return{secret:n};let s=o.replace(/[\s-]/g,"").toUpperCase();return/^[A-Z0-9]{8}$/.test(s)?{code:s}:null}async function wo(o,t){return"secret"in t?t.secret:(await ke(o,{method:"POST",path:"/api/v1/join/code",body:t})).secret}var bo="qr_code",Yo=[1600,700];async function ce(){let o=await Zo();if(o)return async n=>(await o.detect(n))[0]?.rawValue??null;let{default:t}=await import("./jsqr-NG3VTQGC.js");return async n=>{let{data:s,width:i,height:r}=ko(n).getImageData(0,0,n.width,n.height);return t(s,i,r)?.data??null}}async function Zo(){let{BarcodeDetector:o}=globalThis,t=await o?.getSupportedFormats().catch(()=>[])??[];return o&&t.includes(bo)?new o({formats:[bo]}):null}async function go(o){let[t,n]=await Promise.all([ce(),createImageBitmap(o)]),s=document.createElement("canvas");for(let i of Yo){ue(s,n,n.width,n.height,i);let r=await t(s);if(r)return r}return null}function ue(o,t,n,s,i){let r=Math.min(1,i/Math.max(n,s));o.width=Math.round(n*r),o.height=Math.round(s*r),ko(o).drawImage(t,0,0,o.width,o.height)}var ko=o=>o.getContext("2d",{willReadFrequently:!0});var Jo=800,Qo=150,xo=()=>!!navigator.mediaDevices?.getUserMedia;function jo({on_text:o,on_fail:t}){let n=ye(null);return x(()=>{let s=!1,i,r=()=>{s=!0;for(let u of i?.getTracks()??[])u.stop()};return(async()=>{i=await navigator.mediaDevices.getUserMedia({video:{facingMode:"environment"}});let p=await ce(),c=n.current;if(s||!c)return r();c.srcObject=i,await c.play();let m=document.createElement("canvas");for(;!s;){if(c.videoWidth){ue(m,c,c.videoWidth,c.videoHeight,Jo);let v=await p(m);if(v&&!s)return o(v)}await new Promise(v=>setTimeout(v,Qo))}})().catch(u=>{s||(console.warn("No camera:",u),t())}),r},[]),a`<video class="camera" ref=${n} muted playsinline aria-label=${e("join.camera")}></video>`}function Co(){let{typed:o,scanning:t,problem:n,busy:s,take:i,paste:r,look_at:l,no_camera:u}=Vo(),p=!!navigator.clipboard?.readText;return a`
    <${_} title=${e("join.title")} up="/room"
      act=${a`<button class="main" type="button" disabled=${s.value||!o.value.trim()}
        onClick=${d(()=>{i(o.value)})}>${e("join.on")}</button>`}>
      <p class="sentence">${e("join.how")}</p>
      <div class="field"><label for="way-in">${e("join.way")}</label>
        <input id="way-in" type="text" autocomplete="off" autocapitalize="off" spellcheck=${!1}
          value=${o.value} onInput=${D(c=>o.value=c)} /></div>
      <${j} text=${n.value} />
      <div class="row">
        ${p&&a`<button class="quiet tall" type="button" onClick=${d(()=>{r()})}>${e("join.paste")}
          </button>`}
        ${xo()&&a`<button class="quiet tall" type="button" aria-pressed=${t.value}
          onClick=${d(()=>t.value=!t.value)}><${b} name="camera" />${e("join.scan")}</button>`}
        <label class="quiet tall file"><${b} name="camera" />${e("join.photo")}<input class="unseen" type="file"
          accept="image/*" onChange=${l} /></label>
      </div>
      ${t.value&&a`<${jo} on_text=${c=>{i(c)}} on_fail=${u} />`}
    <//>`}function Vo(){let o=h(""),t=h(!1),n=h(""),s=h(!1),i=async p=>{t.value=!1,n.value="";let c=yo(p);if(!c)return void(n.value=e("join.not_way"));s.value=!0;try{q(`/join#${await wo(await xe(),c)}`,{replace:!0})}catch(m){let v=m instanceof ge&&m.status===404;n.value=v?e("join.code_unknown"):J(m)}finally{s.value=!1}};return{typed:o,scanning:t,problem:n,busy:s,take:i,paste:async()=>{let p=await navigator.clipboard.readText().catch(()=>"");o.value=p,p&&await i(p)},look_at:async({currentTarget:p})=>{let c=p.files?.[0];if(p.value="",!c)return;let m=await go(c).catch(v=>{console.warn("No code:",v)});m?await i(m):n.value=e("join.no_code")},no_camera:()=>{t.value=!1,n.value=e("join.no_camera")}}}function Ko({secret:o,enter:t}){let n=$.value.me(),s=z("join",()=>({keeper:"",phone:""})),i=h(""),r=h(!1),{keeper:l,phone:u}=s.value,p=u.trim()!==""&&(n||l.trim()!==""),c=async()=>{i.value="",r.value=!0;try{let m=await Se({secret:o,device_name:u.trim(),...n?{}:{keeper_name:l.trim()}});await je(m),B("join"),await t(),q("/",{replace:!0}),w(e("join.done",{room:$.value.about()?.name??""}))}catch(m){i.value=m instanceof be?e("join.unreachable"):J(m)}finally{r.value=!1}};return o?a`
    <${_} title=${e("join.title")} up="/"
      act=${a`<button class="main" type="button" disabled=${!p||r.value}
        onClick=${d(()=>{c()})}>${e(r.value?"join.asking":"join.do")}</button>`}>
      <p class="sentence">${e("join.why")}</p>
      ${!n&&a`<${So} id="keeper" label=${e("join.keeper")} value=${l} autocomplete="name"
        on_value=${m=>s.value={...s.value,keeper:m}} />`}
      <${So} id="phone" label=${e("join.phone")} value=${u} autocomplete="off"
        on_value=${m=>s.value={...s.value,phone:m}} />
      ${i.value&&a`<p class="wrong" role="alert"><${b} name="needs" size=${20} /><span>${i.value}
        </span></p>`}
    <//>`:a`<${Co} />`}var So=({id:o,label:t,value:n,autocomplete:s,on_value:i})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete=${s} value=${n}
      onInput=${D(i)} /></div>`;var Xo=["role","fields","envelope","other-kind","insert-only","membership-ended","too-large","invalid"],Po=(o,t)=>[...o].sort((n,s)=>n.n-s.n).map(n=>et(n,t));function et({op:o,by:t,at:n,creates:s=!1,reason:i="",errors:r=[]},l){let u=l.kinds[o.kind]?.fields??[],p=l.get(o.kind,o.id),{fields:c={}}=o,m=o.type==="put"?s?"new":"change":o.type==="del"?"remove":"restore",v=me(c.tank)??p?.tank,y=["tank","at",...m==="new"?["name"]:[]];return{op:o.op,kind:o.kind,doing:m,name:me(c.name)??p?.name??null,tank:v&&l.get("tank",v)?.name||null,said:Object.entries(c).filter(([f])=>!y.includes(f)).map(([f,P])=>{let R=te(u,f);return{label:re(R,f),value:Ge(R,P,l)}}),by:t,at:me(c.at)??n,why:Xo.includes(i)?i:"other",reason:i,may_now:l.may(o.kind),wrong:r.map(({field:f,message:P,allowed:R})=>({label:re(te(u,f),f),message:P,allowed:R})),follows:s?(l.held??[]).filter(f=>f.kind===o.kind&&f.id===o.id).length:0}}var me=o=>typeof o=="string"?o:void 0;function ot(){let{needs_you:o,photos_need_you:t}=O(),n=$.value,s=Po(o,{...Ke,kinds:W(),may:l=>n.may(l),held:n.unshared()}),i=s.length+t>0,r=async()=>{let l=await M(await n.export_needs_you(),"limnary-needs-you","jsonl");l&&w(e("archive.kept",{file:l}))};return a`
    <${_} title=${e("needs_you.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${i&&a`
        ${s.length>0&&a`<button class="quiet" type="button" onClick=${d(()=>{r()})}>
          ${e("needs_you.export")}</button>`}
        <button class="main" type="button" disabled=${n.about()?.ended} onClick=${d(()=>{n.try_again()})}>
          ${e("needs_you.all_again")}</button>`}>
      <p class=${i?"":"sentence"}>${e(i?"needs_you.why":"needs_you.none")}</p>
      <ul class="lines">${s.map(l=>a`<${nt} key=${l.op} refusal=${l} />`)}</ul>
      ${t>0&&a`<section class="section"><h2>${e("needs_you.photos",{count:t})}
        </h2><p>${e("needs_you.photos_why")}</p><${tt} count=${t} /></section>`}
    <//>`}function tt({count:o}){let t=$.value,n=h([]);x(()=>{t.refused_photos().then(i=>n.value=i)},[t,o]);let s=async i=>se(e("needs_you.discarded",{what:e("kind.photo")}),await t.discard_photo(i));return a`
    <ul class="lines">${n.value.map(({sha256:i,reason:r},l)=>{let[u]=t.all("photo").filter(c=>c.sha256===i),p=e("photo.numbered",{at:l+1});return a`
        <li class="refused" key=${i}>
          <${eo} photo=${{...u,sha256:i}} said=${p} />
          ${u&&a`<p class="soft small">
            ${e("needs_you.by",{who:le(u.meta.made_by),when:S(u.at,k.value)})}</p>`}
          <p class="wrong"><${b} name="needs" size=${20} /><span>${e("why_not.other",{reason:r})}</span></p>
          <div class="row"><button class="quiet" type="button" onClick=${d(()=>{s(i)})}>
            ${e("needs_you.discard")}<span class="unseen"> ${p}</span></button></div>
        </li>`})}</ul>`}function nt({refusal:o}){let t=$.value,n=e(`kind.${o.kind}`),s=o.name?e("needs_you.named",{kind:n,name:o.name}):o.tank?`${n} ${e("needs_you.in_tank",{tank:o.tank})}`:n,i=async()=>se(e("needs_you.discarded",{what:s}),await t.discard([o.op]));return a`
    <li class="refused">
      <h2>${e(`needs_you.${o.doing}`,{what:s})}</h2>
      <p class="soft small">${e("needs_you.by",{who:le(o.by),when:S(o.at,k.value)})}</p>
      ${o.said.map(({label:r,value:l})=>a`<p class="said-field" key=${r}><span class="soft">${r}
        </span> ${l}</p>`)}
      <p class="wrong"><${b} name="needs" size=${20} /><span>${at(o)}</span></p>
      ${o.wrong.map(r=>a`<p class="small" key=${r.label}>${e("needs_you.wrong",r)}</p>`)}
      ${o.follows>0&&a`<p class="soft small">${e("needs_you.follows",{count:o.follows})}</p>`}
      <div class="row">
        ${!t.about()?.ended&&a`<button class="quiet" type="button"
          onClick=${d(()=>{t.try_again([o.op])})}>${e("needs_you.again")}<span class="unseen"> ${s}
          </span></button>`}
        <button class="quiet" type="button" onClick=${d(()=>{i()})}>${e("needs_you.discard")}<span
          class="unseen"> ${s}</span></button>
      </div>
    </li>`}function at({why:o,reason:t,kind:n,may_now:s}){if(o!=="role")return e(`why_not.${o}`,{reason:t});if(s)return e("why_not.role_now");let i=we(n).written_by.map(l=>e(`role.${l}`)).join(", "),r=$.value.about()?.role;return r?e("why_not.role",{role:e(`role.${r}`),roles:i}):e("why_not.role_then",{roles:i})}function oe(){let o=h(null),t=C(),n=async()=>{o.value=await so($.value)};return x(()=>{t.ask(n)},[A.value,$.value]),{found:o,again:n,...t}}function st(){let{found:o,problem:t}=oe(),n=$.value.about()?.role==="owner",s=$.value.me()?.id;return a`
    <${_} title=${e("people.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${n&&a`<a class="main" href="/room/invite"><${b} name="plus" />${e("people.invite")}</a>`}>
      ${!o.value&&(t.value?a`<p class="sentence">${e("people.unreachable")}</p>`:a`<p
        class="soft">${e("people.asking")}</p>`)}
      ${t.value!==e("refusal.unreachable")&&a`<${j} text=${t.value} />`}
      <ul class="lines">${(o.value??[]).map(i=>a`
        <li key=${i.id}><a class="line" href=${`/room/person/${i.id}`}><span class="grow"><b>${i.name}</b> <span
          class="soft">${[e(`role.${i.role}`),i.id===s&&e("people.you")].filter(Boolean).join(", ")}</span><br
          />
          <span class="soft small">${it(i.devices)}</span></span></a></li>`)}</ul>
      ${o.value&&!n&&a`<p class="soft">${e("people.ask_owner")}</p>`}
      ${o.value&&n&&a`<${rt} people=${o.value} />`}
    <//>`}function it(o){let t=[...o.flatMap(n=>n.last_seen??[])].sort().at(-1);return t?e("people.phones",{count:o.length,when:Y(t,k.value)}):e("people.no_phone")}function rt({people:o}){let t=h(null),{problem:n,ask:s}=C(),i=async()=>{t.value=await io($.value)};x(()=>{s(i)},[]);let r=u=>o.find(p=>p.id===u)?.name??$.value.name_of(u)??e("invite.the_server"),l=async u=>{await ro($.value,u),await i(),w(e("invite.withdrawn"))};return t.value&&a`
    <section class="section"><h2>${e("invite.open")}</h2>
      ${t.value.length===0&&a`<p class="soft">${e("invite.open_none")}</p>`}
      <ul class="lines">${t.value.map(u=>{let p=u.keeper?e("invite.open_phone",{name:r(u.keeper)}):e(`role.${u.role}`);return a`<li class="line" key=${u.id}><span class="grow"><b>${p}</b><br /><span class="soft small">
          ${e("invite.until",{until:S(u.expires_at,k.value),who:r(u.made_by)})}</span></span>
          <button class="quiet" type="button" onClick=${d(()=>{s(()=>l(u.id))})}>
            ${e("invite.withdraw")}<span class="unseen"> ${p}</span></button></li>`})}</ul>
      <${j} text=${n.value} />
    </section>`}var Io=["owner","keeper","helper","viewer"];function qo(o,{people:t,me:n,role:s}){let i=s==="owner",r=o.id===n,l=o.role==="owner"&&t.filter(u=>u.role==="owner").length===1;return{self:r,last_owner:l,change_role:i&&!l,hand_over:i&&!r&&o.role!=="owner",remove:i&&!r,leave:r&&!l,phones:i||r}}function pt({id:o}){let{found:t,again:n,problem:s,busy:i,ask:r}=oe(),l=t.value?.find(f=>f.id===o),u=$.value,p=(f,P)=>a`<${_} title=${f} up="/room/people" place="room" aside=${a`<span></span>`}>${P}<${j}
      text=${s.value} /><//>`;if(!t.value)return p(e("people.title"),a`<p class="soft">${e(s.value?"people.unreachable":"people.asking")}</p>`);if(!l)return p(e("people.title"),a`<p class="sentence">${e("people.gone")}</p>`);let c=qo(l,{people:t.value,me:u.me()?.id,role:u.about()?.role}),{name:m}=l,v=ct(l,c,n),y=f=>d(()=>{r(f)});return p(m,a`
    <${ut} person=${l} can=${c} busy=${i.value} doing=${y} on_choose=${v.become} />
    <section class="section"><h2>${e("people.phones_title")}</h2>
      <${mt} devices=${l.devices} may=${c.phones} doing=${y} on_revoke=${v.shut_out} />
      ${c.phones&&a`<p><a class="quiet" href=${`/room/invite?keeper=${o}&name=${encodeURIComponent(m)}`}>
        <${b} name="plus" size=${20} />${e("people.add_phone")}</a></p>`}
    </section>
    ${c.hand_over&&a`<${$e} title=${e("people.hand_over")} why=${e("people.hand_over_why",{name:m})}
      words=${e("people.hand_over_do",{name:m})} on_do=${y(v.give)} />`}
    ${c.remove&&a`<${$e} title=${e("people.remove")} why=${e("people.remove_why",{name:m})}
      words=${e("people.remove_do",{name:m})} on_do=${y(v.take_out)} />`}
    ${c.leave&&a`<${$e} title=${e("people.leave")} why=${e("people.leave_why")}
      words=${e("people.leave_do",{room:u.about()?.name??""})} on_do=${y(v.go_away)} />`}`)}function ct({id:o,name:t,role:n},s,i){let r=$.value,l=async()=>{await r.refresh_role(),await i()},u=async p=>{await po(r,o,p),await l()};return{become:async p=>{if(p===n)return;await u(p);let c=e("people.role_changed",{name:t,role:e(`role.${p}`)});s.self?w(c):K(c,()=>u(n))},shut_out:async p=>{await mo(r,p.id),await i(),w(e("people.revoked",{phone:p.name}))},give:async()=>{await co(r,o,r.me()?.id??"").finally(l),w(e("people.handed_over",{name:t}))},take_out:async()=>{await pe(r,o),w(e("people.removed",{name:t})),q("/room/people",{replace:!0})},go_away:async()=>{let p=r.about()?.name??"";await N(),await pe(r,o),await N(),w(e("people.left",{room:p})),q("/room",{replace:!0})}}}var ut=({person:o,can:t,busy:n,doing:s,on_choose:i})=>a`
  <section class="section"><h2>${e("people.role")}</h2>
    ${t.change_role?a`<div class="tiles two" role="group" aria-label=${e("people.role")}>${Io.map(r=>a`
          <button key=${r} type="button" aria-pressed=${r===o.role} disabled=${n}
            onClick=${s(()=>i(r))}><b>${e(`role.${r}`)}</b><span
            class="soft small">${e(`role_may.${r}`)}</span></button>`)}</div>`:a`<p><b>${e(`role.${o.role}`)}</b>, ${e(`role_may.${o.role}`)}</p>`}
    ${t.self&&t.last_owner&&a`<p class="soft">${e("people.last_owner")}</p>`}
  </section>`;function mt({devices:o,may:t,doing:n,on_revoke:s}){let i=h("");x(()=>{G().then(({device:l})=>i.value=l)},[]);let r=o.filter(({id:l})=>l!==i.value);return a`
    <ul class="lines">${o.map(({id:l,name:u,last_seen:p})=>a`
      <li class="line" key=${l}><span class="grow">${u}<br /><span class="soft small">
        ${l===i.value?e("people.this_phone"):p&&e("people.seen",{when:Y(p,k.value)})}</span></span></li>`)}</ul>
    ${o.length===0&&a`<p class="soft">${e("people.no_phone")}</p>`}
    ${t&&r.length>0&&a`
      <p class="soft">${e("people.revoke_why")}</p>
      <div class="stack">
        ${r.map(l=>a`<button class="quiet grave" key=${l.id} type="button"
        onClick=${n(()=>s(l))}>${e("people.revoke",{phone:l.name})}</button>`)}</div>`}`}var $e=({title:o,why:t,words:n,on_do:s})=>a`
  <section class="section"><h2>${o}</h2><p>${t}</p>
    <p><button class="quiet grave" type="button" onClick=${s}>${n}</button></p></section>`;function Eo(){let o=h(null),{ask:t}=C();if(x(()=>{t(async()=>o.value=await uo($.value))},[A.value,$.value]),!o.value)return null;let{automatic:n,last_good_at:s,faults:i}=o.value.backups;return a`
    <section class="section" aria-label=${e("upkeep.title")}>
      <h2>${e("upkeep.title")}</h2>
      ${i.map(r=>a`
      <p class="wrong" key=${r}><${b} name="needs" size=${20} /><span>${dt(r)}</span></p>`)}
      ${i.length>0&&a`<p>${e("upkeep.tell")}</p>`}
      <p class="soft">${n?s?e("upkeep.last",{when:S(s,k.value)}):e("upkeep.none_yet"):e("upkeep.off")}</p>
    </section>`}var $t=new Set(["data-damaged","disk-full","folder","not-whole","backup-damaged","missing","too-large","late"]),dt=o=>e(`upkeep.${$t.has(o)?o:"failed"}`);function ft(){let o=O(),t=$.value.about(),n=o.needs_you.length+o.photos_need_you,s=h(0);return x(()=>{F().then(i=>s.value=i.length)},[$.value,t?.ended]),a`
    <${_} title=${t?.name??e("room.title")} place="room" aside=${a`<span></span>`}>
      <${vt} state=${o} ended=${!!t?.ended} />
      <ul class="lines section">
        ${n>0&&a`<${E} to="/room/needs-you" title=${e("needs_you.title")}
          said=${e("needs_you.count",{count:n})} icon="needs" />`}
        ${o.joined&&a`<${E} to="/room/people" title=${e("people.title")}
          said=${e("room.you_are",{role:e(`role.${t?.role}`)})} />`}
        <${E} to="/room/rooms" title=${e("rooms.title")} said=${e("rooms.count",{count:s.value})} />
        ${!t?.ended&&a`<${E} to="/away" title=${e("away.title")} said=${e("away.short")} />`}
        ${!o.joined&&a`<${E} to="/join" title=${e("join.title")} said=${e("join.short")} />`}
        ${!V()&&a`<${E} to="/room/install" title=${e("install.title")} said=${e("install.short")} />`}
        ${$.value.may("tank")&&a`<${E} to="/room/notebook" title=${e("notebook.title")} said=${e("notebook.short")} />`}
        <${E} to="/room/copy" title=${e("archive.title")} said=${e("archive.short")} />
        <${E} to="/room/display" title=${e("display.title")} said=${e("display.short")} />
        ${A.value&&a`<${E} to="/check" title=${e("upkeep.check")} said=${e("upkeep.check_short")} outside />`}
      </ul>
      ${!t?.ended&&a`
        <${U} kind="test_kit" said=${i=>Ae(i.parameter)} />
        <${U} kind="source_water"
          said=${({disinfectant:i})=>e(`disinfectant.${i}`)} />
        <${U} kind="label"
          said=${({amount:i,unit:r,per_l:l})=>e("label.line",{amount:qe(i),unit:e(`unit.${r}`),litres:Z(l)})}
          />
        <${U} kind="own_species"
          said=${({length_cm:i})=>Te(i,"cm",1)} />
        <${U} kind="own_plant" said=${()=>""} />`}
      ${o.joined&&t?.role==="owner"&&a`<${Eo} />`}
    <//>`}var E=({to:o,title:t,said:n,icon:s,outside:i})=>a`
  <li><a class="line" href=${o} target=${i&&"_self"}>${s&&a`<${b} name=${s} />`}<span
    class="grow"><b>${t}</b><br /><span class="soft small">${n}</span></span></a></li>`;function vt({state:o,ended:t}){let{lastShared:n,joined:s,problem:i}=o,r=h(!1),l=Date.now(),u=async()=>{r.value=!0,await N().finally(()=>r.value=!1)},p=async()=>{await(await navigator.serviceWorker?.getRegistration())?.update()},[c,...m]=$o({...o,joined:s||t});return a`
    <section class="section" aria-label=${e("sharing.title")}>
      ${t?a`<p class="sentence">${e("problem.ended")}</p>`:a`<p class="sentence">${e(`sharing.${c.line}`,{count:c.count})}</p>`}
      ${(t&&c.line!=="all_long"?[c,...m]:m).map(({line:v,count:y})=>a`<p key=${v}>
        ${e(`sharing.${v}`,{count:y})}</p>`)}
      <${ht} state=${o} />
      ${s&&n&&a`<p class="soft">${e("sharing.last",{when:S(n,l)})}</p>`}
      ${s&&fo(l,k.value)&&a`<p class="soft">
        ${e("sharing.clock",{here:S(l,k.value),there:S(k.value,k.value)})}</p>`}
      ${A.value?i&&!t&&a`<p class="wrong">
        <${b} name="needs" size=${20} /><span>${e(`problem.${i}`)}</span></p>`:a`<p class="soft">${e("sharing.offline")}</p>`}
      <div class="row">
        ${s&&a`<button class="quiet" type="button" disabled=${r.value}
          onClick=${d(()=>{u()})}>${e(r.value?"sharing.trying":"sharing.now")}</button>`}
        ${i==="upgrade"&&a`<button class="quiet" type="button" onClick=${d(()=>{p()})}>
          ${e("sharing.newer")}</button>`}
      </div>
      ${!s&&!t&&a`<p class="soft">${e("sharing.how_to_join")}</p>`}
    </section>`}function ht({state:{waiting:o,sending:t,oldest:n,joined:s}}){let i=o+t;x(()=>{We()},[i]);let r=n&&{count:i,when:S(n,k.value)};return a`
    ${r&&a`<p>${e(s?"sharing.oldest":"sharing.oldest_here",r)}</p>`}
    ${ie.value!==null&&a`<p class="soft">${e(ie.value?"storage.kept":"storage.may_go")}</p>`}`}var U=({kind:o,said:t})=>a`
  <section class="section">
    <h2>${e(`settings.${o}`)}</h2>
    <ul class="lines">${Ne(o).filter(({retired:n})=>!n).map(n=>a`
      <li key=${n.id}><a class="line" href=${`/room/${o}/${n.id}`}><span><b>${n.name}</b><br /><span
        class="soft small">${t(n)}</span></span></a></li>`)}</ul>
    ${$.value.may(o)&&a`<p><a class="quiet" href=${`/room/${o}/new`}><${b} name="plus" size=${20} />
      ${e(`water.new_${o}`)}</a></p>`}
  </section>`;function _t({enter:o}){let t=h([]),n=h(!1),s=async()=>{t.value=await F(),n.value=(await G()).signed_in},{waiting:i,needs_you:r}=O();x(()=>{s()},[$.value,i,r.length,$.value.about()?.name]);let l=$.value.about(),u=async p=>{await o(p),q("/room",{replace:!0})};return a`
    <${_} title=${e("rooms.title")} place="room" up="/room" aside=${a`<span></span>`}>
      <ul class="lines">${t.value.map(p=>{let c=a`<span class="grow"><b>${p.name??e("rooms.local")}</b><br /><span class="soft small">
          ${yt(p).join(", ")}</span></span>`;return a`<li key=${p.id}>${p.id===$.value.id?a`<div class="line" aria-current="true">${c}<span class="row tight"><${b} name="room" size=${20}
              />${e("rooms.here")}</span></div>`:a`<button class="line whole" type="button" onClick=${d(()=>{u(p.id)})}>${c}<span
              class="onward" aria-hidden="true"></span></button>`}</li>`})}</ul>
      <p><a class="quiet" href="/join">${e("join.title")}</a></p>
      ${l?.ended&&a`<${wt} about=${l} left=${r.length} on_done=${o} />`}
      ${l?.role==="owner"&&a`<${bt} key=${`${l.id} ${l.name}`} name=${l.name} />`}
      ${n.value?a`<${gt} enter=${o} />`:a`<p class="soft section">${e("rooms.need_link")}
        </p>`}
    <//>`}function yt(o){let t=o.unshared&&e(o.id===ne?"rooms.local_holds":"rooms.unshared",{count:o.unshared}),n=[o.ended?e("rooms.ended"):o.role&&e(`role.${o.role}`),t,o.needs_you&&e("sharing.needs_you",{count:o.needs_you}),o.photos_unshared&&e("rooms.photos",{count:o.photos_unshared})].filter(Boolean);return o.id===ne||o.ended||t||o.needs_you||o.photos_unshared?n:[...n,e("rooms.shared")]}function wt({about:o,left:t,on_done:n}){if(t)return null;let s=async()=>{await Ce(o.id),await n(),w(e("rooms.forgotten",{name:o.name}))};return a`<section class="section"><p>${e("rooms.forget_why")}</p><p><button class="quiet grave" type="button"
    onClick=${d(()=>{s()})}>${e("rooms.forget")}</button></p></section>`}function bt({name:o}){let t=z(`room.name.${$.value.id}`,()=>o),{problem:n,busy:s,ask:i}=C(),r=$.value,l=async c=>{await lo(r,c),B(`room.name.${r.id}`),await r.refresh_role()},u=t.value.trim(),p=async()=>{await i(()=>l(u))&&K(e("rooms.renamed",{name:u}),()=>l(o))};return a`
    <section class="section"><${Ro} id="rename" label=${e("rooms.rename")} value=${t.value}
      on_value=${c=>t.value=c} />
      <button class="quiet" type="button" disabled=${s.value||!u||u===o}
        onClick=${d(()=>{p()})}>${e("setting.save")}</button>
      <${j} text=${n.value} />
    </section>`}function gt({enter:o}){let t=z("room.new",()=>""),{problem:n,busy:s,ask:i}=C(),r=t.value.trim(),l=async()=>{await i(async()=>{let p=await Pe(r);B("room.new"),await o(p)})&&(q("/room",{replace:!0}),w(e("rooms.made",{name:r})))};return a`
    <section class="section"><h2>${e("rooms.new")}</h2><p class="soft">${e("rooms.new_why")}</p>
      <${Ro} id="new-room" label=${e("rooms.name")} value=${t.value} on_value=${u=>t.value=u} />
      <button class="quiet" type="button" disabled=${s.value||!r} onClick=${d(()=>{l()})}>
        ${e("rooms.make")}</button>
      <${j} text=${n.value} />
    </section>`}var Ro=({id:o,label:t,value:n,on_value:s})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete="off" value=${n}
      onInput=${D(s)} /></div>`;var Oo={test_kit:null,label:"dechlorinator",source_water:"source_water",own_species:null,own_plant:null},Ao=["own_species","own_plant"],zo={basis:{parameter:Object.keys(Ee)},steps:{entry:["steps"]},per_drop:{parameter:Object.keys(Oe),entry:["keypad"]}},kt={test_kit:{},label:{use:"dechlorinator",unit:"ml",basis:"new_water"},source_water:{},own_species:{shape:"fusiform"},own_plant:{}};function xt({kind:o,id:t,query:n}){let s=Be(o,t),i=n.get("parameter"),r=n.get("name"),l=[o,t??"new",i,r].filter(Boolean).join("."),u=jt(o,t),p=to({name:l,held:s,first:()=>s?Ze(u,s):Ct(o,i,r)}),c=p.draft.value,m=u.map(I=>o==="test_kit"&&I.name==="unit"?It(I,c.parameter):I);if(!(o in Oo)||t&&!s)return a`<${Fe} up="/room" />`;let v=n.get("then")??"/room",y=()=>p.save(()=>{let I=Ye(m,c),de=t??Le(),fe=Ve(p.opened,{...St(m,I,s),...I}),ve=Object.keys(fe).length?[{type:"put",kind:o,id:de,fields:fe}]:[],he=De("tank",n.get("tank")??void 0),_e=Oo[o];return he&&_e&&ve.push({type:"put",kind:"tank",id:he.id,fields:{[_e]:de}}),{writes:ve,said:e("saved.setting",{name:I.name??s?.name}),to:v}}),f=()=>p.save(()=>({writes:[{type:"del",kind:o,id:t}],said:e("saved.removed",{what:s?.name??""}),to:v})),P=I=>p.set(o==="test_kit"?qt(c,I):I),R=m.map(I=>I.name),T=$.value.may(o);return a`
    <${_} title=${e(`setting.${o}`)} up=${v} news=${a`<${Xe} opened=${p.opened} held=${s}
      names=${R} />`}
      act=${a`<button class="main" type="button" disabled=${!T} onClick=${d(()=>{y()})}>
        ${e("setting.save")}</button>`}>
      ${s&&Ao.includes(o)&&a`<h2>${s.name}</h2>`}
      <p class="soft">${e(T?`setting.${o}_why`:"looking_only.this")}</p>
      <${Je} specs=${m} raw=${c} on_raw=${P} errors=${p.errors.value} tried=${p.tried.value} />
      <${no} form=${p} kind=${o} beside=${R} />
      ${s&&a`<${He} meta=${s.meta} />`}
      ${t&&T&&a`<p><button class="quiet" type="button" onClick=${d(()=>{f()})}>
        ${e("setting.remove")}</button></p>`}
    <//>`}var jt=(o,t)=>(W()[o]?.fields??[]).filter(n=>n.name!=="retired"||t).filter(n=>n.name!=="name"||!t||!Ao.includes(o)).map(n=>o==="test_kit"&&zo[n.name]?{...n,when:zo[n.name]}:n),Ct=(o,t,n)=>({...kt[o],...t?Pt(t):{},...n?{name:n}:{}}),St=(o,t,n)=>Object.fromEntries(o.filter(({name:s,required:i})=>n&&!i&&!(s in t)&&n[s]!==void 0).map(({name:s})=>[s,null])),Pt=o=>{let{entry:t,basis:n}=Qe(o);return{parameter:o,entry:t,...n?{basis:n}:{},...L[o]?{unit:L[o]}:{}}};function It(o,t){let n=ae(t);return n?{...o,type:"choice",default:n[0],choices:n.map(s=>({value:s,label:s}))}:o}function qt(o,t){let[n,s]=[o.parameter,t.parameter];return n===s||t.unit&&t.unit!==L[n]&&![n,s].some(ae)?t:{...t,unit:L[s]}}export{Mo as Copy,To as Display,No as Install,Go as Invite,Ko as Join,ot as NeedsYou,st as People,pt as Person,ft as Room,_t as Rooms,xt as Setting};
//# sourceMappingURL=room-BBC5V3OX.js.map
