import { readdirSync, readFileSync } from "node:fs";
import { type Figures, figuresOf, horsesOf } from "../../apps/web/src/bench/figures-of.ts";
import { builtScript } from "../page/built-script.ts";
import { WebKit } from "./webkit.ts";

/** What works the figures out. */
const FIGURES = new URL("../../apps/web/src/bench/figures-of.ts", import.meta.url);
const CASES = new URL("../../examples/cases/", import.meta.url);

export interface OfHorse {
  readonly name: string;
  readonly horse: number;
  readonly node: Figures;
  readonly webkit: Figures;
}

export const exampleNames = (): readonly string[] =>
  readdirSync(CASES)
    .filter((name) => name.endsWith(".json"))
    .sort();

/** The figures of these examples' horses in Node and in WebKit, one horse after another: an engine that is slow hits no limit of the driver. */
export async function* figuresOfBoth(names: readonly string[]): AsyncGenerator<OfHorse> {
  const webkit = await WebKit.open();
  try {
    await webkit.goTo("about:blank");
    await webkit.run(await builtScript(FIGURES));
    for (const name of names) {
      const text = readFileSync(new URL(name, CASES), "utf8");
      for (const horse of horsesOf(text)) {
        const found = await webkit.run<Figures>(
          `return evidence.figuresOf(${JSON.stringify(text)}, ${horse});`,
        );
        yield { name, horse, node: figuresOf(text, horse), webkit: found };
      }
    }
  } finally {
    await webkit.close();
  }
}
