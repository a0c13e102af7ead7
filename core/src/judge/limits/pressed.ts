import type { MeasuredLimit } from "../input.ts";
import { atMost, type Limit } from "./make.ts";

/**
 * Mean pressure under the head at walk that closes, kPa: a marked choice, well above the dry-spot group (15.3 kPa) and under
 * the one with sores (24.0 kPa) of von Peinen et al. 2010.
 */
export const FAR_OVER_KPA = 20;

/** What the calculation alone finds. Either can only close: a figure that is inside is not handed to the judge at all. */
export const PRESSED: readonly Limit[] = [
  {
    id: "pressure-head-walk",
    quantity: "mean pressure of the front third at walk, calculated",
    state: "ridden, walk",
    unit: "kPa",
    ...atMost(FAR_OVER_KPA, FAR_OVER_KPA),
    cost: "exchange",
    provenance: "common practice, no source",
    sourceRef:
      "common practice, no source, for 20 kPa as the line (a choice); beside it, published: von Peinen et al. 2010, Equine Vet J 42 Suppl 38 (means under the head at walk: 7.8 kPa without soreness, 15.3 with dry spots, 24.0 with sores; small groups, other sensors)",
    readings: ["saddle.bearing", "horses[].traces", "rider.massDressed"],
    says: "Far over what was published for horses with dry spots: over 20 kPa on average under the head at walk closes; less says nothing.",
  },
  {
    id: "ridge-touch",
    quantity: "area of the panels that presses on the ridge, calculated",
    state: "ridden",
    unit: "cm2",
    ...atMost(0, 0),
    cost: "exchange",
    provenance: "published",
    sourceRef:
      "published: The Veterinary Care of the Horse, p. 553 (the channel is clear of the spinous processes for its whole length)",
    readings: [
      "saddle.bearing.front.channel",
      "horses[].standing.ridgeFront",
      "horses[].standing.ridgeMid",
      "horses[].standing.ridgeRear",
    ],
    says: "Nothing presses on spine and ridge: any touch is outside.",
  },
];

/** Those figures that close; of the others nothing is said, so that none of them opens anything. */
export function closing(figures: readonly MeasuredLimit[]): readonly MeasuredLimit[] {
  return figures.filter(({ rule, value }) => {
    const limit = PRESSED.find(({ id }) => id === rule);
    return limit === undefined || (value !== undefined && value > limit.outside[1]);
  });
}
