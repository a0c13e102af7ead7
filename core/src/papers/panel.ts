import { DEG_PER_RAD } from "../answer/figures.ts";
import type { PanelAnswer, PanelWork } from "../answer/panel.ts";
import { dayInWords } from "../report/day.ts";
import type { Figure } from "../report/figures.ts";
import { printed } from "../report/figures.ts";
import type { EvennessRow, PanelSheet } from "../report/panel-data.ts";
import { STATIONS, type Station, THIRDS } from "../terms/places.ts";
import { ratioOf, type Term } from "../work/panel/evenness.ts";
import { figuresIn } from "../work/panel/fill.ts";
import { BEDS_DOWN_MM } from "../work/panel/kind.ts";
import { LEAST_LEFT_MM } from "../work/panel/propose.ts";
import type { Wedge } from "../work/panel/wedge.ts";

const NAMES: { readonly [T in Term["id"]]: string } = {
  "face-front": "face less back",
  "face-rail": "face less back",
  "middle-third": "force under the middle, over a third",
  bridge: "gap under the middle",
  rock: "rock by hand",
  "seat-slope": "slope of the seat, head end up",
  roll: "lean to the near side",
};

/** The panel of an answer for sheet and command line; undefined where the bearing was not read. */
export function panelSheetOf(panel: PanelAnswer | undefined): PanelSheet | undefined {
  if (panel === undefined) return undefined;
  const { work, wedges } = panel;
  return {
    wedges: [
      "Face on the horse = bare face + the panel's wedge, near / off:",
      ...STATIONS.map((station) => wedgeSays(station, wedges)),
    ],
    fill: work?.any ? work.fill : undefined,
    says: work ? panelSays(work) : [],
    rows: work?.any ? rowsOf(work) : [],
  };
}

function wedgeSays(station: Station, wedges: readonly Wedge[]): string {
  const here = wedges.filter((one) => one.station === station);
  const all = (of: (wedge: Wedge) => number) => here.map((one) => degrees(of(one))).join(" / ");
  const end = station === "rear" ? "." : ";";
  return `${station} ${all((one) => one.faceRad)}° = ${all((one) => one.bareRad)}° + ${all((one) => one.wedgeRad)}°${end}`;
}

const degrees = (rad: number): string => {
  const text = Math.abs(rad * DEG_PER_RAD).toFixed(1);
  return rad < 0 && Number(text) !== 0 ? `−${text}` : text;
};

/** What comes first, how it is done, what to heed, when it is looked at again. */
function panelSays(work: PanelWork): readonly string[] {
  const { first, any, filling, deep, oneSided, heldBack, hollow, recheck, follows } = work;
  const day = (date: string) => dayInWords(date);
  const how = filling === "wool" ? "Flock" : "Shim, which only adds";
  return [
    ...(first.includes("square") ? ["First the panel is set square on the tree and read again."] : []),
    ...(first.includes("reflock")
      ? [
          "First it is re-flocked even; the map is counted from the panel as it was read, and is read again after.",
        ]
      : []),
    ...(any
      ? [`${how}, by the map, in half and whole mm.`]
      : ["No fill makes it more even by as much as a hand can do."]),
    ...(oneSided
      ? [
          "The head stays square and fits the larger side; the hollow side is filled: width times the tangent of the difference.",
        ]
      : []),
    ...(heldBack
      ? [
          "One side alone is not filled before slip, lameness and swelling are ruled out; only what both sides need alike is on the map.",
        ]
      : []),
    ...(hollow ? ["The back is hollow: this is fill for now, and no head is narrowed to it."] : []),
    ...(deep ? ["Over 8 mm is for eight weeks at the most."] : []),
    ...(any
      ? [
          recheck.forNow
            ? `Dated: looked at again from ${day(recheck.from)} to ${day(recheck.to)}, and thinner each time.`
            : `Looked at again from ${day(recheck.from)} to ${day(recheck.to)}.`,
        ]
      : []),
    ...(any && filling === "wool"
      ? [
          `New wool beds down ${BEDS_DOWN_MM[0]} to ${BEDS_DOWN_MM[1]} mm over its first 15 to 20 hours: looked at then as well.${takes(work) ? ` At least ${LEAST_LEFT_MM} mm are left where some is taken out.` : ""}`,
        ]
      : []),
    ...(follows
      ? [
          `Clearance ${change(follows.clearanceMm, follows.clearanceUMm, "mm")}, seat ${change(follows.seatDeg, follows.seatUDeg, "deg")} by the fill.`,
        ]
      : []),
    ...work.after
      .filter((term) => any && ratioOf(term) > 1)
      .map((term) => `Still past its limit after the fill: ${nameOf(term)}.`),
    ...(any
      ? [
          "How stiff the new filling is was not reckoned with; limits of a fill are common practice, no source.",
        ]
      : []),
  ];
}

