/** Texts as a search compares them. */

const LOWERED = { "₀": "0", "₁": "1", "₂": "2", "₃": "3", "₄": "4" };

/** The text without accents, soft hyphens, capitals and subscripts, so that "co2" finds "CO₂". @param {string} text */
export const plain = (text) =>
  text
    .normalize("NFD")
    .replace(/[\p{Diacritic}\u00ad]/gu, "")
    .replace(/[₀-₄]/g, (sign) => LOWERED[/** @type {keyof typeof LOWERED} */ (sign)])
    .toLowerCase();
