import type { Answer, Answered, Because } from "../road.ts";
import { HORSE_WORDS, isStop, SADDLE_WORDS, WORK_WORDS } from "../words.ts";
import { ReadingLink } from "../readings/link.tsx";

interface Told {
  readonly over: string;
  readonly words: string;
  readonly beside: readonly string[];
  readonly answered: Answered<string>;
}

/** Three answers side by side, none hiding another; what stops comes first. */
export function Answers({ answer, answering }: { answer: Answer; answering: boolean }) {
  const { horse, saddle, work } = answer.answers;
  const told: Told[] = [
    { over: "Horse", words: HORSE_WORDS[horse.id], beside: [], answered: horse },
    { over: "Saddle", words: SADDLE_WORDS[saddle.id], beside: [], answered: saddle },
    { over: "Work", words: WORK_WORDS[work.id], beside: work.also.map((id) => WORK_WORDS[id]), answered: work },
  ];
  const ordered = [...told.filter((one) => isStop(one.answered.id)), ...told.filter((one) => !isStop(one.answered.id))];
  return (
    <section className="answers" aria-label="The three answers" aria-busy={answering}>
      {ordered.map((one) => (
        <OneAnswer key={one.over} told={one} />
      ))}
    </section>
  );
}

function OneAnswer({ told }: { told: Told }) {
  const { answered } = told;
  const [first, ...others] = answered.because;
  return (
    <article className={isStop(answered.id) ? "answer stop" : "answer"} data-answer={answered.id}>
      <p className="over">
        {isStop(answered.id) ? <strong className="stop-word">Stop</strong> : null}
        {told.over}
      </p>
      <h2>{told.words}</h2>
      {first ? <p className="first-reason">{first.says}</p> : null}
      {told.beside.length > 0 ? <p>Besides: {told.beside.join("; ")}.</p> : null}
      <dl className="then">
        <dt>Next</dt>
        <dd>{answered.nextStep}</dd>
        <dt>Who</dt>
        <dd>{answered.who}</dd>
      </dl>
      {answered.cautions.map((caution) => (
        <p className="caution" key={caution}>
          {caution}
        </p>
      ))}
      <details>
        <summary>Why{others.length > 0 ? ` (${others.length + 1} reasons)` : ""}</summary>
        <ol className="reasons">
          {answered.because.map((because) => (
            <Reason key={because.rule + because.says} because={because} />
          ))}
        </ol>
      </details>
    </article>
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
        <p className="quiet">
          From:{" "}
          {because.readings.map((path, index) => (
            <span key={path}>
              {index > 0 ? "; " : ""}
              <ReadingLink path={path} />
            </span>
          ))}
        </p>
      ) : null}
    </li>
  );
}

/** Where a rule comes from, with its source where there is one. */
function sourceWords({ provenance, sourceRef }: Because): string {
  return sourceRef === "" || sourceRef === provenance ? provenance : `${provenance}: ${sourceRef}`;
}
