/** Workers that calculate what would hold up the screen, in the language spoken now. */
import { belief_worker } from "../advice/belief_worker.js";
import { installed } from "../contracts.js";

/** One more of them, started at its first question. */
export const outlook_worker = () =>
  belief_worker({
    start: () => new Worker("/calc/outlook_worker.js", { type: "module" }),
    shared: async () => installed(),
  });
