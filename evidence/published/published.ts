import { agrees, type Found, wrongOnes } from "./compare.ts";
import { type ReferenceValue, reference } from "./registry.ts";

/** Something a check found: one value, or values under the same names as in the registry. */
export type Actual = Found | readonly Actual[] | { readonly [name: string]: Actual };

/** One line of the list: a reference value and what was found for it. */
export interface Line {
  readonly id: string;
  readonly status: string;
  readonly tolerance: string;
  readonly expected: string;
  readonly actual: string;
  readonly agrees: boolean;
}

/** Every comparison made so far, by id. */
export const LINES = new Map<string, Line>();

/**
 * The only way a reference value is compared. `id` is a record ("efm-sphere") or one value of it
 * ("efm-sphere/P_N"); `actual` is a value, or an object or array whose leaves are named as the record's
 * values. Throws when a value is outside its tolerance, and also when the same comparison would still pass
 * with the reference wrong by 5 %: such a comparison could not fail.
 */
export function published(id: string, actual: Actual): void {
  const [recordId = "", path = ""] = id.split("/");
  const leaves = [...leavesOf(actual, path)];
  if (leaves.length === 0) throw new Error(`${id}: nothing was found to compare`);
  for (const [name, found] of leaves) compareOne(recordId, name, found);
}

function compareOne(recordId: string, name: string, found: Found): void {
  const { values, status } = reference(recordId);
  const names = Object.keys(values);
  const key = name === "" && names.length === 1 ? (names[0] ?? "") : name;
  const value = values[key];
  const id = `${recordId}/${key}`;
  if (!value) throw new Error(`${id} is not in the registry; ${recordId} has ${names.join(", ")}`);
  const line = { id, status, ...inWords(value), actual: foundInWords(found), agrees: agrees(value, found) };
  LINES.set(id, line);
  if (!line.agrees)
    throw new Error(`${id}: expected ${line.expected} (${line.tolerance}), found ${line.actual}`);
  for (const wrong of wrongOnes(value)) {
    if (agrees(wrong, found))
      throw new Error(`${id}: the comparison cannot fail; it passes for ${inWords(wrong).expected}`);
  }
  if ("refusedFor" in value && agrees(value, { refused: null }))
    throw new Error(`${id}: a solved case passes as refused`);
}

function* leavesOf(actual: Actual, path: string): Generator<[string, Found]> {
  if (typeof actual !== "object" || isRefusal(actual)) yield [path, actual];
  else {
    for (const [name, inner] of Object.entries<Actual>(actual)) {
      yield* leavesOf(inner, path === "" ? name : `${path}.${name}`);
    }
  }
}

function isRefusal(actual: object): actual is { readonly refused: string | null } {
  return "refused" in actual && (actual.refused === null || typeof actual.refused === "string");
}

function inWords(value: ReferenceValue): { expected: string; tolerance: string } {
  if ("refusedFor" in value)
    return { expected: `refused: ${value.refusedFor.join(" or ")}`, tolerance: "the reason" };
  const { expected, tolerance, scale } = value;
  const kind = tolerance ? `${tolerance.kind === "relative" ? "rel" : "abs"} ${tolerance.value}` : "the same";
  return { expected: String(expected), tolerance: scale ? `${kind} of ${scale.name}` : kind };
}

function foundInWords(found: Found): string {
  if (typeof found === "object") return found.refused === null ? "solved" : `refused: ${found.refused}`;
  return String(found);
}
