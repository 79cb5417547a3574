/**
 * The answer while the keeper types: at once from a quick calculation, from a worker where a slow one would hold up the
 * keys.
 */
import { useEffect, useMemo, useRef, useState } from "../../vendor/preact.js";
import { answer_of, checked_of, found_of, refused_of } from "../../bench/answer.js";
import { away_or_here, newest } from "../../bench/slow_answers.js";
import { outlook_worker } from "../../workers/start.js";

/** Forecasts, simulations and searches: each takes longer on a phone than the pause between two keys. */
const SLOW = ["outlook", "change_plan", "stock_headroom", "oxygen_night", "water_blend"];
/**
 * How long typing must pause before a question is asked: of the worker, and of this thread, which freezes meanwhile.
 */
const PAUSE_MS = 150;
const PAUSE_HERE_MS = 400;
const NOTHING_YET = { needed: [], wrong: [], payload: {} };

// A worker of its own: in that of the tanks' forecasts a whole room's questions may be waiting.
const { ask, holds_up } = away_or_here({ worker: outlook_worker(), here: found_of });

/** @import { Contract } from "../../types/contract.js" */
/** @typedef {import("../../bench/answer.js").Outcome} Outcome */
/**
 * @typedef {{outcome: Outcome, waiting: boolean}} Shown `waiting`: the answer to what is typed is still to come;
 * `outcome` is an older one or empty
 */

/**
 * @param {Contract} spec the same name at every call @param {import("../../bench/form.js").Filling} filling
 * @returns {Shown}
 */
export const use_outcome = (spec, filling) =>
  SLOW.includes(spec.name) ? use_slow(spec, filling) : use_quick(spec, filling);

/** @param {Contract} spec @param {import("../../bench/form.js").Filling} filling @returns {Shown} */
function use_quick(spec, filling) {
  const outcome = useMemo(() => answer_of(spec, filling), [spec, filling.draft, filling.tank]);
  return { outcome, waiting: false };
}

/** @param {Contract} spec @param {import("../../bench/form.js").Filling} filling @returns {Shown} */
function use_slow(spec, filling) {
  const checked = useMemo(() => checked_of(spec, filling), [spec, filling.draft, filling.tank]);
  const key = "wrong" in checked ? null : JSON.stringify(checked.payload);
  const [held, hold] = useState(
    /** @type {{spec: Contract, key: string, found: import("../../bench/slow_answers.js").Found} | null} */ (null),
  );
  const board = useMemo(
    () => newest({ ask, told: (question, found) => hold({ spec, key: question.key, found }) }),
    [spec],
  );
  const known = held !== null && held.spec === spec && held.key === key;
  useEffect(() => {
    if (key === null || known) return;
    const timer = setTimeout(
      () => void board.want({ key, name: spec.name, input: checked.payload }),
      holds_up() ? PAUSE_HERE_MS : PAUSE_MS,
    );
    return () => {
      clearTimeout(timer);
      board.drop();
    };
  }, [board, key, known]);

  const last = useRef(/** @type {Outcome} */ (NOTHING_YET));
  if ("wrong" in checked) return { outcome: checked, waiting: false };
  if (!known) return { outcome: last.current, waiting: true };
  const { found } = held;
  if ("errors" in found) return { outcome: refused_of(spec, filling, checked.payload, found.errors), waiting: false };
  last.current = { answer: found.answer, payload: checked.payload };
  return { outcome: last.current, waiting: false };
}
