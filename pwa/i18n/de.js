/** German: every text of the screens, as the English has them. */
import { de_display } from "./de_display.js";
import { de_journal } from "./de_journal.js";
import { de_room } from "./de_room.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de = {
  ...de_display,
  ...de_journal,
  ...de_room,
};
