/** What becomes of a message on its way: it arrives, gets lost, comes twice, or the server crashes over it. */

/** @typedef {import("./world.js").World} World */
/** @typedef {import("./world.js").SimulatedPhone} SimulatedPhone */
/** @typedef {import("./network.js").Outgoing} Outgoing */
/** @typedef {"well" | "lost request" | "lost answer" | "doubled" | "stale answer" | "server crash"} Fate */

/** @param {World} world @param {number} at the place of the message among the parked @param {Fate} fate */
export async function deliver(world, at, fate) {
  const message = world.network.take(at);
  const { request, tab } = message;
  if (tab.owner.offline && fate !== "well") fate = "lost request";
  if (fate === "stale answer") {
    const stale = world.network.answered.filter(
      (one) => one.phone === tab.owner && one.path.split("?")[0] === request.path.split("?")[0],
    );
    if (stale.length) {
      world.note(fate, tab.owner.name, request.path);
      world.network.answer(message, world.pick(stale));
      return world.settle();
    }
    fate = "well";
  }
  world.note(
    fate,
    tab.owner.name,
    request.method,
    request.path.slice(44),
    JSON.stringify(request.body ?? "").slice(0, 300),
  );
  if (fate === "lost request") world.network.lose(message);
  else {
    const crash = fate === "server crash" ? { at: 1 + world.below(3), when: world.pick(["before", "after"]) } : null;
    const answer = await reach(world, tab.owner, request, crash);
    if (fate === "doubled") await twice(world, tab.owner, request);
    if (answer.died || fate === "lost answer") world.network.lose(message);
    else world.network.answer(message, answer);
  }
  return world.settle();
}

/**
 * Let the request arrive at the server.
 * @param {World} world @param {SimulatedPhone} phone @param {Outgoing} asked
 * @param {{at: number, when: string} | null} [crash]
 */
async function reach(world, phone, asked, crash = null) {
  // Small pages, so that a pull takes several.
  const request = { ...asked, path: asked.path.replace("limit=1000", "limit=4") };
  const answer = await world.server.ask("request", { request, now: world.now, crash });
  if (!answer.died) world.invariants.answered(request, answer, phone.joining);
  if (request.path.endsWith("/join")) phone.joining = Boolean(answer.died);
  if (request.path.endsWith("/join") && answer.status === 201) {
    world.membership.joined({ key: answer.body.key, ...answer.body });
    Object.assign(phone, {
      key: answer.body.key ?? phone.key,
      device: answer.body.device,
      keeper: answer.body.keeper.id,
    });
  }
  if (world.trace)
    console.error("   ->", answer.died ? "died" : answer.status, JSON.stringify(answer.body ?? null).slice(0, 400));
  return answer;
}

/**
 * Send the same request again at once: it must change nothing.
 * @param {World} world @param {SimulatedPhone} phone @param {Outgoing} request
 */
async function twice(world, phone, request) {
  const before = await world.server.ask("dump");
  await reach(world, phone, request);
  world.invariants.same(before, await world.server.ask("dump"), "a request that came twice");
}

/** @param {World} world */
export async function late_double(world) {
  if (!world.network.sent.length) return;
  const { request, phone } = world.pick(world.network.sent);
  if (request.path.endsWith("/join")) return;
  world.note("late double", phone.name, request.path.slice(44));
  await reach(world, phone, request);
}

/** @param {World} world @returns {Fate} */
export function fate(world) {
  const roll = world.chance();
  const lost = world.storm ? 0.28 : 0.16;
  /** @type {[Fate, number][]} */
  const fates = [
    ["lost request", 0.08],
    ["lost answer", lost],
    ["doubled", lost + 0.06],
    ["stale answer", lost + 0.11],
    ["server crash", lost + 0.18],
  ];
  for (const [fate, share] of fates) {
    if (roll < share) return fate;
  }
  return "well";
}
