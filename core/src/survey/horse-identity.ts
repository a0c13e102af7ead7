import { z } from "zod";
import { SURVEY_LIMITS } from "./sizes.ts";
import { type TakenTransponder, takeTransponder } from "./transponder.ts";
import { type TakenUeln, takeUeln } from "./ueln.ts";

/** A number with a form of its own, as typed; empty where it was not read. */
function numbered<T extends { readonly ok: boolean }>(
  about: string,
  take: (typed: string) => T,
  kept: (taken: T) => string | { readonly allowed: string },
) {
  return z
    .string()
    .max(SURVEY_LIMITS.numberLetters)
    .default("")
    .transform((typed, context) => {
      if (typed.trim() === "") return "";
      const found = kept(take(typed));
      if (typeof found === "string") return found;
      const { allowed } = found;
      context.addIssue({ code: "custom", message: allowed, params: { typed, allowed } });
      return z.NEVER;
    })
    .meta({ description: about });
}

const figuresOf = (taken: TakenTransponder) =>
  taken.ok ? `${taken.transponder.code}${taken.transponder.individual}` : taken;
const numberOf = (taken: TakenUeln) => (taken.ok ? taken.ueln : taken);

export const identitySchema = z
  .strictObject({
    transponder: numbered(
      "number of the chip as the reader shows it, 15 figures",
      takeTransponder,
      figuresOf,
    ),
    ueln: numbered(
      "number for life (UELN) out of the passport, 15 signs; or its first six, a space, and the horse's own",
      takeUeln,
      numberOf,
    ),
  })
  .meta({ description: "who the horse is, by its own numbers" });
