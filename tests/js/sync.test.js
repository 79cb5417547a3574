/** When the phone shares, and how it talks to the server. */
import assert from "node:assert/strict";
import { createServer } from "node:http";
import { afterEach, test } from "node:test";
import { gunzipSync } from "node:zlib";
import { Refused, Unreachable, ask, fetch_send } from "../../pwa/data/api.js";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { backoff_ms, now, start } from "../../pwa/data/sync.js";
import { TANK, WELCOME, scripted, stored, test_phone } from "./test_phone.js";

test("waits double up to five minutes, with jitter over their second half, never below what the server asked", () => {
  assert.deepEqual(
    [1, 2, 3].map((failures) => backoff_ms(failures, 1)),
    [2000, 4000, 8000],
  );
  assert.equal(backoff_ms(1, 0), 1000);
  assert.equal(backoff_ms(50, 1), 300_000);
  assert.equal(backoff_ms(1, 0.5, 30_000), 30_000);
  assert.equal(backoff_ms(9, 1, 30_000), 300_000);
});

/** @param {import("./test_phone.js").Handlers} [handlers] */
async function started(handlers) {
  const server = scripted(handlers);
  const phone = await test_phone({ send: server.send });
  const timers = new Set();
  phone.later = (ms, work) => {
    const timer = { ms, work };
    timers.add(timer);
    return () => timers.delete(timer);
  };
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  const stop = start(phone, room.id, cache);
  stops.push(stop);
  await now();
  const wait = () => [...timers].map(({ ms }) => ms);
  return { server, phone, room, stop, wait };
}

/** @type {(() => void)[]} */ const stops = [];
afterEach(() => stops.splice(0).forEach((stop) => stop()));
/** @type {import("../../pwa/data/write.js").Change[]} */
const tank = [{ type: "put", kind: "tank", fields: TANK }];

test("it shares on load, soon after a write, and by timer", async () => {
  const { room, server, wait } = await started();
  assert.ok(server.sent.some((one) => one.what === "pull"));
  assert.deepEqual(wait(), [45_000]);
  await room.write(tank);
  assert.deepEqual(wait(), [250]);
  await now();
  assert.equal(room.sharing().waiting, 0);
  assert.ok(room.sharing().lastShared);
});

test("a write during failures does not shorten the wait; success resets it", async () => {
  const { room, phone, server, wait } = await started({ pull: () => Promise.reject(new Unreachable("no signal")) });
  const waits = [wait()[0]];
  for (let tries = 0; tries < 3; tries++) {
    await now();
    waits.push(wait()[0]);
  }
  for (const [at, ms] of waits.entries()) assert.ok(ms >= 1000 * 2 ** at && ms <= 2000 * 2 ** at, `${waits}`);
  await room.write(tank);
  assert.equal(wait()[0], waits.at(-1));
  assert.equal(room.sharing().problem, "unreachable");
  delete server.handlers.pull;
  await now();
  assert.deepEqual(wait(), [45_000]);
  assert.equal(room.sharing().problem, null);
  assert.deepEqual(await stored(phone, "outbox"), []);
});

test("the server's Retry-After is obeyed; what only a person can mend is tried rarely", async () => {
  const { server, wait } = await started({ pull: () => ({ status: 503, retry_after_ms: 90_000 }) });
  assert.equal(wait()[0], 90_000);
  server.handlers.pull = () => ({ status: 401, body: {} });
  await now();
  assert.deepEqual(wait(), [600_000]);
});

test("after stopping nothing is sent and no timer is left", async () => {
  const { stop, server, room, wait } = await started();
  stop();
  const before = server.sent.length;
  await room.write(tank);
  await now();
  assert.equal(server.sent.length, before);
  assert.deepEqual(wait(), []);
});

for (const [when, ms] of /** @type {const} */ ([
  ["an hour later", 3_600_000],
  ["with a clock set back by days", -4 * 86_400_000],
])) {
  test(`a room that had ended and is open again is shared again by itself, ${when}`, async () => {
    const { server, room, phone } = await started();
    await room.write(tank);
    server.handlers.push = server.handlers.pull = () => ({ status: 410, body: {} });
    await now();
    assert.equal(room.sharing().joined, false);
    assert.equal(room.sharing().needs_you.length, 1);
    delete server.handlers.push;
    delete server.handlers.pull;
    phone.clock += ms;
    await now();
    assert.equal(room.sharing().joined, true);
    assert.deepEqual(await stored(phone, "outbox"), []);
  });
}

