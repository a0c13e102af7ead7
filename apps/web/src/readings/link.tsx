import { useTrade } from "../catalogue/use-words.ts";
import { aboutPath } from "../road.ts";

/** Each on a line of its own, so that none is cut off from the next by a sign alone. */
export function ReadingLinks({ paths }: { paths: readonly string[] }) {
  return (
    <ul className="to-readings">
      {paths.map((path) => (
        <li key={path}>
          <ReadingLink path={path} />
        </li>
      ))}
    </ul>
  );
}

/** Leads to the field in which a reading is typed. */
function ReadingLink({ path }: { path: string }) {
  const trade = useTrade();
  return (
    <a className="to-reading" href={`#${encodeURIComponent(path)}`}>
      {aboutPath(path, trade.said)}
    </a>
  );
}
