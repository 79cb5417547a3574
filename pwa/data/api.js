/** Calls to the server: one shape in, one shape out, a time limit, and never a guess at a strange answer. */

/** @import { FieldError } from "../contracts.js" */

/**
 * @typedef {{
 *   method: string, path: string, key?: string, body?: unknown, bytes?: Blob, timeout_ms?: number, wants?: "bytes",
 * }} Outgoing
 */
/**
 * `body` is parsed JSON, null if there was none; a Blob where bytes were wanted. It is `any` because nothing is known
 * of it until its receiver has checked it.
 * @typedef {{status: number, retry_after_ms: number | null, body: any}} Incoming
 */

/** The server could not be reached, failed (`status`), or what answered is not it (a portal's sign-in page). */
export class Unreachable extends Error {
  /** @param {string} message @param {{cause?: unknown, status?: number, retry_after_ms?: number | null}} [more] */
  constructor(message, { cause, status = 0, retry_after_ms = null } = {}) {
    super(message, { cause });
    this.status = status;
    this.retry_after_ms = retry_after_ms;
  }
}

/** The server refused; `problem` is its problem details (RFC 9457). */
export class Refused extends Error {
  /** @param {Incoming} answer */
  constructor(answer) {
    super(answer.body?.detail ?? answer.body?.title ?? `The server answered ${answer.status}`);
    this.status = answer.status;
    this.retry_after_ms = answer.retry_after_ms;
    this.problem = answer.body ?? {};
    /** @type {FieldError[]} */
    this.errors = answer.body?.errors ?? [];
  }
}

const USUAL_LIMIT_MS = 20_000;
/** Shorter bodies are sent uncompressed. */
const WORTH_PACKING = 1000;

/**
 * Send through fetch. Bodies over 1 kB travel compressed where the browser can do it.
 * @param {Outgoing} out @returns {Promise<Incoming>}
 * @throws {Unreachable}
 */
export async function fetch_send({ method, path, key, body, bytes, wants, timeout_ms = USUAL_LIMIT_MS }) {
  /** @type {Record<string, string>} */ const headers = { Accept: "application/json" };
  if (key) headers.Authorization = `Bearer ${key}`;
  const load = bytes ? with_bytes(bytes, headers) : body === undefined ? undefined : await with_json(body, headers);
  const limit = new AbortController();
  const timer = setTimeout(() => limit.abort(), timeout_ms);
  try {
    const answer = await fetch(path, {
      method,
      headers,
      body: load,
      signal: limit.signal,
      cache: "no-store",
      redirect: "error",
    });
    const retry_after_ms = retry_after(answer.headers.get("Retry-After"));
    const got = wants === "bytes" && answer.ok ? await answer.blob() : parsed(answer, await answer.text());
    return { status: answer.status, retry_after_ms, body: got };
  } catch (failed) {
    if (failed instanceof Unreachable) throw failed;
    throw new Unreachable("The server could not be reached", { cause: failed });
  } finally {
    clearTimeout(timer);
  }
}

/** @param {Blob} bytes @param {Record<string, string>} headers to complete */
function with_bytes(bytes, headers) {
  headers["Content-Type"] = bytes.type || "application/octet-stream";
  return bytes;
}

/** @param {unknown} body @param {Record<string, string>} headers to complete */
async function with_json(body, headers) {
  const text = JSON.stringify(body);
  headers["Content-Type"] = "application/json";
  if (text.length <= WORTH_PACKING || typeof CompressionStream !== "function") return text;
  headers["Content-Encoding"] = "gzip";
  return new Response(new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"))).blob();
}

/** The JSON of an answer, null if it has none. @param {Response} answer @param {string} text */
function parsed(answer, text) {
  if (text === "") return null;
  if (!/\bjson\b/.test(answer.headers.get("Content-Type") ?? "")) {
    if (answer.status >= 500) return null;
    throw new Unreachable("Something other than the server answered");
  }
  try {
    return JSON.parse(text);
  } catch (broken) {
    throw new Unreachable("The answer broke off", { cause: broken });
  }
}

/** Seconds only (RFC 9110, 10.2.3); a date counts as no header. @param {string | null} header */
const retry_after = (header) => (header !== null && /^\d+$/.test(header) ? Number(header) * 1000 : null);

/**
 * Ask, and return the body of a 2xx.
 * @param {Pick<import("./phone.js").Phone, "send">} phone @param {Outgoing} out
 * @returns {Promise<any>} unchecked, as in Incoming
 * @throws {Unreachable} no network, or a 5xx
 * @throws {Refused} any other status
 */
export async function ask(phone, out) {
  const answer = await phone.send(out);
  const { status, retry_after_ms } = answer;
  if (status >= 500)
    throw new Unreachable(answer.body?.title ?? `The server answered ${status}`, { status, retry_after_ms });
  if (status < 200 || status >= 300) throw new Refused(answer);
  return answer.body;
}
