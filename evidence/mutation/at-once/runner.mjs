// A runner for Stryker that loads a room's tests once and tries thousands of changes on them, where a run of vitest for each
// change would load all modules again. What tests keep from change to change can hide one, never make it seen: see `tried`.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { INSTRUMENTER_CONSTANTS } from "@stryker-mutator/api/core";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { determineHitLimitReached } from "@stryker-mutator/api/test-runner";
import { ROOMS } from "../rooms.mjs";
import { bundled } from "./bundle.mjs";

/** Where the first worker writes for the others how long each test takes, in the mutated copy. */
const TOOK = "took.json";

globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
const STATE = globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE];

class AtOnce {
  /** What the changed code asks which change is in. */
  #state = STATE;
  #begin;
  #tests = [];
  /** How long each test took when it was last run, ms: the short come first. */
  #took = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const root = process.cwd();
    const { tests, without = [] } = ROOMS[process.env.MUTATED_ROOM];
    const paths = tests.flatMap((path) => filesOf(root, path));
    this.#begin = await bundled(
      root,
      paths.filter((path) => !without.some((one) => path.endsWith(one))),
    );
  }

  async dryRun() {
    this.#state.activeMutant = undefined;
    this.#tests = this.#begin();
    const tests = [];
    for (const { id, act } of this.#tests) {
      this.#state.currentTestId = id;
      const { failure, ms } = await run(act);
      this.#state.currentTestId = undefined;
      this.#took.set(id, ms);
      const common = { id, name: id, timeSpentMs: ms };
      tests.push(
        failure === undefined ? { ...common, status: 0 } : { ...common, status: 1, failureMessage: failure },
      );
    }
    writeFileSync(TOOK, JSON.stringify([...this.#took]));
    return { status: "complete", tests, mutantCoverage: this.#state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    if (this.#tests.length === 0) this.#tests = this.#fresh(undefined);
    if (this.#took.size === 0 && existsSync(TOOK))
      this.#took = new Map(JSON.parse(readFileSync(TOOK, "utf8")));
    this.#state.hitLimit = hitLimit;
    const found = await this.#tried(activeMutant.id, testFilter, mutantActivation === "static");
    const reached = determineHitLimitReached(this.#state.hitCount, hitLimit);
    this.#state.activeMutant = undefined;
    this.#state.hitLimit = undefined;
    if (reached !== undefined) return { status: "timeout", reason: reached.reason };
    return found;
  }

  /**
   * A change that only tests pass through is tried on the modules as they are, kept from change to change; a test that fails
   * there must pass there without the change, else something of an earlier change was kept, and all begins anew. A change that
   * is passed while modules load is tried on fresh ones, loaded while it is in.
   */
  async #tried(mutant, filter, isStatic) {
    const survived = { status: "survived", nrOfTests: filter?.length ?? this.#tests.length };
    if (!isStatic) {
      const failed = await this.#firstToFail(this.#tests, mutant, filter);
      if (failed === undefined) return survived;
      this.#state.hitCount = undefined;
      if ((await this.#firstToFail(this.#tests, undefined, [failed.id])) === undefined) return failed.killed;
      this.#tests = this.#fresh(undefined);
    }
    try {
      return (await this.#firstToFail(this.#fresh(mutant), mutant, filter))?.killed ?? survived;
    } catch (error) {
      return killed("loading", String(error), 0);
    }
  }

  #fresh(mutant) {
    this.#state.hitCount = 0;
    this.#state.activeMutant = mutant;
    const tests = this.#begin();
    this.#state.activeMutant = undefined;
    return tests;
  }

  async #firstToFail(tests, mutant, filter) {
    const wanted = filter && new Set(filter);
    const ordered = tests
      .filter(({ id }) => wanted === undefined || wanted.has(id))
      .sort((a, b) => (this.#took.get(a.id) ?? 0) - (this.#took.get(b.id) ?? 0));
    this.#state.hitCount = 0;
    this.#state.activeMutant = mutant;
    for (const [at, { id, act }] of ordered.entries()) {
      const { failure, ms } = await run(act);
      if (failure === undefined) this.#took.set(id, ms);
      else return { id, killed: killed(id, failure, at + 1) };
    }
    return undefined;
  }
}

/** A test file, or all of a folder and below. */
function filesOf(root, path) {
  if (path.endsWith(".ts")) return [join(root, path)];
  return readdirSync(join(root, path), { recursive: true })
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => join(root, path, name));
}

const killed = (id, failureMessage, nrOfTests) => ({
  status: "killed",
  killedBy: [id],
  failureMessage,
  nrOfTests,
});

async function run(act) {
  const start = performance.now();
  try {
    await act();
    return { ms: performance.now() - start };
  } catch (error) {
    return { failure: error instanceof Error ? error.message : String(error), ms: performance.now() - start };
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "at-once", AtOnce)];
