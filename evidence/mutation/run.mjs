// node evidence/mutation/run.mjs ROOM [FILES ...] [--write]: changes the code of a room in many small ways, one at a time,
// and counts how many its tests see. --write puts score and survivors into score.json; reasons written there are kept.
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ROOMS, reportOf, settingsOf } from "./rooms.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const scoreFile = new URL("./score.json", import.meta.url);
const words = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const [room, ...files] = words;
if (!(room in ROOMS)) throw new Error(`say which room: ${Object.keys(ROOMS).join(", ")}`);

mkdirSync(join(root, ".cache"), { recursive: true });
const settings = join(root, `.cache/mutation-${room}.config.json`);
writeFileSync(settings, JSON.stringify(settingsOf(room, files.length > 0 ? files : ROOMS[room].mutate)));
const start = performance.now();
const done = spawnSync("node_modules/.bin/stryker", ["run", settings], {
  cwd: root,
  stdio: ["ignore", "inherit", "inherit"],
  env: { ...process.env, MUTATED_ROOM: room },
});
if (done.status !== 0) throw new Error(`stryker ended with ${done.status}`);
const minutes = (performance.now() - start) / 60_000;

const result = resultOf(JSON.parse(readFileSync(join(root, reportOf(room)), "utf8")));
console.log(
  `${room}: ${result.score} % of ${result.mutants} mutants seen in ${minutes.toFixed(1)} minutes; ${result.survivors.length} not`,
);
for (const { at, change } of result.survivors) console.log(`  ${at}: ${change}`);
if (process.argv.includes("--write")) keep(result);
if (files.length === 0 && result.score < ROOMS[room].least) process.exitCode = 1;

/** Score in per cent, one digit; survivors by place and change, with those that no test passes through. */
function resultOf({ files: byFile }) {
  const all = Object.entries(byFile).flatMap(([file, { mutants, source }]) =>
    mutants.map((mutant) => ({ ...mutant, file, source })),
  );
  const counted = all.filter(({ status }) => !["Ignored", "CompileError", "RuntimeError"].includes(status));
  const seen = counted.filter(({ status }) => status === "Killed" || status === "Timeout");
  const survivors = counted
    .filter((mutant) => !seen.includes(mutant))
    .map(({ file, location, mutatorName, replacement, status, source }) => ({
      at: `${file}:${location.start.line}`,
      change: `${mutatorName}: ${textAt(source, location)} -> ${short(replacement ?? "")}${status === "NoCoverage" ? " (no test passes here)" : ""}`,
    }));
  return {
    score: Math.floor((1000 * seen.length) / counted.length) / 10,
    mutants: counted.length,
    survivors,
  };
}

function textAt(source, { start: from, end: to }) {
  const line = source.split("\n")[from.line - 1] ?? "";
  return short(
    from.line === to.line ? line.slice(from.column - 1, to.column - 1) : line.slice(from.column - 1),
  );
}

function short(text) {
  const one = text.replace(/\s+/g, " ");
  return one.length > 60 ? `${one.slice(0, 57)}...` : one;
}

/** A reason once written stays with its survivor as long as the same change survives in the same file. */
function keep({ score, mutants, survivors }) {
  const before = JSON.parse(readFileSync(scoreFile, "utf8"));
  const reasons = new Map(
    (before[room]?.survivors ?? []).map(({ at, change, reason }) => [
      `${at.split(":")[0]} ${change}`,
      reason,
    ]),
  );
  const listed = survivors.map(({ at, change }) => ({
    at,
    change,
    reason: reasons.get(`${at.split(":")[0]} ${change}`) ?? "",
  }));
  const after = { ...before, [room]: { score, mutants, least: ROOMS[room].least, survivors: listed } };
  writeFileSync(scoreFile, `${JSON.stringify(after, null, 1)}\n`);
}
