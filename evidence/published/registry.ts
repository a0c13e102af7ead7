import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";

/** One reference value: what is expected, how near, and for zeros the scale that 5 % is taken of. */
const value = z.union([
  z.strictObject({ refusedFor: z.array(z.string()).min(1) }),
  z.strictObject({
    expected: z.union([z.number(), z.string(), z.boolean()]),
    tolerance: z
      .strictObject({ kind: z.enum(["relative", "absolute"]), value: z.number().nonnegative() })
      .optional(),
    scale: z.strictObject({ value: z.number().positive(), name: z.string() }).optional(),
  }),
]);
export type ReferenceValue = z.infer<typeof value>;

const record = z.strictObject({
  id: z.string(),
  topic: z.string(),
  source: z.string().min(1),
  /** read: seen in the source; memory: from memory; derived: closed form; computed: by another program. */
  status: z.enum(["read", "memory", "derived", "computed"]),
  note: z.string().optional(),
  /** Why no check computes it; it is then listed and not compared. */
  context: z.string().optional(),
  inputs: z.unknown(),
  values: z.record(z.string(), value),
});
export type ReferenceRecord = z.infer<typeof record>;

function readAll(): Map<string, ReferenceRecord> {
  const folder = new URL("./", import.meta.url);
  const all = new Map<string, ReferenceRecord>();
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort()) {
    for (const one of z.array(record).parse(JSON.parse(readFileSync(new URL(file, folder), "utf8")))) {
      if (all.has(one.id)) throw new Error(`${file}: ${one.id} is there twice`);
      all.set(one.id, one);
    }
  }
  return all;
}

/** All reference records by id, from the JSON files beside this one. */
export const REGISTRY: ReadonlyMap<string, ReferenceRecord> = readAll();

/** The record of an id; an unknown id is an error. */
export function reference(id: string): ReferenceRecord {
  const found = REGISTRY.get(id);
  if (!found) throw new Error(`no reference value is registered as ${id}`);
  return found;
}
