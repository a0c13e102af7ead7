import type { SampleSurface } from "@treewright/core/engine/surface.ts";
import { analyticBack } from "../contact/back.ts";
import type { SoftLayer } from "./soft-layer.ts";

export type Place = readonly [number, number, number];

/** Bricks along, across and through the layer. */
export interface Fineness {
  readonly along: number;
  readonly across: number;
  readonly through: number;
}

export interface LayerMesh {
  readonly nodes: readonly Place[];
  readonly bricks: readonly (readonly number[])[];
  /** Node numbers of the held base; element numbers under the free top. Both count from 1. */
  readonly base: readonly number[];
  readonly top: readonly number[];
}

/** The layer under the back's surface, as thick along the normal everywhere. */
export function layerMesh(given: SoftLayer, { along, across, through }: Fineness): LayerMesh {
  const { panel, meshed, layer } = given;
  const surface = analyticBack(given.back);
  const nodes: Place[] = [];
  const base: number[] = [];
  for (let i = 0; i <= along; i++) {
    const x = -meshed.pastMm + ((panel.lengthMm + 2 * meshed.pastMm) * i) / along;
    for (let j = 0; j <= across; j++) {
      const y = meshed.fromYMm + ((meshed.toYMm - meshed.fromYMm) * j) / across;
      const { z, normal } = placeOn(surface, x, y);
      base.push(nodes.length + 1);
      for (let l = 0; l <= through; l++) {
        const deep = layer.thicknessMm * (1 - l / through);
        nodes.push([x - deep * normal[0], y - deep * normal[1], z - deep * normal[2]]);
      }
    }
  }
  const node = (i: number, j: number, l: number): number => (i * (across + 1) + j) * (through + 1) + l + 1;
  const bricks: number[][] = [];
  const top: number[] = [];
  for (let i = 0; i < along; i++) {
    for (let j = 0; j < across; j++) {
      for (let l = 0; l < through; l++) {
        const level = (at: number): number[] => [
          node(i, j, at),
          node(i + 1, j, at),
          node(i + 1, j + 1, at),
          node(i, j + 1, at),
        ];
        bricks.push([...level(l), ...level(l + 1)]);
      }
      top.push(bricks.length);
    }
  }
  return { nodes, bricks, base, top };
}

function placeOn(surface: SampleSurface, x: number, y: number): { z: number; normal: Place } {
  const one = (): Float64Array => new Float64Array(1);
  const out = { z: one(), zx: one(), zy: one(), zxx: one(), zxy: one(), zyy: one() };
  surface(1, Float64Array.of(x), Float64Array.of(y), out);
  const [z = 0, zx = 0, zy = 0] = [out.z[0], out.zx[0], out.zy[0]];
  const long = Math.sqrt(1 + zx * zx + zy * zy);
  return { z, normal: [-zx / long, -zy / long, 1 / long] };
}
