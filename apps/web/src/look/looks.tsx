import { useEffect, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";

const LOOKS = ["as the device", "light", "dark", "sun"] as const;
type Look = (typeof LOOKS)[number];
const KEPT = "treewright-look";

const keptLook = (): Look => LOOKS.find((look) => look === localStorage.getItem(KEPT)) ?? "as the device";

/** Light, dark, or for full sun: black on white without a grey. */
export function Looks() {
  const { looks } = useWords();
  const [look, setLook] = useState<Look>(keptLook);
  useEffect(() => {
    localStorage.setItem(KEPT, look);
    if (look === "as the device") delete document.documentElement.dataset.look;
    else document.documentElement.dataset.look = look;
  }, [look]);
  return (
    <label className="looks">
      <span>{looks.title}</span>
      <select
        value={look}
        onChange={(event) => setLook(LOOKS.find((one) => one === event.target.value) ?? "light")}
      >
        {LOOKS.map((one) => (
          <option key={one} value={one}>
            {looks[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
