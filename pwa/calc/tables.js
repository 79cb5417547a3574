/** The shared tables (constants, limits, species ...) as the calculations read them. */

/** @import {TableName, Tables} from "../types/tables.js" */

/** @type {Partial<Tables>} */
let installed = {};
/** @type {Map<string, Readonly<Record<string, number>>>} */
const plain = new Map();

/** Make the tables known, before the first calculation. @param {Tables} tables */
export function install(tables) {
  installed = tables;
  plain.clear();
}

/**
 * One table, the content of shared_schema/tables/NAME.json.
 * @template {TableName} T
 * @param {T} name
 * @returns {Tables[T]}
 */
export function table(name) {
  const found = installed[name];
  if (!found) throw new Error(`table ${name} is not installed`);
  return found;
}

/** The plain values of one group of constants.json, by name. @param {string} group */
export function constants(group) {
  let values = plain.get(group);
  if (!values) {
    const entries = Object.entries(table("constants").groups[group].values);
    values = Object.freeze(Object.fromEntries(entries.map(([name, entry]) => [name, entry.value])));
    plain.set(group, values);
  }
  return values;
}
