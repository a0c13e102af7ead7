import { useMemo } from "react";
import { useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import { sectionView } from "../drawing/view.ts";
import type { VisitDraft } from "../records.ts";
import { frontTrace, readCaseValue, type ScreenScale } from "../road.ts";
import { useUnits } from "../units/units.ts";
import { type Series, TrueSize } from "./true-size.tsx";

interface Given {
  readonly desk: Desk;
  readonly before: VisitDraft | undefined;
  readonly scale: ScreenScale;
}

type Place = readonly [number, number];

/** How far down the back it is shown where no head stands over it, and how far below the tips where one does, mm. Working limits, no source. */
const SHOWN_MM = 120;
const BELOW_TIPS_MM = 15;
const downward = ([y, z]: Place): Place => [y, -z];

/** Today's front trace over the last one, under the head where it stands, at true size. */
export function TracesOnScreen({ desk, before, scale }: Given) {
  const { scale: words } = useWords();
  const units = useUnits();
  const last = useMemo(() => lastTrace(before), [before]);
  const today = useMemo(() => frontTrace(desk.read.survey, desk.horse), [desk.read.survey, desk.horse]);
  const point = desk.sweep.get(0);
  const section = point && sectionView(point, "front", units);
  const head = section?.head;
  const nameOf = (name: string, temper: string) => (temper === "warm" ? `${name}, ${words.warm}` : name);
  if (today === undefined) return null;
  const series: Series[] = [
    {
      id: "trace-today",
      name: nameOf(words.series.traceToday, today.temper),
      runs: [today.outline.map(downward)],
      pen: "pen-2",
    },
    ...(last
      ? [
          {
            id: "trace-last",
            name: nameOf(words.series.traceLast, last.temper),
            runs: [last.outline.map(downward)],
            pen: "pen-2",
            dash: "10 6",
          } as const,
        ]
      : []),
    ...(head && head.length > 0
      ? [
          {
            id: "head",
            name: words.series.headToday,
            runs: [[...head, head[0] ?? [0, 0]].map((place) => downward(place))],
            pen: "pen-1",
            dash: "2 3",
          } as const,
        ]
      : []),
  ];
  const tips = head && head.length > 0 ? BELOW_TIPS_MM - Math.min(...head.map(([, z]) => z)) : SHOWN_MM;
  const seen = series
    .flatMap(({ runs }) => runs.flat())
    .map(downward)
    .filter(([, z]) => z > -tips);
  // Both halves begin at the top of the back, from which heights are counted.
  const extent = {
    near: [[0, 0] as Place, ...seen.filter(([y]) => y <= 0)],
    off: [[0, 0] as Place, ...seen.filter(([y]) => y >= 0)],
  };
  return (
    <div className="true-size-block">
      <h3>{words.traces}</h3>
      <p className="measure">
        {words.tracesSay}
        {head && head.length > 0 ? ` ${section?.clearance ? words.headAsRead : words.headAsComputed}` : ""}
        {last === undefined ? ` ${words.noLast}` : ""}
      </p>
      <TrueSize what={words.traces} series={series} extent={extent} scale={scale} />
    </div>
  );
}

function lastTrace(before: VisitDraft | undefined): ReturnType<typeof frontTrace> {
  const read = before && readCaseValue(before.file);
  return read?.ok ? frontTrace(read.survey, 0) : undefined;
}
