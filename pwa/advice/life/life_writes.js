/**
 * What one entry about animals or plants writes, and where it is corrected: a move is two records, and a correction
 * supersedes both. Pure.
 */

import { other_half } from "./stock.js";

/** @import { RecordsAndEarlier } from "../../types/views.js" */
/** @import { Move } from "./stock.js" */
/** @import { Write } from "../journal/timeline.js" */

/** The page of a tank that lists such entries. @type {Record<string, string>} */
export const LIFE_PAGE = { stock_change: "stock", planting: "plants" };

/**
 * @param {"stock_change" | "planting"} kind
 * @param {Record<string, unknown>} fields of the record, `at` and `tank` among them
 * @param {() => string} new_id
 * @param {Move | null} [corrects] the record that this one corrects
 * @param {Move | null} [half] the other half of the move that it was
 * @param {Move[]} [earlier] what that half said before corrections
 * @returns {Write[]} for one transaction
 */
export function life_writes(kind, fields, new_id, corrects, half, earlier = []) {
  const put = (/** @type {Record<string, unknown>} */ said, /** @type {Move | null | undefined} */ old) => ({
    type: /** @type {const} */ ("put"),
    kind,
    id: new_id(),
    fields: { ...said, ...(old ? { supersedes: old.id } : {}) },
  });
  const writes = /** @type {Write[]} */ ([put(fields, corrects)]);
  if (fields.change === "move_out") {
    const { cause: _cause, cause_code: _code, ...both } = fields;
    writes.push(put({ ...both, tank: fields.other_tank, other_tank: fields.tank, change: "move_in" }, half));
  } else if (half) writes.push(...[half, ...earlier].map(gone));
  return writes;
}

/** @param {{kind: string}} record @returns {record is Move} */
export const is_life = (record) => record.kind in LIFE_PAGE;

/**
 * The writes that remove an entry, the other half of its move, and everything both said before corrections.
 * @param {RecordsAndEarlier} room
 * @param {Move} one
 * @returns {Write[]}
 */
export function life_removal(room, one) {
  const half = other_half(one, /** @type {Move[]} */ (room.all(one.kind)));
  const records = half ? [one, half] : [one];
  return [...records, ...records.flatMap(({ kind, id, supersedes }) => (supersedes ? room.earlier(kind, id) : []))].map(
    gone,
  );
}

/**
 * The form that corrects an entry; a move is corrected in the tank where it began, and takes its other half along.
 * @param {Move} one
 * @param {readonly Move[]} all of its kind
 * @param {string} then the page to come back to
 */
export function correct_path(one, all, then) {
  const { tank, id } = (one.change === "move_in" ? other_half(one, all) : null) ?? one;
  return `/tank/${tank}/${LIFE_PAGE[one.kind]}/new?corrects=${id}&then=${encodeURIComponent(then)}`;
}

/** @param {Pick<Move, "kind" | "id">} record @returns {Write} */
const gone = ({ kind, id }) => ({ type: "del", kind, id });
