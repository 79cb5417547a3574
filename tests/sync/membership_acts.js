/** Who belongs to the room: joining on a phone, and what the owner does on the server. */
import { deliver } from "./delivery.js";

/** @typedef {import("./world.js").World} World */
/** @typedef {import("./world.js").SimulatedPhone} SimulatedPhone */

/** @param {World} world @param {import("./network.js").Outgoing} request */
function ask(world, request) {
  return world.server.ask("request", { request, now: world.now });
}

/** The key of a phone of the owner that may share. @param {World} world */
export function owner(world) {
  return [...world.membership.devices].find(
    ([key, device]) => device.keeper === world.phones[0].keeper && world.membership.may_share(key),
  )?.[0];
}

/**
 * @param {World} world @param {{role: string} | {keeper: string | undefined}} how
 * @returns {Promise<{secret?: string}>} no secret where the server refused
 */
export async function invite(world, how) {
  const key = owner(world) ?? world.phones[0].key;
  return (await ask(world, { method: "POST", path: `/api/v1/rooms/${world.room}/invites`, key, body: how })).body;
}

/**
 * Join. If an answer is lost or the page dies, try the same secret again.
 * @param {World} world @param {SimulatedPhone} phone @param {string} secret
 * @param {import("./delivery.js").Fate[]} [fates]
 */
export async function join_now(world, phone, secret, fates = ["well"]) {
  for (let tries = 0; ; tries++) {
    const tab = [...phone.tabs][0] ?? (await world.open_tab(phone));
    /** @type {unknown} */ let ended = "not";
    world.core.join({ secret, keeper_name: phone.name, device_name: phone.name }, tab.surroundings).then(
      () => (ended = "joined"),
      (failed) => (ended = failed),
    );
    await world.settle();
    while (world.network.parked.length) await deliver(world, 0, tries < 3 ? world.pick(fates) : "well");
    if (ended === "joined") break;
    world.hold(tab.dead || ended instanceof world.core.Unreachable, `joining failed: ${told(ended)}`);
  }
  world.reopen(phone);
  await world.open_tab(phone);
}

/** What became of a join, in words. @param {unknown} ended */
const told = (ended) => (ended instanceof Error ? ended.stack : ended);

/** @param {World} world @param {SimulatedPhone} phone */
export async function rejoin(world, phone) {
  const keeper = world.membership.roles.get(phone.keeper ?? "")
    ? { keeper: phone.keeper }
    : { role: phone.name.startsWith("cleo") ? "helper" : "keeper" };
  const { secret } = await invite(world, keeper);
  if (!secret) return;
  world.note("rejoin", phone.name);
  if (!phone.tabs.size) await world.open_tab(phone);
  // A phone that was told that its membership has ended has deleted the room, also that of a restored server.
  if ((await world.invariants.read(phone)).room?.ended) await world.invariants.forgot(phone);
  await join_now(world, phone, secret, ["well", "well", "lost answer", "server crash"]);
}

/** @param {World} world */
export async function revoke(world) {
  const phone = world.pick(world.phones.slice(1));
  const key = owner(world);
  if (!key || !phone.key) return;
  if (world.chance() < 0.5 && phone.keeper && phone.keeper !== world.phones[0].keeper) {
    const { status } = await ask(world, {
      method: "DELETE",
      path: `/api/v1/rooms/${world.room}/people/${phone.keeper}`,
      key,
    });
    world.note("end membership", phone.name, status);
    if (status !== 204) return;
    world.membership.roles.set(phone.keeper, null);
    for (const one of world.phones) if (one.keeper === phone.keeper) one.shown = [];
  } else {
    const { status } = await ask(world, { method: "DELETE", path: `/api/v1/devices/${phone.device}`, key });
    world.note("revoke device", phone.name, status);
    const device = world.membership.devices.get(phone.key);
    if (status === 204 && device) device.revoked = true;
  }
}

/** @param {World} world */
export async function change_role(world) {
  const phone = world.pick(world.phones.slice(2));
  const role = world.pick(["keeper", "helper", "viewer"]);
  const key = owner(world);
  if (!key || !phone.keeper || !world.membership.roles.get(phone.keeper)) return;
  const { status } = await ask(world, {
    method: "PATCH",
    path: `/api/v1/rooms/${world.room}/people/${phone.keeper}`,
    key,
    body: { role },
  });
  world.note("role", phone.name, role, status);
  if (status === 200) world.membership.roles.set(phone.keeper, role);
}

/** @param {World} world */
export async function rejoin_someone(world) {
  const out = world.phones.filter((phone) => !world.membership.may_share(phone.key));
  // Joining needs the network to be idle, so lose first what is on its way.
  while (world.network.parked.length) await deliver(world, 0, "lost request");
  if (out.length && owner(world)) await rejoin(world, world.pick(out));
}
