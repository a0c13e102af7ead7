import { describe, expect, test } from "vitest";
import { settle } from "../../core/src/engine/contact/settle.ts";
import { buildBack, isLacking } from "../../core/src/shape/back.ts";
import { inputsOf, problemOf } from "../contact/model-case.ts";
import { summaryOf } from "../contact/summary.ts";
import { modelHorse } from "./model-back.ts";

/*
 * The back of the reference cases is known in closed form. Traced at three places, with its profile, and built again,
 * it must carry the same saddle alike. What this cannot see: a horse whose back changes between its traces.
 */
const built = buildBack(modelHorse(), "cold");
if (isLacking(built)) throw new Error(built.lacking.join(" "));
const traced = built.surface({});

function rests(id: string, surface = traced) {
  const problem = { ...problemOf(inputsOf(id)), surface };
  const rest = settle(problem);
  if (!rest.ok) throw new Error(rest.why);
  return summaryOf(problem, rest);
}

describe("a back built from three traces under the reference saddle", () => {
  test.each(["ct-horse-S+0", "ct-horse-S-20", "ct-horse-S+20"])(
    "%s: thirds within 2 %, tilt within 0.1 degrees, heave within 0.1 mm",
    (id) => {
      const known = rests(id, problemOf(inputsOf(id)).surface);
      const found = rests(id);
      for (const third of [0, 1, 2] as const) {
        const share = (found.meanMaskKPa[third] ?? 0) / (known.meanMaskKPa[third] ?? 1);
        expect(Math.abs(share - 1)).toBeLessThan(0.02);
      }
      expect(Math.abs(found.headUpDeg - known.headUpDeg)).toBeLessThan(0.1);
      expect(Math.abs(found.heaveMm - known.heaveMm)).toBeLessThan(0.1);
    },
  );
  test("closing and opening 20 mm move the head's height and the thirds the same way as on the known back", () => {
    const [narrow, made, wide] = (["ct-horse-S-20", "ct-horse-S+0", "ct-horse-S+20"] as const).map((id) =>
      rests(id),
    );
    if (!narrow || !made || !wide) throw new Error("no rest");
    expect(narrow.headUpDeg).toBeGreaterThan(made.headUpDeg);
    expect(made.headUpDeg).toBeGreaterThan(wide.headUpDeg);
  });
});
