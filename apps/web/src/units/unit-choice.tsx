import { useWords } from "../catalogue/use-words.ts";
import { UNIT_CHOICES } from "../road.ts";
import { chooseUnits, useUnits } from "./units.ts";

/** What lengths and weights are typed and shown in on this device. */
export function UnitChoice() {
  const { units: words } = useWords();
  const units = useUnits();
  return (
    <>
      <label className="looks">
        <span>{words.lengths}</span>
        <select
          value={units.length}
          onChange={({ target }) =>
            chooseUnits({ length: UNIT_CHOICES.length.find((one) => one === target.value) ?? "mm" })
          }
        >
          {UNIT_CHOICES.length.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
      </label>
      <label className="looks">
        <span>{words.masses}</span>
        <select
          value={units.mass}
          onChange={({ target }) =>
            chooseUnits({ mass: UNIT_CHOICES.mass.find((one) => one === target.value) ?? "kg" })
          }
        >
          {UNIT_CHOICES.mass.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
      </label>
    </>
  );
}
