import { useWords } from "../catalogue/use-words.ts";

/** Big digits for a cold thumb. They write into the field as a keyboard would. */
export function NumberKeys({ typed, onType }: { typed: string; onType: (typed: string) => void }) {
  const words = useWords().visit;
  const sign = (text: string) => <Key key={text} sign={text} onPress={() => onType(typed + text)} />;
  // A unit may be typed behind a figure; without one the usual unit is meant.
  const unit = (name: string) => <Key key={name} sign={name} onPress={() => onType(`${typed} ${name}`)} />;
  const minus = () => onType(typed.startsWith("-") ? typed.slice(1) : `-${typed}`);
  return (
    <div className="number-keys">
      {["1", "2", "3"].map(sign)}
      <Key sign="⌫" name={words.back1} onPress={() => onType(typed.slice(0, -1))} />
      {["4", "5", "6"].map(sign)}
      <Key sign="−" name={words.minus} onPress={minus} />
      {["7", "8", "9"].map(sign)}
      {unit("in")}
      <Key sign="." name={words.stop} onPress={() => onType(`${typed}.`)} />
      {["0", "/"].map(sign)}
      {unit("cm")}
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
