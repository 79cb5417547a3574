/**
 * Words that change when the forecast comes keep the height they took the last time, so that nothing below them moves
 * under a thumb.
 */
import { useLayoutEffect, useRef } from "../vendor/preact.js";
import { draft } from "./state/draft.js";
import { settle } from "./state/tap.js";

/** Heights in px, by the name of the words and the width of the screen. */
const heights = draft("heights", () => /** @type {Record<string, number>} */ ({}));

/**
 * Whether nothing more is being worked out for an advice.
 * @param {Pick<import("../types/advice.js").Advice, "from" | "as_of" | "reasons">} advice
 */
export const is_last_word = ({ from, as_of, reasons }) =>
  (from === "forecast" && as_of === undefined) || reasons.some(({ code }) => code === "rule_failed");

/**
 * A place for the words. It grows if it must, and shrinks only while nothing below it is on the screen. Taps that were
 * aimed before it moved are dropped.
 * @param {string} name whose words @param {boolean} last_word nothing else is worked out
 */
export function use_held_height(name, last_word) {
  const place = useRef(/** @type {HTMLElement | null} */ (null));
  const stood = useRef({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const box = place.current;
    if (!box) return;
    box.setAttribute("aria-busy", String(!last_word));
    const width = innerWidth;
    const key = `${name} ${width}`;
    const before = stood.current.width === width ? stood.current.height : 0;
    const hidden_below =
      box.getBoundingClientRect().bottom >=
      (document.querySelector(".foot")?.getBoundingClientRect().top ?? innerHeight);
    box.style.minHeight = "";
    const own = box.offsetHeight;
    if (last_word && heights.peek()[key] !== own) heights.value = { ...heights.peek(), [key]: own };
    const kept = last_word ? (hidden_below ? 0 : before) : Math.max(before, heights.peek()[key] ?? 0);
    const height = Math.max(own, kept);
    box.style.minHeight = `${height}px`;
    if (before > 0 && height !== before && !hidden_below) settle();
    stood.current = { width, height };
  });
  return place;
}
