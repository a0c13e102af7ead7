import type { Answer } from "@treewright/core/answer.ts";

/** One answer as one line for another program: ids, never words; null where there is none. */
export function answerLine(caseName: string, result: Answer): string {
  const { answers, horse, saddle } = result;
  const { setting } = answers;
  return JSON.stringify({
    case: caseName,
    horse: answers.horse.id,
    saddle: answers.saddle.id,
    work: answers.work.id,
    also: answers.work.also,
    permitted: answers.permitted,
    setting: setting ? { way: setting.way, changeMm: setting.changeMm, spreadMm: setting.spreadMm } : null,
    next: answers.next?.path ?? null,
    missing: result.lacking,
    names: { horse, saddle },
    horseIndex: result.horseIndex,
    engine: result.engine,
    inputHash: result.inputHash,
    seed: result.seed,
  });
}
