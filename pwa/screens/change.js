/**
 * A water change: the litres that the advice asks for (or the keeper's own) and the dose for exactly those litres,
 * logged together by one tap.
 */
import { html, useRef, useSignal } from "../vendor/preact.js";
import { bucket_litres, bucket_step, dose_for, litres_refused, litres_spec } from "../advice/litres.js";
import { after_change } from "../advice/after_change.js";
import { basis_of, brought } from "../advice/level.js";
import { tank_water } from "../advice/tank_water.js";
import { redose } from "../advice/journal/redose.js";
import { caution, cautions_of, run } from "../contracts.js";
import { number, short, t, when } from "../i18n/words.js";
import { dose_said, level_figure, litres_said, parameter_name, read_as } from "../ui/words/figures.js";
import { advice_for } from "../ui/state/forecast.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { Keypad } from "../ui/keypad.js";
import { TankTiles } from "../ui/life_entry.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, closed_form, use_record_form } from "../ui/state/record_form.js";
import { water_said } from "../ui/words/sentence.js";
import { tap } from "../ui/state/tap.js";
import { TemperatureMatch } from "../ui/temperature_match.js";

/** A quarter is the usual change where nothing asks for another (common practice). */
const USUAL = 0.25;

/** @returns {{typed: string | null, unit?: string, from_tank?: string, at?: string, undosed?: boolean}} */
const first = () => ({ typed: null });

/** @param {{id: string}} props */
export function Change({ id }) {
  const tank = get("tank", id);
  const form = use_record_form({ name: `change.${id}`, first });
  const settled = useRef(/** @type {Settled | null} */ (null));
  const closed = closed_form(tank, "water_change", t("change.title"));
  if (!tank || closed) return closed;

  const { facts, advice: latest } = advice_for(tank);
  const advice = as_it_was(settled, facts, latest);
  // While a reading is doubted its litres are no suggestion: the next test decides.
  const suggested =
    (advice.act !== "retest" && advice.litres) || bucket_litres(USUAL * tank.water_l, tank.water_l, facts.water_unit);
  const water = shown_in("L");
  const { typed, unit: keyed_in = "L", from_tank = "", at, undosed = false } = form.draft.value;
  const litres = typed === null ? suggested : snapped_to_whole(water.hold(Number(typed), keyed_in), tank.water_l);
  const wrong = litres_refused(tank, litres);
  // Water from another tank holds no chlorine any more.
  const dose = wrong || from_tank ? null : dose_for(facts, litres);
  const given = undosed ? null : dose;
  if (from_tank && !room.value.is_ready(from_tank)) void room.value.ready(from_tank);
  const poured = from_tank
    ? { ...facts, source: tank_water(live_room.of("reading", from_tank), { from_tank, at: at ?? room.value.now() }) }
    : facts;
  const fraction = litres / tank.water_l;
  const said = { litres: litres_said(litres || 0), dose: given?.amount !== undefined ? dose_said(given) : "" };
  const log = () =>
    form.save(() => {
      const source = from_tank ? { from_tank } : facts.source ? { source_water: facts.source.id } : {};
      const writes = writes_of({ tank: id, at, litres, fraction, ...source }, given);
      return { writes, said: t(writes.length > 1 ? "saved.change_dose" : "saved.change", said), to: `/tank/${id}` };
    });

  return html`
    <${Page} title=${t("change.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${html`<button class="main" type="button" disabled=${Boolean(wrong) || no_moment(at)}
        onClick=${tap(() => void log())}>${t(given?.amount !== undefined ? "change.log_dose" : "change.log", said)}
        </button>`}>
      <p class="soft">${
        advice.litres || advice.act === "retest" || advice.act === "hold"
          ? water_said(advice, now.value)
          : t("change.usual", { litres: litres_said(suggested) })
      }</p>
      <${Refused} form=${form} kind="water_change" />
      <${Litres} form=${form} tank=${tank} litres=${litres} suggested=${suggested} wrong=${wrong} />
      ${dose && !undosed && html`<${Dose} id=${id} dose=${dose} />`}
      ${!wrong && html`<${Again} facts=${facts} fraction=${fraction} />`}
      ${!wrong && html`<${After} facts=${poured} advice=${advice} fraction=${fraction} />`}
      ${!wrong && html`<${TemperatureMatch} facts=${facts} litres=${litres} />`}
      <${OtherWater} id=${id} from_tank=${from_tank}
        on_pick=${(/** @type {string} */ picked) => form.set({ from_tank: picked })} />
      ${
        dose?.amount !== undefined &&
        html`<p class="section"><button class="quiet" type="button" aria-pressed=${undosed}
        onClick=${tap(() => form.set({ undosed: !undosed }))}>${t("change.undosed")}</button></p>`
      }
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => form.set({ at: moment })} />
      ${cautions(dose).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
    <//>`;
}

