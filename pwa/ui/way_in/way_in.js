/**
 * The way into a room where no link can be opened, as in an app that was put on the home screen: a pasted link, a short
 * code, the camera, a photo.
 */
import { html, useSignal } from "../../vendor/preact.js";
import { Refused } from "../../data/api.js";
import { this_phone } from "../../data/phone.js";
import { secret_of, way_in } from "../../data/way_in.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { Page } from "../page.js";
import { Problem } from "../state/ask.js";
import { with_text } from "../state/field_text.js";
import { go } from "../state/router.js";
import { tap } from "../state/tap.js";
import { trouble_said } from "../words/trouble_said.js";
import { Camera, has_camera } from "./camera.js";
import { code_in_photo } from "./read_code.js";

export function WayIn() {
  const { typed, scanning, problem, busy, take, paste, look_at, no_camera } = use_way_in();
  const pastes = Boolean(navigator.clipboard?.readText);
  return html`
    <${Page} title=${t("join.title")} up="/room"
      act=${html`<button class="main" type="button" disabled=${busy.value || !typed.value.trim()}
        onClick=${tap(() => void take(typed.value))}>${t("join.on")}</button>`}>
      <p class="sentence">${t("join.how")}</p>
      <div class="field"><label for="way-in">${t("join.way")}</label>
        <input id="way-in" type="text" autocomplete="off" autocapitalize="off" spellcheck=${false}
          value=${typed.value} onInput=${with_text((text) => (typed.value = text))} /></div>
      <${Problem} text=${problem.value} />
      <div class="row">
        ${
          pastes &&
          html`<button class="quiet tall" type="button" onClick=${tap(() => void paste())}>${t("join.paste")}
          </button>`
        }
        ${
          has_camera() &&
          html`<button class="quiet tall" type="button" aria-pressed=${scanning.value}
          onClick=${tap(() => (scanning.value = !scanning.value))}><${Icon} name="camera" />${t("join.scan")}</button>`
        }
        <label class="quiet tall file"><${Icon} name="camera" />${t("join.photo")}<input class="unseen" type="file"
          accept="image/*" onChange=${look_at} /></label>
      </div>
      ${
        scanning.value &&
        html`<${Camera} on_text=${(/** @type {string} */ text) => void take(text)} on_fail=${no_camera} />`
      }
    <//>`;
}

/** What was typed, and what a text, the clipboard, the camera or a photo leads to. */
function use_way_in() {
  const typed = useSignal("");
  const scanning = useSignal(false);
  const problem = useSignal("");
  const busy = useSignal(false);

  const take = async (/** @type {string} */ text) => {
    scanning.value = false;
    problem.value = "";
    const way = way_in(text);
    if (!way) return void (problem.value = t("join.not_way"));
    busy.value = true;
    try {
      go(`/join#${await secret_of(await this_phone(), way)}`, { replace: true });
    } catch (failed) {
      const unknown = failed instanceof Refused && failed.status === 404;
      problem.value = unknown ? t("join.code_unknown") : trouble_said(failed);
    } finally {
      busy.value = false;
    }
  };
  const paste = async () => {
    const text = await navigator.clipboard.readText().catch(() => "");
    typed.value = text;
    if (text) await take(text);
  };
  const look_at = async (/** @type {Event & {currentTarget: HTMLInputElement}} */ { currentTarget: input }) => {
    const photo = input.files?.[0];
    input.value = "";
    if (!photo) return;
    const text = await code_in_photo(photo).catch((failed) => void console.warn("No code:", failed));
    if (text) await take(text);
    else problem.value = t("join.no_code");
  };
  const no_camera = () => {
    scanning.value = false;
    problem.value = t("join.no_camera");
  };
  return { typed, scanning, problem, busy, take, paste, look_at, no_camera };
}
