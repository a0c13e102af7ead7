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
  readonly over: string;
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
  const told: Told[] = [
    { over: "Horse", words: horseWords(horse.id), beside: [], answered: horse },
    { over: "Saddle", words: saddleWords(saddle.id), beside: [], answered: saddle },
    {
      over: "Work",
      words: workWords(work.id),
      beside: work.also.map((id) => bare(workWords(id).heading)),
      answered: work,
      setting: answer.answers.setting,
    },
  ];
  const ordered = [
    ...told.filter((one) => stops(one.answered)),
    ...told.filter((one) => !stops(one.answered)),
  ];
  return (
    <section className="answers" aria-label="The three answers" aria-busy={answering}>
      <p className="may-ride">
        <span className="over">May it be ridden today?</span> {mayRideSays(horse.id, saddle.id, permitted)}
      </p>
      {ordered.map((one) => (
        <OneAnswer key={one.over} told={one} />
      ))}
    </section>
  );
}

function OneAnswer({ told }: { told: Told }) {
  const { answered, words } = told;
  const stop = stops(answered);
  return (
    <article className={stop ? "answer stop" : "answer"} data-answer={answered.id} data-about={told.over}>
      <p className="over">
        {stop ? <strong className="stop-word">Stop</strong> : null}
        {told.over}
      </p>
      <h2>{bare(words.heading)}</h2>
      {answered.cautions.filter(isStop).map((caution) => (
        <p className="stop-line" key={caution}>
          {caution.replace(/^STOP: /, "").replace(/^./, (first) => first.toUpperCase())}
        </p>
      ))}
      {told.setting && told.setting.changeMm !== 0 ? <Becomes setting={told.setting} /> : null}
      <p className="meaning">{words.meaning}</p>
      {told.beside.length > 0 ? <p>Besides: {told.beside.join("; ")}.</p> : null}
      <dl className="then">
        <dt>Next</dt>
        <dd>{answered.nextStep}</dd>
        <dt>Who</dt>
        <dd>{answered.who}</dd>
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
  return (
    <p className="setting">
      <span className="figure">
        {changeMm > 0 ? "Open" : "Close"}{" "}
        {shownMm(Math.abs(changeMm), Number.isInteger(changeMm) ? 1 : HALF_MM, units)}
      </span>
      to {shownMm(spreadMm, 1, units)} inside the tips
    </p>
  );
}

function Reasons({ because, cautions }: { because: readonly Because[]; cautions: readonly string[] }) {
  return (
    <>
      {cautions.length > 0 ? (
        <ul className="cautions">
          {cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      ) : null}
      <details>
        <summary>Why: {because.length === 1 ? "one reason" : `${because.length} reasons`}</summary>
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
  return (
    <li>
      <p>{because.says}</p>
      <p className="quiet">
        Rule <span className="figure">{because.rule}</span>, {sourceWords(because)}.
      </p>
      {because.readings.length > 0 ? (
        <div className="quiet">
          <p>From:</p>
          <ReadingLinks paths={because.readings} />
        </div>
      ) : null}
    </li>
  );
}

/** Where a rule comes from, with its source where there is one. */
function sourceWords({ provenance, sourceRef }: Because): string {
  return sourceRef === "" || sourceRef === provenance ? provenance : `${provenance}: ${sourceRef}`;
}
