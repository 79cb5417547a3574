/** Taps of wet hands: a double tap counts once; a drop or a second finger never counts. */

/** A tap within this long after another one, or after the page turned, is its echo. */
const SAME_TAP_MS = 350;
let settled_at = 0;

/** Ignore the taps that follow at once, until the screen has settled. */
export function settle(ms = SAME_TAP_MS) {
  settled_at = performance.now() + ms;
}

/** Whether a tap now is the echo of an earlier one. */
export const is_echo = () => performance.now() < settled_at;

/**
 * A handler that takes one tap and ignores its echo.
 * @template {Event} E
 * @param {(event: E) => void} work
 * @returns {(event: E) => void}
 */
export const tap = (work) => (event) => {
  if (is_echo()) return event.preventDefault();
  settle();
  work(event);
};

/** Drop taps made while more than one finger (or a drop) lies on the glass, before any component hears them. */
export function ignore_ghosts() {
  /** @type {Set<number>} */ const down = new Set();
  let crowded = 0;
  addEventListener(
    "pointerdown",
    (event) => {
      if (event.pointerType !== "touch") return;
      down.add(event.pointerId);
      if (down.size > 1) crowded = performance.now();
    },
    true,
  );
  for (const end of ["pointerup", "pointercancel"]) {
    addEventListener(
      end,
      (event) => {
        if (down.size > 1) crowded = performance.now();
        down.delete(/** @type {PointerEvent} */ (event).pointerId);
      },
      true,
    );
  }
  addEventListener(
    "click",
    (event) => {
      if (performance.now() - crowded > SAME_TAP_MS || !crowded) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    true,
  );
}
