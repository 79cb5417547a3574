/** How the screens say what a field of a record holds, in the units, the language and the time zone of this phone. */
import { t, when } from "../../i18n/words.js";
import { measured } from "./figures.js";
import { get_of_kind, now } from "../state/live.js";

/** @type {import("../../advice/sharing/field_said.js").Words} */
export const field_words = {
  get: get_of_kind,
  yes_no: (value) => t(value ? "said.yes" : "said.no"),
  figure: (value, unit) => measured(value, unit, 4).trim(),
  time: (at) => when(at, now.value),
};
