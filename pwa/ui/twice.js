/** A button for what no undo can take back: the first tap says so, the second does it. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { tap } from "./tap.js";

const ARMED_MS = 6_000;

/** @param {{words: string, sure: string, onSure: () => void}} props `sure`: what the second tap will do */
export function Twice({ words, sure, onSure }) {
  const armed = useSignal(false);
  useEffect(() => {
    if (!armed.value) return;
    const timer = setTimeout(() => (armed.value = false), ARMED_MS);
    return () => clearTimeout(timer);
  }, [armed.value]);
  const press = () => {
    if (armed.value) onSure();
    armed.value = !armed.value;
  };
  return html`<button class=${armed.value ? "quiet armed" : "quiet"} type="button" onClick=${tap(press)}>${armed.value ? sure : words}</button>`;
}
