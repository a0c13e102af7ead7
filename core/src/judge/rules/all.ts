import type { Rule } from "../judgement.ts";
import { BODY_RULES } from "./body.ts";
import { FIT_RULES } from "./fit.ts";
import { HORSE_RULES } from "./horse.ts";
import { RIGHT_RULES } from "./right.ts";
import { SADDLE_RULES } from "./saddle.ts";
import { SET_BACK_RULES } from "./set-back.ts";
import { STANDING_RULES } from "./standing.ts";
import { WAY_RULES } from "./way.ts";

/** Every rule that is not a limit, in the order of the gates. */
export const RULES: readonly Rule[] = [
  ...HORSE_RULES,
  ...BODY_RULES,
  ...RIGHT_RULES,
  ...SADDLE_RULES,
  ...STANDING_RULES,
  ...FIT_RULES,
  ...SET_BACK_RULES,
  ...WAY_RULES,
];
