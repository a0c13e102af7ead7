import { z } from "zod";

/** How the horse is ridden and mounted: where the load acts, and how high it peaks. */
export const ridesSchema = z
  .strictObject({
    trot: z
      .enum(["rising", "sitting", "two-point", "not-asked"])
      .default("not-asked")
      .meta({ description: "how the trot is ridden most" }),
    canter: z
      .enum(["sitting", "half-seat", "not-asked"])
      .default("not-asked")
      .meta({ description: "how the canter is ridden most" }),
    mounts: z
      .enum(["ground", "platform", "not-asked"])
      .default("not-asked")
      .meta({ description: "mounted from the ground, or from a block of at least 350 mm" }),
  })
  .meta({ description: "how the horse is ridden and mounted" });
