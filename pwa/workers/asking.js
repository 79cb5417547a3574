/** The worker that calculates, asked by promise: started at the first question, and again after it failed. */

/** @import { Bundle } from "../contracts.js" */
/** @import { Answered, Question } from "./outlook_worker.js" */

/** A worker that has not answered by then never will (assumption: ten times what the slowest phone needs). */
const PATIENCE_MS = 30_000;

/**
 * @param {{start: () => Worker, shared: () => Promise<Bundle>, patience_ms?: number}} how
 * `start` makes the worker; `shared` brings the bundle of /shared.json, which the worker reads first and whenever it
 * is another
 */
export function belief_worker({ start, shared, patience_ms = PATIENCE_MS }) {
  /** @type {Promise<Worker> | null} */ let running = null;
  /** @typedef {ReturnType<typeof setTimeout>} Timer */
  /** @type {Map<number, {settle: (answer: Answered) => void, fail: (why: Error) => void, timer: Timer}>} */
  const waiting = new Map();
  let count = 0;
  /** @type {Bundle | null} */ let told = null;

  async function begin() {
    const worker = start();
    worker.onmessage = ({ data }) => {
      const asked = waiting.get(data.ask);
      if (!asked) return;
      waiting.delete(data.ask);
      clearTimeout(asked.timer);
      asked.settle(data);
    };
    worker.onerror = (event) => stop(worker, new Error(event.message || "The forecast stopped."));
    told = null;
    return worker;
  }

  /** @param {Worker} worker @param {Error} why */
  function stop(worker, why) {
    worker.terminate();
    running = null;
    for (const { fail, timer } of waiting.values()) {
      clearTimeout(timer);
      fail(why);
    }
    waiting.clear();
  }

  /** @param {Question} question @returns {Promise<Answered>} */
  return async function ask(question) {
    const bundle = await shared();
    running ??= begin().catch((error) => {
      running = null;
      throw error;
    });
    const worker = await running;
    if (told !== bundle) worker.postMessage({ shared: bundle });
    told = bundle;
    return new Promise((settle, fail) => {
      const ask = ++count;
      const timer = setTimeout(() => stop(worker, new Error("The forecast took too long.")), patience_ms);
      waiting.set(ask, { settle, fail, timer });
      // One text is copied faster than thousands of small objects.
      worker.postMessage({ ask, ...question, input: JSON.stringify(question.input) });
    });
  };
}
