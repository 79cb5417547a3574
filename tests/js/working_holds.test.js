/**
 * The printed working holds as arithmetic: over every example and vector, in every system of units, what stands left of
 * "=" gives what stands right of it, within the rounding of the figures printed.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { working_steps } from "../../pwa/bench/working.js";
import { check, contract_of, contracts, install, run_named } from "../../pwa/contracts.js";
import { systems } from "../../pwa/figures/units.js";
import { equations } from "./arithmetic.js";
import { there } from "./fixtures.js";
import { folder, shared_bundle } from "./shared_bundle.js";

/** @import { Contract } from "../../pwa/types/contract.js" */
/** @typedef {{id: string, input: Record<string, unknown>, errors?: object[]}} Case */

install(shared_bundle());
const vectors = /** @type {Record<string, {cases: Case[]}>} */ (folder("vectors"));
const english = { decimal: ".", group: "," };

/**
 * Steps with a sign of arithmetic that say some quantity in words and not as a figure: by contract, how they begin.
 * @type {Record<string, string[]>}
 */
const IN_WORDS = {
  acclimation: ["floating:", "mixing:", "old water at the end:"],
  animal_mass: ["mass of one ="],
  change_plan: ["the smallest whose chance"],
  carbon_dioxide: ["bicarbonate =", "carbon dioxide ="],
  closed_water: ["oxygen above"],
  dilution: ["after a change of share f:"],
  evaporation: ["open surface =", "vapour pressure over water", "water = heat over a day"],
  filled_weight: ["empty tank =", "water = what the inside holds"],
  heater_power: ["a side pane of"],
  light_dose: ["full hours =", "hours for"],
  nitrogen_load: ["eaten food gives"],
  nitrogen_units: ["as the ion ="],
  nutrient_routine: ["grams / molar mass", "just before a change: a week", "{target_mg_l_week} mg/L wanted"],
  oxygen_saturation: ["air pressure =", "saturation at"],
  stock_headroom: ["food a day = processed"],
  stocking_limit: ["processing: ("],
  substrate: ["a layer =", "weight = volume"],
  // What was counted as it was filled in stands for the difference.
  volume: ["water = {filled_l}"],
  water_after_change: ["at once, with all its carbon:"],
  water_blend: ["hardness and warmth mix by volume:"],
  water_limits: ["total ammonia: the lower", "act at once: the lower"],
};

/** Cases with a result that the figures beside it do not give, and why. @type {Record<string, string>} */
const APART = {
  "dilution-003": "a share of nothing: the water is below its target already",
  "evaporation-004": "no heat: more moisture comes than goes",
  "evaporation-011": "no heat: more moisture comes than goes",
  "free-ammonia-002": "the step names the correction for ionic strength and does not print it",
  "free-ammonia-006": "the step names the correction for ionic strength and does not print it",
  "heater-power-004": "no heater: the room is warmer than the tank",
};

/** @param {string} step */
const is_arithmetic = (step) => / [×/+−-] |\^|=/.test(step);
/** Figures in the words of a step: they are not rounded. @param {string} step */
const fixed = (step) => step.replace(/\{[^}]*\}/g, " ").match(/\d+(,\d{3})*(\.\d+)?/g) ?? [];

/**
 * The equations that a step prints for a case, and how many of them do not hold.
 * @param {Contract} spec @param {string} step @param {Case} one @param {object} answer
 */
function printed(spec, step, { id, input }, answer) {
  const typed = Object.entries(check(spec, input)).filter(([name]) => step.includes(`{${name}}`) && !(name in answer));
  const exact = new Set([...fixed(step), ...typed.map(([, value]) => String(value))]);
  const found = systems().flatMap(({ key }) =>
    working_steps({ ...spec, working: [step] }, input, answer, { system: key, marks: english })
      .flatMap((line) => equations(line, exact))
      .map((equation) => ({ ...equation, id, system: key })),
  );
  return {
    found,
    wrong: found.filter(({ left, right }) => left.low > above(right.high) || above(left.high) < right.low),
  };
}

/** Room for the last bits of a double. @param {number} bound */
const above = (bound) => bound + 1e-9 * Math.abs(bound) + 1e-12;

const found_apart = new Set();

for (const [name, contract] of Object.entries(contracts())) {
  const spec = there(contract);
  const in_words = IN_WORDS[name] ?? [];
  const steps = spec.working.filter(is_arithmetic).filter((step) => !in_words.some((start) => step.startsWith(start)));
  if (steps.length === 0) continue;
  test(`${name}: every printed equation holds`, () => {
    const cases = [.../** @type {Case[]} */ (spec.examples), ...vectors[name].cases].filter(({ errors }) => !errors);
    const answered = cases.map((one) => ({ one, answer: run_named(name, one.input) }));
    for (const step of steps) {
      const all = answered.map(({ one, answer }) => printed(spec, step, one, answer));
      assert.ok(
        all.some(({ found }) => found.length > 0),
        `no equation is printed by: ${step}`,
      );
      for (const { id, system, said, left } of all.flatMap(({ wrong }) => wrong)) {
        assert.ok(id in APART, `${id}, ${system}: ${said}, but the left side is ${left.low} to ${left.high}`);
        found_apart.add(id);
      }
    }
  });
}

test("the lists of what is left out hold nothing else", () => {
  const steps_of = (/** @type {string} */ name) => contract_of(name).working.filter(is_arithmetic);
  for (const [name, starts] of Object.entries(IN_WORDS))
    for (const start of starts)
      assert.equal(steps_of(name).filter((step) => step.startsWith(start)).length, 1, `${name}: ${start}`);
  assert.deepEqual([...found_apart].sort(), Object.keys(APART).sort());
});
