import { ASSUMED } from "../../core/src/fit/assumed.ts";
import { forceCurve } from "../../core/src/fit/force-curve.ts";
import { PEAKS } from "../../core/src/fit/gaits.ts";
import { FAR_OVER_KPA } from "../../core/src/judge/limits/pressed.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { mountedOn } from "./model-loads.ts";

/** Loads as published. That they are this rider's and this horse's, no check can see. */
export const checks: readonly Check[] = [
  {
    name: "peaks by gait",
    run: () => {
      const { walk, trot, canter } = PEAKS;
      published("load-gaits-fruehwirth/times", {
        walk: walk.times,
        trot: trot.times,
        canter: canter.times,
      });
    },
  },
  {
    name: "trot, and the average of its stride",
    run: () => {
      const { sitting, rising, risen, twoPoint } = PEAKS;
      // The curve's own average, summed far more finely than the program does.
      const curve = forceCurve(sitting.times);
      const PLACES = 20_000;
      const places = Array.from({ length: PLACES }, (_, i) => curve((i + 0.5) / PLACES));
      const strideAverage = places.reduce((sum, one) => sum + one, 0) / PLACES;
      published("load-trot-de-cocq", {
        sitting: sitting.times,
        rising: rising.times,
        risen: risen.times,
        strideAverage,
      });
      published("load-two-point-peham", twoPoint.times / sitting.times);
    },
  },
  {
    name: "pull of the girth",
    run: () => {
      const { lo, hi } = ASSUMED.girthN;
      published("load-girth-tension", { rangeLo_N: lo, rangeHi_N: hi });
    },
  },
  {
    name: "mounting from the near side",
    run: () => {
      const [ground, platform] = [mountedOn("ground"), mountedOn("platform")];
      const holds = ground.sideForceN > 0 && ground.offBearingSideN > ground.frontNearN ? "off" : "near";
      const higher = ground.offBearingSideN > platform.offBearingSideN ? "ground" : "platform";
      published("load-mounting", { sideThatHolds: holds, higherFrom: higher });
    },
  },
  {
    name: "far over, under the head at walk",
    run: () => published("load-pressures-von-peinen", FAR_OVER_KPA),
  },
];
