/** A QR code drawn on the phone as one path; black on white in both colour schemes, as cameras need it. */
import { html, useMemo } from "../vendor/preact.js";
import qrcode from "../vendor/qrcode.js";

/** @param {{text: string, label: string}} props */
export function Qr({ text, label }) {
  const { size, path } = useMemo(() => drawn(text), [text]);
  return html`<div class="qr"><svg viewBox=${`0 0 ${size} ${size}`} role="img" aria-label=${label} shape-rendering="crispEdges"><path d=${path} fill="#000" /></svg></div>`;
}

/** @param {string} text */
function drawn(text) {
  const code = qrcode(0, "M");
  code.addData(text);
  code.make();
  const size = code.getModuleCount();
  let path = "";
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) if (code.isDark(row, column)) path += `M${column} ${row}h1v1h-1z`;
  }
  return { size, path };
}
