import type { At, Item } from "../drawing.ts";
import { blocksOf, tablesOf } from "./dxf-tables.ts";
import { dxfWords, Handles, type Tag, tagsAsText } from "./dxf-tags.ts";
import { type Box, boxOf, LAYERS, type Layer, type Layered } from "./layered.ts";

/** Millimetres, in the header's list of units. */
const MILLIMETRES = 4;
/** Height of capital letters as part of a type's body (about; from memory). */
const CAPITALS = 0.7;

/**
 * A drawing to be cut, as DXF text of version AC1015: the oldest that can say that its unit is the millimetre (an older
 * file leaves that to a guess, and an inch is 25 times as long). One layer for each purpose; lines are polylines, closed
 * where they close; a band has no place on a cutter and is left out. In DXF y points up. Throws RangeError.
 */
export function dxfOf(drawing: Layered): string {
  const box = boxOf(drawing);
  const handles = new Handles();
  const tables = tablesOf(handles);
  const blocks = blocksOf(handles, tables);
  const entities = LAYERS.flatMap((layer) =>
    drawing.layers[layer].flatMap((item) => entity(item, layer, handles.next(), tables.model)),
  );
  const objects = dictionaries(handles);
  return tagsAsText([
    [999, dxfWords(`${drawing.title}; all lengths in millimetres`)],
    ...header(box, handles.free),
    ...tables.tags,
    ...blocks,
    [0, "SECTION"],
    [2, "ENTITIES"],
    ...entities,
    [0, "ENDSEC"],
    ...objects,
    [0, "EOF"],
  ]);
}

function header({ left, right, top, bottom }: Box, free: string): readonly Tag[] {
  const corner = (name: string, x: number, y: number): readonly Tag[] => [
    [9, name],
    [10, x],
    [20, y],
    [30, 0],
  ];
  const whole = (name: string, value: number): readonly Tag[] => [
    [9, name],
    [70, value],
  ];
  return [
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$ACADVER"],
    [1, "AC1015"],
    [9, "$DWGCODEPAGE"],
    [3, "ANSI_1252"],
    [9, "$HANDSEED"],
    [5, free],
    ...corner("$INSBASE", 0, 0),
    ...corner("$EXTMIN", left, -bottom),
    ...corner("$EXTMAX", right, -top),
    ...whole("$MEASUREMENT", 1),
    ...whole("$INSUNITS", MILLIMETRES),
    [0, "ENDSEC"],
  ];
}

function entity(item: Item, layer: Layer, handle: string, owner: string): readonly Tag[] {
  const common = (kind: string): readonly Tag[] => [
    [0, kind],
    [5, handle],
    [330, owner],
    [100, "AcDbEntity"],
    [8, layer],
  ];
  if (item.kind === "line") return [...common("LWPOLYLINE"), ...polyline(item.points, item.closed)];
  return item.kind === "text" ? [...common("TEXT"), ...written(item)] : [];
}

function polyline(points: readonly At[], closed: boolean): readonly Tag[] {
  return [
    [100, "AcDbPolyline"],
    [90, points.length],
    [70, closed ? 1 : 0],
    ...points.flatMap(([x, y]): readonly Tag[] => [
      [10, x],
      [20, -y],
    ]),
  ];
}

const ANCHOR = { start: 0, middle: 1, end: 2 } as const;

function written({ at: [x, y], words, size, anchor, turn }: Extract<Item, { kind: "text" }>): readonly Tag[] {
  const set = ANCHOR[anchor];
  const place = (code: number): readonly Tag[] => [
    [code, x],
    [code + 10, -y],
    [code + 20, 0],
  ];
  return [
    [100, "AcDbText"],
    ...place(10),
    [40, size * CAPITALS],
    [1, dxfWords(words)],
    [50, turn === 0 ? 0 : -turn],
    ...(set === 0 ? [] : ([[72, set], ...place(11)] as const)),
    [100, "AcDbText"],
  ];
}

/** The named objects that a file of this version has at the least. */
function dictionaries(handles: Handles): readonly Tag[] {
  const [root, groups] = [handles.next(), handles.next()];
  return [
    [0, "SECTION"],
    [2, "OBJECTS"],
    [0, "DICTIONARY"],
    [5, root],
    [330, "0"],
    [100, "AcDbDictionary"],
    [281, 1],
    [3, "ACAD_GROUP"],
    [350, groups],
    [0, "DICTIONARY"],
    [5, groups],
    [330, root],
    [100, "AcDbDictionary"],
    [281, 1],
    [0, "ENDSEC"],
  ];
}
