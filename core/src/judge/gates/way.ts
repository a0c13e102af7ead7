import type { WayFindings } from "../findings/orders.ts";
import { ALL_BUT_STRIP, type Bar, PRESSES } from "./gate.ts";

type F = WayFindings;
const changeable = (f: F): boolean => f.build === "plate-exchanged" || f.build === "insert-exchanged";

/** Gate 5: which way this head can be moved at all, by how it is built and how that was told. */
export const WAY_BARS: readonly Bar<F>[] = [
  {
    rule: "way-maker-only",
    when: (f) => f.build === "makers-form",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "maker",
  },
  {
    rule: "way-polymer-solid",
    when: (f) => f.build === "solid-polymer",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "heat-by-maker",
  },
  { rule: "way-bar-fixings", when: (f) => f.fixings === "not-firm", shuts: PRESSES, leadsTo: "maker" },
  {
    rule: "way-inserts-unlike",
    when: (f) => f.inserts === "unlike",
    shuts: ALL_BUT_STRIP,
    leadsTo: "colleague",
  },
  {
    rule: "way-inserts-not-known",
    when: (f) => f.inserts === "not-known",
    shuts: ["exchange"],
    leadsTo: "measure-more",
  },
  {
    rule: "way-inserts-grit",
    when: (f) => f.inserts === "gritty",
    shuts: ["exchange"],
    leadsTo: "measure-more",
  },
  {
    rule: "way-build-not-known",
    when: (f) => f.build === "not-known",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "measure-more",
  },
  { rule: "way-changeable", when: changeable, shuts: PRESSES, leadsTo: "maker" },
  {
    rule: "way-no-exchange",
    when: (f) => f.build === "laminated-with-plates" || f.build === "barred-polymer",
    shuts: ["exchange"],
    leadsTo: "maker",
  },
  {
    rule: "way-not-told",
    when: (f) => f.told === "not-told",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "measure-more",
  },
  { rule: "way-owners-word", when: (f) => f.told === "owners-word", shuts: PRESSES, leadsTo: "measure-more" },
  {
    rule: "way-moved-not-known",
    when: (f) => f.moved === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
  {
    rule: "way-polymer-cold",
    when: (f) => f.warmth === "cold",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "measure-more",
  },
  {
    rule: "way-polymer-cold",
    when: (f) => f.warmth === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
];
