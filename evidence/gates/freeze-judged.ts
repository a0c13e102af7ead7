import { writeFileSync } from "node:fs";
import { printsOf } from "../number/prints.ts";
import { FILE, partsOf, RIDES } from "./judged-figures.ts";
import { nameOf, FILE as VARIED, varied, WORKED_OUT, workedOut } from "./varied-figures.ts";

// `npx tsx evidence/gates/freeze-judged.ts` after a change that is meant to move an answer: look at what moved, and why.
function freeze(file: URL, made: (ride: (typeof RIDES)[number]) => unknown): void {
  const all = Object.fromEntries(RIDES.map((ride) => [nameOf(ride), made(ride)]));
  writeFileSync(file, `${JSON.stringify(all, null, file === WORKED_OUT ? 0 : 1)}\n`);
}

freeze(FILE, (ride) => printsOf(partsOf(ride)));
freeze(WORKED_OUT, workedOut);
freeze(VARIED, (ride) => {
  const { parts, answers } = varied(ride);
  return { prints: printsOf(parts), answers };
});
