/** Why a request to the server failed: as a code that has a text, or in the server's own words. Pure. */
import { Refused, Unreachable } from "./api.js";

/** @type {Record<number, string>} */
const BY_STATUS = {
  401: "signed-out",
  403: "not-allowed",
  404: "not-here",
  409: "conflict",
  410: "ended",
  426: "upgrade",
  429: "too-often",
};

/**
 * @param {unknown} failed what a call threw
 * @returns {{code: string} | {words: string}} `code` is one of unreachable, server-full, server-failed, last-owner,
 * invite-spent and the statuses' above
 * @throws what came from neither network nor server: a fault of this app
 */
export function refusal(failed) {
  if (failed instanceof Unreachable)
    return { code: failed.status === 507 ? "server-full" : failed.status ? "server-failed" : "unreachable" };
  if (!(failed instanceof Refused)) throw failed;
  const name =
    String(failed.problem.type ?? "")
      .split("/")
      .at(-1) ?? "";
  if (["last-owner", "invite-spent"].includes(name)) return { code: name };
  const code = BY_STATUS[failed.status];
  return code ? { code } : { words: failed.message };
}
