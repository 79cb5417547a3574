/**
 * Stamps that lay in the future and what the server took them for: `{as written: as taken}`, with each row and
 * each edit of it. A restored server would else give such a write a later place than the one people have seen. Pure.
 */

/** An op as the server took it. @param {any} op @param {string} stamp the server's @returns {any} */
export function taken_as(op, stamp) {
  if (stamp === op.stamp) return op;
  const moved = { ...op.moved };
  const written = Object.keys(moved).filter((one) => moved[one] === op.stamp);
  for (const one of written) moved[one] = stamp;
  // Never forward: a server does not do that, and would refuse to hear it.
  if (stamp < op.stamp) moved[op.stamp] = stamp;
  return { ...op, stamp, moved };
}

/** What an edit of this row must tell: the moved stamps among those its author sees. @param {any | undefined} row @returns {{moved?: Record<string, string>}} */
export function moved_in(row) {
  if (!row?.moved) return {};
  const seen = [...Object.values(row.stamps), row.deleted, row.restored];
  const moved = Object.entries(row.moved).filter(([, taken]) => seen.includes(taken));
  return moved.length ? { moved: Object.fromEntries(moved) } : {};
}
