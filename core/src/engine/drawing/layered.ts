import type { At, Item } from "../drawing.ts";

/** What each layer is for: through it, on it, or only to be read. */
export const LAYERS = ["cut", "mark", "text"] as const;
export type Layer = (typeof LAYERS)[number];

/** A drawing for a machine that cuts: items by their purpose, mm, y downward as on paper; no pen and no fill counts. */
export interface Layered {
  readonly title: string;
  readonly layers: { readonly [L in Layer]: readonly Item[] };
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What all lines of a drawing span, and where its words begin. Throws RangeError where there is no line, or a length that is no number. */
export function boxOf({ layers }: Layered): Box {
  const points = LAYERS.flatMap((layer) => layers[layer]).flatMap(pointsOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const box = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
  if (Object.values(box).every(Number.isFinite)) return box;
  throw new RangeError("a drawing to be cut holds no line, or a length that is no number");
}

function pointsOf(item: Item): readonly At[] {
  if (item.kind === "line") return item.points;
  return item.kind === "text" ? [item.at] : item.rings.flat();
}
