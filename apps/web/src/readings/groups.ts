import { FIELDS, type FieldRecord, ORDER_OF_WORK, type Section } from "../road.ts";

/** Readings that are taken together, in the order of the work; the title of the case is asked with who and where. */
export const GROUPS: readonly Section[] = ORDER_OF_WORK.map((section, index) =>
  index === 0 ? { ...section, asks: ["title", ...section.asks] } : section,
);

const plain = (path: string) => path.replace(/\[\d+\]/g, "[]");
const within = (path: string, from: string) =>
  path === from || path.startsWith(`${from}.`) || path.startsWith(`${from}[`);

/** The fields of one group in the order of the work; those of lists come with their list. */
export function fieldsOf(group: Section): FieldRecord[] {
  return group.asks.flatMap((from) => FIELDS.filter((field) => within(field.path, from)));
}

/** Which group a place of the case is read in; -1 where it is in none. */
export function groupOf(path: string): number {
  const exact = GROUPS.findIndex((group) => group.asks.some((from) => within(plain(path), from)));
  return exact >= 0 || path === ""
    ? exact
    : GROUPS.findIndex((group) => group.asks.some((from) => within(from, plain(path))));
}
