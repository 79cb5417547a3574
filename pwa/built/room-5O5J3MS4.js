import{Ca as ce,Da as io,Kb as j,Lb as oe,Mb as x,Pb as ho,Qb as _o,Sa as ro,Ta as lo,Ua as po,cb as z,db as U,eb as co,ka as Ve,la as X,ma as ee,na as Ke,oa as Xe,pa as eo,qa as oo,qb as uo,ra as to,rb as mo,sa as pe,sb as $o,v as le,vb as fo,w as Qe,wa as no,xa as ao,xb as vo,ya as so}from"./chunk-VO4XJGUN.js";import"./chunk-2EP5VS3D.js";import"./chunk-MU5JOZ6H.js";import"./chunk-UIOLMFZE.js";import{$a as g,Ab as ie,Db as d,Dc as Je,Ec as yo,Fb as V,Gb as re,Gc as wo,Hb as K,Hc as bo,Ib as Ye,Jb as Ze,Mb as N,_a as m,ab as T,cb as Fe,db as We,eb as He,fb as O,i as Ce,j as Se,k as Pe,n as ae,p as Ie,s as qe,t as H,u as Ee,v as G,vb as Q,vc as I,w as Re,x as Oe,xb as Ge,y as B,zb as w,zc as y}from"./chunk-74NNJKGA.js";import{Bb as J,Cb as Le,Db as Ue,Ga as Ae,Gb as b,I as W,K as je,L as ne,Ta as Me,Za as Te,_a as se,d as k,f as ke,ha as ze,i as xe,l as h,la as e,m as a,mb as De,na as A,nb as M,pb as L,qa as Y,qb as Ne,ra as S,sa as Z,tb as Be}from"./chunk-NRUJ6FXV.js";var D=xe(null),ue=De("taking_in",()=>""),me=()=>D.value?"":ue.value;async function $e(o,t,n=""){o==="taking_in"&&(ue.value=n),D.value={work:o,count:0,total:0};try{return await t((s,i)=>D.value={work:o,count:s,total:i})}finally{D.value=null,o==="taking_in"&&(ue.value="")}}function Fo(){let{problem:o,busy:t,ask:n}=j(),s=t.value||D.value!==null,i=m.value,r=f=>n(async()=>w(await f())),l=f=>n(async()=>{let _=await f();_&&w(e("archive.kept",{file:_}))}),c=async()=>z(await $e("making",f=>i.export(f)),"limnary-room","zip"),p=async()=>z(new Blob([await i.readings()],{type:"text/csv"}),"limnary-readings","csv"),u=async()=>z(await i.tables(),"limnary-tables","zip"),$=({currentTarget:f})=>{let _=f.files?.[0];f.value="",_&&r(async()=>{let{records:v,ops:P,photos:q}=await $e("taking_in",C=>i.import(_,C),_.name),R=v+P+q;return R?e("archive.taken_in",{count:R}):e("archive.nothing_new")})};return a`
    <${y} title=${e("archive.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${a`<button class="main" type="button" disabled=${s} onClick=${d(()=>{l(c)})}>
        ${e("archive.export")}</button>`}>
      <p class="sentence">${e("archive.why")}</p>
      <${Wo} />
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
      <${x} text=${o.value} />
    <//>`}function Wo(){let o=D.value;if(o&&o.total>0){let t={count:A(o.count,0),total:A(o.total,0)};return a`<p role="status">${e(`archive.${o.work}`,t)}</p>`}return me()&&a`<p role="status">${e("archive.interrupted",{file:me()})}</p>`}var go={litres:22.5,temperature_c:24.5};function Ho(){let o=[{value:"phone",label:e("display.as_phone")},...Object.entries(ze).map(([n,s])=>({value:n,label:s,lang:n}))],t=Me().map(({key:n})=>({value:n,label:e(`display.${n}`)}));return a`
    <${y} title=${e("display.title")} place="room" up="/room">
      <${ko} name="language" label=${e("display.language")} choices=${o} wanted=${yo} />
      <${ko} name="units" label=${e("display.units")} choices=${t} wanted=${Ne} />
      <section class="section">
        <h2>${e("display.sample")}</h2>
        <p class="sentence">
          ${e("display.sample_said",{litres:J(go.litres),temperature:Le(go.temperature_c)})}</p>
        <p class="soft">${e("display.kept")}</p>
        <p class="soft">${e("display.kept_units")}</p>
      </section>
    <//>`}var ko=({name:o,label:t,choices:n,wanted:s})=>a`
  <fieldset class="field">
    <legend class="label">${t}</legend>
    <div class="chips">
      ${n.map(({value:i,label:r,lang:l})=>a`
        <label key=${i} lang=${l}><input class="unseen" type="radio" name=${o} value=${i}
          checked=${i===s.value} onChange=${()=>s.value=i} />${r}</label>`)}
    </div>
  </fieldset>`;var Go={ios:["ios_1","ios_2","ios_3"],android:["android_1","android_2"],other:["other_1"]};function Yo(){let o=Ye();return K()?a`<${Qo} />`:a`
    <${y} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${V.value&&a`<button class="main" type="button" onClick=${d(()=>{Zo()})}>${e("install.do")}</button>`}>
      <p class="sentence">${e("install.why")}</p>
      <ol class="told">${Go[o].map(t=>a`<li key=${t}>${e(`install.${t}`)}</li>`)}</ol>
      ${o==="ios"?a`<${Jo} />`:a`<p>${e("install.same")}</p>`}
    <//>`}async function Zo(){let o=V.value;V.value=null,await o?.prompt()}function Jo(){let{waiting:o,sending:t,photos_waiting:n,needs_you:s,joined:i}=O(),r=o+t+n+s.length,{problem:l,busy:c,ask:p}=j(),u=h(null),$=async()=>{let _=m.value.me()?.id,v=await X(m.value,{keeper:_,hours:1});u.value=await ee(m.value,v)},f=async()=>{let _=await z(await m.value.export_unshared(),"limnary-unshared","zip");_&&w(e("archive.kept",{file:_}))};return a`
    <section class="section"><h2>${e("install.along")}</h2><p>${e("install.apart")}</p>
      ${i&&a`<p>${e("install.as_phone")}</p>
        ${u.value?a`<p class="code" role="status"><b class="figures">${u.value.code}</b>
              ${e("invite.code_until",{until:Y(u.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${c.value}
              onClick=${d(()=>{p($)})}>${e("invite.code")}</button></p>`}`}
      ${r>0&&a`<p>${e(i?"install.unshared":"install.only_here",{count:r})}</p>
        <p><button class="quiet" type="button" disabled=${c.value} onClick=${d(()=>{p(f)})}>
          ${e("install.keep")}</button></p>`}
      <${x} text=${l.value} />
    </section>`}var Qo=()=>a`
  <${y} title=${e("install.title")} place="room" up="/room" aside=${a`<span></span>`}>
    <p class="sentence">${e("install.here")}</p>
    <p>${e("install.bring")}</p>
    <p class="row"><a class="quiet" href="/join">${e("join.title")}</a>
      <a class="quiet" href="/room/copy">${e("archive.import")}</a></p>
  <//>`;var Vo=["keeper","helper","viewer","owner"],Ko=[1,48,168,720];function Xo({query:o}){let t=o.get("keeper"),n=o.get("name")??"",s=t?`/room/person/${t}`:"/room/people",i=M("invite",()=>({role:"keeper",hours:48})),r=h(null),{problem:l,busy:c,ask:p}=j(),{role:u,hours:$}=i.value,f=()=>p(async()=>{r.value=await X(m.value,t?{keeper:t,hours:$}:{role:u,hours:$})}),_=e(t?"invite.title_phone":"invite.title");return r.value?a`<${et} made=${r.value} name=${n} title=${_} up=${s} />`:a`
    <${y} title=${_} up=${s}
      act=${a`<button class="main" type="button" disabled=${c.value} onClick=${d(()=>{f()})}>
        ${e("invite.make")}</button>`}>
      ${t?a`<p class="sentence">${e("invite.phone_why",{name:n})}</p>`:a`<${xo} label=${e("invite.role")} name="role" chosen=${u}
            on_choose=${v=>i.value={...i.value,role:v}}
            choices=${Vo.map(v=>[v,a`<b>${e(`role.${v}`)}</b><span class="soft small">
              ${e(`role_may.${v}`)}</span>`])} />`}
      <${xo} label=${e("invite.hours")} name="hours" chosen=${$}
        on_choose=${v=>i.value={...i.value,hours:v}}
        choices=${Ko.map(v=>[v,e(`invite.hours.${v}`)])} />
      <${x} text=${l.value} />
    <//>`}var xo=({label:o,name:t,chosen:n,choices:s,on_choose:i})=>a`
  <fieldset class="field"><legend>${o}</legend>
    <div class="tiles two">${s.map(([r,l])=>a`
      <label key=${r}><input class="unseen" type="radio" name=${t} value=${r} checked=${r===n}
        onChange=${()=>i(r)} />${l}</label>`)}</div>
  </fieldset>`;function et({made:o,name:t,title:n,up:s}){let i=h(!1),r=h(null),{problem:l,busy:c,ask:p}=j(),u=()=>p(async()=>{r.value=await ee(m.value,o)}),$=S(o.expires_at,g.value),f=async()=>{await navigator.clipboard.writeText(o.link),i.value=!0},_=async()=>{try{await navigator.share({title:e("invite.share_title",{room:m.value.about()?.name??""}),url:o.link})}catch(R){if(!(R instanceof DOMException))throw R}},v=typeof navigator.share=="function",P=!!navigator.clipboard;return a`
    <${y} title=${n} up=${s}
      act=${a`
        <button class=${v||P?"quiet":"main"} type="button" onClick=${d(()=>I(s,{replace:!0}))}>${e("invite.close")}
          </button>
        ${P&&a`<button class=${v?"quiet":"main"} type="button"
          onClick=${d(()=>{f().catch(()=>w(o.link))})}>
          ${e(i.value?"invite.copied":"invite.copy")}</button>`}
        ${v&&a`<button class="main" type="button" onClick=${d(()=>{_()})}>${e("invite.share")}
          </button>`}`}>
      <div class="invitation">
        <p class="sentence">${o.keeper?e("invite.how_phone",{name:t,until:$}):e("invite.how",{role:e(`role.${o.role}`),until:$})}</p>
        <${vo} text=${o.link} label=${e("invite.qr")} />
        ${r.value?a`<p class="code" role="status"><b class="figures">${r.value.code}</b>
              ${e("invite.code_until",{until:Y(r.value.expires_at)})}</p>`:a`<p><button class="quiet" type="button" disabled=${c.value}
              onClick=${d(()=>{u()})}>${e("invite.code")}</button></p>`}
        <${x} text=${l.value} />
        <p class="soft small">${e("invite.once")}</p>
        <p class="small link" aria-label=${e("invite.link")}>${o.link}</p>
      </div>
    <//>`}function jo(o){let[,t]=/\/join\/?#([A-Za-z0-9_-]{8,200})/.exec(o)??[];if(t)return{secret:t};let[,n]=/^\s*#?([A-Za-z0-9_-]{20,200})\s*$/.exec(o)??[];if(n)return{secret:n};let s=o.replace(/[\s-]/g,"").toUpperCase();return/^[A-Z0-9]{8}$/.test(s)?{code:s}:null}async function Co(o,t){return"secret"in t?t.secret:(await Pe(o,{method:"POST",path:"/api/v1/join/code",body:t})).secret}var So="qr_code",ot=[1600,700];async function de(){let o=await tt();if(o)return async n=>(await o.detect(n))[0]?.rawValue??null;let{default:t}=await import("./jsqr-OU5ZABXH.js");return async n=>{let{data:s,width:i,height:r}=Io(n).getImageData(0,0,n.width,n.height);return t(s,i,r)?.data??null}}async function tt(){let{BarcodeDetector:o}=globalThis,t=await o?.getSupportedFormats().catch(()=>[])??[];return o&&t.includes(So)?new o({formats:[So]}):null}async function Po(o){let[t,n]=await Promise.all([de(),createImageBitmap(o)]),s=document.createElement("canvas");for(let i of ot){fe(s,n,n.width,n.height,i);let r=await t(s);if(r)return r}return null}function fe(o,t,n,s,i){let r=Math.min(1,i/Math.max(n,s));o.width=Math.round(n*r),o.height=Math.round(s*r),Io(o).drawImage(t,0,0,o.width,o.height)}var Io=o=>o.getContext("2d",{willReadFrequently:!0});var nt=800,at=150,qo=()=>!!navigator.mediaDevices?.getUserMedia;function Eo({on_text:o,on_fail:t}){let n=ke(null);return k(()=>{let s=!1,i,r=()=>{s=!0;for(let c of i?.getTracks()??[])c.stop()};return(async()=>{i=await navigator.mediaDevices.getUserMedia({video:{facingMode:"environment"}});let p=await de(),u=n.current;if(s||!u)return r();u.srcObject=i,await u.play();let $=document.createElement("canvas");for(;!s;){if(u.videoWidth){fe($,u,u.videoWidth,u.videoHeight,nt);let f=await p($);if(f&&!s)return o(f)}await new Promise(f=>setTimeout(f,at))}})().catch(c=>{s||(console.warn("No camera:",c),t())}),r},[]),a`<video class="camera" ref=${n} muted playsinline aria-label=${e("join.camera")}></video>`}function Ro(){let{typed:o,scanning:t,problem:n,busy:s,take:i,paste:r,look_at:l,no_camera:c}=st(),p=!!navigator.clipboard?.readText;return a`
    <${y} title=${e("join.title")} up="/room"
      act=${a`<button class="main" type="button" disabled=${s.value||!o.value.trim()}
        onClick=${d(()=>{i(o.value)})}>${e("join.on")}</button>`}>
      <p class="sentence">${e("join.how")}</p>
      <div class="field"><label for="way-in">${e("join.way")}</label>
        <input id="way-in" type="text" autocomplete="off" autocapitalize="off" spellcheck=${!1}
          value=${o.value} onInput=${N(u=>o.value=u)} /></div>
      <${x} text=${n.value} />
      <div class="row">
        ${p&&a`<button class="quiet tall" type="button" onClick=${d(()=>{r()})}>${e("join.paste")}
          </button>`}
        ${qo()&&a`<button class="quiet tall" type="button" aria-pressed=${t.value}
          onClick=${d(()=>t.value=!t.value)}><${b} name="camera" />${e("join.scan")}</button>`}
        <label class="quiet tall file"><${b} name="camera" />${e("join.photo")}<input class="unseen" type="file"
          accept="image/*" onChange=${l} /></label>
      </div>
      ${t.value&&a`<${Eo} on_text=${u=>{i(u)}} on_fail=${c} />`}
    <//>`}function st(){let o=h(""),t=h(!1),n=h(""),s=h(!1),i=async p=>{t.value=!1,n.value="";let u=jo(p);if(!u)return void(n.value=e("join.not_way"));s.value=!0;try{I(`/join#${await Co(await Ie(),u)}`,{replace:!0})}catch($){let f=$ instanceof Se&&$.status===404;n.value=f?e("join.code_unknown"):Q($)}finally{s.value=!1}};return{typed:o,scanning:t,problem:n,busy:s,take:i,paste:async()=>{let p=await navigator.clipboard.readText().catch(()=>"");o.value=p,p&&await i(p)},look_at:async({currentTarget:p})=>{let u=p.files?.[0];if(p.value="",!u)return;let $=await Po(u).catch(f=>{console.warn("No code:",f)});$?await i($):n.value=e("join.no_code")},no_camera:()=>{t.value=!1,n.value=e("join.no_camera")}}}function it({secret:o,enter:t}){let n=m.value.me(),s=M("join",()=>({keeper:"",phone:""})),i=h(""),r=h(!1),{keeper:l,phone:c}=s.value,p=c.trim()!==""&&(n||l.trim()!==""),u=async()=>{i.value="",r.value=!0;try{let $=await Re({secret:o,device_name:c.trim(),...n?{}:{keeper_name:l.trim()}});await qe($),L("join"),await t(),I("/",{replace:!0}),w(e("join.done",{room:m.value.about()?.name??""}))}catch($){i.value=$ instanceof Ce?e("join.unreachable"):Q($)}finally{r.value=!1}};return o?a`
    <${y} title=${e("join.title")} up="/"
      act=${a`<button class="main" type="button" disabled=${!p||r.value}
        onClick=${d(()=>{u()})}>${e(r.value?"join.asking":"join.do")}</button>`}>
      <p class="sentence">${e("join.why")}</p>
      ${!n&&a`<${Oo} id="keeper" label=${e("join.keeper")} value=${l} autocomplete="name"
        on_value=${$=>s.value={...s.value,keeper:$}} />`}
      <${Oo} id="phone" label=${e("join.phone")} value=${c} autocomplete="off"
        on_value=${$=>s.value={...s.value,phone:$}} />
      ${i.value&&a`<p class="wrong" role="alert"><${b} name="needs" size=${20} /><span>${i.value}
        </span></p>`}
    <//>`:a`<${Ro} />`}var Oo=({id:o,label:t,value:n,autocomplete:s,on_value:i})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete=${s} value=${n}
      onInput=${N(i)} /></div>`;var rt=["role","fields","envelope","other-kind","insert-only","membership-ended","too-large","invalid"],zo=(o,t)=>[...o].sort((n,s)=>n.n-s.n).map(n=>lt(n,t));function lt({op:o,by:t,at:n,creates:s=!1,reason:i="",errors:r=[]},l){let c=l.kinds[o.kind]?.fields??[],p=l.get(o.kind,o.id),{fields:u={}}=o,$=o.type==="put"?s?"new":"change":o.type==="del"?"remove":"restore",f=ve(u.tank)??p?.tank,_=["tank","at",...$==="new"?["name"]:[]];return{op:o.op,kind:o.kind,doing:$,name:ve(u.name)??p?.name??null,tank:f&&l.get("tank",f)?.name||null,said:Object.entries(u).filter(([v])=>!_.includes(v)).map(([v,P])=>{let q=ne(c,v);return{label:le(q,v),value:Qe(q,P,l)}}),by:t,at:ve(u.at)??n,why:rt.includes(i)?i:"other",reason:i,may_now:l.may(o.kind),wrong:r.map(({field:v,message:P,allowed:q})=>({label:le(ne(c,v),v),message:P,allowed:q})),follows:s?(l.held??[]).filter(v=>v.kind===o.kind&&v.id===o.id).length:0}}var ve=o=>typeof o=="string"?o:void 0;function pt(){let{needs_you:o,photos_need_you:t}=O(),n=m.value,s=zo(o,{...mo,kinds:W(),may:l=>n.may(l),held:n.unshared()}),i=s.length+t>0,r=async()=>{let l=await z(await n.export_needs_you(),"limnary-needs-you","jsonl");l&&w(e("archive.kept",{file:l}))};return a`
    <${y} title=${e("needs_you.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${i&&a`
        ${s.length>0&&a`<button class="quiet" type="button" onClick=${d(()=>{r()})}>
          ${e("needs_you.export")}</button>`}
        <button class="main" type="button" disabled=${n.about()?.ended} onClick=${d(()=>{n.try_again()})}>
          ${e("needs_you.all_again")}</button>`}>
      <p class=${i?"":"sentence"}>${e(i?"needs_you.why":"needs_you.none")}</p>
      <ul class="lines">${s.map(l=>a`<${ut} key=${l.op} refusal=${l} />`)}</ul>
      ${t>0&&a`<section class="section"><h2>${e("needs_you.photos",{count:t})}
        </h2><p>${e("needs_you.photos_why")}</p><${ct} count=${t} /></section>`}
    <//>`}function ct({count:o}){let t=m.value,n=h([]);k(()=>{t.refused_photos().then(i=>n.value=i)},[t,o]);let s=async i=>ie(e("needs_you.discarded",{what:e("kind.photo")}),await t.discard_photo(i));return a`
    <ul class="lines">${n.value.map(({sha256:i,reason:r},l)=>{let[c]=t.all("photo").filter(u=>u.sha256===i),p=e("photo.numbered",{at:l+1});return a`
        <li class="refused" key=${i}>
          <${fo} photo=${{...c,sha256:i}} said=${p} />
          ${c&&a`<p class="soft small">
            ${e("needs_you.by",{who:ce(c.meta.made_by),when:S(c.at,g.value)})}</p>`}
          <p class="wrong"><${b} name="needs" size=${20} /><span>${e("why_not.other",{reason:r})}</span></p>
          <div class="row"><button class="quiet" type="button" onClick=${d(()=>{s(i)})}>
            ${e("needs_you.discard")}<span class="unseen"> ${p}</span></button></div>
        </li>`})}</ul>`}function ut({refusal:o}){let t=m.value,n=e(`kind.${o.kind}`),s=o.name?e("needs_you.named",{kind:n,name:o.name}):o.tank?`${n} ${e("needs_you.in_tank",{tank:o.tank})}`:n,i=async()=>ie(e("needs_you.discarded",{what:s}),await t.discard([o.op]));return a`
    <li class="refused">
      <h2>${e(`needs_you.${o.doing}`,{what:s})}</h2>
      <p class="soft small">${e("needs_you.by",{who:ce(o.by),when:S(o.at,g.value)})}</p>
      ${o.said.map(({label:r,value:l})=>a`<p class="said-field" key=${r}><span class="soft">${r}
        </span> ${l}</p>`)}
      <p class="wrong"><${b} name="needs" size=${20} /><span>${mt(o)}</span></p>
      ${o.wrong.map(r=>a`<p class="small" key=${r.label}>${e("needs_you.wrong",r)}</p>`)}
      ${o.follows>0&&a`<p class="soft small">${e("needs_you.follows",{count:o.follows})}</p>`}
      <div class="row">
        ${!t.about()?.ended&&a`<button class="quiet" type="button"
          onClick=${d(()=>{t.try_again([o.op])})}>${e("needs_you.again")}<span class="unseen"> ${s}
          </span></button>`}
        <button class="quiet" type="button" onClick=${d(()=>{i()})}>${e("needs_you.discard")}<span
          class="unseen"> ${s}</span></button>
      </div>
    </li>`}function mt({why:o,reason:t,kind:n,may_now:s}){if(o!=="role")return e(`why_not.${o}`,{reason:t});if(s)return e("why_not.role_now");let i=je(n).written_by.map(l=>e(`role.${l}`)).join(", "),r=m.value.about()?.role;return r?e("why_not.role",{role:e(`role.${r}`),roles:i}):e("why_not.role_then",{roles:i})}function te(){let o=h(null),t=j(),n=async()=>{o.value=await Ve(m.value)};return k(()=>{t.ask(n)},[T.value,m.value]),{found:o,again:n,...t}}function $t(){let{found:o,problem:t}=te(),n=m.value.about()?.role==="owner",s=m.value.me()?.id;return a`
    <${y} title=${e("people.title")} place="room" up="/room" aside=${a`<span></span>`}
      act=${n&&a`<a class="main" href="/room/invite"><${b} name="plus" />${e("people.invite")}</a>`}>
      ${!o.value&&(t.value?a`<p class="sentence">${e("people.unreachable")}</p>`:a`<p
        class="soft">${e("people.asking")}</p>`)}
      ${t.value!==e("refusal.unreachable")&&a`<${x} text=${t.value} />`}
      <ul class="lines">${(o.value??[]).map(i=>a`
        <li key=${i.id}><a class="line" href=${`/room/person/${i.id}`}><span class="grow"><b>${i.name}</b> <span
          class="soft">${[e(`role.${i.role}`),i.id===s&&e("people.you")].filter(Boolean).join(", ")}</span><br
          />
          <span class="soft small">${dt(i.devices)}</span></span></a></li>`)}</ul>
      ${o.value&&!n&&a`<p class="soft">${e("people.ask_owner")}</p>`}
      ${o.value&&n&&a`<${ft} people=${o.value} />`}
    <//>`}function dt(o){let t=[...o.flatMap(n=>n.last_seen??[])].sort().at(-1);return t?e("people.phones",{count:o.length,when:Z(t,g.value)}):e("people.no_phone")}function ft({people:o}){let t=h(null),{problem:n,ask:s}=j(),i=async()=>{t.value=await Ke(m.value)};k(()=>{s(i)},[]);let r=c=>o.find(p=>p.id===c)?.name??m.value.name_of(c)??e("invite.the_server"),l=async c=>{await Xe(m.value,c),await i(),w(e("invite.withdrawn"))};return t.value&&a`
    <section class="section"><h2>${e("invite.open")}</h2>
      ${t.value.length===0&&a`<p class="soft">${e("invite.open_none")}</p>`}
      <ul class="lines">${t.value.map(c=>{let p=c.keeper?e("invite.open_phone",{name:r(c.keeper)}):e(`role.${c.role}`);return a`<li class="line" key=${c.id}><span class="grow"><b>${p}</b><br /><span class="soft small">
          ${e("invite.until",{until:S(c.expires_at,g.value),who:r(c.made_by)})}</span></span>
          <button class="quiet" type="button" onClick=${d(()=>{s(()=>l(c.id))})}>
            ${e("invite.withdraw")}<span class="unseen"> ${p}</span></button></li>`})}</ul>
      <${x} text=${n.value} />
    </section>`}var Ao=["owner","keeper","helper","viewer"];function Mo(o,{people:t,me:n,role:s}){let i=s==="owner",r=o.id===n,l=o.role==="owner"&&t.filter(c=>c.role==="owner").length===1;return{self:r,last_owner:l,change_role:i&&!l,hand_over:i&&!r&&o.role!=="owner",remove:i&&!r,leave:r&&!l,phones:i||r}}function ht({id:o}){let{found:t,again:n,problem:s,busy:i,ask:r}=te(),l=t.value?.find(v=>v.id===o),c=m.value,p=(v,P)=>a`<${y} title=${v} up="/room/people" place="room" aside=${a`<span></span>`}>${P}<${x}
      text=${s.value} /><//>`;if(!t.value)return p(e("people.title"),a`<p class="soft">${e(s.value?"people.unreachable":"people.asking")}</p>`);if(!l)return p(e("people.title"),a`<p class="sentence">${e("people.gone")}</p>`);let u=Mo(l,{people:t.value,me:c.me()?.id,role:c.about()?.role}),{name:$}=l,f=_t(l,u,n),_=v=>d(()=>{r(v)});return p($,a`
    <${yt} person=${l} can=${u} busy=${i.value} doing=${_} on_choose=${f.become} />
    <section class="section"><h2>${e("people.phones_title")}</h2>
      <${wt} devices=${l.devices} may=${u.phones} doing=${_} on_revoke=${f.shut_out} />
      ${u.phones&&a`<p><a class="quiet" href=${`/room/invite?keeper=${o}&name=${encodeURIComponent($)}`}>
        <${b} name="plus" size=${20} />${e("people.add_phone")}</a></p>`}
    </section>
    ${u.hand_over&&a`<${he} title=${e("people.hand_over")} why=${e("people.hand_over_why",{name:$})}
      words=${e("people.hand_over_do",{name:$})} on_do=${_(f.give)} />`}
    ${u.remove&&a`<${he} title=${e("people.remove")} why=${e("people.remove_why",{name:$})}
      words=${e("people.remove_do",{name:$})} on_do=${_(f.take_out)} />`}
    ${u.leave&&a`<${he} title=${e("people.leave")} why=${e("people.leave_why")}
      words=${e("people.leave_do",{room:c.about()?.name??""})} on_do=${_(f.go_away)} />`}`)}function _t({id:o,name:t,role:n},s,i){let r=m.value,l=async()=>{await r.refresh_role(),await i()},c=async p=>{await oo(r,o,p),await l()};return{become:async p=>{if(p===n)return;await c(p);let u=e("people.role_changed",{name:t,role:e(`role.${p}`)});s.self?w(u):oe(u,()=>c(n))},shut_out:async p=>{await ao(r,p.id),await i(),w(e("people.revoked",{phone:p.name}))},give:async()=>{await to(r,o,r.me()?.id??"").finally(l),w(e("people.handed_over",{name:t}))},take_out:async()=>{await pe(r,o),w(e("people.removed",{name:t})),I("/room/people",{replace:!0})},go_away:async()=>{let p=r.about()?.name??"";await B(),await pe(r,o),await B(),w(e("people.left",{room:p})),I("/room",{replace:!0})}}}var yt=({person:o,can:t,busy:n,doing:s,on_choose:i})=>a`
  <section class="section"><h2>${e("people.role")}</h2>
    ${t.change_role?a`<div class="tiles two" role="group" aria-label=${e("people.role")}>${Ao.map(r=>a`
          <button key=${r} type="button" aria-pressed=${r===o.role} disabled=${n}
            onClick=${s(()=>i(r))}><b>${e(`role.${r}`)}</b><span
            class="soft small">${e(`role_may.${r}`)}</span></button>`)}</div>`:a`<p><b>${e(`role.${o.role}`)}</b>, ${e(`role_may.${o.role}`)}</p>`}
    ${t.self&&t.last_owner&&a`<p class="soft">${e("people.last_owner")}</p>`}
  </section>`;function wt({devices:o,may:t,doing:n,on_revoke:s}){let i=h("");k(()=>{G().then(({device:l})=>i.value=l)},[]);let r=o.filter(({id:l})=>l!==i.value);return a`
    <ul class="lines">${o.map(({id:l,name:c,last_seen:p})=>a`
      <li class="line" key=${l}><span class="grow">${c}<br /><span class="soft small">
        ${l===i.value?e("people.this_phone"):p&&e("people.seen",{when:Z(p,g.value)})}</span></span></li>`)}</ul>
    ${o.length===0&&a`<p class="soft">${e("people.no_phone")}</p>`}
    ${t&&r.length>0&&a`
      <p class="soft">${e("people.revoke_why")}</p>
      <div class="stack">
        ${r.map(l=>a`<button class="quiet grave" key=${l.id} type="button"
        onClick=${n(()=>s(l))}>${e("people.revoke",{phone:l.name})}</button>`)}</div>`}`}var he=({title:o,why:t,words:n,on_do:s})=>a`
  <section class="section"><h2>${o}</h2><p>${t}</p>
    <p><button class="quiet grave" type="button" onClick=${s}>${n}</button></p></section>`;function To(){let o=h(null),{ask:t}=j();if(k(()=>{t(async()=>o.value=await no(m.value))},[T.value,m.value]),!o.value)return null;let{automatic:n,last_good_at:s,faults:i}=o.value.backups;return a`
    <section class="section" aria-label=${e("upkeep.title")}>
      <h2>${e("upkeep.title")}</h2>
      ${i.map(r=>a`
      <p class="wrong" key=${r}><${b} name="needs" size=${20} /><span>${gt(r)}</span></p>`)}
      ${i.length>0&&a`<p>${e("upkeep.tell")}</p>`}
      <p class="soft">${n?s?e("upkeep.last",{when:S(s,g.value)}):e("upkeep.none_yet"):e("upkeep.off")}</p>
    </section>`}var bt=new Set(["data-damaged","disk-full","folder","not-whole","backup-damaged","missing","too-large","late"]),gt=o=>e(`upkeep.${bt.has(o)?o:"failed"}`);function kt(){let o=O(),t=m.value.about(),n=o.needs_you.length+o.photos_need_you,s=h(0);return k(()=>{H().then(i=>s.value=i.length)},[m.value,t?.ended]),a`
    <${y} title=${t?.name??e("room.title")} place="room" aside=${a`<span></span>`}>
      <${jt} state=${o} ended=${!!t?.ended} />
      <ul class="lines section">
        ${n>0&&a`<${E} to="/room/needs-you" title=${e("needs_you.title")}
          said=${e("needs_you.count",{count:n})} icon="needs" />`}
        ${o.joined&&a`<${E} to="/room/people" title=${e("people.title")}
          said=${e("room.you_are",{role:e(`role.${t?.role}`)})} />`}
        <${E} to="/room/rooms" title=${e("rooms.title")} said=${e("rooms.count",{count:s.value})} />
        ${!t?.ended&&a`<${E} to="/away" title=${e("away.title")} said=${e("away.short")} />`}
        ${!o.joined&&a`<${E} to="/join" title=${e("join.title")} said=${e("join.short")} />`}
        ${!K()&&a`<${E} to="/room/install" title=${e("install.title")} said=${e("install.short")} />`}
        ${m.value.may("tank")&&a`<${E} to="/room/notebook" title=${e("notebook.title")} said=${e("notebook.short")} />`}
        <${E} to="/room/copy" title=${e("archive.title")} said=${e("archive.short")} />
        <${E} to="/room/display" title=${e("display.title")} said=${e("display.short")} />
        ${T.value&&a`<${E} to="/check" title=${e("upkeep.check")} said=${e("upkeep.check_short")} outside />`}
      </ul>
      ${!t?.ended&&a`
        <${F} kind="test_kit" said=${i=>Be(i.parameter)} />
        <${F} kind="source_water"
          said=${({disinfectant:i})=>e(`disinfectant.${i}`)} />
        <${F} kind="label"
          said=${({amount:i,unit:r,per_l:l})=>e("label.line",{amount:A(i),unit:e(`unit.${r}`),litres:J(l)})}
          />
        <${F} kind="own_species"
          said=${({length_cm:i})=>Ue(i,"cm",1)} />
        <${F} kind="own_plant" said=${()=>""} />`}
      ${o.joined&&t?.role==="owner"&&a`<${To} />`}
    <//>`}var E=({to:o,title:t,said:n,icon:s,outside:i})=>a`
  <li><a class="line" href=${o} target=${i&&"_self"}>${s&&a`<${b} name=${s} />`}<span
    class="grow"><b>${t}</b><br /><span class="soft small">${n}</span></span></a></li>`,xt=({state:{photos_waiting:o,photos_shared:t,not_back:n,put_aside:s}})=>a`
  ${o>0&&t>0&&a`<p class="soft" role="status">
    ${e("sharing.photos_so_far",Do(t,t+o))}</p>`}
  ${n>0&&n<s&&a`<p class="soft" role="status">${e("sharing.back_so_far",Do(s-n,s))}</p>`}`,Do=(o,t)=>({count:A(o,0),total:A(t,0)});function jt({state:o,ended:t}){let{lastShared:n,joined:s,problem:i}=o,r=h(!1),l=Date.now(),c=async()=>{r.value=!0,await B().finally(()=>r.value=!1)},p=async()=>{await(await navigator.serviceWorker?.getRegistration())?.update()},[u,...$]=wo({...o,joined:s||t});return a`
    <section class="section" aria-label=${e("sharing.title")}>
      ${t?a`<p class="sentence">${e("problem.ended")}</p>`:a`<p class="sentence">${e(`sharing.${u.line}`,{count:u.count})}</p>`}
      ${(t&&u.line!=="all_long"?[u,...$]:$).map(({line:f,count:_})=>a`<p key=${f}>
        ${e(`sharing.${f}`,{count:_})}</p>`)}
      <${xt} state=${o} />
      <${Ct} state=${o} />
      ${s&&n&&a`<p class="soft">${e("sharing.last",{when:S(n,l)})}</p>`}
      ${s&&bo(l,g.value)&&a`<p class="soft">
        ${e("sharing.clock",{here:S(l,g.value),there:S(g.value,g.value)})}</p>`}
      ${T.value?i&&!t&&a`<p class="wrong">
        <${b} name="needs" size=${20} /><span>${e(`problem.${i}`)}</span></p>`:a`<p class="soft">${e("sharing.offline")}</p>`}
      <div class="row">
        ${s&&a`<button class="quiet" type="button" disabled=${r.value}
          onClick=${d(()=>{c()})}>${e(r.value?"sharing.trying":"sharing.now")}</button>`}
        ${i==="upgrade"&&a`<button class="quiet" type="button" onClick=${d(()=>{p()})}>
          ${e("sharing.newer")}</button>`}
      </div>
      ${!s&&!t&&a`<p class="soft">${e("sharing.how_to_join")}</p>`}
    </section>`}function Ct({state:{waiting:o,sending:t,oldest:n,joined:s}}){let i=o+t;k(()=>{Ze()},[i]);let r=n&&{count:i,when:S(n,g.value)};return a`
    ${r&&a`<p>${e(s?"sharing.oldest":"sharing.oldest_here",r)}</p>`}
    ${re.value!==null&&a`<p class="soft">${e(re.value?"storage.kept":"storage.may_go")}</p>`}`}var F=({kind:o,said:t})=>a`
  <section class="section">
    <h2>${e(`settings.${o}`)}</h2>
    <ul class="lines">${We(o).filter(({retired:n})=>!n).map(n=>a`
      <li key=${n.id}><a class="line" href=${`/room/${o}/${n.id}`}><span><b>${n.name}</b><br /><span
        class="soft small">${t(n)}</span></span></a></li>`)}</ul>
    ${m.value.may(o)&&a`<p><a class="quiet" href=${`/room/${o}/new`}><${b} name="plus" size=${20} />
      ${e(`water.new_${o}`)}</a></p>`}
  </section>`;function St({enter:o}){let t=h([]),n=h(!1),s=async()=>{t.value=await H(),n.value=(await G()).signed_in},{waiting:i,needs_you:r}=O();k(()=>{s()},[m.value,i,r.length,m.value.about()?.name]);let l=m.value.about(),c=async p=>{await o(p),I("/room",{replace:!0})};return a`
    <${y} title=${e("rooms.title")} place="room" up="/room" aside=${a`<span></span>`}>
      <ul class="lines">${t.value.map(p=>{let u=a`<span class="grow"><b>${p.name??e("rooms.local")}</b><br /><span class="soft small">
          ${Pt(p).join(", ")}</span></span>`;return a`<li key=${p.id}>${p.id===m.value.id?a`<div class="line" aria-current="true">${u}<span class="row tight"><${b} name="room" size=${20}
              />${e("rooms.here")}</span></div>`:a`<button class="line whole" type="button" onClick=${d(()=>{c(p.id)})}>${u}<span
              class="onward" aria-hidden="true"></span></button>`}</li>`})}</ul>
      <p><a class="quiet" href="/join">${e("join.title")}</a></p>
      ${l?.ended&&a`<${It} about=${l} left=${r.length} on_done=${o} />`}
      ${l?.role==="owner"&&a`<${qt} key=${`${l.id} ${l.name}`} name=${l.name} />`}
      ${n.value?a`<${Et} enter=${o} />`:a`<p class="soft section">${e("rooms.need_link")}
        </p>`}
    <//>`}function Pt(o){let t=o.unshared&&e(o.id===ae?"rooms.local_holds":"rooms.unshared",{count:o.unshared}),n=[o.ended?e("rooms.ended"):o.role&&e(`role.${o.role}`),t,o.needs_you&&e("sharing.needs_you",{count:o.needs_you}),o.photos_unshared&&e("rooms.photos",{count:o.photos_unshared})].filter(Boolean);return o.id===ae||o.ended||t||o.needs_you||o.photos_unshared?n:[...n,e("rooms.shared")]}function It({about:o,left:t,on_done:n}){if(t)return null;let s=async()=>{await Ee(o.id),await n(),w(e("rooms.forgotten",{name:o.name}))};return a`<section class="section"><p>${e("rooms.forget_why")}</p><p><button class="quiet grave" type="button"
    onClick=${d(()=>{s()})}>${e("rooms.forget")}</button></p></section>`}function qt({name:o}){let t=M(`room.name.${m.value.id}`,()=>o),{problem:n,busy:s,ask:i}=j(),r=m.value,l=async u=>{await eo(r,u),L(`room.name.${r.id}`),await r.refresh_role()},c=t.value.trim(),p=async()=>{await i(()=>l(c))&&oe(e("rooms.renamed",{name:c}),()=>l(o))};return a`
    <section class="section"><${No} id="rename" label=${e("rooms.rename")} value=${t.value}
      on_value=${u=>t.value=u} />
      <button class="quiet" type="button" disabled=${s.value||!c||c===o}
        onClick=${d(()=>{p()})}>${e("setting.save")}</button>
      <${x} text=${n.value} />
    </section>`}function Et({enter:o}){let t=M("room.new",()=>""),{problem:n,busy:s,ask:i}=j(),r=t.value.trim(),l=async()=>{await i(async()=>{let p=await Oe(r);L("room.new"),await o(p)})&&(I("/room",{replace:!0}),w(e("rooms.made",{name:r})))};return a`
    <section class="section"><h2>${e("rooms.new")}</h2><p class="soft">${e("rooms.new_why")}</p>
      <${No} id="new-room" label=${e("rooms.name")} value=${t.value} on_value=${c=>t.value=c} />
      <button class="quiet" type="button" disabled=${s.value||!r} onClick=${d(()=>{l()})}>
        ${e("rooms.make")}</button>
      <${x} text=${n.value} />
    </section>`}var No=({id:o,label:t,value:n,on_value:s})=>a`
  <div class="field"><label for=${o}>${t}</label>
    <input id=${o} type="text" maxlength="60" autocomplete="off" value=${n}
      onInput=${N(s)} /></div>`;var Bo={test_kit:null,label:"dechlorinator",source_water:"source_water",own_species:null,own_plant:null},Uo=["own_species","own_plant"],Lo={basis:{parameter:Object.keys(Ae)},steps:{entry:["steps"]},per_drop:{parameter:Object.keys(Te),entry:["keypad"]}},Rt={test_kit:{},label:{use:"dechlorinator",unit:"ml",basis:"new_water"},source_water:{},own_species:{shape:"fusiform"},own_plant:{}};function Ot({kind:o,id:t,query:n}){let s=He(o,t),i=n.get("parameter"),r=n.get("name"),l=[o,t??"new",i,r].filter(Boolean).join("."),c=zt(o,t),p=ho({name:l,held:s,first:()=>s?lo(c,s):At(o,i,r)}),u=p.draft.value,$=c.map(C=>o==="test_kit"&&C.name==="unit"?Dt(C,u.parameter):C);if(!(o in Bo)||t&&!s)return a`<${Je} up="/room" />`;let f=n.get("then")??"/room",_=()=>p.save(()=>{let C=ro($,u),_e=t??Ge(),ye=uo(p.opened,{...Mt($,C,s),...C}),we=Object.keys(ye).length?[{type:"put",kind:o,id:_e,fields:ye}]:[],be=Fe("tank",n.get("tank")??void 0),ge=Bo[o];return be&&ge&&we.push({type:"put",kind:"tank",id:be.id,fields:{[ge]:_e}}),{writes:we,said:e("saved.setting",{name:C.name??s?.name}),to:f}}),v=()=>p.save(()=>({writes:[{type:"del",kind:o,id:t}],said:e("saved.removed",{what:s?.name??""}),to:f})),P=C=>p.set(o==="test_kit"?Nt(u,C):C),q=$.map(C=>C.name),R=m.value.may(o);return a`
    <${y} title=${e(`setting.${o}`)} up=${f} news=${a`<${$o} opened=${p.opened} held=${s}
      names=${q} />`}
      act=${a`<button class="main" type="button" disabled=${!R} onClick=${d(()=>{_()})}>
        ${e("setting.save")}</button>`}>
      ${s&&Uo.includes(o)&&a`<h2>${s.name}</h2>`}
      <p class="soft">${e(R?`setting.${o}_why`:"looking_only.this")}</p>
      <${po} specs=${$} raw=${u} on_raw=${P} errors=${p.errors.value} tried=${p.tried.value} />
      <${_o} form=${p} kind=${o} beside=${q} />
      ${s&&a`<${io} meta=${s.meta} />`}
      ${t&&R&&a`<p><button class="quiet" type="button" onClick=${d(()=>{v()})}>
        ${e("setting.remove")}</button></p>`}
    <//>`}var zt=(o,t)=>(W()[o]?.fields??[]).filter(n=>n.name!=="retired"||t).filter(n=>n.name!=="name"||!t||!Uo.includes(o)).map(n=>o==="test_kit"&&Lo[n.name]?{...n,when:Lo[n.name]}:n),At=(o,t,n)=>({...Rt[o],...t?Tt(t):{},...n?{name:n}:{}}),Mt=(o,t,n)=>Object.fromEntries(o.filter(({name:s,required:i})=>n&&!i&&!(s in t)&&n[s]!==void 0).map(({name:s})=>[s,null])),Tt=o=>{let{entry:t,basis:n}=co(o);return{parameter:o,entry:t,...n?{basis:n}:{},...U[o]?{unit:U[o]}:{}}};function Dt(o,t){let n=se(t);return n?{...o,type:"choice",default:n[0],choices:n.map(s=>({value:s,label:s}))}:o}function Nt(o,t){let[n,s]=[o.parameter,t.parameter];return n===s||t.unit&&t.unit!==U[n]&&![n,s].some(se)?t:{...t,unit:U[s]}}export{Fo as Copy,Ho as Display,Yo as Install,Xo as Invite,it as Join,pt as NeedsYou,$t as People,ht as Person,kt as Room,St as Rooms,Ot as Setting,so as people};
//# sourceMappingURL=room-5O5J3MS4.js.map
