export type Step = string | number;

/** `horses[0].girthed.clearanceTop` to its steps. A path of this form that no case has gives steps all the same. */
export function stepsOf(path: string): Step[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map((found) => found[1] ?? Number(found[2]));
}

/** The last name of a path: `horses[0].standing.heat` is called `heat`. */
export const nameOf = (path: string): string =>
  stepsOf(path)
    .flatMap((step) => (typeof step === "string" ? step : []))
    .at(-1) ?? "";

export function pathOf(steps: readonly PropertyKey[]): string {
  return steps.reduce<string>((path, step) => {
    if (typeof step === "number") return `${path}[${step}]`;
    return path === "" ? String(step) : `${path}.${String(step)}`;
  }, "");
}

const isTree = (value: unknown): value is Record<Step, unknown> =>
  typeof value === "object" && value !== null;

/** What stands at the end of the steps, own properties only; undefined where a step leads nowhere. */
export function getAt(tree: unknown, steps: readonly PropertyKey[]): unknown {
  return steps.reduce<unknown>(
    (at, step) => (isTree(at) && Object.hasOwn(at, step) ? at[String(step)] : undefined),
    tree,
  );
}

/** A copy of the tree with one place replaced; places on the way are made. The tree itself is not touched. */
export function putAt(tree: unknown, steps: readonly Step[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (typeof step === "number") {
    const list: unknown[] = Array.isArray(tree) ? [...tree] : [];
    list[step] = putAt(list[step], rest, value);
    return list;
  }
  const inner = isTree(tree) && Object.hasOwn(tree, step) ? tree[step] : undefined;
  return { ...(isTree(tree) ? tree : {}), [step]: putAt(inner, rest, value) };
}
