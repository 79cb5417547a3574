import{$ as Ct,A as yt,Aa as Nt,B as vt,Ga as Tt,J as St,Ja as D,Ka as N,La as Lt,Ma as x,Na as C,Oa as T,Pa as Rt,Qa as Ot,T as xt,U as v,Ua as Pt,V as je,Va as Bt,Wa as Et,Y as ue,Ya as Wt,Z as Be,Za as At,_ as te,ba as A,ca as Ft,d as Pe,e as ht,fa as jt,ga as Ee,m as Fe,n as gt,o as wt,p as bt,s as kt,ya as $e}from"./chunk-RGGLVA7F.js";import{A as Ve,B as s,Ba as ge,C as k,Ca as Y,D as M,Da as pe,Fa as O,Fb as j,Fc as ct,Ga as et,Gb as U,Gc as ut,Ha as y,Hb as z,Ia as tt,Ja as st,Jb as ce,Ka as we,La as be,Lb as lt,Ma as ot,Na as nt,Oa as Z,Pa as q,Qa as ke,Ra as ye,Sa as me,Tb as P,Va as Oe,W as Qe,Wa as ve,Wb as E,Xb as S,ac as G,d as Le,fc as B,g as V,h as i,ma as de,nc as pt,nd as $t,pa as Xe,pc as K,qc as Ce,rb as Se,rc as mt,rd as ee,sd as ft,tb as rt,td as dt,ub as at,ud as _t,va as Ye,vb as xe,vc as W,vd as J,w as Je,wa as Ze,xb as it,ya as _e,za as he}from"./chunk-CZTD35Z6.js";import"./chunk-HZWNA2UL.js";import"./chunk-BEOBSI6V.js";import{A as H,B as Ge,C as le,E as Ke,F as Re,a as I,b as fe,l as De,o as Q,p as X,s as He,t as Ue,u as b,v as re,w as ae,x as ze,y as ie}from"./chunk-UFW2ZJRP.js";import"./chunk-AIB6J3RN.js";var is=["total_ammonia","nitrite","nitrate","ph","temperature","kh","gh"];function It(e,{kits:t,source:n,label:o}){return[...pe(e,"substrate")?ls(e):[],...pe(e,"hardscape")?ps(e):[],...pe(e,"warmth")?ms(e):[],...pe(e,"plants")?cs(e):[],...us(e,n,o),...is.filter(a=>!t.some(l=>l.parameter===a&&!l.retired)).map(a=>({code:a==="temperature"?"thermometer":"test",key:`test.${a}`,parameter:a}))]}var Mt=e=>y("filled_weight",ke(e,O(e,"place"))).answer?.total_kg??null;function ls(e){let t=O(e,"substrate"),n=we(he(e),t),o=y("substrate",n).answer;if(!n||!o)return[];let a=o.layers.map((l,r)=>{let{material:p,role:m}=n.layers[r];return{code:l.packs===void 0?"layer":"layer_packs",key:`bed.${m}`,material:p,litres:l.litres,kg:l.kg,count:l.packs??0,pack:(m==="nutrient"?t.nutrient_pack:t.cap_pack)??0,pack_unit:be(p)}});return t.support_bags?[...a,{code:"mesh",key:"mesh",count:t.support_bags,litres:o.support_l}]:a}function ps(e){let t=O(e,"hardscape");return Ze.flatMap(n=>{let o=t[`${n}_kg`]??0;return o>0?[{code:"hardscape",key:`hardscape.${n}`,kind:n,kg:o}]:[]})}function ms(e){let t=O(e,"warmth"),n=y("heater_power",ye(e,t)).answer,{ppfd_umol_m2_s:o,hours:a}=me(t);return[...n&&n.heater_w>0?[{code:"heater",key:"heater",watts:n.heater_w}]:[],...t.filter==="none"?[]:[{code:"filter",key:"filter",filter:t.filter}],{code:"lamp",key:"lamp",light:o,hours:a,area_cm2:tt(he(e)).area_cm2}]}function cs(e){let{list:t,planting:n}=O(e,"plants"),o=t.filter(r=>r.portions>0),a=Fe(he(e),n)-o.reduce((r,p)=>r+p.portions,0),l=o.map(r=>({code:"plant",key:`plant.${r.species}`,species:r.species,count:r.portions}));return a>0?[...l,{code:"plants_more",key:"plants_more",count:a}]:l}function us(e,t,n){let o=de({tank:e,source:t,label:n},e.water_l);return o.needed?o.amount===void 0?[{code:`dechlorinator_${o.missing}`,key:"dechlorinator",litres:e.water_l}]:[{code:"dechlorinator",key:"dechlorinator",amount:o.amount,unit:o.unit,name:o.label.name,litres:e.water_l}]:[]}var R=({label:e,name:t,choices:n,value:o,icons:a=!1,on_value:l})=>i`
  <fieldset class="field"><legend class="label">${e}</legend>
    <div class="tiles two choices">${n.map(r=>i`
      <label key=${r.value}><input class="unseen" type="radio" name=${t} value=${r.value}
        checked=${o===r.value}
        onChange=${()=>l(r.value)} />${a&&i`<${B} name=${r.value} size=${40} />`}
          ${r.label}</label>`)}</div>
  </fieldset>`;var $s=500,Ne=({chosen:e,named:t,about:n,on_count:o,on_remove:a})=>e.map(({species:l,count:r})=>i`
    <div class="chosen" key=${l}>
      <${T} label=${t(l)} also=${n(l)} max=${$s} value=${r}
        on_value=${p=>o(l,p)} />
      ${r===0&&i`<button class="quiet" type="button" onClick=${W(()=>a(l))}><${B} name="remove"
          size=${20} />${s("remove_named",{what:t(l)})}</button>`}
    </div>`),Te=({kinds:e,named:t,about:n,on_pick:o})=>i`
  <ul class="lines">${e.map(a=>i`
    <li key=${a}><button class="line whole" type="button" onClick=${W(()=>o(a))}><span
      class="grow">${t(a)}<br /><span class="soft small">${n(a)}</span></span><${B} name="plus"
      /></button></li>`)}</ul>`;function Dt({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"warmth"),r=y("heater_power",ye(e,n)),p=y("light_dose",me(n)),m=ae("tank","filter"),$=b("light_dose","ppfd_umol_m2_s");return i`
    <${x} step="warmth" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{a("skipped")}}
      act=${i`<${C} disabled=${r.errors.length+p.errors.length>0}
        onClick=${()=>{a("done",{temperature_c:n.temperature_c,filter:n.filter})}}>
        ${r.answer?s("setup.next_with",{figure:`${k(r.answer.heater_w,0)} W`}):s("setup.next")}
        <//>`}>
      <section><h2>${s("setup.warmth")}</h2>
        <${T} label=${s("setup.water_warm")} unit="°C" min=${10} max=${32} value=${Number(t.temperature_c)}
          on_value=${c=>o({temperature_c:c})} />
        <${T} label=${s("setup.room_cold")} also=${s("setup.room_cold_why")} unit="°C" min=${-5} max=${35}
          value=${Number(t.room_c)} on_value=${c=>o({room_c:c})} />
        <${R} label=${s("setup.cover")} name="cover"
          choices=${["lid","open"].map(c=>({value:c,label:s(`setup.cover_${c}`)}))} value=${t.cover}
          on_value=${c=>o({cover:c})} />
        <${v} name="heater_power" found=${r}
          show=${["heater_w","loss_w","warming_c_hour","cooling_c_hour"]} />
      </section>
      <section class="section"><h2>${s("setup.light")}</h2>
        <${R} label=${s("setup.light_band")} name="light"
          choices=${["low","medium","high"].map(c=>({value:c,label:s(`setup.light_${c}`)}))}
          value=${t.light} on_value=${c=>o({light:c,ppfd_umol_m2_s:""})} />
        <${T} label=${b("light_dose","hours").label} unit="h" step=${.5} max=${24}
          value=${Number(t.hours)} on_value=${c=>o({hours:c})} />
        <${A} specs=${[{...$,label:s("setup.light_measured")}]} raw=${t} on_raw=${o}
          wrong=${p.errors} />
        ${n.ppfd_umol_m2_s===void 0&&i`<p class="soft small">
          ${s("setup.light_counted",{light:M(me(n).ppfd_umol_m2_s,0)})}</p>`}
        <${v} name="light_dose" found=${p} show=${["dli_mol_m2_day","band"]} />
      </section>
      <section class="section"><h2>${s("setup.moves")}</h2>
        <p>${s("setup.moves_why")}</p>
        <${R} label=${m.label} name="filter" choices=${m.choices} value=${t.filter}
          on_value=${c=>o({filter:c})} />
      </section>
    <//>`}var fs=8;function Ht({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"plants"),r=ae("tank","planting"),p=fe("planting_practice"),m=Fe(D(e),t.planting),$=O(e,"warmth"),c=t.list,u=c.reduce((d,f)=>d+f.portions,0),h=(d,f)=>o({list:c.some(_=>_.species===d)?c.map(_=>_.species===d?{species:d,portions:f}:_):[...c,{species:d,portions:f}]}),g=gt($).filter(({key:d})=>!c.some(({species:f})=>f===d));return i`
    <${x} step="plants" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{a("skipped")}}
      act=${i`<${C} onClick=${()=>{a("done",{planting:n.planting})}}>
        ${u?s("setup.next_portions",{count:u}):s("setup.next")}<//>`}>
      <p>${s("setup.plants_why")}</p>
      <${R} label=${r.label} name="planting" choices=${r.choices} value=${t.planting}
        on_value=${d=>o({planting:d})} />
      <p class="sentence">${s("setup.portions",{count:m})}</p>
      ${t.planting!=="none"&&i`<details class="more"><summary>${s("bench.sources")}</summary>
        <p>${s("setup.portions_how",{percent:k(100*p[`cover_${t.planting}`],0),area:z(p.portion_cm2,"cm\xB2",0)})}</p>
        <p class="soft small">${I("constants").groups.planting_practice.note}</p>
        <p class="soft small">${s("bench.provenance.common practice")}</p></details>`}
      ${c.length>0&&i`<section class="section"><h2>${s("setup.plants_chosen",{have:u,wanted:m})}</h2>
        <${Ne} chosen=${c.map(({species:d,portions:f})=>({species:d,count:f}))} named=${se}
          about=${qt} on_count=${h}
          on_remove=${d=>o({list:c.filter(({species:f})=>f!==d)})} />
        </section>`}
      <section class="section"><h2>${s("setup.plants_fit")}</h2>
        <p class="soft small">${s("setup.plants_order")}</p>
        <${Te} kinds=${g.slice(0,fs).map(({key:d})=>d)} named=${se} about=${qt}
          on_pick=${d=>h(d,1)} />
        <h3>${s("setup.plant_other")}</h3>
        <${je} rows="plants" near=${E("own_plant").map(({name:d})=>d)} value=""
          then=${`/tank/${e.id}/setup/plants`} on_pick=${d=>h(d,1)} />
      </section>
    <//>`}var se=e=>I("plants").rows[e]?.name??e;function qt(e){let t=I("plants").rows[e];if(!t)return"";let[n,o]=t.temperature_c;return s("setup.plant_about",{growth:s(`setup.growth_${t.growth}`),position:s(`setup.position_${t.position}`),low:U(n),high:U(o),light:s(`setup.light_${t.light}`)})}function We({code:e,key:t,...n}){let o=Object.fromEntries(Object.entries(n).map(([a,l])=>[a,Ut[a]?Ut[a](l,n):l]));return s(`buy.${e}`,o)}var Ut={material:e=>ds(e),litres:e=>oe(j(e)),kg:e=>oe(`${M(e,1)} kg`),filter:e=>H(ae("tank","filter"),e),pack:(e,{pack_unit:t})=>oe(`${M(e,1)} ${t}`),kind:e=>s(`setup.of_${e}`),watts:e=>oe(`${k(e,0)} W`),light:e=>k(e,0),hours:e=>M(e,1),area_cm2:e=>k(e,0),species:e=>`${se(e)} (${e})`,amount:(e,{unit:t})=>oe(ce({amount:e,unit:t})),parameter:e=>it(e)},oe=e=>e.replaceAll(" ","\xA0"),zt=e=>oe(`${k(e,0)} kg`),ds=e=>H(ie(b("substrate","layers"),"material"),e);function _s({id:e}){let t=S("tank",e),n=Se(`buy.${e}`,()=>[]),o=V("");if(!t||!ge(t))return i`<${J} up="/tanks" />`;let a=q(t),l=It(a,{kits:E("test_kit"),source:S("source_water",a.source_water),label:S("label",a.dechlorinator)}),r=Mt(a),p=[s("buy.water",{litres:j(a.water_l)}),...r===null?[]:[s("buy.weight",{kg:zt(r)})],s(Y(a)?"buy.first_test":"buy.tests")],m=()=>[s("buy.for",{tank:a.name}),...l.map(u=>`\u2013 ${We(u)}`),"",...p].join(`
