import { useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import { downFromCrown, type ScreenScale, templateDataOf, widthOverAllMm } from "../road.ts";
import { shownFigure } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";
import { type Series, TrueSize } from "./true-size.tsx";

/** The wanted head as the template on paper has it, at true size, with what the screen's scale leaves open. */
export function TemplateOnScreen({ desk, scale }: { desk: Desk; scale: ScreenScale }) {
  const { scale: words } = useWords();
  const units = useUnits();
  const { answer } = desk;
  if (answer === undefined) return <p>{words.waiting}</p>;
  const data = templateDataOf(desk.read.survey, answer);
  if (data === undefined) return <p className="refusal">{words.none}</p>;
  const widthMm = widthOverAllMm(data.wanted);
  const wanted = downFromCrown(data.wanted);
  const today = data.today && downFromCrown(data.wanted, data.today);
  const series: Series[] = [
    { id: "wanted", name: words.series.wanted, runs: [wanted.near, wanted.off], pen: "pen-2" },
    ...(today
      ? [
          {
            id: "head-today",
            name: words.series.headToday,
            runs: [today.near, today.off],
            pen: "pen-1",
            dash: "8 5",
          } as const,
        ]
      : []),
  ];
  return (
    <div className="true-size-block">
      <h3>{words.template}</h3>
      <p className="measure">
        {words.faces[data.face]} {words.spread(shownFigure(data.spread, "mm", units))}{" "}
        {words.doubt(widthMm.toFixed(0), (widthMm * scale.uPart).toFixed(1))}
      </p>
      <TrueSize what={words.template} series={series} extent={data.wanted} scale={scale} />
    </div>
  );
}
