import { State } from "../answers/state.tsx";
import { useWords } from "../catalogue/use-words.ts";
import type { Followed } from "../drawing/view.ts";

/** What the moved head brings with it, today beside after. */
export function Follows({ rows }: { rows: readonly Followed[] }) {
  const { bench: words } = useWords();
  return (
    <table className="follows">
      <caption>{words.follows}</caption>
      <thead>
        <tr>
          <th scope="col">{words.what}</th>
          <th scope="col">{words.today}</th>
          <th scope="col">{words.after}</th>
          <th scope="col">{words.limit}</th>
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
