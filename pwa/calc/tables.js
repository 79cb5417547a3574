/** The shared tables (constants, limits, species ...) as the calculations read them. */

/** @type {Record<string, any>} */
let installed = {};
/** @type {Map<string, Readonly<Record<string, number>>>} */
const plain = new Map();

/** Make the tables known; once, before the first calculation. @param {Record<string, any>} tables */
export function install(tables) {
  installed = tables;
  plain.clear();
}

/** One table, shared_schema/tables/NAME.json, as it stands. @param {string} name @returns {any} */
export function table(name) {
  if (!(name in installed)) throw new Error(`table ${name} is not installed`);
  return installed[name];
}

/** The plain values of one group of constants.json, by name. @param {string} group */
export function constants(group) {
  let values = plain.get(group);
  if (!values) {
    const entries = Object.entries(table("constants").groups[group].values);
    values = Object.freeze(
      Object.fromEntries(entries.map(([name, entry]) => [name, /** @type {any} */ (entry).value])),
    );
    plain.set(group, values);
  }
  return values;
}
