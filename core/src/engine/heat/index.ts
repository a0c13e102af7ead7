export { conduct, type Heating, type Warmth } from "./conduct.ts";
export type { Face, Slab } from "./slab.ts";
export { biotNumber, type SteadyFaces, steadyFaces } from "./steady.ts";
