/** German: the texts of pages that are opened seldom. They are fetched with the first page after the Round. */
import { de_desk } from "./de_desk.js";
import { de_files } from "./de_files.js";
import { de_grid } from "./de_grid.js";
import { de_incidents } from "./de_incidents.js";
import { de_life } from "./de_life.js";
import { de_many } from "./de_many.js";
import { de_notebook } from "./de_notebook.js";
import { de_upkeep } from "./de_upkeep.js";

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_later = {
  ...de_desk,
  ...de_files,
  ...de_grid,
  ...de_incidents,
  ...de_life,
  ...de_many,
  ...de_notebook,
  ...de_upkeep,
};
