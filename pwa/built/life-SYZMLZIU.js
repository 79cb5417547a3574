import{Ab as nt,Ba as kt,Pa as q,Pb as W,Ua as tt,Wa as ot,Za as Nt,_a as Pt,bb as At,h as Et,hb as j,ib as et,jb as L,k as Ot,kb as U,l as Q,lb as G,mb as R,nb as at,ob as It,pb as x,tb as z,ub as H,yb as Ft,zb as Lt}from"./chunk-VO4XJGUN.js";import"./chunk-2EP5VS3D.js";import"./chunk-UIOLMFZE.js";import{$a as u,$b as J,A as Z,Ba as $t,C as I,Db as _,Dc as E,G as St,H as X,Rb as ft,Sb as ht,Vb as dt,Wb as _t,_a as k,aa as M,ac as Ct,bb as f,bc as B,cb as b,hb as ut,vc as Mt,xb as Tt,zc as S}from"./chunk-74NNJKGA.js";import{Db as Y,Gb as y,H as yt,P as lt,Q as v,S as mt,T as A,U as C,l as D,la as r,m as i,na as xt,o as bt,ra as w,rb as pt}from"./chunk-NRUJ6FXV.js";var Dt=8;function st({tank:t,kind:o}){let s=D(Dt),e=[...M(f(o),t)].reverse(),c=k.value.may(o);return e.length>0&&i`
    <section class="section"><h2>${r("life.log")}</h2>
      <ol class="lines">${e.slice(0,s.value).map(a=>{let n={what:`${nt(a)}, ${w(a.at,u.value)}`};return i`<li class="line logged" key=${a.id}>
          <div class="grow"><time class="soft small" datetime=${a.at}>${w(a.at,u.value)}</time><br />
            ${nt(a)}${a.note&&i`<br /><span class="soft small">${a.note}</span>`}
            ${a.change==="death"&&i`<br /><a class="quiet small" href=${`/trace?tank=${t}&days=30`}>
              ${r("trace.who")}</a>`}</div>
          ${c&&i`
            <a class="quiet square plain" href=${Ot(a,f(o),`/tank/${t}/${Et[o]}`)}
              aria-label=${r("life.correct_named",n)}><${y} name="note" size=${20} /></a>
            <button class="quiet square" type="button" aria-label=${r("remove_named",n)}
              onClick=${_(()=>{It(a)})}><${y} name="remove" size=${20} /></button>`}
        </li>`})}</ol>
      ${e.length>s.value&&i`<p class="center"><button class="quiet" type="button"
        onClick=${_(()=>s.value+=Dt)}>${r("history.more")}</button></p>`}
    </section>`}var rt=({one:t})=>t&&i`<p class="soft">
    ${r("correct.stands",{said:nt(t),when:w(t.at,u.value)})} ${r("correct.kept")}</p>`;var to=["plant","trim","remove","move_out"],oo=["trim","remove","move_out"],jt=7;function eo({id:t,query:o}){let s=b("tank",t),e=b("planting",o.get("corrects")??void 0),c=`planting.${t}.${e?.id??[o.get("change"),o.get("species")].join(".")}`,a=W({name:c,first:()=>e?no(e):ao(o)}),n=o.get("then")??(s?`/tank/${t}/plants`:"/");if(!s||o.get("corrects")&&!e)return i`<${E} up=${n} />`;let{change:m,species:l,amount:$,other_tank:h,at:T}=a.draft.value,p=a.draft.value.tank||t,F=m&&l&&(m!=="move_out"||h&&h!==p)&&!z(T),N=l?Lt(l,$.trim()):"",O=()=>a.save(()=>({writes:at("planting",so(a.draft.value,p,e),e),said:r(`plants.saved_${m}`,{what:N,tank:s.name,other:x(h)}),to:n}));return i`
    <${S} title=${r(e?"life.correct":"plants.entry")} up=${n}
      aside=${i`<span class="soft">${s.name}</span>`}
      act=${k.value.may("planting")&&i`<button class="main" type="button" disabled=${!F}
        onClick=${_(()=>{O()})}>${F?r(`plants.do_${m}`,{what:N}):r("life.not_yet")}</button>`}>
      <${rt} one=${e} />
      <${R} text=${a.problem.value} />
      <${L} label=${r("life.what_happened")} choices=${ro(e)} value=${m}
        on_pick=${ct=>a.set({change:ct})} />
      ${m&&i`<${io} id=${t} form=${a} in_tank=${p} corrects=${e}
        then=${`/tank/${t}/plants/new?${o}`} />`}
      <${G} kind="planting" errors=${a.errors.value} />
      ${["remove","trim"].includes(m)&&i`<p class="caution small">${C("compatibility","release")}
        </p>`}
      ${m==="plant"&&i`<p class="caution small">${r("plants.caution_new")}</p>`}
      ${m&&i`<p class="caution small">${r("life.caution_unplug")}</p>`}
    <//>`}var ao=t=>({change:t.get("change")??"",species:t.get("species")??"",amount:"",other_tank:"",at:void 0,tank:"",raw:{}}),no=({change:t,species:o,other_tank:s,note:e,...c})=>({change:t,species:o,amount:B(c),other_tank:s??"",at:void 0,tank:"",raw:{note:e}});function so({change:t,species:o,amount:s,other_tank:e,at:c,raw:a},n,m){return{tank:n,at:c??m?.at??k.value.now(),change:t,species:o,...s.trim()?lo(s.trim(),m):{},...a.note?.trim()?{note:a.note.trim()}:{},...t.startsWith("move")&&e?{other_tank:e}:{}}}var ro=t=>v("planting","change").choices.filter(({value:o})=>to.includes(o)||o===t?.change).map(({value:o,label:s})=>({value:o,label:o==="move_out"?r("stock.moved"):s}));function io({id:t,form:o,in_tank:s,corrects:e,then:c}){let{change:a,species:n,amount:m,other_tank:l,at:$,tank:h,raw:T}=o.draft.value,p=o.set;return i`
    <section class="section"><h2>${r("life.which_plants")}</h2>
      <${q} rows="plants" near=${co(t,a)} value=${n} then=${c}
        on_pick=${d=>p({species:d})} /></section>
    ${a==="move_out"&&i`<${j} tank=${s} value=${l} label=${r("life.to_which_tank")}
      on_pick=${d=>p({other_tank:d})} />`}
    <${mo} value=${m} change=${a}
      on_value=${d=>p({amount:d})} />
    <${H} at=${$} was=${e?.at}
      on_at=${d=>p({at:d})} />
    ${e&&i`<${et} was=${t} tank=${h} on_pick=${d=>p({tank:d})} />`}
    <${U} kind="planting" raw=${T} on_raw=${d=>p({raw:d})}
      errors=${o.errors.value} />`}function co(t,o){let s=f("planting"),{growing:e,gone:c}=Q(M(s,t)),a=e.map(({species:m})=>m),n=oo.includes(o)?c.map(({species:m})=>m):X(s,jt);return[...new Set([...a,...n])].slice(0,jt)}function lo(t,o){let s=J(ht,_t,t),e=o?.portions&&B(o)===t?o.portions:void 0;return{amount:t,amount_code:s,portions:e}}function mo({value:t,change:o,on_value:s}){let e=D(!1),c=ht.map(_t),a=e.value||t!==""&&!c.includes(t),n=["remove","move_out"].includes(o)?"plants.all_of_it":"plants.no_amount",m=(l,$)=>{e.value=l,s($)};return i`
    <section class="section"><h2>${r("plants.how_much")}</h2>
      <div class="tiles two" role="group" aria-label=${r("plants.how_much")}>
        <button type="button" aria-pressed=${!a&&t===""}
          onClick=${_(()=>m(!1,""))}>${r(n)}</button>
        ${c.map(l=>i`<button type="button" key=${l} aria-pressed=${!e.value&&t===l}
          onClick=${_(()=>m(!1,l))}>${l}</button>`)}
        <button type="button" aria-pressed=${a} onClick=${_(()=>m(!0,""))}>
          ${r("life.own_words")}</button>
      </div>
      ${a&&i`<div class="section"><${tt} specs=${[v("planting","amount")]} raw=${{amount:t}}
        on_raw=${l=>s(l.amount)} errors=${[]} /></div>`}
    </section>`}function $o({id:t}){let o=b("tank",t);if(!o)return i`<${E} up="/" />`;let s=M(f("planting"),t),{growing:e}=Q(s),c=k.value.may("planting");return i`
    <${S} title=${r("plants.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${c&&i`<a class="main" href=${`/tank/${t}/plants/new`}><${y} name="plus" />${r("plants.write")}
        </a>`}>
      ${e.length===0&&i`<p class="sentence">${r(s.length?"plants.none_left":"plants.none_yet")}
        </p>`}
      <ul class="lines">${e.map(a=>i`<li key=${a.species}><${po} tank=${t} one=${a} may=${c} />
        </li>`)}</ul>
      <p class="caution small">${C("compatibility","release")}</p>
      <${st} tank=${t} kind="planting" />
      <nav class="section" aria-label=${r("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${t}&days=30`}>${r("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${t}/stock`}>${r("stock.title")}</a></li>
      </ul></nav>
    <//>`}function po({tank:t,one:o,may:s}){let e=[o.amounts.map(B).join(", "),r("life.since",{when:w(o.since,u.value)}),o.last_trim&&r("plants.trimmed_last",{when:w(o.last_trim,u.value)})].filter(Boolean),c=i`<span class="grow"><b>${I("plants",o.species)}</b><br /><span class="soft small">
    ${e.join("\xA0\xB7 ")}</span></span>`;return s?i`<a class="line" href=${`/tank/${t}/plants/new?species=${encodeURIComponent(o.species)}`}>${c}</a>`:i`<div class="line">${c}</div>`}var uo=()=>({tool:"net",other_tank:"",order:"both",at:void 0,raw:{}}),Ut=t=>v("shared_tool",t).choices;function fo({id:t}){let o=b("tank",t),s=W({name:`tool.${t}`,first:uo});if(!o)return i`<${E} up="/" />`;let{tool:e,other_tank:c,order:a,at:n,raw:m}=s.draft.value,l=s.set,$=A(v("shared_tool","tool"),e),h=m.note?.trim(),T=()=>s.save(()=>{let p={tank:t,at:n,tool:e,other_tank:c,order:a,...h?{note:h}:{}};return{writes:[{type:"put",kind:"shared_tool",id:Tt(),fields:p}],said:r("tool.saved",{what:$,tank:o.name,other:x(c)}),to:`/trace?tank=${t}&days=30`}});return i`
    <${S} title=${r("tool.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${k.value.may("shared_tool")&&i`<button class="main" type="button"
        disabled=${!c||z(n)} onClick=${_(()=>{T()})}>
        ${c?r("tool.do",{what:$,other:x(c)}):r("life.not_yet")}</button>`}>
      <${R} text=${s.problem.value} />
      <p>${r("tool.why")}</p>
      <${j} tank=${t} value=${c} label=${r("tool.which_tank")}
        on_pick=${p=>l({other_tank:p})} />
      <${L} label=${r("tool.what")} choices=${Ut("tool")} value=${e}
        on_pick=${p=>l({tool:p})} />
      <${L} label=${v("shared_tool","order").label} choices=${Ut("order")} value=${a}
        on_pick=${p=>l({order:p})} />
      <${H} at=${n} on_at=${p=>l({at:p})} />
      <${U} kind="shared_tool" raw=${m} on_raw=${p=>l({raw:p})}
        errors=${s.errors.value} />
      <${G} kind="shared_tool" errors=${s.errors.value} />
      <p class="caution small">${r("trace.caution_tools")}</p>
    <//>`}function Gt({tank:t}){let{told:o}=Nt(t);if(!o||o.missing)return null;let{input:s,answer:e}=o.company,c=lt("compatibility","findings");return i`
    <section class="section"><h2>${yt().compatibility.title}</h2>
      <p class="sentence">${A(lt("compatibility","verdict"),e.verdict)}</p>
      <ul class="lines">${e.findings.map(a=>i`
        <li class="line" key=${[a.kind,a.a,a.b].join()}><span><b>${a.a}${a.b&&i` · ${a.b}`}</b><br />
          ${A(mt(c,"kind"),a.kind)}
          <br /><span class="soft small row tight"><${y} name=${a.severity==="bar"?"needs":"note"} size=${16}
            />${A(mt(c,"severity"),a.severity)}</span></span></li>`)}</ul>
      ${e.notes.map(a=>i`<p class="caution small" key=${a}>${a}</p>`)}
      <${ot} name="compatibility" input=${s} answer=${e} />
    </section>`}var ho=14*864e5;function _o({id:t}){let o=b("tank",t);if(!o)return i`<${E} up="/" />`;let s=M(f("stock_change"),t),{animals:e,short:c}=Z(s,u.value),a=[...s.filter(m=>m.change==="death"&&Date.parse(m.at)>u.value-ho)].sort((m,l)=>m.at<l.at?1:-1)[0],n=k.value.may("stock_change");return i`
    <${S} title=${r("stock.title")} up=${`/tank/${t}`} aside=${i`<span class="soft">${o.name}</span>`}
      act=${n&&i`<a class="main" href=${`/tank/${t}/stock/new`}><${y} name="plus" />${r("stock.write")}
        </a>`}>
      ${e.length===0&&i`<p class="sentence">${r(s.length?"stock.none_left":"stock.none_yet")}
        </p>`}
      <ul class="lines">${e.map(m=>i`<li key=${m.species}><${ko} tank=${t} one=${m} may=${n}
        /></li>`)}</ul>
      ${c.map(({change:m,missing:l})=>i`<p class="caution small" key=${m.id}>
        ${r("stock.lacking",{count:l,name:I("species",m.species),when:w(m.at,u.value)})}</p>`)}
      ${a&&i`
        <section class="section"><h2>${r("stock.after_death")}</h2>
          <p>${r("stock.after_death_why",{name:I("species",a.species),when:w(a.at,u.value)})}
            </p>
          <div class="row"><a class="quiet" href=${`/trace?tank=${t}&days=30`}>${r("trace.who")}</a><a class="quiet"
            href=${`/tank/${t}/test`}>${r("stock.test_now")}</a></div>
        </section>`}
      ${e.length>0&&i`
        <${go} animals=${e} />
        <${Pt} tank=${o} />
        <${Gt} tank=${o} />`}
      <${st} tank=${t} kind="stock_change" />
      <nav class="section" aria-label=${r("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${t}&days=30`}>${r("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${t}/plants`}>${r("plants.title")}</a></li>
      </ul></nav>
    <//>`}function ko({tank:t,one:o,may:s}){let e=[o.length_cm!==void 0&&Y(o.length_cm,"cm",1),r("life.since",{when:w(o.since,u.value)}),o.born>0&&r("stock.born",{count:o.born}),o.died>0&&r("stock.died",{count:o.died})].filter(Boolean),c=i`<span class="grow"><b>${I("species",o.species)}</b><br /><span class="soft small">
    ${e.join("\xA0\xB7 ")}</span></span><span class="found"><b>${xt(o.count,0)}</b></span>`;return s?i`<a class="line" href=${`/tank/${t}/stock/new?species=${encodeURIComponent(o.species)}`}>${c}</a>`:i`<div class="line">${c}</div>`}function go({animals:t}){let o=St(t,f("own_species"));return o?i`
    <section class="section"><h2>${r("stock.mass")}</h2>
      <p>${r(o.measured?"stock.mass_is":"stock.mass_grown",{grams:At(o.total_g)})}
        ${o.unknown.length>0&&i` ${r("stock.mass_without",{names:o.unknown.join(", ")})}`}</p>
      <${ot} name="animal_mass" input=${o.input} answer=${o.answer} />
    </section>`:i`<p class="soft section">${r("stock.no_mass")}</p>`}var wo=["arrival","birth","death","removal","move_out"],Rt=["death","removal","move_out"],zt=7,vo=3;function bo({id:t,query:o}){let s=b("tank",t),e=b("stock_change",o.get("corrects")??void 0),c=`stock.${t}.${e?.id??[o.get("change"),o.get("species")].join(".")}`,a=W({name:c,first:()=>e?xo(e):yo(o)}),n=o.get("then")??(s?`/tank/${t}/stock`:"/");if(!s||o.get("corrects")&&!e)return i`<${E} up=${n} />`;let{change:m,species:l,other_tank:$,at:h}=a.draft.value,T=a.draft.value.tank||t,d=m&&l&&(m!=="move_out"||$&&$!==T)&&!z(h),F=l?Ft(l,wt(a.draft.value)):"",N=()=>a.save(()=>({writes:at("stock_change",So(a.draft.value,T,e),e),said:r(`stock.saved_${m}`,{what:F,tank:s.name,other:x($)}),to:n}));return i`
    <${S} title=${r(e?"life.correct":"stock.entry")} up=${n} aside=${i`<span class="soft">${s.name}
      </span>`}
      act=${k.value.may("stock_change")&&i`<button class="main" type="button" disabled=${!d}
        onClick=${_(()=>{N()})}>${d?r(`stock.do_${m}`,{what:F}):r("life.not_yet")}</button>`}>
      <${rt} one=${e} />
      <${R} text=${a.problem.value} />
      <${L} label=${r("life.what_happened")} choices=${To(e)} value=${m}
        on_pick=${O=>a.set({change:O})} />
      ${m&&i`<${Co} id=${t} form=${a} in_tank=${T} corrects=${e}
        then=${`/tank/${t}/stock/new?${o}`} />`}
      <${G} kind="stock_change" errors=${a.errors.value} />
      ${Po(m).map(O=>i`<p class="caution small" key=${O}>${O}</p>`)}
      ${m==="arrival"&&i`<p><a class="quiet" href="/bench/acclimation">${r("stock.acclimate")}</a></p>`}
    <//>`}var yo=t=>({change:t.get("change")??"",species:t.get("species")??"",count:"",length:"",length_unit:"cm",cause:"",other_tank:"",at:void 0,tank:"",raw:{}}),xo=({change:t,species:o,count:s,length_cm:e,cause:c,cause_code:a,other_tank:n,note:m})=>({change:t,species:o,count:String(s),length:e===void 0?"":String(e),length_unit:"cm",cause:Ct({cause:c,cause_code:a}),other_tank:n??"",at:void 0,tank:"",raw:{note:m}}),wt=({count:t})=>t===""?1:Number(t),Ht=({length:t,length_unit:o})=>t===""?void 0:pt("cm").hold(Number(t),o);function So(t,o,s){let{change:e,species:c,cause:a,other_tank:n,at:m,raw:l}=t,$=Ht(t);return{tank:o,at:m??s?.at??k.value.now(),change:e,species:c,count:wt(t),...$===void 0?{}:{length_cm:$},...l.note?.trim()?{note:l.note.trim()}:{},...e==="death"&&a.trim()?{cause:a.trim(),cause_code:J(ft,dt,a.trim())}:{},...e.startsWith("move")&&n?{other_tank:n}:{}}}var To=t=>v("stock_change","change").choices.filter(({value:o})=>wo.includes(o)||o===t?.change).map(({value:o,label:s})=>({value:o,label:o==="move_out"?r("stock.moved"):s}));function Co({id:t,form:o,in_tank:s,corrects:e,then:c}){let a=o.draft.value,{change:n,species:m,other_tank:l,cause:$,at:h,tank:T,raw:p}=a,{animals:d,gone:F}=Z(M(f("stock_change"),t),u.value),N=d.find(g=>g.species===m),O=wt(a),ct=Rt.includes(n)&&!e&&m&&O>(N?.count??0),P=o.set;return i`
    ${n==="death"&&i`<p class="section">${r("stock.sorry")}</p>`}
    <section class="section"><h2>${r("life.which_species")}</h2>
      <${q} rows="species" near=${Oo(Rt.includes(n),d,F)} value=${m}
        then=${c} on_pick=${g=>P({species:g,length:""})} /></section>
    <section class="section"><h2>${r("stock.how_many")}</h2>
      <${kt} label=${r("stock.how_many")} unit="" value=${O} typed=${a.count||null} step=${1}
        least=${1} most=${v("stock_change","count").max}
        on_type=${g=>P({count:g})} />
      ${ct&&i`<p class="soft center">${r("stock.more_than_known",{count:N?.count??0})}</p>`}
      </section>
    ${n==="move_out"&&i`<${j} tank=${s} value=${l} label=${r("life.to_which_tank")}
      on_pick=${g=>P({other_tank:g})} />`}
    ${n==="death"&&i`<${No} value=${$} on_value=${g=>P({cause:g})} />`}
    ${m&&i`<${Eo} draft=${a} set=${P} known_cm=${N?.length_cm??Mo(m)} />`}
    <${H} at=${h} was=${e?.at}
      on_at=${g=>P({at:g})} />
    ${e&&i`<${et} was=${t} tank=${T} on_pick=${g=>P({tank:g})} />`}
    <${U} kind="stock_change" raw=${p} on_raw=${g=>P({raw:g})}
      errors=${o.errors.value} />`}var Mo=t=>bt("species").rows[t]?.length_cm??f("own_species").find(({name:o})=>o===t)?.length_cm;function Eo({draft:t,set:o,known_cm:s=vo}){let e=Ht(t),c=pt("cm"),{min:a,max:n}=v("stock_change","length_cm");return i`
    <details class="more section" open=${e!==void 0}>
      <summary>${e===void 0?r("stock.length_open"):r("stock.length_is",{length:Y(e,"cm",1)})}</summary>
      <p class="soft">${r("stock.length_why")}</p>
      <${kt} label=${r("stock.length")} unit=${c.label} value=${c.show(e??s)}
        typed=${c.text(t.length,t.length_unit)||null} step=${c.unit==="cm"?.5:.25}
        least=${c.show(a)} most=${c.show(n)}
        on_type=${m=>o({length:m,length_unit:c.unit})} />
      ${e===void 0&&i`<p class="center"><button class="quiet" type="button"
        onClick=${_(()=>o({length:String(s),length_unit:"cm"}))}>
        ${r("stock.length_take",{length:Y(s,"cm",1)})}</button></p>`}
    </details>`}function Oo(t,o,s){let e=o.map(({species:a})=>a),c=t?s.map(({species:a})=>a):X(f("stock_change"),zt);return[...new Set([...e,...c])].slice(0,zt)}function No({value:t,on_value:o}){let s=D(!1),e=ft.map(dt),c=s.value||t!==""&&!e.includes(t),a=(n,m)=>{s.value=n,o(m)};return i`
    <section class="section"><h2>${r("stock.cause")}</h2>
      <div class="tiles two" role="group" aria-label=${r("stock.cause")}>
        ${e.map(n=>i`<button type="button" key=${n} aria-pressed=${!s.value&&t===n}
          onClick=${_(()=>a(!1,t===n?"":n))}>${n}</button>`)}
        <button type="button" aria-pressed=${c} onClick=${_(()=>a(!0,""))}>
          ${r("life.own_words")}</button>
      </div>
      ${c&&i`<div class="section"><${tt} specs=${[v("stock_change","cause")]}
        raw=${{cause:t}} errors=${[]}
        on_raw=${n=>o(n.cause)} /></div>`}
    </section>`}function Po(t){let o=C("compatibility","release");return t==="death"?[r("stock.caution_vet"),r("stock.caution_hands"),o]:t==="arrival"?[C("stocking_limit","small_lots"),C("compatibility","quarantine")]:t==="removal"?[o]:[]}function Yt({water_changes:t,plantings:o,stock_changes:s,shared_tools:e}){let c=[...t.map(n=>V(n,n.from_tank,n.tank,"water","")),...o.map(n=>Wt(n,"plants")),...s.map(n=>Wt(n,"animals")),...e.flatMap(n=>[n.order==="there"?null:V(n,n.tank,n.other_tank,"tool",n.tool),n.order==="here"?null:V(n,n.other_tank,n.tank,"tool",n.tool)])],a=new Map;for(let n of c)n&&a.set([n.at,n.from,n.to,n.way,n.what].join(" "),n);return[...a.values()].sort((n,m)=>n.at<m.at?-1:n.at>m.at?1:n.id<m.id?-1:1)}function Wt(t,o){return t.change==="move_in"?V(t,t.other_tank,t.tank,o,t.species):t.change==="move_out"?V(t,t.tank,t.other_tank,o,t.species):null}var V=({id:t,at:o},s,e,c,a)=>s&&e&&s!==e?{id:t,at:o,from:s,to:e,way:c,what:a}:null;function Bt(t,o,{now:s,days:e}){let c=new Date(s-e*864e5).toISOString(),a=o.filter(({at:n})=>n>=c);return{to:Kt(t,a,"from","to",(n,m)=>n.at<=m.at),from:Kt(t,[...a].reverse(),"to","from",(n,m)=>n.at>=m.at)}}function Kt(t,o,s,e,c){let a=new Map,n=(l,$)=>{let h=a.get(l[e]);h?h.steps===$&&h.by.push(l):a.set(l[e],{tank:l[e],steps:$,by:[l],at:l.at})},m=o.filter(l=>l[s]===t);for(let l of m)n(l,1);for(let l of o)l[s]===t||l[e]===t||m.some($=>$[e]===l[s]&&c($,l))&&n(l,2);return[...a.values()].map(l=>({...l,by:[...l.by].sort(($,h)=>$.at<h.at?-1:1)})).sort((l,$)=>l.steps-$.steps)}var it={water:"water",plants:"plants",animals:"stock",tool:"tool"},Vt=t=>r("trace.link",{what:vt(t),from:x(t.from),to:x(t.to)});function vt({way:t,what:o}){return t==="water"?r("trace.water"):t==="tool"?A(v("shared_tool","tool"),o):I(t==="plants"?"plants":"species",o)}var Ao=84,K=7;function Zt({tank:t,to:o,from:s}){let e=Fo([...s,...o].flatMap(l=>l.by)).sort((l,$)=>l.at<$.at?-1:l.at>$.at?1:0),c=s.map(l=>l.tank).reverse(),a=[...c,t,...o.map(l=>l.tank).filter(l=>!c.includes(l))],n=new Map(o.map(l=>[l.tank,l.at])),m=l=>`${100*(a.indexOf(l)+.5)/a.length}%`;return i`
    <div class="trace-graph section" aria-hidden="true"><div style=${{minWidth:`${Ao*a.length}px`}}>
      <div class="trace-heads">${a.map(l=>i`<span key=${l} class=${l===t?"asked-for":""}>
        ${x(l)}</span>`)}</div>
      ${e.map(l=>i`<${Io} key=${l.id+l.from} link=${l} lanes=${a} x=${m} tank=${t}
        exposed=${n} />`)}
      <div class="trace-row end"><${Xt} lanes=${a} x=${m} tank=${t} exposed=${n} at="9999" /></div>
    </div></div>`}function Io({link:t,lanes:o,x:s,tank:e,exposed:c}){let a=o.indexOf(t.to)>o.indexOf(t.from),n=(o.indexOf(t.to)+o.indexOf(t.from)+1)/2/o.length,m=n<.34?"start":n>.66?"end":"center";return i`
    <div class="trace-row">
      <${Xt} lanes=${o} x=${s} tank=${e} exposed=${c} at=${t.at}>
        <line class="arrow" x1=${s(t.from)} y1="100%" x2=${s(t.to)} y2="100%" />
        <circle class="arrow" cx=${s(t.from)} cy="100%" r="4" />
        <svg class="head" x=${s(t.to)} y="100%" overflow="visible"><path
          d=${a?`M0 0 -${2*K} -${K}V${K}Z`:`M0 0 ${2*K} -${K}V${K}Z`} /></svg>
      <//>
      <span class=${`trace-what ${m}`}><span><${y} name=${it[t.way]} size=${16} />${vt(t)}<br />
        <small>${w(t.at,u.value)}</small></span></span>
    </div>`}var Xt=({lanes:t,x:o,tank:s,exposed:e,at:c,children:a})=>i`
  <svg class="trace-lanes">
    ${t.map(n=>i`<line key=${n}
      class=${n===s||e.has(n)&&String(e.get(n))<c?"thick":"thin"} x1=${o(n)}
        y1="0"
      x2=${o(n)} y2="100%" />`)}
    ${a}
  </svg>`,Fo=t=>[...new Map(t.map(o=>[o.id+o.from,o])).values()];var Jt=[7,14,30,90];function Lo({query:t}){let o=[...$t(ut),...$t(ut,{resting:!0})],s=b("tank",t.get("tank")??void 0),e=Jt.find(n=>String(n)===t.get("days"))??30,c=(n,m)=>`/trace?tank=${n}&days=${m}`,a=k.value.may("shared_tool");return i`
    <${S} title=${r("trace.title")} up=${s?`/tank/${s.id}`:"/tanks"}
      aside=${s&&i`<span class="soft">${s.name}</span>`}
      act=${s&&a&&i`<a class="main" href=${`/tank/${s.id}/tool`}><${y} name="plus" />
        ${r("tool.write")}</a>`}>
      ${s?i`
          <div class="tiles four" role="group" aria-label=${r("trace.days")}>
            ${Jt.map(n=>i`<button type="button" key=${n} aria-pressed=${n===e}
              onClick=${_(()=>Mt(c(s.id,n),{replace:!0}))}>${r("trace.last_days",{count:n})}
              </button>`)}
          </div>
          <${Do} tank=${s} days=${e} />`:i`
          <p>${r("trace.which")}</p>
          <ul class="lines">${o.map(n=>i`<li key=${n.id}><a class="line" href=${c(n.id,e)}><b>
            ${n.name}</b></a></li>`)}</ul>`}
    <//>`}function Do({tank:t,days:o}){let s=Yt({water_changes:f("water_change"),plantings:f("planting"),stock_changes:f("stock_change"),shared_tools:f("shared_tool")}),{to:e,from:c}=Bt(t.id,s,{now:u.value,days:o}),a={tank:t.name,count:o};return e.length+c.length===0?i`<p class="sentence section">${r("trace.nothing",a)}</p><${qt} />`:i`
    <p class="sentence section">${e.length?r("trace.exposed",{...a,count:e.length}):r("trace.none_exposed",a)}
      ${" "}${c.length?r("trace.came_from",{...a,count:c.length}):r("trace.came_from_none",a)}
        </p>
    <${Zt} tank=${t.id} to=${e} from=${c} />
    <${Qt} title=${r("trace.to")} met=${e} />
    <${Qt} title=${r("trace.from")} met=${c} />
    <${qt} />`}var Qt=({title:t,met:o})=>o.length>0&&i`
  <section class="section">
    <table class="measured told"><caption><h2>${t}</h2></caption>
      <tbody>${o.map(s=>i`
        <tr key=${s.tank}><th scope="row"><a class="tank-name" href=${`/tank/${s.tank}`}>${x(s.tank)}</a>
          <span class="also">${r(s.steps===1?"trace.direct":"trace.further")}</span></th>
          <td><ul>${s.by.map(e=>i`
            <li key=${e.id+e.from}><span class="row tight"><${y} name=${it[e.way]} size=${18} />
              <span>${Vt(e)}</span></span>
              <span class="also">${w(e.at,u.value)}</span></li>`)}</ul></td></tr>`)}</tbody></table>
  </section>`,qt=()=>i`
  <div class="section">
    <p class="soft small">${r("trace.how")}</p>
    <p class="caution small">${r("stock.caution_vet")}</p>
    <p class="caution small">${r("trace.caution_tools")}</p>
    <p class="caution small">${C("compatibility","quarantine")}</p>
  </div>`;export{eo as PlantingEntry,$o as Plants,fo as SharedTool,_o as Stock,bo as StockEntry,Lo as Trace};
//# sourceMappingURL=life-SYZMLZIU.js.map
