import { DEG_PER_RAD } from "../answer/figures.ts";
import type { Answer, Wanted } from "../answer/result.ts";
import type { TemplateData } from "../report/template-data.ts";
import { headOutline, wantedOutline } from "../shape/head-outline.ts";
import type { Survey } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { factsOf } from "./facts.ts";

/** The panel under the points and, outside, the head in its own thickness: the wanted head stands off the back by both. */
function allowedFor({ head, today }: Wanted, { saddle }: Survey, face: TemplateData["face"]): string {
  const panel = head.panelMm === 0 ? "no panel" : `panel ${head.panelMm.toFixed(1)} mm`;
  if (face === "inside") return `allowed for between back and line: ${panel}`;
  const assumed = isRead(saddle.head.thickness) ? "" : " (assumed)";
  return `allowed for between back and line: ${panel}, head with its plate ${today.thicknessMm.toFixed(1)} mm${assumed}`;
}

/** Halves that differ by less than this are alike, mm (assumption: below what a curve reads). */
const ALIKE_MM = 2;

/**
 * The wanted head at 1:1: unless a face is asked for, the inside of the head for a bare tree and the outside for one in
 * its saddle. Undefined on a flag, or where head or front trace were not read.
 */
export function templateDataOf(
  survey: Survey,
  answer: Answer,
  asked?: TemplateData["face"],
): TemplateData | undefined {
  const { wanted } = answer;
  if (wanted === undefined) return undefined;
  const face = asked ?? (survey.saddle.looked.level === "bare" ? "inside" : "outside");
  const outline = wantedOutline(wanted.head, face, wanted.today.thicknessMm);
  const tip = outline.off.at(-1);
  const crown = outline.off[0];
  if (tip === undefined || crown === undefined) return undefined;
  const halfAngle = {
    value: wanted.head.halfAngleRad * DEG_PER_RAD,
    u: wanted.halfAngleURad === undefined ? undefined : wanted.halfAngleURad * DEG_PER_RAD,
  };
  const apart = Math.abs(wanted.head.sides.near.halfSpreadMm - wanted.head.sides.off.halfSpreadMm);
  return {
    facts: factsOf(survey, answer),
    face,
    wanted: outline,
    today: headOutline(wanted.today, face),
    spread: { value: 2 * tip[0], u: wanted.spreadUMm },
    depth: { value: crown[1] - tip[1], u: undefined },
    allowed: allowedFor(wanted, survey, face),
    halfAngle: { near: halfAngle, off: halfAngle },
    station: "front, at the tree points",
    temper: wanted.temper,
    larger: apart < ALIKE_MM ? "alike" : wanted.head.larger,
  };
}
