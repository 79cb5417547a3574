/** One seed's walk: which act comes next, and how it quiesces at the end. */
import { deliver, fate, late_double } from "./delivery.js";
import { fire_timer, open_another, try_again, write } from "./keepers.js";
import { change_role, owner, rejoin, rejoin_someone, revoke } from "./membership_acts.js";
import { crash_phone, evict, jump, leap, lose_phone, make_backup, partition, restore } from "./mishaps.js";

/** @typedef {import("./world.js").World} World */

/** @param {World} world */
export async function act(world) {
  const roll = world.chance();
  if (world.network.parked.length && roll < 0.5)
    return deliver(world, world.below(world.network.parked.length), fate(world));
  /** @type {[number, () => void | Promise<void>][]} */
  const acts = [
    [0.28, () => write(world)],
    [0.57, () => fire_timer(world)],
    [0.66, () => crash_phone(world)],
    [0.76, () => open_another(world)],
    [0.79, () => evict(world)],
    [0.82, () => revoke(world)],
    [0.85, () => change_role(world)],
    [0.88, () => make_backup(world)],
    [0.9, () => restore(world)],
    [0.905, () => late_double(world)],
    [0.91, () => lose_phone(world)],
    [0.92, () => try_again(world)],
    [0.96, () => jump(world)],
    [0.98, () => rejoin_someone(world)],
    [1, () => partition(world)],
  ];
  if (world.storm && world.chance() < 0.3)
    return world.pick([
      () => leap(world),
      () => make_backup(world),
      () => restore(world),
      () => fire_timer(world),
      () => write(world),
    ])();
  const which = world.chance();
  return acts.find(([share]) => which < share)?.[1]();
}

/** Longer than a phone waits before it asks which rooms it is in: a stale answer may have told it that it is out. */
const ROUND_MS = 20 * 60_000;

/**
 * Quiesce: heal the network, re-admit about half of the removed members, and share until nothing changes.
 * @param {World} world
 */
export async function heal(world) {
  world.note("heal");
  for (const phone of world.phones) {
    phone.offline = false;
    for (const tab of phone.tabs) tab.die_at = Infinity;
  }
  while (world.network.parked.length) await deliver(world, 0, "lost request");
  for (const phone of world.phones) {
    if (!world.membership.may_share(phone.key) && owner(world) && world.chance() < 0.6) await rejoin(world, phone);
    if (!phone.tabs.size) await world.open_tab(phone);
    for (const tab of phone.tabs) if (tab.stale) void tab.cache?.reread();
  }
  for (let tries = 0, calm = 0; calm < 2; tries++) {
    if (tries > 40) return world.invariants.broken("sharing never comes to rest");
    world.now += ROUND_MS;
    const before = await world.invariants.fingerprint();
    for (const phone of world.phones) {
      for (const tab of [...phone.tabs]) {
        tab.fire();
        await world.settle();
        while (world.network.parked.length) await deliver(world, 0, "well");
      }
    }
    calm = before === (await world.invariants.fingerprint()) ? calm + 1 : 0;
  }
}
