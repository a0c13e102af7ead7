/*
 * The few constants that several files share, each the nearest number to the true value; a tail is what is
 * missing from it (derived: printed by evidence/number/make-table.py --parts).
 */
// biome-ignore-start lint/suspicious/noApproximativeNumericConstant: core reads no constant of Math either
export const PI = 3.141592653589793;
export const LN2 = 0.6931471805599453;
export const LOG2_E = 1.4426950408889634;
export const ROOT_2 = 1.4142135623730951;
// biome-ignore-end lint/suspicious/noApproximativeNumericConstant: core reads no constant of Math either

export const PI_TAIL = 1.2246467991473532e-16;
export const HALF_PI = 1.5707963267948966;
export const HALF_PI_TAIL = 6.123233995736766e-17;
export const QUARTER_PI = 0.7853981633974483;
export const QUARTER_PI_TAIL = 3.061616997868383e-17;

/** 2^-1022: below it a number has fewer than 53 bits. */
export const SMALLEST_NORMAL = 2.2250738585072014e-308;
export const TWO_TO_54 = 18014398509481984;
