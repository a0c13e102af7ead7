import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import { mountingSchema } from "./saddle-plates.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { deg, len, seen, words } from "./typed.ts";

export const STOCK_FORMAT = "treewright-stock";
export const STOCK_VERSION = 1;
/** Path under which the fields of a stock are known beside those of a case. */
export const STOCK_PATH = "stock";

/** One loose plate, measured on the bench. Words of makers are kept as they are and never compared. */
const stockPlateSchema = z
  .strictObject({
    maker: z.string().min(1).max(SURVEY_LIMITS.serialLetters).meta({ description: "maker of the plate" }),
    word: z
      .string()
      .min(1)
      .max(SURVEY_LIMITS.markLetters)
      .meta({ description: "the maker's own word for the size; never compared" }),
    mark: words("the practice's own mark on this piece", SURVEY_LIMITS.markLetters),
    mounting: mountingSchema.prefault({}),
    face: z
      .enum(["inside", "outside", "not-said"])
      .default("not-said")
      .meta({ description: "face of the plate between which the spread was read" }),
    spread: len(40, 360, "spread of the loose plate, at the level named"),
    belowCrown: len(
      35,
      200,
      "level at which the spread was read, straight down from the inside of the crown",
    ),
    depth: len(50, 200, "from the inside of the crown straight down to the ends of the plate"),
    halfAngle: deg(10, 75, "half-angle of the plate, of its straight legs"),
    legThickness: len(1, 25, "thickness of a leg, square to it"),
    sound: seen("plate straight, holes sound, no crack"),
  })
  .transform((plate) => calliperOnBare(plate))
  .meta({ description: "one loose plate" });

/** The plates of a practice. The one definition: schema, types and documentation come from here. */
export const stockSchema = z
  .strictObject({
    format: z.literal(STOCK_FORMAT).meta({ description: "what kind of file this is" }),
    version: z.literal(STOCK_VERSION).meta({ description: "version of the format" }),
    title: z.string().min(1).max(SURVEY_LIMITS.titleLetters).meta({ description: "title of the stock" }),
    invented: z.boolean().default(false).meta({ description: "an invented example" }),
    plates: z
      .array(stockPlateSchema)
      .max(SURVEY_LIMITS.stockPlates)
      .default([])
      .meta({ description: `loose plates, at most ${SURVEY_LIMITS.stockPlates}` }),
  })
  .meta({ description: "a Treewright stock of plates" });

export type Stock = z.output<typeof stockSchema>;
export type StockPlate = Stock["plates"][number];
