import { GERMAN } from "../../spoken/german.ts";
import { tradeFrom } from "../trade.ts";
import { ANSWERS_HORSE, ANSWERS_SADDLE } from "./answers.ts";
import { CAUTIONS } from "./cautions.ts";
import { CHOICES } from "./choices.ts";
import { OWNER_HOME, OWNER_LOOKED, OWNER_PAGE, OWNER_QUESTIONS, OWNER_SEES } from "./owner.ts";
import { RULES_HORSE, RULES_RIGHT, RULES_SADDLE } from "./rules-first.ts";

/** As much of core's words in German as the owner's page can say: it is to be light on an old phone. */
export const OWNER_PAGE_DE = tradeFrom(
  [
    OWNER_PAGE,
    OWNER_QUESTIONS,
    OWNER_LOOKED,
    OWNER_HOME,
    OWNER_SEES,
    ANSWERS_HORSE,
    ANSWERS_SADDLE,
    CAUTIONS,
    RULES_HORSE,
    RULES_RIGHT,
    RULES_SADDLE,
  ],
  CHOICES,
  GERMAN,
);
