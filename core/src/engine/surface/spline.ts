/**
 * Coefficients of the cubic B-spline through values at whole numbers 0 to n - 1; n at least 4.
 *
 * Ends: not-a-knot (the third derivative does not jump at the second and last but one value), so the fourth
 * order holds up to the ends. Source: de Boor, A Practical Guide to Splines (from memory); the second
 * differences m of the coefficients obey m[i-1] + 4 m[i] + m[i+1] = 6 (f[i-1] - 2 f[i] + f[i+1]), and
 * not-a-knot makes m equal the second difference of the values at the second and last but one.
 *
 * Reads `values` at start, start + stride, ...; writes n + 2 coefficients the same way into `out`.
 * `room` holds at least 2 n numbers.
 */
export function fitLine(
  n: number,
  values: Float64Array,
  start: number,
  stride: number,
  out: Float64Array,
  outStart: number,
  outStride: number,
  room: Float64Array,
): void {
  const f = (i: number): number => values[start + i * stride]!;
  const bend = (i: number): number => f(i - 1) - 2 * f(i) + f(i + 1);
  room[1] = bend(1);
  room[n - 2] = bend(n - 2);
  solveInner(n, bend, room);
  room[0] = 2 * room[1]! - room[2]!;
  room[n - 1] = 2 * room[n - 2]! - room[n - 3]!;
  for (let i = 0; i < n; i++) out[outStart + (i + 1) * outStride] = f(i) - room[i]! / 6;
  const c = (i: number): number => out[outStart + (i + 1) * outStride]!;
  out[outStart] = room[0]! + 2 * c(0) - c(1);
  out[outStart + (n + 1) * outStride] = room[n - 1]! + 2 * c(n - 1) - c(n - 2);
}

/** Second differences 2 to n - 3 by elimination; those at 1 and n - 2 are known. */
function solveInner(n: number, bend: (i: number) => number, room: Float64Array): void {
  let above = 0;
  for (let i = 2; i <= n - 3; i++) {
    const pivot = 4 - above;
    above = 1 / pivot;
    room[n + i] = above;
    room[i] = (6 * bend(i) - room[i - 1]!) / pivot;
  }
  for (let i = n - 3; i >= 2; i--) room[i] = room[i]! - room[n + i]! * room[i + 1]!;
}
