import { headKind } from "../../reach/build.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import type { Build, WayFindings } from "./orders.ts";

type Built = SurveyedSaddle["build"];

/** Properties that cannot be true together: heat said of wood, a press said of polymer without metal, an exchange of nothing. */
function contradicts({ arch, metal, exchange, movedBy }: Built): boolean {
  if (arch === "wood" && movedBy === "heat") return true;
  if (arch === "polymer" && metal === "none" && movedBy === "press") return true;
  if (exchange === "none") return movedBy === "exchange";
  return exchange !== "unknown" && (movedBy === "press" || movedBy === "heat");
}

/** The kind of head by its properties; what nothing moves is the maker's, what contradicts itself is not known. */
export function buildOf(built: Built): Build {
  if (contradicts(built)) return "not-known";
  return built.movedBy === "nothing" ? "makers-form" : headKind(built);
}

export function wayFindings(saddle: SurveyedSaddle): WayFindings {
  const { toldBy } = saddle.build;
  const told = toldBy === "not-told" ? toldBy : toldBy === "owners-word" ? "owners-word" : "looked-at";
  return { build: buildOf(saddle.build), told };
}
