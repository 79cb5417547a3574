/** The first page. These screens are fetched together. */
export { Round } from "../screens/round.js";
