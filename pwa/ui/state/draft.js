/** What is half typed: saved on the phone at every keystroke, so that a reload or a flat battery loses nothing. */
import { signal, useMemo } from "../../vendor/preact.js";

const PREFIX = "limnary.draft.";
const OPENED = ".opened";
/**
 * `any`, because each form has a draft of its own type.
 * @type {Map<string, import("../../vendor/preact.js").Signal<any>>}
 */
const open = new Map();
/** Forms that were typed in since the app was opened; earlier ones are in the storage. @type {Set<string>} */
const typed = new Set();
const is_typed = (/** @type {string} */ name) => typed.has(name) || read(name) !== null;

/**
 * The draft of that name as a signal that saves itself; `first` if there is none.
 * @template T @param {string} name @param {() => T} first @returns {import("../../vendor/preact.js").Signal<T>}
 */
export function draft(name, first) {
  const held = open.get(name);
  if (held) return held;
  const saved = read(name);
  const kept = signal(saved ?? first());
  // What was read is not written again: that takes long while the app starts.
  let is_saved = saved !== null;
  kept.subscribe((value) => {
    if (!is_saved) write(name, value);
    is_saved = false;
  });
  open.set(name, kept);
  return kept;
}

/**
 * A form's draft, saved from the first keystroke. An untouched form starts fresh, so that it shows no stale dates,
 * tanks or figures.
 * @template T @param {string} name @param {() => T} first @returns {import("../../vendor/preact.js").Signal<T>}
 */
export function form_draft(name, first) {
  if (!is_typed(name)) open.delete(name);
  const held = open.get(name);
  if (held) return held;
  const kept = signal(read(name) ?? first());
  const begun = kept.peek();
  kept.subscribe((value) => {
    if (value === begun && !typed.has(name)) return;
    typed.add(name);
    write(name, value);
  });
  open.set(name, kept);
  return kept;
}

/** The same inside a component. @template T @param {string} name @param {() => T} first */
export const use_draft = (name, first) => useMemo(() => form_draft(name, first), [name]);

/**
 * The record as it was when its draft began, saved beside the draft until `forget`: only what differs from it was
 * changed by the form. Null for the draft of a new record.
 * @template T @param {string} name of the draft @param {T} held @returns {T}
 */
export const use_opened = (name, held) => useMemo(() => opened_draft(name, held), [name]).value ?? held;

/** @template T @param {string} name of the draft @param {T} held */
export function opened_draft(name, held) {
  if (!is_typed(name)) forget(name);
  return draft(name + OPENED, () => held);
}

/** Drop a draft that was recorded or thrown away. @param {string} name */
export function forget(name) {
  for (const its of [name, name + OPENED]) {
    open.delete(its);
    typed.delete(its);
    try {
      localStorage.removeItem(PREFIX + its);
    } catch {
      // Storage is off, so nothing was saved.
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

/** @param {string} name @param {unknown} value */
function write(name, value) {
  if (!open.has(name) && read(name) === null && value === undefined) return;
  try {
    localStorage.setItem(PREFIX + name, JSON.stringify(value));
  } catch {
    // Storage is off or full: the draft lasts as long as this page.
  }
}
