/** What the server refused, said so that its keeper knows what it was, what it said and why it was refused. Pure. */
import { label_of, value_said } from "./field_said.js";

/** Reasons that have their own words; the others are quoted. */
export const REASONS = [
  "role",
  "fields",
  "envelope",
  "other-kind",
  "insert-only",
  "membership-ended",
  "too-large",
  "invalid",
];

/**
 * @typedef {{
 *   op: string, kind: string, doing: "new" | "change" | "remove" | "restore", name: string | null, tank: string | null,
 *   said: {label: string, value: string}[], by: string | null, at: string,
 * why: string, reason: string, may_now: boolean, wrong: {label: string, message: string, allowed: string}[], follows:
 * number,
 * }} Refusal `why`: one of REASONS or "other"; `follows`: changes of the same record that wait for this one
 */

/**
 * The refused ops, oldest first.
 * @param {any[]} entries of the outbox that need their keeper
 * @param {import("./field_said.js").Words & {
 *   kinds: Record<string, any>,
 *   may: (kind: string) => boolean,
 *   held?: {kind: string, id: string}[],
 * }} room the kinds, the records as they stand, what the keeper may write now, the records of ops that wait
 * @returns {Refusal[]}
 */
export function refusals(entries, room) {
  return entries
    .toSorted((a, b) => a.n - b.n)
    .map((entry) => {
      const { op, by, at, creates, reason, errors = [] } = entry;
      const kind = room.kinds[op.kind];
      const spec = (/** @type {string} */ name) => kind?.fields.find((/** @type {any} */ field) => field.name === name);
      const record = room.get(op.kind, op.id);
      const fields = op.fields ?? {};
      const doing = { put: creates ? "new" : "change", del: "remove", restore: "restore" }[
        /** @type {"put" | "del" | "restore"} */ (op.type)
      ];
      const tank = fields.tank ?? record?.tank;
      return {
        op: op.op,
        kind: op.kind,
        doing: /** @type {Refusal["doing"]} */ (doing),
        name: fields.name ?? record?.name ?? null,
        tank: (tank && room.get("tank", tank)?.name) ?? null,
        said: Object.entries(fields)
          .filter(([name]) => !["tank", "at", ...(doing === "new" ? ["name"] : [])].includes(name))
          .map(([name, value]) => ({ label: label_of(spec(name), name), value: value_said(spec(name), value, room) })),
        by,
        at: fields.at ?? at,
        why: REASONS.includes(reason) ? reason : "other",
        reason,
        may_now: room.may(op.kind),
        wrong: errors.map((/** @type {any} */ one) => ({
          label: label_of(spec(one.field), one.field),
          message: one.message,
          allowed: one.allowed,
        })),
        follows: creates ? (room.held ?? []).filter((one) => one.kind === op.kind && one.id === op.id).length : 0,
      };
    });
}
