/**
 * A dose: by one of the room's labels for the litres of this tank or other litres, of the salt worked out last, or of
 * ammonia to start a tank without fish.
 */
import { html } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { animals_known, label_dose, labels_by_use, litres_for, starter, wanted_tan } from "../advice/journal/dosing.js";
import { facts_of } from "../advice/facts.js";
import { bucket_step } from "../advice/litres.js";
import { nice_step } from "../advice/journal/steps.js";
import { salt_of } from "../bench/worked_out_salt.js";
import { marks_of } from "../figures/number_text.js";
import { convert, unit_in, unit_label } from "../figures/units.js";
import { InvalidInput, cautions_of } from "../contracts.js";
import { chosen, short, t, when } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { draft } from "../ui/state/draft.js";
import { dose_said, litres_said, nitrogen } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { measures } from "../ui/state/measures.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, closed_form, use_record_form } from "../ui/state/record_form.js";
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
  const form = use_record_form({ name: `dose.${id}`, first });
  const closed = closed_form(tank, "dose", t("dosing.title"));
  if (!tank || closed) return closed;

  const { changes, doses } = facts_of(live_room, tank, now.value);
  const labels = labels_by_use(all("label"), doses);
  const salt = salt_of(tank, draft("bench.salt_dose", () => ({})).value, {
    system: measures.value,
    marks: marks_of(chosen()),
  });
  const animals = animals_known(of_tank(all("stock_change"), id));
  const { way, at } = form.draft.value;
  const label = labels.find((each) => each.id === way);
  const dose = dose_of(form.draft.value, { tank, label, salt, animals, changes });
  const { fields } = dose;
  const log = () =>
    fields &&
    form.save(() => ({
      writes: [{ type: "put", kind: "dose", id: new_id(), fields: { tank: id, at, ...fields } }],
      said: t("dosing.saved", { dose: dose_said(fields), what: fields.what, tank: tank.name }),
      to: `/tank/${id}`,
    }));
  const act =
    fields &&
    html`<button class="main" type="button" disabled=${no_moment(at)} onClick=${tap(() => void log())}>
      ${t("dosing.log", { dose: dose_said(fields) })}</button>`;
  return html`
    <${Page} title=${t("dosing.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <${Last} dose=${doses.at(-1)} />
      <${Refused} form=${form} kind="dose" />
      <${Ways} tank=${id} form=${form} labels=${labels} salt=${salt} />
      ${
        label &&
        html`<${ForLitres} form=${form} tank=${tank} label=${label} dose=${dose}
        litres=${litres_in(form.draft.value, tank, label, changes)} />`
      }
      ${
        way === SALT &&
        salt &&
        html`<${Answer} dose=${dose}
        said=${t("dosing.for_tank", { litres: litres_said(tank.water_l) })} />`
      }
      ${way === AMMONIA && html`<${Ammonia} tank=${tank} form=${form} dose=${dose} animals=${animals} />`}
      ${
        fields &&
        html`<${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => form.set({ at: moment })} />`
      }
      ${cautions(way, label).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
    <//>`;
}

/** @typedef {ReturnType<typeof first>} Draft */
/** @typedef {ReturnType<typeof use_record_form<Draft>>} Form */
/** @typedef {import("../types/views.js").Tank} Tank */
/** @typedef {import("../types/views.js").View<"label">} Label */
/** @typedef {import("../types/views.js").View<"water_change">} Change */
/** @typedef {import("../contracts.js").FieldError} FieldError */
/** @typedef {NonNullable<ReturnType<typeof salt_of>>} Salt */
/**
 * What would be logged, with the calculation that it comes from, or why nothing can be.
 * @typedef {{fields?: {what: string, amount: number, unit: string, [field: string]: unknown}, errors?: FieldError[],
 * name?: "salt_dose" | "starter_dose", input?: object, answer?: {notes?: string[]}}} Logged input and answer are those
 * of `name`
 */

/**
 * What can be dosed: the room's labels, the salt worked out last, ammonia; and the ways to another label or salt.
 * @param {{tank: string, form: Form, labels: Label[], salt: Salt | null}} props
 */
function Ways({ tank, form, labels, salt }) {
  const way = (/** @type {string} */ key, /** @type {string} */ name, /** @type {unknown} */ line) => html`
    <button type="button" key=${key} aria-pressed=${form.draft.value.way === key}
      onClick=${tap(() => form.set({ way: key, litres: null }))}><b>${name}</b>
      <span class="soft small">${line}</span></button>`;
  const line_of = (/** @type {Label} */ { amount, unit, per_l }) =>
    t("label.line", { amount: short(amount), unit: t(`unit.${unit}`), litres: litres_said(per_l) });
  return html`
    <div class="tiles two" role="group" aria-label=${t("dosing.what")}>
      ${labels.map((label) => way(label.id, label.name, line_of(label)))}
      ${salt && way(SALT, salt.what, t("dosing.from_bench"))}
      ${way(AMMONIA, t("dosing.ammonia"), t("dosing.ammonia_why"))}
    </div>
    <div class="row section">
      ${
        room.value.may("label") &&
        html`<a class="quiet" href=${`/room/label/new?then=/tank/${tank}/dose`}><${Icon}
        name="plus" size=${20} />${t("water.new_label")}</a>`
      }
      <a class="quiet" href=${`/bench/salt_dose?tank=${tank}`}>${t("dosing.work_out_salt")}</a>
    </div>`;
}

/**
 * @param {Draft} draft
 * @param {{tank: Tank, label: Label | undefined, salt: Salt | null, animals: boolean,
 * changes: readonly Change[]}} known
 * @returns {Logged}
 */
