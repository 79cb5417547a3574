/**
 * Situations of a tank and what its page says: a table to be read by eye. `node tests/js/situations.js` rewrites
 * tests/tables/situations.md; situations.test.js holds it.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { advised } from "../../pwa/advice/advised.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { install, run } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { as_facts, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

globalThis.navigator ??= /** @type {any} */ ({ language: "en-GB", onLine: true });
install(shared_bundle());
await choose(["en-GB"]);
const { sentence } = await import("../../pwa/ui/words/sentence.js");
const { found_said } = await import("../../pwa/ui/words/findings_said.js");

/** @typedef {import("../../pwa/types/advice.js").Facts} Facts */
/** @typedef {import("./fixtures.js").Some<Facts>} SomeFacts */
/** @typedef {ReturnType<typeof view<"reading">>} Reading */
/** @typedef {{name: string, facts: Facts, state: string, lead: string | undefined}} Situation */

const HOUR = 3_600_000;
export const NOW = Date.parse("2026-07-10T08:00:00.000Z");
export const ago = (/** @type {number} */ hours) => new Date(NOW - hours * HOUR).toISOString();
/** The steps of an ordinary drop test, as the ions. */
const STEPS = {
  total_ammonia: [0, 0.25, 0.5, 1, 2, 4, 8],
  nitrite: [0, 0.25, 0.5, 1, 2, 5],
  nitrate: [0, 5, 10, 20, 40, 80, 160],
};
let made = 0;
/**
 * @param {Reading["parameter"]} parameter
 * @param {number} value as the ion
 * @param {number} [hours] ago
 */
export const read = (parameter, value, hours = 1) =>
  view("reading", {
    id: `reading-${String(++made).padStart(4, "0")}`,
    at: ago(hours),
    parameter,
    value,
    ...(parameter in STEPS ? { basis: "ion", steps: STEPS[/** @type {"nitrite"} */ (parameter)] } : {}),
  });
/**
 * One figure a morning, the last an hour ago.
 * @param {Reading["parameter"]} parameter
 * @param {number[]} values oldest first
 */
const mornings = (parameter, values) =>
  values.map((value, i) => read(parameter, value, (values.length - 1 - i) * 24 + 1));
/** Ten mornings without ammonia and nitrite. */
const clean = () => [...mornings("total_ammonia", Array(10).fill(0)), ...mornings("nitrite", Array(10).fill(0))];
/** @param {number} [ph] @param {number} [celsius] */
const water = (ph = 7.4, celsius = 25) => [read("ph", ph), read("temperature", celsius), read("nitrate", 10)];

const TAP = view("source_water", {
  id: "source-tap",
  name: "Tap",
  disinfectant: "chlorine",
  disinfectant_mg_l: 0.5,
  nitrate_mg_n_l: 1,
  ph: 7.6,
  kh_dkh: 6,
});
const CHLORAMINE = { ...TAP, disinfectant: /** @type {const} */ ("chloramine"), disinfectant_mg_l: 2.5 };
const LABEL = view("label", { id: "label-one", name: "Bottle", basis: "new_water", amount: 5, unit: "ml", per_l: 40 });
const TANK = view("tank", {
  id: "tank-long",
  name: "Long shelf",
  water_l: 100,
  measures: { shape: "cuboid", length_cm: 90, width_cm: 35, height_cm: 40, measures: "inside", fill_height_cm: 36 },
  started_at: ago(300 * 24),
  temperature_c: 25,
  ph: 7.4,
  feed_g_day: 0.15,
  planting: "dense",
  filter: "sponge",
  seeded: "none",
});
const arrival = (/** @type {string} */ species, /** @type {number} */ count, hours = 200 * 24) =>
  view("stock_change", { id: `arrival-${species}`, at: ago(hours), change: "arrival", species, count, length_cm: 2 });
const death = (/** @type {number} */ count, hours = 10, cause_code = "not_known") =>
  view("stock_change", {
    id: `death-${count}-${hours}-${cause_code}`,
    at: ago(hours),
    change: "death",
    species: "Hyphessobrycon amandae",
    count,
    cause_code,
  });
const SHOAL = [arrival("Hyphessobrycon amandae", 12)];
const noted = (/** @type {string} */ tile, hours = 2) =>
  view("note", { id: `note-${tile}`, at: ago(hours), text: tile, quick: [tile] });
