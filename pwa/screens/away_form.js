/** A new away sheet, or changes to it: days and tanks by tiles and steps, how often to feed, whom to call. */
import { DAY } from "../figures/durations.js";
import { html } from "../vendor/preact.js";
import { sheet_now } from "../advice/away.js";
import { walk } from "../advice/facts.js";
import { day_of } from "../advice/tasks/local_time.js";
import { field_named, records } from "../contracts.js";
import { listed, t } from "../i18n/words.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { Fields, payload_of, raw_of } from "../ui/contract/form.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, use_record_form } from "../ui/state/record_form.js";
import { day_said } from "../ui/words/span_said.js";
import { Stepper } from "../ui/stepper.js";
import { tap } from "../ui/state/tap.js";
import { zone_here } from "../ui/tasks_due.js";

const USUAL_DAYS = 7;
const EVERY = [1, 2, 3, 0];
const TYPED = ["calls", "note"];
/** Fields of the record that the form shows. */
const SHOWN = ["from_at", "to_at", "tanks", "feed_every_days", ...TYPED];

export function AwayForm() {
  const held = sheet_now(all("away_sheet"), now.value);
  const form = use_record_form({ name: `away.${held?.id ?? "new"}`, held, first: () => first(held) });
  const draft = form.draft.value;
  const set = form.set;
  const save = () => {
    if (draft.tanks.length === 0) return form.refuse(t("away.need_tank"));
    return form.save(() => {
      const changed = changed_sheet(draft, held, form.opened);
      /** @type {import("../ui/state/record.js").Write[]} */
      const writes = Object.keys(changed).length
        ? [{ type: "put", kind: "away_sheet", id: held?.id ?? new_id(), fields: changed }]
        : [];
      return { writes, said: t("saved.away_sheet"), to: "/away" };
    });
  };

  return html`
    <${Page} title=${t("away.title")} up="/away" news=${html`<${Meanwhile} opened=${form.opened} held=${held}
      names=${SHOWN} said=${{ tanks: tanks_said, feed_every_days: feeding_said }} />`}
      act=${
        room.value.may("away_sheet") &&
        html`<button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("away.save")}</button>`
      }>
      <${Stepper} label=${t("away.from")} said=${day_said(draft.from)}
        on_step=${(/** @type {number} */ way) =>
          set({ from: draft.from + way * DAY, to: Math.max(draft.to, draft.from + way * DAY) })} />
      <${Stepper} label=${t("away.to")} said=${day_said(draft.to)}
        can=${{ less: draft.to - DAY >= draft.from, more: true }}
        on_step=${(/** @type {number} */ way) => set({ to: draft.to + way * DAY })} />
      <${Tanks} chosen=${draft.tanks} on_choose=${(/** @type {string[]} */ tanks) => set({ tanks })} />
      <fieldset class="field"><legend class="label">${t("away.feed_how_often")}</legend>
        <div class="tiles two">${EVERY.map(
          (days) => html`<label key=${days}><input class="unseen" type="radio" name="every"
            checked=${draft.feed_every_days === days} onChange=${() => set({ feed_every_days: days })} />
          ${feeding_said({ feed_every_days: days })}</label>`,
        )}</div>
        <p class="help">${t("away.feed_help")}</p></fieldset>
      <${Fields} specs=${typed_specs()} raw=${draft.typed} errors=${form.errors.value} tried=${true}
        on_raw=${(/** @type {Draft["typed"]} */ typed) => set({ typed })} />
      <${Refused} form=${form} kind="away_sheet" beside=${TYPED} />
    <//>`;
}

/** @typedef {import("../types/views.js").View<"away_sheet">} Sheet */
/**
 * `from` and `to` in ms; `typed`: calls and note as typed
 * @typedef {{from: number, to: number, tanks: string[], feed_every_days: number,
 * typed: import("../ui/contract/form.js").Raw}} Draft
 */

const typed_specs = () => TYPED.map((name) => field_named(records().away_sheet.fields, name));

/** @param {Sheet | null} held @returns {Draft} */
function first(held) {
  if (held)
    return {
      from: Date.parse(held.from_at),
      to: Date.parse(held.to_at),
      tanks: held.tanks,
      feed_every_days: held.feed_every_days,
      typed: raw_of(typed_specs(), held),
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

/**
 * The fields that the form sets; of a sheet that is there, only what changed since the form was opened.
 * @param {Draft} draft
 * @param {Sheet | null} held
 * @param {Sheet | null} opened
 * @returns {Record<string, unknown>}
 */
function changed_sheet({ from, to, tanks, feed_every_days, typed }, held, opened) {
  const { calls = [], note = null } = payload_of(typed_specs(), typed);
  const fields = {
    from_at: new Date(from).toISOString(),
    to_at: new Date(day_of(to, zone_here()).to).toISOString(),
    tanks,
    feed_every_days,
    calls,
  };
  if (held) return changed_fields(opened, { ...fields, note });
  return note === null ? fields : { ...fields, note };
}

/** @param {{chosen: string[], on_choose: (tanks: string[]) => void}} props */
function Tanks({ chosen, on_choose }) {
  const toggled = (/** @type {string} */ id) =>
    chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id];
  return html`
    <fieldset class="field"><legend class="label">${t("away.tanks")}</legend>
      <div class="tiles two">
        ${walk(live_room).map(
          ({ id, name }) => html`<button type="button" key=${id} aria-pressed=${chosen.includes(id)}
          onClick=${tap(() => on_choose(toggled(id)))}>${name}</button>`,
        )}</div></fieldset>`;
}

/** @param {Pick<Sheet, "tanks">} sheet */
const tanks_said = ({ tanks }) => listed(tanks.flatMap((id) => get("tank", id)?.name ?? []));

/** @param {Pick<Sheet, "feed_every_days">} sheet */
const feeding_said = ({ feed_every_days: days }) =>
  days ? t("task_form.every_said", { count: days }) : t("away.feed_none");
