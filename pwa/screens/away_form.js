/** Making the away sheet: days and tanks by tiles and steps, how often to feed, whom to call. */
import { html, useSignal } from "../vendor/preact.js";
import { sheet_now } from "../advice/away.js";
import { walk } from "../advice/facts.js";
import { day_of } from "../advice/tasks/local_time.js";
import { InvalidInput, record_field } from "../contracts.js";
import { listed, t } from "../i18n/words.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { forget, use_draft, use_opened } from "../ui/state/draft.js";
import { Fields, payload_of, raw_of } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { day_said } from "../ui/words/span_said.js";
import { Stepper } from "../ui/stepper.js";
import { tap } from "../ui/state/tap.js";
import { zone_here } from "../ui/tasks_due.js";

const DAY = 86_400_000;
const USUAL_DAYS = 7;
const EVERY = [1, 2, 3, 0];
const TYPED = /** @type {("calls" | "note")[]} */ (["calls", "note"]);
/** Fields of the record that the form shows. */
const SHOWN = ["from_at", "to_at", "tanks", "feed_every_days", ...TYPED];

export function AwayForm() {
  const held = sheet_now(all("away_sheet"), now.value);
  const name = `away.${held?.id ?? "new"}`;
  const typed_specs = TYPED.map((field) => record_field("away_sheet", field));
  const opened = use_opened(name, held);
  const kept = use_draft(name, () => first(held, typed_specs));
  const errors = useSignal(/** @type {any[]} */ ([]));
  const problem = useSignal("");
  const form = kept.value;
  const set = (/** @type {any} */ more) => (
    (problem.value = ""), (errors.value = []), (kept.value = { ...form, ...more })
  );
  const toggled = (/** @type {string} */ id) =>
    form.tanks.includes(id) ? form.tanks.filter((/** @type {string} */ one) => one !== id) : [...form.tanks, id];

  const save = async () => {
    if (form.tanks.length === 0) return void (problem.value = t("away.need_tank"));
    const { calls = [], note = null } = payload_of(typed_specs, form.typed);
    const days = {
      from_at: new Date(form.from).toISOString(),
      to_at: new Date(day_of(form.to, zone_here()).to).toISOString(),
    };
    const fields = { ...days, tanks: form.tanks, feed_every_days: form.feed_every_days, calls, note };
    const changed = held
      ? changed_fields(opened, fields)
      : { ...fields, ...(note === null ? { note: undefined } : {}) };
    try {
      if (
        Object.keys(changed).length &&
        !(await record(
          [{ type: "put", kind: "away_sheet", id: held?.id ?? new_id(), fields: JSON.parse(JSON.stringify(changed)) }],
          t("saved.away_sheet"),
        ))
      )
        return;
      forget(name);
      go("/away", { replace: true });
    } catch (failed) {
      if (failed instanceof InvalidInput) errors.value = failed.errors;
      else problem.value = /** @type {Error} */ (failed).message;
    }
  };

  return html`
    <${Page} title=${t("away.title")} up="/away" news=${html`<${Meanwhile} opened=${opened} held=${held} names=${SHOWN}
      said=${{ tanks: tanks_said, feed_every_days: feeding_said }} />`}
      act=${
        room.value.may("away_sheet") &&
        html`<button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("away.save")}</button>`
      }>
      <${Stepper} label=${t("away.from")} said=${day_said(form.from)}
        on_step=${(/** @type {number} */ way) =>
          set({ from: form.from + way * DAY, to: Math.max(form.to, form.from + way * DAY) })} />
      <${Stepper} label=${t("away.to")} said=${day_said(form.to)}
        can=${{ less: form.to - DAY >= form.from, more: true }}
        on_step=${(/** @type {number} */ way) => set({ to: form.to + way * DAY })} />
      <fieldset class="field"><legend class="label">${t("away.tanks")}</legend>
        <div class="tiles two">
          ${walk(live_room).map(
            (tank) => html`<button type="button" key=${tank.id}
          aria-pressed=${form.tanks.includes(tank.id)} onClick=${tap(() => set({ tanks: toggled(tank.id) }))}>
          ${tank.name}</button>`,
          )}</div></fieldset>
      <fieldset class="field"><legend class="label">${t("away.feed_how_often")}</legend>
        <div class="tiles two">${EVERY.map(
          (days) => html`<label key=${days}><input class="unseen" type="radio" name="every"
            checked=${form.feed_every_days === days} onChange=${() => set({ feed_every_days: days })} />
          ${days ? t("task_form.every_said", { count: days }) : t("away.feed_none")}</label>`,
        )}</div>
        <p class="help">${t("away.feed_help")}</p></fieldset>
      <${Fields} specs=${typed_specs} raw=${form.typed} on_raw=${(/** @type {any} */ typed) => set({ typed })}
        errors=${errors.value} tried=${true} />
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" /><span>${problem.value}</span></p>`}
    <//>`;
}

/** @param {any} held */
const tanks_said = (held) =>
  listed(held.tanks.map((/** @type {string} */ id) => get("tank", id)?.name).filter(Boolean));

/** @param {any} held */
const feeding_said = ({ feed_every_days: days }) =>
  days ? t("task_form.every_said", { count: days }) : t("away.feed_none");

/** @param {any} held @param {any[]} typed_specs */
function first(held, typed_specs) {
  if (held)
    return {
      from: Date.parse(held.from_at),
      to: Date.parse(held.to_at),
      tanks: held.tanks,
      feed_every_days: held.feed_every_days,
      typed: raw_of(typed_specs, held),
    };
  const { from } = day_of(now.value, zone_here());
  return {
    from: from + DAY / 2,
    to: from + DAY / 2 + USUAL_DAYS * DAY,
    tanks: walk(live_room).map(({ id }) => id),
    feed_every_days: 2,
    typed: { calls: [{}] },
  };
}
