/** Puts the parts together: the shared files, the fish room, sharing, the pages by path, the service worker. */
import { html, render, signal } from "./vendor/preact.js";
import { Workbox } from "./vendor/workbox-window.js";
import { install } from "./contracts.js";
import { openRoom, useRoom } from "./data/fish_room.js";
import { shareOthers } from "./data/other_rooms.js";
import { thisPhone } from "./data/phone.js";
import * as sync from "./data/sync.js";
import { choose, chosen, t } from "./i18n/words.js";
import { Bench } from "./screens/bench.js";
import { BenchSheet } from "./screens/bench_sheet.js";
import { Change } from "./screens/change.js";
import { Copy } from "./screens/copy.js";
import { Feed } from "./screens/feed.js";
import { History } from "./screens/history.js";
import { Invite } from "./screens/invite.js";
import { Join } from "./screens/join.js";
import { NeedsYou } from "./screens/needs_you.js";
import { Outlook } from "./screens/outlook.js";
import { People } from "./screens/people.js";
import { Person } from "./screens/person.js";
import { Room } from "./screens/room.js";
import { Rooms } from "./screens/rooms.js";
import { Round } from "./screens/round.js";
import { Setting } from "./screens/setting.js";
import { Tank } from "./screens/tank.js";
import { TankForm } from "./screens/tank_form.js";
import { Tanks } from "./screens/tanks.js";
import { Test } from "./screens/test.js";
import { Water } from "./screens/water.js";
import { keep_to_this_room } from "./ui/forecast.js";
import { keep_time, room, show } from "./ui/live.js";
import { Missing } from "./ui/missing.js";
import { address, match, start } from "./ui/router.js";
import { ignore_ghosts, tap } from "./ui/tap.js";
import { keep_timers } from "./ui/timers.js";
import { Trouble } from "./ui/trouble.js";

/** @type {[string, (parts: Record<string, string>, url: URL) => any][]} */
const ROUTES = [
  ["/", () => html`<${Round} />`],
  ["/index.html", () => html`<${Round} />`],
  ["/tanks", () => html`<${Tanks} />`],
  ["/tanks/new", () => html`<${TankForm} key="new" />`],
  ["/tank/:id", ({ id }) => html`<${Tank} key=${id} id=${id} />`],
  ["/tank/:id/edit", ({ id }) => html`<${TankForm} key=${id} id=${id} />`],
  ["/tank/:id/test", ({ id }) => html`<${Test} key=${id} id=${id} />`],
  ["/tank/:id/change", ({ id }) => html`<${Change} key=${id} id=${id} />`],
  ["/tank/:id/feed", ({ id }) => html`<${Feed} key=${id} id=${id} />`],
  ["/tank/:id/outlook", ({ id }) => html`<${Outlook} key=${id} id=${id} />`],
  ["/tank/:id/history", ({ id }) => html`<${History} key=${id} id=${id} />`],
  ["/tank/:id/water", ({ id }) => html`<${Water} key=${id} id=${id} />`],
  ["/bench", () => html`<${Bench} />`],
  ["/bench/:name", ({ name }) => html`<${BenchSheet} key=${name} name=${name} />`],
  ["/room", () => html`<${Room} />`],
  ["/room/people", () => html`<${People} />`],
  ["/room/person/:id", ({ id }) => html`<${Person} key=${id} id=${id} />`],
  ["/room/invite", (_, url) => html`<${Invite} query=${url.searchParams} />`],
  ["/room/rooms", () => html`<${Rooms} enter=${enter} />`],
  ["/room/needs-you", () => html`<${NeedsYou} />`],
  ["/room/copy", () => html`<${Copy} />`],
  ["/room/:kind/new", ({ kind }, url) => html`<${Setting} key=${kind} kind=${kind} query=${url.searchParams} />`],
  ["/room/:kind/:id", ({ kind, id }, url) => html`<${Setting} key=${id} kind=${kind} id=${id} query=${url.searchParams} />`],
  ["/join", (_, url) => html`<${Join} secret=${url.hash.slice(1)} enter=${enter} />`],
];

/** What the app itself has to say, above every page: `text`, and what a tap on `action` does. */
const notice = signal(/** @type {{text: string, action: string, work: () => void} | null} */ (null));

function App() {
  const url = new URL(address.value, location.origin);
  const hit = match(ROUTES, url.pathname);
  const said = notice.value;
  return html`
    ${said && html`<div class="bar" role="status"><span>${said.text}</span><button class="quiet" type="button" onClick=${tap(said.work)}>${said.action}</button></div>`}
    <${Trouble} path=${url.pathname} />
    ${hit ? hit.found(hit.parts, url) : html`<${Missing} up="/" />`}`;
}

let stop_sharing = () => {};

/** Open a room, the one used last if none is named, and keep it and the others shared. @param {string} [id] */
async function enter(id) {
  if (id) await useRoom(id);
  stop_sharing();
  room.value?.close();
  const opened = await openRoom();
  show(opened);
  const stop_this = sync.start(opened);
  const stop_others = await shareOthers(await thisPhone(), opened.id);
  stop_sharing = () => (stop_this(), stop_others());
}

async function main() {
  choose(navigator.languages);
  document.documentElement.lang = chosen();
  install(await (await fetch("/shared.json")).json());
  await thisPhone({
    onBlocked: () => (notice.value = { text: t("notice.blocked"), action: t("notice.reload"), work: () => location.reload() }),
    onOutdated: () => (notice.value = { text: t("notice.outdated"), action: t("notice.reload"), work: () => location.reload() }),
  });
  await enter();
  ignore_ghosts();
  keep_time();
  keep_to_this_room();
  keep_timers();
  start();
  render(html`<${App} />`, /** @type {HTMLElement} */ (document.getElementById("app")));
}

/** Store the shell; a new version waits, is offered, and takes over only after a tap. */
function keep_shell() {
  if (!("serviceWorker" in navigator)) return;
  const worker = new Workbox("/sw.js");
  worker.addEventListener("waiting", () => {
    notice.value = { text: t("notice.new_version"), action: t("notice.use_it"), work: () => worker.messageSkipWaiting() };
    worker.addEventListener("controlling", () => location.reload());
  });
  void worker.register();
}

/** Plain words when not even the shell can start. @param {unknown} failed */
function cannot_start(failed) {
  console.error(failed);
  const page = /** @type {HTMLElement} */ (document.getElementById("app"));
  page.textContent = `${t("notice.cannot_start")} ${failed instanceof Error ? failed.message : ""}`;
}

main().catch(cannot_start).finally(keep_shell);
