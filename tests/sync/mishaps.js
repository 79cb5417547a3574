/** What goes wrong besides the network: crashes, evictions, lost phones, clocks, and a server restored from backup. */
import { deliver } from "./delivery.js";
import { write } from "./keepers.js";

/** @typedef {import("./world.js").World} World */

const DAY = 86_400_000;

/** @param {World} world */
export async function make_backup(world) {
  world.note("backup");
  await world.server.ask("backup", { now: world.now });
  world.backup = world.membership.copy();
}

/** @param {World} world */
export async function restore(world) {
  if (!world.backup) return;
  world.note("restore");
  await world.invariants.restored();
  await world.server.ask("restore", { now: world.now });
  world.membership = world.backup.restored_over(world.membership);
}

/** @param {World} world */
export async function evict(world) {
  const phone = world.pick(world.phones);
  const [tab] = phone.tabs;
  if (!tab) return;
  const whole = world.chance() < 0.5;
  world.note("evict", phone.name);
  await tab.real.write(["rows"], async (t) => {
    for (const key of await t.rows.getAllKeys()) if (whole || world.chance() < 0.5) await t.rows.delete(key);
  });
  await world.invariants.forgot(phone);
}

/** A phone is lost with everything on it. Its keeper comes back with a new one. @param {World} world */
export async function lose_phone(world) {
  const at = 1 + world.below(world.phones.length - 1);
  const lost = world.phones[at];
  world.note("lose phone", lost.name);
  for (const tab of [...lost.tabs]) tab.die();
  while (world.network.parked.length) await deliver(world, 0, "lost request");
  await world.settle();
  world.invariants.gone(lost);
  const name = `${lost.name}-again`;
  world.phones[at] = world.make_phone(name, 10 * at + world.counts["lose phone"]);
  world.phones[at].keeper = lost.keeper;
  await world.open_tab(world.phones[at]);
}

/** @param {World} world */
export function crash_phone(world) {
  const phone = world.pick(world.phones);
  const tab = world.pick([...phone.tabs]);
  if (!tab) return;
  world.note("arm crash", phone.name);
  tab.die_at = tab.steps + 1 + world.below(40);
}

/** Set a phone's clock, off by seconds or by days. @param {World} world */
export function jump(world) {
  const phone = world.pick(world.phones);
  phone.skew = world.skew();
  world.note("clock jump", phone.name, phone.skew);
}

/**
 * A phone's clock jumps days ahead, and its keeper writes before the offset to the server is corrected.
 * @param {World} world
 */
export async function leap(world) {
  const phone = world.pick(world.phones);
  phone.skew += world.below(4 * DAY);
  world.note("leap", phone.name, phone.skew);
  await write(world, phone);
}

/** @param {World} world */
export function partition(world) {
  const phone = world.pick(world.phones);
  phone.offline = !phone.offline;
  world.note("partition", phone.name, phone.offline);
}
