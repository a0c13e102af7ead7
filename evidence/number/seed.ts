/**
 * The seed of a test's draws, printed; SEED=... in the environment repeats a run, or draws others. A new one for each run,
 * or `usual` where the figures of one run are written down.
 */
export function propertySeed(name: string, usual = Date.now() % 2 ** 31): number {
  const seed = Number(process.env.SEED ?? usual);
  console.log(`${name}: seed ${seed}`);
  return seed;
}
