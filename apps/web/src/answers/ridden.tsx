import { useTrade, useWords } from "../catalogue/use-words.ts";
import { type Answer, type GaitFit, refusalSays, THIRDS, type Third } from "../road.ts";

/** Each gait at its peak, by third: a comparison that supports the answers and leads nothing. Closed until somebody asks. */
export function Ridden({ answer }: { answer: Answer }) {
  const { today, chosen } = answer;
  const { answers: words, bench } = useWords();
  if (today === undefined || today.gaits.length === 0) return null;
  return (
    <details>
      <summary>{words.ridden}</summary>
      <p className="quiet">{words.riddenSays}</p>
      <table className="ridden">
        <caption>{chosen ? words.todayAndAfter : words.today}</caption>
        <thead>
          <tr>
            <th scope="col">{words.gait}</th>
            {THIRDS.map((third) => (
              <th scope="col" key={third}>
                {bench.thirds[third]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {today.gaits.map((gait, i) => (
            <GaitRows key={gait.gait} today={gait} after={chosen?.gaits[i]} />
          ))}
        </tbody>
      </table>
    </details>
  );
}

function GaitRows({ today, after }: { today: GaitFit; after: GaitFit | undefined }) {
  const { answers: words } = useWords();
  const trade = useTrade();
  return (
    <>
      <Row name={words.gaits(trade.said(today.says), today.times.toFixed(2))} gait={today} />
      {after ? <Row name={words.after} gait={after} /> : null}
    </>
  );
}

function Row({ name, gait }: { name: string; gait: GaitFit }) {
  const trade = useTrade();
  return (
    <tr>
      <th scope="row">{name}</th>
      {gait.ok ? (
        THIRDS.map((third) => (
          <td className="figure" key={third}>
            {bySide(gait.thirds, third)}
          </td>
        ))
      ) : (
        <td colSpan={THIRDS.length}>{trade.said(refusalSays(gait.why))}</td>
      )}
    </tr>
  );
}

function bySide(thirds: Extract<GaitFit, { ok: true }>["thirds"], third: Third): string {
  return thirds
    .filter((one) => one.third === third)
    .map((one) => one.meanKPa.toFixed(1))
    .join(" / ");
}
