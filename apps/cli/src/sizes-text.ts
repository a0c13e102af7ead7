import { DEG_PER_RAD } from "@treewright/core/answer/figures.ts";
import type { WordAgainst, WordMeans, WordsCompared } from "@treewright/core/reach/plates/compared.ts";
import { printed } from "@treewright/core/report/figures.ts";
import { spreadForIncludedMm } from "@treewright/core/shape/plate.ts";
import { aboutPath } from "@treewright/core/survey/about-path.ts";
import { wrap } from "./columns.ts";

/** The included angle that the trade's rule of thumb speaks of, degrees. */
const RULE_DEG = 10;
/** The depth at which that angle is 2 cm of spread, mm (derived: 10 / tan 5 degrees). */
const RULE_DEPTH_MM = 115;

type Figure = WordMeans["spreadMm"];
const degrees = ({ value, u }: Figure): string =>
  printed({ value: value * DEG_PER_RAD, u: u * DEG_PER_RAD }, "deg");
const pieces = (count: number): string => (count === 1 ? "one piece" : `${count} pieces`);

function againstLine({ maker, word, spreadMm, halfAngleRad, told }: WordAgainst): string {
  const apart = `less "${word}" of ${maker}: ${printed(spreadMm, "mm")}, ${degrees(halfAngleRad)}`;
  return told ? `${apart}` : `${apart}; cannot tell them apart`;
}

/** What every maker's word stands for, in millimetres and degrees at one level. */
export function sizesText({ levelMm, words, leftOut }: WordsCompared): string[] {
  const rule = spreadForIncludedMm(RULE_DEG / DEG_PER_RAD, levelMm);
  return [
    ...wrap(`Makers' words at ${levelMm.toFixed(0)} mm below the crown, inside`),
    "",
    ...words.flatMap(({ maker, word, pieces: count, spreadMm, halfAngleRad, between, nearest }) => [
      ...wrap(`${maker}, "${word}" (${pieces(count)})`, 2, 2),
      ...wrap(`${printed(spreadMm, "mm")}, half-angle ${degrees(halfAngleRad)}`, 6, 2),
      ...wrap(
        `from piece to piece ${between.spreadMm.toFixed(1)} mm, ${(between.halfAngleRad * DEG_PER_RAD).toFixed(1)}° (standard)`,
        6,
        2,
      ),
      ...nearest.flatMap((one) => wrap(againstLine(one), 6, 2)),
    ]),
    ...(leftOut.length > 0 ? ["", "Left out"] : []),
    ...leftOut.flatMap(({ plate, index, lacking }) =>
      wrap(
        `stock ${index + 1}, ${plate.maker} "${plate.word}": ${lacking.map((path) => leftOutSays(path, levelMm)).join("; ")}`,
        2,
        2,
      ),
    ),
    "",
    ...wrap(
      `U is for a further piece of that word; how pieces differ counts an assumed 2 mm and 1 degree (1 to 4 mm, 0.5 to 2 degrees) with four degrees of freedom beside what was measured.`,
    ),
    ...wrap(
      `At this level ${RULE_DEG} degrees of included angle, opened about the crown, are ${rule.toFixed(0)} mm; "2 cm for 10 degrees" holds only about ${RULE_DEPTH_MM} mm down. A word is no measure: measure the piece in hand.`,
    ),
  ];
}

const leftOutSays = (path: string, levelMm: number): string =>
  path.endsWith(".depth") ? `its legs end above ${levelMm.toFixed(0)} mm` : `not read: ${aboutPath(path)}`;