function dose_of(draft, { tank, label, salt, animals, changes }) {
  try {
    if (label) {
      const for_litres = litres_in(draft, tank, label, changes);
      return { fields: { ...label_dose(label, for_litres), label: label.id, what: label.name, for_litres } };
    }
    if (draft.way === SALT && salt) {
      const { what, what_code, amount, unit, input, answer } = salt;
      return { fields: { what, what_code, amount, unit, for_litres: tank.water_l }, name: "salt_dose", input, answer };
    }
    return draft.way === AMMONIA && !animals ? ammonia_dose(draft, tank) : {};
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return { errors: error.errors };
  }
}

/**
 * Ammonia for a tank without animals; nothing while the strength is missing.
 * @param {Draft} draft
 * @param {Tank} tank
 * @returns {Logged}
 */
function ammonia_dose(draft, tank) {
  const percent = draft.household ? Number(draft.percent) : undefined;
  if (percent !== undefined && !(percent > 0)) return {};
  const { amount, unit, tan_mg_n_l, input, answer } = starter(tank, tan_in(draft, tank), percent);
  const what_code = draft.household ? "household_ammonia" : "ammonium_chloride";
  return {
    fields: { what: ammonia_named(what_code), what_code, amount, unit, tan_mg_n_l, for_litres: tank.water_l },
    name: "starter_dose",
    input,
    answer,
  };
}

/**
 * The litres to dose for.
 * @param {Draft} draft
 * @param {Tank} tank
 * @param {Label} label
 * @param {readonly Change[]} changes of the tank, oldest first
 */
const litres_in = ({ litres }, tank, label, changes) =>
  litres === null ? litres_for(tank, label, changes) : convert(Number(litres.text), litres.unit, "L");

/** The ammonia wanted, in mg N/L. @param {Draft} draft @param {Tank} tank */
const tan_in = ({ tan }, tank) => (tan === null ? wanted_tan(tank, all("own_species")) : Number(tan));

/** @param {{dose: import("../types/views.js").View<"dose"> | undefined}} props */
const Last = ({ dose }) =>
  html`<p class="soft">
    ${
      dose
        ? t("dosing.last", { dose: dose_said(dose), what: dosed_said(dose), when: when(dose.at, now.value) })
        : t("dosing.never")
    }</p>`;

/**
 * The water is set in the units of this phone.
 * @param {{form: Form, tank: Tank, label: Label, litres: number, dose: Logged}} props
 */
function ForLitres({ form, tank, label, litres, dose }) {
  const unit = unit_in({ name: "", unit: "L" }, measures.value);
  const typed = form.draft.value.litres;
  const step = nice_step(convert(bucket_step(tank.water_l), "L", unit));
  return html`
    <section class="section"><h2>${t("dosing.for_water")}</h2>
      <${Amount} label=${t("dosing.for_water")} unit=${unit_label(unit)} value=${convert(litres, "L", unit)}
        typed=${typed && typed.unit === unit ? typed.text : null} step=${step} least=${step} most=${100000}
        on_type=${(/** @type {string} */ text) => form.set({ litres: { text, unit } })} />
      <${Answer} dose=${dose} said=${t(`dose.basis_${label.basis}`)} />
    </section>`;
}

/** @param {{tank: Tank, form: Form, dose: Logged, animals: boolean}} props */
function Ammonia({ tank, form, dose, animals }) {
  if (animals)
    return html`<p class="wrong section" role="status"><${Icon} name="needs" /><span>${t("dosing.animals_here")}</span>
      </p>`;
  const { tan: typed, household, percent } = form.draft.value;
  const tan = tan_in(form.draft.value, tank);
  const kind = (/** @type {boolean} */ picked) => tap(() => form.set({ household: picked }));
  return html`
    <section class="section"><h2>${t("dosing.wanted")}</h2>
      <${Amount} label=${t("dosing.wanted")} unit="mg N/L" value=${tan} typed=${typed}
        step=${nice_step(Math.max(wanted_tan(tank, all("own_species")) / 10, 0.05))} least=${0.05} most=${50}
        on_type=${(/** @type {string} */ text) => form.set({ tan: text })} />
    </section>
    <div class="tiles two section" role="group" aria-label=${t("dosing.with")}>
      <button type="button" aria-pressed=${!household} onClick=${kind(false)}>${t("dosing.ammonium_chloride")}
        </button>
      <button type="button" aria-pressed=${household} onClick=${kind(true)}>${t("dosing.household_ammonia")}
        </button>
    </div>
    ${
      household &&
      html`<section class="section"><h2>${t("dosing.strength")}</h2>
      <${Amount} label=${t("dosing.strength")} unit="%" value=${Number(percent)} typed=${percent} step=${0.5}
        least=${0.5} most=${35} on_type=${(/** @type {string} */ text) => form.set({ percent: text })} />
      ${!(Number(percent) > 0) && html`<p class="soft center">${t("dosing.no_strength")}</p>`}</section>`
    }
    <${Answer} dose=${dose} said=${t("dosing.gives", { tan: nitrogen(tan || 0), litres: litres_said(tank.water_l) })}
      />`;
}

/** @param {{dose: Logged, said: string}} props */
const Answer = ({ dose, said }) => html`
  ${(dose.errors ?? []).map(
    (error) => html`<${Wrong} key=${error.field} error=${error}
    spec=${{ label: t("dosing.this") }} />`,
  )}
  ${
    dose.fields &&
    html`
    <p class="dose"><span class="big">${dose_said(dose.fields)}</span><br /><span class="soft small">${said}</span></p>
    ${(dose.answer?.notes ?? []).map((/** @type {string} */ note) => html`<p class="small" key=${note}>${note}</p>`)}
    ${dose.name && html`<${KnownFrom} name=${dose.name} input=${dose.input} answer=${dose.answer} />`}`
  }`;

/** @param {string} way @param {Label | undefined} label @returns {string[]} */
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
