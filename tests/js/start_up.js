/**
 * Twenty-one days of a new tank, lived by its advice: five small tetras from the first day in 36.7 L, tap water with
 * chloramine. `node tests/js/start_up.js` writes tests/tables/start_up.md; start_up.test.js holds it.
 *
 * The tank's truth is another model than the product's: two bacteria that grow by Monod's law in hourly steps, with the
 * growth, decay and half-saturation of Metcalf and Eddy (2014) for nitrifiers; how many there are on the first day is
 * invented. The kit reads the nearest of its steps.
 */
import { writeFileSync } from "node:fs";
import { tank as facts_with, told } from "./situations.js";
import { view } from "./fixtures.js";

const { sentence } = await import("../../pwa/ui/words/sentence.js");

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const START = Date.parse("2026-06-01T08:00:00.000Z");
export const WATER_L = 36.7;
const PH = 7.6;
const CELSIUS = 25;
/** mg N per mg of the ion. */
const N_PER = { total_ammonia: 14.007 / 18.039, nitrite: 14.007 / 46.005 };
const STEPS = { total_ammonia: [0, 0.25, 0.5, 1, 2, 4, 8], nitrite: [0, 0.25, 0.5, 1, 2, 5] };
/** What 2 mg/L of chloramine frees at least, mg N/L. */
const TAP_TAN = 0.396;
const TAP = view("source_water", {
  id: "source-tap",
  name: "Tap",
  disinfectant: "chloramine",
  disinfectant_mg_l: 2,
  nitrate_mg_n_l: 2,
  ph: 7.8,
  kh_dkh: 6,
});
const LABEL = view("label", { id: "label-one", name: "Bottle", basis: "new_water", amount: 5, unit: "ml", per_l: 40 });
const TANK = view("tank", {
  id: "tank-new",
  name: "Window",
  water_l: WATER_L,
  measures: {
    shape: "cuboid",
    length_cm: 44,
    width_cm: 30,
    height_cm: 36,
    measures: "inside",
    fill_height_cm: 32,
    substrate_l: 6.6,
    substrate_porosity: 0.42,
  },
  started_at: new Date(START).toISOString(),
  temperature_c: CELSIUS,
  ph: PH,
  kh_dkh: 5,
  feed_g_day: 0.1,
  planting: "light",
  filter: "sponge",
  seeded: "none",
});
const STOCK = [
  view("stock_change", {
    id: "arrival-one",
    at: new Date(START).toISOString(),
    change: "arrival",
    species: "Hyphessobrycon herbertaxelrodi",
    count: 5,
    length_cm: 2.2,
  }),
];

/** The true water, and its bacteria: capacities in mg N/L a day. */
class Water {
  tan = 0;
  nitrite = 0;
  oxidisers = { ammonia: 0.01, nitrite: 0.005 };

  /** @param {number} hours @param {number} input mg N/L a day */
  pass(hours, input) {
    for (let i = 0; i < hours; i += 1) {
      const fed_a = this.tan / (this.tan + 0.5);
      const fed_n = this.nitrite / (this.nitrite + 0.2);
      const eat_a = this.oxidisers.ammonia * fed_a;
      const eat_n = this.oxidisers.nitrite * fed_n;
      this.tan += (input - eat_a) / 24;
      this.nitrite += (eat_a - eat_n) / 24;
      this.oxidisers.ammonia *= 1 + (0.9 * fed_a - 0.17) / 24;
      this.oxidisers.nitrite *= 1 + (1.0 * fed_n - 0.17) / 24;
    }
  }

  /** @param {number} fraction */
  change(fraction) {
    this.tan += fraction * (TAP_TAN - this.tan);
    this.nitrite *= 1 - fraction;
  }
}

/** What the kit shows: its step nearest to the ion. @param {"total_ammonia" | "nitrite"} parameter @param {number} n */
const kit = (parameter, n) =>
  STEPS[parameter].toSorted((a, b) => Math.abs(a - n / N_PER[parameter]) - Math.abs(b - n / N_PER[parameter]))[0];

