import type { Survey, SurveyedHorse } from "../case.ts";
import { type Flag, flag, read } from "./flag.ts";

/** Two ruler readings differ by less than this by chance (1 mm each, three times their difference's spread: derived). */
const BY_CHANCE_MM = 4;
/** common practice, no source: clearance at the two sides of the withers. */
const SIDES_APART_MM = 8;

const STATES_BY_LOAD = ["laidOn", "girthed", "riderUp", "halfSeat"] as const;
const CLEARANCES = ["clearanceTop", "clearanceNear", "clearanceOff"] as const;

export const stateFlags = ({ horses }: Survey): Flag[] =>
  horses.flatMap((horse, at) => [...growing(horse, `horses[${at}]`), ...sides(horse, `horses[${at}]`)]);

/** Clearance shrinks from laid on to half-seat; where it grows, two states or two numbers were exchanged. */
function growing(horse: SurveyedHorse, path: string): Flag[] {
  return CLEARANCES.flatMap((clearance) =>
    STATES_BY_LOAD.flatMap((state, at) => {
      const here = read(horse[state][clearance]);
      const before = STATES_BY_LOAD.slice(0, at).find((lighter) => {
        const lighterRead = read(horse[lighter][clearance]);
        return here && lighterRead && here.value > lighterRead.value + BY_CHANCE_MM;
      });
      if (!here || !before) return [];
      const lighterTyped = read(horse[before][clearance])?.typed ?? "";
      return [
        flag(
          `${path}.${state}.${clearance}`,
          `clearance grew under more load: ${here.typed}, before that ${lighterTyped}. Are two states exchanged?`,
        ),
      ];
    }),
  );
}

function sides(horse: SurveyedHorse, path: string): Flag[] {
  return STATES_BY_LOAD.flatMap((state) => {
    const [near, off] = [read(horse[state].clearanceNear), read(horse[state].clearanceOff)];
    if (!near || !off || Math.abs(near.value - off.value) <= SIDES_APART_MM) return [];
    return [
      flag(
        `${path}.${state}.clearanceOff`,
        `the sides differ much: near ${near.typed}, off ${off.typed}. Is the saddle straight?`,
      ),
    ];
  });
}
