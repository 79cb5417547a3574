/**
 * A test at the tank: one parameter after another, read by tiles or a keypad, all saved together; parameters tested now
 * and then are one tap away. With `of` in the address it asks for that parameter alone.
 */
import { HOUR } from "../figures/durations.js";
import { html } from "../vendor/preact.js";
import { SELDOM, TESTED } from "../advice/journal/test_order.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { minutes, named, short, t, when, within_sentence } from "../i18n/words.js";
import { figure, parameter_name, parameter_short_name, read_as } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { Keypad } from "../ui/keypad.js";
import { UNITS, kit_for, reading_of } from "../ui/kits.js";
import { get, now, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Moment, no_moment } from "../ui/moment.js";
import { NearLast } from "../ui/near_last.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, closed_form, use_record_form } from "../ui/state/record_form.js";
import { settle, tap } from "../ui/state/tap.js";
import { left, start_timer } from "../ui/state/timers.js";

/** Where the keeper can be: at a parameter of every test, at the answers, at a parameter tested now and then. */
const ANSWERS = TESTED.length;
const STOPS = [...TESTED, null, ...SELDOM];
/** A test that began longer ago than this belongs to another time (assumption). */
const OLD_MS = 2 * HOUR;

/** A reading before it is saved. @typedef {ReturnType<typeof reading_of> & {at?: string}} Read */
/**
 * `at`: the stop; `from`: the stop to come back to; `begun` in ms; `readings`, `typed` and the unit `keyed_in` by
 * parameter; `when`: another time than the readings' own
 * @typedef {{at: number, from?: number, begun: number, readings: Record<string, Read>, typed: Record<string, string>,
 * keyed_in?: Record<string, string>, when?: string}} Draft
 */

/** @param {string | null} alone the only parameter asked for @returns {Draft} */
const first = (alone) => ({
  at: alone ? STOPS.indexOf(alone) : 0,
  begun: Date.parse(room.value.now()),
  readings: {},
  typed: {},
});

/** @param {{id: string, query: URLSearchParams}} props `query`: `of` names the parameter that is asked for alone */
export function Test({ id, query }) {
  const tank = get("tank", id);
  const of = query.get("of");
  const alone = STOPS.includes(of) ? of : null;
  const form = use_record_form({ name: alone ? `test.${id}.${alone}` : `test.${id}`, first: () => first(alone) });
  const closed = closed_form(tank, "reading", tank?.name ?? "");
  if (!tank || closed) return closed;
  const test = form.draft.value;
  const parameter = STOPS[test.at] ?? null;
  const here = alone ? `/tank/${id}/test?of=${alone}` : `/tank/${id}/test`;
  const done = Object.values(test.readings);
  const strange = strange_readings(done);

  const to = (/** @type {number} */ at, more = {}) => {
    settle();
    form.set({ ...more, at: at < STOPS.length ? Math.max(at, 0) : ANSWERS });
    scrollTo(0, 0);
  };
  const to_parameter = (/** @type {string} */ of) =>
    to(STOPS.indexOf(of), SELDOM.includes(of) ? { from: test.at } : {});
  const save = () =>
    form.save(() => {
      const together = { tank: id, test: new_id(), ...(test.when ? { at: test.when } : {}) };
      return {
        writes: done.map((read) => ({ type: "put", kind: "reading", id: new_id(), fields: { ...read, ...together } })),
        said: t("saved.readings", { count: done.length }),
        to: `/tank/${id}`,
      };
    });
  const ready = done.length > 0 && strange.length === 0 && !no_moment(test.when);

  return html`
    <${Page} title=${tank.name} up=${`/tank/${id}`}
      act=${html`<${Way} test=${test} alone=${alone !== null} to=${to} />
        <button class="main" type="button" disabled=${!ready} onClick=${tap(() => void save())}>
          ${done.length ? t("test.save", { count: done.length }) : t("test.none")}</button>`}
      aside=${!alone && html`<${Place} at=${test.at} />`}>
      <${BegunLongAgo} test=${test} afresh=${() => (form.draft.value = first(alone))} />
      <${Refused} form=${form} kind="reading" />
      <${Strange} strange=${strange} here=${parameter}
        on_go=${(/** @type {string} */ of) => to(STOPS.indexOf(of))} />
      ${
        parameter
          ? html`<${Asked} key=${parameter} tank=${id} here=${here} parameter=${parameter} form=${form}
            next=${alone ? ANSWERS : test.at + 1} to=${to} />`
          : html`<${Answers} readings=${test.readings} on_go=${to_parameter} />`
      }
      ${!alone && test.at < ANSWERS && html`<${Seldom} on_go=${to_parameter} />`}
      <${Moment} at=${test.when} on_at=${(/** @type {string | undefined} */ moment) => form.set({ when: moment })} />
    <//>`;
}

