import { exampleNames, exampleText } from "../case/open-save.ts";
import { caseAsStatements, OF_VISIT, type Statement } from "../records.ts";
import { readCase } from "../road.ts";
import type { Practice } from "./practice.ts";

/** The example that stands as a visit which was begun and left. */
const LEFT_OPEN = "07-half-empty.json";

/** Into an empty store, where invented cases lie beside the page: each of them as a visit. Returns how many there were. */
export async function bringInvented(practice: Practice): Promise<number> {
  // The list of visits is at hand. Two million entries took a phone's browser nine seconds to count, before the first screen.
  const isEmpty = practice.shown.get().visits.length === 0 && (await practice.store.count()).entries === 0;
  if (!isEmpty) return 0;
  const names = await exampleNames().catch((): string[] => []);
  for (const name of names) {
    const statements = statementsOf(await exampleText(name), name !== LEFT_OPEN);
    if (statements.length > 0) await practice.begin(statements);
  }
  return names.length;
}

/** A case file as what is said of a visit; nothing where it is no case. */
export function statementsOf(text: string, finished: boolean): readonly Statement[] {
  const read = readCase(text);
  if (!read.ok) return [];
  const end = finished ? [{ at: OF_VISIT.finished, value: `${read.file.visit.date}T17:00:00.000Z` }] : [];
  return [...caseAsStatements(read.file), ...end];
}
