import type { BendAnswer, PressChosen } from "../answer/bend.ts";
import { DEG_PER_RAD } from "../answer/figures.ts";
import type { Answer } from "../answer/result.ts";
import type { Taken } from "../reach/beliefs.ts";
import { CREEP } from "../reach/creep.ts";
import type { PressSheet } from "../report/sheet-press.ts";

/** The press in words, for the bench: working sheet and command line. Nothing of it goes to an owner. */
export function pressOf({ bend }: Answer): PressSheet | undefined {
  if (bend === undefined) return undefined;
  return {
    says: [...chosenSays(bend), ...reachSays(bend), ...pastSays(bend), LEFT_OUT],
    look: bend.chosen?.look ?? [],
    assumed: bend.taken.map(takenSays),
  };
}

const LEFT_OUT =
  "Reckoned for the bare head at the base values, slowly and without time: hold, warmth and creep are not in it. What stops is cracks, parted layers, rivets, path and reversals; no strain here opens anything.";

const percent = (strain: number): string => `${(100 * strain).toFixed(2)} %`;
const kN = (force: number): string => `${(Math.abs(force) / 1000).toFixed(1)} kN`;
const mm = (value: number): string => `${Math.abs(value).toFixed(1)} mm`;
const signed = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(0)}`;

function chosenSays(bend: BendAnswer): readonly string[] {
  const { chosen } = bend;
  if (chosen === undefined) return [];
  return [travelSays(chosen), bearsSays(bend, chosen), bendsSays(chosen), ...stuffSays(bend, chosen)];
}

function travelSays({ strain, travel }: PressChosen): string {
  const range =
    travel === undefined
      ? "too wide to say"
      : `${travel.loMm.toFixed(1)} to ${travel.hiMm.toFixed(1)} mm in nine of ten of ${travel.draws} draws over what is not known of this head${travel.givesWay > 0 ? `, in ${travel.givesWay} of them it gives way` : ""}; a first pass goes no further than the least, ${travel.leastMm.toFixed(1)} mm`;
  return `To keep ${mm(strain.changeMm)} ${strain.changeMm > 0 ? "wider" : "narrower"} at the tips: travel ${mm(strain.travelMm)} from first touch (${range}); ${mm(strain.springBackMm)} of it springs back; ${kN(strain.forceN)} between the tips.`;
}

function bearsSays({ stuff, stop, jointN }: BendAnswer, { strain }: PressChosen): string {
  const core = `${stuff === "wood" ? "Wood" : "Polymer"} stretched by ${percent(strain.stretch)} (stop ${percent(stop.limit)}, ${stop.provenance})`;
  const crushed = stuff === "wood" ? `, crushed by ${percent(strain.crushed)} on the squeezed side` : "";
  const steel = `; ${stuff === "wood" ? "plates" : "bar"} strained by ${percent(strain.steelStrain)}`;
  const joint =
    jointN === undefined
      ? ""
      : `, ${kN(strain.plateN)} in a plate, whose rivets pass ${kN(jointN)}${strain.plateN > 0.99 * jointN ? ": they slip" : ""}`;
  return `${core}${crushed}${steel}${joint}.`;
}

function bendsSays({ figures }: PressChosen): string {
  const { keptMm, turnRad, keptUpperMm, bendsOverMm, hingePart } = figures;
  const half = (side: "near" | "off") =>
    `${side} ${mm(keptMm[side])}, turned ${Math.abs(turnRad[side] * DEG_PER_RAD).toFixed(1)}°`;
  const upper = keptUpperMm === undefined ? "" : `; ${mm(keptUpperMm)} at the upper level`;
  return `Kept by each half: ${half("near")}; ${half("off")}${upper}. Nine tenths of it lie in ${bendsOverMm.toFixed(0)} mm about the crown, as if hinged at ${hingePart.toFixed(2)} of its height over the tips.`;
}

/** Share of a change that comes back: practice of barred polymer, from memory. */
function stuffSays({ stuff }: BendAnswer, { strain, figures }: PressChosen): readonly string[] {
  if (stuff === "wood")
    return [
      `The steel has spent ${(100 * figures.lifePart).toFixed(4)} % of a polished coupon's life by all bends and this one (published constants): tiny, it opens nothing.`,
    ];
  const back = (100 * strain.springBackMm) / strain.travelMm;
  return [
    `By this reckoning ${back.toFixed(0)} % of the travel returns at once; practice says 60 to 80 % (from memory). Of what is kept ${CREEP.partBack.map((part) => 100 * part).join(" to ")} % creeps back within a week (${CREEP.provenance}): measure again after a day and after a week.`,
  ];
}

/** How far each way until the stop. */
function reachSays({ settings, stop }: BendAnswer): readonly string[] {
  const inside = settings.filter(({ stretch }) => stretch <= stop.limit).map(({ changeMm }) => changeMm);
  const most = inside.reduce((a, b) => Math.max(a, b), 0);
  const least = inside.reduce((a, b) => Math.min(a, b), 0);
  return [
    `Below the stop of ${percent(stop.limit)} (${stop.says}): ${signed(least)} to ${signed(most)} mm from today, before any other cap.`,
  ];
}

function pastSays({ pastMm, pastCutShort }: BendAnswer): readonly string[] {
  if (pastMm.length === 0) return [];
  const said = `Bent before by ${pastMm.map(signed).join(", ")} mm; reckoned on from there.`;
  return [pastCutShort ? `${said} One of these is more than this head could keep: it has borne more.` : said];
}

/** A quantity that was read, or taken from its range. */
export function takenSays({ prior: { id, base, lo, hi, says, provenance }, reading }: Taken): string {
  const word = id.split(".").at(-1) ?? "";
  const unit =
    word === "1" || word === "part" || word === "strain" ? "" : ` ${word === "percent" ? "%" : word}`;
  if (reading !== undefined) return `${says}: ${reading.value}${unit}, read`;
  return `${says}: ${base}${unit} (${provenance}, ${lo} to ${hi})`;
}
