import { writeFileSync } from "node:fs";
import { printsOf } from "../number/prints.ts";
import { FILE, partsOf, RIDES } from "./judged-figures.ts";

// `npx tsx evidence/gates/freeze-judged.ts` after a change that is meant to move an answer: look at what moved, and why.
writeFileSync(
  FILE,
  `${JSON.stringify(Object.fromEntries(RIDES.map((ride) => [`${ride.name} ${ride.horse}`, printsOf(partsOf(ride))])), null, 1)}\n`,
);
