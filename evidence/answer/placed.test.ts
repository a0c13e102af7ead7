import { describe, expect, test } from "vitest";
import { formsOf } from "../../core/src/answer/forms.ts";
import { placedAlong } from "../../core/src/answer/placed.ts";
import { inDraw, wholeAt } from "../../core/src/answer/whole.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { opened } from "../../core/src/reach/move.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import { SIDES, STATIONS } from "../../core/src/terms/places.ts";
import { reference } from "../published/registry.ts";

/*
 * What is drawn lies where the calculation put it. How it looks, the page's and the papers' own checks see.
 */
const read = readCase(JSON.stringify(reference("road-uneven-back").inputs));
if (!read.ok) throw new Error("not a case");
const forms = formsOf(read.survey, 0);
const whole = wholeAt(inDraw(forms, {}), opened(4), { mesh: MESHES.fine });
const { back } = forms;
if (back === undefined || whole?.tree === undefined || !whole.rest?.ok) throw new Error("no rest");
const { tree, rest } = whole;
const placed = placedAlong(forms, whole);

/** Of a place of the saddle: R (P - C) + C + (0, 0, heave), R = Ry(pitch) Rx(roll), by its matrix. */
function carriedTo(x: number, y: number, z: number): readonly [number, number, number] {
  const [c, s] = [Math.cos(rest.headUpRad), Math.sin(rest.headUpRad)];
  const [d, t] = [Math.cos(rest.rollRad), Math.sin(rest.rollRad)];
  const rows = [
    [c, s * t, s * d],
    [0, d, -t],
    [-s, c * t, c * d],
  ];
  const middle = tree.lengthMm / 2;
  const arm = [x - middle, y, z];
  const [X, Y, Z] = rows.map((row) => row.reduce((sum, part, i) => sum + part * (arm[i] ?? 0), 0));
  return [(X ?? 0) + middle, Y ?? 0, (Z ?? 0) + rest.heaveMm];
}

describe.each(STATIONS)("%s", (station) => {
  const x = tree.stationsMm[station];
  const topMm = back.midlineMm(back.sections[station].xMm);
  test.each(SIDES)(
    "the %s panel's face is drawn where it rests, pressed into the back and not over it",
    (side) => {
      const half = tree.halves[side];
      const out = side === "near" ? -1 : 1;
      const y = half.innerEdgeMm(x) + (half.widthMm(x) / 2) * Math.cos(half.faceAngleRad(x));
      const [, Y, Z] = carriedTo(x, out * y, half.heightMm(x));
      const [inner, outer] = placed[station]?.panel[side] ?? [];
      const drawn = [0, 1].map((k) => ((inner?.[k] ?? Number.NaN) + (outer?.[k] ?? Number.NaN)) / 2);
      expect(drawn[0]).toBeCloseTo(Y, 6);
      expect(drawn[1]).toBeCloseTo(Z - topMm, 6);
      const outline = placed[station]?.back ?? [];
      const under = outline.reduce((best, at) => (Math.abs(at[0] - Y) < Math.abs(best[0] - Y) ? at : best));
      // Both layers together are 65 to 74 mm thick; refused beyond 0.7 of that.
      expect(under[1] - (drawn[1] ?? 0)).toBeGreaterThan(0);
      expect(under[1] - (drawn[1] ?? 0)).toBeLessThan(50);
    },
  );
});

test("the head is drawn at the front, the inside of its crown as high over the back as is told", () => {
  const [, , crown] = carriedTo(0, 0, tree.crownHeightMm);
  const heights = (placed.front?.head ?? []).filter(
    ([y]) => Math.abs(y) < 1e-3 + Math.abs(rest.rollRad) * 60,
  );
  const nearest = Math.min(
    ...heights.map(([, z]) => Math.abs(z - (crown - back.midlineMm(tree.stationsMm.front)))),
  );
  expect(nearest).toBeLessThan(1e-6);
  // The told one is taken where the crown has gone along the back, a millimetre or two.
  expect(Math.abs(crown - back.midlineMm(0) - rest.crownOverBackMm)).toBeLessThan(1.5);
  expect([placed.mid?.head, placed.rear?.head]).toEqual([[], []]);
});
