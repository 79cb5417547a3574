/**
 * What happened, newest first: records that were written together form one event. Also how an event is removed or
 * corrected. Pure.
 */
import { shifted } from "./moment.js";
import { in_test_order } from "./test_order.js";

/**
 * Which records make the timeline, and the group in which they are found.
 * @type {Record<Happened["kind"], string>}
 */
export const GROUP_OF = {
  reading: "tests",
  water_change: "water",
  tank: "water",
  dose: "water",
  feeding: "food",
  stock_change: "animals",
  planting: "plants",
  note: "notes",
  photo: "notes",
  task_done: "tasks",
  shared_tool: "tools",
};
const KINDS = /** @type {Happened["kind"][]} */ (Object.keys(GROUP_OF));
/** The groups in the order in which they are offered. */
export const GROUPS = [...new Set(Object.values(GROUP_OF))];
/** The field of a record that a correction sets. @type {Record<string, string>} */
export const CORRECTED = {
  reading: "value",
  water_change: "litres",
  dose: "amount",
  feeding: "feed_g",
  note: "text",
  photo: "caption",
};

/** @import { RecordsAndEarlier, Tank, View } from "../../types/views.js" */

/**
 * @typedef {View<"reading" | "water_change" | "dose" | "feeding" | "stock_change" | "planting" | "note" | "photo"
 *   | "task_done" | "shared_tool"> | Filling} Happened a record that makes the timeline
 * @typedef {Pick<Tank, "id" | "kind" | "meta" | "water_l"> & {at: string, tank: string, supersedes?: undefined}}
 *   Filling a tank's first filling: it stands in the tank's own record
 * @typedef {Pick<Happened, "id" | "kind" | "at" | "supersedes"> & {[field: string]: any}} Recorded any: its kind, known
 * only at run time, says which fields it has
 * @typedef {{at: string, tank: string | null, group: string, kind: Happened["kind"], records: Recorded[],
 *   earlier: Recorded[]}} Event
 * `records`: those written together, the one it is named after first; `earlier`: what they said before they were
 * corrected
 * @typedef {{type: "put" | "del", kind: string, id: string, fields?: Record<string, unknown>}} Write
 */

