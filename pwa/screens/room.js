/** Room: how far this phone is shared, and the ways to its people, rooms, copies, kits, waters and labels. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { room_list } from "../data/fish_room.js";
import * as sync from "../data/sync.js";
import { clocks_differ, sharing_lines } from "../advice/sharing/sharing_lines.js";
import { short, t, when } from "../i18n/words.js";
import { litres_said, measured, parameter_name } from "../ui/words/figures.js";
import { Icon } from "../ui/icon.js";
import { is_installed, kept, look_if_kept } from "../ui/state/home_screen.js";
import { all_of_kind, now, online, room, sharing } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { Upkeep } from "../ui/upkeep.js";
import { tap } from "../ui/state/tap.js";

/**
 * @template {import("../types/records.js").RecordKind} K
 * @typedef {import("../types/views.js").View<K>} View
 */

export function Room() {
  const state = sharing();
  const about = room.value.about();
  const refused = state.needs_you.length + state.photos_need_you;
  const rooms = useSignal(0);
  useEffect(() => void room_list().then((list) => (rooms.value = list.length)), [room.value, about?.ended]);
  return html`
    <${Page} title=${about?.name ?? t("room.title")} place="room" aside=${html`<span></span>`}>
      <${Sharing} state=${state} ended=${Boolean(about?.ended)} />
      <ul class="lines section">
        ${
          refused > 0 &&
          html`<${Way} to="/room/needs-you" title=${t("needs_you.title")}
          said=${t("needs_you.count", { count: refused })} icon="needs" />`
        }
        ${
          state.joined &&
          html`<${Way} to="/room/people" title=${t("people.title")}
          said=${t("room.you_are", { role: t(`role.${about?.role}`) })} />`
        }
        <${Way} to="/room/rooms" title=${t("rooms.title")} said=${t("rooms.count", { count: rooms.value })} />
        ${!about?.ended && html`<${Way} to="/away" title=${t("away.title")} said=${t("away.short")} />`}
        ${!state.joined && html`<${Way} to="/join" title=${t("join.title")} said=${t("join.short")} />`}
        ${!is_installed() && html`<${Way} to="/room/install" title=${t("install.title")} said=${t("install.short")} />`}
        ${
          room.value.may("tank") &&
          html`<${Way} to="/room/notebook" title=${t("notebook.title")} said=${t("notebook.short")} />`
        }
        <${Way} to="/room/copy" title=${t("archive.title")} said=${t("archive.short")} />
        <${Way} to="/room/display" title=${t("display.title")} said=${t("display.short")} />
        ${
          online.value &&
          html`<${Way} to="/check" title=${t("upkeep.check")} said=${t("upkeep.check_short")} outside />`
        }
      </ul>
      ${
        !about?.ended &&
        html`
        <${Settings} kind="test_kit" said=${(/** @type {View<"test_kit">} */ kit) => parameter_name(kit.parameter)} />
        <${Settings} kind="source_water"
          said=${(/** @type {View<"source_water">} */ { disinfectant }) => t(`disinfectant.${disinfectant}`)} />
        <${Settings} kind="label"
          said=${(/** @type {View<"label">} */ { amount, unit, per_l }) =>
            t("label.line", { amount: short(amount), unit: t(`unit.${unit}`), litres: litres_said(per_l) })}
          />
        <${Settings} kind="own_species"
          said=${(/** @type {View<"own_species">} */ { length_cm }) => measured(length_cm, "cm", 1)} />
        <${Settings} kind="own_plant" said=${() => ""} />`
      }
      ${state.joined && about?.role === "owner" && html`<${Upkeep} />`}
    <//>`;
}

/**
 * `outside`: a page that is not the app's.
 * @param {{to: string, title: string, said: string, icon?: string, outside?: boolean}} props
 */
const Way = ({ to, title, said, icon, outside }) => html`
  <li><a class="line" href=${to} target=${outside && "_self"}>${icon && html`<${Icon} name=${icon} />`}<span
    class="grow"><b>${title}</b><br /><span class="soft small">${said}</span></span></a></li>`;

/**
 * How far pictures are shared, and how much a restored server has back.
 * @param {{state: ReturnType<typeof sharing>}} props
 */
