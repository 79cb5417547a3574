/** The constants of the forecast's model. */
import { constants } from "./tables.js";

/** @typedef {Readonly<Record<string, number>>} Settings */

const GROUPS = [
  "metcalf_eddy_2014",
  "metcalf_eddy_nitrite_oxidisers",
  "nitrifier_water",
  "nitrifier_heat",
  "park_bae_2009",
  "nitrous_acid",
  "belief_water",
  "timmons_ebeling",
  "belief_prior",
  "belief_walk",
  "belief_reading",
  "belief_drift",
  "outlook",
];

/** Every constant of the outlook by name; tables/constants.json has units and provenance. @returns {Settings} */
export const settings = () => Object.freeze(Object.assign({}, ...GROUPS.map((group) => constants(group))));
