/** English: what is done for a group of tanks. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_many = {
  "group_dose.title": "Dose a group",
  "group_dose.which": "What goes in?",
  "group_dose.none": "No label says its dose for the whole tank. Record one first.",
  "group_dose.tanks": "Which tanks",
  "group_dose.log": { one: "Log {count} dose", other: "Log {count} doses" },
  "group_dose.saved": {
    one: "{count} dose of {label} saved on this phone",
    other: "{count} doses of {label} saved on this phone",
  },
};
