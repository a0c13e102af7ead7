import type { Entry } from "./entry.ts";

/** The entries of one subject, each once, those that were seen before those that saw them. */
export interface Graph {
  readonly entries: readonly Entry[];
  /** For each entry the set of all that were seen when it was written, as bits by place in `entries`. */
  readonly seen: readonly bigint[];
  readonly placeOf: ReadonlyMap<string, number>;
}

/** Merging is set union by hash: in any order, any number of times, with the same end. */
export function merged(...lists: readonly (readonly Entry[])[]): readonly Entry[] {
  const byHash = new Map<string, Entry>();
  for (const list of lists) for (const entry of list) byHash.set(entry.hash, entry);
  return [...byHash.values()].sort((a, b) => (a.hash < b.hash ? -1 : 1));
}

/** Entries of one subject in an order that hangs on nothing but themselves: what was seen first, then by id and hash. */
export function graphOf(entries: readonly Entry[]): Graph {
  const ordered = causalOrder(merged(entries));
  const placeOf = new Map(ordered.map(({ hash }, at) => [hash, at]));
  const seen: bigint[] = [];
  for (const { after } of ordered) {
    seen.push(
      after.reduce((all, hash) => {
        const at = placeOf.get(hash);
        return at === undefined ? all : all | (seen[at] ?? 0n) | (1n << BigInt(at));
      }, 0n),
    );
  }
  return { entries: ordered, seen, placeOf };
}

/** Whether the writer of entry `later` had seen entry `earlier` (places in the graph). */
export const saw = ({ seen }: Graph, later: number, earlier: number): boolean =>
  ((seen[later] ?? 0n) >> BigInt(earlier)) % 2n === 1n;

/** Hashes of the entries that no other was written after, in order: what the next entry comes `after`. */
export function endsOf(entries: readonly Entry[]): readonly string[] {
  const passed = new Set(entries.flatMap(({ after }) => after));
  return [...new Set(entries.map(({ hash }) => hash))].filter((hash) => !passed.has(hash)).sort();
}

const byIdThenHash = (a: Entry, b: Entry): number =>
  a.id === b.id ? (a.hash < b.hash ? -1 : 1) : a.id < b.id ? -1 : 1;

/** Kahn's order, the smallest id first among those whose turn it is. Hashes close the door on circles: an entry cannot name its own. */
function causalOrder(entries: readonly Entry[]): readonly Entry[] {
  const byHash = new Map(entries.map((entry) => [entry.hash, entry]));
  const waitsFor = new Map(
    entries.map(({ hash, after }) => [hash, after.filter((one) => byHash.has(one)).length]),
  );
  const followers = new Map<string, Entry[]>();
  for (const entry of entries)
    for (const hash of entry.after) followers.set(hash, [...(followers.get(hash) ?? []), entry]);
  const ready = entries.filter(({ hash }) => waitsFor.get(hash) === 0).sort(byIdThenHash);
  const ordered: Entry[] = [];
  for (let next = ready.shift(); next !== undefined; next = ready.shift()) {
    ordered.push(next);
    for (const follower of followers.get(next.hash) ?? []) {
      const left = (waitsFor.get(follower.hash) ?? 0) - 1;
      waitsFor.set(follower.hash, left);
      if (left === 0) insert(ready, follower);
    }
  }
  // Only forged hashes can wait for each other; they are kept, at the end, and `verify` says what they are.
  return [...ordered, ...entries.filter(({ hash }) => (waitsFor.get(hash) ?? 0) > 0).sort(byIdThenHash)];
}

function insert(ready: Entry[], entry: Entry): void {
  const at = ready.findIndex((one) => byIdThenHash(entry, one) < 0);
  ready.splice(at < 0 ? ready.length : at, 0, entry);
}
