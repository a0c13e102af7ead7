import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { disc, loadAtDepth, pressed, rectangle, restOf } from "./foundation.ts";

// Inputs as in the registry, in N and mm: 50 kPa over 20 mm, radius 100 mm, 5 mm deep (Johnson 4.3).
const STIFFNESS = 0.05 / 20;
const RADIUS = 100;
const DEPTH = 5;
const CONTACT = Math.sqrt(2 * RADIUS * DEPTH);

function sphere(): void {
  const cells = disc(1.05 * CONTACT, 630, 12, (r) => (r * r) / (2 * RADIUS));
  const load = loadAtDepth(cells, STIFFNESS, DEPTH, 20);
  const rest = restOf(pressed(cells, STIFFNESS, load));
  const area = rest.pressure.reduce((sum, p, i) => sum + (p > 0 ? (cells[i]?.[3] ?? 0) : 0), 0);
  const round = disc(1.05 * CONTACT, 630, 12, (r) => RADIUS - Math.sqrt(RADIUS * RADIUS - r * r));
  published("efm-sphere", {
    P_N: load,
    a_m: Math.sqrt(area / Math.PI) / 1000,
    p0_Pa: 1e6 * Math.max(...rest.pressure),
    p_mean_Pa: (1e6 * load) / area,
    P_true_sphere_N: loadAtDepth(round, STIFFNESS, DEPTH, 20),
  });
}

function line(): void {
  const length = 50;
  const cells = rectangle(length, 2.1 * CONTACT, 3, 2100, (y) => (y * y) / (2 * RADIUS));
  published("efm-line/P_per_m_N", (loadAtDepth(cells, STIFFNESS, DEPTH, 26) / length) * 1000);
}

/** Foundation as deep as the sphere's radius; the answer does not depend on that radius. */
function drakeSphere(): void {
  const radius = 50;
  const load = 9.81;
  const depths = [1, 10, 100, 1000].map((modulus) => {
    const reach = 1.1 * Math.sqrt(2 * radius * Math.sqrt(load / (Math.PI * modulus)));
    const cells = disc(reach, 100, 12, (r) => (r * r) / (2 * radius));
    return -restOf(pressed(cells, modulus / radius, load)).pose.heave;
  });
  published("efm-drake-sphere/penetration_mm", depths);
}

function drakePunch(): void {
  const cells = disc(50, 30, 12, () => 0);
  published("efm-drake-cylinder/penetration_mm", -restOf(pressed(cells, 1 / 50, 9.81)).pose.heave);
}

function eccentric(): void {
  const nx = 240;
  const cells = rectangle(400, 100, nx, 4, () => 0);
  // The closed form is for small turns and does not depend on the stiffness: a hundred times as stiff.
  const { pressure } = restOf(pressed(cells, 100 * 1e-3, 500, 50));
  const row = (i: number): number => 1e6 * (pressure[i * 4] ?? Number.NaN);
  published("efm-eccentric-full", {
    pmax_Pa: 1.5 * row(nx - 1) - 0.5 * row(nx - 2),
    pmin_Pa: 1.5 * row(0) - 0.5 * row(1),
  });
}

export const checks: readonly Check[] = [
  { name: "efm-sphere", run: sphere },
  { name: "efm-line", run: line },
  { name: "efm-drake-sphere", run: drakeSphere },
  { name: "efm-drake-cylinder", run: drakePunch },
  { name: "efm-eccentric-full", run: eccentric },
];
