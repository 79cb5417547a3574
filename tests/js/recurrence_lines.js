/** The phone's recurrence rules as a line filter: {"task","from","to","most"} in, instants or {"bad": true} out. */
import { createInterface } from "node:readline";
import { occurrences } from "../../pwa/advice/tasks/recurrence.js";
import { BadRrule } from "../../pwa/advice/tasks/rrule_text.js";

for await (const line of createInterface({ input: process.stdin })) {
  const { task, from, to, most } = JSON.parse(line);
  let answer;
  try {
    answer = occurrences(task, from, to, most);
  } catch (no) {
    answer = no instanceof BadRrule ? { bad: true } : { broken: String(no) };
  }
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}
