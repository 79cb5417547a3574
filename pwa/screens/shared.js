/** Photos that another app shared with this one: to which tank they belong. There they wait in the note's draft. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { photo_drafts } from "../data/photo_drafts.js";
import { forget_shared_photos, shared_photos } from "../data/shared_photos.js";
import { t } from "../i18n/words.js";
import { Failed } from "../ui/life_entry.js";
import { live_room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { Loose } from "../ui/picture.js";
import { go } from "../ui/state/router.js";
import { shrunk } from "../ui/shrink.js";
import { tap } from "../ui/state/tap.js";

const taken = photo_drafts();

export function Shared() {
  const photos = useSignal(/** @type {Blob[] | null} */ (null));
  const busy = useSignal(false);
  const problem = useSignal("");
  useEffect(() => void shared_photos().then((found) => (photos.value = found)), []);
  const attach = async (/** @type {string} */ tank) => {
    busy.value = true;
    try {
      for (const photo of photos.value ?? []) await taken.add(`note.${tank}`, await shrunk(photo));
      await forget_shared_photos();
      go(`/tank/${tank}/note`, { replace: true });
    } catch (error) {
      const why = error instanceof RangeError ? "note.no_picture" : "note.photos_not_kept";
      problem.value = t(why, { file: t("note.photos") });
      busy.value = false;
    }
  };
  if (!photos.value) return null;
  const some = photos.value.length > 0;
  return html`
    <${Page} title=${t("shared.title")} up="/">
      <p class="sentence">${t(some ? "shared.which" : "shared.none")}</p>
      <ul class="pictures">${photos.value.map(
        (picture, at) => html`<li key=${at}><${Loose} picture=${picture} said=${t("photo.numbered", { at: at + 1 })} />
        </li>`,
      )}</ul>
      <${Failed} text=${problem.value} />
      <ul class="lines">${
        some &&
        walk(live_room).map(
          ({ id, name }) => html`<li key=${id}><button class="line whole" type="button" disabled=${busy.value}
          onClick=${tap(() => void attach(id))}><span class="grow"><b>${name}</b></span></button></li>`,
        )
      }</ul>
    <//>`;
}
