/** The answer while one types: at once where the calculation is quick, after a pause where it is not. */
import { useEffect, useMemo, useRef, useState } from "../vendor/preact.js";
import { answerOf } from "../bench/answer.js";

/** Slower than this, a calculation waits for a pause in typing. */
const SLOW_MS = 150;
const PAUSE_MS = 400;
const NOTHING_YET = { needed: [], wrong: [], payload: {} };

/**
 * @param {any} spec @param {import("../bench/form.js").Filling} filling
 * @returns {{outcome: import("../bench/answer.js").Outcome, waiting: boolean}} `waiting`: an answer to the newest figures is still to come
 */
export function useOutcome(spec, filling) {
  const { draft, tank } = filling;
  // A simulation says in its contract how far its twins may differ; it waits from the start.
  const slow = useRef("twin_tolerance" in spec);
  const last = useRef(/** @type {import("../bench/answer.js").Outcome} */ (NOTHING_YET));
  const [, again] = useState(0);
  const work = () => {
    const began = performance.now();
    last.current = answerOf(spec, filling);
    slow.current = performance.now() - began > SLOW_MS;
  };
  // What is still to be worked out: a token of its own for each new set of figures.
  const due = useMemo(() => {
    if (slow.current) return {};
    work();
    return null;
  }, [spec, draft, tank]);
  const done = useRef(/** @type {object | null} */ (null));
  useEffect(() => {
    if (!due) return;
    const timer = setTimeout(() => {
      work();
      done.current = due;
      again((count) => count + 1);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [due]);
  return { outcome: last.current, waiting: due !== null && done.current !== due };
}
