/** After a restore: the phone puts aside what it held, compares it after the pull, and gives back what is missing. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { Unreachable } from "../../pwa/data/api.js";
import { read_archive } from "../../pwa/data/archive.js";
import { holds_more } from "../../pwa/data/bring_back.js";
import { moved_in, taken_as } from "../../pwa/data/moved.js";
import { some, there } from "./fixtures.js";
import { TANK, WELCOME, joined_phone, page, pushed, reading, row, scripted, stored } from "./test_phone.js";

/** @typedef {import("../../pwa/types/stores.js").Row} Row */

const ROOM = WELCOME.room.id;
/** @typedef {import("./test_phone.js").Sent} Sent */
const since0 = (/** @type {Sent} */ request) => request.path.includes("since=0");

/**
 * A phone that holds two rows of others; then the server answers from `after`, in a new epoch, and from what it took
 * since.
 * @param {{after?: Row[], role?: string, back?: import("./test_phone.js").Handlers[string]}} [how]
 */
async function restored({ after = [], role = "owner", back } = {}) {
  const before = [
    row(3, "tank", "tank-0001", TANK),
    row(4, "reading", "reading-0001", { ...reading("tank-0001"), at: "2026-05-04T07:00:00.000Z" }),
  ];
  /** @type {import("./test_phone.js").Handlers} */
  const handlers = {
    pull: (request) => page(request, since0(request) ? before : [], { people: { "keeper-b": "Bo" } }),
    join: () => ({ status: 201, body: { ...WELCOME, role } }),
  };
  const server = scripted(handlers);
  const { phone, room, share } = await joined_phone(server);
  await share();
  /** @type {Row[]} */ let took = [];
  const takes = (/** @type {Sent} */ { body }) => {
    for (const { row: its } of body.rows)
      if (
        holds_more(
          took.find(({ id }) => id === its.id),
          its,
        )
      )
        took = [...took.filter(({ id }) => id !== its.id), { ...its, seq: 2000 + took.length }];
    return answered(body);
  };
  const on = (/** @type {string} */ epoch, /** @type {Row[]} */ rows) => {
    took = [];
    return (/** @type {Sent} */ request) =>
      request.path.includes(`epoch=${epoch}`)
        ? page(request, [...(since0(request) ? rows : []), ...took])
        : { status: 409, body: { type: "/problems/epoch-changed", epoch } };
  };
  server.handlers.pull = on("epoch-2", after);
  server.handlers["bring-back"] = back ?? takes;
  return {
    phone,
    room,
    share,
    server,
    on,
    takes,
    before,
    former: () => stored(phone, "former"),
    sent: () => server.sent.filter(({ what }) => what === "bring-back").map(({ body }) => body),
  };
}

const answered = (/** @type {Sent["body"]} */ body, status = "ok", more = {}) => ({
  body: {
    epoch: body.epoch,
    server_time: "2026-05-04T07:30:00.000Z",
    results: body.rows.map(({ ref }) => ({ ref, status, ...more })),
  },
});

test("rows of others that the restored server lacks are given back, and are seen again", async () => {
  const { room, share, before, former, sent } = await restored({});
  assert.equal((await share()).problem, null);
  assert.deepEqual(
    sent()[0]
      .rows.map(({ row: its }) => its)
      .sort((a, b) => a.seq - b.seq),
    before,
  );
  assert.deepEqual(
    [sent()[0].epoch, sent()[0].people],
    ["epoch-2", { "keeper-b": "Bo" }],
    "with the names of those who wrote them",
  );
  assert.equal(sent().length, 1);
  assert.deepEqual(await former(), []);
  assert.deepEqual(
    room.all("tank").map(({ name }) => name),
    [TANK.name],
  );
  assert.equal(room.sharing().not_back, 0);
});

test("how many of the rows put aside are back is known, also after an interruption", async () => {
  const { room, share, server } = await restored({ back: () => Promise.reject(new Unreachable("cut off")) });
  await share();
  assert.deepEqual([room.sharing().not_back, room.sharing().put_aside], [2, 2]);
  server.handlers["bring-back"] = ({ body }) => {
    const { results, ...rest } = answered(body).body;
    return { body: { ...rest, results: results.filter(({ ref }) => ref.includes(" reading ")) } };
  };
  await share();
  assert.deepEqual([room.sharing().not_back, room.sharing().put_aside], [1, 2]);
});

test("rows that the server has unchanged are not sent, only the row with a later field", async () => {
  const { share, sent, before, former } = await restored({
    after: [
      row(1, "tank", "tank-0001", TANK, "1000000000000-00000-device-b"),
      row(2, "reading", "reading-0001", { ...reading("tank-0001"), at: "2026-05-04T07:00:00.000Z" }),
    ],
  });
  await share();
  assert.deepEqual(
    sent().map(({ rows }) => rows.map(({ row: its }) => its)),
    [[before[0]]],
  );
  assert.deepEqual(await former(), []);
});

