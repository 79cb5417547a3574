/**
 * Runs the vectors and the Node tests against one edited file of the phone. Each request is a line of JSON on stdin:
 * {list: FILE} answers its mutants, {stages: FILE} the checks that reach it, {check: STAGE, file, source} what fails.
 * Every check loads a fresh module graph in this process, with the edited source in place of the file.
 */
import { readFileSync, readdirSync } from "node:fs";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { isDeepStrictEqual } from "node:util";
import vm from "node:vm";
import { mutants } from "./javascript_mutants.js";

const ROOT = new URL("../../", import.meta.url);
const path_of = (file) => new URL(file, ROOT).href;
const sources = new Map();
const source_of = (url) => sources.get(url) ?? sources.set(url, readFileSync(fileURLToPath(url), "utf8")).get(url);

/** The files that a file of ours imports, as addresses. */
function imports_of(url) {
  const found = source_of(url).matchAll(/(?:from|import)\s*\(?\s*["']([^"']+)["']/g);
  return [...found]
    .map(([, name]) => name)
    .filter((name) => name.startsWith("."))
    .map((name) => new URL(name, url).href);
}

const reached = new Map();
/** A file and all that it imports, however far. */
function graph(url) {
  if (reached.has(url)) return reached.get(url);
  const found = new Set();
  const todo = [url];
  while (todo.length > 0) {
    const here = todo.pop();
    if (found.has(here) || !here.endsWith(".js") || here.includes("/vendor/")) continue;
    found.add(here);
    try {
      todo.push(...imports_of(here));
    } catch {}
  }
  reached.set(url, found);
  return found;
}

/** A module graph of its own; `edited` maps an address to the source that stands in for the file. */
class Graph {
  constructor(edited) {
    this.edited = edited;
    this.modules = new Map();
    this.tests = [];
  }

  async load(url) {
    const module = await this.module(url);
    if (module.status === "unlinked") await module.link((name, from) => this.module(name, from.identifier));
    if (module.status === "linked") await module.evaluate();
    if (module.status === "errored") throw module.error;
    return module.namespace;
  }

  async module(name, from) {
    const ours = name.startsWith(".") || name.startsWith("file:");
    const url = ours ? new URL(name, from).href : name;
    if (!this.modules.has(url)) this.modules.set(url, ours ? this.own(url) : await this.foreign(url));
    return this.modules.get(url);
  }

  own(url) {
    const plain = url.split("?")[0];
    return new vm.SourceTextModule(this.edited.get(plain) ?? source_of(plain), {
      identifier: url,
      initializeImportMeta: (meta) => {
        meta.url = plain;
      },
      importModuleDynamically: async (name) => {
        const module = await this.module(name, url);
        await this.load(module.identifier);
        return module;
      },
    });
  }

  async foreign(name) {
    const real = name === "node:test" ? { test: (...given) => this.tests.push(given) } : await import(name);
    const module = new vm.SyntheticModule(
      Object.keys(real),
      () => {
        for (const key of Object.keys(real)) module.setExport(key, real[key]);
      },
      { identifier: name },
    );
    return module;
  }
}

const shared = () => {
  const folder = (name) =>
    Object.fromEntries(
      readdirSync(new URL(`shared_schema/${name}/`, ROOT))
        .filter((file) => file.endsWith(".json"))
        .map((file) => [
          file.slice(0, -5),
          JSON.parse(readFileSync(new URL(`shared_schema/${name}/${file}`, ROOT), "utf8")),
        ]),
    );
  const messages = JSON.parse(readFileSync(new URL("shared_schema/messages.json", ROOT), "utf8"));
  return {
    bundle: { calc: folder("calc"), tables: folder("tables"), records: folder("records"), messages },
    vectors: folder("vectors"),
  };
};
const { bundle, vectors } = shared();

/**
 * Tests that are no killers: the vectors run here on their own, forecast.test.js is about the worker and its store,
 * house.test.js about the text of the files.
 */
const LEFT_OUT = new Set(["vectors.test.js", "forecast.test.js", "house.test.js"]);
const test_files = readdirSync(new URL("tests/js/", ROOT))
  .filter((name) => name.endsWith(".test.js") && !LEFT_OUT.has(name))
  .map((name) => `tests/js/${name}`)
  .filter((file) => /import \{ test \} from "node:test"/.test(source_of(path_of(file))));

/**
 * The checks that reach a file: its calculations' vectors, then the tests that import it or name a calculation of it.
 * `direct`: whether the check is about this file.
 */
function stages(file) {
  const url = path_of(file);
  const names = Object.keys(bundle.calc).filter((name) => graph(path_of(`pwa/calc/${name}.js`)).has(url));
  const calc = file.startsWith("pwa/calc/");
  const direct = (test) => imports_of(path_of(test)).includes(url);
  const named = new RegExp(`["'](${names.join("|")})["']`);
  const near = (test) =>
    calc
      ? direct(test) || (names.length > 0 && named.test(source_of(path_of(test))))
      : graph(path_of(test)).has(url) && /pwa\/advice\//.test(source_of(path_of(test)));
  const tests = test_files.filter(near).map((name) => ({ name, direct: direct(name) }));
  return [...(calc ? names.map((name) => ({ name: `vectors of ${name}`, direct: true })) : []), ...tests];
}

/** What fails of a check; null when all is well. */
async function check(stage, file, source) {
  const graph = new Graph(source === undefined ? new Map() : new Map([[path_of(file), source]]));
  try {
    if (stage.startsWith("vectors of ")) return await run_vectors(graph, stage.slice(11));
    await graph.load(path_of(stage));
    for (const given of graph.tests) {
      const called = [];
      const context = { after: (late) => called.push(late), diagnostic: () => {}, skip: () => {} };
      try {
        await given.at(-1)(context);
      } catch (failed) {
        return `${stage}: ${given[0]} (${String(failed.message).slice(0, 60)})`;
      } finally {
        for (const late of called) await late();
      }
    }
    return null;
  } catch (broken) {
    return `${broken.name} in ${stage}`;
  }
}

async function run_vectors(graph, name) {
  const { InvalidInput, install, run } = await graph.load(path_of("pwa/contracts.js"));
  install(bundle);
  for (const vector of [...bundle.calc[name].examples, ...vectors[name].cases]) {
    try {
      const got = run(name, vector.input);
      if (vector.errors || !agrees(got, vector.expected, vector.tolerance)) return vector.id;
      if ((vector.absent ?? []).some((path) => holds(got, path))) return vector.id;
    } catch (no) {
      if (!(no instanceof InvalidInput)) return `${no.name} in ${vector.id}`;
      if (!isDeepStrictEqual(no.errors, vector.errors)) return vector.id;
    }
  }
  return null;
}

/** As in tests/js/vectors.test.js. */
function holds(got, path) {
  const steps = path.split(".");
  const last = steps.pop();
  return last in steps.reduce((part, step) => part[step], got);
}

/** As in tests/js/vectors.test.js: expected is a subset of got; numbers within the tolerance, all else equal. */
function agrees(got, expected, tolerance) {
  if (typeof expected === "number") {
    return Math.abs(got - expected) <= (tolerance.absolute ?? 0) + (tolerance.relative ?? 0) * Math.abs(expected);
  }
  if (expected !== null && typeof expected === "object") {
    if (Array.isArray(expected) && got.length !== expected.length) return false;
    return Object.keys(expected).every((key) => agrees(got[key], expected[key], tolerance));
  }
  return got === expected;
}

async function answer({ list, stages: file, check: stage, ...more }) {
  if (list) return mutants(source_of(path_of(list)));
  if (file) return stages(file);
  return { by: await check(stage, more.file, more.source) };
}

// A test may leave a promise behind that fails later; it must not end this process.
process.on("unhandledRejection", () => {});
for await (const line of createInterface({ input: process.stdin })) {
  const told = await answer(JSON.parse(line));
  process.stdout.write(`${JSON.stringify(told)}\n`);
}
