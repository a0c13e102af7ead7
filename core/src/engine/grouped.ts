/** Things by their name, in the order in which each name first came, and the things of a name in theirs. */
export function grouped<One>(
  all: readonly One[],
  nameOf: (one: One) => string,
): ReadonlyMap<string, readonly One[]> {
  const groups = new Map<string, One[]>();
  for (const one of all) {
    const name = nameOf(one);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [one]);
    else group.push(one);
  }
  return groups;
}