test("nothing is given back before the pull has reached its end", async () => {
  const { share, server, former, sent } = await restored();
  let asked = 0;
  const page2 = server.handlers.pull;
  server.handlers.pull = async (request) => {
    const answer = await page2(request);
    if (answer.status === 409) return answer;
    if (asked++) throw new Unreachable("lost");
    return page(request, [row(1, "tank", "tank-0009", TANK)], { more: true, next: 1 });
  };
  assert.equal((await share()).problem, "unreachable");
  assert.deepEqual([sent().length, (await former()).length], [0, 2]);
});

test("an answer that is lost, malformed or of another epoch deletes nothing that was put aside", async () => {
  const { share, server, former } = await restored();
  for (const back of /** @type {import("./test_phone.js").Handlers[string][]} */ ([
    () => Promise.reject(new Unreachable("lost")),
    () => ({ body: { ok: true } }),
    ({ body }) => ({ body: { ...answered(body).body, epoch: "epoch-1" } }),
    ({ body }) => ({ body: { ...answered(body).body, results: [{ ref: "another", status: "ok" }] } }),
    ({ body }) => answered(body, "forbidden", { reason: "role" }),
    ({ body }) => answered(body, "perhaps"),
  ])) {
    server.handlers["bring-back"] = back;
    await share();
    assert.equal((await former()).length, 2);
  }
});

test("a viewer's phone puts the rows aside and says so; with another role it gives them back", async () => {
  const { phone, room, share, former, sent } = await restored({ role: "viewer" });
  await share();
  assert.deepEqual([sent().length, room.sharing().not_back], [0, 2]);
  await phone.database.write(["rooms"], async (t) =>
    t.rooms.put({ ...there(await t.rooms.get(ROOM)), role: "helper" }),
  );
  await share();
  assert.deepEqual(
    sent()[0].rows.map(({ row: its }) => its.kind),
    ["reading"],
  );
  assert.deepEqual(
    (await former()).map(({ kind }) => kind),
    ["tank"],
  );
});

test("a row that the server finds invalid is kept, is not sent at every round, and can be tried again", async () => {
  const { room, share, server, takes, former, sent } = await restored({
    back: ({ body }) => answered(body, "invalid", { reason: "insert-only" }),
  });
  await share();
  await share();
  assert.deepEqual([sent().length, room.sharing().not_back], [1, 2]);
  assert.deepEqual(
    (await former()).map(({ refused }) => refused),
    ["insert-only", "insert-only"],
  );
  server.handlers["bring-back"] = takes;
  await room.try_again();
  await share();
  assert.deepEqual(await former(), []);
});

test("a second restore meanwhile: both former rows of a record are kept, and both are given back", async () => {
  const { share, server, on, takes, former, sent } = await restored({
    after: [row(1, "tank", "tank-0001", { ...TANK, name: "Of the second epoch" }, "1000000000000-00000-device-b")],
    back: () => Promise.reject(new Unreachable("lost")),
  });
  await share();
  server.handlers.pull = on("epoch-3", []);
  server.handlers["bring-back"] = takes;
  server.handlers.push = () => pushed([], { epoch: "epoch-3" });
  await share();
  const names = there(sent().at(-1))
    .rows.filter(({ row: its }) => its.id === "tank-0001")
    .map(({ row: its }) => its.fields.name);
  assert.deepEqual(names.sort(), [TANK.name, "Of the second epoch"].sort());
  assert.deepEqual(await former(), []);
});

test("a row that the server took is given back again if the server is restored before it was pulled", async () => {
  const { room, share, server, on, takes, former, sent, before } = await restored();
  server.handlers["bring-back"] = (request) => {
    server.handlers.pull = () => Promise.reject(new Unreachable("lost"));
    return takes(request);
  };
  assert.equal((await share()).problem, "unreachable");
  assert.deepEqual([(await former()).length, room.sharing().not_back], [2, 0], "taken, but not seen at the server yet");
  server.handlers.pull = on("epoch-3", []);
  server.handlers["bring-back"] = takes;
  await share();
  assert.deepEqual(
    sent().map(({ epoch, rows }) => [epoch, rows.length]),
    [
      ["epoch-2", before.length],
      ["epoch-3", before.length],
    ],
  );
  assert.deepEqual([await former(), room.all("tank").length], [[], 1]);
});

