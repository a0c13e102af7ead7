import { z } from "zod";
import { measured, said } from "./typed.ts";

export const historySchema = z
  .strictObject({
    suddenChange: said("sudden change of behaviour"),
    wound: said("a wound under saddle or girth lately"),
    fall: said("a fall lately"),
    nerveSigns: said("stumbling, swaying or other signs of the nerves"),
    painkillers7Days: said(
      "painkillers in the last 7 days, or a joint or back injection whose waiting time is not over",
    ),
    oneSidedMuscleLoss: said("sudden loss of muscle on one side"),
    weightFalling: said("weight falling without a reason"),
    riddenSigns: measured({
      kind: "count",
      lo: 0,
      hi: 24,
      by: "count",
      about: "signs counted on the published list of 24 ridden signs",
    }),
    slipsSameWay: said("saddle slips the same way on both reins and with a second rider"),
    offWorkWeeks: measured({
      kind: "weeks",
      lo: 0,
      hi: 520,
      by: "count",
      about: "weeks off work in the last three months",
    }),
    backInWorkWeeks: measured({
      kind: "weeks",
      lo: 0,
      hi: 520,
      by: "count",
      about: "weeks back in work since",
    }),
    growing: said("still growing, or under seven"),
  })
  .meta({ description: "what has been going on, each asked by itself" });
