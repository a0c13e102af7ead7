import { atLeast, type Limit, PRACTICE } from "./make.ts";

const TEXTBOOK =
  "published: The Veterinary Care of the Horse, p. 553 (three fingers between pommel and withers with the rider up); the millimetres of three fingers are common practice, no source";

/** Wither clearance by state. Too low is a stop, too high is a fault. */
export const CLEARANCE: readonly Limit[] = [
  {
    id: "clearance-girthed",
    quantity: "clearance over the withers",
    state: "girthed",
    unit: "mm",
    ...atLeast(45, 30),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].girthed.clearanceTop"],
    says: "Girthed, 45 mm over the withers is enough and under 30 mm is too little.",
  },
  {
    id: "clearance-rider-up",
    quantity: "clearance over the withers",
    state: "rider-up",
    unit: "mm",
    inside: [40, 75],
    outside: [30, 75],
    cost: "leave",
    provenance: "published",
    sourceRef: TEXTBOOK,
    readings: ["horses[].riderUp.clearanceTop"],
    says: "With the rider up, 40 to 75 mm over the withers is right; under 30 mm is too little and over 75 mm too much.",
  },
  {
    id: "clearance-half-seat",
    quantity: "clearance over the withers",
    state: "half-seat",
    unit: "mm",
    ...atLeast(30, 20),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].halfSeat.clearanceTop"],
    says: "In half-seat, 30 mm over the withers is enough and under 20 mm is too little.",
  },
  {
    id: "clearance-side",
    quantity: "clearance at each side of the withers",
    state: "girthed, rider-up",
    unit: "mm",
    ...atLeast(12, 8),
    cost: "leave",
    ...PRACTICE,
    readings: ["horses[].girthed.clearanceNear", "horses[].girthed.clearanceOff"],
    says: "Beside the withers, 12 mm is enough and under 8 mm pinches.",
  },
];
