/** A refusal names at most so many errors, and the same first ones as the server. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { check_fields, contracts, install } from "../../pwa/contracts.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

test("fifty errors end the list", () => {
  const strange = Object.fromEntries(Array.from({ length: 475 }, (_, n) => [`f${n}`, 0]));
  const readings = Array.from({ length: 80 }, () => strange);
  const { errors } = check_fields(contracts().stock_headroom.inputs, { readings });
  assert.equal(errors.length, 50);
});
