import type { Deviations, Uncertain } from "../../shape/model.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import type { Assumed } from "../../terms/assumed.ts";
import { Beliefs, type ReinforcementWord, type Taken } from "../beliefs.ts";
import { BARRED_HEAD, STEEL_MPA, WOOD_HEAD } from "../bend/head-priors.ts";
import type { Layer, Layered } from "./layers.ts";
import { CANTLE, HINGE, MOULDED, SPRING, STEEL_SHEAR_MPA, WOODEN } from "./unknown.ts";

/** Sections of one tree in one draw, mm and MPa. */
export interface TreeSections {
  readonly hingeOffMm: number;
  readonly head: Layered;
  /** Undefined where no rivets hold plates to the wood. */
  readonly rivetsASide: number | undefined;
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
  /** All that it stands on, to be printed; what of it was read stands beside its range. */
  readonly taken: readonly Taken[];
}

type Value = (deviations: Deviations) => number;
/** Layers of the head from the inside out, its stuff's stiffness, and how far they work as one. */
interface HeadStuff {
  readonly layers: (deviations: Deviations) => readonly Layer[];
  readonly modulusMPa: Value;
  readonly shearMPa: Value;
  readonly composite: Value;
}

/** A tree whose build is not known is calculated as laminated wood with plates: stiffer, so the rear is moved less. */
export function sectionsOfTree(saddle: SurveyedSaddle): SectionsBelief {
  const beliefs = new Beliefs(saddle);
  const { build } = saddle;
  const polymer = build.arch === "polymer";
  const stuff = polymer ? MOULDED : WOODEN;
  const head = polymer ? mouldedHead(saddle, beliefs) : woodenHead(saddle, beliefs);
  const of = {
    hingeOffMm: beliefs.take(HINGE),
    railThinMm: beliefs.take(stuff.railThinMm),
    railWideMm: beliefs.take(stuff.railWideMm),
    cantleThinMm: beliefs.take(stuff.cantleThinMm),
    cantleWideMm: beliefs.take(CANTLE.wideMm),
    riseMm: beliefs.take(CANTLE.riseMm),
    deckThinMm: beliefs.take(stuff.deckThinMm),
  };
  const rivets = polymer || build.metal === "none" ? undefined : beliefs.take(WOOD_HEAD.rivets, "rivets");
  const spring =
    build.springs === "along-rails"
      ? { thinMm: beliefs.take(SPRING.thinMm), wideMm: beliefs.take(SPRING.wideMm) }
      : undefined;
  const at = (deviations: Deviations): TreeSections => {
    const value = (which: keyof typeof of) => of[which](deviations);
    return {
      hingeOffMm: value("hingeOffMm"),
      head: { layers: head.layers(deviations), composite: head.composite(deviations) },
      rivetsASide: rivets?.(deviations),
      stuff: { modulusMPa: head.modulusMPa(deviations), shearMPa: head.shearMPa(deviations) },
      rail: { thinMm: value("railThinMm"), wideMm: value("railWideMm") },
      spring: spring && { thinMm: spring.thinMm(deviations), wideMm: spring.wideMm(deviations) },
      cantle: { thinMm: value("cantleThinMm"), wideMm: value("cantleWideMm"), riseMm: value("riseMm") },
      deckThinMm: value("deckThinMm"),
    };
  };
  return { at, uncertain: beliefs.uncertain, taken: beliefs.taken };
}

/** Wood between a plate under it and a plate over it; without plates, wood alone. */
function woodenHead({ build }: SurveyedSaddle, beliefs: Beliefs): HeadStuff {
  const modulusMPa = beliefs.take(WOOD_HEAD.woodModulusMPa);
  const shearMPa = beliefs.take(WOODEN.shearMPa);
  const thin = beliefs.take(WOOD_HEAD.woodThickness, "woodThickness");
  const wide = beliefs.take(WOOD_HEAD.woodWidth, "woodWidth");
  const plated = build.metal !== "none";
  const under =
    plated &&
    plateOf(beliefs, WOOD_HEAD.underThickness, WOOD_HEAD.underWidth, "underThickness", "underWidth");
  const over =
    plated && plateOf(beliefs, WOOD_HEAD.overThickness, WOOD_HEAD.overWidth, "overThickness", "overWidth");
  return {
    modulusMPa,
    shearMPa,
    composite: plated ? beliefs.take(WOOD_HEAD.composite) : () => 0,
    layers: (deviations) => [
      ...(under ? [under(deviations)] : []),
      {
        what: "wood",
        thinMm: thin(deviations),
        wideMm: wide(deviations),
        modulusMPa: modulusMPa(deviations),
        shearMPa: shearMPa(deviations),
      },
      ...(over ? [over(deviations)] : []),
    ],
  };
}

/** Polymer with a bar moulded into its middle; without metal, polymer alone. */
function mouldedHead({ build }: SurveyedSaddle, beliefs: Beliefs): HeadStuff {
  const modulusMPa = beliefs.take(BARRED_HEAD.polymerModulusMPa);
  const shearMPa = beliefs.take(MOULDED.shearMPa);
  const thin = beliefs.take(BARRED_HEAD.polymerThickness, "woodThickness");
  const wide = beliefs.take(BARRED_HEAD.polymerWidth, "woodWidth");
  const bar =
    build.metal !== "none" &&
    plateOf(beliefs, BARRED_HEAD.barThickness, BARRED_HEAD.barWidth, "overThickness", "overWidth");
  return {
    modulusMPa,
    shearMPa,
    composite: () => 0,
    layers: (deviations) => [
      {
        what: "polymer",
        thinMm: thin(deviations),
        wideMm: wide(deviations),
        modulusMPa: modulusMPa(deviations),
        shearMPa: shearMPa(deviations),
      },
      ...(bar ? [bar(deviations)] : []),
    ],
  };
}

/** A layer of steel, as read or in its range. */
function plateOf(
  beliefs: Beliefs,
  thin: Assumed,
  wide: Assumed,
  thinRead: ReinforcementWord,
  wideRead: ReinforcementWord,
): (deviations: Deviations) => Layer {
  const thinMm = beliefs.take(thin, thinRead);
  const wideMm = beliefs.take(wide, wideRead);
  return (deviations) => ({
    what: "plate",
    thinMm: thinMm(deviations),
    wideMm: wideMm(deviations),
    modulusMPa: STEEL_MPA,
    shearMPa: STEEL_SHEAR_MPA,
  });
}
