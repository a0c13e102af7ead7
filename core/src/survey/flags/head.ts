import { cos, PI, sin, tan } from "../../engine/number/index.ts";
import type { Survey, SurveyedSaddle } from "../case.ts";
import { about, type Flag, flag, read } from "./flag.ts";

/** Spread by angles against spread read, mm. Derived: 1.4 degrees on two arms of 95 mm depth at 45 degrees make 9 mm; twice that and the calliper. */
const SPREAD_APART_MM = 20;
/** common practice, no source: half-angles further apart than this speak of a twisted head or a slip of the protractor. */
const HALF_ANGLES_APART_RAD = (2 * PI) / 180;

type Head = SurveyedSaddle["head"];

export function headFlags({ saddle }: Survey): Flag[] {
  const { head, bearing } = saddle;
  return [
    ...faceNotSaid(saddle),
    ...levels(head),
    ...anglesAgainstSpread(head),
    ...halves(head),
    ...order(bearing),
  ];
}

function faceNotSaid({ head, bearing }: SurveyedSaddle): Flag[] {
  const spread = read(head.spreadTips) ?? read(head.spreadUpper);
  const width =
    read(bearing.front.near.width) ?? read(bearing.front.off.width) ?? read(bearing.mid.near.width);
  return [
    ...(spread && head.face === "not-said"
      ? [
          flag(
            "saddle.head.face",
            "a spread was typed, but not the face of the head it was taken on: inside or outside",
          ),
        ]
      : []),
    ...(width && bearing.face === "not-said"
      ? [
          flag(
            "saddle.bearing.face",
            "the bearing was read, but not on which face: the panel's or the rail's",
          ),
        ]
      : []),
  ];
}

function levels({ spreadTips, spreadUpper, depth, upperBelowCrown }: Head): Flag[] {
  const [tips, upper, deep, high] = [read(spreadTips), read(spreadUpper), read(depth), read(upperBelowCrown)];
  return [
    ...(tips && upper && tips.value <= upper.value
      ? [
          flag(
            "saddle.head.spreadTips",
            `the spread at the tips (${tips.typed}) is no more than at the upper level (${upper.typed})`,
          ),
        ]
      : []),
    ...(deep && high && deep.value <= high.value
      ? [
          flag(
            "saddle.head.upperBelowCrown",
            `the upper level (${high.typed} below the crown) lies no higher than the tips (${deep.typed})`,
          ),
        ]
      : []),
  ];
}

/** Straight arms leaving a round crown of radius R: at depth D below it each arm stands R cos a + (D - R + R sin a) tan a from the middle. */
function halfSpread(radius: number, depth: number, angle: number): number {
  return radius * cos(angle) + (depth - radius + radius * sin(angle)) * tan(angle);
}

function anglesAgainstSpread({
  face,
  spreadTips,
  depth,
  crownRadius,
  halfAngleNear,
  halfAngleOff,
}: Head): Flag[] {
  const [tips, deep, radius, near, off] = [spreadTips, depth, crownRadius, halfAngleNear, halfAngleOff].map(
    read,
  );
  if (face !== "inside" || !tips || !deep || !radius || !near || !off) return [];
  const made =
    halfSpread(radius.value, deep.value, near.value) + halfSpread(radius.value, deep.value, off.value);
  if (Math.abs(made - tips.value) <= SPREAD_APART_MM) return [];
  const says = `half-angles, crown radius and depth make about ${about(made)} inside the tips, ${tips.typed} was read: is an angle the whole one instead of the half, or the spread from the other face?`;
  return [flag("saddle.head.halfAngleNear", says)];
}

function halves({ halfAngleNear, halfAngleOff }: Head): Flag[] {
  const [near, off] = [read(halfAngleNear), read(halfAngleOff)];
  if (!near || !off || Math.abs(near.value - off.value) <= HALF_ANGLES_APART_RAD) return [];
  return [
    flag(
      "saddle.head.halfAngleOff",
      `the half-angles stand ${about(Math.abs(near.value - off.value), "angle")} apart, near ${near.typed}, off ${off.typed}`,
    ),
  ];
}

function order({ front, mid, rear }: SurveyedSaddle["bearing"]): Flag[] {
  const places = [front, mid, rear].flatMap((station) => read(station.behindFront)?.value ?? []);
  const falls = places.some((place, at) => at > 0 && place <= (places[at - 1] ?? place));
  return falls
    ? [
        flag(
          "saddle.bearing.mid.behindFront",
          "front, mid and rear do not follow each other from the tree points backward",
        ),
      ]
    : [];
}
