/** The open fish room and the time of day, as signals: what a component reads here is drawn again when it changes. */
import { MINUTE } from "../../figures/durations.js";
import { signal } from "../../vendor/preact.js";
import { next_frame } from "./pause.js";

/** @typedef {import("../../data/fish_room.js").FishRoom} FishRoom */

/** The open fish room. Nothing is drawn before `show` has put one here. */
export const room = signal(/** @type {FishRoom} */ (/** @type {unknown} */ (null)));
const changes = signal(0);
/**
 * Now in ms by the clock that records are written by; it moves on by the minute and when the app comes back into view.
 */
export const now = signal(Date.now());
export const online = signal(navigator.onLine);

/** @type {() => void} */
let stop = () => {};

/** Show this room from now on. @param {FishRoom} opened */
export function show(opened) {
  stop();
  room.value = opened;
  tick();
  stop = opened.on_change(
    once_a_frame(() => {
      tick();
      changes.value += 1;
    }),
  );
}

/** `work` at once, and for all that comes within the same frame, once more after it. @param {() => void} work */
function once_a_frame(work) {
  let waiting = false;
  let again = false;
  return () => {
    again = waiting;
    if (waiting || !next_frame || document.hidden) return waiting || work();
    waiting = true;
    next_frame(() => {
      waiting = false;
      if (again) work();
      again = false;
    });
    work();
  };
}

/**
 * By the server's clock as far as it is known: on a phone whose own clock is slow, a reading just made would lie in the
 * future and be ignored.
 */
function tick() {
  now.value = Date.parse(room.peek().now());
}

/** Every record of a kind. @type {import("../../types/views.js").Records["all"]} */
export function all(kind) {
  touch();
  return room.value.all(kind);
}

/** One record, or null. @type {import("../../types/views.js").Records["get"]} */
export function get(kind, id) {
  touch();
  return (id && room.value.get(kind, id)) || null;
}

/**
 * A record of any kind. Its fields have the type `any`, because its kind, known only when the app runs, says which
 * fields it has.
 * @typedef {{id: string, kind: string, meta: import("../../types/views.js").Meta, [field: string]: any}} SomeRecord
 */

/** `all` for such a kind. @param {string} kind @returns {SomeRecord[]} */
export const all_of_kind = (kind) => all(/** @type {import("../../types/records.js").RecordKind} */ (kind));

/** `get` for such a kind. @param {string} kind @param {string | undefined} id @returns {SomeRecord | null} */
export const get_of_kind = (kind, id) => get(/** @type {import("../../types/records.js").RecordKind} */ (kind), id);

/** How far this phone is shared. */
export function sharing() {
  touch();
  return room.value.sharing();
}

/** One tank's records of a kind, oldest first. @type {NonNullable<import("../../types/views.js").Records["of"]>} */
export function of(kind, tank_id) {
  touch();
  return room.value.of(kind, tank_id);
}

/** How much of the room is here, while it is taken in for the first time; else null. */
export function taking_in() {
  touch();
  return room.value.taking_in();
}

/** The room for functions that gather from it, read live. */
export const live_room = { all, get, of };

function touch() {
  return changes.value;
}

/** Keep `now` and `online` true. */
export function keep_time() {
  setInterval(tick, MINUTE);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && tick());
  for (const event of ["online", "offline"]) addEventListener(event, () => (online.value = navigator.onLine));
}
