/** When carbonate hardness will be used up, so that pH falls and nitrification stalls. Units: the Python twin. */
import { band } from "./bands.js";
import { advance, daily_change, thinned } from "./belief.js";
import * as k from "./kinetics.js";

/** @import {Outputs} from "../types/contract.js" */
/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./tank_events.js").Change} Change */

/**
 * The hours at which hardness falls to its floor; null where it is not known or holds.
 * @param {Settings} c @param {Belief} even_belief @param {Change[]} changes
 * @param {number} dosed_mg_n_l_day @param {number} [fed_mg_n_l_day]
 * @returns {Outputs<"outlook">["kh_gone_h"]}
 */
export function kh_gone(c, even_belief, changes, dosed_mg_n_l_day, fed_mg_n_l_day = 0) {
  if (even_belief.kh_dkh === undefined) return null;
  const ahead = thinned(even_belief, c.far_every);
  const n = ahead.weight.length;
  ahead.base = Math.max(ahead.base, fed_mg_n_l_day);
  const per_mg_n = k.dkh_per_mg_n();
  const kept = Math.exp((-daily_change(changes, even_belief.at_h) * c.walk_h) / 24);
  const gone_at = new Float64Array(n).fill(Infinity);
  const far_h = even_belief.at_h + c.kh_far_h;
  for (let gone = 0; ; ) {
    for (let i = 0; i < n; i += 1) {
      if (gone_at[i] === Infinity && ahead.cloud[k.KH][i] <= c.kh_floor_dkh) {
        gone_at[i] = ahead.at_h;
        gone += 1;
      }
    }
    if (ahead.at_h >= far_h - 1e-9 || gone / n >= 0.95) break;
    const before_h = ahead.at_h;
    advance(c, ahead, Math.min(before_h + c.walk_h, far_h));
    const brought = (dosed_mg_n_l_day * (ahead.at_h - before_h)) / 24;
    const [tan, nitrite, nitrate] = ahead.cloud;
    const [kh, source_kh, alkali] = [ahead.cloud[k.KH], ahead.cloud[k.SOURCE_KH], ahead.cloud[k.ALKALI]];
    for (let i = 0; i < n; i += 1) {
      tan[i] = (tan[i] + brought) * kept;
      nitrite[i] *= kept;
      nitrate[i] *= kept;
      kh[i] = kept * (kh[i] + per_mg_n * brought * alkali[i]) + (1 - kept) * source_kh[i];
    }
  }
  const { p10, p50, p90 } = band(gone_at);
  return Number.isFinite(p50) ? { p10, p50, p90: Number.isFinite(p90) ? p90 : null } : null;
}
