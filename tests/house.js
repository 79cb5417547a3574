/**
 * The state of the house in figures: `node tests/house.js [ROOT]` prints them, tests/js/house.test.js holds some of
 * them.
 * Counts hand-written code only: vendored files, generated types and catalogues of words are left out.
 */
import { readFileSync, readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "acorn";

const HERE = fileURLToPath(new URL("../", import.meta.url));
const FOLDERS = ["pwa", "tests", "e2e"];
const NOT_OURS = [
  /node_modules/,
  /^pwa\/vendor\/.*\.js$/,
  /^pwa\/built\//,
  /^pwa\/types\/(records|calculations)\.d\.ts$/,
  /^pwa\/i18n\/(en|de|fr)\w*\.js$/,
];
export const WIDEST = 120;
export const LONGEST = 60;

/** @param {string} root @returns {string[]} paths of hand-written JavaScript and its types, below `root` */
export const hand_written = (root = HERE) =>
  FOLDERS.flatMap((folder) => readdirSync(root + folder, { recursive: true }).map((file) => `${folder}/${file}`))
    .filter((path) => /\.(js|d\.ts)$/.test(path) && !NOT_OURS.some((pattern) => pattern.test(path)))
    .sort();

/** @param {string} path @param {string} [root] */
const text_of = (path, root = HERE) => readFileSync(root + path, "utf8");

/** Lines over `WIDEST` columns, as "path:line". @param {string} [root] */
export const wide_lines = (root) =>
  hand_written(root).flatMap((path) =>
    text_of(path, root)
      .split("\n")
      .flatMap((line, i) => ([...line].length > WIDEST ? [`${path}:${i + 1} ${[...line].length}`] : [])),
  );

/** Uses of the type `any` in the phone's code. @param {string} [root] @returns {[string, number][]} */
export const anys = (root) =>
  hand_written(root)
    .filter((path) => path.startsWith("pwa/"))
    .map((path) => [path, count_any(text_of(path, root), path.endsWith(".d.ts"))]);

/** @param {string} code @param {boolean} is_types */
function count_any(code, is_types) {
  const comments = is_types
    ? [code.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")]
    : (code.match(/\/\*\*[\s\S]*?\*\//g) ?? []);
  return comments.join("\n").match(/(?<=[{<(|:,[]\s*|=> ?)any\b/g)?.length ?? 0;
}

/** Functions over `LONGEST` lines, longest first. @param {string} [root] */
export const long_functions = (root) =>
  hand_written(root)
    .filter((path) => path.endsWith(".js") && path.startsWith("pwa/"))
    .flatMap((path) => functions_of(text_of(path, root)).map((found) => ({ path, ...found })))
    .filter(({ lines }) => lines > LONGEST)
    .sort((a, b) => b.lines - a.lines);

/** Each function of a module with its name and its number of lines. @param {string} code */
function functions_of(code) {
  /** @type {{name: string, lines: number}[]} */ const found = [];
  /** @param {unknown} node @param {string} name */
  const walk = (node, name) => {
    if (Array.isArray(node)) return node.forEach((one) => walk(one, name));
    if (!node || typeof node !== "object" || !("type" in node)) return;
    const { type, id, key, loc } = /** @type {import("acorn").Node & {id?: {name: string}, key?: {name: string}}} */ (
      node
    );
    const named = id?.name ?? key?.name ?? name;
    if (/Function/.test(type) && loc) found.push({ name: named, lines: loc.end.line - loc.start.line + 1 });
    for (const part of Object.values(node)) walk(part, named);
  };
  walk(parse(code, { ecmaVersion: "latest", sourceType: "module", locations: true }), "");
  return found;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const root = process.argv[2] ? `${process.argv[2]}/` : HERE;
  const found = anys(root);
  const long = long_functions(root);
  const level = (/** @type {string} */ folder) =>
    readdirSync(root + folder).filter((file) => file.endsWith(".js")).length;
  console.log(`any in pwa: ${found.reduce((sum, [, count]) => sum + count, 0)}`);
  console.log(`lines over ${WIDEST} columns: ${wide_lines(root).length}`);
  console.log(`files at one level: advice ${level("pwa/advice")}, ui ${level("pwa/ui")}`);
  console.log(`functions over ${LONGEST} lines: ${long.length}`);
  console.log(`DEVELOPERS.md: ${(statSync(`${root}DEVELOPERS.md`).size / 1000).toFixed(1)} kB`);
  if (process.argv.includes("--all")) {
    for (const { path, name, lines } of long) console.log(`  ${lines} ${path} ${name}`);
    for (const [path, count] of found) if (count) console.log(`  ${count} any ${path}`);
    for (const line of wide_lines(root)) console.log(`  ${line}`);
  }
}
