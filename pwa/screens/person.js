/**
 * One person of the room: role and phones, and what may be done about them. What cannot be undone is explained beside
 * its button.
 */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { who } from "../data/fish_room.js";
import { hand_over, leave, refresh_role, revoke, set_role } from "../data/people.js";
import * as sync from "../data/sync.js";
import { ROLES, powers } from "../advice/sharing/powers.js";
import { ago, t } from "../i18n/words.js";
import { Problem, offer_undo } from "../ui/state/ask.js";
import { Icon } from "../ui/icon.js";
import { now, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { use_people } from "../ui/state/people_here.js";
import { say } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** @param {{id: string}} props */
export function Person({ id }) {
  const { found, again, problem, busy, ask } = use_people();
  const one = found.value?.find((person) => person.id === id);
  const page = (/** @type {string} */ title, /** @type {any} */ inner) =>
    html`<${Page} title=${title} up="/room/people" place="room" aside=${html`<span></span>`}>${inner}<${Problem}
      text=${problem.value} /><//>`;
  if (!found.value)
    return page(
      t("people.title"),
      html`<p class="soft">${t(problem.value ? "people.unreachable" : "people.asking")}</p>`,
    );
  if (!one) return page(t("people.title"), html`<p class="sentence">${t("people.gone")}</p>`);

  const here = room.value;
  const can = powers(one, { people: found.value, me: here.me()?.id, role: here.about()?.role });
  const name = one.name;
  const ours = async () => (await refresh_role(here), await again());
  const become = async (/** @type {string} */ role) => {
    const before = one.role;
    const turn = async (/** @type {string} */ to) => (await set_role(here, id, to), await ours());
    await turn(role);
    const said = t("people.role_changed", { name, role: t(`role.${role}`) });
    // Who has stepped back from owner cannot take the step back again.
    if (can.self) say(said);
    else offer_undo(said, () => turn(before));
  };
  const shut_out = async (/** @type {{id: string, name: string}} */ phone) => (
    await revoke(here, phone.id), await again(), say(t("people.revoked", { phone: phone.name }))
  );
  const give = async () => (
    await hand_over(here, id, here.me()?.id ?? "").finally(ours), say(t("people.handed_over", { name }))
  );
  const take_out = async () => (
    await leave(here, id), say(t("people.removed", { name })), go("/room/people", { replace: true })
  );
  const go_away = async () => {
    const left = here.about()?.name ?? "";
    await sync.now();
    await leave(here, id);
    await sync.now();
    say(t("people.left", { room: left }));
    go("/room", { replace: true });
  };
  const doing = (/** @type {() => Promise<unknown>} */ work) => tap(() => void ask(work));

  return page(
    name,
    html`
    <section class="section"><h2>${t("people.role")}</h2>
      ${
        can.change_role
          ? html`<div class="tiles two" role="group" aria-label=${t("people.role")}>${ROLES.map(
              (role) => html`
            <button key=${role} type="button" aria-pressed=${role === one.role} disabled=${busy.value}
              onClick=${doing(async () => role !== one.role && (await become(role)))}><b>${t(`role.${role}`)}</b><span
              class="soft small">${t(`role_may.${role}`)}</span></button>`,
            )}</div>`
          : html`<p><b>${t(`role.${one.role}`)}</b>, ${t(`role_may.${one.role}`)}</p>`
      }
      ${can.self && can.last_owner && html`<p class="soft">${t("people.last_owner")}</p>`}
    </section>
    <section class="section"><h2>${t("people.phones_title")}</h2>
      <${Phones} devices=${one.devices} may=${can.phones} doing=${doing} on_revoke=${shut_out} />
      ${
        can.phones &&
        html`<p><a class="quiet" href=${`/room/invite?keeper=${id}&name=${encodeURIComponent(name)}`}>
        <${Icon} name="plus" size=${20} />${t("people.add_phone")}</a></p>`
      }
    </section>
    ${
      can.hand_over &&
      html`<${Grave} title=${t("people.hand_over")} why=${t("people.hand_over_why", { name })}
      words=${t("people.hand_over_do", { name })} on_do=${doing(give)} />`
    }
    ${
      can.remove &&
      html`<${Grave} title=${t("people.remove")} why=${t("people.remove_why", { name })}
      words=${t("people.remove_do", { name })} on_do=${doing(take_out)} />`
    }
    ${
      can.leave &&
      html`<${Grave} title=${t("people.leave")} why=${t("people.leave_why")}
      words=${t("people.leave_do", { room: here.about()?.name ?? "" })} on_do=${doing(go_away)} />`
    }`,
  );
}

/**
 * @param {{devices: import("../data/people.js").Person["devices"], may: boolean, doing: (work: () => Promise<unknown>)
 * => any, on_revoke: (phone: any) => Promise<unknown>}} props
 */
function Phones({ devices, may, doing, on_revoke }) {
  const this_phone = useSignal("");
  useEffect(() => void who().then(({ device }) => (this_phone.value = device)), []);
  const others = devices.filter((one) => one.id !== this_phone.value);
  return html`
    <ul class="lines">${devices.map(
      (one) => html`
      <li class="line" key=${one.id}><span class="grow">${one.name}<br /><span class="soft small">
        ${
          one.id === this_phone.value
            ? t("people.this_phone")
            : one.last_seen && t("people.seen", { when: ago(one.last_seen, now.value) })
        }</span></span></li>`,
    )}</ul>
    ${devices.length === 0 && html`<p class="soft">${t("people.no_phone")}</p>`}
    ${
      may &&
      others.length > 0 &&
      html`
      <p class="soft">${t("people.revoke_why")}</p>
      <div class="stack">
        ${others.map(
          (one) => html`<button class="quiet grave" key=${one.id} type="button"
        onClick=${doing(() => on_revoke(one))}>${t("people.revoke", { phone: one.name })}</button>`,
        )}</div>`
    }`;
}

/** @param {{title: string, why: string, words: string, on_do: any}} props */
const Grave = ({ title, why, words, on_do }) => html`
  <section class="section"><h2>${title}</h2><p>${why}</p>
    <p><button class="quiet grave" type="button" onClick=${on_do}>${words}</button></p></section>`;
