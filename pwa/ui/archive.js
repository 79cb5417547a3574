/** What is on this phone, as a file to keep; and a kept file, taken in again. */
import { html, useSignal } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { room } from "./live.js";
import { say } from "./record.js";
import { tap } from "./tap.js";

export function Archive() {
  const problem = useSignal("");
  const attempt = async (/** @type {() => Promise<void>} */ work) => {
    problem.value = "";
    try {
      await work();
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  const take_in = async (/** @type {any} */ event) => {
    const [file] = event.target.files;
    event.target.value = "";
    if (file) await attempt(async () => (await room.value.import(file), say(t("archive.taken_in"))));
  };
  return html`
    <section class="section">
      <h2>${t("archive.title")}</h2>
      <p class="soft">${t("archive.why")}</p>
      <div class="row">
        <button class="quiet" type="button" onClick=${tap(() => void attempt(async () => hand_over(await room.value.export(), "limnary", "zip")))}>${t("archive.export")}</button>
        <label class="quiet file">${t("archive.import")}<input class="unseen" type="file" accept=".zip,.jsonl,application/zip" onChange=${take_in} /></label>
      </div>
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" size=${20} /><span>${problem.value}</span></p>`}
    </section>`;
}

/** Let the browser save a file. @param {Blob} file @param {string} name @param {string} ending */
export function hand_over(file, name, ending) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `${name}-${new Date().toISOString().slice(0, 10)}.${ending}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
