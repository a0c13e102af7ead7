import type { LimitRule } from "../judgement.ts";
import { OPEN } from "./bands.ts";
import type { LimitId } from "./limit-ids.ts";

export type Limit = LimitRule & { readonly id: LimitId };

/** The usual mark of a bench rule. */
export const PRACTICE = {
  provenance: "common practice, no source",
  sourceRef: "common practice, no source",
} as const;

/** Inside from `inside` upward, outside below `outside`. */
export const atLeast = (inside: number, outside: number) =>
  ({ inside: [inside, OPEN], outside: [outside, OPEN] }) as const;
/** Inside up to `inside`, outside above `outside`; less than nothing does not come up. */
export const atMost = (inside: number, outside: number) =>
  ({ inside: [-OPEN, inside], outside: [-OPEN, outside] }) as const;
/** The same limits either way from zero. */
export const within = (inside: number, outside: number) =>
  ({ inside: [-inside, inside], outside: [-outside, outside] }) as const;
