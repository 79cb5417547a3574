/** Round steps for steppers: one, two or five times a power of ten. Pure. */

/** The smallest such step of at least `size`. @param {number} size above nothing */
export function nice_step(size) {
  const power = Math.floor(Math.log10(size) + 1e-9);
  const nice = [1, 2, 5, 10].find((one) => one * 10 ** power >= size * (1 - 1e-9)) ?? 10;
  return Number((nice * 10 ** power).toPrecision(1));
}

/**
 * The next multiple of the step, up or down, within bounds.
 * @param {number} value
 * @param {number} step
 * @param {1 | -1} by
 * @param {number} least
 * @param {number} most
 */
export function stepped(value, step, by, least, most) {
  const steps = by > 0 ? Math.floor(value / step + 1e-9) + 1 : Math.ceil(value / step - 1e-9) - 1;
  return Number(Math.min(Math.max(steps * step, least), most).toPrecision(12));
}
