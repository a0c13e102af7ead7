import { z } from "zod";
import { ARCH, EXCHANGE, METAL } from "../../terms/construction.ts";
import type { Said } from "../../terms/knowing.ts";

const SAYS = ["yes", "no", "dont-know"] as const;
/** What an owner says; "I don't know" is always an answer. */
export type OwnerSays = (typeof SAYS)[number];
const says = (about: string) => z.enum(SAYS).default("dont-know").meta({ description: about });

/** Accidents, one question each: asked all at once, most people say no. */
const accidents = z.strictObject({
  rolledOn: says("Has a horse ever rolled on it?"),
  horseFell: says("Has a horse fallen with it on?"),
  fellOffRack: says("Has it fallen off a rack?"),
  drivenOver: says("Has it been driven over?"),
  dragged: says("Has it been dragged?"),
  dropped: says("Has it been dropped?"),
  castInBox: says("Has a horse been cast in its box with it on?"),
  hungFromBars: says("Has it hung from its stirrup bars?"),
});

/** The owner's question. Nothing of it is a measurement. */
export const ownerQuestionSchema = z
  .strictObject({
    arch: z.enum(ARCH).default("unknown").meta({ description: "What is the arch of the tree made of?" }),
    metal: z.enum(METAL).default("unknown").meta({ description: "What metal is in the head?" }),
    exchange: z
      .enum(EXCHANGE)
      .default("unknown")
      .meta({ description: "Is there a plate or are there inserts that the maker means to be changed?" }),
    toldByMaker: says("Does the maker's own paper say so?"),
    underFiveYears: says("Is the tree under five years old?"),
    inWarranty: says("Does the maker's warranty still run?"),
    makerAllowsOwner: says("Does the maker's paper let an owner change the plate or the inserts?"),
    ownedSinceNew: says("Have you had the saddle since it was new?"),
    claimOrDispute: says("Is it part of a claim or a dispute?"),
    youOwnIt: says("Is the saddle yours?"),
    otherHorses: says("Does another horse wear it?"),
    hoursAWeek: z
      .enum(["under-3", "3-to-8", "over-8", "dont-know"])
      .default("dont-know")
      .meta({ description: "How many hours a week is it ridden in?" }),
    accidents: accidents.prefault({}),
    clicksOrMoves: says("Does the head click, grate or give when you press the points together?"),
    crackOrWhiteLine: says("Do you see a crack or a white line in the head?"),
    strapOrBarWorn: says("Is a strap, a web or a stirrup bar loose, worn or torn?"),
    uneven: says("Is the horse uneven, or does it stumble?"),
    sore: says("Is there a wound, a swelling, a sore or heat under saddle or girth?"),
    flinches: says("Does it flinch or object when you touch its back, girth it or get on?"),
    changed: says("Has it changed all at once, fallen, or been given painkillers lately?"),
    slips: says("Does the saddle always slip to the same side?"),
    growingOrOffWork: says("Is it still growing, or back from more than four weeks off work?"),
  })
  .meta({ description: "the owner's question" });

export type OwnerQuestionFile = z.input<typeof ownerQuestionSchema>;
export type OwnerQuestion = z.output<typeof ownerQuestionSchema>;

/** As the gates read it. */
export const asSaid = (answer: OwnerSays): Said => (answer === "dont-know" ? "unknown" : answer);
