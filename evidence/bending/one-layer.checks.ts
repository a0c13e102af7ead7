import {
  atMoisture,
  bendTo,
  bendToMoment,
  damageOf,
  MILD_STEEL_LIFE,
  readSection,
  release,
  reversalsAt,
  type Section,
  unbent,
} from "@treewright/core/engine/bending/index.ts";
import { rootOf } from "@treewright/core/engine/bending/root.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { fitPlasticLife, leastRadius, planeStrain, powerLawBend } from "./closed-forms.ts";
import { hardened, steelLayer } from "./one-layer.ts";

/** Strips enough that their outermost ones count as the faces. */
const FINE = 4000;

/** One layer of unit width bent to an inside radius by its middle line's rule, and let go. Units as they come. */
function bent(section: Section, curvature: number) {
  const held = bendTo(section, unbent(section), curvature);
  const free = release(section, held);
  const { momentNmm, layers } = readSection(section, held);
  return {
    keptPart: free.curvaturePerMm / curvature,
    momentNmm,
    faceStrain: layers[0]?.strain[1] ?? Number.NaN,
    freeStrain: readSection(section, free).layers[0]?.strain[1] ?? Number.NaN,
  };
}

const keptPart = (radius: number, yieldStress: number, modulus: number, thickness: number): number =>
  bent(steelLayer(1, thickness, modulus, yieldStress, FINE), 1 / radius).keptPart;

/** The bend after which `kept` is left. */
function bendFor(kept: number, yieldStress: number, modulus: number, thickness: number): number {
  const section = steelLayer(1, thickness, modulus, yieldStress, FINE);
  const first = (2 * yieldStress) / (modulus * thickness);
  const found = rootOf(
    (curvature) => ({ y: bent(section, curvature).keptPart * curvature - kept, slope: 1 }),
    kept + first,
    1e-9 * kept,
    first,
  );
  if (found === undefined) throw new Error(`no bend leaves ${kept}`);
  return found;
}

/** Sheet of 20 gage, inch and psi. */
const SHEET = { yield: 40_000, modulus: 29e6, thickness: 0.0359 };

function sheet(): void {
  const inside = 0.5;
  const part = keptPart(inside, SHEET.yield, SHEET.modulus, SHEET.thickness);
  const free = inside / part;
  published("sb-20gage", {
    X: (inside * SHEET.yield) / (SHEET.modulus * SHEET.thickness),
    Ri_over_Rf: part,
    Rf_in: free,
    bend_angle_for_90_arc_const_deg: (90 * (free + SHEET.thickness / 2)) / (inside + SHEET.thickness / 2),
  });
  published("sb-20gage-inverse", 1 / bendFor(1 / 0.5, SHEET.yield, SHEET.modulus, SHEET.thickness));
  // The radius at which only the face reaches the yield: X = R Y / (E T) = 1/2.
  published("sb-limit", keptPart((0.5 * 205_000 * 6) / 250, 250, 205_000, 6));
}

function wide(): void {
  const plane = planeStrain(205_000, 250, 0.3);
  published("sb-plane-strain", {
    K_plane_stress: keptPart(150, 250, 205_000, 6),
    K_plane_strain: keptPart(150, plane.yieldStress, plane.modulus, 6),
  });
}

function hardening(): void {
  const tangents = [0, 2050, 5000];
  const all = tangents.map((tangent) =>
    bent(hardened(steelLayer(40, 6, 205_000, 250, FINE), tangent), 1 / 150),
  );
  published("sb-linear-hardening", {
    M_Nmm: all.map(({ momentNmm }) => momentNmm),
    kf_over_k: all.map((one) => one.keptPart),
    Rf_mm: all.map((one) => 150 / one.keptPart),
  });
  const { moment, keptPart: part } = powerLawBend(40, 6, 737, 0.19, 205_000, 1 / 150);
  published("sb-power-law", { M_Nmm: moment, kf_over_k: part });
}

