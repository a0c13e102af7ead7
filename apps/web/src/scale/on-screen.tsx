import { useEffect, useState } from "react";
import "../look/scale.css";
import { useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import type { VisitDraft } from "../records.ts";
import { type ScreenScale, screenScale } from "../road.ts";
import { forgetScale, type KeptScale, keepScale, keptScale, lostBy } from "./kept-scale.ts";
import { Match } from "./match.tsx";
import { useScreen } from "./screen-now.ts";
import { TemplateOnScreen } from "./template-on-screen.tsx";
import { TracesOnScreen } from "./traces-on-screen.tsx";

interface Given {
  readonly desk: Desk;
  /** What was said at the visit before. */
  readonly before: VisitDraft | undefined;
  /** Where the bench is. */
  readonly back: string;
}

/** The wanted head at true size on this screen: asked for its scale first, and again whenever that no longer holds. */
export function OnScreen({ desk, before, back }: Given) {
  const { scale: words } = useWords();
  const screen = useScreen();
  const [kept, setKept] = useState(keptScale);
  const [lost, setLost] = useState<"zoom" | "screen">();
  const losing = kept && lostBy(kept, screen);
  useEffect(() => {
    if (losing === undefined) return;
    forgetScale();
    setLost(losing);
    setKept(undefined);
  }, [losing]);
  const scale = losing === undefined ? scaleOf(kept) : undefined;
  const again = () => {
    forgetScale();
    setLost(undefined);
    setKept(undefined);
  };
  return (
    <section className="true-size-screen" aria-labelledby="true-size">
      <p className="app-links">
        <a className="key" href={back}>
          {words.back}
        </a>
      </p>
      <h2 id="true-size">{words.title}</h2>
      <p className="measure">{words.cannot}</p>
      {scale === undefined ? (
        <>
          {lost ? (
            <p className="problem" role="alert">
              {words.lost[lost]}
            </p>
          ) : null}
          <p className="measure">{words.why}</p>
          {screen.zoom === 1 ? (
            // What was matched on another screen is worth nothing: it begins anew.
            <Match
              key={`${screen.pixelRatio} ${screen.longerPx} ${screen.shorterPx}`}
              onMatched={(longPx, shortPx) => {
                setLost(undefined);
                setKept(keepScale(longPx, shortPx, screen));
              }}
            />
          ) : (
            <p className="problem">{words.zoomed}</p>
          )}
        </>
      ) : (
        <>
          <TemplateOnScreen desk={desk} scale={scale} />
          <TracesOnScreen desk={desk} before={before} scale={scale} />
          <p className="measure">{words.moved}</p>
          <p className="app-links">
            <button type="button" onClick={again}>
              {words.again}
            </button>
          </p>
        </>
      )}
    </section>
  );
}

function scaleOf(kept: KeptScale | undefined): ScreenScale | undefined {
  const matched = kept && screenScale(kept.longPx, kept.shortPx);
  return matched?.ok ? matched.scale : undefined;
}
