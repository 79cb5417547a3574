/** At a desk: the list of tanks beside a tank's page, in the order, the groups and with the search of the Round. */
import { html, useSignal } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { MANY, by_place, find_tanks } from "../advice/many_tanks.js";
import { t } from "../i18n/words.js";
import { Found, GroupHead, Lines, Order, looked_at, order, unfolded } from "./many_tanks.js";
import { at_desk } from "./state/desk.js";
import { with_text } from "./state/field_text.js";
import { live_room } from "./state/live.js";

/** @typedef {import("./many_tanks.js").One} One */

/** @param {{here: string}} props `here`: the id of the tank on the page */
export function TankList({ here }) {
  if (!at_desk.value) return null;
  const tanks = walk(live_room);
  if (tanks.length < 2) return null;
  const ones = looked_at(tanks);
  return html`
    <nav class="tank-list" aria-label=${t("place.tanks")} ref=${show_present}>
      ${
        tanks.length > MANY ? html`<${Many} ones=${ones} here=${here} />` : html`<${Lines} ones=${ones} here=${here} />`
      }</nav>`;
}

/** @param {{ones: One[], here: string}} props */
function Many({ ones, here }) {
  const words = useSignal("");
  const first = order.value === "first";
  const tanks = ones.map(({ tank }) => tank);
  const one_of = new Map(ones.map((one) => [one.tank.id, one]));
  const found = find_tanks(tanks, words.value).flatMap(({ tank }) => one_of.get(tank.id) ?? []);
  return html`
    <div class="field"><label for="list-find">${t("many.find")}</label>
      <input id="list-find" type="search" autocomplete="off" value=${words.value}
        onInput=${with_text((text) => (words.value = text))} /></div>
    ${
      words.value.trim()
        ? html`<${Found} ones=${found} words=${words.value.trim()} here=${here} />`
        : html`<${Order} />
      ${first && html`<${Lines} ones=${ones.filter((one) => one.wants)} here=${here} />`}
      ${by_place(tanks).map((group) => {
        const own = group.tanks.flatMap(({ id }) => one_of.get(id) ?? []);
        const listed = own.filter((one) => !(first && one.wants));
        const open = unfolded.value.includes(group.place) || listed.some(({ tank }) => tank.id === here);
        return html`<section class="group" key=${group.place}>
          <${GroupHead} place=${group.place} ones=${own} open=${open} />
          ${open && html`<${Lines} ones=${listed} here=${here} />`}</section>`;
      })}`
    }`;
}

/** Scroll the list alone, so that the tank on the page is in sight. @param {HTMLElement | null} list */
function show_present(list) {
  const present = /** @type {HTMLElement | null | undefined} */ (list?.querySelector("[aria-current]"));
  if (list && present && list.scrollTop === 0 && present.offsetTop > list.clientHeight - present.offsetHeight)
    list.scrollTop = present.offsetTop - list.clientHeight / 2;
}
