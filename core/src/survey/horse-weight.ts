import { z } from "zod";
import { BODY_TYPES } from "../terms/weighing.ts";
import { measured } from "./typed.ts";

const tape = (lo: number, hi: number, about: string) =>
  measured({ kind: "length", lo, hi, by: "tape", about });

export const bodySchema = z
  .strictObject({
    type: z
      .enum(BODY_TYPES)
      .default("not-said")
      .meta({ description: "type of horse, for the equation of four measures" }),
    girth: tape(500, 2800, "girth round the body behind the withers, by tape, after breathing out"),
    length: tape(500, 2400, "length of the body from point of shoulder to point of buttock, by tape"),
    height: tape(500, 2200, "height at the withers"),
    neck: tape(300, 2000, "round the neck, half way between poll and withers"),
    condition: measured({
      kind: "count",
      lo: 1,
      hi: 9,
      by: "eye",
      about: "condition by eye and hand, 1 (poor) to 9 (extremely fat); 5 is moderate",
    }),
  })
  .meta({ description: "measures of the body and its condition, for the horse's mass" });
