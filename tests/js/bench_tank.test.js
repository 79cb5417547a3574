/** The Bench fills a form from the facts that the tank's own advice is made from: one way to gather them. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { facts_of } from "../../pwa/advice/facts.js";
import { belief_input } from "../../pwa/advice/forecast/belief_input.js";
import { of_tank } from "../../pwa/advice/of_tank.js";
import { install } from "../../pwa/contracts.js";
import { records_of, some, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
globalThis.navigator ??= /** @type {any} */ ({ onLine: true });
const { show } = await import("../../pwa/ui/state/live.js");
const { figures_of } = await import("../../pwa/ui/contract/bench_tank.js");

const NOW = Date.parse("2026-05-10T08:00:00.000Z");
const at = (/** @type {number} */ days_ago) => new Date(NOW - days_ago * 86_400_000).toISOString();
/** @satisfies {Parameters<typeof records_of>[0]} */
const RECORDS = {
  tank: [
    { id: "tank-one-1", name: "Window", water_l: 100, started_at: at(40), source_water: "tap-water-1" },
    { id: "tank-two-2", name: "Shelf", water_l: 60, started_at: at(90) },
  ],
  source_water: [{ id: "tap-water-1", name: "Tap", disinfectant: "none", nitrate_mg_n_l: 5 }],
  reading: [
    { id: "reading-1", tank: "tank-two-2", parameter: "nitrate", value: 20, basis: "n", at: at(6) },
    { id: "reading-2", tank: "tank-one-1", parameter: "nitrate", value: 10, basis: "n", at: at(4) },
  ],
  water_change: [
    {
      id: "change-1",
      tank: "tank-one-1",
      from_tank: "tank-two-2",
      source_water: "tap-water-1",
      litres: 30,
      fraction: 0.3,
      at: at(3),
    },
    {
      id: "change-2",
      tank: "tank-one-1",
      source_water: "tap-water-1",
      litres: 30,
      fraction: 0.3,
      at: at(2),
    },
  ],
};
const records = records_of(RECORDS);
show(
  some({
    ...records,
    of: (/** @type {"reading"} */ kind, /** @type {string} */ tank_id) => of_tank(records.all(kind), tank_id),
    now: () => new Date(NOW).toISOString(),
    on_change: () => () => {},
  }),
);

test("a change with another tank's water carries that tank's nitrate into the Bench's forecast", () => {
  const { changes } = figures_of("tank-one-1");
  assert.deepEqual(
    /** @type {{source: {nitrate_mg_n_l: number}}[]} */ (changes).map((one) => one.source.nitrate_mg_n_l),
    [20, 5],
  );
});

test("the Bench asks with the history that the tank's own sentence is made from", () => {
  const { tank: _tank, ...history } = belief_input(facts_of(records, view("tank", RECORDS.tank[0]), NOW)).records;
  const figures = figures_of("tank-one-1");
  assert.deepEqual(Object.fromEntries(Object.keys(history).map((name) => [name, figures[name]])), history);
});
