export { combine, fitGrid, type Grid, type GridSpline } from "./surface/grid.ts";
export { type NearFields, nearFields, nearSurface } from "./surface/near.ts";
export { gridSurface } from "./surface/sample.ts";
export type { SampleSurface, SurfaceSample } from "./surface/sample-surface.ts";
