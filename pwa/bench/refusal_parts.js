/** What a refusal's words were made of, read back by their own template, in whatever language is in force. */
import { installed } from "../contracts.js";

/**
 * The parts that fill the template of `code` in this message, or null if it was not made from it.
 * @param {string} code key of messages.json @param {string} message @returns {Record<string, string> | null}
 */
export function parts_of(code, message) {
  const escaped = installed().messages[code].replace(/[.*+?^$()|[\]\\]/g, "\\$&");
  return message.match(new RegExp(`^${escaped.replace(/\{(\w+)\}/g, "(?<$1>.+)")}$`))?.groups ?? null;
}

/**
 * The template of `code` with these parts.
 * @param {string} code
 * @param {Record<string, string>} parts
 * @returns {string}
 */
export const with_parts = (code, parts) => installed().messages[code].replace(/\{(\w+)\}/g, (_, name) => parts[name]);
