/** Who is in the room and with which phones; an owner invites, and shuts out a lost phone. Seen only with signal. */
import { html, useEffect, useRef, useSignal } from "../vendor/preact.js";
import { invite, leave, people, revoke } from "../data/people.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { now, online, room } from "./live.js";
import { Qr } from "./qr.js";
import { tap } from "./tap.js";
import { Twice } from "./twice.js";

/** @param {{owner: boolean}} props */
export function People({ owner }) {
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
  const look = async () => void (found.value = await people(room.value));
  useEffect(() => void ask(look), [online.value, room.value]);
  const me = room.value.me()?.id;
  return html`
    <section class="section">
      <h2>${t("people.title")}</h2>
      ${found.value
        ? html`<ul class="lines">${found.value.map((one) => html`
            <${Person} key=${one.id} one=${one} may=${owner || one.id === me}
              onRevoke=${(/** @type {string} */ device) => void ask(async () => { await revoke(room.value, device); await look(); })}
              onRemove=${owner || one.id === me ? () => void ask(async () => { await leave(room.value, one.id); await look(); }) : null} />`)}</ul>`
        : html`<p class="soft">${t(problem.value ? "people.unreachable" : "people.asking")}</p>`}
      ${problem.value && found.value && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${problem.value}</span></p>`}
      ${owner && found.value && !link.value && html`
        <div class="row">${["keeper", "helper", "viewer"].map((role) => html`
          <button class="quiet" key=${role} type="button" onClick=${tap(() => void ask(async () => void (link.value = await invite(room.value, role))))}><${Icon} name="plus" size=${20} />${t(`invite.${role}`)}</button>`)}</div>`}
      ${link.value && html`<${Invitation} made=${link.value} onClose=${() => (link.value = null)} />`}
    </section>`;
}

/** @param {{one: import("../data/people.js").Person, may: boolean, onRevoke: (device: string) => void, onRemove: (() => void) | null}} props */
const Person = ({ one, may, onRevoke, onRemove }) => html`
  <li>
    <details class="more person"><summary><span class="grow"><b>${one.name}</b> <span class="soft">${t(`role.${one.role}`)}</span><br />
      <span class="soft small">${one.devices.length ? one.devices.map((device) => device.name).join(", ") : t("people.no_phone")}</span></span></summary>
      ${one.devices.map((device) => html`
        <div class="row apart" key=${device.id}><span>${device.name}<br /><span class="soft small">${device.last_seen && t("people.seen", { when: when(device.last_seen, now.value) })}</span></span>
          ${may && html`<${Twice} words=${t("people.shut_out")} sure=${t("people.shut_out_sure", { phone: device.name })} onSure=${() => onRevoke(device.id)} />`}</div>`)}
      ${onRemove && html`<p><${Twice} words=${t("people.remove")} sure=${t("people.remove_sure", { name: one.name })} onSure=${onRemove} /></p>`}
    </details>
  </li>`;

/** @param {{made: any, onClose: () => void}} props */
const Invitation = ({ made, onClose }) => {
  const copied = useSignal(false);
  const box = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => box.current?.scrollIntoView({ block: "end" }), []);
  const copy = async () => {
    await navigator.clipboard?.writeText(made.link);
    copied.value = true;
  };
  return html`
    <div class="invitation" ref=${box}>
      <p>${t("invite.how", { role: t(`role.${made.role}`), until: when(made.expires_at, now.value) })}</p>
      <${Qr} text=${made.link} label=${t("invite.qr")} />
      <p class="small link">${made.link}</p>
      <div class="row">
        ${navigator.clipboard && html`<button class="quiet" type="button" onClick=${tap(() => void copy())}>${t(copied.value ? "invite.copied" : "invite.copy")}</button>`}
        <button class="quiet" type="button" onClick=${tap(onClose)}>${t("invite.close")}</button>
      </div>
    </div>`;
};
