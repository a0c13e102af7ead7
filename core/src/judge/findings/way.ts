import { headKind } from "../../reach/build.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import type { WayFindings } from "./orders.ts";

export function wayFindings(saddle: SurveyedSaddle): WayFindings {
  const { toldBy } = saddle.build;
  const told = toldBy === "not-told" ? toldBy : toldBy === "owners-word" ? "owners-word" : "looked-at";
  return { build: headKind(saddle.build), told };
}
