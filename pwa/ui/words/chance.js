/** A chance in plain words, always with its number. */
import { t } from "../../i18n/words.js";

/** "1 in 12", "4 in 10", "Under 1 in 100". @param {number} chance 0 to 1 */
export function chance_said(chance) {
  if (chance < 0.01) return t("chance.under");
  if (chance > 0.95) return t("chance.over");
  if (chance <= 0.3) return t("chance.one_in", { count: Math.round(1 / chance) });
  return t("chance.in_ten", { count: Math.min(9, Math.round(10 * chance)) });
}
