import { fillAtMm } from "../../core/src/fit/sections.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { RAIL, straightTree } from "../reach/straight-tree.ts";
import { draftOf, panelCase } from "./panel-case.ts";

const DEGREE = Math.PI / 180;

export const checks: readonly Check[] = [
  {
    name: "panel: fill at the lower edge",
    run: () => {
      const { back } = panelCase(draftOf("08-nothing-to-do", () => {}));
      const tree = straightTree({}, { ...RAIL, width: 90 });
      const fit = {
        station: "front",
        side: "near",
        treeFaceRad: 40 * DEGREE,
        backFaceRad: 45 * DEGREE,
        misfitRad: -5 * DEGREE,
      } as const;
      const mm = fillAtMm(fit, back, tree);
      published("panel-fill-edge", { fill_mm: mm, printed_mm: mm });
    },
  },
];
