import { type BackInputs, polynomial } from "../contact/back.ts";

/**
 * One soft layer on a rigid base, pressed by a pair of rigid panels under a load fixed to the seat, without friction:
 * what both the bed of springs and the finite elements are given. mm, N, MPa. Symmetric about y = 0.
 */
export interface SoftLayer {
  readonly id: string;
  readonly back: BackInputs;
  readonly panel: {
    readonly lengthMm: number;
    readonly innerEdgeMm: number;
    readonly widthMm: readonly number[];
    readonly faceAngleRad: readonly number[];
    readonly heightMm: readonly number[];
    readonly bowPerMm: number;
    /** The ends rise over their last `overMm` on this radius; 0: square ends. */
    readonly roundOverMm: number;
    readonly roundRadiusMm: number;
  };
  readonly layer: { readonly modulusMPa: number; readonly poisson: number; readonly thicknessMm: number };
  /** The layer in the elements runs from here to there in y, and this far past the panel's ends. */
  readonly meshed: { readonly fromYMm: number; readonly toYMm: number; readonly pastMm: number };
  readonly weightN: number;
  readonly loadAt: { readonly x: number; readonly z: number };
}

/** Stiffness of a compressible layer bonded to a rigid base: K = E (1 - nu) / ((1 + nu)(1 - 2 nu)) (Johnson 1985, from memory). */
export function layerStiffness({ layer }: SoftLayer): number {
  const { modulusMPa, poisson, thicknessMm } = layer;
  return (modulusMPa * (1 - poisson)) / ((1 + poisson) * (1 - 2 * poisson)) / thicknessMm;
}

/**
 * Stiffness of the touching surfaces as a multiple of the layer's. Finite elements need one to be smooth; it is in both
 * calculations, in series with the layer.
 */
export const SURFACE_TIMES = 20;
export const stiffnessInSeries = (k: number): number => (k * SURFACE_TIMES) / (SURFACE_TIMES + 1);

/** Rise of the panel's rounded end at x, mm. */
export function endRiseMm({ panel }: SoftLayer, x: number): number {
  const past = Math.max(0, panel.roundOverMm - x, x - (panel.lengthMm - panel.roundOverMm));
  return past === 0 ? 0 : (past * past) / (2 * panel.roundRadiusMm);
}

/** A place on the near-flat side y > 0 of the panel: x, and `across` from -1 at the inner to 1 at the outer edge. */
export function panelPoint(given: SoftLayer, x: number, across: number): [number, number, number] {
  const { panel } = given;
  const at = (coefficients: readonly number[]): number => polynomial(coefficients, panel.lengthMm)(x)[0];
  const [width, fall] = [at(panel.widthMm), at(panel.faceAngleRad)];
  const [c, s] = [Math.cos(fall), Math.sin(fall)];
  const v = (across * width) / 2;
  const b = (panel.bowPerMm * v * v) / 2;
  const middle = panel.innerEdgeMm + (width / 2) * c;
  return [x, middle + v * c + b * s, at(panel.heightMm) + endRiseMm(given, x) - v * s + b * c];
}

const HORSE = {
  back: {
    L: 430,
    H: 30,
    xd: 230,
    tilt: 0.05,
    s: [1, -1.1, 0.4],
    c: [12, 18],
    k: [0.0012, 0.0026],
  },
  panel: {
    lengthMm: 430,
    innerEdgeMm: 37.5,
    widthMm: [105, 15],
    faceAngleRad: [0.826307, -0.481542, 0.206879],
    heightMm: [-65.2579, -82.6677, 92.8757, -11.2116, 3.47023],
    bowPerMm: 1 / 150,
    roundOverMm: 60,
    roundRadiusMm: 150,
  },
  meshed: { fromYMm: 13, toYMm: 185, pastMm: 50 },
  weightN: 700,
  loadAt: { x: 206, z: 300 },
} as const;

/** The reference back under the reference panel, whose edges are rounded so that contact ends inside it. */
export const onHorse = (poisson: number): SoftLayer => ({
  ...HORSE,
  id: `fe-horse-nu${poisson}`,
  layer: { modulusMPa: 0.06, poisson, thicknessMm: 30 },
});

/** Flat panels with square ends and edges on a flat layer: where a bed of springs misses the peaks. */
export const SQUARE: SoftLayer = {
  ...HORSE,
  id: "fe-square-nu0.3",
  back: { L: 430, H: 0, xd: 230, tilt: 0, s: [0], c: [1], k: [0] },
  panel: {
    ...HORSE.panel,
    widthMm: [105],
    faceAngleRad: [0],
    heightMm: [0],
    bowPerMm: 0,
    roundOverMm: 0,
  },
  layer: { modulusMPa: 0.06, poisson: 0.3, thicknessMm: 30 },
  loadAt: { x: 215, z: 0 },
};

export const SOFT_LAYERS: readonly SoftLayer[] = [onHorse(0), onHorse(0.15), onHorse(0.3), SQUARE];
