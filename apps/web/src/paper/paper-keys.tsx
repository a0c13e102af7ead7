import type { Desk } from "../desk/desk.ts";

export function PaperKeys({ desk }: { desk: Desk }) {
  return <section className="paper-keys" aria-label="Paper" data-file={desk.fileName} />;
}
