/** Entries of animals and plants as records, and what the search finds. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { find, findable } from "../../pwa/advice/journal/find.js";
import { correct_path, life_removal, life_writes } from "../../pwa/advice/life/life_writes.js";
import { other_half } from "../../pwa/advice/life/stock.js";
import { timeline } from "../../pwa/advice/journal/timeline.js";
import { shelf } from "../../pwa/bench/search.js";
import { contracts, install } from "../../pwa/contracts.js";
import { records_of, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { open_room } from "../../pwa/data/fish_room.js";
import { test_phone } from "./test_phone.js";

install(shared_bundle());

const AT = "2026-05-04T07:30:00.000Z";
const numbered = () => {
  let n = 0;
  return () => `written-${n++}`;
};
const move = {
  tank: "tank-aaaa",
  at: AT,
  change: "move_out",
  species: "Danio rerio",
  count: 3,
  other_tank: "tank-bbbb",
  cause: "none",
};

test("a move is two records of the same moment that find each other", () => {
  const writes = life_writes("stock_change", move, numbered());
  const [out, come] = writes.map(({ id, fields }) => view("stock_change", { id, ...fields }));
  assert.deepEqual(
    [come.tank, come.other_tank, come.change, come.count, come.at, "cause" in come],
    ["tank-bbbb", "tank-aaaa", "move_in", 3, AT, false],
  );
  assert.equal(other_half(out, [come, out]), come);
});

test("a correction replaces both halves of a move; where it is no longer a move, the other half goes", () => {
  const [out, come] = life_writes("stock_change", move, numbered()).map(({ id, fields }) =>
    view("stock_change", { id, ...fields }),
  );
  const elsewhere = life_writes("stock_change", { ...move, other_tank: "tank-cccc" }, numbered(), out, come);
  assert.deepEqual(
    elsewhere.map(({ type, fields }) => [type, fields?.tank, fields?.supersedes]),
    [
      ["put", "tank-aaaa", "written-0"],
      ["put", "tank-cccc", "written-1"],
    ],
  );
  const begun_elsewhere = life_writes("stock_change", { ...move, tank: "tank-dddd" }, numbered(), out, come);
  assert.deepEqual(
    begun_elsewhere.map(({ fields }) => [fields?.tank, fields?.other_tank]),
    [
      ["tank-dddd", "tank-bbbb"],
      ["tank-bbbb", "tank-dddd"],
    ],
  );
  const { other_tank: _, ...death } = { ...move, change: "death" };
  const died = life_writes("stock_change", death, numbered(), out, come);
  assert.deepEqual(
    died.map(({ type, id }) => [type, id]),
    [
      ["put", "written-0"],
      ["del", "written-1"],
    ],
  );
  const planted = life_writes(
    "planting",
    { tank: "tank-aaaa", at: AT, change: "plant", species: "moss" },
    numbered(),
    view("planting", { id: "old" }),
  );
  assert.deepEqual(
    planted.map(({ fields }) => fields?.supersedes),
    ["old"],
  );
});

test("a real room takes the writes, and shows only corrected entries", async () => {
  const phone = await test_phone();
  const { room } = await open_room(undefined, phone);
  const tanks = await room.write(
    ["Sill", "Shelf"].map((name) => ({ type: "put", kind: "tank", fields: { name, water_l: 40 } })),
  );
  let n = 0;
  const id = () => `entry-000${n++}`;
  const fields = { ...move, tank: tanks[0], other_tank: tanks[1] };
  await room.write(life_writes("stock_change", fields, id));
  const [out] = room.all("stock_change").filter((one) => one.change === "move_out");
  await room.write(
    life_writes("stock_change", { ...fields, count: 2 }, id, out, other_half(out, room.all("stock_change"))),
  );
  assert.deepEqual(
    room
      .all("stock_change")
      .map((one) => [one.tank, one.count])
      .sort(),
    [
      [tanks[0], 2],
      [tanks[1], 2],
    ].sort(),
  );
  const [standing] = room.all("stock_change");
  await room.write(life_removal(room, standing));
  assert.deepEqual(room.all("stock_change"), [], "neither half comes back, nor what was corrected");
  await room.write([
    {
      type: "put",
      kind: "shared_tool",
      fields: { tank: tanks[0], other_tank: tanks[1], tool: "net", order: "here", at: AT },
    },
  ]);
  await room.write([
    { type: "put", kind: "own_plant", fields: { name: "Ditch moss" } },
    { type: "put", kind: "own_species", fields: { name: "Grey loach", length_cm: 6, shape: "eel", group_min: 5 } },
  ]);
  room.close();
});

test("an entry is corrected on its tank's page, a move where it began; then the page before is shown again", () => {
  const [out, come] = life_writes("stock_change", move, numbered()).map(({ id, fields }) =>
    view("stock_change", { id, kind: "stock_change", ...fields }),
  );
  const asked = "/tank/tank-aaaa/stock/new?corrects=written-0&then=%2Ftank%2Ftank-bbbb%2Fhistory";
  assert.deepEqual(
    [out, come].map((one) => correct_path(one, [out, come], "/tank/tank-bbbb/history")),
    [asked, asked],
  );
  assert.equal(
    correct_path(come, [come], "/timeline"),
    "/tank/tank-bbbb/stock/new?corrects=written-1&then=%2Ftimeline",
    "its other half is gone",
  );
  const planted = view("planting", { id: "planted-1", kind: "planting", tank: "tank-aaaa", at: AT, species: "moss" });
  assert.equal(
    correct_path(planted, [planted], "/timeline"),
    "/tank/tank-aaaa/plants/new?corrects=planted-1&then=%2Ftimeline",
  );
});

test("the timeline tells a corrected move once a tank, with its earlier words; an undo restores all", async () => {
  const { room } = await open_room(undefined, await test_phone());
  const tanks = await room.write(
    ["Sill", "Shelf", "Shed"].map((name) => ({ type: "put", kind: "tank", fields: { name, water_l: 40 } })),
  );
  let n = 0;
  const id = () => `entry-000${n++}`;
  const fields = { tank: tanks[0], at: AT, change: "move_out", species: "moss", amount: "a pot", other_tank: tanks[1] };
  await room.write(life_writes("planting", fields, id));
  const told = () =>
    timeline(room, { group: "plants" })
      .map(({ tank, records: [one], earlier }) => [
        tank,
        one.change,
        one.amount,
        earlier.map((before) => before.amount),
      ])
      .sort();
  const first = told();
  /**
   * @param {Parameters<typeof life_writes>[1]} said
   * @returns {Promise<import("../../pwa/data/write.js").Change[]>}
   */
  const correct = async (said) => {
    const [out] = room.all("planting").filter((one) => one.tank === tanks[0]);
    const half = other_half(out, room.all("planting"));
    const writes = life_writes(
      "planting",
      said,
      id,
      out,
      half,
      half?.supersedes ? room.earlier("planting", half.id) : [],
    );
    return room
      .write(writes)
      .then(() =>
        writes.map((write) => ({ type: write.type === "put" ? "del" : "restore", kind: write.kind, id: write.id })),
      );
  };
  const undo_other = await correct({ ...fields, other_tank: tanks[2], amount: "two pots" });
  const second = told();
  assert.deepEqual(
    second,
    [
      [tanks[0], "move_out", "two pots", ["a pot"]],
      [tanks[2], "move_in", "two pots", ["a pot"]],
    ].sort(),
  );
  const { other_tank: _, ...removed } = { ...fields, change: "remove" };
  const undo_removed = await correct(removed);
  assert.deepEqual(told(), [[tanks[0], "remove", "a pot", ["two pots", "a pot"]]]);
  await room.write(undo_removed);
  assert.deepEqual(told(), second);
  await room.write(undo_other);
  assert.deepEqual(told(), first);
  room.close();
});

