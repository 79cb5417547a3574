/**
 * Every small mistake that could be made in one JavaScript file, one at a time, as edited source text.
 * The same operators as python_mutants.py; README.md describes them.
 */
import * as espree from "espree";

const BOUNDARY = { "<": "<=", "<=": "<", ">": ">=", ">=": ">" };
const OPPOSITE = { "<": ">=", "<=": ">", ">": "<=", ">=": "<", "===": "!==", "!==": "===", "==": "!=", "!=": "==" };
const ARITHMETIC = { "+": "-", "-": "+", "*": "/", "/": "*", "%": "*", "**": "*" };
const CALLS = { min: "max", max: "min", ceil: "floor", floor: "ceil", some: "every", every: "some" };
/** Below this a constant is a tolerance for rounding: 5 % of it means nothing, so it is set to 0. */
const TOLERANCE = 1e-6;
const TOLERANCES = new Set(["HAIR", "SLACK", "TOLERANCE"]);

/** All mutants of a source, in the order of the file. @param {string} source */
export function mutants(source) {
  const edits = new Finder(source).edits;
  edits.sort((a, b) => a.start - b.start || a.end - b.end || (a.operator < b.operator ? -1 : 1));
  const made = [];
  const seen = new Set([source]);
  for (const { start, end, operator, text } of edits) {
    const edited = source.slice(0, start) + text + source.slice(end);
    if (seen.has(edited)) continue;
    seen.add(edited);
    const first = source.lastIndexOf("\n", start - 1) + 1;
    const found = source.indexOf("\n", end);
    const last = found < 0 ? source.length : found;
    made.push({
      line: source.slice(0, start).split("\n").length,
      operator,
      before: squeezed(source.slice(first, last)),
      after: squeezed(source.slice(first, start) + text + source.slice(end, last)),
      source: edited,
    });
  }
  return made;
}

const squeezed = (text) => text.split(/\s+/).filter(Boolean).join(" ");

/** What a constant is changed to: 5 % up and down, 1 for 0, 0 for a tolerance, the next for a small whole number. */
export function scaled(value, raw) {
  if (value === 0) return [1];
  if (Math.abs(value) <= TOLERANCE) return [0];
  if (/^[\d_]+$/.test(raw)) return value < 20 ? [value + 1] : [Math.round(value * 1.05), Math.round(value * 0.95)];
  return [Number((value * 1.05).toPrecision(12)), Number((value * 0.95).toPrecision(12))];
}

class Finder {
  constructor(source) {
    this.source = source;
    this.edits = [];
    this.visit(espree.parse(source, { ecmaVersion: "latest", sourceType: "module", range: true }), null);
  }

  of(node) {
    return this.source.slice(...node.range);
  }

  edit(node, operator, text) {
    this.edits.push({ start: node.range[0], end: node.range[1], operator, text });
  }

  between(left, right, here, operator, text) {
    const at = this.source.slice(left.range[1], right.range[0]).indexOf(here);
    if (at < 0) return;
    const start = left.range[1] + at;
    this.edits.push({ start, end: start + here.length, operator, text });
  }

  visit(node, parent) {
    if (!node || this[node.type]?.(node, parent) === false) return;
    for (const key of espree.VisitorKeys[node.type] ?? []) {
      for (const child of [node[key]].flat()) if (child) this.visit(child, node);
    }
  }

  // Conditions

  IfStatement({ test }) {
    this.edit(test, "condition", "true");
    this.edit(test, "condition", "false");
  }

  ConditionalExpression(node) {
    this.edit(node, "condition", `(${this.of(node.consequent)})`);
    this.edit(node, "condition", `(${this.of(node.alternate)})`);
  }

  WhileStatement({ test }) {
    this.edit(test, "condition", "false");
  }

  LogicalExpression(node) {
    if (node.operator === "??") {
      this.edit(node, "condition", `(${this.of(node.left)})`);
      this.edit(node, "condition", `(${this.of(node.right)})`);
    } else this.between(node.left, node.right, node.operator, "boolean", node.operator === "&&" ? "||" : "&&");
  }

  BinaryExpression(node) {
    const { left, right, operator } = node;
    if (operator in OPPOSITE) {
      if (operator in BOUNDARY && !tolerant(left) && !tolerant(right))
        this.between(left, right, operator, "boundary", BOUNDARY[operator]);
      this.between(left, right, operator, "negation", OPPOSITE[operator]);
    } else if (operator in ARITHMETIC && !(operator === "+" && (text(left) || text(right)))) {
      this.between(left, right, operator, "arithmetic", ARITHMETIC[operator]);
    }
  }

  // Arithmetic, constants, clamps

  UnaryExpression(node) {
    if (node.operator === "!") this.edit(node, "boolean", `(${this.of(node.argument)})`);
    if (node.operator === "-") this.edit(node, "arithmetic", `(${this.of(node.argument)})`);
  }

  AssignmentExpression(node) {
    const operator = node.operator.slice(0, -1);
    if (operator in ARITHMETIC) this.between(node.left, node.right, operator, "arithmetic", ARITHMETIC[operator]);
  }

  Literal(node, parent) {
    if (parent.type === "Property" && parent.key === node && !parent.computed) return;
    if (typeof node.value === "boolean") this.edit(node, "constant", String(!node.value));
    if (typeof node.value === "number") {
      for (const value of scaled(node.value, node.raw)) this.edit(node, "constant", String(value));
    }
  }

  CallExpression(node) {
    const { callee, arguments: given } = node;
    if (callee.type !== "MemberExpression" || callee.computed) return;
    const name = callee.property.name;
    const math = callee.object.name === "Math";
    const plain = given.every((argument) => argument.type !== "SpreadElement");
    if (math && (name === "min" || name === "max") && given.length > 1 && plain) {
      for (const dropped of given) {
        const kept = given.filter((argument) => argument !== dropped).map((argument) => this.of(argument));
        this.edit(node, "clamp", kept.length === 1 ? `(${kept[0]})` : `Math.${name}(${kept.join(", ")})`);
      }
    } else if (math && name === "abs") this.edit(node, "clamp", `(${this.of(given[0])})`);
    else if (name in CALLS && (math || name === "some" || name === "every"))
      this.edit(callee.property, "clamp", CALLS[name]);
  }

  // Statements

  ExpressionStatement(node) {
    if (node.directive || node.expression.type === "Literal") return;
    this.edit(node, "statement", "{}");
  }

  ThrowStatement(node) {
    this.edit(node, "statement", "{}");
  }

  ContinueStatement(node) {
    this.edit(node, "statement", "{}");
  }

  BreakStatement(node, parent) {
    if (parent.type !== "SwitchCase") this.edit(node, "statement", "{}");
  }

  // The defaults of arguments stay as they are: the contract fills those in.
  AssignmentPattern() {
    return false;
  }

  ImportDeclaration() {
    return false;
  }
}

const text = (node) => node.type === "TemplateLiteral" || typeof node.value === "string";

/** A bound that is, or is widened by, a tolerance for rounding: no figure lies exactly there. */
function tolerant(side) {
  if (side.type === "Identifier") return TOLERANCES.has(side.name);
  if (side.type !== "BinaryExpression" || (side.operator !== "+" && side.operator !== "-")) return false;
  const { type, name, value } = side.right;
  return type === "Identifier" ? TOLERANCES.has(name) : typeof value === "number" && value <= TOLERANCE && value > 0;
}
