import { committedSchema, type Held, revealed } from "../records.ts";

/** What was committed to, out of the store of people; undefined once it was erased, or where it is no commitment. */
export function revealFrom(heldOf: (person: string) => readonly Held[], value: unknown): string | undefined {
  const one = committedSchema.safeParse(value);
  return one.success ? revealed(one.data, heldOf(one.data.person)) : undefined;
}