/** @type {Parameters<typeof records_of>[0]} */
const records = {
  tank: [
    { id: "tank-aaaa", name: "Grüne Ecke", place: "Cellar" },
    { id: "tank-bbbb", name: "Sill" },
  ],
  stock_change: [{ id: "s", tank: "tank-aaaa", at: AT, change: "arrival", species: "Corydoras paleatus", count: 6 }],
  planting: [
    { id: "p", tank: "tank-aaaa", at: AT, change: "plant", species: "Vallisneria spiralis" },
    { id: "q", tank: "tank-bbbb", at: AT, change: "plant", species: "Elodea canadensis" },
  ],
  note: [
    { id: "n1", tank: "tank-aaaa", at: AT, text: "The cory eats again" },
    { id: "n2", at: "2026-05-06T07:30:00.000Z", text: "Cory food ordered" },
    { id: "n0", at: "2026-05-01T07:30:00.000Z", text: "About a cory" },
    { id: "n3", tank: "tank-bbbb", at: AT, text: "New leaves\non both", quick: ["new_leaves"] },
  ],
  task: [{ id: "t", title: "Feed the corys", tank: "tank-aaaa" }],
  label: [{ id: "l", name: "Brown bottle", note: "for the corner" }],
};
const room = records_of(records);
/** How this phone says them: what was picked from tiles in its own language. */
/** @type {Parameters<typeof findable>[3]} */
const said = {
  note: ({ text, quick }) => (quick ? text.replace("New leaves", "Neue Blätter") : text),
  task: ({ title }) => title.replace("Feed", "Füttere"),
};
const shelved = (/** @type {string} */ words) => shelf(contracts(), words).flatMap(({ entries }) => entries);
const found = (/** @type {string} */ words) =>
  find(findable(room, contracts(), Date.parse(AT) + 1e9, said), words, shelved).map(({ kind, found }) => [
    kind,
    found.map((one) => one.path),
  ]);

