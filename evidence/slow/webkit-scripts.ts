import { writeFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
import { fileOf } from "../answer/examples.ts";
import { idsOf } from "../visit/scripted.ts";
import { SCRIPTS } from "../visit/trainer.ts";
import { playedInWebKit } from "../webkit/played.ts";

// All of a trainer's scripts in WebKit, without signal from a cold start. Ends with 1 where one leads elsewhere. `--write` records the run.
const record = new URL("./webkit-scripts.json", import.meta.url);
const played: { example: string; typed: number; shown: readonly string[] }[] = [];
for await (const { script, typed, shown, tookS } of playedInWebKit(SCRIPTS)) {
  const { example, leadsTo } = script;
  const isRight =
    isDeepStrictEqual([...shown].sort(), [...idsOf(fileOf(example))].sort()) &&
    leadsTo.every((id) => shown.includes(id));
  console.log(
    `${isRight ? "as it is told" : "ELSEWHERE    "}  ${example}: ${typed} typed, ${tookS.toFixed(1)} s`,
  );
  if (!isRight) process.exitCode = 1;
  played.push({ example, typed, shown });
}
if (process.argv.includes("--write")) writeFileSync(record, `${JSON.stringify(played, null, 1)}\n`);
