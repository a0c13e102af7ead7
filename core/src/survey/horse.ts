import { z } from "zod";
import { STATIONS, ZONES } from "../terms/places.ts";
import { profileInMm, traceInMm } from "./take-points.ts";
import { measured, pointTyped, said, sign, words } from "./typed.ts";

export const historySchema = z
  .strictObject({
    suddenChange: said("sudden change of behaviour"),
    wound: said("a wound under saddle or girth lately"),
    fall: said("a fall lately"),
    nerveSigns: said("stumbling, swaying or other signs of the nerves"),
    painkillers7Days: said(
      "painkillers in the last 7 days, or a joint or back injection whose waiting time is not over",
    ),
    oneSidedMuscleLoss: said("sudden loss of muscle on one side"),
    weightFalling: said("weight falling without a reason"),
    riddenSigns: measured({
      kind: "count",
      lo: 0,
      hi: 24,
      by: "count",
      about: "signs counted on the published list of 24 ridden signs",
    }),
    slipsSameWay: said("saddle slips the same way on both reins and with a second rider"),
    offWorkWeeks: measured({
      kind: "weeks",
      lo: 0,
      hi: 520,
      by: "count",
      about: "weeks off work in the last three months",
    }),
    backInWorkWeeks: measured({
      kind: "weeks",
      lo: 0,
      hi: 520,
      by: "count",
      about: "weeks back in work since",
    }),
    growing: said("still growing, or under seven"),
  })
  .meta({ description: "what has been going on, each asked by itself" });

const grade = z
  .strictObject({
    grade: z
      .int()
      .min(0)
      .max(3)
      .meta({ description: "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong" }),
    twice: z
      .enum(["yes", "no", "not-tried"])
      .default("not-tried")
      .meta({ description: "was the reaction there again" }),
  })
  .meta({
    description: "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong; twice: was it there again",
  });

const zoneSides = z.strictObject({ near: grade.optional(), off: grade.optional() });

export const handsSchema = z
  .strictObject(
    Object.fromEntries(ZONES.map((zone) => [zone, zoneSides.optional()])) as Record<
      (typeof ZONES)[number],
      z.ZodOptional<typeof zoneSides>
    >,
  )
  .meta({ description: "hands on, flat hand first, by zone and side; a zone left out was not looked at" });

export const standingSchema = z
  .strictObject({
    swelling: sign("swelling under saddle or girth"),
    heat: sign("heat under saddle or girth"),
    openSore: sign("open sore or rub under saddle or girth"),
    whiteHairs: sign("white hairs or scars under the saddle"),
    hollowNear: measured({
      kind: "length",
      lo: 0,
      hi: 60,
      by: "ruler",
      about: "hollow behind the shoulder under a 300 mm straight-edge, near side",
    }),
    hollowOff: measured({
      kind: "length",
      lo: 0,
      hi: 60,
      by: "ruler",
      about: "hollow behind the shoulder under a 300 mm straight-edge, off side",
    }),
    usableLengthNear: measured({
      kind: "length",
      lo: 200,
      hi: 650,
      by: "ruler",
      about: "front station to the last rib's line, measured at the side, near",
    }),
    usableLengthOff: measured({
      kind: "length",
      lo: 200,
      hi: 650,
      by: "ruler",
      about: "front station to the last rib's line, measured at the side, off",
    }),
    girthGroove: measured({
      kind: "length",
      lo: -200,
      hi: 250,
      by: "ruler",
      about: "girth groove, distance behind the front station",
    }),
    ridgeFront: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, front",
    }),
    ridgeMid: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, mid",
    }),
    ridgeRear: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, rear",
    }),
  })
  .meta({ description: "the horse stood up: level, square, head level, mouth empty" });

export const movingSchema = z
  .strictObject({
    uneven: sign("uneven at walk or trot in hand"),
    toeDragOrStumble: sign("drags a toe or stumbles"),
  })
  .meta({ description: "trotted up in hand" });

