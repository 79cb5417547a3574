/**
 * Round: every tank in walking order, with its state, its one sentence and what to do about it; of many tanks those
 * that need something.
 */
import { html } from "../vendor/preact.js";
import { in_round, sheet_now } from "../advice/away.js";
import { walk } from "../advice/facts.js";
import { MANY } from "../advice/many_tanks.js";
import { next_step } from "../advice/setup/setting_up.js";
import { day, short, t, when } from "../i18n/words.js";
import { FeedAll } from "../ui/feed_all.js";
import { HomeScreenCard } from "../ui/home_screen_card.js";
import { Icon } from "../ui/icon.js";
import { advise_ahead } from "../ui/state/forecast.js";
import { all, live_room, now, room, taking_in } from "../ui/state/live.js";
import { ManyTanks, looked_at } from "../ui/many_tanks.js";
import { Page } from "../ui/page.js";
import { BeingSetUp, plans } from "../ui/setup/setup_lines.js";
import { Stop } from "../ui/stop.js";
import { DueTasks, due_here } from "../ui/tasks_due.js";

export function Round() {
  const tanks = walk(live_room);
  if (room.value.about()?.ended && all("tank").length === 0) return html`<${Ended} />`;
  if (all("tank").length === 0) return html`<${FirstTank} />`;
  const many = tanks.length > MANY ? looked_at(tanks) : null;
  const next = many?.find(({ wants }) => wants)?.tank;
  return html`
    <${Page} title=${t("round.title")} place="round" book
      act=${next && html`<a class="main" href=${`/tank/${next.id}`}>${t("round.next", { tank: next.name })}</a>`}>
      <p class="date">${day(now.value)}</p>
      <${TakingIn} />
      ${
        in_round(sheet_now(all("away_sheet"), now.value), now.value) &&
        html`<p class="beside-margin"><a class="quiet"
        href="/away">${t("away.title")}</a></p>`
      }
      ${
        tanks.length === 0 &&
        plans().length === 0 &&
        html`<p class="beside-margin"><a class="quiet" href="/tanks">
        ${t("round.all_away")}</a></p>`
      }
      ${many && html`<${ManyTanks} tanks=${tanks} all=${many} />`}
      <ol>${!many && tanks.map((tank, i) => html`<${Stop} key=${tank.id} tank=${tank} place=${i + 1} />`)}
        <${RoomTasks} /></ol>
      ${!many && html`<${FeedAll} tanks=${tanks} />`}
      <${BeingSetUp} book />
      <p class="beside-margin"><a class="quiet" href="/tasks">${t("tasks.title")}</a></p>
      <${HomeScreenCard} />
    <//>`;
}

Round.ahead = function* () {
  yield* advise_ahead(walk(live_room));
  // What is slow at its first use only: the formats of dates, and the check of a plan.
  day(now.value);
  when(now.value, now.value);
  yield;
  plans().forEach(next_step);
  yield;
};

/** How much of a room that is taken in for the first time is here. */
function TakingIn() {
  const taken = taking_in();
  if (!taken) return null;
  const parts = { count: short(taken.count, 0), total: short(taken.total, 0) };
  return html`<p class="beside-margin soft" role="status">${t("round.taking_in", parts)}</p>`;
}

/** Tasks that are due for the whole room, on their own line. */
const RoomTasks = () =>
  due_here(null).length > 0 &&
  html`
  <li class="entry"><span class="in-margin" aria-hidden="true"><${Icon} name="room" size=${20} /></span>
    <div><h2 class="tank-name">${t("tasks.room")}</h2><${DueTasks} tank=${null} label=${t("tasks.room")} /></div></li>`;

const FirstTank = () => html`
  <${Page} title=${t("round.title")} place="round" book
    act=${
      room.value.may("tank") &&
      html`<a class="main" href="/tanks/new"><${Icon} name="plus" />${t("tank.first")}
      </a>`
    }>
    <div class="entry">
      <span class="in-margin" aria-hidden="true">1</span>
      <div>
        <p class="sentence">${t("round.empty")}</p>
        <p class="soft">${t("round.empty_more")}</p>
        ${!room.value.about() && html`<p><a class="quiet" href="/join">${t("join.title")}</a></p>`}
      </div>
    </div>
  <//>`;

/** The open room has ended for this keeper: its tanks are gone from here. */
const Ended = () => html`
  <${Page} title=${t("round.title")} place="round" act=${html`<a class="main" href="/room/rooms">${t("rooms.title")}
    </a>`}>
    <p class="sentence">${t("rooms.none_here")}</p>
  <//>`;
