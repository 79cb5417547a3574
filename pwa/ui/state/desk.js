/** Whether the window is as wide as a desk's, where a list fits beside the page. */
import { signal } from "../../vendor/preact.js";

/** The width from which pwa/styles/ lays things side by side, too. */
const WIDE = "(min-width: 900px)";

export const at_desk = signal(false);

const width = globalThis.matchMedia?.(WIDE);
const look = () => (at_desk.value = width?.matches ?? false);
look();
width?.addEventListener?.("change", look);
