/** The door to the phone's data: what a screen writes, sees and is told. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { InvalidInput } from "../../pwa/contracts.js";
import { open_room } from "../../pwa/data/fish_room.js";
import { there } from "./fixtures.js";
import { TANK, reading, stored, test_phone } from "./test_phone.js";

/** @param {Parameters<typeof test_phone>[0]} [how] */
async function opened(how) {
  const phone = await test_phone(how);
  return { phone, ...(await open_room("local", phone)) };
}

test("a tank and its readings are shown at once, and still after the app is opened again", async () => {
  const { phone, room } = await opened();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  await room.write([
    { type: "put", kind: "reading", fields: reading(tank) },
    { type: "put", kind: "reading", fields: reading(tank, 0.25, { parameter: "nitrite" }) },
  ]);
  for (const seen of [room, (await open_room("local", phone)).room]) {
    assert.equal(seen.get("tank", tank)?.name, "Moss corner");
    assert.deepEqual(
      seen.all("reading").map((one) => one.value),
      [0.5, 0.25],
    );
    assert.equal(seen.get("tank", tank)?.meta.state, "waiting");
    assert.equal(seen.sharing().waiting, 3);
    assert.equal(seen.sharing().joined, false);
  }
});

test("one refused record refuses the whole write, in the API's words, and nothing is kept of it", async () => {
  const { phone, room } = await opened();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  const before = await stored(phone, "outbox", "device");
  await assert.rejects(
    room.write([
      { type: "put", kind: "reading", fields: reading(tank) },
      { type: "put", kind: "reading", fields: { tank, parameter: "ph", value: "seven", colour: "blue" } },
    ]),
    (error) => {
      assert.ok(error instanceof InvalidInput);
      assert.deepEqual(error.errors[0], {
        field: "value",
        message: "must be a number",
        allowed: "a number from -5 to 100000",
      });
      assert.equal(error.errors[1].field, "colour");
      assert.equal("index" in error && error.index, 1);
      return true;
    },
  );
  assert.deepEqual(await stored(phone, "outbox", "device"), before);
  assert.equal(room.all("reading").length, 0);
});

test("a measure that does not fit is refused by its name; one that no field describes is kept", async () => {
  const { phone, room } = await opened();
  for (const length_cm of ["45", {}, Number.POSITIVE_INFINITY, null]) {
    await assert.rejects(
      room.write([{ type: "put", kind: "tank", fields: { ...TANK, measures: { shape: "cuboid", length_cm } } }]),
      (error) => {
        assert.ok(error instanceof InvalidInput);
        const [{ field, allowed }] = error.errors;
        assert.deepEqual([field, allowed], ["measures.length_cm", "a number from 1 to 1000 cm"]);
        return true;
      },
    );
  }
  assert.equal((await stored(phone, "outbox")).length, 0);
  const measures = { shape: "cuboid", length_cm: 45, corner_radius_mm: 4 };
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: { ...TANK, measures } }]);
  assert.deepEqual(room.get("tank", tank)?.measures, measures);
});

test("an impossible date is refused", async () => {
  const { room } = await opened();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  for (const at of [
    "2026-02-29T07:30:00Z",
    "2026-13-01T07:30:00.000Z",
    "2026-04-31T07:30:00.000Z",
    "2026-05-04T24:00:00.000Z",
    "0001-01-01T00:00:00Z",
  ]) {
    await assert.rejects(
      room.write([{ type: "put", kind: "reading", fields: reading(tank, 0.5, { at }) }]),
      (error) => error instanceof InvalidInput && error.errors[0].field === "at",
      at,
    );
  }
  await room.write([{ type: "put", kind: "reading", fields: reading(tank, 0.5, { at: "2028-02-29T23:59:59Z" }) }]);
  assert.deepEqual(
    room.all("reading").map(({ at }) => at),
    ["2028-02-29T23:59:59Z"],
  );
});

test("a change names only what changes; null empties an optional field, never a required one", async () => {
  const { phone, room } = await opened();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: { ...TANK, place: "shelf" } }]);
  await room.write([{ type: "put", kind: "tank", id: tank, fields: { water_l: 50, place: null } }]);
  const { name, water_l, place } = there(room.get("tank", tank));
  assert.deepEqual({ name, water_l, place }, { name: "Moss corner", water_l: 50, place: undefined });
  const [, change] = await stored(phone, "outbox");
  assert.deepEqual(change.op.fields, { water_l: 50, place: null });
  await assert.rejects(room.write([{ type: "put", kind: "tank", id: tank, fields: { name: null } }]), InvalidInput);
  await assert.rejects(room.write([{ type: "put", kind: "tank", id: tank, fields: {} }]), InvalidInput);
});

