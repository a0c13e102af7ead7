import { useTrade } from "../catalogue/use-words.ts";
import type { Outcome } from "../road.ts";

const brackets = "M7 2H3v16h4M41 2h4v16h-4";

/** A state by its shape and its word; no colour has a part in it. */
const SHAPES: { readonly [O in Outcome]: React.ReactNode } = {
  inside: (
    <>
      <path d={brackets} className="pen-2" />
      <path d="M12 10h24" className="bar" />
    </>
  ),
  between: (
    <>
      <path d={brackets} className="pen-2" />
      <path d="M24 10h20" className="bar" />
    </>
  ),
  outside: (
    <>
      <path d="M7 2H3v16h4M33 2h4v16h-4" className="pen-2" />
      <path d="M27 10h20" className="bar" />
    </>
  ),
  "cannot-tell": <path d="M3 5h42v10H3z" className="pen-2" strokeDasharray="5 4" />,
};

export function StateFigure({ outcome }: { outcome: Outcome | "not-read" }) {
  return (
    <svg className="state" viewBox="0 0 48 20" width="48" height="20" aria-hidden="true">
      {outcome === "not-read" ? <path d="M3 3h42v14H3zM3 17 45 3" className="pen-2" /> : SHAPES[outcome]}
    </svg>
  );
}

export function State({ outcome }: { outcome: Outcome | "not-read" }) {
  const trade = useTrade();
  return (
    <span className="told">
      <StateFigure outcome={outcome} /> {trade.choice(outcome, "outcome")}
    </span>
  );
}
