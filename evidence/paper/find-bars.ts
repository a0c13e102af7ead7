import type { Raster } from "./poppler.ts";

/** A bar that was found in a raster: its length by the ink along it, mm. */
export interface FoundBar {
  readonly lengthMm: number;
  readonly thickMm: number;
}

/** Thickness by which a bar is told from the frame (0.5 mm) and the rules (0.25 mm). */
const THICK = [0.85, 1.2] as const;
const LONG_MM = 60;

/** All straight bars about 1 mm thick along one axis. Knows nothing of where they should be. */
export function findBars(raster: Raster, axis: "level" | "upright"): readonly FoundBar[] {
  const turned = axis === "upright";
  const [along, across] = turned ? [raster.height, raster.width] : [raster.width, raster.height];
  const ink = (a: number, c: number) => (turned ? raster.ink(c, a) : raster.ink(a, c));
  const found: FoundBar[] = [];
  let stripe: { from: number; to: number; length: number }[] = [];
  for (let c = 0; c <= across; c++) {
    const run = c < across ? longestRun(ink, along, c) : undefined;
    if (run && run.to - run.from > LONG_MM / raster.mmPerPixel && follows(stripe, run)) stripe.push(run);
    else {
      const thickMm = stripe.length * raster.mmPerPixel;
      if (thickMm > THICK[0] && thickMm < THICK[1])
        found.push({ lengthMm: median(stripe.map((one) => one.length)) * raster.mmPerPixel, thickMm });
      stripe = [];
    }
  }
  return found;
}

function follows(
  stripe: readonly { from: number; to: number }[],
  run: { from: number; to: number },
): boolean {
  const last = stripe.at(-1);
  return !last || (Math.abs(last.from - run.from) < 4 && Math.abs(last.to - run.to) < 4);
}

/** The longest run of ink; its length counts the grey pixels at its ends by their share of ink. */
function longestRun(ink: (a: number, c: number) => number, along: number, c: number) {
  let best = { from: 0, to: 0, length: 0 };
  let from = -1;
  let sum = 0;
  for (let a = 0; a <= along; a++) {
    const here = a < along ? ink(a, c) : 0;
    if (here > 0.02) {
      if (from < 0) [from, sum] = [a, 0];
      sum += Math.min(1, here / FULL);
    } else if (from >= 0) {
      if (sum > best.length) best = { from, to: a, length: sum };
      from = -1;
    }
  }
  return best;
}

/** Our ink is not quite black: a pixel full of it counts as this much (#15120E). */
const FULL = 0.92;

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
