import { isLacking } from "../../core/src/shape/back.ts";
import type { Section } from "../../core/src/shape/model.ts";
import { wantedHead } from "../../core/src/shape/wanted-head.ts";
import type { SurveyedHorse, SurveyedSaddle } from "../../core/src/survey/case.ts";
import { horseSchema } from "../../core/src/survey/horse.ts";
import type { Side, Station } from "../../core/src/terms/places.ts";
import { backOf } from "../fit/model-forms.ts";
import { type FaceRead, modelSaddle } from "../shape/model-saddle.ts";
import { type BackShape, crossMm, midlineMm } from "./backs.ts";

/*
 * The saddle of each back is made by one rule and never touched afterwards: the head is the one that the program wants
 * for this back; the panel lies on the back's larger side at its three stations, with the back's own angle there.
 * All of it goes in as typed readings, so that traces, loft, head and tree are the program's own.
 */

const DEG_PER_RAD = 180 / Math.PI;
/** Depth of the head: 2 cm inside the tips and 10 degrees between the halves are one size at about this depth (derived). */
const DEPTH_MM = 115;
/** Inside of the crown over the withers, girthed: the least that the trade's limit takes as inside (common practice). */
const CLEARANCE_MM = 45;
/** Inner edge, widths and thicknesses front to rear as in the reference cases (assumption). */
const INNER_EDGE_MM = 37.5;
const WIDTH_MM = { front: 105, rear: 120 } as const;
const THICK_MM = { front: 25, rear: 35 } as const;
/** Mid station as part of the bearing: 200 of 430 mm; the rear one 40 mm before the end. */
const MID_PART = 200 / 430;
const REAR_BEFORE_END_MM = 40;
/** The head's upper level, as the reference saddle is read, mm below the crown. */
const UPPER_MM = 35;
/** Girth straps behind the points, mm, as in the reference case with a girth. */
const STRAP_MM = 90;

type Pair = [number, number];

export const stationsOf = ({ lengthMm }: BackShape): { readonly [S in Station]: number } => ({
  front: 0,
  mid: MID_PART * lengthMm,
  rear: lengthMm - REAR_BEFORE_END_MM,
});

/** The back as it would be traced: three traces of 8 mm steps and a profile, without reading errors. */
export function horseOf(back: BackShape): SurveyedHorse {
  const reachMm = 176;
  const traces = Object.entries(stationsOf(back)).map(([station, x]) => ({
    station,
    behindFront: x,
    temper: "cold",
    points: Array.from({ length: 45 }, (_, i): Pair => {
      const y = -reachMm + 8 * i;
      return [y, crossMm(back, x, y)];
    }),
  }));
  const points = Array.from({ length: 46 }, (_, i): Pair => [-30 + 10 * i, midlineMm(back, -30 + 10 * i)]);
  return horseSchema.parse({ name: "invented", traces, profile: { points } });
}

/** The fitted saddle as it would be typed, for the back's larger side. */
export function fittedSaddle(back: BackShape): SurveyedSaddle {
  const { sections } = backOf(horseOf(back));
  const head = wantedHead(
    sections.front,
    { depthMm: DEPTH_MM, clearanceMm: CLEARANCE_MM, panelMm: THICK_MM.front },
    {},
  );
  if (isLacking(head)) throw new Error(`${back.id}: no head can be wanted: ${head.lacking.join(" ")}`);
  const angle = head.halfAngleRad * DEG_PER_RAD;
  const under = (station: Station) => angleUnder(back, station, sections[station], head.larger);
  const face = (station: Station, angleRad: number) => faceOf(back, station, angleRad, head.larger);
  return modelSaddle(
    {
      spreadTips: head.spreadMm,
      spreadUpper: head.spreadMm - 2 * (DEPTH_MM - UPPER_MM) * Math.tan(head.halfAngleRad),
      upperBelowCrown: UPPER_MM,
      depth: DEPTH_MM,
      halfAngleNear: angle,
      halfAngleOff: angle,
    },
    {
      panelEnd: back.lengthMm,
      deepestSeat: stationsOf(back).mid,
      strapNear: STRAP_MM,
      strapOff: STRAP_MM,
    },
    {
      front: face("front", Math.PI / 2 - head.halfAngleRad),
      mid: face("mid", under("mid")),
      rear: face("rear", under("rear")),
    },
  );
}

/** Width and thickness of the panel at a station, straight between its ends. */
function panelAt(back: BackShape, station: Station): { readonly width: number; readonly thick: number } {
  const part = stationsOf(back)[station] / back.lengthMm;
  const between = (ends: { front: number; rear: number }) => ends.front + (ends.rear - ends.front) * part;
  return { width: between(WIDTH_MM), thick: between(THICK_MM) };
}

/** The back's own angle under a panel; read over its extent across, which depends on the angle: a few rounds settle it. */
function angleUnder(back: BackShape, station: Station, section: Section, larger: Side): number {
  const { width } = panelAt(back, station);
  let angleRad = 0.6;
  for (let round = 0; round < 8; round++)
    angleRad = section.faceAngleRad(larger, INNER_EDGE_MM, INNER_EDGE_MM + width * Math.cos(angleRad), {});
  return angleRad;
}

/** A panel face of this angle whose middle lies on the back. */
function faceOf(back: BackShape, station: Station, angleRad: number, larger: Side): FaceRead {
  const x = stationsOf(back)[station];
  const { width, thick } = panelAt(back, station);
  const middle = INNER_EDGE_MM + (width / 2) * Math.cos(angleRad);
  const height = midlineMm(back, x) + crossMm(back, x, larger === "near" ? -middle : middle);
  return {
    innerEdge: INNER_EDGE_MM,
    width,
    faceAngle: angleRad * DEG_PER_RAD,
    underStraightEdge: -height,
    inner: thick,
    middle: thick,
    outer: thick,
  };
}
