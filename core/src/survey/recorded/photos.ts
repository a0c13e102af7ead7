import { z } from "zod";
import { type Photo, photoSchema } from "../../records/records-file.ts";
import type { Statement } from "./statements.ts";

/*
 * Photos of a visit. Each has a place of its own, named by the photo's fingerprint: two photos taken by two hands never disagree, and
 * one that is withdrawn is a cleared place.
 */

const PLACE = /^photos\.([0-9a-f]{64})$/;

/** of: the place of the case that the photo shows. */
const citedSchema = z.strictObject({
  type: photoSchema.shape.type,
  bytes: photoSchema.shape.bytes,
  of: z.string().min(1).max(200),
});

/** A photo that a visit cites, and what it shows. */
export interface CitedPhoto extends Photo {
  readonly of: string;
}

export const photoPlace = (hash: string): string => `photos.${hash}`;

/** That this photo shows what stands at a place of the case. To be said once the photo itself is safe, never before. */
export const citing = ({ hash, type, bytes }: Photo, of: string): Statement => ({
  at: photoPlace(hash),
  value: { type, bytes, of },
});

/** Photos that a visit cites, by their fingerprint. */
export function photosOf(ofVisit: ReadonlyMap<string, unknown>): readonly CitedPhoto[] {
  return [...ofVisit].flatMap(([at, value]) => {
    const hash = PLACE.exec(at)?.[1];
    const cited = citedSchema.safeParse(value);
    return hash !== undefined && cited.success ? [{ hash, ...cited.data }] : [];
  });
}
