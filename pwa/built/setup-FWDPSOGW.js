import{$a as It,Bb as Ut,Eb as z,F as At,Fb as L,G as Et,Ga as Rt,Gb as Ht,Hb as j,Ib as F,Jb as N,Kb as Gt,Lb as zt,Qa as Pt,Qb as Kt,Ra as y,Rb as Ee,Sa as Ae,Sb as Jt,Tb as Vt,Va as he,Vb as Qt,Wa as Me,Wb as Xt,Xa as ne,Ya as Bt,_a as M,cb as Wt,db as qe,f as xt,i as De,ib as Dt,j as Ct,jb as Mt,p as jt,q as Ft,r as Oe,s as Tt,t as Lt,tb as ge,u as Nt,vb as qt,x as Ot}from"./chunk-63OKULQF.js";import{$a as de,D as ke,E as o,Ea as at,Ec as _t,F as A,Fa as it,G as Z,Gb as se,Gc as I,H as ue,Ha as ve,Hc as re,Ia as Se,Ib as $t,Ic as ht,Jb as dt,Ka as xe,Kb as oe,La as ee,Ld as kt,Ma as $e,Mb as We,Mc as E,Nb as Ne,Oa as P,Pa as lt,Pd as G,Qa as k,Qd as yt,Ra as pt,Rd as vt,S as ot,Sa as mt,Sd as St,Ta as Ce,Td as V,Ua as je,Ub as T,Va as ct,Vb as J,Vc as gt,Wa as ut,Wb as v,Wc as wt,Xa as te,Xc as bt,Ya as H,Yb as _e,Za as Fe,_a as Te,_b as ft,cb as fe,d as Be,da as rt,db as Le,g as q,gc as S,h as a,jc as W,kc as C,pc as D,va as ye,wc as B,x as be,ya as nt,z as st}from"./chunk-AQMFKDZO.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import{A as Xe,B as b,C as le,D as pe,E as Ye,F as me,H as K,I as Ze,J as ce,L as et,M as Ie,Q as tt,b as U,c as we,q as Je,u as X,v as Y,y as Ve,z as Qe}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var ys=["total_ammonia","nitrite","nitrate","ph","temperature","kh","gh"];function Yt(e,{kits:t,source:r,label:s}){return[...$e(e,"substrate")?vs(e):[],...$e(e,"hardscape")?Ss(e):[],...$e(e,"warmth")?xs(e):[],...$e(e,"plants")?Cs(e):[],...js(e,r,s),...ys.filter(n=>!t.some(l=>l.parameter===n&&!l.retired)).map(n=>({code:n==="temperature"?"thermometer":"test",key:`test.${n}`,parameter:n}))]}var Zt=e=>k("filled_weight",Fe(e,P(e,"place"))).answer?.total_kg??null;function vs(e){let t=P(e,"substrate"),r=Ce(Se(e),t),s=k("substrate",r).answer;if(!r||!s)return[];let n=s.layers.map((l,i)=>{let{material:p,role:c}=r.layers[i];return{code:l.packs===void 0?"layer":"layer_packs",key:`bed.${c}`,material:p,litres:l.litres,kg:l.kg,count:l.packs??0,pack:(c==="nutrient"?t.nutrient_pack:t.cap_pack)??0,pack_unit:je(p)}});return t.support_bags?[...n,{code:"mesh",key:"mesh",count:t.support_bags,litres:s.support_l}]:n}function Ss(e){let t=P(e,"hardscape");return it.flatMap(r=>{let s=t[`${r}_kg`]??0;return s>0?[{code:"hardscape",key:`hardscape.${r}`,kind:r,kg:s}]:[]})}function xs(e){let t=P(e,"warmth"),r=k("heater_power",Te(e,t)).answer,{ppfd_umol_m2_s:s,hours:n}=de(t);return[...r&&r.heater_w>0?[{code:"heater",key:"heater",watts:r.heater_w}]:[],...t.filter==="none"?[]:[{code:"filter",key:"filter",filter:t.filter}],{code:"lamp",key:"lamp",light:s,hours:n,area_cm2:pt(Se(e)).area_cm2}]}function Cs(e){let{list:t,planting:r}=P(e,"plants"),s=t.filter(i=>i.portions>0),n=Oe(Se(e),r)-s.reduce((i,p)=>i+p.portions,0),l=s.map(i=>({code:"plant",key:`plant.${i.species}`,species:i.species,count:i.portions}));return n>0?[...l,{code:"plants_more",key:"plants_more",count:n}]:l}function js(e,t,r){let s=ye({tank:e,source:t,label:r},e.water_l);return s.needed?s.amount===void 0?[{code:`dechlorinator_${s.missing}`,key:"dechlorinator",litres:e.water_l}]:[{code:"dechlorinator",key:"dechlorinator",amount:s.amount,unit:s.unit,name:s.label.name,litres:e.water_l}]:[]}var R=({label:e,name:t,choices:r,value:s,icons:n=!1,on_value:l})=>a`
  <fieldset class="field"><legend class="label">${e}</legend>
    <div class="tiles two choices">${r.map(i=>a`
      <label key=${i.value}><input class="unseen" type="radio" name=${t} value=${i.value}
        checked=${s===i.value}
        onChange=${()=>l(i.value)} />${n&&a`<${B} name=${i.value} size=${40} />`}
          ${i.label}</label>`)}</div>
  </fieldset>`;var Fs=500,Re=({chosen:e,named:t,about:r,on_count:s,on_remove:n})=>e.map(({species:l,count:i})=>a`
    <div class="chosen" key=${l}>
      <${N} label=${t(l)} also=${r(l)} max=${Fs} value=${i}
        on_value=${p=>s(l,p)} />
      ${i===0&&a`<button class="quiet" type="button" onClick=${E(()=>n(l))}><${B} name="remove"
          size=${20} />${o("remove_named",{what:t(l)})}</button>`}
    </div>`),Pe=({kinds:e,named:t,about:r,on_pick:s})=>a`
  <ul class="lines">${e.map(n=>a`
    <li key=${n}><button class="line whole" type="button" onClick=${E(()=>s(n))}><span
      class="grow">${t(n)}<br /><span class="soft small">${r(n)}</span></span><${B} name="plus"
      /></button></li>`)}</ul>`;function ts({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"warmth"),i=k("heater_power",Te(e,r)),p=k("light_dose",de(r)),c=pe("tank","filter"),u=b("light_dose","ppfd_umol_m2_s");return a`
    <${j} step="warmth" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${F} disabled=${i.errors.length+p.errors.length>0}
        onClick=${()=>{n("done",{temperature_c:r.temperature_c,filter:r.filter})}}>
        ${i.answer?o("setup.next_with",{figure:`${A(i.answer.heater_w,0)} W`}):o("setup.next")}
        <//>`}>
      <section><h2>${o("setup.warmth")}</h2>
        <${N} label=${o("setup.water_warm")} unit="°C" min=${10} max=${32} value=${Number(t.temperature_c)}
          on_value=${m=>s({temperature_c:m})} />
        <${N} label=${o("setup.room_cold")} also=${o("setup.room_cold_why")} unit="°C" min=${-5} max=${35}
          value=${Number(t.room_c)} on_value=${m=>s({room_c:m})} />
        <${R} label=${o("setup.cover")} name="cover"
          choices=${["lid","open"].map(m=>({value:m,label:o(`setup.cover_${m}`)}))} value=${t.cover}
          on_value=${m=>s({cover:m})} />
        <${y} name="heater_power" found=${i}
          show=${["heater_w","loss_w","warming_c_hour","cooling_c_hour"]} />
      </section>
      <section class="section"><h2>${o("setup.light")}</h2>
        <${R} label=${o("setup.light_band")} name="light"
          choices=${["low","medium","high"].map(m=>({value:m,label:o(`setup.light_${m}`)}))}
          value=${t.light} on_value=${m=>s({light:m,ppfd_umol_m2_s:""})} />
        <${N} label=${b("light_dose","hours").label} unit="h" step=${.5} max=${24}
          value=${Number(t.hours)} on_value=${m=>s({hours:m})} />
        <${M} specs=${[{...u,label:o("setup.light_measured")}]} raw=${t} on_raw=${s}
          wrong=${p.errors} />
        ${r.ppfd_umol_m2_s===void 0&&a`<p class="soft small">
          ${o("setup.light_counted",{light:Z(de(r).ppfd_umol_m2_s,0)})}</p>`}
        <${y} name="light_dose" found=${p} show=${["dli_mol_m2_day","band"]} />
      </section>
      <section class="section"><h2>${o("setup.moves")}</h2>
        <p>${o("setup.moves_why")}</p>
        <${R} label=${c.label} name="filter" choices=${c.choices} value=${t.filter}
          on_value=${m=>s({filter:m})} />
      </section>
    <//>`}var Ts=8;function ss({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"plants"),i=pe("tank","planting"),p=we("planting_practice"),c=Oe(z(e),t.planting),u=P(e,"warmth"),m=t.list,$=m.reduce((f,d)=>f+d.portions,0),h=(f,d)=>s({list:m.some(_=>_.species===f)?m.map(_=>_.species===f?{species:f,portions:d}:_):[...m,{species:f,portions:d}]}),g=Tt(u).filter(({key:f})=>!m.some(({species:d})=>d===f));return a`
    <${j} step="plants" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${F} onClick=${()=>{n("done",{planting:r.planting})}}>
        ${$?o("setup.next_portions",{count:$}):o("setup.next")}<//>`}>
      <p>${o("setup.plants_why")}</p>
      <${R} label=${i.label} name="planting" choices=${i.choices} value=${t.planting}
        on_value=${f=>s({planting:f})} />
      <p class="sentence">${o("setup.portions",{count:c})}</p>
      ${t.planting!=="none"&&a`<details class="more"><summary>${o("bench.sources")}</summary>
        <p>${o("setup.portions_how",{percent:A(100*p[`cover_${t.planting}`],0),area:v(p.portion_cm2,"cm\xB2",0)})}</p>
        <p class="soft small">${U("constants").groups.planting_practice.note}</p>
        <p class="soft small">${o("bench.provenance.common practice")}</p></details>`}
      ${m.length>0&&a`<section class="section"><h2>${o("setup.plants_chosen",{have:$,wanted:c})}</h2>
        <${Re} chosen=${m.map(({species:f,portions:d})=>({species:f,count:d}))} named=${ae}
          about=${es} on_count=${h}
          on_remove=${f=>s({list:m.filter(({species:d})=>d!==f)})} />
        </section>`}
      <section class="section"><h2>${o("setup.plants_fit")}</h2>
        <p class="soft small">${o("setup.plants_order")}</p>
        <${Pe} kinds=${g.slice(0,Ts).map(({key:f})=>f)} named=${ae} about=${es}
          on_pick=${f=>h(f,1)} />
        <h3>${o("setup.plant_other")}</h3>
        <${Ae} rows="plants" near=${W("own_plant").map(({name:f})=>f)} value=""
          then=${`/tank/${e.id}/setup/plants`} on_pick=${f=>h(f,1)} />
      </section>
    <//>`}var ae=e=>U("plants").rows[e]?.name??e;function es(e){let t=U("plants").rows[e];if(!t)return"";let[r,s]=t.temperature_c;return o("setup.plant_about",{growth:o(`setup.growth_${t.growth}`),position:o(`setup.position_${t.position}`),low:J(r),high:J(s),light:o(`setup.light_${t.light}`)})}function Ue({code:e,key:t,...r}){let s=Object.fromEntries(Object.entries(r).map(([n,l])=>[n,os[n]?os[n](l,r):l]));return o(`buy.${e}`,s)}var os={material:e=>Ls(e),litres:e=>Q(T(e)),kg:e=>Q(v(e,"kg",1)),filter:e=>K(pe("tank","filter"),e),pack:(e,{pack_unit:t})=>Q(v(e,t,1)),kind:e=>o(`setup.of_${e}`),watts:e=>Q(`${A(e,0)} W`),light:e=>A(e,0),hours:e=>Z(e,1),area_cm2:e=>Q(v(e,"cm\xB2",0)),species:e=>`${ae(e)} (${e})`,amount:(e,{unit:t})=>Q(_e({amount:e,unit:t})),parameter:e=>ot(Ne(e))},Q=e=>e.replaceAll(" ","\xA0"),rs=e=>Q(v(e,"kg",0)),Ls=e=>K(me(b("substrate","layers"),"material"),e);function Ns({id:e}){let t=C("tank",e),r=se(`buy.${e}`,()=>[]),s=q("");if(!t||!xe(t))return a`<${V} up="/tanks" />`;let n=H(t),l=Yt(n,{kits:W("test_kit"),source:C("source_water",n.source_water),label:C("label",n.dechlorinator)}),i=Zt(n),p=[o("buy.water",{litres:T(n.water_l)}),...i===null?[]:[o("buy.weight",{kg:rs(i)})],o(ee(n)?"buy.first_test":"buy.tests")],c=()=>[o("buy.for",{tank:n.name}),...l.map($=>`\u2013 ${Ue($)}`),"",...p].join(`
