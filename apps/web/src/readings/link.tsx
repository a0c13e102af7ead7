import { aboutPath } from "../road.ts";

/** Leads to the field in which a reading is typed. */
export function ReadingLink({ path }: { path: string }) {
  return (
    <a className="to-reading" href={`#${encodeURIComponent(path)}`}>
      {aboutPath(path)}
    </a>
  );
}
