import { useTrade, useWords } from "../catalogue/use-words.ts";
import type { VisitDraft } from "../records.ts";
import { type Question, SIDES, type Side, ZONES, type Zone } from "../road.ts";
import { saidAt } from "./steps.ts";

interface Given {
  readonly asked: readonly Question[];
  readonly path: string | undefined;
  readonly draft: VisitDraft;
  readonly onGo: (path: string) => void;
}

/** From the head to the tail, then beneath. */
const DOWN_THE_BACK: readonly Zone[] = [
  "neck-base",
  "withers-top",
  "withers-side",
  "under-point",
  "mid-back",
  "last-ribs",
  "loin",
  "breastbone",
  "girth",
];

/** Neck, shoulders, barrel and croup from above, for the eye only: nothing of it was measured. */
const HORSE =
  "M50 0 C40 4 36 10 34 18 C22 24 18 36 20 46 C14 58 14 72 22 82 C24 92 36 99 50 100 C64 99 76 92 78 82 C86 72 86 58 80 46 C82 36 78 24 66 18 C64 10 60 4 50 0 Z";

/** The horse from above, its head up: each zone on each side with what was felt there. A zone leads to its question. */
export function ZoneMap({ asked, path, draft, onGo }: Given) {
  const horses = [...new Set(asked.map((one) => /^horses\[(\d+)\]/.exec(one.path)?.[1] ?? "0"))];
  return horses.map((horse) => (
    <OneHorse
      key={horse}
      name={draft.file.horses[Number(horse)]?.name ?? ""}
      hands={`horses[${horse}].hands`}
      asked={asked}
      path={path}
      draft={draft}
      onGo={onGo}
    />
  ));
}

function OneHorse({ name, hands, asked, path, draft, onGo }: Given & { name: string; hands: string }) {
  const { visit: words, bench } = useWords();
  const trade = useTrade();
  const questionOf = (zone: Zone, side: Side) =>
    asked.find((one) => one.path === `${hands}.${zone}.${side}.grade`);
  return (
    <section className="zone-map" aria-label={words.zones(name)}>
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        <path d={HORSE} />
        <path d="M50 2V98" className="spine" />
      </svg>
      {/* Near and off are the horse's own and stand the same way round in every language. */}
      <div className="zones" dir="ltr">
        <span className="zone-side">{bench.sides.near}</span>
        <span />
        <span className="zone-side">{bench.sides.off}</span>
        {DOWN_THE_BACK.map((zone) => {
          const zoneName = trade.said(zone.replaceAll("-", " "));
          const cell = (side: Side) => {
            const question = questionOf(zone, side);
            if (question === undefined) return <span key={side} />;
            const said = saidAt(draft, question);
            const grade = typeof said === "number" ? said : undefined;
            return (
              <button
                key={side}
                type="button"
                className={`zone grade-${grade ?? "none"}`}
                aria-current={question.path === path ? "true" : undefined}
                aria-label={words.zone(zoneName, bench.sides[side], grade)}
                onClick={() => onGo(question.path)}
              >
                <span>{grade ?? "–"}</span>
              </button>
            );
          };
          return [
            cell("near"),
            <span key={zone} className="zone-name" dir="auto">
              {zoneName}
            </span>,
            cell("off"),
          ];
        })}
      </div>
    </section>
  );
}

export const hasZones = (asked: readonly Question[]): boolean =>
  SIDES.some((side) => asked.some((one) => one.path.endsWith(`.${ZONES[0]}.${side}.grade`)));