/** @param {import("./fixtures.js").Some<import("./fixtures.js").Facts["changes"][number]>} [more] */
const change = (hours = 3, fraction = 0.3, more = {}) => ({
  id: "change-one",
  at: ago(hours),
  litres: fraction * 100,
  fraction,
  source: TAP,
  ...more,
});

/** @param {Reading[]} readings @param {SomeFacts} [more] */
export const tank = (readings, more = {}) =>
  as_facts({
    now: NOW,
    tank: TANK,
    readings: readings.toSorted((a, b) => (a.at < b.at ? -1 : 1)),
    changes: [],
    doses: [],
    feedings: [],
    notes: [],
    stock: SHOAL,
    own_species: [],
    source: TAP,
    label: LABEL,
    ...more,
  });
const YOUNG = { ...TANK, started_at: ago(6 * 24) };
const NEW_SHOAL = [arrival("Hyphessobrycon amandae", 12, 6 * 24)];
const young = (/** @type {Reading[]} */ readings, /** @type {SomeFacts} */ more = {}) =>
  tank(readings, { tank: YOUNG, stock: NEW_SHOAL, ...more });
const FISHLESS = { tank: { ...YOUNG, feed_g_day: 0 }, stock: [] };
const AMMONIUM_DOSE = view("dose", {
  id: "dose-ammonia",
  at: ago(5 * 24),
  what: "ammonium chloride",
  what_code: "ammonium_chloride",
  amount: 0.6,
  unit: "g",
  tan_mg_n_l: 1.6,
});
const dosed = (/** @type {number} */ amount, for_litres = 30) => ({
  ...view("dose", { id: "dose-water", at: ago(3), what: "Bottle", amount, unit: "ml", for_litres }),
  label: LABEL,
  water_change: "change-one",
});

