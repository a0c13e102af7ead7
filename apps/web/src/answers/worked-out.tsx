import type { Answer } from "../road.ts";

/** Signs of the readings' fingerprint that are shown: enough to find the same readings again. */
const HASH_SIGNS = 12;

/** From what the answers were worked out: how many draws, which engine, which readings. */
export function WorkedOut({ answer, answering }: { answer: Answer; answering: boolean }) {
  const { count } = answer.draws;
  const draws = count === 0 ? "best estimate, doubts still to come" : `${count.toLocaleString("en")} draws of every doubt${answering ? " so far" : ""}`;
  return (
    <p className="worked-out quiet" data-hash={answer.inputHash} data-horse={answer.horse}>
      Worked out on this device from {draws}. Engine <span className="figure">{answer.engine}</span>, readings{" "}
      <span className="figure">{answer.inputHash.slice(0, HASH_SIGNS)}</span>.
    </p>
  );
}
