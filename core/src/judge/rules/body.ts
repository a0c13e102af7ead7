import { practice, published } from "./make.ts";

const BANDS =
  "Powell et al. 2008 (little difference at 15 and 20 %, changes at 25), Stefánsdóttir et al. 2017 (22.7 ± 4.3 % at the lactate limit), Dyson et al. 2020 (1 test in 12 abandoned at 12.8 to 15.0 %, 13 of 13 from 15.3 % up; pilot); that 15 and 20 % are the lines is a choice, not a finding, and what to do about it common practice";
const READ = ["rider.massDressed", "rider.tackMass", "horses[].mass", "horses[].body"] as const;

/** Advice beside the answers: it opens and shuts nothing. The gate for a heavy rider is `fit-rider-heavy`. */
export const BODY_RULES = [
  published(
    "load-under-15",
    "Rider and tack are under 15 % of the horse's mass: nothing to say of the load.",
    BANDS,
    ...READ,
  ),
  published(
    "load-15-to-20",
    "Rider and tack are 15 to 20 % of the horse's mass: short rides at first, a fit horse, a saddle that fits, and a look at the back after each ride.",
    BANDS,
    ...READ,
  ),
  published(
    "load-over-20",
    "Rider and tack are over 20 % of the horse's mass: a lighter rider or lighter tack.",
    BANDS,
    ...READ,
  ),
  published(
    "condition-outside",
    "The condition is outside 4 to 6 of 9: as it comes right the back will change its shape, so the next look comes sooner.",
    "Henneke et al. 1983 (scale; names of grades 6 to 9 from memory); 4 to 6 as the usual ideal was read beside it",
    "horses[].body.condition",
  ),
  practice(
    "trace-void",
    "Since this trace was drawn the condition has changed by more than one grade, or the mass by more than 5 %: it is void, and the back is traced again.",
    "horses[].traces",
    "horses[].body",
    "horses[].mass",
  ),
] as const;
