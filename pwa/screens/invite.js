/** Inviting someone: in which role, for how long; then the link, to be read by a camera or sent. */
import { html, useSignal } from "../vendor/preact.js";
import { invite, short_code } from "../data/people.js";
import { clock, t, when } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { use_draft } from "../ui/state/draft.js";
import { now, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { Qr } from "../ui/qr.js";
import { say } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

const ROLES = ["keeper", "helper", "viewer", "owner"];
const HOURS = [1, 48, 168, 720];

/** @typedef {Awaited<ReturnType<typeof invite>>} Invitation */

/** @param {{query: URLSearchParams}} props `keeper` and `name`: one more phone of that member */
export function Invite({ query }) {
  const keeper = query.get("keeper");
  const name = query.get("name") ?? "";
  const up = keeper ? `/room/person/${keeper}` : "/room/people";
  const draft = use_draft("invite", () => ({ role: "keeper", hours: 48 }));
  const made = useSignal(/** @type {Invitation | null} */ (null));
  const { problem, busy, ask } = use_ask();
  const { role, hours } = draft.value;
  const make = () =>
    ask(async () => void (made.value = await invite(room.value, keeper ? { keeper, hours } : { role, hours })));
  const title = t(keeper ? "invite.title_phone" : "invite.title");
  if (made.value) return html`<${Link} made=${made.value} name=${name} title=${title} up=${up} />`;
  return html`
    <${Page} title=${title} up=${up}
      act=${html`<button class="main" type="button" disabled=${busy.value} onClick=${tap(() => void make())}>
        ${t("invite.make")}</button>`}>
      ${
        keeper
          ? html`<p class="sentence">${t("invite.phone_why", { name })}</p>`
          : html`<${Tiles} label=${t("invite.role")} name="role" chosen=${role}
            on_choose=${(/** @type {string} */ to) => (draft.value = { ...draft.value, role: to })}
            choices=${ROLES.map((each) => [
              each,
              html`<b>${t(`role.${each}`)}</b><span class="soft small">
              ${t(`role_may.${each}`)}</span>`,
            ])} />`
      }
      <${Tiles} label=${t("invite.hours")} name="hours" chosen=${hours}
        on_choose=${(/** @type {number} */ to) => (draft.value = { ...draft.value, hours: to })}
        choices=${HOURS.map((each) => [each, t(`invite.hours.${each}`)])} />
      <${Problem} text=${problem.value} />
    <//>`;
}

/**
 * @template {string | number} T
 * @param {{label: string, name: string, chosen: T, choices: [T, unknown][],
 * on_choose: (to: T) => void}} props
 */
const Tiles = ({ label, name, chosen, choices, on_choose }) => html`
  <fieldset class="field"><legend>${label}</legend>
    <div class="tiles two">${choices.map(
      ([value, said]) => html`
      <label key=${value}><input class="unseen" type="radio" name=${name} value=${value} checked=${value === chosen}
        onChange=${() => on_choose(value)} />${said}</label>`,
    )}</div>
  </fieldset>`;

/** @param {{made: Invitation, name: string, title: string, up: string}} props */
function Link({ made, name, title, up }) {
  const copied = useSignal(false);
  const code = useSignal(/** @type {Awaited<ReturnType<typeof short_code>> | null} */ (null));
  const { problem, busy, ask } = use_ask();
  const make_code = () => ask(async () => void (code.value = await short_code(room.value, made)));
  const until = when(made.expires_at, now.value);
  const copy = async () => {
    await navigator.clipboard.writeText(made.link);
    copied.value = true;
  };
  const send = async () => {
    try {
      await navigator.share({
        title: t("invite.share_title", { room: room.value.about()?.name ?? "" }),
        url: made.link,
      });
    } catch (error) {
      // The keeper closed the share sheet: the link is still here.
      if (!(error instanceof DOMException)) throw error;
    }
  };
  const sends = typeof navigator.share === "function";
  const copies = Boolean(navigator.clipboard);
  const finish = () => go(up, { replace: true });
  return html`
    <${Page} title=${title} up=${up}
      act=${html`
        <button class=${sends || copies ? "quiet" : "main"} type="button" onClick=${tap(finish)}>${t("invite.close")}
          </button>
        ${
          copies &&
          html`<button class=${sends ? "quiet" : "main"} type="button"
          onClick=${tap(() => void copy().catch(() => say(made.link)))}>
          ${t(copied.value ? "invite.copied" : "invite.copy")}</button>`
        }
        ${
          sends &&
          html`<button class="main" type="button" onClick=${tap(() => void send())}>${t("invite.share")}
          </button>`
        }`}>
      <div class="invitation">
        <p class="sentence">${
          made.keeper
            ? t("invite.how_phone", { name, until })
            : t("invite.how", { role: t(`role.${made.role}`), until })
        }</p>
        <${Qr} text=${made.link} label=${t("invite.qr")} />
        ${
          code.value
            ? html`<p class="code" role="status"><b class="figures">${code.value.code}</b>
              ${t("invite.code_until", { until: clock(code.value.expires_at) })}</p>`
            : html`<p><button class="quiet" type="button" disabled=${busy.value}
              onClick=${tap(() => void make_code())}>${t("invite.code")}</button></p>`
        }
        <${Problem} text=${problem.value} />
        <p class="soft small">${t("invite.once")}</p>
        <p class="small link" aria-label=${t("invite.link")}>${made.link}</p>
      </div>
    <//>`;
}
