import { type Remote, wrap } from "comlink";
import { useRef, useState } from "react";
import { handOut } from "../case/open-save.ts";
import { SendOn } from "../case/send-on.tsx";
import { useLanguage } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import { type CutKind, PAPER_KINDS, type PaperKind, type TemplateAsked } from "../road.ts";
import type { Press } from "./press.ts";
import { pressWorker } from "./press-worker.ts";
import { TemplateKeys } from "./template-keys.tsx";

const MEDIA = { pdf: "application/pdf", svg: "image/svg+xml", dxf: "image/vnd.dxf" };
type Made = Uint8Array<ArrayBuffer> | string | undefined;

/** The paper that was made last: to be looked at, and to be sent on. */
interface Look {
  readonly kind: PaperKind;
  readonly file: File;
  readonly address: string;
}

/** Letter, sheet and template, made on this device as PDF; the template for a machine that cuts too. */
export function PaperKeys({ desk }: { desk: Desk }) {
  const { words: all, tag } = useLanguage();
  const { paper: words } = all;
  const press = useRef<Remote<Press>>(null);
  const [told, setTold] = useState("");
  const [look, setLook] = useState<Look>();
  const [asked, setAsked] = useState<TemplateAsked>({});
  const { answer } = desk;
  const shut = answer === undefined || desk.answering;
  const make = async (
    kind: PaperKind,
    ending: keyof typeof MEDIA,
    by: (press: Remote<Press>) => Promise<Made>,
  ) => {
    setTold(words.making(words[kind].name));
    // The press is a part of its own, fetched when the first paper is wanted.
    press.current ??= wrap<Press>(pressWorker());
    try {
      const made = await by(press.current);
      if (made === undefined) return setTold(words.notThis(words[kind].name, words[kind].needs));
      const name = `${desk.fileName.replace(/\.json$/, "")}-${kind}.${ending}`;
      const file = new File([made], name, { type: MEDIA[ending] });
      handOut(name, file, MEDIA[ending]);
      if (look) URL.revokeObjectURL(look.address);
      setLook({ kind, file, address: URL.createObjectURL(file) });
      setTold(words.made(words[kind].name, name, Math.ceil(file.size / 1024)));
    } catch (error) {
      setTold(words.notMade(words[kind].name, error instanceof Error ? error.message : String(error)));
    }
  };
  const print = (kind: PaperKind) =>
    answer && make(kind, "pdf", (press) => press.print(kind, desk.text, answer, asked, tag));
  const cut = (kind: CutKind) =>
    answer && make("template", kind, (press) => press.cut(kind, desk.text, answer, asked));
  return (
    <section className="paper-keys" aria-label={words.title}>
      <header className="section-head">
        <h2>{words.title}</h2>
        <p className="quiet">{words.says}</p>
      </header>
      <div className="papers">
        {PAPER_KINDS.map((kind) => (
          <div key={kind} className="paper">
            <button type="button" disabled={shut} onClick={() => print(kind)}>
              {words.asPdf(words[kind].name)}
            </button>
            <p>{words[kind].says}</p>
            {kind === "template" ? (
              <TemplateKeys asked={asked} shut={shut} onAsk={setAsked} onCut={cut} />
            ) : null}
          </div>
        ))}
      </div>
      <p role="status" className="paper-told">
        {told}{" "}
        {look?.file.type === MEDIA.pdf && told !== "" ? (
          <a
            className="to-reading"
            href={look.address}
            target="_blank"
            rel="noreferrer"
            hrefLang={look.kind === "letter" ? tag : "en"}
          >
            {words.lookAt(words[look.kind].name)}
          </a>
        ) : null}
      </p>
      {look ? <SendOn what={words[look.kind].name} files={[look.file]} /> : null}
    </section>
  );
}
