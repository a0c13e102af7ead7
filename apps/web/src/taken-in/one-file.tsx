import { type ReactNode, useState } from "react";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useWords } from "../catalogue/use-words.ts";
import type { Practice } from "../practice/practice.ts";
import { visitAddress } from "../route.ts";
import { beginFromCase } from "./begin-from-case.ts";

interface Given {
  readonly practice: Practice;
  readonly file: File;
  /** Resolves once the file is let go. */
  readonly onKept: () => Promise<void>;
}

/** A file that is no picture: a case, which begins a visit. */
export function OneFile({ practice, file, onKept }: Given) {
  const { takenIn: words } = useWords();
  const [told, setTold] = useState<ReactNode>(null);
  const begin = async () => {
    const begun = await beginFromCase(practice, file);
    if (!begun.ok) return setTold(begun.refusals.map((one) => <Refused key={one.where} {...one} />));
    await onKept();
    location.hash = visitAddress(begun.subject);
  };
  return (
    <>
      <p>{words.caseSays}</p>
      <button type="button" className="main" onClick={() => void begin()}>
        {words.begin}
      </button>
      <ul className="problems" role="alert">
        {told}
      </ul>
    </>
  );
}

const Refused = (refusal: { where: string; read: string; allowed: string }) => (
  <li>
    <RefusalWords {...refusal} />
  </li>
);
