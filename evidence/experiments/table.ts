import type { Third } from "../../core/src/terms/places.ts";
import { BACKS } from "./backs.ts";
import { CLAIMS, type Claim, PUBLISHED_FIGURES, type Step } from "./claims.ts";
import { type Found, LOADS, type LoadName, type OnBack } from "./experiment.ts";

export type AllFound = { readonly [id: string]: OnBack };

/** Change of a width against the fitted tree: per cent of a third's mean, or degrees of the head; or why there is none. */
export function changeOf(on: OnBack, load: LoadName, step: Step, of: Third | "head"): number | string {
  const [fitted, there]: [Found, Found] = [on[load].fitted, on[load][step]];
  if ("refused" in fitted) return fitted.refused;
  if ("refused" in there) return there.refused;
  if (of === "head") return (there.headUpDeg ?? Number.NaN) - (fitted.headUpDeg ?? Number.NaN);
  return 100 * (there.meanKPa[of] / fitted.meanKPa[of] - 1);
}

/** Whether what was said beforehand came out. `tips` and the like: nothing to compare. */
export type Verdict = "as said" | "direction only" | "against" | "no rest";

export function verdictOf(claim: Claim, on: OnBack, load: LoadName): Verdict {
  const change = changeOf(on, load, claim.step, claim.of);
  if (typeof change === "string") return "no rest";
  if (!(Math.sign(change) === claim.direction)) return "against";
  const { band } = claim;
  return band === undefined || (change >= band.least && change <= band.most) ? "as said" : "direction only";
}

const WORDS = { "tips-front": "tips", "tips-rear": "tips", "beyond-law": "too deep" } as const;
const wordOf = (why: string): string => (why in WORDS ? WORDS[why as keyof typeof WORDS] : why);

const signed = (value: number, digits: number): string =>
  `${value > 0 ? "+" : value < 0 ? "−" : ""}${Math.abs(value).toFixed(digits)}`;

function cell(on: OnBack, step: Step, of: Third): string {
  const claim = CLAIMS.find((one) => one.step === step && one.of === of);
  const each = LOADS.map((load) => {
    const change = changeOf(on, load, step, of);
    if (typeof change === "string") return wordOf(change);
    const outside = claim && verdictOf(claim, on, load) !== "as said";
    return signed(change, 0) + (outside ? "\\*" : "");
  });
  return new Set(each).size === 1 && typeof changeOf(on, "rest", step, of) === "string"
    ? (each[0] ?? "")
    : each.join(" / ");
}

function head(on: OnBack, step: Step): string {
  const change = changeOf(on, "rest", step, "head");
  return typeof change === "string" ? wordOf(change) : signed(change, 1);
}

/** The table of all twelve, as it stands in the documents; the published figures under it. */
export function tableOf(found: AllFound): string {
  const rows = BACKS.map(({ id, says }) => {
    const on = found[id];
    if (on === undefined) throw new Error(`${id} was not computed`);
    return [
      says,
      head(on, "narrow"),
      cell(on, "narrow", "rear"),
      head(on, "wide"),
      cell(on, "wide", "front"),
      cell(on, "wide", "middle"),
      head(on, "veryWide"),
      cell(on, "veryWide", "front"),
    ];
  });
  const names = [
    "back",
    "2 cm narrower: head, degrees",
    "rear third, %",
    "2 cm wider: head, degrees",
    "front third, %",
    "middle third, %",
    "4 cm wider: head, degrees",
    "front third, %",
  ];
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(names), line(names.map(() => "---")), ...rows.map(line), "", ...countLines(found)].join("\n");
}

function countLines(found: AllFound): string[] {
  return CLAIMS.map((claim) => {
    const loads: readonly LoadName[] = claim.of === "head" ? ["rest"] : LOADS;
    const counts = loads.map((load) => {
      const verdicts = BACKS.map(({ id }) => {
        const on = found[id];
        return on === undefined ? "no rest" : verdictOf(claim, on, load);
      });
      const count = (verdict: Verdict): number => verdicts.filter((one) => one === verdict).length;
      const [said, only, against, none] = [
        count("as said"),
        count("direction only"),
        count("against"),
        count("no rest"),
      ];
      const parts = [`${said + only} of ${12 - none} in this direction`];
      if (claim.band) parts.push(`${said} within the band`);
      if (none > 0) parts.push(`${none} without a rest`);
      if (against > 0) parts.push(`${against} against it`);
      return `${load}: ${parts.join(", ")}`;
    });
    const band = claim.band ? ` (band +${claim.band.least} to +${claim.band.most} %)` : "";
    return `- ${claim.says}${band}: ${counts.join("; ")}.`;
  });
}

/** The published figures beside it, in words. */
export function publishedTable(): string {
  const steps = { narrow: "2 cm narrower", wide: "2 cm wider", veryWide: "4 cm wider" } as const;
  const rows = PUBLISHED_FIGURES.map(({ step, of, gait, percent, direction, source, status }) => {
    const size =
      percent === undefined
        ? direction > 0
          ? "rises"
          : "drops"
        : `${direction > 0 ? "+" : "−"}${percent} %`;
    const where = of === "head" ? "head" : `${of} third`;
    return `| ${steps[step]} | ${where} | ${gait === "any" ? "trot, canter" : gait} | ${size} | ${source} | ${status} |`;
  });
  return [
    "| tree | what | gait | change | source | status |",
    "| --- | --- | --- | --- | --- | --- |",
    ...rows,
  ].join("\n");
}
