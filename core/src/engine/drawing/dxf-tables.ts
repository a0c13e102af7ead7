import type { Handles, Tag } from "./dxf-tags.ts";
import { LAYERS } from "./layered.ts";

/** Number of black or white in the index of colours, and two greys: a layer is told by its name, never by its colour. */
const COLOUR: { readonly [L in (typeof LAYERS)[number]]: number } = { cut: 7, mark: 8, text: 9 };
/** Name of the drawing's own space and of the sheet's, which every file has. */
const SPACES = ["*Model_Space", "*Paper_Space"] as const;

/** Where entities and blocks belong. */
export interface Tables {
  readonly tags: readonly Tag[];
  /** Handle of each space's record. */
  readonly model: string;
  readonly paper: string;
}

/** All tables that a file of version AC1015 has; those that are not used are empty. */
export function tablesOf(handles: Handles): Tables {
  const [model, paper] = [handles.next(), handles.next()];
  const spaces = SPACES.map((name, i) => ({
    name,
    handle: i === 0 ? model : paper,
    tags: [[340, "0"]] as Tag[],
  }));
  const tags: readonly Tag[] = [
    [0, "SECTION"],
    [2, "TABLES"],
    ...table(handles, "VPORT", "", []),
    ...table(
      handles,
      "LTYPE",
      "AcDbLinetypeTableRecord",
      ["ByBlock", "ByLayer", "Continuous"].map((name) => ({ name, tags: SOLID })),
    ),
    ...table(
      handles,
      "LAYER",
      "AcDbLayerTableRecord",
      ["0", ...LAYERS].map((name) => ({ name, tags: layer(name) })),
    ),
    ...table(handles, "STYLE", "AcDbTextStyleTableRecord", [{ name: "Standard", tags: PLAIN_TYPE }]),
    ...table(handles, "VIEW", "", []),
    ...table(handles, "UCS", "", []),
    ...table(handles, "APPID", "AcDbRegAppTableRecord", [{ name: "ACAD", tags: [[70, 0]] }]),
    ...table(handles, "DIMSTYLE", "", []),
    ...table(handles, "BLOCK_RECORD", "AcDbBlockTableRecord", spaces),
    [0, "ENDSEC"],
  ];
  return { tags, model, paper };
}

/** An unbroken line: no words, no pieces, no length. */
const SOLID: readonly Tag[] = [
  [70, 0],
  [3, ""],
  [72, 65],
  [73, 0],
  [40, 0],
];

const PLAIN_TYPE: readonly Tag[] = [
  [70, 0],
  [40, 0],
  [41, 1],
  [50, 0],
  [71, 0],
  [42, 2.5],
  [3, "txt"],
  [4, ""],
];

function layer(name: string): readonly Tag[] {
  const known = LAYERS.find((one) => one === name);
  return [
    [70, 0],
    [62, known ? COLOUR[known] : 7],
    [6, "Continuous"],
  ];
}

interface Entry {
  readonly name: string;
  readonly handle?: string;
  readonly tags: readonly Tag[];
}

function table(handles: Handles, kind: string, record: string, entries: readonly Entry[]): readonly Tag[] {
  const owner = handles.next();
  const written = entries.flatMap(({ name, handle, tags }): readonly Tag[] => [
    [0, kind],
    [5, handle ?? handles.next()],
    [330, owner],
    [100, "AcDbSymbolTableRecord"],
    [100, record],
    [2, name],
    ...tags,
  ]);
  const styles: readonly Tag[] = kind === "DIMSTYLE" ? [[100, "AcDbDimStyleTable"]] : [];
  return [
    [0, "TABLE"],
    [2, kind],
    [5, owner],
    [330, "0"],
    [100, "AcDbSymbolTable"],
    [70, entries.length],
    ...styles,
    ...written,
    [0, "ENDTAB"],
  ];
}

/** The two spaces as blocks without anything in them, as a file of this version has them. */
export function blocksOf(handles: Handles, { model, paper }: Tables): readonly Tag[] {
  const blocks = SPACES.flatMap((name, i): readonly Tag[] => {
    const belongs: readonly Tag[] = [
      [330, i === 0 ? model : paper],
      [100, "AcDbEntity"],
      ...(i === 0 ? [] : ([[67, 1]] as const)),
      [8, "0"],
    ];
    return [
      [0, "BLOCK"],
      [5, handles.next()],
      ...belongs,
      [100, "AcDbBlockBegin"],
      [2, name],
      [70, 0],
      [10, 0],
      [20, 0],
      [30, 0],
      [3, name],
      [1, ""],
      [0, "ENDBLK"],
      [5, handles.next()],
      ...belongs,
      [100, "AcDbBlockEnd"],
    ];
  });
  return [[0, "SECTION"], [2, "BLOCKS"], ...blocks, [0, "ENDSEC"]];
}
