/** A point or a direction. */
export type Vector = readonly [x: number, y: number, z: number];

/**
 * Straight beams between nodes, as typed arrays, mm and N. A curve is a chain of them. The order of the nodes is the
 * caller's, and makes the band of the matrix: nodes that an element joins should lie near each other in it.
 */
export interface Frame {
  /** Places of the nodes, three each. */
  readonly nodes: Float64Array;
  /** Nodes of the elements, two each. */
  readonly ends: Int32Array;
  /** Direction of axis 2 of each element, three each, of any length and not along the element; made square to it. */
  readonly across: Float64Array;
  /** Stiffness of each element's section: stretching E A, twisting G J, bending about axes 2 and 3 E I, four each. */
  readonly stiffness: Float64Array;
}

/** Displacements along x, y, z and turns about them, at each node. */
export const PER_NODE = 6;
export const PER_SECTION = 4;
export type Direction = "x" | "y" | "z" | "turn about x" | "turn about y" | "turn about z";
export const DIRECTIONS: readonly Direction[] = [
  "x",
  "y",
  "z",
  "turn about x",
  "turn about y",
  "turn about z",
];

/** A displacement or a turn that is held at zero. */
export interface Support {
  readonly node: number;
  readonly direction: Direction;
}

export const nodesOf = (frame: Frame): number => frame.nodes.length / 3;
export const elementsOf = (frame: Frame): number => frame.ends.length / 2;
export const unknownOf = ({ node, direction }: Support): number =>
  node * PER_NODE + DIRECTIONS.indexOf(direction);

/** One element of a frame that is written down by hand. */
export interface Beam {
  readonly from: number;
  readonly to: number;
  readonly across: Vector;
  readonly section: SectionStiffness;
}

/** What a section sets against stretching, twisting and bending about axis 2 and axis 3; N and N mm2. */
export interface SectionStiffness {
  readonly stretching: number;
  readonly twisting: number;
  readonly bending2: number;
  readonly bending3: number;
}

/** A frame from a list of nodes and beams. */
export function frameOf(nodes: readonly Vector[], beams: readonly Beam[]): Frame {
  return {
    nodes: Float64Array.from(nodes.flat()),
    ends: Int32Array.from(beams.flatMap(({ from, to }) => [from, to])),
    across: Float64Array.from(beams.flatMap(({ across }) => across)),
    stiffness: Float64Array.from(
      beams.flatMap(({ section: { stretching, twisting, bending2, bending3 } }) => [
        stretching,
        twisting,
        bending2,
        bending3,
      ]),
    ),
  };
}
