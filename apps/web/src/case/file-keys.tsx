import { useEffect, useRef, useState } from "react";
import type { Desk } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { CASE_BYTES_MAX, type Problem } from "../road.ts";
import { emptyCase, exampleNames, exampleText, handOut, today } from "./open-save.ts";

/** Examples, new, open, save. Opening asks first where something typed would be lost. */
export function FileKeys({ desk, hand }: { desk: Desk; hand: Hand }) {
  const [names, setNames] = useState<readonly string[]>([]);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const picker = useRef<HTMLInputElement>(null);
  const unsaved = desk.text !== desk.savedText || desk.refused.size > 0;
  const lay = (text: string, name: string) => {
    if (unsaved && !confirm("What was typed into this case is not saved. Lay it aside all the same?")) return;
    setProblems(hand.open(text, name));
  };
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > CASE_BYTES_MAX)
      setProblems([
        { where: file.name, read: `${file.size} bytes`, allowed: `at most ${CASE_BYTES_MAX} bytes` },
      ]);
    else lay(await file.text(), file.name);
  };
  // By its name as chosen: while the text is fetched, the list shows the case on the desk again.
  const layExample = async (name: string) => lay(await exampleText(name), name);
  useEffect(() => {
    exampleNames().then(setNames, () => setNames([]));
  }, []);
  useWarnBeforeLeaving(unsaved);
  useDrop(open);
  return (
    <div className="file-keys">
      <label>
        <span>Examples</span>
        <select
          value={names.includes(desk.fileName) ? desk.fileName : ""}
          onChange={(event) => void layExample(event.target.value)}
        >
          <option value="" disabled>
            Choose an invented case
          </option>
          {names.map((name) => (
            <option key={name} value={name}>
              {name.replace(/\.json$/, "").replaceAll("-", " ")}
            </option>
          ))}
        </select>
      </label>
      <button type="button" onClick={() => lay(emptyCase(today()), "new-case.json")}>
        New
      </button>
      <button type="button" onClick={() => picker.current?.click()}>
        Open
      </button>
      <input
        ref={picker}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label="Case file"
        onChange={(event) => {
          void open(event.target.files?.[0]);
          event.target.value = "";
        }}
      />
      <button
        type="button"
        onClick={() => {
          handOut(desk.fileName, desk.text, "application/json");
          hand.saved();
        }}
      >
        Save
      </button>
      <p className="saved-line" role="status">
        {unsaved ? "Not saved: kept in this tab only" : "Saved as it stands"}
        {desk.refused.size > 0 ? `; ${desk.refused.size} not taken` : ""}
      </p>
      <Problems problems={problems} close={() => setProblems([])} />
    </div>
  );
}

/** Why a file was not opened: where, what was read, what is allowed. */
function Problems({ problems, close }: { problems: readonly Problem[]; close: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (problems.length > 0) dialog.current?.showModal();
    else dialog.current?.close();
  }, [problems]);
  return (
    <dialog ref={dialog} onClose={close} aria-labelledby="not-opened">
      <h2 id="not-opened">This file was not opened</h2>
      <p>The case on the desk is as it was.</p>
      <ul className="problems">
        {problems.map((one) => (
          <li key={`${one.where} ${one.read}`}>
            <span className="figure">{one.where}</span>: read “{one.read}”. Allowed: {one.allowed}.
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => dialog.current?.close()}>
        Back
      </button>
    </dialog>
  );
}

function useWarnBeforeLeaving(unsaved: boolean): void {
  useEffect(() => {
    if (!unsaved) return;
    const warn = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener("beforeunload", warn);
    return () => removeEventListener("beforeunload", warn);
  }, [unsaved]);
}

/** A case file dropped anywhere on the page is opened. */
function useDrop(open: (file: File | undefined) => void): void {
  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      open(event.dataTransfer?.files[0]);
    };
    addEventListener("dragover", over);
    addEventListener("drop", drop);
    return () => {
      removeEventListener("dragover", over);
      removeEventListener("drop", drop);
    };
  });
}
