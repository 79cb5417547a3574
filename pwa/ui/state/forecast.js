/**
 * A tank's advice as the screens ask for it: by its forecast once that is there, by its last forecast or the rule until
 * then. The last advice of each tank is kept on the phone. So the Round opens with it, before any tank's records are
 * read.
 */
import { HOUR } from "../../figures/durations.js";
import { effect, signal } from "../../vendor/preact.js";
import { belief_store } from "../../data/belief_store.js";
import { facts_of } from "../../advice/facts.js";
import { forecasts } from "../../advice/forecast/answers.js";
import { told_now, with_findings } from "../../advice/advised.js";
import { as_text, ask_of } from "../../advice/forecast/questions.js";
import { foretold } from "../../advice/foretold.js";
import { is_watched } from "../../advice/level.js";
import { today } from "../../advice/today.js";
import { digest } from "../../figures/digest.js";
import { is_young, set_up_here } from "../../advice/setup/setting_up.js";
import { all, live_room, now, room } from "./live.js";
import { shown_in } from "./measures.js";
import { step_by_step } from "./pause.js";
import { outlook_worker } from "../../workers/start.js";

/** @import { Advice, Advised, Asked, Facts, Forecast, LastAdvice } from "../../types/advice.js" */
/** @import { Question, Rule, Shown } from "../../types/advice.js" */
/** @import { RecordKind } from "../../types/records.js" */
/** @import { Tank } from "../../types/views.js" */

/** The kinds that an advice is made from: those of one tank, and those of the room. @type {readonly RecordKind[]} */
const OF_TANK = ["reading", "water_change", "dose", "feeding", "stock_change", "note"];
/** @type {readonly RecordKind[]} */
const OF_ROOM = ["source_water", "label", "own_species"];
const MADE_OF = /** @type {readonly RecordKind[]} */ (["tank", ...OF_TANK, ...OF_ROOM]);
/** Raise this whenever `LastAdvice` changes: what was kept before is then ignored. */
const SHAPE = 3;
/** The last meals that the Round needs. */
const MEALS = 12;

const answers = signal(0);
const { load, save, keep_only, last_advice, keep_advice } = belief_store();
const board = forecasts({ ask: outlook_worker(), load, save, changed: () => (answers.value += 1) });

/** From now on, store beliefs and advice of the open room's tanks only. */
export function keep_to_this_room() {
  let before = "";
  effect(() => {
    const tanks = all("tank").map(({ id }) => id);
    // A room that is still being taken in does not know all its tanks.
    if (tanks.join() !== before && !room.value.taking_in()) void keep_only(tanks).catch(() => undefined);
    before = tanks.join();
  });
}

/** The last advice by tank. @type {Map<string, LastAdvice>} */
let last = new Map();
/** Tanks of which records changed since their last advice was kept, as far as they are not read. @type {Set<string>} */
let changed = new Set();

/** Read the last advice of a room's tanks, before its Round is drawn. @param {import("./live.js").FishRoom} opened */
export async function read_last_advice(opened) {
  const kept = await last_advice().catch(() => []);
  const here = kept.filter((one) => one.room === opened.id && one.shape === SHAPE);
  last = new Map(here.map((one) => [one.tank_id, one]));
  changed = await changed_since(opened, here);
  single_at_first = new Map(here.map((one) => [one.tank_id, single(opened, one)]));
  standing.clear();
}

/** @param {import("./live.js").FishRoom} opened @param {LastAdvice[]} kept */
async function changed_since(opened, kept) {
  if (opened.is_ready() || !kept.length) return new Set(kept.map(({ tank_id }) => tank_id));
  const since = Math.min(...kept.map(({ place }) => place.since));
  const rows = await opened.rows_after({ mirror: kept[0].place.mirror, since });
  const touched = (/** @type {LastAdvice} */ { tank_id, place, from_tanks }) =>
    !rows ||
    place.mirror !== kept[0].place.mirror ||
    place.ops !== opened.place(tank_id, MADE_OF).ops ||
    rows.some(({ seq, kind, id, fields }) => {
      if (seq <= place.since || !MADE_OF.includes(/** @type {RecordKind} */ (kind))) return false;
      const of = kind === "tank" ? id : fields.tank;
      return of === undefined || of === tank_id || from_tanks.includes(String(of));
    });
  return new Set(kept.filter(touched).map(({ tank_id }) => tank_id));
}

