import type { RefusalReason } from "../engine/contact/problem.ts";

const SAYS: { readonly [R in RefusalReason]: string } = {
  "tips-front": "In the calculation it does not come to rest: it tips forward over its points.",
  "tips-rear": "In the calculation it does not come to rest: it tips back over the rear of its panel.",
  "tips-near": "In the calculation it does not come to rest: it rolls off to the near side (left).",
  "tips-off": "In the calculation it does not come to rest: it rolls off to the off side (right).",
  unstable: "In the calculation it does not stay at rest: where forces balance, the least nudge moves it on.",
  "beyond-law":
    "It was not worked out how it rests: panel and back would be pressed together further than the calculation holds for.",
};

/** Every reason why one may not come to rest. */
export const RESTS_NOT = Object.keys(SAYS) as readonly RefusalReason[];

/** Why a saddle was not brought to rest in the calculation, in plain words. */
export const refusalSays = (why: RefusalReason): string => SAYS[why];
