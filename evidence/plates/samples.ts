import { readFileSync } from "node:fs";
import type { Survey } from "../../core/src/survey/case.ts";
import { readCaseValue } from "../../core/src/survey/read-case.ts";
import { readStock } from "../../core/src/survey/read-stock.ts";
import type { StockPlate } from "../../core/src/survey/stock.ts";

const CASE = new URL("../../examples/cases/05-readings-in-inches.json", import.meta.url);
export const MOUNTING = { holes: 2, pitch: "1 in", edge: "square", thickness: "1/8 in" };

/** The example with a changeable plate, with other plates at hand; `change` edits the case as typed. */
export function caseWith(plates: readonly object[], change: (typed: Typed) => void = () => {}): Survey {
  const typed: Typed = JSON.parse(readFileSync(CASE, "utf8"));
  typed.platesAtHand = plates;
  change(typed);
  const read = readCaseValue(typed);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.survey;
}

export interface Typed {
  platesAtHand: readonly object[];
  saddle: { mounting: object; build: object };
  horses: { name: string; traces: object[]; hands?: object }[];
}

export const plate = (spreadTips: number, halfAngle: number, more: object = {}) => ({
  label: "",
  mounting: MOUNTING,
  spreadTips,
  halfAngle,
  sound: "sound",
  ...more,
});

export function stockOf(plates: readonly object[]): readonly StockPlate[] {
  const read = readStock(JSON.stringify({ format: "treewright-stock", version: 1, title: "t", plates }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.plates;
}

export const piece = (maker: string, word: string, spread: number, more: object = {}) => ({
  maker,
  word,
  mounting: MOUNTING,
  face: "inside",
  spread,
  belowCrown: 80,
  depth: 90,
  halfAngle: 45,
  legThickness: 3,
  sound: "sound",
  ...more,
});
