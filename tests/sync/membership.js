/** Who may share, by the world's own acts: the server's answers are compared with this. */

export class Membership {
  constructor() {
    // The phones by their keys. `keeper` is an id.
    /** @type {Map<string, {id: string, keeper: string, revoked: boolean}>} */ this.devices = new Map();
    // By the keeper's id; null where the membership has ended.
    /** @type {Map<string, string | null>} */ this.roles = new Map();
  }

  copy() {
    const other = new Membership();
    other.devices = new Map([...this.devices].map(([key, device]) => [key, { ...device }]));
    other.roles = new Map(this.roles);
    return other;
  }

  /**
   * The memberships after this backup is restored: as they were then, but what was closed since stays closed, and
   * members keep the roles that they have now.
   * @param {Membership} now
   */
  restored_over(now) {
    const back = this.copy();
    for (const [key, device] of back.devices) device.revoked ||= now.devices.get(key)?.revoked ?? false;
    for (const [keeper, role] of back.roles)
      if (role !== null && now.roles.has(keeper)) back.roles.set(keeper, now.roles.get(keeper) ?? null);
    return back;
  }

  /** @param {{key?: string, device: string, keeper: {id: string}, role: string}} welcome `key`: of a new phone */
  joined({ key, device, keeper, role }) {
    if (key) this.devices.set(key, { id: device, keeper: keeper.id, revoked: false });
    this.roles.set(keeper.id, role);
  }

  /** The status that must answer a push or a pull with this key; null if it is let in. @param {string | null} [key] */
  refusal(key) {
    const device = this.devices.get(key ?? "");
    if (!device || device.revoked) return 401;
    const role = this.roles.get(device.keeper);
    if (role === undefined) return 404;
    return role === null ? 410 : null;
  }

  /** @param {string | null} [key] */
  may_share(key) {
    return this.refusal(key) === null;
  }
}
