/** English: tests by keyboard, and of one parameter alone. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_grid = {
  "test.near_last": "Near the last reading",
  "grid.title": "Tests by keyboard",
  "grid.why": "Type a figure, Tab to the next, Enter saves the row. The arrows move, too.",
  "grid.save": "Save",
  "grid.save_named": "Save {what}",
  "grid.short": "All tanks in rows: type, Tab, Enter",
};
