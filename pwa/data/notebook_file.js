/** A notebook's file or pasted cells as text cells, and the ids of its records, which follow from what they say. */
import Papa from "../vendor/papaparse.js";
import { sha256_hex } from "./sha256.js";

/** So many rows are taken at once (assumption: a phone still holds their preview). More are refused, never cut off. */
export const MOST_ROWS = 20_000;

/**
 * The cells of a CSV, of tab-separated text or of pasted cells: comma, semicolon and tab are told apart.
 * @param {string} text @returns {{header: string[], rows: string[][]}} without empty rows; maybe more than MOST_ROWS
 */
export function cells(text) {
  const { data } = Papa.parse(text, { skipEmptyLines: "greedy" });
  const [header = [], ...rows] = data;
  return { header: header.map((one) => one.trim()), rows };
}

/** The text of a file: UTF-8 or UTF-16 by its mark, else as older spreadsheets write. @param {ArrayBuffer} bytes */
export function text_of(bytes) {
  const [first, second] = new Uint8Array(bytes);
  if (first === 0xff && second === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/**
 * The id of a record by its kind and fields: the same row of the same notebook is the same record for ever.
 * @param {string} kind @param {object} fields
 */
export function id_by_content(kind, fields) {
  const said = JSON.stringify([kind, ...Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1))]);
  return `nb-${sha256_hex(new TextEncoder().encode(said)).slice(0, 40)}`;
}