const SoFar = ({ state: { photos_waiting, photos_shared, not_back, put_aside } }) => html`
  ${
    photos_waiting > 0 &&
    photos_shared > 0 &&
    html`<p class="soft" role="status">
    ${t("sharing.photos_so_far", of_all(photos_shared, photos_shared + photos_waiting))}</p>`
  }
  ${
    not_back > 0 &&
    not_back < put_aside &&
    html`<p class="soft" role="status">${t("sharing.back_so_far", of_all(put_aside - not_back, put_aside))}</p>`
  }`;

/** @param {number} count @param {number} total */
const of_all = (count, total) => ({ count: short(count, 0), total: short(total, 0) });

/** @param {{state: ReturnType<typeof sharing>, ended: boolean}} props */
function Sharing({ state, ended }) {
  const { lastShared, joined, problem } = state;
  const trying = useSignal(false);
  // `lastShared` is a time of this phone's own clock.
  const here = Date.now();
  const share = async () => {
    trying.value = true;
    await sync.now().finally(() => (trying.value = false));
  };
  const newer = async () => void (await (await navigator.serviceWorker?.getRegistration())?.update());
  const [first, ...more] = sharing_lines({ ...state, joined: joined || ended });
  return html`
    <section class="section" aria-label=${t("sharing.title")}>
      ${
        ended
          ? html`<p class="sentence">${t("problem.ended")}</p>`
          : html`<p class="sentence">${t(`sharing.${first.line}`, { count: first.count })}</p>`
      }
      ${(ended && first.line !== "all_long" ? [first, ...more] : more).map(
        ({ line, count }) => html`<p key=${line}>
        ${t(`sharing.${line}`, { count })}</p>`,
      )}
      <${SoFar} state=${state} />
      <${Waiting} state=${state} />
      ${joined && lastShared && html`<p class="soft">${t("sharing.last", { when: when(lastShared, here) })}</p>`}
      ${
        joined &&
        clocks_differ(here, now.value) &&
        html`<p class="soft">
        ${t("sharing.clock", { here: when(here, now.value), there: when(now.value, now.value) })}</p>`
      }
      ${
        !online.value
          ? html`<p class="soft">${t("sharing.offline")}</p>`
          : problem &&
            !ended &&
            html`<p class="wrong">
        <${Icon} name="needs" size=${20} /><span>${t(`problem.${problem}`)}</span></p>`
      }
      <div class="row">
        ${
          joined &&
          html`<button class="quiet" type="button" disabled=${trying.value}
          onClick=${tap(() => void share())}>${t(trying.value ? "sharing.trying" : "sharing.now")}</button>`
        }
        ${
          problem === "upgrade" &&
          html`<button class="quiet" type="button" onClick=${tap(() => void newer())}>
          ${t("sharing.newer")}</button>`
        }
      </div>
      ${!joined && !ended && html`<p class="soft">${t("sharing.how_to_join")}</p>`}
    </section>`;
}

/** Since when something waits, and whether the browser keeps it. @param {{state: ReturnType<typeof sharing>}} props */
function Waiting({ state: { waiting, sending, oldest, joined } }) {
  const count = waiting + sending;
  useEffect(() => void look_if_kept(), [count]);
  const since = oldest && { count, when: when(oldest, now.value) };
  return html`
    ${since && html`<p>${t(joined ? "sharing.oldest" : "sharing.oldest_here", since)}</p>`}
    ${kept.value !== null && html`<p class="soft">${t(kept.value ? "storage.kept" : "storage.may_go")}</p>`}`;
}

/** @param {{kind: string, said: (record: import("../ui/state/live.js").SomeRecord) => string}} props */
const Settings = ({ kind, said }) => html`
  <section class="section">
    <h2>${t(`settings.${kind}`)}</h2>
    <ul class="lines">${all_of_kind(kind)
      .filter(({ retired }) => !retired)
      .map(
        (record) => html`
      <li key=${record.id}><a class="line" href=${`/room/${kind}/${record.id}`}><span><b>${record.name}</b><br /><span
        class="soft small">${said(record)}</span></span></a></li>`,
      )}</ul>
    ${
      room.value.may(kind) &&
      html`<p><a class="quiet" href=${`/room/${kind}/new`}><${Icon} name="plus" size=${20} />
      ${t(`water.new_${kind}`)}</a></p>`
    }
  </section>`;
