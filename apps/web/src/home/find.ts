import type { ListedVisit } from "../practice/card.ts";
import type { Held } from "../records.ts";

export type Find = (letters: string) => readonly ListedVisit[];

/**
 * Visits by a few letters of horse, saddle, yard or owner, in any order, without regard to case and accents; the last visit first. The
 * words of all are laid out once, and looked through at every letter. What was erased is found no more.
 */
export function finderOf(visits: readonly ListedVisit[], people: readonly Held[]): Find {
  const nameOf = new Map(people.map(({ person, value }) => [person, value]));
  const last = [...visits].reverse();
  const words = last.map(({ horseName, saddleName, yard, owner }) =>
    plain(`${horseName} ${saddleName} ${yard} ${nameOf.get(owner) ?? ""}`),
  );
  return (letters) => {
    const sought = plain(letters)
      .split(/\s+/)
      .filter((word) => word !== "");
    return sought.length === 0
      ? last
      : last.filter((_, at) => sought.every((word) => words[at]?.includes(word)));
  };
}

/** Without regard to case and accents. */
export const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
