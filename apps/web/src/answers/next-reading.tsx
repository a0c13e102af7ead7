import { aboutPath, type NextReading as Next, workWords } from "../road.ts";

/** The one reading that would settle what cannot be told, with the way to its field. */
export function NextReading({ next }: { next: Next }) {
  return (
    <section className="next-reading" aria-label="The next reading">
      <p className="over">The one reading that would settle it</p>
      <p className="says">{next.says}</p>
      {next.leadsTo.length > 0 ? (
        <div>
          <p>What it reads decides between:</p>
          <ul className="leads-to">
            {next.leadsTo.map((id) => (
              <li key={id}>{workWords(id).heading}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <a className="key main" href={`#${encodeURIComponent(next.path)}`}>
        Type it: {aboutPath(next.path)}
      </a>
    </section>
  );
}
