/** The worker that holds the belief, asked by promise: started at the first question, started anew after it failed. */

/** A phone that has not answered by now will not (assumption: ten times what the slowest needs). */
const PATIENCE_MS = 30_000;

/**
 * @param {{start: () => Worker, shared: () => Promise<any>, patience_ms?: number}} how
 * `start` makes the worker, `shared` brings the bundle of /shared.json that it reads first, and anew when it is another
 */
export function belief_worker({ start, shared, patience_ms = PATIENCE_MS }) {
  /** @type {Promise<Worker> | null} */ let running = null;
  /** @type {Map<number, {settle: (answer: any) => void, fail: (why: Error) => void, timer: any}>} */ const waiting =
    new Map();
  let count = 0;
  /** @type {any} */ let told = null;

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

  /** @param {{tank_id: string, name: string, input: any, kept?: any}} question @returns {Promise<any>} */
  return async function ask(question) {
    const bundle = await shared();
    running ??= begin().catch((failed) => {
      running = null;
      throw failed;
    });
    const worker = await running;
    if (told !== bundle) worker.postMessage({ shared: bundle });
    told = bundle;
    return new Promise((settle, fail) => {
      const ask = ++count;
      const timer = setTimeout(() => stop(worker, new Error("The forecast took too long.")), patience_ms);
      waiting.set(ask, { settle, fail, timer });
      worker.postMessage({ ask, ...question });
    });
  };
}
