import { solveBanded } from "../banded.ts";
import { type Face, type FaceLine, faceLine, type Slab, thicknessM } from "./slab.ts";

/** A slab of one temperature whose faces change at time 0. */
export interface Heating {
  readonly slab: Slab;
  readonly startC: number;
  readonly front: Face;
  readonly back: Face;
  /** Cells through the thickness, an even number; longest step of time. */
  readonly cells: number;
  readonly stepS: number;
}

/** The slab at one time. `coreC` is its middle; `inJm2` the heat that has come in through both faces. */
export interface Warmth {
  readonly timeS: number;
  readonly frontC: number;
  readonly coreC: number;
  readonly backC: number;
  readonly cellsC: Float64Array;
  readonly inJm2: number;
}

/** Steps at the start that are made as two halves backward in time. Published: Rannacher (1984): they take the ringing out of Crank-Nicolson's steps and keep its order. */
const STARTING_STEPS = 2;

/**
 * Conduction through the thickness at rising times, s. Finite volumes in space, Crank and Nicolson in time: the error
 * falls with the square of cell and step, and heat in equals heat stored to round-off. RangeError for times that do not rise.
 */
export function conduct(heating: Heating, timesS: readonly number[]): Warmth[] {
  const rod = rodOf(heating);
  let cellsC: Float64Array = new Float64Array(heating.cells).fill(heating.startC);
  let [timeS, inJm2, done] = [0, 0, 0];
  return timesS.map((untilS) => {
    if (!(untilS > timeS)) throw new RangeError(`times must rise from 0, read ${untilS} after ${timeS}`);
    const steps = Math.ceil((untilS - timeS) / heating.stepS);
    const stepS = (untilS - timeS) / steps;
    for (let i = 0; i < steps; i++, done++) {
      const parts = done < STARTING_STEPS ? 2 : 1;
      for (let part = 0; part < parts; part++) {
        const next = stepped(rod, cellsC, stepS / parts, parts === 2 ? 1 : 0.5);
        cellsC = next.cellsC;
        inJm2 += next.inJm2;
      }
    }
    timeS = untilS;
    return warmth(rod, cellsC, timeS, inJm2);
  });
}

/** The slab as cells: conductance between neighbours and to what is beyond each face, W/(m2 K), and heat a cell stores, J/(m2 K). */
interface Rod {
  readonly cells: number;
  readonly storesJm2K: number;
  readonly between: number;
  readonly front: FaceLine & { readonly conductance: number };
  readonly back: FaceLine & { readonly conductance: number };
}

function rodOf({ slab, front, back, cells }: Heating): Rod {
  if (!(cells >= 2 && cells % 2 === 0)) throw new RangeError(`cells must be even, read ${cells}`);
  const cellM = thicknessM(slab) / cells;
  const between = slab.conductivityWmK / cellM;
  const ended = (face: Face) => {
    const line = faceLine(face);
    return { ...line, conductance: 1 / (line.resistance + 0.5 / between) };
  };
  const storesJm2K = slab.densityKgM3 * slab.heatJKgK * cellM;
  return { cells, storesJm2K, between, front: ended(front), back: ended(back) };
}

/** Heat in through a face, W/m2, with its cell at a temperature. */
const heatIn = (face: Rod["front"], cellC: number): number =>
  face.fluxWm2 + face.conductance * (face.towardC - cellC);

/** One step; `implicit` is the weight of its end: 1 backward Euler, 0.5 Crank and Nicolson. */
function stepped(rod: Rod, was: Float64Array, stepS: number, implicit: number) {
  const { cells, between, front, back } = rod;
  const perStep = rod.storesJm2K / stepS;
  const band = new Float64Array(2 * cells);
  const right = new Float64Array(cells);
  for (let i = 0; i < cells; i++) {
    const [low, high] = [i > 0 ? between : front.conductance, i < cells - 1 ? between : back.conductance];
    band[2 * i] = perStep + implicit * (low + high);
    band[2 * i + 1] = -implicit * between;
    const own = was[i]!;
    const fromLow = i > 0 ? between * (was[i - 1]! - own) : heatIn(front, own);
    const fromHigh = i < cells - 1 ? between * (was[i + 1]! - own) : heatIn(back, own);
    right[i] = (1 - implicit) * (fromLow + fromHigh) + perStep * own;
  }
  right[0]! += implicit * heatIn(front, 0);
  right[cells - 1]! += implicit * heatIn(back, 0);
  const cellsC = solveBanded(band, right, cells, 1);
  if (cellsC === undefined) throw new RangeError("a slab of these properties conducts no heat");
  const through = (at: Float64Array) => heatIn(front, at[0]!) + heatIn(back, at[cells - 1]!);
  return { cellsC, inJm2: stepS * ((1 - implicit) * through(was) + implicit * through(cellsC)) };
}

/** Faces lie half a cell beyond the outermost middles, the core between the two innermost ones. */
function warmth(rod: Rod, cellsC: Float64Array, timeS: number, inJm2: number): Warmth {
  const [first, last, half] = [cellsC[0]!, cellsC[rod.cells - 1]!, rod.cells / 2];
  const toFace = 0.5 / rod.between;
  return {
    timeS,
    frontC: first + heatIn(rod.front, first) * toFace,
    coreC: (cellsC[half - 1]! + cellsC[half]!) / 2,
    backC: last + heatIn(rod.back, last) * toFace,
    cellsC,
    inJm2,
  };
}
