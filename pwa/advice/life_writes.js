/** What one entry about animals or plants writes: a move is two records, a correction takes the place of both. Pure. */

/** @typedef {{type: "put" | "del", kind: string, id: string, fields?: Record<string, any>}} Write */

/**
 * @param {"stock_change" | "planting"} kind @param {Record<string, any>} fields of the record, `at` and `tank` among them
 * @param {() => string} new_id @param {any} [corrects] the record that this one corrects @param {any} [half] the other half of the move that it was
 * @returns {Write[]} for one transaction
 */
export function life_writes(kind, fields, new_id, corrects, half) {
  const put = (/** @type {Record<string, any>} */ said, /** @type {any} */ old) => ({ type: /** @type {const} */ ("put"), kind, id: new_id(), fields: { ...said, ...(old ? { supersedes: old.id } : {}) } });
  const writes = /** @type {Write[]} */ ([put(fields, corrects)]);
  if (fields.change === "move_out") {
    const { cause: _cause, ...both } = fields;
    writes.push(put({ ...both, tank: fields.other_tank, other_tank: fields.tank, change: "move_in" }, half));
  } else if (half) writes.push({ type: "del", kind, id: half.id });
  return writes;
}
