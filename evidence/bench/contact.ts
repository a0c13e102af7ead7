import { frameOf } from "@treewright/core/engine/contact/frame.ts";
import { readSurface } from "@treewright/core/engine/contact/gap.ts";
import { firstStiffness } from "@treewright/core/engine/contact/law.ts";
import { assemble } from "@treewright/core/engine/contact/loads.ts";
import { type Passed, poseAhead } from "@treewright/core/engine/contact/pose-ahead.ts";
import type { ContactProblem, Pose } from "@treewright/core/engine/contact/problem.ts";
import { type Room, roomFor } from "@treewright/core/engine/contact/room.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import { fitGrid, type Grid, gridSurface, type SampleSurface } from "@treewright/core/engine/surface.ts";
import { analyticBack } from "../contact/back.ts";
import { type CaseInputs, inputsOf, problemOf } from "../contact/model-case.ts";

// `npx tsx evidence/bench/contact.ts`: times in ms, the best of many runs (the machine may be shared), on the base case with a spline back.
// Figures to compare, not tests. Aims on 10,000 cells: assembly 0.6, equilibrium 4; sweep of 41 on 2,160 cells 50.

const base = inputsOf("ct-horse-S-20");
const back = splineOf(base);
/** 2,160 cells on both sides together. */
const SWEPT = { nx: 45, nv: 24 };

function splineOf(inputs: CaseInputs): SampleSurface {
  const grid: Grid = { x0: -20, dx: 8, nx: 60, y0: -200, dy: 7, ny: 58 };
  const n = grid.nx * grid.ny;
  const numbers = (): Float64Array => new Float64Array(n);
  const out = { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() };
  const x = numbers().map((_, k) => grid.x0 + Math.floor(k / grid.ny) * grid.dx);
  const y = numbers().map((_, k) => grid.y0 + (k % grid.ny) * grid.dy);
  analyticBack(inputs.back)(n, x, y, out);
  return gridSurface({ ...grid, coefficients: fitGrid(out.z, grid.nx, grid.ny) });
}

function problemWith(inputs: CaseInputs): ContactProblem {
  return { ...problemOf(inputs), surface: back };
}

function bestMs(runs: number, work: () => void): string {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best.toFixed(3);
}

function poseOf(problem: ContactProblem, room: Room, start?: Pose): Pose {
  const rest = settle(problem, { room, start });
  if (!rest.ok) throw new Error(rest.why);
  return rest.pose;
}

function line(nx: number, nv: number): void {
  const problem = problemWith({ ...base, mesh: { nx, nv } });
  const { cells, pivot, surface } = problem;
  const room = roomFor(cells.n);
  const pose = poseOf(problem, room);
  firstStiffness(problem.law, cells.n, room.stiffness);
  frameOf(problem, Float64Array.of(pose.heave, pose.pitch, pose.roll), room.frame);
  readSurface(cells, pivot, surface, room, 1);
  const cellText = String(cells.n).padStart(6);
  const read = bestMs(60, () => readSurface(cells, pivot, surface, room, 1));
  const sums = bestMs(60, () => assemble(problem, room, 1));
  const cold = bestMs(60, () => poseOf(problem, room));
  const warm = bestMs(60, () => poseOf(problem, room, { ...pose, heave: pose.heave + 0.5 }));
  console.log(
    `${cellText} cells: surface ${read}  assembly ${sums}  equilibrium ${cold}  from near by ${warm}`,
  );
}

function sweep(): void {
  const settings = Array.from({ length: 41 }, (_, i) => i - 20);
  const problems = settings.map((spreadMm) =>
    problemWith({ ...base, mesh: SWEPT, head: { ...base.head, spreadMm } }),
  );
  const room = roomFor(problems[0]?.cells.n ?? 0);
  const time = bestMs(15, () => {
    const passed: Passed[] = [];
    problems.forEach((problem, at) => {
      passed.push({ at, pose: poseOf(problem, room, poseAhead(passed, at)) });
    });
  });
  console.log(`sweep of 41 settings on 2,160 cells: ${time}`);
}

for (const [nx, nv] of [
  [45, 24],
  [90, 24],
  [180, 24],
  [156, 32],
  [180, 56],
  [360, 56],
] as const)
  line(nx, nv);
sweep();
