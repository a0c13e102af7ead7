import { z } from "zod";
import { len, measured } from "./typed.ts";

/** What is bent when a head is pressed. Read on the bare head, or told by its maker; each one that is missing stands as a range. */
export const reinforcementSchema = z
  .strictObject({
    woodThickness: len(4, 25, "thickness of the wood between the plates at the head, or of a polymer head"),
    woodWidth: len(20, 90, "width of the wood at the head along the back, or of a polymer head"),
    overThickness: len(1, 8, "thickness of the plate over the head, or of the bar within a polymer head"),
    overWidth: len(10, 70, "width of the plate over the head, or of the bar within a polymer head"),
    underThickness: len(1, 8, "thickness of the plate under the head"),
    underWidth: len(10, 70, "width of the plate under the head"),
    rivets: measured({
      kind: "count",
      lo: 0,
      hi: 12,
      by: "count",
      about: "rivets through each plate, on each side of the head's middle",
    }),
    rivetDiameter: len(2, 10, "thickness of a rivet's shank"),
  })
  .meta({ description: "wood, plates and rivets of the head" });
