import {
  type Arch,
  atMoisture,
  type Layer,
  rivetRow,
  type Section,
  timberBearingN,
} from "../../engine/bending/index.ts";
import { isLacking } from "../../shape/back.ts";
import { buildHead } from "../../shape/head.ts";
import type { Deviations, Head, Uncertain } from "../../shape/model.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import { Beliefs, type Taken } from "../beliefs.ts";
import { headKind } from "../build.ts";
import { type HeadLine, halfOf } from "./head-line.ts";
import {
  BARRED_HEAD,
  BEECH_KG_M3,
  GREEN_PART,
  PLATE_BEARING_MPA,
  RIVET_SHEAR_MPA,
  STEEL_MPA,
  WOOD_HEAD,
} from "./head-priors.ts";

/** Layers by name; the sections of a head have no others. Positive levers lie under, toward the horse: opening stretches them. */
export const LAYER = { over: "over", core: "core", under: "under", bar: "bar" } as const;

/** A head that bends, in one draw. */
export interface HeadArch {
  readonly arch: Arch;
  /** What the joints of one plate pass on each side, N; undefined where a bar is moulded in. */
  readonly jointN: number | undefined;
  readonly head: Head;
}

/** A head that bends, with its doubt; `taken`: every quantity it stands on. */
export interface HeadArchBelief {
  readonly stuff: "wood" | "polymer";
  /** `alike`: both halves at the mean of their angles, half the work. */
  at(deviations: Deviations, alike?: "alike"): HeadArch;
  readonly taken: readonly Taken[];
  readonly uncertain: readonly Uncertain[];
}

/** Strips of a layer, and steps fine enough for one part in a hundred (evidence/bending). */
const FIBRES = 8;

/** The head as something that bends: undefined for a build that nobody bends, or where the head was not read. */
export function bendingHead(saddle: SurveyedSaddle): HeadArchBelief | undefined {
  const kind = headKind(saddle.build);
  const head = buildHead(saddle);
  if (isLacking(head)) return undefined;
  if (kind !== "laminated-with-plates" && kind !== "barred-polymer") return undefined;
  const beliefs = new Beliefs(saddle);
  const sections = kind === "barred-polymer" ? barred(beliefs) : laminated(beliefs);
  return {
    stuff: kind === "barred-polymer" ? "polymer" : "wood",
    at: (deviations, alike) => {
      const here = head.at(deviations);
      const { near: nearRad, off: offRad } = here.halfAngleRad;
      const { middle, rest, stiffMm, jointN, offsetMm } = sections(deviations);
      const line = (halfAngleRad: number): HeadLine => ({
        heightMm: here.depthMm + offsetMm,
        radiusMm: here.crownRadiusMm + offsetMm,
        halfAngleRad,
      });
      const half = (halfAngleRad: number) => halfOf(line(halfAngleRad), stiffMm, middle, rest);
      if (alike || nearRad === offRad) {
        const both = half((nearRad + offRad) / 2);
        return { arch: [both, both], jointN, head: here };
      }
      return { arch: [half(nearRad), half(offRad)], jointN, head: here };
    },
    taken: beliefs.taken,
    uncertain: [...beliefs.uncertain, ...head.uncertain],
  };
}

interface Sections {
  readonly middle: Section;
  readonly rest: Section;
  readonly stiffMm: number;
  readonly jointN: number | undefined;
  /** From the inside of the crown to the middle line. */
  readonly offsetMm: number;
}

