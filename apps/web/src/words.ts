import type { HorseAnswer, PaperKind, Rest, SaddleAnswer, Side, Station, WorkAnswer } from "./road.ts";

export const HORSE_WORDS: { readonly [A in HorseAnswer]: string } = {
  "not-examined": "Not looked at yet",
  "no-reason-seen": "No reason seen against work",
  "vet-before-altering": "See the vet before any saddle work",
  "vet-before-riding": "See the vet before riding",
  "come-back": "Come back later",
};

export const SADDLE_WORDS: { readonly [A in SaddleAnswer]: string } = {
  "not-looked": "Not looked over yet",
  "sound-dressed": "Nothing found, looked at dressed",
  "sound-bare": "Sound, looked at bare",
  "strip-before-altering": "Strip before it is altered",
  "strip-before-riding": "Strip before it is ridden",
  "out-till-repaired": "Out of use till repaired",
  "out-for-good": "Out of use for good",
};

export const WORK_WORDS: { readonly [A in WorkAnswer]: string } = {
  "not-now": "No saddle work now",
  "leave-as-found": "Leave it as found",
  nothing: "Nothing to alter",
  "set-up": "Set it up otherwise",
  panel: "Flock or shim, head left",
  "change-plate": "Change the plate",
  "change-insert": "Change the inserts",
  "alter-dressed": "Alter the head, dressed",
  "alter-stripped": "Alter the head, stripped",
  "strip-first": "Strip first, then decide",
  "set-back": "Set an earlier change back",
  "heat-by-maker": "Heat, by the maker's people",
  colleague: "A colleague who may",
  maker: "To the maker",
  "other-saddle": "Another saddle",
  spent: "This head has had its share",
  "measure-more": "Measure more",
};

/** Answers after which nothing may be done today; they are shown white on black. */
const STOPS = ["vet-before-riding", "strip-before-riding", "out-till-repaired", "out-for-good"];
export const isStop = (id: string): boolean => STOPS.includes(id);

export const STATION_WORDS: { readonly [S in Station]: string } = { front: "Front", mid: "Mid", rear: "Rear" };
export const SIDE_WORDS: { readonly [S in Side]: string } = { near: "near (left)", off: "off (right)" };
export const THIRD_WORDS: { readonly [T in Rest["thirds"][number]["third"]]: string } = { front: "front", middle: "middle", rear: "rear" };

export const PAPER_WORDS: { readonly [P in PaperKind]: { readonly name: string; readonly says: string } } = {
  letter: { name: "Letter", says: "For the owner, in plain words, at most two pages." },
  sheet: { name: "Sheet", says: "For the bench: answers, limits, sections, what follows." },
  template: { name: "Template", says: "The wanted head at 1 : 1, with bars to prove the print." },
};
