import { DEG_PER_RAD } from "../answer/figures.ts";
import type { PlateId, PlateSeen, PlatesSeen } from "../answer/plates.ts";
import type { PlateAfter } from "../answer/plates-after.ts";
import type { Answer } from "../answer/result.ts";
import type { MountingCheck } from "../reach/mounting.ts";
import type { Ranked } from "../reach/plates/ranking.ts";
import { printed } from "../report/figures.ts";
import type { PlateRow, SheetPlates } from "../report/sheet-plates.ts";
import { aboutPath } from "../survey/about-path.ts";
import type { Plate } from "../survey/case.ts";
import type { StockPlate } from "../survey/stock.ts";
import { limitName } from "./limit-names.ts";

const CHECK_WORDS: { readonly [W in MountingCheck["what"]]: string } = {
  holes: "holes",
  pitch: "pitch of the holes",
  thickness: "thickness",
  edge: "edge",
};

/** What a person calls the plate: by its own words, which nothing is compared by. */
export function plateName(
  { list, index }: PlateId,
  atHand: readonly Plate[],
  stock: readonly StockPlate[],
): string {
  if (list === "at-hand") {
    const plate = atHand[index];
    const said = [plate?.maker === "not named" ? "" : plate?.maker, plate?.label].filter(Boolean).join(" ");
    return `plate ${index + 1}${said === "" ? "" : `, "${said}"`}`;
  }
  const plate = stock[index];
  const mark = plate?.mark ? `, ${plate.mark}` : "";
  return `stock ${index + 1}, "${plate?.maker ?? ""} ${plate?.word ?? ""}"${mark}`;
}

/** Whether a plate can go in, in words with every reason. */
export function mountingSays({ mounting, checks, sound }: PlateSeen): string {
  const named = (match: MountingCheck["match"]) =>
    checks.filter((one) => one.match === match).map(({ what }) => CHECK_WORDS[what]);
  const seen = sound === "sound" ? "" : `; not seen sound (${sound.replace(/-/g, " ")})`;
  if (mounting === "differs") return `does not fit: different ${named("differs").join(", ")}${seen}`;
  if (mounting === "cannot-tell")
    return `cannot tell: ${named("cannot-tell").join(", ")} not read on both${seen}`;
  return `fits the mounting${seen}`;
}

/** The head a plate makes, or what was not read for it. */
export function makesSays({ makes, lacking }: PlateSeen): string {
  if (makes === undefined)
    return `its head is not known; missing: ${lacking.map((path) => aboutPath(path.replace(/\.(\d+)\./, "[$1]."))).join("; ")}`;
  const angle = makes.halfAngleRad && inDegrees(makes.halfAngleRad);
  const turned = angle ? `, half-angle ${printed(angle, "deg")}` : ", half-angle not read";
  return `${printed(makes.spreadMm, "mm")} inside the tips as fitted${turned}`;
}

const inDegrees = ({ value, u }: { readonly value: number; readonly u: number }) => ({
  value: value * DEG_PER_RAD,
  u: u * DEG_PER_RAD,
});

/** How far off it lies, and how sure that is. */
export function rankSays(one: Ranked<PlateId>, place: number, of: number): string {
  const { apartMm, uMm, nearestPart, firstNearerPart, toldFromFirst } = one;
  const way = apartMm < 0 ? "narrower" : "wider";
  const apart = `${printed({ value: Math.abs(apartMm), u: uMm }, "mm")} a side ${way} than wanted where it is farthest off`;
  if (place === 0) return of === 1 ? apart : `${apart}; nearest in ${partSays(nearestPart)}`;
  const first = `the first lies nearer in ${partSays(firstNearerPart ?? 0)}`;
  return toldFromFirst
    ? `${apart}; farther off: ${first}`
    : `${apart}; cannot tell it from the first: ${first}`;
}

/** No draw is ever said to be all of them: a hundredth more is never claimed than was drawn. */
const partSays = (part: number): string => {
  const percent = Math.floor(part * 100);
  return percent >= 100
    ? "over 99 of 100 draws"
    : percent < 1
      ? "under 1 of 100 draws"
      : `${percent} of 100 draws`;
};

/** Difference to what one horse wants, in words. */
export function againstSays(against: { readonly spreadMm: number; readonly halfAngleRad: number }): string {
  const { spreadMm, halfAngleRad } = against;
  const angle = halfAngleRad * DEG_PER_RAD;
  const round = (value: number) => Math.abs(value).toFixed(1);
  return `${round(spreadMm)} mm ${spreadMm < 0 ? "narrower" : "wider"} at the tips, ${round(angle)}° ${angle < 0 ? "steeper" : "flatter"}`;
}

/** Every plate with what it is for this saddle: those that come in question by rank, then the others. */
export function plateRows(
  seen: PlatesSeen,
  called: readonly Plate[],
): readonly { readonly id: PlateId; readonly row: PlateRow }[] {
  const row = (plate: PlateSeen, says: string) => ({
    id: plate.id,
    row: { name: plateName(plate.id, called, []), makes: makesSays(plate), says },
  });
  const ranked = seen.ranked.flatMap((one, place) => {
    const plate = seen.plates.find(({ id }) => id === one.id);
    return plate ? [row(plate, rankSays(one, place, seen.ranked.length))] : [];
  });
  const others = seen.plates.filter(({ id }) => !seen.ranked.some((one) => one.id === id));
  return [...ranked, ...others.map((plate) => row(plate, mountingSays(plate)))];
}

/** Nothing where the answer has no plates: what the head takes, which of those at hand, and why not the others. */
export function platesOf({ plates }: Answer): SheetPlates {
  if (plates === undefined) return { rows: [], note: "" };
  const { seen, after, chosen, called, horses } = plates;
  const whole = (id: PlateId) => {
    if (id.index === chosen) return "this one: the whole holds with it";
    const ranked = seen.ranked.some((one) => one.id === id);
    return ranked
      ? wholeSays(
          after.find(({ plate }) => plate === id.index),
          horses,
        )
      : "";
  };
  const rows = plateRows(seen, called).map(({ id, row }) => {
    const told = whole(id);
    return told === "" ? row : { ...row, says: `${row.says}; ${told}` };
  });
  return { rows, note: NOTE };
}

const NOTE =
  "By the face of the points against the template's, at the front alone; then the whole. Loose plates have 2 mm more doubt: measure as fitted.";
/** Faults that are named; the rest are counted. */
const FAULTS_MOST = 2;

function wholeSays(after: PlateAfter | undefined, horses: readonly string[]): string {
  if (after === undefined) return "";
  const harmed = after.harms.map((index) => horses[index] ?? "").join(", ");
  const harms = harmed === "" ? [] : [`puts ${harmed} outside`];
  const rules = [...new Map(after.faults.map((one) => [one.rule, one])).keys()];
  const worst = (rule: string) => after.faults.find((one) => one.rule === rule)?.outcome ?? "";
  const named = rules.slice(0, FAULTS_MOST).map((rule) => `${limitName(rule, "")} ${worst(rule)}`);
  const more = rules.length - named.length;
  const faults =
    named.length === 0 ? [] : [`after it: ${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}`];
  return [...harms, ...faults].join("; ");
}
