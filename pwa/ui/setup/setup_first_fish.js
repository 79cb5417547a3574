/**
 * The last step of setting up a tank, the first animals: what the tank can bear today, a start without animals, and the
 * record of those that come.
 */
import { html, useSignal } from "../../vendor/preact.js";
import { asked, done, field_of, planned, said_at } from "../../advice/setup/setting_up.js";
import { planned_feed, starter, still_to_come } from "../../advice/setup/setting_up_life.js";
import { fits_in_days } from "../../advice/life/how_many.js";
import { mass_of, name_of } from "../../advice/life/stock.js";
import { table } from "../../calc/tables.js";
import { caution, cautions_of, contracts, input_of, records } from "../../contracts.js";
import { short, t } from "../../i18n/words.js";
import { Calculated } from "../contract/calculated.js";
import { FigureRows } from "../figure_rows.js";
import { Lacking, LeftOut, Verdict, answer_for, by_said, inside_of } from "../how_many.js";
import { forget } from "../state/draft.js";
import { all, room } from "../state/live.js";
import { new_id, record } from "../state/record.js";
import { use_held_height } from "../held_height.js";
import { go } from "../state/router.js";
import { counted } from "../words/life_said.js";
import { Next, SetupStep, use_step } from "./setup_step.js";
import { StepRow } from "../step_row.js";
import { tap } from "../state/tap.js";
import { ammonia_named } from "../words/tile_words.js";
import { trouble_said } from "../words/trouble_said.js";

/** @import { Answers } from "../../types/advice.js" */
/** @import { Tank } from "../../types/views.js" */
/** @import { Open, Told } from "../../advice/life/how_many.js" */
/** @import { Raw } from "./setup_step.js" */
/** @import { Write } from "../state/record.js" */
/** The planned animals that are not in the tank yet. @param {Tank} tank */
const coming_to = (tank) => still_to_come(tank.planned_stock ?? [], inside_of(tank.id));

/**
 * How many of the planned animals may come now, and if none, why.
 * @param {{tank: Tank}} props
 */
export const FirstFishSaid = ({ tank }) => {
  const wanted = coming_to(tank);
  const { told, headroom, advice } = answer_for(tank, wanted);
  const room_taken = use_held_height(`first_fish ${tank.id}`, !told?.missing && !told?.open.some(is_working));
  return html`<div class="room-taken" ref=${room_taken}>
    ${
      !told
        ? html`<p class="sentence">${t("first_fish.no_plan")}</p>`
        : told.missing
          ? html`<${Lacking} tank=${tank} missing=${told.missing} />`
          : told.over || told.open.length > 0 || wanted.length === 0
            ? html`<${Verdict} told=${told} advice=${advice} />`
            : html`<p class="sentence">
                ${come_said(told, headroom, mass_of(wanted, all("own_species"))?.total_g ?? 0)}</p>`
    }
    ${told && html`<${LeftOut} names=${told.left_out} />`}</div>`;
};

/** @param {Open} one */
const is_working = ({ code }) => code === "working";

/**
 * @param {Told} told
 * @param {Answers["headroom"]} headroom
 * @param {number} wanted_g
 */
function come_said({ kinds, whole }, headroom, wanted_g) {
  const some = kinds.filter(({ come }) => come > 0).map(({ species, come }) => counted(species, come));
  const who = some.join("\u00a0· ");
  if (whole?.fits) return t("first_fish.all", { who });
  const by = by_said(whole?.by ?? kinds[0].by);
  if (some.length > 0) return t("first_fish.some", { who, by });
  const days = whole?.by === "nitrogen" && headroom ? fits_in_days(wanted_g, headroom) : null;
  return t(days ? `first_fish.in_${days}` : "first_fish.none", { by });
}

/** @typedef {{species: string, count: number, length_cm?: number}} Coming */
/** @typedef {{species: string, count: number, length_cm: number}} Arriving */

/** @param {{tank: Tank}} props */
export const FirstFishStep = ({ tank }) =>
  planned(tank) ? html`<${NotFilled} tank=${tank} />` : html`<${FirstFish} tank=${tank} />`;

