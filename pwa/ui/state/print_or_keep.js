/** The print button: print, or say under which name the page was kept. */
import { t } from "../../i18n/words.js";
import { print_page } from "../print_page.js";
import { say } from "./record.js";

/** @param {string} name of the file, where the browser cannot print */
export async function print_or_keep(name) {
  const file = await print_page(name);
  if (file) say(t("print.kept", { file }));
}
