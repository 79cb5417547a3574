/** The network: requests wait here until the world decides their fate; old ones may come again. */

/** @typedef {import("../../pwa/data/api.js").Outgoing} Outgoing */
/** @typedef {import("../../pwa/data/api.js").Incoming} Incoming */
/** @typedef {Pick<Incoming, "status" | "body">} Answer */
/** @typedef {import("./tab.js").Tab} Tab */
/** @typedef {import("./world.js").SimulatedPhone} SimulatedPhone */
/**
 * A request on its way.
 * @typedef {{
 *   tab: Tab, request: Outgoing, resolve: (answer: Incoming) => void, reject: (failed: Error) => void,
 * }} Message
 */

export class Network {
  /** @param {import("./core.js").Core} core */
  constructor(core) {
    this.core = core;
    /** @type {Message[]} */ this.parked = [];
    // Copies of what was sent and answered, for late doubles and for stale answers from a cache.
    /** @type {{request: Outgoing, phone: SimulatedPhone}[]} */ this.sent = [];
    /** @type {(Answer & {path: string, phone: SimulatedPhone})[]} */ this.answered = [];
  }

  /** @param {Tab} tab @param {Outgoing} request @returns {Promise<Incoming>} */
  park(tab, request) {
    return new Promise((resolve, reject) => this.parked.push({ tab, request, resolve, reject }));
  }

  /** Take one parked request out. @param {number} at */
  take(at) {
    const [message] = this.parked.splice(at, 1);
    this.sent.push({ request: message.request, phone: message.tab.owner });
    if (this.sent.length > 20) this.sent.shift();
    return message;
  }

  /** @param {Message} message */
  lose(message) {
    if (!message.tab.dead) message.reject(new this.core.Unreachable("lost"));
  }

  /** @param {Message} message @param {Answer} answer */
  answer(message, { status, body }) {
    this.answered.push({ path: message.request.path, status, body, phone: message.tab.owner });
    if (this.answered.length > 20) this.answered.shift();
    if (!message.tab.dead) message.resolve({ status, body: structuredClone(body), retry_after_ms: null });
  }
}
