/** What a surface z = f(x, y) gives at n points; arrays of at least n numbers. */
export interface SurfaceSample {
  readonly z: Float64Array;
  readonly zx: Float64Array;
  readonly zy: Float64Array;
  readonly zxx: Float64Array;
  readonly zxy: Float64Array;
  readonly zyy: Float64Array;
}

/** Reads a height surface at n points (mm) into `out`. */
export type SampleSurface = (n: number, x: Float64Array, y: Float64Array, out: SurfaceSample) => void;
