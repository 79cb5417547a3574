/**
 * Asks the belief about tanks, one question per tank at a time, and remembers the answers.
 * Nothing here waits: an answer that is not there yet is worked out and told later. The belief at the last record is
 * stored and continued from; where an older record changed, the worker starts again.
 */

/** @import { Answers, Forecast, Question } from "../../types/advice.js" */
/** @import { FieldError } from "../../contracts.js" */
/** @import { Kept } from "../../calc/tank_events.js" */

/**
 * @typedef {{tank_id: string, name: string, input: Question["input"], kept?: Kept}} Asking
 * @typedef {{answer?: object, errors?: FieldError[], kept?: Kept}} Answered one of answer and errors
 * @typedef {{answer?: object, problem?: string, exact: string, records: string}} Held
 * @typedef {{held: Map<string, Held>, wanted: Question[], busy: boolean, woken: boolean}} Tank
 */

/**
 * @param {{
 *   ask: (question: Asking) => Promise<Answered>,
 *   load: (tank_id: string) => Promise<Kept | undefined>,
 *   save: (tank_id: string, kept: Kept) => Promise<void>,
 *   changed: () => void,
 * }} phone `ask`: the worker; `load` and `save`: the stored belief; `changed`: called when an answer came
 */
export function forecasts({ ask, load, save, changed }) {
  /** @type {Map<string, Tank>} */ const tanks = new Map();

  /** @param {string} tank_id @param {Question[]} questions @returns {Forecast} what is known now */
  function of(tank_id, questions) {
    const tank = tanks.get(tank_id) ?? { held: new Map(), wanted: [], busy: false, woken: false };
    tanks.set(tank_id, tank);
    const open = questions.filter(({ label, exact }) => tank.held.get(label)?.exact !== exact);
    if (open.length) {
      const asked = questions.map(({ label }) => label);
      tank.wanted = [
        ...questions,
        ...tank.wanted.filter(({ label, records }) => !asked.includes(label) && records === questions[0].records),
      ];
      if (!tank.busy) void work(tank_id, tank);
    }
    return told(tank, questions);
  }

  /** @param {string} tank_id @param {Tank} tank */
  async function work(tank_id, tank) {
    tank.busy = true;
    for (let question = next(tank); question; question = next(tank)) {
      const { label, exact, records } = question;
      tank.held.set(label, { ...(await answered(tank_id, tank, question)), exact, records });
      changed();
    }
    tank.busy = false;
  }

  /**
   * @param {string} tank_id
   * @param {Tank} tank
   * @param {Question} question
   * @returns {Promise<Pick<Held, "answer" | "problem">>}
   */
  async function answered(tank_id, tank, { name, input }) {
    try {
      // The worker remembers the tanks it has calculated; only the first question carries the stored belief.
      const stored = tank.woken ? undefined : await load(tank_id).catch(() => undefined);
      const { answer, errors, kept } = await ask({ tank_id, name, input, ...(stored ? { kept: stored } : {}) });
      tank.woken = true;
      // A belief that cannot be stored is calculated again the next time.
      if (kept) await save(tank_id, kept).catch(() => undefined);
      return errors ? { problem: errors.map((one) => `${one.field} ${one.message}`.trim()).join("; ") } : { answer };
    } catch (error) {
      tank.woken = false;
      return { problem: /** @type {Error} */ (error).message };
    }
  }

  return { of };
}

/** The first question without its exact answer. @param {Tank} tank */
const next = (tank) => tank.wanted.find(({ label, exact }) => tank.held.get(label)?.exact !== exact);

/** @param {Tank} tank @param {Question[]} questions @returns {Forecast} */
function told(tank, questions) {
  const held = questions.map(({ label, exact, records }) => ({ label, exact, records, last: tank.held.get(label) }));
  const good = held.filter(({ last, records }) => last?.answer && last.records === records);
  /** @type {Answers} */ const answers = Object.fromEntries(good.map(({ label, last }) => [label, last?.answer]));
  if (good.length === held.length) return { state: "ready", answers };
  const failed = held.find(({ last, exact }) => last?.problem && last.exact === exact);
  return failed ? { state: "failed", answers, problem: failed.last?.problem } : { state: "working", answers };
}
