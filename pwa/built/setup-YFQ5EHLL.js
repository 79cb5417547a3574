import{$a as It,Bb as G,C as Ot,Cb as T,D as At,Da as Et,Db as Ut,Eb as C,Fb as j,Gb as L,Hb as Ht,Ib as Gt,Na as Rt,Nb as zt,Oa as y,Ob as Ae,Pa as Oe,Pb as Kt,Qb as Jt,Sa as _e,Sb as Vt,Ta as De,Tb as Qt,Ua as re,Va as Pt,Xa as D,Ya as Bt,ab as Me,f as We,fb as Wt,g as xt,gb as Dt,m as Ct,n as jt,o as Ne,p as Ft,q as Tt,qb as he,r as Lt,sb as Mt,u as Nt,yb as qt}from"./chunk-VO4XJGUN.js";import{a as ft}from"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{Ac as yt,Ba as de,Bc as vt,Ca as Te,Cc as St,Db as A,Dc as J,M as ke,Mb as gt,Nb as wt,Ob as bt,P as rt,Sa as dt,_a as S,ba as nt,bb as I,ca as at,cb as x,da as ye,ea as ve,ga as Se,hb as W,ia as Z,ja as ue,la as R,ma as it,na as k,oa as lt,pa as pt,qa as xe,ra as Ce,sa as mt,ta as ct,ua as ee,va as U,vb as _t,vc as kt,wa as je,xa as Fe,xb as B,ya as $e,yb as oe,zb as ht,zc as H}from"./chunk-74NNJKGA.js";import{Bb as F,Cb as K,D as Ke,Db as v,Fb as fe,Gb as P,H as Q,I as X,L as Je,M as Ve,N as Qe,O as b,Oa as ot,P as ie,Q as le,R as Xe,S as pe,T as z,U as Ye,V as me,X as Ze,Y as Be,aa as et,ca as we,ea as tt,g as Pe,ja as be,l as M,la as o,m as a,ma as O,na as Y,nb as te,o as q,oa as ce,p as ge,pb as ut,qb as $t,rb as se,tb as Ie,ub as Le,za as st}from"./chunk-NRUJ6FXV.js";var ks=["total_ammonia","nitrite","nitrate","ph","temperature","kh","gh"];function Xt(e,{kits:t,source:r,label:s}){return[...ue(e,"substrate")?ys(e):[],...ue(e,"hardscape")?vs(e):[],...ue(e,"warmth")?Ss(e):[],...ue(e,"plants")?xs(e):[],...Cs(e,r,s),...ks.filter(n=>!t.some(l=>l.parameter===n&&!l.retired)).map(n=>({code:n==="temperature"?"thermometer":"test",key:`test.${n}`,parameter:n}))]}var Yt=e=>k("filled_weight",je(e,R(e,"place"))).answer?.total_kg??null;function ys(e){let t=R(e,"substrate"),r=xe(ve(e),t),s=k("substrate",r).answer;if(!r||!s)return[];let n=s.layers.map((l,i)=>{let{material:p,role:c}=r.layers[i];return{code:l.packs===void 0?"layer":"layer_packs",key:`bed.${c}`,material:p,litres:l.litres,kg:l.kg,count:l.packs??0,pack:(c==="nutrient"?t.nutrient_pack:t.cap_pack)??0,pack_unit:Ce(p)}});return t.support_bags?[...n,{code:"mesh",key:"mesh",count:t.support_bags,litres:s.support_l}]:n}function vs(e){let t=R(e,"hardscape");return at.flatMap(r=>{let s=t[`${r}_kg`]??0;return s>0?[{code:"hardscape",key:`hardscape.${r}`,kind:r,kg:s}]:[]})}function Ss(e){let t=R(e,"warmth"),r=k("heater_power",Fe(e,t)).answer,{ppfd_umol_m2_s:s,hours:n}=$e(t);return[...r&&r.heater_w>0?[{code:"heater",key:"heater",watts:r.heater_w}]:[],...t.filter==="none"?[]:[{code:"filter",key:"filter",filter:t.filter}],{code:"lamp",key:"lamp",light:s,hours:n,area_cm2:lt(ve(e)).area_cm2}]}function xs(e){let{list:t,planting:r}=R(e,"plants"),s=t.filter(i=>i.portions>0),n=Ne(ve(e),r)-s.reduce((i,p)=>i+p.portions,0),l=s.map(i=>({code:"plant",key:`plant.${i.species}`,species:i.species,count:i.portions}));return n>0?[...l,{code:"plants_more",key:"plants_more",count:n}]:l}function Cs(e,t,r){let s=ke({tank:e,source:t,label:r},e.water_l);return s.needed?s.amount===void 0?[{code:`dechlorinator_${s.missing}`,key:"dechlorinator",litres:e.water_l}]:[{code:"dechlorinator",key:"dechlorinator",amount:s.amount,unit:s.unit,name:s.label.name,litres:e.water_l}]:[]}var E=({label:e,name:t,choices:r,value:s,icons:n=!1,on_value:l})=>a`
  <fieldset class="field"><legend class="label">${e}</legend>
    <div class="tiles two choices">${r.map(i=>a`
      <label key=${i.value}><input class="unseen" type="radio" name=${t} value=${i.value}
        checked=${s===i.value}
        onChange=${()=>l(i.value)} />${n&&a`<${P} name=${i.value} size=${40} />`}
          ${i.label}</label>`)}</div>
  </fieldset>`;var js=500,Ee=({chosen:e,named:t,about:r,on_count:s,on_remove:n})=>e.map(({species:l,count:i})=>a`
    <div class="chosen" key=${l}>
      <${L} label=${t(l)} also=${r(l)} max=${js} value=${i}
        on_value=${p=>s(l,p)} />
      ${i===0&&a`<button class="quiet" type="button" onClick=${A(()=>n(l))}><${P} name="remove"
          size=${20} />${o("remove_named",{what:t(l)})}</button>`}
    </div>`),Re=({kinds:e,named:t,about:r,on_pick:s})=>a`
  <ul class="lines">${e.map(n=>a`
    <li key=${n}><button class="line whole" type="button" onClick=${A(()=>s(n))}><span
      class="grow">${t(n)}<br /><span class="soft small">${r(n)}</span></span><${P} name="plus"
      /></button></li>`)}</ul>`;function es({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"warmth"),i=k("heater_power",Fe(e,r)),p=k("light_dose",$e(r)),c=le("tank","filter"),u=b("light_dose","ppfd_umol_m2_s");return a`
    <${C} step="warmth" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${j} disabled=${i.errors.length+p.errors.length>0}
        onClick=${()=>{n("done",{temperature_c:r.temperature_c,filter:r.filter})}}>
        ${i.answer?o("setup.next_with",{figure:`${O(i.answer.heater_w,0)} W`}):o("setup.next")}
        <//>`}>
      <section><h2>${o("setup.warmth")}</h2>
        <${L} label=${o("setup.water_warm")} unit="°C" min=${10} max=${32} value=${Number(t.temperature_c)}
          on_value=${m=>s({temperature_c:m})} />
        <${L} label=${o("setup.room_cold")} also=${o("setup.room_cold_why")} unit="°C" min=${-5} max=${35}
          value=${Number(t.room_c)} on_value=${m=>s({room_c:m})} />
        <${E} label=${o("setup.cover")} name="cover"
          choices=${["lid","open"].map(m=>({value:m,label:o(`setup.cover_${m}`)}))} value=${t.cover}
          on_value=${m=>s({cover:m})} />
        <${y} name="heater_power" found=${i}
          show=${["heater_w","loss_w","warming_c_hour","cooling_c_hour"]} />
      </section>
      <section class="section"><h2>${o("setup.light")}</h2>
        <${E} label=${o("setup.light_band")} name="light"
          choices=${["low","medium","high"].map(m=>({value:m,label:o(`setup.light_${m}`)}))}
          value=${t.light} on_value=${m=>s({light:m,ppfd_umol_m2_s:""})} />
        <${L} label=${b("light_dose","hours").label} unit="h" step=${.5} max=${24}
          value=${Number(t.hours)} on_value=${m=>s({hours:m})} />
        <${D} specs=${[{...u,label:o("setup.light_measured")}]} raw=${t} on_raw=${s}
          wrong=${p.errors} />
        ${r.ppfd_umol_m2_s===void 0&&a`<p class="soft small">
          ${o("setup.light_counted",{light:Y($e(r).ppfd_umol_m2_s,0)})}</p>`}
        <${y} name="light_dose" found=${p} show=${["dli_mol_m2_day","band"]} />
      </section>
      <section class="section"><h2>${o("setup.moves")}</h2>
        <p>${o("setup.moves_why")}</p>
        <${E} label=${c.label} name="filter" choices=${c.choices} value=${t.filter}
          on_value=${m=>s({filter:m})} />
      </section>
    <//>`}var Fs=8;function ts({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"plants"),i=le("tank","planting"),p=ge("planting_practice"),c=Ne(G(e),t.planting),u=R(e,"warmth"),m=t.list,$=m.reduce((f,d)=>f+d.portions,0),h=(f,d)=>s({list:m.some(_=>_.species===f)?m.map(_=>_.species===f?{species:f,portions:d}:_):[...m,{species:f,portions:d}]}),g=Ft(u).filter(({key:f})=>!m.some(({species:d})=>d===f));return a`
    <${C} step="plants" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${j} onClick=${()=>{n("done",{planting:r.planting})}}>
        ${$?o("setup.next_portions",{count:$}):o("setup.next")}<//>`}>
      <p>${o("setup.plants_why")}</p>
      <${E} label=${i.label} name="planting" choices=${i.choices} value=${t.planting}
        on_value=${f=>s({planting:f})} />
      <p class="sentence">${o("setup.portions",{count:c})}</p>
      ${t.planting!=="none"&&a`<details class="more"><summary>${o("bench.sources")}</summary>
        <p>${o("setup.portions_how",{percent:O(100*p[`cover_${t.planting}`],0),area:v(p.portion_cm2,"cm\xB2",0)})}</p>
        <p class="soft small">${q("constants").groups.planting_practice.note}</p>
        <p class="soft small">${o("bench.provenance.common practice")}</p></details>`}
      ${m.length>0&&a`<section class="section"><h2>${o("setup.plants_chosen",{have:$,wanted:c})}</h2>
        <${Ee} chosen=${m.map(({species:f,portions:d})=>({species:f,count:d}))} named=${ne}
          about=${Zt} on_count=${h}
          on_remove=${f=>s({list:m.filter(({species:d})=>d!==f)})} />
        </section>`}
      <section class="section"><h2>${o("setup.plants_fit")}</h2>
        <p class="soft small">${o("setup.plants_order")}</p>
        <${Re} kinds=${g.slice(0,Fs).map(({key:f})=>f)} named=${ne} about=${Zt}
          on_pick=${f=>h(f,1)} />
        <h3>${o("setup.plant_other")}</h3>
        <${Oe} rows="plants" near=${I("own_plant").map(({name:f})=>f)} value=""
          then=${`/tank/${e.id}/setup/plants`} on_pick=${f=>h(f,1)} />
      </section>
    <//>`}var ne=e=>q("plants").rows[e]?.name??e;function Zt(e){let t=q("plants").rows[e];if(!t)return"";let[r,s]=t.temperature_c;return o("setup.plant_about",{growth:o(`setup.growth_${t.growth}`),position:o(`setup.position_${t.position}`),low:K(r),high:K(s),light:o(`setup.light_${t.light}`)})}function qe({code:e,key:t,...r}){let s=Object.fromEntries(Object.entries(r).map(([n,l])=>[n,ss[n]?ss[n](l,r):l]));return o(`buy.${e}`,s)}var ss={material:e=>Ts(e),litres:e=>V(F(e)),kg:e=>V(v(e,"kg",1)),filter:e=>z(le("tank","filter"),e),pack:(e,{pack_unit:t})=>V(v(e,t,1)),kind:e=>o(`setup.of_${e}`),watts:e=>V(`${O(e,0)} W`),light:e=>O(e,0),hours:e=>Y(e,1),area_cm2:e=>V(v(e,"cm\xB2",0)),species:e=>`${ne(e)} (${e})`,amount:(e,{unit:t})=>V(fe({amount:e,unit:t})),parameter:e=>st(Le(e))},V=e=>e.replaceAll(" ","\xA0"),os=e=>V(v(e,"kg",0)),Ts=e=>z(pe(b("substrate","layers"),"material"),e);function Ls({id:e}){let t=x("tank",e),r=te(`buy.${e}`,()=>[]),s=M("");if(!t||!Se(t))return a`<${J} up="/tanks" />`;let n=U(t),l=Xt(n,{kits:I("test_kit"),source:x("source_water",n.source_water),label:x("label",n.dechlorinator)}),i=Yt(n),p=[o("buy.water",{litres:F(n.water_l)}),...i===null?[]:[o("buy.weight",{kg:os(i)})],o(Z(n)?"buy.first_test":"buy.tests")],c=()=>[o("buy.for",{tank:n.name}),...l.map($=>`\u2013 ${qe($)}`),"",...p].join(`
