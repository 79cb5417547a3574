/** Shows a photo: its bytes are on this phone or are fetched once; without them words say that they are not here. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { room } from "./state/live.js";

/**
 * @param {{photo: import("../types/views.js").View<"photo">, said: string, large?: boolean}} props `said`: what a
 * screen reader hears
 */
export function Picture({ photo, said, large = false }) {
  const source = useSignal(/** @type {string | null} */ (null));
  const missing = useSignal(false);
  useEffect(() => {
    let address = "";
    let left = false;
    void room.value.photo(photo.sha256).then((/** @type {Blob | null} */ picture) => {
      if (left) return;
      missing.value = !picture;
      if (picture) source.value = address = URL.createObjectURL(picture);
    });
    return () => {
      left = true;
      if (address) URL.revokeObjectURL(address);
    };
  }, [photo.sha256]);
  if (missing.value) return html`<span class="absent">${t("photo.not_here")}</span>`;
  const box = photo.width ? { width: photo.width, height: photo.height } : {};
  return html`<span class=${large ? "picture large" : "picture"}>${
    source.value &&
    html`<img src=${source.value}
    alt=${said} ...${box} />`
  }</span>`;
}

/** A picture that is not recorded yet. @param {{picture: Blob, said: string}} props */
export function Loose({ picture, said }) {
  const source = useSignal(/** @type {string | null} */ (null));
  useEffect(() => {
    const address = (source.value = URL.createObjectURL(picture));
    return () => URL.revokeObjectURL(address);
  }, [picture]);
  return html`<span class="picture">${source.value && html`<img src=${source.value} alt=${said} />`}</span>`;
}
