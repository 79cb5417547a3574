/**
 * What happened, newest first: records written together as one event, by groups and by days, and how one is taken out
 * or corrected. Pure.
 */
import { moved_along } from "./moment.js";

/** Which records make the timeline, and under which word they are looked for. @type {Record<string, string>} */
export const GROUP_OF = {
  reading: "tests",
  water_change: "water",
  dose: "water",
  feeding: "food",
  stock_change: "animals",
  planting: "plants",
  note: "notes",
  photo: "notes",
  task_done: "tasks",
  shared_tool: "tools",
};
/** The groups in the order in which they are offered. */
export const GROUPS = [...new Set(Object.values(GROUP_OF))];
/** What of a record is set anew when it is corrected. @type {Record<string, string>} */
export const CORRECTED = {
  reading: "value",
  water_change: "litres",
  dose: "amount",
  feeding: "feed_g",
  note: "text",
  photo: "caption",
};

/**
 * @typedef {import("../../types/views.js").RecordsAndEarlier} Room
 * @typedef {{at: string, tank: string | null, group: string, kind: string, records: any[], earlier: any[]}} Event
 * `records`: those written together, the one it is named after first; `earlier`: what they said before they were
 * corrected
 * @typedef {{type: "put" | "del", kind: string, id: string, fields?: Record<string, any>}} Write
 */

/** @param {Room} room @param {{tank?: string, group?: string}} [which] @returns {Event[]} newest first */
export function timeline(room, { tank, group } = {}) {
  const hanging = hanging_of(room);
  const events = Object.keys(GROUP_OF)
    .filter((kind) => !group || GROUP_OF[kind] === group)
    .flatMap((kind) => gathered(room, kind, hanging))
    .map((records) => event_of(room, records));
  return events
    .filter((event) => !tank || event.tank === tank || shared_with(event) === tank)
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** The other tank that a shared tool's event belongs to as well. @param {Event} event */
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
 * The writes that take an event out, with what stood before its corrections: none of it comes back.
 * @param {Event} event
 * @returns {Write[]}
 */
export const removal = ({ records, earlier }) =>
  [...records, ...earlier].map(({ kind, id }) => ({ type: "del", kind, id }));

/**
 * @typedef {{one: any, value?: number | string, at?: string, tank?: string}} Set what is set anew of an event: the
 * value of
 * one of its records, the moment of its first, the tank of all
 */

/**
 * The writes that correct an event: new records in the place of those that it touches. Another value takes along what
 * hangs on the record; another moment or tank all that was written together.
 * @param {Room} room @param {Event} event @param {Set} set @param {() => string} new_id @returns {Write[]}
 */
export function correction(room, event, { one, value, at, tank }, new_id) {
  const id = new_id();
  const whole = at !== undefined || tank !== undefined || one.kind === "water_change";
  return event.records
    .filter((record) => whole || record === one)
    .map((record) => {
      /** @type {Record<string, any>} */ const change = {};
      if (at !== undefined) change.at = moved_along(record.at, event.at, at);
      if (tank !== undefined) change.tank = tank;
      if (record === one && value !== undefined) change[CORRECTED[record.kind]] = value === "" ? undefined : value;
      // Set anew, its lines need not be the tiles' any more.
      if (record === one && record.kind === "note" && value !== undefined) change.quick = undefined;
      if (record.kind === "water_change") Object.assign(change, of_the_water(room, { ...record, ...change }, record));
      if (event.kind === "water_change" && record.kind === "dose") change.water_change = id;
      return instead(record, record === one ? id : new_id(), change);
    });
}

/**
 * A change's share of the water: of its new tank's, or in proportion to its litres.
 * @param {Room} room
 * @param {any} change
 * @param {any} before
 */
function of_the_water(room, { litres, tank, from_tank }, before) {
  // The keeper chose it among the tanks that are here.
  const { water_l } = /** @type {import("../../types/views.js").Tank} */ (room.get("tank", tank));
  const share = tank === before.tank ? before.fraction / before.litres : 1 / water_l;
  return { fraction: Math.min(1, share * Number(litres)), ...(from_tank === tank ? { from_tank: undefined } : {}) };
}

/** @param {any} record @param {string} its @param {Record<string, any>} change @returns {Write} */
function instead({ id, kind, meta: _meta, ...fields }, its, change) {
  return { type: "put", kind, id: its, fields: { ...fields, ...change, supersedes: id } };
}

/**
 * @typedef {{doses: Map<string, any[]>, photos: Map<string, any[]>, apart: any[], loose: any[]}} Hanging doses by their
 * change, photos by their note's entry, and those that stand alone
 */

/** What hangs on changes and notes. @param {Room} room @returns {Hanging} */
function hanging_of(room) {
  /** @type {Map<string, string>} a change's names, those before its corrections too, to its own */ const names =
    new Map();
  for (const { id, supersedes } of room.all("water_change")) {
    names.set(id, id);
    for (const before of supersedes ? room.earlier("water_change", id) : []) names.set(before.id, id);
  }
  const noted = new Set(room.all("note").map(({ entry }) => entry));
  const doses = split(room.all("dose"), ({ water_change }) => names.get(water_change));
  const photos = split(room.all("photo"), ({ entry }) => (entry && noted.has(entry) ? entry : undefined));
  return { doses: doses.lists, apart: doses.rest, photos: photos.lists, loose: photos.rest };
}

/** @param {any[]} records @param {(record: any) => string | undefined} key */
function split(records, key) {
  /** @type {Map<string, any[]>} */ const lists = new Map();
  /** @type {any[]} */ const rest = [];
  for (const record of records) {
    const its = key(record);
    if (its === undefined) rest.push(record);
    else if (!lists.get(its)?.push(record)) lists.set(its, [record]);
  }
  return { lists, rest };
}

/**
 * Records of a kind, those written together in one list.
 * @param {Room} room
 * @param {string} kind
 * @param {Hanging} hanging
 * @returns {any[][]}
 */
function gathered(room, kind, { doses, photos, apart, loose }) {
  if (kind === "reading") return together(room.all(kind), ({ test }) => test).map((test) => as_written(room, test));
  if (kind === "water_change") return room.all(kind).map((change) => [change, ...(doses.get(change.id) ?? [])]);
  if (kind === "dose") return apart.map((dose) => [dose]);
  if (kind === "note") return room.all(kind).map((note) => [note, ...(photos.get(note.entry ?? "") ?? [])]);
  if (kind === "photo") return together(loose, ({ entry }) => entry);
  return room.all(/** @type {import("../../types/records.js").RecordKind} */ (kind)).map((record) => [record]);
}

/** @param {any[]} records @param {(record: any) => string | undefined} key @returns {any[][]} */
const together = (records, key) => [...split(records, (record) => key(record) ?? record.id).lists.values()];

/**
 * In the order in which they were first written down: a correction keeps its place.
 * @param {Room} room
 * @param {any[]} records
 */
function as_written(room, records) {
  const first = (/** @type {any} */ { kind, id, supersedes }) =>
    (supersedes ? room.earlier(kind, id).at(-1)?.id : null) ?? id;
  return records.toSorted((a, b) => (first(a) < first(b) ? -1 : 1));
}

/** @param {Room} room @param {any[]} records @returns {Event} */
function event_of(room, records) {
  const [first] = records;
  const tank = first.kind === "task_done" ? room.get("task", first.task)?.tank : first.tank;
  const earlier = records.flatMap(({ kind, id, supersedes }) => (supersedes ? room.earlier(kind, id) : []));
  return { at: first.at, tank: tank ?? null, group: GROUP_OF[first.kind], kind: first.kind, records, earlier };
}
