import { agreementOf } from "@treewright/core/report/agreement.ts";
import { agreementText } from "@treewright/core/report/agreement-text.ts";
import { emptyCase } from "@treewright/core/survey/answer-question.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";

/** Every sentence that what is agreed can have, and those beneath it on paper. */
export function agreementSays(): ReadonlySet<string> {
  const heard = new Set<string>();
  const tongue = {
    tag: "en",
    say: (english: string) => {
      heard.add(english);
      return english;
    },
  };
  const file = emptyCase("Visit", "2031-04-12");
  const visit = (ofVisit: readonly (readonly [string, string])[], othersWearIt?: "yes" | "no") =>
    agreementText(
      {
        file: { ...file, saddle: { ...file.saddle, standing: { ...file.saddle.standing, othersWearIt } } },
        ofVisit: new Map(ofVisit),
        differ: [],
        erased: [],
      },
      tongue,
    );
  for (const othersWearIt of ["yes", "no", undefined] as const) visit([], othersWearIt);
  for (const [at, ids] of [
    [OF_VISIT.horseAnswer, HORSE_ANSWERS],
    [OF_VISIT.saddleAnswer, SADDLE_ANSWERS],
    [OF_VISIT.workAnswer, WORK_ANSWERS],
  ] as const)
    for (const id of ids) visit([[at, id]]);
  for (const forOwner of [true, false])
    agreementOf("Agreed", "a", { by: "A", forOwner, strokes: [] }, (text) => text.length, tongue);
  agreementOf("Agreed", "a", undefined, (text) => text.length, tongue);
  return heard;
}
