import type { Answer } from "../answer/result.ts";
import { CAUTIONS } from "../judge/words/cautions.ts";
import type { BackLine } from "../report/back-line.ts";
import type { SheetFacts } from "../report/sheet-facts.ts";
import type { Survey, SurveyedHorse } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import type { Station } from "../terms/places.ts";

const STOPS: readonly string[] = CAUTIONS.filter((caution) => caution.stop).map((caution) => caution.says);

/** What every paper of this answer says of itself; stop signs apart from the other cautions. */
export function factsOf(survey: Survey, answer: Answer): SheetFacts {
  const { horse, saddle, work } = answer.answers;
  const cautions = [...new Set([...horse.cautions, ...saddle.cautions, ...work.cautions])];
  const own = survey.horses[answer.horseIndex];
  return {
    caseTitle: survey.title,
    horse: answer.horse,
    saddle: answer.saddle,
    date: survey.visit.date,
    hand: handOf(survey, own),
    engineVersion: answer.engine,
    inputHash: answer.inputHash,
    invented: survey.invented,
    cautions: cautions.filter((says) => !STOPS.includes(says)),
    stop: cautions.filter((says) => STOPS.includes(says)),
    back: own === undefined ? NO_LINE : backLineOf(own),
  };
}

const NO_LINE: BackLine = {
  profile: undefined,
  stations: { front: undefined, mid: undefined, rear: undefined },
};

function handOf(survey: Survey, horse: SurveyedHorse | undefined): string {
  return horse?.traces.find((trace) => trace.drawnBy !== "")?.drawnBy ?? survey.worker.name;
}

function backLineOf(horse: SurveyedHorse): BackLine {
  const at = (station: Station) => {
    const trace = horse.traces.find((one) => one.station === station);
    if (trace === undefined) return undefined;
    return isRead(trace.behindFront) ? trace.behindFront.value : station === "front" ? 0 : undefined;
  };
  return {
    profile: horse.profile?.points,
    stations: { front: at("front"), mid: at("mid"), rear: at("rear") },
  };
}
