/** Rise of a slab insulated at x = 0 with a flux at x = l. Published: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), 3.8 (from memory). */
export function fluxSlabRiseK(slab: SlabSi, fluxWm2: number, timeS: number, part: number): number {
  const { k, rho, cp, thicknessM: l } = slab;
  const fourier = (k * timeS) / (rho * cp * l * l);
  let series = 0;
  for (let n = 1; n <= 400; n++) {
    const decay = Math.exp(-fourier * n * n * Math.PI * Math.PI);
    series += ((-1) ** n / (n * n)) * decay * Math.cos(n * Math.PI * part);
  }
  return ((fluxWm2 * l) / k) * (fourier + (3 * part * part - 1) / 6 - (2 / Math.PI ** 2) * series);
}

/**
 * Part of its first warmth, over that of the air, that a slab insulated at x = 0 still has at x = l, in air at x = l.
 * Published: Carslaw and Jaeger, 3.11 (from memory): roots of b tan b = Biot number.
 */
export function coolingPart(biot: number, fourier: number, part: number): number {
  let sum = 0;
  for (let n = 0; n < 200; n++) {
    const b = rootOfTan(biot, n);
    const weight = (4 * Math.sin(b)) / (2 * b + Math.sin(2 * b));
    sum += weight * Math.exp(-b * b * fourier) * Math.cos(b * part);
  }
  return sum;
}

function rootOfTan(biot: number, n: number): number {
  let [lo, hi] = [n * Math.PI, n * Math.PI + Math.PI / 2];
  for (let i = 0; i < 80; i++) {
    const b = (lo + hi) / 2;
    if (b * Math.sin(b) * (-1) ** n < biot * Math.cos(b) * (-1) ** n) lo = b;
    else hi = b;
  }
  return (lo + hi) / 2;
}

export interface SlabSi {
  readonly k: number;
  readonly rho: number;
  readonly cp: number;
  readonly thicknessM: number;
}
