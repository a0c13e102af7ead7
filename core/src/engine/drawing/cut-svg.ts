import { INKS, type Item, PENS } from "../drawing.ts";
import { boxOf, LAYERS, type Layered } from "./layered.ts";
import { escaped, itemAsSvg, path } from "./svg.ts";

/** Room about the drawing, mm: half a pen's width and what words hang below their line. */
const MARGIN = 5;

/**
 * A drawing to be cut as SVG at true size: a user unit is a millimetre, width and height say so. One group for each
 * purpose, named as in the DXF; lines are bare outlines without fill. Throws RangeError.
 */
export function cutSvgOf(drawing: Layered): string {
  const box = boxOf(drawing);
  const [x, y] = [box.left - MARGIN, box.top - MARGIN].map(Math.floor);
  const [width, height] = [box.right + MARGIN - (x ?? 0), box.bottom + MARGIN - (y ?? 0)].map(Math.ceil);
  const groups = LAYERS.map(
    (layer) => `<g id="${layer}">\n${drawing.layers[layer].map(bare).join("\n")}\n</g>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${x} ${y} ${width} ${height}">`,
    `<title>${escaped(`${drawing.title}; all lengths in millimetres`)}</title>`,
    ...groups,
    "</svg>",
    "",
  ].join("\n");
}

function bare(item: Item): string {
  if (item.kind !== "line") return itemAsSvg(item);
  const d = path(item.points, item.closed);
  return `<path data-name="${escaped(item.name)}" d="${d}" fill="none" stroke="${INKS.ink}" stroke-width="${PENS.thin}"/>`;
}
