// node evidence/mutation/run.mjs ROOM [FILES ...] [--write]: changes the code of a room in many small ways, one at a time,
// and counts how many its tests see. --write puts what was found of these files into score.json; reasons written there are kept.
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ROOMS, reportOf, scoreOf, settingsOf } from "./rooms.mjs";

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

const byFile = resultsOf(JSON.parse(readFileSync(join(root, reportOf(room)), "utf8")));
const { score, mutants, missed } = scoreOf(byFile);
console.log(`${room}: ${score} % of ${mutants} mutants seen in ${minutes.toFixed(1)} minutes; ${missed} not`);
for (const [file, { survivors }] of Object.entries(byFile))
  for (const { at, change } of survivors) console.log(`  ${file}:${at}: ${change}`);
if (process.argv.includes("--write")) keep(byFile);
if (files.length === 0 && score < ROOMS[room].least) process.exitCode = 1;

/** By file: mutants that count, and survivors by line and change, with those that no test passes through. */
function resultsOf(report) {
  return Object.fromEntries(
    Object.entries(report.files).map(([file, { mutants: all, source }]) => {
      const counted = all.filter(
        ({ status }) => !["Ignored", "CompileError", "RuntimeError"].includes(status),
      );
      const survivors = counted
        .filter(({ status }) => status !== "Killed" && status !== "Timeout")
        .map(({ location, mutatorName, replacement, status }) => ({
          at: location.start.line,
          change: `${mutatorName}: ${textAt(source, location)} -> ${short(replacement ?? "")}${status === "NoCoverage" ? " (no test passes here)" : ""}`,
        }));
      return [file, { mutants: counted.length, survivors }];
    }),
  );
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

/** A reason once written stays with its survivor as long as the same change survives in the same file; files not run stay. */
function keep(found) {
  const before = JSON.parse(readFileSync(scoreFile, "utf8"));
  const old = before[room]?.files ?? {};
  const withReasons = Object.entries(found).map(([file, { mutants, survivors }]) => {
    const reasonOf = ({ change }) => old[file]?.survivors.find((one) => one.change === change)?.reason ?? "";
    return [file, { mutants, survivors: survivors.map((one) => ({ ...one, reason: reasonOf(one) })) }];
  });
  const files = Object.fromEntries(
    Object.entries({ ...old, ...Object.fromEntries(withReasons) }).sort(([a], [b]) => (a < b ? -1 : 1)),
  );
  const after = { ...before, [room]: { least: ROOMS[room].least, files } };
  writeFileSync(scoreFile, `${JSON.stringify(after, null, 1)}\n`);
}
