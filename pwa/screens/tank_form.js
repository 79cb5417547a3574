/** A new tank, or changes to one: shape, measures with the litres at once, then what else is known. */
import { html } from "../vendor/preact.js";
import { InvalidInput, cautions_of, contracts, input_of, records, run } from "../contracts.js";
import { last_place } from "../advice/facts.js";
import { as_planned, planned, unplanned } from "../advice/setup/setting_up.js";
import { number, t } from "../i18n/words.js";
import { Authors } from "../ui/authors.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { Fields, Wrong, payload_of, raw_of } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { get, live_room, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { shown_in } from "../ui/state/measures.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { Refused, use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";

/** Measures that everyone takes; the other fields of the contract make the litres more exact. */
const RULER = ["measures", "length_cm", "width_cm", "diameter_cm", "bow_cm", "height_cm", "glass_mm", "fill_height_cm"];
/** What the forecast needs beside the measures, and what else is known of a tank. */
const ABOUT = [
  "place",
  "started_at",
  "seeded",
  "planting",
  "filter",
  "feed_g_day",
  "protein_fraction",
  "fish_g",
  "temperature_c",
  "ph",
  "kh_dkh",
  "note",
];

/** @param {{id?: string}} props without an id: a new tank */
export function TankForm({ id }) {
  const here = id ? get("tank", id) : null;
  const tank = here && as_planned(here);
  const form = use_record_form({ name: `tank.${id ?? "new"}`, held: tank, first: () => first(tank) });
  const up = id ? `/tank/${id}` : "/tanks";
  const title = t(id ? "tank.edit" : "tank.new");
  if (id && !tank) return html`<${Missing} up="/tanks" />`;
  if (!room.value.may("tank")) return html`<${LookingOnly} title=${title} up=${up} why="looking_only.this" />`;

  const { measures, about } = form.draft.value;
  const found = litres_of(measures);
  const errors = [...found.errors, ...form.errors.value];
  const save = () => {
    form.tried.value = true;
    if (!found.answer) return document.querySelector(".wrong")?.scrollIntoView({ block: "center" });
    return form.save(() => entry_of(id, tank, form.opened, about, found));
  };

  return html`
    <${Page} title=${title} up=${up} book
      news=${html`<${Meanwhile} opened=${form.opened} held=${tank}
        names=${["name", "water_l", "measures", ...ABOUT]} />`}
      act=${html`<${Found} found=${found} /><button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("tank.save")}</button>`}>
      ${
        !id &&
        html`<p class="from-glass"><a class="quiet" href="/tanks/setup">${t("setup.from_glass")}</a><span
        class="soft small">${t("setup.from_glass_why")}</span></p>`
      }
      <${Refused} form=${form} kind="tank" beside=${["name", ...ABOUT]} />
      <${Shape} form=${form} error=${found.errors.find(({ field }) => field === "shape")} />
      ${
        measures.shape &&
        html`
        <${Measures} form=${form} errors=${errors} notes=${found.answer?.notes ?? []} />
        <section class="entry"><span class="in-margin" aria-hidden="true">3</span><div>
          <h2 class="unseen">${t("tank.about")}</h2>
          <${About} form=${form} errors=${errors} open=${Boolean(id)} />
          ${cautions_of("volume").map(
            (text) => html`<p class="caution small" key=${text}>
            ${text}</p>`,
          )}
          ${tank && html`<${Authors} meta=${tank.meta} />`}
          ${
            tank &&
            html`<p><button class="quiet" type="button" onClick=${tap(() => void put_away(tank))}>
            ${t(tank.resting ? "tank.back" : "tank.away")}</button></p>`
          }
        </div></section>`
      }
    <//>`;
}

/** @typedef {import("../ui/contract/form.js").Raw} Raw */
/** @typedef {import("../ui/contract/form.js").FieldError} FieldError */
/** @typedef {import("../types/views.js").Tank} Tank */
/** @typedef {ReturnType<typeof use_record_form<ReturnType<typeof first>>>} Form */
/** @typedef {import("../types/contract.js").Field} Field */

/** @param {string[]} names */
const specs = (names) => records().tank.fields.filter(({ name }) => names.includes(name));

/**
 * What the form records: of a tank that is there, only what changed since the form was opened.
 * @param {string | undefined} id
 * @param {Tank | null} tank
 * @param {Tank | null} opened
 * @param {Raw} about
 * @param {ReturnType<typeof litres_of>} found
 */
