import { type Answer, type GaitFit, refusalSays, THIRDS, type Third } from "../road.ts";

/** Each gait at its peak, by third: a comparison that supports the answers and leads nothing. Closed until somebody asks. */
export function Ridden({ answer }: { answer: Answer }) {
  const { today, chosen } = answer;
  if (today === undefined || today.gaits.length === 0) return null;
  return (
    <details>
      <summary>Ridden, in the calculation</summary>
      <p className="quiet">
        Mean pressure at the peak, near / off, kPa. Only for comparing settings on this back; it permits
        nothing.
      </p>
      <table className="ridden">
        <caption>{chosen ? "Today, and after the change" : "Today"}</caption>
        <thead>
          <tr>
            <th scope="col">Gait</th>
            {THIRDS.map((third) => (
              <th scope="col" key={third}>
                {third}
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
  return (
    <>
      <Row name={`${today.says}, ${today.times.toFixed(2)} times the weight`} gait={today} />
      {after ? <Row name="after" gait={after} /> : null}
    </>
  );
}

function Row({ name, gait }: { name: string; gait: GaitFit }) {
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
        <td colSpan={THIRDS.length}>{refusalSays(gait.why)}</td>
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
