/** The system of measures on this phone: chosen once, kept, shown in every calculation. */
import { draft } from "./draft.js";

/** Countries where a tank is sold by the US gallon; elsewhere litres stand on the glass. */
const guess = () => (navigator.language.endsWith("-US") || navigator.language.endsWith("-LR") ? "us" : "metric");

/** @type {import("../vendor/preact.js").Signal<string>} */
export const measures = draft("measures", guess);
