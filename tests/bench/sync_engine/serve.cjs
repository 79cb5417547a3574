/** A general sync engine's server with its data in FOLDER: `node serve.cjs FOLDER`. It prints its port. */
const express = require("express");
const engine = require("pouchdb-node");

const folder = process.argv[2];
const app = express();
const options = { mode: "minimumForPouchDB", inMemoryConfig: true, logPath: `${folder}/log.txt` };
app.use("/", require("express-pouchdb")(engine.defaults({ prefix: `${folder}/` }), options));
const server = app.listen(0, "127.0.0.1", () => console.log(server.address().port));