/**
 * Read the records that the Round did not need: of tanks whose last advice no longer holds, or is more than an hour
 * old, so that its forecast is made anew. The others are read when a page shows them.
 */
export async function read_the_rest() {
  const opened = room.value;
  for (const { id } of opened.all("tank")) {
    const kept = kept_of(id);
    if (!kept || now.value - kept.at > HOUR) await opened.ready(id);
  }
}

/**
 * What is held of a tank whose records are not read: single records that came. Another array says that one came.
 * @param {Pick<import("./live.js").FishRoom, "all" | "get" | "of">} from @param {LastAdvice} kept
 */
const single = (from, { tank_id, from_tanks }) => [
  from.get("tank", tank_id),
  ...OF_TANK.map((kind) => from.of(kind, tank_id)),
  ...OF_ROOM.map((kind) => from.all(kind)),
  ...from_tanks.map((id) => from.of("reading", id)),
];
/** The same when the room was opened. @type {Map<string, unknown[]>} */
let single_at_first = new Map();

/** The last advice of a tank whose records are not read, while they are as they were. @param {string} tank_id */
function kept_of(tank_id) {
  const kept = last.get(tank_id);
  const first = single_at_first.get(tank_id);
  if (!kept || !first || changed.has(tank_id) || kept.unit !== shown_in("L").unit) return null;
  if (single(live_room, kept).every((one, i) => one === first[i])) return kept;
  changed.add(tank_id);
  return null;
}

/**
 * @typedef {{facts: Facts, rule: Rule, asked: Asked, made_of: unknown[], digests: Pick<LastAdvice, "asked" | "tests" |
 * "water">, said: {by: unknown[], told: Advice, advice: Advised} | null}} Gathered
 * `said`: the advice, until an answer comes
 */
/** @type {Map<string, Gathered>} */
const gathered = new Map();

/**
 * The advice of a tank whose records are read; its pages open only then.
 * @param {Tank} tank @returns {{facts: Facts, advice: Advised}}
 */
export function advice_for(tank) {
  const one = gather(tank);
  const forecast = is_kept(tank, one) ? ANSWERED : told(tank.id, one.asked.questions);
  return { facts: one.facts, advice: say(tank, one, forecast).advice };
}

/** Tanks whose page stands on what was kept of them, until their records are read. @type {Map<string, LastAdvice>} */
const standing = new Map();

/**
 * Let a tank's page show what was kept of the tank, if all of it still holds. `read_behind` then reads the records.
 * The page of a young tank that was set up here shows more than what is kept, so it waits for them.
 * @param {string} tank_id @returns {boolean} whether the page may open at once
 */
export function stands_on_last(tank_id) {
  const tank = room.value.get("tank", tank_id);
  const kept = kept_of(tank_id);
  if (!tank || !kept?.shown || (set_up_here(tank) && is_young(tank, now.value))) return false;
  standing.set(tank_id, kept);
  return true;
}

/**
 * What was kept, while a tank's page stands on it: until this phone writes a record and all others are read.
 * @param {string} tank_id
 */
function stands(tank_id) {
  const kept = standing.get(tank_id);
  const { value: opened } = room;
  if (kept && opened.is_ready(tank_id) && opened.place(tank_id, MADE_OF).ops !== kept.place.ops)
    standing.delete(tank_id);
  return standing.get(tank_id);
}

/** Read the records of a tank whose page is open, and work out its advice in steps. @param {string} tank_id */
export async function read_behind(tank_id) {
  const opened = room.value;
  await opened.ready(tank_id);
  const tank = opened.get("tank", tank_id);
  if (tank) await step_by_step(advise_ahead([tank]));
  standing.delete(tank_id);
  answers.value += 1;
}

/**
 * What a tank's page shows: of its records, or what was kept of them.
 * @param {Tank} tank @param {(facts: Facts) => Shown} shown_of @returns {{advice: Advised, shown: Shown}}
 */
