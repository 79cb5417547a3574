/** Several rooms on one phone: listed, switched between, ended and deleted; readings as a table. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { forget_room, join, make_room, open_room, room_list, use_room } from "../../pwa/data/fish_room.js";
import { refresh_me, rooms as knownRooms } from "../../pwa/data/identity.js";
import { share_others } from "../../pwa/data/other_rooms.js";
import { calendar_since, hand_over, leave } from "../../pwa/data/people.js";
import { unzip } from "../../pwa/data/zip.js";
import { TANK, WELCOME, pushed, reading, scripted, share, stored, test_phone } from "./test_phone.js";

const GONE = {
  status: 410,
  body: { type: "/problems/membership-ended", title: "Your membership of this room has ended" },
};

/** @param {import("./test_phone.js").Handlers} [handlers] */
async function joined(handlers = {}) {
  const server = scripted({
    rooms: () => ({ status: 201, body: { id: "room-2", name: "Attic", role: "owner", epoch: "epoch-2" } }),
    ...handlers,
  });
  const phone = await test_phone({ send: server.send });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  return { phone, server };
}

test("a second room is made, listed beside the first, and opened next time; each keeps its own", async () => {
  const { phone } = await joined();
  const { room: first } = await open_room("room-1", phone);
  await first.write([{ type: "put", kind: "tank", fields: TANK }]);
  assert.equal(await make_room("Attic", phone), "room-2");
  await use_room("room-2", phone);
  const { room: second } = await open_room(undefined, phone);
  assert.deepEqual([second.id, second.all("tank")], ["room-2", []]);
  const listed = await room_list(phone);
  assert.deepEqual(
    listed.map(({ id, name, unshared }) => [id, name, unshared]),
    [
      ["room-2", "Attic", 0],
      ["room-1", "Cellar", 1],
    ],
  );
});

test("what waits in a room that is not on the screen is shared too", async () => {
  const { phone, server } = await joined({
    push: ({ body }) =>
      pushed(
        body.ops.map((op) => ({ op: op.op, status: "ok", stamp: op.stamp, seq: 1 })),
        { epoch: body.epoch },
      ),
  });
  const { room: first } = await open_room("room-1", phone);
  await first.write([{ type: "put", kind: "tank", fields: TANK }]);
  await make_room("Attic", phone);
  const stop = await share_others(phone, "room-2");
  const deadline = Date.now() + 10_000;
  while ((await stored(phone, "outbox")).length && Date.now() < deadline)
    await new Promise((done) => setTimeout(done, 20));
  stop();
  assert.deepEqual(await stored(phone, "outbox"), []);
  assert.deepEqual(
    [...new Set(server.sent.filter(({ what }) => what === "push").map(({ path }) => path))],
    ["/api/v1/rooms/room-1/push"],
  );
});

test("a room that has ended stays listed with what it still holds, opens, and can be deleted", async () => {
  const { phone, server } = await joined();
  const { room, cache } = await open_room("room-1", phone);
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  await assert.rejects(forget_room("room-1", phone), RangeError);
  server.handlers.push = () => GONE;
  server.handlers.pull = () => GONE;
  await use_room("room-1", phone);
  await share(cache);
  const { room: again } = await open_room(undefined, phone);
  assert.deepEqual(
    [again.id, again.about()?.ended, again.sharing().problem, again.sharing().needs_you.length],
    ["room-1", true, "ended", 1],
  );
  assert.deepEqual(
    (await room_list(phone)).map(({ id, ended, needs_you }) => [id, ended, needs_you]),
    [
      ["local", false, 0],
      ["room-1", true, 1],
    ],
  );
  await use_room("local", phone);
  assert.equal((await open_room(undefined, phone)).room.id, "local", "the keeper may go on alone");
  await make_room("Attic", phone);
  assert.deepEqual(
    (await room_list(phone)).map(({ id }) => id),
    ["room-2", "room-1"],
    "`local` is not offered where it is empty and a room is open",
  );
  await forget_room("room-1", phone);
  const { rooms, ...rest } = await stored(phone, "rooms", "rows", "outbox", "kept", "photos");
  assert.deepEqual([rooms.map(({ id }) => id), rest], [["room-2"], { rows: [], outbox: [], kept: [], photos: [] }]);
});

test("of a room that has ended only what was not shared is still seen", async () => {
  const { phone, server } = await joined();
  const { room, cache } = await open_room("room-1", phone);
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  await share(cache);
  assert.equal(room.all("tank").length, 1);
  const [late] = await room.write([{ type: "put", kind: "note", fields: { text: "Still to be shared" } }]);
  server.handlers.push = () => GONE;
  await share(cache);
  for (const seen of [room, (await open_room("room-1", phone)).room]) {
    assert.deepEqual([seen.all("tank"), seen.all("note").map(({ id }) => id)], [[], [late]]);
  }
});

