/** The app on the home screen: whether it stands there, whether its storage is kept, how it gets there. */
import { signal } from "../../vendor/preact.js";
import { draft } from "./draft.js";

/** @typedef {Event & {prompt(): Promise<{outcome: string}>}} InstallOffer */

/** Whether the keeper has answered the card that offers the help. */
export const answered = draft("home-screen", () => false);
/** The browser's own offer to install the app, null where it makes none. */
export const install_offer = signal(/** @type {InstallOffer | null} */ (null));
/** What the browser says about clearing what is stored: true, it will not; null, it does not say. */
export const kept = signal(/** @type {boolean | null} */ (null));

/** Whether this is the app on the home screen, not a page of the browser. */
export const is_installed = () =>
  matchMedia("(display-mode: standalone)").matches ||
  /** @type {{standalone?: boolean}} */ (navigator).standalone === true;

/** What tells how an app is put on the home screen. @returns {"ios" | "android" | "other"} */
export function platform() {
  const { maxTouchPoints, userAgent } = navigator;
  // An iPad says that it is a Mac.
  if (/iPhone|iPad|iPod/.test(userAgent) || (/Macintosh/.test(userAgent) && maxTouchPoints > 1)) return "ios";
  return userAgent.includes("Android") ? "android" : "other";
}

/** Ask the browser whether it keeps what is stored. */
export async function look_if_kept() {
  kept.value = (await navigator.storage?.persisted?.().catch(() => null)) ?? null;
}

/** Hear the browser's offer; it comes once, early. */
export function hear_install_offer() {
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    install_offer.value = /** @type {InstallOffer} */ (event);
  });
}