/** @param {{at: number}} props the stop */
const Place = ({ at }) =>
  html`<span class="soft figures">${
    at > ANSWERS ? t("test.seldom") : t("test.place", { at: Math.min(at + 1, ANSWERS), of: ANSWERS })
  }</span>`;

/**
 * Asks whether to go on with a test that was left half made.
 * @param {{test: Draft, afresh: () => void}} props
 */
function BegunLongAgo({ test, afresh }) {
  if (now.value - test.begun <= OLD_MS || Object.keys(test.readings).length === 0) return null;
  return html`
    <div class="row apart caution"><span>${t("test.begun", { when: when(test.begun, now.value) })}</span>
      <button class="quiet" type="button" onClick=${tap(afresh)}>${t("test.afresh")}</button></div>`;
}

/** @typedef {ReturnType<typeof use_record_form<Draft>>} Form */
/** @typedef {(at: number, more?: Partial<Draft>) => void} To */
/** @typedef {ReturnType<typeof strange_readings>} StrangeReadings */

/** The readings that no water has, each with the reason. @param {Read[]} readings */
const strange_readings = (readings) =>
  readings.flatMap(({ parameter, unit, value }) => {
    const spec = figure_spec({ parameter, unit }, parameter_name(parameter));
    const error = no_figure(spec, value);
    return error ? [{ parameter, spec, error }] : [];
  });

/**
 * The way to the stop before and to the next one. A parameter asked for alone leads to the answers, and they to it.
 * @param {{test: Draft, alone: boolean, to: To}} props
 */
function Way({ test, alone, to }) {
  const parameter = STOPS[test.at];
  if (alone) {
    if (!parameter || !test.readings[parameter]) return null;
    return html`<button class="quiet tall" type="button" onClick=${tap(() => to(ANSWERS))}>${t("test.next")}</button>`;
  }
  const before = test.at > ANSWERS ? (test.from ?? ANSWERS) : test.at - 1;
  return html`
    ${
      test.at > 0 &&
      html`<button class="quiet tall" type="button" onClick=${tap(() => to(before))}>${t("test.back")}</button>`
    }
    ${
      parameter &&
      html`<button class="quiet tall" type="button" onClick=${tap(() => to(test.at + 1))}>
      ${t(test.readings[parameter] ? "test.next" : "test.skip")}</button>`
    }`;
}

/** @param {{strange: StrangeReadings, here: string | null, on_go: (parameter: string) => void}} props */
const Strange = ({ strange, here, on_go }) =>
  strange.map(
    ({ parameter, spec, error }) => html`
    <div key=${parameter} role="alert"><${Wrong} spec=${spec} error=${error} />
      ${
        parameter !== here &&
        html`<button class="quiet" type="button" onClick=${tap(() => on_go(parameter))}>
        ${t("test.key_again", { what: within_sentence(parameter_short_name(parameter)) })}</button>`
      }</div>`,
  );

/** @param {{on_go: (parameter: string) => void}} props */
const Seldom = ({ on_go }) => html`
  <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
    ${t("test.seldom")}</span>
    ${SELDOM.map(
      (parameter) => html`<button type="button" class="quiet" key=${parameter}
      onClick=${tap(() => on_go(parameter))}>${parameter_name(parameter)}</button>`,
    )}</div>`;

/**
 * One parameter: a picked step leads on to the next stop, a keyed figure stays until the keeper goes on.
 * @param {{tank: string, here: string, parameter: string, form: Form, next: number, to: To}} props `here`: this page;
 * `next`: the stop after this one
 */
function Asked({ tank, here, parameter, form, next, to }) {
  const test = form.draft.value;
  const with_reading = (/** @type {Read} */ read) => ({
    ...test.readings,
    [parameter]: { ...read, at: room.value.now() },
  });
  const as_typed = (/** @type {string} */ text, /** @type {Read | null} */ read, /** @type {string} */ unit) => {
    const { [parameter]: _, ...others } = test.readings;
    return {
      keyed_in: { ...test.keyed_in, [parameter]: unit },
      typed: { ...test.typed, [parameter]: text },
      readings: read ? with_reading(read) : others,
    };
  };
  return html`<${Parameter} tank=${tank} here=${here} parameter=${parameter} test=${test}
    on_pick=${(/** @type {Read} */ read) => to(next, { readings: with_reading(read) })}
    on_type=${(/** @type {Parameters<typeof as_typed>} */ ...typed) => form.set(as_typed(...typed))}
    on_take=${(/** @type {Parameters<typeof as_typed>} */ ...typed) => to(next, as_typed(...typed))} />`;
}

/**
 * How one parameter is read: by the steps printed on the kit, or by a keypad.
 * @param {{tank: string, here: string, parameter: string, test: Draft, on_pick: (read: Read) => void,
 * on_type: (text: string, read: Read | null, keyed_in: string) => void,
 * on_take: (text: string, read: Read, keyed_in: string) => void}} props `on_take`: a figure that needs no more keys
 */
