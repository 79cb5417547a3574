import{a as Ye,b as Xt}from"./chunk-4K3KBZAC.js";import{Aa as Ft,Ba as rt,Ea as So,Fa as Ao,Ga as Lo,Gb as Do,Ha as To,Hb as Wo,I as ne,Ia as ft,Jb as Uo,Ob as Bo,Pb as Y,Qb as G,Rb as Q,Sa as No,Ua as qo,Va as it,Wa as K,_a as Io,a as ko,b as vo,db as se,fb as Oo,gb as Dt,hb as Po,ja as Co,m as Rt,mb as Ro,n as Et,s as bo,t as yo,tb as U,ub as z,wb as Eo,x as xo,yb as Fo,za as Mo}from"./chunk-VO4XJGUN.js";import{a as Jt,b as dt}from"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{$a as k,Aa as nt,Ab as Ze,Ba as X,Cb as to,Cc as wo,Db as h,Dc as at,Fa as Ie,Ga as Oe,Ha as Pe,Ia as Re,J as Ct,K as Mt,Ka as Qt,Kb as eo,Lb as oo,M as xe,Ma as Ee,Mb as Tt,N as Ce,Na as Fe,O as Me,Oa as De,Pa as We,Qa as Ue,Ta as Lt,Tb as te,Ua as ze,Xb as ee,_a as b,_b as no,aa as Se,bb as R,cb as M,dc as so,ga as Ae,ha as Le,hb as L,hc as ao,ia as Te,kb as Ge,lb as Zt,mb as Qe,mc as ro,nb as Ve,nc as oe,ob as Je,oc as uo,pc as mo,qc as po,rc as $o,sc as fo,tc as _o,uc as Ot,va as Ne,vc as Pt,xb as T,xc as ho,yb as Xe,yc as go,za as qe,zc as x}from"./chunk-74NNJKGA.js";import{$a as Be,Ab as Ke,Bb as v,Cb as At,D as B,Da as bt,Eb as $t,Fa as ot,Fb as W,Gb as q,H as kt,I as pe,Ib as io,Ja as P,Kb as lo,La as H,Lb as Nt,M as $e,Ma as ve,Mb as co,Nb as qt,O as de,Oa as yt,Ob as It,Q as fe,T as _e,U as tt,Ua as be,V as E,Va as ye,W as Gt,Wa as xt,X as D,ca as he,d as et,f as gt,g as wt,i as me,ja as ge,l as I,la as n,m as a,ma as O,mb as He,na as C,nb as je,oa as vt,qb as ut,ra as N,rb as j,ta as we,tb as A,ub as Vt,vb as st,wb as mt,xb as pt,yb as F,za as ke,zb as St}from"./chunk-NRUJ6FXV.js";function Ho(t,{levels:e,limits:o},s){let{tank:r,source:i,label:c,readings:l}=t,m=ot(l,"kh").at(-1),u=Lt(t)?.celsius,d={ph:o.ph.from==="reading"||o.ph.from==="usual"?o.ph.value:void 0,kh_dkh:(m&&Be(m))??r.kh_dkh,temperature_c:u,tan_mg_n_l:e.total_ammonia.now_mg_n_l??0,source_ph:i?.ph,source_kh_dkh:i?.kh_dkh,source_temperature_c:i?.temperature_c??u,source_tan_mg_n_l:yt(i,"total_ammonia",c),fraction:s};if(Object.values(d).includes(void 0))return null;try{let p=d;return{input:p,answer:D("water_after_change",p)}}catch(p){if(p instanceof B)return null;throw p}}var Cn=14,Mn=["salt","other"];function jo({tank:t,doses:e,now:o},s){let r=new Map;for(let{label:i,at:c}of e){if(i?.basis!=="whole_tank"||!Mn.includes(i.use)||o-Date.parse(c)>Cn*864e5)continue;let l=Sn(i,t.water_l,s);l!==null&&r.set(i.id,{label:i,at:c,amount:l,unit:i.unit})}return[...r.values()]}function Sn({amount:t,per_l:e,unit:o},s,r){let i={label_amount:t,label_per_l:e,label_unit:o==="g"?"g":"ml"};try{let c=D("bath_dose",{...i,water_l:s,change_fraction:r,every_days:1,days:1}),l=(o==="g"?c.again_g:c.again_ml)??null;return o==="drops"&&l!==null?Math.round(l):l}catch(c){if(!(c instanceof B))throw c;return null}}var An={cold:12,hot:50};function Ko({facts:t,litres:e}){let o=je("taps",()=>An),s=Lt(t),r=(i,c)=>a`
    <${Do} label=${n(`warmth.${i}`)} unit="°C" min=${1} max=${c} value=${o.value[i]}
      on_value=${l=>o.value={...o.value,[i]:l}} />`;return a`
    <details class="more section"><summary>${n("warmth.title")}</summary>
      ${s?a`
        <p class="soft">
          ${s.at?n("warmth.read",{warmth:At(s.celsius),when:N(s.at,t.now)}):n("warmth.usual",{warmth:At(s.celsius)})}</p>
        ${r("cold",40)}${r("hot",80)}
        <${Ln} mix=${ze(e,s.celsius,o.value)} />
        <p class="caution small">${tt("water_blend","hot_water")}</p>`:a`<p class="soft">${n("warmth.unknown")}</p>`}
    </details>`}var Ln=({mix:t})=>a`
  <p class="sentence" aria-live="polite">
    ${n("warmth.pour",{cold:v(t.cold_l),hot:v(t.hot_l),warmth:At(t.reached_c)})}</p>
  ${!t.met&&a`<p class="wrong">${n("warmth.missed")}</p>`}
  <${K} name="water_blend" input=${t.input} answer=${t.answer} />`;var Tn=.25,Nn=()=>({typed:null});function qn({id:t}){let e=M("tank",t),o=Y({name:`change.${t}`,first:Nn}),s=gt(null),r=Q(e,"water_change",n("change.title"));if(!e||r)return r;let{facts:i,advice:c}=Ge(e),l=In(s,i,c),m=l.act!=="retest"&&l.litres||Mt(Tn*e.water_l,e.water_l,i.water_unit),u=j("L"),{typed:d,unit:p="L",from_tank:$="",at:_,undosed:w=!1}=o.draft.value,y=d===null?m:Wn(u.hold(Number(d),p),e.water_l),f=Me(e,y),g=f||$?null:xe(i,y),S=w?null:g;$&&!b.value.is_ready($)&&b.value.ready($);let zt=$?{...i,source:qe(L.of("reading",$),{from_tank:$,at:_??b.value.now()})}:i,ct=y/e.water_l,ht={litres:v(y||0),dose:S?.amount!==void 0?W(S):""},Yt=()=>o.save(()=>{let J=$?{from_tank:$}:i.source?{source_water:i.source.id}:{},ue=On({tank:t,at:_,litres:y,fraction:ct,...J},S);return{writes:ue,said:n(ue.length>1?"saved.change_dose":"saved.change",ht),to:`/tank/${t}`}});return a`
    <${x} title=${n("change.title")} up=${`/tank/${t}`} aside=${a`<span class="soft">${e.name}</span>`}
      act=${a`<button class="main" type="button" disabled=${!!f||U(_)}
        onClick=${h(()=>{Yt()})}>${n(S?.amount!==void 0?"change.log_dose":"change.log",ht)}
        </button>`}>
      <p class="soft">${l.litres||l.act==="retest"||l.act==="hold"?lo(l,k.value):n("change.usual",{litres:v(m)})}</p>
      <${G} form=${o} kind="water_change" />
      <${Pn} form=${o} tank=${e} litres=${y} suggested=${m} wrong=${f} />
      ${g&&!w&&a`<${En} id=${t} dose=${g} />`}
      ${!f&&a`<${Rn} facts=${i} fraction=${ct} />`}
      ${!f&&a`<${Dn} facts=${zt} advice=${l} fraction=${ct} />`}
      ${!f&&a`<${Ko} facts=${i} litres=${y} />`}
      <${Fn} id=${t} from_tank=${$}
        on_pick=${J=>o.set({from_tank:J})} />
      ${g?.amount!==void 0&&a`<p class="section"><button class="quiet" type="button" aria-pressed=${w}
        onClick=${h(()=>o.set({undosed:!w}))}>${n("change.undosed")}</button></p>`}
      <${z} at=${_} on_at=${J=>o.set({at:J})} />
      ${Un(g).map(J=>a`<p class="caution small" key=${J}>${J}</p>`)}
    <//>`}function In(t,e,o){let s=[e.readings,e.changes].map(r=>r.at(-1)?.id).join();return o.from&&o.as_of===void 0&&t.current?.last!==s&&(t.current={last:s,advice:o}),t.current?.last===s?t.current.advice:o}function On(t,e){let o=T(),s=[{type:"put",kind:"water_change",id:o,fields:t}];if(e?.label&&e.amount!==void 0){let{label:r,amount:i,unit:c}=e,{tank:l,at:m,litres:u}=t,d={at:m,tank:l,label:r.id,what:r.name,amount:i,unit:c,for_litres:u,water_change:o};s.push({type:"put",kind:"dose",id:T(),fields:d})}return s}function Pn({form:t,tank:e,litres:o,suggested:s,wrong:r}){let i=I(!1),c=j("L"),{typed:l,unit:m="L"}=t.draft.value,u=Ct(e.water_l,c.unit),d=v(u),p=_=>t.set({typed:_,unit:c.unit}),$=_=>p(String(c.show(Math.min(Math.max(o+_*u,u),e.water_l))));return a`
    <div class="stepper" role="group" aria-label=${n("change.litres")}>
      <button class="quiet" type="button" aria-label=${n("change.less",{step:d})}
        onClick=${()=>$(-1)}><${q} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${i.value}
        aria-label=${n("change.type",{litres:v(o||0)})}
        onClick=${h(()=>i.value=!i.value)}>
        <span>${C(c.show(o||0),2)} <small>${c.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${n("change.more",{step:d})}
        onClick=${()=>$(1)}><${q} name="plus" size=${28} /></button>
    </div>
    ${r?a`<div role="alert"><${it} spec=${Ce(e,n("change.litres"))} error=${r} /></div>`:a`<p class="soft center">${n("change.share",{percent:O(100*o/e.water_l,0)})}</p>`}
    ${i.value&&a`<${Ft} label=${n("change.litres")} unit=${c.label}
      value=${c.text(l,m)} on_value=${p} />`}
    ${l!==null&&o!==s&&a`<p class="center"><button class="quiet" type="button"
      onClick=${h(()=>p(null))}>${n("change.suggested",{litres:v(s)})}</button></p>`}`}function Rn({facts:t,fraction:e}){let o=jo(t,e);return o.length===0?null:a`
    ${o.map(s=>a`<p key=${s.label.id}>${n("dose.again",{name:s.label.name,when:N(s.at,t.now),dose:W(s)})}</p>`)}
    ${o.some(({label:s})=>s.use==="other")&&a`<p class="caution small">
      ${tt("bath_dose","label_over_all")}</p>`}`}var En=({id:t,dose:e})=>e.needed?e.missing==="source"?a`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${t}&then=/tank/${t}/change`}>
      ${n("dose.set_source")}</a></p>`:e.label?a`<p class="dose"><span class="big">${W(e)}</span><br />${e.label.name}<br /><span
    class="soft small">${n(`dose.basis_${e.label.basis}`)}</span></p>`:a`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${t}&then=/tank/${t}/change`}>
      ${n("dose.set_label")}</a></p>`:a`<p class="dose">${n("dose.none")}</p>`,Fn=({id:t,from_tank:e,on_pick:o})=>R("tank").length>1&&a`
  <details class="more section" open=${e!==""}><summary>${n("change.other_tank")}</summary>
    <${Po} tank=${t} value=${e} label=${n("change.out_of")} on_pick=${s=>o(s===e?"":s)} />
    <p class="soft small">${n("change.other_tank_why")}</p>
  </details>`,Dn=({facts:t,advice:e,fraction:o})=>{let s=Object.values(e.levels).flatMap(({parameter:i,now_mg_n_l:c,reading:l})=>c?[{parameter:i,now_mg_n_l:c,basis:H({reading:l})}]:[]),r=Ho(t,e,o);return(s.length>0||r)&&a`
    <table class="measured"><caption><h2>${n("change.after")}</h2></caption><tbody>
      ${s.map(({parameter:i,now_mg_n_l:c,basis:l})=>{let m=yt(t.source,i,t.label),{after_mg_l:u}=D("dilution",{before_mg_l:c,source_mg_l:m,fractions:[o]});return a`<tr key=${i}><th scope="row">${A(i)}</th>
          <td class="figures">${pt(i,c,l)} → <span class="big">
            ${pt(i,u,l)}</span> <span class="unit">
            ${`mg/L ${st(i,l)}`}</span></td></tr>`})}${r&&a`<tr><th scope="row">${A("ph")}</th><td class="figures">${O(r.input.ph,1)} → <span
          class="big">${O(r.answer.ph,1)}</span>${O(r.answer.ph_settled,1)!==O(r.answer.ph,1)&&a`<span class="also">${n("change.ph_settled",{ph:O(r.answer.ph_settled,1)})}</span>`}</td></tr>`}</tbody></table>
      ${r?.answer.notes.map(i=>a`<p class="caution small" key=${i}>${i}</p>`)}`},Wn=(t,e)=>Math.abs(t-e)<1e-6?e:t,Un=t=>[...E("dilution"),...t?.amount!==void 0?E("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]];var Bn=.25,Hn=1,jn={arrival:1,birth:1,move_in:1,death:-1,removal:-1,move_out:-1};function zo(t,e){let o=s=>e.findLastIndex(r=>r.label?.id===s.id);return[...t].sort((s,r)=>o(r)-o(s)||s.name.localeCompare(r.name))}var Yo=(t,e,o)=>e.basis==="whole_tank"?t.water_l:o.at(-1)?.litres??Mt(Bn*t.water_l,t.water_l);function Wt(t,e){let o=D("dechlorinator_dose",{change_l:e,basis:"new_water",label_ml:t.amount,label_per_l:t.per_l}),s=Gt(o,"label_dose_ml");return{amount:t.unit==="drops"?Math.max(1,Math.round(s)):s,unit:t.unit}}function Go(t,e,o){let s={volume_l:t.water_l,tan_mg_n_l:e,...o===void 0?{}:{ammonia_percent:o}},r=D("starter_dose",s),i=o===void 0;return{input:s,answer:r,amount:i?r.ammonium_chloride_g:Gt(r,"household_ammonia_ml"),unit:i?"g":"ml",tan_mg_n_l:r.tan_mg_n_l}}function ae(t,e=[]){let{water_l:o,feed_g_day:s=0,protein_fraction:r=0}=t,i=yo(t,e);return s<=0&&i>0?D("starter_dose",bo(o,i).input).tan_mg_n_l:s<=0||r<=0?Hn:D("starter_dose",{volume_l:o,feed_g_day:s,protein_fraction:r}).tan_mg_n_l}var Qo=t=>t.reduce((e,{change:o,count:s})=>e+(jn[o]??0)*(s??0),0)>0;function Vo(t,e,{system:o,marks:s}){let r=kt().salt_dose,{volume_l:i,...c}=e?.typed??{};if(Object.keys(c).length===0)return null;let l=xo(r,{draft:{...e,typed:c},tank:{volume_l:t.water_l},system:o,marks:s});if(!("answer"in l))return null;let m=l.payload,u=l.answer;return{what:_e(de("salt_dose","salt"),m.salt),what_code:m.salt,amount:u.grams,unit:"g",input:m,answer:u}}var Ut="salt",Bt="ammonia",Kn=()=>({way:"",litres:null,tan:null,household:!1,percent:"",at:void 0});function zn({id:t}){let e=M("tank",t),o=Y({name:`dose.${t}`,first:Kn}),s=Q(e,"dose",n("dosing.title"));if(!e||s)return s;let{changes:r,doses:i}=nt(L,e,k.value),c=zo(R("label"),i),l=Vo(e,He("bench.salt_dose",()=>({})).value,{system:ut.value,marks:he(ge())}),m=Qo(Se(R("stock_change"),t)),{way:u,at:d}=o.draft.value,p=c.find(f=>f.id===u),$=Gn(o.draft.value,{tank:e,label:p,salt:l,animals:m,changes:r}),{fields:_}=$,w=()=>_&&o.save(()=>({writes:[{type:"put",kind:"dose",id:T(),fields:{tank:t,at:d,..._}}],said:n("dosing.saved",{dose:W(_),what:_.what,tank:e.name}),to:`/tank/${t}`})),y=_&&a`<button class="main" type="button" disabled=${U(d)} onClick=${h(()=>{w()})}>
      ${n("dosing.log",{dose:W(_)})}</button>`;return a`
    <${x} title=${n("dosing.title")} up=${`/tank/${t}`} aside=${a`<span class="soft">${e.name}</span>`}
      act=${y}>
      <${Vn} dose=${i.at(-1)} />
      <${G} form=${o} kind="dose" />
      <${Yn} tank=${t} form=${o} labels=${c} salt=${l} />
      ${p&&a`<${Jn} form=${o} tank=${e} label=${p} dose=${$}
        litres=${Jo(o.draft.value,e,p,r)} />`}
      ${u===Ut&&l&&a`<${re} dose=${$}
        said=${n("dosing.for_tank",{litres:v(e.water_l)})} />`}
      ${u===Bt&&a`<${Xn} tank=${e} form=${o} dose=${$} animals=${m} />`}
      ${_&&a`<${z} at=${d} on_at=${f=>o.set({at:f})} />`}
      ${Zn(u,p).map(f=>a`<p class="caution small" key=${f}>${f}</p>`)}
    <//>`}function Yn({tank:t,form:e,labels:o,salt:s}){let r=(c,l,m)=>a`
    <button type="button" key=${c} aria-pressed=${e.draft.value.way===c}
      onClick=${h(()=>e.set({way:c,litres:null}))}><b>${l}</b>
      <span class="soft small">${m}</span></button>`,i=({amount:c,unit:l,per_l:m})=>n("label.line",{amount:C(c),unit:n(`unit.${l}`),litres:v(m)});return a`
    <div class="tiles two" role="group" aria-label=${n("dosing.what")}>
      ${o.map(c=>r(c.id,c.name,i(c)))}
      ${s&&r(Ut,s.what,n("dosing.from_bench"))}
      ${r(Bt,n("dosing.ammonia"),n("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${b.value.may("label")&&a`<a class="quiet" href=${`/room/label/new?then=/tank/${t}/dose`}><${q}
        name="plus" size=${20} />${n("water.new_label")}</a>`}
      <a class="quiet" href=${`/bench/salt_dose?tank=${t}`}>${n("dosing.work_out_salt")}</a>
    </div>`}function Gn(t,{tank:e,label:o,salt:s,animals:r,changes:i}){try{if(o){let c=Jo(t,e,o,i);return{fields:{...Wt(o,c),label:o.id,what:o.name,for_litres:c}}}if(t.way===Ut&&s){let{what:c,what_code:l,amount:m,unit:u,input:d,answer:p}=s;return{fields:{what:c,what_code:l,amount:m,unit:u,for_litres:e.water_l},name:"salt_dose",input:d,answer:p}}return t.way===Bt&&!r?Qn(t,e):{}}catch(c){if(!(c instanceof B))throw c;return{errors:c.errors}}}function Qn(t,e){let o=t.household?Number(t.percent):void 0;if(o!==void 0&&!(o>0))return{};let{amount:s,unit:r,tan_mg_n_l:i,input:c,answer:l}=Go(e,Xo(t,e),o),m=t.household?"household_ammonia":"ammonium_chloride";return{fields:{what:no(m),what_code:m,amount:s,unit:r,tan_mg_n_l:i,for_litres:e.water_l},name:"starter_dose",input:c,answer:l}}var Jo=({litres:t},e,o,s)=>t===null?Yo(e,o,s):xt(Number(t.text),t.unit,"L"),Xo=({tan:t},e)=>t===null?ae(e,R("own_species")):Number(t),Vn=({dose:t})=>a`<p class="soft">
    ${t?n("dosing.last",{dose:W(t),what:so(t),when:N(t.at,k.value)}):n("dosing.never")}</p>`;function Jn({form:t,tank:e,label:o,litres:s,dose:r}){let i=be({name:"",unit:"L"},ut.value),c=t.draft.value.litres,l=Qt(xt(Ct(e.water_l),"L",i));return a`
    <section class="section"><h2>${n("dosing.for_water")}</h2>
      <${rt} label=${n("dosing.for_water")} unit=${ye(i)} value=${xt(s,"L",i)}
        typed=${c&&c.unit===i?c.text:null} step=${l} least=${l} most=${1e5}
        on_type=${m=>t.set({litres:{text:m,unit:i}})} />
      <${re} dose=${r} said=${n(`dose.basis_${o.basis}`)} />
    </section>`}function Xn({tank:t,form:e,dose:o,animals:s}){if(s)return a`<p class="wrong section" role="status"><${q} name="needs" /><span>${n("dosing.animals_here")}</span>
      </p>`;let{tan:r,household:i,percent:c}=e.draft.value,l=Xo(e.draft.value,t),m=u=>h(()=>e.set({household:u}));return a`
    <section class="section"><h2>${n("dosing.wanted")}</h2>
      <${rt} label=${n("dosing.wanted")} unit="mg N/L" value=${l} typed=${r}
        step=${Qt(Math.max(ae(t,R("own_species"))/10,.05))} least=${.05} most=${50}
        on_type=${u=>e.set({tan:u})} />
    </section>
    <div class="tiles two section" role="group" aria-label=${n("dosing.with")}>
      <button type="button" aria-pressed=${!i} onClick=${m(!1)}>${n("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${i} onClick=${m(!0)}>${n("dosing.household_ammonia")}
        </button>
    </div>
    ${i&&a`<section class="section"><h2>${n("dosing.strength")}</h2>
      <${rt} label=${n("dosing.strength")} unit="%" value=${Number(c)} typed=${c} step=${.5}
        least=${.5} most=${35} on_type=${u=>e.set({percent:u})} />
      ${!(Number(c)>0)&&a`<p class="soft center">${n("dosing.no_strength")}</p>`}</section>`}
    <${re} dose=${o} said=${n("dosing.gives",{tan:St(l||0),litres:v(t.water_l)})}
      />`}var re=({dose:t,said:e})=>a`
  ${(t.errors??[]).map(o=>a`<${it} key=${o.field} error=${o}
    spec=${{label:n("dosing.this")}} />`)}
  ${t.fields&&a`
    <p class="dose"><span class="big">${W(t.fields)}</span><br /><span class="soft small">${e}</span></p>
    ${(t.answer?.notes??[]).map(o=>a`<p class="small" key=${o}>${o}</p>`)}
    ${t.name&&a`<${K} name=${t.name} input=${t.input} answer=${t.answer} />`}`}`;function Zn(t,e){return t===Ut?E("salt_dose"):t===Bt?E("starter_dose"):[n("dosing.label_first"),...e?.use==="dechlorinator"?E("dechlorinator_dose",["label_first","no_mixing","freed_ammonia"]):[]]}function ts({place:t}){let e=I(""),o=I([]);if(!b.value.may("dose"))return a`<${Bo} title=${n("group_dose.title")} up="/" />`;let s=X(L).filter(u=>(u.place?.trim()??"")===t),r=R("label").filter(({basis:u})=>u==="whole_tank"),i=r.find(({id:u})=>u===e.value)??(r.length===1?r[0]:null),c=i?s.flatMap(u=>es(u,i)):[],l=c.filter(({tank:u})=>!o.value.includes(u.id)),m=u=>o.value=o.value.includes(u)?o.value.filter(d=>d!==u):[...o.value,u];return a`
    <${x} title=${n("group_dose.title")} up="/"
      aside=${a`<span class="soft">${t||n("many.no_place")}</span>`}
      act=${i&&a`<button class="main" type="button" disabled=${l.length===0}
        onClick=${h(()=>{os(i,l)})}>${n("group_dose.log",{count:l.length})}</button>`}>
      ${r.length===0?a`<p class="sentence">${n("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${n("water.new_label")}</a></p>`:a`<section class="section"><h2>${n("group_dose.which")}</h2><div class="tiles two short">${r.map(u=>a`<button key=${u.id} type="button" aria-pressed=${u.id===i?.id}
              onClick=${h(()=>e.value=u.id)}>${u.name}</button>`)}</div></section>`}
      ${i&&a`<section class="section"><h2>${n("group_dose.tanks")}</h2><div class="tiles two short">${c.map(({tank:u,amount:d,unit:p})=>a`<button key=${u.id} type="button"
          aria-pressed=${!o.value.includes(u.id)}
          onClick=${h(()=>m(u.id))}><b>${u.name}</b>
          <span class="soft small">${W({amount:d,unit:p})} · ${v(u.water_l)}</span></button>`)}</div></section>
        <p class="caution small">${n("dosing.label_first")}</p>`}
    <//>`}function es(t,e){try{return[{tank:t,...Wt(e,t.water_l)}]}catch(o){if(o instanceof B)return[];throw o}}async function os(t,e){let o=b.value.now(),s=e.map(({tank:{id:r,water_l:i},amount:c,unit:l})=>({type:"put",kind:"dose",id:T(),fields:{tank:r,at:o,label:t.id,what:t.name,amount:c,unit:l,for_litres:i}}));await Xe(s,n("group_dose.saved",{count:s.length,label:t.name}))&&Pt("/",{replace:!0})}var tn=["food","protein_fraction"],ns=()=>({typed:null,food:null,own:{},at:void 0});function ss({id:t}){let e=M("tank",t),o=Y({name:`feed.${t}`,first:ns}),s=Q(e,"feeding",n("feed.title"));if(!e||s)return s;let r=nt(L,e,k.value),{feedings:i}=r,c=Fe(r),l=Ee(e,i,c?.answer.usual_g_day),m=We(R("feeding")),{typed:u,at:d}=o.draft.value,p=u===null?l.feed_g:Number(u),$=ls(o.draft.value,m,l),_=f=>o.save(()=>({writes:[{type:"put",kind:"feeding",id:T(),fields:{tank:t,at:d,feed_g:f,...f>0?$:{}}}],said:f>0?n("feed.saved",{amount:$t(f),tank:e.name}):n("feed.saved_none",{tank:e.name}),to:`/tank/${t}`})),w=a`
    <button class="quiet tall" type="button" disabled=${U(d)} onClick=${h(()=>{_(0)})}>
      ${n(d?"history.fed_none":"feed.none")}</button>
    <button class="main" type="button" disabled=${!(p>0)||U(d)}
      onClick=${h(()=>{_(p)})}>${n("feed.log",{amount:$t(p||0)})}</button>`,y=u===null||p===l.feed_g?l.from:"keeper";return a`
    <${x} title=${n("feed.title")} up=${`/tank/${t}`} aside=${a`<span class="soft">${e.name}</span>`}
      act=${w}>
      <${cs} feedings=${i} />
      <${rt} label=${n("feed.grams")} unit="g" value=${p} typed=${u} step=${De(l.feed_g)}
        least=${.01} most=${fe("feeding","feed_g").max}
        on_type=${f=>o.set({typed:f})} />
      <p class="soft center">${n(`feed.from_${y}`,{usual:$t(l.feed_g)})}</p>
      ${c&&a`<${as} answer=${c.answer} feed_g=${p} />`}
      <${G} form=${o} kind="feeding" beside=${o.draft.value.food===""?tn:[]} />
      <${is} form=${o} known=${m} given=${$} />
      <${z} at=${d} on_at=${f=>o.set({at:f})} />
      <${us} tank=${e} facts=${r} feed_g=${p} protein_fraction=${$.protein_fraction} />
      <${rs} ration=${c} />
      ${E("nitrogen_load").map(f=>a`<p class="caution small"
        key=${f}>${f}</p>`)}
    <//>`}var as=({answer:{usual_g_day:t,most_g_day:e},feed_g:o})=>a`
  <p class=${o>e?"wrong":"soft small center"}>
    ${n("feed.ration",{usual:Zo(t),most:Zo(e)})}</p>`,rs=({ration:t})=>t&&a`<section class="section"><h2>${n("feed.ration_why")}</h2>
    <${K} name="feed_ration" ...${t} /></section>`,Zo=t=>`${C(t,t<1?2:1)}\xA0g`,en=()=>tn.map(t=>$e(pe().feeding.fields,t));function is({form:t,known:e,given:o}){let{food:s,own:r}=t.draft.value;return a`
    <section class="section"><h2>${n("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${n("feed.food")}>
        ${e.map(({food:i,protein_fraction:c})=>a`
          <button type="button" key=${i} aria-pressed=${o.food===i}
            onClick=${h(()=>t.set({food:i}))}>
            <b>${i}</b>${c!==void 0&&a`<span class="soft small">
              ${n("feed.protein",{percent:O(100*c,0)})}</span>`}</button>`)}
        <button type="button" aria-pressed=${s===""} onClick=${h(()=>t.set({food:""}))}><${q}
          name="plus" />${n("feed.other")}</button>
      </div>
      ${s===""&&a`<div class="section"><${qo} specs=${en()} raw=${r} errors=${t.errors.value} tried=${!0}
        on_raw=${i=>t.set({own:i})} /></div>`}
    </section>`}function ls({food:t,own:e},o,s){if(t==="")return No(en(),e);let r=o.find(m=>m.food===t),{feed_g:i,from:c,...l}=s;return t!==null&&r?{...r}:l}function cs({feedings:t}){let e=t.at(-1);if(!e)return a`<p class="soft">${n("feed.never")}</p>`;let o={when:N(e.at,k.value),amount:$t(e.feed_g),food:e.food??""};return a`<p class="soft">${n(e.feed_g===0?"feed.last_none":e.food?"feed.last_food":"feed.last",o)}</p>`}function us({tank:t,facts:e,feed_g:o,protein_fraction:s}){if(o===0)return null;let r=H({reading:ot(e.readings,"total_ammonia").at(-1)??null});try{let{input:i,answer:c,assumed:l}=Ue(t,o,s),m={mg:C(c.tan_mg_n_day,1),rise:`${F("total_ammonia",c.tan_mg_n_l_day,r)} ${st("total_ammonia",r)}`,percent:O(100*i.protein_fraction,0)};return a`
      <section class="section"><h2>${n("feed.becomes")}</h2>
        <p>${n("feed.nitrogen",m)}${l&&a` ${n("feed.assumed",m)}`}</p>
        <${K} name="nitrogen_load" input=${i} answer=${c} />
      </section>`}catch(i){if(!(i instanceof B))throw i;return null}}var ie=365;function Ht({nitrate:t,young:e},o){if(e)return n("long_run.young");if(!t)return n("long_run.no_load");let s=F("nitrate",t.limit_mg_n_l,o);if(t.source_over)return n("long_run.source_over",{limit:s});if(t.rise_mg_n_l_day.usual<=0)return n("long_run.no_rise");if(!t.settles_mg_n_l)return ms(t,s);let{settles_mg_n_l:r}=t,i=t.from==="food"?F("nitrate",r.high,o):ps(r,o),c=t.from==="food"?"at_most":"settles",l=r.high<=t.limit_mg_n_l?"under":r.low>t.limit_mg_n_l?"over":"perhaps";return n(`long_run.${c}_${t.from==="food"&&l!=="under"?"perhaps":l}`,{level:i,limit:s})}function ms({days_to_limit:t},e){let o=Math.round(t??1/0);return o>ie?n("long_run.no_changes_far",{limit:e}):n(o<1?"long_run.no_changes_over":"long_run.no_changes",{limit:e,count:o})}var ps=({low:t,high:e},o)=>n("outlook.between",{low:pt("nitrate",t,o),high:F("nitrate",e,o)});function $s({id:t}){let e=M("tank",t);if(!e)return a`<${at} up="/" />`;let o=nt(L,e,k.value),s=Ye(o),r=ot(o.readings,"nitrate").at(-1),i=H(r&&{reading:r});return a`
    <${x} title=${n("long_run.title")} up=${`/tank/${t}`} place="round"
      aside=${a`<span class="soft">${e.name}</span>`}>
      <section class="section" aria-label=${n("long_run.title")}>
        <${ds} id=${t} found=${s} basis=${i} />
      </section>
      <section class="section"><h2>${n("long_run.kh")}</h2><${_s} id=${t} found=${s} /></section>
    <//>`}function ds({id:t,found:e,basis:o}){let{nitrate:s,routine:r,young:i}=e,c=s?.settles_mg_n_l&&s.settles_mg_n_l.high>s.limit_mg_n_l;return a`
    <p class="sentence">${Ht(e,o)}</p>
    <p>${fs(e)}</p>
    ${s&&!i&&a`
      <${on} id=${t} least=${s.least} routine=${r} />
      <p class="soft small">${s.from==="food"?n("long_run.from_food"):n("long_run.from_readings",{rise:F("nitrate",s.rise_mg_n_l_day.usual*7,o)})}</p>
      ${c&&a`<p class="caution small">${tt("steady_routine","slowly")}</p>`}
      ${s.worked&&a`<${K} name="steady_routine" ...${s.worked} />`}`}`}var fs=({routine:t,young:e})=>t?n("long_run.routine",{count:t.count,litres:v(t.litres),days:C(t.every_days,t.every_days<10?1:0)}):e?"":n("long_run.no_routine");function on({id:t,least:e,routine:o}){if(!e)return null;let{litres:s,every_days:r}=e,i=o&&o.litres/o.every_days>=s/r;return a`
    <p>${n(i?"long_run.least_held":"long_run.least",{litres:v(s),count:r})}</p>
    ${b.value.may("task")&&a`<p><a class="quiet" href=${`/task/new?tank=${t}&every=${r}&title=${encodeURIComponent(n("long_run.task",{litres:v(s)}))}`}>${n("long_run.make_task")}</a></p>`}`}function _s({id:t,found:{kh:e,nitrate:o,routine:s}}){if(!e)return a`<p>${n(o?"long_run.kh_unknown":"long_run.kh_no_load")}</p>`;let r=C(e.falls_dkh_week,e.falls_dkh_week<1?2:1);return a`
    <p class="sentence">${hs(e)}</p>
    <p>${n("long_run.kh_falls",{fall:r,now:C(e.now_dkh,1)})}</p>
    ${!e.source_known&&a`<p class="soft small">${n("long_run.kh_no_source")}</p>`}
    ${e.days_to_floor!==null&&a`<${on} id=${t} least=${e.least} routine=${s} />
      <p class="caution small">${tt("alkalinity_use","kh_floor")}</p>`}
    <${K} name="alkalinity_use" ...${e.worked} />`}function hs({days_to_floor:t,steady_dkh:e}){return t!==null&&t<=ie?n("long_run.kh_gone",{count:Math.round(t)}):e===null?n("long_run.kh_far"):n("long_run.kh_settles",{level:C(e,1)})}var gs=["at_surface","hiding"],le=5e3,jt=Mo(),ws=()=>({picked:[],text:"",at:void 0});function ks({id:t}){let e=M("tank",t),o=`note.${t}`,s=Y({name:o,first:ws}),{photos:r,busy:i,problem:c,add:l,drop:m}=vs(o),u=Q(e,"note",n("note.title"));if(!e||u)return u;let{picked:d,text:p,at:$}=s.draft.value,_=te.filter(S=>d.includes(S)),w=[..._.map(ee),p.trim()].filter(Boolean).join(`
`),y=()=>s.save(()=>{let S={tank:t,at:$??b.value.now(),entry:T()},zt={...S,text:w.slice(0,le),..._.length?{quick:_}:{}};return{writes:w?[{type:"put",kind:"note",id:T(),fields:zt}]:[],pictures:r.map(({picture:ct,width:ht,height:Yt})=>({picture:ct,id:T(),fields:{...S,width:ht,height:Yt}})),said:n("note.saved",{tank:e.name}),to:`/tank/${t}`,after:()=>jt.forget(o).catch(()=>{})}}),f=(w||r.length>0)&&!i&&w.length<=le&&!U($),g=a`<button class="main" type="button" disabled=${!f} onClick=${h(()=>{y()})}>
    ${r.length?n("note.save_photos",{count:r.length}):n("note.save")}</button>`;return a`
    <${x} title=${n("note.title")} up=${`/tank/${t}`} aside=${a`<span class="soft">${e.name}</span>`}
      act=${g}>
      <${bs} id=${t} picked=${d} on_pick=${S=>s.set({picked:S})} />
      <div class="field section"><label for="note-text">${n("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${le} value=${p}
          onInput=${Tt(S=>s.set({text:S}))}></textarea></div>
      <section class="section"><h2>${n("note.photos")}</h2>
        <${ys} photos=${r} drop=${m} />
        <div class="row">
          <label class="quiet tall file"><${q} name="camera" />${n("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${l} /></label>
          <label class="quiet tall file">${n("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${l} /></label>
        </div>
        ${i&&a`<p class="soft" role="status">${n("note.shrinking")}</p>`}
        <${Ro} text=${c} />
        <${G} form=${s} kind="note" />
        <p class="soft small">${n("note.photo_size")}</p>
      </section>
      <${z} at=${$} on_at=${S=>s.set({at:S})} />
    <//>`}function vs(t){let e=I([]),o=I(0),s=I(""),r=async()=>{e.value=await jt.list(t)};et(()=>{r().catch(()=>s.value=n("note.photos_not_kept"))},[t]);let i=async m=>{o.value+=1;try{await jt.add(t,await Uo(m)),await r()}catch(u){let d=u instanceof RangeError?"note.no_picture":"note.photos_not_kept";s.value=n(d,{file:m.name})}finally{o.value-=1}},c=async({currentTarget:m})=>{let u=[...m.files??[]];m.value="",s.value="";for(let d of u)await i(d)},l=async m=>{let u=await jt.remove(m);await r(),Ze(n("note.photo_dropped"),async()=>{await u(),await r()})};return{photos:e.value,busy:o.value>0,problem:s.value,add:c,drop:l}}function bs({id:t,picked:e,on_pick:o}){let s=r=>o(e.includes(r)?e.filter(i=>i!==r):[...e,r]);return a`
    <div class="tiles two short" role="group" aria-label=${n("note.quick")}>
      ${te.map(r=>a`<button type="button" key=${r} aria-pressed=${e.includes(r)}
        onClick=${h(()=>s(r))}>${ee(r)}</button>`)}
    </div>
    ${e.some(r=>gs.includes(r))&&a`
      <div class="caution" role="status"><p>${n(e.includes("at_surface")?"note.air_now":"note.test_now")}</p>
        <a class="quiet" href=${`/tank/${t}/test`}>${n("test.do")}</a></div>`}`}var ys=({photos:t,drop:e})=>t.length>0&&a`<ul class="pictures">${t.map(({id:o,picture:s},r)=>{let i=n("photo.numbered",{at:r+1});return a`
    <li key=${o}><${Eo} picture=${s} said=${i} />
      <button class="quiet square" type="button" aria-label=${n("remove_named",{what:i})}
        onClick=${h(()=>{e(o)})}><${q} name="remove" size=${20} /></button></li>`})}</ul>`;function sn(t,e,o,s,r,i){let{start:c,records:l}=o,m=f=>c+f*36e5,u=m(l.now_h),d=Math.max(u-i*24*36e5,Math.min(c,u-48*36e5)),p=s?.doubts??[],$=l.readings.filter(f=>f.parameter===t&&m(f.at_h)>=d).map(f=>({at:m(f.at_h),...xs(f),doubted:p.some(g=>g.parameter===t&&g.at_h===f.at_h)})),w=P(t)&&(t!=="nitrate"||o.nitrate_known)?(s?.series??[]).map(f=>({at:m(f.at_h),...f[`${t}_mg_n_l`]})):[],y=[...e.feedings.map(f=>nn(f.at,"feeding",f.feed_g)),...e.changes.map(f=>nn(f.at,"change",f.litres))].filter(({at:f})=>f>=d&&f<=u).sort((f,g)=>f.at-g.at);return{parameter:t,dots:$,fan:w,marks:y,limit:P(t)?r[t]:null,from:d,now:u,to:w.at(-1)?.at??u}}var nn=(t,e,o)=>({at:Date.parse(t),kind:e,said:o});function xs(t){if(!P(t.parameter)){let[l,m]=t.steps?.length?ne(t.value,t.steps,0,0):[t.value,t.value];return{value:t.value,low:l,high:m}}let{value:e,steps:o}=Co(t),s=Re(),r=t.parameter==="nitrate"?"nitrate":"reading",[i,c]=ne(e,o,s[`${r}_offset`],s[`${r}_sd`]*Math.sqrt(3)/Math.PI);return{value:e,low:i===null?null:Math.max(i,0),high:c}}function an(t,e){let o=s=>s===null?null:e(s);return{...t,dots:t.dots.map(s=>({...s,value:e(s.value),low:o(s.low),high:o(s.high)})),fan:t.fan.map(({at:s,p10:r,p50:i,p90:c})=>({at:s,p10:e(r),p50:e(i),p90:e(c)})),line:t.limit&&e(t.limit.mg_n_l)}}function rn({parameter:t,dots:e,fan:o,line:s}){let r=[...e.flatMap(({value:m,low:u,high:d})=>[m,u??m,d??m]),...o.flatMap(({p10:m,p90:u})=>[m,u]),...s===null?[]:[s]],i=Math.max(...r);if(P(t))return[0,i>0?i*1.12:1];let c=Math.min(...r),l=Math.max((i-c)*.2,.5);return[c-l,i+l]}var Cs=["doubt","kh_gone","prior","few","rule_working","rule_failed"];function ln({findings:[t],reasons:e}){let o=t?.code==="kh_ends"?"kh_gone":"";return e.filter(({code:s})=>Cs.includes(s)&&s!==o)}var cn=({doubted:t})=>a`
  <ul class="chart-key" aria-hidden="true">
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor" stroke-width="2" />
      <circle cx="9" cy="12" r="5" fill="currentColor" /></svg>${n("key.reading")}</li>
    ${t&&a`<li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor"
      stroke-width="2" /><circle class="hollow" cx="9" cy="12" r="5" stroke="currentColor" stroke-width="2" /></svg>
      ${n("key.doubted")}</li>`}
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="fan" d="M0 8 30 1v22L0 16z" /><path class="middle"
      d="M0 12h30" /></svg>${n("key.fan")}</li>
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="limit" d="M0 12h30" /></svg>${n("key.limit")}</li>
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M3 4h12l-2 9H5z" fill="currentColor" /><path
      d="M9 13v11" stroke="currentColor" stroke-dasharray="2 3" /></svg>${n("key.change")}</li>
    <li><svg width="8" height="24" viewBox="0 0 8 24"><path d="M4 0v24" stroke="currentColor" stroke-width="1.5" />
      </svg>${n("key.now")}</li>
    <li><svg width="10" height="24" viewBox="0 0 10 24"><path d="M5 14v8" stroke="currentColor" stroke-width="1.5" />
      </svg>${n("key.feeding")}</li>
  </ul>`,un=({ready:{code:t,from:e,likely:o,to:s}})=>{let r=i=>i===void 0?"":we(i);return a`
    <section class="section"><h2>${n("ready.title")}</h2>
      <p class="sentence">${n(`ready.${t}`,{from:r(e),likely:r(o),to:r(s)})}</p>
      <p class="soft small">${n("ready.means")}</p>
    </section>`};function mn({weeks:t,expected:e}){let[o]=t;return a`
    <details class="more section"><summary>${n("carry.title")}</summary>
      <p>
        ${n("carry.now",{low:lt(o.feed_g_day.p10),high:lt(o.feed_g_day.p90),expected:lt(e)})}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${n("carry.when")}</th><th scope="col" class="right">${n("carry.feed")}</th></tr>
          </thead>
        <tbody>${t.map(({days:s,feed_g_day:r})=>a`
          <tr key=${s}><th scope="row">${n(`carry.in_${s}`)}</th>
            <td>${lt(r.p50)}<span class="also">
              ${n("outlook.between",{low:lt(r.p10),high:lt(r.p90)})}</span></td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${kt().stock_headroom.uncertainty}</p>
    </details>`}var pn=()=>{let t=[...E("outlook"),...E("stock_headroom")];return a`<div class="section">
    ${[...new Set(t)].map(e=>a`<p class="caution small" key=${e}>${e}</p>`)}</div>`},lt=t=>`${C(t,t<1?2:1)} g`;var Ms=86400,Ss=["p10","p50","p90"];function $n({lines:t}){let e=gt(null);return et(()=>Lo(e.current,()=>Ls(t),As(t)),[t]),a`<div class="chart" ref=${e} aria-hidden="true"></div>`}var As=({fan:t,from:e,now:o})=>{let s=t.length?t:[{at:o,p10:null,p50:null,p90:null}],i=[{at:e,p10:null,p50:null,p90:null},...s];return[i.map(({at:c})=>c/1e3),...Ss.map(c=>i.map(l=>l[c]))]};function Ls(t){let{from:e,now:o,to:s}=t,[r,i]=rn(t),c={stroke:"transparent",points:{show:!1}};return{scales:{x:{time:!0,range:[e/1e3,s/1e3+(s>o?0:Ms/2)]},y:{range:[r,i]}},series:[{},c,{stroke:()=>ft("--action"),width:2.5,points:{show:!1}},c],bands:[{series:[3,1],fill:()=>ft("--fan")}],axes:To(),hooks:{drawAxes:[l=>So(l,t,ft)],draw:[l=>Ao(l,t,ft)]}}}var Kt={total_ammonia:"nh3",nitrite:"nitrite",nitrate:"nitrate"},Ts=6;function dn({lines:t,basis:e,next:o,as_table:s,now:r}){let{parameter:i}=t,c=Ps(i,e),l=wt(()=>an(t,Rs(i,e)),[t,e,ut.value]),m=`of-${i}`;return a`
    <section class="parameter" aria-labelledby=${m}>
      <h2 id=${m}>${A(i)} <span class="unit">${c}</span></h2>
      ${o&&i in Kt&&a`<${Ns} lines=${t} basis=${e}
        chance=${o.pass_chance[Kt[i]]}
          standing=${o.now[`${i}_mg_n_l`]} />`}
      ${!s&&a`<${$n} lines=${l} />`}
      <div class=${s?"":"unseen"}><${qs} lines=${l} unit=${c} now=${r} /></div>
    </section>`}function Ns({lines:t,basis:e,chance:o,standing:s}){let{parameter:r,limit:i,fan:c}=t;if(!i||c.length===0)return null;let l=c.at(-1),m=l&&l.p90-l.p10>i.mg_n_l,u={chance:io(o)},d=s.p50>i.mg_n_l?n("outlook.perhaps_over",u):n("outlook.chance",u),p=s.p10>i.mg_n_l?n("outlook.over"):d;return a`
    <p class="chance">${p[0].toLocaleUpperCase()+p.slice(1)}</p>
    <p class="soft small">
      ${n("outlook.limit",{limit:F(r,i.mg_n_l,e),by:n(`limit.${i.by}`)})} ${m&&n("outlook.wide")}</p>`}function qs({lines:t,unit:e,now:o}){let{parameter:s,fan:r,dots:i,marks:c}=t,l=p=>Os(s,p),m=Math.max(1,Math.round((r.length-1)/Ts)),u=[...i.map(p=>({at:p.at,what:n(p.doubted?"outlook.read_doubted":"outlook.read"),value:l(p.value),span:Is(p,l)})),...c.filter(({kind:p})=>p==="change").map(({at:p,said:$})=>({at:p,what:n("history.changed",{litres:v($)}),value:"",span:""}))].sort((p,$)=>$.at-p.at),d=c.filter(({kind:p})=>p==="feeding");return a`
    ${d.length>0&&a`<p class="soft small">${n("outlook.fed",{count:d.length,grams:C(d.reduce((p,{said:$})=>p+$,0),1)})}</p>`}
    <table class="measured outlook-table">
      <caption class="unseen">${A(s)} ${e}</caption>
      ${r.length>0&&a`
        <tbody><tr><th scope="rowgroup" colspan="2">${n("outlook.likely")}</th></tr>
          ${r.filter((p,$)=>$%m===0).map(({at:p,p10:$,p50:_,p90:w})=>a`
            <tr key=${p}><th scope="row">${N(p,o)}</th><td>${l(_)} <span class="also">
              ${n("outlook.between",{low:l($),high:l(w)})}</span></td></tr>`)}
        </tbody>`}
      <tbody><tr><th scope="rowgroup" colspan="2">${n("outlook.so_far")}</th></tr>
        ${u.map(({at:p,what:$,value:_,span:w},y)=>a`
          <tr key=${`${p}-${y}`}><th scope="row">${N(p,o)}<span class="also">${$}</span></th><td>${_}
            ${w&&a` <span class="also">${w}</span>`}</td></tr>`)}
      </tbody>
    </table>`}function Is({low:t,high:e},o){return t===e?"":t===null?n("outlook.up_to",{high:o(e)}):e===null?n("outlook.from",{low:o(t)}):n("outlook.between",{low:o(t),high:o(e)})}var Os=(t,e)=>P(t)?St(e):O(e,1),Ps=(t,e)=>P(t)?Ke(t,e):t==="temperature"?j("\xB0C").label:"",Rs=(t,e)=>P(t)?ve(t,e):t==="temperature"?j("\xB0C").show:o=>o;var Es=["total_ammonia","nitrite","nitrate","ph","temperature"],fn=[2,6];function Fs({id:t}){let e=M("tank",t);return e?a`<${Ds} tank=${e} />`:a`<${at} up="/" />`}function Ds({tank:t}){let e=I(fn[0]),o=I(!1),{facts:s,asked:r,forecast:i,advice:c}=Je(t),{ahead:l,next:m,headroom:u}=i.answers,d=$=>m?.pass_chance[Kt[$]]??-1,p=wt(()=>[...Es].sort(($,_)=>d(_)-d($)).map($=>sn($,s,r,l,c.limits,7*e.value)).filter(({dots:$,fan:_})=>$.length+_.length>0),[r,l,m,e.value]);return a`
    <${x} title=${n("outlook.title")} up=${`/tank/${t.id}`} place="round"
      aside=${a`<span class="soft">${t.name}</span>`}>
      <section aria-label=${n("tank.now")}>
        <${qt} advice=${c} now=${k.value} />
        <${Nt} advice=${c} now=${k.value} />
        <${It} advice=${{...c,reasons:ln(c)}} now=${k.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${n("outlook.how")}>
        ${fn.map($=>a`<button key=${$} class="quiet" type="button"
          aria-pressed=${e.value===$} onClick=${h(()=>e.value=$)}>
          ${n("outlook.weeks",{count:$})}</button>`)}
        <button class="quiet" type="button" aria-pressed=${o.value}
          onClick=${h(()=>o.value=!o.value)}>${n("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${p.map($=>a`<${dn} key=${$.parameter} lines=${$} next=${m} as_table=${o.value}
        basis=${H(P($.parameter)?c.levels[$.parameter]:void 0)}
        now=${k.value} />`)}</div>
      ${!o.value&&a`<${cn} doubted=${p.some(({dots:$})=>$.some(_=>_.doubted))} />`}
      ${l&&a`<${un} ready=${ko(l.settled_h,r.records.now_h,r.start)} />`}
      <${Io} tank=${t} />
      ${u&&a`<${mn} weeks=${vo(u)} expected=${u.feed_g_day_expected} />`}
      <${pn} />
    <//>`}var Ws="(min-width: 900px)",ce=me(!1),_n=globalThis.matchMedia?.(Ws),hn=()=>ce.value=_n?.matches??!1;hn();_n?.addEventListener?.("change",hn);function gn({here:t}){if(!ce.value)return null;let e=X(L);if(e.length<2)return null;let o=po(e);return a`
    <nav class="tank-list" aria-label=${n("place.tanks")} ref=${Bs}>
      ${e.length>Ie?a`<${Us} ones=${o} here=${t} />`:a`<${Ot} ones=${o} here=${t} />`}</nav>`}function Us({ones:t,here:e}){let o=I(""),s=uo.value==="first",r=t.map(({tank:l})=>l),i=new Map(t.map(l=>[l.tank.id,l])),c=Pe(r,o.value).flatMap(({tank:l})=>i.get(l.id)??[]);return a`
    <div class="field"><label for="list-find">${n("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${o.value}
        onInput=${Tt(l=>o.value=l)} /></div>
    ${o.value.trim()?a`<${fo} ones=${c} words=${o.value.trim()} here=${e} />`:a`<${$o} />
      ${s&&a`<${Ot} ones=${t.filter(l=>l.wants)} here=${e} />`}
      ${Oe(r).map(l=>{let m=l.tanks.flatMap(({id:p})=>i.get(p)??[]),u=m.filter(p=>!(s&&p.wants)),d=mo.value.includes(l.place)||u.some(({tank:p})=>p.id===e);return a`<section class="group" key=${l.place}>
          <${_o} place=${l.place} ones=${m} open=${d} />
          ${d&&a`<${Ot} ones=${u} here=${e} />`}</section>`})}`}`}function Bs(t){let e=t?.querySelector("[aria-current]");t&&e&&t.scrollTop===0&&e.offsetTop>t.clientHeight-e.offsetHeight&&(t.scrollTop=e.offsetTop-t.clientHeight/2)}var Hs=[["feed","feeding","feed"],["dose","dose","dose"],["note","note","note"],["stock","stock_change","stock/new"],["plants","planting","plants/new"],["tool","shared_tool","tool"]];function wn({id:t}){let e=M("tank",t);return e?Te(e)?a`<${wo} tank=${Ne(e)} />`:a`<${js} key=${t} tank=${e} />`:a`<${at} up="/" why="labels.stranger" />`}wn.ahead=function*({id:t}){let e=X(L).find(o=>o.id===t);e&&(yield*Qe([e]),oe(t),yield,Zt(e,Xt),yield)};function js({tank:t}){let{id:e}=t,{advice:o,shown:s}=Zt(t,Xt),r=oo(`tank ${e}`,eo(o));return a`
    <div class="desk"><${gn} here=${e} />
    <${x} title=${t.name} up="/" place="round"
      aside=${a`<span class="figures soft">${v(t.water_l)}</span>`}
      act=${a`<${Ks} id=${e} advice=${o} />`}>
      <section class="room-taken" ref=${r} aria-label=${n("tank.now")}>
        <div class="row apart held"><div><${qt} advice=${o} now=${k.value} /></div>
          <a class="quiet" href=${`/tank/${e}/incidents`}>${n("incident.title")}</a></div>
        <${Nt} advice=${o} now=${k.value} />
        <${co} advice=${o} now=${k.value} />
        <${It} advice=${o} now=${k.value} />
      </section>
      <${ro} tank=${e} label=${n("tasks.today")} />
      <${Ys} tank=${t} animals=${s.animals} />
      <${Gs} id=${e} latest=${s.latest} advice=${o} />
      <${zs} id=${e} />
      <nav class="section" aria-label=${t.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${e}/outlook`}>${n("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/long-run`}><span>${n("long_run.title")}<br /><span class="soft small">
            ${Ht(s.long_run,H(o.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/trends`}>${n("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/stock`}><span>${n("stock.title")}<br /><span class="soft small">
            ${Qs(s)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/plants`}>${n("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${e}/history`}>${n("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${e}&days=30`}>${n("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${e}/tasks`}><span>${n("tasks.title")}<br /><span class="soft small">
            ${Js(e)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/water`}><span>${n("water.title")}<br /><span class="soft small">
            ${Vs(t)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${e}/label`}>${n("labels.title_one")}</a></li>
          ${b.value.may("tank")&&a`<li><a class="line" href=${`/tank/${e}/edit`}>${n("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`}var Ks=({id:t,advice:e})=>{let o=oe(t),s=o?"next":e.act==="change"?"change":"test",r=i=>s===i?"main even":"quiet tall even";return a`
    ${b.value.may("reading")&&a`<a class=${r("test")} href=${`/tank/${t}/test`}>${n("test.do")}</a>`}
    ${b.value.may("water_change")&&a`<a class=${r("change")} href=${`/tank/${t}/change`}>${n("change.do")}
      </a>`}
    ${o&&a`<a class="main" href=${`/tank/${o.id}`}>${n("round.next",{tank:o.name})}</a>`}`};function zs({id:t}){let e=Hs.filter(([,o])=>b.value.may(o));return e.length>0&&a`
    <nav class="section" aria-label=${n("write_down.title")}><h2>${n("write_down.title")}</h2>
      <div class="tiles">${e.map(([o,,s])=>a`<a key=${o} href=${`/tank/${t}/${s}`}><${q}
        name=${o} size=${28} />${n(`write_down.${o}`)}</a>`)}</div>
    </nav>`}function Ys({tank:t,animals:e}){return!Ae(t)||!(Le(t,k.value)||e.length===0)?null:a`
    <section class="section"><h2>${n("first_fish.title")}</h2><${Wo} tank=${t} />
      <ul class="lines">${b.value.may("stock_change")&&a`<li><a class="line"
        href=${`/tank/${t.id}/setup/first_fish`}>${n("first_fish.open")}</a></li>`}
        <li><a class="line" href=${`/tank/${t.id}/setup`}>${n("setup.plans_of")}</a></li></ul>
    </section>`}function Gs({id:t,latest:e,advice:o}){if(e.length===0)return a`<p class="soft section">${n("tank.no_figures")}</p>`;let s=b.value.may("reading"),r=new Map(Object.entries(o.limits)),i=e.flatMap(c=>{let{also:l}=mt(c);return l&&P(c.parameter)?{name:A(c.parameter),also:l}:[]});return a`
    <section class="section">
      <table class="measured">
        <caption><h2>${n("tank.figures")}</h2></caption>
        <tbody>${e.map(c=>{let{value:l,unit:m,also:u}=mt(c),d=r.get(c.parameter)?.mg_n_l,p=d&&F(c.parameter,d,c.basis??"ion"),$=a`${A(c.parameter)}
            <span class="also">${N(c.at,k.value)}</span>`;return a`<tr key=${c.parameter}>
            <th scope="row">${s?a`<a class="again" href=${`/tank/${t}/test?of=${c.parameter}`}>${$}</a>`:$}</th>
            <td><span class="big">${l}</span> <span class="unit">${m}</span>
              ${u&&!P(c.parameter)&&a`<span class="also">${u}</span>`}
              ${p&&a`<span class="also">${n("tank.limit",{limit:p})}</span>`}</td>
          </tr>`})}</tbody>
      </table>
      ${i.length>0&&a`<details class="more"><summary>${n("tank.other_way")}</summary>
          ${i.map(({name:c,also:l})=>a`<p key=${c} class="soft small">${vt(c,l)}</p>`)}</details>`}
    </section>`}function Qs({animals:t}){return t.length?t.map(e=>Fo(e.species,e.count)).join("\xA0\xB7 "):n("stock.none_yet")}var Vs=({source_water:t,dechlorinator:e})=>[M("source_water",t)?.name??n("water.none"),M("label",e)?.name??n("label.none")].join("\xA0\xB7 ");function Js(t){let e=ao(t).filter(o=>!o.over).length;return e?n("tasks.count",{count:e}):n("tasks.none")}var kn={"\xB0C":.5,"\xB0F":1},vn=2;function Xs(t,{unit:e,show:o,hold:s}){let r=e==="\xB0F"?kn["\xB0F"]:kn["\xB0C"],i=Math.round(o(t)/r),c=Rt({parameter:"temperature",unit:"\xB0C"},"");return Array.from({length:2*vn+1},(l,m)=>(i+m-vn)*r).map(l=>({text:String(l),celsius:Number(s(l).toPrecision(6))})).filter(({celsius:l})=>Et(c,l)===null)}function Zs(t){let e=R("reading").filter(({tank:o,parameter:s,unit:r})=>o===t&&s==="temperature"&&r==="\xB0C");return e.reduce((o,s)=>o&&o.at>=s.at?o:s,e.at(0))?.value}function bn({tank:t,chosen:e,on_pick:o}){let s=Zs(t);if(s===void 0)return null;let r=j("\xB0C");return a`
    <div class="tiles five" role="group" aria-label=${n("test.near_last")}>
      ${Xs(s,r).map(({text:i,celsius:c})=>a`
        <button type="button" key=${i} aria-pressed=${e===c}
          onClick=${h(()=>o(i,c))}>${O(Number(i),r.unit==="\xB0F"?0:1)}</button>`)}
    </div>`}var V=Jt.length,Z=[...Jt,null,...dt],ta=2*36e5,yn=t=>({at:t?Z.indexOf(t):0,begun:Date.parse(b.value.now()),readings:{},typed:{}});function ea({id:t,query:e}){let o=M("tank",t),s=e.get("of"),r=Z.includes(s)?s:null,i=Y({name:r?`test.${t}.${r}`:`test.${t}`,first:()=>yn(r)}),c=Q(o,"reading",o?.name??"");if(!o||c)return c;let l=i.draft.value,m=Z[l.at]??null,u=r?`/tank/${t}/test?of=${r}`:`/tank/${t}/test`,d=Object.values(l.readings),p=sa(d),$=(f,g={})=>{to(),i.set({...g,at:f<Z.length?Math.max(f,0):V}),scrollTo(0,0)},_=f=>$(Z.indexOf(f),dt.includes(f)?{from:l.at}:{}),w=()=>i.save(()=>{let f={tank:t,test:T(),...l.when?{at:l.when}:{}};return{writes:d.map(g=>({type:"put",kind:"reading",id:T(),fields:{...g,...f}})),said:n("saved.readings",{count:d.length}),to:`/tank/${t}`}}),y=d.length>0&&p.length===0&&!U(l.when);return a`
    <${x} title=${o.name} up=${`/tank/${t}`}
      act=${a`<${aa} test=${l} alone=${r!==null} to=${$} />
        <button class="main" type="button" disabled=${!y} onClick=${h(()=>{w()})}>
          ${d.length?n("test.save",{count:d.length}):n("test.none")}</button>`}
      aside=${!r&&a`<${oa} at=${l.at} />`}>
      <${na} test=${l} afresh=${()=>i.draft.value=yn(r)} />
      <${G} form=${i} kind="reading" />
      <${ra} strange=${p} here=${m}
        on_go=${f=>$(Z.indexOf(f))} />
      ${m?a`<${la} key=${m} tank=${t} here=${u} parameter=${m} form=${i}
            next=${r?V:l.at+1} to=${$} />`:a`<${ma} readings=${l.readings} on_go=${_} />`}
      ${!r&&l.at<V&&a`<${ia} on_go=${_} />`}
      <${z} at=${l.when} on_at=${f=>i.set({when:f})} />
    <//>`}var oa=({at:t})=>a`<span class="soft figures">${t>V?n("test.seldom"):n("test.place",{at:Math.min(t+1,V),of:V})}</span>`;function na({test:t,afresh:e}){return k.value-t.begun<=ta||Object.keys(t.readings).length===0?null:a`
    <div class="row apart caution"><span>${n("test.begun",{when:N(t.begun,k.value)})}</span>
      <button class="quiet" type="button" onClick=${h(e)}>${n("test.afresh")}</button></div>`}var sa=t=>t.flatMap(({parameter:e,unit:o,value:s})=>{let r=Rt({parameter:e,unit:o},A(e)),i=Et(r,s);return i?[{parameter:e,spec:r,error:i}]:[]});function aa({test:t,alone:e,to:o}){let s=Z[t.at];if(e)return!s||!t.readings[s]?null:a`<button class="quiet tall" type="button" onClick=${h(()=>o(V))}>${n("test.next")}</button>`;let r=t.at>V?t.from??V:t.at-1;return a`
    ${t.at>0&&a`<button class="quiet tall" type="button" onClick=${h(()=>o(r))}>${n("test.back")}</button>`}
    ${s&&a`<button class="quiet tall" type="button" onClick=${h(()=>o(t.at+1))}>
      ${n(t.readings[s]?"test.next":"test.skip")}</button>`}`}var ra=({strange:t,here:e,on_go:o})=>t.map(({parameter:s,spec:r,error:i})=>a`
    <div key=${s} role="alert"><${it} spec=${r} error=${i} />
      ${s!==e&&a`<button class="quiet" type="button" onClick=${h(()=>o(s))}>
        ${n("test.key_again",{what:ke(Vt(s))})}</button>`}</div>`),ia=({on_go:t})=>a`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${n("test.seldom")}</span>
    ${dt.map(e=>a`<button type="button" class="quiet" key=${e}
      onClick=${h(()=>t(e))}>${A(e)}</button>`)}</div>`;function la({tank:t,here:e,parameter:o,form:s,next:r,to:i}){let c=s.draft.value,l=u=>({...c.readings,[o]:{...u,at:b.value.now()}}),m=(u,d,p)=>{let{[o]:$,..._}=c.readings;return{keyed_in:{...c.keyed_in,[o]:p},typed:{...c.typed,[o]:u},readings:d?l(d):_}};return a`<${ca} tank=${t} here=${e} parameter=${o} test=${c}
    on_pick=${u=>i(r,{readings:l(u)})}
    on_type=${(...u)=>s.set(m(...u))}
    on_take=${(...u)=>i(r,m(...u))} />`}function ca({tank:t,here:e,parameter:o,test:s,on_pick:r,on_type:i,on_take:c}){let l=Oo(o),m=s.readings[o]?.value,u=l.unit??se[o],{label:d,unit:p,hold:$,text:_}=j(u),{per_drop:w}=l,y=g=>Dt(l,Number(($(Number(g))*(w??1)).toPrecision(6))),f=_(s.typed[o]??null,s.keyed_in?.[o]);return a`
    <h2 class="asked">${A(o)} <span class="soft unit">
      ${[l.entry==="steps"?u:d,st(o,l.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${l.common?l.entry==="steps"?n("kit.common"):dt.includes(o)?n("kit.drops",{unit:se[o]}):n("kit.keypad"):l.name}</span>
      <a class="quiet" href=${l.id?`/room/test_kit/${l.id}`:`/room/test_kit/new?parameter=${o}&then=${encodeURIComponent(e)}`}>${n(l.id?"kit.edit":"kit.set_up")}
        </a>
    </p>
    ${(l.timers??[]).length>0&&a`<${ua} kit=${l} tank=${t} here=${e} />`}
    ${l.entry==="steps"&&(l.steps??[]).length>0?a`<div class="tiles steps" role="group" aria-label=${A(o)}>
          ${(l.steps??[]).map(g=>a`
            <button type="button" key=${g} aria-pressed=${m===g}
              onClick=${h(()=>r(Dt(l,g)))}>${C(g)}</button>`)}
        </div>`:a`${o==="temperature"&&u==="\xB0C"&&a`<${bn} tank=${t} chosen=${m}
              on_pick=${(g,S)=>c(g,Dt(l,S),p)} />`}
          <${Ft} label=${A(o)} unit=${w?n("test.drops"):d} value=${f}
          on_value=${g=>i(g,g===""?null:y(g),p)} />
          ${w&&f&&a`<p class="soft center" role="status">
            ${n("test.drops_are",{figure:`${C(y(f).value)} ${u}`})}</p>`}`}`}var ua=({kit:t,tank:e,here:o})=>a`
  <ol class="lines timed">${(t.timers??[]).map((s,r)=>{let i=`${e}.${t.id}.${r}`,c=go(i),l=()=>ho({id:i,what:vt(Vt(t.parameter),s.what),seconds:s.seconds,href:o});return a`<li key=${r} class="line"><span>${r+1}. ${s.what}</span>
      <button class="quiet" type="button" onClick=${h(l)}><${q} name="clock" size=${20} />
        <span class="figures">${c===null?bt(s.seconds):c>0?bt(c):n("timer.again",{time:bt(s.seconds)})}</span></button></li>`})}</ol>`,ma=({readings:t,on_go:e})=>a`
  <h2 class="asked">${n("test.answers")}</h2>
  <ul class="lines">${Z.map((o,s)=>{if(!o)return null;let r=t[o],i=r&&mt(r);return a`<li key=${o}><button class="line whole" type="button" onClick=${h(()=>e(o))}>
      <span>${A(o)}</span>
      ${i?a`<span class="figures"><b class="hand">${i.value}</b> ${i.unit}</span>`:a`<span
        class="soft">${n(s>V?"test.seldom":"test.skipped")}</span>`}</button></li>`})}</ul>`;function pa(){let t=X(L),e=t.find(o=>Ve(o)?.advice.test_due)??t[0];return et(()=>{e&&Pt(`/tank/${e.id}/test`,{replace:!0})},[e?.id]),a`<${x} title=${n("test.do")} place="round">
    ${!e&&a`<p class="sentence">${n("round.empty")}</p>`}
  <//>`}export{qn as Change,zn as Dose,ts as DoseGroup,ss as Feed,$s as LongRunPage,ks as Note,Fs as Outlook,wn as Tank,ea as Test,pa as TestNext};
//# sourceMappingURL=tank-U3FIMNJ3.js.map