test("search ignores accents and case; groups keep their order, in them titles that begin so, then the newest", () => {
  assert.deepEqual(found("GRUNE"), [
    ["tank", ["/tank/tank-aaaa"]],
    ["animals", ["/tank/tank-aaaa/stock"]],
    ["plants", ["/tank/tank-aaaa/plants"]],
    ["task", ["/task/t"]],
    ["note", ["/tank/tank-aaaa/history"]],
  ]);
  assert.deepEqual(found("cory"), [
    ["animals", ["/tank/tank-aaaa/stock"]],
    ["task", ["/task/t"]],
    ["note", ["/", "/tank/tank-aaaa/history", "/"]],
  ]);
  assert.deepEqual(
    found("paleatus ecke").map(([kind]) => kind),
    ["animals"],
  );
  assert.deepEqual(found("brown corner"), [["label", ["/room/label/l"]]]);
  assert.deepEqual(
    [found("cellar"), found("elodea")],
    [[["tank", ["/tank/tank-aaaa"]]], [["plants", ["/tank/tank-bbbb/plants"]]]],
  );
});

test("search: what was picked from tiles is found by the words of either keeper, and shown in one's own", () => {
  for (const words of ["neue blatter", "new leaves"])
    assert.deepEqual(found(words)[0], ["note", ["/tank/tank-bbbb/history"]]);
  for (const words of ["futtere", "feed the"]) assert.deepEqual(found(words)[0], ["task", ["/task/t"]]);
  const [
    {
      found: [note],
    },
  ] = find(findable(room, contracts(), Date.parse(AT), said), "leaves", shelved);
  assert.equal(note.title, "Neue Blätter\non both");
});

test("search: calculations are found as on the Bench; no words find nothing", () => {
  assert.ok(
    found("CARBON dioxide")
      .flatMap(([, paths]) => paths)
      .includes("/bench/carbon_dioxide"),
  );
  assert.deepEqual([found(" "), found("zzzz")], [[], []]);
});

test("what can go wrong is found by everyday words, and only where there is a tank", () => {
  const incidents = [{ code: "power_cut", name: "Power cut", words: "electricity outage" }];
  const hits = (/** @type {{id: string, name: string}[]} */ tanks) =>
    find(findable(records_of({ tank: tanks }), {}, Date.parse(AT), { ...said, incidents }), "outage", () => []);
  assert.deepEqual(
    hits([{ id: "tank-0001", name: "Reed pool" }]).flatMap(({ found }) => found.map(({ path }) => path)),
    ["/incidents?what=power_cut"],
  );
  assert.deepEqual(hits([]), []);
});
