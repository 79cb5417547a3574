/** Animals and plants in words: how many of what, and what happened to them. */
import { choice_label, find_field, kind_of } from "../../contracts.js";
import { name_of } from "../../advice/life/stock.js";
import { short, t } from "../../i18n/words.js";
import { tank_name } from "../life_entry.js";
import { amount_said, cause_said } from "./tile_words.js";

/** @import { View } from "../../types/views.js" */

/** "6 × zebra danio". @param {string} species @param {number} count */
export const counted = (species, count) => {
  const name = name_of("species", species);
  return Number.isFinite(count) ? t("life.counted", { amount: short(count, 0), name }) : name;
};

/** "ditch moss, a handful". @param {string} species @param {string} amount in words, empty where none is said */
export const plant_said = (species, amount) =>
  amount ? t("life.amount_of", { amount, name: name_of("plants", species) }) : name_of("plants", species);

/** "2 × zebra danio, died: old age". @param {View<"stock_change"> | View<"planting">} one */
export function life_said(one) {
  const animals = one.kind === "stock_change";
  const what = animals ? counted(one.species, one.count) : plant_said(one.species, amount_said(one));
  const parts = { what, tank: tank_name(one.other_tank), cause: one.kind === "stock_change" ? cause_said(one) : "" };
  if (one.change === "move_out" && one.other_tank) return t("life.moved_to", parts);
  if (one.change === "move_in" && one.other_tank) return t("life.moved_from", parts);
  if (one.change === "death" && parts.cause) return t("life.died_of", parts);
  const happened = choice_label(find_field(kind_of(one.kind).fields, "change"), one.change);
  return t("life.happened", { what, happened });
}
