import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { thirdsCompared } from "./compare.ts";
import { SOFT_LAYERS } from "./soft-layer.ts";
import { onSprings } from "./springs.ts";

/** The bed of springs against frozen finite elements of the same layer, panel and load: the force on the thirds that are compared. */
export const checks: readonly Check[] = SOFT_LAYERS.map((given) => ({
  name: given.id,
  run: () => published(given.id, { thirdsN: thirdsCompared(given, onSprings(given).forces) }),
}));
