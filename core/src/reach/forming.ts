import type { SurveyedSaddle } from "../survey/case.ts";
import { isRead, type Measured } from "../survey/reading.ts";
import type { Provenance } from "../terms/provenance.ts";
import { pressHistory } from "./history.ts";

/** What solid polymer takes under heat in its maker's hands, where no sheet of the maker says otherwise. */
export const FORMING = {
  /** Change at the tips in one heating, mm. */
  eachTimeMm: [5, 10],
  /** Net change from as made, mm. */
  inAllMm: [10, 20],
  /** Heatings in the life of a head. */
  timesInLife: [1, 2],
  provenance: "from memory",
} as const satisfies { readonly provenance: Provenance } & Record<string, unknown>;

/** Reason why no head of solid polymer is formed here: it says who, never that it cannot be done. */
export const BY_MAKERS_PEOPLE = "heat-by-makers-people";

/** What the maker's people would be asked for, out of their sheet where it was read, else from memory. mm at the tips. */
export interface FormingAsked {
  readonly changeMm: number;
  /** Net change from as made that it would be, mm: the larger of what record and measure tell. */
  readonly fromAsMadeMm: number;
  /** Heatings that it takes, fewest and most. */
  readonly times: readonly [fewest: number, most: number];
  /** Heatings before, as far as known. */
  readonly heatedTimes: number | undefined;
  readonly inAllMm: readonly [surely: number, most: number];
  readonly bySheet: boolean;
}

/** Both ends of a range are the sheet's where it was read. */
const bySheet = (read: Measured, range: readonly [number, number]): readonly [number, number] =>
  isRead(read) ? [read.value, read.value] : range;

export function formingAsked(saddle: SurveyedSaddle, changeMm: number): FormingAsked {
  const { mostEachTime, mostInAll, heatedTimes, sheetAtHand } = saddle.forming;
  const [least, most] = bySheet(mostEachTime, FORMING.eachTimeMm);
  const size = Math.abs(changeMm);
  const nets = pressHistory(saddle).netsMm.map((netMm) => Math.abs(netMm + changeMm));
  return {
    changeMm,
    fromAsMadeMm: Math.max(...nets),
    times: [Math.ceil(size / most), Math.ceil(size / least)],
    heatedTimes: isRead(heatedTimes) ? heatedTimes.value : undefined,
    inAllMm: bySheet(mostInAll, FORMING.inAllMm),
    bySheet: sheetAtHand === "yes" && isRead(mostEachTime) && isRead(mostInAll),
  };
}

/** Caps that such a change would surely pass, by their ids; heatings that nobody knows of are not held against it. */
export function formingCapsPassed(asked: FormingAsked): readonly string[] {
  const [, mostMm] = asked.inAllMm;
  const [fewest] = asked.times;
  const [, mostTimes] = FORMING.timesInLife;
  return [
    ...(asked.fromAsMadeMm > mostMm ? ["cap-heat-from-as-made"] : []),
    ...((asked.heatedTimes ?? 0) + fewest > mostTimes ? ["cap-heat-times"] : []),
  ];
}
