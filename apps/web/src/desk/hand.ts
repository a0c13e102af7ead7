import { type Json, type Path, put, take, valueAt } from "../case/put.ts";
import { type Accepted, type Problem, pathOf, readCase, type Station } from "../road.ts";
import { type Desk, Held } from "./desk.ts";
import { Solver } from "./solver.ts";

/** The one hand that changes what lies on the desk: everything the page can do to a case. */
export class Hand {
  readonly desk: Held<Desk>;
  readonly #solver: Solver;

  constructor(text: string, fileName: string) {
    const read = readCase(text);
    if (!read.ok) throw new Error(`${fileName} is no case: ${read.problems[0]?.where ?? ""}`);
    this.desk = new Held(laidOut(text, fileName, read));
    this.#solver = new Solver(this.desk);
    this.#solver.begin();
  }

  /** Lays another case on the desk. A file that is not accepted changes nothing; its problems are returned. */
  open(text: string, fileName: string): readonly Problem[] {
    const read = readCase(text);
    if (!read.ok) return read.problems;
    this.desk.change(laidOut(text, fileName, read));
    this.#solver.begin();
    return [];
  }

  /** Takes one typed value. What is not accepted stays in its field beside its sentence, and out of the case. */
  type(path: Path, value: Json, typed: string): void {
    const { text, refused } = this.desk.get();
    const next = new Map(refused);
    next.delete(pathOf(path));
    const changed = put(text, path, value);
    const read = readCase(changed);
    if (read.ok) this.#accept(changed, read, next);
    else {
      const problem = problemAt(read.problems, path);
      if (problem) this.desk.change({ refused: next.set(pathOf(path), { typed, problem }) });
    }
  }

  /** Takes an item or a value out of the case; false where the case would not stand without it. */
  takeOut(path: Path): boolean {
    const changed = take(this.desk.get().text, path);
    const read = readCase(changed);
    if (read.ok) this.#accept(changed, read, new Map());
    return read.ok;
  }

  horse(horse: number): void {
    this.desk.change({ horse, changeMm: 0 });
    this.#solver.begin();
  }

  station(station: Station): void {
    this.desk.change({ station });
  }

  moveHead(changeMm: number): void {
    this.desk.change({ changeMm });
    this.#solver.wanted();
  }

  saved(): void {
    this.desk.change({ savedText: this.desk.get().text });
  }

  #accept(text: string, read: Accepted, refused: Desk["refused"]): void {
    const same = text === this.desk.get().text;
    this.desk.change({ text, read, refused });
    if (!same) this.#solver.begin();
  }
}

function problemAt(problems: readonly Problem[], path: Path): Problem | undefined {
  return problems.find((problem) => problem.where.startsWith(pathOf(path))) ?? problems[0];
}

/** A file of an older version is written anew in the current one, since readings are put where the current one keeps them. */
function current(text: string, read: Accepted): string {
  const same = valueAt(JSON.parse(text), ["version"]) === read.file.version;
  return same ? text : `${JSON.stringify(read.file, undefined, 2)}\n`;
}

function laidOut(text: string, fileName: string, read: Accepted): Desk {
  return {
    text: current(text, read),
    savedText: text,
    fileName,
    read,
    horse: 0,
    station: "front",
    changeMm: 0,
    refused: new Map(),
    answer: undefined,
    answering: true,
    sweep: new Map(),
    failed: undefined,
  };
}
