/** A plate of one stuff, heated or cooled through its thickness. */
export interface Slab {
  readonly thicknessMm: number;
  readonly conductivityWmK: number;
  readonly densityKgM3: number;
  /** Specific heat, J/(kg K). */
  readonly heatJKgK: number;
}

/** What happens at a face: heat driven in (0: insulated), a temperature held, or a film of air on it. */
export type Face =
  | { readonly kind: "flux"; readonly fluxWm2: number }
  | { readonly kind: "held"; readonly temperatureC: number }
  | { readonly kind: "film"; readonly filmWm2K: number; readonly airC: number };

const MM_PER_M = 1000;

export const thicknessM = (slab: Pick<Slab, "thicknessMm">): number => slab.thicknessMm / MM_PER_M;

/** A face as one straight line: heat in = flux + (toward - inside) / (own resistance + resistance up to the place inside). */
export interface FaceLine {
  readonly fluxWm2: number;
  readonly towardC: number;
  /** Resistance of the film, m2 K/W: 0 where a temperature is held, infinite where heat is driven in. */
  readonly resistance: number;
}

export function faceLine(face: Face): FaceLine {
  if (face.kind === "flux")
    return { fluxWm2: face.fluxWm2, towardC: 0, resistance: Number.POSITIVE_INFINITY };
  if (face.kind === "held") return { fluxWm2: 0, towardC: face.temperatureC, resistance: 0 };
  return { fluxWm2: 0, towardC: face.airC, resistance: 1 / face.filmWm2K };
}
