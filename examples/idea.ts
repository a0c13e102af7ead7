import { readFileSync } from "node:fs";
import { type Answer, answer } from "@treewright/core/answer.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";

const read = readCase(readFileSync("examples/cases/09-alter-in-the-saddle.json", "utf8"));
if (!read.ok) throw new Error(read.problems.map(({ where, allowed }) => `${where}: ${allowed}`).join("\n"));

const road: Generator<Answer, Answer> = answer(read.survey, { horse: 0, seed: 1 });
let step = road.next(); // the answer at the best estimate of every reading
while (!step.done) step = road.next(); // then batches of draws, until its doubt stands

const { horse, saddle, work, setting, limitsToday } = step.value.answers;
for (const { id, because, nextStep } of [horse, saddle, work]) {
  console.log(`${id}: ${because[0]?.says}\n  next: ${nextStep}`);
}
if (setting) console.log(`${setting.way}: ${setting.changeMm} mm at the tips, to ${setting.spreadMm} mm`);
for (const { rule, at, value, u, outcome } of limitsToday.filter((one) => one.rule === "face-front")) {
  console.log(`${rule}, ${at}: ${value?.toFixed(1)} ± ${u?.toFixed(1)} degrees, ${outcome}`);
}
