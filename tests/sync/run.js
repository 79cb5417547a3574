/**
 * Run seeds and print one JSON line:
 * node run.js --from 1 --seeds 100 [--every 5] --steps 80 --pwa DIR --server DIR --python PATH [--trace] [--seconds 60]
 */
import { parseArgs } from "node:util";
import { load_core } from "./core.js";
import { start_server } from "./server.js";
import { World } from "./world.js";

/** @typedef {import("./invariants.js").Violation} Violation */

/** @param {string} path */
const here = (path) => new URL(path, import.meta.url).pathname;
const { values } = parseArgs({
  options: {
    from: { type: "string", default: "1" },
    seeds: { type: "string", default: "100" },
    every: { type: "string", default: "1" },
    steps: { type: "string", default: "80" },
    pwa: { type: "string", default: here("../../pwa") },
    server: { type: "string", default: here("../../server") },
    python: { type: "string", default: "python3" },
    seconds: { type: "string", default: "1000000" },
    trace: { type: "boolean", default: false },
  },
});

console.warn = () => {};
const server = await start_server(values.python, values.server);
const core = await load_core(values.pwa);
const first = Number(values.from);
/** @type {Record<string, number>} */ const total = {};
/** @type {{from: number, seeds: number, violation: {seed: number, words: string, stack?: string} | null}} */
const report = { from: first, seeds: 0, violation: null };
const until = Date.now() + 1000 * Number(values.seconds);
for (let seed = first; seed < first + Number(values.seeds) && Date.now() < until; seed += Number(values.every)) {
  const world = new World(core, server, seed, { trace: values.trace });
  // An unhandled rejection fails the seed too.
  const stray = (/** @type {Violation} */ failed) => (world.invariants.failed ??= failed);
  process.on("unhandledRejection", stray);
  try {
    await world.run(Number(values.steps));
  } catch (caught) {
    const violated = /** @type {Error} */ (caught);
    report.violation = { seed, words: world.invariants.failed?.message ?? violated.message, stack: violated.stack };
  }
  process.off("unhandledRejection", stray);
  world.close();
  report.seeds++;
  if (report.violation) console.error(JSON.stringify(report.violation));
  if (report.seeds % 500 === 0) console.error(`${report.seeds} seeds up to ${seed}: no violation`);
  for (const [what, count] of Object.entries(world.counts)) total[what] = (total[what] ?? 0) + count;
  if (report.violation) break;
}
await server.stop();
console.log(JSON.stringify({ ...report, counts: total }));
