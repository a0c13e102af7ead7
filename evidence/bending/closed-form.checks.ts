import {
  atMoisture,
  bendFor,
  damageOf,
  elasticCore,
  fitPlasticLife,
  keptPart,
  keptPartHardening,
  leastRadius,
  MILD_STEEL_LIFE,
  momentHardening,
  momentOverYield,
  outerStrain,
  planeStrain,
  powerLawBend,
  reversalsAt,
  transitionReversals,
} from "@treewright/core/engine/bending/index.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";

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
  published("sb-limit", keptPart(0.5, 1, 1, 1));
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
  const kept = tangents.map((tangent) => keptPartHardening(150, 250, 205_000, 6, tangent));
  published("sb-linear-hardening", {
    M_Nmm: tangents.map((tangent) => momentHardening(40, 6, 250, 205_000, tangent, 1 / 150)),
    kf_over_k: kept,
    Rf_mm: kept.map((part) => 150 / part),
  });
  const { moment, keptPart: part } = powerLawBend(40, 6, 737, 0.19, 205_000, 1 / 150);
  published("sb-power-law", { M_Nmm: moment, kf_over_k: part });
}

function arch(): void {
  const permanent = 1 / 60 - 1 / 75;
  const press = bendFor(permanent, 250, 205_000, 6);
  published("sb-arch-open", {
    dk_permanent_per_mm: permanent,
    dk_press_per_mm: press,
    R_in_press_mm: 1 / (1 / 60 - press),
    outer_strain_change_in_press: press * 3,
    outer_strain_change_permanent: permanent * 3,
  });
}

function beam(): void {
  const [b, h, moment, yieldMPa, modulus] = [50, 120, 36.8e6, 240, 200_000];
  const first = (yieldMPa * b * h * h) / 6;
  const core = elasticCore(moment / first);
  const radius = (modulus * core * (h / 2)) / yieldMPa;
  published("ep-beer-4.05", {
    My_kNm: first / 1e6,
    yY_mm: (core * h) / 2,
    rho_m: radius / 1000,
    Mp_kNm: (first * momentOverYield(0)) / 1e6,
  });
  const unload = (moment * (h / 2)) / ((b * h * h * h) / 12);
  published("ep-beer-4.06-residual", {
    sigma_elastic_unload_MPa: unload,
    residual_surface_MPa_magnitude: Math.abs(yieldMPa - unload),
    residual_at_yY_MPa_magnitude: Math.abs(yieldMPa - unload * core),
    rho_permanent_m: radius / keptPart(radius, yieldMPa, modulus, h) / 1000,
  });
}

function strains(): void {
  published("strain-outer", outerStrain(50, 4));
  published("rmin-50-over-r/Rmin_over_T", [50, 45, 40, 35, 30].map(leastRadius));
}

function life(): void {
  const { c, ef } = fitPlasticLife(
    [0.006344, 0.004477, 0.002779, 0.001075, 0.000337, 0.000202],
    [4234, 7398, 14768, 77104, 437498, 3327958],
  );
  published("lcf-sae1137-fit", { c, eps_f: ef });
  published("lcf-life-1015", {
    reversals_2Nf: [0.005, 0.01, 0.02, 0.03].map((one) => reversalsAt(MILD_STEEL_LIFE, one)),
    transition_2Nt: transitionReversals(MILD_STEEL_LIFE),
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
