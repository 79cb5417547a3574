/**
 * Printed arithmetic, evaluated: "(14.3 US gal × 3.785) × 0.5 = 27.1 L". Each printed figure stands for all that round
 * to it, so a value is a range.
 */

/** @typedef {{low: number, high: number}} Range */

const FIGURE = /^(\d{1,3}(?:,\d{3})+|\d+)(\.\d+)?/;
/** Words or a unit behind a figure, up to the next operator. */
const UNIT = /^[ \u00a0]?[^\d()×^=;]*?(?= [×/+−] |\)|\^|$)/;
/** Canada's guideline of copper at a hardness, µg/L. @param {number} hardness_mg_l */
const canada = (hardness_mg_l) => 0.2 * Math.exp(0.8545 * Math.log(hardness_mg_l) - 1.465);
/** No figure is exact. @type {Set<string>} */
const ROUNDED = new Set();
/**
 * What a step says behind a sum about the result: [words, what they do].
 * @type {[RegExp, (value: number) => number][]}
 */
const TURNS = [
  [/, not below nothing$/, (value) => Math.max(0, value)],
  [/, rounded up to the next 5 W$/, (value) => 5 * Math.ceil(value / 5)],
  [/, hardness from 82 to 180$/, (value) => Math.min(canada(180), Math.max(canada(82), value))],
];

/**
 * The equations of a line whose both sides are arithmetic; a side in words is none.
 * @param {string} line @param {Set<string>} exact figures that are not rounded
 * @returns {{said: string, left: Range, right: Range}[]}
 */
export function equations(line, exact) {
  const sides = line.split(" = ");
  let former = "";
  return sides.slice(1).flatMap((after, at) => {
    const tail = sides[at].split(/[:;] /).at(-1) ?? "";
    const goes_on = /^[×/+−] /.test(tail);
    const left = goes_on ? `${former} ${tail}` : tail;
    const [right] = after.split(/[;:,] /);
    former = right;
    const [a, b] = [value_of(left, goes_on ? ROUNDED : exact), value_of(right.replace(/ %$/, ""), ROUNDED)];
    return a && b ? [{ said: `${left} = ${right}`, left: a, right: b }] : [];
  });
}

/** @param {string} text @param {Set<string>} exact @returns {Range | null} null if it is no arithmetic */
function value_of(text, exact) {
  const turn = TURNS.find(([words]) => words.test(text));
  const reader = { rest: turn ? text.replace(turn[0], "") : text, exact };
  const value = sum(reader);
  if (!value || reader.rest) return null;
  return turn ? { low: turn[1](value.low), high: turn[1](value.high) } : value;
}

/** @typedef {{rest: string, exact: Set<string>}} Reader what is still to be read */
/** Takes what a pattern finds at the start. @param {Reader} reader @param {RegExp} pattern */
function take(reader, pattern) {
  const found = reader.rest.match(pattern)?.[0] ?? "";
  reader.rest = reader.rest.slice(found.length);
  return found;
}

/** @typedef {(a: number, b: number) => number} Operator */
/** The range of an operator over two ranges: its extremes are at their ends.
 * @param {Operator} operator @param {Range} a @param {Range} b @returns {Range}
 */
function over(operator, a, b) {
  const ends = [a.low, a.high].flatMap((one) => [operator(one, b.low), operator(one, b.high)]);
  return { low: Math.min(...ends), high: Math.max(...ends) };
}

/** @type {Record<string, Operator>} */
const OPERATORS = {
  "+": (a, b) => a + b,
  "−": (a, b) => a - b,
  "×": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
};

/** They rise with what they are given. @type {Record<string, (value: number) => number>} */
const FUNCTIONS = {
  exp: Math.exp,
  ln: Math.log,
  arctan: (slope) => (Math.atan(slope) * 180) / Math.PI,
};

/** Operands between operators of one rank, from the left.
 * @param {Reader} reader @param {RegExp} operators @param {(reader: Reader) => Range | null} operand
 */
function chain(reader, operators, operand) {
  let value = operand(reader);
  for (let sign = take(reader, operators).trim(); value && sign; sign = take(reader, operators).trim()) {
    const next = operand(reader);
    value = next && over(OPERATORS[sign], value, next);
  }
  return value;
}

/** @param {Reader} reader @returns {Range | null} */
const sum = (reader) => chain(reader, /^ [+−] /, product);
/** @param {Reader} reader @returns {Range | null} */
const product = (reader) => chain(reader, /^ [×/] /, power);
/** @param {Reader} reader @returns {Range | null} */
const power = (reader) => chain(reader, /^\^/, operand);

/** A figure, a bracket or a function of one, with its sign and its unit.
 * @param {Reader} reader @returns {Range | null}
 */
function operand(reader) {
  const negative = take(reader, /^[−-]/);
  const called = take(reader, /^((exp|arctan)(?=\()|ln )/).trim();
  const bracket = take(reader, /^\(/);
  let value = bracket ? sum(reader) : figure(reader);
  if (!value || (bracket && !take(reader, /^\)/))) return null;
  const unit = take(reader, UNIT);
  if (/^[ \u00a0]%/.test(unit)) value = over(OPERATORS["/"], value, { low: 100, high: 100 });
  if (called) value = { low: FUNCTIONS[called](value.low), high: FUNCTIONS[called](value.high) };
  return negative ? { low: -value.high, high: -value.low } : value;
}

/** A printed figure: all that rounds to it, unless it is exact. @param {Reader} reader @returns {Range | null} */
function figure(reader) {
  const text = take(reader, FIGURE);
  if (!text) return null;
  const value = Number(text.replaceAll(",", ""));
  const half = reader.exact.has(text) ? 0 : 0.5 * 10 ** -(text.split(".")[1] ?? "").length;
  return { low: value - half, high: value + half };
}
