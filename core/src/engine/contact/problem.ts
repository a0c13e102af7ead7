import type { SampleSurface } from "../surface.ts";

/** Cells of a soft layer that may touch a surface below it. Frame: x, y, z in mm; z up. */
export interface Cells {
  readonly n: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Area of each cell, mm2. */
  readonly area: Float64Array;
  /** Part of the result each cell is counted in: 0, 1, 2 along x. */
  readonly third: Uint8Array;
  /** 0 for y < 0, 1 for y > 0. */
  readonly side: Uint8Array;
  /** 1 for a cell in the half of its strip next to y = 0. */
  readonly inner: Uint8Array;
}

/**
 * The law of each cell. `linear`: p = k d. `series`: upper layer p = E e / (1 - e/limit) of thickness t
 * (limit Infinity: linear), lower layer p = E u / h; d is the sum of both. MPa, mm, N/mm3.
 */
export type Law =
  | { readonly kind: "linear"; readonly stiffness: Float64Array }
  | {
      readonly kind: "series";
      readonly upperModulus: Float64Array;
      readonly upperThickness: Float64Array;
      readonly upperLimit: number;
      readonly lowerModulus: Float64Array;
      readonly lowerThickness: Float64Array;
    };

export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A dead load: a force in space on a point of the body. */
export interface Pull {
  readonly at: Vector;
  readonly force: Vector;
}

export interface Load {
  /** Downward, N. */
  readonly weightN: number;
  readonly at: Vector;
  /** true: the point turns with the body; false: its line stays fixed in space. */
  readonly turnsWithBody: boolean;
  readonly pulls: readonly Pull[];
}

export interface ContactProblem {
  readonly cells: Cells;
  readonly law: Law;
  readonly surface: SampleSurface;
  readonly load: Load;
  /** Effective friction, acting up the cross slope. */
  readonly friction: number;
  /** Unit direction in the plane across which the slope is taken; { x: 0, y: 1 } unless the whole problem is turned about z. */
  readonly across: { readonly x: number; readonly y: number };
  /** The body turns about this point. */
  readonly pivot: Vector;
  /** Where the body is put along x and y before it settles, mm. */
  readonly slide: { readonly x: number; readonly y: number };
  /** Compression of the layers, as part of their thickness, beyond which the law is not used. */
  readonly compressionLimit: number;
}

/** heave mm (up), pitch rad (positive: the x = 0 end rises), roll rad. */
export interface Pose {
  readonly heave: number;
  readonly pitch: number;
  readonly roll: number;
}

export const REFUSALS = [
  "tips-front",
  "tips-rear",
  "tips-near",
  "tips-off",
  "unstable",
  "beyond-law",
] as const;
export type RefusalReason = (typeof REFUSALS)[number];

export interface Equilibrium {
  readonly ok: true;
  readonly pose: Pose;
  /** MPa, one for each cell; zero without contact. */
  readonly pressure: Float64Array;
  /** mm along the surface's normal; negative where there is a gap. */
  readonly penetration: Float64Array;
  readonly iterations: number;
  /** Of the symmetric part of the tangent, scaled to a common unit; positive at every accepted pose. */
  readonly smallestEigenvalue: number;
  /** Left over along x and y, which are held, N. */
  readonly unbalancedXN: number;
  readonly unbalancedYN: number;
  /** Largest of the three residuals relative to load, and load times length. */
  readonly residual: number;
  readonly compressionMax: number;
  /** Where the contact's vertical force acts, mm. */
  readonly centreX: number;
  readonly centreY: number;
  /** Sum of p A over the load. */
  readonly normalOverLoad: number;
}

export interface Refusal {
  readonly ok: false;
  readonly why: RefusalReason;
}
