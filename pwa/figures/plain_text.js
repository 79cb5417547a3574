/** Texts as a search compares them. */

const LOWERED = { "₀": "0", "₁": "1", "₂": "2", "₃": "3", "₄": "4" };

/** Without accents, soft hyphens, case and small figures: "CO₂" is found by "co2". @param {string} text */
export const plain = (text) =>
  text
    .normalize("NFD")
    .replace(/[\p{Diacritic}\u00ad]/gu, "")
    .replace(/[₀-₄]/g, (sign) => LOWERED[/** @type {keyof typeof LOWERED} */ (sign)])
    .toLowerCase();
