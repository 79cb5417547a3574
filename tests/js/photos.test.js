/** Pictures: saved with their record, sent apart, and never holding up anything else. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { Unreachable } from "../../pwa/data/api.js";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { photo_drafts } from "../../pwa/data/photo_drafts.js";
import { share_once } from "../../pwa/data/share_once.js";
import { there } from "./fixtures.js";
import { TANK, WELCOME, reading, scripted, share, stored, test_phone } from "./test_phone.js";

const picture = (last = 1) => new Blob([Uint8Array.from([0xff, 0xd8, 0xff, last])], { type: "image/jpeg" });

/** @param {import("./test_phone.js").Handlers} [handlers] */
async function joined(handlers) {
  const server = scripted(handlers);
  const phone = await test_phone({ send: server.send });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  return { phone, room, server, share: () => share(cache) };
}

const states = async (/** @type {import("./test_phone.js").TestPhone} */ phone) =>
  (await stored(phone, "photos")).map(({ state }) => state);

test("a picture is saved with its record and sent by its hash, once", async () => {
  const { phone, room, server, share } = await joined();
  await room.add_photo(picture(), { tank: "tank-0001", caption: "roots" });
  const [record] = room.all("photo");
  assert.equal(record.bytes, 4);
  await share();
  await room.add_photo(picture(), { tank: "tank-0001", caption: "the same once more" });
  await share();
  const [put, ...more] = server.sent.filter((one) => one.what === "blobs");
  assert.deepEqual(more, []);
  assert.equal(put.path, `/api/v1/rooms/room-1/blobs/${record.sha256}`);
  assert.deepEqual(new Uint8Array(await there(put.bytes).arrayBuffer()), new Uint8Array(await picture().arrayBuffer()));
  assert.deepEqual(await states(phone), ["shared"]);
});

test("while pictures are sent, how many of how many are shared is known, also after an interruption", async () => {
  const { phone, room, server, share } = await joined();
  for (const last of [1, 2, 3]) await room.add_photo(picture(last), {});
  let calls = 0;
  server.handlers.blobs = () => {
    if (++calls === 3) return Promise.reject(new Unreachable("cut off"));
    return { status: 201 };
  };
  /** @type {string[]} */ const told = [];
  const { cache } = await open_room(WELCOME.room.id, phone);
  const { cache: watched, room: there_too } = await open_room(WELCOME.room.id, phone);
  const so_far = () => {
    const { photos_shared, photos_waiting } = there_too.sharing();
    return `${photos_shared} of ${photos_shared + photos_waiting}`;
  };
  await share_once(phone, room.id, () => void told.push(so_far()));
  await watched.refresh([]);
  assert.equal(so_far(), "2 of 3");
  assert.ok(told.length >= 2, "each picture is told");
  cache.close();
  await share();
  await watched.refresh([]);
  assert.equal(so_far(), "3 of 3");
});

test("a refused picture blocks neither readings nor other pictures, and can be tried again", async () => {
  const { phone, room, server, share } = await joined();
  await room.add_photo(picture(1), {});
  await room.add_photo(picture(2), {});
  await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001") }]);
  let calls = 0;
  server.handlers.blobs = () =>
    calls++ ? { status: 201 } : { status: 415, body: { title: "This kind of content is not taken here" } };
  assert.equal((await share()).problem, null);
  assert.deepEqual((await states(phone)).sort(), ["needs you", "shared"]);
  assert.equal(room.sharing().photos_need_you, 1);
  assert.equal(room.sharing().waiting, 0);
  await room.try_again();
  await share();
  assert.deepEqual(await states(phone), ["shared", "shared"]);
});

test("no signal in the middle of a picture leaves it waiting", async () => {
  const { phone, room, share, server } = await joined();
  await room.add_photo(picture(), {});
  server.handlers.blobs = () => Promise.reject(new Unreachable("cut off"));
  assert.equal((await share()).problem, null);
  assert.deepEqual(await states(phone), ["waiting"]);
});

test("after a restore pictures are offered again", async () => {
  const { phone, room, share, server } = await joined();
  await room.add_photo(picture(), {});
  await share();
  server.handlers.pull = (request) =>
    request.path.includes("epoch-1") ? { status: 409, body: { epoch: "epoch-2" } } : server.usual.pull(request);
  server.handlers.push = (request) =>
    request.body.epoch === "epoch-1" ? { status: 409, body: { epoch: "epoch-2" } } : server.usual.push(request);
  await share();
  assert.equal(server.sent.filter((one) => one.what === "blobs").length, 2);
  assert.deepEqual(await states(phone), ["shared"]);
});

test("another keeper's picture is fetched once, checked against its hash, and stored", async () => {
  const { phone, room, server } = await joined();
  const { room: other } = await open_room("local", await test_phone());
  await other.add_photo(picture(9), {});
  const { sha256 } = other.all("photo")[0];
  server.handlers.blobs = () => ({ body: picture(8) });
  assert.equal(await room.photo(sha256), null, "the bytes are not what the hash says");
  for (const none of [
    () => Promise.reject(new Unreachable("no signal")),
    () => ({ status: 404, body: { title: "There is no such photo in this room" } }),
  ]) {
    server.handlers.blobs = none;
    assert.equal(await room.photo(sha256), null, "it cannot be fetched now");
  }
  server.handlers.blobs = () => ({ body: picture(9) });
  assert.equal(there(await room.photo(sha256)).size, 4);
  server.handlers.blobs = () => Promise.reject(new Unreachable("no signal"));
  assert.equal(there(await room.photo(sha256)).size, 4);
  assert.deepEqual(await states(phone), ["shared"]);
});

