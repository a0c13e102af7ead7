import { U_PER_SD } from "../engine/central.ts";
import type { BodyAdvice, LoadAdvice, VoidTrace } from "../judge/body-advice.ts";
import type { HorseMass, MassFound } from "../shape/weight.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { takeTransponder, transponderFrame, transponderShown } from "../survey/transponder.ts";
import { uelnShown } from "../survey/ueln.ts";
import { countryLetters } from "../terms/countries.ts";
import { conditionName } from "../terms/weighing.ts";

const BY: { readonly [B in MassFound["by"]]: string } = {
  weighed: "weighed",
  "four-measures": "by girth, length, height and neck",
  "girth-length": "by girth and length",
  guessed: "guessed by eye",
};
const BAND = {
  "load-under-15": "under 15 %",
  "load-15-to-20": "15 to 20 %",
  "load-over-20": "over 20 %",
} as const;

/** Who the horse is by its numbers, for sheet and command line; empty where none was read. */
export function identityLines({ identity }: Pick<SurveyedHorse, "identity">): readonly string[] {
  const chip = takeTransponder(identity.transponder);
  const country = chip.ok ? countryLetters(chip.transponder.code) : undefined;
  return [
    ...(chip.ok
      ? [
          `Chip ${transponderShown(chip.transponder)} (${country ?? "no country told"}; in the chip ${transponderFrame(chip.transponder)}).`,
        ]
      : []),
    ...(identity.ueln === "" ? [] : [`Number for life ${uelnShown(identity.ueln)}.`]),
  ];
}

/** The same in short, for a sheet: figures without their sources, which `bodyLines` tells; nothing where nothing is to be heeded. */
export function bodyInShort({ mass, load, condition, voidTraces, because }: BodyAdvice): readonly string[] {
  const beside = mass?.equations.filter((one) => one !== mass.best) ?? [];
  return [
    ...(mass ? [`Mass ${kg(mass.best)}, ${BY[mass.best.by]}.`] : []),
    ...beside.map((one) => `${BY[one.by]}: ${kg(one)}.`.replace(/^by/, "By")),
    ...(load ? [loadLine(load)] : []),
    ...(condition === undefined ? [] : [`Condition ${condition}, ${conditionName(condition)}.`]),
    ...voidTraces.map(voidLine),
    ...because
      .filter(({ rule }) => rule !== "load-under-15")
      .map(({ says, sourceRef }) => `${says} (${sourceRef}.)`),
  ];
}

/** What is known of body and load, with sources: advice beside the answers. */
export function bodyLines({ mass, load, condition, voidTraces, because }: BodyAdvice): readonly string[] {
  return [
    ...(mass ? massLines(mass) : []),
    ...(load ? [loadLine(load)] : []),
    ...(condition === undefined ? [] : [`Condition ${condition} of 9, ${conditionName(condition)}.`]),
    ...voidTraces.map(voidLine),
    ...because.map(({ says, sourceRef }) => `${says} (${sourceRef}.)`),
  ];
}

const kg = ({ kg: value, sdKg }: MassFound): string =>
  `${value.toFixed(0)} ± ${(U_PER_SD * sdKg).toFixed(0)} kg`;

function massLines({ best, equations, apartKg }: HorseMass): readonly string[] {
  const beside = equations.filter((one) => one !== best);
  return [
    `Mass ${kg(best)}, ${BY[best.by]}${best.by === "weighed" ? "" : ` (${best.sourceRef})`}.`,
    ...beside.map((one) => `Beside it ${BY[one.by]}: ${kg(one)} (${one.sourceRef}).`),
    ...(apartKg === undefined ? [] : [apartSays(apartKg, equations)]),
  ];
}

function apartSays(apartKg: number, equations: readonly MassFound[]): string {
  const within = U_PER_SD * Math.sqrt(equations.reduce((sum, { sdKg }) => sum + sdKg * sdKg, 0));
  const than =
    Math.abs(apartKg) <= within ? "within what both leave open" : "more than both leave open: measure again";
  return `The two equations lie ${Math.abs(apartKg).toFixed(0)} kg apart, ${than}.`;
}

const percent = (part: number): string => (100 * part).toFixed(1);

function loadLine({ part, u, maybe, tackWeighed }: LoadAdvice): string {
  const tack = tackWeighed ? "" : ", the tack taken as 6 to 12 kg";
  const open =
    maybe.length === 0
      ? ""
      : `; within its doubt it may also be ${maybe.map((one) => BAND[one]).join(" or ")}`;
  return `Rider and tack ${percent(part)} ± ${percent(u)} % of the horse's mass${tack}${open}.`;
}

function voidLine({ trace, grades, massPart }: VoidTrace): string {
  const signed = (value: number, digits: number) =>
    `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(digits)}`;
  const since = [
    ...(massPart === undefined ? [] : [`mass ${signed(100 * massPart, 1)} %`]),
    ...(grades === undefined || grades === 0 ? [] : [`condition ${signed(grades, 0)}`]),
  ].join(", ");
  return `The ${trace.temper === "warm" ? "warm" : "cold"} trace at the ${trace.station} is void: since then ${since}.`;
}