function Parameter({ tank, here, parameter, test, on_pick, on_type, on_take }) {
  const kit = kit_for(parameter);
  const chosen = test.readings[parameter]?.value;
  const unit = kit.unit ?? UNITS[parameter];
  const { label, unit: shown, hold, text: keyed } = shown_in(unit);
  const { per_drop } = kit;
  const read = (/** @type {string} */ text) =>
    reading_of(kit, Number((hold(Number(text)) * (per_drop ?? 1)).toPrecision(6)));
  const typed = keyed(test.typed[parameter] ?? null, test.keyed_in?.[parameter]);
  return html`
    <h2 class="asked">${parameter_name(parameter)} <span class="soft unit">
      ${[kit.entry === "steps" ? unit : label, read_as(parameter, kit.basis)].join(" ")}</span></h2>
    <p class="row apart small kit">
      <span class="soft">${
        kit.common
          ? kit.entry === "steps"
            ? t("kit.common")
            : SELDOM.includes(parameter)
              ? t("kit.drops", { unit: UNITS[parameter] })
              : t("kit.keypad")
          : kit.name
      }</span>
      <a class="quiet" href=${
        kit.id
          ? `/room/test_kit/${kit.id}`
          : `/room/test_kit/new?parameter=${parameter}&then=${encodeURIComponent(here)}`
      }>${t(kit.id ? "kit.edit" : "kit.set_up")}
        </a>
    </p>
    ${(kit.timers ?? []).length > 0 && html`<${Timed} kit=${kit} tank=${tank} here=${here} />`}
    ${
      kit.entry === "steps" && (kit.steps ?? []).length > 0
        ? html`<div class="tiles steps" role="group" aria-label=${parameter_name(parameter)}>
          ${(kit.steps ?? []).map(
            (/** @type {number} */ step) => html`
            <button type="button" key=${step} aria-pressed=${chosen === step}
              onClick=${tap(() => on_pick(reading_of(kit, step)))}>${short(step)}</button>`,
          )}
        </div>`
        : html`${
            parameter === "temperature" &&
            unit === "°C" &&
            html`<${NearLast} tank=${tank} chosen=${chosen}
              on_pick=${(/** @type {string} */ text, /** @type {number} */ celsius) =>
                on_take(text, reading_of(kit, celsius), shown)} />`
          }
          <${Keypad} label=${parameter_name(parameter)} unit=${per_drop ? t("test.drops") : label} value=${typed}
          on_value=${(/** @type {string} */ text) => on_type(text, text === "" ? null : read(text), shown)} />
          ${
            per_drop &&
            typed &&
            html`<p class="soft center" role="status">
            ${t("test.drops_are", { figure: `${short(read(typed).value)} ${unit}` })}</p>`
          }`
    }`;
}

/**
 * The kit's timed steps: a tap starts one, several may run.
 * @param {{kit: ReturnType<typeof kit_for>, tank: string, here: string}} props
 */
const Timed = ({ kit, tank, here }) => html`
  <ol class="lines timed">${(kit.timers ?? []).map(
    (/** @type {{what: string, seconds: number}} */ timer, /** @type {number} */ i) => {
      const id = `${tank}.${kit.id}.${i}`;
      const rest = left(id);
      const start = () =>
        start_timer({
          id,
          what: named(parameter_short_name(kit.parameter), timer.what),
          seconds: timer.seconds,
          href: here,
        });
      return html`<li key=${i} class="line"><span>${i + 1}. ${timer.what}</span>
      <button class="quiet" type="button" onClick=${tap(start)}><${Icon} name="clock" size=${20} />
        <span class="figures">${
          rest === null
            ? minutes(timer.seconds)
            : rest > 0
              ? minutes(rest)
              : t("timer.again", { time: minutes(timer.seconds) })
        }</span></button></li>`;
    },
  )}</ol>`;

/**
 * What was read, before it is saved.
 * @param {{readings: Record<string, Read>, on_go: (parameter: string) => void}} props
 */
const Answers = ({ readings, on_go }) => html`
  <h2 class="asked">${t("test.answers")}</h2>
  <ul class="lines">${STOPS.map((parameter, at) => {
    if (!parameter) return null;
    const reading = readings[parameter];
    const said = reading && figure(reading);
    return html`<li key=${parameter}><button class="line whole" type="button" onClick=${tap(() => on_go(parameter))}>
      <span>${parameter_name(parameter)}</span>
      ${
        said
          ? html`<span class="figures"><b class="hand">${said.value}</b> ${said.unit}</span>`
          : html`<span
        class="soft">${t(at > ANSWERS ? "test.seldom" : "test.skipped")}</span>`
      }</button></li>`;
  })}</ul>`;
