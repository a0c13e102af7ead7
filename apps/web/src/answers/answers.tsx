import type { Catalogue } from "../catalogue/en.ts";
import { useTrade, useWords } from "../catalogue/use-words.ts";
import { ReadingLinks } from "../readings/link.tsx";
import {
  type Answer,
  type Answered,
  type Because,
  horseWords,
  mayRideSays,
  type Setting,
  saddleWords,
  type Words,
  workWords,
} from "../road.ts";
import { shownMm } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";

interface Told {
  readonly over: keyof Catalogue["answers"]["about"];
  readonly words: Words;
  readonly beside: readonly string[];
  readonly answered: Answered<string>;
  /** What the head is to become, where the answer names it. */
  readonly setting?: Setting | undefined;
}

/** Headings are sentences; as a heading one stands without its full stop. */
const bare = (sentence: string) => sentence.replace(/\.$/, "");

/** Core marks the cautions after which nothing may be done. */
const isStop = (caution: string) => caution.startsWith("STOP");
const stops = ({ cautions }: Answered<string>) => cautions.some(isStop);

/** Three answers side by side, none hiding another; what stops comes first. */
export function Answers({ answer, answering }: { answer: Answer; answering: boolean }) {
  const { horse, saddle, work, permitted } = answer.answers;
  const { answers: words } = useWords();
  const trade = useTrade();
  const told: Told[] = [
    { over: "horse", words: horseWords(horse.id), beside: [], answered: horse },
    { over: "saddle", words: saddleWords(saddle.id), beside: [], answered: saddle },
    {
      over: "work",
      words: workWords(work.id),
      beside: work.also.map((id) => bare(trade.said(workWords(id).heading))),
      answered: work,
      setting: answer.answers.setting,
    },
  ];
  const ordered = [
    ...told.filter((one) => stops(one.answered)),
    ...told.filter((one) => !stops(one.answered)),
  ];
  return (
    <section className="answers" aria-label={words.all} aria-busy={answering}>
      <p className="may-ride">
        <span className="over">{words.mayRide}</span>{" "}
        {trade.said(mayRideSays(horse.id, saddle.id, permitted))}
      </p>
      {ordered.map((one) => (
        <OneAnswer key={one.over} told={one} />
      ))}
    </section>
  );
}

function OneAnswer({ told }: { told: Told }) {
  const { answered, words } = told;
  const { answers: app } = useWords();
  const { said } = useTrade();
  const stop = stops(answered);
  return (
    <article className={stop ? "answer stop" : "answer"} data-answer={answered.id} data-about={told.over}>
      <p className="over">
        {stop ? <strong className="stop-word">{app.stop}</strong> : null}
        {app.about[told.over]}
      </p>
      <h2>{bare(said(words.heading))}</h2>
      {answered.cautions.filter(isStop).map((caution) => (
        <p className="stop-line" key={caution}>
          {said(caution)
            .replace(/^STOP: /, "")
            .replace(/^./, (first) => first.toUpperCase())}
        </p>
      ))}
      {told.setting && told.setting.changeMm !== 0 ? <Becomes setting={told.setting} /> : null}
      <p className="meaning">{said(words.meaning)}</p>
      {told.beside.length > 0 ? <p>{app.besides(told.beside.join("; "))}</p> : null}
      <dl className="then">
        <dt>{app.next}</dt>
        <dd>{said(answered.nextStep)}</dd>
        <dt>{app.who}</dt>
        <dd>{said(answered.who)}</dd>
      </dl>
      <Reasons because={answered.because} cautions={answered.cautions.filter((one) => !isStop(one))} />
    </article>
  );
}

/** A change is named to the millimetre, or to the half of one. */
const HALF_MM = 0.5;

/** By how much, and to what. */
function Becomes({ setting: { changeMm, spreadMm } }: { setting: Setting }) {
  const units = useUnits();
  const { answers: words } = useWords();
  const by = shownMm(Math.abs(changeMm), Number.isInteger(changeMm) ? 1 : HALF_MM, units);
  return (
    <p className="setting">
      <span className="figure">{changeMm > 0 ? words.opens(by) : words.closes(by)}</span>
      {words.becomes(shownMm(spreadMm, 1, units))}
    </p>
  );
}

function Reasons({ because, cautions }: { because: readonly Because[]; cautions: readonly string[] }) {
  const { answers: words } = useWords();
  const { said } = useTrade();
  return (
    <>
      {cautions.length > 0 ? (
        <ul className="cautions">
          {cautions.map((caution) => (
            <li key={caution}>{said(caution)}</li>
          ))}
        </ul>
      ) : null}
      <details>
        <summary>{words.why(because.length)}</summary>
        <ol className="reasons">
          {because.map((one) => (
            <Reason key={one.rule + one.says} because={one} />
          ))}
        </ol>
      </details>
    </>
  );
}

function Reason({ because }: { because: Because }) {
  const { answers: words } = useWords();
  const { said } = useTrade();
  return (
    <li>
      <p>{said(because.says)}</p>
      <p className="quiet">
        {words.rule}{" "}
        <span className="figure" lang="en">
          {because.rule}
        </span>
        , <Source because={because} />.
      </p>
      {because.readings.length > 0 ? (
        <div className="quiet">
          <p>{words.from}</p>
          <ReadingLinks paths={because.readings} />
        </div>
      ) : null}
    </li>
  );
}

/** Where a rule comes from, with its source where there is one: a source is cited as it was read, in English. */
function Source({ because: { provenance, sourceRef } }: { because: Because }) {
  const { said } = useTrade();
  if (sourceRef === "" || sourceRef === provenance) return said(provenance);
  return (
    <>
      {said(provenance)}: <span lang="en">{sourceRef.replace(`${provenance}: `, "")}</span>
    </>
  );
}
