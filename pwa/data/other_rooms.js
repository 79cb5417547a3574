/** The rooms that are not on the screen are shared too: what waits in them goes out, what others wrote comes in. */
import { rooms } from "./identity.js";
import { start } from "./sync.js";

/**
 * Keep every open room but `shown` shared until the returned function is called.
 * @param {import("./phone.js").Phone} phone @param {string} shown @returns {Promise<() => void>}
 */
export async function share_others(phone, shown) {
  const others = (await rooms(phone)).filter(({ id, ended }) => id !== shown && !ended);
  const stops = others.map(({ id }) => start(unseen(phone, id)));
  return () => stops.forEach((stop) => stop());
}

/** A room of which nothing is on the screen: other tabs are told, nothing is read anew here. @param {import("./phone.js").Phone} phone @param {string} id @returns {import("./sync.js").Room} */
function unseen(phone, id) {
  const refresh = (/** @type {any} */ keys) => phone.tell({ room: id, keys });
  return {
    inner: {
      phone,
      id,
      refresh,
      refresh_state: async () => refresh([]),
      reread: async () => {},
      on_write: () => () => {},
    },
  };
}
