/** The phone's own code as syntax trees: its files, what each imports, which globals it uses. */
import { readFileSync, readdirSync } from "node:fs";
import { posix } from "node:path";
import { parse } from "espree";

const pwa = new URL("../../pwa/", import.meta.url);

/** Every hand-written module of pwa/, by its path there. */
export const modules = () =>
  readdirSync(pwa, { recursive: true })
    .map((path) => String(path))
    .filter((path) => path.endsWith(".js") && !/^(vendor|built)\//.test(path) && path !== "sw.js")
    .sort();

/** A node of a syntax tree; `any`, because each type of node has parts of its own. */
/** @typedef {{type: string, [part: string]: any}} Node */

/** The syntax tree of one file of pwa/. @param {string} path @returns {Node} */
export const tree_of = (path) =>
  parse(readFileSync(new URL(path, pwa), "utf8"), { ecmaVersion: "latest", sourceType: "module", loc: true });

/**
 * Every node of a tree, with its parent and the name under which the parent holds it.
 * @param {Node} node @param {Node | null} [parent] @param {string} [held]
 * @returns {Generator<{node: Node, parent: Node | null, held: string}>}
 */
export function* nodes(node, parent = null, held = "") {
  yield { node, parent, held };
  for (const [name, value] of Object.entries(node))
    for (const child of Array.isArray(value) ? value : [value])
      if (typeof child?.type === "string") yield* nodes(child, node, name);
}

/** The files of pwa/ that one of them imports, at its head or when needed. @param {string} path */
export function imports_of(path) {
  const named = [...nodes(tree_of(path))].flatMap(({ node }) => (node.source?.value ? [node.source.value] : []));
  return named.map((name) => posix.join(posix.dirname(path), name));
}

/** The files of pwa/ that one of them imports at its head: they are fetched with it. @param {string} path */
export function heads_of(path) {
  if (path.startsWith("vendor/")) return [];
  const { body } = /** @type {{body: Node[]} & Node} */ (tree_of(path));
  const named = body.flatMap(({ source }) => (source?.value ? [source.value] : []));
  return named.map((name) => posix.join(posix.dirname(path), name));
}

/** The names that a file uses and does not declare itself. @param {string} path */
export function globals_of(path) {
  const used = new Set();
  const declared = new Set();
  for (const { node, parent, held } of nodes(tree_of(path))) {
    for (const pattern of [node.id, node.param, node.local, ...(node.params ?? [])].filter(Boolean))
      for (const name of bound_by(pattern)) declared.add(name);
    const is_name = held === "key" || held === "imported" || held === "exported";
    const is_member = parent?.type === "MemberExpression" && held === "property";
    if (node.type === "Identifier" && (parent?.computed || !(is_name || is_member))) used.add(node.name);
  }
  return [...used].filter((name) => !declared.has(name));
}

/** The names that a pattern of a declaration gives. @param {Node | null} pattern @returns {string[]} */
function bound_by(pattern) {
  if (pattern?.type === "Identifier") return [pattern.name];
  /** @type {(Node | null | undefined)[]} */
  const parts = pattern?.properties ?? pattern?.elements ?? [pattern?.value, pattern?.left, pattern?.argument];
  return parts.flatMap((part) => (typeof part?.type === "string" ? bound_by(part) : []));
}
