import { canonicalJson } from "../engine/hash.ts";
import type { Entry } from "./entry.ts";
import { type Graph, graphOf, saw } from "./graph.ts";
import { type Kind, STATED, type Stated, TAKEN_BACK, type TakenBack } from "./kinds.ts";
import { readBody } from "./read-body.ts";

/** What stands at one place of a subject. Several entries where their writers had not seen each other: people decide, by an entry. */
export interface Standing {
  readonly at: string;
  /** Those that nothing was said over, in the graph's order. All of one value unless `differ`. */
  readonly entries: readonly { readonly entry: Entry; readonly value: unknown }[];
  /** Two or more of them disagree. */
  readonly differ: boolean;
}

/** What stands at each place, by place. A cleared place is not in it, unless someone who had not seen that says otherwise. */
export function standingOf(entries: readonly Entry[], kinds: readonly Kind[]): ReadonlyMap<string, Standing> {
  const graph = graphOf(entries);
  const counts = counting(graph, kinds);
  const byPlace = new Map<string, { place: number; stated: Stated }[]>();
  graph.entries.forEach((entry, place) => {
    if (entry.kind !== STATED || !counts[place]) return;
    const read = readBody(entry, kinds);
    if (read.is !== "read") return;
    const stated = read.body as Stated;
    const before = byPlace.get(stated.at) ?? [];
    byPlace.set(stated.at, [...before.filter((one) => !saw(graph, place, one.place)), { place, stated }]);
  });
  return new Map(
    [...byPlace].flatMap(([at, said]): [string, Standing][] => {
      const standing = whatStands(graph, at, said);
      return standing === undefined ? [] : [[at, standing]];
    }),
  );
}

function whatStands(
  graph: Graph,
  at: string,
  said: readonly { readonly place: number; readonly stated: Stated }[],
): Standing | undefined {
  const entries = said.flatMap(({ place, stated }) => {
    const entry = graph.entries[place];
    return entry === undefined ? [] : [{ entry, value: stated.value }];
  });
  if (entries.every(({ value }) => value === undefined)) return undefined;
  const values = new Set(entries.map(({ value }) => (value === undefined ? "" : canonicalJson(value))));
  return { at, entries, differ: values.size > 1 };
}

/** Whether each entry counts: not if an entry that itself counts takes it back. What takes back was written later, so the last come first. */
export function counting(graph: Graph, kinds: readonly Kind[]): readonly boolean[] {
  const counts = graph.entries.map(() => true);
  for (let place = graph.entries.length - 1; place >= 0; place--) {
    const entry = graph.entries[place];
    if (entry?.kind !== TAKEN_BACK || !counts[place]) continue;
    const read = readBody(entry, kinds);
    if (read.is !== "read") continue;
    for (const hash of (read.body as TakenBack).of) {
      const of = graph.placeOf.get(hash);
      if (of !== undefined && saw(graph, place, of)) counts[of] = false;
    }
  }
  return counts;
}
