/**
 * The phone's calculations as a line filter: {"name","input"} in, the answer or {"error"} out, like `limnary calc
 * --lines`.
 */
import { createInterface } from "node:readline";
import { InvalidInput, install, run_named } from "../../pwa/contracts.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

for await (const line of createInterface({ input: process.stdin })) {
  let answer;
  try {
    const { name, input } = JSON.parse(line);
    answer = run_named(name, input);
  } catch (bad) {
    answer = { error: bad instanceof InvalidInput ? { errors: bad.errors } : { title: String(bad) } };
  }
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}
