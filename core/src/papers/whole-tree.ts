import type { FrameAnswer, Ranged } from "../answer/frame.ts";
import type { Answer } from "../answer/result.ts";
import type { WholeTreeSheet } from "../report/sheet-whole-tree.ts";
import { STATIONS } from "../terms/places.ts";
import { takenSays } from "./press.ts";

/** The whole tree that the chosen setting makes, in words: working sheet and command line. */
export function wholeTreeOf({ frame, bend }: Answer): WholeTreeSheet | undefined {
  if (frame === undefined) return undefined;
  // What the press stands on is printed with the press.
  const own = frame.taken.filter(({ prior }) => bend === undefined || !prior.id.startsWith("bend."));
  return {
    rows: rowsOf(frame),
    says: [rearSays(frame), lockedSays(frame), LEFT_OUT],
    assumed: own.map(takenSays),
  };
}

const LEFT_OUT =
  "Linear, without a rider, at rest after the tips were let go; what yields at the press and stays between plates and wood is told there. The cantle's deck is the greatest unknown.";

function rowsOf({ stations, profileMm }: FrameAnswer): WholeTreeSheet["rows"] {
  return [
    ...STATIONS.flatMap((station) => {
      const { spreadMm, turnDeg, upMm } = stations[station];
      return [
        { what: `${station}: bearing faces apart`, value: ranged(spreadMm, 1, " mm") },
        { what: `${station}: flatter`, value: ranged(turnDeg, 1, "°") },
        { what: `${station}: up in the saddle`, value: ranged(upMm, 1, " mm") },
      ];
    }),
    { what: "most off their straight line", value: ranged(profileMm, 1, " mm") },
  ];
}

/** Two figures from memory stand against each other; which of them a tree follows is its deck. */
function rearSays({ rearPercent, keptDeg }: FrameAnswer): string {
  return `The rear keeps ${ranged(rearPercent, 0, " %")} of the front's turn. From memory: under 5 % with a stiff deck at the cantle, 8 to 27 % of laminated and 22 to 61 % of polymer rails without; laminated trees are taken with a deck, polymer ones without, and both are drawn with more or less of one. Each half keeps ${ranged(keptDeg, 1, "°")} at its hinge.`;
}

function lockedSays({ locked, draws }: FrameAnswer): string {
  const parts = [
    ["wood or polymer of the head", locked.headMPa, " MPa"],
    ["rails", locked.railMPa, " MPa"],
    ["plates or bar", locked.plateMPa, " MPa"],
    ["spring steels", locked.springMPa, " MPa"],
    ["each rivet", locked.rivetN, " N"],
  ] as const;
  const said = parts.flatMap(([what, one, unit]) =>
    one === undefined ? [] : [`${what} ${ranged(one, 0, unit)}`],
  );
  return `Locked in by rails and cantle, at most: ${said.join("; ")} (ranges: 95 % of ${draws} draws over the sections that nobody read).`;
}

const ranged = ({ value, lo, hi }: Ranged, decimals: number, unit: string): string =>
  `${signed(value, decimals)}${unit} (${signed(lo, decimals)} to ${signed(hi, decimals)})`;

/** A true minus sign, and no minus before a figure that prints as nothing. */
function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}