export function page_of(tank, shown_of) {
  void answers.value;
  const kept = stands(tank.id);
  if (kept?.shown) return { advice: { ...kept.advice, as_of: kept.at }, shown: kept.shown };
  const { facts, advice } = advice_for(tank);
  return { advice, shown: shown_of(facts) };
}

/**
 * Work out the advice of tanks in steps, before a page first shows it, so that none holds the phone up for long.
 * @param {readonly Tank[]} tanks
 */
export function* advise_ahead(tanks) {
  for (const tank of tanks) {
    if (!room.value.is_ready(tank.id) || gathered.has(tank.id)) continue;
    yield* gathering(tank);
    yield;
    advice_for(tank);
    yield;
  }
}

/** The forecast was made from the same before: it need not be worked out again. @type {Forecast} */
const ANSWERED = { state: "ready", answers: {} };

/** @param {Tank} tank @param {Gathered} one */
function is_kept(tank, { facts, digests }) {
  const kept = last.get(tank.id);
  return kept?.told.from !== undefined && kept.asked === digests.asked && kept.unit === facts.water_unit;
}

/**
 * The same for the Round, where the records may not be read yet: then the last advice and as much of the facts as the
 * Round needs, or null if there is none that holds.
 * @param {Tank} tank
 * @returns {{facts: Pick<Facts, "now" | "readings" | "changes" | "feedings">, advice: Advised} | null}
 */
export function advice_at_once(tank) {
  const on_page = stands(tank.id);
  const here = all("tank") && room.value.is_ready(tank.id);
  if (here && !on_page) return advice_for(tank);
  const kept = on_page ?? kept_of(tank.id);
  if (!kept) void room.value.ready(tank.id).catch(console.warn);
  return kept && { facts: { now: now.value, ...kept.facts }, advice: { ...kept.advice, as_of: kept.at } };
}

/** The same with what lies further ahead. @param {Tank} tank */
export function outlook_for(tank) {
  const one = gather(tank);
  const { facts, asked } = one;
  const forecast = told(tank.id, [...asked.questions, ...asked.further]);
  return { facts, asked, forecast, advice: say(tank, one, forecast).advice };
}

/** @param {string} tank_id @param {Question[]} questions @returns {Forecast} */
function told(tank_id, questions) {
  void answers.value;
  // Of a room that is still being taken in, a forecast would rest on a part of the records.
  return room.value.taking_in() ? { state: "working", answers: {} } : board.of(tank_id, questions);
}

/** @param {Tank} tank @param {Gathered} one @param {Forecast} forecast */
function say(tank, one, forecast) {
  const { facts, rule } = one;
  const { plan, next } = forecast.answers;
  const kept = last.get(tank.id);
  const by = [forecast.state, plan, next, forecast.problem, kept];
  if (one.said && by.every((each, i) => each === one.said?.by[i])) return one.said;
  const told = kept && forecast === ANSWERED ? kept.told : told_anew(one, forecast, kept);
  const said = { by, told, advice: with_findings(facts, rule, told) };
  one.said = said;
  // A rule that stands in is kept only where there was never a forecast.
  if (!told.as_of && !room.value.taking_in() && (told.from || !kept?.told.from)) keep(tank, one, said);
  return said;
}

/** @param {Gathered} one @param {Forecast} forecast @param {LastAdvice | undefined} kept */
function told_anew({ facts, rule, asked, digests }, forecast, kept) {
  const before = kept?.told.from && kept.unit === facts.water_unit ? since(kept, digests) : null;
  return told_now(rule, foretold(facts, rule, asked, forecast), forecast, before);
}

/**
 * @param {LastAdvice} kept
 * @param {Gathered["digests"]} now_here @returns {import("../../advice/meanwhile.js").Last}
 */
const since = ({ told, at, water, tests }, now_here) => ({
  told,
  at,
  changed: water !== now_here.water ? "water" : tests !== now_here.tests ? "tests" : "nothing",
});

/** What is to be stored next, by tank. @type {Map<string, {made: LastAdvice, facts: Facts}>} */
let unsaved = new Map();

/**
 * Keep an advice as the last one.
 * @param {Tank} tank @param {Gathered} one @param {NonNullable<Gathered["said"]>} said
 */
