/** What a keeper pastes, types or scans to get into a room: a link, its secret, or a short code for it. */
import { ask } from "./api.js";

/** @typedef {{secret: string} | {code: string}} WayIn */

/**
 * What a text means, null if it means neither. A link may stand among other words, as a message brings it. Whether it
 * names this server is not checked: one server may have several addresses.
 * @param {string} text @returns {WayIn | null}
 */
export function way_in(text) {
  const [, of_link] = /\/join\/?#([A-Za-z0-9_-]{8,200})/.exec(text) ?? [];
  if (of_link) return { secret: of_link };
  const [, bare] = /^\s*#?([A-Za-z0-9_-]{20,200})\s*$/.exec(text) ?? [];
  if (bare) return { secret: bare };
  const code = text.replace(/[\s-]/g, "").toUpperCase();
  return /^[A-Z0-9]{8}$/.test(code) ? { code } : null;
}

/**
 * The secret of a link, asked of the server where only its short code is known.
 * @param {Pick<import("./phone.js").Phone, "send">} phone @param {WayIn} way @returns {Promise<string>}
 * @throws {import("./api.js").Refused} 404: no such code; 410: its link is spent; 429: too many wrong codes
 * @throws {import("./api.js").Unreachable}
 */
export async function secret_of(phone, way) {
  if ("secret" in way) return way.secret;
  return (await ask(phone, { method: "POST", path: "/api/v1/join/code", body: way })).secret;
}
