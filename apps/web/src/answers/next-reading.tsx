import { useTrade, useWords } from "../catalogue/use-words.ts";
import { aboutPath, type NextReading as Next, readingSays, workWords } from "../road.ts";

/** The one reading that would settle what cannot be told, with the way to its field. */
export function NextReading({ next }: { next: Next }) {
  const { answers: words } = useWords();
  const trade = useTrade();
  return (
    <section className="next-reading" aria-label={words.nextReading}>
      <p className="over">{words.settles}</p>
      <p className="says">{words.readNext(readingSays(next.path, trade.said))}</p>
      {next.leadsTo.length > 0 ? (
        <div>
          <p>{words.decides}</p>
          <ul className="leads-to">
            {next.leadsTo.map((id) => (
              <li key={id}>{trade.said(workWords(id).heading)}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <a className="key main" href={`#${encodeURIComponent(next.path)}`}>
        {words.typeIt(aboutPath(next.path, trade.said))}
      </a>
    </section>
  );
}
