import { GERMAN } from "../../spoken/german.ts";
import { tradeFrom } from "../trade.ts";
import { AGREEMENT } from "./agreement.ts";
import { ANSWERS_HORSE, ANSWERS_SADDLE, ANSWERS_WORK } from "./answers.ts";
import { CAUTIONS } from "./cautions.ts";
import { CHOICES } from "./choices.ts";
import { LETTER, OWNER_FOLLOWS, OWNER_SAYS, OWNER_WORK } from "./letter.ts";
import { FAULTS, REASONS_FIT, REASONS_HORSE, REASONS_SADDLE } from "./letter-reasons.ts";
import { OWNER_HOME, OWNER_LOOKED, OWNER_PAGE, OWNER_QUESTIONS, OWNER_SEES } from "./owner.ts";
import { BACK, PANEL, WHERE } from "./places-fit.ts";
import { HORSE, PEOPLE } from "./places-people.ts";
import { HEAD, SADDLE } from "./places-saddle.ts";
import { ALLOWED, ALLOWED_LINE, ALLOWED_NUMBER, HINTS, READ } from "./refusals.ts";
import { RULES_HORSE, RULES_RIGHT, RULES_SADDLE } from "./rules-first.ts";
import { LIMITS, RESTS, RULES_FIT, RULES_WAY } from "./rules-fit.ts";
import { TABLE_IN } from "./table-in.ts";

/** Core's words in German. Not yet read by a German fitter. */
export const TABLES = [
  WHERE,
  PEOPLE,
  HORSE,
  SADDLE,
  HEAD,
  PANEL,
  BACK,
  ANSWERS_HORSE,
  ANSWERS_SADDLE,
  ANSWERS_WORK,
  CAUTIONS,
  RULES_HORSE,
  RULES_RIGHT,
  RULES_SADDLE,
  RULES_FIT,
  RULES_WAY,
  LIMITS,
  RESTS,
  HINTS,
  READ,
  ALLOWED,
  ALLOWED_LINE,
  ALLOWED_NUMBER,
  TABLE_IN,
  LETTER,
  OWNER_SAYS,
  OWNER_WORK,
  OWNER_FOLLOWS,
  REASONS_HORSE,
  REASONS_SADDLE,
  REASONS_FIT,
  FAULTS,
  AGREEMENT,
  OWNER_PAGE,
  OWNER_QUESTIONS,
  OWNER_LOOKED,
  OWNER_HOME,
  OWNER_SEES,
] as const;

export const TRADE_DE = tradeFrom(TABLES, CHOICES, GERMAN);
