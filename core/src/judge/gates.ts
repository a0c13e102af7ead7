import { ACTS, type Act, type HorseAnswer, type SaddleAnswer } from "../terms/answers.ts";
import type { Findings } from "./findings/orders.ts";
import { type Passed, pass, type Shut } from "./gates/gate.ts";
import { HORSE_BARS, horseAnswer, isFlagged } from "./gates/horse.ts";
import { RIGHT_BARS } from "./gates/right.ts";
import { SOUNDNESS_BARS, saddleAnswer } from "./gates/soundness.ts";
import { STANDING_BARS } from "./gates/standing.ts";
import { WAY_BARS } from "./gates/way.ts";

export interface Gated {
  readonly horse: HorseAnswer;
  readonly saddle: SaddleAnswer;
  /** A horse flag: no setting, pressure or fit is computed or shown. */
  readonly flagged: boolean;
  readonly permitted: readonly Act[];
  readonly passed: { readonly [G in keyof Findings]: Passed };
  /** Everything shut, in the order of the gates; the first for an act is its reason. */
  readonly shut: readonly Shut[];
}

/** An act is permitted when every gate leaves it open; so no later gate overrules an earlier one. */
export function permittedBy(passed: readonly Pick<Passed, "permits">[]): readonly Act[] {
  return ACTS.filter((act) => passed.every((one) => one.permits.includes(act)));
}

/** The gates, in their order: horse, identity and right, soundness, standing, way. Pure in the reduced findings. */
export function passGates(f: Findings): Gated {
  const passed = {
    horse: pass(HORSE_BARS, f.horse),
    right: pass(RIGHT_BARS, f.right),
    soundness: pass(SOUNDNESS_BARS, f.soundness),
    standing: pass(STANDING_BARS, f.standing),
    way: pass(WAY_BARS, f.way),
  };
  const row = [passed.horse, passed.right, passed.soundness, passed.standing, passed.way];
  return {
    horse: horseAnswer(f.horse),
    saddle: saddleAnswer(f.soundness),
    flagged: isFlagged(f.horse),
    permitted: permittedBy(row),
    passed,
    shut: row.flatMap((one) => one.shut),
  };
}
