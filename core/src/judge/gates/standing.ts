import type { StandingFindings } from "../findings/orders.ts";
import { type Bar, PRESSES } from "./gate.ts";

type F = StandingFindings;

/** Gate 3: warranty, the maker, and what the worker may do. It removes ways; it does not stop a fit from being judged. */
export const STANDING_BARS: readonly Bar<F>[] = [
  {
    rule: "standing-warranty",
    when: (f) => f.warranty === "taken-to-run" && f.makerPermits !== "yes",
    shuts: ["exchange", "strip", ...PRESSES],
    leadsTo: "maker",
  },
  {
    rule: "standing-maker-refuses",
    when: (f) => f.makerPermits === "no",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "maker",
  },
  {
    rule: "standing-may-not-assess",
    when: (f) => f.mayAssess === "may-not",
    shuts: ["set-up", "flock", "exchange", ...PRESSES],
    leadsTo: "colleague",
  },
  {
    rule: "standing-may-not-exchange",
    when: (f) => f.mayExchange === "may-not",
    shuts: ["exchange"],
    leadsTo: "colleague",
  },
  {
    rule: "standing-may-not-press",
    when: (f) => f.mayPress === "may-not",
    shuts: PRESSES,
    leadsTo: "colleague",
  },
  {
    rule: "standing-may-not-strip",
    when: (f) => f.mayStrip === "may-not",
    shuts: ["strip"],
    leadsTo: "colleague",
  },
  {
    rule: "standing-assess-not-known",
    when: (f) => f.mayAssess === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
  {
    rule: "standing-exchange-not-known",
    when: (f) => f.mayExchange === "not-known",
    shuts: ["exchange"],
    leadsTo: "measure-more",
  },
  {
    rule: "standing-press-not-known",
    when: (f) => f.mayPress === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
  {
    rule: "standing-strip-not-known",
    when: (f) => f.mayStrip === "not-known",
    shuts: ["strip"],
    leadsTo: "measure-more",
  },
];
