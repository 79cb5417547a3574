/**
 * A meal: the usual grams by one tap, other grams by thumb, another food, or none today; and what the food becomes in
 * the water.
 */
import { html } from "../vendor/preact.js";
import { becomes, feed_step, foods, ration_of, usual_meal } from "../advice/journal/feeding.js";
import { facts_of } from "../advice/facts.js";
import { basis_of } from "../advice/level.js";
import { of_parameter } from "../advice/of_parameter.js";
import { InvalidInput, cautions_of, field_named, record_field, records } from "../contracts.js";
import { number, short, t, when } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { grams_said, level_said, read_as } from "../ui/words/figures.js";
import { Fields, payload_of } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { all, get, live_room, now } from "../ui/state/live.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, closed_form, use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";

/** The fields of a food that has no tile yet. */
const OWN = ["food", "protein_fraction"];
const first = () => ({
  typed: /** @type {string | null} */ (null),
  food: /** @type {string | null} */ (null),
  own: /** @type {Raw} */ ({}),
  at: /** @type {string | undefined} */ (undefined),
});

/** @param {{id: string}} props */
export function Feed({ id }) {
  const tank = get("tank", id);
  const form = use_record_form({ name: `feed.${id}`, first });
  const closed = closed_form(tank, "feeding", t("feed.title"));
  if (!tank || closed) return closed;

  const facts = facts_of(live_room, tank, now.value);
  const { feedings } = facts;
  const ration = ration_of(facts);
  const usual = usual_meal(tank, feedings, ration?.answer.usual_g_day);
  const known = foods(all("feeding"));
  const { typed, at } = form.draft.value;
  const feed_g = typed === null ? usual.feed_g : Number(typed);
  const given = meal_food(form.draft.value, known, usual);
  const log = (/** @type {number} */ grams) =>
    form.save(() => ({
      writes: [
        {
          type: "put",
          kind: "feeding",
          id: new_id(),
          fields: { tank: id, at, feed_g: grams, ...(grams > 0 ? given : {}) },
        },
      ],
      said:
        grams > 0
          ? t("feed.saved", { amount: grams_said(grams), tank: tank.name })
          : t("feed.saved_none", { tank: tank.name }),
      to: `/tank/${id}`,
    }));

  const act = html`
    <button class="quiet tall" type="button" disabled=${no_moment(at)} onClick=${tap(() => void log(0))}>
      ${t(at ? "history.fed_none" : "feed.none")}</button>
    <button class="main" type="button" disabled=${!(feed_g > 0) || no_moment(at)}
      onClick=${tap(() => void log(feed_g))}>${t("feed.log", { amount: grams_said(feed_g || 0) })}</button>`;
  const from = typed === null || feed_g === usual.feed_g ? usual.from : "keeper";
  return html`
    <${Page} title=${t("feed.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <${Last} feedings=${feedings} />
      <${Amount} label=${t("feed.grams")} unit="g" value=${feed_g} typed=${typed} step=${feed_step(usual.feed_g)}
        least=${0.01} most=${record_field("feeding", "feed_g").max}
        on_type=${(/** @type {string} */ text) => form.set({ typed: text })} />
      <p class="soft center">${t(`feed.from_${from}`, { usual: grams_said(usual.feed_g) })}</p>
      ${ration && html`<${Ration} answer=${ration.answer} feed_g=${feed_g} />`}
      <${Refused} form=${form} kind="feeding" beside=${form.draft.value.food === "" ? OWN : []} />
      <${Food} form=${form} known=${known} given=${given} />
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => form.set({ at: moment })} />
      <${Becomes} tank=${tank} facts=${facts} feed_g=${feed_g} protein_fraction=${given.protein_fraction} />
      <${RationWhy} ration=${ration} />
      ${cautions_of("nitrogen_load").map(
        (text) => html`<p class="caution small"
        key=${text}>${text}</p>`,
      )}
    <//>`;
}

/** @typedef {import("../advice/journal/feeding.js").Food} KnownFood */
/** @typedef {import("../ui/contract/form.js").Raw} Raw */
/** @typedef {import("../types/views.js").View<"feeding">} Feeding */

/** @param {{answer: import("../types/calculations.js").FeedRationAnswer, feed_g: number}} props */
const Ration = ({ answer: { usual_g_day, most_g_day }, feed_g }) => html`
  <p class=${feed_g > most_g_day ? "wrong" : "soft small center"}>
    ${t("feed.ration", { usual: food_g(usual_g_day), most: food_g(most_g_day) })}</p>`;

