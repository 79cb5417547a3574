/** Hardness on every scale that a kit may print, as the German degrees that the calculations take. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { HARDNESS, hardness_printed, in_degrees } from "../../pwa/advice/hardness.js";
import { install, record_field } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

test("five degrees on each scale, by the molar masses of IUPAC and the grains of NIST Handbook 44", () => {
  // 5 °dH: 50 mg/L of CaO (56.077 g/mol), 0.8916 mmol/L, 1.7833 of charges, 89.24 mg/L as CaCO3 (100.087), 8.924 °fH,
  // 6.261 °Clark, 5.213 grains a US gallon.
  /** @type {[number, string][]} */
  const shared = [
    [89.24, "mg/L CaCO₃"],
    [8.924, "°fH"],
    [6.261, "°Clark"],
    [5.213, "gpg"],
  ];
  /** @type {Record<string, [number, string][]>} */
  const of = { kh: [[5, "°dKH"], ...shared, [1.7833, "meq/L"]], gh: [[5, "°dGH"], ...shared, [0.8916, "mmol/L"]] };
  for (const [parameter, said] of Object.entries(of)) {
    assert.deepEqual(
      hardness_printed(parameter),
      said.map(([, unit]) => unit),
    );
    for (const [value, unit] of said)
      assert.ok(Math.abs(there(in_degrees({ parameter, value, unit })) - 5) < 0.005, `${parameter} ${unit}`);
    assert.equal(in_degrees({ parameter, value: 5 }), 5, "without a unit it is in degrees");
    assert.equal(in_degrees({ parameter, value: 5, unit: "toString" }), undefined);
  }
});

test("a kit's unit fits its record, and hardness is what kits and readings know by these names", () => {
  for (const parameter of Object.keys(HARDNESS)) {
    for (const kind of /** @type {const} */ (["reading", "test_kit"]))
      assert.ok(record_field(kind, "parameter").choices.some(({ value }) => value === parameter));
    for (const unit of there(hardness_printed(parameter)))
      assert.ok([...unit].length <= record_field("test_kit", "unit").max_length, unit);
  }
  assert.equal(hardness_printed("ph"), undefined);
});