function arch(): void {
  const permanent = 1 / 60 - 1 / 75;
  const press = bendFor(permanent, 250, 205_000, 6);
  const { faceStrain, freeStrain } = bent(steelLayer(1, 6, 205_000, 250, FINE), press);
  published("sb-arch-open", {
    dk_permanent_per_mm: permanent,
    dk_press_per_mm: press,
    R_in_press_mm: 1 / (1 / 60 - press),
    outer_strain_change_in_press: faceStrain,
    outer_strain_change_permanent: freeStrain,
  });
}

function beam(): void {
  const [b, h, moment, yieldMPa, modulus] = [50, 120, 36.8e6, 240, 200_000];
  const section = steelLayer(b, h, modulus, yieldMPa, FINE);
  const held = bendToMoment(section, unbent(section), moment);
  const free = release(section, held);
  const yieldStrain = yieldMPa / modulus;
  const first = readSection(section, bendTo(section, unbent(section), (2 * yieldStrain) / h)).momentNmm;
  // Fifty times the first yield: what is still elastic adds a part in 7500 to the fully plastic moment.
  const plastic = readSection(section, bendTo(section, unbent(section), (100 * yieldStrain) / h)).momentNmm;
  published("ep-beer-4.05", {
    My_kNm: first / 1e6,
    yY_mm: yieldStrain / held.curvaturePerMm,
    rho_m: 1 / held.curvaturePerMm / 1000,
    Mp_kNm: plastic / 1e6,
  });
  const givenBack = modulus * (held.curvaturePerMm - free.curvaturePerMm);
  const core = yieldStrain / held.curvaturePerMm;
  published("ep-beer-4.06-residual", {
    sigma_elastic_unload_MPa: givenBack * (h / 2),
    residual_surface_MPa_magnitude: Math.abs(yieldMPa - givenBack * (h / 2)),
    residual_at_yY_MPa_magnitude: Math.abs(yieldMPa - givenBack * core),
    rho_permanent_m: 1 / free.curvaturePerMm / 1000,
  });
}

function strains(): void {
  published("strain-outer", bent(steelLayer(1, 4, 205_000, 250, FINE), 1 / (50 + 4 / 2)).faceStrain);
  published("rmin-50-over-r/Rmin_over_T", [50, 45, 40, 35, 30].map(leastRadius));
}

/** Reversals at which elastic and plastic strain are alike. */
function transition(): number {
  const { modulusMPa, sfMPa, b, ef, c } = MILD_STEEL_LIFE;
  return ((ef * modulusMPa) / sfMPa) ** (1 / (b - c));
}

function life(): void {
  const { c, ef } = fitPlasticLife(
    [0.006344, 0.004477, 0.002779, 0.001075, 0.000337, 0.000202],
    [4234, 7398, 14768, 77104, 437498, 3327958],
  );
  published("lcf-sae1137-fit", { c, eps_f: ef });
  published("lcf-life-1015", {
    reversals_2Nf: [0.005, 0.01, 0.02, 0.03].map((one) => reversalsAt(MILD_STEEL_LIFE, one)),
    transition_2Nt: transition(),
  });
  published("lcf-miner-6", damageOf(MILD_STEEL_LIFE, [0.02, 0.02, 0.015, 0.015, 0.01, 0.01]));
}

function moisture(): void {
  published("wood-moisture", {
    MOR_MPa: atMoisture(103, 59, 15),
    MOE_MPa: atMoisture(11_900, 9500, 15),
    comp_parallel_MPa: atMoisture(50.3, 24.5, 15),
  });
}

export const checks: readonly Check[] = [
  { name: "sb-20gage, its inverse and its limit", run: sheet },
  { name: "sb-plane-strain", run: wide },
  { name: "sb-linear-hardening, sb-power-law", run: hardening },
  { name: "sb-arch-open", run: arch },
  { name: "ep-beer", run: beam },
  { name: "strain-outer, rmin-50-over-r", run: strains },
  { name: "lcf", run: life },
  { name: "wood-moisture", run: moisture },
];
