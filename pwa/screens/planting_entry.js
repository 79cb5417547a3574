/** One entry about plants: planted, trimmed, taken out or moved; which, and how much in the keeper's words. */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { plants_of } from "../advice/life/plants.js";
import { recent_kinds } from "../advice/life/stock.js";
import { caution, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
import { use_draft } from "../ui/state/draft.js";
import { Fields } from "../ui/contract/form.js";
import { KindPicker } from "../ui/kind_picker.js";
import {
  ChoiceTiles,
  Errors,
  Failed,
  NoteToo,
  TankTiles,
  WrongTank,
  record_life,
  tank_name,
} from "../ui/life_entry.js";
import { Stands } from "../ui/life_log.js";
import { plant_said } from "../ui/words/life_said.js";
import { all, get, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { tap } from "../ui/state/tap.js";
import { AMOUNTS, amount_named, amount_said, code_of } from "../ui/words/tile_words.js";

const CHANGES = ["plant", "trim", "remove", "move_out"];
const OUT = ["trim", "remove", "move_out"];
const NEAR = 7;

/** @param {{id: string, query: URLSearchParams}} props */
export function PlantingEntry({ id, query }) {
  const tank = get("tank", id);
  const corrects = get("planting", query.get("corrects") ?? undefined);
  const name = `planting.${id}.${corrects?.id ?? [query.get("change"), query.get("species")].join(".")}`;
  const kept = use_draft(name, () =>
    corrects
      ? drawn_from(corrects)
      : {
          change: query.get("change") ?? "",
          species: query.get("species") ?? "",
          amount: "",
          other_tank: "",
          at: undefined,
          tank: "",
          raw: {},
        },
  );
  const errors = useSignal(/** @type {any[]} */ ([]));
  const problem = useSignal("");
  const up = query.get("then") ?? (tank ? `/tank/${id}/plants` : "/");
  if (!tank || (query.get("corrects") && !corrects)) return html`<${Missing} up=${up} />`;

  const { change, species, amount, other_tank, at, raw } = kept.value;
  const set = (/** @type {any} */ more) => ((errors.value = []), (kept.value = { ...kept.value, ...more }));
  const plantings = all("planting");
  const { growing, gone } = plants_of(of_tank(plantings, id));
  const here = growing.map((one) => one.species);
  const more = OUT.includes(change) ? gone.map((one) => one.species) : recent_kinds(plantings, NEAR);
  const near = [...new Set([...here, ...more])].slice(0, NEAR);
  const choices = record_field("planting", "change").choices.map((/** @type {any} */ one) =>
    one.value === "move_out" ? { ...one, label: t("stock.moved") } : one,
  );
  const offered = choices.filter(
    (/** @type {any} */ one) => CHANGES.includes(one.value) || one.value === corrects?.change,
  );
  const its_tank = kept.value.tank || id;
  const ready =
    change && species && (change !== "move_out" || (other_tank && other_tank !== its_tank)) && !no_moment(at);
  const what = species ? plant_said(species, amount.trim()) : "";

  const save = async () => {
    const fields = {
      tank: its_tank,
      at: at ?? corrects?.at ?? room.value.now(),
      change,
      species,
      ...(amount.trim() ? amount_fields(amount.trim(), corrects) : {}),
      ...(raw.note?.trim() ? { note: raw.note.trim() } : {}),
      ...(change.startsWith("move") && other_tank ? { other_tank } : {}),
    };
    const said = t(`plants.saved_${change}`, { what, tank: tank.name, other: tank_name(other_tank) });
    const no = await record_life("planting", fields, corrects, { draft: name, said, to: up });
    errors.value = no.errors ?? [];
    problem.value = no.problem ?? "";
  };
  return html`
    <${Page} title=${t(corrects ? "life.correct" : "plants.entry")} up=${up}
      aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        room.value.may("planting") &&
        html`<button class="main" type="button" disabled=${!ready}
        onClick=${tap(() => void save())}>${ready ? t(`plants.do_${change}`, { what }) : t("life.not_yet")}</button>`
      }>
      <${Stands} one=${corrects} />
      <${Failed} text=${problem.value} />
      <${ChoiceTiles} label=${t("life.what_happened")} choices=${offered} value=${change}
        on_pick=${(/** @type {string} */ value) => set({ change: value })} />
      ${
        change &&
        html`
        <section class="section"><h2>${t("life.which_plants")}</h2>
          <${KindPicker} rows="plants" near=${near} value=${species} then=${`/tank/${id}/plants/new?${query}`}
            on_pick=${(/** @type {string} */ key) => set({ species: key })} /></section>
        ${
          change === "move_out" &&
          html`<${TankTiles} tank=${its_tank} value=${other_tank}
          label=${t("life.to_which_tank")} on_pick=${(/** @type {string} */ to) => set({ other_tank: to })} />`
        }
        <${HowMuch} value=${amount} change=${change} on_value=${(/** @type {string} */ text) => set({ amount: text })}
          />
        <${Moment} at=${at} was=${corrects?.at} on_at=${(/** @type {string | undefined} */ moment) =>
          set({ at: moment })} />
        ${
          corrects &&
          html`<${WrongTank} was=${id} tank=${kept.value.tank}
          on_pick=${(/** @type {string} */ tank) => set({ tank })} />`
        }
        <${NoteToo} kind="planting" raw=${raw} on_raw=${(/** @type {any} */ next) => set({ raw: next })}
          errors=${errors.value} />`
      }
      <${Errors} kind="planting" errors=${errors.value} />
      ${
        ["remove", "trim"].includes(change) &&
        html`<p class="caution small">${caution("compatibility", "release")}
        </p>`
      }
      ${change === "plant" && html`<p class="caution small">${t("plants.caution_new")}</p>`}
      ${change && html`<p class="caution small">${t("life.caution_unplug")}</p>`}
    <//>`;
}

/** What is typed of the record that is corrected. @param {any} one */
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
 * An amount, with what stands behind its words: its tile, or the portions that the corrected record counts.
 * @param {string} amount
 * @param {any} corrects
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
  return html`
    <section class="section"><h2>${t("plants.how_much")}</h2>
      <div class="tiles two" role="group" aria-label=${t("plants.how_much")}>
        <button type="button" aria-pressed=${!typed && value === ""}
          onClick=${tap(() => ((own.value = false), on_value("")))}>${t(none)}</button>
        ${known.map(
          (text) => html`<button type="button" key=${text} aria-pressed=${!own.value && value === text}
          onClick=${tap(() => ((own.value = false), on_value(text)))}>${text}</button>`,
        )}
        <button type="button" aria-pressed=${typed} onClick=${tap(() => ((own.value = true), on_value("")))}>
          ${t("life.own_words")}</button>
      </div>
      ${
        typed &&
        html`<div class="section"><${Fields} specs=${[record_field("planting", "amount")]} raw=${{ amount: value }}
        on_raw=${(/** @type {any} */ raw) => on_value(raw.amount)} errors=${[]} /></div>`
      }
    </section>`;
}
