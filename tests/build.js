/**
 * Builds the shell that phones get: `node tests/build.js [ROOT [QUALITY]]` writes ROOT/pwa/built/.
 * esbuild joins the modules of pwa/ into a few files with a hash in their names. `built.json` holds the stamp of the
 * sources: the server serves a build only while its stamp equals that of the sources beside it.
 */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { extname, posix } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { brotliCompressSync, constants } from "node:zlib";
import * as esbuild from "esbuild";

const HERE = fileURLToPath(new URL("../", import.meta.url));
/** The endings of the files that a browser may ask for, as in server/limnary/api/shell.py. */
const ENDINGS = ["css", "html", "ico", "js", "json", "mjs", "png", "svg", "webmanifest", "webp", "woff2"];
const FOR_DEVELOPERS = ["package.json", "tsconfig.json", "eslint.config.js", "eslint.config.mjs"];
const NOT_OF_THE_SHELL = ["built", "node_modules"];
/** The parts of shared_schema/ that the phone reads. */
const SHARED = ["calc", "formats.json", "messages.json", "records", "tables", "words"];
const FIRST_PAGE = "places/round.js";
/** What the words of the first page need is a file of its own: two scripts hold the phone up for less time than one. */
const WORDS = "ui/words/sentence.js";
/** The oldest browsers that run the app; pwa/oldest.js says so to others, and tests/js/oldest.test.js holds it. */
export const OLDEST = ["ios16.0", "chrome105", "firefox115"];
const SETTINGS = /** @type {const} */ ({
  bundle: true,
  format: "esm",
  legalComments: "none",
  minify: true,
  sourcemap: "linked",
  sourcesContent: false,
  target: OLDEST,
  write: false,
});

/** @typedef {Map<string, string>} Files the text of each built file by its name */
/** @typedef {{name: string, language: string, text: string}} Part a part of the shared texts in one language */

/** The shell of the sources below `root`. @param {string} [root] @returns {Promise<Files>} */
export async function build(root = HERE) {
  const pwa = posix.join(root, "pwa/");
  const index = readFileSync(`${pwa}index.html`, "utf8");
  const parts = await shared_parts(root);
  /** @type {Files} */ const files = new Map(parts.map(({ name, text }) => [name, text]));
  const style = await stylesheet(pwa, index, files);
  const { app, first, of_language } = await scripts(pwa, parts, files);
  const languages = [...new Set(parts.map(({ language }) => language))];
  for (const language of languages) {
    const ahead = [...of_language(language), ...names(parts, "first", language)];
    const cover = page(index, language, style, [app, ...first], ahead);
    files.set(`cover.${language}.html`, cover);
    files.set(`index.${language}.html`, without_cover(cover));
  }
  const stamp = stamp_of(root);
  const stored = [
    { url: "/index.html", revision: stamp },
    ...beside(pwa, index).map((path) => ({ url: `/${path}`, revision: hash(readFileSync(pwa + path)) })),
    ...[...files.keys()].filter(is_stored).map((name) => {
      const language = languages.find(
        (one) =>
          of_language(one).includes(name) ||
          of_language(`${one}_later`).includes(name) ||
          names(parts, "", one).includes(name),
      );
      const revision = /-[A-Z0-9]{8}\.\w+$/.test(name) ? null : hash(files.get(name) ?? "");
      return { url: `/built/${name}`, revision, ...(language ? { language } : {}) };
    }),
  ];
  files.set("sw.js", await worker(pwa, stored));
  files.set("built.json", `${JSON.stringify({ stamp, stored: stored.map(({ url }) => url) }, null, 1)}\n`);
  return files;
}

/** The hash of all sources, by path and content; server/limnary/api/built.py computes the same. */
function stamp_of(/** @type {string} */ root) {
  const made = createHash("sha256");
  for (const path of sources(root)) made.update(`${path}\0${hash(readFileSync(root + path))}\n`);
  return made.digest("hex");
}

/** The source files, in the order of their paths. @param {string} root @returns {string[]} */
function sources(root) {
  const shell = below(`${root}pwa/`, "").filter((path) => {
    const name = posix.basename(path);
    const ours = ENDINGS.includes(extname(name).slice(1)) && !name.startsWith(".") && !name.endsWith(".d.ts");
    return ours && !FOR_DEVELOPERS.includes(name);
  });
  const shared = SHARED.flatMap((one) => (one.endsWith(".json") ? [one] : below(`${root}shared_schema/`, `${one}/`)));
  const paths = [...shell.map((path) => `pwa/${path}`), ...shared.map((path) => `shared_schema/${path}`)];
  return paths.filter((path) => path.startsWith("pwa/") || path.endsWith(".json")).sort();
}

