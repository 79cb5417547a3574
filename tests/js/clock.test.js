/** The hybrid logical clock and the ids. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { following, latest, ms_of, stamp_of } from "../../pwa/data/clock.js";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { wake } from "../../pwa/data/identity.js";
import { uuid7 } from "../../pwa/data/uuid7.js";
import { seeded } from "./drawn_numbers.js";
import { TANK, WELCOME, device_entry, page, row, scripted, share, test_phone } from "./test_phone.js";

const NOW = Date.UTC(2026, 4, 4, 7, 30);

test("a stamp follows the time while time advances, and counts while it does not", () => {
  assert.equal(following(null, NOW, "a"), stamp_of(NOW, 0, "a"));
  assert.equal(following(stamp_of(NOW - 1, 9, "b"), NOW, "a"), stamp_of(NOW, 0, "a"));
  assert.equal(following(stamp_of(NOW, 9, "b"), NOW, "a"), stamp_of(NOW, 10, "a"));
  assert.equal(following(stamp_of(NOW + 5, 9, "b"), NOW, "a"), stamp_of(NOW + 5, 10, "a"));
});

test("a full counter borrows a millisecond", () => {
  assert.equal(following(stamp_of(NOW, 99999, "b"), NOW, "a"), stamp_of(NOW + 1, 0, "a"));
});

test("stamps compare as text in the order they were made, however the clock jumps", () => {
  const chance = seeded(7);
  /** @type {string | null} */ let last = null;
  for (let step = 0; step < 5000; step++) {
    const jump = Math.floor((chance() - 0.5) * 10 ** (chance() * 9));
    /** @type {string} */ const next = following(last, NOW + jump, "device-a");
    assert.ok(last === null || next > last, `${next} after ${last}`);
    last = next;
  }
});

test("before 1970 and at fractions of a millisecond", () => {
  assert.equal(following(null, -5, "a"), "0000000000000-00000-a");
  assert.equal(ms_of(following(null, NOW + 0.7, "a")), NOW);
});

test("the latest of some stamps", () => {
  assert.equal(latest([null, stamp_of(1, 0, "a"), undefined, stamp_of(1, 0, "b")]), stamp_of(1, 0, "b"));
  assert.equal(latest([]), null);
});

const clock_of = async (/** @type {import("./test_phone.js").TestPhone} */ phone) =>
  (await device_entry(phone, "clock")).last;

/**
 * @typedef {{room: import("../../pwa/data/fish_room.js").FishRoom, server: ReturnType<typeof scripted>,
 *   share: () => Promise<unknown>}} Given
 */
for (const [where, prepare] of /** @type {[string, (given: Given) => Promise<void>][]} */ ([
  ["the outbox", async ({ room }) => void (await room.write([{ type: "put", kind: "tank", fields: TANK }]))],
  [
    "the acknowledged ops",
    async ({ room, share }) => {
      await room.write([{ type: "put", kind: "tank", fields: TANK }]);
      await share();
    },
  ],
  [
    "the mirror",
    async ({ server, share }) => {
      server.handlers.pull = (request) =>
        page(request, [row(1, "tank", "tank-0001", TANK, stamp_of(NOW + 50_000, 3, "device-b"))]);
      await share();
    },
  ],
])) {
  test(`on load the clock is rebuilt from ${where}`, async () => {
    const server = scripted();
    const phone = await test_phone({ send: server.send });
    await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
    const { room, cache } = await open_room(WELCOME.room.id, phone);
    await prepare({ room, server, share: () => share(cache) });
    const before = await clock_of(phone);
    assert.ok(before);
    await phone.database.write(["device"], (t) => t.device.delete("clock"));
    phone.clock -= 5 * 86_400_000;
    await wake(phone);
    assert.equal(await clock_of(phone), before);
  });
}

test("on load a clock that is stored is trusted: no row is read", async () => {
  const phone = await test_phone();
  await wake(phone);
  await (await open_room("local", phone)).room.write([{ type: "put", kind: "tank", fields: TANK }]);
  const before = await clock_of(phone);
  const real = phone.database.write;
  const unread = { getAll: () => assert.fail("rows were read") };
  phone.database.write = (names, work) => real(names, (t) => work({ ...t, rows: unread, former: unread }));
  await wake(phone);
  assert.equal(await clock_of(phone), before);
});

test("ids are UUID version 7: the example of RFC 9562, and they sort by time", () => {
  // RFC 9562, appendix A.6: 2022-02-22 14:22:22.000 GMT-5, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
  const bytes = [0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f];
  assert.equal(
    uuid7(0x017f22e279b0, () => Uint8Array.from(bytes)),
    "017f22e2-79b0-7cc3-98c4-dc0c0c07398f",
  );
  const chance = seeded(3);
  const random = (/** @type {number} */ count) => Uint8Array.from({ length: count }, () => chance() * 256);
  assert.ok(uuid7(NOW, random) < uuid7(NOW + 1, random));
});
