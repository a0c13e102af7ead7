import { z } from "zod";
import {
  ARCH,
  EXCHANGE,
  METAL,
  MOVED_BY,
  PARTS,
  SPECIAL_FORM,
  SPRINGS,
  TOLD_BY,
} from "../terms/construction.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { seen, sign, words } from "./typed.ts";

export const buildSchema = z
  .strictObject({
    arch: z.enum(ARCH).default("unknown").meta({ description: "what the arch of the head is made of" }),
    metal: z.enum(METAL).default("unknown").meta({ description: "metal that reinforces the head" }),
    springs: z
      .enum(SPRINGS)
      .default("unknown")
      .meta({ description: "spring steels of the tree (a spring tree has them along its rails)" }),
    exchange: z
      .enum(EXCHANGE)
      .default("unknown")
      .meta({ description: "part of the head made to be exchanged" }),
    movedBy: z.enum(MOVED_BY).default("unknown").meta({ description: "what moves this head" }),
    form: z.enum(SPECIAL_FORM).default("none").meta({ description: "special form of saddle or head" }),
    toldBy: z.enum(TOLD_BY).default("not-told").meta({ description: "how the build was told" }),
    treeTemperature: z
      .enum(["below-15-C", "15-C-and-over", "not-looked"])
      .default("not-looked")
      .meta({ description: "temperature of the tree" }),
  })
  .meta({ description: "how the head is built, by its properties, and how that was told" });

const PART_WORDS: { readonly [part: string]: string } = {
  rivets: "rivets; in polymer, what holds its bar",
  plates: "plates; in polymer, its bar",
};

export const lookedSchema = z
  .strictObject({
    level: z
      .enum(["not-looked", "dressed", "bare"])
      .default("not-looked")
      .meta({ description: "was the tree looked at under its cover or bare" }),
    parts: z
      .strictObject(
        Object.fromEntries(
          PARTS.map((part) => [part, seen(PART_WORDS[part] ?? part.replace("-", " "))]),
        ) as Record<(typeof PARTS)[number], ReturnType<typeof seen>>,
      )
      .prefault({})
      .meta({ description: "part by part" }),
    squeeze: seen("head squeezed and pulled at the tips by the heels of the hands"),
    flex: seen("head against the thigh, cantle drawn toward it"),
    twist: seen("head held, cantle turned both ways"),
    noise: sign("click, grate or creak"),
    whiteLine: sign("crack or white stress line in the head"),
    rust: sign("rust bleed or dark ring at a rivet"),
    musty: sign("musty smell, mould, swollen edge"),
    plateHome: seen("exchanged plate home, both sides the same, screws sound"),
    plateBent: sign("exchanged plate bent, filed, drilled or forced"),
    seenBy: words("named person who saw it bare", SURVEY_LIMITS.nameLetters),
  })
  .meta({ description: "the saddle looked over, off the horse" });