/** The paths of all files in a folder and below it. @param {string} root @param {string} folder @returns {string[]} */
const below = (root, folder) =>
  readdirSync(root + folder, { withFileTypes: true }).flatMap((one) =>
    !one.isDirectory()
      ? [folder + one.name]
      : NOT_OF_THE_SHELL.includes(one.name)
        ? []
        : below(root, `${folder}${one.name}/`),
  );

/** @param {string | Uint8Array} content */
const hash = (content) => createHash("sha256").update(content).digest("hex");

/** A file name with the hash of its text, as esbuild names its own. @param {string} stem @param {string} ending */
const hashed = (stem, text = "", ending = "js") => `${stem}-${hash(text).slice(0, 8).toUpperCase()}.${ending}`;

/** What is of use only within reach of the server: it is fetched when it is needed. */
const NOT_STORED = ["jsqr-"];

/** Whether a phone stores this built file. @param {string} name */
const is_stored = (name) =>
  !name.endsWith(".map") && !name.endsWith(".html") && !NOT_STORED.some((start) => name.startsWith(start));

/** The names of the shared parts in a language. @param {Part[]} parts @param {string} part @param {string} language */
const names = (parts, part, language) =>
  parts.filter((one) => one.language === language && one.name.startsWith(`shared-${part}`)).map(({ name }) => name);

/** The shared texts, in two parts and each language. @param {string} root @returns {Promise<Part[]>} */
async function shared_parts(root) {
  const load = (/** @type {string} */ path) => import(pathToFileURL(`${root}pwa/i18n/${path}`).href);
  const [{ in_words }, { first_of, rest_of }] = await Promise.all([load("shared_texts.js"), load("shared_parts.js")]);
  const read = (/** @type {string} */ path) => JSON.parse(readFileSync(`${root}shared_schema/${path}`, "utf8"));
  const folder = (/** @type {string} */ name) =>
    Object.fromEntries(
      below(`${root}shared_schema/`, `${name}/`)
        .filter((path) => path.endsWith(".json"))
        .sort()
        .map((path) => [posix.basename(path, ".json"), read(path)]),
    );
  const english = {
    calc: folder("calc"),
    tables: folder("tables"),
    records: folder("records"),
    messages: read("messages.json"),
    formats: read("formats.json"),
  };
  return Object.entries({ en: {}, ...folder("words") }).flatMap(([language, words]) => {
    const said = in_words(english, words);
    return Object.entries({ first: first_of(said), rest: rest_of(said) }).map(([part, content]) => {
      const text = JSON.stringify(content);
      return { name: hashed(`shared-${part}-${language}`, text, "json"), language, text };
    });
  });
}

/** Join the stylesheets that the page links into one. @param {string} pwa @param {string} index @param {Files} files */
async function stylesheet(pwa, index, files) {
  const links = [...index.matchAll(/<link rel="stylesheet" href="(\/[^"]+)"(?: media="(\w+)")?>/g)];
  const contents = links.map(([, path, media]) => `@import ".${path}"${media ? ` ${media}` : ""};`).join("\n");
  const made = await esbuild.build({
    ...SETTINGS,
    absWorkingDir: pwa,
    stdin: { contents, loader: "css", resolveDir: pwa, sourcefile: "style.css" },
    sourcemap: false,
    outdir: `${pwa}built`,
  });
  const { text } = made.outputFiles[0];
  const name = hashed("style", text, "css");
  files.set(name, text);
  return name;
}

/**
 * The scripts: two files with all that the first page needs, one with what several places need, one for each place, and
 * one for the worker.
 * @param {string} pwa @param {Part[]} parts @param {Files} files
 */
