import { atMost, type Limit, PRACTICE, within } from "./make.ts";

/** How the saddle bears along its length. */
export const BEARING: readonly Limit[] = [
  {
    id: "bridge",
    quantity: "gap under the middle of the panel, by hand",
    state: "girthed",
    unit: "mm",
    ...atMost(5, 10),
    cost: "leave",
    provenance: "common practice, no source",
    sourceRef:
      "common practice, no source; derived beside it: the ends carry 37 % more at 5 mm and 75 % more at 10 mm, at rest",
    readings: ["horses[].girthed.bridgeNear", "horses[].girthed.bridgeOff"],
    says: "Girthed and unridden, up to 5 mm of gap under the middle is inside; over 10 mm the saddle bridges.",
  },
  {
    id: "rock",
    quantity: "lift of the free end by hand",
    state: "girthed",
    unit: "mm",
    ...atMost(5, 12),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].girthed.rock"],
    says: "Up to 5 mm of rock by hand is inside; over 12 mm the rails do not follow the back.",
  },
  {
    id: "seat-slope",
    quantity: "slope of the seat's bottom to gravity less the ground's slope",
    state: "rider-up",
    unit: "deg",
    ...within(1.5, 3),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].riderUp.seatSlope", "visit.groundSlope"],
    says: "With the rider up the seat's bottom is level within 1.5 degrees; over 3 degrees it tips the rider.",
  },
  {
    id: "fill",
    quantity: "panel fill or shim needed on one side, at its thickest",
    state: "still",
    unit: "mm",
    ...atMost(8, 12),
    cost: "exchange",
    ...PRACTICE,
    readings: ["horses[].traces", "saddle.bearing.front"],
    says: "Fill up to 8 mm a side cures; 8 to 12 mm is for eight weeks, dated; over 12 mm is no cure.",
  },
];
