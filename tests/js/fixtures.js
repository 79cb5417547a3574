/** Records and facts as a test says them: a misspelt field or a wrong type fails the type check. */
import assert from "node:assert/strict";

/** @typedef {import("../../pwa/types/records.js").RecordKind} RecordKind */
/** @typedef {import("../../pwa/types/advice.js").Facts} Facts */
/**
 * @template {RecordKind} K
 * @typedef {import("../../pwa/types/views.js").View<K>} View
 */
/**
 * A type of which any part may be left out, at any depth.
 * @template T
 * @typedef {T extends readonly (infer E)[] ? readonly Some<E>[] : T extends object ? {[P in keyof T]?: Some<T[P]>} : T}
 * Some
 */

/**
 * A record, as far as the test says it: other fields are not there.
 * @template {RecordKind} K
 * @param {K} _kind
 * @param {NoInfer<Some<View<K>>>} fields
 */
export const view = (_kind, fields) => /** @type {View<K>} */ (/** @type {unknown} */ (fields));

/**
 * A value of the type that its place asks for, with only the parts that the test needs.
 * @template T
 * @param {NoInfer<Some<T>>} fields
 */
export const some = (fields) => /** @type {T} */ (/** @type {unknown} */ (fields));

/**
 * Records by kind, as the advice reads them.
 * @param {{[K in RecordKind]?: Some<View<K>>[]}} lists
 * @returns {import("../../pwa/types/views.js").Records}
 */
export const records_of = (lists) => {
  /** @type {<K extends RecordKind>(kind: K) => View<K>[]} */
  const all = (kind) => some(lists[kind] ?? []);
  return { all, get: (kind, id) => all(kind).find((one) => one.id === id) ?? null };
};

/** Facts of a tank, as far as the test says them. @param {Some<Facts>} fields */
export const as_facts = (fields) => /** @type {Facts} */ (/** @type {unknown} */ (fields));

/**
 * A value that must be there.
 * @template T
 * @param {T} value
 * @returns {NonNullable<T>}
 */
export function there(value) {
  assert.ok(value !== null && value !== undefined, "it must be there");
  return value;
}

/**
 * Both figures are there and as close as floats allow, or within `tolerance` of the wanted one.
 * @param {number | null | undefined} got @param {number | null | undefined} wanted @param {number} [tolerance]
 */
export const near = (got, wanted, tolerance = 1e-9) =>
  assert.ok(
    Math.abs(there(got) - there(wanted)) <= tolerance * Math.max(1, Math.abs(there(wanted))),
    `${got} is not ${wanted}`,
  );

/** @typedef {import("../../pwa/types/advice.js").Reason} Reason */
/**
 * The members of R whose code is one of C.
 * @template C @template [R=Reason]
 * @typedef {R extends {code: infer D} ? ([C & D] extends [never] ? never : R) : never} ReasonOf
 */
/**
 * The reasons of these codes, with the parts that those have.
 * @template {Reason["code"]} C
 * @param {Pick<import("../../pwa/types/advice.js").Advice, "reasons">} advice
 * @param {C[]} codes
 */
export const reasons_of = ({ reasons }, ...codes) =>
  /** @type {ReasonOf<C>[]} */ (reasons.filter(({ code }) => /** @type {string[]} */ (codes).includes(code)));
