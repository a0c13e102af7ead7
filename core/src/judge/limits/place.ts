import { atLeast, atMost, type Limit, PRACTICE, within } from "./make.ts";

/** A channel as wide as the ridge touches it; so does anything less than this beyond it (assumption 0 to 2 mm). */
const TOUCH_MM = 1;

/** Channel, girth and place on the back. */
export const PLACE: readonly Limit[] = [
  {
    id: "channel-over-ridge",
    quantity: "channel less the ridge it straddles",
    state: "girthed",
    unit: "mm",
    ...atLeast(25, TOUCH_MM),
    cost: "leave",
    ...PRACTICE,
    readings: [
      "saddle.bearing.front.channel",
      "saddle.bearing.mid.channel",
      "saddle.bearing.rear.channel",
      "horses[].standing.ridgeFront",
      "horses[].standing.ridgeMid",
      "horses[].standing.ridgeRear",
    ],
    says: "The channel is at least 25 mm wider than spine and ridge; any touch is outside.",
  },
  {
    id: "channel-width",
    quantity: "width of the channel",
    state: "off the horse",
    unit: "mm",
    ...atLeast(60, 55),
    cost: "leave",
    provenance: "common practice, no source",
    sourceRef:
      "common practice, no source; published for comparison: The Veterinary Care of the Horse, p. 553 (about 80 mm for its whole length)",
    readings: ["saddle.bearing.front.channel", "saddle.bearing.mid.channel", "saddle.bearing.rear.channel"],
    says: "The channel is at least 60 mm wide for its whole length; under 55 mm is outside.",
  },
  {
    id: "girth-groove",
    quantity: "line in which the girth hangs, behind the horse's girth groove",
    state: "girthed",
    unit: "mm",
    ...within(20, 40),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].girthed.strapLine", "horses[].standing.girthGroove"],
    says: "The girth hangs within 20 mm of the groove it will go to; over 40 mm it moves the saddle.",
  },
  {
    id: "point-behind-blade",
    quantity: "tree point behind the back edge of the shoulder blade",
    state: "girthed",
    unit: "mm",
    ...atLeast(50, 30),
    cost: "leave",
    provenance: "from memory",
    sourceRef:
      "from memory (widespread teaching, two to three fingers behind the blade); placed behind the blade and not over it: published, The Veterinary Care of the Horse, p. 552",
    readings: ["horses[].girthed.pointBehindBladeNear", "horses[].girthed.pointBehindBladeOff"],
    says: "The tree points lie at least 50 mm behind the shoulder blade; under 30 mm they are on its way.",
  },
  {
    id: "panel-rear-edge",
    quantity: "panel's rear edge before the last rib's line, at the side",
    state: "girthed",
    unit: "mm",
    ...atLeast(10, 0),
    cost: "leave",
    provenance: "common practice, no source",
    sourceRef:
      "common practice, no source, for the 10 mm; that it must not reach beyond the last rib's vertebra: published, The Veterinary Care of the Horse, p. 552",
    readings: ["horses[].girthed.rearBeforeLastRib"],
    says: "The panel ends at least 10 mm before the last rib's line and never behind it.",
  },
  {
    id: "side-offset",
    quantity: "steady offset to one side, ridden",
    state: "moving",
    unit: "mm",
    ...atMost(10, 25),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].moved.sideOffset"],
    says: "Ridden, the saddle sits within 10 mm of the middle; a steady 25 mm to one side is outside.",
  },
];
