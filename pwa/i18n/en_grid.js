/** English: tests by keyboard. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_grid = {
  "grid.title": "Tests by keyboard",
  "grid.why": "Type a figure, Tab to the next, Enter saves the row. The arrows move, too.",
  "grid.save": "Save",
  "grid.save_named": "Save {what}",
  "grid.short": "All tanks in rows: type, Tab, Enter",
};
