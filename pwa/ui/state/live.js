/** The open fish room and the time of day, as signals: what is read through here is drawn anew when it changes. */
import { signal } from "../../vendor/preact.js";

/** @type {import("../../vendor/preact.js").Signal<any>} */
export const room = signal(null);
const changes = signal(0);
/** Now in ms by the clock that records are written by, moved on by the minute and when the app comes back into view. */
export const now = signal(Date.now());
export const online = signal(navigator.onLine);

/** @type {() => void} */
let stop = () => {};

/** Show this room from now on. @param {any} opened */
export function show(opened) {
  stop();
  room.value = opened;
  tick();
  stop = opened.on_change(() => {
    tick();
    changes.value += 1;
  });
}

/**
 * The server's clock as far as it is known: where the phone's own is slow, what was just read would lie ahead and count
 * for nothing.
 */
function tick() {
  now.value = Date.parse(room.peek().now());
}

/** Every record of a kind. @param {string} kind @returns {any[]} */
export const all = (kind) => (touch(), room.value.all(kind));
/** One record, or null. @param {string} kind @param {string | undefined} id @returns {any} */
export const get = (kind, id) => (touch(), (id && room.value.get(kind, id)) || null);
/** How far this phone is shared. */
export const sharing = () => (touch(), room.value.sharing());
/** The room with its readers live, for functions that gather from it. */
export const live_room = { all, get };

function touch() {
  return changes.value;
}

/** Keep `now` and `online` true. */
export function keep_time() {
  setInterval(tick, 60_000);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && tick());
  for (const event of ["online", "offline"]) addEventListener(event, () => (online.value = navigator.onLine));
}
