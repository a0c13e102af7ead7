/*
 * Unfilled nylon 6, the stuff of most solid heads (from memory), and the air behind it.
 */

/** Assumption 0.23 to 0.29 W/(m K): handbook values of dry to moist nylon 6, from memory. */
export const NYLON = { conductivityWmK: { lo: 0.23, hi: 0.29 } } as const;

/** Melting begins, C. Published: data of nylon 6, melting 215 to 225 (moulding envelopes); its lower end. */
export const HEATED_TO_C = 215;

/**
 * How even the whole thickness has to be to form, K. Assumption: half of the 20 K below melting within which it no longer
 * springs back (derived from published melting data), and half of that again for the spread along the head.
 */
export const EVEN_WITHIN_K = 5;

/** Film of air on the far face, still to a draught, in a heated shop. Assumption, from memory. */
export const STILL_AIR = { loWm2K: 5, hiWm2K: 15, airC: 20 } as const;

/** Thickness of solid heads, mm. From memory. */
export const THICKNESS = { lo: 5, hi: 14 } as const;
