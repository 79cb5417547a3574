/**
 * What happened to a tank, or to all of them: by days, newest first, by whom; filtered by kind, corrected, removed and
 * put back; from a chosen day back, or from the newest.
 */
import { html, signal, useMemo, useSignal } from "../vendor/preact.js";
import { correct_path, is_life, life_removal } from "../advice/life/life_writes.js";
import { CORRECTED, GROUPS, GROUP_OF, by_day, removal, timeline } from "../advice/journal/timeline.js";
import { day_end } from "../advice/journal/moment.js";
import { clock, day_named, t } from "../i18n/words.js";
import { earlier_lines, event_lines, event_name, is_incident } from "../ui/words/event_said.js";
import { GoToDay } from "../ui/go_to_day.js";
import { Icon } from "../ui/icon.js";
import { all, all_of_kind, get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { Picture } from "../ui/picture.js";
import { record } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

const PAGE = 40;
/** The group that is shown; it stays while the keeper looks at a photo and comes back. */
const shown_group = signal(/** @type {string | null} */ (null));
/** The day that is shown, with what was before, and on which page; it stays likewise. */
const shown_day = signal({ here: "", day: /** @type {string | null} */ (null) });

/** @param {{id?: string}} props without an id: of all tanks */
export function History({ id }) {
  const tank = id ? get("tank", id) : null;
  const shown = useSignal(PAGE);
  const made_of = [...Object.keys(GROUP_OF), "task"].map(all_of_kind);
  const events = useMemo(() => timeline(room.value, { tank: id }), [id, ...made_of]);
  if (id && !tank) return html`<${Missing} up="/" />`;
  const here = id ? `/tank/${id}/history` : "/timeline";
  const groups = GROUPS.filter((group) => events.some((event) => event.group === group));
  const wanted = groups.includes(shown_group.value ?? "") ? shown_group.value : null;
  const day = shown_day.value.here === here ? shown_day.value.day : null;
  const end = (day && day_end(day)) || Infinity;
  const found = events.filter(({ group, at }) => (!wanted || group === wanted) && Date.parse(at) < end);
  const look = (/** @type {string | null} */ group) =>
    tap(() => {
      shown_group.value = group;
      shown.value = PAGE;
    });
  const to_day = (/** @type {string | null} */ chosen) => {
    shown_day.value = { here, day: chosen };
    shown.value = PAGE;
  };
  return html`
    <${Page} title=${t(id ? "history.title" : "history.all_tanks")} up=${id ? `/tank/${id}` : "/tanks"}
      aside=${tank && html`<span class="soft">${tank.name}</span>`}>
      ${events.length === 0 && html`<p class="sentence">${t("history.empty")}</p>`}
      ${
        groups.length > 1 &&
        html`<div class="row chips" role="group" aria-label=${t("history.look_for")}>
        <button class="quiet" type="button" aria-pressed=${wanted === null} onClick=${look(null)}>
          ${t("history.group.all")}</button>
        ${groups.map(
          (group) => html`<button key=${group} class="quiet" type="button" aria-pressed=${wanted === group}
          onClick=${look(group)}>${t(`history.group.${group}`)}</button>`,
        )}
      </div>`
      }
      ${
        events.length > 0 &&
        html`<p class="ways">
        ${id && html`<a href=${`/tank/${id}/month`}>${t("month.title")}</a>`}
        <a href=${id ? `/tank/${id}/year` : "/year"}>${t("year.title")}</a></p>
        <${GoToDay} chosen=${day} newest=${found[0]} on_day=${to_day} />`
      }
      ${by_day(found.slice(0, shown.value)).map(
        ({ day, events: of_day }) => html`
        <section class="section" key=${day}><h2>${day_named(day, now.value)}</h2>
          <ol class="lines">
            ${of_day.map(
              (event) => html`<${Event} key=${event.records[0].id} event=${event} here=${here}
            tank=${id ? null : get("tank", event.tank ?? undefined)} />`,
            )}</ol>
        </section>`,
      )}
      ${
        found.length > shown.value &&
        html`<p class="center section"><button class="quiet tall" type="button"
        onClick=${tap(() => (shown.value += PAGE))}>${t("history.more")}</button></p>`
      }
    <//>`;
}

/**
 * @param {{event: import("../advice/journal/timeline.js").Event, here: string,
 * tank: import("../types/views.js").Tank | null}} props `here`: this page; `tank`: named where the events of all tanks
 * are listed
 */
function Event({ event, here, tank }) {
  const { records } = event;
  const [first] = records;
  const who = first.meta.made_by === null ? null : room.value.name_of(first.meta.made_by);
  const state = records.map(({ meta }) => meta.state);
  const shared = state.includes("needs you")
    ? "needs_you"
    : state.every((each) => each === "shared")
      ? "shared"
      : "saved";
  const may = records.every(({ kind }) => room.value.may(kind));
  const what = event_name(event);
  const named = `${what}, ${day_named(Date.parse(event.at), now.value)} ${clock(event.at)}`;
  const photos = records.filter(({ kind }) => kind === "photo");
  const before = earlier_lines(event);
  const of_life = is_life(first);
  const correct = way_to_correct(event, here);
  const remove = () => record(of_life ? life_removal(room.value, first) : removal(event), t("saved.removed", { what }));
  return html`
    <li class="line happened">
      <div class="grow">
        <p class="soft small">${tank && html`<a class="of-tank" href=${`/tank/${tank.id}`}>${tank.name}</a> `}<span
          class="who"><time datetime=${event.at}>${clock(event.at)}</time>${who && ` · ${who}`}</span></p>
        <div class="said">${event_lines(event).map((line) => html`<span key=${line}>${line}</span>`)}</div>
        ${
          before.length > 0 &&
          html`<p class="soft small">${t("history.corrected", { before: before.join("\u00a0· ") })}
          </p>`
        }
        ${
          is_incident(records) &&
          event.tank &&
          html`<a class="quiet small" href=${`/trace?tank=${event.tank}&days=30`}>${t("trace.who")}</a>`
        }
        <${Photos} photos=${photos} named=${named} />
        <span class="soft small row tight"><${Icon} name=${shared === "needs_you" ? "needs" : shared} size=${16} />
          ${t(`record.${shared}`)}</span>
      </div>
      ${
        may &&
        html`<div class="stack">
        ${
          correct &&
          html`<a class="quiet square" href=${correct}
          aria-label=${t("history.correct_named", { what: named })}><${Icon} name="note" size=${20} /></a>`
        }
        ${
          event.kind !== "tank" &&
          html`<button class="quiet square" type="button" aria-label=${t("remove_named", { what: named })}
          onClick=${tap(() => void remove())}><${Icon} name="remove" size=${20} /></button>`
        }
      </div>`
      }
    </li>`;
}

/**
 * The page that corrects an event; a first filling stands in its tank's own form.
 * @param {import("../advice/journal/timeline.js").Event} event
 * @param {string} here the page to come back to
 */
function way_to_correct({ kind, records: [first] }, here) {
  if (kind === "tank") return `/tank/${first.id}/edit`;
  if (kind in CORRECTED) return `/correct/${kind}/${first.id}`;
  return is_life(first) ? correct_path(first, all(first.kind), here) : null;
}

/** @param {{photos: import("../advice/journal/timeline.js").Recorded[], named: string}} props */
const Photos = ({ photos, named }) =>
  photos.length > 0 &&
  html`<ul class="pictures small">${photos.map(
    (photo, i) => html`
    <li key=${photo.id}><a href=${`/photo/${photo.id}`}
      aria-label=${`${t("photo.numbered", { at: i + 1 })}, ${named}`}><${Picture} photo=${photo}
      said=${photo.caption ?? ""} /></a></li>`,
  )}</ul>`;
