/** Copies: the whole room as an open archive, its readings as a table; and a copy read back in. */
// Fetched with this page, because there may be no signal when fish_room.js asks for it.
import "../data/archives.js";
import { html } from "../vendor/preact.js";
import { short, t } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { keep_file } from "../ui/keep_file.js";
import { copying, interrupted, under_way } from "../ui/state/copying.js";
import { room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

export function Copy() {
  const { problem, busy: asking, ask } = use_ask();
  const busy = asking.value || under_way.value !== null;
  const here = room.value;
  const doing = (/** @type {() => Promise<string>} */ work) => ask(async () => say(await work()));
  const keeping = (/** @type {() => Promise<string | null>} */ work) =>
    ask(async () => {
      const file = await work();
      if (file) say(t("archive.kept", { file }));
    });
  const whole = async () => keep_file(await copying("making", (told) => here.export(told)), "limnary-room", "zip");
  const readings = async () =>
    keep_file(new Blob([await here.readings()], { type: "text/csv" }), "limnary-readings", "csv");
  const tables = async () => keep_file(await here.tables(), "limnary-tables", "zip");
  const take_in = (/** @type {Event & {currentTarget: HTMLInputElement}} */ { currentTarget: input }) => {
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    void doing(async () => {
      const { records, ops, photos } = await copying("taking_in", (told) => here.import(file, told), file.name);
      const count = records + ops + photos;
      return count ? t("archive.taken_in", { count }) : t("archive.nothing_new");
    });
  };
  return html`
    <${Page} title=${t("archive.title")} place="room" up="/room" aside=${html`<span></span>`}
      act=${html`<button class="main" type="button" disabled=${busy} onClick=${tap(() => void keeping(whole))}>
        ${t("archive.export")}</button>`}>
      <p class="sentence">${t("archive.why")}</p>
      <${HowFar} />
      <p>${t("archive.export_why")}</p>
      <section class="section"><h2>${t("archive.readings")}</h2><p>${t("archive.readings_why")}</p>
        <p><button class="quiet" type="button" onClick=${tap(() => void keeping(readings))}>${t("archive.readings")}
          </button></p></section>
      <section class="section"><h2>${t("archive.tables")}</h2><p>${t("archive.tables_why")}</p>
        <p><button class="quiet" type="button" onClick=${tap(() => void keeping(tables))}>${t("archive.tables")}
          </button></p></section>
      ${
        here.may("reading") &&
        !here.about()?.ended &&
        html`<section class="section"><h2>${t("archive.import")}</h2><p>${t("archive.import_why")}</p>
        <label class="quiet file">${t("archive.import")}<input class="unseen" type="file"
          accept=".zip,.jsonl,application/zip" disabled=${busy} onChange=${take_in} /></label></section>`
      }
      <${Problem} text=${problem.value} />
    <//>`;
}

/** How far a copy is, or that it did not come to its end. */
function HowFar() {
  const now = under_way.value;
  if (now && now.total > 0) {
    const parts = { count: short(now.count, 0), total: short(now.total, 0) };
    return html`<p role="status">${t(`archive.${now.work}`, parts)}</p>`;
  }
  return interrupted() && html`<p role="status">${t("archive.interrupted", { file: interrupted() })}</p>`;
}
