import { fewFactor } from "../../core/src/reach/plates/pooled.ts";
import { spreadForIncludedMm } from "../../core/src/shape/plate.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";

const included = (depthMm: number) => spreadForIncludedMm((10 * Math.PI) / 180, depthMm);

export const checks: readonly Check[] = [
  {
    name: "few pieces are few: Student's t",
    run: () => published("student-t-95", [4, 5, 6, 8, 10, 20, 50].map(fewFactor)),
  },
  {
    name: "10 degrees are 2 cm only at 115 mm",
    run: () => published("spread-per-included", [included(95), included(115)]),
  },
];
