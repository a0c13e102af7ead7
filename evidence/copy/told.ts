import { committed, type Held } from "@treewright/core/records/personal.ts";
import type { Photo, Records } from "@treewright/core/records/records-file.ts";
import { CopyTexts } from "@treewright/core/report/copy/texts.ts";
import { listedOf, type ToldPaper, visitsTold } from "@treewright/core/report/copy/visit-told.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import { Device, idOf } from "../records/written.ts";

/** What a stranger could type, or write into a file, to make a page, a table or a name do something. */
export const HOSTILE = [
  "<script>document.title='ran'</script>",
  '"><img src=x onerror="document.title=\'ran\'">',
  "' onmouseover='x",
  "</style><script>1</script>",
  "<!--",
  "&lt;b&gt;",
  '=HYPERLINK("http://h.example/","look")',
  "@SUM(1+1)",
  "+1",
  "javascript:alert(1)",
  "\u202egpj.exe",
  "\u2067turned",
  "a\u0000b\u0007",
  "../../x",
  "]]>",
  "x".repeat(200_000),
] as const;

export const PHOTO: Photo = { hash: "ab".repeat(32), type: "image/jpeg", bytes: 3 };
export const SUBJECT = idOf(4711);
export const OTHER = idOf(4712);

const heldOf = (field: string, value: string, n: number): Held => ({
  person: idOf(n),
  field,
  salt: String(n).padStart(64, "0"),
  value,
});

/** Two visits: one in which everything that can be typed is this text, and one with readings, a dispute and a person erased. */
export function recordsWith(text: string): Records {
  const device = new Device(1);
  const owner = heldOf("owner", text, 801);
  device.state(OF_VISIT.begun, "2031-04-12T08:00:00.000Z", SUBJECT);
  for (const at of ["visit.date", "horses[0].name", "visit.place", "visit.asked", "saddle.name"])
    device.state(at, text, SUBJECT);
  device.write("stated", { at: "visit.owner", value: committed(owner) }, SUBJECT);
  for (const at of [OF_VISIT.done, OF_VISIT.agreedWork, OF_VISIT.horseAnswer, OF_VISIT.finished])
    device.state(at, text, SUBJECT);
  // Values that no screen would let in, and a place that no case has.
  device.write(
    "stated",
    { at: "saddle.maker", value: { [text.slice(0, 50)]: [text.slice(0, 50)] } },
    SUBJECT,
  );
  device.state(text.slice(0, 200), "x", SUBJECT);
  device.state(OF_VISIT.begun, "2031-04-12T08:00:00.000Z", OTHER);
  device.state("visit.date", "2031-04-13", OTHER);
  device.state("horses[0].name", "Curlew", OTHER);
  device.state("saddle.head.spreadTips", -3.5, OTHER);
  device.state("visit.groundSlope", "-3 deg", OTHER);
  device.write("stated", { at: "photo", value: { hash: PHOTO.hash } }, OTHER);
  device.write("stated", { at: "visit.owner", value: committed(heldOf("owner", "Gone", 802)) }, OTHER);
  const elsewhere = new Device(2);
  elsewhere.entries = device.entries;
  elsewhere.state("visit.place", "Low Byre", OTHER);
  device.state("visit.place", "High Byre", OTHER);
  const entries = [
    ...new Map([...device.entries, ...elsewhere.entries].map((one) => [one.hash, one])).values(),
  ];
  return { entries, people: [owner], photos: [PHOTO] };
}

/** Pages and tables of these records, by their path in a copy. */
export function textsOf(
  records: Records,
  papers: ReadonlyMap<string, readonly ToldPaper[]> = new Map(),
  without: readonly string[] = [],
): ReadonlyMap<string, string> {
  const told = visitsTold(records, papers);
  const texts = new CopyTexts(told.map(listedOf), { madeAt: "2031-04-12T09:00:00.000Z", without });
  const files = new Map<string, string>();
  for (const { path, text } of [
    ...texts.begin(),
    ...told.flatMap((one) => texts.visit(one)),
    ...texts.end(records.people),
  ])
    files.set(path, (files.get(path) ?? "") + text);
  return files;
}