test("removing and undoing", async () => {
  const { room } = await opened();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  await room.write([{ type: "del", kind: "tank", id: tank }]);
  assert.equal(room.get("tank", tank), null);
  await room.write([{ type: "put", kind: "tank", id: tank, fields: { name: "Later" } }]);
  assert.equal(room.get("tank", tank), null, "a change never undoes a removal");
  await room.write([{ type: "restore", kind: "tank", id: tank }]);
  assert.equal(room.get("tank", tank)?.name, "Later");
  await assert.rejects(room.write([{ type: "del", kind: "tank", id: "nothing-here" }]), InvalidInput);
  for (const kind of ["boat", "toString"])
    await assert.rejects(
      room.write([{ type: "put", kind, fields: {} }]),
      (error) => error instanceof InvalidInput && error.errors[0].field === "kind",
    );
});

test("an event is never changed; its correction hides it until the correction is removed", async () => {
  const { room } = await opened();
  const [first] = await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001") }]);
  await assert.rejects(room.write([{ type: "put", kind: "reading", id: first, fields: { value: 1 } }]), InvalidInput);
  const [second] = await room.write([
    { type: "put", kind: "reading", fields: reading("tank-0001", 1, { supersedes: first }) },
  ]);
  const [third] = await room.write([
    { type: "put", kind: "reading", fields: reading("tank-0001", 2, { supersedes: second }) },
  ]);
  const values = () => room.all("reading").map((one) => one.value);
  assert.deepEqual(values(), [2]);
  await room.write([{ type: "del", kind: "reading", id: second }]);
  assert.deepEqual(values(), [2], "the correction of a removed correction still stands for the first");
  await room.write([{ type: "del", kind: "reading", id: third }]);
  assert.deepEqual(values(), [0.5]);
});

test("a time that is left out becomes now, by the server's clock as far as it is known", async () => {
  const { phone, room } = await opened();
  await phone.database.write(["device"], (t) => t.device.put({ name: "offset", ms: 3_600_000 }));
  await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001") }]);
  assert.equal(room.all("reading")[0].at, "2026-05-04T08:30:00.000Z");
  assert.equal(room.now(), "2026-05-04T08:30:00.000Z");
});

test("listeners hear every change, and `all` gives the same array until then", async () => {
  const { room } = await opened();
  let heard = 0;
  const stop = room.on_change(() => heard++);
  assert.equal(room.all("tank"), room.all("tank"));
  const before = room.all("tank");
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  assert.equal(heard, 1);
  assert.notEqual(room.all("tank"), before);
  stop();
  const [first] = room.all("tank");
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  assert.equal(heard, 1);
  assert.ok(room.all("tank").includes(first), "the view of an unchanged record is the same object");
});

test("two tabs write at the same time: no stamp twice, and each sees what the other wrote", async () => {
  const one = await test_phone();
  const two = await test_phone({ name: one.name });
  [one.others, two.others] = [[two], [one]];
  const [left, right] = [await open_room("local", one), await open_room("local", two)];
  await Promise.all(
    [left, right, left, right].map(({ room }, index) =>
      room.write([{ type: "put", kind: "tank", fields: { ...TANK, name: `Tank ${index}` } }]),
    ),
  );
  const stamps = (await stored(one, "outbox")).map((entry) => entry.op.stamp);
  assert.equal(new Set(stamps).size, 4);
  for (const { room, cache } of [left, right]) {
    await cache.refresh([]);
    assert.equal(room.all("tank").length, 4);
  }
});

test("a read that fails after the write was saved is not told as a failed write; later reads work again", async () => {
  const { phone, room } = await opened();
  const real = phone.database.read;
  phone.database.read = () => Promise.reject(new Error("storage hiccup"));
  const { warn } = console;
  console.warn = () => {};
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  console.warn = warn;
  phone.database.read = real;
  assert.equal((await stored(phone, "outbox")).length, 1);
  await room.write([{ type: "put", kind: "tank", id: tank, fields: { water_l: 60 } }]);
  assert.equal(room.get("tank", tank)?.water_l, 60);
});

test("many changes at once are read together", async () => {
  const { phone, cache } = await opened();
  const real = phone.database.read;
  let readings = 0;
  phone.database.read = (names, work) => {
    if (/** @type {readonly string[]} */ (names).includes("rows")) readings++;
    return real(names, work);
  };
  await Promise.all([cache.refresh(null), cache.refresh(null), cache.refresh([{ kind: "tank", id: "tank-0001" }])]);
  assert.equal(readings, 1);
});
