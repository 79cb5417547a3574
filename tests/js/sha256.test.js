/** SHA-256 against the examples that NIST publishes, and against Node's own. */
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";
import { sha256, sha256_hex } from "../../pwa/data/sha256.js";
import { seeded } from "./drawn_numbers.js";

// NIST, "Cryptographic Standards and Guidelines: Examples with Intermediate Values": SHA256.pdf, SHA2_Additional.pdf.
const EXAMPLES = [
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
  [
    "abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu",
    "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1",
  ],
  ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
];

test("NIST's examples, at once and through the browser's own", async () => {
  for (const [text, hash] of EXAMPLES) {
    const bytes = new TextEncoder().encode(text);
    assert.equal(sha256_hex(bytes), hash);
    assert.equal(await sha256(bytes.buffer), hash);
  }
});

test("every length up to five blocks, as Node hashes it", () => {
  const chance = seeded(180);
  for (let length = 0; length <= 320; length++) {
    const bytes = Uint8Array.from({ length }, () => Math.floor(chance() * 256));
    assert.equal(sha256_hex(bytes), createHash("sha256").update(bytes).digest("hex"), `${length} bytes`);
  }
});

test("a page without crypto.subtle (plain http) gets the same hash", async () => {
  const { subtle } = crypto;
  Object.defineProperty(crypto, "subtle", { value: undefined, configurable: true });
  try {
    assert.equal(await sha256(new TextEncoder().encode("abc").buffer), EXAMPLES[0][1]);
  } finally {
    Object.defineProperty(crypto, "subtle", { value: subtle, configurable: true });
  }
});
