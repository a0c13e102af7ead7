import { drawUniform } from "../../engine/random.ts";
import { drawDeviations } from "../../shape/draw.ts";
import type { Deviations } from "../../shape/model.ts";
import type { HeadArchBelief } from "./head-arch.ts";
import { HARDER_PLATES, WOOD_HEAD } from "./head-priors.ts";

/** What draw `i` of a seed has off the base values. */
export function drawnHead(belief: HeadArchBelief, seed: number, i: number): Deviations {
  return { ...drawDeviations(belief.uncertain, seed, i), ...harder(belief, seed, i) };
}

/** Some plates are of spring steel. */
function harder({ uncertain }: HeadArchBelief, seed: number, i: number): Deviations {
  const { id, base } = WOOD_HEAD.yieldMPa;
  const { part, loMPa, hiMPa } = HARDER_PLATES;
  const arePlates = uncertain.some((one) => one.id === id);
  if (!arePlates || drawUniform(seed, i, "harder plates") > part) return {};
  return { [id]: loMPa + (hiMPa - loMPa) * drawUniform(seed, i, "how hard plates are") - base };
}
