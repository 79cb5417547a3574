/** Setting up a tank, or changing it: shape, measures with the litres at once, then what else is known. */
import { html, useSignal } from "../vendor/preact.js";
import { InvalidInput, cautions_of, contracts, input_of, records, run } from "../contracts.js";
import { last_place } from "../advice/facts.js";
import { as_planned, planned, unplanned } from "../advice/setup/setting_up.js";
import { number, t } from "../i18n/words.js";
import { Authors } from "../ui/authors.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { forget, use_draft, use_opened } from "../ui/state/draft.js";
import { Fields, Wrong, payload_of, raw_of } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { get, live_room, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { shown_in } from "../ui/state/measures.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** Measures everyone takes; the rest of the contract's fields make it more exact. */
const RULER = ["measures", "length_cm", "width_cm", "diameter_cm", "bow_cm", "height_cm", "glass_mm", "fill_height_cm"];
/** What the forecast wants to know beside the measures, and the rest. */
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
  const name = `tank.${id ?? "new"}`;
  const opened = use_opened(name, tank);
  const kept = use_draft(name, () => first(tank));
  const tried = useSignal(false);
  const refused = useSignal(/** @type {any[]} */ ([]));
  if (id && !tank) return html`<${Missing} up="/tanks" />`;
  if (!room.value.may("tank"))
    return html`<${LookingOnly} title=${t(id ? "tank.edit" : "tank.new")} up=${id ? `/tank/${id}` : "/tanks"}
      why="looking_only.this" />`;

  const { measures, about } = kept.value;
  const found = litres_of(measures);
  const specs = (/** @type {string[]} */ names) =>
    records().tank.fields.filter((/** @type {any} */ field) => names.includes(field.name));
  const inputs = contracts().volume.inputs;
  const set_measures = (/** @type {any} */ raw) => (kept.value = { ...kept.value, measures: raw });
  const set_about = (/** @type {any} */ raw) => (kept.value = { ...kept.value, about: raw });
  const errors = [...found.errors, ...refused.value];

  const save = async () => {
    tried.value = true;
    refused.value = [];
    if (!found.answer) return document.querySelector(".wrong")?.scrollIntoView({ block: "center" });
    const known = payload_of(specs(["name", ...ABOUT]), about);
    const emptied = id
      ? Object.fromEntries(ABOUT.filter((field) => !(field in known)).map((field) => [field, null]))
      : {};
    const own = id ?? new_id();
    const figures = { measures: found.payload, water_l: found.answer.water_l, gross_l: found.answer.gross_l };
    const extra = id ? {} : { walk_order: last_place(live_room) };
    const fields = changed_fields(opened, { ...emptied, ...known, ...figures, ...extra });
    // What a plan's steps put into the glass stays theirs.
    if (tank && planned(tank) && fields.measures) fields.measures = unplanned(tank, fields.measures);
    try {
      if (
        Object.keys(fields).length &&
        !(await record(
          [{ type: "put", kind: "tank", id: own, fields }],
          t(id ? "saved.tank" : "saved.new_tank", { tank: known.name }),
        ))
      )
        return;
      forget(name);
      go(`/tank/${own}`, { replace: true });
    } catch (no) {
      if (!(no instanceof InvalidInput)) throw no;
      refused.value = no.errors;
    }
  };
  const put_away = () =>
    record(
      [{ type: "put", kind: "tank", id: /** @type {string} */ (id), fields: { resting: !tank.resting } }],
      t(tank.resting ? "saved.back" : "saved.away", { tank: tank.name }),
    );

  return html`
    <${Page} title=${t(id ? "tank.edit" : "tank.new")} up=${id ? `/tank/${id}` : "/tanks"} book
      news=${html`<${Meanwhile} opened=${opened} held=${tank} names=${["name", "water_l", "measures", ...ABOUT]} />`}
      act=${html`<${Found} found=${found} /><button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("tank.save")}</button>`}>
      ${
        !id &&
        html`<p class="from-glass"><a class="quiet" href="/tanks/setup">${t("setup.from_glass")}</a><span
        class="soft small">${t("setup.from_glass_why")}</span></p>`
      }
      <section class="entry"><span class="in-margin" aria-hidden="true">1</span><div>
        <fieldset><legend class="label">${t("tank.shape")}</legend>
          <div class="tiles two">${input_of("volume", "shape").choices.map(
            (choice) => html`
            <label key=${choice.value}><input class="unseen" type="radio" name="shape" value=${choice.value}
              checked=${measures.shape === choice.value}
              onChange=${() => set_measures({ ...measures, shape: choice.value })} /><${Icon} name=${choice.value}
                size=${40} />${choice.label}</label>`,
          )}</div>
        </fieldset>
        ${tried.value && !measures.shape && html`<${Wrong} spec=${inputs[0]} error=${found.errors[0]} />`}
      </div></section>
      ${
        measures.shape &&
        html`
        <section class="entry"><span class="in-margin" aria-hidden="true">2</span><div>
          <h2 class="unseen">${t("tank.measures")}</h2>
          <${Fields} specs=${inputs.filter((/** @type {any} */ one) => RULER.includes(one.name))} all=${inputs}
            raw=${measures} on_raw=${set_measures} errors=${errors} tried=${tried.value} />
          <details class="more" open=${has_more(measures)}><summary>${t("tank.exact")}</summary>
            <${Fields} specs=${inputs.slice(1).filter((/** @type {any} */ one) => !RULER.includes(one.name))}
              all=${inputs} raw=${measures} on_raw=${set_measures} errors=${errors} tried=${tried.value} />
          </details>
          ${(found.answer?.notes ?? []).map(
            (/** @type {string} */ note) => html`<p class="soft small" key=${note}>
            ${note}</p>`,
          )}
        </div></section>
        <section class="entry"><span class="in-margin" aria-hidden="true">3</span><div>
          <h2 class="unseen">${t("tank.about")}</h2>
          <${Fields} specs=${specs(["name"])} raw=${about} on_raw=${set_about} errors=${errors} tried=${tried.value} />
          <details class="more" open=${Boolean(id)}><summary>${t("tank.more")}</summary>
            <${Fields} specs=${specs(ABOUT)} raw=${about} on_raw=${set_about} errors=${errors} tried=${tried.value} />
          </details>
          ${cautions_of("volume").map(
            (text) => html`<p class="caution small" key=${text}>
            ${text}</p>`,
          )}
          ${tank && html`<${Authors} meta=${tank.meta} />`}
          ${
            id &&
            html`<p><button class="quiet" type="button" onClick=${tap(() => void put_away())}>
            ${t(tank.resting ? "tank.back" : "tank.away")}</button></p>`
          }
        </div></section>`
      }
    <//>`;
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
 * @param {Record<string, any>} measures
 * @returns {{answer?: any, payload: any, errors: any[]}}
 */
function litres_of(measures) {
  const payload = payload_of(contracts().volume.inputs, measures);
  try {
    return { answer: run("volume", payload), payload, errors: [] };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { payload, errors: no.errors };
  }
}

/** @param {any} tank */
const first = (tank) => ({
  measures: tank?.measures ? raw_of(contracts().volume.inputs, tank.measures) : {},
  about: tank
    ? raw_of(
        records().tank.fields.filter((/** @type {any} */ field) => ["name", ...ABOUT].includes(field.name)),
        tank,
      )
    : {},
});

/** @param {Record<string, any>} measures */
const has_more = (measures) =>
  Object.keys(measures).some((name) => name !== "shape" && !RULER.includes(name) && measures[name]);