/** @typedef {import("../types/views.js").Tank} Tank */
/** @typedef {ReturnType<typeof advice_for>} Advised */
/** @typedef {ReturnType<typeof dose_for>} Dosed */
/**
 * @typedef {{last: string, advice: Advised["advice"]}} Settled the advice that the keeper came here with, and the
 * records that were the last ones then
 */

/**
 * The litres that the keeper came here to pour: they stay the same while time passes, until something new is recorded.
 * @param {{current: Settled | null}} settled
 * @param {Advised["facts"]} facts
 * @param {Advised["advice"]} latest
 */
function as_it_was(settled, facts, latest) {
  const last = [facts.readings, facts.changes].map((records) => records.at(-1)?.id).join();
  if (latest.from && latest.as_of === undefined && settled.current?.last !== last)
    settled.current = { last, advice: latest };
  return settled.current?.last === last ? settled.current.advice : latest;
}

/**
 * The water change, and the dose that goes with it.
 * @param {{tank: string, at?: string, litres: number, [field: string]: unknown}} change its fields
 * @param {Dosed | null} dose
 */
function writes_of(change, dose) {
  const id = new_id();
  /** @type {import("../ui/state/record.js").Write[]} */
  const writes = [{ type: "put", kind: "water_change", id, fields: change }];
  if (dose?.label && dose.amount !== undefined) {
    const { label, amount, unit } = dose;
    const { tank, at, litres } = change;
    const fields = { at, tank, label: label.id, what: label.name, amount, unit, for_litres: litres, water_change: id };
    writes.push({ type: "put", kind: "dose", id: new_id(), fields });
  }
  return writes;
}

/**
 * The litres by steps or by keypad, and the way back to those suggested.
 * @param {{form: ReturnType<typeof use_record_form<ReturnType<typeof first>>>, tank: Tank, litres: number,
 * suggested: number, wrong: import("../contracts.js").FieldError | null}} props
 */
function Litres({ form, tank, litres, suggested, wrong }) {
  const keypad = useSignal(false);
  const water = shown_in("L");
  const { typed, unit: keyed_in = "L" } = form.draft.value;
  const step = bucket_step(tank.water_l, water.unit);
  const step_said = litres_said(step);
  const type = (/** @type {string | null} */ text) => form.set({ typed: text, unit: water.unit });
  const by = (/** @type {number} */ steps) =>
    type(String(water.show(Math.min(Math.max(litres + steps * step, step), tank.water_l))));
  return html`
    <div class="stepper" role="group" aria-label=${t("change.litres")}>
      <button class="quiet" type="button" aria-label=${t("change.less", { step: step_said })}
        onClick=${() => by(-1)}><${Icon} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${keypad.value}
        aria-label=${t("change.type", { litres: litres_said(litres || 0) })}
        onClick=${tap(() => (keypad.value = !keypad.value))}>
        <span>${short(water.show(litres || 0), 2)} <small>${water.label}</small></span></button>
      <button class="quiet" type="button" aria-label=${t("change.more", { step: step_said })}
        onClick=${() => by(1)}><${Icon} name="plus" size=${28} /></button>
    </div>
    ${
      wrong
        ? html`<div role="alert"><${Wrong} spec=${litres_spec(tank, t("change.litres"))} error=${wrong} /></div>`
        : html`<p class="soft center">${t("change.share", { percent: number((100 * litres) / tank.water_l, 0) })}</p>`
    }
    ${
      keypad.value &&
      html`<${Keypad} label=${t("change.litres")} unit=${water.label}
      value=${water.text(typed, keyed_in)} on_value=${type} />`
    }
    ${
      typed !== null &&
      litres !== suggested &&
      html`<p class="center"><button class="quiet" type="button"
      onClick=${tap(() => type(null))}>${t("change.suggested", { litres: litres_said(suggested) })}</button></p>`
    }`;
}

