import { State } from "../answers/state.tsx";
import type { Followed } from "../drawing/view.ts";

/** What the moved head brings with it, today beside after. */
export function Follows({ rows }: { rows: readonly Followed[] }) {
  return (
    <table className="follows">
      <caption>What follows</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Today</th>
          <th scope="col">After</th>
          <th scope="col">Limit</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.what}>
            <th scope="row">{row.what}</th>
            <td className="figure">{row.today}</td>
            <td className="figure after">{row.after}</td>
            <td>
              <State outcome={row.outcome} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
