import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Deck, deckOf, type PanelPose } from "./deck.ts";
import type { Fineness } from "./layer-mesh.ts";
import type { OnNodes } from "./on-nodes.ts";
import type { SoftLayer } from "./soft-layer.ts";

/** What the elements say at one pose: force and moment left over (both panels), and the panel's normal forces. */
export interface AtPose {
  readonly upN: number;
  /** About the body's turning point, head up positive, with the load: zero at rest, N mm. */
  readonly momentNmm: number;
  readonly forces: OnNodes;
  readonly ms: number;
  readonly elements: number;
}

/** Runs CalculiX (`ccx`, package calculix-ccx of Debian) on the deck of one pose, in a folder of its own. */
export function solveAt(given: SoftLayer, pose: PanelPose, fineness: Fineness): AtPose {
  const deck = deckOf(given, pose, fineness);
  const start = performance.now();
  const pushed = reactions(deck);
  const ms = performance.now() - start;
  const { panel, weightN, loadAt } = given;
  const [c, s] = [Math.cos(pose.pitchRad), Math.sin(pose.pitchRad)];
  let upN = 0;
  let momentNmm = ((loadAt.x - panel.lengthMm / 2) * c + loadAt.z * s) * weightN;
  const forces = new Float64Array(deck.facePlaces.length);
  deck.facePlaces.forEach(([x, , z], at) => {
    const [fx, fy, fz] = pushed[at] ?? [0, 0, 0];
    upN += 2 * fz;
    momentNmm += 2 * ((z - pose.heaveMm) * fx - (x - panel.lengthMm / 2) * fz);
    forces[at] = Math.sqrt(fx * fx + fy * fy + fz * fz);
  });
  return { upN, momentNmm, forces, ms, elements: deck.elements };
}

/** Force of the layer on each node of the panel's face: the reaction that holds it, turned round. */
function reactions(deck: Deck): [number, number, number][] {
  const folder = mkdtempSync(join(tmpdir(), "treewright-ccx-"));
  try {
    writeFileSync(join(folder, "layer.inp"), deck.text);
    const done = spawnSync("ccx", ["layer"], {
      cwd: folder,
      encoding: "utf8",
      // One thread: the order of sums, and so the last digits, must not hang on the machine.
      env: { ...process.env, OMP_NUM_THREADS: "1" },
    });
    if (done.status !== 0) throw new Error(`ccx ended with ${done.status}: ${done.stdout.slice(-400)}`);
    const blocks = readFileSync(join(folder, "layer.dat"), "utf8").split("forces (fx,fy,fz)");
    const last = blocks.at(-1) ?? "";
    if (!/time\s+0\.1000000E\+01/.test(last)) throw new Error("ccx did not reach the end of its step");
    const found: [number, number, number][] = [];
    for (const line of last.split("\n")) {
      const [node, fx, fy, fz] = line.trim().split(/\s+/).map(Number);
      if (node === undefined || fx === undefined || fy === undefined || fz === undefined) continue;
      if (Number.isInteger(node)) found[node - deck.firstFaceNode] = [-fx, -fy, -fz];
    }
    return found;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export interface AtRest extends AtPose {
  readonly pose: PanelPose;
  readonly runs: number;
}

/** Newton's rule with one tangent by differences, until force and moment are within `near` of the load. */
export function restOfElements(given: SoftLayer, start: PanelPose, fineness: Fineness, near = 2e-4): AtRest {
  const { weightN, panel } = given;
  const at = (pose: PanelPose): AtPose => solveAt(given, pose, fineness);
  let [pose, found] = [start, at(start)];
  const [down, turned] = [
    at({ ...pose, heaveMm: pose.heaveMm - 0.2 }),
    at({ ...pose, pitchRad: pose.pitchRad + 0.002 }),
  ];
  const a = (down.upN - found.upN) / -0.2;
  const c = (down.momentNmm - found.momentNmm) / -0.2;
  const b = (turned.upN - found.upN) / 0.002;
  const d = (turned.momentNmm - found.momentNmm) / 0.002;
  for (let runs = 3; runs < 10; runs++) {
    const [force, moment] = [weightN - found.upN, -found.momentNmm];
    if (Math.abs(force) < near * weightN && Math.abs(moment) < near * weightN * panel.lengthMm)
      return { ...found, pose, runs };
    const det = a * d - b * c;
    pose = {
      heaveMm: pose.heaveMm + (force * d - moment * b) / det,
      pitchRad: pose.pitchRad + (a * moment - c * force) / det,
    };
    found = at(pose);
  }
  throw new Error(`${given.id}: the elements found no rest`);
}
