import { workWords } from "../judge/answer-words.ts";
import type { Answers } from "../judge/judgement.ts";
import { cautionSays } from "../judge/words/cautions.ts";
import type { SaddleAnswer, WorkAnswer } from "../terms/answers.ts";
import { firstForOwner } from "./owner-says.ts";

interface Told {
  /** What is done, in the owner's words. */
  readonly will: string;
  readonly not: string;
  /** When we meet next. */
  readonly next: string;
}

const LATER = "After that at least twice a year.";
const AFTER_WORK = `On the day it comes back, for the ridden check on both reins, and again after six to eight weeks. ${LATER}`;
const SOON = `In six to eight weeks. ${LATER}`;
const NEVER_MORE =
  "The head is not moved further than agreed. It is never moved by heat, and never on one side alone.";
const BEYOND =
  "Beyond that, nothing is done to the saddle for HORSE, the panel included, before the vet has seen HORSE.";
const NOT_HERE = "The head is not altered by us.";
const NOT_AT_ALL = "This head is not altered.";
const HEAD_STAYS = "The head stays as it is.";

/** `HORSE` stands for the horse's name. */
const WORK: { readonly [W in WorkAnswer]: Told } = {
  "not-now": told(
    "When the vet has seen HORSE, the saddle is looked at afresh.",
    "Nothing is done to the saddle for HORSE, the panel included, before the vet has seen HORSE and has nothing against it.",
    "As soon as the vet has seen HORSE. Please bring what the vet said.",
  ),
  "leave-as-found": told(
    "Keep the saddle dry, unridden and as it is until the claim is closed or its owner has agreed in writing.",
    "Nothing is done to the saddle, the panel included, before the claim is closed or its owner has agreed in writing.",
    "When the claim is closed or the owner has agreed. The saddle is then looked at afresh.",
  ),
  nothing: told("Nothing needs doing today.", HEAD_STAYS, "In six months."),
  "set-up": told(
    "It is placed, girthed or padded otherwise, ridden, and read again.",
    HEAD_STAYS,
    `When that is done, to read it again. ${LATER}`,
  ),
  panel: told(
    "The panel is worked on and the saddle ridden. Each fill is dated, and thinned at each visit.",
    HEAD_STAYS,
    SOON,
  ),
  "change-plate": told(
    "The plate in the head is changed, the head is measured again as it is then fitted, and the ridden check decides. The old plate stays with the saddle.",
    "The plate is not bent to size, and the head is not put to a press.",
    `On the day of the change, for the ridden check, and again after six to eight weeks. ${LATER}`,
  ),
  "change-insert": told(
    "The inserts in the head are set the same on both sides, the head is measured again, and the ridden check decides.",
    "The inserts are never set differently on one side, and the head is not put to a press.",
    `On the day of the change, for the ridden check, and again after six to eight weeks. ${LATER}`,
  ),
  "alter-dressed": told(
    "The head is altered at the press, inside the saddle, in small measured passes. It is measured again after 24 hours, and ridden in front of the fitter before it is ridden at home.",
    NEVER_MORE,
    AFTER_WORK,
  ),
  "alter-stripped": told(
    "The saddle is stripped, and the head is altered at the press, in small measured passes. It is measured again after 24 hours, built up, and ridden in front of the fitter before it is ridden at home.",
    NEVER_MORE,
    AFTER_WORK,
  ),
  "strip-first": told(
    "A saddler strips the saddle, which is to take it apart until its tree is bare, and looks at the tree. What is found decides what comes next, and we write to you before anything more is done. Please tell us now what you would want if the tree is not sound.",
    "The head is not altered before the tree has been seen bare.",
    "When the tree has been seen bare.",
  ),
  "set-back": told(
    "The last change of the head is taken back: in small measured passes, or by the old plate. It is measured again after 24 hours, and ridden in front of the fitter before it is ridden at home.",
    NEVER_MORE,
    AFTER_WORK,
  ),
  "heat-by-maker": told(
    "The saddle goes to the maker's people, with our readings and the template.",
    "The head is not put to a press, and nobody but the maker's people warms it.",
    AFTER_WORK,
  ),
  colleague: told("We hand our readings to a colleague who may do this work.", NOT_HERE, AFTER_WORK),
  maker: told("We ask the maker, with our readings and the template.", NOT_HERE, AFTER_WORK),
  "other-saddle": told(
    "We keep the template and the drawings of HORSE's back, to look for another saddle with.",
    NOT_AT_ALL,
    "When there is another saddle to look at.",
  ),
  spent: told(
    "We keep the template and the drawings of HORSE's back, to look for another saddle or another tree with.",
    NOT_AT_ALL,
    "When there is another saddle to look at.",
  ),
  "measure-more": told(
    "We read what is missing, and then answer.",
    "Nothing is altered until what is missing has been read.",
    "To read what is missing.",
  ),
};