/**
 * One drawing of the back's shape across: points from the near side to the off side, y to the right, z up,
 * top of the back at (0, 0). Read, its points are millimetres.
 */
export const traceSchema = z
  .strictObject({
    station: z.enum(STATIONS).meta({
      description:
        "place along the back: front at the tree points, mid at the deepest seat, rear 40 mm before the panel's end",
    }),
    behindFront: measured({
      kind: "length",
      lo: -100,
      hi: 700,
      by: "ruler",
      about: "distance of this trace behind the front station, along the back",
    }),
    temper: z
      .enum(["cold", "warm", "not-asked"])
      .default("not-asked")
      .meta({ description: "before work (cold) or after 20 to 30 minutes of it (warm)" }),
    minutesSinceWork: measured({ kind: "time", lo: 0, hi: 100000, by: "count", about: "minutes since work" }),
    drawnBy: words("who drew it", 120),
    drawnWith: z
      .enum(["flexible-curve", "template", "ruler"])
      .default("flexible-curve")
      .meta({ description: "flexible curve, card template cut to the back, or offsets by ruler" }),
    unit: z.enum(["mm", "cm", "in"]).default("mm").meta({ description: "unit of the points" }),
    points: z
      .array(pointTyped)
      .min(7)
      .max(2000)
      .meta({ description: "points [y to the off side, z up], near side first, top of the back at [0, 0]" }),
    repeats: z
      .array(z.array(pointTyped).min(7).max(2000))
      .max(9)
      .default([])
      .meta({ description: "the same trace drawn again, each time lifted off" }),
  })
  .transform(traceInMm)
  .meta({ description: "a trace across the back, by flexible curve or offsets; at most 2,000 points" });

export const profileSchema = z
  .strictObject({
    unit: z.enum(["mm", "cm", "in"]).default("mm").meta({ description: "unit of the points" }),
    points: z
      .array(pointTyped)
      .min(3)
      .max(2000)
      .meta({ description: "points [x behind the front station, z of the midline to a level line, up]" }),
  })
  .transform(profileInMm)
  .meta({ description: "the midline from front station to behind the saddle, against a level line" });

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

const hand = z
  .enum(["even", "tight-at-tip", "tight-at-top", "loose", "not-looked"])
  .default("not-looked")
  .meta({ description: "hand between point and horse, down the point" });

const stateSchema = z.strictObject(stateReadings);
const girthedSchema = z.strictObject({
  ...stateReadings,
  handNear: hand,
  handOff: hand,
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

const movedSchema = z.strictObject({
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

export const horseSchema = z
  .strictObject({
    name: z.string().min(1).max(120).meta({ description: "name of the horse" }),
    about: words("breed, age, work"),
    age: measured({ kind: "age", lo: 0, hi: 45, by: "count", about: "age of the horse" }),
    history: historySchema.prefault({}),
    standing: standingSchema.prefault({}),
    hands: handsSchema.prefault({}),
    moving: movingSchema.prefault({}),
    traces: z.array(traceSchema).max(24).default([]).meta({ description: "tracings, at most 24" }),
    profile: profileSchema.optional(),
    trunkUnchanged: said("behind the hollow the trunk has the shape it had before"),
    laidOn: stateSchema.prefault({}).meta({ description: "laid on, girth hanging" }),
    girthed: girthedSchema.prefault({}).meta({ description: "girthed up, no rider" }),
    riderUp: stateSchema.prefault({}).meta({ description: "rider up, sitting still" }),
    halfSeat: stateSchema.prefault({}).meta({ description: "rider in half-seat" }),
    moved: movedSchema.prefault({}).meta({ description: "ridden, in movement" }),
    template: templateSchema.prefault({}),
    onlyThisHorse: said("signed: the other horses of this saddle are left out"),
  })
  .meta({ description: "one horse that wears the saddle" });
