/** Room: how far this phone is shared, who is in it, kits, waters and labels, and what to do with the data. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { invite, people } from "../data/people.js";
import * as sync from "../data/sync.js";
import { t, when } from "../i18n/words.js";
import { parameter_name } from "../ui/figures.js";
import { Icon } from "../ui/icon.js";
import { all, now, online, room, sharing } from "../ui/live.js";
import { Page } from "../ui/page.js";
import { Qr } from "../ui/qr.js";
import { tap } from "../ui/tap.js";

export function Room() {
  const state = sharing();
  const about = room.value.about();
  return html`
    <${Page} title=${about?.name ?? t("room.title")} place="room" aside=${html`<span></span>`}>
      <${Sharing} state=${state} />
      ${state.joined && html`<${People} owner=${about?.role === "owner"} />`}
      <${Settings} kind="test_kit" said=${(/** @type {any} */ kit) => parameter_name(kit.parameter)} />
      <${Settings} kind="source_water" said=${(/** @type {any} */ one) => t(`disinfectant.${one.disinfectant}`)} />
      <${Settings} kind="label" said=${(/** @type {any} */ one) => t("label.line", { amount: String(one.amount), unit: t(`unit.${one.unit}`), litres: String(one.per_l) })} />
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
  <p><button class="quiet" type="button" onClick=${tap(() => void room.value.tryAgain())}>${t("needs_you.again")}</button></p>`;

/** @param {{owner: boolean}} props */
function People({ owner }) {
  const found = useSignal(/** @type {import("../data/people.js").Person[] | null} */ (null));
  const link = useSignal(/** @type {any} */ (null));
  const problem = useSignal("");
  const ask = async (/** @type {() => Promise<void>} */ work) => {
    problem.value = "";
    try {
      await work();
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  useEffect(() => void ask(async () => void (found.value = await people(room.value))), [online.value, room.value]);
  return html`
    <section class="section">
      <h2>${t("people.title")}</h2>
      ${found.value
        ? html`<ul class="lines">${found.value.map((one) => html`
            <li class="line" key=${one.id}><span><b>${one.name}</b> <span class="soft">${t(`role.${one.role}`)}</span>
              ${one.devices.map((device) => html`<br /><span class="soft small">${device.name}${device.last_seen && `, ${when(device.last_seen, now.value)}`}</span>`)}</span></li>`)}</ul>`
        : html`<p class="soft">${t(problem.value ? "people.unreachable" : "people.asking")}</p>`}
      ${problem.value && found.value && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${problem.value}</span></p>`}
      ${owner && found.value && !link.value && html`
        <div class="row">${["keeper", "helper"].map((role) => html`
          <button class="quiet" key=${role} type="button" onClick=${tap(() => void ask(async () => void (link.value = await invite(room.value, role))))}><${Icon} name="plus" size=${20} />${t(`invite.${role}`)}</button>`)}</div>`}
      ${link.value && html`<${Invitation} made=${link.value} onClose=${() => (link.value = null)} />`}
    </section>`;
}

/** @param {{made: any, onClose: () => void}} props */
const Invitation = ({ made, onClose }) => {
  const copied = useSignal(false);
  const copy = async () => {
    await navigator.clipboard?.writeText(made.link);
    copied.value = true;
  };
  return html`
    <div class="invitation">
      <p>${t("invite.how", { role: t(`role.${made.role}`), until: when(made.expires_at, now.value) })}</p>
      <${Qr} text=${made.link} label=${t("invite.qr")} />
      <p class="small link">${made.link}</p>
      <div class="row">
        ${navigator.clipboard && html`<button class="quiet" type="button" onClick=${tap(() => void copy())}>${t(copied.value ? "invite.copied" : "invite.copy")}</button>`}
        <button class="quiet" type="button" onClick=${tap(onClose)}>${t("invite.close")}</button>
      </div>
    </div>`;
};

/** @param {{kind: string, said: (one: any) => string}} props */
const Settings = ({ kind, said }) => html`
  <section class="section">
    <h2>${t(`settings.${kind}`)}</h2>
    <ul class="lines">${all(kind).filter((one) => !one.retired).map((one) => html`
      <li key=${one.id}><a class="line" href=${`/room/${kind}/${one.id}`}><span><b>${one.name}</b><br /><span class="soft small">${said(one)}</span></span></a></li>`)}</ul>
    ${room.value.may(kind) && html`<p><a class="quiet" href=${`/room/${kind}/new`}><${Icon} name="plus" size=${20} />${t(`water.new_${kind}`)}</a></p>`}
  </section>`;
