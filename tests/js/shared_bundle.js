/** The bundle the server serves at /shared.json, read from disk for Node. */
import { readFileSync, readdirSync } from "node:fs";
import { calculations } from "../../pwa/calc/index.js";
import { install_calculations } from "../../pwa/contracts.js";

const root = new URL("../../shared_schema/", import.meta.url);
const json = (/** @type {string | URL} */ path) => JSON.parse(readFileSync(new URL(path, root), "utf8"));

/**
 * Every JSON file of one folder of shared_schema, by file name without its ending.
 * @param {string} name
 */
export function folder(name) {
  const files = readdirSync(new URL(`${name}/`, root))
    .filter((file) => file.endsWith(".json"))
    .sort();
  return Object.fromEntries(files.map((file) => [file.slice(0, -5), json(`${name}/${file}`)]));
}

/**
 * The whole bundle; all calculations are known from then on, as on every page but the first.
 * `any`: tests/test_contracts_complete.py checks the form of these files.
 * @returns {import("../../pwa/contracts.js").Bundle}
 */
export function shared_bundle() {
  install_calculations(calculations);
  return /** @type {any} */ ({
    calc: folder("calc"),
    tables: folder("tables"),
    records: folder("records"),
    messages: json("messages.json"),
    formats: json("formats.json"),
  });
}
