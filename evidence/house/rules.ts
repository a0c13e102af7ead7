import type { HouseRule } from "./finding.ts";
import { wordsFromCatalogue } from "./literal-words.ts";
import { scriptsNeedNoShell, startsWithoutShell } from "./no-shell.ts";
import { engineKnowsNoTrade, everythingHasAHome, namesNoHost, shortFiles } from "./plain-texts.ts";
import { pureCore } from "./pure-core.ts";

/** What must hold of every text of the project; docs/explanation/house.md says why. */
export const houseRules: readonly HouseRule[] = [
  pureCore,
  engineKnowsNoTrade,
  everythingHasAHome,
  namesNoHost,
  shortFiles,
  scriptsNeedNoShell,
  startsWithoutShell,
  wordsFromCatalogue,
];
