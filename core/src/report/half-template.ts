import { words } from "../engine/drawing/marks.ts";
import type { At, Document, Measure } from "../engine/drawing.ts";
import { SIDES } from "../terms/places.ts";
import { HEADING, SMALL } from "./looks.ts";
import { laidOut, OVERLAP } from "./template.ts";
import type { TemplateData } from "./template-data.ts";
import { headParts } from "./template-parts.ts";

/** Depth of the words that say which way a half is held, as a part of the head's own depth. */
const SAID_AT = 0.68;

/**
 * The two halves of the wanted head at 1:1, each on a sheet of its own with a strip beyond the centre plane, in which
 * the register marks join them. Near is left, seen from behind: a half turned over is the other side's, and says so.
 */
export function halfTemplateOf(data: TemplateData, measure: Measure): Document {
  const head = headParts(data, measure, "halves");
  const depth = head.bottom - Math.max(0, head.top);
  const held = SIDES.flatMap((side) => {
    const at = (part: number): At => [side === "near" ? -20 : 20, depth * part];
    const anchor = side === "near" ? "end" : "start";
    return [
      words(`which half, ${side}`, HEADING, at(SAID_AT), `${side} half`, { anchor }),
      words(`which way, ${side}`, SMALL, at(SAID_AT + 0.05), "this face to you", { anchor }),
    ];
  });
  return laidOut(data, measure, { ...head, items: [...head.items, ...held] }, (from, to) => [
    { from, to: OVERLAP / 2 },
    { from: -OVERLAP / 2, to },
  ]);
}
