/** What happened, newest first: records written together as one event, by groups and by days, and how one is taken out or corrected. Pure. */

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
export const CORRECTED = { reading: "value", water_change: "litres", dose: "amount", feeding: "feed_g", note: "text" };

/**
 * @typedef {{all: (kind: string) => any[], get: (kind: string, id: string) => any, earlier: (kind: string, id: string) => any[]}} Room
 * @typedef {{at: string, tank: string | null, group: string, kind: string, records: any[], earlier: any[]}} Event
 * `records`: those written together, the one it is named after first; `earlier`: what they said before they were corrected
 * @typedef {{type: "put" | "del", kind: string, id: string, fields?: Record<string, any>}} Write
 */

/** @param {Room} room @param {{tank?: string, group?: string}} [which] @returns {Event[]} newest first */
export function timeline(room, { tank, group } = {}) {
  const events = Object.keys(GROUP_OF)
    .filter((kind) => !group || GROUP_OF[kind] === group)
    .flatMap((kind) => gathered(room, kind))
    .map((records) => event_of(room, records));
  return events.filter((event) => !tank || event.tank === tank || shared_with(event) === tank).sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** The other tank that a shared tool's event belongs to as well. @param {Event} event */
const shared_with = ({ kind, records }) => (kind === "shared_tool" ? records[0].other_tank : null);

/** The events of each day, newest first. @param {Event[]} events @returns {{day: number, events: Event[]}[]} `day`: its midnight here, in ms */
export function by_day(events) {
  /** @type {{day: number, events: Event[]}[]} */ const days = [];
  for (const event of events) {
    const day = new Date(event.at).setHours(0, 0, 0, 0);
    if (days.at(-1)?.day !== day) days.push({ day, events: [] });
    days.at(-1)?.events.push(event);
  }
  return days;
}

/** The writes that take an event out, with what stood before its corrections: none of it comes back. @param {Event} event @returns {Write[]} */
export const removal = ({ records, earlier }) => [...records, ...earlier].map(({ kind, id }) => ({ type: "del", kind, id }));

/**
 * The writes that correct a record: a new one in its place, and what hangs on it in its company.
 * @param {Room} room @param {any} record @param {number | string} value @param {() => string} new_id @returns {Write[]}
 */
export function correction(room, record, value, new_id) {
  const id = new_id();
  const change = /** @type {Record<string, any>} */ ({ [CORRECTED[record.kind]]: value });
  if (record.kind === "water_change") change.fraction = Math.min(1, (record.fraction / record.litres) * Number(value));
  const hanging = record.kind === "water_change" ? room.all("dose").filter((dose) => dose.water_change === record.id) : [];
  return [instead(record, id, change), ...hanging.map((dose) => instead(dose, new_id(), { water_change: id }))];
}

/** @param {any} record @param {string} its @param {Record<string, any>} change @returns {Write} */
function instead({ id, kind, meta: _meta, ...fields }, its, change) {
  return { type: "put", kind, id: its, fields: { ...fields, ...change, supersedes: id } };
}

/** Records of a kind, those written together in one list. @param {Room} room @param {string} kind @returns {any[][]} */
function gathered(room, kind) {
  const records = room.all(kind);
  if (kind === "reading") return together(records, ({ test }) => test).map((test) => as_written(room, test));
  if (kind === "water_change") return records.map((change) => [change, ...doses_of(room, change)]);
  if (kind === "dose") return records.filter((dose) => !dose.water_change || !change_of(room, dose)).map((dose) => [dose]);
  if (kind === "note") return records.map((note) => [note, ...(note.entry ? room.all("photo").filter(({ entry }) => entry === note.entry) : [])]);
  if (kind === "photo") {
    const noted = new Set(room.all("note").map(({ entry }) => entry));
    return together(records.filter(({ entry }) => !entry || !noted.has(entry)), ({ entry }) => entry);
  }
  return records.map((record) => [record]);
}

/** @param {any[]} records @param {(record: any) => string | undefined} key */
function together(records, key) {
  /** @type {Map<string, any[]>} */ const lists = new Map();
  for (const record of records) {
    const its = key(record) ?? record.id;
    lists.set(its, [...(lists.get(its) ?? []), record]);
  }
  return [...lists.values()];
}

/** In the order in which they were first written down: a correction keeps its place. @param {Room} room @param {any[]} records */
function as_written(room, records) {
  const first = (/** @type {any} */ { kind, id, supersedes }) => (supersedes ? room.earlier(kind, id).at(-1)?.id : null) ?? id;
  return records.toSorted((a, b) => (first(a) < first(b) ? -1 : 1));
}

/** A change's own name and those it had before it was corrected. @param {Room} room @param {any} change */
const names_of = (room, change) => [change.id, ...(change.supersedes ? room.earlier("water_change", change.id).map(({ id }) => id) : [])];
/** @param {Room} room @param {any} change */
const doses_of = (room, change) => {
  const names = names_of(room, change);
  return room.all("dose").filter((dose) => names.includes(dose.water_change));
};
/** @param {Room} room @param {any} dose */
const change_of = (room, dose) => room.all("water_change").find((change) => names_of(room, change).includes(dose.water_change));

/** @param {Room} room @param {any[]} records @returns {Event} */
function event_of(room, records) {
  const [first] = records;
  const tank = first.kind === "task_done" ? room.get("task", first.task)?.tank : first.tank;
  const earlier = records.flatMap(({ kind, id, supersedes }) => (supersedes ? room.earlier(kind, id) : []));
  return { at: first.at, tank: tank ?? null, group: GROUP_OF[first.kind], kind: first.kind, records, earlier };
}
