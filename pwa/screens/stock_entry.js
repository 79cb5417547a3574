/** One entry about animals: arrived, born, died, left or moved; which ones, how many, how long, the cause. */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { recent_kinds, stock_of } from "../advice/life/stock.js";
import { table } from "../calc/tables.js";
import { caution, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { measured } from "../ui/words/figures.js";
import { Fields } from "../ui/contract/form.js";
import { KindPicker } from "../ui/kind_picker.js";
import {
  ChoiceTiles,
  Errors,
  Failed,
  NoteToo,
  TankTiles,
  WrongTank,
  entry_writes,
  tank_name,
} from "../ui/life_entry.js";
import { Stands } from "../ui/life_log.js";
import { counted } from "../ui/words/life_said.js";
import { all, get, now, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";
import { CAUSES, cause_named, cause_said, code_of } from "../ui/words/tile_words.js";

const CHANGES = ["arrival", "birth", "death", "removal", "move_out"];
const OUT = ["death", "removal", "move_out"];
/** How many kinds have a tile. */
const NEAR = 7;
/** Where the ruler starts when nothing is known of a species: a small fish (assumption). */
const COMMON_CM = 3;

/** @param {{id: string, query: URLSearchParams}} props */
export function StockEntry({ id, query }) {
  const tank = get("tank", id);
  const corrects = get("stock_change", query.get("corrects") ?? undefined);
  const name = `stock.${id}.${corrects?.id ?? [query.get("change"), query.get("species")].join(".")}`;
  const form = use_record_form({ name, first: () => (corrects ? drawn_from(corrects) : empty(query)) });
  const up = query.get("then") ?? (tank ? `/tank/${id}/stock` : "/");
  if (!tank || (query.get("corrects") && !corrects)) return html`<${Missing} up=${up} />`;

  const { change, species, other_tank, at } = form.draft.value;
  const in_tank = form.draft.value.tank || id;
  const moves = change !== "move_out" || (other_tank && other_tank !== in_tank);
  const ready = change && species && moves && !no_moment(at);
  const what = species ? counted(species, count_of(form.draft.value)) : "";
  const save = () =>
    form.save(() => ({
      writes: entry_writes("stock_change", fields_of(form.draft.value, in_tank, corrects), corrects),
      said: t(`stock.saved_${change}`, { what, tank: tank.name, other: tank_name(other_tank) }),
      to: up,
    }));
  return html`
    <${Page} title=${t(corrects ? "life.correct" : "stock.entry")} up=${up} aside=${html`<span class="soft">${tank.name}
      </span>`}
      act=${
        room.value.may("stock_change") &&
        html`<button class="main" type="button" disabled=${!ready}
        onClick=${tap(() => void save())}>${ready ? t(`stock.do_${change}`, { what }) : t("life.not_yet")}</button>`
      }>
      <${Stands} one=${corrects} />
      <${Failed} text=${form.problem.value} />
      <${ChoiceTiles} label=${t("life.what_happened")} choices=${choices_for(corrects)} value=${change}
        on_pick=${(/** @type {string} */ value) => form.set({ change: value })} />
      ${
        change &&
        html`<${Details} id=${id} form=${form} in_tank=${in_tank} corrects=${corrects}
        then=${`/tank/${id}/stock/new?${query}`} />`
      }
      <${Errors} kind="stock_change" errors=${form.errors.value} />
      ${cautions(change).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
      ${change === "arrival" && html`<p><a class="quiet" href="/bench/acclimation">${t("stock.acclimate")}</a></p>`}
    <//>`;
}

/** @param {URLSearchParams} query */
const empty = (query) => ({
  change: query.get("change") ?? "",
  species: query.get("species") ?? "",
  count: "",
  length: "",
  length_unit: "cm",
  cause: "",
  other_tank: "",
  at: /** @type {string | undefined} */ (undefined),
  /** Where a correction puts it; "" while it stays. */
  tank: "",
  raw: /** @type {import("../ui/contract/form.js").Raw} */ ({}),
});

/** @typedef {ReturnType<typeof empty>} Draft */
/** @typedef {import("../types/views.js").View<"stock_change">} StockChange */

/** What is typed of the record that is corrected. @param {StockChange} record @returns {Draft} */
const drawn_from = ({ change, species, count, length_cm, cause, cause_code, other_tank, note }) => ({
  change,
  species,
  count: String(count),
  length: length_cm === undefined ? "" : String(length_cm),
  length_unit: "cm",
  cause: cause_said({ cause, cause_code }),
  other_tank: other_tank ?? "",
  at: undefined,
  tank: "",
  raw: { note },
});

/** @param {Draft} draft */
const count_of = ({ count }) => (count === "" ? 1 : Number(count));

/** The length typed, in cm; undefined while none is. @param {Draft} draft */
const length_of = ({ length, length_unit }) =>
  length === "" ? undefined : shown_in("cm").hold(Number(length), length_unit);

/**
 * The fields of the record.
 * @param {Draft} draft
 * @param {string} in_tank
 * @param {StockChange | null} corrects
 */
function fields_of(draft, in_tank, corrects) {
  const { change, species, cause, other_tank, at, raw } = draft;
  const length_cm = length_of(draft);
  return {
    tank: in_tank,
    at: at ?? corrects?.at ?? room.value.now(),
    change,
    species,
    count: count_of(draft),
    ...(length_cm === undefined ? {} : { length_cm }),
    ...(raw.note?.trim() ? { note: raw.note.trim() } : {}),
    ...(change === "death" && cause.trim()
      ? { cause: cause.trim(), cause_code: code_of(CAUSES, cause_named, cause.trim()) }
      : {}),
    ...(change.startsWith("move") && other_tank ? { other_tank } : {}),
  };
}

/** What can have happened; a record of another kind of change keeps its own. @param {StockChange | null} corrects */
const choices_for = (corrects) =>
  record_field("stock_change", "change")
    .choices.filter(({ value }) => CHANGES.includes(value) || value === corrects?.change)
    .map(({ value, label }) => ({ value, label: value === "move_out" ? t("stock.moved") : label }));

/**
 * Once it is known what happened: which animals, how many, where to, of what cause, how long, when.
 * @param {{id: string, form: ReturnType<typeof use_record_form<Draft>>, in_tank: string, corrects: StockChange | null,
 * then: string}} props
 */
function Details({ id, form, in_tank, corrects, then }) {
  const draft = form.draft.value;
  const { change, species, other_tank, cause, at, tank, raw } = draft;
  const { animals, gone } = stock_of(of_tank(all("stock_change"), id), now.value);
  const here = animals.find((animal) => animal.species === species);
  const count = count_of(draft);
  const too_many = OUT.includes(change) && !corrects && species && count > (here?.count ?? 0);
  const set = form.set;
  return html`
    ${change === "death" && html`<p class="section">${t("stock.sorry")}</p>`}
    <section class="section"><h2>${t("life.which_species")}</h2>
      <${KindPicker} rows="species" near=${near_kinds(OUT.includes(change), animals, gone)} value=${species}
        then=${then} on_pick=${(/** @type {string} */ key) => set({ species: key, length: "" })} /></section>
    <section class="section"><h2>${t("stock.how_many")}</h2>
      <${Amount} label=${t("stock.how_many")} unit="" value=${count} typed=${draft.count || null} step=${1}
        least=${1} most=${record_field("stock_change", "count").max}
        on_type=${(/** @type {string} */ text) => set({ count: text })} />
      ${too_many && html`<p class="soft center">${t("stock.more_than_known", { count: here?.count ?? 0 })}</p>`}
      </section>
    ${
      change === "move_out" &&
      html`<${TankTiles} tank=${in_tank} value=${other_tank} label=${t("life.to_which_tank")}
      on_pick=${(/** @type {string} */ picked) => set({ other_tank: picked })} />`
    }
    ${
      change === "death" &&
      html`<${Cause} value=${cause} on_value=${(/** @type {string} */ text) => set({ cause: text })} />`
    }
    ${species && html`<${Length} draft=${draft} set=${set} known_cm=${here?.length_cm ?? adult_cm(species)} />`}
    <${Moment} at=${at} was=${corrects?.at}
      on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
    ${
      corrects &&
      html`<${WrongTank} was=${id} tank=${tank} on_pick=${(/** @type {string} */ picked) => set({ tank: picked })} />`
    }
    <${NoteToo} kind="stock_change" raw=${raw} on_raw=${(/** @type {Draft["raw"]} */ next) => set({ raw: next })}
      errors=${form.errors.value} />`;
}

/** How long a species grows, as far as it is known. @param {string} species @returns {number | undefined} */
const adult_cm = (species) =>
  table("species").rows[species]?.length_cm ?? all("own_species").find(({ name }) => name === species)?.length_cm;

/** @param {{draft: Draft, set: (fields: Partial<Draft>) => void, known_cm: number | undefined}} props */
function Length({ draft, set, known_cm = COMMON_CM }) {
  const length_cm = length_of(draft);
  const ruler = shown_in("cm");
  const { min, max } = record_field("stock_change", "length_cm");
  return html`
    <details class="more section" open=${length_cm !== undefined}>
      <summary>${
        length_cm === undefined
          ? t("stock.length_open")
          : t("stock.length_is", { length: measured(length_cm, "cm", 1) })
      }</summary>
      <p class="soft">${t("stock.length_why")}</p>
      <${Amount} label=${t("stock.length")} unit=${ruler.label} value=${ruler.show(length_cm ?? known_cm)}
        typed=${ruler.text(draft.length, draft.length_unit) || null} step=${ruler.unit === "cm" ? 0.5 : 0.25}
        least=${ruler.show(min)} most=${ruler.show(max)}
        on_type=${(/** @type {string} */ text) => set({ length: text, length_unit: ruler.unit })} />
      ${
        length_cm === undefined &&
        html`<p class="center"><button class="quiet" type="button"
        onClick=${tap(() => set({ length: String(known_cm), length_unit: "cm" }))}>
        ${t("stock.length_take", { length: measured(known_cm, "cm", 1) })}</button></p>`
      }
    </details>`;
}

/**
 * The kinds with a tile: those that are here, then those that left (for what leaves) or those recorded last in the room
 * (for what comes).
 * @param {boolean} leaving
 * @param {{species: string}[]} animals
 * @param {{species: string}[]} gone
 */
function near_kinds(leaving, animals, gone) {
  const here = animals.map(({ species }) => species);
  const more = leaving ? gone.map(({ species }) => species) : recent_kinds(all("stock_change"), NEAR);
  return [...new Set([...here, ...more])].slice(0, NEAR);
}

/** @param {{value: string, on_value: (text: string) => void}} props */
function Cause({ value, on_value }) {
  const own = useSignal(false);
  const known = CAUSES.map(cause_named);
  const typed = own.value || (value !== "" && !known.includes(value));
  const set = (/** @type {boolean} */ in_own_words, /** @type {string} */ text) => {
    own.value = in_own_words;
    on_value(text);
  };
  return html`
    <section class="section"><h2>${t("stock.cause")}</h2>
      <div class="tiles two" role="group" aria-label=${t("stock.cause")}>
        ${known.map(
          (text) => html`<button type="button" key=${text} aria-pressed=${!own.value && value === text}
          onClick=${tap(() => set(false, value === text ? "" : text))}>${text}</button>`,
        )}
        <button type="button" aria-pressed=${typed} onClick=${tap(() => set(true, ""))}>
          ${t("life.own_words")}</button>
      </div>
      ${
        typed &&
        html`<div class="section"><${Fields} specs=${[record_field("stock_change", "cause")]}
        raw=${{ cause: value }} errors=${[]}
        on_raw=${(/** @type {Draft["raw"]} */ raw) => on_value(raw.cause)} /></div>`
      }
    </section>`;
}

/** @param {string} change @returns {string[]} */
function cautions(change) {
  const release = caution("compatibility", "release");
  if (change === "death") return [t("stock.caution_vet"), t("stock.caution_hands"), release];
  if (change === "arrival") return [caution("stocking_limit", "small_lots"), caution("compatibility", "quarantine")];
  return change === "removal" ? [release] : [];
}
