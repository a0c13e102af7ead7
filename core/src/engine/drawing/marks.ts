import type { At, Face, Item, Pen } from "../drawing.ts";

export type Line = Extract<Item, { kind: "line" }>;
export type Words = Extract<Item, { kind: "text" }>;

interface Stroke {
  readonly closed?: boolean;
  readonly dashed?: boolean;
  readonly fill?: Line["fill"];
}

/** A line through points, mm. Open, whole and unfilled unless said. */
export function line(name: string, pen: Pen, points: readonly At[], stroke: Stroke = {}): Line {
  return {
    kind: "line",
    name,
    points,
    pen,
    closed: stroke.closed ?? false,
    dashed: stroke.dashed ?? false,
    fill: stroke.fill ?? "none",
  };
}

/** A rectangle from its upper left corner, mm. */
export function box(
  name: string,
  pen: Pen,
  [x, y]: At,
  width: number,
  height: number,
  fill: Line["fill"] = "none",
): Line {
  const corners: At[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  return line(name, pen, corners, { closed: true, fill });
}

/** How words are set. */
export interface Type {
  readonly face: Face;
  readonly bold: boolean;
  readonly size: number;
}

interface Setting {
  readonly anchor?: Words["anchor"];
  readonly ink?: Words["ink"];
  readonly turn?: number;
}

/** Words on a base line. */
export function words(name: string, type: Type, at: At, said: string, setting: Setting = {}): Words {
  const { anchor = "start", ink = "ink", turn = 0 } = setting;
  return {
    kind: "text",
    name,
    at,
    words: said,
    face: type.face,
    bold: type.bold,
    size: type.size,
    anchor,
    ink,
    turn,
  };
}
