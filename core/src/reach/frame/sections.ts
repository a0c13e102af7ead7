import { Doubts, type Drawn } from "../../shape/doubt.ts";
import type { Deviations, Uncertain } from "../../shape/model.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import type { Assumption } from "../../terms/assumption.ts";
import type { Layer, Layered } from "./layers.ts";
import { CANTLE, HEAD_UNREAD, HINGE, JOINED, MOULDED, SPRING, STEEL_MPA, WOODEN } from "./unknown.ts";

/** Sections of one tree in one draw, mm and MPa. */
export interface TreeSections {
  readonly hingeOffMm: number;
  readonly head: Layered;
  readonly rivetsASide: number;
  readonly stuff: { readonly modulusMPa: number; readonly shearMPa: number };
  readonly rail: { readonly thinMm: number; readonly wideMm: number };
  readonly spring: { readonly thinMm: number; readonly wideMm: number } | undefined;
  readonly cantle: { readonly thinMm: number; readonly wideMm: number; readonly riseMm: number };
  readonly deckThinMm: number;
}

/** The unknown sections of a tree by its build, with their doubt. */
export interface SectionsBelief {
  at(deviations: Deviations): TreeSections;
  readonly uncertain: readonly Uncertain[];
  /** All that is assumed in it, to be printed. */
  readonly assumed: readonly Assumption[];
}

/** Value of an assumption in a draw. */
const valueOf = ({ base, id }: Assumption, deviations: Deviations): number => base + (deviations[id] ?? 0);

/** A tree whose build is not known is calculated as laminated wood: stiffer, so the rear is moved less. */
export function sectionsOfTree(saddle: SurveyedSaddle): SectionsBelief {
  const doubts = new Doubts();
  const { build } = saddle;
  const stuff = build.arch === "polymer" ? MOULDED : WOODEN;
  const headAt = headLayers(saddle, doubts);
  const rivets = doubts.takeIfRead("saddle.reinforcement.rivets", saddle.reinforcement.rivets);
  const spring = build.springs === "along-rails" ? SPRING : undefined;
  const joined = rivets === undefined ? Object.values(JOINED) : [JOINED.composite];
  const assumed = [
    HINGE,
    ...Object.values(stuff),
    ...Object.values(CANTLE),
    ...joined,
    ...Object.values(spring ?? {}),
  ];
  const at = (deviations: Deviations): TreeSections => {
    const value = (one: Assumption) => valueOf(one, deviations);
    return {
      hingeOffMm: value(HINGE),
      head: { layers: headAt(deviations), composite: value(JOINED.composite) },
      rivetsASide: rivets?.(deviations) ?? value(JOINED.rivets),
      stuff: { modulusMPa: value(stuff.modulusMPa), shearMPa: value(stuff.shearMPa) },
      rail: { thinMm: value(stuff.railThinMm), wideMm: value(stuff.railWideMm) },
      spring: spring && { thinMm: value(spring.thinMm), wideMm: value(spring.wideMm) },
      cantle: {
        thinMm: value(stuff.cantleThinMm),
        wideMm: value(CANTLE.wideMm),
        riseMm: value(CANTLE.riseMm),
      },
      deckThinMm: value(stuff.deckThinMm),
    };
  };
  const ranges = assumed.map(
    ({ id, base, lo, hi }): Uncertain => ({ id, kind: "range", mean: base, lo, hi }),
  );
  return {
    at,
    uncertain: [...doubts.uncertain, ...ranges],
    assumed: [...assumed, ...unread(doubts.uncertain)],
  };
}

/** Layers of the head from the inside out; what was not read stands as a range. */
function headLayers(
  { build, reinforcement }: SurveyedSaddle,
  doubts: Doubts,
): (deviations: Deviations) => readonly Layer[] {
  const path = (word: keyof typeof reinforcement) => `saddle.reinforcement.${word}`;
  const size = (word: keyof typeof reinforcement, range: Parameters<Doubts["takeOrAssume"]>[3]) =>
    doubts.takeOrAssume(path(word), reinforcement[word], "mm", range);
  const polymer = build.arch === "polymer";
  const unread = polymer ? HEAD_UNREAD.polymer : HEAD_UNREAD.wood;
  const core = { thin: size("woodThickness", unread.thin), wide: size("woodWidth", unread.wide) };
  const over = polymer ? HEAD_UNREAD.bar : HEAD_UNREAD.over;
  const outer =
    build.metal === "none"
      ? undefined
      : { thin: size("overThickness", over.thin), wide: size("overWidth", over.wide) };
  const inner =
    polymer || build.metal === "none" || build.metal === "bar"
      ? undefined
      : {
          thin: size("underThickness", HEAD_UNREAD.under.thin),
          wide: size("underWidth", HEAD_UNREAD.under.wide),
        };
  const stuff = polymer ? MOULDED : WOODEN;
  return (deviations) => {
    const plate = (sizes: { thin: Drawn; wide: Drawn } | undefined): readonly Layer[] =>
      sizes === undefined
        ? []
        : [
            {
              what: "plate",
              thinMm: sizes.thin(deviations),
              wideMm: sizes.wide(deviations),
              modulusMPa: STEEL_MPA.modulus,
              shearMPa: STEEL_MPA.shear,
            },
          ];
    const between: Layer = {
      what: polymer ? "polymer" : "wood",
      thinMm: core.thin(deviations),
      wideMm: core.wide(deviations),
      modulusMPa: valueOf(stuff.modulusMPa, deviations),
      shearMPa: valueOf(stuff.shearMPa, deviations),
    };
    return [...plate(inner), between, ...plate(outer)];
  };
}

const UNREAD_SAYS: { readonly [word: string]: string } = {
  woodThickness: "thickness of wood or polymer at the head",
  woodWidth: "width of wood or polymer at the head",
  overThickness: "thickness of the plate over the head, or of the bar",
  overWidth: "width of the plate over the head, or of the bar",
  underThickness: "thickness of the plate under the head",
  underWidth: "width of the plate under the head",
};

/** The readings that a range stands for. */
function unread(uncertain: readonly Uncertain[]): readonly Assumption[] {
  return uncertain.flatMap((one) => {
    if (one.kind !== "range") return [];
    const says = UNREAD_SAYS[one.id.split(".")[2] ?? ""] ?? one.id;
    return [{ id: one.id, base: one.mean, lo: one.lo, hi: one.hi, says, provenance: "from memory" as const }];
  });
}
