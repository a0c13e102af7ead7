/** A function that rises, and its slope. */
export type Rising = (x: number) => { readonly y: number; readonly slope: number };

const STEPS_MOST = 80;

/**
 * x with y(x) = 0 of a rising function, from `start`: Newton's steps, halved into the known bracket where they would
 * leave it. Ends where |y| is at most `within` or x no longer moves; undefined where it finds none.
 */
export function rootOf(rising: Rising, start: number, within: number): number | undefined {
  let x = start;
  let lo = Number.NEGATIVE_INFINITY;
  let hi = Number.POSITIVE_INFINITY;
  for (let i = 0; i < STEPS_MOST; i++) {
    const { y, slope } = rising(x);
    if (Math.abs(y) <= within) return x;
    if (y < 0) lo = x;
    else hi = x;
    let next = slope > 0 ? x - y / slope : Number.NaN;
    if (!(next > lo && next < hi)) next = (lo + hi) / 2;
    if (next === x) return x;
    if (!Number.isFinite(next)) return undefined;
    x = next;
  }
  return undefined;
}
