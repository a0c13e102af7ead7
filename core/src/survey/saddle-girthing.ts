import { z } from "zod";
import { len, said } from "./typed.ts";

const pair = (name: string) =>
  z
    .strictObject({
      used: said(`the girth is buckled to the ${name} strap`),
      near: len(-150, 420, `${name} strap behind the tree points, near`, "ruler"),
      off: len(-150, 420, `${name} strap behind the tree points, off`, "ruler"),
    })
    .prefault({})
    .meta({ description: `the ${name} straps` });

/** The girth straps by their place on the tree, from the front. Where none is said to be used, the strap of the bearing's readings stands. */
export const girthingSchema = z
  .strictObject({
    layout: z.enum(["V", "parallel", "not-looked"]).default("not-looked").meta({
      description: "how the straps that are used run: to one buckle, or side by side",
    }),
    point: pair("point"),
    first: pair("first"),
    second: pair("second"),
    third: pair("third"),
    back: pair("back"),
  })
  .meta({ description: "which girth straps are used, and where they hang" });