/** @param {{tank: Tank}} props */
const NotFilled = ({ tank }) => html`
  <${SetupStep} step="first_fish" name=${tank.name} up=${`/tank/${tank.id}`}
    act=${html`<a class="main" href=${`/tank/${tank.id}/setup/fill`}>${t("setup.step.fill")}</a>`}>
    <p class="sentence">${t("first_fish.not_filled")}</p><${Welfare} /><${Cautions} />
  <//>`;

/** @param {{tank: Tank}} props */
function FirstFish({ tank }) {
  const { raw, said, set } = use_step(tank, "first_fish");
  const failed = useSignal("");
  const inside = inside_of(tank.id);
  const animals = tank.planned_stock ?? [];
  const coming = coming_to(tank);
  const { told } = answer_for(tank, coming);
  const invited = Boolean(told && !told.missing && told.invites);
  const arriving = arriving_of(coming, raw);
  const many = arriving.reduce((sum, { count }) => sum + count, 0);
  const up = `/tank/${tank.id}`;
  const arrive = async () => {
    try {
      const words = t("first_fish.saved", { count: many, tank: tank.name });
      if (!(await record(arrival_writes(tank, arriving), words))) return;
      forget(`setup.${tank.id}.first_fish`);
      go(up);
    } catch (error) {
      failed.value = trouble_said(error, records().stock_change.fields);
    }
  };
  return html`
    <${SetupStep} step="first_fish" name=${tank.name} up=${up} problem=${failed.value}
      act=${
        room.value.may("stock_change") &&
        (many > 0
          ? html`<${Next} onClick=${() => void arrive()}>${t("first_fish.record", { count: many })}<//>`
          : html`<a class="main" href=${up}>${t("first_fish.none_yet")}</a>`)
      }>
      <${FirstFishSaid} tank=${tank} />
      <${Welfare} few=${invited} rich=${done(tank, "substrate") && said_at(tank, "substrate").bed === "capped"} />
      ${
        coming.length > 0 &&
        html`<${ComeToday} tank=${tank} coming=${coming} raw=${raw} set=${set} invited=${invited} />`
      }
      ${
        animals.length === 0 &&
        inside.length === 0 &&
        html`<p><a class="quiet" href=${`/tank/${tank.id}/setup/stock`}>${t("setup.step.stock")}</a></p>`
      }
      ${
        inside.length === 0 &&
        animals.length > 0 &&
        html`<${WithoutFish} tank=${tank} raw=${raw} said=${said} set=${set} />`
      }
      <${Cautions} />
    <//>`;
}

/** The animals that come today, as typed. @param {Coming[]} coming @param {Raw} raw @returns {Arriving[]} */
const arriving_of = (coming, { counts = {}, lengths }) =>
  coming
    .filter(({ species }) => counts[species] > 0)
    .map((one) => ({ species: one.species, count: counts[one.species], length_cm: length_of(one, lengths) }));

/** @param {Coming} animal @param {Record<string, number>} [lengths] said here, by species */
const length_of = ({ species, length_cm }, lengths = {}) => lengths[species] ?? length_cm ?? half_grown(species);

/**
 * The writes of an arrival. A helper may record arrivals, but not change the tank.
 * @param {Tank} tank @param {Arriving[]} arriving @returns {Write[]}
 */
function arrival_writes(tank, arriving) {
  const at = room.value.now();
  /** @type {Write[]} */
  const writes = arriving.map((fields) => ({
    type: "put",
    kind: "stock_change",
    id: new_id(),
    fields: { tank: tank.id, at, change: "arrival", ...fields },
  }));
  if (!room.value.may("tank")) return writes;
  return [
    ...writes,
    { type: "put", kind: "tank", id: tank.id, fields: { [field_of("first_fish")]: { state: "done" } } },
  ];
}

/**
 * How many of each planned kind moved in, and how long they are. What happened can be recorded, invited or not.
 * @param {{tank: Tank, coming: Coming[], raw: Raw, set: (more: Raw) => void, invited: boolean}} props
 */
