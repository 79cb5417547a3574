/** Traces for the Python tests: a line of {records, tank, now, days} in, a line of what the phone traces out. */
import { createInterface } from "node:readline";
import { shared_between, trace } from "../../pwa/advice/life/trace.js";

for await (const line of createInterface({ input: process.stdin })) {
  const { records, tank, now, days } = JSON.parse(line);
  console.log(JSON.stringify(trace(tank, shared_between(records), { now, days })));
}