test("the rows that are left of a damaged mirror are put aside too", async () => {
  const { phone, share, former } = await restored({ role: "viewer" });
  await phone.database.write(["rows"], (t) => t.rows.delete([ROOM, "tank", "tank-0001"]));
  await share();
  assert.deepEqual(
    (await former()).map(({ id }) => id),
    ["reading-0001"],
  );
});

test("many rows go in several requests of at most 500", async () => {
  const { phone, share, sent, former } = await restored();
  await phone.database.write(["former"], async (t) => {
    for (let n = 0; n < 1201; n++)
      await t.former.put({
        room: ROOM,
        kind: "tank",
        id: `tank-${n + 100000}`,
        epoch: "epoch-0",
        row: row(n, "tank", `tank-${n + 100000}`, TANK),
      });
  });
  await share();
  assert.deepEqual(
    sent().map(({ rows }) => rows.length),
    [500, 500, 203],
  );
  assert.deepEqual(await former(), []);
});

test("the end of the membership deletes what was put aside; until then the archive holds it", async () => {
  const { room, share, server, former, before } = await restored({ role: "viewer" });
  await share();
  const { rows } = await read_archive(new Uint8Array(await (await room.export()).arrayBuffer()));
  assert.deepEqual(rows.map(({ id }) => id).sort(), before.map(({ id }) => id).sort());
  server.handlers.pull = () => ({ status: 410, body: { type: "/problems/membership-ended" } });
  await share();
  assert.deepEqual(await former(), []);
});

// Pure rules.

const AT = (/** @type {number} */ n) => `${n}000000000000-00000-a`;
/** @type {Row} */
const bare = some({ fields: { name: "x" }, stamps: { name: AT(2) }, deleted: null, restored: null });

/** @type {[string, Row | undefined, Row, boolean][]} */
const COMPARED = [
  ["no row", undefined, bare, true],
  ["the same", bare, bare, false],
  ["a later field here", { ...bare, stamps: { name: AT(3) } }, bare, false],
  ["an earlier field here", { ...bare, stamps: { name: AT(1) } }, bare, true],
  ["a field that is missing here", { ...bare, stamps: {} }, bare, true],
  ["a tombstone", bare, { ...bare, deleted: AT(3) }, true],
  ["a lifted tombstone", { ...bare, deleted: AT(3) }, { ...bare, deleted: AT(3), restored: AT(4) }, true],
  ["a place that the server does not know", bare, { ...bare, moved: { [AT(9)]: AT(2) } }, true],
  [
    "a later place than the server knows",
    { ...bare, moved: { [AT(9)]: AT(2) } },
    { ...bare, stamps: { name: AT(3) }, moved: { [AT(9)]: AT(3) } },
    false,
  ],
  [
    "a write as it was written, which the server knows at its place",
    { ...bare, moved: { [AT(9)]: AT(2) } },
    { ...bare, stamps: { name: AT(9) } },
    false,
  ],
];
for (const [what, here, former, more] of COMPARED) {
  test(`whether a former row holds more: ${what}`, () => assert.equal(holds_more(here, former), more));
}

test("an op keeps its written stamp through several moves, and never moves forward", () => {
  /** @type {import("../../pwa/types/stores.js").Op} */ const op = some({ op: "x", stamp: AT(9) });
  const once = taken_as(op, AT(5));
  assert.deepEqual(once, { op: "x", stamp: AT(5), moved: { [AT(9)]: AT(5) } });
  const twice = taken_as(once, AT(3));
  assert.equal(twice.moved?.[AT(9)], AT(3));
  assert.equal(taken_as(op, AT(9)), op);
});

test("an edit tells the moved stamps that its author sees, and no others", () => {
  const its = { ...bare, moved: { [AT(9)]: AT(2), [AT(8)]: AT(1) } };
  assert.deepEqual(moved_in(its), { moved: { [AT(9)]: AT(2) } });
  assert.deepEqual(moved_in(bare), {});
  assert.deepEqual(moved_in(undefined), {});
});

test("an op of this phone carries the moved stamps", async () => {
  const { phone, room, share, server } = await restored();
  const moved = { "9000000000000-00000-device-b": row(1, "tank", "tank-0001", TANK).stamps.name };
  server.handlers.pull = (request) =>
    page(request, since0(request) ? [{ ...row(1, "tank", "tank-0001", TANK), moved }] : [], {});
  await phone.database.write(["rooms", "rows"], async (t) => {
    await t.rows.clear();
    return t.rooms.put({ ...there(await t.rooms.get(ROOM)), since: 0, count: 0 });
  });
  await share();
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { name: "Mine" } }]);
  const [entry] = await stored(phone, "outbox");
  assert.deepEqual(entry.op.moved, moved);
});
