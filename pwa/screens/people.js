/** People and phones: who is in the room, when each was last seen, and the links that are still open. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { open_invites, withdraw } from "../data/people.js";
import { ago, t, when } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { Icon } from "../ui/icon.js";
import { now, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { use_people } from "../ui/state/people_here.js";
import { say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

export function People() {
  const { found, problem } = use_people();
  const owner = room.value.about()?.role === "owner";
  const me = room.value.me()?.id;
  return html`
    <${Page} title=${t("people.title")} place="room" up="/room" aside=${html`<span></span>`}
      act=${owner && html`<a class="main" href="/room/invite"><${Icon} name="plus" />${t("people.invite")}</a>`}>
      ${
        !found.value &&
        (problem.value
          ? html`<p class="sentence">${t("people.unreachable")}</p>`
          : html`<p
        class="soft">${t("people.asking")}</p>`)
      }
      ${problem.value !== t("refusal.unreachable") && html`<${Problem} text=${problem.value} />`}
      <ul class="lines">${(found.value ?? []).map(
        (one) => html`
        <li key=${one.id}><a class="line" href=${`/room/person/${one.id}`}><span class="grow"><b>${one.name}</b> <span
          class="soft">${[t(`role.${one.role}`), one.id === me && t("people.you")].filter(Boolean).join(", ")}</span><br
          />
          <span class="soft small">${phones_said(one.devices)}</span></span></a></li>`,
      )}</ul>
      ${found.value && !owner && html`<p class="soft">${t("people.ask_owner")}</p>`}
      ${found.value && owner && html`<${OpenInvites} people=${found.value} />`}
    <//>`;
}

/** @param {import("../data/people.js").Person["devices"]} devices */
function phones_said(devices) {
  const seen = [...devices.flatMap((one) => one.last_seen ?? [])].sort().at(-1);
  return seen ? t("people.phones", { count: devices.length, when: ago(seen, now.value) }) : t("people.no_phone");
}

/** @param {{people: import("../data/people.js").Person[]}} props */
function OpenInvites({ people }) {
  const links = useSignal(/** @type {import("../data/people.js").OpenInvite[] | null} */ (null));
  const { problem, ask } = use_ask();
  const look = async () => void (links.value = await open_invites(room.value));
  useEffect(() => void ask(look), []);
  const named = (/** @type {string | null} */ keeper) =>
    people.find((one) => one.id === keeper)?.name ?? room.value.name_of(keeper) ?? t("invite.the_server");
  const close = async (/** @type {string} */ id) => {
    await withdraw(room.value, id);
    await look();
    say(t("invite.withdrawn"));
  };
  return (
    links.value &&
    html`
    <section class="section"><h2>${t("invite.open")}</h2>
      ${links.value.length === 0 && html`<p class="soft">${t("invite.open_none")}</p>`}
      <ul class="lines">${links.value.map((one) => {
        const what = one.keeper ? t("invite.open_phone", { name: named(one.keeper) }) : t(`role.${one.role}`);
        return html`<li class="line" key=${one.id}><span class="grow"><b>${what}</b><br /><span class="soft small">
          ${t("invite.until", { until: when(one.expires_at, now.value), who: named(one.made_by) })}</span></span>
          <button class="quiet" type="button" onClick=${tap(() => void ask(() => close(one.id)))}>
            ${t("invite.withdraw")}<span class="unseen"> ${what}</span></button></li>`;
      })}</ul>
      <${Problem} text=${problem.value} />
    </section>`
  );
}

// For the browser stories, as in app.js.
export * as people from "../data/people.js";