function laminated(beliefs: Beliefs) {
  const of = {
    wood: beliefs.take(WOOD_HEAD.woodThickness, "woodThickness"),
    woodWide: beliefs.take(WOOD_HEAD.woodWidth, "woodWidth"),
    over: beliefs.take(WOOD_HEAD.overThickness, "overThickness"),
    overWide: beliefs.take(WOOD_HEAD.overWidth, "overWidth"),
    under: beliefs.take(WOOD_HEAD.underThickness, "underThickness"),
    underWide: beliefs.take(WOOD_HEAD.underWidth, "underWidth"),
    rivets: beliefs.take(WOOD_HEAD.rivets, "rivets"),
    rivetDiameter: beliefs.take(WOOD_HEAD.rivetDiameter, "rivetDiameter"),
    yieldMPa: beliefs.take(WOOD_HEAD.yieldMPa),
    hardening: beliefs.take(WOOD_HEAD.hardeningMPa),
    modulus: beliefs.take(WOOD_HEAD.woodModulusMPa),
    crush: beliefs.take(WOOD_HEAD.crushMPa),
    rupture: beliefs.take(WOOD_HEAD.ruptureMPa),
    moisture: beliefs.take(WOOD_HEAD.moisture),
    composite: beliefs.take(WOOD_HEAD.composite),
    worn: beliefs.take(WOOD_HEAD.worn),
    slip: beliefs.take(WOOD_HEAD.slip),
    stiffMm: beliefs.take(WOOD_HEAD.stiffMm),
    stiffPart: beliefs.take(WOOD_HEAD.stiffPart),
  };
  return (deviations: Deviations): Sections => {
    const value = (which: keyof typeof of) => of[which](deviations);
    const wood = value("wood");
    const damp = (at12: "modulus" | "crush" | "rupture") =>
      atMoisture(value(at12), value(at12) * GREEN_PART[at12], value("moisture"));
    const [modulusMPa, crushMPa, ruptureMPa] = [damp("modulus"), damp("crush"), damp("rupture")];
    const law = {
      kind: "elastic-plastic",
      yieldMPa: value("yieldMPa"),
      hardeningMPa: value("hardening"),
    } as const;
    const passes = (thicknessMm: number, widthMm: number) =>
      joints(value, wood, thicknessMm, widthMm, law.yieldMPa);
    const jointN = {
      over: passes(value("over"), value("overWide")),
      under: passes(value("under"), value("underWide")),
    };
    const composite = Math.min(1, value("composite"));
    const section = (thick: number): Section => ({
      layers: [
        plate(LAYER.over, value("over"), value("overWide"), -(thick + value("over")) / 2, jointN.over, law),
        {
          name: LAYER.core,
          modulusMPa,
          widthMm: value("woodWide"),
          thicknessMm: thick,
          middleMm: 0,
          law: { kind: "crushing", crushMPa, partsAtStretch: ruptureMPa / modulusMPa },
          jointN: Number.POSITIVE_INFINITY,
        },
        plate(
          LAYER.under,
          value("under"),
          value("underWide"),
          (thick + value("under")) / 2,
          jointN.under,
          law,
        ),
      ],
      composite,
      wear: { composite: composite * Math.min(1, value("worn")), slipStrain: value("slip") },
      fibres: FIBRES,
    });
    return {
      middle: section(wood * value("stiffPart")),
      rest: section(wood),
      stiffMm: value("stiffMm"),
      jointN: Math.min(jointN.over, jointN.under),
      offsetMm: value("under") + wood / 2,
    };
  };
}

/** What the rivets of one plate pass on one side: the least of shear, bearing on plate and on wood, and the plate between the holes. */
function joints(
  value: (which: "rivets" | "rivetDiameter") => number,
  woodMm: number,
  thicknessMm: number,
  widthMm: number,
  yieldMPa: number,
): number {
  const [rivets, diameterMm] = [value("rivets"), value("rivetDiameter")];
  const row = rivetRow({
    rivets,
    diameterMm,
    shearMPa: RIVET_SHEAR_MPA,
    plate: { widthMm, thicknessMm, pullMPa: yieldMPa, bearingMPa: PLATE_BEARING_MPA },
    holeMm: diameterMm,
    acrossPull: 1,
  });
  const wood = timberBearingN(rivets, diameterMm, BEECH_KG_M3, woodMm);
  return Math.min(row.shearN, row.bearingN, row.tearingN, wood);
}

function plate(
  name: string,
  thicknessMm: number,
  widthMm: number,
  middleMm: number,
  jointN: number,
  law: Layer["law"],
): Layer {
  return { name, modulusMPa: STEEL_MPA, widthMm, thicknessMm, middleMm, law, jointN };
}

/** A bar in the middle of the polymer, moulded in: they bend as one, and the polymer stays elastic. */
function barred(beliefs: Beliefs) {
  const of = {
    polymer: beliefs.take(BARRED_HEAD.polymerThickness, "woodThickness"),
    polymerWide: beliefs.take(BARRED_HEAD.polymerWidth, "woodWidth"),
    bar: beliefs.take(BARRED_HEAD.barThickness, "overThickness"),
    barWide: beliefs.take(BARRED_HEAD.barWidth, "overWidth"),
    yieldMPa: beliefs.take(BARRED_HEAD.barYieldMPa),
    barModulus: beliefs.take(BARRED_HEAD.barModulusMPa),
    hardening: beliefs.take(BARRED_HEAD.barHardeningMPa),
    modulus: beliefs.take(BARRED_HEAD.polymerModulusMPa),
  };
  return (deviations: Deviations): Sections => {
    const value = (which: keyof typeof of) => of[which](deviations);
    const side = Math.max(0.5, (value("polymer") - value("bar")) / 2);
    const cover = (middleMm: number): Layer => ({
      name: LAYER.core,
      modulusMPa: value("modulus"),
      widthMm: value("polymerWide"),
      thicknessMm: side,
      middleMm,
      law: { kind: "elastic" },
      jointN: Number.POSITIVE_INFINITY,
    });
    const section: Section = {
      layers: [
        cover(-(value("bar") + side) / 2),
        {
          name: LAYER.bar,
          modulusMPa: value("barModulus"),
          widthMm: value("barWide"),
          thicknessMm: value("bar"),
          middleMm: 0,
          law: { kind: "elastic-plastic", yieldMPa: value("yieldMPa"), hardeningMPa: value("hardening") },
          jointN: Number.POSITIVE_INFINITY,
        },
        cover((value("bar") + side) / 2),
      ],
      composite: 1,
      wear: undefined,
      fibres: FIBRES,
    };
    return {
      middle: section,
      rest: section,
      stiffMm: WOOD_HEAD.stiffMm.lo,
      jointN: undefined,
      offsetMm: value("polymer") / 2,
    };
  };
}
