import type { z } from "zod";

/** What was refused: where, what was read, what is allowed there. */
export interface Refusal {
  readonly where: string;
  readonly read: string;
  readonly allowed: string;
}

/** The first complaint of a schema about a value that came from outside. */
export function refusalOf(value: unknown, { issues }: z.ZodError, within: string): Refusal {
  const [issue] = issues;
  const path = issue?.path ?? [];
  const read = path.reduce<unknown>((at, step) => (isGroup(at) ? at[String(step)] : undefined), value);
  return {
    where: [within, ...path.map(String)].join(", "),
    read: read === undefined ? "nothing" : (JSON.stringify(read) ?? "something else").slice(0, 60),
    allowed: issue === undefined ? "" : allowedBy(issue),
  };
}

const isGroup = (value: unknown): value is { readonly [name: string]: unknown } =>
  typeof value === "object" && value !== null;

function allowedBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return `a value of the kind ${issue.expected}`;
    case "invalid_value":
      return `one of ${issue.values.map(String).join(", ")}`;
    case "unrecognized_keys":
      return `no part named ${issue.keys.join(", ")}`;
    case "too_big":
      return `at most ${issue.maximum}`;
    case "too_small":
      return `at least ${issue.minimum}`;
    default:
      return "the form that the specification of records gives it";
  }
}
