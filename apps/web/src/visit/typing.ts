import { jsonIn } from "../practice/noted.ts";
import type { OpenVisit } from "./open-visit.ts";

/** What is typed and not yet entered: kept with every sign, since a battery dies in the middle of a reading. */
export interface Typing {
  readonly path: string;
  readonly typed: string;
}

const nameOf = (visit: OpenVisit): string => `typing ${visit.subject}`;

export function keepTyping(visit: OpenVisit, path: string, typed: string): void {
  // A sign that could not be kept is still on the screen; the reading itself tells of trouble when it is entered.
  visit.practice.store.note(nameOf(visit), JSON.stringify({ path, typed })).catch(() => undefined);
}

export async function typedBefore(visit: OpenVisit): Promise<Typing | undefined> {
  const noted = await visit.practice.store.noted(nameOf(visit));
  const { path, typed } = (jsonIn(noted) ?? {}) as Partial<Typing>;
  return path && typed ? { path, typed } : undefined;
}
