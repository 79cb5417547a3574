/** A QR code (ISO/IEC 18004, error correction M) as one path of squares, a unit a module. Pure. */
import qrcode from "../vendor/qrcode.js";

/** @param {string} text @returns {{size: number, path: string}} */
export function qr_path(text) {
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
