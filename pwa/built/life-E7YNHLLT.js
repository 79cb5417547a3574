import{Bb as Lt,Cb as Dt,Db as st,Ea as gt,Sa as tt,Sb as K,Xa as ot,Za as et,ab as Pt,bb as At,eb as It,k as Ot,kb as U,lb as at,mb as D,n as Nt,nb as G,o as q,ob as R,pb as z,qb as nt,rb as Ft,sb as x,wb as H,xb as W}from"./chunk-63OKULQF.js";import{$c as dt,Da as E,E as r,G as St,Gc as Ct,K as w,Kb as ut,Ld as Et,Mc as _,Pd as S,Td as O,Wb as B,_c as ht,cb as pt,cd as _t,dd as kt,g as j,gc as k,h as i,hc as u,id as Q,ja as X,jc as f,jd as Mt,kc as b,kd as V,la as F,pa as Tt,pc as ft,qa as J,wc as y}from"./chunk-AQMFKDZO.js";import"./chunk-HZWNA2UL.js";import"./chunk-K6XNGF2V.js";import{C as mt,D as v,F as $t,H as I,I as M,b as yt,u as xt}from"./chunk-IE46K5WY.js";import"./chunk-Y3BKNV3S.js";var jt=8;function rt({tank:t,kind:o}){let s=j(jt),e=[...E(f(o),t)].reverse(),c=k.value.may(o);return e.length>0&&i`
    <section class="section"><h2>${r("life.log")}</h2>
      <ol class="lines">${e.slice(0,s.value).map(a=>{let n={what:`${st(a)}, ${w(a.at,u.value)}`};return i`<li class="line logged" key=${a.id}>
          <div class="grow"><time class="soft small" datetime=${a.at}>${w(a.at,u.value)}</time><br />
            ${st(a)}${a.note&&i`<br /><span class="soft small">${a.note}</span>`}
            ${a.change==="death"&&i`<br /><a class="quiet small" href=${`/trace?tank=${t}&days=30`}>
              ${r("trace.who")}</a>`}</div>
          ${c&&i`
            <a class="quiet square plain" href=${Nt(a,f(o),`/tank/${t}/${Ot[o]}`)}
              aria-label=${r("life.correct_named",n)}><${y} name="note" size=${20} /></a>
            <button class="quiet square" type="button" aria-label=${r("remove_named",n)}
              onClick=${_(()=>{Ft(a)})}><${y} name="remove" size=${20} /></button>`}
        </li>`})}</ol>
      ${e.length>s.value&&i`<p class="center"><button class="quiet" type="button"
        onClick=${_(()=>s.value+=jt)}>${r("history.more")}</button></p>`}
    </section>`}var it=({one:t})=>t&&i`<p class="soft">
    ${r("correct.stands",{said:st(t),when:w(t.at,u.value)})} ${r("correct.kept")}</p>`;var oo=["plant","trim","remove","move_out"],eo=["trim","remove","move_out"],Ut=7;function ao({id:t,query:o}){let s=b("tank",t),e=b("planting",o.get("corrects")??void 0),c=`planting.${t}.${e?.id??[o.get("change"),o.get("species")].join(".")}`,a=K({name:c,first:()=>e?so(e):no(o)}),n=o.get("then")??(s?`/tank/${t}/plants`:"/");if(!s||o.get("corrects")&&!e)return i`<${O} up=${n} />`;let{change:m,species:l,amount:$,other_tank:h,at:T}=a.draft.value,p=a.draft.value.tank||t,L=m&&l&&(m!=="move_out"||h&&h!==p)&&!H(T),P=l?Dt(l,$.trim()):"",N=()=>a.save(()=>({writes:nt("planting",ro(a.draft.value,p,e),e),said:r(`plants.saved_${m}`,{what:P,tank:s.name,other:x(h)}),to:n}));return i`
    <${S} title=${r(e?"life.correct":"plants.entry")} up=${n}
      aside=${i`<span class="soft">${s.name}</span>`}
      act=${k.value.may("planting")&&i`<button class="main" type="button" disabled=${!L}
        onClick=${_(()=>{N()})}>${L?r(`plants.do_${m}`,{what:P}):r("life.not_yet")}</button>`}>
      <${it} one=${e} />
      <${z} text=${a.problem.value} />
      <${D} label=${r("life.what_happened")} choices=${io(e)} value=${m}
        on_pick=${lt=>a.set({change:lt})} />
      ${m&&i`<${co} id=${t} form=${a} in_tank=${p} corrects=${e}
        then=${`/tank/${t}/plants/new?${o}`} />`}
      <${R} kind="planting" errors=${a.errors.value} />
      ${["remove","trim"].includes(m)&&i`<p class="caution small">${M("compatibility","release")}
        </p>`}
      ${m==="plant"&&i`<p class="caution small">${r("plants.caution_new")}</p>`}
      ${m&&i`<p class="caution small">${r("life.caution_unplug")}</p>`}
    <//>`}var no=t=>({change:t.get("change")??"",species:t.get("species")??"",amount:"",other_tank:"",at:void 0,tank:"",raw:{}}),so=({change:t,species:o,other_tank:s,note:e,...c})=>({change:t,species:o,amount:V(c),other_tank:s??"",at:void 0,tank:"",raw:{note:e}});function ro({change:t,species:o,amount:s,other_tank:e,at:c,raw:a},n,m){return{tank:n,at:c??m?.at??k.value.now(),change:t,species:o,...s.trim()?mo(s.trim(),m):{},...a.note?.trim()?{note:a.note.trim()}:{},...t.startsWith("move")&&e?{other_tank:e}:{}}}var io=t=>v("planting","change").choices.filter(({value:o})=>oo.includes(o)||o===t?.change).map(({value:o,label:s})=>({value:o,label:o==="move_out"?r("stock.moved"):s}));function co({id:t,form:o,in_tank:s,corrects:e,then:c}){let{change:a,species:n,amount:m,other_tank:l,at:$,tank:h,raw:T}=o.draft.value,p=o.set;return i`
    <section class="section"><h2>${r("life.which_plants")}</h2>
      <${tt} rows="plants" near=${lo(t,a)} value=${n} then=${c}
        on_pick=${d=>p({species:d})} /></section>
    ${a==="move_out"&&i`<${U} tank=${s} value=${l} label=${r("life.to_which_tank")}
      on_pick=${d=>p({other_tank:d})} />`}
    <${$o} value=${m} change=${a}
      on_value=${d=>p({amount:d})} />
    <${W} at=${$} was=${e?.at}
      on_at=${d=>p({at:d})} />
    ${e&&i`<${at} was=${t} tank=${h} on_pick=${d=>p({tank:d})} />`}
    <${G} kind="planting" raw=${T} on_raw=${d=>p({raw:d})}
      errors=${o.errors.value} />`}function lo(t,o){let s=f("planting"),{growing:e,gone:c}=q(E(s,t)),a=e.map(({species:m})=>m),n=eo.includes(o)?c.map(({species:m})=>m):J(s,Ut);return[...new Set([...a,...n])].slice(0,Ut)}function mo(t,o){let s=Q(dt,kt,t),e=o?.portions&&V(o)===t?o.portions:void 0;return{amount:t,amount_code:s,portions:e}}function $o({value:t,change:o,on_value:s}){let e=j(!1),c=dt.map(kt),a=e.value||t!==""&&!c.includes(t),n=["remove","move_out"].includes(o)?"plants.all_of_it":"plants.no_amount",m=(l,$)=>{e.value=l,s($)};return i`
    <section class="section"><h2>${r("plants.how_much")}</h2>
      <div class="tiles two" role="group" aria-label=${r("plants.how_much")}>
        <button type="button" aria-pressed=${!a&&t===""}
          onClick=${_(()=>m(!1,""))}>${r(n)}</button>
        ${c.map(l=>i`<button type="button" key=${l} aria-pressed=${!e.value&&t===l}
          onClick=${_(()=>m(!1,l))}>${l}</button>`)}
        <button type="button" aria-pressed=${a} onClick=${_(()=>m(!0,""))}>
          ${r("life.own_words")}</button>
      </div>
      ${a&&i`<div class="section"><${ot} specs=${[v("planting","amount")]} raw=${{amount:t}}
        on_raw=${l=>s(l.amount)} errors=${[]} /></div>`}
    </section>`}function po({id:t}){let o=b("tank",t);if(!o)return i`<${O} up="/" />`;let s=E(f("planting"),t),{growing:e}=q(s),c=k.value.may("planting");return i`
    <${S} title=${r("plants.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${c&&i`<a class="main" href=${`/tank/${t}/plants/new`}><${y} name="plus" />${r("plants.write")}
        </a>`}>
      ${e.length===0&&i`<p class="sentence">${r(s.length?"plants.none_left":"plants.none_yet")}
        </p>`}
      <ul class="lines">${e.map(a=>i`<li key=${a.species}><${uo} tank=${t} one=${a} may=${c} />
        </li>`)}</ul>
      <p class="caution small">${M("compatibility","release")}</p>
      <${rt} tank=${t} kind="planting" />
      <nav class="section" aria-label=${r("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${t}&days=30`}>${r("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${t}/stock`}>${r("stock.title")}</a></li>
      </ul></nav>
    <//>`}function uo({tank:t,one:o,may:s}){let e=[o.amounts.map(V).join(", "),r("life.since",{when:w(o.since,u.value)}),o.last_trim&&r("plants.trimmed_last",{when:w(o.last_trim,u.value)})].filter(Boolean),c=i`<span class="grow"><b>${F("plants",o.species)}</b><br /><span class="soft small">
    ${e.join("\xA0\xB7 ")}</span></span>`;return s?i`<a class="line" href=${`/tank/${t}/plants/new?species=${encodeURIComponent(o.species)}`}>${c}</a>`:i`<div class="line">${c}</div>`}var fo=()=>({tool:"net",other_tank:"",order:"both",at:void 0,raw:{}}),Gt=t=>v("shared_tool",t).choices;function ho({id:t}){let o=b("tank",t),s=K({name:`tool.${t}`,first:fo});if(!o)return i`<${O} up="/" />`;let{tool:e,other_tank:c,order:a,at:n,raw:m}=s.draft.value,l=s.set,$=I(v("shared_tool","tool"),e),h=m.note?.trim(),T=()=>s.save(()=>{let p={tank:t,at:n,tool:e,other_tank:c,order:a,...h?{note:h}:{}};return{writes:[{type:"put",kind:"shared_tool",id:Ct(),fields:p}],said:r("tool.saved",{what:$,tank:o.name,other:x(c)}),to:`/trace?tank=${t}&days=30`}});return i`
    <${S} title=${r("tool.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${k.value.may("shared_tool")&&i`<button class="main" type="button"
        disabled=${!c||H(n)} onClick=${_(()=>{T()})}>
        ${c?r("tool.do",{what:$,other:x(c)}):r("life.not_yet")}</button>`}>
      <${z} text=${s.problem.value} />
      <p>${r("tool.why")}</p>
      <${U} tank=${t} value=${c} label=${r("tool.which_tank")}
        on_pick=${p=>l({other_tank:p})} />
      <${D} label=${r("tool.what")} choices=${Gt("tool")} value=${e}
        on_pick=${p=>l({tool:p})} />
      <${D} label=${v("shared_tool","order").label} choices=${Gt("order")} value=${a}
        on_pick=${p=>l({order:p})} />
      <${W} at=${n} on_at=${p=>l({at:p})} />
      <${G} kind="shared_tool" raw=${m} on_raw=${p=>l({raw:p})}
        errors=${s.errors.value} />
      <${R} kind="shared_tool" errors=${s.errors.value} />
      <p class="caution small">${r("trace.caution_tools")}</p>
    <//>`}function Rt({tank:t}){let{told:o}=Pt(t);if(!o||o.missing)return null;let{input:s,answer:e}=o.company,c=mt("compatibility","findings");return i`
    <section class="section"><h2>${xt().compatibility.title}</h2>
      <p class="sentence">${I(mt("compatibility","verdict"),e.verdict)}</p>
      <ul class="lines">${e.findings.map(a=>i`
        <li class="line" key=${[a.kind,a.a,a.b].join()}><span><b>${a.a}${a.b&&i` · ${a.b}`}</b><br />
          ${I($t(c,"kind"),a.kind)}
          <br /><span class="soft small row tight"><${y} name=${a.severity==="bar"?"needs":"note"} size=${16}
            />${I($t(c,"severity"),a.severity)}</span></span></li>`)}</ul>
      ${e.notes.map(a=>i`<p class="caution small" key=${a}>${a}</p>`)}
      <${et} name="compatibility" input=${s} answer=${e} />
    </section>`}var _o=14*864e5;function ko({id:t}){let o=b("tank",t);if(!o)return i`<${O} up="/" />`;let s=E(f("stock_change"),t),{animals:e,short:c}=X(s,u.value),a=[...s.filter(m=>m.change==="death"&&Date.parse(m.at)>u.value-_o)].sort((m,l)=>m.at<l.at?1:-1)[0],n=k.value.may("stock_change");return i`
    <${S} title=${r("stock.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${n&&i`<a class="main" href=${`/tank/${t}/stock/new`}><${y} name="plus" />${r("stock.write")}
        </a>`}>
      ${e.length===0&&i`<p class="sentence">${r(s.length?"stock.none_left":"stock.none_yet")}
        </p>`}
      <ul class="lines">${e.map(m=>i`<li key=${m.species}><${go} tank=${t} one=${m} may=${n}
        /></li>`)}</ul>
      ${c.map(({change:m,missing:l})=>i`<p class="caution small" key=${m.id}>
        ${r("stock.lacking",{count:l,name:F("species",m.species),when:w(m.at,u.value)})}</p>`)}
      ${a&&i`
        <section class="section"><h2>${r("stock.after_death")}</h2>
          <p>${r("stock.after_death_why",{name:F("species",a.species),when:w(a.at,u.value)})}
            </p>
          <div class="row"><a class="quiet" href=${`/trace?tank=${t}&days=30`}>${r("trace.who")}</a><a class="quiet"
            href=${`/tank/${t}/test`}>${r("stock.test_now")}</a></div>
        </section>`}
      ${e.length>0&&i`
        <${wo} animals=${e} />
        <${At} tank=${o} />
        <${Rt} tank=${o} />`}
      <${rt} tank=${t} kind="stock_change" />
      <nav class="section" aria-label=${r("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${t}&days=30`}>${r("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${t}/plants`}>${r("plants.title")}</a></li>
      </ul></nav>
    <//>`}function go({tank:t,one:o,may:s}){let e=[o.length_cm!==void 0&&B(o.length_cm,"cm",1),r("life.since",{when:w(o.since,u.value)}),o.born>0&&r("stock.born",{count:o.born}),o.died>0&&r("stock.died",{count:o.died})].filter(Boolean),c=i`<span class="grow"><b>${F("species",o.species)}</b><br /><span class="soft small">
    ${e.join("\xA0\xB7 ")}</span></span><span class="found"><b>${St(o.count,0)}</b></span>`;return s?i`<a class="line" href=${`/tank/${t}/stock/new?species=${encodeURIComponent(o.species)}`}>${c}</a>`:i`<div class="line">${c}</div>`}function wo({animals:t}){let o=Tt(t,f("own_species"));return o?i`
    <section class="section"><h2>${r("stock.mass")}</h2>
      <p>${r(o.measured?"stock.mass_is":"stock.mass_grown",{grams:It(o.total_g)})}
        ${o.unknown.length>0&&i` ${r("stock.mass_without",{names:o.unknown.join(", ")})}`}</p>
      <${et} name="animal_mass" input=${o.input} answer=${o.answer} />
    </section>`:i`<p class="soft section">${r("stock.no_mass")}</p>`}var vo=["arrival","birth","death","removal","move_out"],zt=["death","removal","move_out"],Ht=7,bo=3;function yo({id:t,query:o}){let s=b("tank",t),e=b("stock_change",o.get("corrects")??void 0),c=`stock.${t}.${e?.id??[o.get("change"),o.get("species")].join(".")}`,a=K({name:c,first:()=>e?So(e):xo(o)}),n=o.get("then")??(s?`/tank/${t}/stock`:"/");if(!s||o.get("corrects")&&!e)return i`<${O} up=${n} />`;let{change:m,species:l,other_tank:$,at:h}=a.draft.value,T=a.draft.value.tank||t,d=m&&l&&(m!=="move_out"||$&&$!==T)&&!H(h),L=l?Lt(l,vt(a.draft.value)):"",P=()=>a.save(()=>({writes:nt("stock_change",To(a.draft.value,T,e),e),said:r(`stock.saved_${m}`,{what:L,tank:s.name,other:x($)}),to:n}));return i`
    <${S} title=${r(e?"life.correct":"stock.entry")} up=${n} aside=${i`<span class="soft">${s.name}
      </span>`}
      act=${k.value.may("stock_change")&&i`<button class="main" type="button" disabled=${!d}
        onClick=${_(()=>{P()})}>${d?r(`stock.do_${m}`,{what:L}):r("life.not_yet")}</button>`}>
      <${it} one=${e} />
      <${z} text=${a.problem.value} />
      <${D} label=${r("life.what_happened")} choices=${Co(e)} value=${m}
        on_pick=${N=>a.set({change:N})} />
      ${m&&i`<${Mo} id=${t} form=${a} in_tank=${T} corrects=${e}
        then=${`/tank/${t}/stock/new?${o}`} />`}
      <${R} kind="stock_change" errors=${a.errors.value} />
      ${Ao(m).map(N=>i`<p class="caution small" key=${N}>${N}</p>`)}
      ${m==="arrival"&&i`<p><a class="quiet" href="/bench/acclimation">${r("stock.acclimate")}</a></p>`}
    <//>`}var xo=t=>({change:t.get("change")??"",species:t.get("species")??"",count:"",length:"",length_unit:"cm",cause:"",other_tank:"",at:void 0,tank:"",raw:{}}),So=({change:t,species:o,count:s,length_cm:e,cause:c,cause_code:a,other_tank:n,note:m})=>({change:t,species:o,count:String(s),length:e===void 0?"":String(e),length_unit:"cm",cause:Mt({cause:c,cause_code:a}),other_tank:n??"",at:void 0,tank:"",raw:{note:m}}),vt=({count:t})=>t===""?1:Number(t),Wt=({length:t,length_unit:o})=>t===""?void 0:ut("cm").hold(Number(t),o);function To(t,o,s){let{change:e,species:c,cause:a,other_tank:n,at:m,raw:l}=t,$=Wt(t);return{tank:o,at:m??s?.at??k.value.now(),change:e,species:c,count:vt(t),...$===void 0?{}:{length_cm:$},...l.note?.trim()?{note:l.note.trim()}:{},...e==="death"&&a.trim()?{cause:a.trim(),cause_code:Q(ht,_t,a.trim())}:{},...e.startsWith("move")&&n?{other_tank:n}:{}}}var Co=t=>v("stock_change","change").choices.filter(({value:o})=>vo.includes(o)||o===t?.change).map(({value:o,label:s})=>({value:o,label:o==="move_out"?r("stock.moved"):s}));function Mo({id:t,form:o,in_tank:s,corrects:e,then:c}){let a=o.draft.value,{change:n,species:m,other_tank:l,cause:$,at:h,tank:T,raw:p}=a,{animals:d,gone:L}=X(E(f("stock_change"),t),u.value),P=d.find(g=>g.species===m),N=vt(a),lt=zt.includes(n)&&!e&&m&&N>(P?.count??0),A=o.set;return i`
    ${n==="death"&&i`<p class="section">${r("stock.sorry")}</p>`}
    <section class="section"><h2>${r("life.which_species")}</h2>
      <${tt} rows="species" near=${No(zt.includes(n),d,L)} value=${m}
        then=${c} on_pick=${g=>A({species:g,length:""})} /></section>
    <section class="section"><h2>${r("stock.how_many")}</h2>
      <${gt} label=${r("stock.how_many")} unit="" value=${N} typed=${a.count||null} step=${1}
        least=${1} most=${v("stock_change","count").max}
        on_type=${g=>A({count:g})} />
      ${lt&&i`<p class="soft center">${r("stock.more_than_known",{count:P?.count??0})}</p>`}
      </section>
    ${n==="move_out"&&i`<${U} tank=${s} value=${l} label=${r("life.to_which_tank")}
      on_pick=${g=>A({other_tank:g})} />`}
    ${n==="death"&&i`<${Po} value=${$} on_value=${g=>A({cause:g})} />`}
    ${m&&i`<${Oo} draft=${a} set=${A} known_cm=${P?.length_cm??Eo(m)} />`}
    <${W} at=${h} was=${e?.at}
      on_at=${g=>A({at:g})} />
    ${e&&i`<${at} was=${t} tank=${T} on_pick=${g=>A({tank:g})} />`}
    <${G} kind="stock_change" raw=${p} on_raw=${g=>A({raw:g})}
      errors=${o.errors.value} />`}var Eo=t=>yt("species").rows[t]?.length_cm??f("own_species").find(({name:o})=>o===t)?.length_cm;function Oo({draft:t,set:o,known_cm:s=bo}){let e=Wt(t),c=ut("cm"),{min:a,max:n}=v("stock_change","length_cm");return i`
    <details class="more section" open=${e!==void 0}>
      <summary>${e===void 0?r("stock.length_open"):r("stock.length_is",{length:B(e,"cm",1)})}</summary>
      <p class="soft">${r("stock.length_why")}</p>
      <${gt} label=${r("stock.length")} unit=${c.label} value=${c.show(e??s)}
        typed=${c.text(t.length,t.length_unit)||null} step=${c.unit==="cm"?.5:.25}
        least=${c.show(a)} most=${c.show(n)}
        on_type=${m=>o({length:m,length_unit:c.unit})} />
      ${e===void 0&&i`<p class="center"><button class="quiet" type="button"
        onClick=${_(()=>o({length:String(s),length_unit:"cm"}))}>
        ${r("stock.length_take",{length:B(s,"cm",1)})}</button></p>`}
    </details>`}function No(t,o,s){let e=o.map(({species:a})=>a),c=t?s.map(({species:a})=>a):J(f("stock_change"),Ht);return[...new Set([...e,...c])].slice(0,Ht)}function Po({value:t,on_value:o}){let s=j(!1),e=ht.map(_t),c=s.value||t!==""&&!e.includes(t),a=(n,m)=>{s.value=n,o(m)};return i`
    <section class="section"><h2>${r("stock.cause")}</h2>
      <div class="tiles two" role="group" aria-label=${r("stock.cause")}>
        ${e.map(n=>i`<button type="button" key=${n} aria-pressed=${!s.value&&t===n}
          onClick=${_(()=>a(!1,t===n?"":n))}>${n}</button>`)}
        <button type="button" aria-pressed=${c} onClick=${_(()=>a(!0,""))}>
          ${r("life.own_words")}</button>
      </div>
      ${c&&i`<div class="section"><${ot} specs=${[v("stock_change","cause")]}
        raw=${{cause:t}} errors=${[]}
        on_raw=${n=>o(n.cause)} /></div>`}
    </section>`}function Ao(t){let o=M("compatibility","release");return t==="death"?[r("stock.caution_vet"),r("stock.caution_hands"),o]:t==="arrival"?[M("stocking_limit","small_lots"),M("compatibility","quarantine")]:t==="removal"?[o]:[]}function Bt({water_changes:t,plantings:o,stock_changes:s,shared_tools:e}){let c=[...t.map(n=>Z(n,n.from_tank,n.tank,"water","")),...o.map(n=>Kt(n,"plants")),...s.map(n=>Kt(n,"animals")),...e.flatMap(n=>[n.order==="there"?null:Z(n,n.tank,n.other_tank,"tool",n.tool),n.order==="here"?null:Z(n,n.other_tank,n.tank,"tool",n.tool)])],a=new Map;for(let n of c)n&&a.set([n.at,n.from,n.to,n.way,n.what].join(" "),n);return[...a.values()].sort((n,m)=>n.at<m.at?-1:n.at>m.at?1:n.id<m.id?-1:1)}function Kt(t,o){return t.change==="move_in"?Z(t,t.other_tank,t.tank,o,t.species):t.change==="move_out"?Z(t,t.tank,t.other_tank,o,t.species):null}var Z=({id:t,at:o},s,e,c,a)=>s&&e&&s!==e?{id:t,at:o,from:s,to:e,way:c,what:a}:null;function Vt(t,o,{now:s,days:e}){let c=new Date(s-e*864e5).toISOString(),a=o.filter(({at:n})=>n>=c);return{to:Yt(t,a,"from","to",(n,m)=>n.at<=m.at),from:Yt(t,[...a].reverse(),"to","from",(n,m)=>n.at>=m.at)}}function Yt(t,o,s,e,c){let a=new Map,n=(l,$)=>{let h=a.get(l[e]);h?h.steps===$&&h.by.push(l):a.set(l[e],{tank:l[e],steps:$,by:[l],at:l.at})},m=o.filter(l=>l[s]===t);for(let l of m)n(l,1);for(let l of o)l[s]===t||l[e]===t||m.some($=>$[e]===l[s]&&c($,l))&&n(l,2);return[...a.values()].map(l=>({...l,by:[...l.by].sort(($,h)=>$.at<h.at?-1:1)})).sort((l,$)=>l.steps-$.steps)}var ct={water:"water",plants:"plants",animals:"stock",tool:"tool"},Zt=t=>r("trace.link",{what:bt(t),from:x(t.from),to:x(t.to)});function bt({way:t,what:o}){return t==="water"?r("trace.water"):t==="tool"?I(v("shared_tool","tool"),o):F(t==="plants"?"plants":"species",o)}var Io=84,Y=7;function Xt({tank:t,to:o,from:s}){let e=Lo([...s,...o].flatMap(l=>l.by)).sort((l,$)=>l.at<$.at?-1:l.at>$.at?1:0),c=s.map(l=>l.tank).reverse(),a=[...c,t,...o.map(l=>l.tank).filter(l=>!c.includes(l))],n=new Map(o.map(l=>[l.tank,l.at])),m=l=>`${100*(a.indexOf(l)+.5)/a.length}%`;return i`
    <div class="trace-graph section" aria-hidden="true"><div style=${{minWidth:`${Io*a.length}px`}}>
      <div class="trace-heads">${a.map(l=>i`<span key=${l} class=${l===t?"asked-for":""}>
        ${x(l)}</span>`)}</div>
      ${e.map(l=>i`<${Fo} key=${l.id+l.from} link=${l} lanes=${a} x=${m} tank=${t}
        exposed=${n} />`)}
      <div class="trace-row end"><${Jt} lanes=${a} x=${m} tank=${t} exposed=${n} at="9999" /></div>
    </div></div>`}function Fo({link:t,lanes:o,x:s,tank:e,exposed:c}){let a=o.indexOf(t.to)>o.indexOf(t.from),n=(o.indexOf(t.to)+o.indexOf(t.from)+1)/2/o.length,m=n<.34?"start":n>.66?"end":"center";return i`
    <div class="trace-row">
      <${Jt} lanes=${o} x=${s} tank=${e} exposed=${c} at=${t.at}>
        <line class="arrow" x1=${s(t.from)} y1="100%" x2=${s(t.to)} y2="100%" />
        <circle class="arrow" cx=${s(t.from)} cy="100%" r="4" />
        <svg class="head" x=${s(t.to)} y="100%" overflow="visible"><path
          d=${a?`M0 0 -${2*Y} -${Y}V${Y}Z`:`M0 0 ${2*Y} -${Y}V${Y}Z`} /></svg>
      <//>
      <span class=${`trace-what ${m}`}><span><${y} name=${ct[t.way]} size=${16} />${bt(t)}<br />
        <small>${w(t.at,u.value)}</small></span></span>
    </div>`}var Jt=({lanes:t,x:o,tank:s,exposed:e,at:c,children:a})=>i`
  <svg class="trace-lanes">
    ${t.map(n=>i`<line key=${n}
      class=${n===s||e.has(n)&&String(e.get(n))<c?"thick":"thin"} x1=${o(n)}
        y1="0"
      x2=${o(n)} y2="100%" />`)}
    ${a}
  </svg>`,Lo=t=>[...new Map(t.map(o=>[o.id+o.from,o])).values()];var Qt=[7,14,30,90];function Do({query:t}){let o=[...pt(ft),...pt(ft,{resting:!0})],s=b("tank",t.get("tank")??void 0),e=Qt.find(n=>String(n)===t.get("days"))??30,c=(n,m)=>`/trace?tank=${n}&days=${m}`,a=k.value.may("shared_tool");return i`
    <${S} title=${r("trace.title")} up=${s?`/tank/${s.id}`:"/tanks"}
      aside=${s&&i`<span class="soft">${s.name}</span>`}
      act=${s&&a&&i`<a class="main" href=${`/tank/${s.id}/tool`}><${y} name="plus" />
        ${r("tool.write")}</a>`}>
      ${s?i`
          <div class="tiles four" role="group" aria-label=${r("trace.days")}>
            ${Qt.map(n=>i`<button type="button" key=${n} aria-pressed=${n===e}
              onClick=${_(()=>Et(c(s.id,n),{replace:!0}))}>${r("trace.last_days",{count:n})}
              </button>`)}
          </div>
          <${jo} tank=${s} days=${e} />`:i`
          <p>${r("trace.which")}</p>
          <ul class="lines">${o.map(n=>i`<li key=${n.id}><a class="line" href=${c(n.id,e)}><b>
            ${n.name}</b></a></li>`)}</ul>`}
    <//>`}function jo({tank:t,days:o}){let s=Bt({water_changes:f("water_change"),plantings:f("planting"),stock_changes:f("stock_change"),shared_tools:f("shared_tool")}),{to:e,from:c}=Vt(t.id,s,{now:u.value,days:o}),a={tank:t.name,count:o};return e.length+c.length===0?i`<p class="sentence section">${r("trace.nothing",a)}</p><${to} />`:i`
    <p class="sentence section">${e.length?r("trace.exposed",{...a,count:e.length}):r("trace.none_exposed",a)}
      ${" "}${c.length?r("trace.came_from",{...a,count:c.length}):r("trace.came_from_none",a)}
        </p>
    <${Xt} tank=${t.id} to=${e} from=${c} />
    <${qt} title=${r("trace.to")} met=${e} />
    <${qt} title=${r("trace.from")} met=${c} />
    <${to} />`}var qt=({title:t,met:o})=>o.length>0&&i`
  <section class="section">
    <table class="measured told"><caption><h2>${t}</h2></caption>
      <tbody>${o.map(s=>i`
        <tr key=${s.tank}><th scope="row"><a class="tank-name" href=${`/tank/${s.tank}`}>${x(s.tank)}</a>
          <span class="also">${r(s.steps===1?"trace.direct":"trace.further")}</span></th>
          <td><ul>${s.by.map(e=>i`
            <li key=${e.id+e.from}><span class="row tight"><${y} name=${ct[e.way]} size=${18} />
              <span>${Zt(e)}</span></span>
              <span class="also">${w(e.at,u.value)}</span></li>`)}</ul></td></tr>`)}</tbody></table>
  </section>`,to=()=>i`
  <div class="section">
    <p class="soft small">${r("trace.how")}</p>
    <p class="caution small">${r("stock.caution_vet")}</p>
    <p class="caution small">${r("trace.caution_tools")}</p>
    <p class="caution small">${M("compatibility","quarantine")}</p>
  </div>`;export{ao as PlantingEntry,po as Plants,ho as SharedTool,ko as Stock,yo as StockEntry,Do as Trace};
//# sourceMappingURL=life-E7YNHLLT.js.map
