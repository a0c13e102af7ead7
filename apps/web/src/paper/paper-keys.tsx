import { type Remote, wrap } from "comlink";
import { useRef, useState } from "react";
import { handOut } from "../case/open-save.ts";
import { useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import { PAPER_KINDS, type PaperKind } from "../road.ts";
import type { Press } from "./press.ts";
import { pressWorker } from "./press-worker.ts";

/** Letter, sheet and template, made on this device as PDF. */
export function PaperKeys({ desk }: { desk: Desk }) {
  const { paper: words } = useWords();
  const press = useRef<Remote<Press>>(null);
  const [told, setTold] = useState("");
  const [look, setLook] = useState<{ kind: PaperKind; address: string }>();
  const print = async (kind: PaperKind) => {
    if (desk.answer === undefined) return;
    setTold(words.making(words[kind].name));
    // The press is a part of its own, fetched when the first paper is wanted.
    press.current ??= wrap<Press>(pressWorker());
    try {
      const bytes = await press.current.print(kind, desk.text, desk.answer);
      if (bytes === undefined) return setTold(words.notThis(words[kind].name, words[kind].needs));
      const name = `${desk.fileName.replace(/\.json$/, "")}-${kind}.pdf`;
      handOut(name, bytes, "application/pdf");
      if (look) URL.revokeObjectURL(look.address);
      setLook({ kind, address: URL.createObjectURL(new Blob([bytes], { type: "application/pdf" })) });
      setTold(words.made(words[kind].name, name, Math.ceil(bytes.length / 1024)));
    } catch (error) {
      setTold(words.notMade(words[kind].name, error instanceof Error ? error.message : String(error)));
    }
  };
  return (
    <section className="paper-keys" aria-label={words.title}>
      <header className="section-head">
        <h2>{words.title}</h2>
        <p className="quiet">{words.says}</p>
      </header>
      <div className="papers">
        {PAPER_KINDS.map((kind) => (
          <div key={kind} className="paper">
            <button
              type="button"
              disabled={desk.answer === undefined || desk.answering}
              onClick={() => print(kind)}
            >
              {words.asPdf(words[kind].name)}
            </button>
            <p>{words[kind].says}</p>
          </div>
        ))}
      </div>
      <p role="status" className="paper-told">
        {told}{" "}
        {look && told !== "" ? (
          <a className="to-reading" href={look.address} target="_blank" rel="noreferrer" hrefLang="en">
            {words.lookAt(words[look.kind].name)}
          </a>
        ) : null}
      </p>
    </section>
  );
}
