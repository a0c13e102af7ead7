import { type Arch, type ArchState, letGo, loadTo, openingMm, unbentArch } from "./arch.ts";
import { balanced, NoBalance } from "./path.ts";
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
const MET_MM = 1e-5;

/** Held by a force, from where the state stands, and let go. undefined where the arch cannot carry it. */
export function passAt(arch: Arch, state: ArchState, forceN: number): Pass | undefined {
  const held = loaded(arch, state, forceN);
  if (held === undefined) return undefined;
  const free = letGo(arch, held);
  return { forceN, held, heldMm: openingMm(arch, held), free, freeMm: openingMm(arch, free) };
}

/** Held at an opening, from where the state stands, and let go. undefined where the arch cannot be brought there. */
export function passTo(arch: Arch, state: ArchState, heldMm: number): Pass | undefined {
  const forceN = forceFor(arch, heldMm - openingMm(arch, state), heldMm, (force) => {
    const held = loaded(arch, state, force);
    return held && { mm: openingMm(arch, held), perN: flexibility(arch, held) };
  });
  return forceN === undefined ? undefined : passAt(arch, state, forceN);
}

/** Held so far that `freeMm` is left once it is let go. undefined where the arch cannot be brought there. */
export function passFor(arch: Arch, state: ArchState, freeMm: number): Pass | undefined {
  const forceN = forceFor(arch, freeMm - openingMm(arch, state), freeMm, (force) => {
    const pass = passAt(arch, state, force);
    // What is kept grows with force as what is held does, less what comes back with the last newton.
    return pass && { mm: pass.freeMm, perN: flexibility(arch, pass.held) - flexibility(arch, pass.free) };
  });
  return forceN === undefined ? undefined : passAt(arch, state, forceN);
}

type Answering = (forceN: number) => { readonly mm: number; readonly perN: number } | undefined;

function forceFor(arch: Arch, wayMm: number, wantedMm: number, answering: Answering): number | undefined {
  const first = Math.abs(wayMm) / elasticFlexibility(arch);
  if (first === 0) return 0;
  return rootOf(
    (force) => {
      const found = answering(force);
      if (found) return { y: found.mm - wantedMm, slope: found.perN };
      return { y: force > 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY, slope: 0 };
    },
    wayMm > 0 ? first : -first,
    MET_MM,
    first,
  );
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
      if (one) sum += (leverMm * leverMm * lengthMm) / balanced(section, one, one.curvaturePerMm).stiffness;
    });
  }
  return sum;
}

/** How an unbent arch answers at first: opening a newton, mm/N, on the elastic lines. */
export const elasticFlexibility = (arch: Arch): number => flexibility(arch, unbentArch(arch));
