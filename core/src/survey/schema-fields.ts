import type { z } from "zod";
import { type QuantityKind, usualUnit } from "../engine/quantity/index.ts";
import type { Instrument } from "../terms/instruments.ts";
import { caseSchema } from "./case.ts";
import { JOB_PATH, jobSchema } from "./job.ts";
import { type Bare, bare, bounds, sizeOf } from "./schema-bare.ts";
import { STOCK_PATH, stockSchema } from "./stock.ts";

export type FieldKind =
  | "measured"
  | "choice"
  | "words"
  | "date"
  | "whole-number"
  | "true-or-false"
  | "fixed"
  | "points"
  | "list"
  | "group";

/** One place of the case file, out of the schema. List items carry `[]` in their path: `horses[].traces[].points`. */
export interface FieldRecord {
  readonly path: string;
  readonly kind: FieldKind;
  readonly about: string;
  /** A file without it is not read. */
  readonly required: boolean;
  /** What stands when it is left out. */
  readonly otherwise: string;
  readonly quantity?: QuantityKind;
  readonly unit?: string;
  readonly lo?: number;
  readonly hi?: number;
  readonly by?: Instrument;
  /** Allowed words. */
  readonly words?: readonly string[];
  /** Names a group may hold. */
  readonly keys?: readonly string[];
  /** The schema of this place alone. */
  readonly schema: z.core.$ZodType;
}

const isPoints = (def: z.core.$ZodTypes["_zod"]["def"]): boolean =>
  def.type === "array" && bare(def.element).schema._zod.def.type === "tuple";

function kindOf(found: Bare): FieldKind {
  if (found.meta.quantity !== undefined) return "measured";
  const def = found.schema._zod.def;
  if (def.type === "object") return "group";
  if (def.type === "array") return isPoints(def) ? "points" : "list";
  if (def.type === "enum") return "choice";
  if (def.type === "literal") return "fixed";
  if (def.type === "boolean") return "true-or-false";
  if (def.type === "number") return "whole-number";
  return "format" in def && def.format === "date" ? "date" : "words";
}

function recordOf(path: string, schema: z.core.$ZodType, found: Bare): FieldRecord {
  const kind = kindOf(found);
  const { quantity, lo, hi, instrument } = found.meta as {
    quantity?: QuantityKind;
    lo?: number;
    hi?: number;
    instrument?: Instrument;
  };
  const def = found.schema._zod.def;
  return {
    path,
    kind,
    about: found.about,
    required: !found.optional,
    otherwise: found.otherwise,
    schema,
    ...(quantity === undefined ? {} : { quantity, unit: usualUnit(quantity).name }),
    ...(quantity === undefined ? sizeOf(def) : bounds({ minimum: lo, maximum: hi })),
    ...(instrument === undefined ? {} : { by: instrument }),
    ...(def.type === "enum" ? { words: Object.values(def.entries).map(String) } : {}),
    ...(def.type === "literal" ? { words: def.values.map(String) } : {}),
    ...(def.type === "object" ? { keys: Object.keys(def.shape) } : {}),
  };
}

function walk(path: string, schema: z.core.$ZodType): FieldRecord[] {
  const found = bare(schema);
  const record = recordOf(path, schema, found);
  const def = found.schema._zod.def;
  if (record.kind === "group" && def.type === "object") {
    const inside = Object.entries(def.shape).flatMap(([key, inner]) =>
      walk(path === "" ? key : `${path}.${key}`, inner),
    );
    return [record, ...inside];
  }
  if (record.kind === "list" && def.type === "array") return [record, ...walk(`${path}[]`, def.element)];
  return [record];
}

/** Every place of the case file in the order of the schema; the case itself first, with an empty path. */
export const FIELDS: readonly FieldRecord[] = walk("", caseSchema);

/** Every place of a stock of plates, below "stock". */
export const STOCK_FIELDS: readonly FieldRecord[] = walk(STOCK_PATH, stockSchema);

/** Every place of a job at the press, below "job". */
export const JOB_FIELDS: readonly FieldRecord[] = walk(JOB_PATH, jobSchema);

const BY_PATH: ReadonlyMap<string, FieldRecord> = new Map(
  [...FIELDS, ...STOCK_FIELDS, ...JOB_FIELDS].map((field) => [field.path, field]),
);

/** The field at a path with or without indexes: `horses[0].age` or `horses[].age`. */
export const fieldAt = (path: string): FieldRecord | undefined => BY_PATH.get(path.replace(/\[\d*\]/g, "[]"));
