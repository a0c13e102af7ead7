import { applyAnswer } from "../answer-question.ts";
import type { CaseFile } from "../case.ts";
import { getAt, stepsOf } from "../path.ts";
import type { Problem } from "../problem.ts";
import { FIELDS } from "../schema-fields.ts";

/** One value to be said at one place; without a value the place is to be cleared. */
export interface Statement {
  readonly at: string;
  readonly value?: unknown;
  /** Whose it is, where what is said is personal and that is known. */
  readonly person?: string;
}

export type Answered =
  | { readonly ok: true; readonly statements: readonly Statement[]; readonly draft: CaseFile }
  | { readonly ok: false; readonly problem: Problem };

/** What is to be said when a question is answered by what was typed: the place itself, and what hangs on it (the unit and station of a trace). */
export function answerAsStatements(draft: CaseFile, path: string, typed: string): Answered {
  const answered = applyAnswer(draft, path, typed);
  if (!answered.ok) return answered;
  const beside = /^(.*(?:traces\[\d+\]|profile)\.)/.exec(path)?.[1];
  const places = beside === undefined ? [path] : [path, `${beside}unit`, `${beside}station`];
  const statements = places.flatMap((at): Statement[] => {
    const after = getAt(answered.draft, stepsOf(at));
    const isSame = at !== path && JSON.stringify(getAt(draft, stepsOf(at))) === JSON.stringify(after);
    return after === undefined || isSame ? [] : [{ at, value: after }];
  });
  return { ok: true, statements, draft: answered.draft };
}

/** What is to be said when a place is cleared: with the points of a tracing go those of its drawings again. */
export function clearingStatements(draft: CaseFile, path: string): readonly Statement[] {
  const repeats = /traces\[\d+\]\.points$/.test(path) ? path.replace(/points$/, "repeats") : undefined;
  const again = repeats === undefined ? undefined : getAt(draft, stepsOf(repeats));
  const count = Array.isArray(again) ? again.length : 0;
  return [{ at: path }, ...Array.from({ length: count }, (_, i) => ({ at: `${repeats}[${i}]` }))];
}

/** Every place of a case as a statement: how a case file enters the records. Lists of points, repeats and full readings stay whole. */
export function caseAsStatements(file: CaseFile): readonly Statement[] {
  return FIELDS.flatMap(({ path, kind }): Statement[] => {
    if (kind === "group" || kind === "list" || path === "format" || path === "version") return [];
    return placesOf(file, path).flatMap((at): Statement[] => {
      const value = getAt(file, stepsOf(at));
      return value === undefined ? [] : [{ at, value }];
    });
  });
}

/** `horses[].traces[].points` as the places that a file really has. */
function placesOf(file: CaseFile, path: string): readonly string[] {
  const open = path.indexOf("[]");
  if (open < 0) return [path];
  const list = getAt(file, stepsOf(path.slice(0, open)));
  const count = Array.isArray(list) ? list.length : 0;
  return Array.from(
    { length: count },
    (_, at) => `${path.slice(0, open)}[${at}]${path.slice(open + 2)}`,
  ).flatMap((one) => placesOf(file, one));
}
