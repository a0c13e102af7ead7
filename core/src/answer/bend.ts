import type { Taken } from "../reach/beliefs.ts";
import { type Bend, bendOf, type PressStrain } from "../reach/bend/bend-of.ts";
import { type PassFigures, passFigures } from "../reach/bend/pass-figures.ts";
import type { StrainStop } from "../reach/bend/stops.ts";
import { type TravelRange, travelRange } from "../reach/bend/travel.ts";
import { whereToLook } from "../reach/bend/where-to-look.ts";
import type { Setting } from "../reach/setting.ts";
import type { Survey } from "../survey/case.ts";

/** The chosen change at the press: what it takes and what the head bears. For the bench alone, never for an owner. */
export interface PressChosen {
  readonly strain: PressStrain;
  readonly figures: PassFigures;
  readonly travel: TravelRange | undefined;
  readonly look: readonly string[];
}

export interface BendAnswer {
  readonly stuff: "wood" | "polymer";
  readonly stop: StrainStop;
  /** What the joints of one plate pass, N; undefined where a bar is moulded in. */
  readonly jointN: number | undefined;
  /** Earlier changes that the head was worked through, mm, and whether one was more than it could keep. */
  readonly pastMm: readonly number[];
  readonly pastCutShort: boolean;
  /** Every press setting at the base values, as far as the head can be brought there. */
  readonly settings: readonly PressStrain[];
  /** Undefined where the answer presses nothing. */
  readonly chosen: PressChosen | undefined;
  /** Every quantity it stands on: read, or a range with its source. */
  readonly taken: readonly Taken[];
}

/** Undefined where no setting of this head is a press. */
export function bendAnswer(
  survey: Survey,
  settings: readonly Setting[],
  chosen: Setting | undefined,
  seed: number,
): BendAnswer | undefined {
  const pressed = settings.filter(({ way }) => way === "press");
  const bend = pressed.length === 0 ? undefined : bendOf(survey.saddle);
  if (bend === undefined) return undefined;
  return {
    stuff: bend.belief.stuff,
    stop: bend.stop,
    jointN: bend.head.jointN,
    pastMm: bend.pastMm,
    pastCutShort: bend.pastCutShort,
    settings: pressed.flatMap(({ changeMm }) => bend.strainAt(changeMm) ?? []),
    chosen: chosen?.way === "press" ? pressChosen(bend, chosen.changeMm, seed) : undefined,
    taken: bend.belief.taken,
  };
}

function pressChosen(bend: Bend, changeMm: number, seed: number): PressChosen | undefined {
  const strain = bend.strainAt(changeMm);
  const figures = passFigures(bend, changeMm);
  if (strain === undefined || figures === undefined) return undefined;
  return {
    strain,
    figures,
    travel: travelRange(bend, changeMm, seed),
    look: whereToLook(bend.belief.stuff, changeMm),
  };
}
