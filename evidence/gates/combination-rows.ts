import type { Row } from "./combination-bases.ts";
import { BUILD_ROWS } from "./rows-build.ts";
import { FIT_ROWS } from "./rows-fit.ts";
import { HORSE_ROWS } from "./rows-horse.ts";
import { POLYMER_ROWS } from "./rows-polymer.ts";
import { SADDLE_ROWS } from "./rows-saddle.ts";
import { STANDING_ROWS } from "./rows-standing.ts";

export const COMBINATIONS: readonly Row[] = [
  ...SADDLE_ROWS,
  ...POLYMER_ROWS,
  ...BUILD_ROWS,
  ...FIT_ROWS,
  ...HORSE_ROWS,
  ...STANDING_ROWS,
];
