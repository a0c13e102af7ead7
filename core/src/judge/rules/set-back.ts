import { practice } from "./make.ts";

const RECORD = "saddle.past.alterations";

/** Why an earlier change is not set back, told wherever it is not. */
export const SET_BACK_RULES = [
  practice(
    "set-back-nothing-on-record",
    "No earlier change of the head is on record with its size, so there is nothing to set back.",
    "saddle.past.alterationsKnown",
    RECORD,
  ),
  practice(
    "set-back-head-stays",
    "An earlier change of the head is on record; the head stays as it is, so it is not set back.",
    RECORD,
  ),
  practice(
    "set-back-heads-elsewhere",
    "An earlier change is on record; what is made by other hands is no setting back.",
    RECORD,
    "saddle.build",
  ),
  practice(
    "set-back-as-made-not-read",
    "An earlier change is on record, and the spread as made was not read: whether this sets it back cannot be told.",
    "saddle.head.asMadeSpreadTips",
  ),
  practice(
    "set-back-same-way",
    "The last change went the same way as this one: it goes further and sets nothing back.",
    RECORD,
  ),
  practice(
    "set-back-not-near",
    "The best head lies more than 3 mm from as made: it is a new change and no setting back.",
    "saddle.head.asMadeSpreadTips",
    RECORD,
  ),
  practice(
    "set-back-reversals",
    "The head has been moved to and fro twice: it is not set back again.",
    RECORD,
  ),
  practice(
    "set-back-plate-not-kept",
    "The plate that was in this head before was not kept with the saddle: another one is a change and no setting back.",
    "platesAtHand",
  ),
] as const;
