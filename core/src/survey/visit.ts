import { z } from "zod";
import { ridesSchema } from "./rider-rides.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { measured, said, words } from "./typed.ts";

const mayDo = z.enum(["qualified", "trainee", "no", "unknown"]).default("unknown");

export const practiceSchema = z
  .strictObject({
    name: words("name of the practice", SURVEY_LIMITS.nameLetters),
    address: words("address of the practice", SURVEY_LIMITS.addressLetters),
    telephone: words("telephone of the practice", SURVEY_LIMITS.telephoneLetters),
    mail: words("mail address of the practice", SURVEY_LIMITS.nameLetters),
  })
  .meta({ description: "the practice whose name stands on the paper" });

export const visitSchema = z
  .strictObject({
    date: z.iso.date().meta({ description: "day of the visit, yyyy-mm-dd" }),
    place: words("name of the yard", SURVEY_LIMITS.nameLetters),
    owner: words("legal owner of the saddle, to whom the letter goes", SURVEY_LIMITS.nameLetters),
    asked: words("what the owner asked, in a sentence", SURVEY_LIMITS.askedLetters),
    groundSlope: measured({
      kind: "angle",
      lo: -10,
      hi: 10,
      by: "level",
      about: "ground's slope along the horse, head end higher is positive",
    }),
    diseaseInYard: said("contagious disease in the yard"),
  })
  .meta({ description: "when and where" });

export const workerSchema = z
  .strictObject({
    name: words("who would do the work", SURVEY_LIMITS.nameLetters),
    assess: mayDo.meta({ description: "may judge a fit" }),
    exchange: mayDo.meta({ description: "may exchange plates or inserts" }),
    press: mayDo.meta({ description: "may alter a head at a press" }),
    strip: mayDo.meta({ description: "may strip a saddle to its tree" }),
    countersigned: said("a trainee's work is countersigned at the bench, before and after"),
  })
  .meta({ description: "the person who would do the work and what that person may do" });

export const riderSchema = z
  .strictObject({
    name: words("name of the rider", SURVEY_LIMITS.nameLetters),
    massDressed: measured({ kind: "mass", lo: 15, hi: 180, by: "scale", about: "rider, dressed to ride" }),
    tackMass: measured({ kind: "mass", lo: 1, hi: 30, by: "scale", about: "saddle, girth, stirrups, pads" }),
    stirrupHolesNear: measured({
      kind: "count",
      lo: 0,
      hi: 30,
      by: "count",
      about: "stirrup hole really ridden, near side",
    }),
    stirrupHolesOff: measured({
      kind: "count",
      lo: 0,
      hi: 30,
      by: "count",
      about: "stirrup hole really ridden, off side",
    }),
    seatTooSmall: said("seat too small for the rider"),
    rides: ridesSchema.prefault({}),
  })
  .meta({ description: "the rider and what sits on the horse" });
