import { z } from "zod";
import { ARCH, EXCHANGE, METAL, MOVED_BY, PARTS, SPECIAL_FORM, TOLD_BY } from "../terms/construction.ts";
import { calliperOnBare } from "./calliper-on-bare.ts";
import { measured, said, seen, sign, words } from "./typed.ts";

export const standingOfSaddleSchema = z
  .strictObject({
    serial: words("serial or date stamp as read", 80),
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
    date: z.string().max(20).meta({ description: "when, yyyy or yyyy-mm or yyyy-mm-dd, or unknown" }),
    change: measured({
      kind: "length",
      lo: -60,
      hi: 60,
      by: "ruler",
      about: "change of the spread inside the tips; opening is positive",
    }),
    by: words("by whom", 120),
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
      .max(40)
      .default([])
      .meta({ description: "earlier alterations of the head, oldest first" }),
    repaired: said("repaired, replated, bandaged, extra rivets, filler"),
    heatedBefore: said("its head was heated before"),
  })
  .meta({ description: "what has happened to the saddle" });

export const buildSchema = z
  .strictObject({
    arch: z.enum(ARCH).default("unknown").meta({ description: "what the arch of the head is made of" }),
    metal: z.enum(METAL).default("unknown").meta({ description: "metal that reinforces the head" }),
    exchange: z
      .enum(EXCHANGE)
      .default("unknown")
      .meta({ description: "part of the head made to be exchanged" }),
    movedBy: z.enum(MOVED_BY).default("unknown").meta({ description: "what moves this head" }),
    form: z.enum(SPECIAL_FORM).default("none").meta({ description: "special form of saddle or head" }),
    toldBy: z.enum(TOLD_BY).default("not-told").meta({ description: "how the build was told" }),
    treeTemperature: z
      .enum(["below-15-C", "15-C-and-over", "not-looked"])
      .default("not-looked")
      .meta({ description: "temperature of the tree" }),
  })
  .meta({ description: "how the head is built, by its properties, and how that was told" });

export const lookedSchema = z
  .strictObject({
    level: z
      .enum(["not-looked", "dressed", "bare"])
      .default("not-looked")
      .meta({ description: "was the tree looked at under its cover or bare" }),
    parts: z
      .strictObject(
        Object.fromEntries(PARTS.map((part) => [part, seen(part.replace("-", " "))])) as Record<
          (typeof PARTS)[number],
          ReturnType<typeof seen>
        >,
      )
      .prefault({})
      .meta({ description: "part by part" }),
    squeeze: seen("head squeezed and pulled at the tips by the heels of the hands"),
    flex: seen("head against the thigh, cantle drawn toward it"),
    twist: seen("head held, cantle turned both ways"),
    noise: sign("click, grate or creak"),
    whiteLine: sign("crack or white stress line in the head"),
    rust: sign("rust bleed or dark ring at a rivet"),
    musty: sign("musty smell, mould, swollen edge"),
    plateHome: seen("exchanged plate or inserts home, both sides the same, screws sound"),
    plateBent: sign("exchanged plate bent, filed, drilled or forced"),
    seenBy: words("named person who saw it bare", 120),
  })
  .meta({ description: "the saddle looked over, off the horse" });

const len = (lo: number, hi: number, about: string, by: "ruler" | "calliper" = "calliper") =>
  measured({ kind: "length", lo, hi, by, about });
const deg = (lo: number, hi: number, about: string) =>
  measured({ kind: "angle", lo, hi, by: "protractor", about });

export const linesSchema = z
  .strictObject({
    diagonalNear: len(200, 800, "near tip to the off rear corner", "ruler"),
    diagonalOff: len(200, 800, "off tip to the near rear corner", "ruler"),
    pointLengthNear: len(40, 250, "length of the point, near", "ruler"),
    pointLengthOff: len(40, 250, "length of the point, off", "ruler"),
    benchRock: len(0, 30, "rock of the points on a flat bench", "ruler"),
    stringOffCentre: len(
      0,
      60,
      "string from head centre to cantle centre, greatest distance from the seat's line",
      "ruler",
    ),
  })
  .meta({ description: "lines and square" });

export const headSchema = z
  .strictObject({
    face: z
      .enum(["inside", "outside", "not-said"])
      .default("not-said")
      .meta({ description: "face of the head that the spreads below were taken on" }),
    spreadTips: len(90, 360, "spread at the tips, on the face named"),
    spreadUpper: len(40, 300, "spread at the upper level, on the face named"),
    upperBelowCrown: len(10, 120, "depth of the upper level below the crown", "ruler"),
    depth: len(40, 180, "depth from crown to the line of the tips", "ruler"),
    crownRadius: len(8, 90, "inner radius of the crown", "ruler"),
    thickness: len(2, 40, "thickness of the head at the points, to go from one face to the other"),
    halfAngleNear: deg(10, 75, "half-angle of the near point to the tree's centre plane"),
    halfAngleOff: deg(10, 75, "half-angle of the off point to the tree's centre plane"),
    asMadeSpreadTips: len(90, 360, "spread at the tips as made, on the face named"),
  })
  .meta({ description: "head and points" });

