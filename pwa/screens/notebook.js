/**
 * A notebook brought along: a file or pasted cells become readings, changes and meals. Columns and tanks are shown,
 * doubtful dates and decimals are asked about, and nothing is written before the keeper agrees.
 */
import { html, useMemo, useSignal } from "../vendor/preact.js";
import { COLUMNS, WITH_BASIS, cells_of, date_order, decimal_sign, figures_in } from "../advice/notebook.js";
import { own_kind, own_tanks_named, read_own } from "../advice/notebook.js";
import { is_parameter, read_rows, recognised, tank_named, tanks_named, units_said } from "../advice/notebook.js";
import { MOST_ROWS, cells, text_of } from "../data/notebook_file.js";
import { short, t } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { use_draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { all, get, now, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { last_import, new_records, new_tank_id, take_back, write_notebook } from "../ui/notebook_write.js";
import { Pick } from "../ui/pick.js";
import { tap } from "../ui/state/tap.js";
import { LookingOnly } from "../ui/view_only.js";
import { parameter_name } from "../ui/words/figures.js";

/** @import { Choices, Column, Made, Wrong } from "../advice/notebook.js" */
/** @import { RecordKind } from "../types/records.js" */

/** How many errors and entries are shown. */
const SHOWN = 30;
/** Names of tanks in the file that are to be left out or made. */
const [LEAVE_OUT, MAKE] = ["", "make"];

/**
 * @typedef {object} Typed what the keeper typed or chose; what is left out is as the file says
 * @property {string} text
 * @property {Partial<Record<number, Column>>} [columns]
 * @property {string} [dates]
 * @property {string} [decimals]
 * @property {Choices["basis"]} [basis]
 * @property {Choices["volume"]} [volume]
 * @property {Choices["warmth"]} [warmth]
 * @property {Record<string, string>} [tanks]
 * @property {Record<string, string>} [litres] of tanks to be made
 * @property {string} [one_tank]
 */

export function Notebook() {
  const typed = use_draft("notebook", () => /** @type {Typed} */ ({ text: "" }));
  const { problem, busy, ask } = use_ask();
  const set = (/** @type {Partial<Typed>} */ part) => (typed.value = { ...typed.value, ...part });
  const table = useMemo(() => cells(typed.value.text), [typed.value.text]);
  if (!room.value.may("reading") || !room.value.may("tank"))
    return html`<${LookingOnly} title=${t("notebook.title")} up="/room" />`;
  const read = read_notebook(table, typed.value);
  const ready = read.open.length === 0 && read.fresh.length > 0;
  const bring = () =>
    ask(async () => {
      await write_notebook(read.tanks, read.fresh);
      typed.value = { text: "" };
    });
  return html`
    <${Page} title=${t("notebook.title")} up="/room" place="room" aside=${html`<span></span>`}
      act=${
        table.rows.length > 0 &&
        html`<button class="main" type="button" disabled=${!ready || busy.value} onClick=${tap(() => void bring())}>
        ${t("notebook.bring", { count: read.fresh.length })}</button>`
      }>
      <p class="sentence">${t("notebook.why")}</p>
      <${Source} text=${typed.value.text} on_text=${(/** @type {string} */ text) => (typed.value = { text })} />
      <${Problem} text=${problem.value} />
      <${TakeBack} />
      ${table.rows.length > 0 && html`<${Questions} table=${table} read=${read} typed=${typed.value} set=${set} />`}
      ${table.rows.length > 0 && html`<${Preview} read=${read} />`}
    <//>`;
}

/** @typedef {{header: string[], rows: string[][]}} Table */
/** @typedef {ReturnType<typeof read_notebook>} Read */

/**
 * The table as records, by what the file says and what the keeper chose.
 * @param {Table} table @param {Typed} typed
 */
function read_notebook({ header, rows }, typed) {
  const own = own_kind(header);
  if (own) return read_own_table(own, header, rows, typed);
  const columns = recognised(header).map((column, i) => typed.columns?.[i] ?? column);
  const said = units_said(header, columns);
  const proved = {
    dates: date_order(cells_of(rows, columns, "date")),
    decimals: decimal_sign(figures_in(rows, columns)),
  };
  const dates = /** @type {Choices["dates"]} */ (proved.dates ?? (typed.dates || null));
  const decimals = /** @type {Choices["decimals"]} */ (proved.decimals ?? (typed.decimals || null));
  const basis = { ...said.basis, ...typed.basis };
  const named = tanks_named(rows, columns);
  const tanks = tanks_of(named, typed);
  const asked = WITH_BASIS.filter((parameter) => columns.includes(parameter));
  const choices = {
    ...{ columns, dates: dates ?? "ymd", decimals: decimals ?? "point", basis },
    ...{ volume: typed.volume ?? said.volume, warmth: typed.warmth ?? said.warmth, tanks: tanks.ids },
    one_tank: typed.one_tank ?? (all("tank").length === 1 ? all("tank")[0].id : ""),
  };
  const open = [
    ...(rows.length > MOST_ROWS ? ["too_many"] : []),
    ...(columns.includes("date") ? [] : ["no_date"]),
    ...(columns.some((one) => is_parameter(one) || ["litres", "percent", "feed_g"].includes(one))
      ? []
      : ["no_figures"]),
    ...(dates ? [] : ["dates"]),
    ...(decimals ? [] : ["decimals"]),
    ...asked.filter((parameter) => !basis[parameter]).map(() => "basis"),
    ...(named.length === 0 && !choices.one_tank ? ["one_tank"] : []),
    ...(tanks.incomplete ? ["litres"] : []),
  ];
  const { made, wrong } = open.length ? { made: [], wrong: [] } : read_rows(rows, choices, tanks.all, now.value);
  const fresh = new_records(made);
  return { own: false, columns, choices, proved, named, asked, open, made, wrong, fresh, tanks: tanks.made };
}

/**
 * A table that this app wrote: only its tanks may be unknown.
 * @param {Made["kind"]} kind @param {string[]} header @param {string[][]} rows @param {Typed} typed
 */
function read_own_table(kind, header, rows, typed) {
  const named = own_tanks_named(header, rows, all("tank"));
  const tanks = tanks_of(named, typed);
  const open = [...(rows.length > MOST_ROWS ? ["too_many"] : []), ...(tanks.incomplete ? ["litres"] : [])];
  const here = (/** @type {string} */ other, /** @type {string} */ id) =>
    get(/** @type {RecordKind} */ (other), id) !== null;
  const { made, wrong } = open.length
    ? { made: [], wrong: [] }
    : read_own(kind, header, rows, tanks.ids, tanks.all, now.value, here);
  return { own: true, named, open, made, wrong, fresh: new_records(made), tanks: tanks.made, ...NOTHING_TO_ASK };
}
/** Of our own table nothing is doubtful. */
const NOTHING_TO_ASK = {
  ...{ columns: /** @type {Column[]} */ ([]), asked: /** @type {typeof WITH_BASIS} */ ([]) },
  proved: /** @type {{dates: Choices["dates"], decimals: Choices["decimals"]}} */ ({ dates: "ymd", decimals: "point" }),
  choices: /** @type {Choices} */ ({
    columns: [],
    dates: "ymd",
    decimals: "point",
    basis: {},
    volume: "L",
    warmth: "°C",
    tanks: {},
    one_tank: "",
  }),
};

/**
 * The tanks that the names mean: of this room, or new ones with the litres typed.
 * @param {string[]} named @param {Typed} typed
 */
function tanks_of(named, typed) {
  /** @type {Record<string, string>} */ const ids = {};
  /** @type {{id: string, name: string, water_l: number}[]} */ const made = [];
  let incomplete = false;
  for (const name of named) {
    const chosen = typed.tanks?.[name] ?? (tank_named(name, all("tank")) || MAKE);
    ids[name] = chosen;
    if (chosen !== MAKE) continue;
    const water_l = Number((typed.litres?.[name] ?? "").replace(",", "."));
    const tank = { id: new_tank_id({ name, water_l }), name, water_l };
    ids[name] = tank.id;
    if (water_l > 0) made.push(tank);
    else incomplete = true;
  }
  return { ids, made, incomplete, all: [...all("tank"), ...made] };
}

/** @param {{text: string, on_text: (text: string) => void}} props */
function Source({ text, on_text }) {
  const take = async (/** @type {Event & {currentTarget: HTMLInputElement}} */ { currentTarget: input }) => {
    const file = input.files?.[0];
    input.value = "";
    if (file) on_text(text_of(await file.arrayBuffer()));
  };
  return html`
    <p><label class="quiet tall file">${t("notebook.file")}<input class="unseen" type="file"
      accept=".csv,.tsv,.txt,text/csv,text/plain" onChange=${take} /></label></p>
    <div class="field"><label for="notebook-text">${t("notebook.paste")}</label>
      <textarea id="notebook-text" rows="4" value=${text} onInput=${with_text(on_text)}></textarea></div>`;
}

/** @param {{table: Table, read: Read, typed: Typed, set: (part: Partial<Typed>) => void}} props */
const Questions = ({ table, read, typed, set }) =>
  read.own
    ? html`<section class="section"><p>${t("notebook.own")}</p>
    ${read.named.length > 0 && html`<${Tanks} read=${read} typed=${typed} set=${set} />`}</section>`
    : html`
  <section class="section"><h2>${t("notebook.columns")}</h2>
    ${table.header.map(
      (heading, i) => html`<${Pick} key=${i} label=${heading_said(heading, table.rows[0][i])}
      value=${read.columns[i]} options=${COLUMNS.map((one) => [one, column_said(one)])}
      on_pick=${(/** @type {Column} */ column) => set({ columns: { ...typed.columns, [i]: column } })} />`,
    )}</section>
  <section class="section"><h2>${t("notebook.questions")}</h2>
    ${
      read.proved.dates === null &&
      html`<${Pick} label=${t("notebook.dates", { date: cells_of(table.rows, read.columns, "date")[0] ?? "" })}
      value=${typed.dates ?? ""} options=${["", "dmy", "mdy"].map((one) => [
        one,
        one ? t(`notebook.dates_${one}`) : t("choose"),
      ])}
      on_pick=${(/** @type {string} */ dates) => set({ dates })} />`
    }
    ${
      read.proved.decimals === null &&
      html`<${Pick} label=${t("notebook.decimals")} value=${typed.decimals ?? ""}
      options=${["", "comma", "point"].map((one) => [one, one ? t(`notebook.decimals_${one}`) : t("choose")])}
      on_pick=${(/** @type {string} */ decimals) => set({ decimals })} />`
    }
    ${read.asked.map(
      (
        parameter,
      ) => html`<${Pick} key=${parameter} label=${t("notebook.basis", { parameter: parameter_name(parameter) })}
      value=${read.choices.basis[parameter] ?? ""}
      options=${["", "ion", "n"].map((one) => [one, one ? t(`notebook.basis_${one}`) : t("choose")])}
      on_pick=${(/** @type {"ion" | "n"} */ one) => set({ basis: { ...typed.basis, [parameter]: one } })} />`,
    )}
    ${
      read.columns.includes("litres") &&
      html`<${Pick} label=${t("notebook.volume")} value=${read.choices.volume}
      options=${["L", "US gal", "UK gal"].map((one) => [one, one])}
      on_pick=${(/** @type {Choices["volume"]} */ volume) => set({ volume })} />`
    }
    ${
      read.columns.includes("temperature") &&
      html`<${Pick} label=${t("notebook.warmth")} value=${read.choices.warmth}
      options=${["°C", "°F"].map((one) => [one, one])}
      on_pick=${(/** @type {Choices["warmth"]} */ warmth) => set({ warmth })} />`
    }
    <${Tanks} read=${read} typed=${typed} set=${set} />
  </section>`;

/** A heading with the first cell below it. @param {string} heading @param {string | undefined} cell */
const heading_said = (heading, cell = "") =>
  [heading || "–", cell.trim() && `(${cell.trim()})`].filter(Boolean).join(" ");

/** @param {Column} column */
const column_said = (column) => (is_parameter(column) ? parameter_name(column) : t(`notebook.column_${column}`));

/** @param {{read: Read, typed: Typed, set: (part: Partial<Typed>) => void}} props */
function Tanks({ read, typed, set }) {
  const here = all("tank").map(({ id, name }) => [id, name]);
  if (read.named.length === 0)
    return html`<${Pick} label=${t("notebook.one_tank")} value=${read.choices.one_tank}
      options=${[["", t("choose")], ...here]} on_pick=${(/** @type {string} */ one_tank) => set({ one_tank })} />`;
  return read.named.map((name) => {
    const chosen = typed.tanks?.[name] ?? (tank_named(name, all("tank")) || MAKE);
    return html`<${Pick} key=${name} label=${t("notebook.tank", { name })} value=${chosen}
      options=${[...here, [MAKE, t("notebook.make")], [LEAVE_OUT, t("notebook.leave_out")]]}
      on_pick=${(/** @type {string} */ id) => set({ tanks: { ...typed.tanks, [name]: id } })} />
      ${
        chosen === MAKE &&
        html`<div class="field"><label for=${`litres-${name}`}>${t("notebook.litres", { name })}</label>
        <input id=${`litres-${name}`} inputmode="decimal" value=${typed.litres?.[name] ?? ""}
          onInput=${with_text((text) => set({ litres: { ...typed.litres, [name]: text } }))} /></div>`
      }`;
  });
}

/** What will be written, and what is wrong in which row. @param {{read: Read}} props */
function Preview({ read: { own, open, made, wrong, fresh } }) {
  if (open.length)
    return html`<section class="section" role="status"><h2>${t("notebook.open")}</h2><ul class="why">
      ${[...new Set(open)].map(
        (one) => html`<li key=${one}>${t(`notebook.open_${one}`, { most: MOST_ROWS })}</li>`,
      )}</ul></section>`;
  const below = own ? 0 : fresh.filter(({ fields }) => "steps" in fields).length;
  const of_kind = (/** @type {Made["kind"]} */ kind) => fresh.filter((one) => one.kind === kind).length;
  return html`
    <section class="section" role="status"><h2>${t("notebook.preview")}</h2>
      <p>${t("notebook.counts", {
        ...{ readings: short(of_kind("reading"), 0), changes: short(of_kind("water_change"), 0) },
        meals: short(of_kind("feeding"), 0),
      })}</p>
      ${made.length > fresh.length && html`<p>${t("notebook.here_already", { count: made.length - fresh.length })}</p>`}
      ${below > 0 && html`<p>${t("notebook.below", { count: below })}</p>`}
      ${wrong.length > 0 && html`<${WrongRows} wrong=${wrong} />`}
    </section>`;
}

/** @param {{wrong: Wrong[]}} props */
function WrongRows({ wrong }) {
  const all_shown = useSignal(false);
  const shown = all_shown.value ? wrong : wrong.slice(0, SHOWN);
  return html`
    <p><b>${t("notebook.wrong", { count: wrong.length })}</b></p>
    <ul class="why wrong-rows">${shown.map(
      ({ row, text, column, code, error }, i) =>
        html`<li key=${i}>${t("notebook.row", {
          ...{ row, column: column === "ignore" ? "" : column_said(column), text: text ? `“${text}”` : "–" },
          why: error ? `${t("allowed", { allowed: error.allowed })}` : t(`notebook.wrong_${code}`),
        })}</li>`,
    )}</ul>
    ${
      wrong.length > shown.length &&
      html`<p><button class="quiet" type="button" onClick=${tap(() => (all_shown.value = true))}>
      ${t("history.more")}</button></p>`
    }`;
}

/** The last import can be taken back at any time. */
const TakeBack = () => {
  const last = last_import.value;
  return (
    last &&
    html`<p><button class="quiet" type="button" onClick=${tap(() => void take_back())}>${t("notebook.take_back", {
      count: last.length,
    })}</button></p>`
  );
};