`),$=async()=>{try{if(navigator.share)return await navigator.share({title:s("buy.for",{tank:a.name}),text:m()});await navigator.clipboard.writeText(m()),mt(s("bench.copied"))}catch(u){u.name!=="AbortError"&&(o.value=m())}},c=u=>n.value=n.value.includes(u)?n.value.filter(h=>h!==u):[...n.value,u];return i`
    <${ee} title=${s("buy.title")} up=${`/tank/${e}`} aside=${i`<span class="soft">${a.name}</span>`}
      act=${i`<button class="quiet tall screen-only" type="button" onClick=${W(()=>print())}>${s("buy.print")}
        </button><button class="main screen-only" type="button" onClick=${W(()=>{$()})}>${s("buy.send")}
        </button>`}>
      <ul class="lines buy">${l.map(u=>i`
        <li class="line" key=${u.key}><label class="check grow"><input type="checkbox"
          checked=${n.value.includes(u.key)} onChange=${()=>c(u.key)} /><span>
            ${We(u)}</span>
          </label></li>`)}</ul>
      ${o.value&&i`<textarea class="to-copy" readonly rows="8" aria-label=${s("bench.copy_by_hand")}
        onFocus=${ut}>${o.value}</textarea>`}
      <section class="section"><h2>${s("buy.know")}</h2><ul class="why">
        ${p.map(u=>i`<li key=${u}>${u}</li>`)}</ul>
        <p class="caution small">${s("buy.floor")}</p><p class="soft small">${s("buy.ticks")}</p></section>
    <//>`}var hs=["capped","plain","bare"],gs={nutrient:["garden_soil","potting_soil","baked_clay"],cap:["sand","gravel","lava","baked_clay"]};function Kt({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"substrate"),r=y("substrate",we(D(e),n)),p=b("substrate","layers").item,m=Ue(p.fields,"material");return i`
    <${x} step="substrate" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{a("skipped")}}
      act=${i`<${C} disabled=${r.errors.length>0} onClick=${()=>{a("done")}}>
        ${r.answer?s("setup.next_with",{figure:j(r.answer.litres)}):s("setup.next")}<//>`}>
      <${R} label=${s("setup.bed")} name="bed"
        choices=${hs.map($=>({value:$,label:s(`setup.bed_${$}`)}))} value=${t.bed}
        on_value=${$=>o({bed:$})} />
      ${t.bed==="capped"&&i`<${Gt} of="nutrient" title=${s("setup.layer_nutrient")} material=${m}
        raw=${t} set=${o} layer=${r.answer?.layers[0]} />`}
      ${t.bed!=="bare"&&i`
        <${Gt} of="cap" title=${s(t.bed==="capped"?"setup.layer_cap":"setup.layer_plain")}
          material=${m} raw=${t} set=${o} layer=${r.answer?.layers.at(-1)} />
        <details class="more" open=${t.support_bags>0}><summary>${s("setup.mesh")}</summary>
          <p class="soft small">${s("setup.mesh_why")}</p>
          <${T} label=${s("setup.mesh_bags")} value=${Number(t.support_bags)} max=${40}
            on_value=${$=>o({support_bags:$})} />
          <${T} label=${s("setup.mesh_size")} unit="L" value=${Number(t.support_bag_l??2)} step=${.5}
            min=${.5} max=${20} on_value=${$=>o({support_bag_l:$})} />
        </details>
        <${v} name="substrate" found=${r}
          show=${["litres","kg",...t.support_bags>0?["support_l"]:[],"front_cm","back_cm","slope_deg"]}
          />
        ${D(e).shape!=="cuboid"&&i`<p class="soft small">${s("setup.as_rectangle")}</p>`}`}
    <//>`}var Gt=({of:e,title:t,material:n,raw:o,set:a,layer:l})=>i`
  <section class="section"><h2>${t}</h2>
    <${R} label=${n.label} name=${`${e}-material`}
      choices=${n.choices.filter(r=>gs[e].includes(r.value))} value=${o[e]}
      on_value=${r=>a({[e]:r})} />
    <${T} label=${s("setup.front")} unit="cm" step=${.5} max=${20} value=${Number(o[`${e}_front_cm`])}
      on_value=${r=>a({[`${e}_front_cm`]:r})} />
    <${T} label=${s("setup.back")} unit="cm" step=${.5} max=${30} value=${Number(o[`${e}_back_cm`])}
      on_value=${r=>a({[`${e}_back_cm`]:r})} />
    <${A} specs=${[{name:`${e}_pack`,label:s("setup.pack"),unit:be(o[e])}]} raw=${o}
      on_raw=${a} />
    ${l&&i`<p class="sentence">
      ${s(l.packs===void 0?"setup.layer_found":"setup.layer_packs",{litres:j(l.litres),kg:z(l.kg,"kg",1),count:l.packs??0})}</p>`}
  </section>`,ws=["stone","lava","wood"];function Jt({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"hardscape"),r=ot(n),p=fe("hardscape_densities"),m=y("volume",Z({...e,[_e("hardscape")]:{state:"done",said:n}}));return i`
    <${x} step="hardscape" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{a("skipped")}}
      act=${i`<${C} onClick=${()=>{a("done")}} />`}>
      <p>${s("setup.hardscape_why")}</p>
      ${ws.map($=>i`<${T} key=${$} label=${s(`setup.of_${$}`)}
          also=${s("setup.density",{density:M(p[$],2)})} unit="kg" step=${.5} max=${500}
          value=${Number(t[`${$}_kg`]??0)}
        on_value=${c=>o({[`${$}_kg`]:c})} />`)}
      <p class="sentence">
        ${s("setup.displaced",{litres:j(r.litres),kg:z(r.kg,"kg",1)})}</p>
      <${v} name="volume" found=${m} show=${["water_l","gross_l"]} />
    <//>`}function Qt({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"fill"),r=V(!1),p=y("volume",Z(e,n.metered_l)),m=p.answer?.water_l??0,$=S("source_water",e.source_water),c=S("label",e.dechlorinator),u=m?de({tank:{...e,water_l:m},source:$,label:c},m):null,g=O(e,"plants").list.filter(({portions:w})=>w>0),d=b("volume","metered_l"),f={litres:Vt(j(m)),dose:u?.amount!==void 0?Vt(ce(u)):""},_=async()=>{if(!p.answer)return;r.value=!0;let w=P.value.now(),L=Qe($,"total_ammonia",c),ns=[...bs(e,w,u,m,L),...t.plants_in?ks(e,w,g):[]],{water_l:rs,gross_l:as}=p.answer;await a("done",{measures:p.payload,water_l:rs,gross_l:as,started_at:w},{more:ns,words:s("setup.filled",{tank:e.name,...f})}),r.value=!1};return i`
    <${x} step="fill" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      act=${i`<${C} disabled=${!p.answer||r.value} onClick=${()=>{_()}}>
        ${s(u?.amount!==void 0?"setup.log_fill_dose":"setup.log_fill",f)}<//>`}>
      <p class="caution">${Ge("heater_power","electricity")}</p>
      <p>${s("setup.fill_why")}</p>
      <${v} name="volume" found=${p} show=${["water_l","gross_l"]} />
      <${A} specs=${[d]} raw=${t} on_raw=${o} wrong=${p.errors} />
      ${g.length>0&&i`
        <label class="check"><input type="checkbox" checked=${!!t.plants_in}
          onChange=${ct(w=>o({plants_in:w}))} />
          ${s("setup.plants_in",{count:g.length})}</label>
        <p class="soft small">${g.map(({species:w})=>se(w)).join(", ")}</p>`}
      <${Wt} tank=${e} here=${`/tank/${e.id}/setup/fill`} />
      <${ys} dose=${u} payload=${u?.amount===void 0?null:Xe({water_l:m},$,u.label,m)} />
    <//>`}function bs(e,t,n,o,a){if(n?.amount===void 0)return[];let{label:l,amount:r,unit:p}=n,m={tank:e.id,at:t,label:l.id,what:l.name,amount:r,unit:p,for_litres:o};return[{type:"put",kind:"dose",id:K(),fields:a>0?{...m,tan_mg_n_l:a}:m}]}var ks=(e,t,n)=>n.map(({species:o,portions:a})=>({type:"put",kind:"planting",id:K(),fields:{tank:e.id,at:t,change:"plant",species:o,amount:s("setup.portions_in",{count:a}),portions:a}})),Vt=e=>e.replaceAll(" ","\xA0"),ys=({dose:e,payload:t})=>e?e.needed?e.amount===void 0?i`<p class="soft">${s(e.missing==="source"?"setup.dose_source":"setup.dose_label")}</p>`:i`
    <p class="dose"><span class="big">${ce(e)}</span><br />${e.label.name}<br /><span class="soft small">
      ${s(`dose.basis_${e.label.basis}`)}</span></p>
    <${v} name="dechlorinator_dose" found=${{payload:t,answer:e.answer,errors:[]}}
      show=${["freed_ammonia_mg_n_l"]} cautions=${["label_first","no_mixing","freed_ammonia","no_airing"]} />`:i`<p class="dose">${s("dose.none")}</p>`:null;var Xt=["length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],Yt=()=>s("setup.name_first",{count:E("tank").length+1});function Ae({tank:e}){let t=`setup.${e?.id??"new"}.glass`,n=Se(t,()=>({})),o=V(""),{inputs:a}=Q().volume,l={measures:"outside",...e?.measures,name:e?.name??Yt(),...n.value},r=f=>n.value={...n.value,...f},p=f=>He(a,f),m=b("volume","measures"),{name:$,...c}=l,u=ue(a.filter(f=>["shape","measures",...Xt].includes(f.name)),et(c)),h=y("volume",l.shape?u:null),g=h.errors.filter(({field:f})=>!(f in u)).flatMap(({field:f})=>p(f)?.label??[]),d=async()=>{let f=e?.id??K();try{let _=vs(e,String($).trim()||Yt(),u),w=[{type:"put",kind:"tank",id:f,fields:_}],L=s("setup.saved",{step:s("setup.step.glass")});if(Object.keys(_).length>0&&!await Ce(w,L))return;rt(t),$t(Lt(f,"glass"))}catch(_){o.value=pt(_,[...a,...X().tank.fields])}};return i`
    <${x} step="glass" up=${e?`/tank/${e.id}`:"/tanks/new"} problem=${o.value}
      act=${i`<${C} disabled=${!h.answer} onClick=${()=>{d()}} />`}>
      <${R} label=${s("tank.shape")} name="shape" choices=${b("volume","shape").choices}
        value=${l.shape} icons
        on_value=${f=>r({shape:f})} />
      ${l.shape&&i`
        <${R} label=${m.label} name="measures" choices=${m.choices}
          value=${l.measures} on_value=${f=>r({measures:f})} />
        <${A}
          specs=${a.filter(f=>Xt.includes(f.name)&&yt(f,a,l))}
          raw=${l} on_raw=${r} wrong=${h.errors} />
        ${g.length>0&&i`<p class="soft">${s("bench.still_needed",{fields:g.join(", ")})}</p>`}
        <${v} name="volume" found=${h.answer?h:{...h,errors:[]}}
          show=${["gross_l","water_l","surface_cm2"]} cautions=${[]} />
        <${te} specs=${X().tank.fields.filter(f=>f.name==="name")}
          raw=${{name:$}} on_raw=${r} errors=${[]} />`}
    <//>`}function vs(e,t,n){e&&Re("volume",Z({...e,measures:n}));let{water_l:o,gross_l:a}=Re("volume",n),l=e?$e({measures:st(D(e))},{measures:n}):{measures:n};return $e(e,{...e?{}:{walk_order:ve(G)},name:t,[_e("glass")]:{state:"done"},...l.measures?{...l,water_l:o,gross_l:a}:{}})}function Zt({tank:e}){let{raw:t,said:n,set:o,save:a,problem:l}=N(e,"place"),{shape:r,glass_mm:p}=D(e),m=r==="cuboid",$=[...m?[]:["tank_kg"],...m&&!p?["glass_mm"]:[],"stand_kg","equipment_kg","footprint_length_cm","footprint_width_cm"],c=(m?p?[]:["glass_mm"]:["tank_kg","footprint_length_cm","footprint_width_cm"]).filter(g=>n[g]===void 0),u=c.length>0?{payload:{},errors:[]}:y("filled_weight",ke(e,n)),h=g=>b("filled_weight",g);return i`
    <${x} step="place" name=${e.name} up=${`/tank/${e.id}`} problem=${l}
      skip=${()=>{a("skipped")}}
      act=${i`<${C} onClick=${()=>{a("done",n.place?{place:String(t.place).trim()}:{})}}>
        ${u.answer?s("setup.next_with",{figure:`${k(u.answer.total_kg,0)} kg`}):s("setup.next")}
        <//>`}>
      <p>${s("setup.place_why")}</p>
      <${A} specs=${$.map(h)} raw=${t} on_raw=${o} wrong=${u.errors} />
      ${c.length>0&&i`<p class="soft">
        ${s("bench.still_needed",{fields:c.map(g=>h(g).label).join(", ")})}</p>`}
      <${v} name="filled_weight" found=${u}
        show=${["total_kg","footprint_kpa","foot_kg","empty_tank_kg"]} />
      <${te} specs=${X().tank.fields.filter(g=>g.name==="place")}
        raw=${{place:t.place??e.place}} on_raw=${o} errors=${[]} />
    <//>`}var Ss=8;function ss({tank:e}){let{raw:t,set:n,save:o,problem:a}=N(e,"stock"),l=t.list??e.planned_stock??[],r=l.filter(({count:_})=>_>0),p=(_,w)=>n({list:l.some(L=>L.species===_)?l.map(L=>L.species===_?{...L,count:w}:L):[...l,{species:_,count:w}]}),m=_=>p(_,I("species").rows[_]?.group_min??1),$=E("own_species"),c=wt(r,$),u=S("source_water",e.source_water),h=Le(()=>xt(e.id),[e,u]),g=Le(()=>bt(h,r,$),[h,$,JSON.stringify(r)]),d=_=>{let w=ht(h,_,$);return w.length>0?s("setup.not_for_water",{why:w.map(({kind:L})=>Ls(L)).join("; ")}):""},f=_=>[ts(_),d(_)].filter(Boolean).join(". ");return i`
    <${x} step="stock" name=${e.name} up=${`/tank/${e.id}`} problem=${a}
      skip=${()=>{o("skipped")}}
      act=${i`<${C} onClick=${()=>{o("done",{planned_stock:r})}} />`}>
      <p>${s("setup.stock_why")}</p>
      <${At} tank=${e} here=${`/tank/${e.id}/setup/stock`} />
      ${(u?.ph===void 0||u.gh_dgh===void 0)&&i`<p class="caution">${s("setup.water_unknown")}</p>`}
      <${Ne} chosen=${l} named=${es} about=${f} on_count=${p}
        on_remove=${_=>n({list:l.filter(({species:w})=>w!==_)})} />
      ${g.length>0&&i`<section class="section"><h2>${s("setup.animals_fit")}</h2>
        <p class="soft small">${s("setup.animals_order")}</p>
        <${Te} kinds=${g.slice(0,Ss).map(({key:_})=>_)} named=${es} about=${ts}
          on_pick=${m} /></section>`}
      <section class="section"><h2>${s("setup.animal_other")}</h2>
        <${je} rows="species" near=${$.map(({name:_})=>_)} value=""
          then=${`/tank/${e.id}/setup/stock`} on_pick=${m} warned=${d} /></section>
      ${c.length>0&&i`<p class="caution">${s("setup.unweighed",{who:c.join(", ")})}</p>`}
      <${xs} tank=${e} stock=${r} figures=${h} />
    <//>`}function xs({tank:e,stock:t,figures:n}){let o=E("own_species"),a=Ft(e.id),l=kt(t,a),r=Pe({figures:lt(n),present:a,wanted:l,own:o});if(!r)return null;if(r.missing)return i`<${jt} tank=${e} missing=${r.missing} />`;let p=r.whole?.found??{payload:r.stocking.input,answer:r.stocking.answer,errors:[]},m={payload:r.company.input,answer:r.company.answer,errors:[]},$=[...le("stocking_limit"),...le("compatibility")];return i`
    <p class="sentence">${Cs(r)}</p>
    ${e.started_at?i`<${Rt} tank=${{...e,planned_stock:t}} />`:i`<p>${Fs(Pe({figures:n,present:a,wanted:l,own:o}))}</p>`}
    ${p.answer?.notes.map(c=>i`<p class="soft small" key=${c}>${c}</p>`)}
    <details class="more"><summary>${s("setup.bears_grown")}</summary><${v} name="stocking_limit"
      found=${p} show=${["limit_g","binding","present_g","nitrogen_g","oxygen_g","room_g"]} cautions=${[]} />
      </details>
    <${Ns} answer=${m.answer} />
    <${v} name="compatibility" found=${m} show=${[]} cautions=${[]} />
    ${$.map(c=>i`<p class="caution small" key=${c}>${c}</p>`)}`}function Cs({kinds:e,over:t,binds:n,whole:o}){if(t)return s("many.over",{by:Ee(n)});if(!o)return s("setup.plan_all_in");if(o.fits)return s("setup.plan_fits",{count:o.count});let l=e.filter(({come:r,wanted:p})=>r<p).map(({name:r,come:p,wanted:m})=>s("setup.plan_of",{come:p,wanted:m,name:r})).join("; ");return[s("setup.plan_not",{by:Ee(o.by)}),l].filter(Boolean).join(" ")}function Fs(e){if(!e||e.missing)return null;if(e.whole?.fits)return s("setup.plan_first_all");let t=e.kinds.filter(({come:o})=>o>0),n=t.map(({species:o,come:a})=>Tt(o,a)).join("\xA0\xB7 ");return t.length>0?s("setup.plan_first",{who:n}):s("setup.plan_wait")}var js=e=>[Ie("temperature",e.temperature_low_c,e.temperature_high_c,U),Ie("ph",e.ph_low,e.ph_high,t=>k(t,1)),Ie("gh",e.gh_low_dgh,e.gh_high_dgh,t=>k(t,0))].filter(Boolean).join("\xA0\xB7 "),Ie=(e,t,n,o)=>typeof t=="number"&&typeof n=="number"&&s(`setup.water_${e}`,{low:o(t),high:o(n)});function Ns({answer:e}){if(!e)return null;let t=re("compatibility","verdict"),n=re("compatibility","findings");return i`
    <section class="section"><h2>${t.label}: ${H(t,e.verdict)}</h2>
      <p>${js(e)}</p>
      <ul class="why">${e.findings.map((o,a)=>i`<li key=${a}>
        ${Ts(o,H(ie(n,"kind"),o.kind))}</li>`)}</ul>
    </section>`}function Ts(e,t){let n=[e.a,e.b].filter(Boolean).join(" \u2013 "),o=ze(re("compatibility","findings")).filter(({type:r})=>r!=="text"),l=vt({outputs:o},e,{system:at.value,marks:Je(Ve())}).filter(({name:r})=>r.endsWith("_low")||r.endsWith("_high")).map(({label:r,text:p,unit:m})=>`${r}: ${[p,m].filter(Boolean).join("\xA0")}`).join("; ");return l?s("setup.finding_figures",{who:n,what:t,figures:l}):s("setup.finding",{who:n,what:t})}var Ls=e=>H(ie(re("compatibility","findings"),"kind"),e),es=e=>I("species").rows[e]?.name??e;function ts(e){let t=I("species").rows[e];if(!t)return"";let[n,o]=t.temperature_c;return s("setup.animal_about",{length:z(t.length_cm,"cm",1),group:t.group_min,low:U(n),high:U(o)})}var Rs={glass:Ae,place:Zt,substrate:Kt,hardscape:Jt,warmth:Dt,plants:Ht,stock:ss,fill:Qt,first_fish:Ot},Os=["stock","first_fish"];function Ps({id:e,step:t}){if(!e)return P.value.may("tank")?i`<${Ae} tank=${null} />`:i`<${J} up="/tanks" />`;let n=S("tank",e);if(!n||!ge(n))return i`<${J} up="/tanks" />`;let o=q(n),a=t==="first_fish"?P.value.may("stock_change"):P.value.may("tank");if(!t||!Ye.some(r=>r===t)||!a||!(Y(o)||Os.includes(t)))return i`<${_t} tank=${o} />`;let l=Rs[t];return i`<${l} tank=${o} />`}var Me=["measures","length_cm","width_cm","diameter_cm","bow_cm","height_cm","glass_mm","fill_height_cm"],ne=["place","started_at","seeded","planting","filter","feed_g_day","protein_fraction","fish_g","temperature_c","ph","kh_dkh","note"];function Bs({id:e}){let t=e?S("tank",e):null,n=t&&q(t),o=Bt({name:`tank.${e??"new"}`,held:n,first:()=>Hs(n)}),a=e?`/tank/${e}`:"/tanks",l=s(e?"tank.edit":"tank.new");if(e&&!n)return i`<${J} up="/tanks" />`;if(!P.value.may("tank"))return i`<${Pt} title=${l} up=${a} why="looking_only.this" />`;let{measures:r,about:p}=o.draft.value,m=Ds(r),$=[...m.errors,...o.errors.value],c=()=>(o.tried.value=!0,m.answer?o.save(()=>Es(e,n,o.opened,p,m)):document.querySelector(".wrong")?.scrollIntoView({block:"center"}));return i`
    <${ee} title=${l} up=${a} book
      news=${i`<${Nt} opened=${o.opened} held=${n}
        names=${["name","water_l","measures",...ne]} />`}
      act=${i`<${qs} found=${m} /><button class="main" type="button" onClick=${W(()=>{c()})}>
        ${s("tank.save")}</button>`}>
      ${!e&&i`<p class="from-glass"><a class="quiet" href="/tanks/setup">${s("setup.from_glass")}</a><span
        class="soft small">${s("setup.from_glass_why")}</span></p>`}
      <${Et} form=${o} kind="tank" beside=${["name",...ne]} />
      <${As} form=${o} error=${m.errors.find(({field:u})=>u==="shape")} />
      ${r.shape&&i`
        <${Is} form=${o} errors=${$} notes=${m.answer?.notes??[]} />
        <section class="entry"><span class="in-margin" aria-hidden="true">3</span><div>
          <h2 class="unseen">${s("tank.about")}</h2>
          <${Ms} form=${o} errors=${$} open=${!!e} />
          ${le("volume").map(u=>i`<p class="caution small" key=${u}>
            ${u}</p>`)}
          ${n&&i`<${St} meta=${n.meta} />`}
          ${n&&i`<p><button class="quiet" type="button" onClick=${W(()=>{Ws(n)})}>
            ${s(n.resting?"tank.back":"tank.away")}</button></p>`}
        </div></section>`}
    <//>`}var qe=e=>X().tank.fields.filter(({name:t})=>e.includes(t));function Es(e,t,n,o,a){let l=ue(qe(["name",...ne]),o),r=e?Object.fromEntries(ne.filter(d=>!(d in l)).map(d=>[d,null])):{},p=e??K(),{water_l:m,gross_l:$}=a.answer??{},c=e?{}:{walk_order:ve(G)},u={...r,...l,measures:a.payload,water_l:m,gross_l:$,...c},h=$e(n,u);return t&&Y(t)&&h.measures&&(h.measures=nt(t,h.measures)),{writes:Object.keys(h).length?[{type:"put",kind:"tank",id:p,fields:h}]:[],said:s(e?"saved.tank":"saved.new_tank",{tank:l.name}),to:`/tank/${p}`}}var Ws=({id:e,name:t,resting:n})=>Ce([{type:"put",kind:"tank",id:e,fields:{resting:!n}}],s(n?"saved.back":"saved.away",{tank:t}));function As({form:e,error:t}){let{measures:n}=e.draft.value,o=b("volume","shape");return i`
    <section class="entry"><span class="in-margin" aria-hidden="true">1</span><div>
      <fieldset><legend class="label">${s("tank.shape")}</legend>
        <div class="tiles two">${o.choices.map(({value:a,label:l})=>i`
          <label key=${a}><input class="unseen" type="radio" name="shape" value=${a}
            checked=${n.shape===a}
            onChange=${()=>e.set({measures:{...n,shape:a}})} /><${B} name=${a}
              size=${40} />${l}</label>`)}</div>
      </fieldset>
      ${e.tried.value&&t&&i`<${Ct} spec=${o} error=${t} />`}
    </div></section>`}function Is({form:e,errors:t,notes:n}){let{measures:o}=e.draft.value,{inputs:a}=Q().volume,l=r=>i`<${te} specs=${r} all=${a} raw=${o} errors=${t} tried=${e.tried.value}
      on_raw=${p=>e.set({measures:p})} />`;return i`
    <section class="entry"><span class="in-margin" aria-hidden="true">2</span><div>
      <h2 class="unseen">${s("tank.measures")}</h2>
      ${l(a.filter(({name:r})=>Me.includes(r)))}
      <details class="more" open=${Us(o)}><summary>${s("tank.exact")}</summary>
        ${l(a.filter(({name:r})=>r!=="shape"&&!Me.includes(r)))}
      </details>
      ${n.map(r=>i`<p class="soft small" key=${r}>${r}</p>`)}
    </div></section>`}function Ms({form:e,errors:t,open:n}){let o=a=>i`<${te} specs=${qe(a)} raw=${e.draft.value.about} errors=${t} tried=${e.tried.value}
      on_raw=${l=>e.set({about:l})} />`;return i`
    ${o(["name"])}
    <details class="more" open=${n}><summary>${s("tank.more")}</summary>${o(ne)}</details>`}var qs=({found:e})=>i`
  <output class="found" aria-label=${s("tank.litres")}>
    ${e.answer?i`<b class="hand">${k(xe("L").show(e.answer.water_l),1)}
    </b> ${xe("L").label}`:i`<span class="soft">– ${xe("L").label}</span>`}</output>`;function Ds(e){let t=ue(Q().volume.inputs,e);try{return{answer:Ke("volume",t),payload:t,errors:[]}}catch(n){if(!(n instanceof De))throw n;return{payload:t,errors:n.errors}}}var Hs=e=>({measures:e?.measures?Be(Q().volume.inputs,e.measures):{},about:e?Be(qe(["name",...ne]),e):{}}),Us=e=>Object.keys(e).some(t=>t!=="shape"&&!Me.includes(t)&&e[t]);function zs(){let e=Oe(G,{resting:!0}),t=Oe(G);return i`
    <${ee} title=${s("place.tanks")} place="tanks"
      act=${P.value.may("tank")&&i`<a class="main" href="/tanks/new"><${B} name="plus" />
        ${s(t.length?"tank.new":"tank.first")}</a>`}>
      ${t.length+e.length>0&&i`<p><a class="quiet tall" href="/search"><${B} name="search" />
        ${s("search.title")}</a></p>`}
      ${t.length>0?i`<${os} tanks=${t} />`:ft().length===0&&i`<p class="sentence">
        ${s("tanks.empty")}</p>`}
      <${dt} />
      ${t.length>0&&i`<ul class="lines section"><li><a class="line" href="/timeline"><span><b>${s("history.all_tanks")}</b><br />
          <span class="soft small">${s("history.ways")}</span></span></a></li>
        <li><a class="line" href="/labels"><span><b>${s("labels.title")}</b><br /><span class="soft small">
          ${s("labels.short")}</span></span></a></li></ul>`}
      ${e.length>0&&i`<section class="section"><h2>${s("tanks.away")}</h2><${os} tanks=${e} />
        </section>`}
    <//>`}var os=({tanks:e})=>i`
  <ul class="lines">${e.map(t=>i`
    <li key=${t.id}><a class="line" href=${`/tank/${t.id}`}>
      <span class="grow"><b>${t.name}</b>${t.place&&i`<br /><span class="soft small">${t.place}</span>`}
        </span>
      <span class="figures soft">${j(q(t).water_l)}</span></a></li>`)}</ul>`;export{_s as Buy,Ps as SettingUp,Bs as TankForm,zs as Tanks};
//# sourceMappingURL=setup-6QX3HSNP.js.map
