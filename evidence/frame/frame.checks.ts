import {
  endForces,
  frameOf,
  PER_ELEMENT,
  peakStressMPa,
  rectangle,
  type SectionStiffness,
  strainAt,
  type Vector,
} from "../../core/src/engine/frame/index.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { along, arc, chain, clamped, Joined, loads, standing } from "./build.ts";
import { apart, laminated, opened, type Shape, twoArches } from "./two-arches.ts";

const at = (values: Float64Array, i: number): number => values[i] ?? Number.NaN;
const UP: Vector = [0, 1, 0];

/** Kip and inch, as printed. */
function corner(): void {
  const section = { stretching: 3e5, twisting: 5e5, bending2: 3e6, bending3: 3e6 };
  const nodes: Vector[] = [
    [0, 0, 0],
    [-100, 0, 0],
    [0, 0, -100],
    [0, -100, 0],
  ];
  const frame = frameOf(nodes, [
    { from: 1, to: 0, across: UP, section },
    { from: 2, to: 0, across: UP, section },
    { from: 3, to: 0, across: [1, 0, 0], section },
  ]);
  const moved = standing(frame, [1, 2, 3].flatMap(clamped)).under(
    loads(frame, [
      [0, 1, -50],
      [0, 3, -1000],
    ]),
  );
  const [DX, DY, DZ, RX, RY, RZ] = [0, 1, 2, 3, 4, 5].map((i) => at(moved, i));
  published("fr-logan-5.8", { DX: DX ?? 0, DY: DY ?? 0, DZ: DZ ?? 0, RX: RX ?? 0, RY: RY ?? 0, RZ: RZ ?? 0 });
}

/** A good check of how sections lie: other axes give very different numbers. */
function threeMembers(): void {
  const section = { stretching: 3e6, twisting: 1e6, bending2: 6e6, bending3: 3e7 };
  const nodes: Vector[] = [
    [0, 0, 0],
    [120, 0, 0],
    [120, 0, -120],
    [120, -240, -120],
  ];
  const frame = frameOf(nodes, [
    { from: 0, to: 1, across: UP, section },
    { from: 1, to: 2, across: UP, section },
    { from: 2, to: 3, across: [1, 0, 0], section },
  ]);
  const moved = standing(frame, [0, 3].flatMap(clamped)).under(
    loads(frame, [
      [1, 1, -5],
      [1, 3, -1200],
      [2, 2, 40],
    ]),
  );
  published("fr-logan-p5.58", { DY2: at(moved, 7), DZ3: at(moved, 14) });
}

/** A quarter circle in the plane x, held at one end, loaded at the other toward its centre's height and out of its plane. */
function curved(pieces: number): { inPlane: number; outOfPlane: number } {
  const section = rectangle({ wideMm: 0.2, thinMm: 0.1, modulusMPa: 1e7, shearMPa: 1e7 / 2.5 });
  // The wide side lies in the plane of the arc: axis 2 points from the centre.
  const places = arc(0, 4.22, pieces, 0, 90);
  const frame = frameOf(
    places,
    chain(0, places, section, ([, y, z]) => [0, y, z]),
  );
  const stand = standing(frame, clamped(0));
  const tip = (unknown: number) =>
    at(stand.under(loads(frame, [[pieces, unknown, 1]])), 6 * pieces + unknown);
  // At the top of the arc its radius points up.
  return { inPlane: tip(2), outOfPlane: tip(0) };
}

function macneal(): void {
  const { inPlane, outOfPlane } = curved(128);
  published("fr-macneal-curved", { in_plane_radial_in: inPlane, out_of_plane_in: outOfPlane });
  published("fr-macneal-curved-frame-target", { in_plane_radial_in: inPlane, out_of_plane_in: outOfPlane });
}

/** Metres and newtons. */
function portal(): void {
  const section = {
    stretching: 2e11 * 6e-4,
    twisting: 1e3,
    bending2: 2e11 * 7.2e-9,
    bending3: 2e11 * 7.2e-9,
  };
  const nodes: Vector[] = [
    [0, -0.2, -0.3],
    [0, -0.2, 0],
    [0, 0, 0],
    [0, 0.2, 0],
    [0, 0.2, -0.3],
  ];
  const frame = frameOf(
    nodes,
    chain(0, nodes, section, () => [1, 0, 0]),
  );
  const moved = standing(frame, clamped(2)).under(
    loads(frame, [
      [0, 1, -100],
      [4, 1, 100],
    ]),
  );
  published("fr-portal-spread", apart(moved, [0, 4]));
}

const STEEL = (thinMm: number, wideMm: number, stretches = 1): SectionStiffness => {
  const section = rectangle({ wideMm, thinMm, modulusMPa: 205000, shearMPa: 79000 });
  return { ...section, stretching: stretches * section.stretching };
};

