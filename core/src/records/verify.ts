import { grouped } from "../engine/grouped.ts";
import { type Entry, isWhole } from "./entry.ts";
import { endsOf, merged } from "./graph.ts";
import type { Kind } from "./kinds.ts";
import { readBody } from "./read-body.ts";
import { standingOf } from "./stands.ts";

/** One thing found wrong, or open, among some entries. */
export type Found =
  | { readonly is: "changed"; readonly entry: Entry }
  | { readonly is: "one-id-twice"; readonly id: string; readonly entries: readonly Entry[] }
  | { readonly is: "not-here"; readonly hash: string; readonly namedBy: Entry }
  | { readonly is: "of-another-subject"; readonly hash: string; readonly namedBy: Entry }
  | { readonly is: "newer" | "unknown-kind" | "damaged"; readonly entry: Entry }
  | { readonly is: "fork"; readonly subject: string; readonly ends: readonly Entry[] }
  | {
      readonly is: "differ";
      readonly subject: string;
      readonly at: string;
      readonly entries: readonly Entry[];
    };

/** What makes a set of entries no longer to be trusted; the rest is open and for people to decide, or for a newer version to read. */
export const FAULTS: ReadonlySet<Found["is"]> = new Set([
  "changed",
  "one-id-twice",
  "not-here",
  "of-another-subject",
  "damaged",
]);

/** Everything wrong or open, faults first in the order of the entries. */
export function verify(entries: readonly Entry[], kinds: readonly Kind[]): readonly Found[] {
  const all = merged(entries);
  const bySubject = grouped(all, ({ subject }) => subject);
  return [
    ...all.filter((entry) => !isWhole(entry)).map((entry): Found => ({ is: "changed", entry })),
    ...sameIds(all),
    ...badLinks(all),
    ...all.flatMap((entry): Found[] => {
      const { is } = readBody(entry, kinds);
      return is === "read" ? [] : [{ is, entry }];
    }),
    ...[...bySubject].flatMap(([subject, own]) => open(subject, own, kinds)),
  ];
}

function sameIds(all: readonly Entry[]): Found[] {
  return [...grouped(all, ({ id }) => id)].flatMap(([id, entries]): Found[] =>
    entries.length > 1 ? [{ is: "one-id-twice", id, entries }] : [],
  );
}

function badLinks(all: readonly Entry[]): Found[] {
  const byHash = new Map(all.map((entry) => [entry.hash, entry]));
  return all.flatMap((namedBy) =>
    namedBy.after.flatMap((hash): Found[] => {
      const named = byHash.get(hash);
      if (named === undefined) return [{ is: "not-here", hash, namedBy }];
      return named.subject === namedBy.subject ? [] : [{ is: "of-another-subject", hash, namedBy }];
    }),
  );
}

function open(subject: string, own: readonly Entry[], kinds: readonly Kind[]): Found[] {
  const ends = new Set(endsOf(own));
  const fork: Found[] =
    ends.size > 1 ? [{ is: "fork", subject, ends: own.filter(({ hash }) => ends.has(hash)) }] : [];
  const differing = [...standingOf(own, kinds).values()].filter(({ differ }) => differ);
  return [
    ...fork,
    ...differing.map(
      ({ at, entries }): Found => ({ is: "differ", subject, at, entries: entries.map(({ entry }) => entry) }),
    ),
  ];
}
