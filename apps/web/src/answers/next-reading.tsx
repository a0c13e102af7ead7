import { aboutPath, type NextReading as Next } from "../road.ts";
import { WORK_WORDS } from "../words.ts";

/** The one reading that would settle what cannot be told, with the way to its field. */
export function NextReading({ next }: { next: Next }) {
  return (
    <section className="next-reading" aria-label="The next reading">
      <p className="over">The one reading that would settle it</p>
      <p className="says">{next.says}</p>
      {next.leadsTo.length > 0 ? <p>It can lead to: {next.leadsTo.map((id) => WORK_WORDS[id].toLowerCase()).join("; ")}.</p> : null}
      <a className="key main" href={`#${encodeURIComponent(next.path)}`}>
        Type it: {aboutPath(next.path)}
      </a>
    </section>
  );
}
