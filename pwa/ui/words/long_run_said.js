/** What becomes of nitrate in the long run, in one sentence: on its own page and on the tank's. */
import { t } from "../../i18n/words.js";
import { level_figure, level_said } from "./figures.js";

/** @import { LongRun, Nitrate, Range } from "../../advice/life/long_run.js" */
/** @typedef {import("../../advice/level.js").Basis} Basis */

/** Further away than this is years: too far for a count of days. */
export const FAR_DAYS = 365;

/** @param {Pick<LongRun, "nitrate" | "young">} found @param {Basis} basis of the kit that tested nitrate last */
export function nitrate_said({ nitrate, young }, basis) {
  if (young) return t("long_run.young");
  if (!nitrate) return t("long_run.no_load");
  const limit = level_said("nitrate", nitrate.limit_mg_n_l, basis);
  if (nitrate.source_over) return t("long_run.source_over", { limit });
  if (nitrate.rise_mg_n_l_day.usual <= 0) return t("long_run.no_rise");
  if (!nitrate.settles_mg_n_l) return without_changes(nitrate, limit);
  const { settles_mg_n_l: settles } = nitrate;
  const level = nitrate.from === "food" ? level_said("nitrate", settles.high, basis) : range_said(settles, basis);
  const named = nitrate.from === "food" ? "at_most" : "settles";
  const how = settles.high <= nitrate.limit_mg_n_l ? "under" : settles.low > nitrate.limit_mg_n_l ? "over" : "perhaps";
  return t(`long_run.${named}_${nitrate.from === "food" && how !== "under" ? "perhaps" : how}`, { level, limit });
}

/** @param {Nitrate} nitrate @param {string} limit */
function without_changes({ days_to_limit }, limit) {
  const days = Math.round(days_to_limit ?? Infinity);
  if (days > FAR_DAYS) return t("long_run.no_changes_far", { limit });
  return t(days < 1 ? "long_run.no_changes_over" : "long_run.no_changes", { limit, count: days });
}

/** @param {Range} range @param {Basis} basis */
const range_said = ({ low, high }, basis) =>
  t("outlook.between", { low: level_figure("nitrate", low, basis), high: level_said("nitrate", high, basis) });