const takes = ({ fill }: PanelWork): boolean => figuresIn(fill).some((mm) => mm < 0);

const change = (value: number, u: number | undefined, unit: "mm" | "deg"): string =>
  `${value > 0 ? "+" : ""}${printed({ value, u }, unit)}`;

const nameOf = ({ id, at }: Term): string => (at === "" ? NAMES[id] : `${NAMES[id]}, ${at}`);

function rowsOf({ before, after, rest }: PanelWork): readonly EvennessRow[] {
  const terms = before.flatMap((term): readonly EvennessRow[] => {
    const then = after.find((one) => one.id === term.id && one.at === term.at);
    return then === undefined
      ? []
      : [{ what: nameOf(term), unit: term.unit, before: alone(term.value), after: alone(then.value) }];
  });
  return [...bothSides(terms), ...thirdRows(rest)];
}

/** Near and off in one row where both read the same. */
function bothSides(rows: readonly EvennessRow[]): readonly EvennessRow[] {
  const text = ({ unit, before, after }: EvennessRow) => `${printed(before, unit)} ${printed(after, unit)}`;
  return rows.flatMap((row) => {
    const twin = rows.find(({ what }) => what === row.what.replace(/near$/, "off"));
    const other = rows.find(({ what }) => what === row.what.replace(/off$/, "near"));
    if (twin !== undefined && twin !== row && text(twin) === text(row))
      return [{ ...row, what: row.what.replace(/near$/, "both sides") }];
    return other !== undefined && other !== row && text(other) === text(row) ? [] : [row];
  });
}

/** Part of the force under each third, both sides together. */
function thirdRows({ before, after }: PanelWork["rest"]): readonly EvennessRow[] {
  if (!before?.ok || !after?.ok) return [];
  const part = (rest: typeof before, third: string) =>
    100 * rest.thirds.reduce((sum, one) => sum + (one.third === third ? one.share : 0), 0);
  return THIRDS.map((third) => ({
    what: `force under the ${third} third`,
    unit: "%",
    before: alone(part(before, third)),
    after: alone(part(after, third)),
  }));
}

const alone = (value: number): Figure => ({ value, u: undefined });

/** What an owner is told of the fill; never a pressure. */
export function panelForOwner(panel: PanelAnswer | undefined): readonly string[] {
  const work = panel?.work;
  if (work === undefined) return [];
  const { first, any, recheck, fill } = work;
  const sum = (side: "near" | "off") =>
    STATIONS.reduce((all, station) => all + fill[side][station].middle + fill[side][station].outer, 0);
  const more = sum("near") >= sum("off") ? "near side (left)" : "off side (right)";
  const again = `looked at again between ${dayInWords(recheck.from)} and ${dayInWords(recheck.to)}`;
  return [
    ...(first.includes("reflock") ? ["The panel is re-flocked first, so that it is even."] : []),
    ...(any && work.oneSided
      ? [`It is filled on the ${more} for now, ${again}, and made thinner each time.`]
      : any && recheck.forNow
        ? [`It is filled on both sides for now, ${again}, and made thinner each time.`]
        : any
          ? [
              `It is filled alike on both sides and ${again}${work.filling === "wool" ? "; new wool beds down" : ""}.`,
            ]
          : []),
  ];
}
