import { type Face, faceLine, type Slab, thicknessM } from "./slab.ts";

/** Film against conduction: h l / k. Far below 1 a slab heated from one side is even through its thickness. */
export function biotNumber(slab: Pick<Slab, "thicknessMm" | "conductivityWmK">, filmWm2K: number): number {
  return (filmWm2K * thicknessM(slab)) / slab.conductivityWmK;
}

export interface SteadyFaces {
  readonly frontC: number;
  readonly backC: number;
}

/**
 * Temperatures of the faces once nothing changes any more; straight in between. Closed form: resistances in a row
 * (Fourier's law). undefined where heat is driven in at both faces: there is then no such state, or none that is its own.
 */
export function steadyFaces(
  slab: Pick<Slab, "thicknessMm" | "conductivityWmK">,
  front: Face,
  back: Face,
): SteadyFaces | undefined {
  const [f, b] = [faceLine(front), faceLine(back)];
  const through = thicknessM(slab) / slab.conductivityWmK;
  if (front.kind === "flux" && back.kind === "flux") return undefined;
  const passed =
    front.kind === "flux"
      ? f.fluxWm2
      : back.kind === "flux"
        ? -b.fluxWm2
        : (f.towardC - b.towardC) / (f.resistance + through + b.resistance);
  if (front.kind === "flux") {
    const backC = b.towardC + passed * b.resistance;
    return { frontC: backC + passed * through, backC };
  }
  const frontC = f.towardC - passed * f.resistance;
  return { frontC, backC: frontC - passed * through };
}
