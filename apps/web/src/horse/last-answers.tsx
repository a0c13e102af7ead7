import { useTrade, useWords } from "../catalogue/use-words.ts";
import { OF_VISIT } from "../records.ts";
import { horseWords, saddleWords, workWords } from "../road.ts";
import { HORSE_IDS, idIn, SADDLE_IDS, WORK_IDS } from "./answer-ids.ts";
import type { HorseVisit } from "./horse-visits.ts";

/** The three answers of the last visit, red flags before all else, and the one reading that would settle what is open. */
export function LastAnswers({ visit: { line, draft } }: { visit: HorseVisit }) {
  const { horse: words, first } = useWords();
  const trade = useTrade();
  const said = (at: string) => draft.ofVisit.get(at);
  const horse = idIn(HORSE_IDS, said(OF_VISIT.horseAnswer));
  const saddle = idIn(SADDLE_IDS, said(OF_VISIT.saddleAnswer));
  const work = idIn(WORK_IDS, said(OF_VISIT.workAnswer));
  const next = said(OF_VISIT.nextReading);
  return (
    <section className="last-answers" aria-labelledby="answers">
      <h2 id="answers">{words.answered(line.day)}</h2>
      {horse?.startsWith("vet") ? <p className="stop-word">{first.flagged}</p> : null}
      <dl>
        <dt>{words.about.horse}</dt>
        <dd>{horse ? trade.said(horseWords(horse).heading) : words.notAnswered}</dd>
        <dt>{words.about.saddle}</dt>
        <dd>{saddle ? trade.said(saddleWords(saddle).heading) : words.notAnswered}</dd>
        <dt>{words.about.work}</dt>
        <dd>{work ? trade.said(workWords(work).heading) : words.notAnswered}</dd>
      </dl>
      {typeof next === "string" && next !== "" ? <p lang={trade.langOf(next)}>{trade.said(next)}</p> : null}
    </section>
  );
}
