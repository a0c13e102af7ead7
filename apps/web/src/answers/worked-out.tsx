import type { Answer } from "../road.ts";

/** Signs of the readings' fingerprint that are shown: enough to find the same readings again. */
const HASH_SIGNS = 12;

/** From what the answers were worked out: how many draws, which engine, which readings. */
export function WorkedOut({ answer, answering }: { answer: Answer; answering: boolean }) {
  const { count, of } = answer.draws;
  const drawn =
    count === 0
      ? "the best estimate, doubts still to come"
      : `${count.toLocaleString("en")} draws of every doubt${answering ? " so far" : ""}`;
  return (
    <p className="worked-out quiet" data-hash={answer.inputHash} data-horse={answer.horse}>
      Worked out on this device{of === 0 ? "; no fit was reckoned" : ` from ${drawn}`}. Engine{" "}
      <span className="figure">{answer.engine}</span>, readings{" "}
      <span className="figure">{answer.inputHash.slice(0, HASH_SIGNS)}</span>.
    </p>
  );
}
