/**
 * A dose: by one of the room's labels for this tank's litres or typed ones, of the salt worked out last, or of ammonia
 * to start without fish.
 */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import {
  animals_known,
  label_dose,
  labels_by_use,
  litres_for,
  salt_of,
  starter,
  wanted_tan,
} from "../advice/journal/dosing.js";
import { facts_of } from "../advice/facts.js";
import { bucket_step } from "../advice/litres.js";
import { nice_step } from "../advice/journal/steps.js";
import { marks_of } from "../figures/number_text.js";
import { convert, unit_in, unit_label } from "../figures/units.js";
import { InvalidInput, cautions_of } from "../contracts.js";
import { chosen, short, t, when } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { draft, forget, use_draft } from "../ui/state/draft.js";
import { dose_said, litres_said, nitrogen } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { measures } from "../ui/state/measures.js";
import { LookingOnly } from "../ui/view_only.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";
import { ammonia_named, dosed_said } from "../ui/words/tile_words.js";

const SALT = "salt";
const AMMONIA = "ammonia";
const first = () => ({
  way: "",
  litres: /** @type {{text: string, unit: string} | null} */ (null),
  tan: /** @type {string | null} */ (null),
  household: false,
  percent: "",
  at: /** @type {string | undefined} */ (undefined),
});

