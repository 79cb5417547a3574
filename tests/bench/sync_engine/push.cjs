/**
 * Stores readings in a database of the engine's own and pushes them to its server:
 * `node push.cjs FOLDER PORT COUNT BATCH`. It prints the seconds of the push; the storing is not counted.
 */
const engine = require("pouchdb-node").plugin(require("pouchdb-adapter-http"));

const [folder, port, count, batch] = process.argv.slice(2);

async function main() {
  const here = new engine(`${folder}/phone`);
  const readings = Array.from({ length: Number(count) }, (_, n) => ({
    _id: `reading-${String(n).padStart(6, "0")}`,
    kind: "reading",
    fields: { tank: "tank-0001", at: "2026-05-04T07:30:00Z", parameter: "nitrate", value: n / 100, unit: "mg/L" },
  }));
  await here.bulkDocs(readings);
  const began = performance.now();
  const done = await here.replicate.to(`http://127.0.0.1:${port}/room`, { batch_size: Number(batch) });
  const seconds = (performance.now() - began) / 1000;
  if (!done.ok || done.docs_written !== readings.length) throw new Error(JSON.stringify(done));
  console.log(seconds);
}

main();
