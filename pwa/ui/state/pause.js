/** Long work in steps: between two of them the browser answers taps and draws. */

/** Resolves as soon as the browser has done what it has to do. @returns {Promise<void>} */
export const pause = () =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

/** The browser's own: a story may set another one that stands still. Without a screen there is none. */
export const next_frame = globalThis.requestAnimationFrame?.bind(globalThis);

/** Carry out a work that may take a pause at each `yield`. @param {Iterable<unknown>} steps */
export async function step_by_step(steps) {
  for (const _step of steps) await pause();
}
