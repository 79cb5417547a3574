/** The order of a test's parameters: the same when they are read, shown and looked up. */
import { HARDNESS } from "../hardness.js";

/** What a test asks for, in this order. */
export const TESTED = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature"];
/** What is tested now and then: it stands behind what is tested every day. */
export const SELDOM = Object.keys(HARDNESS);

const ORDER = [...TESTED, ...SELDOM];

/**
 * Readings of one test in its order.
 * @template {{parameter: string}} R
 * @param {readonly R[]} readings
 * @returns {R[]}
 */
export const in_test_order = (readings) =>
  [...readings].sort((a, b) => ORDER.indexOf(a.parameter) - ORDER.indexOf(b.parameter));
