/**
 * The phone's side of test_archive_between.py: `export FILE` writes a room's archive; `import FILE` takes one in and
 * prints what the room then shows.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { TANK, WELCOME, page, reading, row, scripted, share, test_phone } from "../js/test_phone.js";

const [what, file] = process.argv.slice(2);

async function sample() {
  const rows = [
    row(4, "tank", "tank-0001", TANK),
    {
      ...row(5, "note", "note-0001", { text: "gone", at: "2026-05-04T07:00:00.000Z" }),
      deleted: "1777900000000-00000-b",
    },
  ];
  const server = scripted({ pull: (request) => page(request, request.path.includes("since=0") ? rows : []) });
  const phone = await test_phone({ send: server.send });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  await share(cache);
  const [first] = await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001", 0.5) }]);
  await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001", 0.25, { supersedes: first }) }]);
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { water_l: 50, place: "shelf" } }]);
  await room.add_photo(new Blob([Uint8Array.from([0xff, 0xd8, 0xff, 1])], { type: "image/jpeg" }), {
    tank: "tank-0001",
  });
  return room;
}

if (what === "export") {
  writeFileSync(file, new Uint8Array(await (await (await sample()).export()).arrayBuffer()));
} else {
  const { room } = await open_room("local", await test_phone());
  const done = await room.import(new Blob([readFileSync(file)]));
  const kinds = /** @type {const} */ (["tank", "reading", "note", "photo"]);
  const shown = Object.fromEntries(kinds.map((kind) => [kind, room.all(kind).map(({ meta: _meta, ...one }) => one)]));
  const [photo] = room.all("photo");
  const picture = photo && (await room.photo(photo.sha256));
  const bytes = picture && [...new Uint8Array(await picture.arrayBuffer())];
  console.log(JSON.stringify({ done, shown, bytes }));
}