function keep({ id }, one, said) {
  const { facts, digests } = one;
  const place = room.value.place(id, MADE_OF);
  const kept = last.get(id);
  if (
    kept?.asked === digests.asked &&
    kept.told.from === said.told.from &&
    kept.unit === facts.water_unit &&
    JSON.stringify(kept.place) === JSON.stringify(place)
  )
    return;
  /** @type {LastAdvice} */
  const made = {
    tank_id: id,
    room: room.value.id,
    shape: SHAPE,
    at: facts.now,
    told: said.told,
    advice: said.advice,
    unit: facts.water_unit ?? "",
    ...digests,
    place,
    from_tanks: facts.changes.flatMap(({ from_tank }) => from_tank ?? []),
    facts: {
      readings: facts.readings.slice(-1),
      changes: facts.changes.slice(-1),
      feedings: facts.feedings.slice(-MEALS),
    },
  };
  last.set(id, made);
  said.by[said.by.length - 1] = made;
  changed.delete(id);
  if (!unsaved.size) setTimeout(() => void store_unsaved().catch(() => undefined), 0);
  unsaved.set(id, { made, facts });
}

/**
 * A tank of more records opens on what was kept of it (assumption). On a slow phone that saves a tenth of a second with
 * 930 records and most of a second with 7,000.
 */
const MANY = 500;
/** @param {Facts} facts */
const has_many = ({ readings, feedings, changes, doses }) =>
  readings.length + feedings.length + changes.length + doses.length > MANY;

/** Store what was to be kept; then, for tanks of many records, what their pages show. */
async function store_unsaved() {
  const all = [...unsaved.values()];
  unsaved = new Map();
  await keep_advice(all.map(({ made }) => made));
  for (const { made, facts } of all.filter((one) => has_many(one.facts))) {
    const { shown_of } = await import("../tank_shown.js");
    if (last.get(made.tank_id) !== made) continue;
    made.shown = shown_of(facts);
    await keep_advice([made]);
  }
}

/**
 * Facts, rule and questions, made again only when a record of the tank changed or ten minutes passed.
 * @param {Tank} tank
 * @returns {Gathered}
 */
function gather(tank) {
  const steps = gathering(tank);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same in steps. @param {Tank} tank @returns {Generator<undefined, Gathered>} */
function* gathering(tank) {
  const { unit } = shown_in("L");
  const changes = live_room.of("water_change", tank.id);
  const made_of = [
    tank,
    unit,
    Math.floor(now.value / (HOUR / 6)),
    ...OF_TANK.map((kind) => live_room.of(kind, tank.id)),
    ...OF_ROOM.map((kind) => all(kind)),
    ...new Set(changes.flatMap(({ from_tank }) => (from_tank ? [live_room.of("reading", from_tank)] : []))),
  ];
  const before = gathered.get(tank.id);
  if (before?.made_of.length === made_of.length && made_of.every((one, i) => one === before.made_of[i])) return before;
  const facts = { ...facts_of(live_room, tank, now.value), water_unit: unit };
  const rule = today(facts);
  yield;
  const asked = ask_of(facts, rule);
  yield;
  const after = { facts, rule, asked, made_of, digests: digests_of(facts, rule, asked), said: null };
  gathered.set(tank.id, after);
  return after;
}

/** @param {Facts} facts @param {Rule} rule @param {Asked} asked @returns {Gathered["digests"]} */
function digests_of(
  { readings, source, label },
  { limits, test_due },
  { questions, records: { tank, readings: read, changes, doses, feedings } },
) {
  const by = JSON.stringify([test_due, limits, { ...source, meta: null }, { ...label, meta: null }]);
  return {
    asked: digest(
      [...questions.map(({ how }) => how), ...[tank, read, changes, doses, feedings].map(shortly), by].join(),
    ),
    tests: digest(JSON.stringify(readings.flatMap(({ id, parameter }) => (is_watched(parameter) ? [id] : [])))),
    water: digest(`[${[tank, changes, doses].map(as_text)}]`),
  };
}

/** Digests of what belief_input.js made of records. @type {WeakMap<object, string>} */
const digests = new WeakMap();

/** @param {object} made */
function shortly(made) {
  const short = digests.get(made) ?? digest(as_text(made));
  digests.set(made, short);
  return short;
}
