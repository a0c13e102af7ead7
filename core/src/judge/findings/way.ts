import { headKind } from "../../reach/build.ts";
import { pressHistory } from "../../reach/history.ts";
import { insertsStand } from "../../reach/inserts.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import { isRead } from "../../survey/reading.ts";
import { known } from "./answered.ts";
import type { WayFindings } from "./orders.ts";

/** How far a head has been moved is known by its record, or by the spread as made beside today's. */
function moved(saddle: SurveyedSaddle): WayFindings["moved"] {
  const { spreadTips, asMadeSpreadTips } = saddle.head;
  const measured = isRead(spreadTips) && isRead(asMadeSpreadTips);
  return measured || pressHistory(saddle).known ? "on-record" : "not-known";
}

/** Only polymer minds the cold of a yard; an arch of unknown stuff may be polymer. */
function warmth({ arch, treeTemperature }: SurveyedSaddle["build"]): WayFindings["warmth"] {
  if (arch !== "polymer" && arch !== "unknown") return "warm";
  if (treeTemperature === "not-looked") return "not-known";
  return treeTemperature === "below-15-C" ? "cold" : "warm";
}

/** In polymer the rivets are what holds the bar. One that nobody looked at is for the gate of soundness. */
function fixings({ looked }: SurveyedSaddle, build: WayFindings["build"]): WayFindings["fixings"] {
  const { rivets } = looked.parts;
  const loose = rivets === "doubtful" || rivets === "failed";
  return build === "barred-polymer" && loose ? "not-firm" : "firm";
}

function inserts(saddle: SurveyedSaddle, build: WayFindings["build"]): WayFindings["inserts"] {
  if (build !== "insert-exchanged") return "ready";
  const { how } = insertsStand(saddle.inserts);
  if (how !== "alike") return how;
  const grit = known(saddle.inserts.grit);
  return grit === "no" ? "ready" : grit === "yes" ? "gritty" : "not-known";
}

export function wayFindings(saddle: SurveyedSaddle): WayFindings {
  const { toldBy } = saddle.build;
  const build = headKind(saddle.build);
  const told = toldBy === "not-told" ? toldBy : toldBy === "owners-word" ? "owners-word" : "looked-at";
  return {
    build,
    told,
    moved: moved(saddle),
    warmth: warmth(saddle.build),
    fixings: fixings(saddle, build),
    inserts: inserts(saddle, build),
  };
}