`),u=async()=>{try{if(navigator.share)return await navigator.share({title:o("buy.for",{tank:n.name}),text:c()});await navigator.clipboard.writeText(c()),ht(o("bench.copied"))}catch($){$.name!=="AbortError"&&(s.value=c())}},m=$=>r.value=r.value.includes($)?r.value.filter(h=>h!==$):[...r.value,$];return a`
    <${G} title=${o("buy.title")} up=${`/tank/${e}`} aside=${a`<span class="soft">${n.name}</span>`}
      act=${a`<button class="quiet tall screen-only" type="button"
        onClick=${E(()=>{Kt("limnary-shopping")})}>${o("buy.print")}
        </button><button class="main screen-only" type="button" onClick=${E(()=>{u()})}>${o("buy.send")}
        </button>`}>
      <ul class="lines buy">${l.map($=>a`
        <li class="line" key=${$.key}><label class="check grow"><input type="checkbox"
          checked=${r.value.includes($.key)} onChange=${()=>m($.key)} /><span>
            ${Ue($)}</span>
          </label></li>`)}</ul>
      ${s.value&&a`<textarea class="to-copy" readonly rows="8" aria-label=${o("bench.copy_by_hand")}
        onFocus=${bt}>${s.value}</textarea>`}
      <section class="section"><h2>${o("buy.know")}</h2><ul class="why">
        ${p.map($=>a`<li key=${$}>${$}</li>`)}</ul>
        <p class="caution small">${o("buy.floor")}</p><p class="soft small">${o("buy.ticks")}</p></section>
    <//>`}var ns=[...xt,"kh"];function Os(){let e=se("grid",()=>({})),t=fe(D);if(!S.value.may("reading"))return a`<${Ee} title=${o("grid.title")} up="/tanks" />`;let r=(s,n)=>e.value={...e.value,[s]:n};return a`
    <${G} title=${o("grid.title")} up="/tanks" place="tanks" aside=${a`<span></span>`}>
      <p class="soft">${o("grid.why")}</p>
      <div class="wide grid-rows">${t.map(s=>a`<${As} key=${s.id} tank=${s} typed=${e.value[s.id]??{}}
        on_typed=${n=>r(s.id,n)} />`)}</div>
    <//>`}function As({tank:e,typed:t,on_typed:r}){let s=q(""),n=ns.filter(p=>t[p]?.trim()),l=async()=>{let p=n.map(m=>Rs(m,t[m]));if(s.value=p.flatMap(m=>"wrong"in m?[m.wrong]:[]).join(" "),s.value||p.length===0)return!1;let c={tank:e.id,at:S.value.now(),test:I()},u=p.map(m=>({type:"put",kind:"reading",id:I(),fields:{..."reading"in m?m.reading:{},...c}}));return await re(u,o("saved.readings",{count:u.length}))?(r({}),!0):!1},i=async p=>{let{key:c,currentTarget:u}=p;c==="Enter"&&(p.preventDefault(),await l()&&as(u,1,-1/0)?.focus());let m=Es[c];!m||m.across&&u.value&&u.selectionStart!==(m.across>0?u.value.length:0)||(p.preventDefault(),as(u,m.down,m.across)?.focus())};return a`
    <section class="grid-row" aria-label=${e.name}><h2>${e.name}</h2>
      <div class="field grid-cells">${ns.map(p=>a`<label key=${p}><span class="small">${Ne(p)}</span>
        <input inputmode="decimal" autocomplete="off" value=${t[p]??""}
          onInput=${gt(c=>r({...t,[p]:c}))} onKeyDown=${i} /></label>`)}<button class="quiet" type="button" disabled=${n.length===0} aria-label=${o("grid.save_named",{what:e.name})} onClick=${E(()=>{l()})}>${o("grid.save")}</button></div>
      ${s.value&&a`<p class="wrong" role="alert">${s.value}</p>`}
    </section>`}var Es={ArrowDown:{down:1,across:0},ArrowUp:{down:-1,across:0},ArrowRight:{down:0,across:1},ArrowLeft:{down:0,across:-1}};function as(e,t=0,r=0){let s=[...document.querySelectorAll(".grid-row")],n=e.closest(".grid-row"),l=p=>[...p?.querySelectorAll("input")??[]],i=l(n).indexOf(e);return l(s[s.indexOf(n)+t])[r===-1/0?0:i+r]}function Rs(e,t){let r=Dt(e),s=st(t,be(ke())),{hold:n}=oe(e==="temperature"?"\xB0C":""),l="value"in s?n(s.value):null,i=jt({parameter:e,unit:r.unit},We(e));return l===null||Ft(i,l)?{wrong:ue(We(e),o("allowed",{allowed:tt(i)}))}:{reading:Mt(r,l)}}var Ps=["capped","plain","bare"],Bs={nutrient:["garden_soil","potting_soil","baked_clay"],cap:["sand","gravel","lava","baked_clay"]};function ls({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"substrate"),i=k("substrate",Ce(z(e),r)),p=b("substrate","layers").item,c=Qe(p.fields,"material");return a`
    <${j} step="substrate" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${F} disabled=${i.errors.length>0} onClick=${()=>{n("done")}}>
        ${i.answer?o("setup.next_with",{figure:T(i.answer.litres)}):o("setup.next")}<//>`}>
      <${R} label=${o("setup.bed")} name="bed"
        choices=${Ps.map(u=>({value:u,label:o(`setup.bed_${u}`)}))} value=${t.bed}
        on_value=${u=>s({bed:u})} />
      ${t.bed==="capped"&&a`<${is} of="nutrient" title=${o("setup.layer_nutrient")} material=${c}
        raw=${t} set=${s} layer=${i.answer?.layers[0]} />`}
      ${t.bed!=="bare"&&a`
        <${is} of="cap" title=${o(t.bed==="capped"?"setup.layer_cap":"setup.layer_plain")}
          material=${c} raw=${t} set=${s} layer=${i.answer?.layers.at(-1)} />
        <details class="more" open=${t.support_bags>0}><summary>${o("setup.mesh")}</summary>
          <p class="soft small">${o("setup.mesh_why")}</p>
          <${N} label=${o("setup.mesh_bags")} value=${Number(t.support_bags)} max=${40}
            on_value=${u=>s({support_bags:u})} />
          <${N} label=${o("setup.mesh_size")} unit="L" value=${Number(t.support_bag_l??2)} step=${.5}
            min=${.5} max=${20} on_value=${u=>s({support_bag_l:u})} />
        </details>
        <${y} name="substrate" found=${i}
          show=${["litres","kg",...t.support_bags>0?["support_l"]:[],"front_cm","back_cm","slope_deg"]}
          />
        ${z(e).shape!=="cuboid"&&a`<p class="soft small">${o("setup.as_rectangle")}</p>`}`}
    <//>`}var is=({of:e,title:t,material:r,raw:s,set:n,layer:l})=>a`
  <section class="section"><h2>${t}</h2>
    <${R} label=${r.label} name=${`${e}-material`}
      choices=${r.choices.filter(i=>Bs[e].includes(i.value))} value=${s[e]}
      on_value=${i=>n({[e]:i})} />
    <${N} label=${o("setup.front")} unit="cm" step=${.5} max=${20} value=${Number(s[`${e}_front_cm`])}
      on_value=${i=>n({[`${e}_front_cm`]:i})} />
    <${N} label=${o("setup.back")} unit="cm" step=${.5} max=${30} value=${Number(s[`${e}_back_cm`])}
      on_value=${i=>n({[`${e}_back_cm`]:i})} />
    <${M} specs=${[{name:`${e}_pack`,label:o("setup.pack"),unit:je(s[e])}]} raw=${s}
      on_raw=${n} />
    ${l&&a`<p class="sentence">
      ${o(l.packs===void 0?"setup.layer_found":"setup.layer_packs",{litres:T(l.litres),kg:v(l.kg,"kg",1),count:l.packs??0})}</p>`}
  </section>`,Is=["stone","lava","wood"];function ps({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"hardscape"),i=ct(r),p=we("hardscape_densities"),c=k("volume",te({...e,[ve("hardscape")]:{state:"done",said:r}}));return a`
    <${j} step="hardscape" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${F} onClick=${()=>{n("done")}} />`}>
      <p>${o("setup.hardscape_why")}</p>
      ${Is.map(u=>a`<${N} key=${u} label=${o(`setup.of_${u}`)}
          also=${o("setup.density",{density:Z(p[u],2)})} unit="kg" step=${.5} max=${500}
          value=${Number(t[`${u}_kg`]??0)}
        on_value=${m=>s({[`${u}_kg`]:m})} />`)}
      <p class="sentence">
        ${o("setup.displaced",{litres:T(i.litres),kg:v(i.kg,"kg",1)})}</p>
      <${y} name="volume" found=${c} show=${["water_l","gross_l"]} />
    <//>`}function cs({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"fill"),i=q(!1),p=k("volume",te(e,r.metered_l)),c=p.answer?.water_l??0,u=C("source_water",e.source_water),m=C("label",e.dechlorinator),$=c?ye({tank:{...e,water_l:c},source:u,label:m},c):null,g=P(e,"plants").list.filter(({portions:w})=>w>0),f=b("volume","metered_l"),d={litres:ms(T(c)),dose:$?.amount!==void 0?ms(_e($)):""},_=async()=>{if(!p.answer)return;i.value=!0;let w=S.value.now(),O=rt(u,"total_ammonia",m),ws=[...Ws(e,w,$,c,O),...t.plants_in?Ds(e,w,g):[]],{water_l:bs,gross_l:ks}=p.answer;await n("done",{measures:p.payload,water_l:bs,gross_l:ks,started_at:w},{more:ws,words:o("setup.filled",{tank:e.name,...d})}),i.value=!1};return a`
    <${j} step="fill" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      act=${a`<${F} disabled=${!p.answer||i.value} onClick=${()=>{_()}}>
        ${o($?.amount!==void 0?"setup.log_fill_dose":"setup.log_fill",d)}<//>`}>
      <p class="caution">${Ze("heater_power","electricity")}</p>
      <p>${o("setup.fill_why")}</p>
      <${y} name="volume" found=${p} show=${["water_l","gross_l"]} />
      <${M} specs=${[f]} raw=${t} on_raw=${s} wrong=${p.errors} />
      ${g.length>0&&a`
        <label class="check"><input type="checkbox" checked=${!!t.plants_in}
          onChange=${wt(w=>s({plants_in:w}))} />
          ${o("setup.plants_in",{count:g.length})}</label>
        <p class="soft small">${g.map(({species:w})=>ae(w)).join(", ")}</p>`}
      <${Qt} tank=${e} here=${`/tank/${e.id}/setup/fill`} />
      <${Ms} dose=${$} payload=${$?.amount===void 0?null:nt({water_l:c},u,$.label,c)} />
    <//>`}function Ws(e,t,r,s,n){if(r?.amount===void 0)return[];let{label:l,amount:i,unit:p}=r,c={tank:e.id,at:t,label:l.id,what:l.name,amount:i,unit:p,for_litres:s};return[{type:"put",kind:"dose",id:I(),fields:n>0?{...c,tan_mg_n_l:n}:c}]}var Ds=(e,t,r)=>r.map(({species:s,portions:n})=>({type:"put",kind:"planting",id:I(),fields:{tank:e.id,at:t,change:"plant",species:s,amount:o("setup.portions_in",{count:n}),portions:n}})),ms=e=>e.replaceAll(" ","\xA0"),Ms=({dose:e,payload:t})=>e?e.needed?e.amount===void 0?a`<p class="soft">${o(e.missing==="source"?"setup.dose_source":"setup.dose_label")}</p>`:a`
    <p class="dose"><span class="big">${_e(e)}</span><br />${e.label.name}<br /><span class="soft small">
      ${o(`dose.basis_${e.label.basis}`)}</span></p>
    <${y} name="dechlorinator_dose" found=${{payload:t,answer:e.answer,errors:[]}}
      show=${["freed_ammonia_mg_n_l"]} cautions=${["label_first","no_mixing","freed_ammonia","no_airing"]} />`:a`<p class="dose">${o("dose.none")}</p>`:null;var us=["length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],$s=()=>o("setup.name_first",{count:W("tank").length+1});function He({tank:e}){let t=`setup.${e?.id??"new"}.glass`,r=se(t,()=>({})),s=q(""),{inputs:n}=X().volume,l={measures:"outside",...e?.measures,name:e?.name??$s(),...r.value},i=d=>r.value={...r.value,...d},p=d=>Ve(n,d),c=b("volume","measures"),{name:u,...m}=l,$=he(n.filter(d=>["shape","measures",...us].includes(d.name)),lt(m)),h=k("volume",l.shape?$:null),g=h.errors.filter(({field:d})=>!(d in $)).flatMap(({field:d})=>p(d)?.label??[]),f=async()=>{let d=e?.id??I();try{let _=qs(e,String(u).trim()||$s(),$),w=[{type:"put",kind:"tank",id:d,fields:_}],O=o("setup.saved",{step:o("setup.step.glass")});if(Object.keys(_).length>0&&!await re(w,O))return;$t(t),kt(Ht(d,"glass"))}catch(_){s.value=_t(_,[...n,...Y().tank.fields])}};return a`
    <${j} step="glass" up=${e?`/tank/${e.id}`:"/tanks/new"} problem=${s.value}
      act=${a`<${F} disabled=${!h.answer} onClick=${()=>{f()}} />`}>
      <${R} label=${o("tank.shape")} name="shape" choices=${b("volume","shape").choices}
        value=${l.shape} icons
        on_value=${d=>i({shape:d})} />
      ${l.shape&&a`
        <${R} label=${c.label} name="measures" choices=${c.choices}
          value=${l.measures} on_value=${d=>i({measures:d})} />
        <${M}
          specs=${n.filter(d=>us.includes(d.name)&&At(d,n,l)).map(d=>Xe(d,_=>l[_]))}
          raw=${l} on_raw=${i} wrong=${h.errors} />
        ${g.length>0&&a`<p class="soft">${o("bench.still_needed",{fields:g.join(", ")})}</p>`}
        <${y} name="volume" found=${h.answer?h:{...h,errors:[]}}
          show=${["gross_l","water_l","surface_cm2"]} cautions=${[]} />
        <${ne} specs=${Y().tank.fields.filter(d=>d.name==="name")}
          raw=${{name:u}} on_raw=${i} errors=${[]} />`}
    <//>`}function qs(e,t,r){e&&Ie("volume",te({...e,measures:r}));let{water_l:s,gross_l:n}=Ie("volume",r),l=e?ge({measures:mt(z(e))},{measures:r}):{measures:r};return ge(e,{...e?{}:{walk_order:Le(D)},name:t,[ve("glass")]:{state:"done"},...l.measures?{...l,water_l:s,gross_l:n}:{}})}function ds({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=L(e,"place"),{shape:i,glass_mm:p}=z(e),c=i==="cuboid",u=[...c?[]:["tank_kg"],...c&&!p?["glass_mm"]:[],"stand_kg","equipment_kg","footprint_length_cm","footprint_width_cm"],m=(c?p?[]:["glass_mm"]:["tank_kg","footprint_length_cm","footprint_width_cm"]).filter(g=>r[g]===void 0),$=m.length>0?{payload:{},errors:[]}:k("filled_weight",Fe(e,r)),h=g=>b("filled_weight",g);return a`
    <${j} step="place" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${F} onClick=${()=>{n("done",r.place?{place:String(t.place).trim()}:{})}}>
        ${$.answer?o("setup.next_with",{figure:v($.answer.total_kg,"kg",0)}):o("setup.next")}
        <//>`}>
      <p>${o("setup.place_why")}</p>
      <${M} specs=${u.map(h)} raw=${t} on_raw=${s} wrong=${$.errors} />
      ${m.length>0&&a`<p class="soft">
        ${o("bench.still_needed",{fields:m.map(g=>h(g).label).join(", ")})}</p>`}
      <${y} name="filled_weight" found=${$}
        show=${["total_kg","footprint_kpa","dwelling_kpa","foot_kg","empty_tank_kg"]} />
      <${ne} specs=${Y().tank.fields.filter(g=>g.name==="place")}
        raw=${{place:t.place??e.place}} on_raw=${s} errors=${[]} />
    <//>`}var Us=8;function hs({tank:e}){let{raw:t,set:r,save:s,problem:n}=L(e,"stock"),l=t.list??e.planned_stock??[],i=l.filter(({count:_})=>_>0),p=(_,w)=>r({list:l.some(O=>O.species===_)?l.map(O=>O.species===_?{...O,count:w}:O):[...l,{species:_,count:w}]}),c=_=>p(_,U("species").rows[_]?.group_min??1),u=W("own_species"),m=Lt(i,u),$=C("source_water",e.source_water),h=Be(()=>Pt(e.id),[e,$]),g=Be(()=>Nt(h,i,u),[h,u,JSON.stringify(i)]),f=_=>{let w=Ct(h,_,u);return w.length>0?o("setup.not_for_water",{why:w.map(({kind:O})=>Qs(O)).join("; ")}):""},d=_=>[_s(_),f(_)].filter(Boolean).join(". ");return a`
    <${j} step="stock" name=${e.name} up=${`/tank/${e.id}`} problem=${n}
      skip=${()=>{s("skipped")}}
      act=${a`<${F} onClick=${()=>{s("done",{planned_stock:i})}} />`}>
      <p>${o("setup.stock_why")}</p>
      <${Xt} tank=${e} here=${`/tank/${e.id}/setup/stock`} />
      ${($?.ph===void 0||$.gh_dgh===void 0)&&a`<p class="caution">${o("setup.water_unknown")}</p>`}
      <${Re} chosen=${l} named=${fs} about=${d} on_count=${p}
        on_remove=${_=>r({list:l.filter(({species:w})=>w!==_)})} />
      ${g.length>0&&a`<section class="section"><h2>${o("setup.animals_fit")}</h2>
        <p class="soft small">${o("setup.animals_order")}</p>
        <${Pe} kinds=${g.slice(0,Us).map(({key:_})=>_)} named=${fs} about=${_s}
          on_pick=${c} /></section>`}
      <section class="section"><h2>${o("setup.animal_other")}</h2>
        <${Ae} rows="species" near=${u.map(({name:_})=>_)} value=""
          then=${`/tank/${e.id}/setup/stock`} on_pick=${c} warned=${f} /></section>
      ${m.length>0&&a`<p class="caution">${o("setup.unweighed",{who:m.join(", ")})}</p>`}
      <${Hs} tank=${e} stock=${i} figures=${h} />
    <//>`}function Hs({tank:e,stock:t,figures:r}){let s=W("own_species"),n=It(e.id),l=Ot(t,n),i=De({figures:ft(r),present:n,wanted:l,own:s});if(!i)return null;if(i.missing)return a`<${Wt} tank=${e} missing=${i.missing} />`;let p=i.whole?.found??{payload:i.stocking.input,answer:i.stocking.answer,errors:[]},c={payload:i.company.input,answer:i.company.answer,errors:[]},u=[...ce("stocking_limit",["small_lots","welfare"]),...ce("compatibility")];return a`
    <p class="sentence">${Gs(i)}</p>
    ${e.started_at?a`<${Gt} tank=${{...e,planned_stock:t}} />`:a`<p>${zs(De({figures:r,present:n,wanted:l,own:s}))}</p>`}
    ${p.answer?.notes.map(m=>a`<p class="soft small" key=${m}>${m}</p>`)}
    <details class="more"><summary>${o("setup.bears_grown")}</summary><${y} name="stocking_limit"
      found=${p} show=${["limit_g","binding","present_g","nitrogen_g","oxygen_g","room_g"]} cautions=${[]} />
      </details>
    <${Js} answer=${c.answer} />
    <${y} name="compatibility" found=${c} show=${[]} cautions=${[]} />
    ${u.map(m=>a`<p class="caution small" key=${m}>${m}</p>`)}`}function Gs({kinds:e,over:t,binds:r,whole:s}){if(t)return o("many.over",{by:qe(r)});if(!s)return o("setup.plan_all_in");if(s.fits)return o("setup.plan_fits",{count:s.count});let l=e.filter(({come:i,wanted:p})=>i<p).map(({name:i,come:p,wanted:c})=>o("setup.plan_of",{come:p,wanted:c,name:i})).join("; ");return[o("setup.plan_not",{by:qe(s.by)}),l].filter(Boolean).join(" ")}function zs(e){if(!e||e.missing)return null;if(e.whole?.fits)return o("setup.plan_first_all");let t=e.kinds.filter(({come:s})=>s>0),r=t.map(({species:s,come:n})=>Ut(s,n)).join("\xA0\xB7 ");return t.length>0?o("setup.plan_first",{who:r}):o("setup.plan_wait")}var Ks=e=>[Ge("temperature",e.temperature_low_c,e.temperature_high_c,J),Ge("ph",e.ph_low,e.ph_high,t=>A(t,1)),Ge("gh",e.gh_low_dgh,e.gh_high_dgh,t=>A(t,0))].filter(Boolean).join("\xA0\xB7 "),Ge=(e,t,r,s)=>typeof t=="number"&&typeof r=="number"&&o(`setup.water_${e}`,{low:s(t),high:s(r)});function Js({answer:e}){if(!e)return null;let t=le("compatibility","verdict"),r=le("compatibility","findings");return a`
    <section class="section"><h2>${ue(t.label,K(t,e.verdict))}</h2>
      <p>${Ks(e)}</p>
      <ul class="why">${e.findings.map((s,n)=>a`<li key=${n}>
        ${Vs(s,K(me(r,"kind"),s.kind))}</li>`)}</ul>
    </section>`}function Vs(e,t){let r=[e.a,e.b].filter(Boolean).join(" \u2013 "),s=Ye(le("compatibility","findings")).filter(({type:i})=>i!=="text"),l=Et({outputs:s},e,{system:dt.value,marks:be(ke())}).filter(({name:i})=>i.endsWith("_low")||i.endsWith("_high")).map(({label:i,text:p,unit:c})=>ue(i,[p,c].filter(Boolean).join("\xA0"))).join("; ");return l?o("setup.finding_figures",{who:r,what:t,figures:l}):o("setup.finding",{who:r,what:t})}var Qs=e=>K(me(le("compatibility","findings"),"kind"),e),fs=e=>U("species").rows[e]?.name??e;function _s(e){let t=U("species").rows[e];if(!t)return"";let[r,s]=t.temperature_c;return o("setup.animal_about",{length:v(t.length_cm,"cm",1),group:t.group_min,low:J(r),high:J(s)})}var Xs={glass:He,place:ds,substrate:ls,hardscape:ps,warmth:ts,plants:ss,stock:hs,fill:cs,first_fish:zt},Ys=["stock","first_fish"];function Zs({id:e,step:t}){if(!e)return S.value.may("tank")?a`<${He} tank=${null} />`:a`<${V} up="/tanks" />`;let r=C("tank",e);if(!r||!xe(r))return a`<${V} up="/tanks" />`;let s=H(r),n=t==="first_fish"?S.value.may("stock_change"):S.value.may("tank");if(!t||!at.some(i=>i===t)||!n||!(ee(s)||Ys.includes(t)))return a`<${St} tank=${s} />`;let l=Xs[t];return a`<${l} tank=${s} />`}var ze=["measures","length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],ie=["place","started_at","seeded","planting","filter","feed_g_day","protein_fraction","fish_g","temperature_c","ph","kh_dkh","note"];function eo({id:e}){let t=e?C("tank",e):null,r=t&&H(t),s=Jt({name:`tank.${e??"new"}`,held:r,first:()=>lo(r)}),n=e?`/tank/${e}`:"/tanks",l=o(e?"tank.edit":"tank.new");if(e&&!r)return a`<${V} up="/tanks" />`;if(!S.value.may("tank"))return a`<${Ee} title=${l} up=${n} why="looking_only.this" />`;let{measures:i,about:p}=s.draft.value,c=io(i),u=[...c.errors,...s.errors.value],m=()=>(s.tried.value=!0,c.answer?s.save(()=>to(e,r,s.opened,p,c)):document.querySelector(".wrong")?.scrollIntoView({block:"center"}));return a`
    <${G} title=${l} up=${n} book
      news=${a`<${qt} opened=${s.opened} held=${r}
        names=${["name","water_l","measures",...ie]} />`}
      act=${a`<${ao} found=${c} /><button class="main" type="button" onClick=${E(()=>{m()})}>
        ${o("tank.save")}</button>`}>
      ${!e&&a`<p class="from-glass"><a class="quiet" href="/tanks/setup">${o("setup.from_glass")}</a><span
        class="soft small">${o("setup.from_glass_why")}</span></p>`}
      <${Vt} form=${s} kind="tank" beside=${["name",...ie]} />
      <${oo} form=${s} error=${c.errors.find(({field:$})=>$==="shape")} />
      ${i.shape&&a`
        <${ro} form=${s} errors=${u} notes=${c.answer?.notes??[]} />
        <section class="entry"><span class="in-margin" aria-hidden="true">3</span><div>
          <h2 class="unseen">${o("tank.about")}</h2>
          <${no} form=${s} errors=${u} open=${!!e} />
          ${ce("volume").map($=>a`<p class="caution small" key=${$}>
            ${$}</p>`)}
          ${r&&a`<${Rt} meta=${r.meta} />`}
          ${r&&a`<p><button class="quiet" type="button" onClick=${E(()=>{so(r)})}>
            ${o(r.resting?"tank.back":"tank.away")}</button></p>`}
        </div></section>`}
    <//>`}var Ke=e=>Y().tank.fields.filter(({name:t})=>e.includes(t));function to(e,t,r,s,n){let l=he(Ke(["name",...ie]),s),i=e?Object.fromEntries(ie.filter(f=>!(f in l)).map(f=>[f,null])):{},p=e??I(),{water_l:c,gross_l:u}=n.answer??{},m=e?{}:{walk_order:Le(D)},$={...i,...l,measures:n.payload,water_l:c,gross_l:u,...m},h=ge(r,$);return t&&ee(t)&&h.measures&&(h.measures=ut(t,h.measures)),{writes:Object.keys(h).length?[{type:"put",kind:"tank",id:p,fields:h}]:[],said:o(e?"saved.tank":"saved.new_tank",{tank:l.name}),to:`/tank/${p}`}}var so=({id:e,name:t,resting:r})=>re([{type:"put",kind:"tank",id:e,fields:{resting:!r}}],o(r?"saved.back":"saved.away",{tank:t}));function oo({form:e,error:t}){let{measures:r}=e.draft.value,s=b("volume","shape");return a`
    <section class="entry"><span class="in-margin" aria-hidden="true">1</span><div>
      <fieldset><legend class="label">${o("tank.shape")}</legend>
        <div class="tiles two">${s.choices.map(({value:n,label:l})=>a`
          <label key=${n}><input class="unseen" type="radio" name="shape" value=${n}
            checked=${r.shape===n}
            onChange=${()=>e.set({measures:{...r,shape:n}})} /><${B} name=${n}
              size=${40} />${l}</label>`)}</div>
      </fieldset>
      ${e.tried.value&&t&&a`<${Bt} spec=${s} error=${t} />`}
    </div></section>`}function ro({form:e,errors:t,notes:r}){let{measures:s}=e.draft.value,{inputs:n}=X().volume,l=i=>a`<${ne} specs=${i} all=${n} raw=${s} errors=${t} tried=${e.tried.value}
      on_raw=${p=>e.set({measures:p})} />`;return a`
    <section class="entry"><span class="in-margin" aria-hidden="true">2</span><div>
      <h2 class="unseen">${o("tank.measures")}</h2>
      ${l(n.filter(({name:i})=>ze.includes(i)))}
      <details class="more" open=${po(s)}><summary>${o("tank.exact")}</summary>
        ${l(n.filter(({name:i})=>i!=="shape"&&!ze.includes(i)))}
      </details>
      ${r.map(i=>a`<p class="soft small" key=${i}>${i}</p>`)}
    </div></section>`}function no({form:e,errors:t,open:r}){let s=n=>a`<${ne} specs=${Ke(n)} raw=${e.draft.value.about} errors=${t} tried=${e.tried.value}
      on_raw=${l=>e.set({about:l})} />`;return a`
    ${s(["name"])}
    <details class="more" open=${r}><summary>${o("tank.more")}</summary>${s(ie)}</details>`}var ao=({found:e})=>a`
  <output class="found" aria-label=${o("tank.litres")}>
    ${e.answer?a`<b class="hand">${A(oe("L").show(e.answer.water_l),1)}
    </b> ${oe("L").label}`:a`<span class="soft">– ${oe("L").label}</span>`}</output>`;function io(e){let t=he(X().volume.inputs,e);try{return{answer:et("volume",t),payload:t,errors:[]}}catch(r){if(!(r instanceof Je))throw r;return{payload:t,errors:r.errors}}}var lo=e=>({measures:e?.measures?Me(X().volume.inputs,e.measures):{},about:e?Me(Ke(["name",...ie]),e):{}}),po=e=>Object.keys(e).some(t=>t!=="shape"&&!ze.includes(t)&&e[t]);function mo(){let e=fe(D,{resting:!0}),t=fe(D);return a`
    <${G} title=${o("place.tanks")} place="tanks"
      act=${S.value.may("tank")&&a`<a class="main" href="/tanks/new"><${B} name="plus" />
        ${o(t.length?"tank.new":"tank.first")}</a>`}>
      ${t.length+e.length>0&&a`<p><a class="quiet tall" href="/search"><${B} name="search" />
        ${o("search.title")}</a></p>`}
      ${t.length>0?a`<${gs} tanks=${t} />`:yt().length===0&&a`<p class="sentence">
        ${o("tanks.empty")}</p>`}
      <${vt} />
      ${t.length>0&&a`<ul class="lines section"><li><a class="line" href="/timeline"><span><b>${o("history.all_tanks")}</b><br />
          <span class="soft small">${o("history.ways")}</span></span></a></li>
        ${S.value.may("reading")&&a`<li><a class="line" href="/grid"><span><b>${o("grid.title")}</b><br /><span class="soft small">
          ${o("grid.short")}</span></span></a></li>`}
        <li><a class="line" href="/labels"><span><b>${o("labels.title")}</b><br /><span class="soft small">
          ${o("labels.short")}</span></span></a></li></ul>`}
      ${e.length>0&&a`<section class="section"><h2>${o("tanks.away")}</h2><${gs} tanks=${e} />
        </section>`}
    <//>`}var gs=({tanks:e})=>a`
  <ul class="lines">${e.map(t=>a`
    <li key=${t.id}><a class="line" href=${`/tank/${t.id}`}>
      <span class="grow"><b>${t.name}</b>${t.place&&a`<br /><span class="soft small">${t.place}</span>`}
        </span>
      <span class="figures soft">${T(H(t).water_l)}</span></a></li>`)}</ul>`;export{Ns as Buy,Os as Grid,Zs as SettingUp,eo as TankForm,mo as Tanks};
//# sourceMappingURL=setup-FWDPSOGW.js.map
