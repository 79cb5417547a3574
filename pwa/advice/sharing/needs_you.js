/** What the server refused: which record it was, what it said, and why it was refused. Pure. */
import { find_field } from "../../contracts.js";
import { label_of, value_said } from "./field_said.js";

/** @import { FieldError } from "../../contracts.js" */
/** @import { Kind } from "../../types/contract.js" */
/** @import { Words } from "./field_said.js" */

/** Reasons with a text of their own; others are quoted. */
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
 * @typedef {{n: number, op: {op: string, kind: string, id: string, type: string, fields?: Record<string, unknown>},
 *   by: string | null, at: string, creates?: boolean, reason?: string, errors?: FieldError[]}} Entry of the outbox
 * @typedef {Words & {
 *   kinds: Record<string, Kind | undefined>,
 *   may: (kind: string) => boolean,
 *   held?: {kind: string, id: string}[],
 * }} Here the kinds, the records as they stand, what the keeper may write now, the records of ops that wait
 */

/**
 * The refused ops, oldest first.
 * @param {Entry[]} entries of the outbox that need their keeper
 * @param {Here} here
 * @returns {Refusal[]}
 */
export const refusals = (entries, here) =>
  [...entries].sort((a, b) => a.n - b.n).map((entry) => refusal_of(entry, here));

/** @param {Entry} entry @param {Here} here @returns {Refusal} */
function refusal_of({ op, by, at, creates = false, reason = "", errors = [] }, here) {
  const specs = here.kinds[op.kind]?.fields ?? [];
  const record = here.get(op.kind, op.id);
  const { fields = {} } = op;
  const doing = op.type === "put" ? (creates ? "new" : "change") : op.type === "del" ? "remove" : "restore";
  const tank_id = text(fields.tank) ?? record?.tank;
  // These are shown above the other fields.
  const said_above = ["tank", "at", ...(doing === "new" ? ["name"] : [])];
  return {
    op: op.op,
    kind: op.kind,
    doing,
    name: text(fields.name) ?? record?.name ?? null,
    tank: (tank_id && here.get("tank", tank_id)?.name) || null,
    said: Object.entries(fields)
      .filter(([name]) => !said_above.includes(name))
      .map(([name, value]) => {
        const spec = find_field(specs, name);
        return { label: label_of(spec, name), value: value_said(spec, value, here) };
      }),
    by,
    at: text(fields.at) ?? at,
    why: REASONS.includes(reason) ? reason : "other",
    reason,
    may_now: here.may(op.kind),
    wrong: errors.map(({ field, message, allowed }) => ({
      label: label_of(find_field(specs, field), field),
      message,
      allowed,
    })),
    follows: creates ? (here.held ?? []).filter((one) => one.kind === op.kind && one.id === op.id).length : 0,
  };
}

/** @param {unknown} value */
const text = (value) => (typeof value === "string" ? value : undefined);
