/** Let the browser save a file. */
import { MINUTE } from "../figures/durations.js";

/** @param {Blob} file @param {string} name @param {string} ending @returns {string} what it is called */
export function keep_file(file, name, ending) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `${name}-${new Date().toISOString().slice(0, 10)}.${ending}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), MINUTE);
  return link.download;
}
