/** The worker of outlook_worker.js in this process, for tests: what it is told is cloned as between threads. */

/** The real worker's code, run in this process; `posts` counts what reached it. */
export async function a_worker() {
  const heard = [];
  globalThis.self = { addEventListener: (_, listener) => heard.push(listener), postMessage: () => {} };
  await import(`../../pwa/workers/outlook_worker.js?${Math.random()}`);
  const self_now = globalThis.self;
  const worker = { posts: [], onmessage: null, onerror: null, terminated: false };
  worker.terminate = () => (worker.terminated = true);
  worker.postMessage = (data) => {
    worker.posts.push(data);
    setTimeout(() => {
      self_now.postMessage = (answer) => !worker.terminated && worker.onmessage?.({ data: structuredClone(answer) });
      globalThis.self = self_now;
      heard.forEach((listener) => listener({ data: structuredClone(data) }));
    });
  };
  return worker;
}
