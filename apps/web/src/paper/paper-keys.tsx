import { type Remote, wrap } from "comlink";
import { useRef, useState } from "react";
import { handOut } from "../case/open-save.ts";
import type { Desk } from "../desk/desk.ts";
import { PAPER_KINDS, type PaperKind } from "../road.ts";
import { PAPER_WORDS } from "../words.ts";
import type { Press } from "./press.ts";
import { pressWorker } from "./press-worker.ts";

/** Letter, sheet and template, made on this device as PDF. */
export function PaperKeys({ desk }: { desk: Desk }) {
  const press = useRef<Remote<Press>>(null);
  const [told, setTold] = useState("");
  const [look, setLook] = useState<{ kind: PaperKind; address: string }>();
  const print = async (kind: PaperKind) => {
    if (desk.answer === undefined) return;
    setTold(`${PAPER_WORDS[kind].name}: being made on this device.`);
    // The press is a part of its own, fetched when the first paper is wanted.
    press.current ??= wrap<Press>(pressWorker());
    try {
      const bytes = await press.current.print(kind, desk.text, desk.answer);
      if (bytes === undefined)
        return setTold(`${PAPER_WORDS[kind].name}: not for this case. ${PAPER_WORDS[kind].needs}`);
      const name = `${desk.fileName.replace(/\.json$/, "")}-${kind}.pdf`;
      handOut(name, bytes, "application/pdf");
      if (look) URL.revokeObjectURL(look.address);
      setLook({ kind, address: URL.createObjectURL(new Blob([bytes], { type: "application/pdf" })) });
      setTold(`${PAPER_WORDS[kind].name}: ${name}, ${Math.ceil(bytes.length / 1024)} kB.`);
    } catch (error) {
      setTold(
        `${PAPER_WORDS[kind].name} was not made: ${error instanceof Error ? error.message : String(error)}.`,
      );
    }
  };
  return (
    <section className="paper-keys" aria-label="Paper">
      <header className="section-head">
        <h2>Paper</h2>
        <p className="quiet">
          Print at 100 %, no fitting to the page. Then measure the bars: a template whose bars are out by more
          than 0.5 mm in 100 is not to be used.
        </p>
      </header>
      <div className="papers">
        {PAPER_KINDS.map((kind) => (
          <div key={kind} className="paper">
            <button
              type="button"
              disabled={desk.answer === undefined || desk.answering}
              onClick={() => print(kind)}
            >
              {PAPER_WORDS[kind].name} as PDF
            </button>
            <p>{PAPER_WORDS[kind].says}</p>
          </div>
        ))}
      </div>
      <p role="status" className="paper-told">
        {told}{" "}
        {look && told !== "" ? (
          <a className="to-reading" href={look.address} target="_blank" rel="noreferrer">
            Look at the {PAPER_WORDS[look.kind].name.toLowerCase()}
          </a>
        ) : null}
      </p>
    </section>
  );
}