/** @param {RecordsAndEarlier} room @param {{tank?: string, group?: string}} [which] @returns {Event[]} newest first */
export function timeline(room, { tank, group } = {}) {
  const hanging = hanging_of(room);
  const events = KINDS.filter((kind) => !group || GROUP_OF[kind] === group)
    .flatMap((kind) => gathered(room, kind, hanging))
    .map((records) => event_of(room, records));
  return events
    .filter((event) => !tank || event.tank === tank || shared_with(event) === tank)
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** The second tank of a shared tool's event. @param {Event} event */
const shared_with = ({ kind, records }) => (kind === "shared_tool" ? records[0].other_tank : null);

/**
 * The events of each day, newest first.
 * @param {Event[]} events
 * @returns {{day: number, events: Event[]}[]} `day`: its midnight here, in ms
 */
export function by_day(events) {
  /** @type {{day: number, events: Event[]}[]} */ const days = [];
  for (const event of events) {
    const day = new Date(event.at).setHours(0, 0, 0, 0);
    if (days.at(-1)?.day !== day) days.push({ day, events: [] });
    days.at(-1)?.events.push(event);
  }
  return days;
}

/**
 * The writes that remove an event and everything it said before corrections.
 * @param {Event} event
 * @returns {Write[]}
 */
export const removal = ({ records, earlier }) =>
  [...records, ...earlier].map(({ kind, id }) => ({ type: "del", kind, id }));

/**
 * @typedef {{one: Recorded, value?: number | string, at?: string, tank?: string}} Correction what it sets of an event:
 * the value of one of its records, the moment of its first, the tank of all
 */

/**
 * The writes that correct an event: new records that supersede those it touches. A new value of a water change takes
 * along the doses that belong to it; a new moment or tank takes along all that was written together.
 * @param {RecordsAndEarlier} room
 * @param {Event} event
 * @param {Correction} set
 * @param {() => string} new_id
 * @returns {Write[]}
 */
export function correction(room, event, { one, value, at, tank }, new_id) {
  const id = new_id();
  const whole = at !== undefined || tank !== undefined || one.kind === "water_change";
  return event.records
    .filter((record) => whole || record === one)
    .map((record) => {
      /** @type {Partial<Recorded>} */ const change = {};
      if (at !== undefined) change.at = shifted(record.at, event.at, at);
      if (tank !== undefined) change.tank = tank;
      if (record === one && value !== undefined) change[CORRECTED[record.kind]] = value === "" ? undefined : value;
      // A corrected text need not hold the words of its tiles any more.
      if (record === one && record.kind === "note" && value !== undefined)
        Object.assign(change, { quick: undefined, incident: undefined, step: undefined });
      if (record.kind === "water_change") Object.assign(change, of_the_water(room, { ...record, ...change }, record));
      if (event.kind === "water_change" && record.kind === "dose") change.water_change = id;
      return instead(record, record === one ? id : new_id(), change);
    });
}

/**
 * A change's share of the water: of its new tank's, or in proportion to its litres.
 * @param {RecordsAndEarlier} room
 * @param {Recorded} change
 * @param {Recorded} before
 */
function of_the_water(room, { litres, tank, from_tank }, before) {
  // The keeper chose it among the tanks that are here.
  const { water_l } = /** @type {Tank} */ (room.get("tank", tank));
  const share = tank === before.tank ? before.fraction / before.litres : 1 / water_l;
  return { fraction: Math.min(1, share * Number(litres)), ...(from_tank === tank ? { from_tank: undefined } : {}) };
}

/** @param {Recorded} record @param {string} new_id @param {Partial<Recorded>} change @returns {Write} */
function instead({ id, kind, meta: _meta, ...fields }, new_id, change) {
  return { type: "put", kind, id: new_id, fields: { ...fields, ...change, supersedes: id } };
}

/**
 * @typedef {View<"dose">} Dose
 * @typedef {View<"photo">} Photo
 * @typedef {{doses: Map<string, Dose[]>, photos: Map<string, Photo[]>, apart: Dose[], loose: Photo[]}} Hanging doses
 * by their change, photos by their note's entry, and those that stand alone
 */

/** What hangs on changes and notes. @param {RecordsAndEarlier} room @returns {Hanging} */
function hanging_of(room) {
  /** @type {Map<string, string>} */ const newest_id = new Map();
  for (const { id, supersedes } of room.all("water_change")) {
    newest_id.set(id, id);
    for (const before of supersedes ? room.earlier("water_change", id) : []) newest_id.set(before.id, id);
  }
  const noted = new Set(room.all("note").map(({ entry }) => entry));
  const doses = split(room.all("dose"), ({ water_change }) => newest_id.get(water_change ?? ""));
  const photos = split(room.all("photo"), ({ entry }) => (entry && noted.has(entry) ? entry : undefined));
  return { doses: doses.lists, apart: doses.rest, photos: photos.lists, loose: photos.rest };
}

/** @template R @param {readonly R[]} records @param {(record: R) => string | undefined} key_of */
function split(records, key_of) {
  /** @type {Map<string, R[]>} */ const lists = new Map();
  /** @type {R[]} */ const rest = [];
  for (const record of records) {
    const key = key_of(record);
    if (key === undefined) rest.push(record);
    else if (!lists.get(key)?.push(record)) lists.set(key, [record]);
  }
  return { lists, rest };
}

/**
 * Records of a kind, those written together in one list.
 * @param {RecordsAndEarlier} room
 * @param {Happened["kind"]} kind
 * @param {Hanging} hanging
 * @returns {Happened[][]}
 */
function gathered(room, kind, { doses, photos, apart, loose }) {
  if (kind === "reading") return together(room.all(kind), ({ test }) => test).map(in_test_order);
  if (kind === "water_change") return room.all(kind).map((change) => [change, ...(doses.get(change.id) ?? [])]);
  if (kind === "dose") return apart.map((dose) => [dose]);
  if (kind === "note")
    return together(room.all(kind), ({ entry }) => entry).map((notes) => [
      ...[...notes].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1)),
      ...(photos.get(notes[0].entry ?? "") ?? []),
    ]);
  if (kind === "photo") return together(loose, ({ entry }) => entry);
  if (kind === "tank")
    return room.all(kind).flatMap((tank) => (tank.started_at ? [[filling(tank, tank.started_at)]] : []));
  return /** @type {Happened[]} */ (room.all(kind)).map((record) => [record]);
}

/** @param {Tank} tank @param {string} at @returns {Filling} */
const filling = ({ id, kind, meta, water_l }, at) => ({ id, kind, meta, water_l, at, tank: id });

/**
 * @template {{id: string}} R
 * @param {readonly R[]} records
 * @param {(record: R) => string | undefined} key_of
 */
const together = (records, key_of) => [...split(records, (record) => key_of(record) ?? record.id).lists.values()];

/** @param {RecordsAndEarlier} room @param {Happened[]} records @returns {Event} */
function event_of(room, records) {
  const [first] = records;
  const tank = first.kind === "task_done" ? room.get("task", first.task)?.tank : first.tank;
  const earlier = records.flatMap(({ kind, id, supersedes }) => (supersedes ? room.earlier(kind, id) : []));
  return { at: first.at, tank: tank ?? null, group: GROUP_OF[first.kind], kind: first.kind, records, earlier };
}
