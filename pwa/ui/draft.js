/** What is half typed: kept on the phone at every keystroke, so a reload or a flat battery loses nothing. */
import { signal, useMemo } from "../vendor/preact.js";

const PREFIX = "limnary.draft.";
const OPENED = ".opened";
/** @type {Map<string, any>} */
const open = new Map();

/**
 * The draft of that name as a signal that keeps itself; `first` if there is none.
 * @template T @param {string} name @param {() => T} first
 */
export function draft(name, first) {
  const held = open.get(name);
  if (held) return held;
  const kept = signal(read(name) ?? first());
  kept.subscribe((value) => write(name, value));
  open.set(name, kept);
  return kept;
}

/** The same inside a component. @template T @param {string} name @param {() => T} first */
export const useDraft = (name, first) => useMemo(() => draft(name, first), [name]);

/**
 * The record as it stood when its draft was begun, kept beside the draft until `forget`: only what the form changed
 * since then is the form's own. Null where the draft is of a new record.
 * @template T @param {string} name of the draft @param {T} held @returns {T}
 */
export const useOpened = (name, held) => useDraft(name + OPENED, () => held).value ?? held;

/** It was recorded, or thrown away. @param {string} name */
export function forget(name) {
  for (const its of [name, name + OPENED]) {
    open.delete(its);
    try {
      localStorage.removeItem(PREFIX + its);
    } catch {
      // Storage is off: then there was nothing kept.
    }
  }
}

/** @param {string} name */
function read(name) {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + name) ?? "null");
  } catch {
    return null;
  }
}

/** @param {string} name @param {any} value */
function write(name, value) {
  if (!open.has(name) && read(name) === null && value === undefined) return;
  try {
    localStorage.setItem(PREFIX + name, JSON.stringify(value));
  } catch {
    // Storage is off or full: the draft lives as long as this page.
  }
}