/** Lives the days: tests every morning, pours what the advice says, feeds as it says. */
export function live(days = 21) {
  const water = new Water();
  /** @type {ReturnType<typeof view<"reading">>[]} */ const readings = [];
  /** @type {import("./fixtures.js").Some<import("../../pwa/types/advice.js").Change>[]} */ const changes = [];
  /** @type {import("./fixtures.js").Some<import("../../pwa/types/advice.js").Dose>[]} */ const doses = [];
  const lived = [];
  for (let day = 1; day <= days; day += 1) {
    const now = START + day * DAY;
    const at = new Date(now).toISOString();
    const figures = { total_ammonia: kit("total_ammonia", water.tan), nitrite: kit("nitrite", water.nitrite) };
    for (const parameter of /** @type {const} */ (["total_ammonia", "nitrite"]))
      readings.push(
        view("reading", {
          id: `reading-${day}-${parameter}`,
          at,
          parameter,
          value: figures[parameter],
          basis: "ion",
          steps: STEPS[parameter],
        }),
      );
    if (day % 3 === 1)
      readings.push(
        view("reading", { id: `reading-${day}-ph`, at, parameter: "ph", value: PH }),
        view("reading", { id: `reading-${day}-c`, at, parameter: "temperature", value: CELSIUS }),
      );
    const facts = facts_with(readings, { now, tank: TANK, stock: STOCK, source: TAP, label: LABEL, changes, doses });
    const advice = told(facts);
    const true_n = { tan: water.tan, nitrite: water.nitrite };
    const litres = advice.act === "change" || advice.act === "retest" ? (advice.litres ?? 0) : 0;
    let poured = 0;
    /** @param {number} later */
    const pour = (later) => {
      const id = `change-${day}-${later}`;
      const when = new Date(now + later * HOUR).toISOString();
      water.change(litres / WATER_L);
      changes.push({ id, at: when, litres, fraction: litres / WATER_L, source: TAP });
      doses.push({
        id: `dose-${day}-${later}`,
        at: when,
        amount: litres / 8,
        unit: "ml",
        label: LABEL,
        water_change: id,
      });
      poured += litres;
    };
    if (litres > 0) pour(0);
    const salt = advice.instead?.find(({ code }) => code === "salt");
    if (salt)
      doses.push({
        id: `salt-${day}`,
        at: new Date(now + HOUR).toISOString(),
        what_code: "sodium_chloride",
        amount: salt.salt_g,
        unit: "g",
        label: null,
      });
    const feed = advice.besides?.some((code) => code === "feed_nothing" || code === "feed_half") ? 0.4 : 1;
    // 0.1 g a day of food with 42 % protein, 0.092 of it ammonia nitrogen: what the tank's record says it is fed.
    const input = (feed * 0.1 * 0.42 * 0.092 * 1000) / WATER_L;
    if (litres > 0 && advice.second) {
      const after = Math.round((advice.second.at - now) / HOUR);
      water.pass(after, input);
      pour(after);
      water.pass(24 - after, input);
    } else water.pass(24, input);
    lived.push({ day, figures, true_n, advice, sentence: sentence(advice, now), litres: poured });
  }
  return lived;
}

/** @param {ReturnType<typeof live>} lived */
export const table_of = (lived) =>
  [
    "# Twenty-one days of a new tank, by its advice",
    "",
    "36.7 L, five small tetras from day 1, pH 7.6, 25 °C, tap water with 2 mg/L of chloramine that no product binds.",
    "The keeper tests each morning and does what the page says. Written by `node tests/js/start_up.js`, held by",
    "`tests/js/start_up.test.js`. The tank is invented.",
    "",
    "| day | NH₄ read, mg/L | NO₂ read, mg/L | state | sentence | besides | why | litres |",
    "|---|---|---|---|---|---|---|---|",
    ...lived.map(
      ({ day, figures, advice, sentence: said, litres }) =>
        `| ${day} | ${figures.total_ammonia} | ${figures.nitrite} | ${advice.state} | ${said} | ${[
          ...(advice.instead ?? []).map(({ code, salt_g }) => (salt_g ? `${code} ${salt_g.toFixed(1)} g` : code)),
          ...(advice.besides ?? []),
        ].join(", ")} | ${advice.reasons
          .slice(0, 3)
          .map(({ code }) => code)
          .join(", ")} | ${litres ? litres.toFixed(1) : "–"} |`,
    ),
    "",
    `Litres in all: ${lived.reduce((sum, { litres }) => sum + litres, 0).toFixed(0)}, that is ${(
      lived.reduce((sum, { litres }) => sum + litres, 0) / WATER_L
    ).toFixed(1)} times the tank.`,
    "",
  ].join("\n");

export const TABLE = new URL("../tables/start_up.md", import.meta.url);

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const text = table_of(live());
  writeFileSync(TABLE, text);
  process.stdout.write(text);
}
