/**
 * A water change: the litres the advice asks for (or the keeper's own), the dose for exactly those, logged together by
 * one tap.
 */
import { html, useRef, useSignal } from "../vendor/preact.js";
import { bucket_litres, bucket_step, dose_for, litres_refused, litres_spec } from "../advice/litres.js";
import { brought } from "../advice/level.js";
import { tank_water } from "../advice/tank_water.js";
import { cautions_of, run } from "../contracts.js";
import { number, short, t } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { dose_said, litres_said, nitrogen, parameter_name } from "../ui/words/figures.js";
import { advice_for } from "../ui/state/forecast.js";
import { Wrong } from "../ui/contract/form.js";
import { Icon } from "../ui/icon.js";
import { Keypad } from "../ui/keypad.js";
import { TankTiles } from "../ui/life_entry.js";
import { all, get, now, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { sentence } from "../ui/words/sentence.js";
import { tap } from "../ui/state/tap.js";
import { TemperatureMatch } from "../ui/temperature_match.js";

/** A quarter is the usual change where nothing asks for another (common practice). */
const USUAL = 0.25;

/** @param {{id: string}} props */
export function Change({ id }) {
  const tank = get("tank", id);
  const kept = use_draft(
    `change.${id}`,
    () => /** @type {{typed: string | null, unit?: string, from_tank?: string, at?: string}} */ ({ typed: null }),
  );
  const keypad = useSignal(false);
  const problem = useSignal("");
  const came_for = useRef(/** @type {{last: string, advice: any} | null} */ (null));
  if (!tank) return html`<${Missing} up="/" />`;
  if (!room.value.may("water_change")) return html`<${LookingOnly} title=${t("change.title")} up=${`/tank/${id}`} />`;

  const { facts, advice: latest } = advice_for(tank);
  // The litres that a keeper came here to pour stand still while the hour moves on, until something new is recorded.
  const last = [facts.readings, facts.changes].map((records) => records.at(-1)?.id).join();
  if (latest.from && came_for.current?.last !== last) came_for.current = { last, advice: latest };
  const advice = came_for.current?.last === last ? came_for.current.advice : latest;
  // While a reading is doubted its litres are no suggestion: the next test decides.
  const suggested =
    (advice.act !== "retest" && advice.litres) || bucket_litres(USUAL * tank.water_l, tank.water_l, facts.water_unit);
  const water = shown_in("L");
  const { typed, unit: keyed_in = "L", from_tank = "", at } = kept.value;
  const litres = typed === null ? suggested : at_most(water.hold(Number(typed), keyed_in), tank.water_l);
  const wrong = litres_refused(tank, litres);
  // Water out of another tank was made safe there.
  const dose = wrong || from_tank ? null : dose_for(facts, litres);
  const poured = from_tank
    ? { ...facts, source: tank_water(all("reading"), { from_tank, at: at ?? room.value.now() }) }
    : facts;
  const step = bucket_step(tank.water_l, water.unit);
  const set = (/** @type {string | null} */ text) => (kept.value = { ...kept.value, typed: text, unit: water.unit });
  const by = (/** @type {number} */ steps) =>
    set(String(water.show(Math.min(Math.max(litres + steps * step, step), tank.water_l))));

  const log = async () => {
    const water_change = new_id();
    const fraction = litres / tank.water_l;
    const source = from_tank ? { from_tank } : facts.source ? { source_water: facts.source.id } : {};
    /** @type {import("../ui/state/record.js").Write[]} */
    const writes = [
      {
        type: /** @type {const} */ ("put"),
        kind: "water_change",
        id: water_change,
        fields: { tank: id, at, litres, fraction, ...source },
      },
    ];
    if (dose?.amount !== undefined)
      writes.push({
        type: "put",
        kind: "dose",
        id: new_id(),
        fields: { at, ...dose_fields(id, litres, dose, water_change) },
      });
    try {
      if (!(await record(writes, t(writes.length > 1 ? "saved.change_dose" : "saved.change", said)))) return;
      forget(`change.${id}`);
      go(`/tank/${id}`, { replace: true });
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };
  const said = { litres: litres_said(litres || 0), dose: dose?.amount !== undefined ? dose_said(dose) : "" };

  return html`
    <${Page} title=${t("change.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${html`<button class="main" type="button" disabled=${Boolean(wrong) || no_moment(at)}
        onClick=${tap(() => void log())}>${t(dose?.amount !== undefined ? "change.log_dose" : "change.log", said)}
        </button>`}>
      <p class="soft">${
        advice.litres || advice.act === "retest"
          ? sentence(advice, now.value)
          : t("change.usual", { litres: litres_said(suggested) })
      }</p>
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" />${problem.value}</p>`}
      <div class="stepper" role="group" aria-label=${t("change.litres")}>
        <button class="quiet" type="button" aria-label=${t("change.less", { step: litres_said(step) })}
          onClick=${() => by(-1)}><${Icon} name="minus" size=${28} /></button>
        <button class="amount" type="button" aria-expanded=${keypad.value} aria-label=${t("change.type", said)}
          onClick=${tap(() => (keypad.value = !keypad.value))}>
          <span>${short(water.show(litres || 0), 2)} <small>${water.label}</small></span></button>
        <button class="quiet" type="button" aria-label=${t("change.more", { step: litres_said(step) })}
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
        value=${water.text(typed, keyed_in)} on_value=${set} />`
      }
      ${
        typed !== null &&
        litres !== suggested &&
        html`<p class="center"><button class="quiet" type="button"
        onClick=${tap(() => set(null))}>${t("change.suggested", { litres: litres_said(suggested) })}</button></p>`
      }
      ${dose && html`<${Dose} id=${id} dose=${dose} />`}
      ${!wrong && html`<${After} facts=${poured} advice=${advice} fraction=${litres / tank.water_l} />`}
      ${!wrong && html`<${TemperatureMatch} facts=${facts} litres=${litres} />`}
      <${OtherWater} id=${id} from_tank=${from_tank}
        on_pick=${(/** @type {string} */ tank) => (kept.value = { ...kept.value, from_tank: tank })} />
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) =>
        (kept.value = { ...kept.value, at: moment })} />
      ${cautions(dose).map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}
    <//>`;
}

/** @param {{id: string, dose: any}} props */
const Dose = ({ id, dose }) => {
  if (!dose.needed) return html`<p class="dose">${t("dose.none")}</p>`;
  if (dose.missing === "source")
    return html`<p class="dose"><a class="quiet" href=${`/room/source_water/new?tank=${id}&then=/tank/${id}/change`}>
      ${t("dose.set_source")}</a></p>`;
  if (dose.missing === "label")
    return html`<p class="dose"><a class="quiet" href=${`/room/label/new?tank=${id}&then=/tank/${id}/change`}>
      ${t("dose.set_label")}</a></p>`;
  return html`<p class="dose"><span class="big">${dose_said(dose)}</span><br />${dose.label.name}<br /><span
    class="soft small">${t(`dose.basis_${dose.label.basis}`)}</span></p>`;
};

/**
 * Water that comes out of another tank: its tests say what it brings, and the trace knows of it.
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

/** What it brings down, by the mixing calculation. @param {{facts: any, advice: any, fraction: number}} props */
const After = ({ facts, advice, fraction }) => {
  const known = Object.values(advice.levels).filter((/** @type {any} */ one) => one.now_mg_n_l > 0);
  return (
    known.length > 0 &&
    html`
    <table class="measured"><caption><h2>${t("change.after")}</h2></caption><tbody>
      ${known.map((/** @type {any} */ one) => {
        const source_mg_l = brought(facts.source, one.parameter, facts.label);
        const { after_mg_l } = run("dilution", { before_mg_l: one.now_mg_n_l, source_mg_l, fractions: [fraction] });
        return html`<tr key=${one.parameter}><th scope="row">${parameter_name(one.parameter)}</th>
          <td class="figures">${nitrogen(one.now_mg_n_l)} → <span class="big">${nitrogen(after_mg_l)}</span> <span
            class="unit">mg\u00a0N/L</span></td></tr>`;
      })}</tbody></table>`
  );
};

/**
 * All of the water, where converting there and back left a grain more or less.
 * @param {number} litres
 * @param {number} water_l
 */
const at_most = (litres, water_l) => (Math.abs(litres - water_l) < 1e-6 ? water_l : litres);

/** @param {string} tank @param {number} litres @param {any} dose @param {string} water_change */
const dose_fields = (tank, litres, dose, water_change) => ({
  tank,
  label: dose.label.id,
  what: dose.label.name,
  amount: dose.amount,
  unit: dose.unit,
  for_litres: litres,
  water_change,
});

/** @param {any} dose @returns {string[]} */
const cautions = (dose) => [
  ...cautions_of("dilution"),
  ...(dose?.amount !== undefined
    ? cautions_of("dechlorinator_dose", ["label_first", "no_mixing", "freed_ammonia"])
    : []),
];
