import { writeFileSync } from "node:fs";
import { printsOf } from "../number/prints.ts";
import { FILE, NAMES, partsOf } from "./whole-figures.ts";

// `npx tsx evidence/reach/freeze-whole.ts` after a change that is meant to move figures: look at what moved, and why.
writeFileSync(
  FILE,
  `${JSON.stringify(Object.fromEntries(NAMES.map((name) => [name, printsOf(partsOf(name))])), null, 1)}\n`,
);
