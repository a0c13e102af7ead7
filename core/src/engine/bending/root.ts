/** A function that rises, and its slope. */
export type Rising = (x: number) => { readonly y: number; readonly slope: number };

const STEPS_MOST = 80;

/**
 * x with y(x) = 0 of a rising function, from `start`: Newton's steps; halved into the known bracket where they would
 * leave it, and twice as far as before, `reach` at first, while there is none. Ends where |y| is at most `within` or x
 * no longer moves; undefined where it finds none.
 */
export function rootOf(rising: Rising, start: number, within: number, reach: number): number | undefined {
  let x = start;
  let lo = Number.NEGATIVE_INFINITY;
  let hi = Number.POSITIVE_INFINITY;
  let out = reach;
  for (let i = 0; i < STEPS_MOST; i++) {
    const { y, slope } = rising(x);
    if (Math.abs(y) <= within) return x;
    if (y < 0) lo = x;
    else hi = x;
    let next = slope > 0 ? x - y / slope : Number.NaN;
    const open = !(lo > Number.NEGATIVE_INFINITY && hi < Number.POSITIVE_INFINITY);
    if (open && !(Math.abs(next - x) <= out)) {
      next = y < 0 ? x + out : x - out;
      out *= 2;
    } else if (!(next > lo && next < hi)) next = (lo + hi) / 2;
    if (next === x) return x;
    x = next;
  }
  return undefined;
}
