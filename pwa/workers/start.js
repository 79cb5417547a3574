/** Workers for calculations that would block the screen, in the language of now. */
import { belief_worker } from "./asking.js";
import { installed } from "../contracts.js";

const ADDRESS = typeof OUTLOOK_WORKER === "undefined" ? "/workers/outlook_worker.js" : OUTLOOK_WORKER;

/** A new worker, started at its first question. */
export const outlook_worker = () =>
  belief_worker({
    start: () => new Worker(ADDRESS, { type: "module" }),
    shared: async () => installed(),
  });
