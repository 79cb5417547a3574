/** Wires the parts: the shared files, the fish room, sharing, the pages by path, the service worker. */
import { html, render, signal } from "./vendor/preact.js";
import { Workbox } from "./vendor/workbox-window.js";
import { NotSaved, open_room, use_room } from "./data/fish_room.js";
import { share_others } from "./data/other_rooms.js";
import { this_phone } from "./data/phone.js";
import * as sync from "./data/sync.js";
import { t } from "./i18n/words.js";
import { ROUTES } from "./routes.js";
import { Boundary, Broken } from "./ui/boundary.js";
import {
  keep_to_this_room,
  read_behind,
  read_last_advice,
  read_the_rest,
  stands_on_last,
} from "./ui/state/forecast.js";
import { keep_language, speak_of_all, spoken } from "./ui/state/language.js";
import { hear_install_offer, look_if_kept } from "./ui/state/home_screen.js";
import { keep_time, room, show } from "./ui/state/live.js";
import { Missing } from "./ui/missing.js";
import { pause, step_by_step } from "./ui/state/pause.js";
import { address, arrived, match, start } from "./ui/state/router.js";
import { ignore_ghosts, tap } from "./ui/state/tap.js";
import { keep_timers } from "./ui/state/timers.js";
import { Trouble } from "./ui/trouble.js";

/** What the app itself says, above every page: `text`, and what a tap on `action` does. */
const notice = signal(/** @type {{text: string, action: string, work: () => void} | null} */ (null));

/** @typedef {import("./routes.js").Screen} Screen */
/** Screens that are fetched already, by the function that fetches them. @type {Map<() => Promise<Screen>, Screen>} */
const screens = new Map();
/** The page on the screen: it stays until the module of the next page is fetched. */
const page = signal(/** @type {{path: string, screen: Screen, props: Record<string, unknown>} | null} */ (null));

/** Turn to the page of the address. */
async function turn() {
  const url = new URL(address.value, location.origin);
  const hit = match(
    ROUTES.map(([pattern, ...rest]) => [pattern, rest]),
    url.pathname,
  );
  if (!hit) return show_page(url, Missing, { up: "/" });
  const [fetch_screen, props_of] = hit.found;
  const [screen] = await Promise.all([
    screens.get(fetch_screen) ?? fetch_page(fetch_screen, url),
    records_of(url.pathname, hit.parts),
  ]).catch((failed) => [void console.error(failed)]);
  const props = props_of?.(hit.parts, url, { enter }) ?? {};
  // What fails here fails again as the page is drawn, and is told there.
  const ahead = /** @type {Iterable<unknown>} */ (screen?.ahead?.(props) ?? []);
  await step_by_step(ahead).catch(console.warn);
  // The keeper may have turned to another page meanwhile.
  if (url.href !== new URL(address.value, location.origin).href) return;
  if (!screen) return show_page(url, Broken, { path: url.pathname, why: "notice.page_missing" });
  screens.set(fetch_screen, screen);
  show_page(url, screen, props);
}

/**
 * Pages that show no records but those that a room opens with, or its last advice. Pages of a tank show that tank;
 * every other page waits for the whole room.
 */
const SHOW_LITTLE = new RegExp(
  `^/(${[
    ...["index\\.html", "tanks(/new|/setup)?", "tasks?(/.*)?", "labels", "incidents", "calendar", "join", "bench"],
    "room(/(?!copy|needs-you|notebook).*)?",
  ].join("|")})?$`,
);

/** A tank's own page, which may open before its records are read. */
const OF_ONE_TANK = /^\/tank\/[^/]+$/;

/** Read the records that a page shows. @param {string} path @param {Record<string, string>} parts of its route */
async function records_of(path, { id }) {
  if (SHOW_LITTLE.test(path)) return;
  if (OF_ONE_TANK.test(path) && stands_on_last(id)) {
    setTimeout(() => void read_behind(id).catch(console.warn), AFTER_THE_FIRST_PAGE_MS);
    return;
  }
  // Which of two kits is offered depends on the last reading of the whole room.
  const of_tank = path.startsWith("/tank/") && !(path.endsWith("/test") && kits_compete());
  await room.value.ready(of_tank ? id : undefined);
}

/** Whether the room has two kits for one parameter. */
function kits_compete() {
  const tested = room.value.all("test_kit").flatMap(({ parameter, retired }) => (retired ? [] : [parameter]));
  return new Set(tested).size < tested.length;
}

/** Pages that show no more shared texts than those that the app opens with. */
const SAY_LITTLE = ["/", "/index.html"];

/** A screen, and the shared texts that it shows. @param {() => Promise<Screen>} fetch_screen @param {URL} url */
async function fetch_page(fetch_screen, { pathname }) {
  const [screen] = await Promise.all([fetch_screen(), SAY_LITTLE.includes(pathname) ? null : speak_of_all()]);
  return screen;
}