/** The arch alone, with and without its stretching. */
function semicircle(): void {
  const pieces = 256;
  const spread = (section: SectionStiffness) => {
    const places = arc(0, 100, pieces);
    const frame = frameOf(
      places,
      chain(0, places, section, () => [1, 0, 0]),
    );
    const moved = standing(frame, clamped(pieces / 2)).under(
      loads(frame, [
        [0, 1, -100],
        [pieces, 1, 100],
      ]),
    );
    return { frame, moved, mm: apart(moved, [0, pieces]) };
  };
  const { frame, moved, mm } = spread(STEEL(6, 40));
  const forces = endForces(frame, moved);
  const crown = {
    bending: Math.abs(at(forces, PER_ELEMENT * (pieces / 2) + 4)),
    strain: strainAt(frame, forces, pieces / 2, 0),
  };
  published("fr-semicircle-spread", {
    spread_mm_with_axial: mm,
    spread_mm_bending_only: spread(STEEL(6, 40, 1e5)).mm,
    crown_moment_Nm: crown.bending / 1000,
    crown_strain: peakStressMPa({ ...crown.strain, stretch: 0 }, 1, 20, 3),
  });
}

/** The linear part: end turn and end deflection of a cantilever under an end couple, at a hundredth of the first case. */
function tipMoment(): void {
  const section = rectangle({ wideMm: 1, thinMm: 1, modulusMPa: 3e7, shearMPa: 1.2e7 });
  const places = along(8, (part) => [12 * part, 0, 0]);
  const frame = frameOf(
    places,
    chain(0, places, section, () => UP),
  );
  const couple = (0.004 * Math.PI * section.bending2) / 12;
  const moved = standing(frame, clamped(0)).under(loads(frame, [[8, 4, -couple]]));
  published("fr-tip-moment-small", { uz_in: at(moved, 6 * 8 + 2), rotation_rad: -at(moved, 6 * 8 + 4) });
}

function regression(pieces: number): { front: number; rear: number } {
  const twist = (b: number, t: number) => ((b * t * t * t) / 3) * (1 - (0.63 * t) / b);
  const arch = { ...STEEL(6, 40), twisting: 79000 * twist(40, 6) };
  const wood = rectangle({ wideMm: 50, thinMm: 12, modulusMPa: 13000, shearMPa: 900 });
  const beam = { ...wood, twisting: 900 * twist(50, 12) };
  const shape: Shape = {
    lengthMm: 400,
    frontR: 60,
    rearR: 90,
    armMm: 0,
    armDeg: 0,
    sagMm: 0,
    faceDeg: [0, 0],
    pieces: { arch: pieces, beam: 16, arm: 0 },
    sections: { front: arch, rear: arch, beam },
  };
  const tree = twoArches(shape);
  const moved = opened(tree, tree.frontFeet, 100);
  return { front: apart(moved, tree.frontFeet), rear: apart(moved, tree.rearFeet) };
}

function archAlone(): number {
  const joined = new Joined();
  joined.add(arc(0, 60, 160), STEEL(6, 40), () => [1, 0, 0]);
  const frame = joined.frame();
  const moved = standing(frame, clamped(80)).under(
    loads(frame, [
      [0, 1, -100],
      [160, 1, 100],
    ]),
  );
  return apart(moved, [0, 160]);
}

function treeRegression(): void {
  const { front, rear } = regression(160);
  published("fr-tree-regression", {
    front_spread_mm: front,
    rear_spread_mm: rear,
    front_arch_alone_mm: archAlone(),
  });
  published("fr-tree-regression-again", { frontSpreadMm: front, rearSpreadMm: rear });
}

/** Tips opened by 10 mm: the beams at 0, 100, 200, 300 and 400 mm. */
function treeLaminated(): void {
  const tree = laminated();
  const pairN = 100;
  const moved = opened(tree, tree.tips, pairN);
  const scale = 10 / apart(moved, tree.tips);
  const high = [0, 8, 16, 24, 32].map((i) => 6 * (tree.beam[i] ?? 0));
  const [first = 0, , , , last = 0] = high.map((i) => at(moved, i + 2));
  published("fr-tree-laminated", {
    railSpreadMm: high.map((i) => 2 * scale * at(moved, i + 1)),
    faceAngleDeg: high.map((i) => (scale * at(moved, i + 3) * 180) / Math.PI),
    profileMm: high.map((i, k) => scale * (at(moved, i + 2) - (first + ((last - first) * k) / 4))),
    tipForceN: scale * pairN,
  });
}

function reciprocity(): void {
  const tree = laminated();
  const rearUnderTips = apart(opened(tree, tree.tips, 100), tree.rearFeet);
  const tipsUnderRear = apart(opened(tree, tree.rearFeet, 100), tree.tips);
  published("fr-reciprocity", { rearUnderTips, tipsUnderRear });
  published("fr-reciprocity-each-other/ratio", rearUnderTips / tipsUnderRear);
}

export const checks: readonly Check[] = [
  { name: "fr-logan-5.8: three members at a corner", run: corner },
  { name: "fr-logan-p5.58: how sections lie", run: threeMembers },
  { name: "fr-macneal-curved: a quarter circle in straight pieces", run: macneal },
  { name: "fr-portal-spread", run: portal },
  { name: "fr-semicircle-spread: spread, crown moment and strain", run: semicircle },
  { name: "fr-tip-moment: its linear part", run: tipMoment },
  { name: "fr-tree-regression: two arches and two rails", run: treeRegression },
  { name: "fr-tree-laminated: spread, face angle and profile along the rail", run: treeLaminated },
  { name: "fr-reciprocity", run: reciprocity },
];
