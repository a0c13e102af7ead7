import type { Section } from "@treewright/core/engine/bending/index.ts";

/*
 * The same sections worked a second way, sharing no code: each fibre keeps its turning points and its stress comes
 * from them by the closed bilinear law (Masing: a reversed branch is the virgin one doubled), in many small steps, the
 * balance by halving. Symmetric laws and bonded layers only, where every fibre obeys Masing.
 */

/** Stress of a fibre on its virgin branch. */
function virgin(strain: number, modulus: number, yieldMPa: number, tangent: number): number {
  const first = yieldMPa / modulus;
  if (Math.abs(strain) <= first) return modulus * strain;
  return Math.sign(strain) * (yieldMPa + tangent * (Math.abs(strain) - first));
}

/** A fibre by its turning points, [strain, stress], the oldest first. */
class Fibre {
  private turns: [number, number][] = [];
  private strain = 0;
  private way = 0;

  constructor(
    private readonly modulus: number,
    private readonly yieldMPa: number,
    private readonly tangent: number,
  ) {}

  stressAt(strain: number): number {
    return this.follow(strain).stress;
  }

  go(strain: number): void {
    if (strain === this.strain) return;
    const { turns } = this.follow(strain);
    this.turns = turns;
    this.way = Math.sign(strain - this.strain);
    this.strain = strain;
  }

  private follow(strain: number): { stress: number; turns: [number, number][] } {
    const turns = [...this.turns];
    const way = Math.sign(strain - this.strain);
    if (this.way !== 0 && way !== 0 && way !== this.way) turns.push([this.strain, this.now()]);
    // A loop that closes is forgotten: the path goes on along the branch that it left.
    for (;;) {
      const last = turns.at(-1);
      const before = turns.at(-2);
      if (last === undefined) break;
      const closes =
        before === undefined
          ? Math.abs(strain) >= Math.abs(last[0]) && Math.sign(strain) !== Math.sign(last[0])
          : (strain - before[0]) * (before[0] - last[0]) >= 0;
      if (!closes) break;
      turns.pop();
      if (before !== undefined) turns.pop();
    }
    return { stress: this.branch(strain, turns), turns };
  }

  private now(): number {
    return this.branch(this.strain, this.turns);
  }

  private branch(strain: number, turns: readonly [number, number][]): number {
    const last = turns.at(-1);
    if (last === undefined) return virgin(strain, this.modulus, this.yieldMPa, this.tangent);
    return last[1] + 2 * virgin((strain - last[0]) / 2, this.modulus, this.yieldMPa, this.tangent);
  }
}

interface Strip {
  readonly lever: number;
  readonly middle: number;
  readonly area: number;
  readonly fibre: Fibre;
}

/** Moments, N mm, at each curvature of a path that starts straight, in so many steps from one to the next. */
export function momentsPlainly(
  section: Section,
  path: readonly number[],
  strips: number,
  steps: number,
): number[] {
  const all = section.layers.flatMap((layer): Strip[] => {
    const { law, thicknessMm, widthMm, middleMm, modulusMPa } = layer;
    if (law.kind === "crushing") throw new Error("symmetric laws only");
    const yields = law.kind === "elastic" ? Number.POSITIVE_INFINITY : law.yieldMPa;
    const tangent = law.kind === "elastic" ? modulusMPa : law.hardeningMPa;
    return Array.from({ length: strips }, (_, j) => ({
      lever: ((j + 0.5) / strips - 0.5) * thicknessMm,
      middle: middleMm,
      area: (widthMm * thicknessMm) / strips,
      fibre: new Fibre(modulusMPa, yields, tangent),
    }));
  });
  let from = 0;
  return path.map((to) => {
    let moment = 0;
    for (let i = 1; i <= steps; i++)
      moment = oneStep(all, section.composite, from + ((to - from) * i) / steps);
    from = to;
    return moment;
  });
}

function oneStep(strips: readonly Strip[], composite: number, curvature: number): number {
  const strain = ({ lever, middle }: Strip, common: number) =>
    curvature * lever + common + composite * curvature * middle;
  const force = (common: number) =>
    strips.reduce((sum, one) => sum + one.fibre.stressAt(strain(one, common)) * one.area, 0);
  let [lo, hi] = [-0.05, 0.05];
  for (let i = 0; i < 60; i++) {
    const middle = (lo + hi) / 2;
    if (force(middle) > 0) hi = middle;
    else lo = middle;
  }
  const common = (lo + hi) / 2;
  let moment = 0;
  for (const one of strips) {
    const at = strain(one, common);
    moment += one.fibre.stressAt(at) * one.area * (one.lever + one.middle);
    one.fibre.go(at);
  }
  return moment;
}
