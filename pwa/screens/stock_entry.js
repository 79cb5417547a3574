/** One entry about animals: arrived, born, died, left or moved; which, how many, how long, of what cause. */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { recent_kinds, stock_of } from "../advice/life/stock.js";
import { table } from "../calc/tables.js";
import { caution, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
import { Amount } from "../ui/amount.js";
import { use_draft } from "../ui/state/draft.js";
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
  record_life,
  tank_name,
} from "../ui/life_entry.js";
import { Stands } from "../ui/life_log.js";
import { counted } from "../ui/words/life_said.js";
import { all, get, now, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { tap } from "../ui/state/tap.js";
import { CAUSES, cause_named, cause_said, code_of } from "../ui/words/tile_words.js";

const CHANGES = ["arrival", "birth", "death", "removal", "move_out"];
const OUT = ["death", "removal", "move_out"];
/** So many kinds have their tile. */
const NEAR = 7;
/** Where nothing is known of a kind, the ruler starts at a small fish (assumption). */
const COMMON_CM = 3;

/** @param {{id: string, query: URLSearchParams}} props */
export function StockEntry({ id, query }) {
  const tank = get("tank", id);
  const corrects = get("stock_change", query.get("corrects") ?? undefined);
  const name = `stock.${id}.${corrects?.id ?? [query.get("change"), query.get("species")].join(".")}`;
  const kept = use_draft(name, () =>
    corrects
      ? drawn_from(corrects)
      : {
          change: query.get("change") ?? "",
          species: query.get("species") ?? "",
          count: "",
          length: "",
          length_unit: "cm",
          cause: "",
          other_tank: "",
          at: undefined,
          tank: "",
          raw: {},
        },
  );
  const errors = useSignal(/** @type {any[]} */ ([]));
  const problem = useSignal("");
  const up = query.get("then") ?? (tank ? `/tank/${id}/stock` : "/");
  if (!tank || (query.get("corrects") && !corrects)) return html`<${Missing} up=${up} />`;

  const { change, species, other_tank, cause, at, raw } = kept.value;
  const set = (/** @type {any} */ more) => ((errors.value = []), (kept.value = { ...kept.value, ...more }));
  const { animals, gone } = stock_of(of_tank(all("stock_change"), id), now.value);
  const here = animals.find((one) => one.species === species);
  const near = near_kinds(OUT.includes(change), animals, gone);
  const count = kept.value.count === "" ? 1 : Number(kept.value.count);
  const known_cm =
    here?.length_cm ??
    table("species").rows[species]?.length_cm ??
    all("own_species").find((one) => one.name === species)?.length_cm;
  const ruler = shown_in("cm");
  const length_cm =
    kept.value.length === "" ? undefined : ruler.hold(Number(kept.value.length), kept.value.length_unit);
  const set_length = (/** @type {string} */ text) => set({ length: text, length_unit: ruler.unit });
  const choices = record_field("stock_change", "change").choices.map((/** @type {any} */ one) => ({
    ...one,
    label: has_move(one.value) ? t("stock.moved") : one.label,
  }));
  const offered = choices.filter(
    (/** @type {any} */ one) => CHANGES.includes(one.value) || one.value === corrects?.change,
  );
  const missing = change && OUT.includes(change) && !corrects ? Math.max(0, count - (here?.count ?? 0)) : 0;
  const its_tank = kept.value.tank || id;
  const ready =
    change && species && (change !== "move_out" || (other_tank && other_tank !== its_tank)) && !no_moment(at);
  const what = species ? counted(species, count) : "";

  const save = async () => {
    const fields = {
      tank: its_tank,
      at: at ?? corrects?.at ?? room.value.now(),
      change,
      species,
      count,
      ...(length_cm === undefined ? {} : { length_cm }),
      ...(raw.note?.trim() ? { note: raw.note.trim() } : {}),
      ...(change === "death" && cause.trim()
        ? { cause: cause.trim(), cause_code: code_of(CAUSES, cause_named, cause.trim()) }
        : {}),
      ...(change.startsWith("move") && other_tank ? { other_tank } : {}),
    };
    const said = t(`stock.saved_${change}`, { what, tank: tank.name, other: tank_name(other_tank) });
    const no = await record_life("stock_change", fields, corrects, { draft: name, said, to: up });
    errors.value = no.errors ?? [];
    problem.value = no.problem ?? "";
  };
  const then = `/tank/${id}/stock/new?${query}`;
  return html`
    <${Page} title=${t(corrects ? "life.correct" : "stock.entry")} up=${up} aside=${html`<span class="soft">${tank.name}
      </span>`}
      act=${
        room.value.may("stock_change") &&
        html`<button class="main" type="button" disabled=${!ready}
        onClick=${tap(() => void save())}>${ready ? t(`stock.do_${change}`, { what }) : t("life.not_yet")}</button>`
      }>
      <${Stands} one=${corrects} />
      <${Failed} text=${problem.value} />
      <${ChoiceTiles} label=${t("life.what_happened")} choices=${offered} value=${change}
        on_pick=${(/** @type {string} */ value) => set({ change: value })} />
      ${
        change &&
        html`
        ${change === "death" && html`<p class="section">${t("stock.sorry")}</p>`}
        <section class="section"><h2>${t("life.which_species")}</h2>
          <${KindPicker} rows="species" near=${near} value=${species} then=${then}
            on_pick=${(/** @type {string} */ key) => set({ species: key, length: "" })} /></section>
        <section class="section"><h2>${t("stock.how_many")}</h2>
          <${Amount} label=${t("stock.how_many")} unit="" value=${count} typed=${kept.value.count || null} step=${1}
            least=${1} most=${record_field("stock_change", "count").max}
            on_type=${(/** @type {string} */ text) => set({ count: text })} />
          ${
            missing > 0 &&
            species &&
            html`<p class="soft center">
            ${t("stock.more_than_known", { count: here?.count ?? 0 })}</p>`
          }</section>
        ${
          change === "move_out" &&
          html`<${TankTiles} tank=${its_tank} value=${other_tank}
          label=${t("life.to_which_tank")} on_pick=${(/** @type {string} */ to) => set({ other_tank: to })} />`
        }
        ${
          change === "death" &&
          html`<${Cause} value=${cause} on_value=${(/** @type {string} */ text) => set({ cause: text })} />`
        }
        ${
          species &&
          html`
          <details class="more section" open=${length_cm !== undefined}>
            <summary>${
              length_cm === undefined
                ? t("stock.length_open")
                : t("stock.length_is", { length: measured(length_cm, "cm", 1) })
            }</summary>
            <p class="soft">${t("stock.length_why")}</p>
            <${Amount} label=${t("stock.length")} unit=${ruler.label}
              value=${ruler.show(length_cm ?? known_cm ?? COMMON_CM)}
              typed=${ruler.text(kept.value.length, kept.value.length_unit) || null}
              step=${ruler.unit === "cm" ? 0.5 : 0.25} least=${ruler.show(record_field("stock_change", "length_cm").min)}
              most=${ruler.show(record_field("stock_change", "length_cm").max)} on_type=${set_length} />
            ${
              length_cm === undefined &&
              html`<p class="center"><button class="quiet" type="button"
              onClick=${tap(() => set({ length: String(known_cm ?? COMMON_CM), length_unit: "cm" }))}>
              ${t("stock.length_take", { length: measured(known_cm ?? COMMON_CM, "cm", 1) })}</button></p>`
            }
          </details>`
        }
        <${Moment} at=${at} was=${corrects?.at} on_at=${(/** @type {string | undefined} */ moment) =>
          set({ at: moment })} />
        ${
          corrects &&
          html`<${WrongTank} was=${id} tank=${kept.value.tank}
          on_pick=${(/** @type {string} */ tank) => set({ tank })} />`
        }
        <${NoteToo} kind="stock_change" raw=${raw} on_raw=${(/** @type {any} */ next) => set({ raw: next })}
          errors=${errors.value} />`
      }
      <${Errors} kind="stock_change" errors=${errors.value} />
      ${cautions(change).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
      ${change === "arrival" && html`<p><a class="quiet" href="/bench/acclimation">${t("stock.acclimate")}</a></p>`}
    <//>`;
}

/** @param {string} change */
const has_move = (change) => change === "move_out";

/** What is typed of the record that is corrected. @param {any} one */
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

/**
 * For what goes the kinds that are here; for what comes those too, and those written down last in the room.
 * @param {boolean} going
 * @param {any[]} animals
 * @param {any[]} gone
 */
function near_kinds(going, animals, gone) {
  const here = animals.map((one) => one.species);
  const more = going ? gone.map((one) => one.species) : recent_kinds(all("stock_change"), NEAR);
  return [...new Set([...here, ...more])].slice(0, NEAR);
}

/** @param {{value: string, on_value: (text: string) => void}} props */
function Cause({ value, on_value }) {
  const own = useSignal(false);
  const known = CAUSES.map(cause_named);
  const typed = own.value || (value !== "" && !known.includes(value));
  return html`
    <section class="section"><h2>${t("stock.cause")}</h2>
      <div class="tiles two" role="group" aria-label=${t("stock.cause")}>
        ${known.map(
          (text) => html`<button type="button" key=${text} aria-pressed=${!own.value && value === text}
          onClick=${tap(() => ((own.value = false), on_value(value === text ? "" : text)))}>${text}</button>`,
        )}
        <button type="button" aria-pressed=${typed} onClick=${tap(() => ((own.value = true), on_value("")))}>
          ${t("life.own_words")}</button>
      </div>
      ${
        typed &&
        html`<div class="section"><${Fields} specs=${[record_field("stock_change", "cause")]}
        raw=${{ cause: value }} on_raw=${(/** @type {any} */ raw) => on_value(raw.cause)} errors=${[]} /></div>`
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
