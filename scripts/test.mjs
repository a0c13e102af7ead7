// npm test: everything that must hold, in order; the last line is the count.
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { takeFromDebian } from "./debian.mjs";
import { buildPage } from "./page.mjs";
import { makeReady, root } from "./ready.mjs";
import { steps } from "./steps.mjs";

const report = join(root, ".cache/tests.json");

function passes(name, isGood) {
  console.log(`${isGood ? "passed" : "FAILED"}  ${name}`);
  return isGood;
}

function runStep({ name, command: [program, ...args] }) {
  const done = spawnSync(program, args, {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1 << 28,
    stdio: ["ignore", "pipe", "pipe"],
  });
  if (done.status !== 0) console.log(`${done.stdout ?? ""}${done.stderr ?? ""}`.trimEnd());
  return passes(name, done.status === 0);
}

/** A file that does not load holds no test, yet is a failure. */
function countTests() {
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(
    readFileSync(report, "utf8"),
  );
  const unloaded = testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  ).length;
  return { passed: numPassedTests, failed: numFailedTests + unloaded + numPendingTests + numTodoTests };
}

function runTests() {
  mkdirSync(join(root, ".cache"), { recursive: true });
  rmSync(report, { force: true });
  const args = [
    "node_modules/vitest/vitest.mjs",
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ];
  const done = spawnSync(process.execPath, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
  try {
    const count = countTests();
    return done.status !== 0 && count.failed === 0 ? { ...count, failed: 1 } : count;
  } catch {
    return { passed: 0, failed: 1 };
  }
}

function runAll() {
  makeReady();
  const leftOut = takeFromDebian();
  const single = [...steps.map(runStep), passes("the page builds", buildPage())];
  const tests = runTests();
  for (const line of leftOut) console.log(line);
  return {
    passed: tests.passed + single.filter(Boolean).length,
    failed: tests.failed + single.filter((isGood) => !isGood).length,
  };
}

let count = { passed: 0, failed: 1 };
try {
  count = runAll();
} catch (error) {
  console.log(error.message);
}
console.log(`${count.passed} passed, ${count.failed} failed`);
process.exitCode = count.failed === 0 ? 0 : 1;
