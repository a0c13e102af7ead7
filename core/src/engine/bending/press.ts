import { type Arch, type ArchState, loadTo, letGo, openingMm, unbentArch } from "./arch.ts";
import { balanceAt } from "./balance.ts";
import { NoBalance } from "./bend.ts";
import { rootOf } from "./root.ts";

/** An arch held at an opening, and after it was let go. Openings are of the tips, against unbent, mm. */
export interface Pass {
  readonly forceN: number;
  readonly held: ArchState;
  readonly heldMm: number;
  readonly free: ArchState;
  readonly freeMm: number;
}

/** An opening is met within this, mm. */
const MET_MM = 1e-7;

/** Held at an opening, from where the state stands, and let go. undefined where the arch cannot be brought there. */
export function passTo(arch: Arch, state: ArchState, heldMm: number): Pass | undefined {
  const reached = holdAt(arch, state, heldMm);
  if (reached === undefined) return undefined;
  const free = letGo(arch, reached.held);
  return { ...reached, heldMm, free, freeMm: openingMm(arch, free) };
}

/** Held so far that `freeMm` is left once it is let go. undefined where the arch cannot be brought there. */
export function passFor(arch: Arch, state: ArchState, freeMm: number): Pass | undefined {
  let pass: Pass | undefined;
  const start = openingMm(arch, state);
  // The tips come back by what they go out too far: the error itself is the next step, never too long.
  const heldMm = rootOf(
    (held) => {
      pass = passTo(arch, state, held);
      if (pass === undefined)
        return { y: held > start ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY, slope: 0 };
      return { y: pass.freeMm - freeMm, slope: 1 };
    },
    freeMm,
    FREE_MET_MM,
  );
  return heldMm === undefined ? undefined : pass;
}
const FREE_MET_MM = 1e-4;

function holdAt(
  arch: Arch,
  state: ArchState,
  heldMm: number,
): { forceN: number; held: ArchState } | undefined {
  let held = state;
  const forceN = rootOf(
    (force) => {
      const at = loaded(arch, state, force);
      if (at === undefined)
        return { y: force > 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY, slope: 0 };
      held = at;
      return { y: openingMm(arch, at) - heldMm, slope: flexibility(arch, at) };
    },
    0,
    MET_MM,
  );
  return forceN === undefined ? undefined : { forceN, held };
}

function loaded(arch: Arch, state: ArchState, forceN: number): ArchState | undefined {
  try {
    return loadTo(arch, state, forceN);
  } catch (fault) {
    if (fault instanceof NoBalance) return undefined;
    throw fault;
  }
}

/** Opening for one more newton, mm/N, as the pieces stand. */
function flexibility(arch: Arch, state: ArchState): number {
  let sum = 0;
  for (const k of [0, 1] as const) {
    arch[k].forEach(({ section, lengthMm, leverMm }, i) => {
      const one = state[k][i];
      const stiffness = one && balanceAt(section, one, one.curvaturePerMm)?.stiffness;
      if (stiffness) sum += (leverMm * leverMm * lengthMm) / stiffness;
    });
  }
  return sum;
}

/** How an unbent arch answers at first: opening a newton, mm/N, on the elastic lines. */
export const elasticFlexibility = (arch: Arch): number => flexibility(arch, unbentArch(arch));
