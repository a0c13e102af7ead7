import { WALKS_BACK } from "@treewright/core/work/doubts.ts";
import type { Foretold, Interval } from "@treewright/core/work/foretell.ts";
import type { PressJob } from "@treewright/core/work/job.ts";
import type { NextPass } from "@treewright/core/work/next-pass.ts";
import type { Stop } from "@treewright/core/work/stops.ts";
import { wrap } from "./columns.ts";

/** A kept change is not below nothing; its doubt may be. */
const above = (value: number): string => Math.max(0, value).toFixed(1);
const mm = ({ lo, mid, hi }: Interval): string => `${above(mid)} mm (${above(lo)} to ${above(hi)})`;
const newtons = ({ lo, hi }: Interval): string =>
  `${Math.round(lo / 100) / 10} to ${Math.round(hi / 100) / 10} kN`;
const percent = ({ mid, hi }: Interval): string =>
  `${(100 * mid).toFixed(2)} %, up to ${(100 * hi).toFixed(2)} %`;
const item = (text: string): string[] => wrap(`- ${text}`, 2, 2);

const CAME = {
  "as-foretold": "as foretold",
  more: "MORE than foretold",
  less: "less than foretold",
} as const;
const BOUND = {
  wanted: "any more could keep more than is wanted and allowed",
  stretch: "any more stretches the outer face beyond its stop",
  "nothing-left": "",
} as const;

/** A job at the press so far, and its next pass or why there is none. For the bench alone. */
export function passesText(job: PressJob): string[] {
  const { way, wantedMm, allowedMm, cappedBy, passes, stops, next, ended, look, stuff } = job;
  return [
    ...wrap(
      `For the bench alone: ${way === 1 ? "opening" : "closing"}, ${wantedMm.toFixed(1)} mm wanted at the tips.`,
    ),
    ...(cappedBy.length > 0
      ? item(`The caps leave ${allowedMm.toFixed(1)} mm of it: ${cappedBy.join(", ")}.`)
      : []),
    ...stops
      .filter(({ says }) => says.startsWith("STOP"))
      .flatMap(({ says, provenance }) => wrap(`${says} (${provenance})`)),
    ...passes.flatMap(({ foretold, keptMm, keptU, came }, i) =>
      item(
        `pass ${i + 1}, travel ${foretold.travelMm.toFixed(1)} mm: kept ${keptMm.toFixed(1)} ± ${(2 * keptU).toFixed(1)} mm since the start, ${CAME[came]} (${above(foretold.keptMm.lo)} to ${above(foretold.keptMm.hi)})`,
      ),
    ),
    ...(passes.length > 0 && !stops.some(({ id }) => LOST.has(id)) ? standsLines(job) : []),
    ...stops
      .filter(({ says }) => !says.startsWith("STOP"))
      .flatMap(({ says, provenance }) => item(`${says} (${provenance})`)),
    ...(next ? nextLines(next, passes.length) : []),
    ...(ended === "reached" ? item("Reached: no further pass.") : []),
    ...(ended === "strain"
      ? item("No further pass: the stop on strain comes first. What is left is not pressed into this head.")
      : []),
    ...(ended === "doubt"
      ? item(
          "No further pass: whatever adds half a millimetre could also keep more than is wanted and allowed. Read the " +
            "spread several times, or on the bare tree.",
        )
      : []),
    ...look.flatMap((text) => item(`after each pass look at: ${text}`)),
    ...item(`Held 24 h it is not proved: ${WALKS_BACK[stuff]}. Read the spread then, and after riding.`),
    ...NOTES.flatMap((text) => wrap(text)),
  ];
}

/** After these nothing that was believed stands. */
const LOST: ReadonlySet<string> = new Set<Stop["id"]>(["more-than-foretold", "unlike"]);

const standsLines = ({ keptMm, bySideMm }: PressJob): string[] =>
  item(`Kept now: ${mm(keptMm)}; near ${mm(bySideMm.near)}, off ${mm(bySideMm.off)}.`);

function nextLines({ foretold, boundBy }: NextPass, made: number): string[] {
  return [
    "",
    ...wrap(
      `Pass ${made + 1}: travel ${foretold.travelMm.toFixed(1)} mm from first touch, both tips together.`,
    ),
    ...item(keeps(foretold, made)),
    ...item(`near ${mm(foretold.nearMm)}, off ${mm(foretold.offMm)}`),
    ...item(
      `force about ${newtons(foretold.forceN)}; stretch of the outer face ${percent(foretold.stretch)}`,
    ),
    ...item(`No further than that: ${BOUND[boundBy]}.`),
  ];
}

const keeps = ({ keptMm, mostKeptMm }: Foretold, made: number): string =>
  `keeps ${mm(keptMm)} since the start, 90 % interval${made === 0 ? `; of all heads believed none keeps more than ${mostKeptMm.toFixed(1)} mm: sized by the least spring-back` : ""}`;

const NOTES = [
  "",
  "Intervals come from heads drawn out of stated ranges and weighed by what was read; they foretell the next pass and " +
    "name no cause: not the steel, not the wood. The first interval leans on assumptions alone. They hold for wood; of " +
    "polymer that walks back under hold nothing is known here but what is read.",
  "The maker's word comes first. A crack, a noise, a white line or parted layers end the job, whatever is foretold.",
];
