/** The salt worked out last on the Bench, as a dose for one tank. Pure. */
import { choice_label, contracts, input_of } from "../contracts.js";
import { answer_of } from "./answer.js";

/**
 * The dose for this tank's water; null if the form holds no complete calculation.
 * @param {any} tank @param {any} draft what stands in the Bench's form @param {{system: string, marks: any}} manner
 * @returns {{what: string, what_code: string, amount: number, unit: "g", input: any, answer: any} | null}
 */
export function salt_of(tank, draft, { system, marks }) {
  const spec = contracts().salt_dose;
  const { volume_l: _other, ...typed } = draft?.typed ?? {};
  if (Object.keys(typed).length === 0) return null;
  const outcome = answer_of(spec, { draft: { ...draft, typed }, tank: { volume_l: tank.water_l }, system, marks });
  if (!("answer" in outcome)) return null;
  return {
    what: choice_label(input_of("salt_dose", "salt"), outcome.payload.salt),
    what_code: outcome.payload.salt,
    amount: outcome.answer.grams,
    unit: "g",
    input: outcome.payload,
    answer: outcome.answer,
  };
}
