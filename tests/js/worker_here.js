/** Runs outlook_worker.js in this process, for tests; messages are cloned as between threads. */

/** The real worker's code, run in this process; `posts` counts what reached it. */
export async function a_worker() {
  /** @type {((event: {data: unknown}) => void)[]} */ const heard = [];
  // The part of a worker's own world that its code uses.
  /** @typedef {{addEventListener: (name: string, listener: typeof heard[number]) => void}} Hearing */
  /** @typedef {Hearing & {postMessage: (answer: unknown) => void}} Self */
  const world = /** @type {{self: Self}} */ (/** @type {unknown} */ (globalThis));
  world.self = { addEventListener: (_, listener) => heard.push(listener), postMessage: () => {} };
  await import(`../../pwa/workers/outlook_worker.js?${Math.random()}`);
  const self_now = world.self;
  /** @typedef {{shared?: unknown, kept?: unknown}} Post */
  /** @type {Post[]} */ const posts = [];
  /** @type {{posts: Post[], onmessage: ((event: {data: unknown}) => void) | null, [part: string]: unknown}} */
  const worker = { posts, onmessage: null, onerror: null, terminated: false, terminate, postMessage };
  return /** @type {Worker & typeof worker} */ (/** @type {unknown} */ (worker));

  function terminate() {
    worker.terminated = true;
  }

  /** @param {Post} data */
  function postMessage(data) {
    posts.push(data);
    setTimeout(() => {
      self_now.postMessage = (answer) => {
        if (!worker.terminated) worker.onmessage?.({ data: structuredClone(answer) });
      };
      world.self = self_now;
      heard.forEach((listener) => listener({ data: structuredClone(data) }));
    });
  }
}
