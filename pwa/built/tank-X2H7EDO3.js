import{$a as Fo,A as Lo,Bb as Bo,Ca as No,Da as Bt,Ea as ut,Ha as Oo,Ia as Eo,Ja as Io,Jb as jo,Ka as qo,Kb as zo,L as le,La as vt,Mb as Go,Rb as Qo,Sb as G,Tb as Q,Ub as V,Va as Ro,Xa as Po,Ya as mt,Za as j,a as Co,b as So,bb as Wo,f as kt,g as ot,gb as ce,ib as Uo,jb as jt,kb as Ho,ma as Do,p as Yt,pb as Yo,q as Kt,v as Ao,w as To,wb as H,xb as z,zb as Ko}from"./chunk-T5UPOOAC.js";import"./chunk-UIOLMFZE.js";import{$a as k,A as Le,Aa as it,Ba as Z,Bb as ro,Bc as Mo,Cb as h,Cc as ct,Fa as Ue,Ga as He,Ha as Ye,Ia as Ot,J as Nt,Ja as Ke,Jb as io,K as rt,Ka as ne,Kb as lo,L as De,Lb as Rt,M as Ne,Ma as Be,N as Oe,Na as je,O as Ee,Oa as ze,Pa as Ge,Qa as Qe,Sb as ae,Ta as qt,Ua as Ze,Wa as to,Wb as re,Zb as co,_a as b,aa as Ie,bb as R,cb as T,cc as uo,da as qe,gc as mo,ha as Re,hb as L,ia as Pe,kb as wt,lb as eo,lc as po,mb as oo,mc as ie,nb as no,nc as ho,oc as go,pc as wo,qc as ko,rc as vo,sc as bo,tc as Ut,uc as Ht,va as Fe,wb as D,wc as yo,xb as so,xc as xo,yc as x,za as We,zb as ao}from"./chunk-5EBVLFGH.js";import{$a as $t,Ab as Xe,Bb as v,Cb as It,D as Y,Da as Tt,Eb as gt,Fa as F,Fb as U,Gb as O,H as St,I as ge,Ib as $o,Ja as q,Ka as at,Kb as fo,La as K,Lb as Pt,M as we,Ma as Se,Mb as _o,Na as oe,Nb as Ft,O as ke,Oa as Lt,Ob as Wt,Q as ve,T as be,U as et,Ua as Ae,V as P,Va as Te,W as ee,Wa as Dt,X as S,ca as ye,d as st,f as Mt,g as Ct,i as he,ja as xe,l as E,la as s,m as i,ma as I,mb as Ve,na as M,nb as Je,oa as At,qb as ft,ra as N,rb as B,ta as Me,tb as A,ub as se,vb as lt,wb as _t,xb as ht,yb as W,za as Ce,zb as Et}from"./chunk-ENV4QE2F.js";function Vo(t,{levels:e,limits:o},n){let{tank:a,source:r,label:c,readings:l}=t,u=F(l,"kh").at(-1),m=qt(t)?.celsius,d={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&$t(u))??a.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:r?.ph,source_kh_dkh:r?.kh_dkh,source_temperature_c:r?.temperature_c??m,source_tan_mg_n_l:Lt(r,"total_ammonia",c),fraction:n};if(Object.values(d).includes(void 0))return null;try{let p=d;return{input:p,answer:S("water_after_change",p)}}catch(p){if(p instanceof Y)return null;throw p}}var qn=14,Rn=["salt","other"];function Jo({tank:t,doses:e,now:o},n){let a=new Map;for(let{label:r,at:c}of e){if(r?.basis!=="whole_tank"||!Rn.includes(r.use)||o-Date.parse(c)>qn*864e5)continue;let l=Pn(r,t.water_l,n);l!==null&&a.set(r.id,{label:r,at:c,amount:l,unit:r.unit})}return[...a.values()]}function Pn({amount:t,per_l:e,unit:o},n,a){let r={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let c=S("bath_dose",{...r,water_l:n,change_fraction:a,every_days:1,days:1}),l=(o==="g"?c.again_g:c.again_ml)??null;return o==="drops"&&l!==null?Math.round(l):l}catch(c){if(!(c instanceof Y))throw c;return null}}var Fn={cold:12,hot:50};function Xo({facts:t,litres:e}){let o=Je("taps",()=>Fn),n=qt(t),a=(r,c)=>i`
    <${jo} label=${s(`warmth.${r}`)} unit="°C" min=${1} max=${c} value=${o.value[r]}
      on_value=${l=>o.value={...o.value,[r]:l}} />`;return i`
    <details class="more section"><summary>${s("warmth.title")}</summary>
      ${n?i`
        <p class="soft">
          ${n.at?s("warmth.read",{warmth:It(n.celsius),when:N(n.at,t.now)}):s("warmth.usual",{warmth:It(n.celsius)})}</p>
        ${a("cold",40)}${a("hot",80)}
        <${Wn} mix=${Ze(e,n.celsius,o.value)} />
        <p class="caution small">${et("water_blend","hot_water")}</p>`:i`<p class="soft">${s("warmth.unknown")}</p>`}
    </details>`}var Wn=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${s("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:It(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${s("warmth.missed")}</p>`}
  <${j} name="water_blend" input=${t.input} answer=${t.answer} />`;var Un=.25,Hn=()=>({typed:null});function Yn({id:t}){let e=T("tank",t),o=G({name:`change.${t}`,first:Hn}),n=Mt(null),a=V(e,"water_change",s("change.title"));if(!e||a)return a;let{facts:r,advice:c}=wt(e),l=Kn(n,r,c),u=l.act!=="retest"&&l.litres||rt(Un*e.water_l,e.water_l,r.water_unit),m=B("L"),{typed:d,unit:p="L",from_tank:$="",at:_,undosed:w=!1}=o.draft.value,y=d===null?u:Jn(m.hold(Number(d),p),e.water_l),f=Ee(e,y),g=f||$?null:Ne(r,y),C=w?null:g;$&&!b.value.is_ready($)&&b.value.ready($);let Zt=$?{...r,source:We(L.of("reading",$),{from_tank:$,at:_??b.value.now()})}:r,dt=y/e.water_l,xt={litres:v(y||0),dose:C?.amount!==void 0?U(C):""},te=()=>o.save(()=>{let X=$?{from_tank:$}:r.source?{source_water:r.source.id}:{},_e=Bn({tank:t,at:_,litres:y,fraction:dt,...X},C);return{writes:_e,said:s(_e.length>1?"saved.change_dose":"saved.change",xt),to:`/tank/${t}`}});return i`
    <${x} title=${s("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!f||H(_)}
        onClick=${h(()=>{te()})}>${s(C?.amount!==void 0?"change.log_dose":"change.log",xt)}
        </button>`}>
      <p class="soft">${l.litres||l.act==="retest"||l.act==="hold"?fo(l,k.value):s("change.usual",{litres:v(u)})}</p>
      <${Q} form=${o} kind="water_change" />
      <${jn} form=${o} tank=${e} litres=${y} suggested=${u} wrong=${f} />
      ${g&&!w&&i`<${Gn} id=${t} dose=${g} />`}
      ${!f&&i`<${zn} facts=${r} fraction=${dt} />`}
      ${!f&&i`<${Vn} facts=${Zt} advice=${l} fraction=${dt} />`}
      ${!f&&i`<${Xo} facts=${r} litres=${y} />`}
      <${Qn} id=${t} from_tank=${$}
        on_pick=${X=>o.set({from_tank:X})} />
      ${g?.amount!==void 0&&i`<p class="section"><button class="quiet" type="button" aria-pressed=${w}
        onClick=${h(()=>o.set({undosed:!w}))}>${s("change.undosed")}</button></p>`}
      <${z} at=${_} on_at=${X=>o.set({at:X})} />
      ${Xn(g).map(X=>i`<p class="caution small" key=${X}>${X}</p>`)}
    <//>`}function Kn(t,e,o){let n=[e.readings,e.changes].map(a=>a.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==n&&(t.current={last:n,advice:o}),t.current?.last===n?t.current.advice:o}function Bn(t,e){let o=D(),n=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:a,amount:r,unit:c}=e,{tank:l,at:u,litres:m}=t,d={at:u,tank:l,label:a.id,what:a.name,amount:r,unit:c,for_litres:m,water_change:o};n.push({type:"put",kind:"dose",id:D(),fields:d})}return n}function jn({form:t,tank:e,litres:o,suggested:n,wrong:a}){let r=E(!1),c=B("L"),{typed:l,unit:u="L"}=t.draft.value,m=Nt(e.water_l,c.unit),d=v(m),p=_=>t.set({typed:_,unit:c.unit}),$=_=>p(String(c.show(Math.min(Math.max(o+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${s("change.litres")}>
      <button class="quiet" type="button" aria-label=${s("change.less",{step:d})}
        onClick=${()=>$(-1)}><${O} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${r.value}
        aria-label=${s("change.type",{litres:v(o||0)})}
        onClick=${h(()=>r.value=!r.value)}>
        <span>${M(c.show(o||0),2)} <small>${c.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${s("change.more",{step:d})}
        onClick=${()=>$(1)}><${O} name="plus" size=${28} /></button>
    </div>
    ${a?i`<div role="alert"><${mt} spec=${Oe(e,s("change.litres"))} error=${a} /></div>`:i`<p class="soft center">${s("change.share",{percent:I(100*o/e.water_l,0)})}</p>`}
    ${r.value&&i`<${Bt} label=${s("change.litres")} unit=${c.label}
      value=${c.text(l,u)} on_value=${p} />`}
    ${l!==null&&o!==n&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>p(null))}>${s("change.suggested",{litres:v(n)})}</button></p>`}`}function zn({facts:t,fraction:e}){let o=Jo(t,e);return o.length===0?null:i`
    ${o.map(n=>i`<p key=${n.label.id}>${s("dose.again",{name:n.label.name,when:N(n.at,t.now),dose:U(n)})}</p>`)}
    ${o.some(({label:n})=>n.use==="other")&&i`<p class="caution small">
      ${et("bath_dose","label_over_all")}</p>`}`}var Gn=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${U(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${s(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_label")}</a></p>`:i`<p class="dose">${s("dose.none")}</p>`,Qn=({id:t,from_tank:e,on_pick:o})=>R("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${s("change.other_tank")}</summary>
    <${Ho} tank=${t} value=${e} label=${s("change.out_of")} on_pick=${n=>o(n===e?"":n)} />
    <p class="soft small">${s("change.other_tank_why")}</p>
  </details>`,Vn=({facts:t,advice:e,fraction:o})=>{let n=Object.values(e.levels).flatMap(({parameter:r,now_mg_n_l:c,reading:l})=>c?[{parameter:r,now_mg_n_l:c,basis:K({reading:l})}]:[]),a=Vo(t,e,o);return(n.length>0||a)&&i`
    <table class="measured"><caption><h2>${s("change.after")}</h2></caption><tbody>
      ${n.map(({parameter:r,now_mg_n_l:c,basis:l})=>{let u=Lt(t.source,r,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:c,source_mg_l:u,fractions:[o]});return i`<tr key=${r}><th scope="row">${A(r)}</th>
          <td class="figures">${ht(r,c,l)} → <span class="big">
            ${ht(r,m,l)}</span> <span class="unit">
            ${`mg/L ${lt(r,l)}`}</span></td></tr>`})}${a&&i`<tr><th scope="row">${A("ph")}</th><td class="figures">${I(a.input.ph,1)} → <span
          class="big">${I(a.answer.ph,1)}</span>${I(a.answer.ph_settled,1)!==I(a.answer.ph,1)&&i`<span class="also">${s("change.ph_settled",{ph:I(a.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${a?.answer.notes.map(r=>i`<p class="caution small" key=${r}>${r}</p>`)}`},Jn=(t,e)=>Math.abs(t-e)<1e-6?e:t,Xn=t=>[...P("dilution"),...t?.amount!==void 0?P("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Zn=.25,ts=1,es={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function Zo(t,e){let o=n=>e.findLastIndex(a=>a.label?.id===n.id);return[...t].sort((n,a)=>o(a)-o(n)||n.name.localeCompare(a.name))}var tn=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??rt(Zn*t.water_l,t.water_l);function zt(t,e){let o=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),n=ee(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(n)):n,unit:t.unit}}function en(t,e,o){let n={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},a=S("starter_dose",n),r=o===void 0;return{input:n,answer:a,amount:r?a.ammonium_chloride_g:ee(a,"household_ammonia_ml"),unit:r?"g":"ml",tan_mg_n_l:a.tan_mg_n_l}}function ue(t,e=[]){let{water_l:o,feed_g_day:n=0,protein_fraction:a=0}=t,r=To(t,e);return n<=0&&r>0?S("starter_dose",Ao(o,r).input).tan_mg_n_l:n<=0||a<=0?ts:S("starter_dose",{volume_l:o,feed_g_day:n,protein_fraction:a}).tan_mg_n_l}var on=t=>t.reduce((e,{change:o,count:n})=>e+(es[o]??0)*(n??0),0)>0;function nn(t,e,{system:o,marks:n}){let a=St().salt_dose,{volume_l:r,...c}=e?.typed??{};if(Object.keys(c).length===0)return null;let l=Lo(a,{draft:{...e,typed:c},tank:{volume_l:t.water_l},system:o,marks:n});if(!("answer"in l))return null;let u=l.payload,m=l.answer;return{what:be(ke("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var Gt="salt",Qt="ammonia",os=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function ns({id:t}){let e=T("tank",t),o=G({name:`dose.${t}`,first:os}),n=V(e,"dose",s("dosing.title"));if(!e||n)return n;let{changes:a,doses:r}=it(L,e,k.value),c=Zo(R("label"),r),l=nn(e,Ve("bench.salt_dose",()=>({})).value,{system:ft.value,marks:ye(xe())}),u=on(Ie(R("stock_change"),t)),{way:m,at:d}=o.draft.value,p=c.find(f=>f.id===m),$=as(o.draft.value,{tank:e,label:p,salt:l,animals:u,changes:a}),{fields:_}=$,w=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:D(),fields:{tank:t,at:d,..._}}],said:s("dosing.saved",{dose:U(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),y=_&&i`<button class="main" type="button" disabled=${H(d)} onClick=${h(()=>{w()})}>
      ${s("dosing.log",{dose:U(_)})}</button>`;return i`
    <${x} title=${s("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${y}>
      <${is} dose=${r.at(-1)} />
      <${Q} form=${o} kind="dose" />
      <${ss} tank=${t} form=${o} labels=${c} salt=${l} />
      ${p&&i`<${ls} form=${o} tank=${e} label=${p} dose=${$}
        litres=${sn(o.draft.value,e,p,a)} />`}
      ${m===Gt&&l&&i`<${me} dose=${$}
        said=${s("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Qt&&i`<${cs} tank=${e} form=${o} dose=${$} animals=${u} />`}
      ${_&&i`<${z} at=${d} on_at=${f=>o.set({at:f})} />`}
      ${us(m,p).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function ss({tank:t,form:e,labels:o,salt:n}){let a=(c,l,u)=>i`
    <button type="button" key=${c} aria-pressed=${e.draft.value.way===c}
      onClick=${h(()=>e.set({way:c,litres:null}))}><b>${l}</b>
      <span class="soft small">${u}</span></button>`,r=({amount:c,unit:l,per_l:u})=>s("label.line",{amount:M(c),unit:s(`unit.${l}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${s("dosing.what")}>
      ${o.map(c=>a(c.id,c.name,r(c)))}
      ${n&&a(Gt,n.what,s("dosing.from_bench"))}
      ${a(Qt,s("dosing.ammonia"),s("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${b.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${O}
        name="plus" size=${20} />${s("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${s("dosing.work_out_salt")}</a>
    </div>`}function as(t,{tank:e,label:o,salt:n,animals:a,changes:r}){try{if(o){let c=sn(t,e,o,r);return{fields:{...zt(o,c),label:o.id,what:o.name,for_litres:c}}}if(t.way===Gt&&n){let{what:c,what_code:l,amount:u,unit:m,input:d,answer:p}=n;return{fields:{what:c,what_code:l,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:d,answer:p}}return t.way===Qt&&!a?rs(t,e):{}}catch(c){if(!(c instanceof Y))throw c;return{errors:c.errors}}}function rs(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:n,unit:a,tan_mg_n_l:r,input:c,answer:l}=en(e,an(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:co(u),what_code:u,amount:n,unit:a,tan_mg_n_l:r,for_litres:e.water_l},name:"starter_dose",input:c,answer:l}}var sn=({litres:t},e,o,n)=>t===null?tn(e,o,n):Dt(Number(t.text),t.unit,"L"),an=({tan:t},e)=>t===null?ue(e,R("own_species")):Number(t),is=({dose:t})=>i`<p class="soft">
    ${t?s("dosing.last",{dose:U(t),what:uo(t),when:N(t.at,k.value)}):s("dosing.never")}</p>`;function ls({form:t,tank:e,label:o,litres:n,dose:a}){let r=Ae({name:"",unit:"L"},ft.value),c=t.draft.value.litres,l=ne(Dt(Nt(e.water_l),"L",r));return i`
    <section class="section"><h2>${s("dosing.for_water")}</h2>
      <${ut} label=${s("dosing.for_water")} unit=${Te(r)} value=${Dt(n,"L",r)}
        typed=${c&&c.unit===r?c.text:null} step=${l} least=${l} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:r}})} />
      <${me} dose=${a} said=${s(`dose.basis_${o.basis}`)} />
    </section>`}function cs({tank:t,form:e,dose:o,animals:n}){if(n)return i`<p class="wrong section" role="status"><${O} name="needs" /><span>${s("dosing.animals_here")}</span>
      </p>`;let{tan:a,household:r,percent:c}=e.draft.value,l=an(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${s("dosing.wanted")}</h2>
      <${ut} label=${s("dosing.wanted")} unit="mg N/L" value=${l} typed=${a}
        step=${ne(Math.max(ue(t,R("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${s("dosing.with")}>
      <button type="button" aria-pressed=${!r} onClick=${u(!1)}>${s("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${r} onClick=${u(!0)}>${s("dosing.household_ammonia")}
        </button>
    </div>
    ${r&&i`<section class="section"><h2>${s("dosing.strength")}</h2>
      <${ut} label=${s("dosing.strength")} unit="%" value=${Number(c)} typed=${c} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(c)>0)&&i`<p class="soft center">${s("dosing.no_strength")}</p>`}</section>`}
    <${me} dose=${o} said=${s("dosing.gives",{tan:Et(l||0),litres:v(t.water_l)})}
      />`}var me=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${mt} key=${o.field} error=${o}
    spec=${{label:s("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${U(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${j} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function us(t,e){return t===Gt?P("salt_dose"):t===Qt?P("starter_dose"):[s("dosing.label_first"),...e?.use==="dechlorinator"?P("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function ms({place:t}){let e=E(""),o=E([]);if(!b.value.may("dose"))return i`<${Qo} title=${s("group_dose.title")} up="/" />`;let n=Z(L).filter(m=>(m.place?.trim()??"")===t),a=R("label").filter(({basis:m})=>m==="whole_tank"),r=a.find(({id:m})=>m===e.value)??(a.length===1?a[0]:null),c=r?n.flatMap(m=>ps(m,r)):[],l=c.filter(({tank:m})=>!o.value.includes(m.id)),u=m=>o.value=o.value.includes(m)?o.value.filter(d=>d!==m):[...o.value,m];return i`
    <${x} title=${s("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||s("many.no_place")}</span>`}
      act=${r&&i`<button class="main" type="button" disabled=${l.length===0}
        onClick=${h(()=>{ds(r,l)})}>${s("group_dose.log",{count:l.length})}</button>`}>
      ${a.length===0?i`<p class="sentence">${s("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${s("water.new_label")}</a></p>`:i`<section class="section"><h2>${s("group_dose.which")}</h2><div class="tiles two short">${a.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===r?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${r&&i`<section class="section"><h2>${s("group_dose.tanks")}</h2><div class="tiles two short">${c.map(({tank:m,amount:d,unit:p})=>i`<button key=${m.id} type="button"
          aria-pressed=${!o.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${U({amount:d,unit:p})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${s("dosing.label_first")}</p>`}
    <//>`}function ps(t,e){try{return[{tank:t,...zt(e,t.water_l)}]}catch(o){if(o instanceof Y)return[];throw o}}async function ds(t,e){let o=b.value.now(),n=e.map(({tank:{id:a,water_l:r},amount:c,unit:l})=>({type:"put",kind:"dose",id:D(),fields:{tank:a,at:o,label:t.id,what:t.name,amount:c,unit:l,for_litres:r}}));await so(n,s("group_dose.saved",{count:n.length,label:t.name}))&&Ht("/",{replace:!0})}var ln=["food","protein_fraction"],$s=()=>({typed:null,food:null,own:{},at:void 0});function fs({id:t}){let e=T("tank",t),o=G({name:`feed.${t}`,first:$s}),n=V(e,"feeding",s("feed.title"));if(!e||n)return n;let a=it(L,e,k.value),{feedings:r}=a,c=je(a),l=Be(e,r,c?.answer.usual_g_day),u=Ge(R("feeding")),{typed:m,at:d}=o.draft.value,p=m===null?l.feed_g:Number(m),$=ws(o.draft.value,u,l),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:D(),fields:{tank:t,at:d,feed_g:f,...f>0?$:{}}}],said:f>0?s("feed.saved",{amount:gt(f),tank:e.name}):s("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),w=i`
    <button class="quiet tall" type="button" disabled=${H(d)} onClick=${h(()=>{_(0)})}>
      ${s(d?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(p>0)||H(d)}
      onClick=${h(()=>{_(p)})}>${s("feed.log",{amount:gt(p||0)})}</button>`,y=m===null||p===l.feed_g?l.from:"keeper";return i`
    <${x} title=${s("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${ks} feedings=${r} />
      <${ut} label=${s("feed.grams")} unit="g" value=${p} typed=${m} step=${ze(l.feed_g)}
        least=${.01} most=${ve("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${s(`feed.from_${y}`,{usual:gt(l.feed_g)})}</p>
      ${c&&i`<${_s} answer=${c.answer} feed_g=${p} />`}
      <${Q} form=${o} kind="feeding" beside=${o.draft.value.food===""?ln:[]} />
      <${gs} form=${o} known=${u} given=${$} />
      <${z} at=${d} on_at=${f=>o.set({at:f})} />
      <${vs} tank=${e} facts=${a} feed_g=${p} protein_fraction=${$.protein_fraction} />
      <${hs} ration=${c} />
      ${P("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var _s=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>i`
  <p class=${o>e?"wrong":"soft small center"}>
    ${s("feed.ration",{usual:rn(t),most:rn(e)})}</p>`,hs=({ration:t})=>t&&i`<section class="section"><h2>${s("feed.ration_why")}</h2>
    <${j} name="feed_ration" ...${t} /></section>`,rn=t=>`${M(t,t<1?2:1)}\xA0g`,cn=()=>ln.map(t=>we(ge().feeding.fields,t));function gs({form:t,known:e,given:o}){let{food:n,own:a}=t.draft.value;return i`
    <section class="section"><h2>${s("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${s("feed.food")}>
        ${e.map(({food:r,protein_fraction:c})=>i`
          <button type="button" key=${r} aria-pressed=${o.food===r}
            onClick=${h(()=>t.set({food:r}))}>
            <b>${r}</b>${c!==void 0&&i`<span class="soft small">
              ${s("feed.protein",{percent:I(100*c,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${n===""} onClick=${h(()=>t.set({food:""}))}><${O}
          name="plus" />${s("feed.other")}</button>
      </div>
      ${n===""&&i`<div class="section"><${Po} specs=${cn()} raw=${a} errors=${t.errors.value} tried=${!0}
        on_raw=${r=>t.set({own:r})} /></div>`}
    </section>`}function ws({food:t,own:e},o,n){if(t==="")return Ro(cn(),e);let a=o.find(u=>u.food===t),{feed_g:r,from:c,...l}=n;return t!==null&&a?{...a}:l}function ks({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${s("feed.never")}</p>`;let o={when:N(e.at,k.value),amount:gt(e.feed_g),food:e.food??""};return i`<p class="soft">${s(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function vs({tank:t,facts:e,feed_g:o,protein_fraction:n}){if(o===0)return null;let a=K({reading:F(e.readings,"total_ammonia").at(-1)??null});try{let{input:r,answer:c,assumed:l}=Qe(t,o,n),u={mg:M(c.tan_mg_n_day,1),rise:`${W("total_ammonia",c.tan_mg_n_l_day,a)} ${lt("total_ammonia",a)}`,percent:I(100*r.protein_fraction,0)};return i`
      <section class="section"><h2>${s("feed.becomes")}</h2>
        <p>${s("feed.nitrogen",u)}${l&&i` ${s("feed.assumed",u)}`}</p>
        <${j} name="nitrogen_load" input=${r} answer=${c} />
      </section>`}catch(r){if(!(r instanceof Y))throw r;return null}}var un=28,pn=14,bs=90,ys=3,xs=21,Ms=.3,Cs=60,Ss=[7,3,1],As=1,mn=new WeakMap;function bt(t){let e=mn.get(t)??Ts(t);return mn.set(t,e),e}function Ts(t){let e=Ls(t),o=Ds(t);return{routine:e,young:dn(t)<pn,nitrate:o&&Is(t,e,o),kh:o&&qs(t,e,o.rise.usual)}}function dn({tank:t,now:e,changes:o,readings:n}){let a=[t.started_at,o[0]?.at,n[0]?.at].flatMap(r=>r?[Date.parse(r)]:[]);return a.length?(e-Math.min(...a))/864e5:0}function Ls(t){let e=Math.min(un,dn(t)),o=t.changes.filter(({at:r})=>pe(r,t.now,un));if(o.length===0||e<pn)return null;let a=1-o.reduce((r,{fraction:c})=>r*(1-Math.min(c,.95)),1)**(1/o.length);return a<.01?null:{count:o.length,litres:a*t.tank.water_l,fraction:a,every_days:e/o.length}}function Ds(t){let e=Ns(t);if(e)return{from:"readings",rise:e};let{feed_g_day:o,fish_g:n,protein_fraction:a,volume_l:r}=to(t).records.tank,{feed_of_fish:c,protein_fraction:l}=Ot(),u=o??(n===void 0?void 0:n*c);if(!u)return null;let d=S("nitrogen_load",{feed_g_day:u,protein_fraction:a??l,volume_l:r}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:d,high:d}}}function Ns(t){let e=F(t.readings,"nitrate").filter(u=>pe(u.at,t.now,bs)&&oe(u)&&!Es(u)),[o,n]=[e[0],e.at(-1)];if(!n||e.length<ys||Date.parse(n.at)-Date.parse(o.at)<xs*864e5)return null;let a=0,r=0;for(let u=1;u<e.length;u++){let m=Os(t,e[u-1],e[u]);a+=at(e[u])-m.left,r+=m.days}if(r<=0)return null;let c=Ms*Math.hypot(at(o),at(n))/r,l=a/r;return{low:Math.max(0,l-c),usual:Math.max(0,l),high:Math.max(0,l+c)}}function Os({changes:t},e,o){let n=at(e),a=0,r=Date.parse(e.at);for(let{at:c,fraction:l,source:u}of t)c<=e.at||c>o.at||(a=(a+(Date.parse(c)-r)/864e5)*(1-l),n=n*(1-l)+l*(u?.nitrate_mg_n_l??0),r=Date.parse(c));return{left:n,days:a+(Date.parse(o.at)-r)/864e5}}var Es=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function Is(t,e,{from:o,rise:n}){let a=Ke(t).nitrate.mg_n_l,r=t.source?.nitrate_mg_n_l??0,c=F(t.readings,"nitrate").findLast(oe),l=d=>{if(!e)return null;let p={add_mg_l_day:d,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:r,ceiling_mg_l:a};return{input:p,answer:S("steady_routine",p)}},u=d=>l(d)?.answer.before_change_mg_l??0,m=l(n.usual);return{from:o,rise_mg_n_l_day:n,limit_mg_n_l:a,settles_mg_n_l:m&&{low:u(n.low),usual:u(n.usual),high:u(n.high)},worked:m,days_to_limit:e||n.usual<=0?null:Math.max(0,a-(c?at(c):0))/n.usual,least:$n(t,e,d=>n.usual<=0?void 0:S("steady_routine",{add_mg_l_day:n.usual,change_fraction:.5,every_days:d,source_mg_l:r,ceiling_mg_l:a}).fraction_needed),source_over:r>=a}}function qs(t,e,o){let n=F(t.readings,"kh").findLast(d=>pe(d.at,t.now,Cs)&&$t(d)!==void 0),a=n?$t(n):t.tank.kh_dkh;if(a===void 0||a>60)return null;let r=t.source?.kh_dkh,c={kh_dkh:a,nitrogen_mg_n_l_day:Math.min(o,100),floor_kh_dkh:As},l=d=>S("alkalinity_use",{...c,source_kh_dkh:r,change_fraction:.5,every_days:d}).fraction_needed,u=e&&r!==void 0?{...c,source_kh_dkh:r,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:c,m=S("alkalinity_use",u);return{now_dkh:a,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:r===void 0||o<=0?null:$n(t,e,l),source_known:r!==void 0,worked:{input:u,answer:m}}}function $n(t,e,o){let{water_l:n}=t.tank,a=De(t,{unhurried:!0}),r=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let c of[...r,...Ss]){let l=o(c);if(!(typeof l!="number"||l*n>a))return{litres:rt(l*n,n,t.water_unit,a),every_days:c}}return null}var pe=(t,e,o)=>{let n=e-Date.parse(t);return n>=0&&n<=o*864e5};var de=365;function Vt({nitrate:t,young:e},o){if(e)return s("long_run.young");if(!t)return s("long_run.no_load");let n=W("nitrate",t.limit_mg_n_l,o);if(t.source_over)return s("long_run.source_over",{limit:n});if(t.rise_mg_n_l_day.usual<=0)return s("long_run.no_rise");if(!t.settles_mg_n_l)return Rs(t,n);let{settles_mg_n_l:a}=t,r=t.from==="food"?W("nitrate",a.high,o):Ps(a,o),c=t.from==="food"?"at_most":"settles",l=a.high<=t.limit_mg_n_l?"under":a.low>t.limit_mg_n_l?"over":"perhaps";return s(`long_run.${c}_${t.from==="food"&&l!=="under"?"perhaps":l}`,{level:r,limit:n})}function Rs({days_to_limit:t},e){let o=Math.round(t??1/0);return o>de?s("long_run.no_changes_far",{limit:e}):s(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var Ps=({low:t,high:e},o)=>s("outlook.between",{low:ht("nitrate",t,o),high:W("nitrate",e,o)});function Fs({id:t}){let e=T("tank",t);if(!e)return i`<${ct} up="/" />`;let o=it(L,e,k.value),n=bt(o),a=F(o.readings,"nitrate").at(-1),r=K(a&&{reading:a});return i`
    <${x} title=${s("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${s("long_run.title")}>
        <${Ws} id=${t} found=${n} basis=${r} />
      </section>
      <section class="section"><h2>${s("long_run.kh")}</h2><${Hs} id=${t} found=${n} /></section>
    <//>`}function Ws({id:t,found:e,basis:o}){let{nitrate:n,routine:a,young:r}=e,c=n?.settles_mg_n_l&&n.settles_mg_n_l.high>n.limit_mg_n_l;return i`
    <p class="sentence">${Vt(e,o)}</p>
    <p>${Us(e)}</p>
    ${n&&!r&&i`
      <${fn} id=${t} least=${n.least} routine=${a} />
      <p class="soft small">${n.from==="food"?s("long_run.from_food"):s("long_run.from_readings",{rise:W("nitrate",n.rise_mg_n_l_day.usual*7,o)})}</p>
      ${c&&i`<p class="caution small">${et("steady_routine","slowly")}</p>`}
      ${n.worked&&i`<${j} name="steady_routine" ...${n.worked} />`}`}`}var Us=({routine:t,young:e})=>t?s("long_run.routine",{count:t.count,litres:v(t.litres),days:M(t.every_days,t.every_days<10?1:0)}):e?"":s("long_run.no_routine");function fn({id:t,least:e,routine:o}){if(!e)return null;let{litres:n,every_days:a}=e,r=o&&o.litres/o.every_days>=n/a;return i`
    <p>${s(r?"long_run.least_held":"long_run.least",{litres:v(n),count:a})}</p>
    ${b.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${a}&title=${encodeURIComponent(s("long_run.task",{litres:v(n)}))}`}>${s("long_run.make_task")}</a></p>`}`}function Hs({id:t,found:{kh:e,nitrate:o,routine:n}}){if(!e)return i`<p>${s(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let a=M(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${Ys(e)}</p>
    <p>${s("long_run.kh_falls",{fall:a,now:M(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${s("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${fn} id=${t} least=${e.least} routine=${n} />
      <p class="caution small">${et("alkalinity_use","kh_floor")}</p>`}
    <${j} name="alkalinity_use" ...${e.worked} />`}function Ys({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=de?s("long_run.kh_gone",{count:Math.round(t)}):e===null?s("long_run.kh_far"):s("long_run.kh_settles",{level:M(e,1)})}var Ks=["at_surface","hiding"],$e=5e3,Jt=No(),Bs=()=>({picked:[],text:"",at:void 0});function js({id:t}){let e=T("tank",t),o=`note.${t}`,n=G({name:o,first:Bs}),{photos:a,busy:r,problem:c,add:l,drop:u}=zs(o),m=V(e,"note",s("note.title"));if(!e||m)return m;let{picked:d,text:p,at:$}=n.draft.value,_=ae.filter(C=>d.includes(C)),w=[..._.map(re),p.trim()].filter(Boolean).join(`
`),y=()=>n.save(()=>{let C={tank:t,at:$??b.value.now(),entry:D()},Zt={...C,text:w.slice(0,$e),..._.length?{quick:_}:{}};return{writes:w?[{type:"put",kind:"note",id:D(),fields:Zt}]:[],pictures:a.map(({picture:dt,width:xt,height:te})=>({picture:dt,id:D(),fields:{...C,width:xt,height:te}})),said:s("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>Jt.forget(o).catch(()=>{})}}),f=(w||a.length>0)&&!r&&w.length<=$e&&!H($),g=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{y()})}>
    ${a.length?s("note.save_photos",{count:a.length}):s("note.save")}</button>`;return i`
    <${x} title=${s("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${Gs} id=${t} picked=${d} on_pick=${C=>n.set({picked:C})} />
      <div class="field section"><label for="note-text">${s("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${$e} value=${p}
          onInput=${Rt(C=>n.set({text:C}))}></textarea></div>
      <section class="section"><h2>${s("note.photos")}</h2>
        <${Qs} photos=${a} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${O} name="camera" />${s("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${l} /></label>
          <label class="quiet tall file">${s("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${l} /></label>
        </div>
        ${r&&i`<p class="soft" role="status">${s("note.shrinking")}</p>`}
        <${Yo} text=${c} />
        <${Q} form=${n} kind="note" />
        <p class="soft small">${s("note.photo_size")}</p>
      </section>
      <${z} at=${$} on_at=${C=>n.set({at:C})} />
    <//>`}function zs(t){let e=E([]),o=E(0),n=E(""),a=async()=>{e.value=await Jt.list(t)};st(()=>{a().catch(()=>n.value=s("note.photos_not_kept"))},[t]);let r=async u=>{o.value+=1;try{await Jt.add(t,await Go(u)),await a()}catch(m){let d=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=s(d,{file:u.name})}finally{o.value-=1}},c=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",n.value="";for(let d of m)await r(d)},l=async u=>{let m=await Jt.remove(u);await a(),ao(s("note.photo_dropped"),async()=>{await m(),await a()})};return{photos:e.value,busy:o.value>0,problem:n.value,add:c,drop:l}}function Gs({id:t,picked:e,on_pick:o}){let n=a=>o(e.includes(a)?e.filter(r=>r!==a):[...e,a]);return i`
    <div class="tiles two short" role="group" aria-label=${s("note.quick")}>
      ${ae.map(a=>i`<button type="button" key=${a} aria-pressed=${e.includes(a)}
        onClick=${h(()=>n(a))}>${re(a)}</button>`)}
    </div>
    ${e.some(a=>Ks.includes(a))&&i`
      <div class="caution" role="status"><p>${s(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${s("test.do")}</a></div>`}`}var Qs=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:n},a)=>{let r=s("photo.numbered",{at:a+1});return i`
    <li key=${o}><${Ko} picture=${n} said=${r} />
      <button class="quiet square" type="button" aria-label=${s("remove_named",{what:r})}
        onClick=${h(()=>{e(o)})}><${O} name="remove" size=${20} /></button></li>`})}</ul>`;function hn(t,e,o,n,a,r){let{start:c,records:l}=o,u=f=>c+f*36e5,m=u(l.now_h),d=Math.max(m-r*24*36e5,Math.min(c,m-48*36e5)),p=n?.doubts??[],$=l.readings.filter(f=>f.parameter===t&&u(f.at_h)>=d).map(f=>({at:u(f.at_h),...Vs(f),doubted:p.some(g=>g.parameter===t&&g.at_h===f.at_h)})),w=q(t)&&(t!=="nitrate"||o.nitrate_known)?(n?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],y=[...e.feedings.map(f=>_n(f.at,"feeding",f.feed_g)),...e.changes.map(f=>_n(f.at,"change",f.litres))].filter(({at:f})=>f>=d&&f<=m).sort((f,g)=>f.at-g.at);return{parameter:t,dots:$,fan:w,marks:y,limit:q(t)?a[t]:null,from:d,now:m,to:w.at(-1)?.at??m}}var _n=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function Vs(t){if(!q(t.parameter)){let[l,u]=t.steps?.length?le(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:l,high:u}}let{value:e,steps:o}=Do(t),n=Ot(),a=t.parameter==="nitrate"?"nitrate":"reading",[r,c]=le(e,o,n[`${a}_offset`],n[`${a}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:r===null?null:Math.max(r,0),high:c}}function gn(t,e){let o=n=>n===null?null:e(n);return{...t,dots:t.dots.map(n=>({...n,value:e(n.value),low:o(n.low),high:o(n.high)})),fan:t.fan.map(({at:n,p10:a,p50:r,p90:c})=>({at:n,p10:e(a),p50:e(r),p90:e(c)})),line:t.limit&&e(t.limit.mg_n_l)}}function wn({parameter:t,dots:e,fan:o,line:n}){let a=[...e.flatMap(({value:u,low:m,high:d})=>[u,m??u,d??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...n===null?[]:[n]],r=Math.max(...a);if(q(t))return[0,r>0?r*1.12:1];let c=Math.min(...a),l=Math.max((r-c)*.2,.5);return[c-l,r+l]}var Js=["doubt","kh_gone","prior","few","rule_working","rule_failed"];function kn({findings:[t],reasons:e}){let o=t?.code==="kh_ends"?"kh_gone":"";return e.filter(({code:n})=>Js.includes(n)&&n!==o)}var vn=({doubted:t})=>i`
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
  </ul>`,bn=({ready:{code:t,from:e,likely:o,to:n}})=>{let a=r=>r===void 0?"":Me(r);return i`
    <section class="section"><h2>${s("ready.title")}</h2>
      <p class="sentence">${s(`ready.${t}`,{from:a(e),likely:a(o),to:a(n)})}</p>
      <p class="soft small">${s("ready.means")}</p>
    </section>`};function yn({weeks:t,expected:e}){let[o]=t;return i`
    <details class="more section"><summary>${s("carry.title")}</summary>
      <p>
        ${s("carry.now",{low:pt(o.feed_g_day.p10),high:pt(o.feed_g_day.p90),expected:pt(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${s("carry.when")}</th><th scope="col" class="right">${s("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:n,feed_g_day:a})=>i`
          <tr key=${n}><th scope="row">${s(`carry.in_${n}`)}</th>
            <td>${pt(a.p50)}<span class="also">
              ${s("outlook.between",{low:pt(a.p10),high:pt(a.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${St().stock_headroom.uncertainty}</p>
    </details>`}var xn=()=>{let t=[...P("outlook"),...P("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},pt=t=>`${M(t,t<1?2:1)} g`;var Xs=86400,Zs=["p10","p50","p90"];function Mn({lines:t}){let e=Mt(null);return st(()=>Io(e.current,()=>ea(t),ta(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var ta=({fan:t,from:e,now:o})=>{let n=t.length?t:[{at:o,p10:null,p50:null,p90:null}],r=[{at:e,p10:null,p50:null,p90:null},...n];return[r.map(({at:c})=>c/1e3),...Zs.map(c=>r.map(l=>l[c]))]};function ea(t){let{from:e,now:o,to:n}=t,[a,r]=wn(t),c={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,n/1e3+(n>o?0:Xs/2)]},y:{range:[a,r]}},series:[{},c,{stroke:()=>vt("--action"),width:2.5,points:{show:!1}},c],bands:[{series:[3,1],fill:()=>vt("--fan")}],axes:qo(),hooks:{drawAxes:[l=>Oo(l,t,vt)],draw:[l=>Eo(l,t,vt)]}}}var Xt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},oa=6;function Cn({lines:t,basis:e,next:o,as_table:n,now:a}){let{parameter:r}=t,c=ia(r,e),l=Ct(()=>gn(t,la(r,e)),[t,e,ft.value]),u=`of-${r}`;return i`
    <section class="parameter" aria-labelledby=${u}>
      <h2 id=${u}>${A(r)} <span class="unit">${c}</span></h2>
      ${o&&r in Xt&&i`<${na} lines=${t} basis=${e}
        chance=${o.pass_chance[Xt[r]]}
          standing=${o.now[`${r}_mg_n_l`]} />`}
      ${!n&&i`<${Mn} lines=${l} />`}
      <div class=${n?"":"unseen"}><${sa} lines=${l} unit=${c} now=${a} /></div>
    </section>`}function na({lines:t,basis:e,chance:o,standing:n}){let{parameter:a,limit:r,fan:c}=t;if(!r||c.length===0)return null;let l=c.at(-1),u=l&&l.p90-l.p10>r.mg_n_l,m={chance:$o(o)},d=n.p50>r.mg_n_l?s("outlook.perhaps_over",m):s("outlook.chance",m),p=n.p10>r.mg_n_l?s("outlook.over"):d;return i`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${s("outlook.limit",{limit:W(a,r.mg_n_l,e),by:s(`limit.${r.by}`)})} ${u&&s("outlook.wide")}</p>`}function sa({lines:t,unit:e,now:o}){let{parameter:n,fan:a,dots:r,marks:c}=t,l=p=>ra(n,p),u=Math.max(1,Math.round((a.length-1)/oa)),m=[...r.map(p=>({at:p.at,what:s(p.doubted?"outlook.read_doubted":"outlook.read"),value:l(p.value),span:aa(p,l)})),...c.filter(({kind:p})=>p==="change").map(({at:p,said:$})=>({at:p,what:s("history.changed",{litres:v($)}),value:"",span:""}))].sort((p,$)=>$.at-p.at),d=c.filter(({kind:p})=>p==="feeding");return i`
    ${d.length>0&&i`<p class="soft small">${s("outlook.fed",{count:d.length,grams:M(d.reduce((p,{said:$})=>p+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${A(n)} ${e}</caption>
      ${a.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.likely")}</th></tr>
          ${a.filter((p,$)=>$%u===0).map(({at:p,p10:$,p50:_,p90:w})=>i`
            <tr key=${p}><th scope="row">${N(p,o)}</th><td>${l(_)} <span class="also">
              ${s("outlook.between",{low:l($),high:l(w)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.so_far")}</th></tr>
        ${m.map(({at:p,what:$,value:_,span:w},y)=>i`
          <tr key=${`${p}-${y}`}><th scope="row">${N(p,o)}<span class="also">${$}</span></th><td>${_}
            ${w&&i` <span class="also">${w}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function aa({low:t,high:e},o){return t===e?"":t===null?s("outlook.up_to",{high:o(e)}):e===null?s("outlook.from",{low:o(t)}):s("outlook.between",{low:o(t),high:o(e)})}var ra=(t,e)=>q(t)?Et(e):I(e,1),ia=(t,e)=>q(t)?Xe(t,e):t==="temperature"?B("\xB0C").label:"",la=(t,e)=>q(t)?Se(t,e):t==="temperature"?B("\xB0C").show:o=>o;var ca=["total_ammonia","nitrite","nitrate","ph","temperature"],Sn=[2,6];function ua({id:t}){let e=T("tank",t);return e?i`<${ma} tank=${e} />`:i`<${ct} up="/" />`}function ma({tank:t}){let e=E(Sn[0]),o=E(!1),{facts:n,asked:a,forecast:r,advice:c}=no(t),{ahead:l,next:u,headroom:m}=r.answers,d=$=>u?.pass_chance[Xt[$]]??-1,p=Ct(()=>[...ca].sort(($,_)=>d(_)-d($)).map($=>hn($,n,a,l,c.limits,7*e.value)).filter(({dots:$,fan:_})=>$.length+_.length>0),[a,l,u,e.value]);return i`
    <${x} title=${s("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${s("tank.now")}>
        <${Ft} advice=${c} now=${k.value} />
        <${Pt} advice=${c} now=${k.value} />
        <${Wt} advice=${{...c,reasons:kn(c)}} now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${s("outlook.how")}>
        ${Sn.map($=>i`<button key=${$} class="quiet" type="button"
          aria-pressed=${e.value===$} onClick=${h(()=>e.value=$)}>
          ${s("outlook.weeks",{count:$})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${s("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${p.map($=>i`<${Cn} key=${$.parameter} lines=${$} next=${u} as_table=${o.value}
        basis=${K(q($.parameter)?c.levels[$.parameter]:void 0)}
        now=${k.value} />`)}</div>
      ${!o.value&&i`<${vn} doubted=${p.some(({dots:$})=>$.some(_=>_.doubted))} />`}
      ${l&&i`<${bn} ready=${Co(l.settled_h,a.records.now_h,a.start)} />`}
      <${Wo} tank=${t} />
      ${m&&i`<${yn} weeks=${So(m)} expected=${m.feed_g_day_expected} />`}
      <${xn} />
    <//>`}var pa="(min-width: 900px)",fe=he(!1),An=globalThis.matchMedia?.(pa),Tn=()=>fe.value=An?.matches??!1;Tn();An?.addEventListener?.("change",Tn);function Ln({here:t}){if(!fe.value)return null;let e=Z(L);if(e.length<2)return null;let o=wo(e);return i`
    <nav class="tank-list" aria-label=${s("place.tanks")} ref=${$a}>
      ${e.length>Ue?i`<${da} ones=${o} here=${t} />`:i`<${Ut} ones=${o} here=${t} />`}</nav>`}function da({ones:t,here:e}){let o=E(""),n=ho.value==="first",a=t.map(({tank:l})=>l),r=new Map(t.map(l=>[l.tank.id,l])),c=Ye(a,o.value).flatMap(({tank:l})=>r.get(l.id)??[]);return i`
    <div class="field"><label for="list-find">${s("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${Rt(l=>o.value=l)} /></div>
    ${o.value.trim()?i`<${vo} ones=${c} words=${o.value.trim()} here=${e} />`:i`<${ko} />
      ${n&&i`<${Ut} ones=${t.filter(l=>l.wants)} here=${e} />`}
      ${He(a).map(l=>{let u=l.tanks.flatMap(({id:p})=>r.get(p)??[]),m=u.filter(p=>!(n&&p.wants)),d=go.value.includes(l.place)||m.some(({tank:p})=>p.id===e);return i`<section class="group" key=${l.place}>
          <${bo} place=${l.place} ones=${u} open=${d} />
          ${d&&i`<${Ut} ones=${m} here=${e} />`}</section>`})}`}`}function $a(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var fa=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function Dn({id:t}){let e=T("tank",t);return e?Pe(e)?i`<${Mo} tank=${Fe(e)} />`:i`<${_a} key=${t} tank=${e} />`:i`<${ct} up="/" why="labels.stranger" />`}Dn.ahead=function*({id:t}){let e=Z(L).find(o=>o.id===t);e&&(yield*eo([e]),ie(t),yield,bt(wt(e).facts),yield)};function _a({tank:t}){let{id:e}=t,{facts:o,advice:n}=wt(t),a=lo(`tank ${e}`,io(n));return i`
    <div class="desk"><${Ln} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${ha} id=${e} advice=${n} />`}>
      <section class="room-taken" ref=${a} aria-label=${s("tank.now")}>
        <div class="row apart held"><div><${Ft} advice=${n} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${s("incident.title")}</a></div>
        <${Pt} advice=${n} now=${k.value} />
        <${_o} advice=${n} now=${k.value} />
        <${Wt} advice=${n} now=${k.value} />
      </section>
      <${po} tank=${e} label=${s("tasks.today")} />
      <${wa} tank=${t} />
      <${ka} id=${e} facts=${o} advice=${n} />
      <${ga} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${s("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${s("long_run.title")}<br /><span class="soft small">
            ${Vt(bt(o),K(n.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${s("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${s("stock.title")}<br /><span class="soft small">
            ${va(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${s("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${s("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${s("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${s("tasks.title")}<br /><span class="soft small">
            ${ya(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${s("water.title")}<br /><span class="soft small">
            ${ba(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${s("labels.title_one")}</a></li>
          ${b.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${s("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var ha=({id:t,advice:e})=>{let o=ie(t),n=o?"next":e.act==="change"?"change":"test",a=r=>n===r?"main even":"quiet tall even";return i`
    ${b.value.may("reading")&&i`<a class=${a("test")} href=${`/tank/${t}/test`}>${s("test.do")}</a>`}
    ${b.value.may("water_change")&&i`<a class=${a("change")} href=${`/tank/${t}/change`}>${s("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${s("round.next",{tank:o.name})}</a>`}`};function ga({id:t}){let e=fa.filter(([,o])=>b.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${s("write_down.title")}><h2>${s("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,n])=>i`<a key=${o} href=${`/tank/${t}/${n}`}><${O}
        name=${o} size=${28} />${s(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function wa({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<qe;return!Re(t)||!(e||Fo(t.id).length===0)?null:i`
    <section class="section"><h2>${s("first_fish.title")}</h2><${zo} tank=${t} />
      <ul class="lines">${b.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${s("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${s("setup.plans_of")}</a></li></ul>
    </section>`}function ka({id:t,facts:e,advice:o}){let n=[...kt,...ot].flatMap(l=>F(e.readings,l).at(-1)??[]);if(n.length===0)return i`<p class="soft section">${s("tank.no_figures")}</p>`;let a=b.value.may("reading"),r=new Map(Object.entries(o.limits)),c=n.flatMap(l=>{let{also:u}=_t(l);return u&&q(l.parameter)?{name:A(l.parameter),also:u}:[]});return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${s("tank.figures")}</h2></caption>
        <tbody>${n.map(l=>{let{value:u,unit:m,also:d}=_t(l),p=r.get(l.parameter)?.mg_n_l,$=p&&W(l.parameter,p,l.basis??"ion"),_=i`${A(l.parameter)}
            <span class="also">${N(l.at,e.now)}</span>`;return i`<tr key=${l.parameter}>
            <th scope="row">${a?i`<a class="again" href=${`/tank/${t}/test?of=${l.parameter}`}>${_}</a>`:_}</th>
            <td><span class="big">${u}</span> <span class="unit">${m}</span>
              ${d&&!q(l.parameter)&&i`<span class="also">${d}</span>`}
              ${$&&i`<span class="also">${s("tank.limit",{limit:$})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
      ${c.length>0&&i`<details class="more"><summary>${s("tank.other_way")}</summary>
          ${c.map(({name:l,also:u})=>i`<p key=${l} class="soft small">${At(l,u)}</p>`)}</details>`}
    </section>`}function va({stock:t,now:e}){let{animals:o}=Le(t,e);return o.length?o.map(n=>Bo(n.species,n.count)).join("\xA0\xB7 "):s("stock.none_yet")}var ba=({source:t,label:e})=>[t?.name??s("water.none"),e?.name??s("label.none")].join("\xA0\xB7 ");function ya(t){let e=mo(t).filter(o=>!o.over).length;return e?s("tasks.count",{count:e}):s("tasks.none")}var Nn={"\xB0C":.5,"\xB0F":1},On=2;function xa(t,{unit:e,show:o,hold:n}){let a=e==="\xB0F"?Nn["\xB0F"]:Nn["\xB0C"],r=Math.round(o(t)/a),c=Yt({parameter:"temperature",unit:"\xB0C"},"");return Array.from({length:2*On+1},(l,u)=>(r+u-On)*a).map(l=>({text:String(l),celsius:Number(n(l).toPrecision(6))})).filter(({celsius:l})=>Kt(c,l)===null)}function Ma(t){let e=R("reading").filter(({tank:o,parameter:n,unit:a})=>o===t&&n==="temperature"&&a==="\xB0C");return e.reduce((o,n)=>o&&o.at>=n.at?o:n,e.at(0))?.value}function En({tank:t,chosen:e,on_pick:o}){let n=Ma(t);if(n===void 0)return null;let a=B("\xB0C");return i`
    <div class="tiles five" role="group" aria-label=${s("test.near_last")}>
      ${xa(n,a).map(({text:r,celsius:c})=>i`
        <button type="button" key=${r} aria-pressed=${e===c}
          onClick=${h(()=>o(r,c))}>${I(Number(r),a.unit==="\xB0F"?0:1)}</button>`)}
    </div>`}var J=kt.length,tt=[...kt,null,...ot],Ca=2*36e5,In=t=>({at:t?tt.indexOf(t):0,begun:Date.parse(b.value.now()),readings:{},typed:{}});function Sa({id:t,query:e}){let o=T("tank",t),n=e.get("of"),a=tt.includes(n)?n:null,r=G({name:a?`test.${t}.${a}`:`test.${t}`,first:()=>In(a)}),c=V(o,"reading",o?.name??"");if(!o||c)return c;let l=r.draft.value,u=tt[l.at]??null,m=a?`/tank/${t}/test?of=${a}`:`/tank/${t}/test`,d=Object.values(l.readings),p=La(d),$=(f,g={})=>{ro(),r.set({...g,at:f<tt.length?Math.max(f,0):J}),scrollTo(0,0)},_=f=>$(tt.indexOf(f),ot.includes(f)?{from:l.at}:{}),w=()=>r.save(()=>{let f={tank:t,test:D(),...l.when?{at:l.when}:{}};return{writes:d.map(g=>({type:"put",kind:"reading",id:D(),fields:{...g,...f}})),said:s("saved.readings",{count:d.length}),to:`/tank/${t}`}}),y=d.length>0&&p.length===0&&!H(l.when);return i`
    <${x} title=${o.name} up=${`/tank/${t}`}
      act=${i`<${Da} test=${l} alone=${a!==null} to=${$} />
        <button class="main" type="button" disabled=${!y} onClick=${h(()=>{w()})}>
          ${d.length?s("test.save",{count:d.length}):s("test.none")}</button>`}
      aside=${!a&&i`<${Aa} at=${l.at} />`}>
      <${Ta} test=${l} afresh=${()=>r.draft.value=In(a)} />
      <${Q} form=${r} kind="reading" />
      <${Na} strange=${p} here=${u}
        on_go=${f=>$(tt.indexOf(f))} />
      ${u?i`<${Ea} key=${u} tank=${t} here=${m} parameter=${u} form=${r}
            next=${a?J:l.at+1} to=${$} />`:i`<${Ra} readings=${l.readings} on_go=${_} />`}
      ${!a&&l.at<J&&i`<${Oa} on_go=${_} />`}
      <${z} at=${l.when} on_at=${f=>r.set({when:f})} />
    <//>`}var Aa=({at:t})=>i`<span class="soft figures">${t>J?s("test.seldom"):s("test.place",{at:Math.min(t+1,J),of:J})}</span>`;function Ta({test:t,afresh:e}){return k.value-t.begun<=Ca||Object.keys(t.readings).length===0?null:i`
    <div class="row apart caution"><span>${s("test.begun",{when:N(t.begun,k.value)})}</span>
      <button class="quiet" type="button" onClick=${h(e)}>${s("test.afresh")}</button></div>`}var La=t=>t.flatMap(({parameter:e,unit:o,value:n})=>{let a=Yt({parameter:e,unit:o},A(e)),r=Kt(a,n);return r?[{parameter:e,spec:a,error:r}]:[]});function Da({test:t,alone:e,to:o}){let n=tt[t.at];if(e)return!n||!t.readings[n]?null:i`<button class="quiet tall" type="button" onClick=${h(()=>o(J))}>${s("test.next")}</button>`;let a=t.at>J?t.from??J:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>o(a))}>${s("test.back")}</button>`}
    ${n&&i`<button class="quiet tall" type="button" onClick=${h(()=>o(t.at+1))}>
      ${s(t.readings[n]?"test.next":"test.skip")}</button>`}`}var Na=({strange:t,here:e,on_go:o})=>t.map(({parameter:n,spec:a,error:r})=>i`
    <div key=${n} role="alert"><${mt} spec=${a} error=${r} />
      ${n!==e&&i`<button class="quiet" type="button" onClick=${h(()=>o(n))}>
        ${s("test.key_again",{what:Ce(se(n))})}</button>`}</div>`),Oa=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${s("test.seldom")}</span>
    ${ot.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${A(e)}</button>`)}</div>`;function Ea({tank:t,here:e,parameter:o,form:n,next:a,to:r}){let c=n.draft.value,l=m=>({...c.readings,[o]:{...m,at:b.value.now()}}),u=(m,d,p)=>{let{[o]:$,..._}=c.readings;return{keyed_in:{...c.keyed_in,[o]:p},typed:{...c.typed,[o]:m},readings:d?l(d):_}};return i`<${Ia} tank=${t} here=${e} parameter=${o} test=${c}
    on_pick=${m=>r(a,{readings:l(m)})}
    on_type=${(...m)=>n.set(u(...m))}
    on_take=${(...m)=>r(a,u(...m))} />`}function Ia({tank:t,here:e,parameter:o,test:n,on_pick:a,on_type:r,on_take:c}){let l=Uo(o),u=n.readings[o]?.value,m=l.unit??ce[o],{label:d,unit:p,hold:$,text:_}=B(m),{per_drop:w}=l,y=g=>jt(l,Number(($(Number(g))*(w??1)).toPrecision(6))),f=_(n.typed[o]??null,n.keyed_in?.[o]);return i`
    <h2 class="asked">${A(o)} <span class="soft unit">
      ${[l.entry==="steps"?m:d,lt(o,l.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${l.common?l.entry==="steps"?s("kit.common"):ot.includes(o)?s("kit.drops",{unit:ce[o]}):s("kit.keypad"):l.name}</span>
      <a class="quiet" href=${l.id?`/room/test_kit/${l.id}`:`/room/test_kit/new?parameter=${o}&then=${encodeURIComponent(e)}`}>${s(l.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(l.timers??[]).length>0&&i`<${qa} kit=${l} tank=${t} here=${e} />`}
    ${l.entry==="steps"&&(l.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${A(o)}>
          ${(l.steps??[]).map(g=>i`
            <button type="button" key=${g} aria-pressed=${u===g}
              onClick=${h(()=>a(jt(l,g)))}>${M(g)}</button>`)}
        </div>`:i`${o==="temperature"&&m==="\xB0C"&&i`<${En} tank=${t} chosen=${u}
              on_pick=${(g,C)=>c(g,jt(l,C),p)} />`}
          <${Bt} label=${A(o)} unit=${w?s("test.drops"):d} value=${f}
          on_value=${g=>r(g,g===""?null:y(g),p)} />
          ${w&&f&&i`<p class="soft center" role="status">
            ${s("test.drops_are",{figure:`${M(y(f).value)} ${m}`})}</p>`}`}`}var qa=({kit:t,tank:e,here:o})=>i`
  <ol class="lines timed">${(t.timers??[]).map((n,a)=>{let r=`${e}.${t.id}.${a}`,c=xo(r),l=()=>yo({id:r,what:At(se(t.parameter),n.what),seconds:n.seconds,href:o});return i`<li key=${a} class="line"><span>${a+1}. ${n.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${O} name="clock" size=${20} />
        <span class="figures">${c===null?Tt(n.seconds):c>0?Tt(c):s("timer.again",{time:Tt(n.seconds)})}</span></button></li>`})}</ol>`,Ra=({readings:t,on_go:e})=>i`
  <h2 class="asked">${s("test.answers")}</h2>
  <ul class="lines">${tt.map((o,n)=>{if(!o)return null;let a=t[o],r=a&&_t(a);return i`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${A(o)}</span>
      ${r?i`<span class="figures"><b class="hand">${r.value}</b> ${r.unit}</span>`:i`<span
        class="soft">${s(n>J?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function Pa(){let t=Z(L),e=t.find(o=>oo(o)?.advice.test_due)??t[0];return st(()=>{e&&Ht(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),i`<${x} title=${s("test.do")} place="round">
    ${!e&&i`<p class="sentence">${s("round.empty")}</p>`}
  <//>`}export{Yn as Change,ns as Dose,ms as DoseGroup,fs as Feed,Fs as LongRunPage,js as Note,ua as Outlook,Dn as Tank,Sa as Test,Pa as TestNext};
//# sourceMappingURL=tank-X2H7EDO3.js.map
