/** French: what is done for a group of tanks. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_many = {
  "group_dose.title": "Doser un groupe",
  "group_dose.which": "Que verses-tu\u00a0?",
  "group_dose.none": "Aucune étiquette ne donne sa dose pour tout le bac. Enregistre d’abord une étiquette.",
  "group_dose.tanks": "Quels bacs",
  "group_dose.log": { one: "Noter {count} dose", many: "Noter {count} doses", other: "Noter {count} doses" },
  "group_dose.saved": {
    one: "{count} dose de {label} enregistrée sur ce téléphone",
    many: "{count} doses de {label} enregistrées sur ce téléphone",
    other: "{count} doses de {label} enregistrées sur ce téléphone",
  },
};
