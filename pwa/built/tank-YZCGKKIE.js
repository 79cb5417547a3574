import{$a as Po,A as Lo,Bb as Ko,Ca as Do,Da as Kt,Ea as ct,Ha as No,Ia as Oo,Ja as Eo,Jb as Bo,Ka as Io,Kb as jo,L as ie,La as kt,Mb as zo,Rb as Go,Sb as z,Tb as G,Ub as Q,Va as qo,Xa as Ro,Ya as ut,Za as B,a as Mo,b as Co,bb as Fo,f as wt,g as et,gb as le,ib as Wo,jb as Bt,kb as Uo,ma as To,p as Ht,pb as Ho,q as Yt,v as So,w as Ao,wb as U,xb as j,zb as Yo}from"./chunk-SENW5TT6.js";import"./chunk-UIOLMFZE.js";import{$a as k,A as Le,Aa as rt,Ba as X,Bb as ao,Bc as xo,Cb as h,Cc as lt,Fa as We,Ga as Ue,Ha as He,Ia as Nt,J as Dt,Ja as Ye,Jb as ro,K as at,Ka as oe,Kb as io,L as Te,Lb as qt,M as De,Ma as Ke,N as Ne,Na as Be,O as Oe,Oa as je,Pa as ze,Qa as Ge,Sb as se,Ta as It,Ua as Xe,Wa as Ze,Wb as ae,Zb as lo,_a as b,aa as Ee,bb as R,cb as L,cc as co,da as Ie,gc as uo,ha as qe,hb as T,ia as Re,kb as gt,lb as to,lc as mo,mb as eo,mc as re,nb as oo,nc as _o,oc as ho,pc as go,qc as wo,rc as ko,sc as vo,tc as Wt,uc as Ut,va as Pe,wb as D,wc as bo,xb as no,xc as yo,yc as x,za as Fe,zb as so}from"./chunk-Y6W3POPS.js";import{Ab as v,Bb as Et,D as H,Da as At,Db as ht,Eb as W,Fb as O,H as Ct,Hb as po,I as he,Ia as q,Ja as st,Jb as $o,Ka as Y,Kb as Rt,La as Ce,Lb as fo,M as ge,Ma as ee,Mb as Pt,Na as Lt,Nb as Ft,O as we,Q as ke,T as ve,Ta as Se,U as tt,Ua as Ae,V as P,Va as Tt,W as te,X as S,_a as dt,ca as be,d as nt,f as xt,g as Mt,i as _e,ja as ye,l as E,la as s,lb as Qe,m as i,ma as I,mb as Ve,na as M,oa as St,pb as $t,qb as K,ra as N,sb as A,ta as xe,tb as ne,ub as it,vb as ft,wb as _t,xb as F,yb as Ot,za as Me,zb as Je}from"./chunk-JDRMJC5G.js";function Qo(t,{levels:e,limits:o},n){let{tank:a,source:r,label:c,readings:l}=t,u=l.findLast(({parameter:d})=>d==="kh"),m=It(t)?.celsius,p={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(u&&dt(u))??a.kh_dkh,temperature_c:m,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:r?.ph,source_kh_dkh:r?.kh_dkh,source_temperature_c:r?.temperature_c??m,source_tan_mg_n_l:Lt(r,"total_ammonia",c),fraction:n};if(Object.values(p).includes(void 0))return null;try{let d=p;return{input:d,answer:S("water_after_change",d)}}catch(d){if(d instanceof H)return null;throw d}}var In=14,qn=["salt","other"];function Vo({tank:t,doses:e,now:o},n){let a=new Map;for(let{label:r,at:c}of e){if(r?.basis!=="whole_tank"||!qn.includes(r.use)||o-Date.parse(c)>In*864e5)continue;let l=Rn(r,t.water_l,n);l!==null&&a.set(r.id,{label:r,at:c,amount:l,unit:r.unit})}return[...a.values()]}function Rn({amount:t,per_l:e,unit:o},n,a){let r={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let c=S("bath_dose",{...r,water_l:n,change_fraction:a,every_days:1,days:1}),l=(o==="g"?c.again_g:c.again_ml)??null;return o==="drops"&&l!==null?Math.round(l):l}catch(c){if(!(c instanceof H))throw c;return null}}var Pn={cold:12,hot:50};function Jo({facts:t,litres:e}){let o=Ve("taps",()=>Pn),n=It(t),a=(r,c)=>i`
    <${Bo} label=${s(`warmth.${r}`)} unit="°C" min=${1} max=${c} value=${o.value[r]}
      on_value=${l=>o.value={...o.value,[r]:l}} />`;return i`
    <details class="more section"><summary>${s("warmth.title")}</summary>
      ${n?i`
        <p class="soft">
          ${n.at?s("warmth.read",{warmth:Et(n.celsius),when:N(n.at,t.now)}):s("warmth.usual",{warmth:Et(n.celsius)})}</p>
        ${a("cold",40)}${a("hot",80)}
        <${Fn} mix=${Xe(e,n.celsius,o.value)} />
        <p class="caution small">${tt("water_blend","hot_water")}</p>`:i`<p class="soft">${s("warmth.unknown")}</p>`}
    </details>`}var Fn=({mix:t})=>i`
  <p class="sentence" aria-live="polite">
    ${s("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:Et(t.reached_c)})}</p>
  ${!t.met&&i`<p class="wrong">${s("warmth.missed")}</p>`}
  <${B} name="water_blend" input=${t.input} answer=${t.answer} />`;var Wn=.25,Un=()=>({typed:null});function Hn({id:t}){let e=L("tank",t),o=z({name:`change.${t}`,first:Un}),n=xt(null),a=Q(e,"water_change",s("change.title"));if(!e||a)return a;let{facts:r,advice:c}=gt(e),l=Yn(n,r,c),u=l.act!=="retest"&&l.litres||at(Wn*e.water_l,e.water_l,r.water_unit),m=K("L"),{typed:p,unit:d="L",from_tank:$="",at:_,undosed:w=!1}=o.draft.value,y=p===null?u:Vn(m.hold(Number(p),d),e.water_l),f=Oe(e,y),g=f||$?null:De(r,y),C=w?null:g;$&&!b.value.is_ready($)&&b.value.ready($);let Xt=$?{...r,source:Fe(T.of("reading",$),{from_tank:$,at:_??b.value.now()})}:r,pt=y/e.water_l,yt={litres:v(y||0),dose:C?.amount!==void 0?W(C):""},Zt=()=>o.save(()=>{let J=$?{from_tank:$}:r.source?{source_water:r.source.id}:{},fe=Kn({tank:t,at:_,litres:y,fraction:pt,...J},C);return{writes:fe,said:s(fe.length>1?"saved.change_dose":"saved.change",yt),to:`/tank/${t}`}});return i`
    <${x} title=${s("change.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${i`<button class="main" type="button" disabled=${!!f||U(_)}
        onClick=${h(()=>{Zt()})}>${s(C?.amount!==void 0?"change.log_dose":"change.log",yt)}
        </button>`}>
      <p class="soft">${l.litres||l.act==="retest"||l.act==="hold"?$o(l,k.value):s("change.usual",{litres:v(u)})}</p>
      <${G} form=${o} kind="water_change" />
      <${Bn} form=${o} tank=${e} litres=${y} suggested=${u} wrong=${f} />
      ${g&&!w&&i`<${zn} id=${t} dose=${g} />`}
      ${!f&&i`<${jn} facts=${r} fraction=${pt} />`}
      ${!f&&i`<${Qn} facts=${Xt} advice=${l} fraction=${pt} />`}
      ${!f&&i`<${Jo} facts=${r} litres=${y} />`}
      <${Gn} id=${t} from_tank=${$}
        on_pick=${J=>o.set({from_tank:J})} />
      ${g?.amount!==void 0&&i`<p class="section"><button class="quiet" type="button" aria-pressed=${w}
        onClick=${h(()=>o.set({undosed:!w}))}>${s("change.undosed")}</button></p>`}
      <${j} at=${_} on_at=${J=>o.set({at:J})} />
      ${Jn(g).map(J=>i`<p class="caution small" key=${J}>${J}</p>`)}
    <//>`}function Yn(t,e,o){let n=[e.readings,e.changes].map(a=>a.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==n&&(t.current={last:n,advice:o}),t.current?.last===n?t.current.advice:o}function Kn(t,e){let o=D(),n=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:a,amount:r,unit:c}=e,{tank:l,at:u,litres:m}=t,p={at:u,tank:l,label:a.id,what:a.name,amount:r,unit:c,for_litres:m,water_change:o};n.push({type:"put",kind:"dose",id:D(),fields:p})}return n}function Bn({form:t,tank:e,litres:o,suggested:n,wrong:a}){let r=E(!1),c=K("L"),{typed:l,unit:u="L"}=t.draft.value,m=Dt(e.water_l,c.unit),p=v(m),d=_=>t.set({typed:_,unit:c.unit}),$=_=>d(String(c.show(Math.min(Math.max(o+_*m,m),e.water_l))));return i`
    <div class="stepper" role="group" aria-label=${s("change.litres")}>
      <button class="quiet" type="button" aria-label=${s("change.less",{step:p})}
        onClick=${()=>$(-1)}><${O} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${r.value}
        aria-label=${s("change.type",{litres:v(o||0)})}
        onClick=${h(()=>r.value=!r.value)}>
        <span>${M(c.show(o||0),2)} <small>${c.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${s("change.more",{step:p})}
        onClick=${()=>$(1)}><${O} name="plus" size=${28} /></button>
    </div>
    ${a?i`<div role="alert"><${ut} spec=${Ne(e,s("change.litres"))} error=${a} /></div>`:i`<p class="soft center">${s("change.share",{percent:I(100*o/e.water_l,0)})}</p>`}
    ${r.value&&i`<${Kt} label=${s("change.litres")} unit=${c.label}
      value=${c.text(l,u)} on_value=${d} />`}
    ${l!==null&&o!==n&&i`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>d(null))}>${s("change.suggested",{litres:v(n)})}</button></p>`}`}function jn({facts:t,fraction:e}){let o=Vo(t,e);return o.length===0?null:i`
    ${o.map(n=>i`<p key=${n.label.id}>${s("dose.again",{name:n.label.name,when:N(n.at,t.now),dose:W(n)})}</p>`)}
    ${o.some(({label:n})=>n.use==="other")&&i`<p class="caution small">
      ${tt("bath_dose","label_over_all")}</p>`}`}var zn=({id:t,dose:e})=>e.needed?e.missing==="source"?i`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_source")}</a></p>`:e.label?i`<p class="dose"><span class="big">${W(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${s(`dose.basis_${e.label.basis}`)}</span></p>`:i`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${s("dose.set_label")}</a></p>`:i`<p class="dose">${s("dose.none")}</p>`,Gn=({id:t,from_tank:e,on_pick:o})=>R("tank").length>1&&i`
  <details class="more section" open=${e!==""}><summary>${s("change.other_tank")}</summary>
    <${Uo} tank=${t} value=${e} label=${s("change.out_of")} on_pick=${n=>o(n===e?"":n)} />
    <p class="soft small">${s("change.other_tank_why")}</p>
  </details>`,Qn=({facts:t,advice:e,fraction:o})=>{let n=Object.values(e.levels).flatMap(({parameter:r,now_mg_n_l:c,reading:l})=>c?[{parameter:r,now_mg_n_l:c,basis:Y({reading:l})}]:[]),a=Qo(t,e,o);return(n.length>0||a)&&i`
    <table class="measured"><caption><h2>${s("change.after")}</h2></caption><tbody>
      ${n.map(({parameter:r,now_mg_n_l:c,basis:l})=>{let u=Lt(t.source,r,t.label),{after_mg_l:m}=S("dilution",{before_mg_l:c,source_mg_l:u,fractions:[o]});return i`<tr key=${r}><th scope="row">${A(r)}</th>
          <td class="figures">${_t(r,c,l)} → <span class="big">
            ${_t(r,m,l)}</span> <span class="unit">
            ${`mg/L ${it(r,l)}`}</span></td></tr>`})}${a&&i`<tr><th scope="row">${A("ph")}</th><td class="figures">${I(a.input.ph,1)} → <span
          class="big">${I(a.answer.ph,1)}</span>${I(a.answer.ph_settled,1)!==I(a.answer.ph,1)&&i`<span class="also">${s("change.ph_settled",{ph:I(a.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${a?.answer.notes.map(r=>i`<p class="caution small" key=${r}>${r}</p>`)}`},Vn=(t,e)=>Math.abs(t-e)<1e-6?e:t,Jn=t=>[...P("dilution"),...t?.amount!==void 0?P("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Xn=.25,Zn=1,ts={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function Xo(t,e){let o=n=>e.findLastIndex(a=>a.label?.id===n.id);return[...t].sort((n,a)=>o(a)-o(n)||n.name.localeCompare(a.name))}var Zo=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??at(Xn*t.water_l,t.water_l);function jt(t,e){let o=S("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),n=te(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(n)):n,unit:t.unit}}function tn(t,e,o){let n={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},a=S("starter_dose",n),r=o===void 0;return{input:n,answer:a,amount:r?a.ammonium_chloride_g:te(a,"household_ammonia_ml"),unit:r?"g":"ml",tan_mg_n_l:a.tan_mg_n_l}}function ce(t,e=[]){let{water_l:o,feed_g_day:n=0,protein_fraction:a=0}=t,r=Ao(t,e);return n<=0&&r>0?S("starter_dose",So(o,r).input).tan_mg_n_l:n<=0||a<=0?Zn:S("starter_dose",{volume_l:o,feed_g_day:n,protein_fraction:a}).tan_mg_n_l}var en=t=>t.reduce((e,{change:o,count:n})=>e+(ts[o]??0)*(n??0),0)>0;function on(t,e,{system:o,marks:n}){let a=Ct().salt_dose,{volume_l:r,...c}=e?.typed??{};if(Object.keys(c).length===0)return null;let l=Lo(a,{draft:{...e,typed:c},tank:{volume_l:t.water_l},system:o,marks:n});if(!("answer"in l))return null;let u=l.payload,m=l.answer;return{what:ve(we("salt_dose","salt"),u.salt),what_code:u.salt,amount:m.grams,unit:"g",input:u,answer:m}}var zt="salt",Gt="ammonia",es=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function os({id:t}){let e=L("tank",t),o=z({name:`dose.${t}`,first:es}),n=Q(e,"dose",s("dosing.title"));if(!e||n)return n;let{changes:a,doses:r}=rt(T,e,k.value),c=Xo(R("label"),r),l=on(e,Qe("bench.salt_dose",()=>({})).value,{system:$t.value,marks:be(ye())}),u=en(Ee(R("stock_change"),t)),{way:m,at:p}=o.draft.value,d=c.find(f=>f.id===m),$=ss(o.draft.value,{tank:e,label:d,salt:l,animals:u,changes:a}),{fields:_}=$,w=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:D(),fields:{tank:t,at:p,..._}}],said:s("dosing.saved",{dose:W(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),y=_&&i`<button class="main" type="button" disabled=${U(p)} onClick=${h(()=>{w()})}>
      ${s("dosing.log",{dose:W(_)})}</button>`;return i`
    <${x} title=${s("dosing.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${y}>
      <${rs} dose=${r.at(-1)} />
      <${G} form=${o} kind="dose" />
      <${ns} tank=${t} form=${o} labels=${c} salt=${l} />
      ${d&&i`<${is} form=${o} tank=${e} label=${d} dose=${$}
        litres=${nn(o.draft.value,e,d,a)} />`}
      ${m===zt&&l&&i`<${ue} dose=${$}
        said=${s("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${m===Gt&&i`<${ls} tank=${e} form=${o} dose=${$} animals=${u} />`}
      ${_&&i`<${j} at=${p} on_at=${f=>o.set({at:f})} />`}
      ${cs(m,d).map(f=>i`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function ns({tank:t,form:e,labels:o,salt:n}){let a=(c,l,u)=>i`
    <button type="button" key=${c} aria-pressed=${e.draft.value.way===c}
      onClick=${h(()=>e.set({way:c,litres:null}))}><b>${l}</b>
      <span class="soft small">${u}</span></button>`,r=({amount:c,unit:l,per_l:u})=>s("label.line",{amount:M(c),unit:s(`unit.${l}`),litres:v(u)});return i`
    <div class="tiles two" role="group" aria-label=${s("dosing.what")}>
      ${o.map(c=>a(c.id,c.name,r(c)))}
      ${n&&a(zt,n.what,s("dosing.from_bench"))}
      ${a(Gt,s("dosing.ammonia"),s("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${b.value.may("label")&&i`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${O}
        name="plus" size=${20} />${s("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${s("dosing.work_out_salt")}</a>
    </div>`}function ss(t,{tank:e,label:o,salt:n,animals:a,changes:r}){try{if(o){let c=nn(t,e,o,r);return{fields:{...jt(o,c),label:o.id,what:o.name,for_litres:c}}}if(t.way===zt&&n){let{what:c,what_code:l,amount:u,unit:m,input:p,answer:d}=n;return{fields:{what:c,what_code:l,amount:u,unit:m,for_litres:e.water_l},name:"salt_dose",input:p,answer:d}}return t.way===Gt&&!a?as(t,e):{}}catch(c){if(!(c instanceof H))throw c;return{errors:c.errors}}}function as(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:n,unit:a,tan_mg_n_l:r,input:c,answer:l}=tn(e,sn(t,e),o),u=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:lo(u),what_code:u,amount:n,unit:a,tan_mg_n_l:r,for_litres:e.water_l},name:"starter_dose",input:c,answer:l}}var nn=({litres:t},e,o,n)=>t===null?Zo(e,o,n):Tt(Number(t.text),t.unit,"L"),sn=({tan:t},e)=>t===null?ce(e,R("own_species")):Number(t),rs=({dose:t})=>i`<p class="soft">
    ${t?s("dosing.last",{dose:W(t),what:co(t),when:N(t.at,k.value)}):s("dosing.never")}</p>`;function is({form:t,tank:e,label:o,litres:n,dose:a}){let r=Se({name:"",unit:"L"},$t.value),c=t.draft.value.litres,l=oe(Tt(Dt(e.water_l),"L",r));return i`
    <section class="section"><h2>${s("dosing.for_water")}</h2>
      <${ct} label=${s("dosing.for_water")} unit=${Ae(r)} value=${Tt(n,"L",r)}
        typed=${c&&c.unit===r?c.text:null} step=${l} least=${l} most=${1e5}
        on_type=${u=>t.set({litres:{text:u,unit:r}})} />
      <${ue} dose=${a} said=${s(`dose.basis_${o.basis}`)} />
    </section>`}function ls({tank:t,form:e,dose:o,animals:n}){if(n)return i`<p class="wrong section" role="status"><${O} name="needs" /><span>${s("dosing.animals_here")}</span>
      </p>`;let{tan:a,household:r,percent:c}=e.draft.value,l=sn(e.draft.value,t),u=m=>h(()=>e.set({household:m}));return i`
    <section class="section"><h2>${s("dosing.wanted")}</h2>
      <${ct} label=${s("dosing.wanted")} unit="mg N/L" value=${l} typed=${a}
        step=${oe(Math.max(ce(t,R("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${m=>e.set({tan:m})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${s("dosing.with")}>
      <button type="button" aria-pressed=${!r} onClick=${u(!1)}>${s("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${r} onClick=${u(!0)}>${s("dosing.household_ammonia")}
        </button>
    </div>
    ${r&&i`<section class="section"><h2>${s("dosing.strength")}</h2>
      <${ct} label=${s("dosing.strength")} unit="%" value=${Number(c)} typed=${c} step=${.5}
        least=${.5} most=${35} on_type=${m=>e.set({percent:m})} />
      ${!(Number(c)>0)&&i`<p class="soft center">${s("dosing.no_strength")}</p>`}</section>`}
    <${ue} dose=${o} said=${s("dosing.gives",{tan:Ot(l||0),litres:v(t.water_l)})}
      />`}var ue=({dose:t,said:e})=>i`
  ${(t.errors??[]).map(o=>i`<${ut} key=${o.field} error=${o}
    spec=${{label:s("dosing.this")}} />`)}
  ${t.fields&&i`
    <p class="dose"><span class="big">${W(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>i`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&i`<${B} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function cs(t,e){return t===zt?P("salt_dose"):t===Gt?P("starter_dose"):[s("dosing.label_first"),...e?.use==="dechlorinator"?P("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function us({place:t}){let e=E(""),o=E([]);if(!b.value.may("dose"))return i`<${Go} title=${s("group_dose.title")} up="/" />`;let n=X(T).filter(m=>(m.place?.trim()??"")===t),a=R("label").filter(({basis:m})=>m==="whole_tank"),r=a.find(({id:m})=>m===e.value)??(a.length===1?a[0]:null),c=r?n.flatMap(m=>ms(m,r)):[],l=c.filter(({tank:m})=>!o.value.includes(m.id)),u=m=>o.value=o.value.includes(m)?o.value.filter(p=>p!==m):[...o.value,m];return i`
    <${x} title=${s("group_dose.title")} up="/"
      aside=${i`<span class="soft">${t||s("many.no_place")}</span>`}
      act=${r&&i`<button class="main" type="button" disabled=${l.length===0}
        onClick=${h(()=>{ps(r,l)})}>${s("group_dose.log",{count:l.length})}</button>`}>
      ${a.length===0?i`<p class="sentence">${s("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${s("water.new_label")}</a></p>`:i`<section class="section"><h2>${s("group_dose.which")}</h2><div class="tiles two short">${a.map(m=>i`<button key=${m.id} type="button" aria-pressed=${m.id===r?.id}
              onClick=${h(()=>e.value=m.id)}>${m.name}</button>`)}</div></section>`}
      ${r&&i`<section class="section"><h2>${s("group_dose.tanks")}</h2><div class="tiles two short">${c.map(({tank:m,amount:p,unit:d})=>i`<button key=${m.id} type="button"
          aria-pressed=${!o.value.includes(m.id)}
          onClick=${h(()=>u(m.id))}><b>${m.name}</b>
          <span class="soft small">${W({amount:p,unit:d})} · ${v(m.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${s("dosing.label_first")}</p>`}
    <//>`}function ms(t,e){try{return[{tank:t,...jt(e,t.water_l)}]}catch(o){if(o instanceof H)return[];throw o}}async function ps(t,e){let o=b.value.now(),n=e.map(({tank:{id:a,water_l:r},amount:c,unit:l})=>({type:"put",kind:"dose",id:D(),fields:{tank:a,at:o,label:t.id,what:t.name,amount:c,unit:l,for_litres:r}}));await no(n,s("group_dose.saved",{count:n.length,label:t.name}))&&Ut("/",{replace:!0})}var rn=["food","protein_fraction"],ds=()=>({typed:null,food:null,own:{},at:void 0});function $s({id:t}){let e=L("tank",t),o=z({name:`feed.${t}`,first:ds}),n=Q(e,"feeding",s("feed.title"));if(!e||n)return n;let a=rt(T,e,k.value),{feedings:r}=a,c=Be(a),l=Ke(e,r,c?.answer.usual_g_day),u=ze(R("feeding")),{typed:m,at:p}=o.draft.value,d=m===null?l.feed_g:Number(m),$=gs(o.draft.value,u,l),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:D(),fields:{tank:t,at:p,feed_g:f,...f>0?$:{}}}],said:f>0?s("feed.saved",{amount:ht(f),tank:e.name}):s("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),w=i`
    <button class="quiet tall" type="button" disabled=${U(p)} onClick=${h(()=>{_(0)})}>
      ${s(p?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(d>0)||U(p)}
      onClick=${h(()=>{_(d)})}>${s("feed.log",{amount:ht(d||0)})}</button>`,y=m===null||d===l.feed_g?l.from:"keeper";return i`
    <${x} title=${s("feed.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${ws} feedings=${r} />
      <${ct} label=${s("feed.grams")} unit="g" value=${d} typed=${m} step=${je(l.feed_g)}
        least=${.01} most=${ke("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${s(`feed.from_${y}`,{usual:ht(l.feed_g)})}</p>
      ${c&&i`<${fs} answer=${c.answer} feed_g=${d} />`}
      <${G} form=${o} kind="feeding" beside=${o.draft.value.food===""?rn:[]} />
      <${hs} form=${o} known=${u} given=${$} />
      <${j} at=${p} on_at=${f=>o.set({at:f})} />
      <${ks} tank=${e} facts=${a} feed_g=${d} protein_fraction=${$.protein_fraction} />
      <${_s} ration=${c} />
      ${P("nitrogen_load").map(f=>i`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var fs=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>i`
  <p class=${o>e?"wrong":"soft small center"}>
    ${s("feed.ration",{usual:an(t),most:an(e)})}</p>`,_s=({ration:t})=>t&&i`<section class="section"><h2>${s("feed.ration_why")}</h2>
    <${B} name="feed_ration" ...${t} /></section>`,an=t=>`${M(t,t<1?2:1)}\xA0g`,ln=()=>rn.map(t=>ge(he().feeding.fields,t));function hs({form:t,known:e,given:o}){let{food:n,own:a}=t.draft.value;return i`
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
      ${n===""&&i`<div class="section"><${Ro} specs=${ln()} raw=${a} errors=${t.errors.value} tried=${!0}
        on_raw=${r=>t.set({own:r})} /></div>`}
    </section>`}function gs({food:t,own:e},o,n){if(t==="")return qo(ln(),e);let a=o.find(u=>u.food===t),{feed_g:r,from:c,...l}=n;return t!==null&&a?{...a}:l}function ws({feedings:t}){let e=t.at(-1);if(!e)return i`<p class="soft">${s("feed.never")}</p>`;let o={when:N(e.at,k.value),amount:ht(e.feed_g),food:e.food??""};return i`<p class="soft">${s(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function ks({tank:t,facts:e,feed_g:o,protein_fraction:n}){if(o===0)return null;let a=Y({reading:e.readings.findLast(({parameter:r})=>r==="total_ammonia")??null});try{let{input:r,answer:c,assumed:l}=Ge(t,o,n),u={mg:M(c.tan_mg_n_day,1),rise:`${F("total_ammonia",c.tan_mg_n_l_day,a)} ${it("total_ammonia",a)}`,percent:I(100*r.protein_fraction,0)};return i`
      <section class="section"><h2>${s("feed.becomes")}</h2>
        <p>${s("feed.nitrogen",u)}${l&&i` ${s("feed.assumed",u)}`}</p>
        <${B} name="nitrogen_load" input=${r} answer=${c} />
      </section>`}catch(r){if(!(r instanceof H))throw r;return null}}var cn=28,mn=14,vs=90,bs=3,ys=21,xs=.3,Ms=60,Cs=[7,3,1],Ss=1,un=new WeakMap;function vt(t){let e=un.get(t)??As(t);return un.set(t,e),e}function As(t){let e=Ls(t),o=Ts(t);return{routine:e,young:pn(t)<mn,nitrate:o&&Es(t,e,o),kh:o&&Is(t,e,o.rise.usual)}}function pn({tank:t,now:e,changes:o,readings:n}){let a=[t.started_at,o[0]?.at,n[0]?.at].flatMap(r=>r?[Date.parse(r)]:[]);return a.length?(e-Math.min(...a))/864e5:0}function Ls(t){let e=Math.min(cn,pn(t)),o=t.changes.filter(({at:r})=>me(r,t.now,cn));if(o.length===0||e<mn)return null;let a=1-o.reduce((r,{fraction:c})=>r*(1-Math.min(c,.95)),1)**(1/o.length);return a<.01?null:{count:o.length,litres:a*t.tank.water_l,fraction:a,every_days:e/o.length}}function Ts(t){let e=Ds(t);if(e)return{from:"readings",rise:e};let{feed_g_day:o,fish_g:n,protein_fraction:a,volume_l:r}=Ze(t).records.tank,{feed_of_fish:c,protein_fraction:l}=Nt(),u=o??(n===void 0?void 0:n*c);if(!u)return null;let p=S("nitrogen_load",{feed_g_day:u,protein_fraction:a??l,volume_l:r}).tan_mg_n_l_day;return{from:"food",rise:{low:0,usual:p,high:p}}}function Ds(t){let e=t.readings.filter(u=>u.parameter==="nitrate"&&me(u.at,t.now,vs)&&ee(u)&&!Os(u)),[o,n]=[e[0],e.at(-1)];if(!n||e.length<bs||Date.parse(n.at)-Date.parse(o.at)<ys*864e5)return null;let a=0,r=0;for(let u=1;u<e.length;u++){let m=Ns(t,e[u-1],e[u]);a+=st(e[u])-m.left,r+=m.days}if(r<=0)return null;let c=xs*Math.hypot(st(o),st(n))/r,l=a/r;return{low:Math.max(0,l-c),usual:Math.max(0,l),high:Math.max(0,l+c)}}function Ns({changes:t},e,o){let n=st(e),a=0,r=Date.parse(e.at);for(let{at:c,fraction:l,source:u}of t)c<=e.at||c>o.at||(a=(a+(Date.parse(c)-r)/864e5)*(1-l),n=n*(1-l)+l*(u?.nitrate_mg_n_l??0),r=Date.parse(c));return{left:n,days:a+(Date.parse(o.at)-r)/864e5}}var Os=({value:t,steps:e})=>!!e?.length&&t>=Math.max(...e);function Es(t,e,{from:o,rise:n}){let a=Ye(t).nitrate.mg_n_l,r=t.source?.nitrate_mg_n_l??0,c=t.readings.findLast(p=>p.parameter==="nitrate"&&ee(p)),l=p=>{if(!e)return null;let d={add_mg_l_day:p,change_fraction:e.fraction,every_days:Math.min(e.every_days,365),source_mg_l:r,ceiling_mg_l:a};return{input:d,answer:S("steady_routine",d)}},u=p=>l(p)?.answer.before_change_mg_l??0,m=l(n.usual);return{from:o,rise_mg_n_l_day:n,limit_mg_n_l:a,settles_mg_n_l:m&&{low:u(n.low),usual:u(n.usual),high:u(n.high)},worked:m,days_to_limit:e||n.usual<=0?null:Math.max(0,a-(c?st(c):0))/n.usual,least:dn(t,e,p=>n.usual<=0?void 0:S("steady_routine",{add_mg_l_day:n.usual,change_fraction:.5,every_days:p,source_mg_l:r,ceiling_mg_l:a}).fraction_needed),source_over:r>=a}}function Is(t,e,o){let n=t.readings.findLast(p=>p.parameter==="kh"&&me(p.at,t.now,Ms)&&dt(p)!==void 0),a=n?dt(n):t.tank.kh_dkh;if(a===void 0||a>60)return null;let r=t.source?.kh_dkh,c={kh_dkh:a,nitrogen_mg_n_l_day:Math.min(o,100),floor_kh_dkh:Ss},l=p=>S("alkalinity_use",{...c,source_kh_dkh:r,change_fraction:.5,every_days:p}).fraction_needed,u=e&&r!==void 0?{...c,source_kh_dkh:r,change_fraction:e.fraction,every_days:Math.min(Math.max(e.every_days,.5),365)}:c,m=S("alkalinity_use",u);return{now_dkh:a,falls_dkh_week:m.kh_dkh_per_day*7,steady_dkh:m.steady_kh_dkh??null,days_to_floor:m.days_to_floor??null,least:r===void 0||o<=0?null:dn(t,e,l),source_known:r!==void 0,worked:{input:u,answer:m}}}function dn(t,e,o){let{water_l:n}=t.tank,a=Te(t,{unhurried:!0}),r=e?[Math.min(30,Math.max(1,Math.round(e.every_days)))]:[];for(let c of[...r,...Cs]){let l=o(c);if(!(typeof l!="number"||l*n>a))return{litres:at(l*n,n,t.water_unit,a),every_days:c}}return null}var me=(t,e,o)=>Date.parse(t)<=e&&e-Date.parse(t)<=o*864e5;var pe=365;function Qt({nitrate:t,young:e},o){if(e)return s("long_run.young");if(!t)return s("long_run.no_load");let n=F("nitrate",t.limit_mg_n_l,o);if(t.source_over)return s("long_run.source_over",{limit:n});if(t.rise_mg_n_l_day.usual<=0)return s("long_run.no_rise");if(!t.settles_mg_n_l)return qs(t,n);let{settles_mg_n_l:a}=t,r=t.from==="food"?F("nitrate",a.high,o):Rs(a,o),c=t.from==="food"?"at_most":"settles",l=a.high<=t.limit_mg_n_l?"under":a.low>t.limit_mg_n_l?"over":"perhaps";return s(`long_run.${c}_${t.from==="food"&&l!=="under"?"perhaps":l}`,{level:r,limit:n})}function qs({days_to_limit:t},e){let o=Math.round(t??1/0);return o>pe?s("long_run.no_changes_far",{limit:e}):s(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var Rs=({low:t,high:e},o)=>s("outlook.between",{low:_t("nitrate",t,o),high:F("nitrate",e,o)});function Ps({id:t}){let e=L("tank",t);if(!e)return i`<${lt} up="/" />`;let o=rt(T,e,k.value),n=vt(o),a=o.readings.findLast(({parameter:c})=>c==="nitrate"),r=Y(a&&{reading:a});return i`
    <${x} title=${s("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${i`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${s("long_run.title")}>
        <${Fs} id=${t} found=${n} basis=${r} />
      </section>
      <section class="section"><h2>${s("long_run.kh")}</h2><${Us} id=${t} found=${n} /></section>
    <//>`}function Fs({id:t,found:e,basis:o}){let{nitrate:n,routine:a,young:r}=e,c=n?.settles_mg_n_l&&n.settles_mg_n_l.high>n.limit_mg_n_l;return i`
    <p class="sentence">${Qt(e,o)}</p>
    <p>${Ws(e)}</p>
    ${n&&!r&&i`
      <${$n} id=${t} least=${n.least} routine=${a} />
      <p class="soft small">${n.from==="food"?s("long_run.from_food"):s("long_run.from_readings",{rise:F("nitrate",n.rise_mg_n_l_day.usual*7,o)})}</p>
      ${c&&i`<p class="caution small">${tt("steady_routine","slowly")}</p>`}
      ${n.worked&&i`<${B} name="steady_routine" ...${n.worked} />`}`}`}var Ws=({routine:t,young:e})=>t?s("long_run.routine",{count:t.count,litres:v(t.litres),days:M(t.every_days,t.every_days<10?1:0)}):e?"":s("long_run.no_routine");function $n({id:t,least:e,routine:o}){if(!e)return null;let{litres:n,every_days:a}=e,r=o&&o.litres/o.every_days>=n/a;return i`
    <p>${s(r?"long_run.least_held":"long_run.least",{litres:v(n),count:a})}</p>
    ${b.value.may("task")&&i`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${a}&title=${encodeURIComponent(s("long_run.task",{litres:v(n)}))}`}>${s("long_run.make_task")}</a></p>`}`}function Us({id:t,found:{kh:e,nitrate:o,routine:n}}){if(!e)return i`<p>${s(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let a=M(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return i`
    <p class="sentence">${Hs(e)}</p>
    <p>${s("long_run.kh_falls",{fall:a,now:M(e.now_dkh,1)})}</p>
    ${!e.source_known&&i`<p class="soft small">${s("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&i`<${$n} id=${t} least=${e.least} routine=${n} />
      <p class="caution small">${tt("alkalinity_use","kh_floor")}</p>`}
    <${B} name="alkalinity_use" ...${e.worked} />`}function Hs({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=pe?s("long_run.kh_gone",{count:Math.round(t)}):e===null?s("long_run.kh_far"):s("long_run.kh_settles",{level:M(e,1)})}var Ys=["at_surface","hiding"],de=5e3,Vt=Do(),Ks=()=>({picked:[],text:"",at:void 0});function Bs({id:t}){let e=L("tank",t),o=`note.${t}`,n=z({name:o,first:Ks}),{photos:a,busy:r,problem:c,add:l,drop:u}=js(o),m=Q(e,"note",s("note.title"));if(!e||m)return m;let{picked:p,text:d,at:$}=n.draft.value,_=se.filter(C=>p.includes(C)),w=[..._.map(ae),d.trim()].filter(Boolean).join(`
`),y=()=>n.save(()=>{let C={tank:t,at:$??b.value.now(),entry:D()},Xt={...C,text:w.slice(0,de),..._.length?{quick:_}:{}};return{writes:w?[{type:"put",kind:"note",id:D(),fields:Xt}]:[],pictures:a.map(({picture:pt,width:yt,height:Zt})=>({picture:pt,id:D(),fields:{...C,width:yt,height:Zt}})),said:s("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>Vt.forget(o).catch(()=>{})}}),f=(w||a.length>0)&&!r&&w.length<=de&&!U($),g=i`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{y()})}>
    ${a.length?s("note.save_photos",{count:a.length}):s("note.save")}</button>`;return i`
    <${x} title=${s("note.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${zs} id=${t} picked=${p} on_pick=${C=>n.set({picked:C})} />
      <div class="field section"><label for="note-text">${s("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${de} value=${d}
          onInput=${qt(C=>n.set({text:C}))}></textarea></div>
      <section class="section"><h2>${s("note.photos")}</h2>
        <${Gs} photos=${a} drop=${u} />
        <div class="row">
          <label class="quiet tall file"><${O} name="camera" />${s("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${l} /></label>
          <label class="quiet tall file">${s("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${l} /></label>
        </div>
        ${r&&i`<p class="soft" role="status">${s("note.shrinking")}</p>`}
        <${Ho} text=${c} />
        <${G} form=${n} kind="note" />
        <p class="soft small">${s("note.photo_size")}</p>
      </section>
      <${j} at=${$} on_at=${C=>n.set({at:C})} />
    <//>`}function js(t){let e=E([]),o=E(0),n=E(""),a=async()=>{e.value=await Vt.list(t)};nt(()=>{a().catch(()=>n.value=s("note.photos_not_kept"))},[t]);let r=async u=>{o.value+=1;try{await Vt.add(t,await zo(u)),await a()}catch(m){let p=m instanceof RangeError?"note.no_picture":"note.photos_not_kept";n.value=s(p,{file:u.name})}finally{o.value-=1}},c=async({currentTarget:u})=>{let m=[...u.files??[]];u.value="",n.value="";for(let p of m)await r(p)},l=async u=>{let m=await Vt.remove(u);await a(),so(s("note.photo_dropped"),async()=>{await m(),await a()})};return{photos:e.value,busy:o.value>0,problem:n.value,add:c,drop:l}}function zs({id:t,picked:e,on_pick:o}){let n=a=>o(e.includes(a)?e.filter(r=>r!==a):[...e,a]);return i`
    <div class="tiles two short" role="group" aria-label=${s("note.quick")}>
      ${se.map(a=>i`<button type="button" key=${a} aria-pressed=${e.includes(a)}
        onClick=${h(()=>n(a))}>${ae(a)}</button>`)}
    </div>
    ${e.some(a=>Ys.includes(a))&&i`
      <div class="caution" role="status"><p>${s(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${s("test.do")}</a></div>`}`}var Gs=({photos:t,drop:e})=>t.length>0&&i`<ul class="pictures">${t.map(({id:o,picture:n},a)=>{let r=s("photo.numbered",{at:a+1});return i`
    <li key=${o}><${Yo} picture=${n} said=${r} />
      <button class="quiet square" type="button" aria-label=${s("remove_named",{what:r})}
        onClick=${h(()=>{e(o)})}><${O} name="remove" size=${20} /></button></li>`})}</ul>`;function _n(t,e,o,n,a,r){let{start:c,records:l}=o,u=f=>c+f*36e5,m=u(l.now_h),p=Math.max(m-r*24*36e5,Math.min(c,m-48*36e5)),d=n?.doubts??[],$=l.readings.filter(f=>f.parameter===t&&u(f.at_h)>=p).map(f=>({at:u(f.at_h),...Qs(f),doubted:d.some(g=>g.parameter===t&&g.at_h===f.at_h)})),w=q(t)&&(t!=="nitrate"||o.nitrate_known)?(n?.series??[]).map(f=>({at:u(f.at_h),...f[`${t}_mg_n_l`]})):[],y=[...e.feedings.map(f=>fn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>fn(f.at,"change",f.litres))].filter(({at:f})=>f>=p&&f<=m).sort((f,g)=>f.at-g.at);return{parameter:t,dots:$,fan:w,marks:y,limit:q(t)?a[t]:null,from:p,now:m,to:w.at(-1)?.at??m}}var fn=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function Qs(t){if(!q(t.parameter)){let[l,u]=t.steps?.length?ie(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:l,high:u}}let{value:e,steps:o}=To(t),n=Nt(),a=t.parameter==="nitrate"?"nitrate":"reading",[r,c]=ie(e,o,n[`${a}_offset`],n[`${a}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:r===null?null:Math.max(r,0),high:c}}function hn(t,e){let o=n=>n===null?null:e(n);return{...t,dots:t.dots.map(n=>({...n,value:e(n.value),low:o(n.low),high:o(n.high)})),fan:t.fan.map(({at:n,p10:a,p50:r,p90:c})=>({at:n,p10:e(a),p50:e(r),p90:e(c)})),line:t.limit&&e(t.limit.mg_n_l)}}function gn({parameter:t,dots:e,fan:o,line:n}){let a=[...e.flatMap(({value:u,low:m,high:p})=>[u,m??u,p??u]),...o.flatMap(({p10:u,p90:m})=>[u,m]),...n===null?[]:[n]],r=Math.max(...a);if(q(t))return[0,r>0?r*1.12:1];let c=Math.min(...a),l=Math.max((r-c)*.2,.5);return[c-l,r+l]}var Vs=["doubt","kh_gone","prior","few","rule_working","rule_failed"];function wn({findings:[t],reasons:e}){let o=t?.code==="kh_ends"?"kh_gone":"";return e.filter(({code:n})=>Vs.includes(n)&&n!==o)}var kn=({doubted:t})=>i`
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
  </ul>`,vn=({ready:{code:t,from:e,likely:o,to:n}})=>{let a=r=>r===void 0?"":xe(r);return i`
    <section class="section"><h2>${s("ready.title")}</h2>
      <p class="sentence">${s(`ready.${t}`,{from:a(e),likely:a(o),to:a(n)})}</p>
      <p class="soft small">${s("ready.means")}</p>
    </section>`};function bn({weeks:t,expected:e}){let[o]=t;return i`
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
      <p class="soft small">${Ct().stock_headroom.uncertainty}</p>
    </details>`}var yn=()=>{let t=[...P("outlook"),...P("stock_headroom")];return i`<div class="section">
    ${[...new Set(t)].map(e=>i`<p class="caution small" key=${e}>${e}</p>`)}</div>`},mt=t=>`${M(t,t<1?2:1)} g`;var Js=86400,Xs=["p10","p50","p90"];function xn({lines:t}){let e=xt(null);return nt(()=>Eo(e.current,()=>ta(t),Zs(t)),[t]),i`<div class="chart" ref=${e} aria-hidden="true"></div>`}var Zs=({fan:t,from:e,now:o})=>{let n=t.length?t:[{at:o,p10:null,p50:null,p90:null}],r=[{at:e,p10:null,p50:null,p90:null},...n];return[r.map(({at:c})=>c/1e3),...Xs.map(c=>r.map(l=>l[c]))]};function ta(t){let{from:e,now:o,to:n}=t,[a,r]=gn(t),c={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,n/1e3+(n>o?0:Js/2)]},y:{range:[a,r]}},series:[{},c,{stroke:()=>kt("--action"),width:2.5,points:{show:!1}},c],bands:[{series:[3,1],fill:()=>kt("--fan")}],axes:Io(),hooks:{drawAxes:[l=>No(l,t,kt)],draw:[l=>Oo(l,t,kt)]}}}var Jt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},ea=6;function Mn({lines:t,basis:e,next:o,as_table:n,now:a}){let{parameter:r}=t,c=ra(r,e),l=Mt(()=>hn(t,ia(r,e)),[t,e,$t.value]),u=`of-${r}`;return i`
    <section class="parameter" aria-labelledby=${u}>
      <h2 id=${u}>${A(r)} <span class="unit">${c}</span></h2>
      ${o&&r in Jt&&i`<${oa} lines=${t} basis=${e}
        chance=${o.pass_chance[Jt[r]]}
          standing=${o.now[`${r}_mg_n_l`]} />`}
      ${!n&&i`<${xn} lines=${l} />`}
      <div class=${n?"":"unseen"}><${na} lines=${l} unit=${c} now=${a} /></div>
    </section>`}function oa({lines:t,basis:e,chance:o,standing:n}){let{parameter:a,limit:r,fan:c}=t;if(!r||c.length===0)return null;let l=c.at(-1),u=l&&l.p90-l.p10>r.mg_n_l,m={chance:po(o)},p=n.p50>r.mg_n_l?s("outlook.perhaps_over",m):s("outlook.chance",m),d=n.p10>r.mg_n_l?s("outlook.over"):p;return i`
    <p class="chance">${d[0].toLocaleUpperCase()+d.slice(1)}</p>
    <p class="soft small">
      ${s("outlook.limit",{limit:F(a,r.mg_n_l,e),by:s(`limit.${r.by}`)})} ${u&&s("outlook.wide")}</p>`}function na({lines:t,unit:e,now:o}){let{parameter:n,fan:a,dots:r,marks:c}=t,l=d=>aa(n,d),u=Math.max(1,Math.round((a.length-1)/ea)),m=[...r.map(d=>({at:d.at,what:s(d.doubted?"outlook.read_doubted":"outlook.read"),value:l(d.value),span:sa(d,l)})),...c.filter(({kind:d})=>d==="change").map(({at:d,said:$})=>({at:d,what:s("history.changed",{litres:v($)}),value:"",span:""}))].sort((d,$)=>$.at-d.at),p=c.filter(({kind:d})=>d==="feeding");return i`
    ${p.length>0&&i`<p class="soft small">${s("outlook.fed",{count:p.length,grams:M(p.reduce((d,{said:$})=>d+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${A(n)} ${e}</caption>
      ${a.length>0&&i`
        <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.likely")}</th></tr>
          ${a.filter((d,$)=>$%u===0).map(({at:d,p10:$,p50:_,p90:w})=>i`
            <tr key=${d}><th scope="row">${N(d,o)}</th><td>${l(_)} <span class="also">
              ${s("outlook.between",{low:l($),high:l(w)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${s("outlook.so_far")}</th></tr>
        ${m.map(({at:d,what:$,value:_,span:w},y)=>i`
          <tr key=${`${d}-${y}`}><th scope="row">${N(d,o)}<span class="also">${$}</span></th><td>${_}
            ${w&&i` <span class="also">${w}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function sa({low:t,high:e},o){return t===e?"":t===null?s("outlook.up_to",{high:o(e)}):e===null?s("outlook.from",{low:o(t)}):s("outlook.between",{low:o(t),high:o(e)})}var aa=(t,e)=>q(t)?Ot(e):I(e,1),ra=(t,e)=>q(t)?Je(t,e):t==="temperature"?K("\xB0C").label:"",ia=(t,e)=>q(t)?Ce(t,e):t==="temperature"?K("\xB0C").show:o=>o;var la=["total_ammonia","nitrite","nitrate","ph","temperature"],Cn=[2,6];function ca({id:t}){let e=L("tank",t);return e?i`<${ua} tank=${e} />`:i`<${lt} up="/" />`}function ua({tank:t}){let e=E(Cn[0]),o=E(!1),{facts:n,asked:a,forecast:r,advice:c}=oo(t),{ahead:l,next:u,headroom:m}=r.answers,p=$=>u?.pass_chance[Jt[$]]??-1,d=Mt(()=>[...la].sort(($,_)=>p(_)-p($)).map($=>_n($,n,a,l,c.limits,7*e.value)).filter(({dots:$,fan:_})=>$.length+_.length>0),[a,l,u,e.value]);return i`
    <${x} title=${s("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${i`<span class="soft">${t.name}</span>`}>
      <section aria-label=${s("tank.now")}>
        <${Pt} advice=${c} now=${k.value} />
        <${Rt} advice=${c} now=${k.value} />
        <${Ft} advice=${{...c,reasons:wn(c)}} now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${s("outlook.how")}>
        ${Cn.map($=>i`<button key=${$} class="quiet" type="button"
          aria-pressed=${e.value===$} onClick=${h(()=>e.value=$)}>
          ${s("outlook.weeks",{count:$})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${s("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${d.map($=>i`<${Mn} key=${$.parameter} lines=${$} next=${u} as_table=${o.value}
        basis=${Y(q($.parameter)?c.levels[$.parameter]:void 0)}
        now=${k.value} />`)}</div>
      ${!o.value&&i`<${kn} doubted=${d.some(({dots:$})=>$.some(_=>_.doubted))} />`}
      ${l&&i`<${vn} ready=${Mo(l.settled_h,a.records.now_h,a.start)} />`}
      <${Fo} tank=${t} />
      ${m&&i`<${bn} weeks=${Co(m)} expected=${m.feed_g_day_expected} />`}
      <${yn} />
    <//>`}var ma="(min-width: 900px)",$e=_e(!1),Sn=globalThis.matchMedia?.(ma),An=()=>$e.value=Sn?.matches??!1;An();Sn?.addEventListener?.("change",An);function Ln({here:t}){if(!$e.value)return null;let e=X(T);if(e.length<2)return null;let o=go(e);return i`
    <nav class="tank-list" aria-label=${s("place.tanks")} ref=${da}>
      ${e.length>We?i`<${pa} ones=${o} here=${t} />`:i`<${Wt} ones=${o} here=${t} />`}</nav>`}function pa({ones:t,here:e}){let o=E(""),n=_o.value==="first",a=t.map(({tank:l})=>l),r=new Map(t.map(l=>[l.tank.id,l])),c=He(a,o.value).flatMap(({tank:l})=>r.get(l.id)??[]);return i`
    <div class="field"><label for="list-find">${s("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${qt(l=>o.value=l)} /></div>
    ${o.value.trim()?i`<${ko} ones=${c} words=${o.value.trim()} here=${e} />`:i`<${wo} />
      ${n&&i`<${Wt} ones=${t.filter(l=>l.wants)} here=${e} />`}
      ${Ue(a).map(l=>{let u=l.tanks.flatMap(({id:d})=>r.get(d)??[]),m=u.filter(d=>!(n&&d.wants)),p=ho.value.includes(l.place)||m.some(({tank:d})=>d.id===e);return i`<section class="group" key=${l.place}>
          <${vo} place=${l.place} ones=${u} open=${p} />
          ${p&&i`<${Wt} ones=${m} here=${e} />`}</section>`})}`}`}function da(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var $a=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function Tn({id:t}){let e=L("tank",t);return e?Re(e)?i`<${xo} tank=${Pe(e)} />`:i`<${fa} key=${t} tank=${e} />`:i`<${lt} up="/" why="labels.stranger" />`}Tn.ahead=function*({id:t}){let e=X(T).find(o=>o.id===t);e&&(yield*to([e]),re(t),yield,vt(gt(e).facts),yield)};function fa({tank:t}){let{id:e}=t,{facts:o,advice:n}=gt(t),a=io(`tank ${e}`,ro(n));return i`
    <div class="desk"><${Ln} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${i`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${i`<${_a} id=${e} advice=${n} />`}>
      <section class="room-taken" ref=${a} aria-label=${s("tank.now")}>
        <div class="row apart held"><div><${Pt} advice=${n} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${s("incident.title")}</a></div>
        <${Rt} advice=${n} now=${k.value} />
        <${fo} advice=${n} now=${k.value} />
        <${Ft} advice=${n} now=${k.value} />
      </section>
      <${mo} tank=${e} label=${s("tasks.today")} />
      <${ga} tank=${t} />
      <${wa} id=${e} facts=${o} advice=${n} />
      <${ha} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${s("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${s("long_run.title")}<br /><span class="soft small">
            ${Qt(vt(o),Y(n.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${s("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${s("stock.title")}<br /><span class="soft small">
            ${ka(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${s("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${s("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${s("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${s("tasks.title")}<br /><span class="soft small">
            ${ba(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${s("water.title")}<br /><span class="soft small">
            ${va(o)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${s("labels.title_one")}</a></li>
          ${b.value.may("tank")&&i`<li><a class="line" href=${`/tank/${e}/edit`}>${s("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var _a=({id:t,advice:e})=>{let o=re(t),n=o?"next":e.act==="change"?"change":"test",a=r=>n===r?"main even":"quiet tall even";return i`
    ${b.value.may("reading")&&i`<a class=${a("test")} href=${`/tank/${t}/test`}>${s("test.do")}</a>`}
    ${b.value.may("water_change")&&i`<a class=${a("change")} href=${`/tank/${t}/change`}>${s("change.do")}
      </a>`}
    ${o&&i`<a class="main" href=${`/tank/${o.id}`}>${s("round.next",{tank:o.name})}</a>`}`};function ha({id:t}){let e=$a.filter(([,o])=>b.value.may(o));return e.length>0&&i`
    <nav class="section" aria-label=${s("write_down.title")}><h2>${s("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,n])=>i`<a key=${o} href=${`/tank/${t}/${n}`}><${O}
        name=${o} size=${28} />${s(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function ga({tank:t}){let e=t.started_at&&k.value-Date.parse(t.started_at)<Ie;return!qe(t)||!(e||Po(t.id).length===0)?null:i`
    <section class="section"><h2>${s("first_fish.title")}</h2><${jo} tank=${t} />
      <ul class="lines">${b.value.may("stock_change")&&i`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${s("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${s("setup.plans_of")}</a></li></ul>
    </section>`}function wa({id:t,facts:e,advice:o}){let n=[...wt,...et].flatMap(l=>e.readings.findLast(u=>u.parameter===l)??[]);if(n.length===0)return i`<p class="soft section">${s("tank.no_figures")}</p>`;let a=b.value.may("reading"),r=new Map(Object.entries(o.limits)),c=n.flatMap(l=>{let{also:u}=ft(l);return u&&q(l.parameter)?{name:A(l.parameter),also:u}:[]});return i`
    <section class="section">
      <table class="measured">
        <caption><h2>${s("tank.figures")}</h2></caption>
        <tbody>${n.map(l=>{let{value:u,unit:m,also:p}=ft(l),d=r.get(l.parameter)?.mg_n_l,$=d&&F(l.parameter,d,l.basis??"ion"),_=i`${A(l.parameter)}
            <span class="also">${N(l.at,e.now)}</span>`;return i`<tr key=${l.parameter}>
            <th scope="row">${a?i`<a class="again" href=${`/tank/${t}/test?of=${l.parameter}`}>${_}</a>`:_}</th>
            <td><span class="big">${u}</span> <span class="unit">${m}</span>
              ${p&&!q(l.parameter)&&i`<span class="also">${p}</span>`}
              ${$&&i`<span class="also">${s("tank.limit",{limit:$})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
      ${c.length>0&&i`<details class="more"><summary>${s("tank.other_way")}</summary>
          ${c.map(({name:l,also:u})=>i`<p key=${l} class="soft small">${St(l,u)}</p>`)}</details>`}
    </section>`}function ka({stock:t,now:e}){let{animals:o}=Le(t,e);return o.length?o.map(n=>Ko(n.species,n.count)).join("\xA0\xB7 "):s("stock.none_yet")}var va=({source:t,label:e})=>[t?.name??s("water.none"),e?.name??s("label.none")].join("\xA0\xB7 ");function ba(t){let e=uo(t).filter(o=>!o.over).length;return e?s("tasks.count",{count:e}):s("tasks.none")}var Dn={"\xB0C":.5,"\xB0F":1},Nn=2;function ya(t,{unit:e,show:o,hold:n}){let a=e==="\xB0F"?Dn["\xB0F"]:Dn["\xB0C"],r=Math.round(o(t)/a),c=Ht({parameter:"temperature",unit:"\xB0C"},"");return Array.from({length:2*Nn+1},(l,u)=>(r+u-Nn)*a).map(l=>({text:String(l),celsius:Number(n(l).toPrecision(6))})).filter(({celsius:l})=>Yt(c,l)===null)}function xa(t){let e=R("reading").filter(({tank:o,parameter:n,unit:a})=>o===t&&n==="temperature"&&a==="\xB0C");return e.reduce((o,n)=>o&&o.at>=n.at?o:n,e.at(0))?.value}function On({tank:t,chosen:e,on_pick:o}){let n=xa(t);if(n===void 0)return null;let a=K("\xB0C");return i`
    <div class="tiles five" role="group" aria-label=${s("test.near_last")}>
      ${ya(n,a).map(({text:r,celsius:c})=>i`
        <button type="button" key=${r} aria-pressed=${e===c}
          onClick=${h(()=>o(r,c))}>${I(Number(r),a.unit==="\xB0F"?0:1)}</button>`)}
    </div>`}var V=wt.length,Z=[...wt,null,...et],Ma=2*36e5,En=t=>({at:t?Z.indexOf(t):0,begun:Date.parse(b.value.now()),readings:{},typed:{}});function Ca({id:t,query:e}){let o=L("tank",t),n=e.get("of"),a=Z.includes(n)?n:null,r=z({name:a?`test.${t}.${a}`:`test.${t}`,first:()=>En(a)}),c=Q(o,"reading",o?.name??"");if(!o||c)return c;let l=r.draft.value,u=Z[l.at]??null,m=a?`/tank/${t}/test?of=${a}`:`/tank/${t}/test`,p=Object.values(l.readings),d=La(p),$=(f,g={})=>{ao(),r.set({...g,at:f<Z.length?Math.max(f,0):V}),scrollTo(0,0)},_=f=>$(Z.indexOf(f),et.includes(f)?{from:l.at}:{}),w=()=>r.save(()=>{let f={tank:t,test:D(),...l.when?{at:l.when}:{}};return{writes:p.map(g=>({type:"put",kind:"reading",id:D(),fields:{...g,...f}})),said:s("saved.readings",{count:p.length}),to:`/tank/${t}`}}),y=p.length>0&&d.length===0&&!U(l.when);return i`
    <${x} title=${o.name} up=${`/tank/${t}`}
      act=${i`<${Ta} test=${l} alone=${a!==null} to=${$} />
        <button class="main" type="button" disabled=${!y} onClick=${h(()=>{w()})}>
          ${p.length?s("test.save",{count:p.length}):s("test.none")}</button>`}
      aside=${!a&&i`<${Sa} at=${l.at} />`}>
      <${Aa} test=${l} afresh=${()=>r.draft.value=En(a)} />
      <${G} form=${r} kind="reading" />
      <${Da} strange=${d} here=${u}
        on_go=${f=>$(Z.indexOf(f))} />
      ${u?i`<${Oa} key=${u} tank=${t} here=${m} parameter=${u} form=${r}
            next=${a?V:l.at+1} to=${$} />`:i`<${qa} readings=${l.readings} on_go=${_} />`}
      ${!a&&l.at<V&&i`<${Na} on_go=${_} />`}
      <${j} at=${l.when} on_at=${f=>r.set({when:f})} />
    <//>`}var Sa=({at:t})=>i`<span class="soft figures">${t>V?s("test.seldom"):s("test.place",{at:Math.min(t+1,V),of:V})}</span>`;function Aa({test:t,afresh:e}){return k.value-t.begun<=Ma||Object.keys(t.readings).length===0?null:i`
    <div class="row apart caution"><span>${s("test.begun",{when:N(t.begun,k.value)})}</span>
      <button class="quiet" type="button" onClick=${h(e)}>${s("test.afresh")}</button></div>`}var La=t=>t.flatMap(({parameter:e,unit:o,value:n})=>{let a=Ht({parameter:e,unit:o},A(e)),r=Yt(a,n);return r?[{parameter:e,spec:a,error:r}]:[]});function Ta({test:t,alone:e,to:o}){let n=Z[t.at];if(e)return!n||!t.readings[n]?null:i`<button class="quiet tall" type="button" onClick=${h(()=>o(V))}>${s("test.next")}</button>`;let a=t.at>V?t.from??V:t.at-1;return i`
    ${t.at>0&&i`<button class="quiet tall" type="button" onClick=${h(()=>o(a))}>${s("test.back")}</button>`}
    ${n&&i`<button class="quiet tall" type="button" onClick=${h(()=>o(t.at+1))}>
      ${s(t.readings[n]?"test.next":"test.skip")}</button>`}`}var Da=({strange:t,here:e,on_go:o})=>t.map(({parameter:n,spec:a,error:r})=>i`
    <div key=${n} role="alert"><${ut} spec=${a} error=${r} />
      ${n!==e&&i`<button class="quiet" type="button" onClick=${h(()=>o(n))}>
        ${s("test.key_again",{what:Me(ne(n))})}</button>`}</div>`),Na=({on_go:t})=>i`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${s("test.seldom")}</span>
    ${et.map(e=>i`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${A(e)}</button>`)}</div>`;function Oa({tank:t,here:e,parameter:o,form:n,next:a,to:r}){let c=n.draft.value,l=m=>({...c.readings,[o]:{...m,at:b.value.now()}}),u=(m,p,d)=>{let{[o]:$,..._}=c.readings;return{keyed_in:{...c.keyed_in,[o]:d},typed:{...c.typed,[o]:m},readings:p?l(p):_}};return i`<${Ea} tank=${t} here=${e} parameter=${o} test=${c}
    on_pick=${m=>r(a,{readings:l(m)})}
    on_type=${(...m)=>n.set(u(...m))}
    on_take=${(...m)=>r(a,u(...m))} />`}function Ea({tank:t,here:e,parameter:o,test:n,on_pick:a,on_type:r,on_take:c}){let l=Wo(o),u=n.readings[o]?.value,m=l.unit??le[o],{label:p,unit:d,hold:$,text:_}=K(m),{per_drop:w}=l,y=g=>Bt(l,Number(($(Number(g))*(w??1)).toPrecision(6))),f=_(n.typed[o]??null,n.keyed_in?.[o]);return i`
    <h2 class="asked">${A(o)} <span class="soft unit">
      ${[l.entry==="steps"?m:p,it(o,l.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${l.common?l.entry==="steps"?s("kit.common"):et.includes(o)?s("kit.drops",{unit:le[o]}):s("kit.keypad"):l.name}</span>
      <a class="quiet" href=${l.id?`/room/test_kit/${l.id}`:`/room/test_kit/new?parameter=${o}&then=${encodeURIComponent(e)}`}>${s(l.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(l.timers??[]).length>0&&i`<${Ia} kit=${l} tank=${t} here=${e} />`}
    ${l.entry==="steps"&&(l.steps??[]).length>0?i`<div class="tiles steps" role="group" aria-label=${A(o)}>
          ${(l.steps??[]).map(g=>i`
            <button type="button" key=${g} aria-pressed=${u===g}
              onClick=${h(()=>a(Bt(l,g)))}>${M(g)}</button>`)}
        </div>`:i`${o==="temperature"&&m==="\xB0C"&&i`<${On} tank=${t} chosen=${u}
              on_pick=${(g,C)=>c(g,Bt(l,C),d)} />`}
          <${Kt} label=${A(o)} unit=${w?s("test.drops"):p} value=${f}
          on_value=${g=>r(g,g===""?null:y(g),d)} />
          ${w&&f&&i`<p class="soft center" role="status">
            ${s("test.drops_are",{figure:`${M(y(f).value)} ${m}`})}</p>`}`}`}var Ia=({kit:t,tank:e,here:o})=>i`
  <ol class="lines timed">${(t.timers??[]).map((n,a)=>{let r=`${e}.${t.id}.${a}`,c=yo(r),l=()=>bo({id:r,what:St(ne(t.parameter),n.what),seconds:n.seconds,href:o});return i`<li key=${a} class="line"><span>${a+1}. ${n.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${O} name="clock" size=${20} />
        <span class="figures">${c===null?At(n.seconds):c>0?At(c):s("timer.again",{time:At(n.seconds)})}</span></button></li>`})}</ol>`,qa=({readings:t,on_go:e})=>i`
  <h2 class="asked">${s("test.answers")}</h2>
  <ul class="lines">${Z.map((o,n)=>{if(!o)return null;let a=t[o],r=a&&ft(a);return i`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${A(o)}</span>
      ${r?i`<span class="figures"><b class="hand">${r.value}</b> ${r.unit}</span>`:i`<span
        class="soft">${s(n>V?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function Ra(){let t=X(T),e=t.find(o=>eo(o)?.advice.test_due)??t[0];return nt(()=>{e&&Ut(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),i`<${x} title=${s("test.do")} place="round">
    ${!e&&i`<p class="sentence">${s("round.empty")}</p>`}
  <//>`}export{Hn as Change,os as Dose,us as DoseGroup,$s as Feed,Ps as LongRunPage,Bs as Note,ca as Outlook,Tn as Tank,Ca as Test,Ra as TestNext};
//# sourceMappingURL=tank-YZCGKKIE.js.map
