/** One tank at NOW as the advice sees it: its readings, the tap's water and a bottle of dechlorinator. */
import { as_facts, view } from "./fixtures.js";

/** @typedef {import("./fixtures.js").Facts} Facts */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */
/** @typedef {Reading["parameter"]} Parameter */
/** @typedef {import("./fixtures.js").Some<Facts>} SomeFacts */

export const HOUR = 3_600_000;
export const NOW = Date.parse("2026-05-10T08:00:00.000Z");
/** The time so many hours before NOW. @param {number} hours */
export const ago = (hours) => new Date(NOW - hours * HOUR).toISOString();

export const TAP = view("source_water", { id: "tap-water-1", disinfectant: "chlorine" });
export const LABEL = view("label", {
  id: "label-one-1",
  name: "Bottle",
  basis: "new_water",
  amount: 2,
  unit: "ml",
  per_l: 10,
});

/**
 * A reading so many hours before NOW.
 * @param {Parameter} parameter @param {number} value @param {number} [hours] @param {Reading["basis"]} [basis]
 */
export const read = (parameter, value, hours = 0, basis = "n") =>
  view("reading", {
    id: `${parameter}-${hours}`,
    parameter,
    value,
    at: ago(hours),
    ...(parameter === "ph" || parameter === "temperature" ? {} : { basis }),
  });

/**
 * The facts of a tank with these readings, given in any order.
 * @param {readonly Reading[]} readings @param {SomeFacts} [more]
 */
export const facts = (readings, more = {}) =>
  as_facts({
    now: NOW,
    tank: { id: "tank-one-1", water_l: 100 },
    readings: readings.toSorted((a, b) => (a.at < b.at ? -1 : 1)),
    changes: [],
    doses: [],
    feedings: [],
    source: TAP,
    label: LABEL,
    ...more,
  });

/** @param {Pick<import("../../pwa/types/advice.js").Advice, "reasons">} advice */
export const codes = ({ reasons }) => reasons.map(({ code }) => code);
