import type { Language } from "../catalogue/use-words.ts";
import {
  clearanceRead,
  headAtClearance,
  isRead,
  type Judged,
  limitRule,
  type Outcome,
  type Placed,
  printed,
  type Side,
  STATIONS,
  type Station,
  type Survey,
  type SweepPoint,
  type UnitsChosen,
} from "../road.ts";
import { shownFigure, shownMm } from "../units/shown.ts";
import type { BackLineView } from "./back-line.tsx";
import type { Point } from "./contours.ts";
import type { Span } from "./dimension.tsx";

export interface Gap {
  readonly at: Point;
  readonly words: string;
  readonly outcome: Outcome;
}

/** One section as it is drawn, with its figures in words. */
export interface SectionView extends Placed {
  readonly station: Station;
  readonly gap: { readonly [S in Side]: Gap | undefined };
  readonly spread: Span | undefined;
  /** Clearance over the top of the withers as it was read, moved by what the head changes; undefined where it was not read. */
  readonly clearance: { readonly mm: number; readonly words: string; readonly state: string } | undefined;
}

/** The section at a station under a moved head; undefined where there is no trace. */
export function sectionView(
  point: SweepPoint,
  station: Station,
  units: UnitsChosen,
): SectionView | undefined {
  const placed = point.placed[station];
  if (placed === undefined) return undefined;
  const gap = (side: Side): Gap | undefined => {
    const limit = faceLimit(point.limits, station, side);
    const [inner, outer] = placed.panel[side];
    if (limit?.value === undefined || inner === undefined || outer === undefined) return undefined;
    const words = `${limit.value > 0 ? "+" : ""}${printed({ value: limit.value, u: limit.u }, "deg")}`;
    return { at: [(inner[0] + outer[0]) / 2, (inner[1] + outer[1]) / 2], words, outcome: limit.outcome };
  };
  const clearance = placed.head.length > 0 ? clearanceOf(point.limits, units) : undefined;
  const head = clearance === undefined ? placed.head : headAtClearance(placed.head, clearance.mm);
  return {
    ...placed,
    head,
    station,
    gap: { near: gap("near"), off: gap("off") },
    spread: spreadOf(point, head, units),
    clearance,
  };
}

function clearanceOf(limits: readonly Judged[], units: UnitsChosen): SectionView["clearance"] {
  const read = clearanceRead(limits);
  if (read?.value === undefined) return undefined;
  const { state } = limitRule(read.rule);
  return { mm: read.value, words: shownMm(read.value, 1, units), state };
}

/** Tree's face against the back's; the warm trace where there is no cold one. */
function faceLimit(limits: readonly Judged[], station: Station, side: Side): Judged | undefined {
  const here = limits.filter(
    (one) => one.rule.startsWith("face-") && one.station === station && one.side === side,
  );
  return here.find((one) => one.temper === "cold") ?? here[0];
}

/** The spread across the lowest points of the head's inside. */
function spreadOf({ spreadMm }: SweepPoint, head: Placed["head"], units: UnitsChosen): Span | undefined {
  if (head.length === 0) return undefined;
  const inside = head.slice(0, head.length / 2);
  const near = inside[0] ?? [0, 0];
  const off = inside.at(-1) ?? [0, 0];
  return {
    fromMm: near[0],
    toMm: off[0],
    heightMm: Math.max(near[1], off[1]),
    words: shownMm(spreadMm, 1, units),
  };
}

/** Worst first: what a station is marked with. */
const WORST: readonly Outcome[] = ["outside", "cannot-tell", "between", "inside"];

function worst(limits: readonly Judged[]): Outcome | "not-read" {
  return WORST.find((outcome) => limits.some((one) => one.outcome === outcome)) ?? "not-read";
}

/** Usual distance of the stations behind the tree points, mm; for the drawing of a case in which they were not read. */
const USUAL_MM: { readonly [S in Station]: number } = { front: 0, mid: 210, rear: 390 };

/** The back from the near side with its stations, each marked by the worst of its faces. */
export function backLineView(survey: Survey, horse: number, today: SweepPoint | undefined): BackLineView {
  const surveyed = survey.horses[horse];
  const end = survey.saddle.bearing.panelEnd;
  return {
    profile: surveyed?.profile?.points ?? [],
    panelEndMm: isRead(end) ? end.value : undefined,
    marks: STATIONS.map((station) => {
      const trace = surveyed?.traces.find((one) => one.station === station);
      const read = trace && isRead(trace.behindFront) ? trace.behindFront.value : undefined;
      const faces = (today?.limits ?? []).filter(
        (one) => one.rule.startsWith("face-") && one.station === station,
      );
      return { station, xMm: read ?? USUAL_MM[station], read: read !== undefined, outcome: worst(faces) };
    }),
  };
}

export interface Followed {
  readonly what: string;
  readonly today: string;
  readonly after: string;
  readonly outcome: Outcome;
}

/** Limits that a head moves, in the order in which they are shown. */
const MOVED = [
  "clearance-girthed",
  "clearance-rider-up",
  "clearance-half-seat",
  "clearance-side",
  "seat-slope",
  "channel-over-ridge",
  "face-front",
  "face-rail",
  "spread-wanted",
] as const;
type MovedLimit = (typeof MOVED)[number];
const MOVED_IDS: readonly string[] = MOVED;

/** What follows from a moved head: each limit that it moves, today beside after; faces only at the station looked at. */
export function followedBy(
  today: SweepPoint,
  after: SweepPoint,
  station: Station,
  units: UnitsChosen,
  language: Language,
): Followed[] {
  const order = ({ rule }: Judged) => MOVED_IDS.indexOf(rule);
  return after.limits
    .filter((one) => order(one) >= 0 && (!one.rule.startsWith("face-") || one.station === station))
    .sort((a, b) => order(a) - order(b))
    .flatMap((one) => {
      const before = today.limits.find((other) => other.rule === one.rule && other.at === one.at);
      const { unit } = limitRule(one.rule);
      const said = (limit: Judged | undefined) =>
        shownFigure(limit?.value === undefined ? undefined : { value: limit.value, u: limit.u }, unit, units);
      if (one.value === undefined && before?.value === undefined) return [];
      return [
        { what: limitWords(one, language), today: said(before), after: said(one), outcome: one.outcome },
      ];
    });
}

const isMoved = (rule: string): rule is MovedLimit => MOVED_IDS.includes(rule);

function limitWords({ rule, at }: Judged, { words, trade }: Language): string {
  const name = isMoved(rule) ? words.bench.limits[rule] : rule;
  const places = at === "" || rule.endsWith(at) ? [] : at.split(", ");
  return [name, ...places.map(trade.said)].join(", ");
}
