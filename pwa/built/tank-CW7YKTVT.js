import{$ as Eo,Ca as W,Da as B,Fa as Wo,G as To,H as Ut,Ha as Uo,I as ct,L as Ao,M as Lo,N as Do,O as No,P as ht,Pa as Yo,Qa as Ho,Sa as Ko,Xa as Bo,Ya as j,Z as Oo,Za as z,_a as G,a as vo,aa as ut,b as bo,ba as K,da as Io,fa as qo,k as yo,ka as gt,l as xo,la as tt,ma as ne,oa as Ro,pa as se,q as Mo,qa as Po,r as So,v as Co,va as Fo}from"./chunk-E62CCEBZ.js";import{$ as Xt,$a as rt,Aa as Le,Ab as je,Ac as Xe,Ad as fo,B as we,Bd as _o,C as s,Cc as Ze,Cd as ho,D as q,Da as De,Db as $t,Dd as Ft,E as M,Eb as J,Ec as to,Ed as Wt,Fc as h,Gb as L,Gd as go,H as A,Ha as Ne,Hb as te,Hd as wo,Ia as Oe,Ib as Lt,Id as x,J as ke,Jb as Dt,Kb as ft,Lb as H,Ld as ko,Mb as it,Mc as eo,Md as lt,Nb as ze,Nc as oo,Ob as v,Oc as It,P as ve,Pb as Nt,Rb as _t,Sb as P,T as St,Va as Ee,Vb as Ot,Vc as ee,Wb as Ge,X as R,Y as nt,Yb as Qe,Z as V,Za as Ie,Zc as oe,_ as be,_a as at,aa as Ct,ac as y,ad as no,b as ot,bc as k,c as bt,ca as ye,d as yt,da as xe,db as qe,dc as F,e as me,ea as Tt,eb as Re,ec as C,fb as Pe,fd as so,g as O,ga as Me,gb as Fe,h as i,hb as Zt,jb as We,jc as E,jd as ao,kb as Ue,lb as Ye,mb as He,mc as Et,nb as Ke,nc as Ve,oc as Je,od as ro,pa as At,pc as D,pd as io,qa as st,qb as dt,qd as lo,ra as Se,sa as Ce,sd as co,ta as Te,td as qt,ua as Ae,ud as uo,vd as Rt,w as ge,wd as Pt,xd as mo,yd as po,zb as Be,zc as T,zd as $o}from"./chunk-3NCYTGTZ.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-HUU73SPY.js";import{A as he,B as Z,C as I,D as Jt,E as S,c as Vt,d as xt,f as pe,l as Y,o as Mt,p as de,t as $e,u as fe,w as _e}from"./chunk-DKQSE4J2.js";import"./chunk-M3MFIEEJ.js";function jo(t,{levels:e,limits:o},n){let{tank:a,source:r,label:l,readings:c}=t,u=c.findLast(({parameter:p})=>p==="kh"),m=Ot(t)?.celsius,$={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&dt(u))??a.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:r?.ph,source_kh_dkh:r?.kh_dkh,source_temperature_c:r?.temperature_c??m,source_tan_mg_n_l:Ct(r,"total_ammonia",l),fraction:n};if(Object.values($).includes(void 0))return null;try{let p=$;return{input:p,answer:S("water_after_change",p)}}catch(p){if(p instanceof Y)return null;throw p}}var Sn=14,Cn=["salt","other"];function zo({tank:t,doses:e,now:o},n){let a=new Map;for(let{label:r,at:l}of e){if(r?.basis!=="whole_tank"||!Cn.includes(r.use)||o-Date.parse(l)>Sn*864e5)continue;let c=Tn(r,t.water_l,n);c!==null&&a.set(r.id,{label:r,at:l,amount:c,unit:r.unit})}return[...a.values()]}function Tn({amount:t,per_l:e,unit:o},n,a){let r={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let l=S("bath_dose",{...r,water_l:n,change_fraction:a,every_days:1,days:1}),c=(o==="g"?l.again_g:l.again_ml)??null;return o==="drops"&&c!==null?Math.round(c):c}catch(l){if(!(l instanceof Y))throw l;return null}}var An={cold:12,hot:50};function Go({facts:t,litres:e}){let o=je("taps",()=>An),n=Ot(t),a=(r,l)=>i`
    <${Yo} label=${s(`warmth.${r}`)} unit="°C" min=${1} max=${l} value=${o.value[r]}
      on_value=${c=>o.value={...o.value,[r]:c}} />`;return i`
    <details class="more section"><summary>${s("warmth.title")}</summary>
      ${n?i`
        <p class="soft">
          ${n.at?s("warmth.read",{warmth:Nt(n.celsius),when:A(n.at,t.now)}):s("warmth.usual",{warmth:Nt(n.celsius)})}</p>
        ${a("cold",40)}${a("hot",80)}
        <${Ln} mix=${Ge(e,n.celsius,o.value)} />
        <p class="caution small">${Z("water_blend","hot_water")}</p>`:i`<p class="soft">${s("warmth.unknown")}</p>`}
    </details>`}var Ln=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${s("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:Nt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${s("warmth.missed")}</p>`}
  <${K} name="water_blend" input=${t.input} answer=${t.answer} />`;var Dn=.25,Nn=()=>({typed:null});function On({id:t}){let e=C("tank",t),o=j({name:`change.${t}`,first:Nn}),n=bt(null),a=G(e,"water_change",s("change.title"));if(!e||a)return a;let{facts:r,advice:l}=Et(e),c=En(n,r,l),u=c.act!=="retest"&&c.litres||st(Dn*e.water_l,e.water_l,r.water_unit),m=J("L"),{typed:$,unit:p="L",from_tank:d="",at:_}=o.draft.value,g=$===null?u:Un(m.hold(Number($),p),e.water_l),w=Ae(e,g),f=w||d?null:Ce(r,g);d&&!y.value.is_ready(d)&&y.value.ready(d);let Q=d?{...r,source:Ie(E.of("reading",d),{from_tank:d,at:_??y.value.now()})}:r,N=g/e.water_l,kt={litres:v(g||0),dose:f?.amount!==void 0?P(f):""},Qt=()=>o.save(()=>{let U=d?{from_tank:d}:r.source?{source_water:r.source.id}:{},vt=In({tank:t,at:_,litres:g,fraction:N,...U},f);return{writes:vt,said:s(vt.length>1?"saved.change_dose":"saved.change",kt),to:`/tank/${t}`}});return i`
    <${x} title=${s("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||W(_)}
        onClick=${h(()=>{Qt()})}>${s(f?.amount!==void 0?"change.log_dose":"change.log",kt)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?co(c,k.value):s("change.usual",{litres:v(u)})}</p>
      <${z} form=${o} kind="water_change" />
      <${qn} form=${o} tank=${e} litres=${g} suggested=${u} wrong=${w} />
      ${f&&i`<${Pn} id=${t} dose=${f} />`}
      ${!w&&i`<${Rn} facts=${r} fraction=${N} />`}
      ${!w&&i`<${Wn} facts=${Q} advice=${c} fraction=${N} />`}
      ${!w&&i`<${Go} facts=${r} litres=${g} />`}
      <${Fn} id=${t} from_tank=${d}
        on_pick=${U=>o.set({from_tank:U})} />
      <${B} at=${_} on_at=${U=>o.set({at:U})} />
      ${Yn(f).map(U=>i`<p class="caution small" key=${U}>${U}</p>`)}
    <//>`}function En(t,e,o){let n=[e.readings,e.changes].map(a=>a.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==n&&(t.current={last:n,advice:o}),t.current?.last===n?t.current.advice:o}function In(t,e){let o=T(),n=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:a,amount:r,unit:l}=e,{tank:c,at:u,litres:m}=t,$={at:u,tank:c,label:a.id,what:a.name,amount:r,unit:l,for_litres:m,water_change:o};n.push({type:"put",kind:"dose",id:T(),fields:$})}return n}function qn({form:t,tank:e,litres:o,suggested:n,wrong:a}){let r=O(!1),l=J("L"),{typed:c,unit:u="L"}=t.draft.value,m=At(e.water_l,l.unit),$=v(m),p=_=>t.set({typed:_,unit:l.unit}),d=_=>p(String(l.show(Math.min(Math.max(o+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${s("change.litres")}>
      <button class="quiet" type="button" aria-label=${s("change.less",{step:$})}
        onClick=${()=>d(-1)}><${D} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${r.value}
        aria-label=${s("change.type",{litres:v(o||0)})}
        onClick=${h(()=>r.value=!r.value)}>
        <span>${M(l.show(o||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${s("change.more",{step:$})}
        onClick=${()=>d(1)}><${D} name="plus" size=${28} /></button>
    </div>
    ${a?i`<div role="alert"><${ut} spec=${Te(e,s("change.litres"))} error=${a} /></div>`:i`<p class="soft center">${s("change.share",{percent:q(100*o/e.water_l,0)})}</p>`}
    ${r.value&&i`<${Ut} label=${s("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${p} />`}
    ${c!==null&&o!==n&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>p(null))}>${s("change.suggested",{litres:v(n)})}</button></p>`}`}function Rn({facts:t,fraction:e}){let o=zo(t,e);return o.length===0?null:i`
    ${o.map(n=>i`<p key=${n.label.id}>${s("dose.again",{name:n.label.name,when:A(n.at,t.now),dose:P(n)})}</p>`)}
    ${o.some(({label:n})=>n.use==="other")&&i`<p class="caution small">
      ${Z("bath_dose","label_over_all")}</p>`}`}var Pn=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${P(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${s(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_label")}</a></p>`:i`<p class="dose">${s("dose.none")}</p>`,Fn=({id:t,from_tank:e,on_pick:o})=>F("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${s("change.other_tank")}</summary>
    <${Po} tank=${t} value=${e} label=${s("change.out_of")} on_pick=${n=>o(n===e?"":n)} />
    <p class="soft small">${s("change.other_tank_why")}</p>
  </details>`,Wn=({facts:t,advice:e,fraction:o})=>{let n=Object.values(e.levels).flatMap(({parameter:r,now_mg_n_l:l,reading:c})=>l?[{parameter:r,now_mg_n_l:l,basis:V({reading:c})}]:[]),a=jo(t,e,o);return(n.length>0||a)&&i`
    <table class="measured"><caption><h2>${s("change.after")}</h2></caption><tbody>
      ${n.map(({parameter:r,now_mg_n_l:l,basis:c})=>{let u=Ct(t.source,r,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:l,source_mg_l:u,fractions:[o]});return i`<tr key=${r}><th scope="row">${L(r)}</th>
          <td class="figures">${ft(r,l,c)} → <span class="big">
            ${ft(r,m,c)}</span> <span class="unit">
            ${`mg/L ${Lt(r,c)}`}</span></td></tr>`})}${a&&i`<tr><th scope="row">${L("ph")}</th><td class="figures">${q(a.input.ph,1)} → <span
          class="big">${q(a.answer.ph,1)}</span>${q(a.answer.ph_settled,1)!==q(a.answer.ph,1)&&i`<span class="also">${s("change.ph_settled",{ph:q(a.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${a?.answer.notes.map(r=>i`<p class="caution small" key=${r}>${r}</p>`)}`},Un=(t,e)=>Math.abs(t-e)<1e-6?e:t,Yn=t=>[...I("dilution"),...t?.amount!==void 0?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Hn=.25,Kn=1,Bn={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function Qo(t,e){let o=n=>e.findLastIndex(a=>a.label?.id===n.id);return[...t].sort((n,a)=>o(a)-o(n)||n.name.localeCompare(a.name))}var Vo=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??st(Hn*t.water_l,t.water_l);function Yt(t,e){let o=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),n=Jt(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(n)):n,unit:t.unit}}function Jo(t,e,o){let n={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},a=S("starter_dose",n),r=o===void 0;return{input:n,answer:a,amount:r?a.ammonium_chloride_g:Jt(a,"household_ammonia_ml"),unit:r?"g":"ml",tan_mg_n_l:a.tan_mg_n_l}}function ae(t,e=[]){let{water_l:o,feed_g_day:n=0,protein_fraction:a=0}=t,r=So(t,e);return n<=0&&r>0?S("starter_dose",Mo(o,r).input).tan_mg_n_l:n<=0||a<=0?Kn:S("starter_dose",{volume_l:o,feed_g_day:n,protein_fraction:a}).tan_mg_n_l}var Xo=t=>t.reduce((e,{change:o,count:n})=>e+(Bn[o]??0)*(n??0),0)>0;function Zo(t,e,{system:o,marks:n}){let a=Mt().salt_dose,{volume_l:r,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=Co(a,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:o,marks:n});if(!("answer"in c))return null;let u=c.payload,m=c.answer;return{what:he(fe("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Ht="salt",Kt="ammonia",jn=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function zn({id:t}){let e=C("tank",t),o=j({name:`dose.${t}`,first:jn}),n=G(e,"dose",s("dosing.title"));if(!e||n)return n;let{changes:a,doses:r}=at(E,e,k.value),l=Qo(F("label"),r),c=Zo(e,Be("bench.salt_dose",()=>({})).value,{system:$t.value,marks:ge(we())}),u=Xo(Le(F("stock_change"),t)),{way:m,at:$}=o.draft.value,p=l.find(f=>f.id===m),d=Qn(o.draft.value,{tank:e,label:p,salt:c,animals:u,changes:a}),{fields:_}=d,g=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:T(),fields:{tank:t,at:$,..._}}],said:s("dosing.saved",{dose:P(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),w=_&&i`<button class="main" type="button" disabled=${W($)} onClick=${h(()=>{g()})}>
      ${s("dosing.log",{dose:P(_)})}</button>`;return i`
    <${x} title=${s("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${Jn} dose=${r.at(-1)} />
      <${z} form=${o} kind="dose" />
      <${Gn} tank=${t} form=${o} labels=${l} salt=${c} />
      ${p&&i`<${Xn} form=${o} tank=${e} label=${p} dose=${d}
        litres=${tn(o.draft.value,e,p,a)} />`}
      ${m===Ht&&c&&i`<${re} dose=${d}
        said=${s("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Kt&&i`<${Zn} tank=${e} form=${o} dose=${d} animals=${u} />`}
      ${_&&i`<${B} at=${$} on_at=${f=>o.set({at:f})} />`}
      ${ts(m,p).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Gn({tank:t,form:e,labels:o,salt:n}){let a=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${h(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,r=({amount:l,unit:c,per_l:u})=>s("label.line",{amount:M(l),unit:s(`unit.${c}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${s("dosing.what")}>
      ${o.map(l=>a(l.id,l.name,r(l)))}
      ${n&&a(Ht,n.what,s("dosing.from_bench"))}
      ${a(Kt,s("dosing.ammonia"),s("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${y.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${D}
        name="plus" size=${20} />${s("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${s("dosing.work_out_salt")}</a>
    </div>`}function Qn(t,{tank:e,label:o,salt:n,animals:a,changes:r}){try{if(o){let l=tn(t,e,o,r);return{fields:{...Yt(o,l),label:o.id,what:o.name,for_litres:l}}}if(t.way===Ht&&n){let{what:l,what_code:c,amount:u,unit:m,input:$,answer:p}=n;return{fields:{what:l,what_code:c,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:$,answer:p}}return t.way===Kt&&!a?Vn(t,e):{}}catch(l){if(!(l instanceof Y))throw l;return{errors:l.errors}}}function Vn(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:n,unit:a,tan_mg_n_l:r,input:l,answer:c}=Jo(e,en(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:no(u),what_code:u,amount:n,unit:a,tan_mg_n_l:r,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var tn=({litres:t},e,o,n)=>t===null?Vo(e,o,n):Tt(Number(t.text),t.unit,"L"),en=({tan:t},e)=>t===null?ae(e,F("own_species")):Number(t),Jn=({dose:t})=>i`<p class="soft">
    ${t?s("dosing.last",{dose:P(t),what:so(t),when:A(t.at,k.value)}):s("dosing.never")}</p>`;function Xn({form:t,tank:e,label:o,litres:n,dose:a}){let r=ye({name:"",unit:"L"},$t.value),l=t.draft.value.litres,c=Zt(Tt(At(e.water_l),"L",r));return i`
    <section class="section"><h2>${s("dosing.for_water")}</h2>
      <${ct} label=${s("dosing.for_water")} unit=${xe(r)} value=${Tt(n,"L",r)}
        typed=${l&&l.unit===r?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:r}})} />
      <${re} dose=${a} said=${s(`dose.basis_${o.basis}`)} />
    </section>`}function Zn({tank:t,form:e,dose:o,animals:n}){if(n)return i`<p class="wrong section" role="status"><${D} name="needs" /><span>${s("dosing.animals_here")}</span>
      </p>`;let{tan:a,household:r,percent:l}=e.draft.value,c=en(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${s("dosing.wanted")}</h2>
      <${ct} label=${s("dosing.wanted")} unit="mg N/L" value=${c} typed=${a}
        step=${Zt(Math.max(ae(t,F("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${s("dosing.with")}>
      <button type="button" aria-pressed=${!r} onClick=${u(!1)}>${s("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${r} onClick=${u(!0)}>${s("dosing.household_ammonia")}
        </button>
    </div>
    ${r&&i`<section class="section"><h2>${s("dosing.strength")}</h2>
      <${ct} label=${s("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${s("dosing.no_strength")}</p>`}</section>`}
    <${re} dose=${o} said=${s("dosing.gives",{tan:it(c||0),litres:v(t.water_l)})}
      />`}var re=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${ut} key=${o.field} error=${o}
    spec=${{label:s("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${P(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${K} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function ts(t,e){return t===Ht?I("salt_dose"):t===Kt?I("starter_dose"):[s("dosing.label_first"),...e?.use==="dechlorinator"?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function es({place:t}){let e=O(""),o=O([]);if(!y.value.may("dose"))return i`<${Bo} title=${s("group_dose.title")} up="/" />`;let n=rt(E).filter(m=>(m.place?.trim()??"")===t),a=F("label").filter(({basis:m})=>m==="whole_tank"),r=a.find(({id:m})=>m===e.value)??(a.length===1?a[0]:null),l=r?n.flatMap(m=>os(m,r)):[],c=l.filter(({tank:m})=>!o.value.includes(m.id)),u=m=>o.value=o.value.includes(m)?o.value.filter($=>$!==m):[...o.value,m];return i`
    <${x} title=${s("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||s("many.no_place")}</span>`}
      act=${r&&i`<button class="main" type="button" disabled=${c.length===0}
        onClick=${h(()=>{ns(r,c)})}>${s("group_dose.log",{count:c.length})}</button>`}>
      ${a.length===0?i`<p class="sentence">${s("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${s("water.new_label")}</a></p>`:i`<section class="section"><h2>${s("group_dose.which")}</h2><div class="tiles two short">${a.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===r?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${r&&i`<section class="section"><h2>${s("group_dose.tanks")}</h2><div class="tiles two short">${l.map(({tank:m,amount:$,unit:p})=>i`<button key=${m.id} type="button"
          aria-pressed=${!o.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${P({amount:$,unit:p})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${s("dosing.label_first")}</p>`}
    <//>`}function os(t,e){try{return[{tank:t,...Yt(e,t.water_l)}]}catch(o){if(o instanceof Y)return[];throw o}}async function ns(t,e){let o=y.value.now(),n=e.map(({tank:{id:a,water_l:r},amount:l,unit:c})=>({type:"put",kind:"dose",id:T(),fields:{tank:a,at:o,label:t.id,what:t.name,amount:l,unit:c,for_litres:r}}));await Xe(n,s("group_dose.saved",{count:n.length,label:t.name}))&&Wt("/",{replace:!0})}var nn=["food","protein_fraction"],ss=()=>({typed:null,food:null,own:{},at:void 0});function as({id:t}){let e=C("tank",t),o=j({name:`feed.${t}`,first:ss}),n=G(e,"feeding",s("feed.title"));if(!e||n)return n;let a=at(E,e,k.value),{feedings:r}=a,l=Ue(a),c=We(e,r,l?.answer.usual_g_day),u=He(F("feeding")),{typed:m,at:$}=o.draft.value,p=m===null?c.feed_g:Number(m),d=cs(o.draft.value,u,c),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:T(),fields:{tank:t,at:$,feed_g:f,...f>0?d:{}}}],said:f>0?s("feed.saved",{amount:_t(f),tank:e.name}):s("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),g=i`
    <button class="quiet tall" type="button" disabled=${W($)} onClick=${h(()=>{_(0)})}>
      ${s($?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(p>0)||W($)}
      onClick=${h(()=>{_(p)})}>${s("feed.log",{amount:_t(p||0)})}</button>`,w=m===null||p===c.feed_g?c.from:"keeper";return i`
    <${x} title=${s("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${us} feedings=${r} />
      <${ct} label=${s("feed.grams")} unit="g" value=${p} typed=${m} step=${Ye(c.feed_g)}
        least=${.01} most=${_e("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${s(`feed.from_${w}`,{usual:_t(c.feed_g)})}</p>
      ${l&&i`<${rs} answer=${l.answer} feed_g=${p} />`}
      <${z} form=${o} kind="feeding" beside=${o.draft.value.food===""?nn:[]} />
      <${ls} form=${o} known=${u} given=${d} />
      <${B} at=${$} on_at=${f=>o.set({at:f})} />
      ${p>0&&i`<${ms} tank=${e} feed_g=${p} protein_fraction=${d.protein_fraction} />`}
      <${is} ration=${l} />
      ${I("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var rs=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>i`
  <p class=${o>e?"wrong":"soft small center"}>
    ${s("feed.ration",{usual:on(t),most:on(e)})}</p>`,is=({ration:t})=>t&&i`<section class="section"><h2>${s("feed.ration_why")}</h2>
    <${K} name="feed_ration" ...${t} /></section>`,on=t=>`${M(t,t<1?2:1)}\xA0g`,sn=()=>nn.map(t=>$e(de().feeding.fields,t));function ls({form:t,known:e,given:o}){let{food:n,own:a}=t.draft.value;return i`
    <section class="section"><h2>${s("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${s("feed.food")}>
        ${e.map(({food:r,protein_fraction:l})=>i`
          <button type="button" key=${r} aria-pressed=${o.food===r}
            onClick=${h(()=>t.set({food:r}))}>
            <b>${r}</b>${l!==void 0&&i`<span class="soft small">
              ${s("feed.protein",{percent:q(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${n===""} onClick=${h(()=>t.set({food:""}))}><${D}
          name="plus" />${s("feed.other")}</button>
      </div>
      ${n===""&&i`<div class="section"><${Eo} specs=${sn()} raw=${a} errors=${t.errors.value} tried=${!0}
        on_raw=${r=>t.set({own:r})} /></div>`}
    </section>`}function cs({food:t,own:e},o,n){if(t==="")return Oo(sn(),e);let a=o.find(u=>u.food===t),{feed_g:r,from:l,...c}=n;return t!==null&&a?{...a}:c}function us({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${s("feed.never")}</p>`;let o={when:A(e.at,k.value),amount:_t(e.feed_g),food:e.food??""};return i`<p class="soft">${s(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function ms({tank:t,feed_g:e,protein_fraction:o}){try{let{input:n,answer:a,assumed:r}=Ke(t,e,o),l={mg:M(a.tan_mg_n_day,1),rise:it(a.tan_mg_n_l_day),percent:q(100*n.protein_fraction,0)};return i`
      <section class="section"><h2>${s("feed.becomes")}</h2>
        <p>${s("feed.nitrogen",l)}${r&&i` ${s("feed.assumed",l)}`}</p>
        <${K} name="nitrogen_load" input=${n} answer=${a} />
      </section>`}catch(n){if(!(n instanceof Y))throw n;return null}}var an=28,rn=14,ps=90,ds=3,$s=21,fs=.3,_s=60,hs=[7,3,1],gs=1;function Bt(t){let e=ws(t),o=ks(t);return{routine:e,young:ln(t)<rn,nitrate:o&&xs(t,e,o),kh:o&&Ms(t,e,o.rise.usual)}}function ln({tank:t,now:e,changes:o,readings:n}){let a=[t.started_at,o[0]?.at,n[0]?.at].flatMap(r=>r?[Date.parse(r)]:[]);return a.length?(e-Math.min(...a))/864e5:0}function ws(t){let e=Math.min(an,ln(t)),o=t.changes.filter(({at:r})=>ie(r,t.now,an));if(o.length===0||e<rn)return null;let a=1-o.reduce((r,{fraction:l})=>r*(1-Math.min(l,.95)),1)**(1/o.length);return a<.01?null:{count:o.length,litres:a*t.tank.water_l,fraction:a,every_days:e/o.length}}function ks(t){let e=vs(t);if(e)return{from:"readings",rise:e};let{feed_g_day:o,fish_g:n,protein_fraction:a,volume_l:r}=Qe(t).records.tank,{feed_of_fish:l,protein_fraction:c}=xt(),u=o??(n===void 0?void 0:n*l);if(!u)return null;let $=S("nitrogen_load",{feed_g_day:u,protein_fraction:a??c,volume_l:r}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:$,high:$}}}function vs(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&ie(u.at,t.now,ps)&&Xt(u)&&!ys(u)),[o,n]=[e[0],e.at(-1)];if(!n||e.length<ds||Date.parse(n.at)-Date.parse(o.at)<$s*864e5)return null;let a=0,r=0;for(let u=1;u<e.length;u++){let m=bs(t,e[u-1],e[u]);a+=nt(e[u])-m.left,r+=m.days}if(r<=0)return null;let l=fs*Math.hypot(nt(o),nt(n))/r,c=a/r;return{low:Math.max(0,c-l),usual:Math.max(0,c),high:Math.max(0,c+l)}}function bs({changes:t},e,o){let n=nt(e),a=0,r=Date.parse(e.at);for(let{at:l,fraction:c,source:u}of t)l<=e.at||l>o.at||(a=(a+(Date.parse(l)-r)/864e5)*(1-c),n=n*(1-c)+c*(u?.nitrate_mg_n_l??0),r=Date.parse(l));return{left:n,days:a+(Date.parse(o.at)-r)/864e5}}var ys=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function xs(t,e,{from:o,rise:n}){let a=Fe(t).nitrate.mg_n_l,r=t.source?.nitrate_mg_n_l??0,l=t.readings.findLast($=>$.parameter==="nitrate"&&Xt($)),c=$=>{if(!e)return null;let p={add_mg_l_day:$,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:r,ceiling_mg_l:a};return{input:p,answer:S("steady_routine",p)}},u=$=>c($)?.answer.before_change_mg_l??0,m=c(n.usual);return{from:o,rise_mg_n_l_day:n,limit_mg_n_l:a,settles_mg_n_l:m&&{low:u(n.low),usual:u(n.usual),high:u(n.high)},worked:m,days_to_limit:e||n.usual<=0?null:Math.max(0,a-(l?nt(l):0))/n.usual,least:cn(t,e,$=>n.usual<=0?void 0:S("steady_routine",{add_mg_l_day:n.usual,change_fraction:.5,every_days:$,source_mg_l:r,ceiling_mg_l:a}).fraction_needed),source_over:r>=a}}function Ms(t,e,o){let n=t.readings.findLast($=>$.parameter==="kh"&&ie($.at,t.now,_s)&&dt($)!==void 0),a=n?dt(n):t.tank.kh_dkh;if(a===void 0||a>60)return null;let r=t.source?.kh_dkh,l={kh_dkh:a,nitrogen_mg_n_l_day:Math.min(o,100),floor_kh_dkh:gs},c=$=>S("alkalinity_use",{...l,source_kh_dkh:r,change_fraction:.5,every_days:$}).fraction_needed,u=e&&r!==void 0?{...l,source_kh_dkh:r,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:l,m=S("alkalinity_use",u);return{now_dkh:a,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:r===void 0||o<=0?null:cn(t,e,c),source_known:r!==void 0,worked:{input:u,answer:m}}}function cn(t,e,o){let{water_l:n}=t.tank,a=Se(t,{unhurried:!0}),r=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let l of[...r,...hs]){let c=o(l);if(!(typeof c!="number"||c*n>a))return{litres:st(c*n,n,t.water_unit,a),every_days:l}}return null}var ie=(t,e,o)=>Date.parse(t)<=e&&e-Date.parse(t)<=o*864e5;var le=365;function jt({nitrate:t,young:e},o){if(e)return s("long_run.young");if(!t)return s("long_run.no_load");let n=H("nitrate",t.limit_mg_n_l,o);if(t.source_over)return s("long_run.source_over",{limit:n});if(t.rise_mg_n_l_day.usual<=0)return s("long_run.no_rise");if(!t.settles_mg_n_l)return Ss(t,n);let{settles_mg_n_l:a}=t,r=t.from==="food"?H("nitrate",a.high,o):Cs(a,o),l=t.from==="food"?"at_most":"settles",c=a.high<=t.limit_mg_n_l?"under":a.low>t.limit_mg_n_l?"over":"perhaps";return s(`long_run.${l}_${t.from==="food"&&c!=="under"?"perhaps":c}`,{level:r,limit:n})}function Ss({days_to_limit:t},e){let o=Math.round(t??1/0);return o>le?s("long_run.no_changes_far",{limit:e}):s(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var Cs=({low:t,high:e},o)=>s("outlook.between",{low:ft("nitrate",t,o),high:H("nitrate",e,o)});function Ts({id:t}){let e=C("tank",t);if(!e)return i`<${lt} up="/" />`;let o=at(E,e,k.value),n=Bt(o),a=o.readings.findLast(({parameter:l})=>l==="nitrate"),r=V(a&&{reading:a});return i`
    <${x} title=${s("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${s("long_run.title")}>
        <${As} id=${t} found=${n} basis=${r} />
      </section>
      <section class="section"><h2>${s("long_run.kh")}</h2><${Ds} id=${t} found=${n} /></section>
    <//>`}function As({id:t,found:e,basis:o}){let{nitrate:n,routine:a,young:r}=e,l=n?.settles_mg_n_l&&n.settles_mg_n_l.high>n.limit_mg_n_l;return i`
    <p class="sentence">${jt(e,o)}</p>
    <p>${Ls(e)}</p>
    ${n&&!r&&i`
      <${un} id=${t} least=${n.least} routine=${a} />
      <p class="soft small">${n.from==="food"?s("long_run.from_food"):s("long_run.from_readings",{rise:H("nitrate",n.rise_mg_n_l_day.usual*7,o)})}</p>
      ${l&&i`<p class="caution small">${Z("steady_routine","slowly")}</p>`}
      ${n.worked&&i`<${K} name="steady_routine" ...${n.worked} />`}`}`}var Ls=({routine:t,young:e})=>t?s("long_run.routine",{count:t.count,litres:v(t.litres),days:M(t.every_days,t.every_days<10?1:0)}):e?"":s("long_run.no_routine");function un({id:t,least:e,routine:o}){if(!e)return null;let{litres:n,every_days:a}=e,r=o&&o.litres/o.every_days>=n/a;return i`
    <p>${s(r?"long_run.least_held":"long_run.least",{litres:v(n),count:a})}</p>
    ${y.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${a}&title=${encodeURIComponent(s("long_run.task",{litres:v(n)}))}`}>${s("long_run.make_task")}</a></p>`}`}function Ds({id:t,found:{kh:e,nitrate:o,routine:n}}){if(!e)return i`<p>${s(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let a=M(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${Ns(e)}</p>
    <p>${s("long_run.kh_falls",{fall:a,now:M(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${s("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${un} id=${t} least=${e.least} routine=${n} />
      <p class="caution small">${Z("alkalinity_use","kh_floor")}</p>`}
    <${K} name="alkalinity_use" ...${e.worked} />`}function Ns({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=le?s("long_run.kh_gone",{count:Math.round(t)}):e===null?s("long_run.kh_far"):s("long_run.kh_settles",{level:M(e,1)})}var Os=["at_surface","hiding"],ce=5e3,zt=To(),Es=()=>({picked:[],text:"",at:void 0});function Is({id:t}){let e=C("tank",t),o=`note.${t}`,n=j({name:o,first:Es}),{photos:a,busy:r,problem:l,add:c,drop:u}=qs(o),m=G(e,"note",s("note.title"));if(!e||m)return m;let{picked:$,text:p,at:d}=n.draft.value,_=ee.filter(N=>$.includes(N)),g=[..._.map(oe),p.trim()].filter(Boolean).join(`
`),w=()=>n.save(()=>{let N={tank:t,at:d??y.value.now(),entry:T()},kt={...N,text:g.slice(0,ce),..._.length?{quick:_}:{}};return{writes:g?[{type:"put",kind:"note",id:T(),fields:kt}]:[],pictures:a.map(({picture:Qt,width:U,height:vt})=>({picture:Qt,id:T(),fields:{...N,width:U,height:vt}})),said:s("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>zt.forget(o).catch(()=>{})}}),f=(g||a.length>0)&&!r&&g.length<=ce&&!W(d),Q=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{w()})}>
    ${a.length?s("note.save_photos",{count:a.length}):s("note.save")}</button>`;return i`
    <${x} title=${s("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${Q}>
      <${Rs} id=${t} picked=${$} on_pick=${N=>n.set({picked:N})} />
      <div class="field section"><label for="note-text">${s("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${ce} value=${p}
          onInput=${It(N=>n.set({text:N}))}></textarea></div>
      <section class="section"><h2>${s("note.photos")}</h2>
        <${Ps} photos=${a} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${D} name="camera" />${s("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${s("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${r&&i`<p class="soft" role="status">${s("note.shrinking")}</p>`}
        <${Fo} text=${l} />
        <${z} form=${n} kind="note" />
        <p class="soft small">${s("note.photo_size")}</p>
      </section>
      <${B} at=${d} on_at=${N=>n.set({at:N})} />
    <//>`}function qs(t){let e=O([]),o=O(0),n=O(""),a=async()=>{e.value=await zt.list(t)};ot(()=>{a().catch(()=>n.value=s("note.photos_not_kept"))},[t]);let r=async u=>{o.value+=1;try{await zt.add(t,await Ko(u)),await a()}catch(m){let $=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=s($,{file:u.name})}finally{o.value-=1}},l=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",n.value="";for(let $ of m)await r($)},c=async u=>{let m=await zt.remove(u);await a(),Ze(s("note.photo_dropped"),async()=>{await m(),await a()})};return{photos:e.value,busy:o.value>0,problem:n.value,add:l,drop:c}}function Rs({id:t,picked:e,on_pick:o}){let n=a=>o(e.includes(a)?e.filter(r=>r!==a):[...e,a]);return i`
    <div class="tiles two short" role="group" aria-label=${s("note.quick")}>
      ${ee.map(a=>i`<button type="button" key=${a} aria-pressed=${e.includes(a)}
        onClick=${h(()=>n(a))}>${oe(a)}</button>`)}
    </div>
    ${e.some(a=>Os.includes(a))&&i`
      <div class="caution" role="status"><p>${s(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${s("test.do")}</a></div>`}`}var Ps=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:n},a)=>{let r=s("photo.numbered",{at:a+1});return i`
    <li key=${o}><${Wo} picture=${n} said=${r} />
      <button class="quiet square" type="button" aria-label=${s("remove_named",{what:r})}
        onClick=${h(()=>{e(o)})}><${D} name="remove" size=${20} /></button></li>`})}</ul>`;function pn(t,e,o,n,a,r){let{start:l,records:c}=o,u=f=>l+f*36e5,m=u(c.now_h),$=Math.max(m-r*24*36e5,Math.min(l,m-48*36e5)),p=n?.doubts??[],d=c.readings.filter(f=>f.parameter===t&&u(f.at_h)>=$).map(f=>({at:u(f.at_h),...Fs(f),doubted:p.some(Q=>Q.parameter===t&&Q.at_h===f.at_h)})),g=R(t)&&(t!=="nitrate"||o.nitrate_known)?(n?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(f=>mn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>mn(f.at,"change",f.litres))].filter(({at:f})=>f>=$&&f<=m).sort((f,Q)=>f.at-Q.at);return{parameter:t,dots:d,fan:g,marks:w,limit:R(t)?a[t]:null,from:$,now:m,to:g.at(-1)?.at??m}}var mn=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function Fs(t){if(!R(t.parameter)){let[c,u]=t.steps?.length?Vt(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:o}=pe(t),n=xt(),a=t.parameter==="nitrate"?"nitrate":"reading",[r,l]=Vt(e,o,n[`${a}_offset`],n[`${a}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:r===null?null:Math.max(r,0),high:l}}function dn(t,e){let o=n=>n===null?null:e(n);return{...t,dots:t.dots.map(n=>({...n,value:e(n.value),low:o(n.low),high:o(n.high)})),fan:t.fan.map(({at:n,p10:a,p50:r,p90:l})=>({at:n,p10:e(a),p50:e(r),p90:e(l)})),line:t.limit&&e(t.limit.mg_n_l)}}function $n({parameter:t,dots:e,fan:o,line:n}){let a=[...e.flatMap(({value:u,low:m,high:$})=>[u,m??u,$??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...n===null?[]:[n]],r=Math.max(...a);if(R(t))return[0,r>0?r*1.12:1];let l=Math.min(...a),c=Math.max((r-l)*.2,.5);return[l-c,r+c]}var fn=({doubted:t})=>i`
  <ul class="chart-key" aria-hidden="true">
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor" stroke-width="2" />
      <circle cx="9" cy="12" r="5" fill="currentColor" /></svg>${s("key.reading")}</li>
    ${t&&i`<li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor"
      stroke-width="2" /><circle class="hollow" cx="9" cy="12" r="5" stroke="currentColor" stroke-width="2" /></svg>
      ${s("key.doubted")}</li>`}
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="fan" d="M0 8 30 1v22L0 16z" /><path class="middle"
      d="M0 12h30" /></svg>${s("key.fan")}</li>
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="limit" d="M0 12h30" /></svg>${s("key.limit")}</li>
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M3 4h12l-2 9H5z" fill="currentColor" /><path
      d="M9 13v11" stroke="currentColor" stroke-dasharray="2 3" /></svg>${s("key.change")}</li>
    <li><svg width="8" height="24" viewBox="0 0 8 24"><path d="M4 0v24" stroke="currentColor" stroke-width="1.5" />
      </svg>${s("key.now")}</li>
    <li><svg width="10" height="24" viewBox="0 0 10 24"><path d="M5 14v8" stroke="currentColor" stroke-width="1.5" />
      </svg>${s("key.feeding")}</li>
  </ul>`,_n=({ready:{code:t,from:e,likely:o,to:n}})=>{let a=r=>r===void 0?"":ke(r);return i`
    <section class="section"><h2>${s("ready.title")}</h2>
      <p class="sentence">${s(`ready.${t}`,{from:a(e),likely:a(o),to:a(n)})}</p>
      <p class="soft small">${s("ready.means")}</p>
    </section>`};function hn({weeks:t,expected:e}){let[o]=t;return i`
    <details class="more section"><summary>${s("carry.title")}</summary>
      <p>
        ${s("carry.now",{low:mt(o.feed_g_day.p10),high:mt(o.feed_g_day.p90),expected:mt(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${s("carry.when")}</th><th scope="col" class="right">${s("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:n,feed_g_day:a})=>i`
          <tr key=${n}><th scope="row">${s(`carry.in_${n}`)}</th>
            <td>${mt(a.p50)}<span class="also">
              ${s("outlook.between",{low:mt(a.p10),high:mt(a.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${Mt().stock_headroom.uncertainty}</p>
    </details>`}var gn=()=>{let t=[...I("outlook"),...I("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},mt=t=>`${M(t,t<1?2:1)} g`;var Ws=86400,Us=["p10","p50","p90"];function wn({lines:t}){let e=bt(null);return ot(()=>Do(e.current,()=>Hs(t),Ys(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var Ys=({fan:t,from:e,now:o})=>{let n=t.length?t:[{at:o,p10:null,p50:null,p90:null}],r=[{at:e,p10:null,p50:null,p90:null},...n];return[r.map(({at:l})=>l/1e3),...Us.map(l=>r.map(c=>c[l]))]};function Hs(t){let{from:e,now:o,to:n}=t,[a,r]=$n(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,n/1e3+(n>o?0:Ws/2)]},y:{range:[a,r]}},series:[{},l,{stroke:()=>ht("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>ht("--fan")}],axes:No(),hooks:{drawAxes:[c=>Ao(c,t,ht)],draw:[c=>Lo(c,t,ht)]}}}var Gt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Ks=6;function kn({lines:t,basis:e,next:o,as_table:n,now:a}){let{parameter:r}=t,l=Qs(r,e),c=yt(()=>dn(t,Vs(r,e)),[t,e,$t.value]),u=`of-${r}`;return i`
    <section class="parameter" aria-labelledby=${u}>
      <h2 id=${u}>${L(r)} <span class="unit">${l}</span></h2>
      ${o&&r in Gt&&i`<${Bs} lines=${t} basis=${e}
        chance=${o.pass_chance[Gt[r]]}
          standing=${o.now[`${r}_mg_n_l`]} />`}
      ${!n&&i`<${wn} lines=${c} />`}
      <div class=${n?"":"unseen"}><${js} lines=${c} unit=${l} now=${a} /></div>
    </section>`}function Bs({lines:t,basis:e,chance:o,standing:n}){let{parameter:a,limit:r,fan:l}=t;if(!r||l.length===0)return null;let c=l.at(-1),u=c&&c.p90-c.p10>r.mg_n_l,m={chance:lo(o)},$=n.p50>r.mg_n_l?s("outlook.perhaps_over",m):s("outlook.chance",m),p=n.p10>r.mg_n_l?s("outlook.over"):$;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${s("outlook.limit",{limit:H(a,r.mg_n_l,e),by:s(`limit.${r.by}`)})} ${u&&s("outlook.wide")}</p>`}function js({lines:t,unit:e,now:o}){let{parameter:n,fan:a,dots:r,marks:l}=t,c=p=>Gs(n,p),u=Math.max(1,Math.round((a.length-1)/Ks)),m=[...r.map(p=>({at:p.at,what:s(p.doubted?"outlook.read_doubted":"outlook.read"),value:c(p.value),span:zs(p,c)})),...l.filter(({kind:p})=>p==="change").map(({at:p,said:d})=>({at:p,what:s("history.changed",{litres:v(d)}),value:"",span:""}))].sort((p,d)=>d.at-p.at),$=l.filter(({kind:p})=>p==="feeding");return i`
    ${$.length>0&&i`<p class="soft small">${s("outlook.fed",{count:$.length,grams:M($.reduce((p,{said:d})=>p+d,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${L(n)} ${e}</caption>
      ${a.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.likely")}</th></tr>
          ${a.filter((p,d)=>d%u===0).map(({at:p,p10:d,p50:_,p90:g})=>i`
            <tr key=${p}><th scope="row">${A(p,o)}</th><td>${c(_)} <span class="also">
              ${s("outlook.between",{low:c(d),high:c(g)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.so_far")}</th></tr>
        ${m.map(({at:p,what:d,value:_,span:g},w)=>i`
          <tr key=${`${p}-${w}`}><th scope="row">${A(p,o)}<span class="also">${d}</span></th><td>${_}
            ${g&&i` <span class="also">${g}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function zs({low:t,high:e},o){return t===e?"":t===null?s("outlook.up_to",{high:o(e)}):e===null?s("outlook.from",{low:o(t)}):s("outlook.between",{low:o(t),high:o(e)})}var Gs=(t,e)=>R(t)?it(e):q(e,1),Qs=(t,e)=>R(t)?ze(t,e):t==="temperature"?J("\xB0C").label:"",Vs=(t,e)=>R(t)?be(t,e):t==="temperature"?J("\xB0C").show:o=>o;var Js=["total_ammonia","nitrite","nitrate","ph","temperature"],vn=[2,6],Xs=["doubt","prior","few","rule_working","rule_failed"];function Zs({id:t}){let e=C("tank",t);return e?i`<${ta} tank=${e} />`:i`<${lt} up="/" />`}function ta({tank:t}){let e=O(vn[0]),o=O(!1),{facts:n,asked:a,forecast:r,advice:l}=Je(t),{ahead:c,next:u,headroom:m}=r.answers,$=d=>u?.pass_chance[Gt[d]]??-1,p=yt(()=>[...Js].sort((d,_)=>$(_)-$(d)).map(d=>pn(d,n,a,c,l.limits,7*e.value)).filter(({dots:d,fan:_})=>d.length+_.length>0),[a,c,u,e.value]);return i`
    <${x} title=${s("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${s("tank.now")}>
        <${Rt} advice=${l} now=${k.value} />
        <${qt} advice=${l} now=${k.value} />
        <${Pt} advice=${{...l,reasons:l.reasons.filter(({code:d})=>Xs.includes(d))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${s("outlook.how")}>
        ${vn.map(d=>i`<button key=${d} class="quiet" type="button"
          aria-pressed=${e.value===d} onClick=${h(()=>e.value=d)}>
          ${s("outlook.weeks",{count:d})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${s("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${p.map(d=>i`<${kn} key=${d.parameter} lines=${d} next=${u} as_table=${o.value}
        basis=${V(R(d.parameter)?l.levels[d.parameter]:void 0)}
        now=${k.value} />`)}</div>
      ${!o.value&&i`<${fn} doubted=${p.some(({dots:d})=>d.some(_=>_.doubted))} />`}
      ${c&&i`<${_n} ready=${vo(c.settled_h,a.records.now_h,a.start)} />`}
      <${qo} tank=${t} />
      ${m&&i`<${hn} weeks=${bo(m)} expected=${m.feed_g_day_expected} />`}
      <${gn} />
    <//>`}var ea="(min-width: 900px)",ue=me(!1),bn=globalThis.matchMedia?.(ea),yn=()=>ue.value=bn?.matches??!1;yn();bn?.addEventListener?.("change",yn);function xn({here:t}){if(!ue.value)return null;let e=rt(E);if(e.length<2)return null;let o=$o(e);return i`
    <nav class="tank-list" aria-label=${s("place.tanks")} ref=${na}>
      ${e.length>qe?i`<${oa} ones=${o} here=${t} />`:i`<${Ft} ones=${o} here=${t} />`}</nav>`}function oa({ones:t,here:e}){let o=O(""),n=mo.value==="first",a=t.map(({tank:c})=>c),r=new Map(t.map(c=>[c.tank.id,c])),l=Pe(a,o.value).flatMap(({tank:c})=>r.get(c.id)??[]);return i`
    <div class="field"><label for="list-find">${s("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${It(c=>o.value=c)} /></div>
    ${o.value.trim()?i`<${_o} ones=${l} words=${o.value.trim()} here=${e} />`:i`<${fo} />
      ${n&&i`<${Ft} ones=${t.filter(c=>c.wants)} here=${e} />`}
      ${Re(a).map(c=>{let u=c.tanks.flatMap(({id:p})=>r.get(p)??[]),m=u.filter(p=>!(n&&p.wants)),$=po.value.includes(c.place)||m.some(({tank:p})=>p.id===e);return i`<section class="group" key=${c.place}>
          <${ho} place=${c.place} ones=${u} open=${$} />
          ${$&&i`<${Ft} ones=${m} here=${e} />`}</section>`})}`}`}function na(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var sa=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function aa({id:t}){let e=C("tank",t);return e?Oe(e)?i`<${ko} tank=${Ee(e)} />`:i`<${ra} key=${t} tank=${e} />`:i`<${lt} up="/" why="labels.stranger" />`}function ra({tank:t}){let{id:e}=t,{facts:o,advice:n}=Et(t),a=oo(`tank ${e}`,eo(n));return i`
    <div class="desk"><${xn} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${ia} id=${e} advice=${n} />`}>
      <section class="room-taken" ref=${a} aria-label=${s("tank.now")}>
        <div class="row apart held"><div><${Rt} advice=${n} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${s("incident.title")}</a></div>
        <${qt} advice=${n} now=${k.value} />
        <${uo} advice=${n} now=${k.value} />
        <${Pt} advice=${n} now=${k.value} />
      </section>
      <${ro} tank=${e} label=${s("tasks.today")} />
      <${ca} tank=${t} />
      <${ua} facts=${o} advice=${n} />
      <${la} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${s("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${s("long_run.title")}<br /><span class="soft small">
            ${jt(Bt(o),V(n.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${s("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${s("stock.title")}<br /><span class="soft small">
            ${ma(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${s("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${s("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${s("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${s("tasks.title")}<br /><span class="soft small">
            ${da(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${s("water.title")}<br /><span class="soft small">
            ${pa(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${s("labels.title_one")}</a></li>
          ${y.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${s("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var ia=({id:t,advice:e})=>{let o=io(t),n=o?"next":e.act==="change"?"change":"test",a=r=>n===r?"main even":"quiet tall even";return i`
    ${y.value.may("reading")&&i`<a class=${a("test")} href=${`/tank/${t}/test`}>${s("test.do")}</a>`}
    ${y.value.may("water_change")&&i`<a class=${a("change")} href=${`/tank/${t}/change`}>${s("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${s("round.next",{tank:o.name})}</a>`}`};function la({id:t}){let e=sa.filter(([,o])=>y.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${s("write_down.title")}><h2>${s("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,n])=>i`<a key=${o} href=${`/tank/${t}/${n}`}><${D}
        name=${o} size=${28} />${s(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function ca({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<De;return!Ne(t)||!(e||Io(t.id).length===0)?null:i`
    <section class="section"><h2>${s("first_fish.title")}</h2><${Ho} tank=${t} />
      <ul class="lines">${y.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${s("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${s("setup.plans_of")}</a></li></ul>
    </section>`}function ua({facts:t,advice:e}){let o=[...gt,...tt].flatMap(a=>t.readings.findLast(r=>r.parameter===a)??[]);if(o.length===0)return i`<p class="soft section">${s("tank.no_figures")}</p>`;let n=new Map(Object.entries(e.limits));return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${s("tank.figures")}</h2></caption>
        <tbody>${o.map(a=>{let{value:r,unit:l,also:c}=Dt(a),u=n.get(a.parameter)?.mg_n_l,m=u&&H(a.parameter,u,a.basis??"ion");return i`<tr key=${a.parameter}>
            <th scope="row">${L(a.parameter)}<span class="also">${A(a.at,t.now)}</span>
              </th>
            <td><span class="big">${r}</span> <span class="unit">${l}</span>
              ${c&&i`<span class="also">${c}</span>`}
              ${m&&i`<span class="also">${s("tank.limit",{limit:m})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
    </section>`}function ma({stock:t,now:e}){let{animals:o}=Me(t,e);return o.length?o.map(n=>Uo(n.species,n.count)).join("\xA0\xB7 "):s("stock.none_yet")}var pa=({source:t,label:e})=>[t?.name??s("water.none"),e?.name??s("label.none")].join("\xA0\xB7 ");function da(t){let e=ao(t).filter(o=>!o.over).length;return e?s("tasks.count",{count:e}):s("tasks.none")}var X=gt.length,pt=[...gt,null,...tt],$a=2*36e5,Mn=()=>({at:0,begun:Date.parse(y.value.now()),readings:{},typed:{}});function fa({id:t}){let e=C("tank",t),o=j({name:`test.${t}`,first:Mn}),n=G(e,"reading",e?.name??"");if(!e||n)return n;let a=o.draft.value,r=pt[a.at]??null,l=Object.values(a.readings),c=_a(l),u=(d,_={})=>{to(),o.set({..._,at:d<pt.length?Math.max(d,0):X}),scrollTo(0,0)},m=d=>u(pt.indexOf(d),tt.includes(d)?{from:a.at}:{}),$=()=>o.save(()=>{let d={tank:t,test:T(),...a.when?{at:a.when}:{}};return{writes:l.map(_=>({type:"put",kind:"reading",id:T(),fields:{..._,...d}})),said:s("saved.readings",{count:l.length}),to:`/tank/${t}`}}),p=l.length>0&&c.length===0&&!W(a.when);return i`
    <${x} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${ha} test=${a} to=${u} />
        <button class="main" type="button" disabled=${!p} onClick=${h(()=>{$()})}>
          ${l.length?s("test.save",{count:l.length}):s("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${a.at>X?s("test.seldom"):s("test.place",{at:Math.min(a.at+1,X),of:X})}</span>`}>
      ${k.value-a.begun>$a&&l.length>0&&i`
        <div class="row apart caution"><span>${s("test.begun",{when:A(a.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${h(()=>o.draft.value=Mn())}>${s("test.afresh")}
            </button></div>`}
      <${z} form=${o} kind="reading" />
      <${ga} strange=${c} here=${r}
        on_go=${d=>u(pt.indexOf(d))} />
      ${r?i`<${ka} key=${r} tank=${t} parameter=${r} form=${o} to=${u} />`:i`<${ya} readings=${a.readings} on_go=${m} />`}
      ${a.at<X&&i`<${wa} on_go=${m} />`}
      <${B} at=${a.when} on_at=${d=>o.set({when:d})} />
    <//>`}var _a=t=>t.flatMap(({parameter:e,unit:o,value:n})=>{let a=yo({parameter:e,unit:o},L(e)),r=xo(a,n);return r?[{parameter:e,spec:a,error:r}]:[]});function ha({test:t,to:e}){let o=pt[t.at],n=t.at>X?t.from??X:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(n))}>${s("test.back")}</button>`}
    ${o&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(t.at+1))}>
      ${s(t.readings[o]?"test.next":"test.skip")}</button>`}`}var ga=({strange:t,here:e,on_go:o})=>t.map(({parameter:n,spec:a,error:r})=>i`
    <div key=${n} role="alert"><${ut} spec=${a} error=${r} />
      ${n!==e&&i`<button class="quiet" type="button" onClick=${h(()=>o(n))}>
        ${s("test.key_again",{what:ve(te(n))})}</button>`}</div>`),wa=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${s("test.seldom")}</span>
    ${tt.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${L(e)}</button>`)}</div>`;function ka({tank:t,parameter:e,form:o,to:n}){let a=o.draft.value,r=c=>({...a.readings,[e]:{...c,at:y.value.now()}});return i`<${va} tank=${t} parameter=${e} test=${a}
    on_pick=${c=>n(a.at+1,{readings:r(c)})} on_type=${(c,u,m)=>{let{[e]:$,...p}=a.readings;o.set({keyed_in:{...a.keyed_in,[e]:m},typed:{...a.typed,[e]:c},readings:u?r(u):p})}} />`}function va({tank:t,parameter:e,test:o,on_pick:n,on_type:a}){let r=Ro(e),l=o.readings[e]?.value,c=r.unit??ne[e],{label:u,unit:m,hold:$,text:p}=J(c),{per_drop:d}=r,_=w=>se(r,Number(($(Number(w))*(d??1)).toPrecision(6))),g=p(o.typed[e]??null,o.keyed_in?.[e]);return i`
    <h2 class="asked">${L(e)} <span class="soft unit">
      ${[r.entry==="steps"?c:u,Lt(e,r.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${r.common?r.entry==="steps"?s("kit.common"):tt.includes(e)?s("kit.drops",{unit:ne[e]}):s("kit.keypad"):r.name}</span>
      <a class="quiet" href=${r.id?`/room/test_kit/${r.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${s(r.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(r.timers??[]).length>0&&i`<${ba} kit=${r} tank=${t} />`}
    ${r.entry==="steps"&&(r.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${L(e)}>
          ${(r.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${h(()=>n(se(r,w)))}>${M(w)}</button>`)}
        </div>`:i`<${Ut} label=${L(e)} unit=${d?s("test.drops"):u} value=${g}
          on_value=${w=>a(w,w===""?null:_(w),m)} />
          ${d&&g&&i`<p class="soft center" role="status">
            ${s("test.drops_are",{figure:`${M(_(g).value)} ${c}`})}</p>`}`}`}var ba=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((o,n)=>{let a=`${e}.${t.id}.${n}`,r=wo(a),l=()=>go({id:a,what:`${te(t.parameter)}: ${o.what}`,seconds:o.seconds,href:`/tank/${e}/test`});return i`<li key=${n} class="line"><span>${n+1}. ${o.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${D} name="clock" size=${20} />
        <span class="figures">${r===null?St(o.seconds):r>0?St(r):s("timer.again",{time:St(o.seconds)})}</span></button></li>`})}</ol>`,ya=({readings:t,on_go:e})=>i`
  <h2 class="asked">${s("test.answers")}</h2>
  <ul class="lines">${pt.map((o,n)=>{if(!o)return null;let a=t[o],r=a&&Dt(a);return i`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${L(o)}</span>
      ${r?i`<span class="figures"><b class="hand">${r.value}</b> ${r.unit}</span>`:i`<span
        class="soft">${s(n>X?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function xa(){let t=rt(E),e=t.find(o=>Ve(o)?.advice.test_due)??t[0];return ot(()=>{e&&Wt(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),i`<${x} title=${s("test.do")} place="round">
    ${!e&&i`<p class="sentence">${s("round.empty")}</p>`}
  <//>`}export{On as Change,zn as Dose,es as DoseGroup,as as Feed,Ts as LongRunPage,Is as Note,Zs as Outlook,aa as Tank,fa as Test,xa as TestNext};
//# sourceMappingURL=tank-CW7YKTVT.js.map
