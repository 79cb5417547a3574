/** The salt that the Bench's form works out now, as a dose for one tank. Pure. */
import { choice_label, contracts, input_of } from "../contracts.js";
import { answer_of } from "./answer.js";

/** @import { Answer, Calculations } from "../types/contract.js" */
/** @import { Draft, Marks } from "./draft.js" */

/**
 * The dose for this tank's water; null if the form holds no complete calculation.
 * @param {{water_l: number}} tank @param {Draft | undefined} draft what stands in the Bench's form
 * @param {{system: string, marks: Marks}} manner
 */
export function salt_of(tank, draft, { system, marks }) {
  const spec = contracts().salt_dose;
  const { volume_l: _other, ...typed } = draft?.typed ?? {};
  if (Object.keys(typed).length === 0) return null;
  const outcome = answer_of(spec, { draft: { ...draft, typed }, tank: { volume_l: tank.water_l }, system, marks });
  if (!("answer" in outcome)) return null;
  const input = /** @type {Calculations["salt_dose"]["input"]} */ (/** @type {unknown} */ (outcome.payload));
  const answer = /** @type {Answer<"salt_dose">} */ (/** @type {unknown} */ (outcome.answer));
  const unit = /** @type {const} */ ("g");
  return {
    what: choice_label(input_of("salt_dose", "salt"), input.salt),
    what_code: input.salt,
    amount: answer.grams,
    unit,
    input,
    answer,
  };
}
