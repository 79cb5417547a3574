/** The network: requests wait here until the world decides their fate; old ones may come again. */

export class Network {
  constructor(core) {
    this.core = core;
    this.parked = [];
    // Copies of what was sent and answered, for late doubles and for stale answers from a cache.
    this.sent = [];
    this.answered = [];
  }

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

  lose(message) {
    if (!message.tab.dead) message.reject(new this.core.Unreachable("lost"));
  }

  answer(message, { status, body }) {
    this.answered.push({ path: message.request.path, status, body, phone: message.tab.owner });
    if (this.answered.length > 20) this.answered.shift();
    if (!message.tab.dead) message.resolve({ status, body: structuredClone(body), retry_after_ms: null });
  }
}
