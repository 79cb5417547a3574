/**
 * Moved stamps: stamps that lay in the future, and the stamps the server gave instead, `{as written: as taken}`.
 * They travel with each row and each edit of it, so that a restored server gives such a write no later place than
 * the one people have seen. Pure.
 */
/** @import { Moved, Op, Row } from "../types/stores.js" */

/** An op as the server took it. @param {Op} op @param {string} stamp the server's @returns {Op} */
export function taken_as(op, stamp) {
  if (stamp === op.stamp) return op;
  const moved = { ...op.moved };
  const written = Object.keys(moved).filter((stamp_written) => moved[stamp_written] === op.stamp);
  for (const stamp_written of written) moved[stamp_written] = stamp;
  // Never forward: a server does not move stamps forward, and would refuse to hear it.
  if (stamp < op.stamp) moved[op.stamp] = stamp;
  return { ...op, stamp, moved };
}

/**
 * What an edit of this row must tell the server: the moved stamps among those its author sees.
 * @param {Row | undefined} row @returns {{moved?: Moved}}
 */
export function moved_in(row) {
  if (!row?.moved) return {};
  const seen = [...Object.values(row.stamps), row.deleted, row.restored];
  const moved = Object.entries(row.moved).filter(([, taken]) => seen.includes(taken));
  return moved.length ? { moved: Object.fromEntries(moved) } : {};
}
