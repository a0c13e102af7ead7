import { wrap } from "comlink";
import { useState } from "react";
import { handOut, today } from "../case/open-save.ts";
import { useWords } from "../catalogue/use-words.ts";
import type { Press } from "../paper/press.ts";
import type { Signature } from "../records.ts";

interface Given {
  readonly text: string;
  readonly fingerprint: string;
  readonly signed: Signature | undefined;
  /** Of the text. */
  readonly language: string;
}

/** The agreement as a PDF, made on this device; unsigned it has a line to sign on. */
export function AgreementPaper({ text, fingerprint, signed, language }: Given) {
  const { agreement: words } = useWords();
  const [told, setTold] = useState("");
  const print = async () => {
    const worker = new Worker(new URL("../paper/press.ts", import.meta.url), { type: "module" });
    try {
      const bytes = await wrap<Press>(worker).agreement(text, fingerprint, signed, language);
      handOut(`agreement-${today()}.pdf`, bytes, "application/pdf");
      setTold(words.printed);
    } catch (error) {
      setTold(words.notPrinted(error instanceof Error ? error.message : String(error)));
    } finally {
      worker.terminate();
    }
  };
  return (
    <>
      <button type="button" onClick={() => void print()}>
        {words.print}
      </button>
      <p role="status">{told}</p>
    </>
  );
}
