import { conduct, type Face, steadyFaces } from "@treewright/core/engine/heat/index.ts";
import { z } from "zod";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { reference } from "../published/registry.ts";

const stuff = { k: z.number(), rho: z.number(), cp: z.number(), thicknessM: z.number(), fluxWm2: z.number() };
const slabInputs = z.object({ ...stuff, tS: z.array(z.number()) });
const deepInputs = z.object({ ...stuff, tS: z.number() });
const heldInputs = z.object({ k: z.number(), thicknessM: z.array(z.number()), hWm2K: z.array(z.number()) });

const INSULATED: Face = { kind: "flux", fluxWm2: 0 };

function slabOf(read: { k: number; rho: number; cp: number; thicknessM: number }) {
  const { k, rho, cp, thicknessM } = read;
  return { thicknessMm: thicknessM * 1000, conductivityWmK: k, densityKgM3: rho, heatJKgK: cp };
}

function fluxSlab(): void {
  const read = slabInputs.parse(reference("ht-slab-6").inputs);
  const front: Face = { kind: "flux", fluxWm2: read.fluxWm2 };
  const heating = { slab: slabOf(read), startC: 20, front, back: INSULATED, cells: 80, stepS: 0.5 };
  const found = conduct(heating, read.tS);
  published("ht-slab-6", {
    surfaceC: found.map((one) => one.frontC),
    coreC: found.map((one) => one.coreC),
    backC: found.map((one) => one.backC),
  });
}

function deepSlab(): void {
  const read = deepInputs.parse(reference("ht-semi-infinite").inputs);
  const front: Face = { kind: "flux", fluxWm2: read.fluxWm2 };
  const heating = { slab: slabOf(read), startC: 0, front, back: INSULATED, cells: 400, stepS: 0.1 };
  published("ht-semi-infinite", { riseK: conduct(heating, [read.tS])[0]?.frontC ?? Number.NaN });
}

function heldSteady(): void {
  const { k, thicknessM, hWm2K } = heldInputs.parse(reference("ht-steady-held").inputs);
  const backC = thicknessM.map((thickness) =>
    hWm2K.map((filmWm2K) => {
      const slab = { thicknessMm: thickness * 1000, conductivityWmK: k };
      const back: Face = { kind: "film", filmWm2K, airC: 20 };
      return steadyFaces(slab, { kind: "held", temperatureC: 215 }, back)?.backC ?? Number.NaN;
    }),
  );
  published("ht-steady-held", { backC });
}

export const checks: readonly Check[] = [
  { name: "ht-slab-6", run: fluxSlab },
  { name: "ht-semi-infinite", run: deepSlab },
  { name: "ht-steady-held", run: heldSteady },
];
