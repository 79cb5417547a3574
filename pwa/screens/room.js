/** Room: how far this phone is shared, who is in it, kits, waters and labels, and what to do with the data. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { rooms } from "../data/fish_room.js";
import { refresh_me, rename } from "../data/people.js";
import * as sync from "../data/sync.js";
import { t, when } from "../i18n/words.js";
import { Archive, hand_over } from "../ui/archive.js";
import { forget, useDraft } from "../ui/draft.js";
import { parameter_name } from "../ui/figures.js";
import { Icon } from "../ui/icon.js";
import { all, now, online, room, sharing } from "../ui/live.js";
import { Page } from "../ui/page.js";
import { People } from "../ui/people.js";
import { tap } from "../ui/tap.js";

/** @param {{enter: (id: string) => Promise<void>}} props `enter` opens another room of this phone's */
export function Room({ enter }) {
  const state = sharing();
  const about = room.value.about();
  return html`
    <${Page} title=${about?.name ?? t("room.title")} place="room" aside=${html`<span></span>`}>
      <${Sharing} state=${state} />
      ${state.joined && html`<${People} owner=${about?.role === "owner"} />`}
      ${state.joined && about?.role === "owner" && html`<${Name} key=${about.name} name=${about.name} />`}
      <${OtherRooms} enter=${enter} />
      <${Settings} kind="test_kit" said=${(/** @type {any} */ kit) => parameter_name(kit.parameter)} />
      <${Settings} kind="source_water" said=${(/** @type {any} */ one) => t(`disinfectant.${one.disinfectant}`)} />
      <${Settings} kind="label" said=${(/** @type {any} */ one) => t("label.line", { amount: String(one.amount), unit: t(`unit.${one.unit}`), litres: String(one.per_l) })} />
      <${Archive} />
    <//>`;
}

/** @param {{state: any}} props */
function Sharing({ state }) {
  const { waiting, sending, needsYou, lastShared, joined, problem } = state;
  const trying = useSignal(false);
  const share = async () => {
    trying.value = true;
    await sync.now().finally(() => (trying.value = false));
  };
  return html`
    <section class="section" aria-label=${t("sharing.title")}>
      <p class="sentence">${!joined ? t("sharing.only_here") : waiting + sending ? t("sharing.waiting_long", { count: waiting + sending }) : t("sharing.all_long")}</p>
      ${joined && lastShared && html`<p class="soft">${t("sharing.last", { when: when(lastShared, now.value) })}</p>`}
      ${!online.value ? html`<p class="soft">${t("sharing.offline")}</p>` : problem && html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>${t(`problem.${problem}`)}</span></p>`}
      ${needsYou.length > 0 && html`<${NeedsYou} entries=${needsYou} />`}
      ${joined && html`<button class="quiet" type="button" disabled=${trying.value} onClick=${tap(() => void share())}>${t(trying.value ? "sharing.trying" : "sharing.now")}</button>`}
      ${!joined && html`<p class="soft">${t("sharing.how_to_join")}</p>`}
    </section>`;
}

/** @param {{entries: any[]}} props */
const NeedsYou = ({ entries }) => html`
  <h2>${t("needs_you.title")}</h2>
  <ul class="lines">${entries.map((entry) => html`
    <li class="line" key=${entry.op.op}><span>${t(`kind.${entry.op.kind}`)}<br /><span class="soft small">${(entry.errors ?? []).map((/** @type {any} */ one) => `${one.field} ${one.message}`).join("; ") || entry.reason}</span></span></li>`)}</ul>
  <div class="row">
    <button class="quiet" type="button" onClick=${tap(() => void room.value.tryAgain())}>${t("needs_you.again")}</button>
    <button class="quiet" type="button" onClick=${tap(async () => hand_over(await room.value.exportNeedsYou(), "limnary-needs-you", "jsonl"))}>${t("needs_you.export")}</button>
  </div>`;

/** The room's name, changed by its owner with signal. @param {{name: string}} props */
function Name({ name }) {
  const kept = useDraft("room.name", () => ({ name }));
  const problem = useSignal("");
  const save = async () => {
    problem.value = "";
    try {
      await rename(room.value, kept.value.name.trim());
      await refresh_me(room.value);
      forget("room.name");
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  return html`
    <details class="more"><summary>${t("room.rename")}</summary>
      <div class="field"><label for="room-name">${t("room.name")}</label>
        <input id="room-name" type="text" maxlength="60" autocomplete="off" value=${kept.value.name} onInput=${(/** @type {any} */ e) => (kept.value = { name: e.target.value })} />
        ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${problem.value}</span></p>`}</div>
      <button class="quiet" type="button" disabled=${kept.value.name.trim() === ""} onClick=${tap(() => void save())}>${t("setting.save")}</button>
    </details>`;
}

/** Other rooms this phone is in. @param {{enter: (id: string) => Promise<void>}} props */
function OtherRooms({ enter }) {
  const found = useSignal(/** @type {any[]} */ ([]));
  useEffect(() => void rooms().then((all) => (found.value = all.filter((/** @type {any} */ one) => !one.ended))), [room.value]);
  const others = found.value.filter((one) => one.id !== room.value.about()?.id);
  return others.length > 0 && html`
    <section class="section"><h2>${t("rooms.title")}</h2>
      <ul class="lines">${others.map((one) => html`
        <li key=${one.id} class="line"><b>${one.name}</b><button class="quiet" type="button" onClick=${tap(() => void enter(one.id))}>${t("rooms.open")}</button></li>`)}</ul>
    </section>`;
}

/** @param {{kind: string, said: (one: any) => string}} props */
const Settings = ({ kind, said }) => html`
  <section class="section">
    <h2>${t(`settings.${kind}`)}</h2>
    <ul class="lines">${all(kind).filter((one) => !one.retired).map((one) => html`
      <li key=${one.id}><a class="line" href=${`/room/${kind}/${one.id}`}><span><b>${one.name}</b><br /><span class="soft small">${said(one)}</span></span></a></li>`)}</ul>
    ${room.value.may(kind) && html`<p><a class="quiet" href=${`/room/${kind}/new`}><${Icon} name="plus" size=${20} />${t(`water.new_${kind}`)}</a></p>`}
  </section>`;
