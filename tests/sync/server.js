/** The real server as a child process (server_process.py): one JSON line to it, one back, in turn. */
import { spawn } from "node:child_process";
import { createInterface } from "node:readline";

/** @typedef {Awaited<ReturnType<typeof start_server>>} Server */

/** @param {string} python @param {string} path the folder that holds the package `limnary` */
export async function start_server(python, path) {
  const script = new URL("server_process.py", import.meta.url).pathname;
  const child = spawn(python, [script], {
    stdio: ["pipe", "pipe", "inherit"],
    env: { ...process.env, PYTHONPATH: path },
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const read = async () => {
    const { value, done } = await lines.next();
    if (done) throw new Error("The server process ended");
    return JSON.parse(value);
  };
  await read();
  return {
    /** @param {string} what @param {Record<string, unknown>} [more] @returns {Promise<any>} the answer of `do_what` */
    ask(what, more = {}) {
      child.stdin.write(`${JSON.stringify({ do: what, ...more })}\n`);
      return read();
    },
    stop() {
      child.stdin.end();
      return new Promise((resolve) => child.on("exit", resolve));
    },
  };
}
