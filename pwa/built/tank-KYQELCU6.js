import{$a as U,Fa as O,Ga as P,H as Je,I as Ve,Ia as po,Ka as $o,N as Ze,O as to,S as Lt,Sa as fo,T as Z,Ta as ho,W as eo,X as oo,Y as no,Z as so,Za as D,_ as it,_a as R,aa as ao,c as Ge,ca as ro,da as tt,ea as et,f as Qe,ga as io,ia as lo,na as lt,oa as Q,pa as Wt,ra as co,sa as jt,ta as uo,x as Ye,y as Xe,ya as mo}from"./chunk-VAPY72Y6.js";import{A as a,B as W,Bb as rt,Bc as Be,C as N,Cb as z,Cc as Mt,Dc as Fe,Ec as Ct,F as T,Fb as xt,Fc as St,Gb as Ne,H as ae,Ic as Bt,La as _e,Mb as x,Mc as Ft,N as ft,Nb as k,Oc as We,P as Dt,Pa as ge,Pb as q,Qa as kt,Qb as C,R as st,Ra as we,S as re,T as ht,Tc as je,Ua as Rt,Ub as J,V as ie,W as le,Wa as ke,X as _t,Xa as be,Xb as V,Xc as Ke,Ya as ve,Yb as Te,Yc as ze,Z as ce,Za as ye,Zb as M,ab as xe,ad as He,b as mt,bd as At,c as pt,d as $t,g as B,ga as gt,h as i,ha as wt,hc as S,i as Gt,ia as ue,j as Qt,ja as me,jb as Me,ka as pe,kb as Ce,kc as Ie,mc as Oe,nb as at,nc as g,ob as K,qa as $e,qb as y,rb as Se,rc as Ee,sb as bt,sc as qe,ta as de,tb as vt,tc as L,ub as Ut,uc as Pe,v as ne,vb as Le,vc as De,wb as G,xa as fe,xb as Ae,ya as he,yb as v,yc as Re,z as se,zb as yt,zc as Ue}from"./chunk-6UKWFE3K.js";import{A as ee,B as oe,C as I,D as Pt,E as F,c as Yt,d as qt,f as Xt,l as X,o as dt,p as Jt,t as Vt,u as Zt,w as te}from"./chunk-NE5DRRVS.js";import"./chunk-HZWNA2UL.js";import"./chunk-I3X6XWMK.js";function _o(t,{levels:e,limits:o},s){let{tank:n,source:r,label:l,readings:c}=t,u=c.findLast(({parameter:d})=>d==="kh"),m=xt(t)?.celsius,p={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&xe(u))??n.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:r?.ph,source_kh_dkh:r?.kh_dkh,source_temperature_c:r?.temperature_c??m,source_tan_mg_n_l:ht(r,"total_ammonia",l),fraction:s};if(Object.values(p).includes(void 0))return null;try{let d=p;return{input:d,answer:F("water_after_change",d)}}catch(d){if(d instanceof X)return null;throw d}}var Qo={cold:12,hot:50};function go({facts:t,litres:e}){let o=Ce("taps",()=>Qo),s=xt(t),n=(r,l)=>i`
    <${fo} label=${a(`warmth.${r}`)} unit="°C" min=${1} max=${l} value=${o.value[r]}
      on_value=${c=>o.value={...o.value,[r]:c}} />`;return i`
    <details class="more section"><summary>${a("warmth.title")}</summary>
      ${s?i`
        <p class="soft">
          ${s.at?a("warmth.read",{warmth:yt(s.celsius),when:T(s.at,t.now)}):a("warmth.usual",{warmth:yt(s.celsius)})}</p>
        ${n("cold",40)}${n("hot",80)}
        <${Yo} mix=${Ne(e,s.celsius,o.value)} />
        <p class="caution small">${oe("water_blend","hot_water")}</p>`:i`<p class="soft">${a("warmth.unknown")}</p>`}
    </details>`}var Yo=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${a("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:yt(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${a("warmth.missed")}</p>`}
  <${et} name="water_blend" input=${t.input} answer=${t.answer} />`;var Xo=.25,Jo=()=>({typed:null});function Vo({id:t}){let e=C("tank",t),o=D({name:`change.${t}`,first:Jo}),s=pt(null),n=U(e,"water_change",a("change.title"));if(!e||n)return n;let{facts:r,advice:l}=V(e),c=Zo(s,r,l),u=c.act!=="retest"&&c.litres||wt(Xo*e.water_l,e.water_l,r.water_unit),m=K("L"),{typed:p,unit:d="L",from_tank:$="",at:f}=o.draft.value,_=p===null?u:an(m.hold(Number(p),d),e.water_l),w=pe(e,_),h=w||$?null:ue(r,_),j=$?{...r,source:ge(q("reading"),{from_tank:$,at:f??x.value.now()})}:r,A=_/e.water_l,ct={litres:v(_||0),dose:h?.amount!==void 0?z(h):""},Et=()=>o.save(()=>{let E=$?{from_tank:$}:r.source?{source_water:r.source.id}:{},ut=tn({tank:t,at:f,litres:_,fraction:A,...E},h);return{writes:ut,said:a(ut.length>1?"saved.change_dose":"saved.change",ct),to:`/tank/${t}`}});return i`
    <${L} title=${a("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!w||O(f)}
        onClick=${g(()=>{Et()})}>${a(h?.amount!==void 0?"change.log_dose":"change.log",ct)}
        </button>`}>
      <p class="soft">${c.litres||c.act==="retest"||c.act==="hold"?Be(c,k.value):a("change.usual",{litres:v(u)})}</p>
      <${R} form=${o} kind="water_change" />
      <${en} form=${o} tank=${e} litres=${_} suggested=${u} wrong=${w} />
      ${h&&i`<${on} id=${t} dose=${h} />`}
      ${!w&&i`<${sn} facts=${j} advice=${c} fraction=${A} />`}
      ${!w&&i`<${go} facts=${r} litres=${_} />`}
      <${nn} id=${t} from_tank=${$}
        on_pick=${E=>o.set({from_tank:E})} />
      <${P} at=${f} on_at=${E=>o.set({at:E})} />
      ${rn(h).map(E=>i`<p class="caution small" key=${E}>${E}</p>`)}
    <//>`}function Zo(t,e,o){let s=[e.readings,e.changes].map(n=>n.at(-1)?.id).join();return o.from&&t.current?.last!==s&&(t.current={last:s,advice:o}),t.current?.last===s?t.current.advice:o}function tn(t,e){let o=S(),s=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:n,amount:r,unit:l}=e,{tank:c,at:u,litres:m}=t,p={at:u,tank:c,label:n.id,what:n.name,amount:r,unit:l,for_litres:m,water_change:o};s.push({type:"put",kind:"dose",id:S(),fields:p})}return s}function en({form:t,tank:e,litres:o,suggested:s,wrong:n}){let r=B(!1),l=K("L"),{typed:c,unit:u="L"}=t.draft.value,m=gt(e.water_l,l.unit),p=v(m),d=f=>t.set({typed:f,unit:l.unit}),$=f=>d(String(l.show(Math.min(Math.max(o+f*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${a("change.litres")}>
      <button class="quiet" type="button" aria-label=${a("change.less",{step:p})}
        onClick=${()=>$(-1)}><${M} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${r.value}
        aria-label=${a("change.type",{litres:v(o||0)})}
        onClick=${g(()=>r.value=!r.value)}>
        <span>${N(l.show(o||0),2)} <small>${l.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${a("change.more",{step:p})}
        onClick=${()=>$(1)}><${M} name="plus" size=${28} /></button>
    </div>
    ${n?i`<div role="alert"><${tt} spec=${me(e,a("change.litres"))} error=${n} /></div>`:i`<p class="soft center">${a("change.share",{percent:W(100*o/e.water_l,0)})}</p>`}
    ${r.value&&i`<${Lt} label=${a("change.litres")} unit=${l.label}
      value=${l.text(c,u)} on_value=${d} />`}
    ${c!==null&&o!==s&&i`<p class="center"><button class="quiet" type="button"
      onClick=${g(()=>d(null))}>${a("change.suggested",{litres:v(s)})}</button></p>`}`}var on=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${z(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${a(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${a("dose.set_label")}</a></p>`:i`<p class="dose">${a("dose.none")}</p>`,nn=({id:t,from_tank:e,on_pick:o})=>q("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${a("change.other_tank")}</summary>
    <${uo} tank=${t} value=${e} label=${a("change.out_of")} on_pick=${s=>o(s===e?"":s)} />
    <p class="soft small">${a("change.other_tank_why")}</p>
  </details>`,sn=({facts:t,advice:e,fraction:o})=>{let s=Object.values(e.levels).flatMap(({parameter:r,now_mg_n_l:l,reading:c})=>l?[{parameter:r,now_mg_n_l:l,basis:re({reading:c})}]:[]),n=_o(t,e,o);return(s.length>0||n)&&i`
    <table class="measured"><caption><h2>${a("change.after")}</h2></caption><tbody>
      ${s.map(({parameter:r,now_mg_n_l:l,basis:c})=>{let u=ht(t.source,r,t.label),{after_mg_l:m}=F("dilution",{before_mg_l:l,source_mg_l:u,fractions:[o]});return i`<tr key=${r}><th scope="row">${y(r)}</th>
          <td class="figures">${Ut(r,l,c)} → <span class="big">
            ${Ut(r,m,c)}</span> <span class="unit">
            ${`mg/L ${bt(r,c)}`}</span></td></tr>`})}${n&&i`<tr><th scope="row">${y("ph")}</th><td class="figures">${W(n.input.ph,1)} → <span
          class="big">${W(n.answer.ph,1)}</span></td></tr>`}</tbody></table>
      ${n?.answer.notes.map(r=>i`<p class="caution small" key=${r}>${r}</p>`)}`},an=(t,e)=>Math.abs(t-e)<1e-6?e:t,rn=t=>[...I("dilution"),...t?.amount!==void 0?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var ln=.25,cn=1,un={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function wo(t,e){let o=s=>e.findLastIndex(n=>n.label?.id===s.id);return t.toSorted((s,n)=>o(n)-o(s)||s.name.localeCompare(n.name))}var ko=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??wt(ln*t.water_l,t.water_l);function bo(t,e){let o=F("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),s=Pt(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(s)):s,unit:t.unit}}function vo(t,e,o){let s={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},n=F("starter_dose",s),r=o===void 0;return{input:s,answer:n,amount:r?n.ammonium_chloride_g:Pt(n,"household_ammonia_ml"),unit:r?"g":"ml",tan_mg_n_l:n.tan_mg_n_l}}function Kt(t,e=[]){let{water_l:o,feed_g_day:s=0,protein_fraction:n=0}=t,r=to(t,e);return s<=0&&r>0?F("starter_dose",Ze(o,r).input).tan_mg_n_l:s<=0||n<=0?cn:F("starter_dose",{volume_l:o,feed_g_day:s,protein_fraction:n}).tan_mg_n_l}var yo=t=>t.reduce((e,{change:o,count:s})=>e+(un[o]??0)*(s??0),0)>0;function xo(t,e,{system:o,marks:s}){let n=dt().salt_dose,{volume_l:r,...l}=e?.typed??{};if(Object.keys(l).length===0)return null;let c=Qe(n,{draft:{...e,typed:l},tank:{volume_l:t.water_l},system:o,marks:s});if(!("answer"in c))return null;let u=c.payload,m=c.answer;return{what:ee(Zt("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Nt="salt",Tt="ammonia",mn=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function pn({id:t}){let e=C("tank",t),o=D({name:`dose.${t}`,first:mn}),s=U(e,"dose",a("dosing.title"));if(!e||s)return s;let{changes:n,doses:r}=kt(J,e,k.value),l=wo(q("label"),r),c=xo(e,Me("bench.salt_dose",()=>({})).value,{system:at.value,marks:ne(se())}),u=yo($e(q("stock_change"),t)),{way:m,at:p}=o.draft.value,d=l.find(h=>h.id===m),$=dn(o.draft.value,{tank:e,label:d,salt:c,animals:u,changes:n}),{fields:f}=$,_=()=>f&&o.save(()=>({writes:[{type:"put",kind:"dose",id:S(),fields:{tank:t,at:p,...f}}],said:a("dosing.saved",{dose:z(f),what:f.what,tank:e.name}),to:`/tank/${t}`})),w=f&&i`<button class="main" type="button" disabled=${O(p)} onClick=${g(()=>{_()})}>
      ${a("dosing.log",{dose:z(f)})}</button>`;return i`
    <${L} title=${a("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${hn} dose=${r.at(-1)} />
      <${R} form=${o} kind="dose" />
      <${$n} tank=${t} form=${o} labels=${l} salt=${c} />
      ${d&&i`<${_n} form=${o} tank=${e} label=${d} dose=${$}
        litres=${Mo(o.draft.value,e,d,n)} />`}
      ${m===Nt&&c&&i`<${zt} dose=${$}
        said=${a("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Tt&&i`<${gn} tank=${e} form=${o} dose=${$} animals=${u} />`}
      ${f&&i`<${P} at=${p} on_at=${h=>o.set({at:h})} />`}
      ${wn(m,d).map(h=>i`<p class="caution small" key=${h}>${h}</p>`)}
    <//>`}function $n({tank:t,form:e,labels:o,salt:s}){let n=(l,c,u)=>i`
    <button type="button" key=${l} aria-pressed=${e.draft.value.way===l}
      onClick=${g(()=>e.set({way:l,litres:null}))}><b>${c}</b>
      <span class="soft small">${u}</span></button>`,r=({amount:l,unit:c,per_l:u})=>a("label.line",{amount:N(l),unit:a(`unit.${c}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${a("dosing.what")}>
      ${o.map(l=>n(l.id,l.name,r(l)))}
      ${s&&n(Nt,s.what,a("dosing.from_bench"))}
      ${n(Tt,a("dosing.ammonia"),a("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${x.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${M}
        name="plus" size=${20} />${a("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${a("dosing.work_out_salt")}</a>
    </div>`}function dn(t,{tank:e,label:o,salt:s,animals:n,changes:r}){try{if(o){let l=Mo(t,e,o,r);return{fields:{...bo(o,l),label:o.id,what:o.name,for_litres:l}}}if(t.way===Nt&&s){let{what:l,what_code:c,amount:u,unit:m,input:p,answer:d}=s;return{fields:{what:l,what_code:c,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:p,answer:d}}return t.way===Tt&&!n?fn(t,e):{}}catch(l){if(!(l instanceof X))throw l;return{errors:l.errors}}}function fn(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:s,unit:n,tan_mg_n_l:r,input:l,answer:c}=vo(e,Co(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:We(u),what_code:u,amount:s,unit:n,tan_mg_n_l:r,for_litres:e.water_l},name:"starter_dose",input:l,answer:c}}var Mo=({litres:t},e,o,s)=>t===null?ko(e,o,s):_t(Number(t.text),t.unit,"L"),Co=({tan:t},e)=>t===null?Kt(e,q("own_species")):Number(t),hn=({dose:t})=>i`<p class="soft">
    ${t?a("dosing.last",{dose:z(t),what:je(t),when:T(t.at,k.value)}):a("dosing.never")}</p>`;function _n({form:t,tank:e,label:o,litres:s,dose:n}){let r=ie({name:"",unit:"L"},at.value),l=t.draft.value.litres,c=Rt(_t(gt(e.water_l),"L",r));return i`
    <section class="section"><h2>${a("dosing.for_water")}</h2>
      <${Z} label=${a("dosing.for_water")} unit=${le(r)} value=${_t(s,"L",r)}
        typed=${l&&l.unit===r?l.text:null} step=${c} least=${c} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:r}})} />
      <${zt} dose=${n} said=${a(`dose.basis_${o.basis}`)} />
    </section>`}function gn({tank:t,form:e,dose:o,animals:s}){if(s)return i`<p class="wrong section" role="status"><${M} name="needs" /><span>${a("dosing.animals_here")}</span>
      </p>`;let{tan:n,household:r,percent:l}=e.draft.value,c=Co(e.draft.value,t),u=m=>g(()=>e.set({household:m}));return i`
    <section class="section"><h2>${a("dosing.wanted")}</h2>
      <${Z} label=${a("dosing.wanted")} unit="mg N/L" value=${c} typed=${n}
        step=${Rt(Math.max(Kt(t,q("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${a("dosing.with")}>
      <button type="button" aria-pressed=${!r} onClick=${u(!1)}>${a("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${r} onClick=${u(!0)}>${a("dosing.household_ammonia")}
        </button>
    </div>
    ${r&&i`<section class="section"><h2>${a("dosing.strength")}</h2>
      <${Z} label=${a("dosing.strength")} unit="%" value=${Number(l)} typed=${l} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(l)>0)&&i`<p class="soft center">${a("dosing.no_strength")}</p>`}</section>`}
    <${zt} dose=${o} said=${a("dosing.gives",{tan:G(c||0),litres:v(t.water_l)})}
      />`}var zt=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${tt} key=${o.field} error=${o}
    spec=${{label:a("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${z(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${et} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function wn(t,e){return t===Nt?I("salt_dose"):t===Tt?I("starter_dose"):[a("dosing.label_first"),...e?.use==="dechlorinator"?I("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}var So=["food","protein_fraction"],kn=()=>({typed:null,food:null,own:{},at:void 0});function bn({id:t}){let e=C("tank",t),o=D({name:`feed.${t}`,first:kn}),s=U(e,"feeding",a("feed.title"));if(!e||s)return s;let{feedings:n}=kt(J,e,k.value),r=ke(e,n),l=ve(q("feeding")),{typed:c,at:u}=o.draft.value,m=c===null?r.feed_g:Number(c),p=yn(o.draft.value,l,r),d=_=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:S(),fields:{tank:t,at:u,feed_g:_,..._>0?p:{}}}],said:_>0?a("feed.saved",{amount:rt(_),tank:e.name}):a("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),$=i`
    <button class="quiet tall" type="button" disabled=${O(u)} onClick=${g(()=>{d(0)})}>
      ${a(u?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(m>0)||O(u)}
      onClick=${g(()=>{d(m)})}>${a("feed.log",{amount:rt(m||0)})}</button>`,f=c===null||m===r.feed_g?r.from:"keeper";return i`
    <${L} title=${a("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${$}>
      <${xn} feedings=${n} />
      <${Z} label=${a("feed.grams")} unit="g" value=${m} typed=${c} step=${be(r.feed_g)}
        least=${.01} most=${te("feeding","feed_g").max}
        on_type=${_=>o.set({typed:_})} />
      <p class="soft center">${a(`feed.from_${f}`,{usual:rt(r.feed_g)})}</p>
      <${R} form=${o} kind="feeding" beside=${o.draft.value.food===""?So:[]} />
      <${vn} form=${o} known=${l} given=${p} />
      <${P} at=${u} on_at=${_=>o.set({at:_})} />
      ${m>0&&i`<${Mn} tank=${e} feed_g=${m} protein_fraction=${p.protein_fraction} />`}
      ${I("nitrogen_load").map(_=>i`<p class="caution small"
        key=${_}>${_}</p>`)}
    <//>`}var Lo=()=>So.map(t=>Vt(Jt().feeding.fields,t));function vn({form:t,known:e,given:o}){let{food:s,own:n}=t.draft.value;return i`
    <section class="section"><h2>${a("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${a("feed.food")}>
        ${e.map(({food:r,protein_fraction:l})=>i`
          <button type="button" key=${r} aria-pressed=${o.food===r}
            onClick=${g(()=>t.set({food:r}))}>
            <b>${r}</b>${l!==void 0&&i`<span class="soft small">
              ${a("feed.protein",{percent:W(100*l,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${s===""} onClick=${g(()=>t.set({food:""}))}><${M}
          name="plus" />${a("feed.other")}</button>
      </div>
      ${s===""&&i`<div class="section"><${ro} specs=${Lo()} raw=${n} errors=${t.errors.value} tried=${!0}
        on_raw=${r=>t.set({own:r})} /></div>`}
    </section>`}function yn({food:t,own:e},o,s){if(t==="")return ao(Lo(),e);let n=o.find(u=>u.food===t),{feed_g:r,from:l,...c}=s;return t!==null&&n?{...n}:c}function xn({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${a("feed.never")}</p>`;let o={when:T(e.at,k.value),amount:rt(e.feed_g),food:e.food??""};return i`<p class="soft">${a(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function Mn({tank:t,feed_g:e,protein_fraction:o}){try{let{input:s,answer:n,assumed:r}=ye(t,e,o),l={mg:N(n.tan_mg_n_day,1),rise:G(n.tan_mg_n_l_day),percent:W(100*s.protein_fraction,0)};return i`
      <section class="section"><h2>${a("feed.becomes")}</h2>
        <p>${a("feed.nitrogen",l)}${r&&i` ${a("feed.assumed",l)}`}</p>
        <${et} name="nitrogen_load" input=${s} answer=${n} />
      </section>`}catch(s){if(!(s instanceof X))throw s;return null}}function Ao(t="limnary-drafts"){let e=new Qt(()=>Gt(t,1,{upgrade(s){s.createObjectStore("pictures",{keyPath:"id",autoIncrement:!0}).createIndex("draft","draft")},terminated(){e.db=null}})),o=["pictures"];return{async list(s){return(await e.run(o,"readonly",({pictures:r})=>r.index("draft").getAll(s))).map(({id:r,bytes:l,type:c,width:u,height:m})=>({id:r,picture:new Blob([l],{type:c}),width:u,height:m}))},async add(s,{picture:n,width:r,height:l}){let c=await n.arrayBuffer();return e.run(o,"readwrite",({pictures:u})=>u.add({draft:s,bytes:c,type:n.type,width:r,height:l}))},async remove(s){let n=await e.run(o,"readwrite",async({pictures:r})=>{let l=await r.get(s);return await r.delete(s),l});return async()=>{n&&await e.run(o,"readwrite",({pictures:r})=>r.put(n))}},forget:s=>e.run(o,"readwrite",async({pictures:n})=>{for(let r of await n.index("draft").getAllKeys(s))await n.delete(r)}),close:()=>e.close()}}async function No(t){let e=await createImageBitmap(t).catch(r=>{throw new RangeError("no picture",{cause:r})}),o=Math.min(1,1600/Math.max(e.width,e.height)),s=document.createElement("canvas");s.width=Math.max(1,Math.round(e.width*o)),s.height=Math.max(1,Math.round(e.height*o)),s.getContext("2d")?.drawImage(e,0,0,s.width,s.height),e.close();let n=await new Promise(r=>s.toBlob(r,"image/jpeg",.8));if(!n)throw new RangeError("no picture");return{picture:n,width:s.width,height:s.height}}var Cn=["at_surface","hiding"],Ht=5e3,It=Ao(),Sn=()=>({picked:[],text:"",at:void 0});function Ln({id:t}){let e=C("tank",t),o=`note.${t}`,s=D({name:o,first:Sn}),{photos:n,busy:r,problem:l,add:c,drop:u}=An(o),m=U(e,"note",a("note.title"));if(!e||m)return m;let{picked:p,text:d,at:$}=s.draft.value,f=Bt.filter(A=>p.includes(A)),_=[...f.map(Ft),d.trim()].filter(Boolean).join(`
`),w=()=>s.save(()=>{let A={tank:t,at:$??x.value.now(),entry:S()},ct={...A,text:_.slice(0,Ht),...f.length?{quick:f}:{}};return{writes:_?[{type:"put",kind:"note",id:S(),fields:ct}]:[],pictures:n.map(({picture:Et,width:E,height:ut})=>({picture:Et,id:S(),fields:{...A,width:E,height:ut}})),said:a("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>It.forget(o).catch(()=>{})}}),h=(_||n.length>0)&&!r&&_.length<=Ht&&!O($),j=i`<button class="main" type="button" disabled=${!h} onClick=${g(()=>{w()})}>
    ${n.length?a("note.save_photos",{count:n.length}):a("note.save")}</button>`;return i`
    <${L} title=${a("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${j}>
      <${Nn} id=${t} picked=${p} on_pick=${A=>s.set({picked:A})} />
      <div class="field section"><label for="note-text">${a("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${Ht} value=${d}
          onInput=${Ge(A=>s.set({text:A}))}></textarea></div>
      <section class="section"><h2>${a("note.photos")}</h2>
        <${Tn} photos=${n} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${M} name="camera" />${a("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${c} /></label>
          <label class="quiet tall file">${a("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${c} /></label>
        </div>
        ${r&&i`<p class="soft" role="status">${a("note.shrinking")}</p>`}
        <${mo} text=${l} />
        <${R} form=${s} kind="note" />
        <p class="soft small">${a("note.photo_size")}</p>
      </section>
      <${P} at=${$} on_at=${A=>s.set({at:A})} />
    <//>`}function An(t){let e=B([]),o=B(0),s=B(""),n=async()=>{e.value=await It.list(t)};mt(()=>{n().catch(()=>s.value=a("note.photos_not_kept"))},[t]);let r=async u=>{o.value+=1;try{await It.add(t,await No(u)),await n()}catch(m){let p=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";s.value=a(p,{file:u.name})}finally{o.value-=1}},l=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",s.value="";for(let p of m)await r(p)},c=async u=>{let m=await It.remove(u);await n(),Ie(a("note.photo_dropped"),async()=>{await m(),await n()})};return{photos:e.value,busy:o.value>0,problem:s.value,add:l,drop:c}}function Nn({id:t,picked:e,on_pick:o}){let s=n=>o(e.includes(n)?e.filter(r=>r!==n):[...e,n]);return i`
    <div class="tiles two short" role="group" aria-label=${a("note.quick")}>
      ${Bt.map(n=>i`<button type="button" key=${n} aria-pressed=${e.includes(n)}
        onClick=${g(()=>s(n))}>${Ft(n)}</button>`)}
    </div>
    ${e.some(n=>Cn.includes(n))&&i`
      <div class="caution" role="status"><p>${a(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${a("test.do")}</a></div>`}`}var Tn=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:s},n)=>{let r=a("photo.numbered",{at:n+1});return i`
    <li key=${o}><${po} picture=${s} said=${r} />
      <button class="quiet square" type="button" aria-label=${a("remove_named",{what:r})}
        onClick=${g(()=>{e(o)})}><${M} name="remove" size=${20} /></button></li>`})}</ul>`;function Io(t,e,o,s,n,r){let{start:l,records:c}=o,u=h=>l+h*36e5,m=u(c.now_h),p=Math.max(m-r*24*36e5,Math.min(l,m-48*36e5)),d=s?.doubts??[],$=c.readings.filter(h=>h.parameter===t&&u(h.at_h)>=p).map(h=>({at:u(h.at_h),...In(h),doubted:d.some(j=>j.parameter===t&&j.at_h===h.at_h)})),_=st(t)&&(t!=="nitrate"||o.nitrate_known)?(s?.series??[]).map(h=>({at:u(h.at_h),...h[`${t}_mg_n_l`]})):[],w=[...e.feedings.map(h=>To(h.at,"feeding",h.feed_g)),...e.changes.map(h=>To(h.at,"change",h.litres))].filter(({at:h})=>h>=p&&h<=m).sort((h,j)=>h.at-j.at);return{parameter:t,dots:$,fan:_,marks:w,limit:st(t)?n[t]:null,from:p,now:m,to:_.at(-1)?.at??m}}var To=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function In(t){if(!st(t.parameter)){let[c,u]=t.steps?.length?qt(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:c,high:u}}let{value:e,steps:o}=Xt(t),s=Yt(),n=t.parameter==="nitrate"?"nitrate":"reading",[r,l]=qt(e,o,s[`${n}_offset`],s[`${n}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:r===null?null:Math.max(r,0),high:l}}function Oo(t,e){let o=s=>s===null?null:e(s);return{...t,dots:t.dots.map(s=>({...s,value:e(s.value),low:o(s.low),high:o(s.high)})),fan:t.fan.map(({at:s,p10:n,p50:r,p90:l})=>({at:s,p10:e(n),p50:e(r),p90:e(l)}))}}function Eo({parameter:t,dots:e,fan:o,limit:s}){let n=[...e.flatMap(({value:u,low:m,high:p})=>[u,m??u,p??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...s?[s.mg_n_l]:[]],r=Math.max(...n);if(st(t))return[0,r>0?r*1.12:1];let l=Math.min(...n),c=Math.max((r-l)*.2,.5);return[l-c,r+c]}var qo=({doubted:t})=>i`
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
  </ul>`,Po=({ready:{code:t,from:e,likely:o,to:s}})=>{let n=r=>r===void 0?"":ae(r);return i`
    <section class="section"><h2>${a("ready.title")}</h2>
      <p class="sentence">${a(`ready.${t}`,{from:n(e),likely:n(o),to:n(s)})}</p>
      <p class="soft small">${a("ready.means")}</p>
    </section>`};function Do({weeks:t,expected:e}){let[o]=t;return i`
    <details class="more section"><summary>${a("carry.title")}</summary>
      <p>
        ${a("carry.now",{low:ot(o.feed_g_day.p10),high:ot(o.feed_g_day.p90),expected:ot(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${a("carry.when")}</th><th scope="col" class="right">${a("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:s,feed_g_day:n})=>i`
          <tr key=${s}><th scope="row">${a(`carry.in_${s}`)}</th>
            <td>${ot(n.p50)}<span class="also">
              ${a("outlook.between",{low:ot(n.p10),high:ot(n.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${dt().stock_headroom.uncertainty}</p>
    </details>`}var Ro=()=>{let t=[...I("outlook"),...I("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},ot=t=>`${N(t,t<1?2:1)} g`;var On=86400,En=["p10","p50","p90"];function Uo({lines:t}){let e=pt(null);return mt(()=>no(e.current,()=>Pn(t),qn(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var qn=({fan:t,from:e,now:o})=>{let s=t.length?t:[{at:o,p10:null,p50:null,p90:null}],r=[{at:e,p10:null,p50:null,p90:null},...s];return[r.map(({at:l})=>l/1e3),...En.map(l=>r.map(c=>c[l]))]};function Pn(t){let{from:e,now:o,to:s}=t,[n,r]=Eo(t),l={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,s/1e3+(s>o?0:On/2)]},y:{range:[n,r]}},series:[{},l,{stroke:()=>it("--action"),width:2.5,points:{show:!1}},l],bands:[{series:[3,1],fill:()=>it("--fan")}],axes:so(),hooks:{drawAxes:[c=>eo(c,t,it)],draw:[c=>oo(c,t,it)]}}}var Ot={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Dn=6;function Bo({lines:t,next:e,as_table:o,now:s}){let{parameter:n}=t,r=$t(()=>n==="temperature"?Oo(t,K("\xB0C").show):t,[t,at.value]),l=`of-${n}`;return i`
    <section class="parameter" aria-labelledby=${l}>
      <h2 id=${l}>${y(n)} <span class="unit">${Fo(n)}</span></h2>
      ${e&&n in Ot&&i`<${Rn} lines=${r}
        chance=${e.pass_chance[Ot[n]]}
          standing=${e.now[`${n}_mg_n_l`]} />`}
      ${!o&&i`<${Uo} lines=${r} />`}
      <div class=${o?"":"unseen"}><${Un} lines=${r} now=${s} /></div>
    </section>`}function Rn({lines:t,chance:e,standing:o}){let{parameter:s,limit:n,fan:r}=t;if(!n||r.length===0)return null;let l=r.at(-1),c=l&&l.p90-l.p10>n.mg_n_l,u={chance:Ue(e)},m=o.p50>n.mg_n_l?a("outlook.perhaps_over",u):a("outlook.chance",u),p=o.p10>n.mg_n_l?a("outlook.over"):m;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${a("outlook.limit",{limit:G(n.mg_n_l),also:Ae(s,n.mg_n_l),by:a(`limit.${n.by}`)})} ${c&&a("outlook.wide")}</p>`}function Un({lines:t,now:e}){let{parameter:o,fan:s,dots:n,marks:r}=t,l=p=>Fn(o,p),c=Math.max(1,Math.round((s.length-1)/Dn)),u=[...n.map(p=>({at:p.at,what:a(p.doubted?"outlook.read_doubted":"outlook.read"),value:l(p.value),span:Bn(p,l)})),...r.filter(({kind:p})=>p==="change").map(({at:p,said:d})=>({at:p,what:a("history.changed",{litres:v(d)}),value:"",span:""}))].toSorted((p,d)=>d.at-p.at),m=r.filter(({kind:p})=>p==="feeding");return i`
    ${m.length>0&&i`<p class="soft small">${a("outlook.fed",{count:m.length,grams:N(m.reduce((p,{said:d})=>p+d,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${y(o)} ${Fo(o)}</caption>
      ${s.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.likely")}</th></tr>
          ${s.filter((p,d)=>d%c===0).map(({at:p,p10:d,p50:$,p90:f})=>i`
            <tr key=${p}><th scope="row">${T(p,e)}</th><td>${l($)} <span class="also">
              ${a("outlook.between",{low:l(d),high:l(f)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${a("outlook.so_far")}</th></tr>
        ${u.map(({at:p,what:d,value:$,span:f},_)=>i`
          <tr key=${`${p}-${_}`}><th scope="row">${T(p,e)}<span class="also">${d}</span></th><td>${$}
            ${f&&i` <span class="also">${f}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function Bn({low:t,high:e},o){return t===e?"":t===null?a("outlook.up_to",{high:o(e)}):e===null?a("outlook.from",{low:o(t)}):a("outlook.between",{low:o(t),high:o(e)})}var Fn=(t,e)=>t in Dt?G(e):W(e,1),Fo=t=>t in Dt?"mg N/L":t==="temperature"?K("\xB0C").label:"";var Wn=["total_ammonia","nitrite","nitrate","ph","temperature"],Wo=[2,6],jn=["doubt","prior","few","rule_working","rule_failed"];function Kn({id:t}){let e=C("tank",t);return e?i`<${zn} tank=${e} />`:i`<${At} up="/" />`}function zn({tank:t}){let e=B(Wo[0]),o=B(!1),{facts:s,asked:n,forecast:r,advice:l}=Te(t),{ahead:c,next:u,headroom:m}=r.answers,p=$=>u?.pass_chance[Ot[$]]??-1,d=$t(()=>Wn.toSorted(($,f)=>p(f)-p($)).map($=>Io($,s,n,c,l.limits,7*e.value)).filter(({dots:$,fan:f})=>$.length+f.length>0),[n,c,u,e.value]);return i`
    <${L} title=${a("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${a("tank.now")}>
        <${Ct} advice=${l} />
        <${Mt} advice=${l} now=${k.value} />
        <${St} advice=${{...l,reasons:l.reasons.filter(({code:$})=>jn.includes($))}}
          now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${a("outlook.how")}>
        ${Wo.map($=>i`<button key=${$} class="quiet" type="button"
          aria-pressed=${e.value===$} onClick=${g(()=>e.value=$)}>
          ${a("outlook.weeks",{count:$})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${g(()=>o.value=!o.value)}>${a("outlook.as_table")}</button>
      </div>
      ${d.map($=>i`<${Bo} key=${$.parameter} lines=${$} next=${u} as_table=${o.value}
        now=${k.value} />`)}
      ${!o.value&&i`<${qo} doubted=${d.some(({dots:$})=>$.some(f=>f.doubted))} />`}
      ${c&&i`<${Po} ready=${Ye(c.settled_h,n.records.now_h,n.start)} />`}
      <${lo} tank=${t} />
      ${m&&i`<${Do} weeks=${Xe(m)} expected=${m.feed_g_day_expected} />`}
      <${Ro} />
    <//>`}var jo=3*36e5;function Ko({act:t,test_due:e,findings:o},s,{now:n,readings:r,changes:l}){if(s>0||t==="retest")return!0;let c=Date.parse(r.at(-1)?.at??"")||-1/0,u=Date.parse(l.at(-1)?.at??"")||-1/0;if(t==="change")return u<c||n-u>jo;let m=o.some(({code:p,urgency:d})=>p!=="water"&&d!=="watch");return(e||t==="test"||m)&&n-Math.max(c,u)>jo}function zo(t,e,o){let s=t.findIndex(n=>n.id===e);return s<0||o(t[s])?null:[...t.slice(s+1),...t.slice(0,s)].find(o)??null}var Ho=t=>zo(we(J),t,Hn);function Hn(t){let{advice:e,facts:o}=V(t);return Ko(e,ze(t.id).length,o)}var Gn=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function Qn({id:t}){let e=C("tank",t);return e?he(e)?i`<${Re} tank=${_e(e)} />`:i`<${Yn} key=${t} tank=${e} />`:i`<${At} up="/" why="labels.stranger" />`}function Yn({tank:t}){let{id:e}=t,{facts:o,advice:s}=V(t),n=De(`tank ${e}`,Pe(s));return i`
    <${L} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${Xn} id=${e} advice=${s} />`}>
      <section class="room-taken" ref=${n} aria-label=${a("tank.now")}>
        <${Ct} advice=${s} />
        <${Mt} advice=${s} now=${k.value} />
        <${Fe} advice=${s} now=${k.value} />
        <${St} advice=${s} now=${k.value} />
      </section>
      <${He} tank=${e} label=${a("tasks.today")} />
      <${Vn} tank=${t} />
      <${Zn} facts=${o} advice=${s} />
      <${Jn} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${a("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${a("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${a("stock.title")}<br /><span class="soft small">
            ${ts(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${a("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${a("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${a("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${a("tasks.title")}<br /><span class="soft small">
            ${os(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${a("water.title")}<br /><span class="soft small">
            ${es(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${a("labels.title_one")}</a></li>
          ${x.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${a("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//>`}var Xn=({id:t,advice:e})=>{let o=Ho(t),s=o?"next":e.act==="change"?"change":"test",n=r=>s===r?"main even":"quiet tall even";return i`
    ${x.value.may("reading")&&i`<a class=${n("test")} href=${`/tank/${t}/test`}>${a("test.do")}</a>`}
    ${x.value.may("water_change")&&i`<a class=${n("change")} href=${`/tank/${t}/change`}>${a("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${a("round.next",{tank:o.name})}</a>`}`};function Jn({id:t}){let e=Gn.filter(([,o])=>x.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${a("write_down.title")}><h2>${a("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,s])=>i`<a key=${o} href=${`/tank/${t}/${s}`}><${M}
        name=${o} size=${28} />${a(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function Vn({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<de;return!fe(t)||!(e||io(t.id).length===0)?null:i`
    <section class="section"><h2>${a("first_fish.title")}</h2><${ho} tank=${t} />
      <ul class="lines">${x.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${a("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${a("setup.plans_of")}</a></li></ul>
    </section>`}function Zn({facts:t,advice:e}){let o=[...lt,...Q].flatMap(n=>t.readings.findLast(r=>r.parameter===n)??[]);if(o.length===0)return i`<p class="soft section">${a("tank.no_figures")}</p>`;let s=new Map(Object.entries(e.limits));return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${a("tank.figures")}</h2></caption>
        <tbody>${o.map(n=>{let{value:r,unit:l,also:c}=vt(n),u=s.get(n.parameter)?.mg_n_l,m=u&&Le(n.parameter,u,n.basis??"ion");return i`<tr key=${n.parameter}>
            <th scope="row">${y(n.parameter)}<span class="also">${T(n.at,t.now)}</span>
              </th>
            <td><span class="big">${r}</span> <span class="unit">${l}</span>
              ${c&&i`<span class="also">${c}</span>`}
              ${m&&i`<span class="also">${a("tank.limit",{limit:m})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
    </section>`}function ts({stock:t,now:e}){let{animals:o}=ce(t,e);return o.length?o.map(s=>$o(s.species,s.count)).join("\xA0\xB7 "):a("stock.none_yet")}var es=({source:t,label:e})=>[t?.name??a("water.none"),e?.name??a("label.none")].join("\xA0\xB7 ");function os(t){let e=Ke(t).filter(o=>!o.over).length;return e?a("tasks.count",{count:e}):a("tasks.none")}var H=lt.length,nt=[...lt,null,...Q],ns=2*36e5,Go=()=>({at:0,begun:Date.parse(x.value.now()),readings:{},typed:{}});function ss({id:t}){let e=C("tank",t),o=D({name:`test.${t}`,first:Go}),s=U(e,"reading",e?.name??"");if(!e||s)return s;let n=o.draft.value,r=nt[n.at]??null,l=Object.values(n.readings),c=as(l),u=($,f={})=>{Oe(),o.set({...f,at:$<nt.length?Math.max($,0):H}),scrollTo(0,0)},m=$=>u(nt.indexOf($),Q.includes($)?{from:n.at}:{}),p=()=>o.save(()=>{let $={tank:t,test:S(),...n.when?{at:n.when}:{}};return{writes:l.map(f=>({type:"put",kind:"reading",id:S(),fields:{...f,...$}})),said:a("saved.readings",{count:l.length}),to:`/tank/${t}`}}),d=l.length>0&&c.length===0&&!O(n.when);return i`
    <${L} title=${e.name} up=${`/tank/${t}`}
      act=${i`<${rs} test=${n} to=${u} />
        <button class="main" type="button" disabled=${!d} onClick=${g(()=>{p()})}>
          ${l.length?a("test.save",{count:l.length}):a("test.none")}</button>`}
      aside=${i`<span class="soft figures">
      ${n.at>H?a("test.seldom"):a("test.place",{at:Math.min(n.at+1,H),of:H})}</span>`}>
      ${k.value-n.begun>ns&&l.length>0&&i`
        <div class="row apart caution"><span>${a("test.begun",{when:T(n.begun,k.value)})}</span>
          <button class="quiet" type="button" onClick=${g(()=>o.draft.value=Go())}>${a("test.afresh")}
            </button></div>`}
      <${R} form=${o} kind="reading" />
      <${is} strange=${c} here=${r}
        on_go=${$=>u(nt.indexOf($))} />
      ${r?i`<${cs} key=${r} tank=${t} parameter=${r} form=${o} to=${u} />`:i`<${ps} readings=${n.readings} on_go=${m} />`}
      ${n.at<H&&i`<${ls} on_go=${m} />`}
      <${P} at=${n.when} on_at=${$=>o.set({when:$})} />
    <//>`}var as=t=>t.flatMap(({parameter:e,unit:o,value:s})=>{let n=Je({parameter:e,unit:o},y(e)),r=Ve(n,s);return r?[{parameter:e,spec:n,error:r}]:[]});function rs({test:t,to:e}){let o=nt[t.at],s=t.at>H?t.from??H:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${g(()=>e(s))}>${a("test.back")}</button>`}
    ${o&&i`<button class="quiet tall" type="button" onClick=${g(()=>e(t.at+1))}>
      ${a(t.readings[o]?"test.next":"test.skip")}</button>`}`}var is=({strange:t,here:e,on_go:o})=>t.map(({parameter:s,spec:n,error:r})=>i`
    <div key=${s} role="alert"><${tt} spec=${n} error=${r} />
      ${s!==e&&i`<button class="quiet" type="button" onClick=${g(()=>o(s))}>
        ${a("test.key_again",{what:y(s)})}</button>`}</div>`),ls=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${a("test.seldom")}</span>
    ${Q.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${g(()=>t(e))}>${y(e)}</button>`)}</div>`;function cs({tank:t,parameter:e,form:o,to:s}){let n=o.draft.value,r=c=>({...n.readings,[e]:{...c,at:x.value.now()}});return i`<${us} tank=${t} parameter=${e} test=${n}
    on_pick=${c=>s(n.at+1,{readings:r(c)})} on_type=${(c,u,m)=>{let{[e]:p,...d}=n.readings;o.set({keyed_in:{...n.keyed_in,[e]:m},typed:{...n.typed,[e]:c},readings:u?r(u):d})}} />`}function us({tank:t,parameter:e,test:o,on_pick:s,on_type:n}){let r=co(e),l=o.readings[e]?.value,c=r.unit??Wt[e],{label:u,unit:m,hold:p,text:d}=K(c),{per_drop:$}=r,f=w=>jt(r,Number((p(Number(w))*($??1)).toPrecision(6))),_=d(o.typed[e]??null,o.keyed_in?.[e]);return i`
    <h2 class="asked">${y(e)} <span class="soft unit">
      ${[r.entry==="steps"?c:u,bt(e,r.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${r.common?r.entry==="steps"?a("kit.common"):Q.includes(e)?a("kit.drops",{unit:Wt[e]}):a("kit.keypad"):r.name}</span>
      <a class="quiet" href=${r.id?`/room/test_kit/${r.id}`:`/room/test_kit/new?parameter=${e}&then=/tank/${t}/test`}>${a(r.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(r.timers??[]).length>0&&i`<${ms} kit=${r} tank=${t} />`}
    ${r.entry==="steps"&&(r.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${y(e)}>
          ${(r.steps??[]).map(w=>i`
            <button type="button" key=${w} aria-pressed=${l===w}
              onClick=${g(()=>s(jt(r,w)))}>${N(w)}</button>`)}
        </div>`:i`<${Lt} label=${y(e)} unit=${$?a("test.drops"):u} value=${_}
          on_value=${w=>n(w,w===""?null:f(w),m)} />
          ${$&&_&&i`<p class="soft center" role="status">
            ${a("test.drops_are",{figure:`${N(f(_).value)} ${c}`})}</p>`}`}`}var ms=({kit:t,tank:e})=>i`
  <ol class="lines timed">${(t.timers??[]).map((o,s)=>{let n=`${e}.${t.id}.${s}`,r=qe(n),l=()=>Ee({id:n,what:`${Se(t.parameter)}: ${o.what}`,seconds:o.seconds,href:`/tank/${e}/test`});return i`<li key=${s} class="line"><span>${s+1}. ${o.what}</span>
      <button class="quiet" type="button" onClick=${g(l)}><${M} name="clock" size=${20} />
        <span class="figures">${r===null?ft(o.seconds):r>0?ft(r):a("timer.again",{time:ft(o.seconds)})}</span></button></li>`})}</ol>`,ps=({readings:t,on_go:e})=>i`
  <h2 class="asked">${a("test.answers")}</h2>
  <ul class="lines">${nt.map((o,s)=>{if(!o)return null;let n=t[o],r=n&&vt(n);return i`<li key=${o}><button class="line whole" type="button" onClick=${g(()=>e(o))}>
      <span>${y(o)}</span>
      ${r?i`<span class="figures"><b class="hand">${r.value}</b> ${r.unit}</span>`:i`<span
        class="soft">${a(s>H?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;export{Vo as Change,pn as Dose,bn as Feed,Ln as Note,Kn as Outlook,Qn as Tank,ss as Test};
//# sourceMappingURL=tank-KYQELCU6.js.map
