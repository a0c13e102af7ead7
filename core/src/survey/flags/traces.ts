import type { Survey, SurveyedHorse, Trace } from "../case.ts";
import type { Point } from "../crossing.ts";
import { about, type Flag, flag, read } from "./flag.ts";

/** Depth below the top at which the two sides of a trace are compared, mm (common practice, no source: 60 to 90 at the front). */
const LEVEL_MM = { front: 60, mid: 25, rear: 20 } as const;
/** common practice, no source: sides further apart than 10 mm go to vet or physio too; here they are also asked about. */
const SIDES_APART_MM = 10;
/** From memory: a back is at rest again about 20 minutes after work. */
const RESTED_MINUTES = 20;

export const traceFlags = ({ horses }: Survey): Flag[] =>
  horses.flatMap((horse, at) => horseTraceFlags(horse, `horses[${at}]`));

function horseTraceFlags(horse: SurveyedHorse, path: string): Flag[] {
  return [
    ...outOfOrder(horse, path),
    ...oneSided(horse, path),
    ...sidesDisagree(horse, path),
    ...coldAfterWork(horse, path),
    ...sameStation(horse, path),
  ];
}

/** Half-width at a depth: the first crossing outward from the midline, near and off; undefined where the trace ends above it. */
function halfWidths(points: readonly Point[], depthMm: number): readonly [number, number] | undefined {
  const crossings = points.slice(1).flatMap((to, at) => {
    const from = points[at] ?? to;
    if ((from[1] + depthMm) * (to[1] + depthMm) > 0 || from[1] === to[1]) return [];
    return [from[0] + ((-depthMm - from[1]) / (to[1] - from[1])) * (to[0] - from[0])];
  });
  const near = crossings.filter((y) => y < 0).map((y) => -y);
  const off = crossings.filter((y) => y > 0);
  return near.length > 0 && off.length > 0 ? [Math.min(...near), Math.min(...off)] : undefined;
}

/** Near half-width less off half-width, mm. */
function lean(trace: Trace): number {
  const widths = halfWidths(trace.points, LEVEL_MM[trace.station]);
  return widths ? widths[0] - widths[1] : 0;
}

const sideOf = (lean: number): string => (lean > 0 ? "near" : "off");

function outOfOrder({ traces }: SurveyedHorse, path: string): Flag[] {
  const places = { front: 0, mid: 1, rear: 2 } as const;
  const wrong = traces.findIndex((trace) => {
    const here = read(trace.behindFront);
    return (
      here &&
      traces.some(
        (other) =>
          places[other.station] < places[trace.station] &&
          (read(other.behindFront)?.value ?? -Infinity) >= here.value,
      )
    );
  });
  return wrong < 0
    ? []
    : [
        flag(
          `${path}.traces[${wrong}].behindFront`,
          `this ${traces[wrong]?.station} trace lies no further back than one of a station before it`,
        ),
      ];
}

function oneSided({ traces }: SurveyedHorse, path: string): Flag[] {
  return traces.flatMap((trace, at) => {
    const apart = lean(trace);
    if (Math.abs(apart) <= SIDES_APART_MM) return [];
    const says = `the ${sideOf(apart)} side is ${about(Math.abs(apart))} wider, ${LEVEL_MM[trace.station]} mm below the top: is the drawing mirrored, or slid to one side?`;
    return [flag(`${path}.traces[${at}]`, says)];
  });
}

/** One trace mirrored among others, or hollows on the side that the trace shows full. */
function sidesDisagree(horse: SurveyedHorse, path: string): Flag[] {
  const leans = horse.traces.map(lean);
  const mirrored = leans.findIndex((here, at) =>
    leans.some(
      (other, i) =>
        i < at && here * other < 0 && Math.min(Math.abs(here), Math.abs(other)) > SIDES_APART_MM / 2,
    ),
  );
  const [near, off] = [read(horse.standing.hollowNear), read(horse.standing.hollowOff)];
  const front = horse.traces.findIndex((trace) => trace.station === "front");
  const hollower = near && off ? near.value - off.value : 0;
  return [
    ...(mirrored < 0
      ? []
      : [
          flag(
            `${path}.traces[${mirrored}]`,
            "this trace is fuller on the other side than a trace before it: is one of them mirrored?",
          ),
        ]),
    ...(front >= 0 &&
    Math.abs(hollower) > SIDES_APART_MM / 2 &&
    hollower * (leans[front] ?? 0) > 0 &&
    Math.abs(leans[front] ?? 0) > SIDES_APART_MM / 2
      ? [
          flag(
            `${path}.traces[${front}]`,
            `the ${sideOf(hollower)} side was read hollow and drawn full: are near and off exchanged?`,
          ),
        ]
      : []),
  ];
}

function coldAfterWork({ traces }: SurveyedHorse, path: string): Flag[] {
  return traces.flatMap((trace, at) => {
    const minutes = read(trace.minutesSinceWork);
    if (trace.temper !== "cold" || !minutes || minutes.value >= RESTED_MINUTES) return [];
    return [
      flag(
        `${path}.traces[${at}].minutesSinceWork`,
        `called cold, but drawn ${minutes.typed} after work; a back rests for ${RESTED_MINUTES} minutes`,
      ),
    ];
  });
}

function sameStation({ traces }: SurveyedHorse, path: string): Flag[] {
  return traces.flatMap((trace, at) => {
    const before = traces
      .slice(0, at)
      .some((other) => other.station === trace.station && other.temper === trace.temper);
    return before
      ? [
          flag(
            `${path}.traces[${at}].station`,
            `a second ${trace.station} trace, ${trace.temper}: the same trace drawn again belongs in the repeats of the first`,
          ),
        ]
      : [];
  });
}
