/**
 * Writes pwa/types/{records,calculations}.d.ts, the types of what crosses the wire, from shared_schema/.
 * Run `node tests/types/generate.js`; tests/js/types.test.js holds the committed files equal to what this makes.
 */
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const schema = new URL("../../shared_schema/", import.meta.url);
const target = new URL("../../pwa/types/", import.meta.url);
const HEAD = "/** Generated from shared_schema by tests/types/generate.js: change the schema, then run it. */\n";

/** @param {string} folder @returns {any[]} the JSON files of a folder by name: their form is shared_schema's own */
const read = (folder) =>
  readdirSync(new URL(`${folder}/`, schema))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => JSON.parse(readFileSync(new URL(`${folder}/${name}`, schema), "utf8")));

/** @param {string} name @returns {string} "water_change" as "WaterChange" */
const pascal = (name) => name.replace(/(?:^|_)(\w)/g, (_, letter) => letter.toUpperCase());

/**
 * @typedef {{type: string, choices?: {value: string}[], fields?: Field[], item?: Field, open?: boolean, name?: string,
 * required?: boolean, optional?: boolean, default?: unknown, when?: unknown, label?: string, unit?: string}} Field
 */

/** @param {Field} field @param {(field: Field) => boolean} may_lack @param {string} indent @returns {string} */
function type_of(field, may_lack, indent) {
  if (field.type === "choice") return (field.choices ?? []).map(({ value }) => JSON.stringify(value)).join(" | ");
  if (field.type === "list") {
    const item = type_of(/** @type {Field} */ (field.item), may_lack, indent);
    return /^[\w.]+$|^\{[^|]*\}$/s.test(item) ? `${item}[]` : `(${item})[]`;
  }
  if (field.type === "object") {
    const fields = field.fields ?? [];
    if (field.open && fields.length === 0) return "Open";
    return `${field.open ? "Open & " : ""}${body(fields, may_lack, indent)}`;
  }
  return { number: "number", integer: "number", boolean: "boolean", text: "string" }[field.type] ?? "never";
}

/** A comment, in lines of at most 120 columns. @param {string} text @param {string} indent @returns {string} */
function said(text, indent = "") {
  const whole = `${indent}/** ${text.replaceAll("*/", "* /")} */`;
  if (whole.length <= 120) return whole;
  const lines = [""];
  for (const word of text.split(" ")) {
    if (`${indent} * ${lines.at(-1)} ${word}`.length > 120) lines.push("");
    lines.push(`${lines.pop()} ${word}`.trimStart());
  }
  return `${indent}/**\n${lines.map((line) => `${indent} * ${line}\n`).join("")}${indent} */`;
}

/** @param {Field[]} fields @param {(field: Field) => boolean} may_lack @param {string} indent @returns {string} */
function body(fields, may_lack, indent = "") {
  const inner = `${indent}  `;
  const lines = fields.map((field) => {
    const label = [field.label, field.unit].filter(Boolean).join("; ");
    const name = `${field.name}${may_lack(field) ? "?" : ""}`;
    const type = type_of(field, may_lack, inner) + (field.optional ? " | null" : "");
    return `${said(label, inner)}\n${inner}${name}: ${type};`;
  });
  return `{\n${lines.join("\n")}\n${indent}}`;
}

/** Fields of an input or a record that may be left out. */
const given = (/** @type {Field} */ field) => !field.required || field.when !== undefined;
/** Fields that may be missing once an input is checked. */
const checked = (/** @type {Field} */ field) => given(field) && !("default" in field);
/** Fields that an answer may lack. */
const answered = (/** @type {Field} */ field) => Boolean(field.optional);

export function records_types() {
  const kinds = read("records");
  const open = "/** Fields that no record kind describes. */\nexport type Open = { [name: string]: unknown };\n";
  const each = kinds.map(
    (kind) => `${said(kind.purpose)}\nexport interface ${pascal(kind.kind)}Fields ${body(kind.fields, given)}\n`,
  );
  const map = kinds.map((kind) => `  ${kind.kind}: ${pascal(kind.kind)}Fields;`).join("\n");
  const fields = `/** The fields of each record kind. */\nexport interface RecordFields {\n${map}\n}\n`;
  return `${HEAD}\n${[open, ...each].join("\n")}\n${fields}export type RecordKind = keyof RecordFields;\n`;
}

/** @param {{code: string}[]} cautions @returns {string} one a line where they would not fit on one */
function codes(cautions) {
  const each = cautions.map(({ code }) => JSON.stringify(code));
  const line = ` ${each.join(" | ") || "never"}`;
  return line.length <= 100 ? line : each.map((code) => `\n      | ${code}`).join("");
}

export function calculations_types() {
  const contracts = read("calc");
  const each = contracts.map(
    ({ name, purpose, inputs, outputs }) =>
      `${said(`Input of ${name}: ${purpose}`)}\nexport interface ${pascal(name)}Input ${body(inputs, given)}\n\n` +
      "/** The same once it is checked: usual values filled in. */\n" +
      `export interface ${pascal(name)}Values ${body(inputs, checked)}\n\n` +
      `/** What ${name} answers. */\nexport interface ${pascal(name)}Answer ${body(outputs, answered)}\n`,
  );
  const map = contracts
    .map(
      ({ name, cautions }) =>
        `  ${name}: {\n    input: ${pascal(name)}Input;\n    values: ${pascal(name)}Values;\n` +
        `    answer: ${pascal(name)}Answer;\n    caution:${codes(cautions)};\n  };`,
    )
    .join("\n");
  const said_of = "/** Input, answer and caution codes of each calculation. */\n";
  const calculations = `${said_of}export interface Calculations {\n${map}\n}\n`;
  return `${HEAD}\n${each.join("\n")}\n${calculations}export type CalculationName = keyof Calculations;\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL("records.d.ts", target), records_types());
  writeFileSync(new URL("calculations.d.ts", target), calculations_types());
}
