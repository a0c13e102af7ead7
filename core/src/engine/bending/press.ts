import { type Arch, type ArchState, letGo, loadTo, openingMm } from "./arch.ts";
import { type GlancedOpening, glanceFree, glanceHeld, type LayerGlance, layersAt } from "./glance.ts";
import { NoBalance } from "./path.ts";
import { rootOf } from "./root.ts";
import { bendingStiffness } from "./section.ts";

/** An arch held at an opening, and after it was let go. Openings are of the tips, against unbent, mm. */
export interface Pass {
  readonly forceN: number;
  readonly held: ArchState;
  readonly heldMm: number;
  readonly free: ArchState;
  readonly freeMm: number;
}

/** An opening is met within this, mm. */
const MET_MM = 1e-4;

/** Held by a force, from where the state stands, and let go. undefined where the arch cannot carry it. */
export function passAt(arch: Arch, state: ArchState, forceN: number): Pass | undefined {
  const held = loaded(arch, state, forceN);
  if (held === undefined) return undefined;
  const free = letGo(arch, held);
  return { forceN, held, heldMm: openingMm(arch, held), free, freeMm: openingMm(arch, free) };
}

/** Held at an opening, from where the state stands, and let go. undefined where the arch cannot be brought there. */
export function passTo(arch: Arch, state: ArchState, heldMm: number): Pass | undefined {
  const forceN = forceFor(arch, state, heldMm, {
    glance: (force) => glanceHeld(arch, state, force),
    exact: (force) => {
      const held = loaded(arch, state, force);
      return held && openingMm(arch, held);
    },
  });
  return forceN === undefined ? undefined : passAt(arch, state, forceN);
}

/** Held so far that `freeMm` is left once it is let go. undefined where the arch cannot be brought there. */
export function passFor(arch: Arch, state: ArchState, freeMm: number): Pass | undefined {
  let pass: Pass | undefined;
  const forceN = forceFor(arch, state, freeMm, {
    glance: (force) => glanceFree(arch, state, force),
    exact: (force) => {
      pass = passAt(arch, state, force);
      return pass?.freeMm;
    },
  });
  return forceN === undefined ? undefined : (pass ?? passAt(arch, state, forceN));
}

/** What it takes to keep an opening, to about one part in a hundred: for the sweep of many. */
export interface PassGlance {
  readonly forceN: number;
  readonly heldMm: number;
  readonly layers: readonly LayerGlance[];
}

export function glanceFor(arch: Arch, state: ArchState, freeMm: number): PassGlance | undefined {
  const forceN = glancedForce(arch, state, freeMm, (force) => glanceFree(arch, state, force))?.forceN;
  if (forceN === undefined) return undefined;
  const heldMm = glanceHeld(arch, state, forceN)?.mm;
  const layers = layersAt(arch, state, forceN);
  return heldMm === undefined || layers === undefined ? undefined : { forceN, heldMm, layers };
}

type Answer = (forceN: number) => number | undefined;
type Glance = (forceN: number) => GlancedOpening | undefined;

/** The force at which an opening is as wanted: at a glance first, then exactly. */
function forceFor(
  arch: Arch,
  state: ArchState,
  wantedMm: number,
  { glance, exact }: { readonly glance: Glance; readonly exact: Answer },
): number | undefined {
  const start = glancedForce(arch, state, wantedMm, glance);
  if (start === undefined || start.forceN === 0) return start?.forceN;
  const givesWay = start.forceN > 0 ? GIVES_WAY : -GIVES_WAY;
  let before: { readonly force: number; readonly mm: number } | undefined;
  let slope = start.perN;
  const found = rootOf(
    (force) => {
      const mm = exact(force);
      if (mm === undefined) return { y: givesWay, slope: 0 };
      if (before && before.force !== force) slope = (mm - before.mm) / (force - before.force);
      before = { force, mm };
      return { y: mm - wantedMm, slope };
    },
    start.forceN,
    MET_MM,
    Math.abs(start.forceN) / 64,
  );
  // Halved down to where it gives way, short of what is wanted: not there.
  return before !== undefined && Math.abs(before.mm - wantedMm) <= SHORT_MM ? found : undefined;
}
/** A press that ends further than this from what was wanted did not get there, mm. */
const SHORT_MM = 0.01;

function glancedForce(arch: Arch, state: ArchState, wantedMm: number, glance: Glance) {
  const wayMm = wantedMm - openingMm(arch, state);
  const first = Math.abs(wayMm) / elasticFlexibility(arch);
  if (first === 0) return { forceN: 0, perN: 0 };
  let perN = 0;
  let lastMm = Number.NaN;
  const forceN = rootOf(
    (force) => {
      const glanced = glance(force);
      if (glanced === undefined) return { y: wayMm > 0 ? GIVES_WAY : -GIVES_WAY, slope: 0 };
      ({ mm: lastMm, perN } = glanced);
      return { y: lastMm - wantedMm, slope: perN };
    },
    wayMm > 0 ? first : -first,
    MET_MM,
    first,
  );
  return forceN === undefined || !(Math.abs(lastMm - wantedMm) <= SHORT_MM) ? undefined : { forceN, perN };
}
/** Opening of an arch that gives way, mm: further than any that carries its force. */
const GIVES_WAY = 1e9;

function loaded(arch: Arch, state: ArchState, forceN: number): ArchState | undefined {
  try {
    return loadTo(arch, state, forceN);
  } catch (fault) {
    if (fault instanceof NoBalance) return undefined;
    throw fault;
  }
}

/** How an unbent arch answers at first: opening a newton, mm/N, on the elastic lines. */
export function elasticFlexibility(arch: Arch): number {
  return arch.flat().reduce((sum, { section, lengthMm, leverMm }) => {
    return sum + (leverMm * leverMm * lengthMm) / bendingStiffness(section, section.composite);
  }, 0);
}
