import type { PlatesSeen } from "@treewright/core/answer/plates.ts";
import { againstSays, makesSays, mountingSays, plateName, rankSays } from "@treewright/core/papers/plates.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import type { StockPlate } from "@treewright/core/survey/stock.ts";
import { wrap } from "./columns.ts";

const WHY = {
  flag: "the vet comes first, so no plate is ranked for it",
  "not-read": "head or front trace were not read, so no plate can be ranked for it",
} as const;

/** What stands under every ranking. */
const NOTES = [
  "Ranked by the face of the points against the template's, where it is farthest off, among plates that fit the " +
    "mounting and were seen sound. Neither maker, word nor place in the list counts.",
  "A loose plate has 2 mm more doubt: the arch has its own set. Measure it as fitted. The nearest plate is no answer " +
    "yet: the whole saddle is judged by `treewright answer`.",
];

/** Plates for one saddle: what fits and what head each makes, and for each horse which comes nearest. */
export function platesText(seen: PlatesSeen, survey: Survey, stock: readonly StockPlate[]): string[] {
  const horse = (index: number) => survey.horses[index]?.name ?? "";
  const each = seen.plates.flatMap((plate) => [
    ...wrap(plateName(plate.id, survey.platesAtHand, stock), 2, 2),
    ...wrap(mountingSays(plate), 6, 2),
    ...wrap(makesSays(plate), 6, 2),
  ]);
  const forHorses = seen.horses.flatMap(({ horseIndex, temper, ranked, against }) => [
    ...wrap(`Nearest to the head that ${horse(horseIndex)} wants, ${temper} back`),
    ...(ranked.length === 0 ? ["  none fits that was seen sound"] : []),
    ...ranked.flatMap((one, place) => {
      const found = against.find(({ id }) => id === one.id);
      return [
        ...wrap(`${place + 1}. ${plateName(one.id, survey.platesAtHand, stock)}`, 2, 3),
        ...(found ? wrap(againstSays(found), 6, 2) : []),
        ...wrap(rankSays(one, place, ranked.length), 6, 2),
      ];
    }),
    "",
  ]);
  const everyone =
    seen.horses.length < 2
      ? []
      : [
          "For all of them, by the horse that each serves worst",
          ...seen.ranked.flatMap((one, place) => [
            ...wrap(`${place + 1}. ${plateName(one.id, survey.platesAtHand, stock)}`, 2, 3),
            ...wrap(rankSays(one, place, seen.ranked.length), 6, 2),
          ]),
          "",
        ];
  return [
    ...wrap(`Plates for ${survey.saddle.name}`),
    "",
    ...(each.length === 0 ? ["  none at hand"] : each),
    "",
    ...forHorses,
    ...everyone,
    ...seen.unranked.flatMap(({ horseIndex, why }) => wrap(`${horse(horseIndex)}: ${WHY[why]}.`)),
    ...NOTES.flatMap((note) => wrap(note)),
  ];
}
