/** The parts of a refusal's words, read back by their own template, in the language in force. */
import { installed } from "../contracts.js";

/**
 * The parts that fill the template of `code` in a message, null if the message has another template.
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
