import { useSyncExternalStore } from "react";
import { AnswersOf } from "./answers/answers-of.tsx";
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
        <AnswersOf desk={desk} />
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
