import { expect, test } from "vitest";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { isLacking } from "../../core/src/shape/back.ts";
import { buildHead } from "../../core/src/shape/head.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { HEAD } from "./model-saddle.ts";

/** A changeable head and a plate of 215 mm, both read on the same face. */
function changeWith(face: "inside" | "outside"): number {
  const mounting = { holes: 3, pitch: 20, edge: "square", thickness: 3 };
  const survey = caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: {
      name: "invented",
      head: { ...HEAD, face, halfAngleOff: 45 },
      build: {
        arch: "polymer",
        metal: "plates",
        exchange: "plate",
        movedBy: "exchange",
        toldBy: "seen-bare",
      },
      mounting,
    },
    horses: [{ name: "invented" }],
    platesAtHand: [{ spreadTips: 215, halfAngle: 45, asFitted: "yes", sound: "sound", mounting }],
  });
  const head = buildHead(survey.saddle);
  if (isLacking(head)) throw new Error(head.lacking.join(" "));
  const plate = settingsOf(survey, head.at({}).spreadMm).find(({ way }) => way === "exchange");
  if (!plate) throw new Error("the plate is no setting");
  return plate.changeMm;
}

test("a plate 10 mm wider than the head is 10 mm wider, whichever face both were read on", () => {
  expect(changeWith("inside")).toBeCloseTo(10, 9);
  expect(changeWith("outside")).toBeCloseTo(10, 9);
});
