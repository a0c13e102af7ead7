import type { Standing } from "../../records/stands.ts";
import { emptyCase } from "../answer-question.ts";
import type { CaseFile } from "../case.ts";
import { putAt, stepsOf } from "../path.ts";
import { fieldAt } from "../schema-fields.ts";
import { isPersonal } from "./places.ts";

/** The value behind a commitment, or undefined once it was erased. */
export type Reveal = (committed: unknown) => string | undefined;

/** What a visit's entries say: a case as typed, the places of the visit itself, and where people disagree. */
export interface VisitDraft {
  readonly file: CaseFile;
  readonly ofVisit: ReadonlyMap<string, unknown>;
  /** Two said different things there without having seen each other: neither is in `file`. */
  readonly differ: readonly Standing[];
  /** Places of people whose fields were erased. */
  readonly erased: readonly string[];
}

/** day: yyyy-mm-dd, for a visit of which no entry tells its own. */
export function visitDraft(standing: ReadonlyMap<string, Standing>, reveal: Reveal, day: string): VisitDraft {
  const ofVisit = new Map<string, unknown>();
  const erased: string[] = [];
  let file: unknown = emptyCase("Visit", day);
  for (const { at, entries, differ } of inOrder(standing)) {
    const value = entries[0]?.value;
    if (differ || value === undefined) continue;
    // A name that was left empty is nobody's, and was never kept apart.
    const shown = isPersonal(at) && value !== "" ? reveal(value) : value;
    if (shown === undefined) erased.push(at);
    else if (isOfCase(at)) file = putAt(file, stepsOf(at), shown);
    else ofVisit.set(at, shown);
  }
  return {
    // Each place was checked by its schema when it was said; the whole is read by `readCaseValue` before anything is worked out.
    file: withoutHoles(file) as CaseFile,
    ofVisit,
    differ: [...standing.values()].filter(({ differ }) => differ),
    erased,
  };
}

const isOfCase = (at: string): boolean => fieldAt(at) !== undefined;

/** By place, so that the same entries give the same text. */
const inOrder = (standing: ReadonlyMap<string, Standing>): readonly Standing[] =>
  [...standing.values()].sort((a, b) => (a.at < b.at ? -1 : 1));

/** An item of a list that was cleared leaves no hole: the items behind it move up. */
function withoutHoles(tree: unknown): unknown {
  if (Array.isArray(tree)) return tree.filter((item) => item !== undefined).map(withoutHoles);
  if (typeof tree !== "object" || tree === null) return tree;
  return Object.fromEntries(Object.entries(tree).map(([name, item]) => [name, withoutHoles(item)]));
}
