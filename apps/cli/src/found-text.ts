import type { Entry } from "@treewright/core/records/entry.ts";
import type { Found } from "@treewright/core/records/verify.ts";

/** Digits of a hash or an id that tell one from another in a line. */
const SHORT = 12;
const short = (hash: string): string => hash.slice(0, SHORT);
const named = ({ hash, kind, saidAt }: Entry): string => `entry ${short(hash)} (${kind}, ${saidAt})`;

/** One thing found among entries, in words. */
export function foundInWords(found: Found): string {
  switch (found.is) {
    case "changed":
      return `${named(found.entry)}: what it says is not what was recorded`;
    case "one-id-twice":
      return `id ${found.id}: ${found.entries.length} entries bear it, ${found.entries.map(named).join(" and ")}`;
    case "not-here":
      return `${named(found.namedBy)}: it was written after entry ${short(found.hash)}, which is not here`;
    case "of-another-subject":
      return `${named(found.namedBy)}: it names entry ${short(found.hash)}, which is of another subject`;
    case "newer":
      return `${named(found.entry)}: version ${found.entry.version} of its kind, of a newer Treewright; kept, not read`;
    case "unknown-kind":
      return `${named(found.entry)}: a kind not known here; kept, not read`;
    case "damaged":
      return `${named(found.entry)}: what it holds is not what its kind holds`;
    case "fork":
      return `subject ${found.subject}: written on in ${found.ends.length} places at once, ${found.ends.map(named).join(" and ")}`;
    case "differ":
      return `subject ${found.subject}, ${found.at}: ${found.entries.map(named).join(" and ")} say different things`;
  }
}