/** @param {{id: string}} props */
export function Dose({ id }) {
  const tank = get("tank", id);
  const name = `dose.${id}`;
  const kept = use_draft(name, first);
  const problem = useSignal("");
  if (!tank) return html`<${Missing} up="/" />`;
  if (!room.value.may("dose")) return html`<${LookingOnly} title=${t("dosing.title")} up=${`/tank/${id}`} />`;

  const { changes, doses } = facts_of(live_room, tank, now.value);
  const labels = labels_by_use(all("label"), doses);
  const salt = salt_of(tank, draft("bench.salt_dose", () => ({})).value, {
    system: measures.value,
    marks: marks_of(chosen()),
  });
  const animals = animals_known(of_tank(all("stock_change"), id));
  const { way, at } = kept.value;
  const label = labels.find((one) => one.id === way);
  const set = (/** @type {any} */ more) => (kept.value = { ...kept.value, ...more });
  const dose = dose_of(kept.value, { tank, label, salt, animals, changes });

  const log = async () => {
    const { fields } = dose;
    try {
      if (
        !(await record(
          [{ type: "put", kind: "dose", id: new_id(), fields: { tank: id, at, ...fields } }],
          t("dosing.saved", { dose: dose_said(fields), what: fields.what, tank: tank.name }),
        ))
      )
        return;
      forget(name);
      go(`/tank/${id}`, { replace: true });
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  const act =
    dose.fields &&
    html`<button class="main" type="button" disabled=${no_moment(at)} onClick=${tap(() => void log())}>
      ${t("dosing.log", { dose: dose_said(dose.fields) })}</button>`;
  const pick = (/** @type {string} */ picked) => tap(() => set({ way: picked, litres: null }));
  return html`
    <${Page} title=${t("dosing.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <${Last} dose=${doses.at(-1)} />
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" />${problem.value}</p>`}
      <div class="tiles two" role="group" aria-label=${t("dosing.what")}>
        ${labels.map(
          (one) => html`<button type="button" key=${one.id} aria-pressed=${way === one.id} onClick=${pick(one.id)}><b>
            ${one.name}</b>
          <span class="soft small">
            ${t("label.line", {
              amount: short(one.amount),
              unit: t(`unit.${one.unit}`),
              litres: litres_said(one.per_l),
            })}</span></button>`,
        )}
        ${
          salt &&
          html`<button type="button" aria-pressed=${way === SALT} onClick=${pick(SALT)}><b>${salt.what}</b><span
          class="soft small">${t("dosing.from_bench")}</span></button>`
        }
        <button type="button" aria-pressed=${way === AMMONIA} onClick=${pick(AMMONIA)}><b>${t("dosing.ammonia")}</b>
          <span class="soft small">${t("dosing.ammonia_why")}</span></button>
      </div>
      <div class="row section">
        ${
          room.value.may("label") &&
          html`<a class="quiet" href=${`/room/label/new?then=/tank/${id}/dose`}><${Icon}
          name="plus" size=${20} />${t("water.new_label")}</a>`
        }
        <a class="quiet" href=${`/bench/salt_dose?tank=${id}`}>${t("dosing.work_out_salt")}</a>
      </div>
      ${
        label &&
        html`<${ForLitres} tank=${tank} label=${label} litres=${litres_in(kept.value, tank, label, changes)}
        typed=${kept.value.litres} dose=${dose}
        on_type=${(/** @type {string} */ text) =>
          set({ litres: { text, unit: unit_in({ name: "", unit: "L" }, measures.value) } })} />`
      }
      ${
        way === SALT &&
        salt &&
        html`<${Answer} dose=${dose}
        said=${t("dosing.for_tank", { litres: litres_said(tank.water_l) })} />`
      }
      ${
        way === AMMONIA &&
        html`<${Ammonia} tank=${tank} kept=${kept.value} set=${set} dose=${dose} animals=${animals}
        />`
      }
      ${
        dose.fields &&
        html`<${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />`
      }
      ${cautions(way, label).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
    <//>`;
}

/**
 * What would be logged, or why nothing can be.
 * @param {ReturnType<typeof first>} kept
 * @param {{tank: any, label: any, salt: any, animals: boolean, changes: readonly any[]}} known
 * @returns {{fields?: any, errors?: any[], name?: string, input?: any, answer?: any}}
 */
function dose_of(kept, { tank, label, salt, animals, changes }) {
  try {
    if (label) {
      const for_litres = litres_in(kept, tank, label, changes);
      return { fields: { ...label_dose(label, for_litres), label: label.id, what: label.name, for_litres } };
    }
    if (kept.way === SALT && salt) {
      const { what, what_code, amount, unit, input, answer } = salt;
      return { fields: { what, what_code, amount, unit, for_litres: tank.water_l }, name: "salt_dose", input, answer };
    }
    if (kept.way === AMMONIA && !animals && (!kept.household || Number(kept.percent) > 0)) {
      const { amount, unit, tan_mg_n_l, input, answer } = starter(
        tank,
        tan_in(kept, tank),
        kept.household ? Number(kept.percent) : undefined,
      );
      const what_code = kept.household ? "household_ammonia" : "ammonium_chloride";
      return {
        fields: { what: ammonia_named(what_code), what_code, amount, unit, tan_mg_n_l, for_litres: tank.water_l },
        name: "starter_dose",
        input,
        answer,
      };
    }
    return {};
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { errors: no.errors };
  }
}

/**
 * @param {{litres: {text: string, unit: string} | null}} kept
 * @param {any} tank
 * @param {any} label
 * @param {readonly any[]} changes
 */
const litres_in = (kept, tank, label, changes) =>
  kept.litres === null ? litres_for(tank, label, changes) : convert(Number(kept.litres.text), kept.litres.unit, "L");
/** @param {{tan: string | null}} kept @param {any} tank */
const tan_in = (kept, tank) => (kept.tan === null ? wanted_tan(tank, all("own_species")) : Number(kept.tan));

/** @param {{dose: any}} props */
const Last = ({ dose }) =>
  html`<p class="soft">
    ${
      dose
        ? t("dosing.last", { dose: dose_said(dose), what: dosed_said(dose), when: when(dose.at, now.value) })
        : t("dosing.never")
    }</p>`;

/**
 * @param {{tank: any, label: any, litres: number, typed: {text: string, unit: string} | null, dose: any, on_type:
 * (text: string) => void}} props the water is set in the units of this phone
 */
function ForLitres({ tank, label, litres, typed, dose, on_type }) {
  const unit = unit_in({ name: "", unit: "L" }, measures.value);
  const step = nice_step(convert(bucket_step(tank.water_l), "L", unit));
  return html`
    <section class="section"><h2>${t("dosing.for_water")}</h2>
      <${Amount} label=${t("dosing.for_water")} unit=${unit_label(unit)} value=${convert(litres, "L", unit)}
        typed=${typed && typed.unit === unit ? typed.text : null} step=${step} least=${step} most=${100000}
        on_type=${on_type} />
      <${Answer} dose=${dose} said=${t(`dose.basis_${label.basis}`)} />
    </section>`;
}

/** @param {{tank: any, kept: any, set: (more: any) => void, dose: any, animals: boolean}} props */
function Ammonia({ tank, kept, set, dose, animals }) {
  if (animals)
    return html`<p class="wrong section" role="status"><${Icon} name="needs" /><span>${t("dosing.animals_here")}</span>
      </p>`;
  const tan = tan_in(kept, tank);
  const kind = (/** @type {boolean} */ household) => tap(() => set({ household }));
  return html`
    <section class="section"><h2>${t("dosing.wanted")}</h2>
      <${Amount} label=${t("dosing.wanted")} unit="mg N/L" value=${tan} typed=${kept.tan}
        step=${nice_step(Math.max(wanted_tan(tank, all("own_species")) / 10, 0.05))} least=${0.05} most=${50}
        on_type=${(/** @type {string} */ text) => set({ tan: text })} />
    </section>
    <div class="tiles two section" role="group" aria-label=${t("dosing.with")}>
      <button type="button" aria-pressed=${!kept.household} onClick=${kind(false)}>${t("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${kept.household} onClick=${kind(true)}>${t("dosing.household_ammonia")}
        </button>
    </div>
    ${
      kept.household &&
      html`<section class="section"><h2>${t("dosing.strength")}</h2>
      <${Amount} label=${t("dosing.strength")} unit="%" value=${Number(kept.percent)} typed=${kept.percent} step=${0.5}
        least=${0.5} most=${35} on_type=${(/** @type {string} */ text) => set({ percent: text })} />
      ${!(Number(kept.percent) > 0) && html`<p class="soft center">${t("dosing.no_strength")}</p>`}</section>`
    }
    <${Answer} dose=${dose} said=${t("dosing.gives", { tan: nitrogen(tan || 0), litres: litres_said(tank.water_l) })}
      />`;
}

/** @param {{dose: any, said: string}} props */
const Answer = ({ dose, said }) => html`
  ${(dose.errors ?? []).map(
    (/** @type {any} */ error) => html`<${Wrong} key=${error.field} error=${error}
    spec=${{ label: t("dosing.this") }} />`,
  )}
  ${
    dose.fields &&
    html`
    <p class="dose"><span class="big">${dose_said(dose.fields)}</span><br /><span class="soft small">${said}</span></p>
    ${(dose.answer?.notes ?? []).map((/** @type {string} */ note) => html`<p class="small" key=${note}>${note}</p>`)}
    ${dose.name && html`<${KnownFrom} name=${dose.name} input=${dose.input} answer=${dose.answer} />`}`
  }`;

/** @param {string} way @param {any} label @returns {string[]} */
function cautions(way, label) {
  if (way === SALT) return cautions_of("salt_dose");
  if (way === AMMONIA) return cautions_of("starter_dose");
  return [
    t("dosing.label_first"),
    ...(label?.use === "dechlorinator"
      ? cautions_of("dechlorinator_dose", ["label_first", "no_mixing", "freed_ammonia"])
      : []),
  ];
}
