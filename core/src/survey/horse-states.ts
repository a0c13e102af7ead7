import { z } from "zod";
import { measured } from "./typed.ts";

const stateReadings = {
  clearanceTop: measured({
    kind: "length",
    lo: 0,
    hi: 160,
    by: "ruler",
    about: "clearance over the top of the withers",
  }),
  clearanceNear: measured({
    kind: "length",
    lo: 0,
    hi: 160,
    by: "ruler",
    about: "clearance at the near side of the withers",
  }),
  clearanceOff: measured({
    kind: "length",
    lo: 0,
    hi: 160,
    by: "ruler",
    about: "clearance at the off side of the withers",
  }),
  seatSlope: measured({
    kind: "angle",
    lo: -25,
    hi: 25,
    by: "level",
    about: "slope of the seat's bottom to gravity, head end higher is positive",
  }),
} as const;

const hand = (side: "near" | "off") =>
  z
    .enum(["even", "tight-at-tip", "tight-at-top", "loose", "not-looked"])
    .default("not-looked")
    .meta({ description: `hand between point and horse, down the ${side} point` });

export const stateSchema = z.strictObject(stateReadings);
export const girthedSchema = z.strictObject({
  ...stateReadings,
  handNear: hand("near"),
  handOff: hand("off"),
  bridgeNear: measured({
    kind: "length",
    lo: 0,
    hi: 60,
    by: "feeler",
    about: "gap under the middle of the panel, girthed and unridden, near",
  }),
  bridgeOff: measured({
    kind: "length",
    lo: 0,
    hi: 60,
    by: "feeler",
    about: "gap under the middle of the panel, girthed and unridden, off",
  }),
  rock: measured({ kind: "length", lo: 0, hi: 80, by: "ruler", about: "rock by hand, lift of the free end" }),
  pointBehindBladeNear: measured({
    kind: "length",
    lo: -80,
    hi: 200,
    by: "ruler",
    about: "tree point behind the back edge of the blade, near",
  }),
  pointBehindBladeOff: measured({
    kind: "length",
    lo: -80,
    hi: 200,
    by: "ruler",
    about: "tree point behind the back edge of the blade, off",
  }),
  rearBeforeLastRib: measured({
    kind: "length",
    lo: -150,
    hi: 250,
    by: "ruler",
    about: "panel's rear edge before the last rib's line, at the side",
  }),
  strapLine: measured({
    kind: "length",
    lo: -250,
    hi: 350,
    by: "ruler",
    about: "line in which the girth hangs, distance behind the front station",
  }),
});

export const movedSchema = z.strictObject({
  ...stateReadings,
  sideOffset: measured({
    kind: "length",
    lo: 0,
    hi: 120,
    by: "ruler",
    about: "steady side offset seen from behind",
  }),
  rearLift: measured({ kind: "length", lo: 0, hi: 120, by: "ruler", about: "lift of the rear edge in trot" }),
});

/** A template of the wanted head offered up to the head, with feelers in three places each side. */
export const templateSchema = z
  .strictObject({
    nearTop: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, near, top",
    }),
    nearMiddle: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, near, middle",
    }),
    nearTip: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, near, tip; negative where the head is narrower",
    }),
    offTop: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, off, top",
    }),
    offMiddle: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, off, middle",
    }),
    offTip: measured({
      kind: "length",
      lo: -40,
      hi: 40,
      by: "feeler",
      about: "feeler between template and head, off, tip; negative where the head is narrower",
    }),
  })
  .meta({ description: "a template of this horse offered up to the head" });
