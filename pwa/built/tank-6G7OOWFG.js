import{$a as W,Fa as O,Ga as F,H as qt,I as it,Ia as Mn,Ka as Sn,L as dn,M as $n,N as fn,O as _n,P as _t,Sa as Cn,Ta as An,W as hn,Za as U,_a as B,a as an,aa as gn,b as rn,ca as wn,da as lt,ea as P,ga as kn,ia as vn,k as ln,l as cn,na as ht,oa as Z,pa as Vt,q as un,r as mn,ra as yn,sa as Zt,ta as bn,v as pn,ya as xn}from"./chunk-P67G6QML.js";import{$a as De,$b as q,$c as Jt,A as $e,Ab as $t,B as r,Ba as Me,Bb as Q,C as N,Ca as Se,Cb as V,D as b,Db as Fe,Eb as y,Ec as He,Fb as Dt,Fc as ze,G as L,Gc as A,Hb as ft,Hc as Ge,I as fe,Ib as K,Ic as Qe,Lb as Et,Lc as Xe,Mb as Ue,Mc as Je,O as Mt,Ob as Be,Oc as Ve,Pa as Ce,Pc as Nt,Q as zt,Qc as Ze,Rc as Ot,S as mt,Sb as x,Sc as Rt,T as nt,Ta as Ae,Tb as k,U as ot,Ua as at,V as Gt,Va as Le,Vb as j,W as St,Wb as C,Xc as Xt,Y as _e,Ya as Te,Z as he,Za as Qt,_ as Ct,aa as ge,ab as Ee,b as kt,bb as Ie,c as vt,cb as Ne,cc as It,cd as tn,d as yt,db as Oe,dc as We,ec as Ye,fc as T,g as Y,gb as pt,h as i,hd as en,ja as At,ka as st,la as we,ld as nn,ma as ke,md as on,na as ve,oa as ye,pb as Re,pc as E,qb as qe,qd as sn,rd as rt,sc as Ke,tb as dt,ua as be,ub as G,uc as je,vc as h,w as de,wb as S,xa as xe,xb as Pe,yb as Lt,zb as Tt}from"./chunk-6MH46C3R.js";import"./chunk-HZWNA2UL.js";import{a as ae,b as re}from"./chunk-JVORRLE3.js";import{A as pe,B as J,C as I,D as Ht,E as M,c as bt,d as jt,f as ie,l as z,o as xt,p as le,t as ce,u as ue,w as me}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";function Ln(t,{levels:e,limits:n},o){let{tank:s,source:a,label:l,readings:c}=t,u=c.findLast(({parameter:$})=>$==="kh"),p=Et(t)?.celsius,m={ph:n.ph.from==="reading"||n.ph.from==="usual"?n.ph.value:void 0,kh_dkh:(u&&pt(u))??s.kh_dkh,temperature_c:p,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:a?.ph,source_kh_dkh:a?.kh_dkh,source_temperature_c:a?.temperature_c??p,source_tan_mg_n_l:St(a,"total_ammonia",l),fraction:o};if(Object.values(m).includes(void 0))return null;try{let $=m;return{input:$,answer:M("water_after_change",$)}}catch($){if($ instanceof z)return null;throw $}}var $o=14,fo=["salt","other"];function Tn({tank:t,doses:e,now:n},o){let s=new Map;for(let{label:a,at:l}of e){if(a?.basis!=="whole_tank"||!fo.includes(a.use)||n-Date.parse(l)>$o*864e5)continue;let c=_o(a,t.water_l,o);c!==null&&s.set(a.id,{label:a,at:l,amount:c,unit:a.unit})}return[...s.values()]}function _o({amount:t,per_l:e,unit:n},o,s){let a={label_amount:t,label_per_l:e,label_unit:n==="g"?"g":"ml"};try{let l=M("bath_dose",{...a,water_l:o,change_fraction:s,every_days:1,days:1}),c=(n==="g"?l.again_g:l.again_ml)??null;return n==="drops"&&c!==null?Math.round(c):c}catch(l){if(!(l instanceof z))throw l;return null}}var ho={cold:12,hot:50};function Dn({facts:t,litres:e}){let n=qe("taps",()=>ho),o=Et(t),s=(a,l)=>i`
    <${Cn} label=${r(`warmth.${a}`)} unit="°C" min=${1} max=${l} value=${n.value[a]}
      on_value=${c=>n.value={...n.value,[a]:c}} />`;return i`
    <details class="more section"><summary>${r("warmth.title")}</summary>
      ${o?i`
        <p class="soft">
          ${o.at?r("warmth.read",{warmth:Dt(o.celsius),when:L(o.at,t.now)}):r("warmth.usual",{warmth:Dt(o.celsius)})}</p>
        ${s("cold",40)}${s("hot",80)}
        <${go} mix=${Ue(e,o.celsius,n.value)} />
        <p class="caution small">${J("water_blend","hot_water")}</p>`:i`<p class="soft">${r("warmth.unknown")}</p>`}
    </details>`}var go=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${r("warmth.pour",{cold:y(t.cold_l),hot:y(t.hot_l),warmth:Dt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${r("warmth.missed")}</p>`}
  <${P} name="water_blend" input=${t.input} answer=${t.answer} />`;var wo=.25,ko=()=>({typed:null});function vo({id:t}){let e=C("tank",t),n=U({name:`change.${t}`,first:ko}),o=vt(null),s=W(e,"water_change",r("change.title"));if(!e||s)return s;let{facts:a,advice:l}=It(e),c=yo(o,a,l),u=c.act!=="retest"&&c.litres||st(wo*e.water_l,e.water_l,a.water_unit),p=G("L"),{typed:m,unit:$="L",from_tank:d="",at:_}=n.draft.value,g=m===null?u:Lo(p.hold(Number(m),$),e.water_l),w=ye(e,g),f=w||d?null:ke(a,g);d&&!x.value.is_ready(d)&&x.value.ready(d);let H=d?{...a,source:Ae(q.of("reading",d),{from_tank:d,at:_??x.value.now()})}:a,D=g/e.water_l,gt={litres:y(g||0),dose:f?.amount!==void 0?K(f):""},Kt=()=>n.save(()=>{let R=d?{from_tank:d}:a.source?{source_water:a.source.id}:{},wt=bo({tank:t,at:_,litres:g,fraction:D,...R},f);return{writes:wt,said:r(wt.length>1?"saved.change_dose":"saved.change",gt),to:`/tank/${t}`}});return i`
    <${A} title=${r("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||O(_)}
        onClick=${h(()=>{Kt()})}>${r(f?.amount!==void 0?"change.log_dose":"change.log",gt)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?Ve(c,k.value):r("change.usual",{litres:y(u)})}</p>
      <${B} form=${n} kind="water_change" />
      <${xo} form=${n} tank=${e} litres=${g} suggested=${u} wrong=${w} />
      ${f&&i`<${So} id=${t} dose=${f} />`}
      ${!w&&i`<${Mo} facts=${a} fraction=${D} />`}
      ${!w&&i`<${Ao} facts=${H} advice=${c} fraction=${D} />`}
      ${!w&&i`<${Dn} facts=${a} litres=${g} />`}
      <${Co} id=${t} from_tank=${d}
        on_pick=${R=>n.set({from_tank:R})} />
      <${F} at=${_} on_at=${R=>n.set({at:R})} />
      ${To(f).map(R=>i`<p class="caution small" key=${R}>${R}</p>`)}
    <//>`}function yo(t,e,n){let o=[e.readings,e.changes].map(s=>s.at(-1)?.id).join();return n.from&&n.as_of===void 0&&t.current?.last!==o&&(t.current={last:o,advice:n}),t.current?.last===o?t.current.advice:n}function bo(t,e){let n=E(),o=[{type:"put",kind:"water_change",id:n,fields:t}];if(e?.label&&e.amount!==void 0){let{label:s,amount:a,unit:l}=e,{tank:c,at:u,litres:p}=t,m={at:u,tank:c,label:s.id,what:s.name,amount:a,unit:l,for_litres:p,water_change:n};o.push({type:"put",kind:"dose",id:E(),fields:m})}return o}function xo({form:t,tank:e,litres:n,suggested:o,wrong:s}){let a=Y(!1),l=G("L"),{typed:c,unit:u="L"}=t.draft.value,p=At(e.water_l,l.unit),m=y(p),$=_=>t.set({typed:_,unit:l.unit}),d=_=>$(String(l.show(Math.min(Math.max(n+_*p,p),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${r("change.litres")}>
      <button class="quiet" type="button" aria-label=${r("change.less",{step:m})}
        onClick=${()=>d(-1)}><${T} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${a.value}
        aria-label=${r("change.type",{litres:y(n||0)})}
        onClick=${h(()=>a.value=!a.value)}>
        <span>${b(l.show(n||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${r("change.more",{step:m})}
        onClick=${()=>d(1)}><${T} name="plus" size=${28} /></button>
    </div>
    ${s?i`<div role="alert"><${lt} spec=${ve(e,r("change.litres"))} error=${s} /></div>`:i`<p class="soft center">${r("change.share",{percent:N(100*n/e.water_l,0)})}</p>`}
    ${a.value&&i`<${qt} label=${r("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${$} />`}
    ${c!==null&&n!==o&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>$(null))}>${r("change.suggested",{litres:y(o)})}</button></p>`}`}function Mo({facts:t,fraction:e}){let n=Tn(t,e);return n.length===0?null:i`
    ${n.map(o=>i`<p key=${o.label.id}>${r("dose.again",{name:o.label.name,when:L(o.at,t.now),dose:K(o)})}</p>`)}
    ${n.some(({label:o})=>o.use==="other")&&i`<p class="caution small">
      ${J("bath_dose","label_over_all")}</p>`}`}var So=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${r("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${K(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${r(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${r("dose.set_label")}</a></p>`:i`<p class="dose">${r("dose.none")}</p>`,Co=({id:t,from_tank:e,on_pick:n})=>j("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${r("change.other_tank")}</summary>
    <${bn} tank=${t} value=${e} label=${r("change.out_of")} on_pick=${o=>n(o===e?"":o)} />
    <p class="soft small">${r("change.other_tank_why")}</p>
  </details>`,Ao=({facts:t,advice:e,fraction:n})=>{let o=Object.values(e.levels).flatMap(({parameter:a,now_mg_n_l:l,reading:c})=>l?[{parameter:a,now_mg_n_l:l,basis:ot({reading:c})}]:[]),s=Ln(t,e,n);return(o.length>0||s)&&i`
    <table class="measured"><caption><h2>${r("change.after")}</h2></caption><tbody>
      ${o.map(({parameter:a,now_mg_n_l:l,basis:c})=>{let u=St(t.source,a,t.label),{after_mg_l:p}=M("dilution",{before_mg_l:l,source_mg_l:u,fractions:[n]});return i`<tr key=${a}><th scope="row">${S(a)}</th>
          <td class="figures">${$t(a,l,c)} → <span class="big">
            ${$t(a,p,c)}</span> <span class="unit">
            ${`mg/L ${Lt(a,c)}`}</span></td></tr>`})}${s&&i`<tr><th scope="row">${S("ph")}</th><td class="figures">${N(s.input.ph,1)} → <span
          class="big">${N(s.answer.ph,1)}</span>${N(s.answer.ph_settled,1)!==N(s.answer.ph,1)&&i`<span class="also">${r("change.ph_settled",{ph:N(s.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${s?.answer.notes.map(a=>i`<p class="caution small" key=${a}>${a}</p>`)}`},Lo=(t,e)=>Math.abs(t-e)<1e-6?e:t,To=t=>[...I("dilution"),...t?.amount!==void 0?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Do=.25,Eo=1,Io={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function En(t,e){let n=o=>e.findLastIndex(s=>s.label?.id===o.id);return t.toSorted((o,s)=>n(s)-n(o)||o.name.localeCompare(s.name))}var In=(t,e,n)=>e.basis==="whole_tank"?t.water_l:n.at(-1)?.litres??st(Do*t.water_l,t.water_l);function Nn(t,e){let n=M("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),o=Ht(n,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(o)):o,unit:t.unit}}function On(t,e,n){let o={volume_l:t.water_l,tan_mg_n_l:e,...n===void 0?{}:{ammonia_percent:n}},s=M("starter_dose",o),a=n===void 0;return{input:o,answer:s,amount:a?s.ammonium_chloride_g:Ht(s,"household_ammonia_ml"),unit:a?"g":"ml",tan_mg_n_l:s.tan_mg_n_l}}function te(t,e=[]){let{water_l:n,feed_g_day:o=0,protein_fraction:s=0}=t,a=mn(t,e);return o<=0&&a>0?M("starter_dose",un(n,a).input).tan_mg_n_l:o<=0||s<=0?Eo:M("starter_dose",{volume_l:n,feed_g_day:o,protein_fraction:s}).tan_mg_n_l}var Rn=t=>t.reduce((e,{change:n,count:o})=>e+(Io[n]??0)*(o??0),0)>0;function qn(t,e,{system:n,marks:o}){let s=xt().salt_dose,{volume_l:a,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=pn(s,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:n,marks:o});if(!("answer"in c))return null;let u=c.payload,p=c.answer;return{what:pe(ue("salt_dose","salt"),u.salt),what_code:u.salt,amount:p.grams,unit:"g",input:u,answer:p}}var Pt="salt",Ft="ammonia",No=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function Oo({id:t}){let e=C("tank",t),n=U({name:`dose.${t}`,first:No}),o=W(e,"dose",r("dosing.title"));if(!e||o)return o;let{changes:s,doses:a}=at(q,e,k.value),l=En(j("label"),a),c=qn(e,Re("bench.salt_dose",()=>({})).value,{system:dt.value,marks:de($e())}),u=Rn(be(j("stock_change"),t)),{way:p,at:m}=n.draft.value,$=l.find(f=>f.id===p),d=qo(n.draft.value,{tank:e,label:$,salt:c,animals:u,changes:s}),{fields:_}=d,g=()=>_&&n.save(()=>({writes:[{type:"put",kind:"dose",id:E(),fields:{tank:t,at:m,..._}}],said:r("dosing.saved",{dose:K(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),w=_&&i`<button class="main" type="button" disabled=${O(m)} onClick=${h(()=>{g()})}>
      ${r("dosing.log",{dose:K(_)})}</button>`;return i`
    <${A} title=${r("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${Fo} dose=${a.at(-1)} />
      <${B} form=${n} kind="dose" />
      <${Ro} tank=${t} form=${n} labels=${l} salt=${c} />
      ${$&&i`<${Uo} form=${n} tank=${e} label=${$} dose=${d}
        litres=${Pn(n.draft.value,e,$,s)} />`}
      ${p===Pt&&c&&i`<${ee} dose=${d}
        said=${r("dosing.for_tank",{litres:y(e.water_l)})} />`}
      ${p===Ft&&i`<${Bo} tank=${e} form=${n} dose=${d} animals=${u} />`}
      ${_&&i`<${F} at=${m} on_at=${f=>n.set({at:f})} />`}
      ${Wo(p,$).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Ro({tank:t,form:e,labels:n,salt:o}){let s=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${h(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,a=({amount:l,unit:c,per_l:u})=>r("label.line",{amount:b(l),unit:r(`unit.${c}`),litres:y(u)});return i`
    <div class="tiles two" role="group" aria-label=${r("dosing.what")}>
      ${n.map(l=>s(l.id,l.name,a(l)))}
      ${o&&s(Pt,o.what,r("dosing.from_bench"))}
      ${s(Ft,r("dosing.ammonia"),r("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${x.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${T}
        name="plus" size=${20} />${r("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${r("dosing.work_out_salt")}</a>
    </div>`}function qo(t,{tank:e,label:n,salt:o,animals:s,changes:a}){try{if(n){let l=Pn(t,e,n,a);return{fields:{...Nn(n,l),label:n.id,what:n.name,for_litres:l}}}if(t.way===Pt&&o){let{what:l,what_code:c,amount:u,unit:p,input:m,answer:$}=o;return{fields:{what:l,what_code:c,amount:u,unit:p,for_litres:e.water_l},name:"salt_dose",input:m,answer:$}}return t.way===Ft&&!s?Po(t,e):{}}catch(l){if(!(l instanceof z))throw l;return{errors:l.errors}}}function Po(t,e){let n=t.household?Number(t.percent):void 0;if(n!==void 0&&!(n>0))return{};let{amount:o,unit:s,tan_mg_n_l:a,input:l,answer:c}=On(e,Fn(t,e),n),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:tn(u),what_code:u,amount:o,unit:s,tan_mg_n_l:a,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var Pn=({litres:t},e,n,o)=>t===null?In(e,n,o):Ct(Number(t.text),t.unit,"L"),Fn=({tan:t},e)=>t===null?te(e,j("own_species")):Number(t),Fo=({dose:t})=>i`<p class="soft">
    ${t?r("dosing.last",{dose:K(t),what:en(t),when:L(t.at,k.value)}):r("dosing.never")}</p>`;function Uo({form:t,tank:e,label:n,litres:o,dose:s}){let a=_e({name:"",unit:"L"},dt.value),l=t.draft.value.litres,c=Qt(Ct(At(e.water_l),"L",a));return i`
    <section class="section"><h2>${r("dosing.for_water")}</h2>
      <${it} label=${r("dosing.for_water")} unit=${he(a)} value=${Ct(o,"L",a)}
        typed=${l&&l.unit===a?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:a}})} />
      <${ee} dose=${s} said=${r(`dose.basis_${n.basis}`)} />
    </section>`}function Bo({tank:t,form:e,dose:n,animals:o}){if(o)return i`<p class="wrong section" role="status"><${T} name="needs" /><span>${r("dosing.animals_here")}</span>
      </p>`;let{tan:s,household:a,percent:l}=e.draft.value,c=Fn(e.draft.value,t),u=p=>h(()=>e.set({household:p}));return i`
    <section class="section"><h2>${r("dosing.wanted")}</h2>
      <${it} label=${r("dosing.wanted")} unit="mg N/L" value=${c} typed=${s}
        step=${Qt(Math.max(te(t,j("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${p=>e.set({tan:p})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${r("dosing.with")}>
      <button type="button" aria-pressed=${!a} onClick=${u(!1)}>${r("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${a} onClick=${u(!0)}>${r("dosing.household_ammonia")}
        </button>
    </div>
    ${a&&i`<section class="section"><h2>${r("dosing.strength")}</h2>
      <${it} label=${r("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${p=>e.set({percent:p})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${r("dosing.no_strength")}</p>`}</section>`}
    <${ee} dose=${n} said=${r("dosing.gives",{tan:V(c||0),litres:y(t.water_l)})}
      />`}var ee=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(n=>i`<${lt} key=${n.field} error=${n}
    spec=${{label:r("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${K(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(n=>i`<p class="small" key=${n}>${n}</p>`)}
    ${t.name&&i`<${P} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function Wo(t,e){return t===Pt?I("salt_dose"):t===Ft?I("starter_dose"):[r("dosing.label_first"),...e?.use==="dechlorinator"?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}var Bn=["food","protein_fraction"],Yo=()=>({typed:null,food:null,own:{},at:void 0});function Ko({id:t}){let e=C("tank",t),n=U({name:`feed.${t}`,first:Yo}),o=W(e,"feeding",r("feed.title"));if(!e||o)return o;let s=at(q,e,k.value),{feedings:a}=s,l=Ee(s),c=De(e,a,l?.answer.usual_g_day),u=Ne(j("feeding")),{typed:p,at:m}=n.draft.value,$=p===null?c.feed_g:Number(p),d=Go(n.draft.value,u,c),_=f=>n.save(()=>({writes:[{type:"put",kind:"feeding",id:E(),fields:{tank:t,at:m,feed_g:f,...f>0?d:{}}}],said:f>0?r("feed.saved",{amount:ft(f),tank:e.name}):r("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),g=i`
    <button class="quiet tall" type="button" disabled=${O(m)} onClick=${h(()=>{_(0)})}>
      ${r(m?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!($>0)||O(m)}
      onClick=${h(()=>{_($)})}>${r("feed.log",{amount:ft($||0)})}</button>`,w=p===null||$===c.feed_g?c.from:"keeper";return i`
    <${A} title=${r("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${Qo} feedings=${a} />
      <${it} label=${r("feed.grams")} unit="g" value=${$} typed=${p} step=${Ie(c.feed_g)}
        least=${.01} most=${me("feeding","feed_g").max}
        on_type=${f=>n.set({typed:f})} />
      <p class="soft center">${r(`feed.from_${w}`,{usual:ft(c.feed_g)})}</p>
      ${l&&i`<${jo} answer=${l.answer} feed_g=${$} />`}
      <${B} form=${n} kind="feeding" beside=${n.draft.value.food===""?Bn:[]} />
      <${zo} form=${n} known=${u} given=${d} />
      <${F} at=${m} on_at=${f=>n.set({at:f})} />
      ${$>0&&i`<${Xo} tank=${e} feed_g=${$} protein_fraction=${d.protein_fraction} />`}
      <${Ho} ration=${l} />
      ${I("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var jo=({answer:{usual_g_day:t,most_g_day:e},feed_g:n})=>i`
  <p class=${n>e?"wrong":"soft small center"}>
    ${r("feed.ration",{usual:Un(t),most:Un(e)})}</p>`,Ho=({ration:t})=>t&&i`<section class="section"><h2>${r("feed.ration_why")}</h2>
    <${P} name="feed_ration" ...${t} /></section>`,Un=t=>`${b(t,t<1?2:1)}\xA0g`,Wn=()=>Bn.map(t=>ce(le().feeding.fields,t));function zo({form:t,known:e,given:n}){let{food:o,own:s}=t.draft.value;return i`
    <section class="section"><h2>${r("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${r("feed.food")}>
        ${e.map(({food:a,protein_fraction:l})=>i`
          <button type="button" key=${a} aria-pressed=${n.food===a}
            onClick=${h(()=>t.set({food:a}))}>
            <b>${a}</b>${l!==void 0&&i`<span class="soft small">
              ${r("feed.protein",{percent:N(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${o===""} onClick=${h(()=>t.set({food:""}))}><${T}
          name="plus" />${r("feed.other")}</button>
      </div>
      ${o===""&&i`<div class="section"><${wn} specs=${Wn()} raw=${s} errors=${t.errors.value} tried=${!0}
        on_raw=${a=>t.set({own:a})} /></div>`}
    </section>`}function Go({food:t,own:e},n,o){if(t==="")return gn(Wn(),e);let s=n.find(u=>u.food===t),{feed_g:a,from:l,...c}=o;return t!==null&&s?{...s}:c}function Qo({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${r("feed.never")}</p>`;let n={when:L(e.at,k.value),amount:ft(e.feed_g),food:e.food??""};return i`<p class="soft">${r(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",n)}</p>`}function Xo({tank:t,feed_g:e,protein_fraction:n}){try{let{input:o,answer:s,assumed:a}=Oe(t,e,n),l={mg:b(s.tan_mg_n_day,1),rise:V(s.tan_mg_n_l_day),percent:N(100*o.protein_fraction,0)};return i`
      <section class="section"><h2>${r("feed.becomes")}</h2>
        <p>${r("feed.nitrogen",l)}${a&&i` ${r("feed.assumed",l)}`}</p>
        <${P} name="nitrogen_load" input=${o} answer=${s} />
      </section>`}catch(o){if(!(o instanceof z))throw o;return null}}var Yn=28,Kn=14,Jo=90,Vo=3,Zo=21,ts=.3,es=60,ns=[7,3,1],os=1;function Ut(t){let e=ss(t),n=as(t);return{routine:e,young:jn(t)<Kn,nitrate:n&&cs(t,e,n),kh:n&&us(t,e,n.rise.usual)}}function jn({tank:t,now:e,changes:n,readings:o}){let s=[t.started_at,n[0]?.at,o[0]?.at].flatMap(a=>a?[Date.parse(a)]:[]);return s.length?(e-Math.min(...s))/864e5:0}function ss(t){let e=Math.min(Yn,jn(t)),n=t.changes.filter(({at:a})=>ne(a,t.now,Yn));if(n.length===0||e<Kn)return null;let s=1-n.reduce((a,{fraction:l})=>a*(1-Math.min(l,.95)),1)**(1/n.length);return s<.01?null:{count:n.length,litres:s*t.tank.water_l,fraction:s,every_days:e/n.length}}function as(t){let e=rs(t);if(e)return{from:"readings",rise:e};let{feed_g_day:n,fish_g:o,protein_fraction:s,volume_l:a}=Be(t).records.tank,{feed_of_fish:l,protein_fraction:c}=bt(),u=n??(o===void 0?void 0:o*l);if(!u)return null;let m=M("nitrogen_load",{feed_g_day:u,protein_fraction:s??c,volume_l:a}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:m,high:m}}}function rs(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&ne(u.at,t.now,Jo)&&Gt(u)&&!ls(u)),[n,o]=[e[0],e.at(-1)];if(!o||e.length<Vo||Date.parse(o.at)-Date.parse(n.at)<Zo*864e5)return null;let s=0,a=0;for(let u=1;u<e.length;u++){let p=is(t,e[u-1],e[u]);s+=nt(e[u])-p.left,a+=p.days}if(a<=0)return null;let l=ts*Math.hypot(nt(n),nt(o))/a,c=s/a;return{low:Math.max(0,c-l),usual:Math.max(0,c),high:Math.max(0,c+l)}}function is({changes:t},e,n){let o=nt(e),s=0,a=Date.parse(e.at);for(let{at:l,fraction:c,source:u}of t)l<=e.at||l>n.at||(s=(s+(Date.parse(l)-a)/864e5)*(1-c),o=o*(1-c)+c*(u?.nitrate_mg_n_l??0),a=Date.parse(l));return{left:o,days:s+(Date.parse(n.at)-a)/864e5}}var ls=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function cs(t,e,{from:n,rise:o}){let s=Te(t).nitrate.mg_n_l,a=t.source?.nitrate_mg_n_l??0,l=t.readings.findLast(m=>m.parameter==="nitrate"&&Gt(m)),c=m=>{if(!e)return null;let $={add_mg_l_day:m,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:a,ceiling_mg_l:s};return{input:$,answer:M("steady_routine",$)}},u=m=>c(m)?.answer.before_change_mg_l??0,p=c(o.usual);return{from:n,rise_mg_n_l_day:o,limit_mg_n_l:s,settles_mg_n_l:p&&{low:u(o.low),usual:u(o.usual),high:u(o.high)},worked:p,days_to_limit:e||o.usual<=0?null:Math.max(0,s-(l?nt(l):0))/o.usual,least:Hn(t,e,m=>o.usual<=0?void 0:M("steady_routine",{add_mg_l_day:o.usual,change_fraction:.5,every_days:m,source_mg_l:a,ceiling_mg_l:s}).fraction_needed),source_over:a>=s}}function us(t,e,n){let o=t.readings.findLast(m=>m.parameter==="kh"&&ne(m.at,t.now,es)&&pt(m)!==void 0),s=o?pt(o):t.tank.kh_dkh;if(s===void 0||s>60)return null;let a=t.source?.kh_dkh,l={kh_dkh:s,nitrogen_mg_n_l_day:Math.min(n,100),floor_kh_dkh:os},c=m=>M("alkalinity_use",{...l,source_kh_dkh:a,change_fraction:.5,every_days:m}).fraction_needed,u=e&&a!==void 0?{...l,source_kh_dkh:a,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:l,p=M("alkalinity_use",u);return{now_dkh:s,falls_dkh_week:p.kh_dkh_per_day*7,steady_dkh:p.steady_kh_dkh??null,days_to_floor:p.days_to_floor??null,least:a===void 0||n<=0?null:Hn(t,e,c),source_known:a!==void 0,worked:{input:u,answer:p}}}function Hn(t,e,n){let{water_l:o}=t.tank,s=we(t,{unhurried:!0}),a=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let l of[...a,...ns]){let c=n(l);if(!(typeof c!="number"||c*o>s))return{litres:st(c*o,o,t.water_unit,s),every_days:l}}return null}var ne=(t,e,n)=>Date.parse(t)<=e&&e-Date.parse(t)<=n*864e5;var oe=365;function Bt({nitrate:t,young:e},n){if(e)return r("long_run.young");if(!t)return r("long_run.no_load");let o=Q("nitrate",t.limit_mg_n_l,n);if(t.source_over)return r("long_run.source_over",{limit:o});if(t.rise_mg_n_l_day.usual<=0)return r("long_run.no_rise");if(!t.settles_mg_n_l)return ms(t,o);let{settles_mg_n_l:s}=t,a=t.from==="food"?Q("nitrate",s.high,n):ps(s,n),l=t.from==="food"?"at_most":"settles",c=s.high<=t.limit_mg_n_l?"under":s.low>t.limit_mg_n_l?"over":"perhaps";return r(`long_run.${l}_${t.from==="food"&&c!=="under"?"perhaps":c}`,{level:a,limit:o})}function ms({days_to_limit:t},e){let n=Math.round(t??1/0);return n>oe?r("long_run.no_changes_far",{limit:e}):r(n<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:n})}var ps=({low:t,high:e},n)=>r("outlook.between",{low:$t("nitrate",t,n),high:Q("nitrate",e,n)});function ds({id:t}){let e=C("tank",t);if(!e)return i`<${rt} up="/" />`;let n=at(q,e,k.value),o=Ut(n),s=n.readings.findLast(({parameter:l})=>l==="nitrate"),a=ot(s&&{reading:s});return i`
    <${A} title=${r("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${r("long_run.title")}>
        <${$s} id=${t} found=${o} basis=${a} />
      </section>
      <section class="section"><h2>${r("long_run.kh")}</h2><${_s} id=${t} found=${o} /></section>
    <//>`}function $s({id:t,found:e,basis:n}){let{nitrate:o,routine:s,young:a}=e,l=o?.settles_mg_n_l&&o.settles_mg_n_l.high>o.limit_mg_n_l;return i`
    <p class="sentence">${Bt(e,n)}</p>
    <p>${fs(e)}</p>
    ${o&&!a&&i`
      <${zn} id=${t} least=${o.least} routine=${s} />
      <p class="soft small">${o.from==="food"?r("long_run.from_food"):r("long_run.from_readings",{rise:Q("nitrate",o.rise_mg_n_l_day.usual*7,n)})}</p>
      ${l&&i`<p class="caution small">${J("steady_routine","slowly")}</p>`}
      ${o.worked&&i`<${P} name="steady_routine" ...${o.worked} />`}`}`}var fs=({routine:t,young:e})=>t?r("long_run.routine",{count:t.count,litres:y(t.litres),days:b(t.every_days,t.every_days<10?1:0)}):e?"":r("long_run.no_routine");function zn({id:t,least:e,routine:n}){if(!e)return null;let{litres:o,every_days:s}=e,a=n&&n.litres/n.every_days>=o/s;return i`
    <p>${r(a?"long_run.least_held":"long_run.least",{litres:y(o),count:s})}</p>
    ${x.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${s}&title=${encodeURIComponent(r("long_run.task",{litres:y(o)}))}`}>${r("long_run.make_task")}</a></p>`}`}function _s({id:t,found:{kh:e,nitrate:n,routine:o}}){if(!e)return i`<p>${r(n?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let s=b(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${hs(e)}</p>
    <p>${r("long_run.kh_falls",{fall:s,now:b(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${r("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${zn} id=${t} least=${e.least} routine=${o} />
      <p class="caution small">${J("alkalinity_use","kh_floor")}</p>`}
    <${P} name="alkalinity_use" ...${e.worked} />`}function hs({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=oe?r("long_run.kh_gone",{count:Math.round(t)}):e===null?r("long_run.kh_far"):r("long_run.kh_settles",{level:b(e,1)})}function Gn(t="limnary-drafts"){let e=new re(()=>ae(t,1,{upgrade(o){o.createObjectStore("pictures",{keyPath:"id",autoIncrement:!0}).createIndex("draft","draft")},terminated(){e.db=null}})),n=["pictures"];return{async list(o){return(await e.run(n,"readonly",({pictures:a})=>a.index("draft").getAll(o))).map(({id:a,bytes:l,type:c,width:u,height:p})=>({id:a,picture:new Blob([l],{type:c}),width:u,height:p}))},async add(o,{picture:s,width:a,height:l}){let c=await s.arrayBuffer();return e.run(n,"readwrite",({pictures:u})=>u.add({draft:o,bytes:c,type:s.type,width:a,height:l}))},async remove(o){let s=await e.run(n,"readwrite",async({pictures:a})=>{let l=await a.get(o);return await a.delete(o),l});return async()=>{s&&await e.run(n,"readwrite",({pictures:a})=>a.put(s))}},forget:o=>e.run(n,"readwrite",async({pictures:s})=>{for(let a of await s.index("draft").getAllKeys(o))await s.delete(a)}),close:()=>e.close()}}async function Qn(t){let e=await createImageBitmap(t).catch(a=>{throw new RangeError("no picture",{cause:a})}),n=Math.min(1,1600/Math.max(e.width,e.height)),o=document.createElement("canvas");o.width=Math.max(1,Math.round(e.width*n)),o.height=Math.max(1,Math.round(e.height*n)),o.getContext("2d")?.drawImage(e,0,0,o.width,o.height),e.close();let s=await new Promise(a=>o.toBlob(a,"image/jpeg",.8));if(!s)throw new RangeError("no picture");return{picture:s,width:o.width,height:o.height}}var gs=["at_surface","hiding"],se=5e3,Wt=Gn(),ws=()=>({picked:[],text:"",at:void 0});function ks({id:t}){let e=C("tank",t),n=`note.${t}`,o=U({name:n,first:ws}),{photos:s,busy:a,problem:l,add:c,drop:u}=vs(n),p=W(e,"note",r("note.title"));if(!e||p)return p;let{picked:m,text:$,at:d}=o.draft.value,_=Xt.filter(D=>m.includes(D)),g=[..._.map(Jt),$.trim()].filter(Boolean).join(`
`),w=()=>o.save(()=>{let D={tank:t,at:d??x.value.now(),entry:E()},gt={...D,text:g.slice(0,se),..._.length?{quick:_}:{}};return{writes:g?[{type:"put",kind:"note",id:E(),fields:gt}]:[],pictures:s.map(({picture:Kt,width:R,height:wt})=>({picture:Kt,id:E(),fields:{...D,width:R,height:wt}})),said:r("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>Wt.forget(n).catch(()=>{})}}),f=(g||s.length>0)&&!a&&g.length<=se&&!O(d),H=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{w()})}>
    ${s.length?r("note.save_photos",{count:s.length}):r("note.save")}</button>`;return i`
    <${A} title=${r("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${H}>
      <${ys} id=${t} picked=${m} on_pick=${D=>o.set({picked:D})} />
      <div class="field section"><label for="note-text">${r("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${se} value=${$}
          onInput=${hn(D=>o.set({text:D}))}></textarea></div>
      <section class="section"><h2>${r("note.photos")}</h2>
        <${bs} photos=${s} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${T} name="camera" />${r("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${r("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${a&&i`<p class="soft" role="status">${r("note.shrinking")}</p>`}
        <${xn} text=${l} />
        <${B} form=${o} kind="note" />
        <p class="soft small">${r("note.photo_size")}</p>
      </section>
      <${F} at=${d} on_at=${D=>o.set({at:D})} />
    <//>`}function vs(t){let e=Y([]),n=Y(0),o=Y(""),s=async()=>{e.value=await Wt.list(t)};kt(()=>{s().catch(()=>o.value=r("note.photos_not_kept"))},[t]);let a=async u=>{n.value+=1;try{await Wt.add(t,await Qn(u)),await s()}catch(p){let m=p instanceof RangeError?"note.no_picture":"note.photos_not_kept";o.value=r(m,{file:u.name})}finally{n.value-=1}},l=async({currentTarget:u})=>{let p=[...u.files??[]];u.value="",o.value="";for(let m of p)await a(m)},c=async u=>{let p=await Wt.remove(u);await s(),Ke(r("note.photo_dropped"),async()=>{await p(),await s()})};return{photos:e.value,busy:n.value>0,problem:o.value,add:l,drop:c}}function ys({id:t,picked:e,on_pick:n}){let o=s=>n(e.includes(s)?e.filter(a=>a!==s):[...e,s]);return i`
    <div class="tiles two short" role="group" aria-label=${r("note.quick")}>
      ${Xt.map(s=>i`<button type="button" key=${s} aria-pressed=${e.includes(s)}
        onClick=${h(()=>o(s))}>${Jt(s)}</button>`)}
    </div>
    ${e.some(s=>gs.includes(s))&&i`
      <div class="caution" role="status"><p>${r(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${r("test.do")}</a></div>`}`}var bs=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:n,picture:o},s)=>{let a=r("photo.numbered",{at:s+1});return i`
    <li key=${n}><${Mn} picture=${o} said=${a} />
      <button class="quiet square" type="button" aria-label=${r("remove_named",{what:a})}
        onClick=${h(()=>{e(n)})}><${T} name="remove" size=${20} /></button></li>`})}</ul>`;function Jn(t,e,n,o,s,a){let{start:l,records:c}=n,u=f=>l+f*36e5,p=u(c.now_h),m=Math.max(p-a*24*36e5,Math.min(l,p-48*36e5)),$=o?.doubts??[],d=c.readings.filter(f=>f.parameter===t&&u(f.at_h)>=m).map(f=>({at:u(f.at_h),...xs(f),doubted:$.some(H=>H.parameter===t&&H.at_h===f.at_h)})),g=mt(t)&&(t!=="nitrate"||n.nitrate_known)?(o?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(f=>Xn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>Xn(f.at,"change",f.litres))].filter(({at:f})=>f>=m&&f<=p).sort((f,H)=>f.at-H.at);return{parameter:t,dots:d,fan:g,marks:w,limit:mt(t)?s[t]:null,from:m,now:p,to:g.at(-1)?.at??p}}var Xn=(t,e,n)=>({at:Date.parse(t),kind:e,said:n});function xs(t){if(!mt(t.parameter)){let[c,u]=t.steps?.length?jt(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:n}=ie(t),o=bt(),s=t.parameter==="nitrate"?"nitrate":"reading",[a,l]=jt(e,n,o[`${s}_offset`],o[`${s}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:a===null?null:Math.max(a,0),high:l}}function Vn(t,e){let n=o=>o===null?null:e(o);return{...t,dots:t.dots.map(o=>({...o,value:e(o.value),low:n(o.low),high:n(o.high)})),fan:t.fan.map(({at:o,p10:s,p50:a,p90:l})=>({at:o,p10:e(s),p50:e(a),p90:e(l)}))}}function Zn({parameter:t,dots:e,fan:n,limit:o}){let s=[...e.flatMap(({value:u,low:p,high:m})=>[u,p??u,m??u]),...n.flatMap(({p10:u,p90:p})=>[u,p]),...o?[o.mg_n_l]:[]],a=Math.max(...s);if(mt(t))return[0,a>0?a*1.12:1];let l=Math.min(...s),c=Math.max((a-l)*.2,.5);return[l-c,a+c]}var to=({doubted:t})=>i`
  <ul class="chart-key" aria-hidden="true">
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor" stroke-width="2" />
      <circle cx="9" cy="12" r="5" fill="currentColor" /></svg>${r("key.reading")}</li>
    ${t&&i`<li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor"
      stroke-width="2" /><circle class="hollow" cx="9" cy="12" r="5" stroke="currentColor" stroke-width="2" /></svg>
      ${r("key.doubted")}</li>`}
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="fan" d="M0 8 30 1v22L0 16z" /><path class="middle"
      d="M0 12h30" /></svg>${r("key.fan")}</li>
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="limit" d="M0 12h30" /></svg>${r("key.limit")}</li>
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M3 4h12l-2 9H5z" fill="currentColor" /><path
      d="M9 13v11" stroke="currentColor" stroke-dasharray="2 3" /></svg>${r("key.change")}</li>
    <li><svg width="8" height="24" viewBox="0 0 8 24"><path d="M4 0v24" stroke="currentColor" stroke-width="1.5" />
      </svg>${r("key.now")}</li>
    <li><svg width="10" height="24" viewBox="0 0 10 24"><path d="M5 14v8" stroke="currentColor" stroke-width="1.5" />
      </svg>${r("key.feeding")}</li>
  </ul>`,eo=({ready:{code:t,from:e,likely:n,to:o}})=>{let s=a=>a===void 0?"":fe(a);return i`
    <section class="section"><h2>${r("ready.title")}</h2>
      <p class="sentence">${r(`ready.${t}`,{from:s(e),likely:s(n),to:s(o)})}</p>
      <p class="soft small">${r("ready.means")}</p>
    </section>`};function no({weeks:t,expected:e}){let[n]=t;return i`
    <details class="more section"><summary>${r("carry.title")}</summary>
      <p>
        ${r("carry.now",{low:ct(n.feed_g_day.p10),high:ct(n.feed_g_day.p90),expected:ct(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${r("carry.when")}</th><th scope="col" class="right">${r("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:o,feed_g_day:s})=>i`
          <tr key=${o}><th scope="row">${r(`carry.in_${o}`)}</th>
            <td>${ct(s.p50)}<span class="also">
              ${r("outlook.between",{low:ct(s.p10),high:ct(s.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${xt().stock_headroom.uncertainty}</p>
    </details>`}var oo=()=>{let t=[...I("outlook"),...I("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},ct=t=>`${b(t,t<1?2:1)} g`;var Ms=86400,Ss=["p10","p50","p90"];function so({lines:t}){let e=vt(null);return kt(()=>fn(e.current,()=>As(t),Cs(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var Cs=({fan:t,from:e,now:n})=>{let o=t.length?t:[{at:n,p10:null,p50:null,p90:null}],a=[{at:e,p10:null,p50:null,p90:null},...o];return[a.map(({at:l})=>l/1e3),...Ss.map(l=>a.map(c=>c[l]))]};function As(t){let{from:e,now:n,to:o}=t,[s,a]=Zn(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,o/1e3+(o>n?0:Ms/2)]},y:{range:[s,a]}},series:[{},l,{stroke:()=>_t("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>_t("--fan")}],axes:_n(),hooks:{drawAxes:[c=>dn(c,t,_t)],draw:[c=>$n(c,t,_t)]}}}var Yt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Ls=6;function ao({lines:t,next:e,as_table:n,now:o}){let{parameter:s}=t,a=yt(()=>s==="temperature"?Vn(t,G("\xB0C").show):t,[t,dt.value]),l=`of-${s}`;return i`
    <section class="parameter" aria-labelledby=${l}>
      <h2 id=${l}>${S(s)} <span class="unit">${ro(s)}</span></h2>
      ${e&&s in Yt&&i`<${Ts} lines=${a}
        chance=${e.pass_chance[Yt[s]]}
          standing=${e.now[`${s}_mg_n_l`]} />`}
      ${!n&&i`<${so} lines=${a} />`}
      <div class=${n?"":"unseen"}><${Ds} lines=${a} now=${o} /></div>
    </section>`}function Ts({lines:t,chance:e,standing:n}){let{parameter:o,limit:s,fan:a}=t;if(!s||a.length===0)return null;let l=a.at(-1),c=l&&l.p90-l.p10>s.mg_n_l,u={chance:Je(e)},p=n.p50>s.mg_n_l?r("outlook.perhaps_over",u):r("outlook.chance",u),m=n.p10>s.mg_n_l?r("outlook.over"):p;return i`
    <p class="chance">${m[0].toLocaleUpperCase()+m.slice(1)}</p>
    <p class="soft small">
      ${r("outlook.limit",{limit:V(s.mg_n_l),also:Fe(o,s.mg_n_l),by:r(`limit.${s.by}`)})} ${c&&r("outlook.wide")}</p>`}function Ds({lines:t,now:e}){let{parameter:n,fan:o,dots:s,marks:a}=t,l=m=>Is(n,m),c=Math.max(1,Math.round((o.length-1)/Ls)),u=[...s.map(m=>({at:m.at,what:r(m.doubted?"outlook.read_doubted":"outlook.read"),value:l(m.value),span:Es(m,l)})),...a.filter(({kind:m})=>m==="change").map(({at:m,said:$})=>({at:m,what:r("history.changed",{litres:y($)}),value:"",span:""}))].toSorted((m,$)=>$.at-m.at),p=a.filter(({kind:m})=>m==="feeding");return i`
    ${p.length>0&&i`<p class="soft small">${r("outlook.fed",{count:p.length,grams:b(p.reduce((m,{said:$})=>m+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${S(n)} ${ro(n)}</caption>
      ${o.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${r("outlook.likely")}</th></tr>
          ${o.filter((m,$)=>$%c===0).map(({at:m,p10:$,p50:d,p90:_})=>i`
            <tr key=${m}><th scope="row">${L(m,e)}</th><td>${l(d)} <span class="also">
              ${r("outlook.between",{low:l($),high:l(_)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${r("outlook.so_far")}</th></tr>
        ${u.map(({at:m,what:$,value:d,span:_},g)=>i`
          <tr key=${`${m}-${g}`}><th scope="row">${L(m,e)}<span class="also">${$}</span></th><td>${d}
            ${_&&i` <span class="also">${_}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function Es({low:t,high:e},n){return t===e?"":t===null?r("outlook.up_to",{high:n(e)}):e===null?r("outlook.from",{low:n(t)}):r("outlook.between",{low:n(t),high:n(e)})}var Is=(t,e)=>t in zt?V(e):N(e,1),ro=t=>t in zt?"mg N/L":t==="temperature"?G("\xB0C").label:"";var Ns=["total_ammonia","nitrite","nitrate","ph","temperature"],io=[2,6],Os=["doubt","prior","few","rule_working","rule_failed"];function Rs({id:t}){let e=C("tank",t);return e?i`<${qs} tank=${e} />`:i`<${rt} up="/" />`}function qs({tank:t}){let e=Y(io[0]),n=Y(!1),{facts:o,asked:s,forecast:a,advice:l}=Ye(t),{ahead:c,next:u,headroom:p}=a.answers,m=d=>u?.pass_chance[Yt[d]]??-1,$=yt(()=>Ns.toSorted((d,_)=>m(_)-m(d)).map(d=>Jn(d,o,s,c,l.limits,7*e.value)).filter(({dots:d,fan:_})=>d.length+_.length>0),[s,c,u,e.value]);return i`
    <${A} title=${r("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${r("tank.now")}>
        <${Ot} advice=${l} now=${k.value} />
        <${Nt} advice=${l} now=${k.value} />
        <${Rt} advice=${{...l,reasons:l.reasons.filter(({code:d})=>Os.includes(d))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${r("outlook.how")}>
        ${io.map(d=>i`<button key=${d} class="quiet" type="button"
          aria-pressed=${e.value===d} onClick=${h(()=>e.value=d)}>
          ${r("outlook.weeks",{count:d})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${n.value}
          onClick=${h(()=>n.value=!n.value)}>${r("outlook.as_table")}</button>
      </div>
      ${$.map(d=>i`<${ao} key=${d.parameter} lines=${d} next=${u} as_table=${n.value}
        now=${k.value} />`)}
      ${!n.value&&i`<${to} doubted=${$.some(({dots:d})=>d.some(_=>_.doubted))} />`}
      ${c&&i`<${eo} ready=${an(c.settled_h,s.records.now_h,s.start)} />`}
      <${vn} tank=${t} />
      ${p&&i`<${no} weeks=${rn(p)} expected=${p.feed_g_day_expected} />`}
      <${oo} />
    <//>`}var lo=3*36e5;function co({act:t,test_due:e,findings:n},o,{now:s,readings:a,changes:l}){if(o>0||t==="retest")return!0;let c=Date.parse(a.at(-1)?.at??"")||-1/0,u=Date.parse(l.at(-1)?.at??"")||-1/0;if(t==="change")return u<c||s-u>lo;let p=n.some(({code:m,urgency:$})=>m!=="water"&&$!=="watch");return(e||t==="test"||p)&&s-Math.max(c,u)>lo}function uo(t,e,n){let o=t.findIndex(s=>s.id===e);return o<0||n(t[o])?null:[...t.slice(o+1),...t.slice(0,o)].find(n)??null}var mo=t=>uo(Le(q),t,Ps);function Ps(t){let e=We(t);return e!==null&&co(e.advice,on(t.id).length,e.facts)}var Fs=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function Us({id:t}){let e=C("tank",t);return e?Se(e)?i`<${Xe} tank=${Ce(e)} />`:i`<${Bs} key=${t} tank=${e} />`:i`<${rt} up="/" why="labels.stranger" />`}function Bs({tank:t}){let{id:e}=t,{facts:n,advice:o}=It(t),s=Qe(`tank ${e}`,Ge(o));return i`
    <${A} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${y(t.water_l)}</span>`}
      act=${i`<${Ws} id=${e} advice=${o} />`}>
      <section class="room-taken" ref=${s} aria-label=${r("tank.now")}>
        <div class="row apart"><div><${Ot} advice=${o} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${r("incident.title")}</a></div>
        <${Nt} advice=${o} now=${k.value} />
        <${Ze} advice=${o} now=${k.value} />
        <${Rt} advice=${o} now=${k.value} />
      </section>
      <${sn} tank=${e} label=${r("tasks.today")} />
      <${Ks} tank=${t} />
      <${js} facts=${n} advice=${o} />
      <${Ys} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${r("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${r("long_run.title")}<br /><span class="soft small">
            ${Bt(Ut(n),ot(o.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${r("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${r("stock.title")}<br /><span class="soft small">
            ${Hs(n)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${r("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${r("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${r("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${r("tasks.title")}<br /><span class="soft small">
            ${Gs(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${r("water.title")}<br /><span class="soft small">
            ${zs(n)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${r("labels.title_one")}</a></li>
          ${x.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${r("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//>`}var Ws=({id:t,advice:e})=>{let n=mo(t),o=n?"next":e.act==="change"?"change":"test",s=a=>o===a?"main even":"quiet tall even";return i`
    ${x.value.may("reading")&&i`<a class=${s("test")} href=${`/tank/${t}/test`}>${r("test.do")}</a>`}
    ${x.value.may("water_change")&&i`<a class=${s("change")} href=${`/tank/${t}/change`}>${r("change.do")}
      </a>`}
    ${n&&i`<a class="main" href=${`/tank/${n.id}`}>${r("round.next",{tank:n.name})}</a>`}`};function Ys({id:t}){let e=Fs.filter(([,n])=>x.value.may(n));return e.length>0&&i`
    <nav class="section" aria-label=${r("write_down.title")}><h2>${r("write_down.title")}</h2>
      <div class="tiles">${e.map(([n,,o])=>i`<a key=${n} href=${`/tank/${t}/${o}`}><${T}
        name=${n} size=${28} />${r(`write_down.${n}`)}</a>`)}</div>
    </nav>`}function Ks({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<xe;return!Me(t)||!(e||kn(t.id).length===0)?null:i`
    <section class="section"><h2>${r("first_fish.title")}</h2><${An} tank=${t} />
      <ul class="lines">${x.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${r("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${r("setup.plans_of")}</a></li></ul>
    </section>`}function js({facts:t,advice:e}){let n=[...ht,...Z].flatMap(s=>t.readings.findLast(a=>a.parameter===s)??[]);if(n.length===0)return i`<p class="soft section">${r("tank.no_figures")}</p>`;let o=new Map(Object.entries(e.limits));return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${r("tank.figures")}</h2></caption>
        <tbody>${n.map(s=>{let{value:a,unit:l,also:c}=Tt(s),u=o.get(s.parameter)?.mg_n_l,p=u&&Q(s.parameter,u,s.basis??"ion");return i`<tr key=${s.parameter}>
            <th scope="row">${S(s.parameter)}<span class="also">${L(s.at,t.now)}</span>
              </th>
            <td><span class="big">${a}</span> <span class="unit">${l}</span>
              ${c&&i`<span class="also">${c}</span>`}
              ${p&&i`<span class="also">${r("tank.limit",{limit:p})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
    </section>`}function Hs({stock:t,now:e}){let{animals:n}=ge(t,e);return n.length?n.map(o=>Sn(o.species,o.count)).join("\xA0\xB7 "):r("stock.none_yet")}var zs=({source:t,label:e})=>[t?.name??r("water.none"),e?.name??r("label.none")].join("\xA0\xB7 ");function Gs(t){let e=nn(t).filter(n=>!n.over).length;return e?r("tasks.count",{count:e}):r("tasks.none")}var X=ht.length,ut=[...ht,null,...Z],Qs=2*36e5,po=()=>({at:0,begun:Date.parse(x.value.now()),readings:{},typed:{}});function Xs({id:t}){let e=C("tank",t),n=U({name:`test.${t}`,first:po}),o=W(e,"reading",e?.name??"");if(!e||o)return o;let s=n.draft.value,a=ut[s.at]??null,l=Object.values(s.readings),c=Js(l),u=(d,_={})=>{je(),n.set({..._,at:d<ut.length?Math.max(d,0):X}),scrollTo(0,0)},p=d=>u(ut.indexOf(d),Z.includes(d)?{from:s.at}:{}),m=()=>n.save(()=>{let d={tank:t,test:E(),...s.when?{at:s.when}:{}};return{writes:l.map(_=>({type:"put",kind:"reading",id:E(),fields:{..._,...d}})),said:r("saved.readings",{count:l.length}),to:`/tank/${t}`}}),$=l.length>0&&c.length===0&&!O(s.when);return i`
    <${A} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${Vs} test=${s} to=${u} />
        <button class="main" type="button" disabled=${!$} onClick=${h(()=>{m()})}>
          ${l.length?r("test.save",{count:l.length}):r("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${s.at>X?r("test.seldom"):r("test.place",{at:Math.min(s.at+1,X),of:X})}</span>`}>
      ${k.value-s.begun>Qs&&l.length>0&&i`
        <div class="row apart caution"><span>${r("test.begun",{when:L(s.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${h(()=>n.draft.value=po())}>${r("test.afresh")}
            </button></div>`}
      <${B} form=${n} kind="reading" />
      <${Zs} strange=${c} here=${a}
        on_go=${d=>u(ut.indexOf(d))} />
      ${a?i`<${ea} key=${a} tank=${t} parameter=${a} form=${n} to=${u} />`:i`<${sa} readings=${s.readings} on_go=${p} />`}
      ${s.at<X&&i`<${ta} on_go=${p} />`}
      <${F} at=${s.when} on_at=${d=>n.set({when:d})} />
    <//>`}var Js=t=>t.flatMap(({parameter:e,unit:n,value:o})=>{let s=ln({parameter:e,unit:n},S(e)),a=cn(s,o);return a?[{parameter:e,spec:s,error:a}]:[]});function Vs({test:t,to:e}){let n=ut[t.at],o=t.at>X?t.from??X:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(o))}>${r("test.back")}</button>`}
    ${n&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(t.at+1))}>
      ${r(t.readings[n]?"test.next":"test.skip")}</button>`}`}var Zs=({strange:t,here:e,on_go:n})=>t.map(({parameter:o,spec:s,error:a})=>i`
    <div key=${o} role="alert"><${lt} spec=${s} error=${a} />
      ${o!==e&&i`<button class="quiet" type="button" onClick=${h(()=>n(o))}>
        ${r("test.key_again",{what:S(o)})}</button>`}</div>`),ta=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${r("test.seldom")}</span>
    ${Z.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${S(e)}</button>`)}</div>`;function ea({tank:t,parameter:e,form:n,to:o}){let s=n.draft.value,a=c=>({...s.readings,[e]:{...c,at:x.value.now()}});return i`<${na} tank=${t} parameter=${e} test=${s}
    on_pick=${c=>o(s.at+1,{readings:a(c)})} on_type=${(c,u,p)=>{let{[e]:m,...$}=s.readings;n.set({keyed_in:{...s.keyed_in,[e]:p},typed:{...s.typed,[e]:c},readings:u?a(u):$})}} />`}function na({tank:t,parameter:e,test:n,on_pick:o,on_type:s}){let a=yn(e),l=n.readings[e]?.value,c=a.unit??Vt[e],{label:u,unit:p,hold:m,text:$}=G(c),{per_drop:d}=a,_=w=>Zt(a,Number((m(Number(w))*(d??1)).toPrecision(6))),g=$(n.typed[e]??null,n.keyed_in?.[e]);return i`
    <h2 class="asked">${S(e)} <span class="soft unit">
      ${[a.entry==="steps"?c:u,Lt(e,a.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${a.common?a.entry==="steps"?r("kit.common"):Z.includes(e)?r("kit.drops",{unit:Vt[e]}):r("kit.keypad"):a.name}</span>
      <a class="quiet" href=${a.id?`/room/test_kit/${a.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${r(a.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(a.timers??[]).length>0&&i`<${oa} kit=${a} tank=${t} />`}
    ${a.entry==="steps"&&(a.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${S(e)}>
          ${(a.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${h(()=>o(Zt(a,w)))}>${b(w)}</button>`)}
        </div>`:i`<${qt} label=${S(e)} unit=${d?r("test.drops"):u} value=${g}
          on_value=${w=>s(w,w===""?null:_(w),p)} />
          ${d&&g&&i`<p class="soft center" role="status">
            ${r("test.drops_are",{figure:`${b(_(g).value)} ${c}`})}</p>`}`}`}var oa=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((n,o)=>{let s=`${e}.${t.id}.${o}`,a=ze(s),l=()=>He({id:s,what:`${Pe(t.parameter)}: ${n.what}`,seconds:n.seconds,href:`/tank/${e}/test`});return i`<li key=${o} class="line"><span>${o+1}. ${n.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${T} name="clock" size=${20} />
        <span class="figures">${a===null?Mt(n.seconds):a>0?Mt(a):r("timer.again",{time:Mt(n.seconds)})}</span></button></li>`})}</ol>`,sa=({readings:t,on_go:e})=>i`
  <h2 class="asked">${r("test.answers")}</h2>
  <ul class="lines">${ut.map((n,o)=>{if(!n)return null;let s=t[n],a=s&&Tt(s);return i`<li key=${n}><button class="line whole" type="button" onClick=${h(()=>e(n))}>
      <span>${S(n)}</span>
      ${a?i`<span class="figures"><b class="hand">${a.value}</b> ${a.unit}</span>`:i`<span
        class="soft">${r(o>X?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;export{vo as Change,Oo as Dose,Ko as Feed,ds as LongRunPage,ks as Note,Rs as Outlook,Us as Tank,Xs as Test};
//# sourceMappingURL=tank-6G7OOWFG.js.map
