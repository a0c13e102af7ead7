import { freeAtMm, heldAtMm, layersAt } from "../engine/bending/glance.ts";
import {
  type Arch,
  type ArchState,
  elasticFlexibility,
  type Half,
  halfTurnRad,
  loadTo,
  passTo,
  tipTravelMm,
} from "../engine/bending/index.ts";
import { LAYER } from "../reach/bend/head-arch.ts";
import { type HalfCurve, onSteps, REACH_MM } from "./half-curve.ts";

/** Which way a job goes: 1 opens the head, -1 closes it. */
export type Way = 1 | -1;

/** Rise from one force of a table to the next: fine enough for straight lines between (derived: 0.05 mm). */
const FORCE_STEP = 1.06;
const FORCES_MOST = 120;
/** First force of a table: what opens both halves this far, mm, along the elastic line. */
const FIRST_MM = 1;
/** The pass after which a later one is looked at: held where a first keeps this much of both halves, mm. */
const SLIPPED_BY_MM = 3;

interface Walk {
  readonly heldMm: number[];
  readonly freeMm: number[];
  readonly forceN: number[];
  readonly stretch: number[];
}

/**
 * Tables of one half, from a state on. Both halves alike here: what sets them apart is the belief's. undefined where the
 * head gives way before it comes anywhere.
 */
export function pressCurve(half: Half, before: ArchState, way: Way, upperMm: number): HalfCurve | undefined {
  const arch: Arch = [half, half];
  const restMm = tipTravelMm(half, before[0]);
  const first = walk(arch, before, way, restMm, 0);
  if (first === undefined) return undefined;
  const keptFirstMm = onSteps(first.heldMm, first.freeMm);
  const slippedAt = first.heldMm[first.freeMm.findIndex((kept) => 2 * kept >= SLIPPED_BY_MM)];
  const pass = slippedAt === undefined ? undefined : passTo(arch, before, 2 * (restMm + way * slippedAt));
  const later = pass && walk(arch, pass.free, way, restMm, slippedAt ?? 0);
  const state = pass?.held ?? loadTo(arch, before, way * (first.forceN.at(-2) ?? 0));
  const tipMm = tipTravelMm(half, state[0]) - restMm;
  const turnRad = halfTurnRad(half, state[0]) - halfTurnRad(half, before[0]);
  const upper = tipTravelMm(half, state[0], upperMm) - tipTravelMm(half, before[0], upperMm);
  return {
    forceN: onSteps(first.heldMm, first.forceN),
    keptFirstMm,
    keptLaterMm: later
      ? laterOf(keptFirstMm, onSteps(later.heldMm, later.freeMm), slippedAt ?? 0)
      : keptFirstMm,
    stretch: onSteps(first.heldMm, first.stretch),
    turnPerMm: tipMm === 0 ? 0 : turnRad / tipMm,
    upperPerMm: tipMm === 0 ? 0 : upper / tipMm,
  };
}

function walk(arch: Arch, from: ArchState, way: Way, restMm: number, beyondMm: number): Walk | undefined {
  const found: Walk = { heldMm: [], freeMm: [], forceN: [], stretch: [] };
  if (beyondMm === 0) for (const list of Object.values(found)) list.push(0);
  let force = FIRST_MM / elasticFlexibility(arch);
  for (let i = 0; i < FORCES_MOST; i++, force *= FORCE_STEP) {
    const [held, free] = [heldAtMm(arch, from, way * force), freeAtMm(arch, from, way * force)];
    if (held === undefined || free === undefined) break;
    const heldMm = way * (held / 2 - restMm);
    if (!(heldMm > (found.heldMm.at(-1) ?? beyondMm))) continue;
    const stretch = layersAt(arch, from, way * force)?.find(({ name }) => name === LAYER.core)?.stretch ?? 0;
    found.heldMm.push(heldMm);
    found.freeMm.push(Math.max(0, way * (free / 2 - restMm)));
    found.forceN.push(force);
    found.stretch.push(stretch);
    if (heldMm > REACH_MM) break;
  }
  return found.heldMm.length < 2 ? undefined : found;
}

/** Below where it slipped a later pass is not known from the walk: it loses there what it loses first beyond. */
function laterOf(first: Float64Array, later: Float64Array, slippedAtMm: number): Float64Array {
  const steps = Math.round((first.length - 1) * (slippedAtMm / REACH_MM)) + 1;
  const at = Math.min(steps + LOOK_BEYOND, first.length - 1);
  const loss = Math.max(0, (first[at] ?? 0) - (later[at] ?? 0));
  return first.map((kept, i) => Math.max(0, i >= at ? Math.min(kept, later[i] ?? kept) : kept - loss));
}
/** Steps beyond the place of the first pass at which its loss is read: the curve bends in before. */
const LOOK_BEYOND = 12;
