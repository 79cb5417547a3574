/** What the computer's rounding may put a figure over a bound by: no centimetre, litre, degree or minute, so it decides nothing. */
export const HAIR = 1e-9;
