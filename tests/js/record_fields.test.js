/** The form of a record: what it shows, what it hands over, and that what is typed stays as typed. */
import assert from "node:assert/strict";
import { test } from "node:test";
import {
  add_row,
  matters,
  payload_of,
  put,
  raw_of,
  remove_row,
  spec_at,
  views_of,
} from "../../pwa/bench/record_fields.js";
import { contracts, install, records } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const marks = { decimal: ".", group: "," };
const metric = { system: "metric", marks };
const kit = records().test_kit.fields;
const water = records().tank.fields.filter(({ name }) =>
  ["name", "temperature_c", "started_at", "note"].includes(name),
);
/** @typedef {import("../../pwa/types/contract.js").Field[]} Fields */
/** @param {Fields} specs @param {Record<string, unknown>} raw @param {string} key */
const view_of = (specs, raw, key, manner = metric) =>
  there(views_of(specs, raw, manner).find((one) => one.key === key));

test("a field gets the control that its specification asks for", () => {
  const kinds = Object.fromEntries(views_of(water, {}, metric).map(({ key, kind }) => [key, kind]));
  assert.deepEqual(kinds, { name: "text", temperature_c: "number", started_at: "day", note: "words" });
  assert.equal(view_of(kit, {}, "retired").kind, "tick");
  assert.equal(view_of(kit, {}, "timers").kind, "list");
});

test("a figure stays as typed in the unit it was typed in, and converts for the record alone", () => {
  const us = { system: "us", marks };
  const empty = view_of(water, {}, "temperature_c", us);
  assert.equal(empty.unit, "°F");
  const raw = put(water, {}, empty.path, { text: "77", unit: empty.typed_in });
  assert.deepEqual(raw, { temperature_c: { text: "77", unit: empty.typed_in } });
  assert.equal(view_of(water, raw, "temperature_c", us).value, "77");
  assert.equal(view_of(water, raw, "temperature_c").value, "25");
  assert.deepEqual(payload_of(water, raw, marks), { temperature_c: 25 });
});

test("a figure of another unit is shown as a person says it, and the record keeps the whole of it", () => {
  const us = { system: "us", marks };
  const raw = raw_of(water, { name: "Reed pool", temperature_c: 24.37 }, marks);
  assert.equal(view_of(water, raw, "temperature_c", us).value, "75.9");
  assert.equal(payload_of(water, raw, marks).temperature_c, 24.37);
  const inches = raw_of(contracts().volume.inputs, { shape: "cuboid", length_cm: 61.5 }, marks);
  assert.equal(view_of(contracts().volume.inputs, inches, "length_cm", us).value, "24.2");
  assert.equal(payload_of(contracts().volume.inputs, inches, marks).length_cm, 61.5);
});

test("a figure in the field's own unit is a text alone; no figure leaves the field out", () => {
  const raw = put(water, {}, ["temperature_c"], { text: "24,5", unit: "°C" });
  assert.deepEqual(raw, { temperature_c: "24,5" });
  assert.deepEqual(payload_of(water, raw, { decimal: ",", group: "." }), { temperature_c: 24.5 });
  assert.deepEqual(payload_of(water, put(water, raw, ["temperature_c"], { text: "", unit: "°C" }), marks), {});
  assert.deepEqual(payload_of(water, { temperature_c: "warm" }, marks), { temperature_c: "warm" });
});

test("list entries are added, typed and removed, and empty ones are left out", () => {
  let raw = add_row(kit, { parameter: "nitrite" }, ["steps"]);
  raw = add_row(kit, raw, ["steps"]);
  raw = put(kit, raw, ["steps", 1], { text: "0.5", unit: "" });
  assert.deepEqual(raw.steps, ["", "0.5"]);
  assert.deepEqual(payload_of(kit, raw, marks).steps, [0.5]);
  assert.deepEqual(
    there(view_of(kit, raw, "steps").rows).map(([{ key, value }]) => [key, value]),
    [
      ["steps.0", ""],
      ["steps.1", "0.5"],
    ],
  );
  assert.deepEqual(remove_row(kit, raw, ["steps"], 0).steps, ["0.5"]);

  const timed = add_row(kit, {}, ["timers"]);
  assert.deepEqual(timed.timers, [{}]);
  const [field] = there(view_of(kit, timed, "timers").rows)[0];
  assert.deepEqual(field.path.slice(0, 2), ["timers", 0]);
  assert.equal(there(spec_at(kit, field.path)).label, field.label);
  assert.equal(there(spec_at(kit, ["steps", "0"])).label, there(kit.find(({ name }) => name === "steps")).label);
});

test("a choice that is taken back falls to what is usual, and shows what hangs on that", () => {
  const choices = ["a", "b", "c", "d", "e", "f", "g"].map((value) => ({ value, label: value }));
  /** @type {Fields} */
  const specs = [
    { name: "way", label: "Way", type: "choice", choices, default: "b" },
    { name: "why", label: "Why", type: "text", max_length: 40, when: { way: ["b"] } },
  ];
  const taken = put(specs, { why: "so" }, ["way"], "a");
  assert.ok(!matters(specs[1], specs, taken));
  assert.deepEqual(payload_of(specs, taken, marks), { way: "a" });
  assert.equal(taken.why, "so", "what was typed is kept");
  const back = put(specs, taken, ["way"], "");
  assert.deepEqual(
    views_of(specs, back, metric).map(({ key }) => key),
    ["way", "why"],
  );
  assert.deepEqual(payload_of(specs, back, marks), { why: "so" });
});

test("a record goes into the form and comes out the same", () => {
  const held = { parameter: "nitrite", entry: "steps", steps: [0, 0.25], timers: [{ what: "wait", seconds: 300 }] };
  assert.deepEqual(payload_of(kit, raw_of(kit, held, marks), marks), held);
});
