import type { SurveyedSaddle } from "../../survey/case.ts";
import type { Build, WayFindings } from "./orders.ts";

type Built = SurveyedSaddle["build"];

/** Forms and stuffs that this bench never moves: the maker's people do. */
function isForMaker({ arch, metal, exchange, movedBy, form }: Built): boolean {
  if (form !== "none" && form !== "unknown") return true;
  if (arch === "composite" || metal === "springs" || movedBy === "nothing") return true;
  return arch === "wood" && metal === "none" && exchange === "none";
}

/**
 * The kind of head by its properties, never by a class name. Properties that contradict one another
 * (heat said of wood, a press said of polymer without metal) are not known until it is looked at again.
 */
export function buildOf(built: Built): Build {
  const { arch, metal, exchange, movedBy, form } = built;
  if (isForMaker(built)) return "maker-only";
  if (form === "unknown" || arch === "unknown") return "not-known";
  if (exchange === "plate" || exchange === "insert") return movedBy === "press" || movedBy === "heat" ? "not-known" : exchange;
  if (exchange === "unknown" || movedBy === "exchange") return "not-known";
  if (arch === "wood") return metal === "plates" && movedBy !== "heat" ? "plates-on-wood" : "not-known";
  if (metal === "none") return movedBy === "press" ? "not-known" : "polymer-solid";
  return metal === "bar" && movedBy !== "heat" ? "polymer-bar" : "not-known";
}

export function wayFindings(saddle: SurveyedSaddle): WayFindings {
  const { toldBy } = saddle.build;
  const told = toldBy === "not-told" ? toldBy : toldBy === "owners-word" ? "owners-word" : "looked-at";
  return { build: buildOf(saddle.build), told };
}
