/** Numbers as typed, and the units they are shown in. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { marks_of, read_number, typed_form } from "../../pwa/figures/number_text.js";
import { convert, decimals_in, unit_in } from "../../pwa/figures/units.js";
import { contracts, install } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const english = marks_of("en");
const german = marks_of("de");

test("comma or point, in either language", () => {
  for (const marks of [english, german]) {
    /** @type {[string, number][]} */
    const typed = [
      ["7,5", 7.5],
      ["7.5", 7.5],
      ["0,025", 0.025],
      ["0.025", 0.025],
      [",5", 0.5],
      [".5", 0.5],
      ["7,", 7],
      ["12", 12],
      [" 3 ", 3],
      ["-2", -2],
      ["−2", -2],
      ["+4", 4],
      ["60,25", 60.25],
    ];
    for (const [text, value] of typed) {
      assert.deepEqual(read_number(text, marks), { value }, text);
    }
  }
});

test("grouped thousands are read when only one reading is possible", () => {
  /** @type {[string, number][]} */
  const typed = [
    ["1,234.5", 1234.5],
    ["1.234,5", 1234.5],
    ["1,234,567", 1234567],
    ["1 234,5", 1234.5],
    ["12\u202f345", 12345],
    ["1'234.5", 1234.5],
  ];
  for (const [text, value] of typed) {
    assert.deepEqual(read_number(text, english), { value }, text);
  }
});

test("a text that could be a thousand or one is not guessed", () => {
  assert.deepEqual(read_number("1,000", english), { problem: "ambiguous" });
  assert.deepEqual(read_number("1.000", german), { problem: "ambiguous" });
  assert.deepEqual(read_number("1.000", english), { value: 1 });
  assert.deepEqual(read_number("1,000", german), { value: 1 });
  assert.deepEqual(
    read_number("1,000", { decimal: ".", group: "" }),
    { value: 1 },
    "the phone and the words differ in language",
  );
});

test("a text that is no number is refused", () => {
  for (const text of ["abc", "1e3", "7..5", "7,5,", ".", "-", "1/2", "0x10", "Infinity", "NaN", "١٢"]) {
    assert.deepEqual(read_number(text, english), { problem: "not_number" }, text);
  }
  assert.deepEqual(read_number("  ", english), { empty: true });
});

test("a figure put into a field reads back as itself", () => {
  for (const value of [0, 0.1, 1e-7, 123456.789, 0.30000000000000004, -4, 1e21]) {
    for (const marks of [english, german]) {
      const read = read_number(typed_form(value, marks), { ...marks, group: "" });
      assert.ok("value" in read && Math.abs(read.value - value) <= 1e-11 * Math.abs(value), String(value));
    }
  }
});

test("every unit shown in another system converts there and back", () => {
  const { shown, by_field, units, systems } = shared_bundle().tables.units;
  const keys = systems.map(({ key }) => key);
  /** @type {[string, Record<string, string>][]} */
  const pairs = [
    ...Object.entries(shown),
    ...Object.values(by_field).map((others) => /** @type {[string, Record<string, string>]} */ (["kPa", others])),
  ];
  for (const [own, others] of pairs) {
    for (const [system, other] of Object.entries(others)) {
      assert.ok(keys.includes(system));
      assert.equal(units[own].quantity, units[other].quantity, `${own} and ${other}`);
      for (const value of [0, 1, 25, 1234.5]) {
        assert.ok(
          Math.abs(convert(convert(value, own, other), other, own) - value) < 1e-8,
          `${value} ${own} by ${other}`,
        );
      }
    }
  }
  assert.throws(() => convert(1, "L", "cm"), RangeError);
});

test("a unit that another system shows is spelt the same in every contract", () => {
  const { shown, units } = shared_bundle().tables.units;
  const known = Object.keys(units).map((unit) => unit.toLowerCase());
  const used = new Set(
    Object.values(contracts()).flatMap((spec) => units_in([...there(spec).inputs, ...there(spec).outputs])),
  );
  for (const unit of used) {
    if (known.includes(unit.toLowerCase())) assert.ok(unit in units, `${unit}: the table spells it otherwise`);
  }
  assert.ok(Object.keys(shown).every((unit) => unit in units));
});

/** @typedef {import("../../pwa/types/contract.js").Item} Item */
/** @typedef {import("../../pwa/types/contract.js").OutputItem} OutputItem */
/** @param {(Item | OutputItem)[]} fields @returns {string[]} */
const units_in = (fields) =>
  fields.flatMap((field) => [
    ...("unit" in field && field.unit ? [field.unit] : []),
    ...("fields" in field ? units_in(field.fields) : []),
    ...("item" in field ? units_in([field.item]) : []),
  ]);

test("a unit of its own by the field's name; else by the contract's unit; else its own", () => {
  assert.equal(unit_in({ name: "pressure_kpa", unit: "kPa" }, "us"), "inHg");
  assert.equal(unit_in({ name: "footprint_kpa", unit: "kPa" }, "us"), "lb/ft²");
  assert.equal(unit_in({ name: "x", unit: "mg N/L" }, "us"), "mg N/L");
  assert.equal(unit_in({ name: "x", unit: "L" }, "metric"), "L");
});

test("a figure is never shown coarser than in its own unit", () => {
  assert.equal(decimals_in(1, "L", "US gal"), 2);
  assert.equal(decimals_in(0, "cm", "in"), 1);
  assert.equal(decimals_in(1, "kg", "lb"), 1);
  assert.equal(decimals_in(1, "°C", "°F"), 1);
  assert.equal(decimals_in(2, "kPa", "lb/ft²"), 1);
});
