import { useEffect, useState, useSyncExternalStore } from "react";
import "../look/answers.css";
import "../look/bench.css";
import "../look/drawing.css";
import "../look/print.css";
import { AnswersOf } from "../answers/answers-of.tsx";
import { useWords } from "../catalogue/use-words.ts";
import { Hand } from "../desk/hand.ts";
import { BackLine } from "../drawing/back-line.tsx";
import { Bench } from "../drawing/bench.tsx";
import { Patterns } from "../drawing/patterns.tsx";
import { backLineView } from "../drawing/view.ts";
import { PaperKeys } from "../paper/paper-keys.tsx";
import { OF_VISIT } from "../records.ts";
import { trueSizeAddress } from "../route.ts";
import { OnScreen } from "../scale/on-screen.tsx";
import { CaseOut } from "./case-out.tsx";
import type { OpenVisit } from "./open-visit.ts";

interface Given {
  readonly text: string;
  readonly visit: OpenVisit;
  /** Where the bench is. */
  readonly address: string;
  readonly trueSize: boolean;
}

/** The bench with a visit's readings on it. Readings are changed in their steps; here they are worked out. */
export default function BenchOfVisit({ text, visit, address, trueSize }: Given) {
  const { scale: words } = useWords();
  const [hand] = useState(() => new Hand(text, "visit.json"));
  const desk = useSyncExternalStore(hand.desk.listen, hand.desk.get);
  const { answer, answering } = desk;
  useEffect(() => {
    if (answer && !answering) void keepAnswers(visit, answer.answers);
  }, [visit, answer, answering]);
  if (trueSize) return <OnScreen desk={desk} before={visit.shown.get().before} back={address} />;
  return (
    <>
      <Patterns />
      <BackLine
        view={backLineView(desk.read.survey, desk.horse, desk.sweep.get(0))}
        station={desk.station}
        onStation={(station) => hand.station(station)}
      />
      <AnswersOf desk={desk} />
      <Bench desk={desk} hand={hand} />
      <PaperKeys desk={desk} />
      <CaseOut text={text} />
      <p className="app-links">
        <a className="key" href={trueSizeAddress(address)}>
          {words.open}
        </a>
      </p>
    </>
  );
}

interface Answered {
  readonly horse: { readonly id: string };
  readonly saddle: { readonly id: string };
  readonly work: { readonly id: string };
  readonly next: { readonly says: string } | undefined;
}

/** What was answered is part of what happened: it is said, once for each time that it changed. */
async function keepAnswers(visit: OpenVisit, { horse, saddle, work, next }: Answered): Promise<void> {
  const { ofVisit } = visit.shown.get().draft;
  const now = [
    { at: OF_VISIT.horseAnswer, value: horse.id },
    { at: OF_VISIT.saddleAnswer, value: saddle.id },
    { at: OF_VISIT.workAnswer, value: work.id },
    { at: OF_VISIT.nextReading, value: next?.says ?? "" },
  ];
  await visit.say(now.filter(({ at, value }) => ofVisit.get(at) !== value));
}