/** A saddle that wants something done before anything else; the others wait for the work answer. */
const SADDLE: { readonly [S in SaddleAnswer]?: { readonly will: string; readonly not: string } } = {
  "strip-before-riding": {
    will: "You tie a tag to the saddle, so that nobody rides in it, and its tree is looked at bare.",
    not: "Nobody rides in this saddle before its tree has been seen bare and found sound.",
  },
  "out-till-repaired": {
    will: "You tie a tag to the saddle, so that nobody rides in it; it is repaired, and looked over again afterwards.",
    not: "Nobody rides in this saddle before it has been repaired and looked over again.",
  },
  "out-for-good": {
    will: "The saddle is marked, so that nobody uses it by mistake.",
    not: "Nobody rides in this saddle again. It is not mended, lent or sold.",
  },
};

/** What an answer means in this case, where its own words would say too much or too little. */
export function workMeaning({ saddle, work }: Answers): string {
  if (saddle.id === "out-for-good" && work.id === "other-saddle")
    return "Its tree is broken, so another saddle is looked for.";
  if (work.because.some(({ rule }) => rule === "right-harms-another"))
    return "No head serves every horse that wears this saddle; it stays as it is for the other.";
  return workWords(work.id).meaning;
}

const ALSO: { readonly [W in WorkAnswer]?: string } = {
  panel: "Besides, the panel is worked on.",
  "set-up": "Besides, it is placed, girthed or padded otherwise.",
  "strip-first": "Before that the saddle is stripped and its tree looked at.",
  "alter-dressed": "What is then to be done: the head is altered at the press, inside the saddle.",
  "alter-stripped": "If the tree is sound, its head is then altered at the press, in small measured passes.",
  "change-plate": "What is then to be done: the plate in the head is changed.",
  "change-insert": "What is then to be done: the inserts in the head are set otherwise.",
  "set-back": "What is then to be done: the last change of the head is taken back.",
  colleague: "The work itself is for a colleague who is qualified and equipped for it.",
  maker: "The maker is asked before anything is begun.",
  "heat-by-maker": "The head itself is for the maker's people.",
};

function told(will: string, not: string, next: string): Told {
  return { will, not, next };
}

/** What will be done, what will not, and when we meet next, for these answers. */
export function toldOf({ horse, saddle, work }: Answers) {
  const { will, not, next } = WORK[work.id];
  const first = SADDLE[saddle.id];
  const flagged = horse.id.startsWith("vet-") || horse.id === "come-back";
  const repairOnly = first !== undefined && ["colleague", "maker"].includes(work.id);
  return {
    will: [
      ...(flagged ? [firstForOwner(horse.id) ?? horse.nextStep] : []),
      ...(first ? [first.will] : []),
      will,
      ...work.also.flatMap((id) => ALSO[id] ?? []),
    ],
    not: [
      ...(first ? [first.not] : []),
      ...(repairOnly ? [] : [first && work.id === "not-now" ? BEYOND : not]),
      "Nothing is begun before you have agreed to it.",
    ],
    // A hollow is looked at again sooner, also where nothing needs doing.
    next: work.id === "nothing" && work.cautions.includes(cautionSays("work-hollow")) ? SOON : next,
  };
}