`),u=async()=>{try{if(navigator.share)return await navigator.share({title:o("buy.for",{tank:n.name}),text:c()});await navigator.clipboard.writeText(c()),ht(o("bench.copied"))}catch($){$.name!=="AbortError"&&(s.value=c())}},m=$=>r.value=r.value.includes($)?r.value.filter(h=>h!==$):[...r.value,$];return a`
    <${H} title=${o("buy.title")} up=${`/tank/${e}`} aside=${a`<span class="soft">${n.name}</span>`}
      act=${a`<button class="quiet tall screen-only" type="button"
        onClick=${A(()=>{zt("limnary-shopping")})}>${o("buy.print")}
        </button><button class="main screen-only" type="button" onClick=${A(()=>{u()})}>${o("buy.send")}
        </button>`}>
      <ul class="lines buy">${l.map($=>a`
        <li class="line" key=${$.key}><label class="check grow"><input type="checkbox"
          checked=${r.value.includes($.key)} onChange=${()=>m($.key)} /><span>
            ${qe($)}</span>
          </label></li>`)}</ul>
      ${s.value&&a`<textarea class="to-copy" readonly rows="8" aria-label=${o("bench.copy_by_hand")}
        onFocus=${bt}>${s.value}</textarea>`}
      <section class="section"><h2>${o("buy.know")}</h2><ul class="why">
        ${p.map($=>a`<li key=${$}>${$}</li>`)}</ul>
        <p class="caution small">${o("buy.floor")}</p><p class="soft small">${o("buy.ticks")}</p></section>
    <//>`}var rs=[...ft,"kh"];function Ns(){let e=te("grid",()=>({})),t=de(W);if(!S.value.may("reading"))return a`<${Ae} title=${o("grid.title")} up="/tanks" />`;let r=(s,n)=>e.value={...e.value,[s]:n};return a`
    <${H} title=${o("grid.title")} up="/tanks" place="tanks" aside=${a`<span></span>`}>
      <p class="soft">${o("grid.why")}</p>
      <div class="wide grid-rows">${t.map(s=>a`<${Os} key=${s.id} tank=${s} typed=${e.value[s.id]??{}}
        on_typed=${n=>r(s.id,n)} />`)}</div>
    <//>`}function Os({tank:e,typed:t,on_typed:r}){let s=M(""),n=rs.filter(p=>t[p]?.trim()),l=async()=>{let p=n.map(m=>Es(m,t[m]));if(s.value=p.flatMap(m=>"wrong"in m?[m.wrong]:[]).join(" "),s.value||p.length===0)return!1;let c={tank:e.id,at:S.value.now(),test:B()},u=p.map(m=>({type:"put",kind:"reading",id:B(),fields:{..."reading"in m?m.reading:{},...c}}));return await oe(u,o("saved.readings",{count:u.length}))?(r({}),!0):!1},i=async p=>{let{key:c,currentTarget:u}=p;c==="Enter"&&(p.preventDefault(),await l()&&ns(u,1,-1/0)?.focus());let m=As[c];!m||m.across&&u.value&&u.selectionStart!==(m.across>0?u.value.length:0)||(p.preventDefault(),ns(u,m.down,m.across)?.focus())};return a`
    <section class="grid-row" aria-label=${e.name}><h2>${e.name}</h2>
      <div class="field grid-cells">${rs.map(p=>a`<label key=${p}><span class="small">${Le(p)}</span>
        <input inputmode="decimal" autocomplete="off" value=${t[p]??""}
          onInput=${gt(c=>r({...t,[p]:c}))} onKeyDown=${i} /></label>`)}<button class="quiet" type="button" disabled=${n.length===0} aria-label=${o("grid.save_named",{what:e.name})} onClick=${A(()=>{l()})}>${o("grid.save")}</button></div>
      ${s.value&&a`<p class="wrong" role="alert">${s.value}</p>`}
    </section>`}var As={ArrowDown:{down:1,across:0},ArrowUp:{down:-1,across:0},ArrowRight:{down:0,across:1},ArrowLeft:{down:0,across:-1}};function ns(e,t=0,r=0){let s=[...document.querySelectorAll(".grid-row")],n=e.closest(".grid-row"),l=p=>[...p?.querySelectorAll("input")??[]],i=l(n).indexOf(e);return l(s[s.indexOf(n)+t])[r===-1/0?0:i+r]}function Es(e,t){let r=Wt(e),s=tt(t,we(be())),{hold:n}=se(e==="temperature"?"\xB0C":""),l="value"in s?n(s.value):null,i=Ct({parameter:e,unit:r.unit},Ie(e));return l===null||jt(i,l)?{wrong:ce(Ie(e),o("allowed",{allowed:et(i)}))}:{reading:Dt(r,l)}}var Rs=["capped","plain","bare"],Ps={nutrient:["garden_soil","potting_soil","baked_clay"],cap:["sand","gravel","lava","baked_clay"]};function is({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"substrate"),i=k("substrate",xe(G(e),r)),p=b("substrate","layers").item,c=Ve(p.fields,"material");return a`
    <${C} step="substrate" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${j} disabled=${i.errors.length>0} onClick=${()=>{n("done")}}>
        ${i.answer?o("setup.next_with",{figure:F(i.answer.litres)}):o("setup.next")}<//>`}>
      <${E} label=${o("setup.bed")} name="bed"
        choices=${Rs.map(u=>({value:u,label:o(`setup.bed_${u}`)}))} value=${t.bed}
        on_value=${u=>s({bed:u})} />
      ${t.bed==="capped"&&a`<${as} of="nutrient" title=${o("setup.layer_nutrient")} material=${c}
        raw=${t} set=${s} layer=${i.answer?.layers[0]} />`}
      ${t.bed!=="bare"&&a`
        <${as} of="cap" title=${o(t.bed==="capped"?"setup.layer_cap":"setup.layer_plain")}
          material=${c} raw=${t} set=${s} layer=${i.answer?.layers.at(-1)} />
        <details class="more" open=${t.support_bags>0}><summary>${o("setup.mesh")}</summary>
          <p class="soft small">${o("setup.mesh_why")}</p>
          <${L} label=${o("setup.mesh_bags")} value=${Number(t.support_bags)} max=${40}
            on_value=${u=>s({support_bags:u})} />
          <${L} label=${o("setup.mesh_size")} unit="L" value=${Number(t.support_bag_l??2)} step=${.5}
            min=${.5} max=${20} on_value=${u=>s({support_bag_l:u})} />
        </details>
        <${y} name="substrate" found=${i}
          show=${["litres","kg",...t.support_bags>0?["support_l"]:[],"front_cm","back_cm","slope_deg"]}
          />
        ${G(e).shape!=="cuboid"&&a`<p class="soft small">${o("setup.as_rectangle")}</p>`}`}
    <//>`}var as=({of:e,title:t,material:r,raw:s,set:n,layer:l})=>a`
  <section class="section"><h2>${t}</h2>
    <${E} label=${r.label} name=${`${e}-material`}
      choices=${r.choices.filter(i=>Ps[e].includes(i.value))} value=${s[e]}
      on_value=${i=>n({[e]:i})} />
    <${L} label=${o("setup.front")} unit="cm" step=${.5} max=${20} value=${Number(s[`${e}_front_cm`])}
      on_value=${i=>n({[`${e}_front_cm`]:i})} />
    <${L} label=${o("setup.back")} unit="cm" step=${.5} max=${30} value=${Number(s[`${e}_back_cm`])}
      on_value=${i=>n({[`${e}_back_cm`]:i})} />
    <${D} specs=${[{name:`${e}_pack`,label:o("setup.pack"),unit:Ce(s[e])}]} raw=${s}
      on_raw=${n} />
    ${l&&a`<p class="sentence">
      ${o(l.packs===void 0?"setup.layer_found":"setup.layer_packs",{litres:F(l.litres),kg:v(l.kg,"kg",1),count:l.packs??0})}</p>`}
  </section>`,Bs=["stone","lava","wood"];function ls({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"hardscape"),i=mt(r),p=ge("hardscape_densities"),c=k("volume",ee({...e,[ye("hardscape")]:{state:"done",said:r}}));return a`
    <${C} step="hardscape" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${j} onClick=${()=>{n("done")}} />`}>
      <p>${o("setup.hardscape_why")}</p>
      ${Bs.map(u=>a`<${L} key=${u} label=${o(`setup.of_${u}`)}
          also=${o("setup.density",{density:Y(p[u],2)})} unit="kg" step=${.5} max=${500}
          value=${Number(t[`${u}_kg`]??0)}
        on_value=${m=>s({[`${u}_kg`]:m})} />`)}
      <p class="sentence">
        ${o("setup.displaced",{litres:F(i.litres),kg:v(i.kg,"kg",1)})}</p>
      <${y} name="volume" found=${c} show=${["water_l","gross_l"]} />
    <//>`}function ms({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"fill"),i=M(!1),p=k("volume",ee(e,r.metered_l)),c=p.answer?.water_l??0,u=x("source_water",e.source_water),m=x("label",e.dechlorinator),$=c?ke({tank:{...e,water_l:c},source:u,label:m},c):null,g=R(e,"plants").list.filter(({portions:w})=>w>0),f=b("volume","metered_l"),d={litres:ps(F(c)),dose:$?.amount!==void 0?ps(fe($)):""},_=async()=>{if(!p.answer)return;i.value=!0;let w=S.value.now(),N=ot(u,"total_ammonia",m),gs=[...Is(e,w,$,c,N),...t.plants_in?Ws(e,w,g):[]],{water_l:ws,gross_l:bs}=p.answer;await n("done",{measures:p.payload,water_l:ws,gross_l:bs,started_at:w},{more:gs,words:o("setup.filled",{tank:e.name,...d})}),i.value=!1};return a`
    <${C} step="fill" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      act=${a`<${j} disabled=${!p.answer||i.value} onClick=${()=>{_()}}>
        ${o($?.amount!==void 0?"setup.log_fill_dose":"setup.log_fill",d)}<//>`}>
      <p class="caution">${Ye("heater_power","electricity")}</p>
      <p>${o("setup.fill_why")}</p>
      <${y} name="volume" found=${p} show=${["water_l","gross_l"]} />
      <${D} specs=${[f]} raw=${t} on_raw=${s} wrong=${p.errors} />
      ${g.length>0&&a`
        <label class="check"><input type="checkbox" checked=${!!t.plants_in}
          onChange=${wt(w=>s({plants_in:w}))} />
          ${o("setup.plants_in",{count:g.length})}</label>
        <p class="soft small">${g.map(({species:w})=>ne(w)).join(", ")}</p>`}
      <${Vt} tank=${e} here=${`/tank/${e.id}/setup/fill`} />
      <${Ds} dose=${$} payload=${$?.amount===void 0?null:rt({water_l:c},u,$.label,c)} />
    <//>`}function Is(e,t,r,s,n){if(r?.amount===void 0)return[];let{label:l,amount:i,unit:p}=r,c={tank:e.id,at:t,label:l.id,what:l.name,amount:i,unit:p,for_litres:s};return[{type:"put",kind:"dose",id:B(),fields:n>0?{...c,tan_mg_n_l:n}:c}]}var Ws=(e,t,r)=>r.map(({species:s,portions:n})=>({type:"put",kind:"planting",id:B(),fields:{tank:e.id,at:t,change:"plant",species:s,amount:o("setup.portions_in",{count:n}),portions:n}})),ps=e=>e.replaceAll(" ","\xA0"),Ds=({dose:e,payload:t})=>e?e.needed?e.amount===void 0?a`<p class="soft">${o(e.missing==="source"?"setup.dose_source":"setup.dose_label")}</p>`:a`
    <p class="dose"><span class="big">${fe(e)}</span><br />${e.label.name}<br /><span class="soft small">
      ${o(`dose.basis_${e.label.basis}`)}</span></p>
    <${y} name="dechlorinator_dose" found=${{payload:t,answer:e.answer,errors:[]}}
      show=${["freed_ammonia_mg_n_l"]} cautions=${["label_first","no_mixing","freed_ammonia","no_airing"]} />`:a`<p class="dose">${o("dose.none")}</p>`:null;var cs=["length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],us=()=>o("setup.name_first",{count:I("tank").length+1});function Ue({tank:e}){let t=`setup.${e?.id??"new"}.glass`,r=te(t,()=>({})),s=M(""),{inputs:n}=Q().volume,l={measures:"outside",...e?.measures,name:e?.name??us(),...r.value},i=d=>r.value={...r.value,...d},p=d=>Je(n,d),c=b("volume","measures"),{name:u,...m}=l,$=_e(n.filter(d=>["shape","measures",...cs].includes(d.name)),it(m)),h=k("volume",l.shape?$:null),g=h.errors.filter(({field:d})=>!(d in $)).flatMap(({field:d})=>p(d)?.label??[]),f=async()=>{let d=e?.id??B();try{let _=Ms(e,String(u).trim()||us(),$),w=[{type:"put",kind:"tank",id:d,fields:_}],N=o("setup.saved",{step:o("setup.step.glass")});if(Object.keys(_).length>0&&!await oe(w,N))return;ut(t),kt(Ut(d,"glass"))}catch(_){s.value=_t(_,[...n,...X().tank.fields])}};return a`
    <${C} step="glass" up=${e?`/tank/${e.id}`:"/tanks/new"} problem=${s.value}
      act=${a`<${j} disabled=${!h.answer} onClick=${()=>{f()}} />`}>
      <${E} label=${o("tank.shape")} name="shape" choices=${b("volume","shape").choices}
        value=${l.shape} icons
        on_value=${d=>i({shape:d})} />
      ${l.shape&&a`
        <${E} label=${c.label} name="measures" choices=${c.choices}
          value=${l.measures} on_value=${d=>i({measures:d})} />
        <${D}
          specs=${n.filter(d=>cs.includes(d.name)&&Ot(d,n,l)).map(d=>Qe(d,_=>l[_]))}
          raw=${l} on_raw=${i} wrong=${h.errors} />
        ${g.length>0&&a`<p class="soft">${o("bench.still_needed",{fields:g.join(", ")})}</p>`}
        <${y} name="volume" found=${h.answer?h:{...h,errors:[]}}
          show=${["gross_l","water_l","surface_cm2"]} cautions=${[]} />
        <${re} specs=${X().tank.fields.filter(d=>d.name==="name")}
          raw=${{name:u}} on_raw=${i} errors=${[]} />`}
    <//>`}function Ms(e,t,r){e&&Be("volume",ee({...e,measures:r}));let{water_l:s,gross_l:n}=Be("volume",r),l=e?he({measures:pt(G(e))},{measures:r}):{measures:r};return he(e,{...e?{}:{walk_order:Te(W)},name:t,[ye("glass")]:{state:"done"},...l.measures?{...l,water_l:s,gross_l:n}:{}})}function $s({tank:e}){let{raw:t,said:r,set:s,save:n,problem:l}=T(e,"place"),{shape:i,glass_mm:p}=G(e),c=i==="cuboid",u=[...c?[]:["tank_kg"],...c&&!p?["glass_mm"]:[],"stand_kg","equipment_kg","footprint_length_cm","footprint_width_cm"],m=(c?p?[]:["glass_mm"]:["tank_kg","footprint_length_cm","footprint_width_cm"]).filter(g=>r[g]===void 0),$=m.length>0?{payload:{},errors:[]}:k("filled_weight",je(e,r)),h=g=>b("filled_weight",g);return a`
    <${C} step="place" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{n("skipped")}}
      act=${a`<${j} onClick=${()=>{n("done",r.place?{place:String(t.place).trim()}:{})}}>
        ${$.answer?o("setup.next_with",{figure:v($.answer.total_kg,"kg",0)}):o("setup.next")}
        <//>`}>
      <p>${o("setup.place_why")}</p>
      <${D} specs=${u.map(h)} raw=${t} on_raw=${s} wrong=${$.errors} />
      ${m.length>0&&a`<p class="soft">
        ${o("bench.still_needed",{fields:m.map(g=>h(g).label).join(", ")})}</p>`}
      <${y} name="filled_weight" found=${$}
        show=${["total_kg","footprint_kpa","dwelling_kpa","foot_kg","empty_tank_kg"]} />
      <${re} specs=${X().tank.fields.filter(g=>g.name==="place")}
        raw=${{place:t.place??e.place}} on_raw=${s} errors=${[]} />
    <//>`}var qs=8;function _s({tank:e}){let{raw:t,set:r,save:s,problem:n}=T(e,"stock"),l=t.list??e.planned_stock??[],i=l.filter(({count:_})=>_>0),p=(_,w)=>r({list:l.some(N=>N.species===_)?l.map(N=>N.species===_?{...N,count:w}:N):[...l,{species:_,count:w}]}),c=_=>p(_,q("species").rows[_]?.group_min??1),u=I("own_species"),m=Tt(i,u),$=x("source_water",e.source_water),h=Pe(()=>Rt(e.id),[e,$]),g=Pe(()=>Lt(h,i,u),[h,u,JSON.stringify(i)]),f=_=>{let w=xt(h,_,u);return w.length>0?o("setup.not_for_water",{why:w.map(({kind:N})=>Vs(N)).join("; ")}):""},d=_=>[fs(_),f(_)].filter(Boolean).join(". ");return a`
    <${C} step="stock" name=${e.name} up=${`/tank/${e.id}`} problem=${n}
      skip=${()=>{s("skipped")}}
      act=${a`<${j} onClick=${()=>{s("done",{planned_stock:i})}} />`}>
      <p>${o("setup.stock_why")}</p>
      <${Qt} tank=${e} here=${`/tank/${e.id}/setup/stock`} />
      ${($?.ph===void 0||$.gh_dgh===void 0)&&a`<p class="caution">${o("setup.water_unknown")}</p>`}
      <${Ee} chosen=${l} named=${ds} about=${d} on_count=${p}
        on_remove=${_=>r({list:l.filter(({species:w})=>w!==_)})} />
      ${g.length>0&&a`<section class="section"><h2>${o("setup.animals_fit")}</h2>
        <p class="soft small">${o("setup.animals_order")}</p>
        <${Re} kinds=${g.slice(0,qs).map(({key:_})=>_)} named=${ds} about=${fs}
          on_pick=${c} /></section>`}
      <section class="section"><h2>${o("setup.animal_other")}</h2>
        <${Oe} rows="species" near=${u.map(({name:_})=>_)} value=""
          then=${`/tank/${e.id}/setup/stock`} on_pick=${c} warned=${f} /></section>
      ${m.length>0&&a`<p class="caution">${o("setup.unweighed",{who:m.join(", ")})}</p>`}
      <${Us} tank=${e} stock=${i} figures=${h} />
    <//>`}function Us({tank:e,stock:t,figures:r}){let s=I("own_species"),n=Bt(e.id),l=Nt(t,n),i=We({figures:dt(r),present:n,wanted:l,own:s});if(!i)return null;if(i.missing)return a`<${It} tank=${e} missing=${i.missing} />`;let p=i.whole?.found??{payload:i.stocking.input,answer:i.stocking.answer,errors:[]},c={payload:i.company.input,answer:i.company.answer,errors:[]},u=[...me("stocking_limit",["small_lots","welfare"]),...me("compatibility")];return a`
    <p class="sentence">${Hs(i)}</p>
    ${e.started_at?a`<${Ht} tank=${{...e,planned_stock:t}} />`:a`<p>${Gs(We({figures:r,present:n,wanted:l,own:s}))}</p>`}
    ${p.answer?.notes.map(m=>a`<p class="soft small" key=${m}>${m}</p>`)}
    <details class="more"><summary>${o("setup.bears_grown")}</summary><${y} name="stocking_limit"
      found=${p} show=${["limit_g","binding","present_g","nitrogen_g","oxygen_g","room_g"]} cautions=${[]} />
      </details>
    <${Ks} answer=${c.answer} />
    <${y} name="compatibility" found=${c} show=${[]} cautions=${[]} />
    ${u.map(m=>a`<p class="caution small" key=${m}>${m}</p>`)}`}function Hs({kinds:e,over:t,binds:r,whole:s}){if(t)return o("many.over",{by:Me(r)});if(!s)return o("setup.plan_all_in");if(s.fits)return o("setup.plan_fits",{count:s.count});let l=e.filter(({come:i,wanted:p})=>i<p).map(({name:i,come:p,wanted:c})=>o("setup.plan_of",{come:p,wanted:c,name:i})).join("; ");return[o("setup.plan_not",{by:Me(s.by)}),l].filter(Boolean).join(" ")}function Gs(e){if(!e||e.missing)return null;if(e.whole?.fits)return o("setup.plan_first_all");let t=e.kinds.filter(({come:s})=>s>0),r=t.map(({species:s,come:n})=>qt(s,n)).join("\xA0\xB7 ");return t.length>0?o("setup.plan_first",{who:r}):o("setup.plan_wait")}var zs=e=>[He("temperature",e.temperature_low_c,e.temperature_high_c,K),He("ph",e.ph_low,e.ph_high,t=>O(t,1)),He("gh",e.gh_low_dgh,e.gh_high_dgh,t=>O(t,0))].filter(Boolean).join("\xA0\xB7 "),He=(e,t,r,s)=>typeof t=="number"&&typeof r=="number"&&o(`setup.water_${e}`,{low:s(t),high:s(r)});function Ks({answer:e}){if(!e)return null;let t=ie("compatibility","verdict"),r=ie("compatibility","findings");return a`
    <section class="section"><h2>${ce(t.label,z(t,e.verdict))}</h2>
      <p>${zs(e)}</p>
      <ul class="why">${e.findings.map((s,n)=>a`<li key=${n}>
        ${Js(s,z(pe(r,"kind"),s.kind))}</li>`)}</ul>
    </section>`}function Js(e,t){let r=[e.a,e.b].filter(Boolean).join(" \u2013 "),s=Xe(ie("compatibility","findings")).filter(({type:i})=>i!=="text"),l=At({outputs:s},e,{system:$t.value,marks:we(be())}).filter(({name:i})=>i.endsWith("_low")||i.endsWith("_high")).map(({label:i,text:p,unit:c})=>ce(i,[p,c].filter(Boolean).join("\xA0"))).join("; ");return l?o("setup.finding_figures",{who:r,what:t,figures:l}):o("setup.finding",{who:r,what:t})}var Vs=e=>z(pe(ie("compatibility","findings"),"kind"),e),ds=e=>q("species").rows[e]?.name??e;function fs(e){let t=q("species").rows[e];if(!t)return"";let[r,s]=t.temperature_c;return o("setup.animal_about",{length:v(t.length_cm,"cm",1),group:t.group_min,low:K(r),high:K(s)})}var Qs={glass:Ue,place:$s,substrate:is,hardscape:ls,warmth:es,plants:ts,stock:_s,fill:ms,first_fish:Gt},Xs=["stock","first_fish"];function Ys({id:e,step:t}){if(!e)return S.value.may("tank")?a`<${Ue} tank=${null} />`:a`<${J} up="/tanks" />`;let r=x("tank",e);if(!r||!Se(r))return a`<${J} up="/tanks" />`;let s=U(r),n=t==="first_fish"?S.value.may("stock_change"):S.value.may("tank");if(!t||!nt.some(i=>i===t)||!n||!(Z(s)||Xs.includes(t)))return a`<${St} tank=${s} />`;let l=Qs[t];return a`<${l} tank=${s} />`}var Ge=["measures","length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],ae=["place","started_at","seeded","planting","filter","feed_g_day","protein_fraction","fish_g","temperature_c","ph","kh_dkh","note"];function Zs({id:e}){let t=e?x("tank",e):null,r=t&&U(t),s=Kt({name:`tank.${e??"new"}`,held:r,first:()=>io(r)}),n=e?`/tank/${e}`:"/tanks",l=o(e?"tank.edit":"tank.new");if(e&&!r)return a`<${J} up="/tanks" />`;if(!S.value.may("tank"))return a`<${Ae} title=${l} up=${n} why="looking_only.this" />`;let{measures:i,about:p}=s.draft.value,c=ao(i),u=[...c.errors,...s.errors.value],m=()=>(s.tried.value=!0,c.answer?s.save(()=>eo(e,r,s.opened,p,c)):document.querySelector(".wrong")?.scrollIntoView({block:"center"}));return a`
    <${H} title=${l} up=${n} book
      news=${a`<${Mt} opened=${s.opened} held=${r}
        names=${["name","water_l","measures",...ae]} />`}
      act=${a`<${no} found=${c} /><button class="main" type="button" onClick=${A(()=>{m()})}>
        ${o("tank.save")}</button>`}>
      ${!e&&a`<p class="from-glass"><a class="quiet" href="/tanks/setup">${o("setup.from_glass")}</a><span
        class="soft small">${o("setup.from_glass_why")}</span></p>`}
      <${Jt} form=${s} kind="tank" beside=${["name",...ae]} />
      <${so} form=${s} error=${c.errors.find(({field:$})=>$==="shape")} />
      ${i.shape&&a`
        <${oo} form=${s} errors=${u} notes=${c.answer?.notes??[]} />
        <section class="entry"><span class="in-margin" aria-hidden="true">3</span><div>
          <h2 class="unseen">${o("tank.about")}</h2>
          <${ro} form=${s} errors=${u} open=${!!e} />
          ${me("volume").map($=>a`<p class="caution small" key=${$}>
            ${$}</p>`)}
          ${r&&a`<${Et} meta=${r.meta} />`}
          ${r&&a`<p><button class="quiet" type="button" onClick=${A(()=>{to(r)})}>
            ${o(r.resting?"tank.back":"tank.away")}</button></p>`}
        </div></section>`}
    <//>`}var ze=e=>X().tank.fields.filter(({name:t})=>e.includes(t));function eo(e,t,r,s,n){let l=_e(ze(["name",...ae]),s),i=e?Object.fromEntries(ae.filter(f=>!(f in l)).map(f=>[f,null])):{},p=e??B(),{water_l:c,gross_l:u}=n.answer??{},m=e?{}:{walk_order:Te(W)},$={...i,...l,measures:n.payload,water_l:c,gross_l:u,...m},h=he(r,$);return t&&Z(t)&&h.measures&&(h.measures=ct(t,h.measures)),{writes:Object.keys(h).length?[{type:"put",kind:"tank",id:p,fields:h}]:[],said:o(e?"saved.tank":"saved.new_tank",{tank:l.name}),to:`/tank/${p}`}}var to=({id:e,name:t,resting:r})=>oe([{type:"put",kind:"tank",id:e,fields:{resting:!r}}],o(r?"saved.back":"saved.away",{tank:t}));function so({form:e,error:t}){let{measures:r}=e.draft.value,s=b("volume","shape");return a`
    <section class="entry"><span class="in-margin" aria-hidden="true">1</span><div>
      <fieldset><legend class="label">${o("tank.shape")}</legend>
        <div class="tiles two">${s.choices.map(({value:n,label:l})=>a`
          <label key=${n}><input class="unseen" type="radio" name="shape" value=${n}
            checked=${r.shape===n}
            onChange=${()=>e.set({measures:{...r,shape:n}})} /><${P} name=${n}
              size=${40} />${l}</label>`)}</div>
      </fieldset>
      ${e.tried.value&&t&&a`<${Pt} spec=${s} error=${t} />`}
    </div></section>`}function oo({form:e,errors:t,notes:r}){let{measures:s}=e.draft.value,{inputs:n}=Q().volume,l=i=>a`<${re} specs=${i} all=${n} raw=${s} errors=${t} tried=${e.tried.value}
      on_raw=${p=>e.set({measures:p})} />`;return a`
    <section class="entry"><span class="in-margin" aria-hidden="true">2</span><div>
      <h2 class="unseen">${o("tank.measures")}</h2>
      ${l(n.filter(({name:i})=>Ge.includes(i)))}
      <details class="more" open=${lo(s)}><summary>${o("tank.exact")}</summary>
        ${l(n.filter(({name:i})=>i!=="shape"&&!Ge.includes(i)))}
      </details>
      ${r.map(i=>a`<p class="soft small" key=${i}>${i}</p>`)}
    </div></section>`}function ro({form:e,errors:t,open:r}){let s=n=>a`<${re} specs=${ze(n)} raw=${e.draft.value.about} errors=${t} tried=${e.tried.value}
      on_raw=${l=>e.set({about:l})} />`;return a`
    ${s(["name"])}
    <details class="more" open=${r}><summary>${o("tank.more")}</summary>${s(ae)}</details>`}var no=({found:e})=>a`
  <output class="found" aria-label=${o("tank.litres")}>
    ${e.answer?a`<b class="hand">${O(se("L").show(e.answer.water_l),1)}
    </b> ${se("L").label}`:a`<span class="soft">– ${se("L").label}</span>`}</output>`;function ao(e){let t=_e(Q().volume.inputs,e);try{return{answer:Ze("volume",t),payload:t,errors:[]}}catch(r){if(!(r instanceof Ke))throw r;return{payload:t,errors:r.errors}}}var io=e=>({measures:e?.measures?De(Q().volume.inputs,e.measures):{},about:e?De(ze(["name",...ae]),e):{}}),lo=e=>Object.keys(e).some(t=>t!=="shape"&&!Ge.includes(t)&&e[t]);function po(){let e=de(W,{resting:!0}),t=de(W);return a`
    <${H} title=${o("place.tanks")} place="tanks"
      act=${S.value.may("tank")&&a`<a class="main" href="/tanks/new"><${P} name="plus" />
        ${o(t.length?"tank.new":"tank.first")}</a>`}>
      ${t.length+e.length>0&&a`<p><a class="quiet tall" href="/search"><${P} name="search" />
        ${o("search.title")}</a></p>`}
      ${t.length>0?a`<${hs} tanks=${t} />`:yt().length===0&&a`<p class="sentence">
        ${o("tanks.empty")}</p>`}
      <${vt} />
      ${t.length>0&&a`<ul class="lines section"><li><a class="line" href="/timeline"><span><b>${o("history.all_tanks")}</b><br />
          <span class="soft small">${o("history.ways")}</span></span></a></li>
        ${S.value.may("reading")&&a`<li><a class="line" href="/grid"><span><b>${o("grid.title")}</b><br /><span class="soft small">
          ${o("grid.short")}</span></span></a></li>`}
        <li><a class="line" href="/labels"><span><b>${o("labels.title")}</b><br /><span class="soft small">
          ${o("labels.short")}</span></span></a></li></ul>`}
      ${e.length>0&&a`<section class="section"><h2>${o("tanks.away")}</h2><${hs} tanks=${e} />
        </section>`}
    <//>`}var hs=({tanks:e})=>a`
  <ul class="lines">${e.map(t=>a`
    <li key=${t.id}><a class="line" href=${`/tank/${t.id}`}>
      <span class="grow"><b>${t.name}</b>${t.place&&a`<br /><span class="soft small">${t.place}</span>`}
        </span>
      <span class="figures soft">${F(U(t).water_l)}</span></a></li>`)}</ul>`;export{Ls as Buy,Ns as Grid,Ys as SettingUp,Zs as TankForm,po as Tanks};
//# sourceMappingURL=setup-YFQ5EHLL.js.map