/**
 * A real HTTP server on loopback, so that fetch, gzip and time limits are the real ones.
 * @param {(response: Response) => void} answer
 */
async function listening(answer) {
  /** @type {{headers: import("node:http").IncomingHttpHeaders, body: Buffer}[]} */ const got = [];
  const server = createServer((request, response) => {
    /** @type {Uint8Array[]} */ const parts = [];
    request.on("data", (part) => parts.push(part));
    request.on("end", () => {
      got.push({ headers: request.headers, body: Buffer.concat(parts) });
      answer(response);
    });
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  stops.push(() => server.closeAllConnections?.() ?? server.close());
  stops.push(() => server.close());
  return { got, base: `http://127.0.0.1:${/** @type {import("node:net").AddressInfo} */ (server.address()).port}` };
}

/** @typedef {import("node:http").ServerResponse} Response */
/** @param {number} status @param {object} body @param {Record<string, string>} [more] */
const json =
  (status, body, more = {}) =>
  (/** @type {Response} */ response) => {
    response.writeHead(status, {
      "Content-Type": status < 400 ? "application/json" : "application/problem+json",
      ...more,
    });
    response.end(JSON.stringify(body));
  };

test("a small body travels as it is, a large one compressed, each with the key in a header, never cached", async () => {
  const { got, base } = await listening(json(200, { fine: true }));
  const ops = Array.from({ length: 60 }, (_, at) => ({ op: `op-${at}`, fields: TANK }));
  for (const body of [{ ops: [] }, { ops }]) {
    assert.deepEqual((await fetch_send({ method: "POST", path: `${base}/push`, key: "secret", body })).body, {
      fine: true,
    });
  }
  assert.equal(got[0].headers.authorization, "Bearer secret");
  assert.equal(got[0].headers["content-encoding"], undefined);
  assert.deepEqual(JSON.parse(String(got[0].body)), { ops: [] });
  assert.equal(got[1].headers["content-encoding"], "gzip");
  assert.deepEqual(JSON.parse(String(gunzipSync(got[1].body))), { ops });
});

for (const [why, answer] of /** @type {[string, (response: Response) => void][]} */ ([
  [
    "a portal's page",
    (response) => response.writeHead(200, { "Content-Type": "text/html" }).end("<html>Sign in</html>"),
  ],
  ["a redirect", (response) => response.writeHead(302, { Location: "http://127.0.0.1:9/" }).end()],
  [
    "an answer cut off in its middle",
    (response) =>
      response
        .writeHead(200, { "Content-Type": "application/json", "Content-Length": 100 })
        .write('{"a"', () => response.destroy()),
  ],
  ["broken JSON", (response) => response.writeHead(200, { "Content-Type": "application/json" }).end('{"a"')],
  ["no answer in time", () => {}],
])) {
  test(`${why} is no answer`, async () => {
    const { base } = await listening(answer);
    await assert.rejects(fetch_send({ method: "GET", path: base, timeout_ms: 300 }), Unreachable);
  });
}

test("refusals carry their problem, failures their status and when to come back", async () => {
  const phone = { send: fetch_send };
  const refused = await listening(
    json(422, { title: "The input is not allowed", detail: "name is needed", errors: [{ field: "name" }] }),
  );
  await assert.rejects(
    ask(phone, { method: "GET", path: refused.base }),
    (error) =>
      error instanceof Refused &&
      error.status === 422 &&
      error.message === "name is needed" &&
      error.errors[0].field === "name",
  );
  const busy = await listening(json(503, { title: "later" }, { "Retry-After": "7" }));
  await assert.rejects(
    ask(phone, { method: "GET", path: busy.base }),
    (error) => error instanceof Unreachable && error.status === 503 && error.retry_after_ms === 7000,
  );
  const proxy = await listening((response) =>
    response.writeHead(502, { "Content-Type": "text/html" }).end("<h1>Bad gateway</h1>"),
  );
  await assert.rejects(
    ask(phone, { method: "GET", path: proxy.base }),
    (error) => error instanceof Unreachable && error.status === 502,
  );
  const empty = await listening((response) => response.writeHead(204).end());
  assert.equal(await ask(phone, { method: "DELETE", path: empty.base }), null);
});