/** @param {URL} url @param {Screen} screen @param {Record<string, unknown>} props */
function show_page(url, screen, props) {
  const first = page.peek() === null;
  page.value = { path: url.pathname, screen, props };
  arrived({ first });
  if (!first) return;
  // Until now index.html's own words stand there.
  const app = /** @type {HTMLElement} */ (document.getElementById("app"));
  app.replaceChildren();
  render(html`<${Spoken} />`, app);
}

/**
 * Where no service worker stores them, the other screens are fetched once the first is shown: later there may be no
 * signal.
 */
const fetch_the_rest = () =>
  "serviceWorker" in navigator ||
  setTimeout(() => {
    for (const [, fetch_screen] of ROUTES) void fetch_screen().catch(() => {});
    void speak_of_all().catch(() => {});
  }, 1000);

function App() {
  const said = notice.value;
  if (!page.value) return null;
  const { path, screen: Screen, props } = page.value;
  return html`
    ${
      said &&
      html`<div class="bar" role="status"><span>${said.text}</span><button class="quiet" type="button"
      onClick=${tap(said.work)}>${said.action}</button></div>`
    }
    <${Boundary} page=${page.value}>
      <${Trouble} path=${path} />
      <${Screen} ...${props} />
    <//>`;
}

/** In another language everything is drawn anew; what is half typed stays in the drafts. */
const Spoken = () => html`<${App} key=${spoken.value} />`;

let stop_sharing = () => {};
/** The first page is drawn before more is read. */
const AFTER_THE_FIRST_PAGE_MS = 100;

/** Open a room, without an id the one used last; share it and the other rooms from now on. @param {string} [id] */
async function enter(id) {
  if (id) await use_room(id);
  stop_sharing();
  room.value?.close();
  const phone = await this_phone();
  const { room: opened, cache } = await open_room(undefined, phone, { lazily: true });
  await read_last_advice(opened);
  show(opened);
  setTimeout(() => void read_the_rest().catch(console.warn), AFTER_THE_FIRST_PAGE_MS);
  const stop_this = sync.start(phone, opened.id, cache);
  const stop_others = await share_others(phone, opened.id);
  stop_sharing = () => {
    stop_this();
    stop_others();
  };
}

async function main() {
  await pause();
  const language = keep_language();
  const say_blocked = () => say_before_the_start(t("notice.blocked"));
  const phone = this_phone({
    on_blocked: () => void language.then(say_blocked, say_blocked),
    on_outdated: () =>
      (notice.value = { text: t("notice.outdated"), action: t("notice.reload"), work: () => location.reload() }),
  });
  await Promise.all([language, phone]);
  await enter();
  ignore_ghosts();
  keep_time();
  keep_to_this_room();
  keep_timers();
  hear_install_offer();
  void look_if_kept();
  start();
  address.subscribe(() => void turn());
  fetch_the_rest();
  document.getElementById("not-yet")?.remove();
}

/** Store the shell. A new version waits until the keeper accepts it by a tap. */
function keep_shell() {
  if (!("serviceWorker" in navigator)) return;
  const worker = new Workbox("/sw.js");
  // A message can be lost, and a newer version can take the waiting one's place: ask until this page is left.
  const use_it = () => {
    worker.messageSkipWaiting();
    setTimeout(use_it, 2000);
  };
  worker.addEventListener("waiting", () => {
    notice.value = { text: t("notice.new_version"), action: t("notice.use_it"), work: use_it };
    worker.addEventListener("controlling", () => location.reload());
  });
  void worker.register();
}

/** Say something while there is no page yet, in place of what index.html says by itself. @param {string} text */
function say_before_the_start(text) {
  document.getElementById("not-yet")?.remove();
  const page = /** @type {HTMLElement} */ (document.getElementById("app"));
  page.textContent = text;
}

/** Plain words where the app cannot start at all. @param {unknown} error */
function cannot_start(error) {
  console.error(error);
  if (error instanceof NotSaved) return say_before_the_start(t(`not_saved.${error.reason}`));
  say_before_the_start(`${t("notice.cannot_start")} ${error instanceof Error ? error.message : ""}`);
}

main().catch(cannot_start).finally(keep_shell);

// The browser stories reach the app's own modules through its entry: a second copy would have a state of its own.
export * as contracts from "./contracts.js";
export * as facts from "./advice/facts.js";
export * as questions from "./advice/forecast/questions.js";
export * as today from "./advice/today.js";
export * as words from "./i18n/words.js";
export * as language from "./ui/state/language.js";
export * as live from "./ui/state/live.js";
export * as measures from "./ui/state/measures.js";
export * as record from "./ui/state/record.js";
export * as router from "./ui/state/router.js";
export * as taps from "./ui/state/tap.js";
export { people } from "./routes.js";
export { ROUTES, open_room, sync };