function ComeToday({ tank, coming, raw, set, invited }) {
  const { counts = {}, lengths = {} } = raw;
  return html`
    <section class="section"><h2>${t(invited ? "first_fish.come_today" : "first_fish.came")}</h2>
      ${coming.map(
        (one) => html`<div class="chosen" key=${one.species}>
        <${StepRow} label=${name_of("species", one.species)} also=${t("first_fish.of_planned", { count: one.count })}
          max=${one.count} value=${counts[one.species] ?? 0} on_value=${(/** @type {number} */ value) =>
            set({ counts: { ...counts, [one.species]: value } })} />
        ${
          counts[one.species] > 0 &&
          html`<${StepRow}
          label=${t("first_fish.length", { who: name_of("species", one.species) })} unit="cm" step=${0.5} min=${0.5}
          max=${100} value=${length_of(one, lengths)} on_value=${(/** @type {number} */ value) =>
            set({ lengths: { ...lengths, [one.species]: value } })} />`
        }</div>`,
      )}
      <p><a class="quiet" href=${`/bench/acclimation?tank=${tank.id}`}>${contracts().acclimation.title}</a></p>
    </section>`;
}

/**
 * A start without animals: ammonia in place of their food.
 * @param {{tank: Tank, raw: Raw, said: Raw, set: (more: Raw) => void}} props
 */
function WithoutFish({ tank, raw, said, set }) {
  const { input, days } = starter(tank.water_l, planned_feed(tank, all("own_species")), said.ammonia_percent);
  const found = asked("starter_dose", input);
  const { answer } = found;
  const household_ml = answer?.household_ammonia_ml;
  const strength = input_of("starter_dose", "ammonia_percent");
  const log = (/** @type {string} */ what, /** @type {number} */ amount, /** @type {"g" | "ml"} */ unit) => {
    const fields = {
      tank: tank.id,
      at: room.value.now(),
      what: ammonia_named(what),
      what_code: what,
      amount,
      unit,
      for_litres: tank.water_l,
      tan_mg_n_l: answer?.tan_mg_n_l,
    };
    return record(
      [{ type: "put", kind: "dose", id: new_id(), fields }],
      t("first_fish.dosed", { amount: `${short(amount, 2)} ${t(`unit.${unit}`)}`, what: fields.what }),
    );
  };
  return html`
    <section class="section"><h2>${t("first_fish.without")}</h2>
      <p>${t("first_fish.without_why")}</p>
      <details class="more"><summary>${contracts().starter_dose.title}</summary>
        <${FigureRows} specs=${[strength]} raw=${raw} on_raw=${set} wrong=${found.errors} />
        <${Calculated} name="starter_dose" found=${found}
          show=${["ammonium_chloride_g", "household_ammonia_ml", "tan_mg_n_l"]} />
        <p class="soft small">${t("first_fish.of_days", { count: days })}</p>
        ${
          answer &&
          room.value.may("dose") &&
          html`<div class="row">
          <button class="quiet tall" type="button"
            onClick=${tap(() => void log("ammonium_chloride", answer.ammonium_chloride_g, "g"))}>
            ${t("first_fish.log_salt", { amount: short(answer.ammonium_chloride_g, 2) })}</button>
          ${
            typeof household_ml === "number" &&
            html`<button class="quiet tall" type="button"
            onClick=${tap(() => void log("household_ammonia", household_ml, "ml"))}>
            ${t("first_fish.log_household", { amount: short(household_ml, 2) })}</button>`
          }
        </div>`
        }
      </details>
    </section>`;
}

/** @param {{few?: boolean, rich?: boolean}} props `few`: animals may come; `rich`: a bed that feeds roots */
const Welfare = ({ few = false, rich = false }) => html`
  <section class="section"><h2>${t("first_fish.welfare")}</h2>
    <ul class="why"><li>${t("first_fish.daily")}</li>${few && html`<li>${t("first_fish.few")}</li>`}
      <li>${t("first_fish.water")}</li>
      ${rich && html`<li>${caution("substrate", "rich_soil")}</li>`}</ul>
    <p class="soft small">${t("bench.provenance.common practice")}</p>
  </section>`;

const Cautions = () =>
  cautions_of("stocking_limit").map((text) => html`<p class="caution small" key=${text}>${text}</p>`);

/** Animals from shops are about half grown (assumption). @param {string} species */
const half_grown = (species) => Math.max(0.5, Math.round(table("species").rows[species]?.length_cm ?? 4) / 2);
