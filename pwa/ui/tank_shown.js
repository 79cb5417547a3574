/** What a tank's page shows of its records beside the advice. It is kept with the last advice. */
import { SELDOM, TESTED } from "../advice/journal/test_order.js";
import { long_run } from "../advice/life/long_run.js";
import { stock_of } from "../advice/life/stock.js";
import { of_parameter } from "../advice/of_parameter.js";

/** @param {import("../types/advice.js").Facts} facts @returns {import("../types/advice.js").Shown} */
export function shown_of(facts) {
  const { nitrate, young } = long_run(facts);
  return {
    latest: [...TESTED, ...SELDOM].flatMap((parameter) => of_parameter(facts.readings, parameter).at(-1) ?? []),
    animals: stock_of(facts.stock, facts.now).animals.map(({ species, count }) => ({ species, count })),
    long_run: { nitrate, young },
  };
}
