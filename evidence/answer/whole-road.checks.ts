import { formsOf } from "@treewright/core/answer/forms.ts";
import { inDraw, type Whole, wholeAt } from "@treewright/core/answer/whole.ts";
import { MESHES } from "@treewright/core/fit/panel-cells.ts";
import { AS_FOUND } from "@treewright/core/reach/move.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";
import type { Check } from "../published/checks.ts";
import { type Actual, published } from "../published/published.ts";
import { reference } from "../published/registry.ts";

const ID = "road-uneven-back";
const DEG_PER_RAD = 180 / Math.PI;

/** The whole road on one case whose sides differ: what a wrong sign, unit or side anywhere on it would change. */
export const checks: readonly Check[] = [{ name: ID, run: checkRoad }];

function checkRoad(): void {
  const read = readCase(JSON.stringify(reference(ID).inputs));
  if (!read.ok) throw new Error(read.problems.map(({ where, allowed }) => `${where}: ${allowed}`).join("; "));
  const means = inDraw(formsOf(read.survey, 0), {});
  const today = wholeAt(means, AS_FOUND, { mesh: MESHES.fine });
  if (!today?.rest?.ok) throw new Error("no rest");
  const seat = today.rest;
  published(`${ID}/today`, {
    heaveMm: seat.heaveMm,
    headUpDeg: seat.headUpRad * DEG_PER_RAD,
    rollDeg: seat.rollRad * DEG_PER_RAD,
    ...thirds(today, ["meanKPa", "share"]),
  });
}

function thirds(whole: Whole, what: readonly ("meanKPa" | "share")[]): { [name: string]: Actual } {
  const rest = whole.pressed();
  if (!rest?.ok) throw new Error("no rest");
  return Object.fromEntries(
    rest.thirds.map((one) => [
      `${one.third}.${one.side}`,
      Object.fromEntries(what.map((name) => [name, one[name]])),
    ]),
  );
}
