import { useWords } from "../catalogue/use-words.ts";
import type { HorseVisit } from "./horse-visits.ts";

const BAR_MM = 50;
const MARGIN_MM = 12;

/** The last front trace over the one before it, to one scale, seen from behind: the near side is left in every language. */
export function BacksOver({ visits }: { visits: readonly HorseVisit[] }) {
  const { horse: words } = useWords();
  const [now, before] = visits.filter(({ back }) => back !== undefined);
  if (!now?.back) return null;
  const backs = [now, before].flatMap((one) =>
    one?.back ? [{ visit: one.line.subject, day: one.line.day, outline: one.back.outline }] : [],
  );
  const all = backs.flatMap(({ outline }) => outline);
  const half = Math.max(...all.map(([across]) => Math.abs(across))) + MARGIN_MM;
  const deep = Math.max(...all.map(([, up]) => -up)) + MARGIN_MM;
  return (
    <figure className="backs-over">
      <figcaption>{words.backs}</figcaption>
      <svg viewBox={`${-half} ${-MARGIN_MM} ${2 * half} ${deep + MARGIN_MM}`} aria-hidden="true">
        {backs.map(({ visit, outline }, at) => (
          <polyline
            key={visit}
            className={at === 0 ? "now" : "before"}
            points={outline.map(([across, up]) => `${across},${-up}`).join(" ")}
          />
        ))}
        <line x1={-BAR_MM / 2} x2={BAR_MM / 2} y1={deep - 4} y2={deep - 4} />
      </svg>
      <p className="sides" dir="ltr">
        <span>{words.near}</span> <span>{words.bar(BAR_MM)}</span> <span>{words.off}</span>
      </p>
      <ul>
        {backs.map(({ visit, day }, at) => (
          <li key={visit}>{at === 0 ? words.lineNow(day) : words.lineBefore(day)}</li>
        ))}
      </ul>
    </figure>
  );
}
