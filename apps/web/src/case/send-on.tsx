import { useState } from "react";
import { useWords } from "../catalogue/use-words.ts";

interface Given {
  /** What is sent, as the key names it. */
  readonly what: string;
  /** The same content under each name and type that may be sent; the first that this device can send is. */
  readonly files: readonly File[];
}

/** Hands a file to another app of this device, such as one for mail; nothing is shown where the device cannot do that. */
export function SendOn({ what, files }: Given) {
  const { sendOn: words } = useWords();
  const [told, setTold] = useState("");
  const file = files.find(canSend);
  if (file === undefined) return null;
  const send = async () => {
    try {
      await navigator.share({ files: [file] });
      setTold(words.sent);
    } catch (error) {
      // Who turns back at the device's own list has not met a fault.
      const turnedBack = error instanceof DOMException && error.name === "AbortError";
      setTold(turnedBack ? "" : words.notSent);
    }
  };
  return (
    <span className="send-on">
      <button type="button" onClick={() => void send()}>
        {words.key(what)}
      </button>
      <span role="status">{told}</span>
    </span>
  );
}

const canSend = (file: File): boolean =>
  typeof navigator.share === "function" && navigator.canShare?.({ files: [file] }) === true;
