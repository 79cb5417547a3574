import{$ as it,Ba as P,Ca as Y,Ea as Cn,G as qt,Ga as An,H as rt,K as _n,L as hn,M as gn,N as wn,O as ft,Oa as Ln,Pa as Tn,Ua as Dn,Va as K,Wa as j,Xa as H,Y as kn,_ as vn,a as cn,aa as W,b as un,ca as bn,ea as yn,ja as _t,k as mn,ka as Z,l as pn,la as Zt,na as xn,oa as te,pa as Mn,q as dn,r as $n,ua as Sn,v as fn}from"./chunk-RGGLVA7F.js";import{$c as Je,A as fe,Ab as Tt,B as r,Ba as Se,Bb as dt,C as O,Ca as Ce,Cb as Q,Cc as ze,D as x,Db as J,Dc as Ge,Eb as Ue,Ec as Qe,Fb as v,G as T,Gb as Dt,I as _e,Ib as $t,Jb as R,Lc as Vt,Mb as Et,Nb as Be,O as Mt,Pa as Ae,Pb as We,Pc as Jt,Q as Gt,S as ut,Sc as Xe,T as et,Ta as Le,Tb as b,U as nt,Ua as st,Ub as k,V as Qt,Va as Te,W as St,Wb as q,Xb as A,Xc as Ve,Y as he,Z as ge,Za as De,_ as Ct,_a as Xt,aa as we,ab as Ee,ac as B,b as kt,bb as Ne,c as vt,cb as Ie,d as bt,db as Oe,dc as Nt,eb as Re,ec as Ye,ed as Ze,fc as D,fd as tn,g as N,gd as en,h as i,hb as mt,id as nn,ja as At,jd as It,ka as ot,kd as on,la as ke,ld as Ot,ma as ve,md as Rt,na as be,nd as sn,oa as ye,pc as L,pd as an,qb as qe,qc as Ke,qd as rn,rb as Pe,rd as M,sc as je,ua as xe,ub as pt,uc as He,ud as ln,vb as G,vc as h,vd as at,w as $e,xa as Me,xb as C,yb as Fe,zb as Lt}from"./chunk-CZTD35Z6.js";import"./chunk-HZWNA2UL.js";import{a as re,b as ie}from"./chunk-BEOBSI6V.js";import{A as de,B as V,C as I,D as zt,E as S,c as yt,d as Ht,f as le,l as U,o as xt,p as ce,t as ue,u as me,w as pe}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";function En(t,{levels:e,limits:n},o){let{tank:s,source:a,label:l,readings:c}=t,u=c.findLast(({parameter:$})=>$==="kh"),m=Et(t)?.celsius,p={ph:n.ph.from==="reading"||n.ph.from==="usual"?n.ph.value:void 0,kh_dkh:(u&&mt(u))??s.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:a?.ph,source_kh_dkh:a?.kh_dkh,source_temperature_c:a?.temperature_c??m,source_tan_mg_n_l:St(a,"total_ammonia",l),fraction:o};if(Object.values(p).includes(void 0))return null;try{let $=p;return{input:$,answer:S("water_after_change",$)}}catch($){if($ instanceof U)return null;throw $}}var mo=14,po=["salt","other"];function Nn({tank:t,doses:e,now:n},o){let s=new Map;for(let{label:a,at:l}of e){if(a?.basis!=="whole_tank"||!po.includes(a.use)||n-Date.parse(l)>mo*864e5)continue;let c=$o(a,t.water_l,o);c!==null&&s.set(a.id,{label:a,at:l,amount:c,unit:a.unit})}return[...s.values()]}function $o({amount:t,per_l:e,unit:n},o,s){let a={label_amount:t,label_per_l:e,label_unit:n==="g"?"g":"ml"};try{let l=S("bath_dose",{...a,water_l:o,change_fraction:s,every_days:1,days:1}),c=(n==="g"?l.again_g:l.again_ml)??null;return n==="drops"&&c!==null?Math.round(c):c}catch(l){if(!(l instanceof U))throw l;return null}}var fo={cold:12,hot:50};function In({facts:t,litres:e}){let n=Pe("taps",()=>fo),o=Et(t),s=(a,l)=>i`
    <${Ln} label=${r(`warmth.${a}`)} unit="°C" min=${1} max=${l} value=${n.value[a]}
      on_value=${c=>n.value={...n.value,[a]:c}} />`;return i`
    <details class="more section"><summary>${r("warmth.title")}</summary>
      ${o?i`
        <p class="soft">
          ${o.at?r("warmth.read",{warmth:Dt(o.celsius),when:T(o.at,t.now)}):r("warmth.usual",{warmth:Dt(o.celsius)})}</p>
        ${s("cold",40)}${s("hot",80)}
        <${_o} mix=${Be(e,o.celsius,n.value)} />
        <p class="caution small">${V("water_blend","hot_water")}</p>`:i`<p class="soft">${r("warmth.unknown")}</p>`}
    </details>`}var _o=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${r("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:Dt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${r("warmth.missed")}</p>`}
  <${W} name="water_blend" input=${t.input} answer=${t.answer} />`;var ho=.25,go=()=>({typed:null});function wo({id:t}){let e=A("tank",t),n=K({name:`change.${t}`,first:go}),o=vt(null),s=H(e,"water_change",r("change.title"));if(!e||s)return s;let{facts:a,advice:l}=Nt(e),c=ko(o,a,l),u=c.act!=="retest"&&c.litres||ot(ho*e.water_l,e.water_l,a.water_unit),m=G("L"),{typed:p,unit:$="L",from_tank:d="",at:_}=n.draft.value,g=p===null?u:Co(m.hold(Number(p),$),e.water_l),w=ye(e,g),f=w||d?null:ve(a,g);d&&!b.value.is_ready(d)&&b.value.ready(d);let z=d?{...a,source:Le(B.of("reading",d),{from_tank:d,at:_??b.value.now()})}:a,E=g/e.water_l,gt={litres:v(g||0),dose:f?.amount!==void 0?R(f):""},jt=()=>n.save(()=>{let F=d?{from_tank:d}:a.source?{source_water:a.source.id}:{},wt=vo({tank:t,at:_,litres:g,fraction:E,...F},f);return{writes:wt,said:r(wt.length>1?"saved.change_dose":"saved.change",gt),to:`/tank/${t}`}});return i`
    <${M} title=${r("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||P(_)}
        onClick=${h(()=>{jt()})}>${r(f?.amount!==void 0?"change.log_dose":"change.log",gt)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?nn(c,k.value):r("change.usual",{litres:v(u)})}</p>
      <${j} form=${n} kind="water_change" />
      <${bo} form=${n} tank=${e} litres=${g} suggested=${u} wrong=${w} />
      ${f&&i`<${xo} id=${t} dose=${f} />`}
      ${!w&&i`<${yo} facts=${a} fraction=${E} />`}
      ${!w&&i`<${So} facts=${z} advice=${c} fraction=${E} />`}
      ${!w&&i`<${In} facts=${a} litres=${g} />`}
      <${Mo} id=${t} from_tank=${d}
        on_pick=${F=>n.set({from_tank:F})} />
      <${Y} at=${_} on_at=${F=>n.set({at:F})} />
      ${Ao(f).map(F=>i`<p class="caution small" key=${F}>${F}</p>`)}
    <//>`}function ko(t,e,n){let o=[e.readings,e.changes].map(s=>s.at(-1)?.id).join();return n.from&&n.as_of===void 0&&t.current?.last!==o&&(t.current={last:o,advice:n}),t.current?.last===o?t.current.advice:n}function vo(t,e){let n=L(),o=[{type:"put",kind:"water_change",id:n,fields:t}];if(e?.label&&e.amount!==void 0){let{label:s,amount:a,unit:l}=e,{tank:c,at:u,litres:m}=t,p={at:u,tank:c,label:s.id,what:s.name,amount:a,unit:l,for_litres:m,water_change:n};o.push({type:"put",kind:"dose",id:L(),fields:p})}return o}function bo({form:t,tank:e,litres:n,suggested:o,wrong:s}){let a=N(!1),l=G("L"),{typed:c,unit:u="L"}=t.draft.value,m=At(e.water_l,l.unit),p=v(m),$=_=>t.set({typed:_,unit:l.unit}),d=_=>$(String(l.show(Math.min(Math.max(n+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${r("change.litres")}>
      <button class="quiet" type="button" aria-label=${r("change.less",{step:p})}
        onClick=${()=>d(-1)}><${D} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${a.value}
        aria-label=${r("change.type",{litres:v(n||0)})}
        onClick=${h(()=>a.value=!a.value)}>
        <span>${x(l.show(n||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${r("change.more",{step:p})}
        onClick=${()=>d(1)}><${D} name="plus" size=${28} /></button>
    </div>
    ${s?i`<div role="alert"><${it} spec=${be(e,r("change.litres"))} error=${s} /></div>`:i`<p class="soft center">${r("change.share",{percent:O(100*n/e.water_l,0)})}</p>`}
    ${a.value&&i`<${qt} label=${r("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${$} />`}
    ${c!==null&&n!==o&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>$(null))}>${r("change.suggested",{litres:v(o)})}</button></p>`}`}function yo({facts:t,fraction:e}){let n=Nn(t,e);return n.length===0?null:i`
    ${n.map(o=>i`<p key=${o.label.id}>${r("dose.again",{name:o.label.name,when:T(o.at,t.now),dose:R(o)})}</p>`)}
    ${n.some(({label:o})=>o.use==="other")&&i`<p class="caution small">
      ${V("bath_dose","label_over_all")}</p>`}`}var xo=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${r("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${R(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${r(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${r("dose.set_label")}</a></p>`:i`<p class="dose">${r("dose.none")}</p>`,Mo=({id:t,from_tank:e,on_pick:n})=>q("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${r("change.other_tank")}</summary>
    <${Mn} tank=${t} value=${e} label=${r("change.out_of")} on_pick=${o=>n(o===e?"":o)} />
    <p class="soft small">${r("change.other_tank_why")}</p>
  </details>`,So=({facts:t,advice:e,fraction:n})=>{let o=Object.values(e.levels).flatMap(({parameter:a,now_mg_n_l:l,reading:c})=>l?[{parameter:a,now_mg_n_l:l,basis:nt({reading:c})}]:[]),s=En(t,e,n);return(o.length>0||s)&&i`
    <table class="measured"><caption><h2>${r("change.after")}</h2></caption><tbody>
      ${o.map(({parameter:a,now_mg_n_l:l,basis:c})=>{let u=St(t.source,a,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:l,source_mg_l:u,fractions:[n]});return i`<tr key=${a}><th scope="row">${C(a)}</th>
          <td class="figures">${dt(a,l,c)} → <span class="big">
            ${dt(a,m,c)}</span> <span class="unit">
            ${`mg/L ${Lt(a,c)}`}</span></td></tr>`})}${s&&i`<tr><th scope="row">${C("ph")}</th><td class="figures">${O(s.input.ph,1)} → <span
          class="big">${O(s.answer.ph,1)}</span>${O(s.answer.ph_settled,1)!==O(s.answer.ph,1)&&i`<span class="also">${r("change.ph_settled",{ph:O(s.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${s?.answer.notes.map(a=>i`<p class="caution small" key=${a}>${a}</p>`)}`},Co=(t,e)=>Math.abs(t-e)<1e-6?e:t,Ao=t=>[...I("dilution"),...t?.amount!==void 0?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Lo=.25,To=1,Do={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function On(t,e){let n=o=>e.findLastIndex(s=>s.label?.id===o.id);return[...t].sort((o,s)=>n(s)-n(o)||o.name.localeCompare(s.name))}var Rn=(t,e,n)=>e.basis==="whole_tank"?t.water_l:n.at(-1)?.litres??ot(Lo*t.water_l,t.water_l);function Pt(t,e){let n=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),o=zt(n,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(o)):o,unit:t.unit}}function qn(t,e,n){let o={volume_l:t.water_l,tan_mg_n_l:e,...n===void 0?{}:{ammonia_percent:n}},s=S("starter_dose",o),a=n===void 0;return{input:o,answer:s,amount:a?s.ammonium_chloride_g:zt(s,"household_ammonia_ml"),unit:a?"g":"ml",tan_mg_n_l:s.tan_mg_n_l}}function ee(t,e=[]){let{water_l:n,feed_g_day:o=0,protein_fraction:s=0}=t,a=$n(t,e);return o<=0&&a>0?S("starter_dose",dn(n,a).input).tan_mg_n_l:o<=0||s<=0?To:S("starter_dose",{volume_l:n,feed_g_day:o,protein_fraction:s}).tan_mg_n_l}var Pn=t=>t.reduce((e,{change:n,count:o})=>e+(Do[n]??0)*(o??0),0)>0;function Fn(t,e,{system:n,marks:o}){let s=xt().salt_dose,{volume_l:a,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=fn(s,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:n,marks:o});if(!("answer"in c))return null;let u=c.payload,m=c.answer;return{what:de(me("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Ft="salt",Ut="ammonia",Eo=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function No({id:t}){let e=A("tank",t),n=K({name:`dose.${t}`,first:Eo}),o=H(e,"dose",r("dosing.title"));if(!e||o)return o;let{changes:s,doses:a}=st(B,e,k.value),l=On(q("label"),a),c=Fn(e,qe("bench.salt_dose",()=>({})).value,{system:pt.value,marks:$e(fe())}),u=Pn(xe(q("stock_change"),t)),{way:m,at:p}=n.draft.value,$=l.find(f=>f.id===m),d=Oo(n.draft.value,{tank:e,label:$,salt:c,animals:u,changes:s}),{fields:_}=d,g=()=>_&&n.save(()=>({writes:[{type:"put",kind:"dose",id:L(),fields:{tank:t,at:p,..._}}],said:r("dosing.saved",{dose:R(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),w=_&&i`<button class="main" type="button" disabled=${P(p)} onClick=${h(()=>{g()})}>
      ${r("dosing.log",{dose:R(_)})}</button>`;return i`
    <${M} title=${r("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${qo} dose=${a.at(-1)} />
      <${j} form=${n} kind="dose" />
      <${Io} tank=${t} form=${n} labels=${l} salt=${c} />
      ${$&&i`<${Po} form=${n} tank=${e} label=${$} dose=${d}
        litres=${Un(n.draft.value,e,$,s)} />`}
      ${m===Ft&&c&&i`<${ne} dose=${d}
        said=${r("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Ut&&i`<${Fo} tank=${e} form=${n} dose=${d} animals=${u} />`}
      ${_&&i`<${Y} at=${p} on_at=${f=>n.set({at:f})} />`}
      ${Uo(m,$).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Io({tank:t,form:e,labels:n,salt:o}){let s=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${h(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,a=({amount:l,unit:c,per_l:u})=>r("label.line",{amount:x(l),unit:r(`unit.${c}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${r("dosing.what")}>
      ${n.map(l=>s(l.id,l.name,a(l)))}
      ${o&&s(Ft,o.what,r("dosing.from_bench"))}
      ${s(Ut,r("dosing.ammonia"),r("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${b.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${D}
        name="plus" size=${20} />${r("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${r("dosing.work_out_salt")}</a>
    </div>`}function Oo(t,{tank:e,label:n,salt:o,animals:s,changes:a}){try{if(n){let l=Un(t,e,n,a);return{fields:{...Pt(n,l),label:n.id,what:n.name,for_litres:l}}}if(t.way===Ft&&o){let{what:l,what_code:c,amount:u,unit:m,input:p,answer:$}=o;return{fields:{what:l,what_code:c,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:p,answer:$}}return t.way===Ut&&!s?Ro(t,e):{}}catch(l){if(!(l instanceof U))throw l;return{errors:l.errors}}}function Ro(t,e){let n=t.household?Number(t.percent):void 0;if(n!==void 0&&!(n>0))return{};let{amount:o,unit:s,tan_mg_n_l:a,input:l,answer:c}=qn(e,Bn(t,e),n),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:Xe(u),what_code:u,amount:o,unit:s,tan_mg_n_l:a,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var Un=({litres:t},e,n,o)=>t===null?Rn(e,n,o):Ct(Number(t.text),t.unit,"L"),Bn=({tan:t},e)=>t===null?ee(e,q("own_species")):Number(t),qo=({dose:t})=>i`<p class="soft">
    ${t?r("dosing.last",{dose:R(t),what:Ve(t),when:T(t.at,k.value)}):r("dosing.never")}</p>`;function Po({form:t,tank:e,label:n,litres:o,dose:s}){let a=he({name:"",unit:"L"},pt.value),l=t.draft.value.litres,c=Xt(Ct(At(e.water_l),"L",a));return i`
    <section class="section"><h2>${r("dosing.for_water")}</h2>
      <${rt} label=${r("dosing.for_water")} unit=${ge(a)} value=${Ct(o,"L",a)}
        typed=${l&&l.unit===a?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:a}})} />
      <${ne} dose=${s} said=${r(`dose.basis_${n.basis}`)} />
    </section>`}function Fo({tank:t,form:e,dose:n,animals:o}){if(o)return i`<p class="wrong section" role="status"><${D} name="needs" /><span>${r("dosing.animals_here")}</span>
      </p>`;let{tan:s,household:a,percent:l}=e.draft.value,c=Bn(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${r("dosing.wanted")}</h2>
      <${rt} label=${r("dosing.wanted")} unit="mg N/L" value=${c} typed=${s}
        step=${Xt(Math.max(ee(t,q("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${r("dosing.with")}>
      <button type="button" aria-pressed=${!a} onClick=${u(!1)}>${r("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${a} onClick=${u(!0)}>${r("dosing.household_ammonia")}
        </button>
    </div>
    ${a&&i`<section class="section"><h2>${r("dosing.strength")}</h2>
      <${rt} label=${r("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${r("dosing.no_strength")}</p>`}</section>`}
    <${ne} dose=${n} said=${r("dosing.gives",{tan:J(c||0),litres:v(t.water_l)})}
      />`}var ne=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(n=>i`<${it} key=${n.field} error=${n}
    spec=${{label:r("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${R(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(n=>i`<p class="small" key=${n}>${n}</p>`)}
    ${t.name&&i`<${W} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function Uo(t,e){return t===Ft?I("salt_dose"):t===Ut?I("starter_dose"):[r("dosing.label_first"),...e?.use==="dechlorinator"?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function Bo({place:t}){let e=N(""),n=N([]);if(!b.value.may("dose"))return i`<${Dn} title=${r("group_dose.title")} up="/" />`;let o=Te(B).filter(m=>(m.place?.trim()??"")===t),s=q("label").filter(({basis:m})=>m==="whole_tank"),a=s.find(({id:m})=>m===e.value)??(s.length===1?s[0]:null),l=a?o.flatMap(m=>Wo(m,a)):[],c=l.filter(({tank:m})=>!n.value.includes(m.id)),u=m=>n.value=n.value.includes(m)?n.value.filter(p=>p!==m):[...n.value,m];return i`
    <${M} title=${r("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||r("many.no_place")}</span>`}
      act=${a&&i`<button class="main" type="button" disabled=${c.length===0}
        onClick=${h(()=>{Yo(a,c)})}>${r("group_dose.log",{count:c.length})}</button>`}>
      ${s.length===0?i`<p class="sentence">${r("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${r("water.new_label")}</a></p>`:i`<section class="section"><h2>${r("group_dose.which")}</h2><div class="tiles two short">${s.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===a?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${a&&i`<section class="section"><h2>${r("group_dose.tanks")}</h2><div class="tiles two short">${l.map(({tank:m,amount:p,unit:$})=>i`<button key=${m.id} type="button"
          aria-pressed=${!n.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${R({amount:p,unit:$})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${r("dosing.label_first")}</p>`}
    <//>`}function Wo(t,e){try{return[{tank:t,...Pt(e,t.water_l)}]}catch(n){if(n instanceof U)return[];throw n}}async function Yo(t,e){let n=b.value.now(),o=e.map(({tank:{id:s,water_l:a},amount:l,unit:c})=>({type:"put",kind:"dose",id:L(),fields:{tank:s,at:n,label:t.id,what:t.name,amount:l,unit:c,for_litres:a}}));await Ke(o,r("group_dose.saved",{count:o.length,label:t.name}))&&sn("/",{replace:!0})}var Yn=["food","protein_fraction"],Ko=()=>({typed:null,food:null,own:{},at:void 0});function jo({id:t}){let e=A("tank",t),n=K({name:`feed.${t}`,first:Ko}),o=H(e,"feeding",r("feed.title"));if(!e||o)return o;let s=st(B,e,k.value),{feedings:a}=s,l=Ne(s),c=Ee(e,a,l?.answer.usual_g_day),u=Oe(q("feeding")),{typed:m,at:p}=n.draft.value,$=m===null?c.feed_g:Number(m),d=Qo(n.draft.value,u,c),_=f=>n.save(()=>({writes:[{type:"put",kind:"feeding",id:L(),fields:{tank:t,at:p,feed_g:f,...f>0?d:{}}}],said:f>0?r("feed.saved",{amount:$t(f),tank:e.name}):r("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),g=i`
    <button class="quiet tall" type="button" disabled=${P(p)} onClick=${h(()=>{_(0)})}>
      ${r(p?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!($>0)||P(p)}
      onClick=${h(()=>{_($)})}>${r("feed.log",{amount:$t($||0)})}</button>`,w=m===null||$===c.feed_g?c.from:"keeper";return i`
    <${M} title=${r("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${Xo} feedings=${a} />
      <${rt} label=${r("feed.grams")} unit="g" value=${$} typed=${m} step=${Ie(c.feed_g)}
        least=${.01} most=${pe("feeding","feed_g").max}
        on_type=${f=>n.set({typed:f})} />
      <p class="soft center">${r(`feed.from_${w}`,{usual:$t(c.feed_g)})}</p>
      ${l&&i`<${Ho} answer=${l.answer} feed_g=${$} />`}
      <${j} form=${n} kind="feeding" beside=${n.draft.value.food===""?Yn:[]} />
      <${Go} form=${n} known=${u} given=${d} />
      <${Y} at=${p} on_at=${f=>n.set({at:f})} />
      ${$>0&&i`<${Vo} tank=${e} feed_g=${$} protein_fraction=${d.protein_fraction} />`}
      <${zo} ration=${l} />
      ${I("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var Ho=({answer:{usual_g_day:t,most_g_day:e},feed_g:n})=>i`
  <p class=${n>e?"wrong":"soft small center"}>
    ${r("feed.ration",{usual:Wn(t),most:Wn(e)})}</p>`,zo=({ration:t})=>t&&i`<section class="section"><h2>${r("feed.ration_why")}</h2>
    <${W} name="feed_ration" ...${t} /></section>`,Wn=t=>`${x(t,t<1?2:1)}\xA0g`,Kn=()=>Yn.map(t=>ue(ce().feeding.fields,t));function Go({form:t,known:e,given:n}){let{food:o,own:s}=t.draft.value;return i`
    <section class="section"><h2>${r("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${r("feed.food")}>
        ${e.map(({food:a,protein_fraction:l})=>i`
          <button type="button" key=${a} aria-pressed=${n.food===a}
            onClick=${h(()=>t.set({food:a}))}>
            <b>${a}</b>${l!==void 0&&i`<span class="soft small">
              ${r("feed.protein",{percent:O(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${o===""} onClick=${h(()=>t.set({food:""}))}><${D}
          name="plus" />${r("feed.other")}</button>
      </div>
      ${o===""&&i`<div class="section"><${vn} specs=${Kn()} raw=${s} errors=${t.errors.value} tried=${!0}
        on_raw=${a=>t.set({own:a})} /></div>`}
    </section>`}function Qo({food:t,own:e},n,o){if(t==="")return kn(Kn(),e);let s=n.find(u=>u.food===t),{feed_g:a,from:l,...c}=o;return t!==null&&s?{...s}:c}function Xo({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${r("feed.never")}</p>`;let n={when:T(e.at,k.value),amount:$t(e.feed_g),food:e.food??""};return i`<p class="soft">${r(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",n)}</p>`}function Vo({tank:t,feed_g:e,protein_fraction:n}){try{let{input:o,answer:s,assumed:a}=Re(t,e,n),l={mg:x(s.tan_mg_n_day,1),rise:J(s.tan_mg_n_l_day),percent:O(100*o.protein_fraction,0)};return i`
      <section class="section"><h2>${r("feed.becomes")}</h2>
        <p>${r("feed.nitrogen",l)}${a&&i` ${r("feed.assumed",l)}`}</p>
        <${W} name="nitrogen_load" input=${o} answer=${s} />
      </section>`}catch(o){if(!(o instanceof U))throw o;return null}}var jn=28,Hn=14,Jo=90,Zo=3,ts=21,es=.3,ns=60,os=[7,3,1],ss=1;function Bt(t){let e=as(t),n=rs(t);return{routine:e,young:zn(t)<Hn,nitrate:n&&us(t,e,n),kh:n&&ms(t,e,n.rise.usual)}}function zn({tank:t,now:e,changes:n,readings:o}){let s=[t.started_at,n[0]?.at,o[0]?.at].flatMap(a=>a?[Date.parse(a)]:[]);return s.length?(e-Math.min(...s))/864e5:0}function as(t){let e=Math.min(jn,zn(t)),n=t.changes.filter(({at:a})=>oe(a,t.now,jn));if(n.length===0||e<Hn)return null;let s=1-n.reduce((a,{fraction:l})=>a*(1-Math.min(l,.95)),1)**(1/n.length);return s<.01?null:{count:n.length,litres:s*t.tank.water_l,fraction:s,every_days:e/n.length}}function rs(t){let e=is(t);if(e)return{from:"readings",rise:e};let{feed_g_day:n,fish_g:o,protein_fraction:s,volume_l:a}=We(t).records.tank,{feed_of_fish:l,protein_fraction:c}=yt(),u=n??(o===void 0?void 0:o*l);if(!u)return null;let p=S("nitrogen_load",{feed_g_day:u,protein_fraction:s??c,volume_l:a}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:p,high:p}}}function is(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&oe(u.at,t.now,Jo)&&Qt(u)&&!cs(u)),[n,o]=[e[0],e.at(-1)];if(!o||e.length<Zo||Date.parse(o.at)-Date.parse(n.at)<ts*864e5)return null;let s=0,a=0;for(let u=1;u<e.length;u++){let m=ls(t,e[u-1],e[u]);s+=et(e[u])-m.left,a+=m.days}if(a<=0)return null;let l=es*Math.hypot(et(n),et(o))/a,c=s/a;return{low:Math.max(0,c-l),usual:Math.max(0,c),high:Math.max(0,c+l)}}function ls({changes:t},e,n){let o=et(e),s=0,a=Date.parse(e.at);for(let{at:l,fraction:c,source:u}of t)l<=e.at||l>n.at||(s=(s+(Date.parse(l)-a)/864e5)*(1-c),o=o*(1-c)+c*(u?.nitrate_mg_n_l??0),a=Date.parse(l));return{left:o,days:s+(Date.parse(n.at)-a)/864e5}}var cs=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function us(t,e,{from:n,rise:o}){let s=De(t).nitrate.mg_n_l,a=t.source?.nitrate_mg_n_l??0,l=t.readings.findLast(p=>p.parameter==="nitrate"&&Qt(p)),c=p=>{if(!e)return null;let $={add_mg_l_day:p,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:a,ceiling_mg_l:s};return{input:$,answer:S("steady_routine",$)}},u=p=>c(p)?.answer.before_change_mg_l??0,m=c(o.usual);return{from:n,rise_mg_n_l_day:o,limit_mg_n_l:s,settles_mg_n_l:m&&{low:u(o.low),usual:u(o.usual),high:u(o.high)},worked:m,days_to_limit:e||o.usual<=0?null:Math.max(0,s-(l?et(l):0))/o.usual,least:Gn(t,e,p=>o.usual<=0?void 0:S("steady_routine",{add_mg_l_day:o.usual,change_fraction:.5,every_days:p,source_mg_l:a,ceiling_mg_l:s}).fraction_needed),source_over:a>=s}}function ms(t,e,n){let o=t.readings.findLast(p=>p.parameter==="kh"&&oe(p.at,t.now,ns)&&mt(p)!==void 0),s=o?mt(o):t.tank.kh_dkh;if(s===void 0||s>60)return null;let a=t.source?.kh_dkh,l={kh_dkh:s,nitrogen_mg_n_l_day:Math.min(n,100),floor_kh_dkh:ss},c=p=>S("alkalinity_use",{...l,source_kh_dkh:a,change_fraction:.5,every_days:p}).fraction_needed,u=e&&a!==void 0?{...l,source_kh_dkh:a,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:l,m=S("alkalinity_use",u);return{now_dkh:s,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:a===void 0||n<=0?null:Gn(t,e,c),source_known:a!==void 0,worked:{input:u,answer:m}}}function Gn(t,e,n){let{water_l:o}=t.tank,s=ke(t,{unhurried:!0}),a=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let l of[...a,...os]){let c=n(l);if(!(typeof c!="number"||c*o>s))return{litres:ot(c*o,o,t.water_unit,s),every_days:l}}return null}var oe=(t,e,n)=>Date.parse(t)<=e&&e-Date.parse(t)<=n*864e5;var se=365;function Wt({nitrate:t,young:e},n){if(e)return r("long_run.young");if(!t)return r("long_run.no_load");let o=Q("nitrate",t.limit_mg_n_l,n);if(t.source_over)return r("long_run.source_over",{limit:o});if(t.rise_mg_n_l_day.usual<=0)return r("long_run.no_rise");if(!t.settles_mg_n_l)return ps(t,o);let{settles_mg_n_l:s}=t,a=t.from==="food"?Q("nitrate",s.high,n):ds(s,n),l=t.from==="food"?"at_most":"settles",c=s.high<=t.limit_mg_n_l?"under":s.low>t.limit_mg_n_l?"over":"perhaps";return r(`long_run.${l}_${t.from==="food"&&c!=="under"?"perhaps":c}`,{level:a,limit:o})}function ps({days_to_limit:t},e){let n=Math.round(t??1/0);return n>se?r("long_run.no_changes_far",{limit:e}):r(n<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:n})}var ds=({low:t,high:e},n)=>r("outlook.between",{low:dt("nitrate",t,n),high:Q("nitrate",e,n)});function $s({id:t}){let e=A("tank",t);if(!e)return i`<${at} up="/" />`;let n=st(B,e,k.value),o=Bt(n),s=n.readings.findLast(({parameter:l})=>l==="nitrate"),a=nt(s&&{reading:s});return i`
    <${M} title=${r("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${r("long_run.title")}>
        <${fs} id=${t} found=${o} basis=${a} />
      </section>
      <section class="section"><h2>${r("long_run.kh")}</h2><${hs} id=${t} found=${o} /></section>
    <//>`}function fs({id:t,found:e,basis:n}){let{nitrate:o,routine:s,young:a}=e,l=o?.settles_mg_n_l&&o.settles_mg_n_l.high>o.limit_mg_n_l;return i`
    <p class="sentence">${Wt(e,n)}</p>
    <p>${_s(e)}</p>
    ${o&&!a&&i`
      <${Qn} id=${t} least=${o.least} routine=${s} />
      <p class="soft small">${o.from==="food"?r("long_run.from_food"):r("long_run.from_readings",{rise:Q("nitrate",o.rise_mg_n_l_day.usual*7,n)})}</p>
      ${l&&i`<p class="caution small">${V("steady_routine","slowly")}</p>`}
      ${o.worked&&i`<${W} name="steady_routine" ...${o.worked} />`}`}`}var _s=({routine:t,young:e})=>t?r("long_run.routine",{count:t.count,litres:v(t.litres),days:x(t.every_days,t.every_days<10?1:0)}):e?"":r("long_run.no_routine");function Qn({id:t,least:e,routine:n}){if(!e)return null;let{litres:o,every_days:s}=e,a=n&&n.litres/n.every_days>=o/s;return i`
    <p>${r(a?"long_run.least_held":"long_run.least",{litres:v(o),count:s})}</p>
    ${b.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${s}&title=${encodeURIComponent(r("long_run.task",{litres:v(o)}))}`}>${r("long_run.make_task")}</a></p>`}`}function hs({id:t,found:{kh:e,nitrate:n,routine:o}}){if(!e)return i`<p>${r(n?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let s=x(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${gs(e)}</p>
    <p>${r("long_run.kh_falls",{fall:s,now:x(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${r("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${Qn} id=${t} least=${e.least} routine=${o} />
      <p class="caution small">${V("alkalinity_use","kh_floor")}</p>`}
    <${W} name="alkalinity_use" ...${e.worked} />`}function gs({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=se?r("long_run.kh_gone",{count:Math.round(t)}):e===null?r("long_run.kh_far"):r("long_run.kh_settles",{level:x(e,1)})}function Xn(t="limnary-drafts"){let e=new ie(()=>re(t,1,{upgrade(o){o.createObjectStore("pictures",{keyPath:"id",autoIncrement:!0}).createIndex("draft","draft")},terminated(){e.db=null}})),n=["pictures"];return{async list(o){return(await e.run(n,"readonly",({pictures:a})=>a.index("draft").getAll(o))).map(({id:a,bytes:l,type:c,width:u,height:m})=>({id:a,picture:new Blob([l],{type:c}),width:u,height:m}))},async add(o,{picture:s,width:a,height:l}){let c=await s.arrayBuffer();return e.run(n,"readwrite",({pictures:u})=>u.add({draft:o,bytes:c,type:s.type,width:a,height:l}))},async remove(o){let s=await e.run(n,"readwrite",async({pictures:a})=>{let l=await a.get(o);return await a.delete(o),l});return async()=>{s&&await e.run(n,"readwrite",({pictures:a})=>a.put(s))}},forget:o=>e.run(n,"readwrite",async({pictures:s})=>{for(let a of await s.index("draft").getAllKeys(o))await s.delete(a)}),close:()=>e.close()}}async function Vn(t){let e=await createImageBitmap(t).catch(a=>{throw new RangeError("no picture",{cause:a})}),n=Math.min(1,1600/Math.max(e.width,e.height)),o=document.createElement("canvas");o.width=Math.max(1,Math.round(e.width*n)),o.height=Math.max(1,Math.round(e.height*n)),o.getContext("2d")?.drawImage(e,0,0,o.width,o.height),e.close();let s=await new Promise(a=>o.toBlob(a,"image/jpeg",.8));if(!s)throw new RangeError("no picture");return{picture:s,width:o.width,height:o.height}}var ws=["at_surface","hiding"],ae=5e3,Yt=Xn(),ks=()=>({picked:[],text:"",at:void 0});function vs({id:t}){let e=A("tank",t),n=`note.${t}`,o=K({name:n,first:ks}),{photos:s,busy:a,problem:l,add:c,drop:u}=bs(n),m=H(e,"note",r("note.title"));if(!e||m)return m;let{picked:p,text:$,at:d}=o.draft.value,_=Vt.filter(E=>p.includes(E)),g=[..._.map(Jt),$.trim()].filter(Boolean).join(`
`),w=()=>o.save(()=>{let E={tank:t,at:d??b.value.now(),entry:L()},gt={...E,text:g.slice(0,ae),..._.length?{quick:_}:{}};return{writes:g?[{type:"put",kind:"note",id:L(),fields:gt}]:[],pictures:s.map(({picture:jt,width:F,height:wt})=>({picture:jt,id:L(),fields:{...E,width:F,height:wt}})),said:r("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>Yt.forget(n).catch(()=>{})}}),f=(g||s.length>0)&&!a&&g.length<=ae&&!P(d),z=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{w()})}>
    ${s.length?r("note.save_photos",{count:s.length}):r("note.save")}</button>`;return i`
    <${M} title=${r("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${z}>
      <${ys} id=${t} picked=${p} on_pick=${E=>o.set({picked:E})} />
      <div class="field section"><label for="note-text">${r("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${ae} value=${$}
          onInput=${Qe(E=>o.set({text:E}))}></textarea></div>
      <section class="section"><h2>${r("note.photos")}</h2>
        <${xs} photos=${s} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${D} name="camera" />${r("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${r("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${a&&i`<p class="soft" role="status">${r("note.shrinking")}</p>`}
        <${Sn} text=${l} />
        <${j} form=${o} kind="note" />
        <p class="soft small">${r("note.photo_size")}</p>
      </section>
      <${Y} at=${d} on_at=${E=>o.set({at:E})} />
    <//>`}function bs(t){let e=N([]),n=N(0),o=N(""),s=async()=>{e.value=await Yt.list(t)};kt(()=>{s().catch(()=>o.value=r("note.photos_not_kept"))},[t]);let a=async u=>{n.value+=1;try{await Yt.add(t,await Vn(u)),await s()}catch(m){let p=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";o.value=r(p,{file:u.name})}finally{n.value-=1}},l=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",o.value="";for(let p of m)await a(p)},c=async u=>{let m=await Yt.remove(u);await s(),je(r("note.photo_dropped"),async()=>{await m(),await s()})};return{photos:e.value,busy:n.value>0,problem:o.value,add:l,drop:c}}function ys({id:t,picked:e,on_pick:n}){let o=s=>n(e.includes(s)?e.filter(a=>a!==s):[...e,s]);return i`
    <div class="tiles two short" role="group" aria-label=${r("note.quick")}>
      ${Vt.map(s=>i`<button type="button" key=${s} aria-pressed=${e.includes(s)}
        onClick=${h(()=>o(s))}>${Jt(s)}</button>`)}
    </div>
    ${e.some(s=>ws.includes(s))&&i`
      <div class="caution" role="status"><p>${r(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${r("test.do")}</a></div>`}`}var xs=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:n,picture:o},s)=>{let a=r("photo.numbered",{at:s+1});return i`
    <li key=${n}><${Cn} picture=${o} said=${a} />
      <button class="quiet square" type="button" aria-label=${r("remove_named",{what:a})}
        onClick=${h(()=>{e(n)})}><${D} name="remove" size=${20} /></button></li>`})}</ul>`;function Zn(t,e,n,o,s,a){let{start:l,records:c}=n,u=f=>l+f*36e5,m=u(c.now_h),p=Math.max(m-a*24*36e5,Math.min(l,m-48*36e5)),$=o?.doubts??[],d=c.readings.filter(f=>f.parameter===t&&u(f.at_h)>=p).map(f=>({at:u(f.at_h),...Ms(f),doubted:$.some(z=>z.parameter===t&&z.at_h===f.at_h)})),g=ut(t)&&(t!=="nitrate"||n.nitrate_known)?(o?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(f=>Jn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>Jn(f.at,"change",f.litres))].filter(({at:f})=>f>=p&&f<=m).sort((f,z)=>f.at-z.at);return{parameter:t,dots:d,fan:g,marks:w,limit:ut(t)?s[t]:null,from:p,now:m,to:g.at(-1)?.at??m}}var Jn=(t,e,n)=>({at:Date.parse(t),kind:e,said:n});function Ms(t){if(!ut(t.parameter)){let[c,u]=t.steps?.length?Ht(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:n}=le(t),o=yt(),s=t.parameter==="nitrate"?"nitrate":"reading",[a,l]=Ht(e,n,o[`${s}_offset`],o[`${s}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:a===null?null:Math.max(a,0),high:l}}function to(t,e){let n=o=>o===null?null:e(o);return{...t,dots:t.dots.map(o=>({...o,value:e(o.value),low:n(o.low),high:n(o.high)})),fan:t.fan.map(({at:o,p10:s,p50:a,p90:l})=>({at:o,p10:e(s),p50:e(a),p90:e(l)}))}}function eo({parameter:t,dots:e,fan:n,limit:o}){let s=[...e.flatMap(({value:u,low:m,high:p})=>[u,m??u,p??u]),...n.flatMap(({p10:u,p90:m})=>[u,m]),...o?[o.mg_n_l]:[]],a=Math.max(...s);if(ut(t))return[0,a>0?a*1.12:1];let l=Math.min(...s),c=Math.max((a-l)*.2,.5);return[l-c,a+c]}var no=({doubted:t})=>i`
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
  </ul>`,oo=({ready:{code:t,from:e,likely:n,to:o}})=>{let s=a=>a===void 0?"":_e(a);return i`
    <section class="section"><h2>${r("ready.title")}</h2>
      <p class="sentence">${r(`ready.${t}`,{from:s(e),likely:s(n),to:s(o)})}</p>
      <p class="soft small">${r("ready.means")}</p>
    </section>`};function so({weeks:t,expected:e}){let[n]=t;return i`
    <details class="more section"><summary>${r("carry.title")}</summary>
      <p>
        ${r("carry.now",{low:lt(n.feed_g_day.p10),high:lt(n.feed_g_day.p90),expected:lt(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${r("carry.when")}</th><th scope="col" class="right">${r("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:o,feed_g_day:s})=>i`
          <tr key=${o}><th scope="row">${r(`carry.in_${o}`)}</th>
            <td>${lt(s.p50)}<span class="also">
              ${r("outlook.between",{low:lt(s.p10),high:lt(s.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${xt().stock_headroom.uncertainty}</p>
    </details>`}var ao=()=>{let t=[...I("outlook"),...I("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},lt=t=>`${x(t,t<1?2:1)} g`;var Ss=86400,Cs=["p10","p50","p90"];function ro({lines:t}){let e=vt(null);return kt(()=>gn(e.current,()=>Ls(t),As(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var As=({fan:t,from:e,now:n})=>{let o=t.length?t:[{at:n,p10:null,p50:null,p90:null}],a=[{at:e,p10:null,p50:null,p90:null},...o];return[a.map(({at:l})=>l/1e3),...Cs.map(l=>a.map(c=>c[l]))]};function Ls(t){let{from:e,now:n,to:o}=t,[s,a]=eo(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,o/1e3+(o>n?0:Ss/2)]},y:{range:[s,a]}},series:[{},l,{stroke:()=>ft("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>ft("--fan")}],axes:wn(),hooks:{drawAxes:[c=>_n(c,t,ft)],draw:[c=>hn(c,t,ft)]}}}var Kt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Ts=6;function io({lines:t,next:e,as_table:n,now:o}){let{parameter:s}=t,a=bt(()=>s==="temperature"?to(t,G("\xB0C").show):t,[t,pt.value]),l=`of-${s}`;return i`
    <section class="parameter" aria-labelledby=${l}>
      <h2 id=${l}>${C(s)} <span class="unit">${lo(s)}</span></h2>
      ${e&&s in Kt&&i`<${Ds} lines=${a}
        chance=${e.pass_chance[Kt[s]]}
          standing=${e.now[`${s}_mg_n_l`]} />`}
      ${!n&&i`<${ro} lines=${a} />`}
      <div class=${n?"":"unseen"}><${Es} lines=${a} now=${o} /></div>
    </section>`}function Ds({lines:t,chance:e,standing:n}){let{parameter:o,limit:s,fan:a}=t;if(!s||a.length===0)return null;let l=a.at(-1),c=l&&l.p90-l.p10>s.mg_n_l,u={chance:en(e)},m=n.p50>s.mg_n_l?r("outlook.perhaps_over",u):r("outlook.chance",u),p=n.p10>s.mg_n_l?r("outlook.over"):m;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${r("outlook.limit",{limit:J(s.mg_n_l),also:Ue(o,s.mg_n_l),by:r(`limit.${s.by}`)})} ${c&&r("outlook.wide")}</p>`}function Es({lines:t,now:e}){let{parameter:n,fan:o,dots:s,marks:a}=t,l=p=>Is(n,p),c=Math.max(1,Math.round((o.length-1)/Ts)),u=[...s.map(p=>({at:p.at,what:r(p.doubted?"outlook.read_doubted":"outlook.read"),value:l(p.value),span:Ns(p,l)})),...a.filter(({kind:p})=>p==="change").map(({at:p,said:$})=>({at:p,what:r("history.changed",{litres:v($)}),value:"",span:""}))].sort((p,$)=>$.at-p.at),m=a.filter(({kind:p})=>p==="feeding");return i`
    ${m.length>0&&i`<p class="soft small">${r("outlook.fed",{count:m.length,grams:x(m.reduce((p,{said:$})=>p+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${C(n)} ${lo(n)}</caption>
      ${o.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${r("outlook.likely")}</th></tr>
          ${o.filter((p,$)=>$%c===0).map(({at:p,p10:$,p50:d,p90:_})=>i`
            <tr key=${p}><th scope="row">${T(p,e)}</th><td>${l(d)} <span class="also">
              ${r("outlook.between",{low:l($),high:l(_)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${r("outlook.so_far")}</th></tr>
        ${u.map(({at:p,what:$,value:d,span:_},g)=>i`
          <tr key=${`${p}-${g}`}><th scope="row">${T(p,e)}<span class="also">${$}</span></th><td>${d}
            ${_&&i` <span class="also">${_}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function Ns({low:t,high:e},n){return t===e?"":t===null?r("outlook.up_to",{high:n(e)}):e===null?r("outlook.from",{low:n(t)}):r("outlook.between",{low:n(t),high:n(e)})}var Is=(t,e)=>t in Gt?J(e):O(e,1),lo=t=>t in Gt?"mg N/L":t==="temperature"?G("\xB0C").label:"";var Os=["total_ammonia","nitrite","nitrate","ph","temperature"],co=[2,6],Rs=["doubt","prior","few","rule_working","rule_failed"];function qs({id:t}){let e=A("tank",t);return e?i`<${Ps} tank=${e} />`:i`<${at} up="/" />`}function Ps({tank:t}){let e=N(co[0]),n=N(!1),{facts:o,asked:s,forecast:a,advice:l}=Ye(t),{ahead:c,next:u,headroom:m}=a.answers,p=d=>u?.pass_chance[Kt[d]]??-1,$=bt(()=>[...Os].sort((d,_)=>p(_)-p(d)).map(d=>Zn(d,o,s,c,l.limits,7*e.value)).filter(({dots:d,fan:_})=>d.length+_.length>0),[s,c,u,e.value]);return i`
    <${M} title=${r("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${r("tank.now")}>
        <${Ot} advice=${l} now=${k.value} />
        <${It} advice=${l} now=${k.value} />
        <${Rt} advice=${{...l,reasons:l.reasons.filter(({code:d})=>Rs.includes(d))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${r("outlook.how")}>
        ${co.map(d=>i`<button key=${d} class="quiet" type="button"
          aria-pressed=${e.value===d} onClick=${h(()=>e.value=d)}>
          ${r("outlook.weeks",{count:d})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${n.value}
          onClick=${h(()=>n.value=!n.value)}>${r("outlook.as_table")}</button>
      </div>
      ${$.map(d=>i`<${io} key=${d.parameter} lines=${d} next=${u} as_table=${n.value}
        now=${k.value} />`)}
      ${!n.value&&i`<${no} doubted=${$.some(({dots:d})=>d.some(_=>_.doubted))} />`}
      ${c&&i`<${oo} ready=${cn(c.settled_h,s.records.now_h,s.start)} />`}
      <${yn} tank=${t} />
      ${m&&i`<${so} weeks=${un(m)} expected=${m.feed_g_day_expected} />`}
      <${ao} />
    <//>`}var Fs=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function Us({id:t}){let e=A("tank",t);return e?Ce(e)?i`<${ln} tank=${Ae(e)} />`:i`<${Bs} key=${t} tank=${e} />`:i`<${at} up="/" why="labels.stranger" />`}function Bs({tank:t}){let{id:e}=t,{facts:n,advice:o}=Nt(t),s=Ge(`tank ${e}`,ze(o));return i`
    <${M} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${Ws} id=${e} advice=${o} />`}>
      <section class="room-taken" ref=${s} aria-label=${r("tank.now")}>
        <div class="row apart"><div><${Ot} advice=${o} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${r("incident.title")}</a></div>
        <${It} advice=${o} now=${k.value} />
        <${on} advice=${o} now=${k.value} />
        <${Rt} advice=${o} now=${k.value} />
      </section>
      <${Ze} tank=${e} label=${r("tasks.today")} />
      <${Ks} tank=${t} />
      <${js} facts=${n} advice=${o} />
      <${Ys} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${r("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${r("long_run.title")}<br /><span class="soft small">
            ${Wt(Bt(n),nt(o.levels.nitrate))}</span></span></a></li>
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
          ${b.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${r("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//>`}var Ws=({id:t,advice:e})=>{let n=tn(t),o=n?"next":e.act==="change"?"change":"test",s=a=>o===a?"main even":"quiet tall even";return i`
    ${b.value.may("reading")&&i`<a class=${s("test")} href=${`/tank/${t}/test`}>${r("test.do")}</a>`}
    ${b.value.may("water_change")&&i`<a class=${s("change")} href=${`/tank/${t}/change`}>${r("change.do")}
      </a>`}
    ${n&&i`<a class="main" href=${`/tank/${n.id}`}>${r("round.next",{tank:n.name})}</a>`}`};function Ys({id:t}){let e=Fs.filter(([,n])=>b.value.may(n));return e.length>0&&i`
    <nav class="section" aria-label=${r("write_down.title")}><h2>${r("write_down.title")}</h2>
      <div class="tiles">${e.map(([n,,o])=>i`<a key=${n} href=${`/tank/${t}/${o}`}><${D}
        name=${n} size=${28} />${r(`write_down.${n}`)}</a>`)}</div>
    </nav>`}function Ks({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<Me;return!Se(t)||!(e||bn(t.id).length===0)?null:i`
    <section class="section"><h2>${r("first_fish.title")}</h2><${Tn} tank=${t} />
      <ul class="lines">${b.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${r("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${r("setup.plans_of")}</a></li></ul>
    </section>`}function js({facts:t,advice:e}){let n=[..._t,...Z].flatMap(s=>t.readings.findLast(a=>a.parameter===s)??[]);if(n.length===0)return i`<p class="soft section">${r("tank.no_figures")}</p>`;let o=new Map(Object.entries(e.limits));return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${r("tank.figures")}</h2></caption>
        <tbody>${n.map(s=>{let{value:a,unit:l,also:c}=Tt(s),u=o.get(s.parameter)?.mg_n_l,m=u&&Q(s.parameter,u,s.basis??"ion");return i`<tr key=${s.parameter}>
            <th scope="row">${C(s.parameter)}<span class="also">${T(s.at,t.now)}</span>
              </th>
            <td><span class="big">${a}</span> <span class="unit">${l}</span>
              ${c&&i`<span class="also">${c}</span>`}
              ${m&&i`<span class="also">${r("tank.limit",{limit:m})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
    </section>`}function Hs({stock:t,now:e}){let{animals:n}=we(t,e);return n.length?n.map(o=>An(o.species,o.count)).join("\xA0\xB7 "):r("stock.none_yet")}var zs=({source:t,label:e})=>[t?.name??r("water.none"),e?.name??r("label.none")].join("\xA0\xB7 ");function Gs(t){let e=Je(t).filter(n=>!n.over).length;return e?r("tasks.count",{count:e}):r("tasks.none")}var X=_t.length,ct=[..._t,null,...Z],Qs=2*36e5,uo=()=>({at:0,begun:Date.parse(b.value.now()),readings:{},typed:{}});function Xs({id:t}){let e=A("tank",t),n=K({name:`test.${t}`,first:uo}),o=H(e,"reading",e?.name??"");if(!e||o)return o;let s=n.draft.value,a=ct[s.at]??null,l=Object.values(s.readings),c=Vs(l),u=(d,_={})=>{He(),n.set({..._,at:d<ct.length?Math.max(d,0):X}),scrollTo(0,0)},m=d=>u(ct.indexOf(d),Z.includes(d)?{from:s.at}:{}),p=()=>n.save(()=>{let d={tank:t,test:L(),...s.when?{at:s.when}:{}};return{writes:l.map(_=>({type:"put",kind:"reading",id:L(),fields:{..._,...d}})),said:r("saved.readings",{count:l.length}),to:`/tank/${t}`}}),$=l.length>0&&c.length===0&&!P(s.when);return i`
    <${M} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${Js} test=${s} to=${u} />
        <button class="main" type="button" disabled=${!$} onClick=${h(()=>{p()})}>
          ${l.length?r("test.save",{count:l.length}):r("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${s.at>X?r("test.seldom"):r("test.place",{at:Math.min(s.at+1,X),of:X})}</span>`}>
      ${k.value-s.begun>Qs&&l.length>0&&i`
        <div class="row apart caution"><span>${r("test.begun",{when:T(s.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${h(()=>n.draft.value=uo())}>${r("test.afresh")}
            </button></div>`}
      <${j} form=${n} kind="reading" />
      <${Zs} strange=${c} here=${a}
        on_go=${d=>u(ct.indexOf(d))} />
      ${a?i`<${ea} key=${a} tank=${t} parameter=${a} form=${n} to=${u} />`:i`<${sa} readings=${s.readings} on_go=${m} />`}
      ${s.at<X&&i`<${ta} on_go=${m} />`}
      <${Y} at=${s.when} on_at=${d=>n.set({when:d})} />
    <//>`}var Vs=t=>t.flatMap(({parameter:e,unit:n,value:o})=>{let s=mn({parameter:e,unit:n},C(e)),a=pn(s,o);return a?[{parameter:e,spec:s,error:a}]:[]});function Js({test:t,to:e}){let n=ct[t.at],o=t.at>X?t.from??X:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(o))}>${r("test.back")}</button>`}
    ${n&&i`<button class="quiet tall" type="button" onClick=${h(()=>e(t.at+1))}>
      ${r(t.readings[n]?"test.next":"test.skip")}</button>`}`}var Zs=({strange:t,here:e,on_go:n})=>t.map(({parameter:o,spec:s,error:a})=>i`
    <div key=${o} role="alert"><${it} spec=${s} error=${a} />
      ${o!==e&&i`<button class="quiet" type="button" onClick=${h(()=>n(o))}>
        ${r("test.key_again",{what:C(o)})}</button>`}</div>`),ta=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${r("test.seldom")}</span>
    ${Z.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${C(e)}</button>`)}</div>`;function ea({tank:t,parameter:e,form:n,to:o}){let s=n.draft.value,a=c=>({...s.readings,[e]:{...c,at:b.value.now()}});return i`<${na} tank=${t} parameter=${e} test=${s}
    on_pick=${c=>o(s.at+1,{readings:a(c)})} on_type=${(c,u,m)=>{let{[e]:p,...$}=s.readings;n.set({keyed_in:{...s.keyed_in,[e]:m},typed:{...s.typed,[e]:c},readings:u?a(u):$})}} />`}function na({tank:t,parameter:e,test:n,on_pick:o,on_type:s}){let a=xn(e),l=n.readings[e]?.value,c=a.unit??Zt[e],{label:u,unit:m,hold:p,text:$}=G(c),{per_drop:d}=a,_=w=>te(a,Number((p(Number(w))*(d??1)).toPrecision(6))),g=$(n.typed[e]??null,n.keyed_in?.[e]);return i`
    <h2 class="asked">${C(e)} <span class="soft unit">
      ${[a.entry==="steps"?c:u,Lt(e,a.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${a.common?a.entry==="steps"?r("kit.common"):Z.includes(e)?r("kit.drops",{unit:Zt[e]}):r("kit.keypad"):a.name}</span>
      <a class="quiet" href=${a.id?`/room/test_kit/${a.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${r(a.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(a.timers??[]).length>0&&i`<${oa} kit=${a} tank=${t} />`}
    ${a.entry==="steps"&&(a.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${C(e)}>
          ${(a.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${h(()=>o(te(a,w)))}>${x(w)}</button>`)}
        </div>`:i`<${qt} label=${C(e)} unit=${d?r("test.drops"):u} value=${g}
          on_value=${w=>s(w,w===""?null:_(w),m)} />
          ${d&&g&&i`<p class="soft center" role="status">
            ${r("test.drops_are",{figure:`${x(_(g).value)} ${c}`})}</p>`}`}`}var oa=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((n,o)=>{let s=`${e}.${t.id}.${o}`,a=rn(s),l=()=>an({id:s,what:`${Fe(t.parameter)}: ${n.what}`,seconds:n.seconds,href:`/tank/${e}/test`});return i`<li key=${o} class="line"><span>${o+1}. ${n.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${D} name="clock" size=${20} />
        <span class="figures">${a===null?Mt(n.seconds):a>0?Mt(a):r("timer.again",{time:Mt(n.seconds)})}</span></button></li>`})}</ol>`,sa=({readings:t,on_go:e})=>i`
  <h2 class="asked">${r("test.answers")}</h2>
  <ul class="lines">${ct.map((n,o)=>{if(!n)return null;let s=t[n],a=s&&Tt(s);return i`<li key=${n}><button class="line whole" type="button" onClick=${h(()=>e(n))}>
      <span>${C(n)}</span>
      ${a?i`<span class="figures"><b class="hand">${a.value}</b> ${a.unit}</span>`:i`<span
        class="soft">${r(o>X?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;export{wo as Change,No as Dose,Bo as DoseGroup,jo as Feed,$s as LongRunPage,vs as Note,qs as Outlook,Us as Tank,Xs as Test};
//# sourceMappingURL=tank-V32BZ5VL.js.map
