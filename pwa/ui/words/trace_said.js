/** One thing that two tanks shared, in words and with its icon. */
import { choice_label, record_field } from "../../contracts.js";
import { name_of } from "../../advice/life/stock.js";
import { t } from "../../i18n/words.js";
import { tank_name } from "../life_entry.js";

/** @type {Record<import("../../advice/life/trace.js").Way, string>} */
export const ICON_OF = { water: "water", plants: "plants", animals: "stock", tool: "tool" };

/** "java moss, from Sill into Shelf". @param {import("../../advice/life/trace.js").Shared} link */
export const shared_said = (link) =>
  t("trace.link", { what: what_said(link), from: tank_name(link.from), to: tank_name(link.to) });

/** @param {import("../../advice/life/trace.js").Shared} link */
export function what_said({ way, what }) {
  if (way === "water") return t("trace.water");
  if (way === "tool") return choice_label(record_field("shared_tool", "tool"), what);
  return name_of(way === "plants" ? "plants" : "species", what);
}