async function scripts(pwa, parts, files) {
  const address = (/** @type {string} */ part) =>
    Object.fromEntries(
      parts.flatMap(({ name, language }) => (name.includes(part) ? [[language, `/built/${name}`]] : [])),
    );
  const given = {
    ...SETTINGS,
    splitting: true,
    metafile: /** @type {const} */ (true),
    absWorkingDir: pwa,
    outdir: `${pwa}built`,
    entryPoints: ["app.js"],
    entryNames: "[name]",
    chunkNames: "[name]-[hash]",
    define: {
      // As text: esbuild would make an object a module of its own, and a file of that.
      SHARED_PARTS: JSON.stringify(JSON.stringify({ first: address("-first-"), rest: address("-rest-") })),
      OUTLOOK_WORKER: '"/built/outlook_worker.js"',
    },
  };
  const { inputs } = (await esbuild.build(given)).metafile;
  const entryPoints = ["app.js", WORDS];
  const plugins = [together(pwa, fetched_later(inputs), shared_by_places(inputs))];
  const made = await esbuild.build({ ...given, entryPoints, plugins });
  // The worker shares no file with the first page, which would otherwise fall into many.
  const worker = { ...given, entryPoints: ["workers/outlook_worker.js"], splitting: false };
  const { outputFiles: of_worker } = await esbuild.build(worker);
  for (const { path, text } of [...made.outputFiles, ...of_worker]) files.set(posix.basename(path), text);
  // No page asks for the words alone.
  for (const ending of ["", ".map"]) files.delete(posix.basename(WORDS) + ending);
  const outputs = new Map(Object.entries(made.metafile.outputs).map(([path, one]) => [posix.basename(path), one]));
  const imported = (/** @type {string} */ name) =>
    (outputs.get(name)?.imports ?? []).flatMap(({ path, kind }) =>
      kind === "import-statement" ? [posix.basename(path)] : [],
    );
  return {
    app: named_by_hash("app.js", files),
    first: [...closure("app.js", imported)].filter((name) => name !== "app.js"),
    /** The catalogue of a language, or its later texts ("de_later"). @param {string} language */
    of_language: (language) => [...files.keys()].filter((name) => name.startsWith(`${language}-`) && is_stored(name)),
  };
}

/** Rename a built script, and its map, by its hash. @param {string} name @param {Files} files @returns {string} */
function named_by_hash(name, files) {
  const text = files.get(name) ?? "";
  const map = files.get(`${name}.map`) ?? "";
  const better = hashed(posix.basename(name, ".js"), text);
  files.delete(name);
  files.delete(`${name}.map`);
  files.set(better, text.replace(`${name}.map`, `${better}.map`));
  files.set(`${better}.map`, map);
  return better;
}

/** All that `name` leads to, itself included. @param {string} name @param {(name: string) => string[]} of */
function closure(name, of, found = new Set()) {
  if (found.has(name)) return found;
  found.add(name);
  for (const other of of(name)) closure(other, of, found);
  return found;
}

/** The modules that several places need and the first page does not. @param {esbuild.Metafile["inputs"]} inputs */
function shared_by_places(inputs) {
  const imported = (/** @type {string} */ path) =>
    inputs[path].imports.flatMap((one) => (one.kind === "import-statement" ? [one.path] : []));
  const first = closure(FIRST_PAGE, imported, closure("app.js", imported));
  /** @type {Map<string, number>} */ const counts = new Map();
  for (const place of Object.keys(inputs).filter((path) => path.startsWith("places/") && path !== FIRST_PAGE))
    for (const path of closure(place, imported))
      if (path !== place && !first.has(path)) counts.set(path, (counts.get(path) ?? 0) + 1);
  return [...counts].flatMap(([path, count]) => (count > 1 ? [path] : [])).sort();
}

/** The modules that the app fetches once it needs them. @param {esbuild.Metafile["inputs"]} inputs */
const fetched_later = (inputs) =>
  Object.values(inputs)
    .flatMap(({ imports }) => imports.flatMap(({ kind, path }) => (kind === "dynamic-import" ? [path] : [])))
    .filter((path) => path !== FIRST_PAGE);

/**
 * esbuild splits by who needs a module: each set of modules that share one would get a file of its own. So all that is
 * fetched later is said to need all of the first page, which is there already, and every place all that several share.
 * @param {string} pwa @param {string[]} later @param {string[]} shared @returns {esbuild.Plugin}
 */
function together(pwa, later, shared) {
  const SHARED_MODULES = "shared-modules";
  return {
    name: "together",
    setup({ onLoad, onResolve }) {
      onLoad({ filter: /\/pwa\/.*\.js$/ }, ({ path }) => {
        const own = posix.relative(pwa, path);
        if (!later.includes(own)) return undefined;
        // The calculations that come later need those of the places, too.
        const needs = /^(places\/|calc\/)/.test(own) ? `import "${SHARED_MODULES}";` : "";
        return { contents: `${readFileSync(path, "utf8")}\nimport "${pwa}app.js"; ${needs}`, loader: "js" };
      });
      onResolve({ filter: new RegExp(`^${SHARED_MODULES}$`) }, () => ({ path: SHARED_MODULES, namespace: "together" }));
      onLoad({ filter: /.*/, namespace: "together" }, () => ({
        contents: shared.map((path) => `import "./${path}";`).join("\n"),
        resolveDir: pwa,
      }));
      // The app opens on the first page more often than not: it comes with the app.
      onLoad({ filter: /\/pwa\/routes\.js$/ }, ({ path }) => {
        const later = `() => import("./${FIRST_PAGE}")`;
        const contents = replaced(readFileSync(path, "utf8"), later, "async () => first_page");
        return { contents: `${contents}\nimport * as first_page from "./${FIRST_PAGE}";`, loader: "js" };
      });
    },
  };
}

