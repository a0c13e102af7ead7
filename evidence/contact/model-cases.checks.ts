import { settle } from "@treewright/core/engine/contact/settle.ts";
import type { Check } from "../published/checks.ts";
import { type Actual, published } from "../published/published.ts";
import { REGISTRY } from "../published/registry.ts";
import { closedForms } from "./closed-forms.ts";
import { type CaseInputs, inputsOf, problemOf } from "./model-case.ts";
import { summaryOf } from "./summary.ts";

/** Mesh of the "converged" values. */
const FINE_MESH = { nx: 270, nv: 96 };

const ids = [...REGISTRY.keys()].filter((id) => id.startsWith("ct-"));

export const checks: readonly Check[] = ids.map((id) => ({ name: id, run: () => check(id) }));

function check(id: string): void {
  const isRefusal = "refusal" in (REGISTRY.get(id)?.values ?? {});
  if (isRefusal) {
    published(`${id}/refusal`, refusedAt(id));
    return;
  }
  published(`${id}/atMesh`, solved(inputsOf(id)));
  published(`${id}/converged`, solved({ ...inputsOf(id), mesh: FINE_MESH }));
  const closed = closedForms[id];
  if (closed) published(`${id}/closedForm`, closed());
}

function refusedAt(id: string): Actual {
  const rest = settle(problemOf(inputsOf(id)));
  return { refused: rest.ok ? null : rest.why };
}

function solved(inputs: CaseInputs): Actual {
  const problem = problemOf(inputs);
  const rest = settle(problem);
  if (!rest.ok) throw new Error(`refused: ${rest.why}`);
  return summaryOf(problem, rest);
}
