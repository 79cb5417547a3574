/** French: every text of the screens, as the English has them. */
import { fr_display } from "./fr_display.js";
import { fr_journal } from "./fr_journal.js";
import { fr_room } from "./fr_room.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr = {
  ...fr_display,
  ...fr_journal,
  ...fr_room,
};
