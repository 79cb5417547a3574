/** What happened to a tank, newest first, by whom and when; each can be taken out, and put back. */
import { html, useSignal } from "../vendor/preact.js";
import { table } from "../calc/tables.js";
import { records } from "../contracts.js";
import { t, when } from "../i18n/words.js";
import { dose_said, figure, litres_said, parameter_name } from "../ui/figures.js";
import { Icon } from "../ui/icon.js";
import { all, get, now, room } from "../ui/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { record } from "../ui/record.js";
import { tap } from "../ui/tap.js";

const PAGE = 40;

/** @param {{id: string}} props */
export function History({ id }) {
  const tank = get("tank", id);
  const shown = useSignal(PAGE);
  if (!tank) return html`<${Missing} up="/" />`;
  const events = events_of(id);
  return html`
    <${Page} title=${t("history.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}>
      ${events.length === 0 && html`<p class="sentence">${t("history.empty")}</p>`}
      <ol class="lines">${events.slice(0, shown.value).map((event) => html`<${Event} key=${event.records[0].id} event=${event} />`)}</ol>
      ${events.length > shown.value && html`<p class="center"><button class="quiet tall" type="button" onClick=${tap(() => (shown.value += PAGE))}>${t("history.more")}</button></p>`}
    <//>`;
}

/** @param {{event: any}} props */
function Event({ event }) {
  const { records, said, what } = event;
  const { made_by } = records[0].meta;
  const who = made_by === null ? null : room.value.nameOf(made_by);
  const state = records.map((/** @type {any} */ one) => one.meta.state);
  const shared = state.includes("needs you") ? "needs_you" : state.every((/** @type {string} */ one) => one === "shared") ? "shared" : "saved";
  const may = records.every((/** @type {any} */ one) => room.value.may(one.kind));
  const remove = () => record(records.map((/** @type {any} */ one) => ({ type: "del", kind: one.kind, id: one.id })), t("saved.removed", { what }));
  return html`
    <li class="line">
      <div>
        <time class="soft small" datetime=${event.at}>${when(event.at, now.value)}${who && ` · ${who}`}</time>
        <div class="said">${said.map((/** @type {string} */ line) => html`<span key=${line}>${line}</span>`)}</div>
        <span class="soft small row tight"><${Icon} name=${shared === "needs_you" ? "needs" : shared} size=${16} />${t(`record.${shared}`)}</span>
      </div>
      ${may && html`<button class="quiet square" type="button" aria-label=${t("remove_named", { what: `${what}, ${when(event.at, now.value)}` })} onClick=${tap(() => void remove())}><${Icon} name="remove" size=${20} /></button>`}
    </li>`;
}

/** Records of a tank gathered into what happened, newest first. @param {string} tank */
function events_of(tank) {
  const of = (/** @type {string} */ kind) => all(kind).filter((one) => one.tank === tank);
  /** @type {Map<string, any[]>} */ const tests = new Map();
  for (const reading of of("reading")) {
    const key = reading.test ?? reading.id;
    tests.set(key, [...(tests.get(key) ?? []), reading]);
  }
  const doses = of("dose");
  const changes = of("water_change");
  const apart = doses.filter((dose) => !changes.some((change) => change.id === dose.water_change));
  return [
    ...[...tests.values()].map((records) => ({ records, at: records[0].at, what: t("history.test"), said: records.map(reading_said) })),
    ...changes.map((change) => {
      const with_it = doses.filter((dose) => dose.water_change === change.id);
      return { records: [change, ...with_it], at: change.at, what: t("history.change"), said: [t("history.changed", { litres: litres_said(change.litres) }), ...with_it.map(dosed)] };
    }),
    ...apart.map((dose) => ({ records: [dose], at: dose.at, what: t("history.dose"), said: [dosed(dose)] })),
    ...of("feeding").map((one) => ({ records: [one], at: one.at, what: t("history.feeding"), said: [t("history.fed", { grams: String(one.feed_g) })] })),
    ...of("stock_change").map((one) => ({ records: [one], at: one.at, what: t("kind.stock_change"), said: [life_said(one, "species", String(one.count ?? "")), ...remark(one)] })),
    ...of("planting").map((one) => ({ records: [one], at: one.at, what: t("kind.planting"), said: [life_said(one, "plants", one.amount ?? ""), ...remark(one)] })),
    ...all("task_done").filter((one) => get("task", one.task)?.tank === tank).map((one) => ({ records: [one], at: one.at, what: t("kind.task_done"), said: [get("task", one.task).title, ...remark(one)] })),
    ...of("photo").map((one) => ({ records: [one], at: one.at, what: t("kind.photo"), said: [one.caption ?? t("kind.photo")] })),
    ...of("note").map((note) => ({ records: [note], at: note.at, what: t("history.note"), said: note.text.split("\n") })),
  ].toSorted((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** @param {any} reading */
function reading_said(reading) {
  const { value, unit } = figure(reading);
  return `${parameter_name(reading.parameter)} ${value} ${unit}`.trim();
}

/** "12 neon tetra, moved in". @param {any} one @param {string} rows table of the kinds of life @param {string} amount */
function life_said(one, rows, amount) {
  const name = table(rows).rows[one.species]?.name ?? one.species;
  const change = records()[one.kind].fields.find((/** @type {any} */ field) => field.name === "change").choices.find((/** @type {any} */ choice) => choice.value === one.change);
  return `${amount} ${name}, ${change?.label ?? one.change}`.trim();
}

/** @param {any} one @returns {string[]} */
const remark = (one) => (one.note ? one.note.split("\n") : []);

/** @param {any} dose */
const dosed = (dose) => `${dose_said(dose)} ${dose.what}`;
