import { z } from "zod";

export type Bare = {
  schema: z.core.$ZodTypes;
  about: string;
  optional: boolean;
  otherwise: string;
  meta: Record<string, unknown>;
};

/** Takes wrappers (default, optional, transform) off, keeping what they say. */
export function bare(wrapped: z.core.$ZodType): Bare {
  const found: Bare = {
    schema: wrapped as z.core.$ZodTypes,
    about: "",
    optional: false,
    otherwise: "",
    meta: {},
  };
  for (let more = true; more; ) {
    const meta = z.globalRegistry.get(found.schema) ?? {};
    found.meta = { ...meta, ...found.meta };
    if (found.about === "" && typeof meta.description === "string") found.about = meta.description;
    const inner = within(found);
    more = inner !== undefined;
    if (inner) found.schema = inner as z.core.$ZodTypes;
  }
  return found;
}

function within(found: Bare): z.core.$ZodType | undefined {
  const def = found.schema._zod.def;
  if (def.type === "pipe") return def.in;
  if (def.type === "optional") found.optional = true;
  if (def.type === "default" || def.type === "prefault") {
    found.optional = true;
    found.otherwise = typeof def.defaultValue === "object" ? "" : String(def.defaultValue);
  }
  return def.type === "optional" || def.type === "default" || def.type === "prefault"
    ? def.innerType
    : undefined;
}

/** Least and most of a number, length of words, count of items. */
export function sizeOf(def: z.core.$ZodTypes["_zod"]["def"]) {
  const size: { minimum?: number; maximum?: number } = {};
  for (const check of def.checks ?? []) {
    const said = check._zod.def as { check: string; value?: number; minimum?: number; maximum?: number };
    if (said.check === "greater_than" && said.value !== undefined) size.minimum = said.value;
    if (said.check === "less_than" && said.value !== undefined) size.maximum = said.value;
    if (said.check === "min_length" && said.minimum !== undefined) size.minimum = said.minimum;
    if (said.check === "max_length" && said.maximum !== undefined) size.maximum = said.maximum;
  }
  return bounds(size);
}

export const bounds = ({
  minimum,
  maximum,
}: {
  minimum?: number | undefined;
  maximum?: number | undefined;
}) => ({
  ...(minimum === undefined ? {} : { lo: minimum }),
  ...(maximum === undefined ? {} : { hi: maximum }),
});
