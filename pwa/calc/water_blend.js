/** How much of each water to mix for a wanted hardness and temperature. */
import { best_shares } from "./blend_solver.js";
import { Refusal } from "./refusal.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {"gh_dgh" | "kh_dkh" | "temperature_c"} Property */
/** @type {Property[]} */
const PROPERTIES = ["gh_dgh", "kh_dkh", "temperature_c"];
// Nobody measures a difference smaller than this, in degrees of either kind (assumption).
const CLOSE_ENOUGH = 0.1;

/**
 * Litres of each source for the target, or as near as these waters get. Equations, units and refusals: the Python twin.
 * @param {Input<"water_blend">} input
 * @returns {Outputs<"water_blend">}
 */
export function water_blend({ sources, target, litres }) {
  const wanted = PROPERTIES.filter((name) => name in target);
  if (wanted.length === 0) throw new Refusal("no_target");
  sources.forEach((source, index) => {
    for (const name of wanted) if (!(name in source)) throw new Refusal("source_unknown", `sources.${index}.${name}`);
  });
  const caps = sources.map((source) => (source.litres === undefined ? 1 : Math.min(1, source.litres / litres)));
  const rows = wanted.map((name) => sources.map((source) => Number(source[name])));
  const goals = wanted.map((name) => Number(target[name]));
  const shares = best_shares(rows, goals, caps);
  if (!shares) throw new Refusal("not_enough_water");
  const reached = reached_by(sources, shares);
  const missed = wanted.some((name, place) => Math.abs(Number(reached[name]) - goals[place]) > CLOSE_ENOUGH);
  const amounts = shares.map((share) => share * litres);
  const pour = sources.flatMap((source, index) =>
    amounts[index] > 0 ? [{ name: source.name || `water ${index + 1}`, litres: amounts[index] }] : [],
  );
  return { litres: amounts, pour, reached, notes: missed ? ["missed"] : [] };
}

/**
 * Each property of the mixture that is known of every water used.
 * @param {Input<"water_blend">["sources"]} sources @param {number[]} shares
 */
function reached_by(sources, shares) {
  /** @type {Outputs<"water_blend">["reached"]} */ const reached = {};
  const used = sources.flatMap((source, index) => (shares[index] > 0 ? [{ source, share: shares[index] }] : []));
  for (const name of PROPERTIES) {
    if (!used.every(({ source }) => name in source)) continue;
    reached[name] = used.reduce((total, { source, share }) => total + share * Number(source[name]), 0);
  }
  return reached;
}
