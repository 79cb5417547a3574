/**
 * A test at the tank: one parameter after another, read off tiles or a keypad, saved together; what is seldom tested
 * behind a tap.
 */
import { html, useSignal } from "../vendor/preact.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { minutes, short, t, when } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { figure, parameter_name, read_as } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { Keypad } from "../ui/keypad.js";
import { SELDOM, TESTED, UNITS, kit_for, reading_of } from "../ui/kits.js";
import { get, now, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { settle, tap } from "../ui/state/tap.js";
import { left, start_timer } from "../ui/state/timers.js";

/** Where one may stand: at a parameter of every day, at what was read, at one tested now and then. */
const ANSWERS = TESTED.length;
const STOPS = [...TESTED, null, ...SELDOM];
/** A test that was begun longer ago than this is another day's (assumption). */
const OLD_MS = 2 * 3_600_000;
const first = () => ({
  at: 0,
  begun: Date.parse(room.value.now()),
  readings: /** @type {Record<string, any>} */ ({}),
  typed: /** @type {Record<string, string>} */ ({}),
  when: /** @type {string | undefined} */ (undefined),
});

/** @param {{id: string}} props */
export function Test({ id }) {
  const tank = get("tank", id);
  const name = `test.${id}`;
  const kept = use_draft(name, first);
  const problem = useSignal("");
  if (!tank) return html`<${Missing} up="/" />`;
  if (!room.value.may("reading")) return html`<${LookingOnly} title=${tank.name} up=${`/tank/${id}`} />`;
  const test = kept.value;
  const parameter = STOPS[test.at] ?? null;
  const seldom = test.at > ANSWERS;
  const done = Object.values(test.readings);
  const strange = done
    .map((reading) => ({ reading, spec: figure_spec(reading, parameter_name(reading.parameter)) }))
    .map((one) => ({ ...one, error: no_figure(one.spec, one.reading.value) }))
    .filter(({ error }) => error);

  const to = (/** @type {number} */ at, more = {}) => {
    settle();
    kept.value = { ...test, ...more, at: at < STOPS.length ? Math.max(at, 0) : ANSWERS };
    scrollTo(0, 0);
  };
  const to_seldom = (/** @type {string} */ of) => to(STOPS.indexOf(of), { from: test.at });
  const answer = (/** @type {any} */ fields) => ({
    readings: { ...test.readings, [fields.parameter]: { ...fields, at: room.value.now() } },
  });
  const save = async () => {
    const together = new_id();
    const writes = done.map((fields) => ({
      type: /** @type {const} */ ("put"),
      kind: "reading",
      id: new_id(),
      fields: { ...fields, ...(test.when ? { at: test.when } : {}), tank: id, test: together },
    }));
    try {
      if (!(await record(writes, t("saved.readings", { count: writes.length })))) return;
      forget(name);
      go(`/tank/${id}`, { replace: true });
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  const act = html`
    ${
      test.at > 0 &&
      html`<button class="quiet tall" type="button"
      onClick=${tap(() => to(seldom ? (test.from ?? ANSWERS) : test.at - 1))}>${t("test.back")}</button>`
    }
    ${
      parameter &&
      html`<button class="quiet tall" type="button" onClick=${tap(() => to(test.at + 1))}>
      ${t(test.readings[parameter] ? "test.next" : "test.skip")}</button>`
    }
    <button class="main" type="button" disabled=${done.length === 0 || strange.length > 0 || no_moment(test.when)}
      onClick=${tap(() => void save())}>${done.length ? t("test.save", { count: done.length }) : t("test.none")}
      </button>`;

  return html`
    <${Page} title=${tank.name} up=${`/tank/${id}`} act=${act}
      aside=${html`<span class="soft figures">
      ${seldom ? t("test.seldom") : t("test.place", { at: Math.min(test.at + 1, ANSWERS), of: ANSWERS })}</span>`}>
      ${
        now.value - test.begun > OLD_MS &&
        done.length > 0 &&
        html`
        <div class="row apart caution"><span>${t("test.begun", { when: when(test.begun, now.value) })}</span>
          <button class="quiet" type="button" onClick=${tap(() => (kept.value = first()))}>${t("test.afresh")}</button>
            </div>`
      }
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" />${problem.value}</p>`}
      ${strange.map(
        ({
          reading,
          spec,
          error,
        }) => html`<div key=${reading.parameter} role="alert"><${Wrong} spec=${spec} error=${error} />
        ${
          reading.parameter !== parameter &&
          html`<button class="quiet" type="button"
          onClick=${tap(() => to(STOPS.indexOf(reading.parameter)))}>
          ${t("test.key_again", { what: parameter_name(reading.parameter) })}</button>`
        }</div>`,
      )}
      ${
        parameter
          ? html`<${Parameter} key=${parameter} tank=${id} parameter=${parameter} test=${test}
            on_pick=${(/** @type {any} */ fields) => to(test.at + 1, answer(fields))}
            on_type=${(/** @type {string} */ text, /** @type {any} */ fields, /** @type {string} */ keyed_in) => {
              const { [parameter]: _, ...others } = test.readings;
              kept.value = {
                ...test,
                keyed_in: { ...test.keyed_in, [parameter]: keyed_in },
                typed: { ...test.typed, [parameter]: text },
                readings: fields ? answer(fields).readings : others,
              };
            }} />`
          : html`<${Answers} readings=${test.readings}
            on_go=${(/** @type {number} */ at) =>
              at > ANSWERS ? to_seldom(/** @type {string} */ (STOPS[at])) : to(at)} />`
      }
      ${
        test.at < ANSWERS &&
        html`
        <div class="row small seldom" role="group" aria-labelledby="seldom"><span class="soft" id="seldom">
          ${t("test.seldom")}</span>
          ${SELDOM.map(
            (of) => html`<button type="button" class="quiet" key=${of} onClick=${tap(() => to_seldom(of))}>
            ${parameter_name(of)}</button>`,
          )}</div>`
      }
      <${Moment} at=${test.when} on_at=${(/** @type {string | undefined} */ moment) =>
        (kept.value = { ...test, when: moment })} />
    <//>`;
}

/**
 * @param {{tank: string, parameter: string, test: any, on_pick: (fields: any) => void, on_type: (text: string, fields:
 * any, keyed_in: string) => void}} props
 */
function Parameter({ tank, parameter, test, on_pick, on_type }) {
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
        kit.id ? `/room/test_kit/${kit.id}` : `/room/test_kit/new?parameter=${parameter}&then=/tank/${tank}/test`
      }>${t(kit.id ? "kit.edit" : "kit.set_up")}
        </a>
    </p>
    ${(kit.timers ?? []).length > 0 && html`<${Timed} kit=${kit} tank=${tank} />`}
    ${
      kit.entry === "steps" && (kit.steps ?? []).length > 0
        ? html`<div class="tiles steps" role="group" aria-label=${parameter_name(parameter)}>
          ${kit.steps.map(
            (/** @type {number} */ step) => html`
            <button type="button" key=${step} aria-pressed=${chosen === step}
              onClick=${tap(() => on_pick(reading_of(kit, step)))}>${short(step)}</button>`,
          )}
        </div>`
        : html`<${Keypad} label=${parameter_name(parameter)} unit=${per_drop ? t("test.drops") : label} value=${typed}
          on_value=${(/** @type {string} */ text) => on_type(text, text === "" ? null : read(text), shown)} />
          ${
            per_drop &&
            typed &&
            html`<p class="soft center" role="status">
            ${t("test.drops_are", { figure: `${short(read(typed).value)} ${unit}` })}</p>`
          }`
    }`;
}

/** The kit's timed steps, each started by a tap; several may run. @param {{kit: any, tank: string}} props */
const Timed = ({ kit, tank }) => html`
  <ol class="lines timed">${kit.timers.map((/** @type {any} */ timer, /** @type {number} */ i) => {
    const id = `${tank}.${kit.id}.${i}`;
    const rest = left(id);
    const start = () =>
      start_timer({
        id,
        what: `${parameter_name(kit.parameter).replace(/ \(.*\)/, "")}: ${timer.what}`,
        seconds: timer.seconds,
        href: `/tank/${tank}/test`,
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
  })}</ol>`;

/** What was read, before it is saved. @param {{readings: Record<string, any>, on_go: (at: number) => void}} props */
const Answers = ({ readings, on_go }) => html`
  <h2 class="asked">${t("test.answers")}</h2>
  <ul class="lines">${STOPS.map((parameter, at) => {
    if (!parameter) return null;
    const reading = readings[parameter];
    const said = reading && figure(reading);
    return html`<li key=${parameter}><button class="line whole" type="button" onClick=${tap(() => on_go(at))}>
      <span>${parameter_name(parameter)}</span>
      ${
        said
          ? html`<span class="figures"><b class="hand">${said.value}</b> ${said.unit}</span>`
          : html`<span
        class="soft">${t(at > ANSWERS ? "test.seldom" : "test.skipped")}</span>`
      }</button></li>`;
  })}</ul>`;
