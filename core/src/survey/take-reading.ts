import { z } from "zod";
import { type Parsed, parseQuantity } from "../engine/quantity/index.ts";
import { ABSENT, type Absent } from "../terms/knowing.ts";
import type { Field, TypedReading } from "./field.ts";
import { allowedReading, asksUnit, inRange, rangeIn } from "./field-range.ts";
import { doubtOf, instrumentsFor } from "./instrument-records.ts";
import type { Measured } from "./reading.ts";
import { meanOf, ownOfMean } from "./repeats.ts";

type Value = number | string;
type Path = (string | number)[];
type Refuse = (typed: unknown, allowed: string, path?: Path) => void;

const isAbsentWord = (typed: unknown): typed is Absent => ABSENT.some((word) => word === typed);

/**
 * What a hand typed becomes a reading in the kept unit with its uncertainty, or the reason why it is missing.
 * Anything doubtful is refused through `context` with what was read and what is allowed in the unit typed.
 */
export function takeReading(typed: TypedReading, field: Field, context: z.RefinementCtx): Measured {
  if (isAbsentWord(typed)) return { absent: typed };
  const refuse: Refuse = (value, allowed, path = []) =>
    context.addIssue({ code: "custom", message: allowed, path, params: { typed: value, allowed } });
  const reading =
    typeof typed === "object"
      ? fromFull(typed, ["read"], field, refuse)
      : fromFull({ read: typed }, [], field, refuse);
  return reading ?? z.NEVER;
}

function fromFull(
  full: Exclude<TypedReading, Value>,
  base: Path,
  field: Field,
  refuse: Refuse,
): Measured | undefined {
  const instrument = full.by ?? field.by;
  const doubt = doubtOf(instrument, field.kind);
  if (!doubt)
    refuse(
      instrument,
      `${instrument} does not read this; one of ${instrumentsFor(field.kind).join(", ")} does`,
      ["by"],
    );
  const list = Array.isArray(full.read) ? full.read : [full.read];
  const inList = (at: number): Path => (Array.isArray(full.read) ? [...base, at] : base);
  const parsed = list.map((value, at) =>
    taken(value, field, (one, allowed) => refuse(one, allowed, inList(at))),
  );
  const own = full.uncertainty === undefined ? undefined : ownTyped(full.uncertainty, field, refuse);
  const values = parsed.flatMap((one) => (one?.ok ? [one.value] : []));
  const first = parsed[0];
  if (
    !doubt ||
    !first?.ok ||
    values.length < list.length ||
    (full.uncertainty !== undefined && own === undefined)
  )
    return undefined;
  return {
    kind: field.kind,
    value: meanOf(values),
    own: own ?? ownOfMean(doubt.own, values),
    shared: doubt.shared,
    ...(own === undefined ? {} : { ownTyped: true }),
    instrument,
    typed: list.join(", "),
    unit: first.unit.name,
    repeats: values.length > 1 ? values : [],
  };
}

/** One value inside the field's range, or undefined after saying why not. */
function taken(typed: Value, field: Field, refuse: Refuse): Parsed | undefined {
  const parsed = parseQuantity(typed, field.kind);
  if (!parsed.ok) {
    refuse(
      typed,
      parsed.asks.startsWith("is that") ? parsed.asks : `${allowedReading(field)}${asksFingers(typed)}`,
    );
    return undefined;
  }
  if (inRange(field, parsed.value) && (field.kind !== "count" || Number.isInteger(parsed.value)))
    return parsed;
  const whole = field.kind === "count" ? ", whole" : "";
  refuse(typed, `${rangeIn(field, parsed.unit)}${whole}${parsed.unitTyped ? "" : asksUnit(field, typed)}`);
  return undefined;
}

/** A finger is no unit: hands differ by a third. */
const asksFingers = (typed: Value): string =>
  /finger/i.test(String(typed))
    ? `; for fingers, measure your own by ruler and write { "read": "54 mm", "by": "fingers" }`
    : "";

function ownTyped(typed: Value, field: Field, refuse: Refuse): number | undefined {
  const parsed = parseQuantity(typed, field.kind);
  const most = { ...field, lo: 0, hi: field.hi - field.lo };
  if (parsed.ok && parsed.value > 0 && inRange(most, parsed.value)) return parsed.value;
  refuse(
    typed,
    `more than 0 and at most the field's range: ${rangeIn(most, parsed.ok ? parsed.unit : undefined)}`,
    ["uncertainty"],
  );
  return undefined;
}
