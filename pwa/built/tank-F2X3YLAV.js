import{$ as Eo,Ca as U,Da as j,Fa as Wo,G as To,H as Ut,Ha as Uo,I as ct,L as Ao,M as Lo,N as Do,O as No,P as gt,Pa as Yo,Qa as Ho,Sa as Ko,Xa as Bo,Ya as z,Z as Oo,Za as G,_a as Q,a as vo,aa as ut,b as bo,ba as B,da as Io,fa as qo,k as yo,ka as wt,l as xo,la as tt,ma as ne,oa as Ro,pa as se,q as Mo,qa as Po,r as So,v as Co,va as Fo}from"./chunk-GSGJTTTH.js";import{$ as Xt,$a as rt,Aa as Le,Ab as je,Ac as Xe,Ad as fo,B as we,Bd as _o,C as a,Cc as Ze,Cd as ho,D as R,Da as De,Db as $t,Dd as Ft,E as M,Eb as J,Ec as to,Ed as Wt,Fc as h,Gb as C,Gd as go,H as L,Ha as Ne,Hb as te,Hd as wo,Ia as Oe,Ib as it,Id as x,J as ke,Jb as ft,Kb as _t,Lb as P,Ld as ko,Mb as Dt,Mc as eo,Md as lt,Nb as ze,Nc as oo,Ob as v,Oc as It,P as ve,Pb as Nt,Rb as ht,Sb as F,T as Ct,Va as Ee,Vb as Ot,Vc as ee,Wb as Ge,X as E,Y as nt,Yb as Qe,Z as K,Za as Ie,Zc as oe,_ as be,_a as at,aa as Tt,ac as y,ad as no,b as ot,bc as k,c as yt,ca as ye,d as xt,da as xe,db as qe,dc as W,e as me,ea as At,eb as Re,ec as T,fb as Pe,fd as so,g as O,ga as Me,gb as Fe,h as i,hb as Zt,jb as We,jc as I,jd as ao,kb as Ue,lb as Ye,mb as He,mc as Et,nb as Ke,nc as Ve,oc as Je,od as ro,pa as Lt,pc as D,pd as io,qa as st,qb as dt,qd as lo,ra as Se,sa as Ce,sd as co,ta as Te,td as qt,ua as Ae,ud as uo,vd as Rt,w as ge,wd as Pt,xd as mo,yd as po,zb as Be,zc as A,zd as $o}from"./chunk-VA4ONH74.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-GTWYWVDK.js";import{A as he,B as Z,C as q,D as Jt,E as S,c as Vt,d as Mt,f as pe,l as H,o as St,p as de,t as $e,u as fe,w as _e}from"./chunk-QN3HABRZ.js";import"./chunk-WK7VWSJL.js";function jo(t,{levels:e,limits:o},s){let{tank:r,source:n,label:l,readings:c}=t,u=c.findLast(({parameter:p})=>p==="kh"),m=Ot(t)?.celsius,d={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&dt(u))??r.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:n?.ph,source_kh_dkh:n?.kh_dkh,source_temperature_c:n?.temperature_c??m,source_tan_mg_n_l:Tt(n,"total_ammonia",l),fraction:s};if(Object.values(d).includes(void 0))return null;try{let p=d;return{input:p,answer:S("water_after_change",p)}}catch(p){if(p instanceof H)return null;throw p}}var Sn=14,Cn=["salt","other"];function zo({tank:t,doses:e,now:o},s){let r=new Map;for(let{label:n,at:l}of e){if(n?.basis!=="whole_tank"||!Cn.includes(n.use)||o-Date.parse(l)>Sn*864e5)continue;let c=Tn(n,t.water_l,s);c!==null&&r.set(n.id,{label:n,at:l,amount:c,unit:n.unit})}return[...r.values()]}function Tn({amount:t,per_l:e,unit:o},s,r){let n={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let l=S("bath_dose",{...n,water_l:s,change_fraction:r,every_days:1,days:1}),c=(o==="g"?l.again_g:l.again_ml)??null;return o==="drops"&&c!==null?Math.round(c):c}catch(l){if(!(l instanceof H))throw l;return null}}var An={cold:12,hot:50};function Go({facts:t,litres:e}){let o=je("taps",()=>An),s=Ot(t),r=(n,l)=>i`
    <${Yo} label=${a(`warmth.${n}`)} unit="°C" min=${1} max=${l} value=${o.value[n]}
      on_value=${c=>o.value={...o.value,[n]:c}} />`;return i`
    <details class="more section"><summary>${a("warmth.title")}</summary>
      ${s?i`
        <p class="soft">
          ${s.at?a("warmth.read",{warmth:Nt(s.celsius),when:L(s.at,t.now)}):a("warmth.usual",{warmth:Nt(s.celsius)})}</p>
        ${r("cold",40)}${r("hot",80)}
        <${Ln} mix=${Ge(e,s.celsius,o.value)} />
        <p class="caution small">${Z("water_blend","hot_water")}</p>`:i`<p class="soft">${a("warmth.unknown")}</p>`}
    </details>`}var Ln=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${a("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:Nt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${a("warmth.missed")}</p>`}
  <${B} name="water_blend" input=${t.input} answer=${t.answer} />`;var Dn=.25,Nn=()=>({typed:null});function On({id:t}){let e=T("tank",t),o=z({name:`change.${t}`,first:Nn}),s=yt(null),r=Q(e,"water_change",a("change.title"));if(!e||r)return r;let{facts:n,advice:l}=Et(e),c=En(s,n,l),u=c.act!=="retest"&&c.litres||st(Dn*e.water_l,e.water_l,n.water_unit),m=J("L"),{typed:d,unit:p="L",from_tank:$="",at:_}=o.draft.value,g=d===null?u:Un(m.hold(Number(d),p),e.water_l),w=Ae(e,g),f=w||$?null:Ce(n,g);$&&!y.value.is_ready($)&&y.value.ready($);let V=$?{...n,source:Ie(I.of("reading",$),{from_tank:$,at:_??y.value.now()})}:n,N=g/e.water_l,vt={litres:v(g||0),dose:f?.amount!==void 0?F(f):""},Qt=()=>o.save(()=>{let Y=$?{from_tank:$}:n.source?{source_water:n.source.id}:{},bt=In({tank:t,at:_,litres:g,fraction:N,...Y},f);return{writes:bt,said:a(bt.length>1?"saved.change_dose":"saved.change",vt),to:`/tank/${t}`}});return i`
    <${x} title=${a("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||U(_)}
        onClick=${h(()=>{Qt()})}>${a(f?.amount!==void 0?"change.log_dose":"change.log",vt)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?co(c,k.value):a("change.usual",{litres:v(u)})}</p>
      <${G} form=${o} kind="water_change" />
      <${qn} form=${o} tank=${e} litres=${g} suggested=${u} wrong=${w} />
      ${f&&i`<${Pn} id=${t} dose=${f} />`}
      ${!w&&i`<${Rn} facts=${n} fraction=${N} />`}
      ${!w&&i`<${Wn} facts=${V} advice=${c} fraction=${N} />`}
      ${!w&&i`<${Go} facts=${n} litres=${g} />`}
      <${Fn} id=${t} from_tank=${$}
        on_pick=${Y=>o.set({from_tank:Y})} />
      <${j} at=${_} on_at=${Y=>o.set({at:Y})} />
      ${Yn(f).map(Y=>i`<p class="caution small" key=${Y}>${Y}</p>`)}
    <//>`}function En(t,e,o){let s=[e.readings,e.changes].map(r=>r.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==s&&(t.current={last:s,advice:o}),t.current?.last===s?t.current.advice:o}function In(t,e){let o=A(),s=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:r,amount:n,unit:l}=e,{tank:c,at:u,litres:m}=t,d={at:u,tank:c,label:r.id,what:r.name,amount:n,unit:l,for_litres:m,water_change:o};s.push({type:"put",kind:"dose",id:A(),fields:d})}return s}function qn({form:t,tank:e,litres:o,suggested:s,wrong:r}){let n=O(!1),l=J("L"),{typed:c,unit:u="L"}=t.draft.value,m=Lt(e.water_l,l.unit),d=v(m),p=_=>t.set({typed:_,unit:l.unit}),$=_=>p(String(l.show(Math.min(Math.max(o+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${a("change.litres")}>
      <button class="quiet" type="button" aria-label=${a("change.less",{step:d})}
        onClick=${()=>$(-1)}><${D} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${n.value}
        aria-label=${a("change.type",{litres:v(o||0)})}
        onClick=${h(()=>n.value=!n.value)}>
        <span>${M(l.show(o||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${a("change.more",{step:d})}
        onClick=${()=>$(1)}><${D} name="plus" size=${28} /></button>
    </div>
    ${r?i`<div role="alert"><${ut} spec=${Te(e,a("change.litres"))} error=${r} /></div>`:i`<p class="soft center">${a("change.share",{percent:R(100*o/e.water_l,0)})}</p>`}
    ${n.value&&i`<${Ut} label=${a("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${p} />`}
    ${c!==null&&o!==s&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>p(null))}>${a("change.suggested",{litres:v(s)})}</button></p>`}`}function Rn({facts:t,fraction:e}){let o=zo(t,e);return o.length===0?null:i`
    ${o.map(s=>i`<p key=${s.label.id}>${a("dose.again",{name:s.label.name,when:L(s.at,t.now),dose:F(s)})}</p>`)}
    ${o.some(({label:s})=>s.use==="other")&&i`<p class="caution small">
      ${Z("bath_dose","label_over_all")}</p>`}`}var Pn=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${F(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${a(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_label")}</a></p>`:i`<p class="dose">${a("dose.none")}</p>`,Fn=({id:t,from_tank:e,on_pick:o})=>W("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${a("change.other_tank")}</summary>
    <${Po} tank=${t} value=${e} label=${a("change.out_of")} on_pick=${s=>o(s===e?"":s)} />
    <p class="soft small">${a("change.other_tank_why")}</p>
  </details>`,Wn=({facts:t,advice:e,fraction:o})=>{let s=Object.values(e.levels).flatMap(({parameter:n,now_mg_n_l:l,reading:c})=>l?[{parameter:n,now_mg_n_l:l,basis:K({reading:c})}]:[]),r=jo(t,e,o);return(s.length>0||r)&&i`
    <table class="measured"><caption><h2>${a("change.after")}</h2></caption><tbody>
      ${s.map(({parameter:n,now_mg_n_l:l,basis:c})=>{let u=Tt(t.source,n,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:l,source_mg_l:u,fractions:[o]});return i`<tr key=${n}><th scope="row">${C(n)}</th>
          <td class="figures">${_t(n,l,c)} → <span class="big">
            ${_t(n,m,c)}</span> <span class="unit">
            ${`mg/L ${it(n,c)}`}</span></td></tr>`})}${r&&i`<tr><th scope="row">${C("ph")}</th><td class="figures">${R(r.input.ph,1)} → <span
          class="big">${R(r.answer.ph,1)}</span>${R(r.answer.ph_settled,1)!==R(r.answer.ph,1)&&i`<span class="also">${a("change.ph_settled",{ph:R(r.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${r?.answer.notes.map(n=>i`<p class="caution small" key=${n}>${n}</p>`)}`},Un=(t,e)=>Math.abs(t-e)<1e-6?e:t,Yn=t=>[...q("dilution"),...t?.amount!==void 0?q("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Hn=.25,Kn=1,Bn={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function Qo(t,e){let o=s=>e.findLastIndex(r=>r.label?.id===s.id);return[...t].sort((s,r)=>o(r)-o(s)||s.name.localeCompare(r.name))}var Vo=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??st(Hn*t.water_l,t.water_l);function Yt(t,e){let o=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),s=Jt(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(s)):s,unit:t.unit}}function Jo(t,e,o){let s={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},r=S("starter_dose",s),n=o===void 0;return{input:s,answer:r,amount:n?r.ammonium_chloride_g:Jt(r,"household_ammonia_ml"),unit:n?"g":"ml",tan_mg_n_l:r.tan_mg_n_l}}function ae(t,e=[]){let{water_l:o,feed_g_day:s=0,protein_fraction:r=0}=t,n=So(t,e);return s<=0&&n>0?S("starter_dose",Mo(o,n).input).tan_mg_n_l:s<=0||r<=0?Kn:S("starter_dose",{volume_l:o,feed_g_day:s,protein_fraction:r}).tan_mg_n_l}var Xo=t=>t.reduce((e,{change:o,count:s})=>e+(Bn[o]??0)*(s??0),0)>0;function Zo(t,e,{system:o,marks:s}){let r=St().salt_dose,{volume_l:n,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=Co(r,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:o,marks:s});if(!("answer"in c))return null;let u=c.payload,m=c.answer;return{what:he(fe("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Ht="salt",Kt="ammonia",jn=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function zn({id:t}){let e=T("tank",t),o=z({name:`dose.${t}`,first:jn}),s=Q(e,"dose",a("dosing.title"));if(!e||s)return s;let{changes:r,doses:n}=at(I,e,k.value),l=Qo(W("label"),n),c=Zo(e,Be("bench.salt_dose",()=>({})).value,{system:$t.value,marks:ge(we())}),u=Xo(Le(W("stock_change"),t)),{way:m,at:d}=o.draft.value,p=l.find(f=>f.id===m),$=Qn(o.draft.value,{tank:e,label:p,salt:c,animals:u,changes:r}),{fields:_}=$,g=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:A(),fields:{tank:t,at:d,..._}}],said:a("dosing.saved",{dose:F(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),w=_&&i`<button class="main" type="button" disabled=${U(d)} onClick=${h(()=>{g()})}>
      ${a("dosing.log",{dose:F(_)})}</button>`;return i`
    <${x} title=${a("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${Jn} dose=${n.at(-1)} />
      <${G} form=${o} kind="dose" />
      <${Gn} tank=${t} form=${o} labels=${l} salt=${c} />
      ${p&&i`<${Xn} form=${o} tank=${e} label=${p} dose=${$}
        litres=${tn(o.draft.value,e,p,r)} />`}
      ${m===Ht&&c&&i`<${re} dose=${$}
        said=${a("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Kt&&i`<${Zn} tank=${e} form=${o} dose=${$} animals=${u} />`}
      ${_&&i`<${j} at=${d} on_at=${f=>o.set({at:f})} />`}
      ${ts(m,p).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Gn({tank:t,form:e,labels:o,salt:s}){let r=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${h(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,n=({amount:l,unit:c,per_l:u})=>a("label.line",{amount:M(l),unit:a(`unit.${c}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${a("dosing.what")}>
      ${o.map(l=>r(l.id,l.name,n(l)))}
      ${s&&r(Ht,s.what,a("dosing.from_bench"))}
      ${r(Kt,a("dosing.ammonia"),a("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${y.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${D}
        name="plus" size=${20} />${a("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${a("dosing.work_out_salt")}</a>
    </div>`}function Qn(t,{tank:e,label:o,salt:s,animals:r,changes:n}){try{if(o){let l=tn(t,e,o,n);return{fields:{...Yt(o,l),label:o.id,what:o.name,for_litres:l}}}if(t.way===Ht&&s){let{what:l,what_code:c,amount:u,unit:m,input:d,answer:p}=s;return{fields:{what:l,what_code:c,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:d,answer:p}}return t.way===Kt&&!r?Vn(t,e):{}}catch(l){if(!(l instanceof H))throw l;return{errors:l.errors}}}function Vn(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:s,unit:r,tan_mg_n_l:n,input:l,answer:c}=Jo(e,en(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:no(u),what_code:u,amount:s,unit:r,tan_mg_n_l:n,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var tn=({litres:t},e,o,s)=>t===null?Vo(e,o,s):At(Number(t.text),t.unit,"L"),en=({tan:t},e)=>t===null?ae(e,W("own_species")):Number(t),Jn=({dose:t})=>i`<p class="soft">
    ${t?a("dosing.last",{dose:F(t),what:so(t),when:L(t.at,k.value)}):a("dosing.never")}</p>`;function Xn({form:t,tank:e,label:o,litres:s,dose:r}){let n=ye({name:"",unit:"L"},$t.value),l=t.draft.value.litres,c=Zt(At(Lt(e.water_l),"L",n));return i`
    <section class="section"><h2>${a("dosing.for_water")}</h2>
      <${ct} label=${a("dosing.for_water")} unit=${xe(n)} value=${At(s,"L",n)}
        typed=${l&&l.unit===n?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:n}})} />
      <${re} dose=${r} said=${a(`dose.basis_${o.basis}`)} />
    </section>`}function Zn({tank:t,form:e,dose:o,animals:s}){if(s)return i`<p class="wrong section" role="status"><${D} name="needs" /><span>${a("dosing.animals_here")}</span>
      </p>`;let{tan:r,household:n,percent:l}=e.draft.value,c=en(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${a("dosing.wanted")}</h2>
      <${ct} label=${a("dosing.wanted")} unit="mg N/L" value=${c} typed=${r}
        step=${Zt(Math.max(ae(t,W("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${a("dosing.with")}>
      <button type="button" aria-pressed=${!n} onClick=${u(!1)}>${a("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${n} onClick=${u(!0)}>${a("dosing.household_ammonia")}
        </button>
    </div>
    ${n&&i`<section class="section"><h2>${a("dosing.strength")}</h2>
      <${ct} label=${a("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${a("dosing.no_strength")}</p>`}</section>`}
    <${re} dose=${o} said=${a("dosing.gives",{tan:Dt(c||0),litres:v(t.water_l)})}
      />`}var re=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${ut} key=${o.field} error=${o}
    spec=${{label:a("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${F(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${B} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function ts(t,e){return t===Ht?q("salt_dose"):t===Kt?q("starter_dose"):[a("dosing.label_first"),...e?.use==="dechlorinator"?q("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function es({place:t}){let e=O(""),o=O([]);if(!y.value.may("dose"))return i`<${Bo} title=${a("group_dose.title")} up="/" />`;let s=rt(I).filter(m=>(m.place?.trim()??"")===t),r=W("label").filter(({basis:m})=>m==="whole_tank"),n=r.find(({id:m})=>m===e.value)??(r.length===1?r[0]:null),l=n?s.flatMap(m=>os(m,n)):[],c=l.filter(({tank:m})=>!o.value.includes(m.id)),u=m=>o.value=o.value.includes(m)?o.value.filter(d=>d!==m):[...o.value,m];return i`
    <${x} title=${a("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||a("many.no_place")}</span>`}
      act=${n&&i`<button class="main" type="button" disabled=${c.length===0}
        onClick=${h(()=>{ns(n,c)})}>${a("group_dose.log",{count:c.length})}</button>`}>
      ${r.length===0?i`<p class="sentence">${a("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${a("water.new_label")}</a></p>`:i`<section class="section"><h2>${a("group_dose.which")}</h2><div class="tiles two short">${r.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===n?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${n&&i`<section class="section"><h2>${a("group_dose.tanks")}</h2><div class="tiles two short">${l.map(({tank:m,amount:d,unit:p})=>i`<button key=${m.id} type="button"
          aria-pressed=${!o.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${F({amount:d,unit:p})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${a("dosing.label_first")}</p>`}
    <//>`}function os(t,e){try{return[{tank:t,...Yt(e,t.water_l)}]}catch(o){if(o instanceof H)return[];throw o}}async function ns(t,e){let o=y.value.now(),s=e.map(({tank:{id:r,water_l:n},amount:l,unit:c})=>({type:"put",kind:"dose",id:A(),fields:{tank:r,at:o,label:t.id,what:t.name,amount:l,unit:c,for_litres:n}}));await Xe(s,a("group_dose.saved",{count:s.length,label:t.name}))&&Wt("/",{replace:!0})}var nn=["food","protein_fraction"],ss=()=>({typed:null,food:null,own:{},at:void 0});function as({id:t}){let e=T("tank",t),o=z({name:`feed.${t}`,first:ss}),s=Q(e,"feeding",a("feed.title"));if(!e||s)return s;let r=at(I,e,k.value),{feedings:n}=r,l=Ue(r),c=We(e,n,l?.answer.usual_g_day),u=He(W("feeding")),{typed:m,at:d}=o.draft.value,p=m===null?c.feed_g:Number(m),$=cs(o.draft.value,u,c),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:A(),fields:{tank:t,at:d,feed_g:f,...f>0?$:{}}}],said:f>0?a("feed.saved",{amount:ht(f),tank:e.name}):a("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),g=i`
    <button class="quiet tall" type="button" disabled=${U(d)} onClick=${h(()=>{_(0)})}>
      ${a(d?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(p>0)||U(d)}
      onClick=${h(()=>{_(p)})}>${a("feed.log",{amount:ht(p||0)})}</button>`,w=m===null||p===c.feed_g?c.from:"keeper";return i`
    <${x} title=${a("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${us} feedings=${n} />
      <${ct} label=${a("feed.grams")} unit="g" value=${p} typed=${m} step=${Ye(c.feed_g)}
        least=${.01} most=${_e("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${a(`feed.from_${w}`,{usual:ht(c.feed_g)})}</p>
      ${l&&i`<${rs} answer=${l.answer} feed_g=${p} />`}
      <${G} form=${o} kind="feeding" beside=${o.draft.value.food===""?nn:[]} />
      <${ls} form=${o} known=${u} given=${$} />
      <${j} at=${d} on_at=${f=>o.set({at:f})} />
      <${ms} tank=${e} facts=${r} feed_g=${p} protein_fraction=${$.protein_fraction} />
      <${is} ration=${l} />
      ${q("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var rs=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>i`
  <p class=${o>e?"wrong":"soft small center"}>
    ${a("feed.ration",{usual:on(t),most:on(e)})}</p>`,is=({ration:t})=>t&&i`<section class="section"><h2>${a("feed.ration_why")}</h2>
    <${B} name="feed_ration" ...${t} /></section>`,on=t=>`${M(t,t<1?2:1)}\xA0g`,sn=()=>nn.map(t=>$e(de().feeding.fields,t));function ls({form:t,known:e,given:o}){let{food:s,own:r}=t.draft.value;return i`
    <section class="section"><h2>${a("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${a("feed.food")}>
        ${e.map(({food:n,protein_fraction:l})=>i`
          <button type="button" key=${n} aria-pressed=${o.food===n}
            onClick=${h(()=>t.set({food:n}))}>
            <b>${n}</b>${l!==void 0&&i`<span class="soft small">
              ${a("feed.protein",{percent:R(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${s===""} onClick=${h(()=>t.set({food:""}))}><${D}
          name="plus" />${a("feed.other")}</button>
      </div>
      ${s===""&&i`<div class="section"><${Eo} specs=${sn()} raw=${r} errors=${t.errors.value} tried=${!0}
        on_raw=${n=>t.set({own:n})} /></div>`}
    </section>`}function cs({food:t,own:e},o,s){if(t==="")return Oo(sn(),e);let r=o.find(u=>u.food===t),{feed_g:n,from:l,...c}=s;return t!==null&&r?{...r}:c}function us({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${a("feed.never")}</p>`;let o={when:L(e.at,k.value),amount:ht(e.feed_g),food:e.food??""};return i`<p class="soft">${a(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function ms({tank:t,facts:e,feed_g:o,protein_fraction:s}){if(o===0)return null;let r=K({reading:e.readings.findLast(({parameter:n})=>n==="total_ammonia")??null});try{let{input:n,answer:l,assumed:c}=Ke(t,o,s),u={mg:M(l.tan_mg_n_day,1),rise:`${P("total_ammonia",l.tan_mg_n_l_day,r)} ${it("total_ammonia",r)}`,percent:R(100*n.protein_fraction,0)};return i`
      <section class="section"><h2>${a("feed.becomes")}</h2>
        <p>${a("feed.nitrogen",u)}${c&&i` ${a("feed.assumed",u)}`}</p>
        <${B} name="nitrogen_load" input=${n} answer=${l} />
      </section>`}catch(n){if(!(n instanceof H))throw n;return null}}var an=28,rn=14,ps=90,ds=3,$s=21,fs=.3,_s=60,hs=[7,3,1],gs=1;function Bt(t){let e=ws(t),o=ks(t);return{routine:e,young:ln(t)<rn,nitrate:o&&xs(t,e,o),kh:o&&Ms(t,e,o.rise.usual)}}function ln({tank:t,now:e,changes:o,readings:s}){let r=[t.started_at,o[0]?.at,s[0]?.at].flatMap(n=>n?[Date.parse(n)]:[]);return r.length?(e-Math.min(...r))/864e5:0}function ws(t){let e=Math.min(an,ln(t)),o=t.changes.filter(({at:n})=>ie(n,t.now,an));if(o.length===0||e<rn)return null;let r=1-o.reduce((n,{fraction:l})=>n*(1-Math.min(l,.95)),1)**(1/o.length);return r<.01?null:{count:o.length,litres:r*t.tank.water_l,fraction:r,every_days:e/o.length}}function ks(t){let e=vs(t);if(e)return{from:"readings",rise:e};let{feed_g_day:o,fish_g:s,protein_fraction:r,volume_l:n}=Qe(t).records.tank,{feed_of_fish:l,protein_fraction:c}=Mt(),u=o??(s===void 0?void 0:s*l);if(!u)return null;let d=S("nitrogen_load",{feed_g_day:u,protein_fraction:r??c,volume_l:n}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:d,high:d}}}function vs(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&ie(u.at,t.now,ps)&&Xt(u)&&!ys(u)),[o,s]=[e[0],e.at(-1)];if(!s||e.length<ds||Date.parse(s.at)-Date.parse(o.at)<$s*864e5)return null;let r=0,n=0;for(let u=1;u<e.length;u++){let m=bs(t,e[u-1],e[u]);r+=nt(e[u])-m.left,n+=m.days}if(n<=0)return null;let l=fs*Math.hypot(nt(o),nt(s))/n,c=r/n;return{low:Math.max(0,c-l),usual:Math.max(0,c),high:Math.max(0,c+l)}}function bs({changes:t},e,o){let s=nt(e),r=0,n=Date.parse(e.at);for(let{at:l,fraction:c,source:u}of t)l<=e.at||l>o.at||(r=(r+(Date.parse(l)-n)/864e5)*(1-c),s=s*(1-c)+c*(u?.nitrate_mg_n_l??0),n=Date.parse(l));return{left:s,days:r+(Date.parse(o.at)-n)/864e5}}var ys=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function xs(t,e,{from:o,rise:s}){let r=Fe(t).nitrate.mg_n_l,n=t.source?.nitrate_mg_n_l??0,l=t.readings.findLast(d=>d.parameter==="nitrate"&&Xt(d)),c=d=>{if(!e)return null;let p={add_mg_l_day:d,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:n,ceiling_mg_l:r};return{input:p,answer:S("steady_routine",p)}},u=d=>c(d)?.answer.before_change_mg_l??0,m=c(s.usual);return{from:o,rise_mg_n_l_day:s,limit_mg_n_l:r,settles_mg_n_l:m&&{low:u(s.low),usual:u(s.usual),high:u(s.high)},worked:m,days_to_limit:e||s.usual<=0?null:Math.max(0,r-(l?nt(l):0))/s.usual,least:cn(t,e,d=>s.usual<=0?void 0:S("steady_routine",{add_mg_l_day:s.usual,change_fraction:.5,every_days:d,source_mg_l:n,ceiling_mg_l:r}).fraction_needed),source_over:n>=r}}function Ms(t,e,o){let s=t.readings.findLast(d=>d.parameter==="kh"&&ie(d.at,t.now,_s)&&dt(d)!==void 0),r=s?dt(s):t.tank.kh_dkh;if(r===void 0||r>60)return null;let n=t.source?.kh_dkh,l={kh_dkh:r,nitrogen_mg_n_l_day:Math.min(o,100),floor_kh_dkh:gs},c=d=>S("alkalinity_use",{...l,source_kh_dkh:n,change_fraction:.5,every_days:d}).fraction_needed,u=e&&n!==void 0?{...l,source_kh_dkh:n,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:l,m=S("alkalinity_use",u);return{now_dkh:r,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:n===void 0||o<=0?null:cn(t,e,c),source_known:n!==void 0,worked:{input:u,answer:m}}}function cn(t,e,o){let{water_l:s}=t.tank,r=Se(t,{unhurried:!0}),n=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let l of[...n,...hs]){let c=o(l);if(!(typeof c!="number"||c*s>r))return{litres:st(c*s,s,t.water_unit,r),every_days:l}}return null}var ie=(t,e,o)=>Date.parse(t)<=e&&e-Date.parse(t)<=o*864e5;var le=365;function jt({nitrate:t,young:e},o){if(e)return a("long_run.young");if(!t)return a("long_run.no_load");let s=P("nitrate",t.limit_mg_n_l,o);if(t.source_over)return a("long_run.source_over",{limit:s});if(t.rise_mg_n_l_day.usual<=0)return a("long_run.no_rise");if(!t.settles_mg_n_l)return Ss(t,s);let{settles_mg_n_l:r}=t,n=t.from==="food"?P("nitrate",r.high,o):Cs(r,o),l=t.from==="food"?"at_most":"settles",c=r.high<=t.limit_mg_n_l?"under":r.low>t.limit_mg_n_l?"over":"perhaps";return a(`long_run.${l}_${t.from==="food"&&c!=="under"?"perhaps":c}`,{level:n,limit:s})}function Ss({days_to_limit:t},e){let o=Math.round(t??1/0);return o>le?a("long_run.no_changes_far",{limit:e}):a(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var Cs=({low:t,high:e},o)=>a("outlook.between",{low:_t("nitrate",t,o),high:P("nitrate",e,o)});function Ts({id:t}){let e=T("tank",t);if(!e)return i`<${lt} up="/" />`;let o=at(I,e,k.value),s=Bt(o),r=o.readings.findLast(({parameter:l})=>l==="nitrate"),n=K(r&&{reading:r});return i`
    <${x} title=${a("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${a("long_run.title")}>
        <${As} id=${t} found=${s} basis=${n} />
      </section>
      <section class="section"><h2>${a("long_run.kh")}</h2><${Ds} id=${t} found=${s} /></section>
    <//>`}function As({id:t,found:e,basis:o}){let{nitrate:s,routine:r,young:n}=e,l=s?.settles_mg_n_l&&s.settles_mg_n_l.high>s.limit_mg_n_l;return i`
    <p class="sentence">${jt(e,o)}</p>
    <p>${Ls(e)}</p>
    ${s&&!n&&i`
      <${un} id=${t} least=${s.least} routine=${r} />
      <p class="soft small">${s.from==="food"?a("long_run.from_food"):a("long_run.from_readings",{rise:P("nitrate",s.rise_mg_n_l_day.usual*7,o)})}</p>
      ${l&&i`<p class="caution small">${Z("steady_routine","slowly")}</p>`}
      ${s.worked&&i`<${B} name="steady_routine" ...${s.worked} />`}`}`}var Ls=({routine:t,young:e})=>t?a("long_run.routine",{count:t.count,litres:v(t.litres),days:M(t.every_days,t.every_days<10?1:0)}):e?"":a("long_run.no_routine");function un({id:t,least:e,routine:o}){if(!e)return null;let{litres:s,every_days:r}=e,n=o&&o.litres/o.every_days>=s/r;return i`
    <p>${a(n?"long_run.least_held":"long_run.least",{litres:v(s),count:r})}</p>
    ${y.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${r}&title=${encodeURIComponent(a("long_run.task",{litres:v(s)}))}`}>${a("long_run.make_task")}</a></p>`}`}function Ds({id:t,found:{kh:e,nitrate:o,routine:s}}){if(!e)return i`<p>${a(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let r=M(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${Ns(e)}</p>
    <p>${a("long_run.kh_falls",{fall:r,now:M(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${a("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${un} id=${t} least=${e.least} routine=${s} />
      <p class="caution small">${Z("alkalinity_use","kh_floor")}</p>`}
    <${B} name="alkalinity_use" ...${e.worked} />`}function Ns({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=le?a("long_run.kh_gone",{count:Math.round(t)}):e===null?a("long_run.kh_far"):a("long_run.kh_settles",{level:M(e,1)})}var Os=["at_surface","hiding"],ce=5e3,zt=To(),Es=()=>({picked:[],text:"",at:void 0});function Is({id:t}){let e=T("tank",t),o=`note.${t}`,s=z({name:o,first:Es}),{photos:r,busy:n,problem:l,add:c,drop:u}=qs(o),m=Q(e,"note",a("note.title"));if(!e||m)return m;let{picked:d,text:p,at:$}=s.draft.value,_=ee.filter(N=>d.includes(N)),g=[..._.map(oe),p.trim()].filter(Boolean).join(`
`),w=()=>s.save(()=>{let N={tank:t,at:$??y.value.now(),entry:A()},vt={...N,text:g.slice(0,ce),..._.length?{quick:_}:{}};return{writes:g?[{type:"put",kind:"note",id:A(),fields:vt}]:[],pictures:r.map(({picture:Qt,width:Y,height:bt})=>({picture:Qt,id:A(),fields:{...N,width:Y,height:bt}})),said:a("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>zt.forget(o).catch(()=>{})}}),f=(g||r.length>0)&&!n&&g.length<=ce&&!U($),V=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{w()})}>
    ${r.length?a("note.save_photos",{count:r.length}):a("note.save")}</button>`;return i`
    <${x} title=${a("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${V}>
      <${Rs} id=${t} picked=${d} on_pick=${N=>s.set({picked:N})} />
      <div class="field section"><label for="note-text">${a("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${ce} value=${p}
          onInput=${It(N=>s.set({text:N}))}></textarea></div>
      <section class="section"><h2>${a("note.photos")}</h2>
        <${Ps} photos=${r} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${D} name="camera" />${a("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${a("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${n&&i`<p class="soft" role="status">${a("note.shrinking")}</p>`}
        <${Fo} text=${l} />
        <${G} form=${s} kind="note" />
        <p class="soft small">${a("note.photo_size")}</p>
      </section>
      <${j} at=${$} on_at=${N=>s.set({at:N})} />
    <//>`}function qs(t){let e=O([]),o=O(0),s=O(""),r=async()=>{e.value=await zt.list(t)};ot(()=>{r().catch(()=>s.value=a("note.photos_not_kept"))},[t]);let n=async u=>{o.value+=1;try{await zt.add(t,await Ko(u)),await r()}catch(m){let d=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";s.value=a(d,{file:u.name})}finally{o.value-=1}},l=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",s.value="";for(let d of m)await n(d)},c=async u=>{let m=await zt.remove(u);await r(),Ze(a("note.photo_dropped"),async()=>{await m(),await r()})};return{photos:e.value,busy:o.value>0,problem:s.value,add:l,drop:c}}function Rs({id:t,picked:e,on_pick:o}){let s=r=>o(e.includes(r)?e.filter(n=>n!==r):[...e,r]);return i`
    <div class="tiles two short" role="group" aria-label=${a("note.quick")}>
      ${ee.map(r=>i`<button type="button" key=${r} aria-pressed=${e.includes(r)}
        onClick=${h(()=>s(r))}>${oe(r)}</button>`)}
    </div>
    ${e.some(r=>Os.includes(r))&&i`
      <div class="caution" role="status"><p>${a(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${a("test.do")}</a></div>`}`}var Ps=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:s},r)=>{let n=a("photo.numbered",{at:r+1});return i`
    <li key=${o}><${Wo} picture=${s} said=${n} />
      <button class="quiet square" type="button" aria-label=${a("remove_named",{what:n})}
        onClick=${h(()=>{e(o)})}><${D} name="remove" size=${20} /></button></li>`})}</ul>`;function pn(t,e,o,s,r,n){let{start:l,records:c}=o,u=f=>l+f*36e5,m=u(c.now_h),d=Math.max(m-n*24*36e5,Math.min(l,m-48*36e5)),p=s?.doubts??[],$=c.readings.filter(f=>f.parameter===t&&u(f.at_h)>=d).map(f=>({at:u(f.at_h),...Fs(f),doubted:p.some(V=>V.parameter===t&&V.at_h===f.at_h)})),g=E(t)&&(t!=="nitrate"||o.nitrate_known)?(s?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(f=>mn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>mn(f.at,"change",f.litres))].filter(({at:f})=>f>=d&&f<=m).sort((f,V)=>f.at-V.at);return{parameter:t,dots:$,fan:g,marks:w,limit:E(t)?r[t]:null,from:d,now:m,to:g.at(-1)?.at??m}}var mn=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function Fs(t){if(!E(t.parameter)){let[c,u]=t.steps?.length?Vt(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:o}=pe(t),s=Mt(),r=t.parameter==="nitrate"?"nitrate":"reading",[n,l]=Vt(e,o,s[`${r}_offset`],s[`${r}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:n===null?null:Math.max(n,0),high:l}}function dn(t,e){let o=s=>s===null?null:e(s);return{...t,dots:t.dots.map(s=>({...s,value:e(s.value),low:o(s.low),high:o(s.high)})),fan:t.fan.map(({at:s,p10:r,p50:n,p90:l})=>({at:s,p10:e(r),p50:e(n),p90:e(l)})),line:t.limit&&e(t.limit.mg_n_l)}}function $n({parameter:t,dots:e,fan:o,line:s}){let r=[...e.flatMap(({value:u,low:m,high:d})=>[u,m??u,d??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...s===null?[]:[s]],n=Math.max(...r);if(E(t))return[0,n>0?n*1.12:1];let l=Math.min(...r),c=Math.max((n-l)*.2,.5);return[l-c,n+c]}var fn=({doubted:t})=>i`
  <ul class="chart-key" aria-hidden="true">
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor" stroke-width="2" />
      <circle cx="9" cy="12" r="5" fill="currentColor" /></svg>${a("key.reading")}</li>
    ${t&&i`<li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor"
      stroke-width="2" /><circle class="hollow" cx="9" cy="12" r="5" stroke="currentColor" stroke-width="2" /></svg>
      ${a("key.doubted")}</li>`}
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="fan" d="M0 8 30 1v22L0 16z" /><path class="middle"
      d="M0 12h30" /></svg>${a("key.fan")}</li>
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="limit" d="M0 12h30" /></svg>${a("key.limit")}</li>
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M3 4h12l-2 9H5z" fill="currentColor" /><path
      d="M9 13v11" stroke="currentColor" stroke-dasharray="2 3" /></svg>${a("key.change")}</li>
    <li><svg width="8" height="24" viewBox="0 0 8 24"><path d="M4 0v24" stroke="currentColor" stroke-width="1.5" />
      </svg>${a("key.now")}</li>
    <li><svg width="10" height="24" viewBox="0 0 10 24"><path d="M5 14v8" stroke="currentColor" stroke-width="1.5" />
      </svg>${a("key.feeding")}</li>
  </ul>`,_n=({ready:{code:t,from:e,likely:o,to:s}})=>{let r=n=>n===void 0?"":ke(n);return i`
    <section class="section"><h2>${a("ready.title")}</h2>
      <p class="sentence">${a(`ready.${t}`,{from:r(e),likely:r(o),to:r(s)})}</p>
      <p class="soft small">${a("ready.means")}</p>
    </section>`};function hn({weeks:t,expected:e}){let[o]=t;return i`
    <details class="more section"><summary>${a("carry.title")}</summary>
      <p>
        ${a("carry.now",{low:mt(o.feed_g_day.p10),high:mt(o.feed_g_day.p90),expected:mt(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${a("carry.when")}</th><th scope="col" class="right">${a("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:s,feed_g_day:r})=>i`
          <tr key=${s}><th scope="row">${a(`carry.in_${s}`)}</th>
            <td>${mt(r.p50)}<span class="also">
              ${a("outlook.between",{low:mt(r.p10),high:mt(r.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${St().stock_headroom.uncertainty}</p>
    </details>`}var gn=()=>{let t=[...q("outlook"),...q("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},mt=t=>`${M(t,t<1?2:1)} g`;var Ws=86400,Us=["p10","p50","p90"];function wn({lines:t}){let e=yt(null);return ot(()=>Do(e.current,()=>Hs(t),Ys(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var Ys=({fan:t,from:e,now:o})=>{let s=t.length?t:[{at:o,p10:null,p50:null,p90:null}],n=[{at:e,p10:null,p50:null,p90:null},...s];return[n.map(({at:l})=>l/1e3),...Us.map(l=>n.map(c=>c[l]))]};function Hs(t){let{from:e,now:o,to:s}=t,[r,n]=$n(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,s/1e3+(s>o?0:Ws/2)]},y:{range:[r,n]}},series:[{},l,{stroke:()=>gt("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>gt("--fan")}],axes:No(),hooks:{drawAxes:[c=>Ao(c,t,gt)],draw:[c=>Lo(c,t,gt)]}}}var Gt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Ks=6;function kn({lines:t,basis:e,next:o,as_table:s,now:r}){let{parameter:n}=t,l=Qs(n,e),c=xt(()=>dn(t,Vs(n,e)),[t,e,$t.value]),u=`of-${n}`;return i`
    <section class="parameter" aria-labelledby=${u}>
      <h2 id=${u}>${C(n)} <span class="unit">${l}</span></h2>
      ${o&&n in Gt&&i`<${Bs} lines=${t} basis=${e}
        chance=${o.pass_chance[Gt[n]]}
          standing=${o.now[`${n}_mg_n_l`]} />`}
      ${!s&&i`<${wn} lines=${c} />`}
      <div class=${s?"":"unseen"}><${js} lines=${c} unit=${l} now=${r} /></div>
    </section>`}function Bs({lines:t,basis:e,chance:o,standing:s}){let{parameter:r,limit:n,fan:l}=t;if(!n||l.length===0)return null;let c=l.at(-1),u=c&&c.p90-c.p10>n.mg_n_l,m={chance:lo(o)},d=s.p50>n.mg_n_l?a("outlook.perhaps_over",m):a("outlook.chance",m),p=s.p10>n.mg_n_l?a("outlook.over"):d;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${a("outlook.limit",{limit:P(r,n.mg_n_l,e),by:a(`limit.${n.by}`)})} ${u&&a("outlook.wide")}</p>`}function js({lines:t,unit:e,now:o}){let{parameter:s,fan:r,dots:n,marks:l}=t,c=p=>Gs(s,p),u=Math.max(1,Math.round((r.length-1)/Ks)),m=[...n.map(p=>({at:p.at,what:a(p.doubted?"outlook.read_doubted":"outlook.read"),value:c(p.value),span:zs(p,c)})),...l.filter(({kind:p})=>p==="change").map(({at:p,said:$})=>({at:p,what:a("history.changed",{litres:v($)}),value:"",span:""}))].sort((p,$)=>$.at-p.at),d=l.filter(({kind:p})=>p==="feeding");return i`
    ${d.length>0&&i`<p class="soft small">${a("outlook.fed",{count:d.length,grams:M(d.reduce((p,{said:$})=>p+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${C(s)} ${e}</caption>
      ${r.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.likely")}</th></tr>
          ${r.filter((p,$)=>$%u===0).map(({at:p,p10:$,p50:_,p90:g})=>i`
            <tr key=${p}><th scope="row">${L(p,o)}</th><td>${c(_)} <span class="also">
              ${a("outlook.between",{low:c($),high:c(g)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.so_far")}</th></tr>
        ${m.map(({at:p,what:$,value:_,span:g},w)=>i`
          <tr key=${`${p}-${w}`}><th scope="row">${L(p,o)}<span class="also">${$}</span></th><td>${_}
            ${g&&i` <span class="also">${g}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function zs({low:t,high:e},o){return t===e?"":t===null?a("outlook.up_to",{high:o(e)}):e===null?a("outlook.from",{low:o(t)}):a("outlook.between",{low:o(t),high:o(e)})}var Gs=(t,e)=>E(t)?Dt(e):R(e,1),Qs=(t,e)=>E(t)?ze(t,e):t==="temperature"?J("\xB0C").label:"",Vs=(t,e)=>E(t)?be(t,e):t==="temperature"?J("\xB0C").show:o=>o;var Js=["total_ammonia","nitrite","nitrate","ph","temperature"],vn=[2,6],Xs=["doubt","prior","few","rule_working","rule_failed"];function Zs({id:t}){let e=T("tank",t);return e?i`<${ta} tank=${e} />`:i`<${lt} up="/" />`}function ta({tank:t}){let e=O(vn[0]),o=O(!1),{facts:s,asked:r,forecast:n,advice:l}=Je(t),{ahead:c,next:u,headroom:m}=n.answers,d=$=>u?.pass_chance[Gt[$]]??-1,p=xt(()=>[...Js].sort(($,_)=>d(_)-d($)).map($=>pn($,s,r,c,l.limits,7*e.value)).filter(({dots:$,fan:_})=>$.length+_.length>0),[r,c,u,e.value]);return i`
    <${x} title=${a("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${a("tank.now")}>
        <${Rt} advice=${l} now=${k.value} />
        <${qt} advice=${l} now=${k.value} />
        <${Pt} advice=${{...l,reasons:l.reasons.filter(({code:$})=>Xs.includes($))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${a("outlook.how")}>
        ${vn.map($=>i`<button key=${$} class="quiet" type="button"
          aria-pressed=${e.value===$} onClick=${h(()=>e.value=$)}>
          ${a("outlook.weeks",{count:$})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${a("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${p.map($=>i`<${kn} key=${$.parameter} lines=${$} next=${u} as_table=${o.value}
        basis=${K(E($.parameter)?l.levels[$.parameter]:void 0)}
        now=${k.value} />`)}</div>
      ${!o.value&&i`<${fn} doubted=${p.some(({dots:$})=>$.some(_=>_.doubted))} />`}
      ${c&&i`<${_n} ready=${vo(c.settled_h,r.records.now_h,r.start)} />`}
      <${qo} tank=${t} />
      ${m&&i`<${hn} weeks=${bo(m)} expected=${m.feed_g_day_expected} />`}
      <${gn} />
    <//>`}var ea="(min-width: 900px)",ue=me(!1),bn=globalThis.matchMedia?.(ea),yn=()=>ue.value=bn?.matches??!1;yn();bn?.addEventListener?.("change",yn);function xn({here:t}){if(!ue.value)return null;let e=rt(I);if(e.length<2)return null;let o=$o(e);return i`
    <nav class="tank-list" aria-label=${a("place.tanks")} ref=${na}>
      ${e.length>qe?i`<${oa} ones=${o} here=${t} />`:i`<${Ft} ones=${o} here=${t} />`}</nav>`}function oa({ones:t,here:e}){let o=O(""),s=mo.value==="first",r=t.map(({tank:c})=>c),n=new Map(t.map(c=>[c.tank.id,c])),l=Pe(r,o.value).flatMap(({tank:c})=>n.get(c.id)??[]);return i`
    <div class="field"><label for="list-find">${a("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${It(c=>o.value=c)} /></div>
    ${o.value.trim()?i`<${_o} ones=${l} words=${o.value.trim()} here=${e} />`:i`<${fo} />
      ${s&&i`<${Ft} ones=${t.filter(c=>c.wants)} here=${e} />`}
      ${Re(r).map(c=>{let u=c.tanks.flatMap(({id:p})=>n.get(p)??[]),m=u.filter(p=>!(s&&p.wants)),d=po.value.includes(c.place)||m.some(({tank:p})=>p.id===e);return i`<section class="group" key=${c.place}>
          <${ho} place=${c.place} ones=${u} open=${d} />
          ${d&&i`<${Ft} ones=${m} here=${e} />`}</section>`})}`}`}function na(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var sa=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function aa({id:t}){let e=T("tank",t);return e?Oe(e)?i`<${ko} tank=${Ee(e)} />`:i`<${ra} key=${t} tank=${e} />`:i`<${lt} up="/" why="labels.stranger" />`}function ra({tank:t}){let{id:e}=t,{facts:o,advice:s}=Et(t),r=oo(`tank ${e}`,eo(s));return i`
    <div class="desk"><${xn} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${ia} id=${e} advice=${s} />`}>
      <section class="room-taken" ref=${r} aria-label=${a("tank.now")}>
        <div class="row apart held"><div><${Rt} advice=${s} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${a("incident.title")}</a></div>
        <${qt} advice=${s} now=${k.value} />
        <${uo} advice=${s} now=${k.value} />
        <${Pt} advice=${s} now=${k.value} />
      </section>
      <${ro} tank=${e} label=${a("tasks.today")} />
      <${ca} tank=${t} />
      <${ua} facts=${o} advice=${s} />
      <${la} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${a("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${a("long_run.title")}<br /><span class="soft small">
            ${jt(Bt(o),K(s.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${a("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${a("stock.title")}<br /><span class="soft small">
            ${ma(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${a("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${a("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${a("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${a("tasks.title")}<br /><span class="soft small">
            ${da(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${a("water.title")}<br /><span class="soft small">
            ${pa(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${a("labels.title_one")}</a></li>
          ${y.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${a("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var ia=({id:t,advice:e})=>{let o=io(t),s=o?"next":e.act==="change"?"change":"test",r=n=>s===n?"main even":"quiet tall even";return i`
    ${y.value.may("reading")&&i`<a class=${r("test")} href=${`/tank/${t}/test`}>${a("test.do")}</a>`}
    ${y.value.may("water_change")&&i`<a class=${r("change")} href=${`/tank/${t}/change`}>${a("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${a("round.next",{tank:o.name})}</a>`}`};function la({id:t}){let e=sa.filter(([,o])=>y.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${a("write_down.title")}><h2>${a("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,s])=>i`<a key=${o} href=${`/tank/${t}/${s}`}><${D}
        name=${o} size=${28} />${a(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function ca({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<De;return!Ne(t)||!(e||Io(t.id).length===0)?null:i`
    <section class="section"><h2>${a("first_fish.title")}</h2><${Ho} tank=${t} />
      <ul class="lines">${y.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${a("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${a("setup.plans_of")}</a></li></ul>
    </section>`}function ua({facts:t,advice:e}){let o=[...wt,...tt].flatMap(n=>t.readings.findLast(l=>l.parameter===n)??[]);if(o.length===0)return i`<p class="soft section">${a("tank.no_figures")}</p>`;let s=new Map(Object.entries(e.limits)),r=o.flatMap(n=>{let{also:l}=ft(n);return l&&E(n.parameter)?{name:C(n.parameter),also:l}:[]});return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${a("tank.figures")}</h2></caption>
        <tbody>${o.map(n=>{let{value:l,unit:c,also:u}=ft(n),m=s.get(n.parameter)?.mg_n_l,d=m&&P(n.parameter,m,n.basis??"ion");return i`<tr key=${n.parameter}>
            <th scope="row">${C(n.parameter)}<span class="also">${L(n.at,t.now)}</span>
              </th>
            <td><span class="big">${l}</span> <span class="unit">${c}</span>
              ${u&&!E(n.parameter)&&i`<span class="also">${u}</span>`}
              ${d&&i`<span class="also">${a("tank.limit",{limit:d})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
      ${r.length>0&&i`<details class="more"><summary>${a("tank.other_way")}</summary>
          ${r.map(({name:n,also:l})=>i`<p key=${n} class="soft small">${n}: ${l}</p>`)}</details>`}
    </section>`}function ma({stock:t,now:e}){let{animals:o}=Me(t,e);return o.length?o.map(s=>Uo(s.species,s.count)).join("\xA0\xB7 "):a("stock.none_yet")}var pa=({source:t,label:e})=>[t?.name??a("water.none"),e?.name??a("label.none")].join("\xA0\xB7 ");function da(t){let e=ao(t).filter(o=>!o.over).length;return e?a("tasks.count",{count:e}):a("tasks.none")}var X=wt.length,pt=[...wt,null,...tt],$a=2*36e5,Mn=()=>({at:0,begun:Date.parse(y.value.now()),readings:{},typed:{}});function fa({id:t}){let e=T("tank",t),o=z({name:`test.${t}`,first:Mn}),s=Q(e,"reading",e?.name??"");if(!e||s)return s;let r=o.draft.value,n=pt[r.at]??null,l=Object.values(r.readings),c=_a(l),u=($,_={})=>{to(),o.set({..._,at:$<pt.length?Math.max($,0):X}),scrollTo(0,0)},m=$=>u(pt.indexOf($),tt.includes($)?{from:r.at}:{}),d=()=>o.save(()=>{let $={tank:t,test:A(),...r.when?{at:r.when}:{}};return{writes:l.map(_=>({type:"put",kind:"reading",id:A(),fields:{..._,...$}})),said:a("saved.readings",{count:l.length}),to:`/tank/${t}`}}),p=l.length>0&&c.length===0&&!U(r.when);return i`
    <${x} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${ha} test=${r} to=${u} />
        <button class="main" type="button" disabled=${!p} onClick=${h(()=>{d()})}>
          ${l.length?a("test.save",{count:l.length}):a("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${r.at>X?a("test.seldom"):a("test.place",{at:Math.min(r.at+1,X),of:X})}</span>`}>
      ${k.value-r.begun>$a&&l.length>0&&i`
        <div class="row apart caution"><span>${a("test.begun",{when:L(r.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${h(()=>o.draft.value=Mn())}>${a("test.afresh")}
            </button></div>`}
      <${G} form=${o} kind="reading" />
      <${ga} strange=${c} here=${n}
        on_go=${$=>u(pt.indexOf($))} />
      ${n?i`<${ka} key=${n} tank=${t} parameter=${n} form=${o} to=${u} />`:i`<${ya} readings=${r.readings} on_go=${m} />`}
      ${r.at<X&&i`<${wa} on_go=${m} />`}
      <${j} at=${r.when} on_at=${$=>o.set({when:$})} />
    <//>`}var _a=t=>t.flatMap(({parameter:e,unit:o,value:s})=>{let r=yo({parameter:e,unit:o},C(e)),n=xo(r,s);return n?[{parameter:e,spec:r,error:n}]:[]});function ha({test:t,to:e}){let o=pt[t.at],s=t.at>X?t.from??X:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(s))}>${a("test.back")}</button>`}
    ${o&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(t.at+1))}>
      ${a(t.readings[o]?"test.next":"test.skip")}</button>`}`}var ga=({strange:t,here:e,on_go:o})=>t.map(({parameter:s,spec:r,error:n})=>i`
    <div key=${s} role="alert"><${ut} spec=${r} error=${n} />
      ${s!==e&&i`<button class="quiet" type="button" onClick=${h(()=>o(s))}>
        ${a("test.key_again",{what:ve(te(s))})}</button>`}</div>`),wa=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${a("test.seldom")}</span>
    ${tt.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${C(e)}</button>`)}</div>`;function ka({tank:t,parameter:e,form:o,to:s}){let r=o.draft.value,n=c=>({...r.readings,[e]:{...c,at:y.value.now()}});return i`<${va} tank=${t} parameter=${e} test=${r}
    on_pick=${c=>s(r.at+1,{readings:n(c)})} on_type=${(c,u,m)=>{let{[e]:d,...p}=r.readings;o.set({keyed_in:{...r.keyed_in,[e]:m},typed:{...r.typed,[e]:c},readings:u?n(u):p})}} />`}function va({tank:t,parameter:e,test:o,on_pick:s,on_type:r}){let n=Ro(e),l=o.readings[e]?.value,c=n.unit??ne[e],{label:u,unit:m,hold:d,text:p}=J(c),{per_drop:$}=n,_=w=>se(n,Number((d(Number(w))*($??1)).toPrecision(6))),g=p(o.typed[e]??null,o.keyed_in?.[e]);return i`
    <h2 class="asked">${C(e)} <span class="soft unit">
      ${[n.entry==="steps"?c:u,it(e,n.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${n.common?n.entry==="steps"?a("kit.common"):tt.includes(e)?a("kit.drops",{unit:ne[e]}):a("kit.keypad"):n.name}</span>
      <a class="quiet" href=${n.id?`/room/test_kit/${n.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${a(n.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(n.timers??[]).length>0&&i`<${ba} kit=${n} tank=${t} />`}
    ${n.entry==="steps"&&(n.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${C(e)}>
          ${(n.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${h(()=>s(se(n,w)))}>${M(w)}</button>`)}
        </div>`:i`<${Ut} label=${C(e)} unit=${$?a("test.drops"):u} value=${g}
          on_value=${w=>r(w,w===""?null:_(w),m)} />
          ${$&&g&&i`<p class="soft center" role="status">
            ${a("test.drops_are",{figure:`${M(_(g).value)} ${c}`})}</p>`}`}`}var ba=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((o,s)=>{let r=`${e}.${t.id}.${s}`,n=wo(r),l=()=>go({id:r,what:`${te(t.parameter)}: ${o.what}`,seconds:o.seconds,href:`/tank/${e}/test`});return i`<li key=${s} class="line"><span>${s+1}. ${o.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${D} name="clock" size=${20} />
        <span class="figures">${n===null?Ct(o.seconds):n>0?Ct(n):a("timer.again",{time:Ct(o.seconds)})}</span></button></li>`})}</ol>`,ya=({readings:t,on_go:e})=>i`
  <h2 class="asked">${a("test.answers")}</h2>
  <ul class="lines">${pt.map((o,s)=>{if(!o)return null;let r=t[o],n=r&&ft(r);return i`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${C(o)}</span>
      ${n?i`<span class="figures"><b class="hand">${n.value}</b> ${n.unit}</span>`:i`<span
        class="soft">${a(s>X?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function xa(){let t=rt(I),e=t.find(o=>Ve(o)?.advice.test_due)??t[0];return ot(()=>{e&&Wt(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),i`<${x} title=${a("test.do")} place="round">
    ${!e&&i`<p class="sentence">${a("round.empty")}</p>`}
  <//>`}export{On as Change,zn as Dose,es as DoseGroup,as as Feed,Ts as LongRunPage,Is as Note,Zs as Outlook,aa as Tank,fa as Test,xa as TestNext};
//# sourceMappingURL=tank-F2X3YLAV.js.map
