import { useWords } from "../catalogue/use-words.ts";
import type { Answer } from "../road.ts";

/** Signs of the readings' fingerprint that are shown: enough to find the same readings again. */
const HASH_SIGNS = 12;

/** From what the answers were worked out: how many draws, which engine, which readings. */
export function WorkedOut({ answer, answering }: { answer: Answer; answering: boolean }) {
  const { count, of } = answer.draws;
  const { answers: words } = useWords();
  const drawn = count === 0 ? words.best : words.draws(count, answering);
  return (
    <p className="worked-out quiet" data-hash={answer.inputHash} data-horse={answer.horse}>
      {words.workedOut}
      {of === 0 ? words.unreckoned : words.outOf(drawn)}. {words.engine}{" "}
      <span className="figure">{answer.engine}</span>, {words.readings}{" "}
      <span className="figure">{answer.inputHash.slice(0, HASH_SIGNS)}</span>.
    </p>
  );
}
