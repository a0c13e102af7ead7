/** Gives a file to the person at the screen, as if it had been fetched. */
export function handOut(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken its copy by the time the next task runs.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Names of the invented cases that lie beside the page. */
export async function exampleNames(): Promise<string[]> {
  const given = await fetch("/examples/");
  const names: unknown = given.ok ? await given.json() : [];
  return Array.isArray(names) ? names.filter((name) => typeof name === "string") : [];
}

/** The text of one invented case, sign for sign. */
export async function exampleText(name: string): Promise<string> {
  const given = await fetch(`/examples/${name}`);
  if (!given.ok) throw new Error(`The example ${name} is not there.`);
  return given.text();
}

/** The day as the visit's date, yyyy-mm-dd, by this device's clock. */
export function today(clock = new Date()): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${clock.getFullYear()}-${two(clock.getMonth() + 1)}-${two(clock.getDate())}`;
}

/** A case with nothing read yet. */
export function emptyCase(date: string): string {
  return `{
  "format": "treewright-case",
  "version": 3,
  "title": "New case",
  "visit": { "date": "${date}" },
  "saddle": { "name": "The saddle" },
  "horses": [
    { "name": "The horse" }
  ]
}
`;
}
