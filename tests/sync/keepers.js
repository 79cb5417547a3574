/** What the keepers do: they write, open a second tab, and let the phone share. */

/** @typedef {import("./world.js").World} World */
/** @typedef {import("../../pwa/data/write.js").Change} Change */

/** @param {World} world */
export async function write(world, phone = world.pick(world.phones)) {
  const tab = world.pick([...phone.tabs]);
  if (!tab?.room) return;
  const changes = edits(world, tab.room);
  if (!changes.length) return;
  world.note("write", phone.name, JSON.stringify(changes));
  world.invariants.before_write(phone, tab.room, changes);
  const writing = tab.room.write(changes).then(
    () => world.invariants.saved(phone, changes.length),
    // A second tab may have changed what this one saw; then nothing is saved, and the person is told.
    (refused) => refused.errors ?? world.invariants.broken(`a write failed: ${refused.stack}`),
  );
  void writing;
  await world.settle();
  await world.invariants.harvest(phone);
}

/** @param {World} world @param {import("../../pwa/data/fish_room.js").FishRoom} room @returns {Change[]} */
function edits(world, room) {
  const value = () => ++world.values;
  const tanks = room.all("tank");
  const readings = room.all("reading");
  const tank = tanks.length ? world.pick(tanks) : null;
  const roll = world.chance() * (world.storm ? 0.45 : 1);
  if (!tank || (tanks.length < 2 && roll < 0.15))
    return [{ type: "put", kind: "tank", fields: { name: `T${value()}`, water_l: value(), place: `P${value()}` } }];
  if (roll < 0.4) {
    /** @type {Record<string, string | number>} */
    const fields = { name: `T${value()}`, water_l: value(), place: `P${value()}`, note: `N${value()}` };
    const names = world.storm ? ["name"] : Object.keys(fields).filter(() => world.chance() < 0.4);
    /** @type {Record<string, string | number | null>} */
    const changed = Object.fromEntries((names.length ? names : ["water_l"]).map((name) => [name, fields[name]]));
    if (world.chance() < 0.1) changed.place = null;
    return [{ type: "put", kind: "tank", id: tank.id, fields: changed }];
  }
  if (roll < 0.75)
    return [0, 1].map(() => ({
      type: "put",
      kind: "reading",
      fields: { tank: tank.id, parameter: "nitrite", value: value() },
    }));
  if (!readings.length) return [];
  const reading = world.pick(readings);
  if (roll < 0.83)
    return [
      {
        type: "put",
        kind: "reading",
        fields: { tank: tank.id, parameter: "nitrite", value: value(), supersedes: reading.id },
      },
    ];
  if (roll < 0.95) return [{ type: world.chance() < 0.6 ? "del" : "restore", kind: "reading", id: reading.id }];
  return [{ type: world.chance() < 0.5 ? "del" : "restore", kind: "tank", id: tank.id }];
}

/** @param {World} world */
export async function open_another(world) {
  const phone = world.pick(world.phones);
  if (phone.tabs.size >= 2) return;
  world.note("open tab", phone.name);
  await world.open_tab(phone, world.chance() < 0.2 ? world.below(30) : Infinity);
}

/** @param {World} world */
export async function fire_timer(world) {
  const tab = world.pick(world.phones.flatMap((phone) => [...phone.tabs]));
  if (tab?.fire()) world.note("timer", tab.owner.name);
}

/** @param {World} world */
export async function try_again(world) {
  const tab = world.pick(world.phones.flatMap((phone) => [...phone.tabs]));
  if (!tab?.room) return;
  world.note("try again", tab.owner.name);
  tab.room.try_again().catch((failed) => world.invariants.broken(`trying again failed: ${failed.stack}`));
}
