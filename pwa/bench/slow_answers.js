/**
 * The answers of slow calculations, worked out away from the keys: one question at a time, and of an input
 * that is no longer wanted nothing is told. Where the worker fails, the question is answered here.
 */

/** @typedef {import("../contracts.js").FieldError} FieldError */
/** @typedef {{answer: any} | {errors: FieldError[]}} Found */
/** @typedef {{key: string, name: string, input: any}} Question `key`: the same for the same input */

/**
 * @param {{ask: (question: Question) => Promise<Found>, told: (question: Question, found: Found) => void}} how
 *   `told` hears only of the question wanted last
 */
export function newest({ ask, told }) {
  /** @type {Question | null} */ let wanted = null;
  let busy = false;

  /** @param {Question} question */
  async function work(question) {
    busy = true;
    try {
      const found = await ask(question);
      if (wanted?.key === question.key) told(question, found);
    } finally {
      busy = false;
      if (wanted?.key === question.key) wanted = null;
      if (wanted) void work(wanted);
    }
  }

  return {
    /**
     * From now on only this is of interest.
     * @param {Question} question
     * @returns {Promise<void>} rejects where answering it broke
     */
    async want(question) {
      wanted = question;
      if (!busy) await work(question);
    },
    /** Nothing is. */
    drop() {
      wanted = null;
    },
  };
}

/**
 * The worker, else this thread. One that fails before it ever answered cannot start on this phone, and is not tried
 * again.
 * @param {{worker: (question: {tank_id: string, name: string, input: any}) => Promise<any>, here: (name: string, input:
 * any) => Found}} how
 */
export function away_or_here({ worker, here }) {
  let answers = false;
  let cannot_start = false;
  return {
    /** @param {Question} question @returns {Promise<Found>} */
    async ask({ name, input }) {
      if (cannot_start) return here(name, input);
      try {
        // No tank's own: the belief that the worker keeps under this name is of whatever was asked last.
        const { answer, errors } = await worker({ tank_id: "bench", name, input });
        answers = true;
        return errors ? { errors } : { answer };
      } catch {
        cannot_start = !answers;
        return here(name, input);
      }
    },
    /** Whether this thread answers, which then stands still for so long. */
    holds_up: () => cannot_start,
  };
}
