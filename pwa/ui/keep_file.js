/** Let the keeper save a file: by the share sheet where a phone saves by it, else by the browser's download. */
import { MINUTE } from "../figures/durations.js";
import { platform } from "./state/home_screen.js";

/**
 * @param {Blob} file @param {string} name @param {string} ending
 * @returns {Promise<string | null>} what it is called; null if the keeper closed the sheet
 */
export async function keep_file(file, name, ending) {
  const called = `${name}-${new Date().toISOString().slice(0, 10)}.${ending}`;
  // On an iPhone a downloaded file is shown in place of the app; elsewhere a download is what keepers expect.
  if (platform() === "ios") {
    const shared = await shared_by_sheet(new File([file], called, { type: file.type }));
    if (shared !== undefined) return shared ? called : null;
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = called;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), MINUTE);
  return called;
}

/** Whether the keeper chose a place in the share sheet; undefined where none opens for this file. @param {File} file */
async function shared_by_sheet(file) {
  if (!navigator.canShare?.({ files: [file] })) return undefined;
  try {
    await navigator.share({ files: [file] });
    return true;
  } catch (failed) {
    // Too long after the tap for a sheet: the download is still allowed.
    return failed instanceof DOMException && failed.name === "AbortError" ? false : undefined;
  }
}
