/** A phone for Node: the real data core on fake-indexeddb, with a clock, randomness and transport the test holds. */
import "fake-indexeddb/auto";
import { install } from "../../pwa/contracts.js";
import { openDatabase } from "../../pwa/data/database.js";
import { sharedBundle } from "./shared_bundle.js";

install(sharedBundle());

let made = 0;

/** Numbers from 0 to 1 from a seed (mulberry32, public domain by T. Ettinger). */
export function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Phones made with the same `name` share a database, as two tabs do. */
export async function testPhone({ name = `test-${++made}`, seed = made, send, database } = {}) {
  const chance = seeded(seed);
  const held = new Set();
  const listeners = new Set();
  const phone = {
    name,
    clock: Date.UTC(2026, 4, 4, 7, 30),
    database: database ?? (await openDatabase({ name })),
    now: () => phone.clock,
    random: (count) => Uint8Array.from({ length: count }, () => Math.floor(chance() * 256)),
    chance,
    send: send ?? (async () => Promise.reject(new Error("no transport"))),
    async alone(lock, work) {
      if (held.has(lock)) return { held: false };
      held.add(lock);
      try {
        return { held: true, result: await work() };
      } finally {
        held.delete(lock);
      }
    },
    tell: (message) => phone.others.forEach((other) => other.heard(message)),
    others: /** @type {any[]} */ ([]),
    heard: (message) => listeners.forEach((listener) => listener(message)),
    hear(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    later: () => () => {},
  };
  return phone;
}

/** Everything in some stores. */
export const stored = (phone, ...names) =>
  phone.database.read(names, async (t) => {
    const all = {};
    for (const name of names) all[name] = await t[name].getAll();
    return names.length === 1 ? all[names[0]] : all;
  });

export const TANK = { name: "Moss corner", water_l: 54.2 };
export const reading = (tank, value = 0.5, more = {}) => ({ tank, parameter: "total_ammonia", value, ...more });
