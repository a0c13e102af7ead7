import type { Cells, ContactProblem, Law, Vector } from "@treewright/core/engine/contact/problem.ts";
import type { SampleSurface } from "@treewright/core/engine/surface.ts";

const at = (values: Float64Array, i: number): number => values[i] ?? Number.NaN;

/** The same problem seen in a mirror: y becomes -y. */
export function mirrored(problem: ContactProblem): ContactProblem {
  const { load, slide, surface, pivot } = problem;
  const flip = ({ x, y, z }: Vector): Vector => ({ x, y: -y, z });
  const flipAll = (values: Float64Array): Float64Array => values.map((value) => -value);
  const flipped: SampleSurface = (n, x, y, out) => {
    surface(n, x, flipAll(y), out);
    for (let i = 0; i < n; i++) {
      out.zy[i] = -at(out.zy, i);
      out.zxy[i] = -at(out.zxy, i);
    }
  };
  return {
    ...problem,
    cells: {
      ...problem.cells,
      y: flipAll(problem.cells.y),
      side: problem.cells.side.map((side) => 1 - side),
    },
    surface: flipped,
    slide: { x: slide.x, y: -slide.y },
    pivot: flip(pivot),
    load: {
      ...load,
      at: flip(load.at),
      pulls: load.pulls.map((pull) => ({ at: flip(pull.at), force: flip(pull.force) })),
    },
  };
}

/** The whole problem turned about the vertical and carried elsewhere: cells, axes, surface and load. */
export function carried(problem: ContactProblem, angle: number, by: Vector): ContactProblem {
  const { load, slide, surface, pivot, cells, across } = problem;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const turn = ({ x, y, z }: Vector): Vector => ({ x: c * x - s * y, y: s * x + c * y, z });
  const carry = (v: Vector): Vector => {
    const t = turn(v);
    return { x: t.x + by.x, y: t.y + by.y, z: t.z + by.z };
  };
  const { x: ax, y: ay } = turn({ x: across.x, y: across.y, z: 0 });
  const { x: sx, y: sy } = turn({ x: slide.x, y: slide.y, z: 0 });
  return {
    ...problem,
    cells: moved(cells, carry),
    surface: turnedSurface(surface, c, s, by),
    slide: { x: sx, y: sy },
    across: { x: ax, y: ay },
    pivot: carry(pivot),
    load: {
      ...load,
      at: carry(load.at),
      pulls: load.pulls.map((pull) => ({ at: carry(pull.at), force: turn(pull.force) })),
    },
  };
}

function moved(cells: Cells, carry: (v: Vector) => Vector): Cells {
  const places = Array.from(cells.x, (x, i) => carry({ x, y: at(cells.y, i), z: at(cells.z, i) }));
  const column = (of: "x" | "y" | "z"): Float64Array => Float64Array.from(places, (place) => place[of]);
  return { ...cells, x: column("x"), y: column("y"), z: column("z") };
}

function turnedSurface(surface: SampleSurface, c: number, s: number, by: Vector): SampleSurface {
  return (n, x, y, out) => {
    const u = Float64Array.from({ length: n }, (_, i) => c * (at(x, i) - by.x) + s * (at(y, i) - by.y));
    const v = Float64Array.from({ length: n }, (_, i) => -s * (at(x, i) - by.x) + c * (at(y, i) - by.y));
    surface(n, u, v, out);
    for (let i = 0; i < n; i++) {
      const [zu, zv, zuu, zuv, zvv] = [
        at(out.zx, i),
        at(out.zy, i),
        at(out.zxx, i),
        at(out.zxy, i),
        at(out.zyy, i),
      ];
      out.z[i] = at(out.z, i) + by.z;
      out.zx[i] = c * zu - s * zv;
      out.zy[i] = s * zu + c * zv;
      out.zxx[i] = c * c * zuu - 2 * c * s * zuv + s * s * zvv;
      out.zxy[i] = c * s * (zuu - zvv) + (c * c - s * s) * zuv;
      out.zyy[i] = s * s * zuu + 2 * c * s * zuv + c * c * zvv;
    }
  };
}

/** All stiffness times `factor`. */
export function stiffer(problem: ContactProblem, factor: number): ContactProblem {
  const { law } = problem;
  const times = (values: Float64Array): Float64Array => values.map((value) => factor * value);
  const scaled: Law =
    law.kind === "linear"
      ? { ...law, stiffness: times(law.stiffness) }
      : { ...law, upperModulus: times(law.upperModulus), lowerModulus: times(law.lowerModulus) };
  return { ...problem, law: scaled };
}

/** All forces times `factor`. */
export function heavier(problem: ContactProblem, factor: number): ContactProblem {
  const { load } = problem;
  const pulls = load.pulls.map(({ at: place, force: f }) => ({
    at: place,
    force: { x: factor * f.x, y: factor * f.y, z: factor * f.z },
  }));
  return { ...problem, load: { ...load, weightN: factor * load.weightN, pulls } };
}
