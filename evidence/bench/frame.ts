import { type Frame, held, loadsOf } from "@treewright/core/engine/frame/index.ts";
import { frameFigures } from "@treewright/core/reach/frame/figures.ts";
import { travelOf } from "@treewright/core/reach/frame/travel.ts";
import { treeAt } from "@treewright/core/reach/frame/tree-at.ts";
import { beamsOf, type TreeBeams } from "@treewright/core/reach/frame/tree-frame.ts";
import { clamped } from "../frame/build.ts";
import { beliefOf } from "../frame/moved.ts";
import { twoArches } from "../frame/two-arches.ts";
import { straightTree } from "../reach/straight-tree.ts";

// `npx tsx evidence/bench/frame.ts`: times in ms, the best and the middle of many runs (the machine may be shared).
// Figures to compare, not tests. Aims: a frame of 200 elements 5; a tree with both its hinges 0.3.

function timed(what: string, runs: number, work: () => void): void {
  const ms = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const at = (part: number) => (ms[Math.floor(part * (runs - 1))] ?? Number.NaN).toFixed(3);
  console.log(`${what.padEnd(56)} best ${at(0)}  middle ${at(0.5)}`);
}

const section = { stretching: 7e6, twisting: 1.5e7, bending2: 6e7, bending3: 1.8e9 };
const wide = twoArches({
  lengthMm: 400,
  frontR: 55,
  rearR: 90,
  armMm: 110,
  armDeg: 25,
  sagMm: 20,
  faceDeg: [45, 30],
  pieces: { arch: 32, beam: 64, arm: 4 },
  sections: { front: section, rear: section, beam: section },
});

function solved(frame: Frame, crown: number): void {
  const stands = held(frame, clamped(crown));
  if (!stands.ok) throw new Error(`free at node ${stands.node}`);
  for (const element of [0, 1])
    stands.under(loadsOf(frame, [{ element, at: 0.5, turn: [1, 0, 0], shift: [0, 0, 0] }]));
}

const tree = straightTree();
const sections = beliefOf().at({});
function beams(): TreeBeams {
  const found = beamsOf(tree, sections);
  if (!("held" in found)) throw new Error(`free at node ${found.node}`);
  return found;
}

const press = { changeMm: 10, halfTurnRad: undefined };
timed(`frame of ${wide.frame.ends.length / 2} elements, two unit answers`, 200, () =>
  solved(wide.frame, wide.crown),
);
timed("a tree: places, frame, factor", 2000, () => void beams());
timed("a tree, and both its hinges", 2000, () => void travelOf(beams(), 25));
const travel = travelOf(beams(), 25);
timed("a setting of it", 2000, () => void treeAt(travel, press));
timed("a setting's figures, locked-in state among them", 2000, () => void frameFigures(travel, press));
