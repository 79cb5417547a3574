/**
 * The round of many tanks: how many need something, those first or in walking order, the others by one line each in
 * groups by place that fold, and a search. What is folded is not drawn.
 */
import { html, useSignal } from "../vendor/preact.js";
import { by_place, find_tanks } from "../advice/many_tanks.js";
import { t } from "../i18n/words.js";
import { FeedAll } from "./feed_all.js";
import { is_last_word } from "./held_height.js";
import { StateShape } from "./icon.js";
import { draft } from "./state/draft.js";
import { with_text } from "./state/field_text.js";
import { advice_at_once } from "./state/forecast.js";
import { room } from "./state/live.js";
import { wanting } from "./state/next_stop.js";
import { tap } from "./state/tap.js";
import { Stop } from "./stop.js";

/** @import { Tank } from "../types/views.js" */
/** @import { Advice } from "../types/advice.js" */
/** @typedef {{tank: Tank, number: number, wants: boolean, settled: boolean, state: Advice["state"] | null}} One */

/** Whether what needs something comes first, and the places that are unfolded; both stay on this phone. */
export const order = draft("round.order", () => "first");
export const unfolded = draft("round.unfolded", () => /** @type {string[]} */ ([]));

/** @param {readonly Tank[]} tanks in walking order @returns {One[]} */
export const looked_at = (tanks) =>
  tanks.map((tank, i) => ({
    ...{ tank, number: i + 1, wants: wanting(tank) },
    ...state_of(advice_at_once(tank)?.advice),
  }));

/** @param {Advice | undefined} advice */
const state_of = (advice) => ({ state: advice?.state ?? null, settled: advice !== undefined && is_last_word(advice) });

/** @param {{tanks: Tank[], all: One[]}} props */
export function ManyTanks({ tanks, all }) {
  const words = useSignal("");
  const found = find_tanks(tanks, words.value);
  const one_of = new Map(all.map((one) => [one.tank.id, one]));
  const ones = (/** @type {Tank[]} */ of) => of.flatMap(({ id }) => one_of.get(id) ?? []);
  const wants = all.filter((one) => one.wants);
  const first = order.value === "first";
  return html`
    <p class="beside-margin many-count" role="status" aria-busy=${all.some(({ state }) => state === null)}
      data-worked-out=${all.filter(({ settled }) => settled).length}><b>
      ${t(wants.length ? "many.count" : "many.none", { count: wants.length, total: all.length })}
      </b></p>
    <div class="beside-margin field"><label for="many-find">${t("many.find")}</label>
      <input id="many-find" type="search" autocomplete="off" enterkeyhint="search" value=${words.value}
        onInput=${with_text((text) => (words.value = text))} /></div>
    ${
      words.value.trim()
        ? html`<${Found} ones=${ones(found.map(({ tank }) => tank))} words=${words.value.trim()} />`
        : html`
      <div class="beside-margin"><${Order} /></div>
      ${
        first &&
        html`<ol>${wants.map(
          ({ tank, number }) => html`<${Stop} key=${tank.id} tank=${tank}
          place=${number} short />`,
        )}</ol>`
      }
      <div class="beside-margin">${by_place(tanks).map(
        (group) => html`<${Group} key=${group.place} place=${group.place} ones=${ones(group.tanks)} first=${first} />`,
      )}</div>`
    }`;
}

/** What comes first. */
export const Order = () => html`
  <div class="row chips" role="group" aria-label=${t("many.order")}>
    ${["first", "walk"].map(
      (name) => html`<button key=${name} class="quiet" type="button" aria-pressed=${order.value === name}
      onClick=${tap(() => (order.value = name))}>${t(`many.order_${name}`)}</button>`,
    )}</div>`;

/** @param {{ones: One[], words: string, here?: string}} props */
export const Found = ({ ones, words, here }) =>
  ones.length > 0
    ? html`<div class="beside-margin"><${Lines} ones=${ones} here=${here} /></div>`
    : html`<p class="beside-margin soft">${t("many.nothing_found", { words })}</p>`;

/**
 * The tanks of one place; `first`: those that need something stand above already.
 * @param {{place: string, ones: One[], first: boolean}} props
 */
function Group({ place, ones, first }) {
  const open = unfolded.value.includes(place);
  return html`
    <section class="group">
      <${GroupHead} place=${place} ones=${ones} open=${open} />
      ${open && html`<${Unfolded} place=${place} ones=${ones} first=${first} />`}
    </section>`;
}

/**
 * The name of a place, how many tanks stand there, and a tap to fold them.
 * @param {{place: string, ones: One[], open: boolean}} props
 */
export function GroupHead({ place, ones, open }) {
  const wants = ones.filter((one) => one.wants).length;
  const fold = () =>
    (unfolded.value = open ? unfolded.value.filter((other) => other !== place) : [...unfolded.value, place]);
  const named = t("many.group", { place: place || t("many.no_place"), count: ones.length });
  return html`
    <h2><button class="line" type="button" aria-expanded=${open} onClick=${tap(fold)}><span>${named}${
      wants > 0 && html`<br /><span class="soft small">${t("many.group_wants", { count: wants })}</span>`
    }</span></button></h2>`;
}

/** @param {{place: string, ones: One[], first: boolean}} props */
const Unfolded = ({ place, ones, first }) => html`
  ${first ? html`<${Lines} ones=${ones.filter((one) => !one.wants)} />` : html`<${Walked} ones=${ones} />`}
  <div class="row"><${FeedAll} tanks=${ones.map(({ tank }) => tank)} brief />
    ${
      room.value.may("dose") &&
      html`<a class="quiet" href=${`/round/dose?place=${encodeURIComponent(place)}`}>${t("many.dose")}</a>`
    }</div>`;

/** In walking order: what needs something in full, the others by one line each. @param {{ones: One[]}} props */
function Walked({ ones }) {
  /** @type {One[][]} */ const runs = [];
  for (const one of ones)
    if (!one.wants && runs.at(-1)?.[0].wants === false) runs.at(-1)?.push(one);
    else runs.push([one]);
  return runs.map((run) =>
    run[0].wants
      ? html`<ol key=${run[0].tank.id}><${Stop} tank=${run[0].tank} place=${run[0].number} short /></ol>`
      : html`<${Lines} key=${run[0].tank.id} ones=${run} />`,
  );
}

/** `here`: the tank that is marked as present. @param {{ones: One[], here?: string}} props */
export const Lines = ({ ones, here }) => html`
  <ul class="many">${ones.map(
    ({ tank, number, state }) => html`
    <li key=${tank.id}><a href=${`/tank/${tank.id}`} aria-current=${tank.id === here ? "page" : undefined}>
      ${state && html`<${StateShape} state=${state} size=${16} />`}<span>
      ${number} ${tank.name}${state && html`<span class="unseen">, ${t(`state.${state}`)}</span>`}</span></a></li>`,
  )}</ul>`;
