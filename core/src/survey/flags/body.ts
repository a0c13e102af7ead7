import type { Survey, SurveyedHorse } from "../case.ts";
import { type Flag, flag, read } from "./flag.ts";

/** A girth is about a body's length in horses and ponies; further apart than this, one was read in another unit or place (assumption). */
const GIRTH_PER_LENGTH = [0.85, 1.5] as const;

/** Measures of a body that do not go together. */
export const bodyFlags = ({ horses }: Survey): Flag[] =>
  horses.flatMap(({ body }, at) => [
    ...girthAndLength(body, `horses[${at}].body`),
    ...typeNotSaid(body, `horses[${at}].body`),
  ]);

function girthAndLength({ girth, length }: SurveyedHorse["body"], path: string): Flag[] {
  const [round, along] = [read(girth), read(length)];
  if (!round || !along) return [];
  const part = round.value / along.value;
  if (part >= GIRTH_PER_LENGTH[0] && part <= GIRTH_PER_LENGTH[1]) return [];
  return [
    flag(
      `${path}.girth`,
      `girth ${round.typed} and length ${along.typed} do not go together: measure both once more`,
    ),
  ];
}

function typeNotSaid({ type, girth, length, height, neck }: SurveyedHorse["body"], path: string): Flag[] {
  const all = [girth, length, height, neck].every((one) => read(one) !== undefined);
  return type === "not-said" && all
    ? [flag(`${path}.type`, "all four measures were taken, and the equation wants the type of horse as well")]
    : [];
}
