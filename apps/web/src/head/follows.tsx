import { State } from "../answers/state.tsx";
import type { Followed } from "../drawing/view.ts";

/** What the moved head brings with it, today beside after. Roles are said, since narrow screens lay the rows out as blocks. */
export function Follows({ rows }: { rows: readonly Followed[] }) {
  return (
    <table className="follows" role="table">
      <caption>What follows</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th scope="col" role="columnheader">What</th>
          <th scope="col" role="columnheader">Today</th>
          <th scope="col" role="columnheader">After</th>
          <th scope="col" role="columnheader">Limit</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr key={row.what} role="row">
            <th scope="row" role="rowheader">{row.what}</th>
            <td role="cell" className="figure">{row.today}</td>
            <td role="cell" className="figure after">{row.after}</td>
            <td role="cell"><State outcome={row.outcome} /></td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
