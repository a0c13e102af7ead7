import { DEG_PER_RAD } from "../answer/figures.ts";
import type { Placed } from "../answer/placed.ts";
import type { Answer } from "../answer/result.ts";
import { horseWords, saddleWords, workWords } from "../judge/answer-words.ts";
import type { Answered } from "../judge/judgement.ts";
import { FAR_OVER_KPA } from "../judge/limits/pressed.ts";
import type { AnswerWords, PressureMap, SectionDrawing, SheetData } from "../report/sheet-data.ts";
import type { Survey } from "../survey/case.ts";
import { STATIONS, type Station } from "../terms/places.ts";
import { factsOf } from "./facts.ts";
import { followingOf } from "./follows.ts";
import { gaitsOf } from "./gaits.ts";
import { closed, headDrawn } from "./head-drawn.ts";
import { headLines } from "./head-known.ts";
import { bodyInShort, identityLines } from "./horse-known.ts";
import { limitsOf } from "./limits.ts";
import { missingSays } from "./missing.ts";
import { panelSheetOf } from "./panel.ts";
import { platesOf } from "./plates.ts";
import { pressOf } from "./press.ts";
import { restWordsOf } from "./rest.ts";
import { wholeTreeOf } from "./whole-tree.ts";

/** The fitter's working sheet out of the answers. */
export function sheetDataOf(survey: Survey, answer: Answer): SheetData {
  const { horse, saddle, work, limitsToday, limitsAfter, next } = answer.answers;
  return {
    facts: factsOf(survey, answer),
    horse: inWords(horse, horseWords(horse.id).heading),
    saddle: inWords(saddle, saddleWords(saddle.id).heading),
    work: inWords(work, workWords(work.id).heading),
    also: work.also.map((id) => workWords(id).heading),
    limits: limitsOf(limitsToday, limitsAfter),
    sections: STATIONS.flatMap((station) => sectionAt(answer, station)),
    pressure: pressureOf(answer),
    pressureLimitKPa: FAR_OVER_KPA,
    follows: answer.follows ? followingOf(limitsToday, limitsAfter) : [],
    next: next?.says,
    missing: missingSays(answer.lacking),
    rest: restWordsOf(answer),
    wholeTree: wholeTreeOf(answer),
    press: pressOf(answer),
    gaits: gaitsOf(survey, answer),
    plates: platesOf(answer),
    panel: panelSheetOf(answer.panel),
    known: [
      ...headLines(survey, answer),
      ...identityLines(answer),
      ...(answer.body ? bodyInShort(answer.body) : []),
    ],
  };
}

function inWords(answered: Answered<string>, heading: string): AnswerWords {
  const { because, nextStep, who } = answered;
  return {
    says: heading,
    because: because.map(({ says, provenance, sourceRef }) => ({
      says,
      source: sourceRef === "" ? provenance : sourceRef,
    })),
    nextStep,
    who,
  };
}

function sectionAt(answer: Answer, station: Station): readonly SectionDrawing[] {
  const today = answer.placed?.today[station];
  if (today === undefined) return [];
  const chosen = answer.placed?.chosen?.[station];
  const fit = answer.chosen ?? answer.today;
  const misfit = (side: "near" | "off") => {
    const found = fit?.sections.find((one) => one.station === station && one.side === side);
    return found && { value: found.misfitRad * DEG_PER_RAD, u: undefined };
  };
  return [
    {
      station,
      back: today.back,
      today: panels(today),
      chosen: chosen && panels(chosen),
      ...(station === "front" ? headDrawn(answer) : { head: undefined, spread: undefined }),
      misfit: { near: misfit("near"), off: misfit("off") },
    },
  ];
}

/** The panel's outline, as one run for each side. */
const panels = ({ panel }: Placed): SectionDrawing["today"] => ({
  near: closed(panel.near),
  off: closed(panel.off),
});

function pressureOf({ today, chosen }: Answer): readonly PressureMap[] {
  const map = (of: string, rest: typeof today): readonly PressureMap[] =>
    rest?.rest?.ok ? [{ of, field: rest.rest.field }] : [];
  return [...map("today", today), ...map("after the change", chosen)];
}
