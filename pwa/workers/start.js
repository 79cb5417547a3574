/** Workers that calculate what would hold up the screen, in the language spoken now. */
import { belief_worker } from "./asking.js";
import { installed } from "../contracts.js";

/** One more of them, started at its first question. */
export const outlook_worker = () =>
  belief_worker({
    start: () => new Worker("/workers/outlook_worker.js", { type: "module" }),
    shared: async () => installed(),
  });
