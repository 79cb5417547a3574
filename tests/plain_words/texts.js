/** Prints all English texts of the screens as JSON: `node texts.js FOLDER`, the folder pwa/i18n of any version. */
import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const folder = resolve(process.argv[2]);
/** @type {Record<string, string | Record<string, string>>} */ const texts = {};
for (const name of readdirSync(folder).filter((one) => /^en(_\w+)?\.js$/.test(one)))
  for (const part of Object.values(await import(pathToFileURL(`${folder}/${name}`).href))) Object.assign(texts, part);
console.log(
  JSON.stringify(
    Object.entries(texts).flatMap(([key, text]) =>
      (typeof text === "string" ? [text] : [...new Set(Object.values(text))]).map((form) => [key, form]),
    ),
  ),
);