/** @type {readonly (readonly [name: string, facts: Facts, state: string, lead: string | undefined])[]} */
export const SITUATIONS = [
  ["old tank, ten clean mornings", tank([...clean(), ...water()]), "steady", undefined],
  ["old tank, never tested", tank([]), "watch", "water"],
  [
    "old tank, last test ten days ago",
    tank([read("total_ammonia", 0, 240), read("nitrite", 0, 240)]),
    "watch",
    "water",
  ],
  ["new tank with fish, never tested", young([]), "watch", "water"],
  [
    "new tank with fish, clean so far",
    young([...mornings("total_ammonia", [0, 0, 0, 0]), ...mornings("nitrite", [0, 0, 0, 0]), ...water()]),
    "steady",
    undefined,
  ],
  [
    "new tank with fish, ammonia rises for three days, still under its limit",
    young([
      ...mornings("total_ammonia", [0, 0.25, 0.5, 1]),
      ...mornings("nitrite", [0, 0, 0, 0]),
      read("ph", 7.4),
      read("temperature", 25),
    ]),
    "watch",
    "water",
  ],
  [
    "new tank with fish, nitrite rises for three days",
    young([
      ...mornings("total_ammonia", [0.5, 0.5, 0.25, 0.25]),
      ...mornings("nitrite", [0, 0.25, 0.5, 1]),
      ...water(),
    ]),
    "change today",
    "water",
  ],
  [
    "nitrite far over its limit",
    young([...mornings("total_ammonia", [1, 0.5, 0.25]), ...mornings("nitrite", [0.5, 1, 2]), ...water()]),
    "act now",
    "water",
  ],
  [
    "ammonia over its limit at pH 8.2",
    young([...mornings("total_ammonia", [0.5, 1, 1]), ...mornings("nitrite", [0, 0, 0]), ...water(8.2, 26)]),
    "act now",
    "water",
  ],
  [
    "ammonia over its limit, half changed since",
    young([...mornings("total_ammonia", [0.5, 1, 2]), ...mornings("nitrite", [0, 0, 0]), ...water(7.6, 26)], {
      changes: [change(0.5, 0.5, { source: TAP })],
      doses: [{ ...dosed(6.25, 50), at: ago(0.5) }],
    }),
    "watch",
    "water",
  ],
  [
    "one odd reading after many clean ones",
    tank([...clean(), read("nitrite", 2, 0.5), ...water()]),
    "act now",
    "water",
  ],
  [
    "nitrate alone over its limit",
    tank([...clean(), ...water().slice(0, 2), read("nitrate", 80)]),
    "change today",
    "water",
  ],
  [
    "nitrate over its limit, tests overdue",
    tank([read("total_ammonia", 0, 300), read("nitrite", 0, 300), read("nitrate", 80, 300)]),
    "change today",
    "water",
  ],
  [
    "nitrate over its limit, ammonia rising",
    tank([
      ...mornings("total_ammonia", [0, 0.25, 0.5, 1]),
      ...mornings("nitrite", [0, 0, 0, 0]),
      read("ph", 7.6),
      read("temperature", 25),
      read("nitrate", 80),
    ]),
    "change today",
    "water",
  ],
  ["fishless, never tested", young([], FISHLESS), "watch", "water"],
  [
    "fishless, ammonia 2 mg/L for days",
    young([...mornings("total_ammonia", [2, 2, 2]), ...mornings("nitrite", [0, 0, 0]), ...water()], {
      ...FISHLESS,
      doses: [{ ...AMMONIUM_DOSE, label: null }],
    }),
    "watch",
    "water",
  ],
  [
    "fishless, nitrite 2 mg/L",
    young([...mornings("total_ammonia", [1, 0.5, 0]), ...mornings("nitrite", [0.5, 1, 2]), ...water()], FISHLESS),
    "watch",
    "water",
  ],
  [
    "fishless, ammonia 8 mg/L",
    young([...mornings("total_ammonia", [8, 8]), ...mornings("nitrite", [0, 0]), ...water()], FISHLESS),
    "change today",
    "water",
  ],
  [
    "nitrite over its limit, tap with chloramine",
    young([...mornings("total_ammonia", [0.5, 0.5, 0.25]), ...mornings("nitrite", [0.25, 0.5, 2]), ...water(7.8)], {
      source: CHLORAMINE,
    }),
    "act now",
    "water",
  ],
  [
    "ammonia from the tap itself, pH 8.2",
    young([...mornings("total_ammonia", [0.5, 0.5, 0.5]), ...mornings("nitrite", [0, 0, 0]), ...water(8.2, 26)], {
      source: { ...CHLORAMINE, disinfectant_mg_l: 4 },
    }),
    "change today",
    "water",
  ],
  [
    "soft acid tank full of ammonium, hard tap",
    tank(
      [
        ...mornings("total_ammonia", [4, 8, 8]),
        ...mornings("nitrite", [0, 0, 0]),
        read("ph", 6.2),
        read("temperature", 25),
        read("kh", 1),
      ],
      { source: { ...TAP, ph: 8, kh_dkh: 14 }, tank: { ...TANK, ph: 6.2, kh_dkh: 1 } },
    ),
    "change today",
    "water",
  ],
  ["30 °C in summer", tank([...clean(), ...water(7.4, 30)]), "watch", "hot"],
  ["31 °C in summer", tank([...clean(), ...water(7.4, 31)]), "act now", "hot"],
  [
    "33 °C, three of twelve dead",
    tank([...clean(), ...water(7.4, 33)], { stock: [...SHOAL, death(3)] }),
    "act now",
    "hot",
  ],
  ["19 °C, heater off", tank([...clean(), ...water(7.4, 19)]), "act now", "cold"],
  [
    "from 25 to 20.5 °C overnight",
    tank([...clean(), read("ph", 7.4), read("temperature", 25, 24), read("temperature", 20.5)]),
    "act now",
    "cold",
  ],
  [
    "pH 7.4 to 4.2",
    tank([...clean(), read("ph", 7.4, 25), read("ph", 4.2), read("temperature", 25)]),
    "act now",
    "ph_low",
  ],
  ["pH 8.8 for soft-water fish", tank([...clean(), ...water(8.8)]), "change today", "ph_high"],
  [
    "pH from 6.6 to 7.4 after a change",
    tank([...clean(), read("ph", 6.6, 25), read("ph", 7.4), read("temperature", 25)]),
    "watch",
    "ph_jump",
  ],
  [
    "carbonate hardness that lasts some days",
    tank([...clean(), ...water(6.8), read("kh", 1.3)], { tank: { ...TANK, planting: "none", feed_g_day: 2.5 } }),
    "watch",
    "kh_ends",
  ],
  ["carbonate hardness nearly gone", tank([...clean(), ...water(6.6), read("kh", 0.5)]), "watch", "kh_gone"],
  ["one death, clean water", tank([...clean(), ...water()], { stock: [...SHOAL, death(1)] }), "watch", "deaths"],
  ["three deaths, clean water", tank([...clean(), ...water()], { stock: [...SHOAL, death(3)] }), "act now", "deaths"],
  ["one death of age", tank([...clean(), ...water()], { stock: [...SHOAL, death(1, 10, "age")] }), "steady", undefined],
  [
    "three deaths, nitrite over its limit",
    young([...mornings("total_ammonia", [0.5, 0.25]), ...mornings("nitrite", [1, 2]), ...water()], {
      stock: [...NEW_SHOAL, death(3)],
    }),
    "act now",
    "water",
  ],
  ["fish at the surface", tank([...clean(), ...water()], { notes: [noted("at_surface")] }), "act now", "gasping"],
  [
    "fish at the surface, then all well again",
    tank([...clean(), ...water()], { notes: [noted("at_surface", 9), noted("well", 2)] }),
    "steady",
    undefined,
  ],
  ["fish hide and do not eat", tank([...clean(), ...water()], { notes: [noted("hiding")] }), "watch", "hiding"],
  [
    "power cut in winter: 17 °C and fish at the surface",
    tank([...clean(), ...water(7.4, 17)], { notes: [noted("at_surface")] }),
    "act now",
    "gasping",
  ],
  ["chlorine shows in a test", tank([...clean(), ...water(), read("chlorine", 0.2)]), "act now", "chlorine"],
  ["a change logged without its dose", tank([...clean(), ...water()], { changes: [change()] }), "act now", "undosed"],
  [
    "a change with its dose",
    tank([...clean(), ...water()], { changes: [change()], doses: [dosed(3.75)] }),
    "steady",
    undefined,
  ],
  [
    "a change with four times its dose",
    tank([...clean(), ...water()], { changes: [change()], doses: [dosed(15)] }),
    "watch",
    "overdosed",
  ],
  [
    "seven tenths changed at once",
    tank([...clean(), ...water()], { changes: [change(3, 0.7)], doses: [dosed(8.75, 70)] }),
    "watch",
    "large_change",
  ],
  ["oxygen read at 2.5 mg/L", tank([...clean(), ...water(), read("oxygen", 2.5)]), "act now", "oxygen_low"],
  [
    "summer heat, too many fish for the night",
    tank([...clean(), ...water(7.4, 28)], {
      tank: { ...TANK, filter: "none" },
      stock: [arrival("Hyphessobrycon amandae", 12), { ...arrival("Corydoras paleatus", 24), length_cm: 6 }],
    }),
    "act now",
    "hot",
  ],
  [
    "summer heat and ammonia at pH 8",
    tank([...mornings("total_ammonia", [0.25, 0.5, 1]), ...mornings("nitrite", [0, 0, 0]), ...water(8, 30)]),
    "change today",
    "water",
  ],
  ["water too hard for soft-water fish", tank([...clean(), ...water(), read("gh", 20)]), "watch", "hard"],
];

