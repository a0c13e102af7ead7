import { CALLIPER_ON_BARE_TREE } from "./instrument-records.ts";
import type { Reading } from "./reading.ts";
import { ownOfMean } from "./repeats.ts";

/**
 * The same readings with a calliper's uncertainty on bare wood or metal instead of through leather.
 * An uncertainty that the hand typed stays. No value changes.
 */
export function calliperOnBare<T>(tree: T): T {
  // The walk rebuilds what it was given, so the type stays.
  return rebuilt(tree) as T;
}

function rebuilt(tree: unknown): unknown {
  if (Array.isArray(tree)) return tree.map(rebuilt);
  if (typeof tree !== "object" || tree === null) return tree;
  if (isCalliper(tree)) return onBare(tree);
  return Object.fromEntries(Object.entries(tree).map(([name, inner]) => [name, rebuilt(inner)]));
}

const isCalliper = (value: object): value is Reading =>
  "instrument" in value && value.instrument === "calliper";

function onBare(reading: Reading): Reading {
  const { own, shared } = CALLIPER_ON_BARE_TREE;
  return { ...reading, own: reading.ownTyped ? reading.own : ownOfMean(own, reading.repeats), shared };
}
