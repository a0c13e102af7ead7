import { sha256Hex } from "../../core/src/engine/hash.ts";
import * as number from "../../core/src/engine/number/index.ts";
import { drawNormal } from "../../core/src/engine/random.ts";

const COUNT = 20_000;

/** Every bit of many results of engine/number and of the draws, by function, as one fingerprint each. */
export function digests(): Record<string, string> {
  const { sin, cos, tan, asin, acos, atan, exp, log, atan2, pow, hypot } = number;
  // The arguments come from exact operations only, so that they are the same everywhere.
  const unit = (k: number): number => ((k * 7919) % COUNT) / COUNT - 0.5;
  const results: Record<string, (k: number) => number> = {
    sin: (k) => sin(unit(k) * k),
    cos: (k) => cos(unit(k) * k),
    tan: (k) => tan(unit(k) * k),
    asin: (k) => asin(2 * unit(k)),
    acos: (k) => acos(2 * unit(k)),
    atan: (k) => atan(unit(k) * 20),
    exp: (k) => exp(unit(k) * 1400),
    log: (k) => log(k * (unit(k) + 0.5)),
    atan2: (k) => atan2(unit(k), unit(k + 1234)),
    pow: (k) => pow(unit(k) + 0.5, unit(k + 1234) * 60),
    hypot: (k) => hypot(unit(k), unit(k + 1234)),
    drawNormal: (k) => drawNormal(20_241, k, "spreadMm"),
  };
  return Object.fromEntries(Object.entries(results).map(([name, of]) => [name, digestOf(of)]));
}

function digestOf(of: (k: number) => number): string {
  const view = new DataView(new ArrayBuffer(8 * COUNT));
  for (let k = 0; k < COUNT; k++) view.setFloat64(8 * k, of(k), true);
  return sha256Hex(new Uint8Array(view.buffer));
}