const bearingSide = z.strictObject({
  innerEdge: len(5, 140, "inner edge from the tree's centre plane", "ruler"),
  width: len(25, 220, "width of the face", "ruler"),
  faceAngle: deg(-10, 80, "angle of the face to the horizontal, outer edge lower is positive"),
  underStraightEdge: len(-80, 220, "height of the straight-edge over the middle of the face", "ruler"),
  inner: len(3, 110, "panel thickness under the face at its inner edge", "ruler"),
  middle: len(3, 110, "panel thickness under the face in its middle", "ruler"),
  outer: len(3, 110, "panel thickness under the face at its outer edge", "ruler"),
});

const bearingStation = z.strictObject({
  behindFront: len(-60, 650, "distance behind the tree points", "ruler"),
  near: bearingSide.prefault({}),
  off: bearingSide.prefault({}),
  channel: len(15, 160, "channel between the panels", "ruler"),
});

export const bearingSchema = z
  .strictObject({
    face: z
      .enum(["panel", "rail", "not-said"])
      .default("not-said")
      .meta({ description: "dressed: the panel's face; bare: the rail's" }),
    front: bearingStation.prefault({}),
    mid: bearingStation.prefault({}),
    rear: bearingStation.prefault({}),
    panelEnd: len(250, 650, "end of the panel behind the tree points", "ruler"),
    deepestSeat: len(80, 400, "deepest seat behind the tree points", "ruler"),
    strapNear: len(-150, 320, "girth strap behind the tree points, near", "ruler"),
    strapOff: len(-150, 320, "girth strap behind the tree points, off", "ruler"),
    strapOnPoint: said("a girth strap hangs on the tree point"),
    wearsBehindTips: said("points seated in their pockets"),
  })
  .meta({ description: "where and how the saddle bears: rails, panel, channel, straps" });

export const panelSchema = z
  .strictObject({
    filling: z
      .enum(["wool", "foam", "air", "unknown"])
      .default("unknown")
      .meta({ description: "what the panel is filled with" }),
    state: z
      .enum(["good", "flat", "lumpy", "wrong-shape", "not-looked"])
      .default("not-looked")
      .meta({ description: "state of the panel" }),
    square: seen("panel square on the tree"),
  })
  .meta({ description: "the panel" });

export const mountingSchema = z
  .strictObject({
    holes: measured({ kind: "count", lo: 0, hi: 12, by: "count", about: "screw holes a side" }),
    pitch: len(0, 150, "distance between the holes of one side"),
    edge: z
      .enum(["square", "rounded", "bevelled", "keyed", "unknown"])
      .default("unknown")
      .meta({ description: "edge of the plate where it is held" }),
    thickness: len(1, 15, "thickness of the plate where it is held"),
  })
  .meta({ description: "how a changeable plate is held" });

export const plateSchema = z
  .strictObject({
    label: words("what the maker calls it; never compared", 60),
    maker: words("maker of the plate", 80),
    mounting: mountingSchema.prefault({}),
    spreadTips: len(90, 360, "spread at the tips, as fitted if it was, on the head's named face"),
    halfAngle: deg(10, 75, "half-angle of the plate"),
    asFitted: said("measured as fitted in this head, not loose"),
    sound: seen("plate straight, holes sound, no crack"),
  })
  .transform((plate) => calliperOnBare(plate))
  .meta({ description: "a plate at hand" });

export const saddleSchema = z
  .strictObject({
    name: z.string().min(1).max(120).meta({ description: "name of the saddle in this case" }),
    maker: words("maker of the saddle", 120),
    model: words("model of the saddle", 120),
    standing: standingOfSaddleSchema.prefault({}),
    past: pastSchema.prefault({}),
    build: buildSchema.prefault({}),
    looked: lookedSchema.prefault({}),
    lines: linesSchema.prefault({}),
    head: headSchema.prefault({}),
    bearing: bearingSchema.prefault({}),
    panel: panelSchema.prefault({}),
    mounting: mountingSchema.prefault({}),
  })
  .transform((saddle) => (saddle.looked.level === "bare" ? calliperOnBare(saddle) : saddle))
  .meta({ description: "the saddle" });
