/** A QR code drawn on the phone as one path; black on white in both colour schemes, as cameras need it. */
import { qr_path } from "./qr_path.js";
import { html, useMemo } from "../vendor/preact.js";

/** @param {{text: string, label: string}} props */
export function Qr({ text, label }) {
  const { size, path } = useMemo(() => qr_path(text), [text]);
  return html`<div class="qr"><svg viewBox=${`0 0 ${size} ${size}`} role="img" aria-label=${label}
    shape-rendering="crispEdges"><path d=${path} fill="#000" /></svg></div>`;
}
