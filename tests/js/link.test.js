/** A storage that hangs, and a page that hides: no wait lasts for ever, nothing is open while the page is hidden. */
import "fake-indexeddb/auto";
import assert from "node:assert/strict";
import { test } from "node:test";
import { NotSaved, open_database } from "../../pwa/data/database.js";
import { Link, Stuck } from "../../pwa/data/link.js";
import { openDB } from "../../pwa/vendor/idb.js";

// Long enough for a busy machine to answer.
const LIMITS = { open_ms: 250, start_ms: 250, work_ms: 250 };
const NEVER = new Promise(() => {});
const tick = () => new Promise((resolve) => setTimeout(resolve, 5));

let made = 0;

/**
 * A link to a real database of one store, whose connections hang where `hang` says so.
 * @param {(place: "open" | "start" | "done", nth: number) => boolean} [hang] `nth` connection, from 1
 */
function hanging(hang = () => false) {
  const name = `link-${++made}`;
  const page = new EventTarget();
  const seen = { opened: 0, closed: 0, aborted: 0 };
  const open = async () => {
    const nth = ++seen.opened;
    if (hang("open", nth)) return NEVER;
    const db = await openDB(name, 1, { upgrade: (fresh) => void fresh.createObjectStore("kept") });
    return {
      close() {
        seen.closed++;
        db.close();
      },
      /**
       * @param {Parameters<typeof db.transaction>[0]} names @param {IDBTransactionMode} mode
       * @param {IDBTransactionOptions} how
       */
      transaction(names, mode, how) {
        const real = db.transaction(names, mode, how);
        const store = real.objectStore("kept");
        return {
          get error() {
            return real.error;
          },
          done: hang("done", nth) ? NEVER : real.done,
          abort() {
            seen.aborted++;
            real.abort();
          },
          objectStore: () => ({
            getKey: (/** @type {string} */ key) => (hang("start", nth) ? NEVER : store.getKey(key)),
            get: (/** @type {string} */ key) => store.get(key),
            put: (/** @type {string} */ value, /** @type {string} */ key) => store.put(value, key),
          }),
        };
      },
    };
  };
  const link = new Link(open, { page, limits: LIMITS });
  const put = (/** @type {string} */ value) => link.run(["kept"], "readwrite", ({ kept }) => kept.put(value, "it"));
  const get = () => link.run(["kept"], "readonly", ({ kept }) => kept.get("it"));
  return { link, page, seen, put, get };
}

test("a connection on which no transaction starts is closed and opened again, once", async () => {
  const { seen, put, get } = hanging((place, nth) => place === "start" && nth === 1);
  await put("a");
  assert.equal(await get(), "a");
  assert.deepEqual([seen.opened, seen.closed], [2, 1]);
});

test("a storage that never answers is told in words; the next try opens it again", async () => {
  let dead = true;
  const { seen, put, get } = hanging((place) => dead && place === "start");
  await assert.rejects(
    put("a"),
    (error) => error instanceof Stuck && /does not answer.*What you typed stays/.test(error.message),
  );
  assert.equal(seen.opened, 2);
  dead = false;
  await put("a");
  assert.equal(await get(), "a");
});

test("a database that does not open is opened once more, then told", async () => {
  const once = hanging((place, nth) => place === "open" && nth === 1);
  await once.put("a");
  assert.equal(await once.get(), "a");
  const never = hanging((place) => place === "open");
  await assert.rejects(never.put("a"), Stuck);
});

test("a connection that opens too late is closed", async () => {
  let late = () => {};
  const link = new Link(
    () =>
      new Promise((resolve) => {
        late = () => resolve(/** @type {any} */ ({ close: () => (closed = true) }));
      }),
    { page: null, limits: LIMITS },
  );
  let closed = false;
  await assert.rejects(link.connect(), Stuck);
  late();
  await tick();
  assert.ok(closed);
  assert.equal(link.db, null);
});

test("where an older tab must be closed by hand, the opening has no limit", async () => {
  let opened = () => {};
  const link = new Link(() => new Promise((resolve) => (opened = () => resolve(/** @type {any} */ ({})))), {
    page: null,
    limits: LIMITS,
  });
  link.patient = true;
  const waiting = link.connect();
  setTimeout(() => opened(), 2 * LIMITS.open_ms);
  assert.ok(await waiting);
});

test("a write whose end is not seen is reported as perhaps saved, unless it was stopped", async () => {
  const { put } = hanging((place) => place === "done");
  await assert.rejects(put("a"), (error) => error instanceof Stuck);
  const stopped = hanging();
  const working = stopped.link.run(["kept"], "readwrite", async ({ kept }) => {
    for (;;) await kept.put("half", "it");
  });
  await assert.rejects(working, (error) => error instanceof Stuck && !error.begun);
  assert.equal(await stopped.get(), undefined);
});

test("while the page is hidden nothing is open and nothing begins; afterwards everything goes on", async () => {
  const { page, seen, put, get } = hanging();
  await put("a");
  page.dispatchEvent(new Event("pagehide"));
  page.dispatchEvent(new Event("pagehide"));
  assert.deepEqual([seen.opened, seen.closed], [1, 1]);
  let done = false;
  const writing = put("b").then(() => (done = true));
  await tick();
  assert.deepEqual([done, seen.opened], [false, 1]);
  page.dispatchEvent(new Event("pageshow"));
  await writing;
  assert.equal(await get(), "b");
  assert.equal(seen.opened, 2);
});

test("a read that the page's hiding cuts off is read again when it shows; a write is told as not saved", async () => {
  const { link, page, seen, put, get } = hanging();
  await put("a");
  let hidden = false;
  const hide_once = () => {
    if (hidden) return;
    hidden = true;
    page.dispatchEvent(new Event("pagehide"));
    setTimeout(() => page.dispatchEvent(new Event("pageshow")), 5);
  };
  const read = await link.run(["kept"], "readonly", async ({ kept }) => {
    hide_once();
    return kept.get("it");
  });
  assert.equal(read, "a");
  assert.equal(seen.opened, 2);
  hidden = false;
  const writing = link.run(["kept"], "readwrite", async ({ kept }) => {
    const put = kept.put("b", "it");
    hide_once();
    return put;
  });
  await assert.rejects(writing);
  assert.equal(await get(), "a");
});

test("a page that hides while its database opens leaves none open", async () => {
  const { page, seen, put, get } = hanging();
  const writing = put("a");
  await Promise.resolve();
  page.dispatchEvent(new Event("pagehide"));
  while (!seen.closed) await tick();
  assert.equal(seen.opened - seen.closed, 0);
  page.dispatchEvent(new Event("pageshow"));
  await writing;
  assert.equal(await get(), "a");
});

test("the phone's database says it in its own words", async () => {
  const page = new EventTarget();
  const database = await open_database({ name: `link-${++made}` }, { page, limits: LIMITS });
  const hung = database.write(["device"], async (t) => {
    for (;;) await t.device.getAllKeys();
  });
  await assert.rejects(hung, (error) => error instanceof NotSaved && error.reason === "stuck");
  assert.deepEqual(await database.read(["device"], (t) => t.device.getAll()), []);
});
