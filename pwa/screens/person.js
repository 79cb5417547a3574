/**
 * One person of the room: role and phones, and what the keeper may do about them. What cannot be undone is explained
 * beside its button.
 */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { who } from "../data/fish_room.js";
import { hand_over, leave, revoke, set_role } from "../data/people.js";
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
  const person = found.value?.find((each) => each.id === id);
  const here = room.value;
  const page = (/** @type {string} */ title, /** @type {unknown} */ inner) =>
    html`<${Page} title=${title} up="/room/people" place="room" aside=${html`<span></span>`}>${inner}<${Problem}
      text=${problem.value} /><//>`;
  if (!found.value)
    return page(
      t("people.title"),
      html`<p class="soft">${t(problem.value ? "people.unreachable" : "people.asking")}</p>`,
    );
  if (!person) return page(t("people.title"), html`<p class="sentence">${t("people.gone")}</p>`);

  const can = powers(person, { people: found.value, me: here.me()?.id, role: here.about()?.role });
  const { name } = person;
  const acts = acts_on(person, can, again);
  const doing = (/** @type {() => Promise<unknown>} */ work) => tap(() => void ask(work));
  return page(
    name,
    html`
    <${Role} person=${person} can=${can} busy=${busy.value} doing=${doing} on_choose=${acts.become} />
    <section class="section"><h2>${t("people.phones_title")}</h2>
      <${Phones} devices=${person.devices} may=${can.phones} doing=${doing} on_revoke=${acts.shut_out} />
      ${
        can.phones &&
        html`<p><a class="quiet" href=${`/room/invite?keeper=${id}&name=${encodeURIComponent(name)}`}>
        <${Icon} name="plus" size=${20} />${t("people.add_phone")}</a></p>`
      }
    </section>
    ${
      can.hand_over &&
      html`<${Grave} title=${t("people.hand_over")} why=${t("people.hand_over_why", { name })}
      words=${t("people.hand_over_do", { name })} on_do=${doing(acts.give)} />`
    }
    ${
      can.remove &&
      html`<${Grave} title=${t("people.remove")} why=${t("people.remove_why", { name })}
      words=${t("people.remove_do", { name })} on_do=${doing(acts.take_out)} />`
    }
    ${
      can.leave &&
      html`<${Grave} title=${t("people.leave")} why=${t("people.leave_why")}
      words=${t("people.leave_do", { room: here.about()?.name ?? "" })} on_do=${doing(acts.go_away)} />`
    }`,
  );
}

/** @typedef {import("../data/people.js").Person} Member */
/** @typedef {ReturnType<typeof powers>} Powers */
/** @typedef {(work: () => Promise<unknown>) => (event: Event) => void} Doing makes the handler of a button */

/**
 * What can be done about a person; each asks the server.
 * @param {Member} person
 * @param {Powers} can
 * @param {() => Promise<void>} again reads the people anew
 */
function acts_on({ id, name, role }, can, again) {
  const here = room.value;
  const read_again = async () => {
    await here.refresh_role();
    await again();
  };
  const set_to = async (/** @type {string} */ to) => {
    await set_role(here, id, to);
    await read_again();
  };
  return {
    become: async (/** @type {string} */ to) => {
      if (to === role) return;
      await set_to(to);
      const said = t("people.role_changed", { name, role: t(`role.${to}`) });
      // An owner who gives up the role cannot take it back.
      if (can.self) say(said);
      else offer_undo(said, () => set_to(role));
    },
    shut_out: async (/** @type {Phone} */ phone) => {
      await revoke(here, phone.id);
      await again();
      say(t("people.revoked", { phone: phone.name }));
    },
    give: async () => {
      await hand_over(here, id, here.me()?.id ?? "").finally(read_again);
      say(t("people.handed_over", { name }));
    },
    take_out: async () => {
      await leave(here, id);
      say(t("people.removed", { name }));
      go("/room/people", { replace: true });
    },
    go_away: async () => {
      const left = here.about()?.name ?? "";
      await sync.now();
      await leave(here, id);
      await sync.now();
      say(t("people.left", { room: left }));
      go("/room", { replace: true });
    },
  };
}

/**
 * @param {{person: Member, can: Powers, busy: boolean, doing: Doing, on_choose: (role: string) => Promise<void>}} props
 */
const Role = ({ person, can, busy, doing, on_choose }) => html`
  <section class="section"><h2>${t("people.role")}</h2>
    ${
      can.change_role
        ? html`<div class="tiles two" role="group" aria-label=${t("people.role")}>${ROLES.map(
            (role) => html`
          <button key=${role} type="button" aria-pressed=${role === person.role} disabled=${busy}
            onClick=${doing(() => on_choose(role))}><b>${t(`role.${role}`)}</b><span
            class="soft small">${t(`role_may.${role}`)}</span></button>`,
          )}</div>`
        : html`<p><b>${t(`role.${person.role}`)}</b>, ${t(`role_may.${person.role}`)}</p>`
    }
    ${can.self && can.last_owner && html`<p class="soft">${t("people.last_owner")}</p>`}
  </section>`;

/** @typedef {Member["devices"][number]} Phone */

/** @param {{devices: Phone[], may: boolean, doing: Doing, on_revoke: (phone: Phone) => Promise<void>}} props */
function Phones({ devices, may, doing, on_revoke }) {
  const this_phone = useSignal("");
  useEffect(() => void who().then(({ device }) => (this_phone.value = device)), []);
  const others = devices.filter(({ id }) => id !== this_phone.value);
  return html`
    <ul class="lines">${devices.map(
      ({ id, name, last_seen }) => html`
      <li class="line" key=${id}><span class="grow">${name}<br /><span class="soft small">
        ${
          id === this_phone.value
            ? t("people.this_phone")
            : last_seen && t("people.seen", { when: ago(last_seen, now.value) })
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
          (phone) => html`<button class="quiet grave" key=${phone.id} type="button"
        onClick=${doing(() => on_revoke(phone))}>${t("people.revoke", { phone: phone.name })}</button>`,
        )}</div>`
    }`;
}

/** @param {{title: string, why: string, words: string, on_do: (event: Event) => void}} props */
const Grave = ({ title, why, words, on_do }) => html`
  <section class="section"><h2>${title}</h2><p>${why}</p>
    <p><button class="quiet grave" type="button" onClick=${on_do}>${words}</button></p></section>`;
