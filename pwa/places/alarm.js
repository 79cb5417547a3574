/** When it goes wrong. These screens are fetched together. */
export { Incident } from "../screens/incident.js";
export { Incidents } from "../screens/incidents.js";
