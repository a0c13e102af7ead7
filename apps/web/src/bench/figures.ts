import { exampleNames, exampleText } from "../case/open-save.ts";
import { horsesOf } from "./figures-of.ts";
import { openBench } from "./open-bench.ts";

/**
 * Works out every invented case in so many workers and writes their fingerprints into the page (`?figures=2`).
 * Jobs go to workers by their place in the list and come back in that order, so the number of workers changes no digit.
 */
export async function showFigures(root: HTMLElement, workers: number): Promise<void> {
  const benches = Array.from({ length: workers }, openBench);
  const names = await exampleNames();
  const texts = await Promise.all(names.map(exampleText));
  const jobs = texts.flatMap((text, index) =>
    horsesOf(text).map((horse) => ({ name: names[index], text, horse })),
  );
  const found = await Promise.all(
    jobs.map(async ({ name, text, horse }, index) => ({
      name,
      horse,
      figures: await benches[index % workers]?.figures(text, horse),
    })),
  );
  root.innerHTML = "<h1>Figures of the invented cases</h1><pre></pre>";
  const written = root.querySelector("pre");
  if (written) written.textContent = JSON.stringify(found, undefined, 2);
  root.dataset.done = "yes";
}