test("a picture taken before joining moves into the room", async () => {
  const server = scripted();
  const phone = await test_phone({ send: server.send });
  const { room: local } = await open_room("local", phone);
  await local.write([{ type: "put", kind: "tank", fields: TANK }]);
  await local.add_photo(picture(), {});
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  await share_once(phone, WELCOME.room.id, () => {});
  assert.deepEqual(
    (await stored(phone, "photos")).map(({ room, state }) => [room, state]),
    [[WELCOME.room.id, "shared"]],
  );
});

test("a note and its pictures are saved together or not at all", async () => {
  const { phone, room } = await joined();
  const entry = "entry-0001";
  /** @type {import("../../pwa/data/write.js").Change} */
  const note = { type: "put", kind: "note", fields: { tank: "tank-0001", text: "New roots", entry } };
  const [, first, second] = await room.write(
    [note],
    [picture(1), picture(2)].map((one, i) => ({
      picture: one,
      id: `photo-000${i}`,
      fields: { tank: "tank-0001", entry },
    })),
  );
  assert.deepEqual([first, second], ["photo-0000", "photo-0001"]);
  assert.deepEqual(
    room.all("photo").map((one) => [one.entry, one.bytes]),
    [
      [entry, 4],
      [entry, 4],
    ],
  );
  assert.equal(new Set([...room.all("photo"), ...room.all("note")].map(({ at }) => at)).size, 1, "taken as one moment");
  await assert.rejects(room.write([note], [{ picture: picture(3), fields: { caption: "x".repeat(301) } }]));
  assert.equal(room.all("note").length, 1);
  assert.equal((await states(phone)).length, 2);
});

test("a refused picture can be deleted alone, and that can be undone", async () => {
  const { phone, room, server, share } = await joined();
  await room.add_photo(picture(1), {});
  await room.add_photo(picture(2), {});
  server.handlers.blobs = () => ({ status: 415, body: { title: "This kind of content is not taken here" } });
  await share();
  const refused = await room.refused_photos();
  assert.deepEqual(
    refused.map(({ reason }) => reason),
    Array(2).fill("This kind of content is not taken here"),
  );
  const undo = await room.discard_photo(refused[0].sha256);
  assert.deepEqual(
    room.all("photo").map(({ sha256 }) => sha256),
    [refused[1].sha256],
  );
  assert.equal(room.sharing().photos_need_you, 1);
  await undo();
  assert.equal(room.all("photo").length, 2);
  assert.equal(room.sharing().photos_need_you, 2);
  assert.equal((await stored(phone, "photos")).length, 2);
  await share();
  await (await room.discard_photo("0".repeat(64)))();
  assert.equal(room.all("photo").length, 2, "a picture that is not refused is not deleted");
});

test("pictures that are taken but not saved outlive the page, each with its draft", async () => {
  const drafts = photo_drafts("drafts-test");
  const first = await drafts.add("note.tank-0001", { picture: picture(1), width: 8, height: 6 });
  await drafts.add("note.tank-0001", { picture: picture(2), width: 8, height: 6 });
  await drafts.add("note.tank-0002", { picture: picture(3), width: 8, height: 6 });
  await drafts.close();
  const after = photo_drafts("drafts-test");
  assert.deepEqual(
    (await after.list("note.tank-0001")).map(({ id, picture: { size, type }, width }) => [id, size, type, width]),
    [
      [first, 4, "image/jpeg", 8],
      [first + 1, 4, "image/jpeg", 8],
    ],
  );
  const undo = await after.remove(first);
  assert.equal((await after.list("note.tank-0001")).length, 1);
  await undo();
  assert.deepEqual(
    (await after.list("note.tank-0001")).map(({ id }) => id),
    [first, first + 1],
  );
  await after.forget("note.tank-0001");
  assert.deepEqual([(await after.list("note.tank-0001")).length, (await after.list("note.tank-0002")).length], [0, 1]);
  await after.close();
});

test("what a corrected record said before stays known, the latest first", async () => {
  const { room } = await joined();
  const [first] = await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001", 1) }]);
  const [second] = await room.write([
    { type: "put", kind: "reading", fields: { ...reading("tank-0001", 2), supersedes: first } },
  ]);
  const [third] = await room.write([
    { type: "put", kind: "reading", fields: { ...reading("tank-0001", 3), supersedes: second } },
  ]);
  assert.deepEqual(
    room.all("reading").map(({ id }) => id),
    [third],
  );
  assert.deepEqual(
    room.earlier("reading", third).map(({ id, value }) => [id, value]),
    [
      [second, 2],
      [first, 1],
    ],
  );
  assert.deepEqual(room.earlier("reading", first), []);
});
