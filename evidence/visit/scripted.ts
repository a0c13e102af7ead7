import { getAt, putAt, stepsOf } from "@treewright/core/survey/path.ts";
import { isAsked, type Question, questions } from "@treewright/core/survey/questions.ts";
import { fileOf, firstAnswer, surveyFrom } from "../answer/examples.ts";
import type { Script } from "./trainer.ts";

/** What a trainer's script needs of a browser: a case chosen on the data screen, questions answered, the answers read. */
export interface AtScreens {
  choose(name: string, text: string): Promise<void>;
  answer(question: Question, value: string): Promise<void>;
  /** The ids of the answers on the screen of what to do, as soon as they are worked out. */
  answersShown(): Promise<readonly string[]>;
}

export interface Played {
  readonly typed: number;
  readonly shown: readonly string[];
}

/** A case is chosen from which the readings of the script were left out, they are typed, and the answer is read where a fitter reads it. */
export async function play(screens: AtScreens, script: Script): Promise<Played> {
  await screens.choose(`${script.example}.json`, JSON.stringify(without(script)));
  const typed = await typeAll(screens, script.example, (path) => isUnder(script, path));
  return { typed, shown: await screens.answersShown() };
}

/** The case without what the script types. */
export function without({ example, types }: Script): unknown {
  const bare = types.reduce<unknown>(
    (file, place) => putAt(file, stepsOf(place), undefined),
    fileOf(example),
  );
  const { saddle = { name: "saddle" }, ...rest } = JSON.parse(JSON.stringify(bare));
  return { ...rest, saddle };
}

/** The ids of horse, saddle and work that a case leads to. */
export const idsOf = (file: unknown): readonly string[] => {
  const { horse, saddle, work } = firstAnswer(surveyFrom(file), 0).answers;
  return [horse.id, saddle.id, work.id];
};

/** Types what a case has at the places that are meant, in the order of the work. Returns how many readings that were. */
export async function typeAll(
  screens: Pick<AtScreens, "answer">,
  example: string,
  isMeant: (path: string) => boolean,
): Promise<number> {
  const file = fileOf(example) as { horses: readonly unknown[] };
  const asked = questions(file.horses.length).filter(
    (one) => isMeant(one.path) && getAt(file, stepsOf(one.path)) !== undefined && isAsked(one, file),
  );
  let typed = 0;
  for (const question of asked) {
    const value = typedAs(getAt(file, stepsOf(question.path)));
    if (value === "") continue;
    await screens.answer(question, value);
    typed += 1;
  }
  return typed;
}

/** The places under which the script types. */
const isUnder = ({ types }: Script, path: string): boolean =>
  types.some((place) => path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`));

/** A value of a case as a hand types it. */
function typedAs(value: unknown): string {
  if (Array.isArray(value)) return value.map((point: unknown) => [point].flat().join(" ")).join("; ");
  return String(value);
}
