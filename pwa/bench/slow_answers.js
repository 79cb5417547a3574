/**
 * The answers of slow calculations, from a worker so that typing never waits: one question at a time. An answer to an
 * input that is no longer wanted is dropped. If the worker fails, this thread answers.
 */

/** @typedef {import("../contracts.js").FieldError} FieldError */
/** @typedef {{answer: import("./answer.js").Answered} | {errors: FieldError[]}} Found */
/** @typedef {{key: string, name: string, input: object}} Question `key` is the same for the same input */
/** @typedef {{answer?: object, errors?: FieldError[]}} FromWorker one of the two */

/**
 * @template F
 * @param {{ask: (question: Question) => Promise<F>, told: (question: Question, found: F) => void}} how
 *   `told` is called only for the question wanted last
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
     * Ask this question and drop any other.
     * @param {Question} question
     * @returns {Promise<void>} rejects if `ask` does
     */
    async want(question) {
      wanted = question;
      if (!busy) await work(question);
    },
    /** Drop the question. */
    drop() {
      wanted = null;
    },
  };
}

/**
 * The worker, or this thread if the worker fails. A worker that fails before its first answer cannot start on this
 * phone, and is not tried again.
 * @param {{worker: (question: {tank_id: string, name: string, input: object}) => Promise<FromWorker>,
 *   here: (name: string, input: object) => Found}} how
 */
export function away_or_here({ worker, here }) {
  let answers = false;
  let cannot_start = false;
  return {
    /** @param {Question} question @returns {Promise<Found>} */
    async ask({ name, input }) {
      if (cannot_start) return here(name, input);
      try {
        // No tank: the belief that the worker keeps under this name belongs to the question asked last.
        const { answer, errors } = await worker({ tank_id: "bench", name, input });
        answers = true;
        return errors ? { errors } : { answer: /** @type {import("./answer.js").Answered} */ (answer) };
      } catch {
        cannot_start = !answers;
        return here(name, input);
      }
    },
    /** Whether this thread answers; it takes no input meanwhile. */
    holds_up: () => cannot_start,
  };
}
