import type { Survey } from "@treewright/core/survey/case.ts";
import type { SurveyedJob } from "@treewright/core/survey/job.ts";
import { pressJob } from "@treewright/core/work/job.ts";
import { whyNoPass } from "@treewright/core/work/left-open.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT, Stop } from "../exit.ts";
import { openJob } from "../open-beside.ts";
import { openCase } from "../open-case.ts";
import { passesText } from "../passes-text.ts";
import { SEED, solve } from "../solve.ts";

/** The case answered anew for every horse: no pass is told where one of them leaves it none. */
function refusal(survey: Survey, job: SurveyedJob, desk: Desk): string | undefined {
  for (const [index, { name }] of survey.horses.entries()) {
    const why = whyNoPass(solve(survey, index, name, desk).answers, job);
    if (why !== undefined) return `${name}: ${why}.`;
  }
  return undefined;
}

export const passes: Command = {
  name: "passes",
  takes: "CASE",
  says: "at the press: the next pass from those measured, or why there is none",
  about: [
    "For a qualified hand at the bench, never for an owner. A job file holds what is wanted, the head before the first " +
      "pass and every pass as it was measured; told are what is kept now on each side, the next travel with the 90 % " +
      "interval of what it keeps, or the stop that ends the job.",
    "The case is answered anew first: a pass is told only where that press is permitted for every horse and the change " +
      "is the answered one.",
  ],
  options: {
    job: { type: "string", value: "FILE", says: "the job: wanted change, head before, passes so far" },
    json: { type: "boolean", says: "one line of JSON; lengths in mm, forces in N" },
  },
  examples: [["passes first.json --job job.json", "the next pass, with its interval"]],
  async run(given, desk) {
    const file = given.text("job");
    if (file === undefined) throw new Stop(EXIT.wrongUse, "Say which job with --job FILE.");
    const { survey } = openCase(given.takes[0] ?? "", desk);
    const job = openJob(file, desk);
    const shut = refusal(survey, job, desk);
    if (shut !== undefined) throw new Stop(EXIT.problemInCase, `${shut} No pass is told.`);
    const told = pressJob(survey.saddle, job, SEED);
    if (!told.ok) throw new Stop(EXIT.problemInCase, `${told.why}. No pass is told.`);
    if (given.isOn("json")) desk.say(JSON.stringify(told.job));
    else {
      for (const line of wrap(job.title)) desk.say(line);
      desk.say();
      for (const line of passesText(told.job)) desk.say(line);
    }
    return EXIT.answered;
  },
};
