/**
 * The pages by path. The app fetches the screens of a place when it first shows one of them, so that it opens with
 * little more code than the first page needs.
 */

/** @typedef {{enter: (id?: string) => Promise<void>}} App what a screen may ask of the app itself */
/**
 * @typedef {(props: any) => unknown} OfProps `any`, because each takes props of its own
 * @typedef {OfProps & {ahead?: OfProps}} Screen a component; `ahead`: what it works out before it is shown, in steps
 * @typedef {(parts: Record<string, string>, url: URL, app: App) => Record<string, unknown>} Props
 */

/**
 * The screens of one place, by name.
 * @template {Record<string, unknown>} Place @param {() => Promise<Place>} fetch_place
 * @returns {(name: keyof Place & string) => () => Promise<Screen>}
 */
const of_place = (fetch_place) => (name) => async () => /** @type {Screen} */ ((await fetch_place())[name]);

const alarm = of_place(() => import("./places/alarm.js"));
const bench = of_place(() => import("./places/bench.js"));
const journal = of_place(() => import("./places/journal.js"));
const notebook = of_place(() => import("./places/notebook.js"));
const life = of_place(() => import("./places/life.js"));
const room = of_place(() => import("./places/room.js"));
const round = of_place(() => import("./places/round.js"));
const setup = of_place(() => import("./places/setup.js"));
const tank = of_place(() => import("./places/tank.js"));
const tasks = of_place(() => import("./places/tasks.js"));

/** For the browser stories: what the Room place asks the server about people. */
export const people = async () => (await import("./places/room.js")).people;

/** @type {Props} */
const of_id = ({ id }) => ({ key: id, id });
/** @type {Props} */
const of_query = ({ id }, url) => ({ key: url.href, id, query: url.searchParams });

/** Path, screen and, where it has any, the screen's props. @type {[string, () => Promise<Screen>, Props?][]} */
export const ROUTES = [
  ["/", round("Round")],
  ["/index.html", round("Round")],
  ["/round/dose", tank("DoseGroup"), (_, url) => ({ key: url.href, place: url.searchParams.get("place") ?? "" })],
  ["/grid", setup("Grid")],
  ["/tanks", setup("Tanks")],
  ["/test", tank("TestNext")],
  ["/shared", journal("Shared")],
  ["/tanks/new", setup("TankForm"), () => ({ key: "new" })],
  ["/tanks/setup", setup("SettingUp"), () => ({ key: "new" })],
  ["/tank/:id", tank("Tank"), of_id],
  ["/tank/:id/edit", setup("TankForm"), of_id],
  ["/tank/:id/setup", setup("SettingUp"), of_id],
  ["/tank/:id/setup/:step", setup("SettingUp"), ({ id, step }) => ({ key: `${id}/${step}`, id, step })],
  ["/tank/:id/buy", setup("Buy"), of_id],
  ["/tank/:id/test", tank("Test"), of_query],
  ["/tank/:id/change", tank("Change"), of_id],
  ["/tank/:id/outlook", tank("Outlook"), of_id],
  ["/tank/:id/long-run", tank("LongRunPage"), of_id],
  ["/tank/:id/feed", tank("Feed"), of_id],
  ["/tank/:id/dose", tank("Dose"), of_id],
  ["/tank/:id/note", tank("Note"), of_id],
  ["/tank/:id/incidents", alarm("Incidents"), of_id],
  ["/tank/:id/incident/:what", alarm("Incident"), ({ id, what }) => ({ key: `${id}/${what}`, id, what })],
  ["/incidents", alarm("Incidents"), (_, url) => ({ key: url.href, what: url.searchParams.get("what") ?? undefined })],
  ["/tank/:id/trends", journal("Trends"), of_id],
  ["/tank/:id/history", journal("History"), of_id],
  ["/tank/:id/month", journal("MonthPage"), of_query],
  ["/tank/:id/year", journal("YearPage"), of_query],
  ["/year", journal("RoomYear"), (_, url) => ({ key: url.href, query: url.searchParams })],
  ["/tank/:id/water", journal("Water"), of_id],
  ["/tank/:id/stock", life("Stock"), of_id],
  ["/tank/:id/stock/new", life("StockEntry"), of_query],
  ["/tank/:id/plants", life("Plants"), of_id],
  ["/tank/:id/plants/new", life("PlantingEntry"), of_query],
  ["/tank/:id/tool", life("SharedTool"), of_id],
  ["/trace", life("Trace"), (_, url) => ({ key: url.searchParams.get("tank") ?? "", query: url.searchParams })],
  ["/search", journal("Search")],
  ["/tank/:id/tasks", tasks("Tasks"), of_id],
  ["/tasks", tasks("Tasks"), () => ({ key: "all" })],
  ["/calendar", tasks("CalendarPage")],
  ["/labels", tasks("Labels"), () => ({ key: "all" })],
  ["/tank/:id/label", tasks("Labels"), of_id],
  ["/away", tasks("Away")],
  ["/away/edit", tasks("AwayForm")],
  ["/task/new", tasks("TaskForm"), (_, url) => ({ key: "new", query: url.searchParams })],
  ["/task/:id", tasks("Task"), of_id],
  ["/task/:id/edit", tasks("TaskForm"), ({ id }, url) => ({ key: id, id, query: url.searchParams })],
  ["/timeline", journal("History")],
  ["/correct/:kind/:id", journal("Correct"), ({ kind, id }) => ({ key: id, kind, id })],
  ["/photo/:id", journal("Photo"), of_id],
  ["/bench", bench("Bench")],
  ["/bench/:name", bench("BenchSheet"), ({ name }) => ({ key: name, name })],
  ["/room", room("Room")],
  ["/room/people", room("People")],
  ["/room/person/:id", room("Person"), of_id],
  ["/room/invite", room("Invite"), (_, url) => ({ query: url.searchParams })],
  ["/room/rooms", room("Rooms"), (_, __, { enter }) => ({ enter })],
  ["/room/needs-you", room("NeedsYou")],
  ["/room/copy", room("Copy")],
  ["/room/notebook", notebook("Notebook")],
  ["/room/display", room("Display")],
  ["/room/install", room("Install")],
  ["/room/:kind/new", room("Setting"), ({ kind }, url) => ({ key: kind, kind, query: url.searchParams })],
  ["/room/:kind/:id", room("Setting"), ({ kind, id }, url) => ({ key: id, kind, id, query: url.searchParams })],
  ["/join", room("Join"), (_, url, { enter }) => ({ secret: url.hash.slice(1), enter })],
];
