/** Asks the server while the keeper waits: one question at a time; a failure is said in plain words. */
import { html, useSignal } from "../../vendor/preact.js";
import { Icon } from "../icon.js";
import { trouble_said } from "../words/trouble_said.js";
import { offer, say } from "./record.js";

/** For a component: `ask` runs one thing at a time and answers whether it went well; `problem` says why not. */
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
    } catch (error) {
      problem.value = trouble_said(error);
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
export const offer_undo = (said, undoing) => offer(said, () => undoing().catch((error) => say(trouble_said(error))));

/** @param {{text: string}} props */
export const Problem = ({ text }) =>
  text && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${text}</span></p>`;