test("a room joined on another phone of the same keeper comes to this one", async () => {
  const { phone, server } = await joined();
  server.handlers.me = () => ({
    body: {
      keeper: WELCOME.keeper,
      device: WELCOME.device,
      rooms: [
        { id: "room-1", name: "Cellar", role: "owner", epoch: "epoch-1" },
        { id: "room-9", name: "Porch", role: "helper", epoch: "epoch-9" },
      ],
    },
  });
  assert.equal(await refresh_me(phone), false, "none that had ended is open again");
  assert.equal(await refresh_me(await test_phone()), false, "nobody to ask for without a key");
  assert.deepEqual(
    (await knownRooms(phone)).map(({ id, role, since }) => [id, role, since]),
    [
      ["room-1", "owner", 0],
      ["room-9", "helper", 0],
    ],
  );
});

test("a phone that was shut out joins again by a new link, under its name, and keeps what it held", async () => {
  let calls = 0;
  /** @type {import("./test_phone.js").Body[]} */ const asked = [];
  const { phone } = await joined({
    join: ({ key, body }) => {
      asked.push(body);
      calls += 1;
      if (key && calls > 1)
        return { status: 401, body: { type: "/problems/key-revoked", title: "This phone's key was revoked" } };
      return { status: 201, body: { ...WELCOME, key: body.device_key } };
    },
  });
  const { room } = await open_room("room-1", phone);
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  await join({ secret: "t", device_name: "phone" }, phone);
  assert.equal(asked.at(-1)?.keeper_name, "Ada");
  assert.equal((await open_room("room-1", phone)).room.sharing().waiting, 1);
});

test("handing over makes the other an owner first; leaving a room that one has left is no error", async () => {
  /** @type {unknown[][]} */ const asked = [];
  const { phone } = await joined();
  const { room } = await open_room("room-1", phone);
  phone.send = async ({ method, path, body }) => {
    const { role } = /** @type {{role?: string}} */ (body ?? {});
    asked.push([method, path.split("/").at(-1), role]);
    const gone = method === "DELETE";
    return { status: gone ? 410 : 200, body: gone ? GONE.body : {}, retry_after_ms: null };
  };
  await hand_over(room, "keeper-b", "keeper-a");
  await leave(room, "keeper-a");
  assert.deepEqual(asked, [
    ["PATCH", "keeper-b", "owner"],
    ["PATCH", "keeper-a", "keeper"],
    ["DELETE", "keeper-a", undefined],
  ]);
});

test("an owner steps back only once the other is owner; a refusal is told, each request has the key", async () => {
  /** @type {unknown[][]} */ const asked = [];
  const { phone } = await joined();
  const { room } = await open_room("room-1", phone);
  phone.send = async ({ path, key }) => {
    asked.push([path.split("/").at(-1), key]);
    return { status: 403, body: { type: "/problems/not-allowed", title: "Not allowed" }, retry_after_ms: null };
  };
  for (const tried of [hand_over(room, "keeper-b", "keeper-a"), leave(room, "keeper-a")])
    await assert.rejects(tried, /Not allowed/);
  assert.deepEqual(asked, [
    ["keeper-b", WELCOME.key],
    ["keeper-a", WELCOME.key],
  ]);
  phone.send = async () => ({ status: 200, body: { made_at: "2026-05-04T07:30:00.000Z" }, retry_after_ms: null });
  assert.equal(await calendar_since(room), "2026-05-04T07:30:00.000Z");
});

test("readings that stand come out as a table, oldest first; the archive holds it too", async () => {
  const { phone } = await joined();
  const { room } = await open_room("room-1", phone);
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: { ...TANK, name: '=Moss, "north"' } }]);
  const at = (/** @type {string} */ minute) => `2026-05-04T07:${minute}:00.000Z`;
  const [wrong] = await room.write([{ type: "put", kind: "reading", fields: reading(tank, 0.5, { at: at("05") }) }]);
  const [right] = await room.write([
    {
      type: "put",
      kind: "reading",
      fields: reading(tank, 0.25, { at: at("05"), supersedes: wrong, basis: "ion", unit: "mg/L", note: "two\nlines" }),
    },
  ]);
  const [first] = await room.write([
    { type: "put", kind: "reading", fields: reading(tank, 7, { parameter: "ph", at: at("01") }) },
  ]);
  const table = [
    "at,tank,parameter,value,unit,basis,by,note,tank_id,test,id",
    `${at("01")},"'=Moss, ""north""",ph,7,,,Ada,,${tank},,${first}`,
    `${at("05")},"'=Moss, ""north""",total_ammonia,0.25,mg/L,ion,Ada,"two\nlines",${tank},,${right}`,
    "",
  ].join("\r\n");
  assert.equal(await room.readings(), table);
  const files = await unzip(new Uint8Array(await (await room.export()).arrayBuffer()));
  assert.equal(new TextDecoder().decode(files.get("readings.csv")), table);
});
