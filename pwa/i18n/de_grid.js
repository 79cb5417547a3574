/** German: tests by keyboard, and of one parameter alone. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_grid = {
  "test.near_last": "Nahe am letzten Messwert",
  "grid.title": "Tests mit der Tastatur",
  "grid.why": "Tippe einen Wert, mit Tab zum nächsten, Enter speichert die Zeile. Auch die Pfeile führen weiter.",
  "grid.save": "Speichern",
  "grid.save_named": "{what} speichern",
  "grid.short": "Alle Becken in Zeilen: tippen, Tab, Enter",
};
