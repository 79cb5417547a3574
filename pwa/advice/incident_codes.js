/** What can go wrong in a tank, by the codes that records hold, in the order in which it is offered. They stay. */
export const INCIDENT_CODES = [
  ...["gasping", "deaths", "ammonia", "chlorine", "hot", "cold", "power_cut", "overfed", "overdosed", "leak"],
  "not_found",
];
/** The tile of a note that says the same, so that the advice sees it too. @type {Record<string, string>} */
export const TILE_OF = { gasping: "at_surface" };
