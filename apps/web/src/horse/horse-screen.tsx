import { useEffect, useState, useSyncExternalStore } from "react";
import "../look/answers.css";
import "../look/drawing.css";
import "../look/horse.css";
import { useWords } from "../catalogue/use-words.ts";
import { BackLine } from "../drawing/back-line.tsx";
import { backLineView } from "../drawing/view.ts";
import type { Practice } from "../practice/practice.ts";
import { ORDER_OF_WORK } from "../road.ts";
import { visitAddress } from "../route.ts";
import { Alterations } from "./alterations.tsx";
import { BacksOver } from "./backs-over.tsx";
import { type HorseVisit, linesOf, visitsOf } from "./horse-visits.ts";
import { LastAnswers } from "./last-answers.tsx";
import { Widths } from "./widths.tsx";

const TRACINGS = ORDER_OF_WORK.findIndex(({ asks }) => asks.includes("horses[].traces"));

/** One horse: its back from the side, the last answers, what to read next, every visit, and how its back has changed. */
export default function HorseScreen({ practice, horse }: { practice: Practice; horse: string }) {
  const { horse: words, visit } = useWords();
  const shown = useSyncExternalStore(practice.shown.listen, practice.shown.get);
  const lines = linesOf(shown.visits, horse);
  const [visits, setVisits] = useState<readonly HorseVisit[]>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: read anew when a visit of the practice changed
  useEffect(() => void visitsOf(practice, lines).then(setVisits), [practice, horse, shown]);
  const [line] = lines;
  const [last] = visits ?? [];
  if (line === undefined)
    return (
      <main className="app-main">
        <p>{visit.notThere}</p>
        <a href="#/">{visit.back}</a>
      </main>
    );
  // A station leads to its trace.
  const toTracings = () => {
    location.hash = visitAddress(line.subject, TRACINGS);
  };
  const survey = visits?.find((one) => one.survey !== undefined)?.survey;
  return (
    <>
      <header className="visit-head">
        <a className="key" href="#/">
          {visit.back}
        </a>
        <h1>
          {line.horseName} <span className="quiet">{line.yard}</span>
        </h1>
      </header>
      {survey ? (
        <BackLine view={backLineView(survey, 0, undefined)} station="front" onStation={toTracings} />
      ) : null}
      <main className="app-main">
        {last ? <LastAnswers visit={last} /> : null}
        <section aria-labelledby="visits">
          <h2 id="visits">{words.visits(lines.length)}</h2>
          <ol className="visit-list">
            {lines.map((one) => (
              <li key={one.subject}>
                <a className="visit-row" href={visitAddress(one.subject)}>
                  <strong className="figure">{one.day}</strong>
                  <span>{one.done || (one.finished ? words.nothingNoted : words.unfinished)}</span>
                </a>
              </li>
            ))}
          </ol>
        </section>
        {visits ? (
          <>
            <Widths visits={visits} />
            <BacksOver visits={visits} />
            <Alterations visits={visits} />
          </>
        ) : null}
      </main>
    </>
  );
}
