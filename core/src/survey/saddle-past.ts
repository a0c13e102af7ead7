import { z } from "zod";
import { SURVEY_LIMITS } from "./sizes.ts";
import { measured, said, words } from "./typed.ts";

export const standingOfSaddleSchema = z
  .strictObject({
    serial: words("serial or date stamp as read", SURVEY_LIMITS.serialLetters),
    serialIsOfRecord: said("the serial is the one of the record"),
    ownerConsents: said("its legal owner consents to the work"),
    claimOrDispute: said("it is evidence in a claim, an enquiry or a sale dispute"),
    inWarranty: said("the maker's warranty runs"),
    makerPermits: said("the maker permits this work by this person"),
    othersWearIt: said("other horses wear it that are not in this case"),
  })
  .meta({ description: "whose saddle it is, and what the maker says" });

export const incidentsSchema = z
  .strictObject({
    rolledOn: said("a horse rolled on it"),
    horseFell: said("a horse fell with it on"),
    fellOffRack: said("it fell off a rack"),
    drivenOver: said("it was driven over"),
    dragged: said("it was dragged"),
    dropped: said("it was dropped"),
    castInBox: said("a horse was cast in the box with it on"),
    hungFromBars: said("it hung from its bars"),
  })
  .meta({ description: "incidents, asked one by one" });

const alterationSchema = z
  .strictObject({
    date: z
      .string()
      .max(SURVEY_LIMITS.whenLetters)
      .meta({ description: "when, yyyy or yyyy-mm or yyyy-mm-dd, or unknown" }),
    change: measured({
      kind: "length",
      lo: -60,
      hi: 60,
      by: "ruler",
      about: "change of the spread inside the tips; opening is positive",
    }),
    by: words("by whom", SURVEY_LIMITS.nameLetters),
    knownHand: said("the hand is known and qualified"),
    way: z
      .enum(["press", "exchange", "heat", "unknown"])
      .default("unknown")
      .meta({ description: "how it was altered" }),
  })
  .meta({ description: "one earlier alteration of the head" });

export const pastSchema = z
  .strictObject({
    age: measured({ kind: "age", lo: 0, hi: 120, by: "count", about: "age of the tree" }),
    ownedSinceNew: said("its owner has had it since new"),
    incidents: incidentsSchema.prefault({}),
    storedHot: said("stored hot: car, loft"),
    storedDamp: said("stored damp, flooded, mouldy"),
    alterationsKnown: z
      .enum(["none", "listed", "unknown", "not-asked"])
      .default("not-asked")
      .meta({ description: "are earlier alterations of the head known" }),
    alterations: z
      .array(alterationSchema)
      .max(SURVEY_LIMITS.alterations)
      .default([])
      .meta({ description: "earlier alterations of the head, oldest first" }),
    repaired: said("repaired, replated, bandaged, extra rivets, filler"),
    heatedBefore: said("its head was heated before"),
  })
  .meta({ description: "what has happened to the saddle" });
