/** An event of the timeline in words: its name, and a line for each thing it says. */
import { choice_label, record_field } from "../../contracts.js";
import { t, when } from "../../i18n/words.js";
import { dose_said, figure, grams_said, litres_said, parameter_name } from "./figures.js";
import { life_said } from "./life_said.js";
import { get, now } from "../state/live.js";
import { dosed_said, note_said, task_said } from "./tile_words.js";

/** @import { Happened, Recorded } from "../../advice/journal/timeline.js" */
/** @import { View } from "../../types/views.js" */

/** @param {{kind: string, records?: Recorded[]}} event */
export const event_name = ({ kind, records = [] }) =>
  is_incident(records) ? t("history.incident") : (NAMES[kind]?.() ?? t(`kind.${kind}`));

/** Whether something went wrong: the event then links to the trace. @param {Recorded[]} records */
export const is_incident = (records) => records.some(({ kind, incident }) => kind === "note" && incident);
/** @type {Record<string, () => string>} */
const NAMES = {
  reading: () => t("history.test"),
  water_change: () => t("history.change"),
  tank: () => t("history.filling"),
  dose: () => t("history.dose"),
  feeding: () => t("history.feeding"),
  note: () => t("history.note"),
};

/**
 * The lines of an event; photos say nothing unless they have a caption.
 * @param {{records: Recorded[]}} event
 * @returns {string[]}
 */
export const event_lines = ({ records: all }) =>
  all.flatMap((one) => [...record_lines(one), ...(one.note ? one.note.split("\n") : [])]);

/**
 * What an event said before it was corrected, with its former time and tank if those were corrected.
 * @param {import("../../advice/journal/timeline.js").Event} event
 * @returns {string[]}
 */
export function earlier_lines({ at, tank, earlier }) {
  const said = earlier.flatMap((one) => [
    ...record_lines(one),
    ...(one.at === at ? [] : [when(one.at, now.value)]),
    ...(!one.tank || one.tank === tank ? [] : [get("tank", one.tank)?.name ?? t("life.a_tank")]),
  ]);
  return [...new Set(said)];
}

/** @param {Recorded} record @returns {string[]} */
export function record_lines(record) {
  const one = /** @type {Happened} */ (record);
  if (one.kind === "reading") return [reading_said(one)];
  if (one.kind === "water_change") return [t("history.changed", { litres: litres_said(one.litres) })];
  if (one.kind === "tank") return [t("history.filled", { litres: litres_said(one.water_l) })];
  if (one.kind === "dose") return [`${dose_said(one)} ${dosed_said(one)}`];
  if (one.kind === "feeding") return [fed(one)];
  if (one.kind === "note") return note_said(one).split("\n");
  if (one.kind === "photo") return one.caption ? [one.caption] : [];
  if (one.kind === "task_done") return [closed_said(one)];
  if (one.kind === "shared_tool")
    return [
      t("history.shared_tool", {
        tool: choice_label(record_field("shared_tool", "tool"), one.tool),
        tanks: [one.tank, one.other_tank]
          .map((id) => get("tank", id)?.name)
          .filter(Boolean)
          .join("\u00a0· "),
      }),
    ];
  if (one.kind === "stock_change" || one.kind === "planting") return [life_said(one)];
  return [];
}

/** @param {View<"reading">} reading */
function reading_said(reading) {
  const { value, unit } = figure(reading);
  return `${parameter_name(reading.parameter)} ${value} ${unit}`.trim();
}

/** @param {View<"feeding">} meal */
function fed({ feed_g, food }) {
  if (feed_g === 0) return t("history.fed_none");
  return food
    ? t("history.fed_food", { amount: grams_said(feed_g), food })
    : t("history.fed", { amount: grams_said(feed_g) });
}

/** @param {View<"task_done">} one */
function closed_said({ task, skipped }) {
  const its = get("task", task);
  const title = its ? task_said(its) : t("kind.task_done");
  return skipped ? t("history.task_skipped", { title }) : title;
}
