import { combine, gridSurface, nearFields, nearSurface } from "../engine/surface.ts";
import type { SurveyedHorse, Trace } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { type ByStation, SIDES, STATIONS, type Station } from "../terms/places.ts";
import { eachStation } from "./along.ts";
import { type BackModes, backModes } from "./back-grid.ts";
import { loftError } from "./loft-error.ts";
import { midlineOf } from "./midline.ts";
import type { Back, Deviations, Lacking, Section, Uncertain } from "./model.ts";
import { type FormedSection, formSection, shiftOf } from "./section.ts";
import { POINT_MM, type Temper } from "./trace-doubt.ts";
import { isVoid } from "./trace-void.ts";

/** Traces must be this far apart along the back, mm (assumption). */
const APART_MM = 40;
const HOLLOW = "profile.hollow.mm";

/**
 * The back of a horse from its front, mid and rear traces of one temper and its profile. A trace of which nobody
 * asked counts as cold. Where something is missing or cannot be used, its path within the horse.
 */
export function buildBack(horse: SurveyedHorse, temper: Temper): Back | Lacking {
  const formed = eachStation((station) => formAt(horse, station, temper));
  const { front, mid, rear } = formed;
  const lacking = STATIONS.flatMap((station) => lackOf(formed[station]));
  if (horse.profile === undefined) lacking.push("profile");
  if (isLacking(front) || isLacking(mid) || isLacking(rear) || horse.profile === undefined)
    return { lacking };
  const all = { front, mid, rear };
  const xs = eachStation((station) => all[station].section.xMm);
  const order = STATIONS.filter(
    (station, i) => i > 0 && xs[station] - xs[STATIONS[i - 1] ?? "front"] < APART_MM,
  );
  if (order.length > 0) return { lacking: order.map((station) => `traces.${station}.${temper}.behindFront`) };
  const midline = midlineOf(horse.profile, xs.front, xs.rear);
  if (midline === undefined) return { lacking: ["profile.points"] };
  const sides = eachStation((station) => all[station].sides);
  const read = backModes(sides, xs, midline);
  const { grid, base } = read;
  const modes = modesOf(read);
  const gridOf = (coefficients: Float64Array) => gridSurface({ ...grid, coefficients });
  return {
    sections: eachStation((station) => all[station].section),
    midlineMm: midline,
    surface: (deviations) => {
      const coefficients = new Float64Array(base.length);
      combine(base, modes, weightsOf(all, deviations), coefficients);
      return gridOf(coefficients);
    },
    surfaceNear: (x, y) => {
      const near = nearSurface(nearFields(gridOf(base), modes.map(gridOf), x, y));
      return (deviations) => near(weightsOf(all, deviations));
    },
    uncertain: uncertainOf(all),
    loftErrorMm: loftError(sides, xs),
  };
}

/** The front section alone, where there is no more. */
export function buildFront(horse: SurveyedHorse, temper: Temper): Section | Lacking {
  const formed = formAt(horse, "front", temper);
  return isLacking(formed) ? formed : formed.section;
}

export function isLacking(built: object): built is Lacking {
  return "lacking" in built;
}

const lackOf = (formed: FormedSection | Lacking): readonly string[] =>
  isLacking(formed) ? formed.lacking : [];

function formAt(horse: SurveyedHorse, station: Station, temper: Temper): FormedSection | Lacking {
  const path = `traces.${station}.${temper}`;
  const traces = horse.traces.filter(
    (trace) => trace.station === station && temperOf(trace) === temper && !isVoid(horse, trace),
  );
  const [first] = traces;
  if (first === undefined) return { lacking: [path] };
  const x = isRead(first.behindFront) ? first.behindFront.value : undefined;
  // The front trace is drawn at the front station, which is where x is counted from.
  if (x === undefined && station !== "front") return { lacking: [`${path}.behindFront`] };
  const formed = formSection(traces, x ?? 0, station, temper);
  return typeof formed === "string" ? { lacking: [`${path}.${formed}`] } : formed;
}

const temperOf = (trace: Trace): Temper => (trace.temper === "warm" ? "warm" : "cold");

/** How much of each of the back's modes a draw has in it, in the order of `modesOf`. */
function weightsOf(formed: ByStation<FormedSection>, deviations: Deviations): readonly number[] {
  const sides = STATIONS.flatMap((station) =>
    SIDES.flatMap((side) => {
      const { widthMm, tiltRad } = shiftOf(formed[station].ids, side, deviations);
      return [widthMm, tiltRad];
    }),
  );
  return [...sides, deviations[HOLLOW] ?? 0];
}

function modesOf({ width, tilt, hollow }: BackModes): readonly Float64Array[] {
  const sides = STATIONS.flatMap((station) =>
    SIDES.flatMap((side) => [width[station][side], tilt[station][side]]),
  );
  return [...sides, hollow];
}

function uncertainOf(formed: ByStation<FormedSection>): readonly Uncertain[] {
  const all = STATIONS.flatMap((station) => formed[station].section.uncertain);
  const once = all.filter((one, i) => all.findIndex(({ id }) => id === one.id) === i);
  return [...once, { id: HOLLOW, kind: "normal", mean: 0, sd: POINT_MM }];
}
