/** A tank's whole history as the forecasts take it: readings, changes, doses and feedings in hours since its start. */

/** @typedef {import("./tank_figures.js").TankRecords} TankRecords */

const HOUR_MS = 3_600_000;

/**
 * The start is when the tank was first filled, or its first record where that is earlier or unknown.
 * @param {TankRecords} records @returns {Record<string, any>} {now_h, readings, changes, doses, feedings, source, tank}
 */
export function historyFigures({ tank, readings = [], changes = [], doses = [], feedings = [], source_water, now = 0 }, figures = {}) {
  const events = [...readings, ...changes, ...doses, ...feedings];
  const times = [tank.started_at, ...events.map(({ at }) => at)].filter(Boolean).map((at) => Date.parse(at));
  const start = Math.min(now, ...times);
  const hours = (/** @type {number} */ at) => Math.max(0, (at - start) / HOUR_MS);
  const timed = (/** @type {any[]} */ records, /** @type {(record: any) => any} */ fields) =>
    records.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)).map((record) => ({ at_h: hours(Date.parse(record.at)), ...fields(record) }));
  return {
    now_h: hours(now),
    readings: timed(readings, ({ parameter, value, basis, steps }) => ({ parameter, value, basis, steps: steps?.length ? steps : undefined })),
    changes: timed(changes, ({ fraction, source }) => ({ fraction, source: source && nitrogenOf(source) })),
    doses: timed(doses.filter(({ tan_mg_n_l }) => tan_mg_n_l > 0), ({ tan_mg_n_l }) => ({ tan_mg_n_l })),
    feedings: timed(feedings, ({ feed_g, protein_fraction }) => ({ feed_g, protein_fraction })),
    source: source_water && nitrogenOf(source_water),
    tank: { ...figures, seeded: tank.seeded },
  };
}

/** @param {any} water a source_water record */
const nitrogenOf = ({ tan_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l }) => ({ tan_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l });
