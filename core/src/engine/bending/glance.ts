import type { Arch, ArchState } from "./arch.ts";
import { release } from "./bend.ts";
import { type Node, nodesAt } from "./path.ts";
import { readSection } from "./read-section.ts";
import type { Section, SectionState } from "./section.ts";
import type { LayerReading, SectionReading } from "./section-reading.ts";

/*
 * An arch under a force, read off the paths of its pieces: straight between the steps of a path, so good to about one
 * part in a hundred, and cheap. `press.ts` starts from it and ends exact.
 */

/** What layers of one name bear in the piece that bears most, held. Strains without unit, force without sign. */
export type LayerGlance = Pick<LayerReading, "name" | "stretch" | "crushed" | "forceN"> & {
  readonly strain: number;
};

/** An opening at a glance, and how it rises with force: mm, mm/N. */
export interface GlancedOpening {
  readonly mm: number;
  readonly perN: number;
}

/** Curvature of a node, held or once it was let go. */
type Standing = (section: Section, node: Node) => number;
const held: Standing = (_, node) => node.state.curvaturePerMm;
const free: Standing = (section, node) => freeOf(section, node).curvaturePerMm;

/** Opening of both halves; undefined where a piece cannot carry the force. */
function opening(
  arch: Arch,
  state: ArchState,
  forceN: number,
  standing: Standing,
): GlancedOpening | undefined {
  let mm = 0;
  let perN = 0;
  for (const k of [0, 1] as const) {
    for (let i = 0; i < arch[k].length; i++) {
      const { section, lengthMm, leverMm } = arch[k][i]!;
      const place = nodesAt(section, state[k][i]!, forceN * leverMm);
      if (place === undefined) return undefined;
      const a = standing(section, place.from);
      const rise = standing(section, place.to) - a;
      mm += leverMm * lengthMm * (a + place.part * rise);
      perN += (leverMm * leverMm * lengthMm * rise) / (place.to.momentNmm - place.from.momentNmm);
    }
    if (arch[0] === arch[1] && state[0] === state[1]) return { mm: 2 * mm, perN: 2 * perN };
  }
  return { mm, perN };
}

/** Opening of the tips, held by a force. */
export const glanceHeld = (arch: Arch, state: ArchState, forceN: number): GlancedOpening | undefined =>
  opening(arch, state, forceN, held);

/** Opening of the tips, once a force was let go again. */
export const glanceFree = (arch: Arch, state: ArchState, forceN: number): GlancedOpening | undefined =>
  opening(arch, state, forceN, free);

/** Opening of the tips, held by a force, mm. */
export const heldAtMm = (arch: Arch, state: ArchState, forceN: number): number | undefined =>
  glanceHeld(arch, state, forceN)?.mm;

/** Opening of the tips, once a force was let go again, mm. */
export const freeAtMm = (arch: Arch, state: ArchState, forceN: number): number | undefined =>
  glanceFree(arch, state, forceN)?.mm;

const between = (a: number, b: number, part: number): number => a + part * (b - a);

function freeOf(section: Section, node: Node): SectionState {
  node.free ??= release(section, node.state);
  return node.free;
}

function readingOf(section: Section, node: Node): SectionReading {
  node.reading ??= readSection(section, node.state);
  return node.reading;
}

/** What each layer bears where it bears most, held by a force; undefined where a piece cannot carry it. */
export function layersAt(arch: Arch, state: ArchState, forceN: number): readonly LayerGlance[] | undefined {
  const most = new Map<string, LayerGlance>();
  for (const k of [0, 1] as const) {
    for (const [i, { section, leverMm }] of arch[k].entries()) {
      const place = nodesAt(section, state[k][i]!, forceN * leverMm);
      if (place === undefined) return undefined;
      const from = readingOf(section, place.from).layers;
      const to = readingOf(section, place.to).layers;
      for (const [j, a] of from.entries()) note(most, a, to[j] ?? a, place.part);
    }
    if (arch[0] === arch[1] && state[0] === state[1]) break;
  }
  return [...most.values()];
}

function note(most: Map<string, LayerGlance>, a: LayerReading, b: LayerReading, part: number): void {
  const known = most.get(a.name);
  const strain = (one: LayerReading) => Math.max(Math.abs(one.strain[0]), Math.abs(one.strain[1]));
  const more = (before: number | undefined, now: number) => Math.max(before ?? 0, now);
  most.set(a.name, {
    name: a.name,
    stretch: more(known?.stretch, between(a.stretch, b.stretch, part)),
    crushed: more(known?.crushed, between(a.crushed, b.crushed, part)),
    forceN: more(known?.forceN, Math.abs(between(a.forceN, b.forceN, part))),
    strain: more(known?.strain, between(strain(a), strain(b), part)),
  });
}
