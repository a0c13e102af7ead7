import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { thirdsN } from "./compare.ts";
import { SOFT_LAYERS } from "./soft-layer.ts";
import { onSprings } from "./springs.ts";

/** The bed of springs against frozen finite elements of the same layer, panel and load: the force on each third. */
export const checks: readonly Check[] = SOFT_LAYERS.map((given) => ({
  name: given.id,
  run: () => published(given.id, { thirdsN: thirdsN(onSprings(given).forces) }),
}));