/** Salts and medicines that leave with the water. @param {{facts: Advised["facts"], fraction: number}} props */
function Again({ facts, fraction }) {
  const again = redose(facts, fraction);
  if (again.length === 0) return null;
  return html`
    ${again.map(
      (one) =>
        html`<p key=${one.label.id}>${t("dose.again", {
          ...{ name: one.label.name, when: when(one.at, facts.now), dose: dose_said(one) },
        })}</p>`,
    )}
    ${
      again.some(({ label }) => label.use === "other") &&
      html`<p class="caution small">
      ${caution("bath_dose", "label_over_all")}</p>`
    }`;
}

/** @param {{id: string, dose: Dosed}} props */
const Dose = ({ id, dose }) => {
  if (!dose.needed) return html`<p class="dose">${t("dose.none")}</p>`;
  if (dose.missing === "source")
    return html`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${id}&then=/tank/${id}/change`}>
      ${t("dose.set_source")}</a></p>`;
  if (!dose.label)
    return html`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${id}&then=/tank/${id}/change`}>
      ${t("dose.set_label")}</a></p>`;
  return html`<p class="dose"><span class="big">${dose_said(dose)}</span><br />${dose.label.name}<br /><span
    class="soft small">${t(`dose.basis_${dose.label.basis}`)}</span></p>`;
};

/**
 * Water from another tank: the tests of that tank say what it brings, and the trace follows it.
 * @param {{id: string, from_tank: string, on_pick: (id: string) => void}} props
 */
const OtherWater = ({ id, from_tank, on_pick }) =>
  all("tank").length > 1 &&
  html`
  <details class="more section" open=${from_tank !== ""}><summary>${t("change.other_tank")}</summary>
    <${TankTiles} tank=${id} value=${from_tank} label=${t("change.out_of")} on_pick=${(/** @type {string} */ picked) =>
      on_pick(picked === from_tank ? "" : picked)} />
    <p class="soft small">${t("change.other_tank_why")}</p>
  </details>`;

/**
 * What the change brings down, by the mixing calculation.
 * @param {{facts: Advised["facts"], advice: Advised["advice"], fraction: number}} props
 */
const After = ({ facts, advice, fraction }) => {
  const known = Object.values(advice.levels).flatMap(({ parameter, now_mg_n_l, reading }) =>
    now_mg_n_l ? [{ parameter, now_mg_n_l, basis: basis_of({ reading }) }] : [],
  );
  const mixed = after_change(facts, advice, fraction);
  return (
    (known.length > 0 || mixed) &&
    html`
    <table class="measured"><caption><h2>${t("change.after")}</h2></caption><tbody>
      ${known.map(({ parameter, now_mg_n_l, basis }) => {
        const source_mg_l = brought(facts.source, parameter, facts.label);
        const { after_mg_l } = run("dilution", { before_mg_l: now_mg_n_l, source_mg_l, fractions: [fraction] });
        return html`<tr key=${parameter}><th scope="row">${parameter_name(parameter)}</th>
          <td class="figures">${level_figure(parameter, now_mg_n_l, basis)} → <span class="big">
            ${level_figure(parameter, after_mg_l, basis)}</span> <span class="unit">
            ${`mg/L ${read_as(parameter, basis)}`}</span></td></tr>`;
      })}${
        mixed &&
        html`<tr><th scope="row">${parameter_name("ph")}</th><td class="figures">${number(mixed.input.ph, 1)} → <span
          class="big">${number(mixed.answer.ph, 1)}</span>${
            number(mixed.answer.ph_settled, 1) !== number(mixed.answer.ph, 1) &&
            html`<span class="also">${t("change.ph_settled", { ph: number(mixed.answer.ph_settled, 1) })}</span>`
          }</td></tr>`
      }</tbody></table>
      ${mixed?.answer.notes.map((note) => html`<p class="caution small" key=${note}>${note}</p>`)}`
  );
};

/**
 * The whole water, where converting its litres to the shown unit and back left a rounding error.
 * @param {number} litres
 * @param {number} water_l
 */
const snapped_to_whole = (litres, water_l) => (Math.abs(litres - water_l) < 1e-6 ? water_l : litres);

/** @param {Dosed | null} dose @returns {string[]} */
const cautions = (dose) => [
  ...cautions_of("dilution"),
  ...(dose?.amount !== undefined
    ? cautions_of("dechlorinator_dose", ["label_first", "no_mixing", "freed_ammonia"])
    : []),
];
