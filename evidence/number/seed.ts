/** A new seed for each run of a property test, printed; SEED=... in the environment repeats a run. */
export function propertySeed(name: string): number {
  const seed = Number(process.env.SEED ?? Date.now() % 2 ** 31);
  console.log(`${name}: seed ${seed}`);
  return seed;
}
