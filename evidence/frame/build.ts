import {
  type Beam,
  DIRECTIONS,
  type Frame,
  frameOf,
  type Held,
  held,
  PER_NODE,
  type SectionStiffness,
  type Support,
  type Vector,
} from "../../core/src/engine/frame/index.ts";

/** All six at one node. */
export const clamped = (node: number): Support[] => DIRECTIONS.map((direction) => ({ node, direction }));

/** A frame that stands; an error where it can move. */
export function standing(frame: Frame, supports: readonly Support[]): Held {
  const found = held(frame, supports);
  if (!found.ok) throw new Error(`free at node ${found.node}, ${found.direction}`);
  return found;
}

/** Loads at nodes: [node, unknown 0 to 5, value]. */
export function loads(frame: Frame, at: readonly (readonly [number, number, number])[]): Float64Array {
  const all = new Float64Array(2 * frame.nodes.length);
  for (const [node, unknown, value] of at) all[PER_NODE * node + unknown] = value;
  return all;
}

/** Beams from each node to the next, of one section; axis 2 as told at the middle of each. */
export function chain(
  from: number,
  places: readonly Vector[],
  section: SectionStiffness,
  across: (middle: Vector, part: number) => Vector,
): Beam[] {
  return places.slice(1).map((to, i) => {
    const start = places[i] ?? to;
    const middle: Vector = [(start[0] + to[0]) / 2, (start[1] + to[1]) / 2, (start[2] + to[2]) / 2];
    return {
      from: from + i,
      to: from + i + 1,
      section,
      across: across(middle, (i + 0.5) / (places.length - 1)),
    };
  });
}

/** Puts chains together that share places: nodes within 1e-9 of each other are one. Number the nodes when all are in. */
export class Joined {
  private places: Vector[] = [];
  private beams: Beam[] = [];

  /** The node at a place, made if it is new. */
  node(place: Vector): number {
    const found = this.places.findIndex((one) =>
      one.every((value, i) => Math.abs(value - (place[i] ?? 0)) < 1e-9),
    );
    return found >= 0 ? found : this.places.push(place) - 1;
  }
  add(
    places: readonly Vector[],
    section: SectionStiffness,
    across: (middle: Vector, part: number) => Vector,
  ): void {
    const at = places.map((place) => this.node(place));
    for (const beam of chain(0, places, section, across))
      this.beams.push({ ...beam, from: at[beam.from] ?? 0, to: at[beam.to] ?? 0 });
  }
  /** Numbers the nodes by their distance from one of them, counted in beams, so that the band is narrow. */
  number(first: Vector): void {
    const order = [this.node(first)];
    const seen = new Set(order);
    const beside = this.places.map(() => new Set<number>());
    for (const { from, to } of this.beams) {
      beside[from]?.add(to);
      beside[to]?.add(from);
    }
    for (let i = 0; i < order.length; i++)
      for (const next of beside[order[i] ?? 0] ?? [])
        if (!seen.has(next)) {
          seen.add(next);
          order.push(next);
        }
    const numbered = new Map(order.map((old, now) => [old, now]));
    const now = (old: number) => numbered.get(old) ?? 0;
    this.places = order.map((old) => this.places[old] ?? [0, 0, 0]);
    this.beams = this.beams.map((beam) => ({ ...beam, from: now(beam.from), to: now(beam.to) }));
  }
  frame(): Frame {
    return frameOf(this.places, this.beams);
  }
}

export const along = (n: number, at: (part: number) => Vector): Vector[] =>
  Array.from({ length: n + 1 }, (_, i) => at(i / n));

/** An arc in the plane x: centre at height 0, from one angle to another, counted from -y over the top. */
export const arc = (x: number, radius: number, n: number, fromDeg = 0, toDeg = 180): Vector[] =>
  along(n, (part) => {
    const angle = ((fromDeg + (toDeg - fromDeg) * part) * Math.PI) / 180;
    return [x, -radius * Math.cos(angle), radius * Math.sin(angle)];
  });
