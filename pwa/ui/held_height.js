/**
 * Words that change when the forecast comes keep the height they took the last time, so that nothing below them moves
 * under a thumb.
 */
import { useLayoutEffect, useRef } from "../vendor/preact.js";
import { draft } from "./state/draft.js";
import { next_frame } from "./state/pause.js";
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
    unmeasured.set(box, { name, last_word, stood: stood.current });
    // Where nothing stood before, no tap can have been aimed at it.
    if (stood.current.height || !next_frame || document.hidden) queueMicrotask(measure_all);
    else next_frame(measure_all);
  });
  return place;
}

/** @typedef {{name: string, last_word: boolean, stood: {width: number, height: number}}} Words */
/** Words that were drawn anew and are not measured yet, by their place. @type {Map<HTMLElement, Words>} */
const unmeasured = new Map();

/** Before they are seen, and all at once: each change between two measures makes the browser lay the page out anew. */
function measure_all() {
  for (const box of unmeasured.keys()) if (!box.isConnected) unmeasured.delete(box);
  if (unmeasured.size === 0) return;
  const width = innerWidth;
  const foot = document.querySelector(".foot")?.getBoundingClientRect().top ?? innerHeight;
  const all = [...unmeasured].map(([box, words]) => ({
    ...{ box, words, key: `${words.name} ${width}` },
    before: words.stood.width === width ? words.stood.height : 0,
    hidden_below: box.getBoundingClientRect().bottom >= foot,
  }));
  unmeasured.clear();
  for (const { box } of all) box.style.minHeight = "";
  const own_heights = all.map(({ box }) => box.offsetHeight);
  const measured = { ...heights.peek() };
  for (const [i, { box, words, key, before, hidden_below }] of all.entries()) {
    const own = own_heights[i];
    if (words.last_word) measured[key] = own;
    const kept = words.last_word ? (hidden_below ? 0 : before) : Math.max(before, measured[key] ?? 0);
    const height = Math.max(own, kept);
    box.style.minHeight = `${height}px`;
    if (before > 0 && height !== before && !hidden_below) settle();
    Object.assign(words.stood, { width, height });
  }
  if (Object.keys(measured).some((key) => measured[key] !== heights.peek()[key])) heights.value = measured;
}
