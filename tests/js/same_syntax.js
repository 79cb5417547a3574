/** Reads JSON lines {path, before, after}: prints each path whose syntax tree is another one after. */
import { createInterface } from "node:readline";
import { parse } from "espree";

const PLACES = new Set(["start", "end", "range", "loc", "raw"]);
const tree = (/** @type {string} */ code) =>
  JSON.stringify(parse(code, { ecmaVersion: "latest", sourceType: "module" }), (key, value) =>
    PLACES.has(key) && typeof value !== "object" ? undefined : value,
  );

for await (const line of createInterface({ input: process.stdin })) {
  const { path, before, after } = JSON.parse(line);
  if (tree(before) !== tree(after)) console.log(path);
}
