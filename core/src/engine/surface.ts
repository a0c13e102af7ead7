export { combine, fitGrid, type Grid, type GridSpline } from "./surface/grid.ts";
export { gridSurface } from "./surface/sample.ts";
export type { SampleSurface, SurfaceSample } from "./surface/sample-surface.ts";