/** @param {{ration: ReturnType<typeof ration_of>}} props */
const RationWhy = ({ ration }) =>
  ration &&
  html`<section class="section"><h2>${t("feed.ration_why")}</h2>
    <${KnownFrom} name="feed_ration" ...${ration} /></section>`;

/** "0.13 g": two figures are enough, no scale in a kitchen shows more. @param {number} grams */
const food_g = (grams) => `${short(grams, grams < 1 ? 2 : 1)}\u00a0g`;

/** The fields of a food that is typed. */
const own_specs = () => OWN.map((name) => field_named(records().feeding.fields, name));

/**
 * The foods given before as tiles, and another one to type.
 * @param {{form: ReturnType<typeof use_record_form<ReturnType<typeof first>>>, known: KnownFood[],
 * given: Partial<KnownFood>}} props
 */
function Food({ form, known, given }) {
  const { food: picked, own } = form.draft.value;
  return html`
    <section class="section"><h2>${t("feed.food")}</h2>
      <div class="tiles two" role="group" aria-label=${t("feed.food")}>
        ${known.map(
          ({ food, protein_fraction }) => html`
          <button type="button" key=${food} aria-pressed=${given.food === food}
            onClick=${tap(() => form.set({ food }))}>
            <b>${food}</b>${
              protein_fraction !== undefined &&
              html`<span class="soft small">
              ${t("feed.protein", { percent: number(100 * protein_fraction, 0) })}</span>`
            }</button>`,
        )}
        <button type="button" aria-pressed=${picked === ""} onClick=${tap(() => form.set({ food: "" }))}><${Icon}
          name="plus" />${t("feed.other")}</button>
      </div>
      ${
        picked === "" &&
        html`<div class="section"><${Fields} specs=${own_specs()} raw=${own} errors=${form.errors.value} tried=${true}
        on_raw=${(/** @type {Raw} */ raw) => form.set({ own: raw })} /></div>`
      }
    </section>`;
}

/**
 * The food of this meal: the tile picked, another one that is typed, else the food of last time.
 * @param {ReturnType<typeof first>} draft
 * @param {KnownFood[]} known
 * @param {import("../advice/journal/feeding.js").Meal} usual
 * @returns {Partial<KnownFood>}
 */
function meal_food({ food, own }, known, usual) {
  if (food === "") return payload_of(own_specs(), own);
  const picked = known.find((one) => one.food === food);
  const { feed_g: _grams, from: _from, ...as_last } = usual;
  return food !== null && picked ? { ...picked } : as_last;
}

/** @param {{feedings: Feeding[]}} props */
function Last({ feedings }) {
  const last = feedings.at(-1);
  if (!last) return html`<p class="soft">${t("feed.never")}</p>`;
  const parts = { when: when(last.at, now.value), amount: grams_said(last.feed_g), food: last.food ?? "" };
  return html`<p class="soft">${t(
    last.feed_g === 0 ? "feed.last_none" : last.food ? "feed.last_food" : "feed.last",
    parts,
  )}</p>`;
}

/**
 * @param {{tank: import("../types/views.js").Tank, facts: ReturnType<typeof facts_of>, feed_g: number,
 * protein_fraction: number | undefined}} props
 */
function Becomes({ tank, facts, feed_g, protein_fraction }) {
  if (feed_g === 0) return null;
  const basis = basis_of({
    reading: of_parameter(facts.readings, "total_ammonia").at(-1) ?? null,
  });
  try {
    const { input, answer, assumed } = becomes(tank, feed_g, protein_fraction);
    const parts = {
      mg: short(answer.tan_mg_n_day, 1),
      rise: `${level_said("total_ammonia", answer.tan_mg_n_l_day, basis)} ${read_as("total_ammonia", basis)}`,
      percent: number(100 * input.protein_fraction, 0),
    };
    return html`
      <section class="section"><h2>${t("feed.becomes")}</h2>
        <p>${t("feed.nitrogen", parts)}${assumed && html` ${t("feed.assumed", parts)}`}</p>
        <${KnownFrom} name="nitrogen_load" input=${input} answer=${answer} />
      </section>`;
  } catch (error) {
    // A figure out of range is said beside its field when the meal is logged.
    if (!(error instanceof InvalidInput)) throw error;
    return null;
  }
}