/** What the page of this tank says, the forecast included. @param {Facts} facts */
export function told(facts) {
  const rule = today(facts);
  const asked = ask_of(facts, rule);
  const answers = Object.fromEntries(asked.questions.map(({ label, name, input }) => [label, run(name, input)]));
  return advised(facts, rule, asked, { state: "ready", answers });
}

/** @param {ReturnType<typeof told>} advice @param {number} now */
export const also = (advice, now) =>
  advice.findings
    .slice(1)
    .map((one) => (one.code === "water" ? `(water: ${advice.act})` : found_said(one, now).what))
    .join(" ");

/** The table: name, state, sentence, what is found besides. */
export const table_of = (/** @type {{name: string, advice: ReturnType<typeof told>}[]} */ rows) =>
  [
    "# What a tank's page says, situation by situation",
    "",
    "Written by `node tests/js/situations.js`, held by `tests/js/situations.test.js`. All tanks are invented.",
    "",
    "| situation | state | sentence | also |",
    "|---|---|---|---|",
    ...rows.map(
      ({ name, advice }) => `| ${name} | ${advice.state} | ${sentence(advice, NOW)} | ${also(advice, NOW)} |`,
    ),
    "",
  ].join("\n");

export const TABLE = new URL("../tables/situations.md", import.meta.url);

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const rows = SITUATIONS.map(([name, facts]) => ({ name, advice: told(facts) }));
  writeFileSync(TABLE, table_of(rows));
  process.stdout.write(readFileSync(TABLE, "utf-8"));
}
