/** Tolerance for float rounding at a bound, far below any centimetre, litre, degree or minute that matters. */
export const TOLERANCE = 1e-9;
