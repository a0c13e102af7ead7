import { indexedStore } from "@treewright/store/indexed.ts";
import { cardOf } from "../../apps/web/src/practice/card.ts";
import { statementsOf } from "../../apps/web/src/practice/first-practice.ts";
import { DATA_BASE, newId, thisMachine } from "../../apps/web/src/practice/machine.ts";
import { Pen } from "../../apps/web/src/practice/pen.ts";
import { revealFrom } from "../../apps/web/src/practice/reveal.ts";
import { type Entry, type Held, OF_VISIT, type Statement } from "../../apps/web/src/records.ts";

const YEARS = 30;
const KEPT_TOGETHER = 200;

/** Fills the data base with so many visits of so many entries, written as the app writes them: readings of the cases, one owner each. */
export async function fill(cases: readonly string[], visits: number, entriesEach: number): Promise<number> {
  const store = await indexedStore(DATA_BASE);
  const machine = thisMachine();
  const pen = new Pen(machine, { author: newId(machine), device: newId(machine) });
  const statements = cases.map((text) => statementsOf(text, true));
  let count = 0;
  for (let from = 0; from < visits; from += KEPT_TOGETHER) {
    const [entries, people, cards]: [Entry[], Held[], ReturnType<typeof cardOf>[]] = [[], [], []];
    for (let at = from; at < Math.min(visits, from + KEPT_TOGETHER); at++) {
      const subject = newId(machine);
      const own = pen.state(subject, [], saidOf(at, statements, entriesEach), []);
      entries.push(...own.entries);
      people.push(...own.people);
      cards.push(cardOf(subject, own.entries, (value) => revealFrom(() => own.people, value), machine));
    }
    await store.keep({ entries, people, cards });
    count += entries.length;
  }
  store.close();
  return count;
}

function saidOf(at: number, cases: readonly (readonly Statement[])[], count: number): readonly Statement[] {
  const day = `20${String(10 + (at % YEARS)).padStart(2, "0")}-${String(1 + (at % 12)).padStart(2, "0")}-15`;
  const [horse, owner] = [`Horse ${at}`, `Owner ${at}`];
  const own: readonly Statement[] = [
    { at: OF_VISIT.begun, value: `${day}T08:00:00.000Z` },
    { at: OF_VISIT.finished, value: `${day}T10:00:00.000Z` },
    { at: "visit.date", value: day },
    { at: "horses[0].name", value: horse },
    { at: "visit.owner", value: owner },
  ];
  const places = new Set(own.map((one) => one.at));
  const readings = (cases[at % cases.length] ?? []).filter((one) => !places.has(one.at));
  // Corrections, where a case has fewer readings than that.
  const more = Array.from(
    { length: count },
    (_, n) => readings[n % readings.length] ?? { at: "x", value: n },
  );
  return [...own, ...more].slice(0, count);
}
