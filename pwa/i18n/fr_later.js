/** French: the texts of pages that are opened seldom. They are fetched with the first page after the Round. */
import { fr_desk } from "./fr_desk.js";
import { fr_files } from "./fr_files.js";
import { fr_grid } from "./fr_grid.js";
import { fr_incidents } from "./fr_incidents.js";
import { fr_life } from "./fr_life.js";
import { fr_many } from "./fr_many.js";
import { fr_notebook } from "./fr_notebook.js";
import { fr_upkeep } from "./fr_upkeep.js";

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_later = {
  ...fr_desk,
  ...fr_files,
  ...fr_grid,
  ...fr_incidents,
  ...fr_life,
  ...fr_many,
  ...fr_notebook,
  ...fr_upkeep,
};
