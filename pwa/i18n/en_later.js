/** English: the texts of pages that are opened seldom. They are fetched with the first page after the Round. */
import { en_desk } from "./en_desk.js";
import { en_files } from "./en_files.js";
import { en_grid } from "./en_grid.js";
import { en_incidents } from "./en_incidents.js";
import { en_life } from "./en_life.js";
import { en_many } from "./en_many.js";
import { en_notebook } from "./en_notebook.js";
import { en_upkeep } from "./en_upkeep.js";

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_later = {
  ...en_desk,
  ...en_files,
  ...en_grid,
  ...en_incidents,
  ...en_life,
  ...en_many,
  ...en_notebook,
  ...en_upkeep,
};
