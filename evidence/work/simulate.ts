import { drawNormal, drawUniform } from "@treewright/core/engine/random.ts";
import type { Particle, PressBelief } from "@treewright/core/work/belief.ts";
import type { Foretold } from "@treewright/core/work/foretell.ts";
import { learn } from "@treewright/core/work/learn.ts";
import type { MeasuredPass } from "@treewright/core/work/measured-pass.ts";
import { type NextPass, nextPass } from "@treewright/core/work/next-pass.ts";
import { pressed } from "@treewright/core/work/pressed.ts";

/** A head that is in the press, and that answers a pass; nothing of it is known to the belief but what is read. */
export interface TrueHead {
  /** Bends on by a travel of both tips together; kept since before the job, mm, and force, N. */
  press(
    travelMm: number,
    pass: number,
  ): { readonly keptMm: readonly [number, number]; readonly forceN: number };
  readonly turnPerMm: number;
  readonly upperPerMm: number;
}

export interface PassTold {
  readonly pass: number;
  readonly foretold: Foretold;
  readonly keptMm: number;
  readonly halvesMm: readonly [number, number];
}

/** One job by the program's own advice: what was foretold and what was kept, pass by pass. */
export function workThrough(
  head: TrueHead,
  belief: PressBelief,
  wantedMm: number,
  first: NextPass,
  readers: { readonly seed: number; readonly index: number },
  passesMost: number,
  stretchStop: number,
): PassTold[] {
  const told: PassTold[] = [];
  const u = belief.dressed ? 2 : 0.5;
  const noise = (name: string, pass: number) => drawNormal(readers.seed, readers.index * 64 + pass, name);
  const datum = u * noise("datum", 0);
  let now = belief;
  let next = first;
  for (let pass = 0; pass < passesMost && next.boundBy !== "nothing-left"; pass++) {
    const { travelMm } = next.foretold;
    const done = head.press(travelMm + 0.3 * noise("hand on travel", pass), pass);
    const kept = done.keptMm[0] + done.keptMm[1];
    told.push({ pass, foretold: next.foretold, keptMm: kept, halvesMm: done.keptMm });
    const ur = (Math.PI / 180) * (belief.dressed ? 1.5 : 0.5);
    const turn = (k: 0 | 1) => ({
      value: done.keptMm[k] * head.turnPerMm + ur * noise(`turn ${k}`, pass),
      u: ur,
    });
    const read: MeasuredPass = {
      travel: { both: { value: travelMm, u: 0.3 } },
      forceN:
        drawUniform(readers.seed, readers.index, "has a gauge") < 0.5
          ? undefined
          : { value: done.forceN * (1 + 0.03 * noise("force", pass)), u: 0.03 * done.forceN },
      holdMin: 10,
      keptTips: { value: kept + datum + u * noise("tips", pass), u },
      keptUpper: { value: kept * head.upperPerMm + datum + u * noise("upper", pass), u },
      turnNear: turn(0),
      turnOff: turn(1),
      keptNextDay: undefined,
    };
    now = learn(now, read).belief;
    next = nextPass(now, wantedMm, { stretchStop });
  }
  return told;
}

/** A head out of a table that the belief has not seen, with its own slack, spring-back and halves. */
export function tableHead(particle: Particle, noise: (name: string, pass: number) => number): TrueHead {
  let now = particle;
  return {
    turnPerMm: particle.curve.turnPerMm,
    upperPerMm: particle.curve.upperPerMm,
    press(travelMm, pass) {
      const done = pressed(now, { travelMm, holdMin: 10, before: pass });
      const keptMm = [
        done.keptMm[0] + 0.2 * noise("near kept", pass),
        done.keptMm[1] + 0.2 * noise("off kept", pass),
      ] as const;
      now = { ...now, keptMm, heldMm: done.heldMm };
      return { keptMm, forceN: done.forceN * particle.gauge };
    },
  };
}
