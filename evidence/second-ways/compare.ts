import { createHash } from "node:crypto";
import { z } from "zod";
import { reference } from "../published/registry.ts";
import { deckOf } from "./deck.ts";
import type { AtRest } from "./finite-elements.ts";
import type { Fineness } from "./layer-mesh.ts";
import { blocksOf, type OnNodes } from "./on-nodes.ts";
import { SOFT_LAYERS, type SoftLayer } from "./soft-layer.ts";
import { onSprings } from "./springs.ts";

/** Bricks along, across and through the layer for the frozen values, and for the run that is part of every test. */
export const FINE: Fineness = { along: 48, across: 24, through: 4 };
export const COARSE: Fineness = { along: 30, across: 16, through: 3 };
/** Blocks of the map: 24 by about 22 mm, 5 cm2, as large as a sensor's figures are averaged over. */
export const ROWS = 18;
export const COLUMNS = 5;

const frozen = z.object({
  deckSha256: z.string(),
  heaveMm: z.number(),
  pitchRad: z.number(),
  blocksN: z.array(z.number()),
});
export type Frozen = z.infer<typeof frozen>;

export const frozenOf = (id: string): Frozen => frozen.parse(reference(id).inputs);

export function layerCase(id: string): SoftLayer {
  const found = SOFT_LAYERS.find((one) => one.id === id);
  if (!found) throw new Error(`no soft layer is called ${id}`);
  return found;
}

/** Force on each third of one panel, N. */
export function thirdsN(map: OnNodes): { front: number; middle: number; rear: number } {
  const [front = 0, middle = 0, rear = 0] = blocksOf(map, 3, 1);
  return { front, middle, rear };
}

export const deckHash = (given: SoftLayer, pose: { heaveMm: number; pitchRad: number }): string =>
  createHash("sha256")
    .update(deckOf(given, pose, FINE).text)
    .digest("hex");

/** A record for the registry: the elements' thirds, and what they were computed from. */
export function recordOf(given: SoftLayer, rest: AtRest, program: string) {
  // As many digits as a rerun gives again; the deck is made from these.
  const pose = { heaveMm: digits(rest.pose.heaveMm), pitchRad: digits(rest.pose.pitchRad) };
  const thirds = Object.entries(thirdsN(rest.forces));
  return {
    id: given.id,
    topic: "rigid panel on a soft layer, 3D finite elements",
    source: `${program}, bricks of 8 nodes, contact surface to surface; deck written by evidence/second-ways/deck.ts`,
    status: "computed",
    note: "force on each third of one panel, N; bed of springs within 3 %",
    inputs: {
      deckSha256: deckHash(given, pose),
      ...pose,
      blocksN: blocksOf(rest.forces, ROWS, COLUMNS).map((force) => Number(force.toFixed(4))),
    },
    values: Object.fromEntries(
      thirds.map(([third, force]) => [
        `thirdsN.${third}`,
        { expected: digits(force), tolerance: { kind: "relative", value: 0.03 } },
      ]),
    ),
  };
}

const digits = (value: number): number => Number(value.toPrecision(7));

/** How far the springs' map is from the elements', over the blocks inside the contact: rms and largest, relative. */
export function mapApart(given: SoftLayer, { blocksN }: Frozen): { rms: number; most: number } {
  const springs = blocksOf(onSprings(given).forces, ROWS, COLUMNS);
  const apart: number[] = [];
  for (let row = 2; row < ROWS - 2; row++) {
    for (let column = 1; column < COLUMNS - 1; column++) {
      const at = row * COLUMNS + column;
      apart.push((springs[at] ?? 0) / (blocksN[at] ?? Number.NaN) - 1);
    }
  }
  const rms = Math.sqrt(apart.reduce((sum, one) => sum + one * one, 0) / apart.length);
  return { rms, most: Math.max(...apart.map(Math.abs)) };
}
