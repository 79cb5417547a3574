/** Whatever was caught, in words for the keeper. */
import { ArchiveBroken, NotSaved } from "../../data/fish_room.js";
import { Refused, Unreachable } from "../../data/api.js";
import { refusal } from "../../data/refusal.js";
import { InvalidInput } from "../../contracts.js";
import { t } from "../../i18n/words.js";
import { refusal_said } from "./refusal_said.js";

/**
 * A refusal in its own words. Anything else is a fault of the app: it goes to the console, and the keeper reads that
 * the app failed and that nothing typed is lost.
 * @param {unknown} caught
 * @param {readonly import("../../types/contract.js").Field[]} [specs] of the fields that a refused input may name
 */
export function trouble_said(caught, specs = []) {
  if (caught instanceof InvalidInput) return refusal_said(caught, specs);
  if (caught instanceof NotSaved) return t(`not_saved.${caught.reason}`);
  if (caught instanceof ArchiveBroken) return t("archive.broken", { lines: caught.lines.join("; ") });
  if (caught instanceof Refused || caught instanceof Unreachable) {
    const why = refusal(caught);
    return "code" in why ? t(`refusal.${why.code}`) : why.words;
  }
  console.error(caught);
  return t("trouble.unexpected");
}
