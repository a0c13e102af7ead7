import { lazy, Suspense, useEffect, useState } from "react";
import { directionOf, type Language, LanguageOf, languageOf } from "./catalogue/use-words.ts";
import { HelpScreen } from "./help/help-screen.tsx";
import { FirstScreen } from "./home/first-screen.tsx";
import type { Practice } from "./practice/practice.ts";
import { useRoute } from "./route.ts";
import { VisitScreen } from "./visit/visit-screen.tsx";

const HorseScreen = lazy(() => import("./horse/horse-screen.tsx"));
/** Copying and bringing in is a part of its own, fetched when it is wanted and kept for work without signal as all else. */
const DataScreen = lazy(() => import("./data/data-screen.tsx"));

const TakenInScreen = lazy(() => import("./taken-in/taken-in-screen.tsx"));

/** The app: one practice, its visits, and where one is among them. */
export function App({ practice, language }: { practice: Practice; language: Language }) {
  const [spoken, setSpoken] = useState(language);
  const { tag } = spoken;
  const route = useRoute();
  useEffect(() => {
    // A made language has no tag that a reader's voice knows.
    document.documentElement.lang = tag.startsWith("x-") ? "en" : tag;
    document.documentElement.dir = directionOf(tag);
  }, [tag]);
  return (
    <LanguageOf value={spoken}>
      {route.screen === "first" ? (
        <FirstScreen
          practice={practice}
          language={tag}
          onLanguage={(chosen) => void languageOf(chosen).then(setSpoken)}
        />
      ) : null}
      {route.screen === "horse" ? (
        <Suspense fallback={null}>
          <HorseScreen key={route.horse} practice={practice} horse={route.horse} />
        </Suspense>
      ) : null}
      {route.screen === "data" ? (
        <Suspense fallback={null}>
          <DataScreen practice={practice} />
        </Suspense>
      ) : null}
      {route.screen === "taken-in" ? (
        <Suspense fallback={null}>
          <TakenInScreen practice={practice} kept={route.kept} />
        </Suspense>
      ) : null}
      {route.screen === "help" ? <HelpScreen practice={practice} language={tag} /> : null}
      {route.screen === "visit" ? (
        <VisitScreen
          key={route.subject}
          practice={practice}
          subject={route.subject}
          step={route.step}
          trueSize={route.trueSize}
        />
      ) : null}
    </LanguageOf>
  );
}
