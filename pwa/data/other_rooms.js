/** The rooms that are not on the screen are shared too: what waits in them goes out, what others wrote comes in. */
import { rooms } from "./identity.js";
import { start } from "./sync.js";

/**
 * Keep every open room but `shown_id` shared until the returned function is called.
 * @param {import("./phone.js").Phone} phone @param {string} shown_id @returns {Promise<() => void>}
 */
export async function share_others(phone, shown_id) {
  const others = (await rooms(phone)).filter(({ id, ended }) => id !== shown_id && !ended);
  const stops = others.map(({ id }) => start(phone, id, null));
  return () => stops.forEach((stop) => stop());
}
