/** A refusal in words: the label of its field, the range in the unit shown, what is allowed. */
import { marks_of } from "../../figures/number_text.js";
import { wrong_words } from "../../bench/wrong_words.js";
import { chosen, t } from "../../i18n/words.js";
import { measures } from "../state/measures.js";

/**
 * "must be from 0.4 to 118 in. Allowed: ..."
 * @param {import("../../types/contract.js").Item | {label?: string} | undefined} spec of the field, undefined where
 * none is known
 * @param {{message: string, allowed: string}} error
 */
export function wrong_said(spec, error) {
  const { message, allowed } = wrong_words(spec, error, measures.value, marks_of(chosen()));
  return `${message}. ${t("allowed", { allowed })}`;
}

/**
 * Everything that was refused, in one line.
 * @param {import("../../contracts.js").InvalidInput} no
 * @param {readonly import("../../types/contract.js").Field[]} specs the fields that may be meant
 */
export const refusal_said = (no, specs) =>
  no.errors
    .map((error) => {
      const spec = specs.find(({ name }) => name === error.field);
      return `${spec?.label ?? error.field} ${wrong_said(spec, error)}`;
    })
    .join(" ");
