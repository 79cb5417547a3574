/**
 * Asks the belief about tanks, one question a tank at a time, and remembers the answers.
 * Nothing here waits: what is not known yet is worked out and told later. The belief itself is kept in storage
 * at the last record and gone on from; the worker follows everything anew where an older record was altered.
 */

/**
 * @typedef {import("./questions.js").Question} Question
 * @typedef {{answer?: any, problem?: string, exact: string, records: string}} Held
 * @typedef {{state: "ready" | "working" | "failed", answers: Record<string, any>, problem?: string}} Forecast
 * @typedef {{held: Map<string, Held>, wanted: Question[], busy: boolean, woken: boolean}} Tank
 */

/**
 * @param {{
 * ask: (question: {tank_id: string, name: string, input: any, kept?: any}) => Promise<{answer?: any, errors?: any[],
 * kept?: any}>,
 *   load: (tank_id: string) => Promise<any>, save: (tank_id: string, kept: any) => Promise<void>, changed: () => void,
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
      const { label, name, input, exact, records } = question;
      tank.held.set(label, { ...(await answered(tank_id, tank, name, input)), exact, records });
      changed();
    }
    tank.busy = false;
  }

  /**
   * @param {string} tank_id
   * @param {Tank} tank
   * @param {string} name
   * @param {any} input
   * @returns {Promise<{answer?: any, problem?: string}>}
   */
  async function answered(tank_id, tank, name, input) {
    try {
      // The worker remembers the tanks it has followed; only its first question brings the stored belief.
      const stored = tank.woken ? undefined : await load(tank_id).catch(() => undefined);
      const { answer, errors, kept } = await ask({ tank_id, name, input, ...(stored ? { kept: stored } : {}) });
      tank.woken = true;
      // A belief that cannot be stored is followed anew the next time.
      if (kept) await save(tank_id, kept).catch(() => undefined);
      return errors ? { problem: errors.map((one) => `${one.field} ${one.message}`.trim()).join("; ") } : { answer };
    } catch (failed) {
      tank.woken = false;
      return { problem: /** @type {Error} */ (failed).message };
    }
  }

  return { of };
}

/** The first question without its exact answer. @param {Tank} tank */
const next = (tank) => tank.wanted.find(({ label, exact }) => tank.held.get(label)?.exact !== exact);

/** @param {Tank} tank @param {Question[]} questions @returns {Forecast} */
function told(tank, questions) {
  const held = questions.map(({ label, records }) => ({ label, records, its: tank.held.get(label) }));
  const good = held.filter(({ its, records }) => its?.answer && its.records === records);
  const answers = Object.fromEntries(good.map(({ label, its }) => [label, its?.answer]));
  if (good.length === held.length) return { state: "ready", answers };
  const failed = questions
    .map(({ label, exact }) => ({ exact, its: tank.held.get(label) }))
    .find(({ its, exact }) => its?.problem && its.exact === exact);
  return failed ? { state: "failed", answers, problem: failed.its?.problem } : { state: "working", answers };
}
