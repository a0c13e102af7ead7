import {
  bendingStiffness,
  bendTo,
  readSection,
  release,
  rivetRow,
  type Section,
  timberBearingN,
  unbent,
} from "@treewright/core/engine/bending/index.ts";
import { rootOf } from "@treewright/core/engine/bending/root.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { thinPlates } from "./closed-forms.ts";
import { layered, steelLayer, thinPlated } from "./one-layer.ts";

/** Strips enough that their outermost ones count as the faces. */
const FINE = 4000;

function stiffness(): void {
  published(
    "bd-ei-composite/EI_Nmm2",
    [0, 0.1, 0.25, 0.5, 1].map((c) => bendingStiffness(layered(c, 2), c)),
  );
}

function pressed(id: "bd-ep-c0" | "bd-ep-c0.1", composite: number): void {
  const section = layered(composite, FINE);
  const held = bendTo(section, unbent(section), 0.0012);
  const free = release(section, held);
  const { momentNmm, layers } = readSection(section, held);
  const [core, over, under] = layers.map(({ strain }) => strain);
  published(id, {
    momentNmm,
    springbackCurvaturePerMm: free.curvaturePerMm,
    springbackFraction: 1 - free.curvaturePerMm / 0.0012,
    woodStrainExtremes: core ?? [],
    headPlateStrain: over ?? [],
    gulletPlateStrain: under ?? [],
    plateForcesN: layers.map(({ forceN }) => forceN),
  });
}

function passes(): void {
  const section = layered(0.25, FINE);
  let state = unbent(section);
  let moment = 0;
  const permanent = [0.0012, 0.0016, -0.0006].map((curvature) => {
    const held = bendTo(section, state, curvature);
    moment = readSection(section, held).momentNmm;
    state = release(section, held);
    return state.curvaturePerMm;
  });
  published("bd-passes", {
    permanentPerMm: permanent,
    permanentVirginToSecond: release(section, bendTo(section, unbent(section), 0.0016)).curvaturePerMm,
    momentAtThirdNmm: moment,
    maxAccumulatedPlasticStrain: readSection(section, state)
      .layers.slice(1)
      .map((layer) => layer.accumulated),
  });
}

function thin(): void {
  const plate = { modulus: 205_000, yieldStress: 300, area: 20, lever: 5.25 };
  const { moment, kept, yieldCurvature } = thinPlates((13_000 * 50 * 1000) / 12, plate, 0.5, 0.002);
  const section = thinPlated(0.5, FINE);
  const held = bendTo(section, unbent(section), 0.002);
  published("bd-thin-plate-closed-form", {
    closedForm: { momentNmm: moment, permanentPerMm: kept, yieldCurvature },
    fibre: {
      momentNmm: readSection(section, held).momentNmm,
      permanentPerMm: release(section, held).curvaturePerMm,
    },
  });
}

function rivets(): void {
  const row = rivetRow({
    rivets: 3,
    diameterMm: 5,
    shearMPa: 0.6 * 400,
    plate: { widthMm: 40, thicknessMm: 2, pullMPa: 300, bearingMPa: 400 },
    holeMm: 5,
    acrossPull: 1,
  });
  const section = layered(0.25, FINE);
  const { layers } = readSection(section, bendTo(section, unbent(section), 0.0012));
  published("bd-rivet-cap", {
    rivetShearKN: row.shearN / 1000,
    woodBearingKN: timberBearingN(3, 5, 700, 10) / 1000,
    plateForceKN: Math.max(...layers.slice(1).map(({ forceN }) => Math.abs(forceN))) / 1000,
  });
}

function lapJoint(): void {
  const row = rivetRow({
    rivets: 3,
    diameterMm: 10,
    shearMPa: 100,
    plate: { widthMm: 200, thicknessMm: 5, pullMPa: 200, bearingMPa: 150 },
    holeMm: 11,
    acrossPull: 3,
  });
  published("rivet-lap-3", {
    tearing_kN: row.tearingN / 1000,
    shear_kN: row.shearN / 1000,
    bearing_kN: row.bearingN / 1000,
    governs: row.bearingN < row.shearN && row.bearingN < row.tearingN ? "bearing" : "not bearing",
  });
}

/** Inch and pound-force: the checks do not know their units. */
function pencoyd(): void {
  const row = rivetRow({
    rivets: 1,
    diameterMm: 0.75,
    shearMPa: 11_000,
    plate: { widthMm: 10, thicknessMm: 0.25, pullMPa: 11_000, bearingMPa: 22_000 },
    holeMm: 0.8125,
    acrossPull: 1,
  });
  published("rivet-pencoyd", { single_shear_lbf: row.shearN, bearing_lbf: row.bearingN });
}

/** Bent, let go, and bent back until straight, by the fibres. */
function reversed(): void {
  const section = steelLayer(40, 6, 205_000, 250, 200_000);
  const held = bendTo(section, unbent(section), 1 / 150);
  const free = release(section, held);
  const { momentNmm: most, layers: pressedLayers } = readSection(section, held);
  // What the face gave up since it was held at its yield stress.
  const faceBack =
    (pressedLayers[0]?.strain[1] ?? 0) - (readSection(section, free).layers[0]?.strain[1] ?? 0);
  const back = backTo(section, held);
  const { momentNmm, layers } = readSection(section, back);
  published("sb-reverse-masing", {
    My_Nmm: (250 * 40 * 36) / 6,
    Mmax_Nmm: most,
    k_res_per_mm: free.curvaturePerMm,
    R_res_mm: 1 / free.curvaturePerMm,
    surface_residual_stress_MPa: 250 - 205_000 * faceBack,
    reverse_first_yield_M_over_My: most / 60_000 - 2,
    k_min_to_return_to_zero_per_mm: back.curvaturePerMm,
    M_at_k_min_Nmm: momentNmm,
    cumulative_plastic_strain_outer_fibre: layers[0]?.accumulated ?? 0,
  });
}

function backTo(section: Section, held: ReturnType<typeof unbent>) {
  let back = held;
  const found = rootOf(
    (curvature) => {
      back = bendTo(section, held, curvature);
      return { y: release(section, back).curvaturePerMm, slope: 1 };
    },
    -0.0006,
    1e-11,
    1e-4,
  );
  if (found === undefined) throw new Error("it does not come back straight");
  return back;
}

export const checks: readonly Check[] = [
  { name: "bd-ei-composite", run: stiffness },
  { name: "bd-ep-c0", run: () => pressed("bd-ep-c0", 0) },
  { name: "bd-ep-c0.1", run: () => pressed("bd-ep-c0.1", 0.1) },
  { name: "bd-passes", run: passes },
  { name: "bd-thin-plate-closed-form", run: thin },
  { name: "bd-rivet-cap", run: rivets },
  { name: "rivet-lap-3", run: lapJoint },
  { name: "rivet-pencoyd", run: pencoyd },
  { name: "sb-reverse-masing", run: reversed },
];
