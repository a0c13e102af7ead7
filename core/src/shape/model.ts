import type { SampleSurface } from "../engine/surface.ts";
import type { BySide, ByStation } from "../terms/places.ts";

/**
 * One uncertain input of the calculation. `sd` belongs to the normal kind, lo and hi to the range kind
 * (rectangular). Units as the last word of `id` says.
 */
export type Uncertain =
  | { readonly id: string; readonly kind: "normal"; readonly mean: number; readonly sd: number }
  | {
      readonly id: string;
      readonly kind: "range";
      readonly mean: number;
      readonly lo: number;
      readonly hi: number;
    };

/** Values of the uncertain inputs in one draw, as deviations from their means; 0 for an id that is not there. */
export type Deviations = { readonly [id: string]: number };

/** A cross-section of the back, top of the midline at (0, 0); y to the off side, z up, mm. */
export interface Section {
  readonly xMm: number;
  /** Standard uncertainty of the section's width at one height, own and shared part, mm. */
  readonly widthOwnMm: number;
  readonly widthSharedMm: number;
  /** Angle of the back's surface to the horizontal between two distances from the midline, measured in y; positive falls away. */
  faceAngleRad(side: "near" | "off", fromMm: number, toMm: number, deviations: Deviations): number;
  /** Half-width at a depth below the top, per side; undefined where the trace ends above it. */
  halfWidthMm(side: "near" | "off", depthMm: number, deviations: Deviations): number | undefined;
  /** The uncertain inputs that this section's readings depend on. */
  readonly uncertain: readonly Uncertain[];
  /** Smoothed outline for drawing, near side first. */
  readonly outline: readonly (readonly [number, number])[];
}

/** The back between its traces. */
export interface Back {
  readonly sections: ByStation<Section>;
  /** Midline height at x, mm. */
  midlineMm(xMm: number): number;
  /** The surface of one draw; with no deviations the best estimate. */
  surface(deviations: Deviations): SampleSurface;
  /** The same for draws: known once at the places (mm) that a body's cells lie over, to second order about them; each stands until the next is asked for. */
  surfaceNear(x: Float64Array, y: Float64Array): (deviations: Deviations) => SampleSurface;
  readonly uncertain: readonly Uncertain[];
  /** What leaving the middle trace out would have cost: rms over the bearing, mm. */
  readonly loftErrorMm: number;
}

/** Quadratic through three stations: value at x. */
export type Along = (xMm: number) => number;

/** One half of what bears on the back, as functions along x. */
export interface Half {
  readonly innerEdgeMm: Along;
  readonly widthMm: Along;
  readonly faceAngleRad: Along;
  /** Height of the middle of the face in the saddle's own frame, mm. */
  readonly heightMm: Along;
  readonly thicknessMm: ByStation<{
    readonly inner: number;
    readonly middle: number;
    readonly outer: number;
  }>;
}

export interface Head {
  /** Inside the tips, mm. */
  readonly spreadMm: number;
  readonly spreadUpperMm: number | undefined;
  readonly upperBelowCrownMm: number | undefined;
  /** From crown to the line of the tips, mm. */
  readonly depthMm: number;
  readonly crownRadiusMm: number;
  readonly thicknessMm: number;
  readonly halfAngleRad: BySide<number>;
}

/** Tree and panel as they stand today, in one draw. Saddle's frame: x behind the tree points, z up, y to the off side. */
export interface Tree {
  readonly lengthMm: number;
  readonly stationsMm: ByStation<number>;
  readonly halves: BySide<Half>;
  readonly head: Head;
  /** Height of crown inside and of the tips in the saddle's frame, mm. */
  readonly crownHeightMm: number;
  readonly tipHeightMm: number;
  readonly straps: BySide<{ readonly xMm: number }>;
  readonly channelMm: ByStation<number | undefined>;
  readonly deepestSeatMm: number;
}

/** A tree with its doubt: build it for any draw. */
export interface TreeBelief {
  at(deviations: Deviations): Tree;
  readonly uncertain: readonly Uncertain[];
}

/** A head with its doubt, where the rest of the tree was not read. */
export interface HeadBelief {
  at(deviations: Deviations): Head;
  readonly uncertain: readonly Uncertain[];
}

/** What stands in the way of building a form: the readings that are missing, by path in the case. */
export interface Lacking {
  readonly lacking: readonly string[];
}
