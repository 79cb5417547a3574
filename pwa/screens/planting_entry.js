/** One entry about plants: planted, trimmed, taken out or moved; which ones, and how much in the keeper's words. */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { plants_of } from "../advice/life/plants.js";
import { recent_kinds } from "../advice/life/stock.js";
import { caution, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
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
import { plant_said } from "../ui/words/life_said.js";
import { all, get, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";
import { AMOUNTS, amount_named, amount_said, code_of } from "../ui/words/tile_words.js";

const CHANGES = ["plant", "trim", "remove", "move_out"];
const OUT = ["trim", "remove", "move_out"];
/** How many kinds have a tile. */
const NEAR = 7;

/** @param {{id: string, query: URLSearchParams}} props */
export function PlantingEntry({ id, query }) {
  const tank = get("tank", id);
  const corrects = get("planting", query.get("corrects") ?? undefined);
  const name = `planting.${id}.${corrects?.id ?? [query.get("change"), query.get("species")].join(".")}`;
  const form = use_record_form({ name, first: () => (corrects ? drawn_from(corrects) : empty(query)) });
  const up = query.get("then") ?? (tank ? `/tank/${id}/plants` : "/");
  if (!tank || (query.get("corrects") && !corrects)) return html`<${Missing} up=${up} />`;

  const { change, species, amount, other_tank, at } = form.draft.value;
  const in_tank = form.draft.value.tank || id;
  const moves = change !== "move_out" || (other_tank && other_tank !== in_tank);
  const ready = change && species && moves && !no_moment(at);
  const what = species ? plant_said(species, amount.trim()) : "";
  const save = () =>
    form.save(() => ({
      writes: entry_writes("planting", fields_of(form.draft.value, in_tank, corrects), corrects),
      said: t(`plants.saved_${change}`, { what, tank: tank.name, other: tank_name(other_tank) }),
      to: up,
    }));
  return html`
    <${Page} title=${t(corrects ? "life.correct" : "plants.entry")} up=${up}
      aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        room.value.may("planting") &&
        html`<button class="main" type="button" disabled=${!ready}
        onClick=${tap(() => void save())}>${ready ? t(`plants.do_${change}`, { what }) : t("life.not_yet")}</button>`
      }>
      <${Stands} one=${corrects} />
      <${Failed} text=${form.problem.value} />
      <${ChoiceTiles} label=${t("life.what_happened")} choices=${choices_for(corrects)} value=${change}
        on_pick=${(/** @type {string} */ value) => form.set({ change: value })} />
      ${
        change &&
        html`<${Details} id=${id} form=${form} in_tank=${in_tank} corrects=${corrects}
        then=${`/tank/${id}/plants/new?${query}`} />`
      }
      <${Errors} kind="planting" errors=${form.errors.value} />
      ${
        ["remove", "trim"].includes(change) &&
        html`<p class="caution small">${caution("compatibility", "release")}
        </p>`
      }
      ${change === "plant" && html`<p class="caution small">${t("plants.caution_new")}</p>`}
      ${change && html`<p class="caution small">${t("life.caution_unplug")}</p>`}
    <//>`;
}

/** @param {URLSearchParams} query */
const empty = (query) => ({
  change: query.get("change") ?? "",
  species: query.get("species") ?? "",
  amount: "",
  other_tank: "",
  at: /** @type {string | undefined} */ (undefined),
  /** Where a correction puts it; "" while it stays. */
  tank: "",
  raw: /** @type {import("../ui/contract/form.js").Raw} */ ({}),
});

/** @typedef {ReturnType<typeof empty>} Draft */
/** @typedef {import("../types/views.js").View<"planting">} Planting */

/** What is typed of the record that is corrected. @param {Planting} record @returns {Draft} */
const drawn_from = ({ change, species, other_tank, note, ...how }) => ({
  change,
  species,
  amount: amount_said(how),
  other_tank: other_tank ?? "",
  at: undefined,
  tank: "",
  raw: { note },
});

/**
 * The fields of the record.
 * @param {Draft} draft
 * @param {string} in_tank
 * @param {Planting | null} corrects
 */
function fields_of({ change, species, amount, other_tank, at, raw }, in_tank, corrects) {
  return {
    tank: in_tank,
    at: at ?? corrects?.at ?? room.value.now(),
    change,
    species,
    ...(amount.trim() ? amount_fields(amount.trim(), corrects) : {}),
    ...(raw.note?.trim() ? { note: raw.note.trim() } : {}),
    ...(change.startsWith("move") && other_tank ? { other_tank } : {}),
  };
}

/** What can have happened; a record of another kind of change keeps its own. @param {Planting | null} corrects */
const choices_for = (corrects) =>
  record_field("planting", "change")
    .choices.filter(({ value }) => CHANGES.includes(value) || value === corrects?.change)
    .map(({ value, label }) => ({ value, label: value === "move_out" ? t("stock.moved") : label }));

/**
 * Once it is known what happened: which plants, where to, how much, when.
 * @param {{id: string, form: ReturnType<typeof use_record_form<Draft>>, in_tank: string, corrects: Planting | null,
 * then: string}} props
 */
function Details({ id, form, in_tank, corrects, then }) {
  const { change, species, amount, other_tank, at, tank, raw } = form.draft.value;
  const set = form.set;
  return html`
    <section class="section"><h2>${t("life.which_plants")}</h2>
      <${KindPicker} rows="plants" near=${near_kinds(id, change)} value=${species} then=${then}
        on_pick=${(/** @type {string} */ key) => set({ species: key })} /></section>
    ${
      change === "move_out" &&
      html`<${TankTiles} tank=${in_tank} value=${other_tank} label=${t("life.to_which_tank")}
      on_pick=${(/** @type {string} */ picked) => set({ other_tank: picked })} />`
    }
    <${HowMuch} value=${amount} change=${change}
      on_value=${(/** @type {string} */ text) => set({ amount: text })} />
    <${Moment} at=${at} was=${corrects?.at}
      on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
    ${
      corrects &&
      html`<${WrongTank} was=${id} tank=${tank} on_pick=${(/** @type {string} */ picked) => set({ tank: picked })} />`
    }
    <${NoteToo} kind="planting" raw=${raw} on_raw=${(/** @type {Draft["raw"]} */ next) => set({ raw: next })}
      errors=${form.errors.value} />`;
}

/**
 * The kinds with a tile: those that grow here, then those that are gone (for what leaves) or those recorded last in the
 * room (for what comes).
 * @param {string} id of the tank
 * @param {string} change
 */
function near_kinds(id, change) {
  const plantings = all("planting");
  const { growing, gone } = plants_of(of_tank(plantings, id));
  const here = growing.map(({ species }) => species);
  const more = OUT.includes(change) ? gone.map(({ species }) => species) : recent_kinds(plantings, NEAR);
  return [...new Set([...here, ...more])].slice(0, NEAR);
}

/**
 * An amount with what its words stand for: the code of a tile, or the portions that the corrected record counts.
 * @param {string} amount
 * @param {Planting | null} corrects
 */
function amount_fields(amount, corrects) {
  const amount_code = code_of(AMOUNTS, amount_named, amount);
  const portions = corrects?.portions && amount_said(corrects) === amount ? corrects.portions : undefined;
  return { amount, amount_code, portions };
}

/** @param {{value: string, change: string, on_value: (text: string) => void}} props */
function HowMuch({ value, change, on_value }) {
  const own = useSignal(false);
  const known = AMOUNTS.map(amount_named);
  const typed = own.value || (value !== "" && !known.includes(value));
  const none = ["remove", "move_out"].includes(change) ? "plants.all_of_it" : "plants.no_amount";
  const set = (/** @type {boolean} */ in_own_words, /** @type {string} */ text) => {
    own.value = in_own_words;
    on_value(text);
  };
  return html`
    <section class="section"><h2>${t("plants.how_much")}</h2>
      <div class="tiles two" role="group" aria-label=${t("plants.how_much")}>
        <button type="button" aria-pressed=${!typed && value === ""}
          onClick=${tap(() => set(false, ""))}>${t(none)}</button>
        ${known.map(
          (text) => html`<button type="button" key=${text} aria-pressed=${!own.value && value === text}
          onClick=${tap(() => set(false, text))}>${text}</button>`,
        )}
        <button type="button" aria-pressed=${typed} onClick=${tap(() => set(true, ""))}>
          ${t("life.own_words")}</button>
      </div>
      ${
        typed &&
        html`<div class="section"><${Fields} specs=${[record_field("planting", "amount")]} raw=${{ amount: value }}
        on_raw=${(/** @type {Draft["raw"]} */ raw) => on_value(raw.amount)} errors=${[]} /></div>`
      }
    </section>`;
}
