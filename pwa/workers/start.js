/** Workers for calculations that would block the screen, in the language of now. */
import { belief_worker } from "./asking.js";
import { installed } from "../contracts.js";

/** A new worker, started at its first question. */
export const outlook_worker = () =>
  belief_worker({
    start: () => new Worker("/workers/outlook_worker.js", { type: "module" }),
    shared: async () => installed(),
  });
