import { useTrade, useWords } from "../catalogue/use-words.ts";
import { fieldAt } from "../road.ts";
import { saidWords } from "../visit/said-words.ts";
import type { HorseVisit } from "./horse-visits.ts";

/** What was done to the saddle's head before, as it was told at the last visit that asked. */
export function Alterations({ visits }: { visits: readonly HorseVisit[] }) {
  const { horse: words } = useWords();
  const told = visits.find(({ draft }) => (draft.file.saddle.past?.alterations?.length ?? 0) > 0);
  const done = told?.draft.file.saddle.past?.alterations ?? [];
  return (
    <section aria-labelledby="alterations">
      <h2 id="alterations">{words.alterations}</h2>
      {done.length === 0 ? (
        <p>{words.noAlterations}</p>
      ) : (
        <ol className="alterations">
          {done.map((one) => (
            <li key={JSON.stringify(one)}>
              {Object.entries(one).map(([name, value]) => (
                <Told key={name} name={name} value={value} />
              ))}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

/** One place of an alteration, named as it is asked for. */
function Told({ name, value }: { name: string; value: unknown }) {
  const trade = useTrade();
  const path = `saddle.past.alterations[0].${name}`;
  const field = fieldAt(path);
  if (field === undefined) return null;
  const { about, unit, words } = field;
  const said = { path, kind: words ? ("choice" as const) : ("measured" as const), ...(unit ? { unit } : {}) };
  return (
    <p>
      {trade.said(about)}: <span className="figure">{saidWords(value, said, trade)}</span>
    </p>
  );
}
