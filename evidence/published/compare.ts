import type { ReferenceValue } from "./registry.ts";

/** What a check found: a value, or `{ refused: reason }`, or `{ refused: null }` for "it was solved". */
export type Found = number | string | boolean | { readonly refused: string | null };

/** Whether what was found is what the reference says, within its tolerance. */
export function agrees(value: ReferenceValue, found: Found): boolean {
  if ("refusedFor" in value) {
    return typeof found === "object" && found.refused !== null && value.refusedFor.includes(found.refused);
  }
  if (typeof value.expected !== "number") return found === value.expected;
  return typeof found === "number" && Math.abs(found - value.expected) <= allowed(value);
}

function allowed(value: Extract<ReferenceValue, { expected: unknown }>): number {
  const { expected, tolerance, scale } = value;
  if (!tolerance || typeof expected !== "number") throw new Error("a number needs a tolerance");
  if (tolerance.kind === "absolute") return tolerance.value;
  if (expected !== 0) return tolerance.value * Math.abs(expected);
  if (!scale) throw new Error("a zero with a relative tolerance needs a scale");
  return tolerance.value * scale.value;
}

/**
 * The same reference value made wrong: a number by 5 % up and down (a zero by 5 % of its scale), a word or
 * a truth by another one, a reason for refusal by another reason.
 */
export function wrongOnes(value: ReferenceValue): ReferenceValue[] {
  if ("refusedFor" in value) return [{ refusedFor: ["another reason"] }];
  const { expected } = value;
  if (typeof expected === "boolean") return [{ ...value, expected: !expected }];
  if (typeof expected === "string") return [{ ...value, expected: `${expected}, not` }];
  const step = expected === 0 ? value.scale?.value : Math.abs(expected);
  if (step === undefined) throw new Error("a zero needs a scale, named, to be moved by 5 % of");
  const moved = [expected + 0.05 * step, expected - 0.05 * step];
  // The tolerance stays what it was about the true value: a wider one would not be the same comparison.
  const tolerance = { kind: "absolute" as const, value: allowed(value) };
  return moved.map((wrong) => ({ ...value, expected: wrong, tolerance }));
}
