import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { rectangle } from "../../core/src/engine/frame/index.ts";
import { apart, opened, type TwoArches, twoArches } from "../frame/two-arches.ts";
import { beamDeck, type DeckBeam } from "./beam-deck.ts";

// `npx tsx evidence/second-ways/beams.ts`: two arches and two rails of one stuff, opened at the tips, in our frame and
// in CalculiX's beams (`ccx`, package calculix-ccx of Debian). Both are printed; CalculiX's go into the registry.

const STUFF = { modulusMPa: 13000, poisson: 0.3 } as const;
const SECTIONS = {
  front: { wideMm: 50, thinMm: 14 },
  rear: { wideMm: 50, thinMm: 10 },
  beam: { wideMm: 55, thinMm: 10 },
} as const;
const PAIR_N = 100;

/** The laminated reference tree in one isotropic stuff, whose beams CalculiX can make. */
export function isotropic(refined: number): {
  readonly tree: TwoArches;
  readonly beams: readonly DeckBeam[];
} {
  const section = (one: DeckBeam) =>
    rectangle({
      ...one,
      modulusMPa: STUFF.modulusMPa,
      shearMPa: STUFF.modulusMPa / (2 * (1 + STUFF.poisson)),
    });
  const pieces = { arch: 8 * refined, beam: 8 * refined, arm: 2 * refined };
  const tree = twoArches({
    lengthMm: 400,
    frontR: 55,
    rearR: 90,
    armMm: 110,
    armDeg: 25,
    sagMm: 20,
    faceDeg: [45, 30],
    pieces,
    sections: { front: section(SECTIONS.front), rear: section(SECTIONS.rear), beam: section(SECTIONS.beam) },
  });
  const of = (count: number, one: DeckBeam) => Array.from({ length: count }, () => one);
  const beams = [
    ...of(pieces.arch, SECTIONS.front),
    ...of(pieces.arch, SECTIONS.rear),
    ...of(2 * pieces.beam, SECTIONS.beam),
    ...of(2 * pieces.arm, SECTIONS.front),
  ];
  return { tree, beams };
}

export interface Spreads {
  readonly tipsMm: number;
  readonly frontFeetMm: number;
  readonly middleMm: number;
  readonly rearFeetMm: number;
}

export function ours(tree: TwoArches): Spreads {
  const moved = opened(tree, tree.tips, PAIR_N);
  return spreadsOf(tree, (pair) => apart(moved, pair));
}

function spreadsOf(tree: TwoArches, of: (pair: readonly [number, number]) => number): Spreads {
  const middle = tree.beam[(tree.beam.length - 1) / 2] ?? 0;
  const other = mirror(tree, middle);
  return {
    tipsMm: of(tree.tips),
    frontFeetMm: of(tree.frontFeet),
    middleMm: of([other, middle]),
    rearFeetMm: of(tree.rearFeet),
  };
}

/** The node across the centre plane. */
function mirror({ frame }: TwoArches, node: number): number {
  const [x = 0, y = 0, z = 0] = frame.nodes.slice(3 * node, 3 * node + 3);
  for (let i = 0; i < frame.nodes.length / 3; i++) {
    const [px = 0, py = 0, pz = 0] = frame.nodes.slice(3 * i, 3 * i + 3);
    if (Math.hypot(px - x, py + y, pz - z) < 1e-6) return i;
  }
  throw new Error("no node across");
}

export function theirs({ tree, beams }: ReturnType<typeof isotropic>): Spreads {
  const [low, high] = tree.tips;
  const deck = beamDeck(tree.frame, beams, STUFF, tree.crown, [
    [low, 2, -PAIR_N],
    [high, 2, PAIR_N],
  ]);
  const outward = shiftsAlongY(deck);
  return spreadsOf(tree, ([a, b]) => (outward.get(b) ?? Number.NaN) - (outward.get(a) ?? Number.NaN));
}

function shiftsAlongY(deck: string): Map<number, number> {
  const folder = mkdtempSync(join(tmpdir(), "treewright-ccx-"));
  try {
    writeFileSync(join(folder, "beams.inp"), deck);
    const done = spawnSync("ccx", ["beams"], {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, OMP_NUM_THREADS: "1" },
    });
    if (done.status !== 0) throw new Error(`ccx ended with ${done.status}: ${done.stdout.slice(-400)}`);
    const rows = readFileSync(join(folder, "beams.dat"), "utf8").split("\n");
    const shifts = new Map<number, number>();
    for (const row of rows) {
      const [node, , y, z] = row.trim().split(/\s+/).map(Number);
      if (Number.isInteger(node) && z !== undefined) shifts.set((node ?? 0) - 1, y ?? Number.NaN);
    }
    return shifts;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

if (process.argv[1]?.endsWith("beams.ts"))
  for (const refined of [1, 2, 4]) {
    const made = isotropic(refined);
    const [frame, beams] = [ours(made.tree), theirs(made)];
    for (const what of ["tipsMm", "frontFeetMm", "middleMm", "rearFeetMm"] as const)
      console.log(
        `${refined} x ${what.padEnd(12)} ours ${frame[what].toFixed(5)}  CalculiX ${beams[what].toFixed(5)}  ${(100 * (frame[what] / beams[what] - 1)).toFixed(1)} %`,
      );
  }
