import { useEffect, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import { Answers } from "./answers.tsx";
import { NextReading } from "./next-reading.tsx";
import { Ridden } from "./ridden.tsx";
import { WorkedOut } from "./worked-out.tsx";

/** The three answers, what was worked out, the saddle ridden, and the one next reading. */
export function AnswersOf({ desk }: { desk: Desk }) {
  const { answer, answering, failed } = desk;
  return (
    <div id="answers" tabIndex={-1}>
      {answer ? <Answers answer={answer} answering={answering} /> : <NoAnswer failed={failed} />}
      {answer ? <WorkedOut answer={answer} answering={answering} /> : null}
      {answer ? <Ridden answer={answer} /> : null}
      {answer?.answers.next ? <NextReading next={answer.answers.next} /> : null}
    </div>
  );
}

function NoAnswer({ failed }: { failed: string | undefined }) {
  const { answers: words } = useWords();
  const slow = useLater();
  if (failed)
    return (
      <p className="problem" role="alert">
        {words.failed(failed)}
      </p>
    );
  return <p className="answers-wait">{slow ? words.waiting : ""}</p>;
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