function entry_of(id, tank, opened, about, found) {
  const known = payload_of(specs(["name", ...ABOUT]), about);
  const empty = id ? Object.fromEntries(ABOUT.filter((name) => !(name in known)).map((name) => [name, null])) : {};
  const own = id ?? new_id();
  const { water_l, gross_l } = found.answer ?? {};
  const place = id ? {} : { walk_order: last_place(live_room) };
  const said = { ...empty, ...known, measures: found.payload, water_l, gross_l, ...place };
  const fields = changed_fields(opened, said);
  // What the steps of a plan put into the glass stays with those steps.
  if (tank && planned(tank) && fields.measures) fields.measures = unplanned(tank, fields.measures);
  /** @type {import("../ui/state/record.js").Write[]} */
  const writes = Object.keys(fields).length ? [{ type: "put", kind: "tank", id: own, fields }] : [];
  return { writes, said: t(id ? "saved.tank" : "saved.new_tank", { tank: known.name }), to: `/tank/${own}` };
}

/** @param {Tank} tank */
const put_away = ({ id, name, resting }) =>
  record(
    [{ type: "put", kind: "tank", id, fields: { resting: !resting } }],
    t(resting ? "saved.back" : "saved.away", { tank: name }),
  );

/** @param {{form: Form, error: FieldError | undefined}} props */
function Shape({ form, error }) {
  const { measures } = form.draft.value;
  const shape = input_of("volume", "shape");
  return html`
    <section class="entry"><span class="in-margin" aria-hidden="true">1</span><div>
      <fieldset><legend class="label">${t("tank.shape")}</legend>
        <div class="tiles two">${shape.choices.map(
          ({ value, label }) => html`
          <label key=${value}><input class="unseen" type="radio" name="shape" value=${value}
            checked=${measures.shape === value}
            onChange=${() => form.set({ measures: { ...measures, shape: value } })} /><${Icon} name=${value}
              size=${40} />${label}</label>`,
        )}</div>
      </fieldset>
      ${form.tried.value && error && html`<${Wrong} spec=${shape} error=${error} />`}
    </div></section>`;
}

/** @param {{form: Form, errors: FieldError[], notes: string[]}} props */
function Measures({ form, errors, notes }) {
  const { measures } = form.draft.value;
  const { inputs } = contracts().volume;
  const fields = (/** @type {Field[]} */ shown) =>
    html`<${Fields} specs=${shown} all=${inputs} raw=${measures} errors=${errors} tried=${form.tried.value}
      on_raw=${(/** @type {Raw} */ raw) => form.set({ measures: raw })} />`;
  return html`
    <section class="entry"><span class="in-margin" aria-hidden="true">2</span><div>
      <h2 class="unseen">${t("tank.measures")}</h2>
      ${fields(inputs.filter(({ name }) => RULER.includes(name)))}
      <details class="more" open=${has_more(measures)}><summary>${t("tank.exact")}</summary>
        ${fields(inputs.filter(({ name }) => name !== "shape" && !RULER.includes(name)))}
      </details>
      ${notes.map((note) => html`<p class="soft small" key=${note}>${note}</p>`)}
    </div></section>`;
}

/** @param {{form: Form, errors: FieldError[], open: boolean}} props */
function About({ form, errors, open }) {
  const fields = (/** @type {string[]} */ names) =>
    html`<${Fields} specs=${specs(names)} raw=${form.draft.value.about} errors=${errors} tried=${form.tried.value}
      on_raw=${(/** @type {Raw} */ raw) => form.set({ about: raw })} />`;
  return html`
    ${fields(["name"])}
    <details class="more" open=${open}><summary>${t("tank.more")}</summary>${fields(ABOUT)}</details>`;
}

/** @param {{found: ReturnType<typeof litres_of>}} props */
const Found = ({ found }) => html`
  <output class="found" aria-label=${t("tank.litres")}>
    ${
      found.answer
        ? html`<b class="hand">${number(shown_in("L").show(found.answer.water_l), 1)}
    </b> ${shown_in("L").label}`
        : html`<span class="soft">– ${shown_in("L").label}</span>`
    }</output>`;

/**
 * The litres, or which measures are missing or wrong.
 * @param {Raw} measures
 * @returns {{answer?: import("../types/contract.js").Answer<"volume">, payload: Raw, errors: FieldError[]}}
 */
function litres_of(measures) {
  const payload = payload_of(contracts().volume.inputs, measures);
  try {
    return { answer: run("volume", payload), payload, errors: [] };
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return { payload, errors: error.errors };
  }
}

/** What is typed of a tank. @param {Tank | null} tank @returns {{measures: Raw, about: Raw}} */
const first = (tank) => ({
  measures: tank?.measures ? raw_of(contracts().volume.inputs, tank.measures) : {},
  about: tank ? raw_of(specs(["name", ...ABOUT]), tank) : {},
});

/** @param {Raw} measures */
const has_more = (measures) =>
  Object.keys(measures).some((name) => name !== "shape" && !RULER.includes(name) && measures[name]);