/** `text` with the one `old` replaced. @param {string} text @param {string} old @param {string} other */
function replaced(text, old, other) {
  const around = text.split(old);
  if (around.length !== 2) throw new Error(`"${old}" stands ${around.length - 1} times, not once`);
  return around.join(other);
}

/**
 * The page of one language: one stylesheet, one script, and what is needed at once asked for ahead.
 * @param {string} index @param {string} language @param {string} style @param {string[]} modules the app's first
 * @param {string[]} ahead
 */
function page(index, language, style, [app, ...first], ahead) {
  const links = ahead.map((name) =>
    name.endsWith(".js")
      ? `<link rel="modulepreload" href="/built/${name}" fetchpriority="low">`
      : `<link rel="preload" href="/built/${name}" as="fetch" crossorigin fetchpriority="low">`,
  );
  const head = [
    `<link rel="stylesheet" href="/built/${style}">`,
    ...links,
    // Each is run for itself, so that none holds the page up for long: first those that the others need.
    ...[app, ...first]
      .reverse()
      .map((name) => `<script type="module" src="/built/${name}" fetchpriority="low"></script>`),
  ];
  const bare = index
    .replace(/^ *<link rel="stylesheet".*\n/gm, "")
    .replace(/^ *<script type="module".*\n/gm, "")
    .replace('<html lang="en">', `<html lang="${language}">`)
    .replace(COVERS, (cover, /** @type {string} */ of) => (of === language ? cover.replace(" hidden", "") : ""));
  return replaced(bare, "</head>", `${head.map((line) => `  ${line}\n`).join("")}</head>`);
}

/** What a first visit reads while the app is fetched. */
const COVERS = /^ *<p class="cover" lang="(\w+)".*\n/gm;

/** The page that phones store: with the app at hand, a cover would only flash. @param {string} page */
const without_cover = (page) => page.replace(COVERS, "");

/**
 * What the page, its first script and its manifest name besides styles and the app.
 * @param {string} pwa @param {string} index
 */
function beside(pwa, index) {
  const started = readFileSync(`${pwa}oldest.js`, "utf8").matchAll(/ Worker\("\/([^"]+)"\)/g);
  const named = [...index.matchAll(/ (?:href|src)="\/([^"]+)"/g), ...started].map(([, path]) => path);
  /** @type {{src: string}[]} */ const icons = JSON.parse(readFileSync(`${pwa}manifest.webmanifest`, "utf8")).icons;
  const all = new Set([...named, ...icons.map(({ src }) => src.slice(1))]);
  return [...all].filter((path) => !path.endsWith(".css") && path !== "app.js");
}

/** The service worker as one file. @param {string} pwa @param {object[]} stored */
async function worker(pwa, stored) {
  const source = readFileSync(`${pwa}sw.js`, "utf8");
  const calls = /importScripts\(([^)]*)\);/.exec(source) ?? ["", ""];
  const scripts = [...calls[1].matchAll(/"\/([^"]+)"/g)].map(([, path]) => readFileSync(pwa + path, "utf8"));
  const whole = replaced(replaced(source, calls[0], scripts.join("\n")), "self.__WB_MANIFEST", JSON.stringify(stored));
  const { code } = await esbuild.transform(whole, { minify: true, target: OLDEST, legalComments: "none" });
  return code;
}

/** Whether a built file is kept packed, too, so that no server packs it again. @param {string} name */
export const is_packed = (name) => !name.endsWith(".map") && name !== "built.json";

/**
 * Write the shell of the sources below `root`.
 * @param {string} root @param {number} [quality] of the packing, from 0 to 11, which takes most of the time
 */
export async function write(root, quality = constants.BROTLI_MAX_QUALITY) {
  const files = await build(root);
  const folder = posix.join(root, "pwa/built/");
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  const params = { [constants.BROTLI_PARAM_QUALITY]: quality };
  for (const [name, text] of files) {
    writeFileSync(folder + name, text);
    if (is_packed(name)) writeFileSync(`${folder}${name}.br`, brotliCompressSync(text, { params }));
  }
  return files;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [root, quality] = process.argv.slice(2);
  const files = await write(root ? `${root}/` : HERE, quality ? Number(quality) : undefined);
  console.log(`${files.size} files in pwa/built/`);
}
