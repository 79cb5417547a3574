/** Asking the server while the keeper waits: one question at a time, and why not in plain words. */
import { html, useSignal } from "../../vendor/preact.js";
import { refusal } from "../../advice/sharing/refusal.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { offer, say } from "./record.js";

/** What to say of a failed call. @param {unknown} failed @returns {string} */
function refused_said(failed) {
  const why = refusal(failed);
  return "code" in why ? t(`refusal.${why.code}`) : why.words;
}

/** In a component: `ask` runs one thing at a time and answers whether it went well; `problem` says why not. */
export function use_ask() {
  const problem = useSignal("");
  const busy = useSignal(false);
  const ask = async (/** @type {() => Promise<unknown>} */ work) => {
    if (busy.value) return false;
    problem.value = "";
    busy.value = true;
    try {
      await work();
      return true;
    } catch (failed) {
      problem.value = refused_said(failed);
      return false;
    } finally {
      busy.value = false;
    }
  };
  return { problem, busy, ask };
}

/**
 * Say what was done on the server, with an undo that asks it again.
 * @param {string} said
 * @param {() => Promise<unknown>} undoing
 */
export const offer_undo = (said, undoing) => offer(said, () => undoing().catch((failed) => say(refused_said(failed))));

/** @param {{text: string}} props */
export const Problem = ({ text }) =>
  text && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${text}</span></p>`;
