/** Joining a fish room by its link: the names of keeper and phone, and then its tanks are here. */
import { html, useSignal } from "../vendor/preact.js";
import { join, use_room } from "../data/fish_room.js";
import { Unreachable } from "../data/api.js";
import { t } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { Icon } from "../ui/icon.js";
import { room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { say } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";
import { WayIn } from "../ui/way_in/way_in.js";
import { trouble_said } from "../ui/words/trouble_said.js";

/** @param {{secret: string, enter: () => Promise<void>}} props `enter` opens the room used last */
export function Join({ secret, enter }) {
  const me = room.value.me();
  const draft = use_draft("join", () => ({ keeper: "", phone: "" }));
  const problem = useSignal("");
  const asking = useSignal(false);
  const { keeper, phone } = draft.value;
  const ready = phone.trim() !== "" && (me || keeper.trim() !== "");

  const send = async () => {
    problem.value = "";
    asking.value = true;
    try {
      const id = await join({ secret, device_name: phone.trim(), ...(me ? {} : { keeper_name: keeper.trim() }) });
      await use_room(id);
      forget("join");
      await enter();
      go("/", { replace: true });
      say(t("join.done", { room: room.value.about()?.name ?? "" }));
    } catch (error) {
      problem.value = error instanceof Unreachable ? t("join.unreachable") : trouble_said(error);
    } finally {
      asking.value = false;
    }
  };
  if (!secret) return html`<${WayIn} />`;
  return html`
    <${Page} title=${t("join.title")} up="/"
      act=${html`<button class="main" type="button" disabled=${!ready || asking.value}
        onClick=${tap(() => void send())}>${t(asking.value ? "join.asking" : "join.do")}</button>`}>
      <p class="sentence">${t("join.why")}</p>
      ${
        !me &&
        html`<${Line} id="keeper" label=${t("join.keeper")} value=${keeper} autocomplete="name"
        on_value=${(/** @type {string} */ text) => (draft.value = { ...draft.value, keeper: text })} />`
      }
      <${Line} id="phone" label=${t("join.phone")} value=${phone} autocomplete="off"
        on_value=${(/** @type {string} */ text) => (draft.value = { ...draft.value, phone: text })} />
      ${
        problem.value &&
        html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${problem.value}
        </span></p>`
      }
    <//>`;
}

/** @param {{id: string, label: string, value: string, autocomplete: string, on_value: (text: string) => void}} props */
const Line = ({ id, label, value, autocomplete, on_value }) => html`
  <div class="field"><label for=${id}>${label}</label>
    <input id=${id} type="text" maxlength="60" autocomplete=${autocomplete} value=${value}
      onInput=${with_text(on_value)} /></div>`;
