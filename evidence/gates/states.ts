/** Words of one input, from the mildest to the worst, less known or less qualified. */
export type Orders = { readonly [input: string]: readonly string[] };
export type State<O extends Orders> = { readonly [K in keyof O]: O[K][number] };

/** Every state of the inputs, the last input turning fastest. */
export function* statesOf<O extends Orders>(orders: O): Generator<State<O>> {
  const names = Object.keys(orders);
  const at = names.map(() => 0);
  for (;;) {
    yield Object.fromEntries(names.map((name, i) => [name, orders[name]?.[at[i] ?? 0]])) as State<O>;
    let i = names.length - 1;
    while (i >= 0 && at[i] === (orders[names[i] ?? ""]?.length ?? 0) - 1) at[i--] = 0;
    if (i < 0) return;
    at[i] = (at[i] ?? 0) + 1;
  }
}

export function countOf(orders: Orders): number {
  return Object.values(orders).reduce((product, words) => product * words.length, 1);
}

/** The same state with one input one word later; one for each input that has a later word. */
export function nextWorse<O extends Orders>(
  orders: O,
  state: State<O>,
): readonly { readonly input: string; readonly state: State<O> }[] {
  return Object.keys(orders).flatMap((input) => {
    const words = orders[input] ?? [];
    const later = words[words.indexOf(state[input] ?? "") + 1];
    return later === undefined ? [] : [{ input, state: { ...state, [input]: later } as State<O> }];
  });
}

/** Every step along a printed order at which something is permitted that was not before. Empty is the law. */
export function widened<O extends Orders, A>(
  orders: O,
  permits: (state: State<O>) => readonly A[],
): readonly string[] {
  const found: string[] = [];
  for (const state of statesOf(orders)) {
    const before = new Set(permits(state));
    for (const step of nextWorse(orders, state)) {
      const more = permits(step.state).filter((act) => !before.has(act));
      if (more.length > 0)
        found.push(
          `${step.input} to ${step.state[step.input]}: ${more.join(", ")} in ${JSON.stringify(state)}`,
        );
    }
  }
  return found;
}
