import { useWords } from "../catalogue/use-words.ts";

interface Given {
  readonly typed: string;
  /** Two units that may be typed instead of the one beside the field; undefined for points, whose unit stands before them all. */
  readonly others: readonly [string, string] | undefined;
  readonly onType: (typed: string) => void;
}

const OTHERS: ReadonlyMap<string, readonly [string, string]> = new Map([
  ["in", ["mm", "cm"]],
  ["kg", ["lb", "st"]],
  ["lb", ["kg", "st"]],
]);

export const otherUnits = (beside: string | undefined): readonly [string, string] =>
  OTHERS.get(beside ?? "") ?? ["in", "cm"];

/** Big digits for a cold thumb. They write into the field as a keyboard would. */
export function NumberKeys({ typed, others, onType }: Given) {
  const words = useWords().visit;
  const sign = (text: string) => <Key key={text} sign={text} onPress={() => onType(typed + text)} />;
  // A unit may be typed behind a figure; without one that beside the field is meant.
  const unit = (name: string) => <Key key={name} sign={name} onPress={() => onType(`${typed} ${name}`)} />;
  const minus = () =>
    onType(others === undefined ? `${typed}-` : typed.startsWith("-") ? typed.slice(1) : `-${typed}`);
  return (
    // Digits stand the same way round in every language.
    <div className="number-keys" dir="ltr">
      {["1", "2", "3"].map(sign)}
      <Key sign="⌫" name={words.back1} onPress={() => onType(typed.slice(0, -1))} />
      {["4", "5", "6"].map(sign)}
      <Key sign="−" name={words.minus} onPress={minus} />
      {["7", "8", "9"].map(sign)}
      {others ? (
        unit(others[0])
      ) : (
        <Key sign="␣" name={words.nextFigure} onPress={() => onType(`${typed} `)} />
      )}
      <Key sign="." name={words.stop} onPress={() => onType(`${typed}.`)} />
      {["0", "/"].map(sign)}
      {others ? (
        unit(others[1])
      ) : (
        <Key sign=";" name={words.nextPoint} onPress={() => onType(`${typed}; `)} />
      )}
    </div>
  );
}

function Key({ sign, name, onPress }: { sign: string; name?: string; onPress: () => void }) {
  return (
    <button type="button" className="figure" aria-label={name} onClick={onPress}>
      {sign}
    </button>
  );
}
