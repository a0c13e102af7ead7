import {
  type Arch,
  halfTurnRad,
  openingMm,
  passTo,
  tipTravelMm,
  unbentArch,
} from "@treewright/core/engine/bending/index.ts";
import { drawNormal, drawUniform } from "@treewright/core/engine/random.ts";
import { type Differs, HEAD, noiseOf, SEED, trueDeviations } from "./jobs.ts";
import type { TrueHead } from "./simulate.ts";

/** How far the off half's wood and plates are from the near half's, as part of each: standard deviation (assumption). */
const HALVES_APART = 0.03;
/** Slack of a bare head, mm: as the belief has it. */
const SLACK_MM = 1.5;

/**
 * A head that the bending engine itself takes through every pass, step by step, with what each pass leaves in steel, wood and
 * joints, and with halves of their own: no table, no factor of the belief's is in it.
 */
export function engineHead(differs: Differs, i: number): TrueHead | undefined {
  if (HEAD === undefined) return undefined;
  const near = trueDeviations(differs, i);
  const apart = (id: string, base: number) => base * HALVES_APART * drawNormal(SEED + 5, i, id);
  const off = { ...near };
  for (const { id, mean } of HEAD.uncertain)
    if (/thickness|composite/.test(id)) off[id] = (near[id] ?? 0) + apart(id, mean);
  const arch: Arch = [HEAD.at(near, "alike").arch[0], HEAD.at(off, "alike").arch[0]];
  const slackMm = SLACK_MM * drawUniform(SEED + 5, i, "slack");
  const before = unbentArch(arch);
  const once = passTo(arch, before, 8);
  if (once === undefined) return undefined;
  const tipMm = tipTravelMm(arch[0], once.held[0]);
  const { head } = HEAD.at(near, "alike");
  const upperMm = head.depthMm - (head.upperBelowCrownMm ?? 35);
  const noise = noiseOf(i);
  let state = before;
  let wrongMm: readonly [number, number] = [0, 0];
  return {
    turnPerMm: halfTurnRad(arch[0], once.held[0]) / tipMm,
    upperPerMm: tipTravelMm(arch[0], once.held[0], upperMm) / tipMm,
    press(travelMm, pass) {
      const done = passTo(arch, state, openingMm(arch, state) + Math.max(0, travelMm - slackMm));
      if (done !== undefined) state = done.free;
      wrongMm = [wrongMm[0] + 0.1 * noise("near kept", pass), wrongMm[1] + 0.1 * noise("off kept", pass)];
      const kept = (k: 0 | 1) => tipTravelMm(arch[k], state[k]) + wrongMm[k];
      return { keptMm: [kept(0), kept(1)], forceN: Math.max(1, done?.forceN ?? 1) };
    },
  };
}
