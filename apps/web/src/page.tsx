import { useEffect, useState, useSyncExternalStore } from "react";
import { Answers } from "./answers/answers.tsx";
import { NextReading } from "./answers/next-reading.tsx";
import { Ridden } from "./answers/ridden.tsx";
import { WorkedOut } from "./answers/worked-out.tsx";
import { FileKeys } from "./case/file-keys.tsx";
import type { Hand } from "./desk/hand.ts";
import { BackLine } from "./drawing/back-line.tsx";
import { Bench } from "./drawing/bench.tsx";
import { Patterns } from "./drawing/patterns.tsx";
import { backLineView } from "./drawing/view.ts";
import { Looks } from "./look/looks.tsx";
import { PaperKeys } from "./paper/paper-keys.tsx";
import { Readings } from "./readings/readings.tsx";
import { TitleBlock } from "./title-block.tsx";

/** One page: the back, the three answers, the drawing with its head, the readings, the paper. */
export function Page({ hand }: { hand: Hand }) {
  const desk = useSyncExternalStore(hand.desk.listen, hand.desk.get);
  return (
    <>
      <a className="skip" href="#answers">
        To the answers
      </a>
      <Patterns />
      <header className="page-head">
        <h1>Treewright</h1>
        <FileKeys desk={desk} hand={hand} />
        <Looks />
      </header>
      <main>
        <BackLine
          view={backLineView(desk.read.survey, desk.horse, desk.sweep.get(0))}
          station={desk.station}
          onStation={(station) => hand.station(station)}
        />
        <TitleBlock desk={desk} hand={hand} />
        <div id="answers" tabIndex={-1}>
          {desk.answer ? (
            <Answers answer={desk.answer} answering={desk.answering} />
          ) : (
            <NoAnswer failed={desk.failed} />
          )}
          {desk.answer ? <WorkedOut answer={desk.answer} answering={desk.answering} /> : null}
          {desk.answer ? <Ridden answer={desk.answer} /> : null}
          {desk.answer?.answers.next ? <NextReading next={desk.answer.answers.next} /> : null}
        </div>
        <Bench desk={desk} hand={hand} />
        <PaperKeys desk={desk} />
        <Readings desk={desk} hand={hand} />
      </main>
      <footer className="page-foot">
        <p>
          Treewright advises a qualified person and replaces no one. Pain, heat, swelling, sores or lameness
          go to a vet before any fit is judged. Follow the maker, the licence and the rules of the place.
          Everything is worked out on this device; nothing leaves it.
        </p>
      </footer>
    </>
  );
}

function NoAnswer({ failed }: { failed: string | undefined }) {
  const slow = useLater();
  if (failed)
    return (
      <p className="problem" role="alert">
        This case could not be answered: {failed}. What was typed is kept.
      </p>
    );
  return <p className="answers-wait">{slow ? "The first answer is being worked out." : ""}</p>;
}

/** True after a moment: words that would only flash up are not shown. */
function useLater(): boolean {
  const [later, setLater] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLater(true), 400);
    return () => clearTimeout(timer);
  }, []);
  return later;
}
