/**
 * A meal: the usual grams by one tap, other grams by thumb, another food, or none today; and what it becomes in the
 * water.
 */
import { html, useSignal } from "../vendor/preact.js";
import { becomes, feed_step, foods, usual_meal } from "../advice/journal/feeding.js";
import { facts_of } from "../advice/facts.js";
import { InvalidInput, cautions_of, field_named, record_field, records } from "../contracts.js";
import { number, short, t, when } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { grams_said, nitrogen } from "../ui/words/figures.js";
import { Fields, Wrong, payload_of } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** What is typed of a food that has no tile. */
const OWN = ["food", "protein_fraction"];
const first = () => ({
  typed: /** @type {string | null} */ (null),
  food: /** @type {string | null} */ (null),
  own: /** @type {Record<string, any>} */ ({}),
  at: /** @type {string | undefined} */ (undefined),
});

/** @param {{id: string}} props */
export function Feed({ id }) {
  const tank = get("tank", id);
  const name = `feed.${id}`;
  const kept = use_draft(name, first);
  const problem = useSignal("");
  const wrong = useSignal(/** @type {any[]} */ ([]));
  if (!tank) return html`<${Missing} up="/" />`;
  if (!room.value.may("feeding")) return html`<${LookingOnly} title=${t("feed.title")} up=${`/tank/${id}`} />`;

  const { feedings } = facts_of(live_room, tank, now.value);
  const usual = usual_meal(tank, feedings);
  const known = foods(all("feeding"));
  const { typed, own, at } = kept.value;
  const spec = (/** @type {string} */ field) => field_named(records().feeding.fields, field);
  const feed_g = typed === null ? usual.feed_g : Number(typed);
  const given = meal_food(kept.value, known, usual, OWN.map(spec));
  const set = (/** @type {any} */ more) => ((wrong.value = []), (kept.value = { ...kept.value, ...more }));

  const log = async (/** @type {number} */ grams) => {
    const fields = { tank: id, at, feed_g: grams, ...(grams > 0 ? given : {}) };
    try {
      const said =
        grams > 0
          ? t("feed.saved", { amount: grams_said(grams), tank: tank.name })
          : t("feed.saved_none", { tank: tank.name });
      if (!(await record([{ type: "put", kind: "feeding", id: new_id(), fields }], said))) return;
      forget(name);
      go(`/tank/${id}`, { replace: true });
    } catch (failed) {
      if (failed instanceof InvalidInput) wrong.value = failed.errors;
      else problem.value = /** @type {Error} */ (failed).message;
    }
  };

  const act = html`
    <button class="quiet tall" type="button" disabled=${no_moment(at)} onClick=${tap(() => void log(0))}>
      ${t(at ? "history.fed_none" : "feed.none")}</button>
    <button class="main" type="button" disabled=${!(feed_g > 0) || no_moment(at)}
      onClick=${tap(() => void log(feed_g))}>${t("feed.log", { amount: grams_said(feed_g || 0) })}</button>`;
  return html`
    <${Page} title=${t("feed.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <${Last} feedings=${feedings} />
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" />${problem.value}</p>`}
      <${Amount} label=${t("feed.grams")} unit="g" value=${feed_g} typed=${typed} step=${feed_step(usual.feed_g)}
        least=${0.01} most=${record_field("feeding", "feed_g").max} on_type=${(/** @type {string} */ text) => set({ typed: text })} />
      <p class="soft center">
        ${t(`feed.from_${typed === null || feed_g === usual.feed_g ? usual.from : "keeper"}`, {
          usual: grams_said(usual.feed_g),
        })}</p>
      ${wrong.value.map((one) => html`<${Wrong} key=${one.field} spec=${spec(one.field)} error=${one} />`)}
      <section class="section"><h2>${t("feed.food")}</h2>
        <div class="tiles two" role="group" aria-label=${t("feed.food")}>
          ${known.map(
            ({ food, protein_fraction }) => html`
            <button type="button" key=${food} aria-pressed=${given.food === food} onClick=${tap(() => set({ food }))}>
              <b>${food}</b>${
                protein_fraction !== undefined &&
                html`<span class="soft small">
                ${t("feed.protein", { percent: number(100 * protein_fraction, 0) })}</span>`
              }</button>`,
          )}
          <button type="button" aria-pressed=${kept.value.food === ""} onClick=${tap(() => set({ food: "" }))}><${Icon}
            name="plus" />${t("feed.other")}</button>
        </div>
        ${
          kept.value.food === "" &&
          html`<div class="section"><${Fields} specs=${OWN.map(spec)} raw=${own}
          on_raw=${(/** @type {any} */ raw) => set({ own: raw })} errors=${wrong.value} tried=${true} /></div>`
        }
      </section>
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
      ${feed_g > 0 && html`<${Becomes} tank=${tank} feed_g=${feed_g} protein_fraction=${given.protein_fraction} />`}
      ${cautions_of("nitrogen_load").map(
        (text) => html`<p class="caution small"
        key=${text}>${text}</p>`,
      )}
    <//>`;
}

/**
 * The food of this meal: the tile picked, what is typed of another, else the one of last time.
 * @param {any} draft
 * @param {import("../advice/journal/feeding.js").Food[]} known
 * @param {import("../advice/journal/feeding.js").Meal} usual
 * @param {any[]} specs
 */
function meal_food({ food, own }, known, usual, specs) {
  if (food === "") return payload_of(specs, own);
  const picked = food === null ? null : known.find((one) => one.food === food);
  const { feed_g: _grams, from: _from, ...as_last } = usual;
  return picked ? { ...picked } : as_last;
}

/** @param {{feedings: any[]}} props */
function Last({ feedings }) {
  const last = feedings.at(-1);
  if (!last) return html`<p class="soft">${t("feed.never")}</p>`;
  const parts = { when: when(last.at, now.value), amount: grams_said(last.feed_g), food: last.food ?? "" };
  return html`<p class="soft">${t(
    last.feed_g === 0 ? "feed.last_none" : last.food ? "feed.last_food" : "feed.last",
    parts,
  )}</p>`;
}

/** @param {{tank: any, feed_g: number, protein_fraction: any}} props */
function Becomes({ tank, feed_g, protein_fraction }) {
  try {
    const { input, answer, assumed } = becomes(tank, feed_g, protein_fraction);
    const parts = {
      mg: short(answer.tan_mg_n_day, 1),
      rise: nitrogen(answer.tan_mg_n_l_day),
      percent: number(100 * input.protein_fraction, 0),
    };
    return html`
      <section class="section"><h2>${t("feed.becomes")}</h2>
        <p>${t("feed.nitrogen", parts)}${assumed && html` ${t("feed.assumed", parts)}`}</p>
        <${KnownFrom} name="nitrogen_load" input=${input} answer=${answer} />
      </section>`;
  } catch (no) {
    // Figures out of range are said beside their field when they are logged.
    if (!(no instanceof InvalidInput)) throw no;
    return null;
  }
}
