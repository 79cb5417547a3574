/**
 * Units at display: which unit a system of measures shows, and the exact way there and back. Factors:
 * tables/units.json.
 */
import { table } from "../calc/tables.js";

/** @typedef {{name?: string, unit?: string, decimals?: number}} Quantity a contract's input or output */

/** The systems a keeper may choose from, `{key, label}` each. @returns {{key: string, label: string}[]} */
export const systems = () => table("units").systems;

/**
 * The unit in which a system shows a field; the contract's own where there is no other.
 * @param {Quantity} spec
 * @param {string} system
 */
export function unit_in(spec, system) {
  const { by_field, shown } = table("units");
  const { name = "", unit: own = "" } = spec;
  const other = Object.hasOwn(by_field, name) ? by_field[name] : Object.hasOwn(shown, own) ? shown[own] : {};
  return other[system] ?? own;
}

/** A unit as it is printed; none for a bare number. @param {string} unit */
export function unit_label(unit) {
  if (unit === "1") return "";
  const { units, in_words } = table("units");
  return units[unit]?.label ?? in_words[unit]?.label ?? unit;
}

/**
 * `value` of one unit in another of the same quantity, to 12 significant digits (the noise of two divisions goes).
 * @param {number} value @param {string} from @param {string} to @throws {RangeError} if they measure different things
 */
export function convert(value, from, to) {
  if (from === to) return value;
  const { units } = table("units");
  const [a, b] = [units[from], units[to]];
  if (!a || !b || a.quantity !== b.quantity) throw new RangeError(`${from} cannot be given in ${to}`);
  const base = ((value + (a.shift ?? 0)) * a.times) / (a.over ?? 1);
  return Number(((base * (b.over ?? 1)) / b.times - (b.shift ?? 0)).toPrecision(12));
}

/**
 * Decimals that keep a figure at least as fine in another unit: one decimal of a litre needs two of a gallon.
 * @param {number} decimals @param {string} from @param {string} to
 */
export function decimals_in(decimals, from, to) {
  if (from === to) return decimals;
  const size = Math.abs(convert(1, from, to) - convert(0, from, to));
  return Math.max(0, decimals + Math.ceil(-Math.log10(size) - 1e-9));
}
