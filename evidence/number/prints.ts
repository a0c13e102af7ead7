import { sha256Hex } from "@treewright/core/engine/hash.ts";

/** Fingerprints of all digits of many parts, by their place. */
export type Prints = { readonly [place: string]: string };

/** The engine gives the same digits everywhere, so one digit that moved shows. `by`: all figures made so many times as large. */
export function printsOf(parts: readonly (readonly [place: string, part: unknown])[], by = 1): Prints {
  const written = (_: string, value: unknown) =>
    value instanceof Float64Array
      ? Array.from(value, (one) => by * one)
      : typeof value === "number"
        ? by * value
        : value;
  const printOf = (part: unknown) =>
    sha256Hex(new TextEncoder().encode(JSON.stringify(part, written) ?? "nothing")).slice(0, 16);
  return Object.fromEntries(parts.map(([place, part]) => [place, printOf(part)]));
}
