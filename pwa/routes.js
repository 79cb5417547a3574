/**
 * The pages by path. The app fetches a screen when it first shows it, so that it opens with no more code than the first
 * page needs.
 */

/** @typedef {{enter: (id?: string) => Promise<void>}} App what a screen may ask of the app itself */
/**
 * @typedef {(props: any) => unknown} Screen a component; `any`, because each takes props of its own
 * @typedef {(parts: Record<string, string>, url: URL, app: App) => Record<string, unknown>} Props
 */

/** @type {Props} */
const of_id = ({ id }) => ({ key: id, id });

/** Path, screen and, where it has any, the screen's props. @type {[string, () => Promise<Screen>, Props?][]} */
export const ROUTES = [
  ["/", () => import("./screens/round.js").then((module) => module.Round)],
  ["/index.html", () => import("./screens/round.js").then((module) => module.Round)],
  ["/tanks", () => import("./screens/tanks.js").then((module) => module.Tanks)],
  ["/tanks/new", () => import("./screens/tank_form.js").then((module) => module.TankForm), () => ({ key: "new" })],
  ["/tanks/setup", () => import("./screens/setting_up.js").then((module) => module.SettingUp), () => ({ key: "new" })],
  ["/tank/:id", () => import("./screens/tank.js").then((module) => module.Tank), of_id],
  ["/tank/:id/edit", () => import("./screens/tank_form.js").then((module) => module.TankForm), of_id],
  ["/tank/:id/setup", () => import("./screens/setting_up.js").then((module) => module.SettingUp), of_id],
  [
    "/tank/:id/setup/:step",
    () => import("./screens/setting_up.js").then((module) => module.SettingUp),
    ({ id, step }) => ({ key: `${id}/${step}`, id, step }),
  ],
  ["/tank/:id/buy", () => import("./screens/buy.js").then((module) => module.Buy), of_id],
  ["/tank/:id/test", () => import("./screens/test.js").then((module) => module.Test), of_id],
  ["/tank/:id/change", () => import("./screens/change.js").then((module) => module.Change), of_id],
  ["/tank/:id/outlook", () => import("./screens/outlook.js").then((module) => module.Outlook), of_id],
  ["/tank/:id/feed", () => import("./screens/feed.js").then((module) => module.Feed), of_id],
  ["/tank/:id/dose", () => import("./screens/dose.js").then((module) => module.Dose), of_id],
  ["/tank/:id/note", () => import("./screens/note.js").then((module) => module.Note), of_id],
  ["/tank/:id/trends", () => import("./screens/trends.js").then((module) => module.Trends), of_id],
  ["/tank/:id/history", () => import("./screens/history.js").then((module) => module.History), of_id],
  ["/tank/:id/water", () => import("./screens/water.js").then((module) => module.Water), of_id],
  ["/tank/:id/stock", () => import("./screens/stock.js").then((module) => module.Stock), of_id],
  [
    "/tank/:id/stock/new",
    () => import("./screens/stock_entry.js").then((module) => module.StockEntry),
    ({ id }, url) => ({ key: url.href, id, query: url.searchParams }),
  ],
  ["/tank/:id/plants", () => import("./screens/plants.js").then((module) => module.Plants), of_id],
  [
    "/tank/:id/plants/new",
    () => import("./screens/planting_entry.js").then((module) => module.PlantingEntry),
    ({ id }, url) => ({ key: url.href, id, query: url.searchParams }),
  ],
  ["/tank/:id/tool", () => import("./screens/shared_tool.js").then((module) => module.SharedTool), of_id],
  [
    "/trace",
    () => import("./screens/trace.js").then((module) => module.Trace),
    (_, url) => ({ key: url.searchParams.get("tank") ?? "", query: url.searchParams }),
  ],
  ["/search", () => import("./screens/search.js").then((module) => module.Search)],
  ["/tank/:id/tasks", () => import("./screens/tasks.js").then((module) => module.Tasks), of_id],
  ["/tasks", () => import("./screens/tasks.js").then((module) => module.Tasks), () => ({ key: "all" })],
  ["/calendar", () => import("./screens/calendar.js").then((module) => module.CalendarPage)],
  ["/labels", () => import("./screens/labels.js").then((module) => module.Labels), () => ({ key: "all" })],
  ["/tank/:id/label", () => import("./screens/labels.js").then((module) => module.Labels), of_id],
  ["/away", () => import("./screens/away.js").then((module) => module.Away)],
  ["/away/edit", () => import("./screens/away_form.js").then((module) => module.AwayForm)],
  [
    "/task/new",
    () => import("./screens/task_form.js").then((module) => module.TaskForm),
    (_, url) => ({ key: "new", query: url.searchParams }),
  ],
  ["/task/:id", () => import("./screens/task.js").then((module) => module.Task), of_id],
  [
    "/task/:id/edit",
    () => import("./screens/task_form.js").then((module) => module.TaskForm),
    ({ id }, url) => ({ key: id, id, query: url.searchParams }),
  ],
  ["/timeline", () => import("./screens/history.js").then((module) => module.History)],
  [
    "/correct/:kind/:id",
    () => import("./screens/correct.js").then((module) => module.Correct),
    ({ kind, id }) => ({ key: id, kind, id }),
  ],
  ["/photo/:id", () => import("./screens/photo.js").then((module) => module.Photo), of_id],
  ["/bench", () => import("./screens/bench.js").then((module) => module.Bench)],
  [
    "/bench/:name",
    () => import("./screens/bench_sheet.js").then((module) => module.BenchSheet),
    ({ name }) => ({ key: name, name }),
  ],
  ["/room", () => import("./screens/room.js").then((module) => module.Room)],
  ["/room/people", () => import("./screens/people.js").then((module) => module.People)],
  ["/room/person/:id", () => import("./screens/person.js").then((module) => module.Person), of_id],
  [
    "/room/invite",
    () => import("./screens/invite.js").then((module) => module.Invite),
    (_, url) => ({ query: url.searchParams }),
  ],
  ["/room/rooms", () => import("./screens/rooms.js").then((module) => module.Rooms), (_, __, { enter }) => ({ enter })],
  ["/room/needs-you", () => import("./screens/needs_you.js").then((module) => module.NeedsYou)],
  ["/room/copy", () => import("./screens/copy.js").then((module) => module.Copy)],
  ["/room/display", () => import("./screens/display.js").then((module) => module.Display)],
  [
    "/room/:kind/new",
    () => import("./screens/setting.js").then((module) => module.Setting),
    ({ kind }, url) => ({ key: kind, kind, query: url.searchParams }),
  ],
  [
    "/room/:kind/:id",
    () => import("./screens/setting.js").then((module) => module.Setting),
    ({ kind, id }, url) => ({ key: id, kind, id, query: url.searchParams }),
  ],
  [
    "/join",
    () => import("./screens/join.js").then((module) => module.Join),
    (_, url, { enter }) => ({ secret: url.hash.slice(1), enter }),
  ],
];
