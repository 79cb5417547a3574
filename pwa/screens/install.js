/** The app on the home screen: why, how on this phone, and what goes along. */
// Fetched with this page, because there may be no signal when fish_room.js asks for it.
import "../data/archives.js";
import { html, useSignal } from "../vendor/preact.js";
import { invite, short_code } from "../data/people.js";
import { clock, t } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { install_offer, is_installed, platform } from "../ui/state/home_screen.js";
import { keep_file } from "../ui/keep_file.js";
import { room, sharing } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

const STEPS = { ios: ["ios_1", "ios_2", "ios_3"], android: ["android_1", "android_2"], other: ["other_1"] };

export function Install() {
  const here = platform();
  if (is_installed()) return html`<${Installed} />`;
  return html`
    <${Page} title=${t("install.title")} place="room" up="/room" aside=${html`<span></span>`}
      act=${
        install_offer.value &&
        html`<button class="main" type="button" onClick=${tap(() => void accept())}>${t("install.do")}</button>`
      }>
      <p class="sentence">${t("install.why")}</p>
      <ol class="told">${STEPS[here].map((step) => html`<li key=${step}>${t(`install.${step}`)}</li>`)}</ol>
      ${here === "ios" ? html`<${GoesAlong} />` : html`<p>${t("install.same")}</p>`}
    <//>`;
}

/** An offer can be taken once. */
async function accept() {
  const offer = install_offer.value;
  install_offer.value = null;
  await offer?.prompt();
}

/** The installed app has storage of its own: this phone's room and what is not shared have to be brought there. */
function GoesAlong() {
  const { waiting, sending, photos_waiting, needs_you, joined } = sharing();
  const left = waiting + sending + photos_waiting + needs_you.length;
  const { problem, busy, ask } = use_ask();
  const code = useSignal(/** @type {Awaited<ReturnType<typeof short_code>> | null} */ (null));
  const make = async () => {
    const keeper = room.value.me()?.id;
    const made = await invite(room.value, { keeper, hours: 1 });
    code.value = await short_code(room.value, made);
  };
  const keep = async () => {
    const file = await keep_file(await room.value.export_unshared(), "limnary-unshared", "zip");
    if (file) say(t("archive.kept", { file }));
  };
  return html`
    <section class="section"><h2>${t("install.along")}</h2><p>${t("install.apart")}</p>
      ${
        joined &&
        html`<p>${t("install.as_phone")}</p>
        ${
          code.value
            ? html`<p class="code" role="status"><b class="figures">${code.value.code}</b>
              ${t("invite.code_until", { until: clock(code.value.expires_at) })}</p>`
            : html`<p><button class="quiet" type="button" disabled=${busy.value}
              onClick=${tap(() => void ask(make))}>${t("invite.code")}</button></p>`
        }`
      }
      ${
        left > 0 &&
        html`<p>${t(joined ? "install.unshared" : "install.only_here", { count: left })}</p>
        <p><button class="quiet" type="button" disabled=${busy.value} onClick=${tap(() => void ask(keep))}>
          ${t("install.keep")}</button></p>`
      }
      <${Problem} text=${problem.value} />
    </section>`;
}

const Installed = () => html`
  <${Page} title=${t("install.title")} place="room" up="/room" aside=${html`<span></span>`}>
    <p class="sentence">${t("install.here")}</p>
    <p>${t("install.bring")}</p>
    <p class="row"><a class="quiet" href="/join">${t("join.title")}</a>
      <a class="quiet" href="/room/copy">${t("archive.import")}</a></p>
  <//>`;
