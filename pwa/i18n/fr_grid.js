/** French: tests by keyboard, and of one parameter alone. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_grid = {
  "test.near_last": "Proches du dernier relevé",
  "grid.title": "Tests au clavier",
  "grid.why": "Tape une valeur, Tab vers la suivante, Entrée enregistre la ligne. Les flèches marchent aussi.",
  "grid.save": "Enregistrer",
  "grid.save_named": "Enregistrer {what}",
  "grid.short": "Tous les bacs en lignes\u00a0: taper, Tab, Entrée",
};
