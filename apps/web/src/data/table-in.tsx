import { useState } from "react";
import { FileKey } from "../case/file-key.tsx";
import { today } from "../case/open-save.ts";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useWords } from "../catalogue/use-words.ts";
import type { Practice } from "../practice/practice.ts";
import { type RowIn, type RowsIn, rowsIn } from "../records.ts";
import { beginRows, tableText } from "./table.ts";

/** Horses and owners out of a table: first shown row by row, written only once that was confirmed. */
export function TableIn({ practice, onDone }: { practice: Practice; onDone: () => void }) {
  const { copy } = useWords();
  const [read, setRead] = useState<RowsIn>();
  const [said, setSaid] = useState("");
  const look = async (file: File) => {
    setSaid("");
    const text = await tableText(file);
    const here = practice.shown.get().visits.map(({ horseName, yard }) => ({ horse: horseName, yard }));
    setRead(text.ok ? rowsIn(text.text, here, today()) : text);
  };
  const taken = read?.ok ? read.rows.filter(({ refused }) => refused === undefined) : [];
  const begin = async () => {
    setRead(undefined);
    const begun = await beginRows(practice, taken);
    setSaid(copy.rowsBegun(begun, taken.length));
    onDone();
  };
  return (
    <section className="data-part" aria-labelledby="table">
      <h2 id="table">{copy.tableTitle}</h2>
      <p>{copy.tableSays}</p>
      <p className="app-links">
        <FileKey label={copy.tableFile} accept=".csv,text/csv" onFile={(file) => void look(file)} />
      </p>
      <p role="status">{said}</p>
      {read && !read.ok ? (
        <p role="alert" className="problem">
          <RefusalWords {...read} />
        </p>
      ) : null}
      {read?.ok ? (
        <>
          <h3>{copy.rowsWould(taken.length, read.rows.length - taken.length)}</h3>
          {read.notTaken.length > 0 ? <p>{copy.notTaken(read.notTaken.join(", "))}</p> : null}
          <ul className="visit-list rows-in">
            {read.rows.map((row) => (
              <Row key={row.row} row={row} />
            ))}
          </ul>
          <p className="app-links">
            {taken.length > 0 ? (
              <button type="button" className="main" onClick={() => void begin()}>
                {copy.rowsBegin(taken.length)}
              </button>
            ) : null}
            <button type="button" onClick={() => setRead(undefined)}>
              {copy.rowsLeave}
            </button>
          </p>
        </>
      ) : null}
    </section>
  );
}

/** Names are kept to their own direction, so that none can turn the line. */
function Row({ row: { row, reads, refused } }: { row: RowIn }) {
  const { copy } = useWords();
  return (
    <li className={refused ? "row-refused" : ""}>
      <strong>{copy.row(row)}</strong>{" "}
      {Object.entries(reads).map(([column, text]) => (
        <span key={column}>
          <bdi>{text}</bdi>
          {", "}
        </span>
      ))}
      {refused ? (
        <span>
          <strong>{copy.rowNot}</strong> <RefusalWords {...refused} />
        </span>
      ) : (
        <span>{copy.rowBecomes(reads.owner !== undefined || reads.rider !== undefined)}</span>
      )}
    </li>
  );
}
