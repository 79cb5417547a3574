/** How new water moves the tank's pH and temperature, and how they settle back. Assumptions: the Python twin. */
import { Refusal } from "./refusal.js";
import { water_after_change } from "./water_after_change.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {{ph?: number, kh_dkh?: number, temperature_c?: number}} NewWater */

/** The water of one tank while changes mix in, as far as its free ammonia needs it. */
export class ChangedWater {
  /** @param {Settings} c @param {Belief} belief @param {NewWater} source */
  constructor(c, belief, source) {
    this.settle_h = c.settle_h;
    const { ph, kh_dkh, temperature_c } = belief;
    this.known = kh_dkh !== undefined && source.ph !== undefined && source.kh_dkh !== undefined;
    this.begun = { ph, kh_dkh: kh_dkh ?? 0, temperature_c };
    this.source = {
      source_ph: source.ph ?? ph,
      source_kh_dkh: source.kh_dkh ?? 0,
      source_temperature_c: source.temperature_c ?? temperature_c,
    };
    this.replaced = 0;
    this.at_h = belief.at_h;
    this.mixed = this.begun;
    this.ph_settled = ph;
  }

  /**
   * Mixes `fraction` of new water in at `at_h`, not before the last change.
   * @param {number} fraction
   * @param {number} at_h
   */
  change(fraction, at_h) {
    if (fraction === 0 || !this.known) return;
    const before = { ...this.at(at_h), kh_dkh: this.mixed.kh_dkh };
    const replaced = 1 - (1 - this.replaced) * (1 - fraction);
    const mix = (/** @type {typeof before} */ water, /** @type {number} */ share) =>
      water_after_change({ ...water, ...this.source, tan_mg_n_l: 0, source_tan_mg_n_l: 0, fraction: share });
    try {
      const mixed = mix(before, fraction);
      // The tank's plants, animals and surface keep the carbon dioxide that it had before the first change.
      this.ph_settled = mix(this.begun, replaced).ph_settled;
      this.mixed = mixed;
      this.replaced = replaced;
      this.at_h = at_h;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
    }
  }

  /** pH and temperature at an hour. @param {number} at_h */
  at(at_h) {
    const left = Math.exp(-(at_h - this.at_h) / this.settle_h);
    const own_c = this.begun.temperature_c;
    return {
      ph: this.ph_settled + (this.mixed.ph - this.ph_settled) * left,
      temperature_c: own_c + (this.mixed.temperature_c - own_c) * left,
    };
  }
}
