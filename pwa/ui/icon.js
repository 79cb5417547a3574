/** Our own line icons, drawn on a grid of 24. Each stands beside a word; none speaks alone. */
import { html } from "../vendor/preact.js";

/** @type {Record<string, string>} */
const LINES = {
  round: "M5 20c5 0 2-6 7-6s2-8 7-8M5 20h.01M12 14h.01M19 6h.01",
  tanks: "M3.5 6v13.5h17V6M3.5 9.5h17M9 19.5c0-3 1.8-4 .6-7.5M9.4 16c2 0 3.4-1.2 3.4-3",
  bench: "M12 3.5v3M12 6.5 6.5 20M12 6.5 17.5 20M8.3 15.5h7.4M10.5 6.5a1.5 1.5 0 0 0 3 0 1.5 1.5 0 0 0-3 0",
  room: "M4 20.5V9l8-5.5L20 9v11.5M4 14h16M2.5 20.5h19M9 14v-2.5M15 14v-2.5",
  back: "M14.5 5 7.5 12l7 7",
  plus: "M12 5v14M5 12h14",
  minus: "M5 12h14",
  erase: "M9 6h11v12H9l-6-6 6-6ZM12.5 9.5l5 5M17.5 9.5l-5 5",
  clock: "M12 4a8.5 8.5 0 1 0 .01 0M12 8v5l3 2M9.5 1.5h5",
  remove: "M6 6l12 12M18 6 6 18",
  saved: "M7 2.5h10v19H7zM10.5 18.5h3",
  shared: "M2.5 4h7v12h-7zM14.5 8h7v12h-7zM9.5 8.5c3-1.5 3.5.5 5 2.5",
  needs: "M12 3.5 21.5 20h-19zM12 10v4.5M12 17.3v.01",
  // What is recorded at a tank.
  feed: "M4.5 8.5h15l-2 11h-11zM8 5.5v.01M12 3.5v.01M16 5.5v.01M10 12.5h4",
  dose: "M10 2.5h4v4l3.5 5v8a2 2 0 0 1-2 2h-7a2 2 0 0 1-2-2v-8L10 6.5zM7 14h10",
  note: "M4.5 19.5l1-4.5L16.5 4l3.5 3.5L9 18.5zM14.5 6l3.5 3.5",
  camera: "M3.5 7.5h4l2-3h5l2 3h4v12h-17zM12 10a3.5 3.5 0 1 0 .01 0",
  done: "M4.5 12.5l5 5 10-11",
  stock: "M3 12c4-6 10-6 13.5 0C13 18 7 18 3 12ZM16.5 12 21 8.5v7zM7.5 11v.01",
  plants: "M12 21V9M12 9c0-4 3-6 7.5-6 0 4.5-3 6.5-7.5 6.5M12 15c0-3.5-2.5-5.5-7-5.5 0 4 2.5 6 7 6",
  search: "M10.5 4a6.5 6.5 0 1 0 .01 0M15.5 15.5 21 21",
  // What tanks shared: water, a tool; plants and animals as above.
  water: "M12 3c4 5 6 7.5 6 11a6 6 0 0 1-12 0c0-3.5 2-6 6-11Z",
  tool: "M4 20l5.5-5.5M9 8c0-2 2-4.5 6-4.5S20.5 7 20.5 9.5 18 15 14.5 15 9 11 9 8ZM9.5 9.5h10M12 5v8",
  // Tanks by shape, seen from above, the bowl from the side.
  cuboid: "M3 7.5h18v9H3z",
  bow_front: "M3 7h18v7c-5 4.5-13 4.5-18 0z",
  cylinder: "M12 4.5a7.5 7.5 0 1 0 .01 0",
  half_round: "M3 8h18c0 5-4 9-9 9s-9-4-9-9z",
  quarter_round: "M5 5h14c0 8-6 14-14 14z",
  hexagon: "M7.5 4.5h9L21 12l-4.5 7.5h-9L3 12z",
  bowl: "M7 5h10c3 2 4 4.5 4 7 0 4.5-3.5 7.5-7 7.5h-4c-3.5 0-7-3-7-7.5 0-2.5 1-5 4-7zM4.5 10h15",
};

/** @import { VNode } from "../vendor/preact.js" */

/** @param {{name: string, size?: number}} props */
export const Icon = ({ name, size = 24 }) => html`
  <svg width=${size} height=${size} viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="1.6"
    stroke-linecap="round" stroke-linejoin="round" aria-hidden="true"><path d=${LINES[name]} /></svg>`;

/**
 * States by shape: a level line in a ring, a diamond, a half-filled bucket, a filled triangle.
 * @type {Record<string, VNode | VNode[]>}
 */
const STATE_SHAPES = {
  steady: html`<circle cx="12" cy="12" r="8.5" /><path d="M3.8 13h16.4" />`,
  watch: html`<path d="M12 3 21 12l-9 9-9-9z" />`,
  "change today": html`<path d="M4.5 4.5h15L17.5 20h-11z" /><path d="M5.5 12h13l-1 8h-11z" fill="currentColor" />`,
  "act now": html`<path d="M12 3 22 20.5H2z" fill="currentColor" />`,
};

/** @param {{state: string, size?: number}} props */
export const StateShape = ({ state, size = 20 }) => html`
  <svg width=${size} height=${size} viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="2"
    stroke-linejoin="round" aria-hidden="true">${STATE_SHAPES[state]}</svg>`;
