import{$ as Oo,Ca as F,Da as H,Fa as Wo,G as To,H as Ut,Ha as Uo,I as lt,L as Ao,M as Lo,N as Do,O as No,P as ht,Pa as Yo,Qa as Ho,Sa as Ko,Xa as Bo,Ya as K,Z as Eo,Za as B,_a as j,a as vo,aa as ct,b as bo,ba as Y,da as Io,fa as qo,k as yo,ka as gt,l as xo,la as Z,ma as se,oa as Ro,pa as ae,q as Mo,qa as Po,r as So,v as Co,va as Fo}from"./chunk-G5XCVV2Q.js";import{$ as Ct,$b as y,$c as no,Ad as _o,B as ke,Bc as Ze,Bd as ho,C as a,Ca as De,Cb as $t,Cd as Ft,D as q,Db as G,Dc as to,Dd as Wt,E as M,Ec as h,Fb as L,Fd as go,Ga as Ne,Gb as ee,Gd as wo,H as A,Ha as Ee,Hb as Lt,Hd as x,Ib as Dt,J as ve,Jb as ft,Kb as Q,Kd as ko,Lb as X,Lc as eo,Ld as it,Mb as ze,Mc as oo,Nb as v,Nc as It,Ob as Nt,P as be,Qb as _t,Rb as R,T as St,Ua as Oe,Ub as Et,Uc as oe,V as Xt,Vb as Ge,X as pt,Xb as Qe,Y as ot,Ya as Ie,Yc as ne,Z as nt,Za as at,_ as Zt,_a as rt,ac as k,b as et,ba as ye,c as bt,ca as xe,cb as qe,cc as P,d as yt,da as Tt,db as Re,dc as C,e as pe,eb as Pe,ed as so,fa as Me,fb as Fe,g as E,gb as te,h as i,ib as We,ic as O,id as ao,jb as Ue,kb as Ye,lb as He,lc as Ot,mb as Ke,mc as Ve,nc as Je,nd as ro,oa as At,oc as D,od as io,pa as st,pb as dt,pd as lo,qa as Se,ra as Ce,rd as co,sa as Te,sd as qt,ta as Ae,td as uo,ud as Rt,vd as Pt,w as we,wd as mo,xd as po,yb as Be,yc as T,yd as $o,za as Le,zb as je,zc as Xe,zd as fo}from"./chunk-BVTFX4IR.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import"./chunk-HUU73SPY.js";import{A as ge,B as J,C as I,D as Jt,E as S,c as Vt,d as xt,f as de,l as U,o as Mt,p as $e,t as fe,u as _e,w as he}from"./chunk-DKQSE4J2.js";import"./chunk-M3MFIEEJ.js";function jo(t,{levels:e,limits:o},s){let{tank:n,source:r,label:l,readings:c}=t,u=c.findLast(({parameter:$})=>$==="kh"),m=Et(t)?.celsius,p={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&dt(u))??n.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:r?.ph,source_kh_dkh:r?.kh_dkh,source_temperature_c:r?.temperature_c??m,source_tan_mg_n_l:Ct(r,"total_ammonia",l),fraction:s};if(Object.values(p).includes(void 0))return null;try{let $=p;return{input:$,answer:S("water_after_change",$)}}catch($){if($ instanceof U)return null;throw $}}var Cn=14,Tn=["salt","other"];function zo({tank:t,doses:e,now:o},s){let n=new Map;for(let{label:r,at:l}of e){if(r?.basis!=="whole_tank"||!Tn.includes(r.use)||o-Date.parse(l)>Cn*864e5)continue;let c=An(r,t.water_l,s);c!==null&&n.set(r.id,{label:r,at:l,amount:c,unit:r.unit})}return[...n.values()]}function An({amount:t,per_l:e,unit:o},s,n){let r={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let l=S("bath_dose",{...r,water_l:s,change_fraction:n,every_days:1,days:1}),c=(o==="g"?l.again_g:l.again_ml)??null;return o==="drops"&&c!==null?Math.round(c):c}catch(l){if(!(l instanceof U))throw l;return null}}var Ln={cold:12,hot:50};function Go({facts:t,litres:e}){let o=je("taps",()=>Ln),s=Et(t),n=(r,l)=>i`
    <${Yo} label=${a(`warmth.${r}`)} unit="°C" min=${1} max=${l} value=${o.value[r]}
      on_value=${c=>o.value={...o.value,[r]:c}} />`;return i`
    <details class="more section"><summary>${a("warmth.title")}</summary>
      ${s?i`
        <p class="soft">
          ${s.at?a("warmth.read",{warmth:Nt(s.celsius),when:A(s.at,t.now)}):a("warmth.usual",{warmth:Nt(s.celsius)})}</p>
        ${n("cold",40)}${n("hot",80)}
        <${Dn} mix=${Ge(e,s.celsius,o.value)} />
        <p class="caution small">${J("water_blend","hot_water")}</p>`:i`<p class="soft">${a("warmth.unknown")}</p>`}
    </details>`}var Dn=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${a("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:Nt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${a("warmth.missed")}</p>`}
  <${Y} name="water_blend" input=${t.input} answer=${t.answer} />`;var Nn=.25,En=()=>({typed:null});function On({id:t}){let e=C("tank",t),o=K({name:`change.${t}`,first:En}),s=bt(null),n=j(e,"water_change",a("change.title"));if(!e||n)return n;let{facts:r,advice:l}=Ot(e),c=In(s,r,l),u=c.act!=="retest"&&c.litres||st(Nn*e.water_l,e.water_l,r.water_unit),m=G("L"),{typed:p,unit:$="L",from_tank:d="",at:_}=o.draft.value,g=p===null?u:Yn(m.hold(Number(p),$),e.water_l),w=Ae(e,g),f=w||d?null:Ce(r,g);d&&!y.value.is_ready(d)&&y.value.ready(d);let z=d?{...r,source:Ie(O.of("reading",d),{from_tank:d,at:_??y.value.now()})}:r,N=g/e.water_l,kt={litres:v(g||0),dose:f?.amount!==void 0?R(f):""},Qt=()=>o.save(()=>{let W=d?{from_tank:d}:r.source?{source_water:r.source.id}:{},vt=qn({tank:t,at:_,litres:g,fraction:N,...W},f);return{writes:vt,said:a(vt.length>1?"saved.change_dose":"saved.change",kt),to:`/tank/${t}`}});return i`
    <${x} title=${a("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||F(_)}
        onClick=${h(()=>{Qt()})}>${a(f?.amount!==void 0?"change.log_dose":"change.log",kt)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?co(c,k.value):a("change.usual",{litres:v(u)})}</p>
      <${B} form=${o} kind="water_change" />
      <${Rn} form=${o} tank=${e} litres=${g} suggested=${u} wrong=${w} />
      ${f&&i`<${Fn} id=${t} dose=${f} />`}
      ${!w&&i`<${Pn} facts=${r} fraction=${N} />`}
      ${!w&&i`<${Un} facts=${z} advice=${c} fraction=${N} />`}
      ${!w&&i`<${Go} facts=${r} litres=${g} />`}
      <${Wn} id=${t} from_tank=${d}
        on_pick=${W=>o.set({from_tank:W})} />
      <${H} at=${_} on_at=${W=>o.set({at:W})} />
      ${Hn(f).map(W=>i`<p class="caution small" key=${W}>${W}</p>`)}
    <//>`}function In(t,e,o){let s=[e.readings,e.changes].map(n=>n.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==s&&(t.current={last:s,advice:o}),t.current?.last===s?t.current.advice:o}function qn(t,e){let o=T(),s=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:n,amount:r,unit:l}=e,{tank:c,at:u,litres:m}=t,p={at:u,tank:c,label:n.id,what:n.name,amount:r,unit:l,for_litres:m,water_change:o};s.push({type:"put",kind:"dose",id:T(),fields:p})}return s}function Rn({form:t,tank:e,litres:o,suggested:s,wrong:n}){let r=E(!1),l=G("L"),{typed:c,unit:u="L"}=t.draft.value,m=At(e.water_l,l.unit),p=v(m),$=_=>t.set({typed:_,unit:l.unit}),d=_=>$(String(l.show(Math.min(Math.max(o+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${a("change.litres")}>
      <button class="quiet" type="button" aria-label=${a("change.less",{step:p})}
        onClick=${()=>d(-1)}><${D} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${r.value}
        aria-label=${a("change.type",{litres:v(o||0)})}
        onClick=${h(()=>r.value=!r.value)}>
        <span>${M(l.show(o||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${a("change.more",{step:p})}
        onClick=${()=>d(1)}><${D} name="plus" size=${28} /></button>
    </div>
    ${n?i`<div role="alert"><${ct} spec=${Te(e,a("change.litres"))} error=${n} /></div>`:i`<p class="soft center">${a("change.share",{percent:q(100*o/e.water_l,0)})}</p>`}
    ${r.value&&i`<${Ut} label=${a("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${$} />`}
    ${c!==null&&o!==s&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>$(null))}>${a("change.suggested",{litres:v(s)})}</button></p>`}`}function Pn({facts:t,fraction:e}){let o=zo(t,e);return o.length===0?null:i`
    ${o.map(s=>i`<p key=${s.label.id}>${a("dose.again",{name:s.label.name,when:A(s.at,t.now),dose:R(s)})}</p>`)}
    ${o.some(({label:s})=>s.use==="other")&&i`<p class="caution small">
      ${J("bath_dose","label_over_all")}</p>`}`}var Fn=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${R(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${a(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_label")}</a></p>`:i`<p class="dose">${a("dose.none")}</p>`,Wn=({id:t,from_tank:e,on_pick:o})=>P("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${a("change.other_tank")}</summary>
    <${Po} tank=${t} value=${e} label=${a("change.out_of")} on_pick=${s=>o(s===e?"":s)} />
    <p class="soft small">${a("change.other_tank_why")}</p>
  </details>`,Un=({facts:t,advice:e,fraction:o})=>{let s=Object.values(e.levels).flatMap(({parameter:r,now_mg_n_l:l,reading:c})=>l?[{parameter:r,now_mg_n_l:l,basis:nt({reading:c})}]:[]),n=jo(t,e,o);return(s.length>0||n)&&i`
    <table class="measured"><caption><h2>${a("change.after")}</h2></caption><tbody>
      ${s.map(({parameter:r,now_mg_n_l:l,basis:c})=>{let u=Ct(t.source,r,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:l,source_mg_l:u,fractions:[o]});return i`<tr key=${r}><th scope="row">${L(r)}</th>
          <td class="figures">${ft(r,l,c)} → <span class="big">
            ${ft(r,m,c)}</span> <span class="unit">
            ${`mg/L ${Lt(r,c)}`}</span></td></tr>`})}${n&&i`<tr><th scope="row">${L("ph")}</th><td class="figures">${q(n.input.ph,1)} → <span
          class="big">${q(n.answer.ph,1)}</span>${q(n.answer.ph_settled,1)!==q(n.answer.ph,1)&&i`<span class="also">${a("change.ph_settled",{ph:q(n.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${n?.answer.notes.map(r=>i`<p class="caution small" key=${r}>${r}</p>`)}`},Yn=(t,e)=>Math.abs(t-e)<1e-6?e:t,Hn=t=>[...I("dilution"),...t?.amount!==void 0?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Kn=.25,Bn=1,jn={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function Qo(t,e){let o=s=>e.findLastIndex(n=>n.label?.id===s.id);return[...t].sort((s,n)=>o(n)-o(s)||s.name.localeCompare(n.name))}var Vo=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??st(Kn*t.water_l,t.water_l);function Yt(t,e){let o=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),s=Jt(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(s)):s,unit:t.unit}}function Jo(t,e,o){let s={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},n=S("starter_dose",s),r=o===void 0;return{input:s,answer:n,amount:r?n.ammonium_chloride_g:Jt(n,"household_ammonia_ml"),unit:r?"g":"ml",tan_mg_n_l:n.tan_mg_n_l}}function re(t,e=[]){let{water_l:o,feed_g_day:s=0,protein_fraction:n=0}=t,r=So(t,e);return s<=0&&r>0?S("starter_dose",Mo(o,r).input).tan_mg_n_l:s<=0||n<=0?Bn:S("starter_dose",{volume_l:o,feed_g_day:s,protein_fraction:n}).tan_mg_n_l}var Xo=t=>t.reduce((e,{change:o,count:s})=>e+(jn[o]??0)*(s??0),0)>0;function Zo(t,e,{system:o,marks:s}){let n=Mt().salt_dose,{volume_l:r,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=Co(n,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:o,marks:s});if(!("answer"in c))return null;let u=c.payload,m=c.answer;return{what:ge(_e("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Ht="salt",Kt="ammonia",zn=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function Gn({id:t}){let e=C("tank",t),o=K({name:`dose.${t}`,first:zn}),s=j(e,"dose",a("dosing.title"));if(!e||s)return s;let{changes:n,doses:r}=at(O,e,k.value),l=Qo(P("label"),r),c=Zo(e,Be("bench.salt_dose",()=>({})).value,{system:$t.value,marks:we(ke())}),u=Xo(Le(P("stock_change"),t)),{way:m,at:p}=o.draft.value,$=l.find(f=>f.id===m),d=Vn(o.draft.value,{tank:e,label:$,salt:c,animals:u,changes:n}),{fields:_}=d,g=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:T(),fields:{tank:t,at:p,..._}}],said:a("dosing.saved",{dose:R(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),w=_&&i`<button class="main" type="button" disabled=${F(p)} onClick=${h(()=>{g()})}>
      ${a("dosing.log",{dose:R(_)})}</button>`;return i`
    <${x} title=${a("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${Xn} dose=${r.at(-1)} />
      <${B} form=${o} kind="dose" />
      <${Qn} tank=${t} form=${o} labels=${l} salt=${c} />
      ${$&&i`<${Zn} form=${o} tank=${e} label=${$} dose=${d}
        litres=${tn(o.draft.value,e,$,n)} />`}
      ${m===Ht&&c&&i`<${ie} dose=${d}
        said=${a("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Kt&&i`<${ts} tank=${e} form=${o} dose=${d} animals=${u} />`}
      ${_&&i`<${H} at=${p} on_at=${f=>o.set({at:f})} />`}
      ${es(m,$).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Qn({tank:t,form:e,labels:o,salt:s}){let n=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${h(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,r=({amount:l,unit:c,per_l:u})=>a("label.line",{amount:M(l),unit:a(`unit.${c}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${a("dosing.what")}>
      ${o.map(l=>n(l.id,l.name,r(l)))}
      ${s&&n(Ht,s.what,a("dosing.from_bench"))}
      ${n(Kt,a("dosing.ammonia"),a("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${y.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${D}
        name="plus" size=${20} />${a("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${a("dosing.work_out_salt")}</a>
    </div>`}function Vn(t,{tank:e,label:o,salt:s,animals:n,changes:r}){try{if(o){let l=tn(t,e,o,r);return{fields:{...Yt(o,l),label:o.id,what:o.name,for_litres:l}}}if(t.way===Ht&&s){let{what:l,what_code:c,amount:u,unit:m,input:p,answer:$}=s;return{fields:{what:l,what_code:c,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:p,answer:$}}return t.way===Kt&&!n?Jn(t,e):{}}catch(l){if(!(l instanceof U))throw l;return{errors:l.errors}}}function Jn(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:s,unit:n,tan_mg_n_l:r,input:l,answer:c}=Jo(e,en(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:no(u),what_code:u,amount:s,unit:n,tan_mg_n_l:r,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var tn=({litres:t},e,o,s)=>t===null?Vo(e,o,s):Tt(Number(t.text),t.unit,"L"),en=({tan:t},e)=>t===null?re(e,P("own_species")):Number(t),Xn=({dose:t})=>i`<p class="soft">
    ${t?a("dosing.last",{dose:R(t),what:so(t),when:A(t.at,k.value)}):a("dosing.never")}</p>`;function Zn({form:t,tank:e,label:o,litres:s,dose:n}){let r=ye({name:"",unit:"L"},$t.value),l=t.draft.value.litres,c=te(Tt(At(e.water_l),"L",r));return i`
    <section class="section"><h2>${a("dosing.for_water")}</h2>
      <${lt} label=${a("dosing.for_water")} unit=${xe(r)} value=${Tt(s,"L",r)}
        typed=${l&&l.unit===r?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:r}})} />
      <${ie} dose=${n} said=${a(`dose.basis_${o.basis}`)} />
    </section>`}function ts({tank:t,form:e,dose:o,animals:s}){if(s)return i`<p class="wrong section" role="status"><${D} name="needs" /><span>${a("dosing.animals_here")}</span>
      </p>`;let{tan:n,household:r,percent:l}=e.draft.value,c=en(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${a("dosing.wanted")}</h2>
      <${lt} label=${a("dosing.wanted")} unit="mg N/L" value=${c} typed=${n}
        step=${te(Math.max(re(t,P("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${a("dosing.with")}>
      <button type="button" aria-pressed=${!r} onClick=${u(!1)}>${a("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${r} onClick=${u(!0)}>${a("dosing.household_ammonia")}
        </button>
    </div>
    ${r&&i`<section class="section"><h2>${a("dosing.strength")}</h2>
      <${lt} label=${a("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${a("dosing.no_strength")}</p>`}</section>`}
    <${ie} dose=${o} said=${a("dosing.gives",{tan:X(c||0),litres:v(t.water_l)})}
      />`}var ie=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${ct} key=${o.field} error=${o}
    spec=${{label:a("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${R(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${Y} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function es(t,e){return t===Ht?I("salt_dose"):t===Kt?I("starter_dose"):[a("dosing.label_first"),...e?.use==="dechlorinator"?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function os({place:t}){let e=E(""),o=E([]);if(!y.value.may("dose"))return i`<${Bo} title=${a("group_dose.title")} up="/" />`;let s=rt(O).filter(m=>(m.place?.trim()??"")===t),n=P("label").filter(({basis:m})=>m==="whole_tank"),r=n.find(({id:m})=>m===e.value)??(n.length===1?n[0]:null),l=r?s.flatMap(m=>ns(m,r)):[],c=l.filter(({tank:m})=>!o.value.includes(m.id)),u=m=>o.value=o.value.includes(m)?o.value.filter(p=>p!==m):[...o.value,m];return i`
    <${x} title=${a("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||a("many.no_place")}</span>`}
      act=${r&&i`<button class="main" type="button" disabled=${c.length===0}
        onClick=${h(()=>{ss(r,c)})}>${a("group_dose.log",{count:c.length})}</button>`}>
      ${n.length===0?i`<p class="sentence">${a("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${a("water.new_label")}</a></p>`:i`<section class="section"><h2>${a("group_dose.which")}</h2><div class="tiles two short">${n.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===r?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${r&&i`<section class="section"><h2>${a("group_dose.tanks")}</h2><div class="tiles two short">${l.map(({tank:m,amount:p,unit:$})=>i`<button key=${m.id} type="button"
          aria-pressed=${!o.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${R({amount:p,unit:$})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${a("dosing.label_first")}</p>`}
    <//>`}function ns(t,e){try{return[{tank:t,...Yt(e,t.water_l)}]}catch(o){if(o instanceof U)return[];throw o}}async function ss(t,e){let o=y.value.now(),s=e.map(({tank:{id:n,water_l:r},amount:l,unit:c})=>({type:"put",kind:"dose",id:T(),fields:{tank:n,at:o,label:t.id,what:t.name,amount:l,unit:c,for_litres:r}}));await Xe(s,a("group_dose.saved",{count:s.length,label:t.name}))&&Wt("/",{replace:!0})}var nn=["food","protein_fraction"],as=()=>({typed:null,food:null,own:{},at:void 0});function rs({id:t}){let e=C("tank",t),o=K({name:`feed.${t}`,first:as}),s=j(e,"feeding",a("feed.title"));if(!e||s)return s;let n=at(O,e,k.value),{feedings:r}=n,l=Ue(n),c=We(e,r,l?.answer.usual_g_day),u=He(P("feeding")),{typed:m,at:p}=o.draft.value,$=m===null?c.feed_g:Number(m),d=us(o.draft.value,u,c),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:T(),fields:{tank:t,at:p,feed_g:f,...f>0?d:{}}}],said:f>0?a("feed.saved",{amount:_t(f),tank:e.name}):a("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),g=i`
    <button class="quiet tall" type="button" disabled=${F(p)} onClick=${h(()=>{_(0)})}>
      ${a(p?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!($>0)||F(p)}
      onClick=${h(()=>{_($)})}>${a("feed.log",{amount:_t($||0)})}</button>`,w=m===null||$===c.feed_g?c.from:"keeper";return i`
    <${x} title=${a("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${ms} feedings=${r} />
      <${lt} label=${a("feed.grams")} unit="g" value=${$} typed=${m} step=${Ye(c.feed_g)}
        least=${.01} most=${he("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${a(`feed.from_${w}`,{usual:_t(c.feed_g)})}</p>
      ${l&&i`<${is} answer=${l.answer} feed_g=${$} />`}
      <${B} form=${o} kind="feeding" beside=${o.draft.value.food===""?nn:[]} />
      <${cs} form=${o} known=${u} given=${d} />
      <${H} at=${p} on_at=${f=>o.set({at:f})} />
      ${$>0&&i`<${ps} tank=${e} feed_g=${$} protein_fraction=${d.protein_fraction} />`}
      <${ls} ration=${l} />
      ${I("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var is=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>i`
  <p class=${o>e?"wrong":"soft small center"}>
    ${a("feed.ration",{usual:on(t),most:on(e)})}</p>`,ls=({ration:t})=>t&&i`<section class="section"><h2>${a("feed.ration_why")}</h2>
    <${Y} name="feed_ration" ...${t} /></section>`,on=t=>`${M(t,t<1?2:1)}\xA0g`,sn=()=>nn.map(t=>fe($e().feeding.fields,t));function cs({form:t,known:e,given:o}){let{food:s,own:n}=t.draft.value;return i`
    <section class="section"><h2>${a("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${a("feed.food")}>
        ${e.map(({food:r,protein_fraction:l})=>i`
          <button type="button" key=${r} aria-pressed=${o.food===r}
            onClick=${h(()=>t.set({food:r}))}>
            <b>${r}</b>${l!==void 0&&i`<span class="soft small">
              ${a("feed.protein",{percent:q(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${s===""} onClick=${h(()=>t.set({food:""}))}><${D}
          name="plus" />${a("feed.other")}</button>
      </div>
      ${s===""&&i`<div class="section"><${Oo} specs=${sn()} raw=${n} errors=${t.errors.value} tried=${!0}
        on_raw=${r=>t.set({own:r})} /></div>`}
    </section>`}function us({food:t,own:e},o,s){if(t==="")return Eo(sn(),e);let n=o.find(u=>u.food===t),{feed_g:r,from:l,...c}=s;return t!==null&&n?{...n}:c}function ms({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${a("feed.never")}</p>`;let o={when:A(e.at,k.value),amount:_t(e.feed_g),food:e.food??""};return i`<p class="soft">${a(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function ps({tank:t,feed_g:e,protein_fraction:o}){try{let{input:s,answer:n,assumed:r}=Ke(t,e,o),l={mg:M(n.tan_mg_n_day,1),rise:X(n.tan_mg_n_l_day),percent:q(100*s.protein_fraction,0)};return i`
      <section class="section"><h2>${a("feed.becomes")}</h2>
        <p>${a("feed.nitrogen",l)}${r&&i` ${a("feed.assumed",l)}`}</p>
        <${Y} name="nitrogen_load" input=${s} answer=${n} />
      </section>`}catch(s){if(!(s instanceof U))throw s;return null}}var an=28,rn=14,ds=90,$s=3,fs=21,_s=.3,hs=60,gs=[7,3,1],ws=1;function Bt(t){let e=ks(t),o=vs(t);return{routine:e,young:ln(t)<rn,nitrate:o&&Ms(t,e,o),kh:o&&Ss(t,e,o.rise.usual)}}function ln({tank:t,now:e,changes:o,readings:s}){let n=[t.started_at,o[0]?.at,s[0]?.at].flatMap(r=>r?[Date.parse(r)]:[]);return n.length?(e-Math.min(...n))/864e5:0}function ks(t){let e=Math.min(an,ln(t)),o=t.changes.filter(({at:r})=>le(r,t.now,an));if(o.length===0||e<rn)return null;let n=1-o.reduce((r,{fraction:l})=>r*(1-Math.min(l,.95)),1)**(1/o.length);return n<.01?null:{count:o.length,litres:n*t.tank.water_l,fraction:n,every_days:e/o.length}}function vs(t){let e=bs(t);if(e)return{from:"readings",rise:e};let{feed_g_day:o,fish_g:s,protein_fraction:n,volume_l:r}=Qe(t).records.tank,{feed_of_fish:l,protein_fraction:c}=xt(),u=o??(s===void 0?void 0:s*l);if(!u)return null;let p=S("nitrogen_load",{feed_g_day:u,protein_fraction:n??c,volume_l:r}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:p,high:p}}}function bs(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&le(u.at,t.now,ds)&&Zt(u)&&!xs(u)),[o,s]=[e[0],e.at(-1)];if(!s||e.length<$s||Date.parse(s.at)-Date.parse(o.at)<fs*864e5)return null;let n=0,r=0;for(let u=1;u<e.length;u++){let m=ys(t,e[u-1],e[u]);n+=ot(e[u])-m.left,r+=m.days}if(r<=0)return null;let l=_s*Math.hypot(ot(o),ot(s))/r,c=n/r;return{low:Math.max(0,c-l),usual:Math.max(0,c),high:Math.max(0,c+l)}}function ys({changes:t},e,o){let s=ot(e),n=0,r=Date.parse(e.at);for(let{at:l,fraction:c,source:u}of t)l<=e.at||l>o.at||(n=(n+(Date.parse(l)-r)/864e5)*(1-c),s=s*(1-c)+c*(u?.nitrate_mg_n_l??0),r=Date.parse(l));return{left:s,days:n+(Date.parse(o.at)-r)/864e5}}var xs=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function Ms(t,e,{from:o,rise:s}){let n=Fe(t).nitrate.mg_n_l,r=t.source?.nitrate_mg_n_l??0,l=t.readings.findLast(p=>p.parameter==="nitrate"&&Zt(p)),c=p=>{if(!e)return null;let $={add_mg_l_day:p,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:r,ceiling_mg_l:n};return{input:$,answer:S("steady_routine",$)}},u=p=>c(p)?.answer.before_change_mg_l??0,m=c(s.usual);return{from:o,rise_mg_n_l_day:s,limit_mg_n_l:n,settles_mg_n_l:m&&{low:u(s.low),usual:u(s.usual),high:u(s.high)},worked:m,days_to_limit:e||s.usual<=0?null:Math.max(0,n-(l?ot(l):0))/s.usual,least:cn(t,e,p=>s.usual<=0?void 0:S("steady_routine",{add_mg_l_day:s.usual,change_fraction:.5,every_days:p,source_mg_l:r,ceiling_mg_l:n}).fraction_needed),source_over:r>=n}}function Ss(t,e,o){let s=t.readings.findLast(p=>p.parameter==="kh"&&le(p.at,t.now,hs)&&dt(p)!==void 0),n=s?dt(s):t.tank.kh_dkh;if(n===void 0||n>60)return null;let r=t.source?.kh_dkh,l={kh_dkh:n,nitrogen_mg_n_l_day:Math.min(o,100),floor_kh_dkh:ws},c=p=>S("alkalinity_use",{...l,source_kh_dkh:r,change_fraction:.5,every_days:p}).fraction_needed,u=e&&r!==void 0?{...l,source_kh_dkh:r,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:l,m=S("alkalinity_use",u);return{now_dkh:n,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:r===void 0||o<=0?null:cn(t,e,c),source_known:r!==void 0,worked:{input:u,answer:m}}}function cn(t,e,o){let{water_l:s}=t.tank,n=Se(t,{unhurried:!0}),r=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let l of[...r,...gs]){let c=o(l);if(!(typeof c!="number"||c*s>n))return{litres:st(c*s,s,t.water_unit,n),every_days:l}}return null}var le=(t,e,o)=>Date.parse(t)<=e&&e-Date.parse(t)<=o*864e5;var ce=365;function jt({nitrate:t,young:e},o){if(e)return a("long_run.young");if(!t)return a("long_run.no_load");let s=Q("nitrate",t.limit_mg_n_l,o);if(t.source_over)return a("long_run.source_over",{limit:s});if(t.rise_mg_n_l_day.usual<=0)return a("long_run.no_rise");if(!t.settles_mg_n_l)return Cs(t,s);let{settles_mg_n_l:n}=t,r=t.from==="food"?Q("nitrate",n.high,o):Ts(n,o),l=t.from==="food"?"at_most":"settles",c=n.high<=t.limit_mg_n_l?"under":n.low>t.limit_mg_n_l?"over":"perhaps";return a(`long_run.${l}_${t.from==="food"&&c!=="under"?"perhaps":c}`,{level:r,limit:s})}function Cs({days_to_limit:t},e){let o=Math.round(t??1/0);return o>ce?a("long_run.no_changes_far",{limit:e}):a(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var Ts=({low:t,high:e},o)=>a("outlook.between",{low:ft("nitrate",t,o),high:Q("nitrate",e,o)});function As({id:t}){let e=C("tank",t);if(!e)return i`<${it} up="/" />`;let o=at(O,e,k.value),s=Bt(o),n=o.readings.findLast(({parameter:l})=>l==="nitrate"),r=nt(n&&{reading:n});return i`
    <${x} title=${a("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${a("long_run.title")}>
        <${Ls} id=${t} found=${s} basis=${r} />
      </section>
      <section class="section"><h2>${a("long_run.kh")}</h2><${Ns} id=${t} found=${s} /></section>
    <//>`}function Ls({id:t,found:e,basis:o}){let{nitrate:s,routine:n,young:r}=e,l=s?.settles_mg_n_l&&s.settles_mg_n_l.high>s.limit_mg_n_l;return i`
    <p class="sentence">${jt(e,o)}</p>
    <p>${Ds(e)}</p>
    ${s&&!r&&i`
      <${un} id=${t} least=${s.least} routine=${n} />
      <p class="soft small">${s.from==="food"?a("long_run.from_food"):a("long_run.from_readings",{rise:Q("nitrate",s.rise_mg_n_l_day.usual*7,o)})}</p>
      ${l&&i`<p class="caution small">${J("steady_routine","slowly")}</p>`}
      ${s.worked&&i`<${Y} name="steady_routine" ...${s.worked} />`}`}`}var Ds=({routine:t,young:e})=>t?a("long_run.routine",{count:t.count,litres:v(t.litres),days:M(t.every_days,t.every_days<10?1:0)}):e?"":a("long_run.no_routine");function un({id:t,least:e,routine:o}){if(!e)return null;let{litres:s,every_days:n}=e,r=o&&o.litres/o.every_days>=s/n;return i`
    <p>${a(r?"long_run.least_held":"long_run.least",{litres:v(s),count:n})}</p>
    ${y.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${n}&title=${encodeURIComponent(a("long_run.task",{litres:v(s)}))}`}>${a("long_run.make_task")}</a></p>`}`}function Ns({id:t,found:{kh:e,nitrate:o,routine:s}}){if(!e)return i`<p>${a(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let n=M(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${Es(e)}</p>
    <p>${a("long_run.kh_falls",{fall:n,now:M(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${a("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${un} id=${t} least=${e.least} routine=${s} />
      <p class="caution small">${J("alkalinity_use","kh_floor")}</p>`}
    <${Y} name="alkalinity_use" ...${e.worked} />`}function Es({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=ce?a("long_run.kh_gone",{count:Math.round(t)}):e===null?a("long_run.kh_far"):a("long_run.kh_settles",{level:M(e,1)})}var Os=["at_surface","hiding"],ue=5e3,zt=To(),Is=()=>({picked:[],text:"",at:void 0});function qs({id:t}){let e=C("tank",t),o=`note.${t}`,s=K({name:o,first:Is}),{photos:n,busy:r,problem:l,add:c,drop:u}=Rs(o),m=j(e,"note",a("note.title"));if(!e||m)return m;let{picked:p,text:$,at:d}=s.draft.value,_=oe.filter(N=>p.includes(N)),g=[..._.map(ne),$.trim()].filter(Boolean).join(`
`),w=()=>s.save(()=>{let N={tank:t,at:d??y.value.now(),entry:T()},kt={...N,text:g.slice(0,ue),..._.length?{quick:_}:{}};return{writes:g?[{type:"put",kind:"note",id:T(),fields:kt}]:[],pictures:n.map(({picture:Qt,width:W,height:vt})=>({picture:Qt,id:T(),fields:{...N,width:W,height:vt}})),said:a("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>zt.forget(o).catch(()=>{})}}),f=(g||n.length>0)&&!r&&g.length<=ue&&!F(d),z=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{w()})}>
    ${n.length?a("note.save_photos",{count:n.length}):a("note.save")}</button>`;return i`
    <${x} title=${a("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${z}>
      <${Ps} id=${t} picked=${p} on_pick=${N=>s.set({picked:N})} />
      <div class="field section"><label for="note-text">${a("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${ue} value=${$}
          onInput=${It(N=>s.set({text:N}))}></textarea></div>
      <section class="section"><h2>${a("note.photos")}</h2>
        <${Fs} photos=${n} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${D} name="camera" />${a("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${a("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${r&&i`<p class="soft" role="status">${a("note.shrinking")}</p>`}
        <${Fo} text=${l} />
        <${B} form=${s} kind="note" />
        <p class="soft small">${a("note.photo_size")}</p>
      </section>
      <${H} at=${d} on_at=${N=>s.set({at:N})} />
    <//>`}function Rs(t){let e=E([]),o=E(0),s=E(""),n=async()=>{e.value=await zt.list(t)};et(()=>{n().catch(()=>s.value=a("note.photos_not_kept"))},[t]);let r=async u=>{o.value+=1;try{await zt.add(t,await Ko(u)),await n()}catch(m){let p=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";s.value=a(p,{file:u.name})}finally{o.value-=1}},l=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",s.value="";for(let p of m)await r(p)},c=async u=>{let m=await zt.remove(u);await n(),Ze(a("note.photo_dropped"),async()=>{await m(),await n()})};return{photos:e.value,busy:o.value>0,problem:s.value,add:l,drop:c}}function Ps({id:t,picked:e,on_pick:o}){let s=n=>o(e.includes(n)?e.filter(r=>r!==n):[...e,n]);return i`
    <div class="tiles two short" role="group" aria-label=${a("note.quick")}>
      ${oe.map(n=>i`<button type="button" key=${n} aria-pressed=${e.includes(n)}
        onClick=${h(()=>s(n))}>${ne(n)}</button>`)}
    </div>
    ${e.some(n=>Os.includes(n))&&i`
      <div class="caution" role="status"><p>${a(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${a("test.do")}</a></div>`}`}var Fs=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:s},n)=>{let r=a("photo.numbered",{at:n+1});return i`
    <li key=${o}><${Wo} picture=${s} said=${r} />
      <button class="quiet square" type="button" aria-label=${a("remove_named",{what:r})}
        onClick=${h(()=>{e(o)})}><${D} name="remove" size=${20} /></button></li>`})}</ul>`;function pn(t,e,o,s,n,r){let{start:l,records:c}=o,u=f=>l+f*36e5,m=u(c.now_h),p=Math.max(m-r*24*36e5,Math.min(l,m-48*36e5)),$=s?.doubts??[],d=c.readings.filter(f=>f.parameter===t&&u(f.at_h)>=p).map(f=>({at:u(f.at_h),...Ws(f),doubted:$.some(z=>z.parameter===t&&z.at_h===f.at_h)})),g=pt(t)&&(t!=="nitrate"||o.nitrate_known)?(s?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(f=>mn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>mn(f.at,"change",f.litres))].filter(({at:f})=>f>=p&&f<=m).sort((f,z)=>f.at-z.at);return{parameter:t,dots:d,fan:g,marks:w,limit:pt(t)?n[t]:null,from:p,now:m,to:g.at(-1)?.at??m}}var mn=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function Ws(t){if(!pt(t.parameter)){let[c,u]=t.steps?.length?Vt(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:o}=de(t),s=xt(),n=t.parameter==="nitrate"?"nitrate":"reading",[r,l]=Vt(e,o,s[`${n}_offset`],s[`${n}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:r===null?null:Math.max(r,0),high:l}}function dn(t,e){let o=s=>s===null?null:e(s);return{...t,dots:t.dots.map(s=>({...s,value:e(s.value),low:o(s.low),high:o(s.high)})),fan:t.fan.map(({at:s,p10:n,p50:r,p90:l})=>({at:s,p10:e(n),p50:e(r),p90:e(l)}))}}function $n({parameter:t,dots:e,fan:o,limit:s}){let n=[...e.flatMap(({value:u,low:m,high:p})=>[u,m??u,p??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...s?[s.mg_n_l]:[]],r=Math.max(...n);if(pt(t))return[0,r>0?r*1.12:1];let l=Math.min(...n),c=Math.max((r-l)*.2,.5);return[l-c,r+c]}var fn=({doubted:t})=>i`
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
  </ul>`,_n=({ready:{code:t,from:e,likely:o,to:s}})=>{let n=r=>r===void 0?"":ve(r);return i`
    <section class="section"><h2>${a("ready.title")}</h2>
      <p class="sentence">${a(`ready.${t}`,{from:n(e),likely:n(o),to:n(s)})}</p>
      <p class="soft small">${a("ready.means")}</p>
    </section>`};function hn({weeks:t,expected:e}){let[o]=t;return i`
    <details class="more section"><summary>${a("carry.title")}</summary>
      <p>
        ${a("carry.now",{low:ut(o.feed_g_day.p10),high:ut(o.feed_g_day.p90),expected:ut(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${a("carry.when")}</th><th scope="col" class="right">${a("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:s,feed_g_day:n})=>i`
          <tr key=${s}><th scope="row">${a(`carry.in_${s}`)}</th>
            <td>${ut(n.p50)}<span class="also">
              ${a("outlook.between",{low:ut(n.p10),high:ut(n.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${Mt().stock_headroom.uncertainty}</p>
    </details>`}var gn=()=>{let t=[...I("outlook"),...I("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},ut=t=>`${M(t,t<1?2:1)} g`;var Us=86400,Ys=["p10","p50","p90"];function wn({lines:t}){let e=bt(null);return et(()=>Do(e.current,()=>Ks(t),Hs(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var Hs=({fan:t,from:e,now:o})=>{let s=t.length?t:[{at:o,p10:null,p50:null,p90:null}],r=[{at:e,p10:null,p50:null,p90:null},...s];return[r.map(({at:l})=>l/1e3),...Ys.map(l=>r.map(c=>c[l]))]};function Ks(t){let{from:e,now:o,to:s}=t,[n,r]=$n(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,s/1e3+(s>o?0:Us/2)]},y:{range:[n,r]}},series:[{},l,{stroke:()=>ht("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>ht("--fan")}],axes:No(),hooks:{drawAxes:[c=>Ao(c,t,ht)],draw:[c=>Lo(c,t,ht)]}}}var Gt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Bs=6;function kn({lines:t,next:e,as_table:o,now:s}){let{parameter:n}=t,r=yt(()=>n==="temperature"?dn(t,G("\xB0C").show):t,[t,$t.value]),l=`of-${n}`;return i`
    <section class="parameter" aria-labelledby=${l}>
      <h2 id=${l}>${L(n)} <span class="unit">${vn(n)}</span></h2>
      ${e&&n in Gt&&i`<${js} lines=${r}
        chance=${e.pass_chance[Gt[n]]}
          standing=${e.now[`${n}_mg_n_l`]} />`}
      ${!o&&i`<${wn} lines=${r} />`}
      <div class=${o?"":"unseen"}><${zs} lines=${r} now=${s} /></div>
    </section>`}function js({lines:t,chance:e,standing:o}){let{parameter:s,limit:n,fan:r}=t;if(!n||r.length===0)return null;let l=r.at(-1),c=l&&l.p90-l.p10>n.mg_n_l,u={chance:lo(e)},m=o.p50>n.mg_n_l?a("outlook.perhaps_over",u):a("outlook.chance",u),p=o.p10>n.mg_n_l?a("outlook.over"):m;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${a("outlook.limit",{limit:X(n.mg_n_l),also:ze(s,n.mg_n_l),by:a(`limit.${n.by}`)})} ${c&&a("outlook.wide")}</p>`}function zs({lines:t,now:e}){let{parameter:o,fan:s,dots:n,marks:r}=t,l=p=>Qs(o,p),c=Math.max(1,Math.round((s.length-1)/Bs)),u=[...n.map(p=>({at:p.at,what:a(p.doubted?"outlook.read_doubted":"outlook.read"),value:l(p.value),span:Gs(p,l)})),...r.filter(({kind:p})=>p==="change").map(({at:p,said:$})=>({at:p,what:a("history.changed",{litres:v($)}),value:"",span:""}))].sort((p,$)=>$.at-p.at),m=r.filter(({kind:p})=>p==="feeding");return i`
    ${m.length>0&&i`<p class="soft small">${a("outlook.fed",{count:m.length,grams:M(m.reduce((p,{said:$})=>p+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${L(o)} ${vn(o)}</caption>
      ${s.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.likely")}</th></tr>
          ${s.filter((p,$)=>$%c===0).map(({at:p,p10:$,p50:d,p90:_})=>i`
            <tr key=${p}><th scope="row">${A(p,e)}</th><td>${l(d)} <span class="also">
              ${a("outlook.between",{low:l($),high:l(_)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.so_far")}</th></tr>
        ${u.map(({at:p,what:$,value:d,span:_},g)=>i`
          <tr key=${`${p}-${g}`}><th scope="row">${A(p,e)}<span class="also">${$}</span></th><td>${d}
            ${_&&i` <span class="also">${_}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function Gs({low:t,high:e},o){return t===e?"":t===null?a("outlook.up_to",{high:o(e)}):e===null?a("outlook.from",{low:o(t)}):a("outlook.between",{low:o(t),high:o(e)})}var Qs=(t,e)=>t in Xt?X(e):q(e,1),vn=t=>t in Xt?"mg N/L":t==="temperature"?G("\xB0C").label:"";var Vs=["total_ammonia","nitrite","nitrate","ph","temperature"],bn=[2,6],Js=["doubt","prior","few","rule_working","rule_failed"];function Xs({id:t}){let e=C("tank",t);return e?i`<${Zs} tank=${e} />`:i`<${it} up="/" />`}function Zs({tank:t}){let e=E(bn[0]),o=E(!1),{facts:s,asked:n,forecast:r,advice:l}=Je(t),{ahead:c,next:u,headroom:m}=r.answers,p=d=>u?.pass_chance[Gt[d]]??-1,$=yt(()=>[...Vs].sort((d,_)=>p(_)-p(d)).map(d=>pn(d,s,n,c,l.limits,7*e.value)).filter(({dots:d,fan:_})=>d.length+_.length>0),[n,c,u,e.value]);return i`
    <${x} title=${a("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${a("tank.now")}>
        <${Rt} advice=${l} now=${k.value} />
        <${qt} advice=${l} now=${k.value} />
        <${Pt} advice=${{...l,reasons:l.reasons.filter(({code:d})=>Js.includes(d))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${a("outlook.how")}>
        ${bn.map(d=>i`<button key=${d} class="quiet" type="button"
          aria-pressed=${e.value===d} onClick=${h(()=>e.value=d)}>
          ${a("outlook.weeks",{count:d})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${a("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${$.map(d=>i`<${kn} key=${d.parameter} lines=${d} next=${u} as_table=${o.value}
        now=${k.value} />`)}</div>
      ${!o.value&&i`<${fn} doubted=${$.some(({dots:d})=>d.some(_=>_.doubted))} />`}
      ${c&&i`<${_n} ready=${vo(c.settled_h,n.records.now_h,n.start)} />`}
      <${qo} tank=${t} />
      ${m&&i`<${hn} weeks=${bo(m)} expected=${m.feed_g_day_expected} />`}
      <${gn} />
    <//>`}var ta="(min-width: 900px)",me=pe(!1),yn=globalThis.matchMedia?.(ta),xn=()=>me.value=yn?.matches??!1;xn();yn?.addEventListener?.("change",xn);function Mn({here:t}){if(!me.value)return null;let e=rt(O);if(e.length<2)return null;let o=$o(e);return i`
    <nav class="tank-list" aria-label=${a("place.tanks")} ref=${oa}>
      ${e.length>qe?i`<${ea} ones=${o} here=${t} />`:i`<${Ft} ones=${o} here=${t} />`}</nav>`}function ea({ones:t,here:e}){let o=E(""),s=mo.value==="first",n=t.map(({tank:c})=>c),r=new Map(t.map(c=>[c.tank.id,c])),l=Pe(n,o.value).flatMap(({tank:c})=>r.get(c.id)??[]);return i`
    <div class="field"><label for="list-find">${a("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${It(c=>o.value=c)} /></div>
    ${o.value.trim()?i`<${_o} ones=${l} words=${o.value.trim()} here=${e} />`:i`<${fo} />
      ${s&&i`<${Ft} ones=${t.filter(c=>c.wants)} here=${e} />`}
      ${Re(n).map(c=>{let u=c.tanks.flatMap(({id:$})=>r.get($)??[]),m=u.filter($=>!(s&&$.wants)),p=po.value.includes(c.place)||m.some(({tank:$})=>$.id===e);return i`<section class="group" key=${c.place}>
          <${ho} place=${c.place} ones=${u} open=${p} />
          ${p&&i`<${Ft} ones=${m} here=${e} />`}</section>`})}`}`}function oa(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var na=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function sa({id:t}){let e=C("tank",t);return e?Ee(e)?i`<${ko} tank=${Oe(e)} />`:i`<${aa} key=${t} tank=${e} />`:i`<${it} up="/" why="labels.stranger" />`}function aa({tank:t}){let{id:e}=t,{facts:o,advice:s}=Ot(t),n=oo(`tank ${e}`,eo(s));return i`
    <div class="desk"><${Mn} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${ra} id=${e} advice=${s} />`}>
      <section class="room-taken" ref=${n} aria-label=${a("tank.now")}>
        <div class="row apart held"><div><${Rt} advice=${s} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${a("incident.title")}</a></div>
        <${qt} advice=${s} now=${k.value} />
        <${uo} advice=${s} now=${k.value} />
        <${Pt} advice=${s} now=${k.value} />
      </section>
      <${ro} tank=${e} label=${a("tasks.today")} />
      <${la} tank=${t} />
      <${ca} facts=${o} advice=${s} />
      <${ia} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${a("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${a("long_run.title")}<br /><span class="soft small">
            ${jt(Bt(o),nt(s.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${a("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${a("stock.title")}<br /><span class="soft small">
            ${ua(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${a("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${a("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${a("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${a("tasks.title")}<br /><span class="soft small">
            ${pa(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${a("water.title")}<br /><span class="soft small">
            ${ma(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${a("labels.title_one")}</a></li>
          ${y.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${a("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var ra=({id:t,advice:e})=>{let o=io(t),s=o?"next":e.act==="change"?"change":"test",n=r=>s===r?"main even":"quiet tall even";return i`
    ${y.value.may("reading")&&i`<a class=${n("test")} href=${`/tank/${t}/test`}>${a("test.do")}</a>`}
    ${y.value.may("water_change")&&i`<a class=${n("change")} href=${`/tank/${t}/change`}>${a("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${a("round.next",{tank:o.name})}</a>`}`};function ia({id:t}){let e=na.filter(([,o])=>y.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${a("write_down.title")}><h2>${a("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,s])=>i`<a key=${o} href=${`/tank/${t}/${s}`}><${D}
        name=${o} size=${28} />${a(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function la({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<De;return!Ne(t)||!(e||Io(t.id).length===0)?null:i`
    <section class="section"><h2>${a("first_fish.title")}</h2><${Ho} tank=${t} />
      <ul class="lines">${y.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${a("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${a("setup.plans_of")}</a></li></ul>
    </section>`}function ca({facts:t,advice:e}){let o=[...gt,...Z].flatMap(n=>t.readings.findLast(r=>r.parameter===n)??[]);if(o.length===0)return i`<p class="soft section">${a("tank.no_figures")}</p>`;let s=new Map(Object.entries(e.limits));return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${a("tank.figures")}</h2></caption>
        <tbody>${o.map(n=>{let{value:r,unit:l,also:c}=Dt(n),u=s.get(n.parameter)?.mg_n_l,m=u&&Q(n.parameter,u,n.basis??"ion");return i`<tr key=${n.parameter}>
            <th scope="row">${L(n.parameter)}<span class="also">${A(n.at,t.now)}</span>
              </th>
            <td><span class="big">${r}</span> <span class="unit">${l}</span>
              ${c&&i`<span class="also">${c}</span>`}
              ${m&&i`<span class="also">${a("tank.limit",{limit:m})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
    </section>`}function ua({stock:t,now:e}){let{animals:o}=Me(t,e);return o.length?o.map(s=>Uo(s.species,s.count)).join("\xA0\xB7 "):a("stock.none_yet")}var ma=({source:t,label:e})=>[t?.name??a("water.none"),e?.name??a("label.none")].join("\xA0\xB7 ");function pa(t){let e=ao(t).filter(o=>!o.over).length;return e?a("tasks.count",{count:e}):a("tasks.none")}var V=gt.length,mt=[...gt,null,...Z],da=2*36e5,Sn=()=>({at:0,begun:Date.parse(y.value.now()),readings:{},typed:{}});function $a({id:t}){let e=C("tank",t),o=K({name:`test.${t}`,first:Sn}),s=j(e,"reading",e?.name??"");if(!e||s)return s;let n=o.draft.value,r=mt[n.at]??null,l=Object.values(n.readings),c=fa(l),u=(d,_={})=>{to(),o.set({..._,at:d<mt.length?Math.max(d,0):V}),scrollTo(0,0)},m=d=>u(mt.indexOf(d),Z.includes(d)?{from:n.at}:{}),p=()=>o.save(()=>{let d={tank:t,test:T(),...n.when?{at:n.when}:{}};return{writes:l.map(_=>({type:"put",kind:"reading",id:T(),fields:{..._,...d}})),said:a("saved.readings",{count:l.length}),to:`/tank/${t}`}}),$=l.length>0&&c.length===0&&!F(n.when);return i`
    <${x} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${_a} test=${n} to=${u} />
        <button class="main" type="button" disabled=${!$} onClick=${h(()=>{p()})}>
          ${l.length?a("test.save",{count:l.length}):a("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${n.at>V?a("test.seldom"):a("test.place",{at:Math.min(n.at+1,V),of:V})}</span>`}>
      ${k.value-n.begun>da&&l.length>0&&i`
        <div class="row apart caution"><span>${a("test.begun",{when:A(n.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${h(()=>o.draft.value=Sn())}>${a("test.afresh")}
            </button></div>`}
      <${B} form=${o} kind="reading" />
      <${ha} strange=${c} here=${r}
        on_go=${d=>u(mt.indexOf(d))} />
      ${r?i`<${wa} key=${r} tank=${t} parameter=${r} form=${o} to=${u} />`:i`<${ba} readings=${n.readings} on_go=${m} />`}
      ${n.at<V&&i`<${ga} on_go=${m} />`}
      <${H} at=${n.when} on_at=${d=>o.set({when:d})} />
    <//>`}var fa=t=>t.flatMap(({parameter:e,unit:o,value:s})=>{let n=yo({parameter:e,unit:o},L(e)),r=xo(n,s);return r?[{parameter:e,spec:n,error:r}]:[]});function _a({test:t,to:e}){let o=mt[t.at],s=t.at>V?t.from??V:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(s))}>${a("test.back")}</button>`}
    ${o&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(t.at+1))}>
      ${a(t.readings[o]?"test.next":"test.skip")}</button>`}`}var ha=({strange:t,here:e,on_go:o})=>t.map(({parameter:s,spec:n,error:r})=>i`
    <div key=${s} role="alert"><${ct} spec=${n} error=${r} />
      ${s!==e&&i`<button class="quiet" type="button" onClick=${h(()=>o(s))}>
        ${a("test.key_again",{what:be(ee(s))})}</button>`}</div>`),ga=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${a("test.seldom")}</span>
    ${Z.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${L(e)}</button>`)}</div>`;function wa({tank:t,parameter:e,form:o,to:s}){let n=o.draft.value,r=c=>({...n.readings,[e]:{...c,at:y.value.now()}});return i`<${ka} tank=${t} parameter=${e} test=${n}
    on_pick=${c=>s(n.at+1,{readings:r(c)})} on_type=${(c,u,m)=>{let{[e]:p,...$}=n.readings;o.set({keyed_in:{...n.keyed_in,[e]:m},typed:{...n.typed,[e]:c},readings:u?r(u):$})}} />`}function ka({tank:t,parameter:e,test:o,on_pick:s,on_type:n}){let r=Ro(e),l=o.readings[e]?.value,c=r.unit??se[e],{label:u,unit:m,hold:p,text:$}=G(c),{per_drop:d}=r,_=w=>ae(r,Number((p(Number(w))*(d??1)).toPrecision(6))),g=$(o.typed[e]??null,o.keyed_in?.[e]);return i`
    <h2 class="asked">${L(e)} <span class="soft unit">
      ${[r.entry==="steps"?c:u,Lt(e,r.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${r.common?r.entry==="steps"?a("kit.common"):Z.includes(e)?a("kit.drops",{unit:se[e]}):a("kit.keypad"):r.name}</span>
      <a class="quiet" href=${r.id?`/room/test_kit/${r.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${a(r.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(r.timers??[]).length>0&&i`<${va} kit=${r} tank=${t} />`}
    ${r.entry==="steps"&&(r.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${L(e)}>
          ${(r.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${h(()=>s(ae(r,w)))}>${M(w)}</button>`)}
        </div>`:i`<${Ut} label=${L(e)} unit=${d?a("test.drops"):u} value=${g}
          on_value=${w=>n(w,w===""?null:_(w),m)} />
          ${d&&g&&i`<p class="soft center" role="status">
            ${a("test.drops_are",{figure:`${M(_(g).value)} ${c}`})}</p>`}`}`}var va=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((o,s)=>{let n=`${e}.${t.id}.${s}`,r=wo(n),l=()=>go({id:n,what:`${ee(t.parameter)}: ${o.what}`,seconds:o.seconds,href:`/tank/${e}/test`});return i`<li key=${s} class="line"><span>${s+1}. ${o.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${D} name="clock" size=${20} />
        <span class="figures">${r===null?St(o.seconds):r>0?St(r):a("timer.again",{time:St(o.seconds)})}</span></button></li>`})}</ol>`,ba=({readings:t,on_go:e})=>i`
  <h2 class="asked">${a("test.answers")}</h2>
  <ul class="lines">${mt.map((o,s)=>{if(!o)return null;let n=t[o],r=n&&Dt(n);return i`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${L(o)}</span>
      ${r?i`<span class="figures"><b class="hand">${r.value}</b> ${r.unit}</span>`:i`<span
        class="soft">${a(s>V?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function ya(){let t=rt(O),e=t.find(o=>Ve(o)?.advice.test_due)??t[0];return et(()=>{e&&Wt(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),i`<${x} title=${a("test.do")} place="round">
    ${!e&&i`<p class="sentence">${a("round.empty")}</p>`}
  <//>`}export{On as Change,Gn as Dose,os as DoseGroup,rs as Feed,As as LongRunPage,qs as Note,Xs as Outlook,sa as Tank,$a as Test,ya as TestNext};
//# sourceMappingURL=tank-6SXBDAZB.js.map
