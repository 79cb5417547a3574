/** German: what is done for a group of tanks. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_many = {
  "group_dose.title": "Eine Gruppe dosieren",
  "group_dose.which": "Was kommt hinein?",
  "group_dose.none": "Kein Etikett nennt seine Menge für das ganze Becken. Trag zuerst eines ein.",
  "group_dose.tanks": "Welche Becken",
  "group_dose.log": { one: "{count} Gabe eintragen", other: "{count} Gaben eintragen" },
  "group_dose.saved": {
    one: "{count} Gabe {label} auf diesem Handy gespeichert",
    other: "{count} Gaben {label} auf diesem Handy gespeichert",
  },
};
