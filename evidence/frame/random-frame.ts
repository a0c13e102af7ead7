import { type Beam, type Frame, frameOf, type Vector } from "../../core/src/engine/frame/index.ts";

/** Numbers from -1 to 1 out of a seed, for tests only. */
export function numbers(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (2 * state) / 4294967296 - 1;
  };
}

/** A chain through space with a few cross pieces, each with its own section, lying its own way. */
export function randomFrame(seed: number, count = 9): Frame {
  const draw = numbers(seed);
  const nodes = Array.from(
    { length: count },
    (_, i): Vector => [80 * i + 30 * draw(), 60 * draw(), 60 * draw()],
  );
  const section = () => ({
    stretching: 4e5 * (2 + draw()),
    twisting: 3e6 * (2 + draw()),
    bending2: 5e6 * (2 + draw()),
    bending3: 9e7 * (2 + draw()),
  });
  const across = (): Vector => [0.2 * draw(), draw(), 1.5 + draw()];
  const beams = nodes
    .slice(1)
    .map((_, i): Beam => ({ from: i, to: i + 1, across: across(), section: section() }));
  const cross = [3, 5].map((to): Beam => ({ from: to, to: to - 3, across: across(), section: section() }));
  return frameOf(nodes, [...beams, ...cross]);
}

/** Each node moved as one stiff body: shifted, and turned by a small turn about the origin. */
export function asOneBody({ nodes }: Frame, shift: Vector, turn: Vector): Float64Array {
  const moved = new Float64Array(2 * nodes.length);
  for (let i = 0; i < nodes.length / 3; i++) {
    const [x = 0, y = 0, z = 0] = nodes.slice(3 * i, 3 * i + 3);
    moved[6 * i] = shift[0] + turn[1] * z - turn[2] * y;
    moved[6 * i + 1] = shift[1] + turn[2] * x - turn[0] * z;
    moved[6 * i + 2] = shift[2] + turn[0] * y - turn[1] * x;
    moved.set(turn, 6 * i + 3);
  }
  return moved;
}
