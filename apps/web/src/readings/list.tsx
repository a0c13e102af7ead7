import { EN } from "../catalogue/en.ts";
import { type Desk, typedAt } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { type FieldRecord, STATIONS, stepsOf } from "../road.ts";
import { Points } from "./trace.tsx";

interface Props {
  readonly title: string;
  readonly list: FieldRecord;
  readonly all: readonly FieldRecord[];
  readonly desk: Desk;
  readonly hand: Hand;
  /** Draws the fields of one item. */
  readonly rows: (props: {
    title: string;
    fields: readonly FieldRecord[];
    all: readonly FieldRecord[];
    desk: Desk;
    hand: Hand;
  }) => React.ReactNode;
}

/** Things of which there may be several: traces, alterations, plates, repeats of a trace. */
export function List({ title, list, all, desk, hand, rows: Rows }: Props) {
  const value = typedAt(desk, list.path);
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  const inside = all.filter(
    (field) => field.path.startsWith(`${list.path}[]`) && field.path !== `${list.path}[]`,
  );
  return (
    <fieldset className="list">
      <legend>{list.about}</legend>
      {items.map((_, index) => {
        const here = `${list.path}[${index}]`;
        const fields = inside.map((field) => ({
          ...field,
          path: field.path.replace(`${list.path}[]`, here),
        }));
        const own = fields.filter((field) => !field.path.includes("[]"));
        return (
          // The place in the list is what names an item; items are only added at the end.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <fieldset className="item" key={index}>
            <legend className="figure">{index + 1}</legend>
            <Rows title={title} fields={own} all={fields} desk={desk} hand={hand} />
            <button type="button" onClick={() => hand.takeOut(stepsOf(here))}>
              Take number {index + 1} out
            </button>
          </fieldset>
        );
      })}
      <Another list={list} count={items.length} desk={desk} hand={hand} />
    </fieldset>
  );
}

/** Begins one more: a trace begins with its points, anything else empty. */
function Another({ list, count, desk, hand }: Pick<Props, "list" | "desk" | "hand"> & { count: number }) {
  const path = `${list.path}[${count}]`;
  const refused = desk.refused.get(path);
  if (list.path.endsWith(".traces"))
    return STATIONS.map((station) => (
      <details key={station}>
        <summary>Another trace at the {EN.bench.stations[station].toLowerCase()} station</summary>
        <Points
          id={`${path} ${station}`}
          label="Points of the new trace, y and z in mm"
          hint="One point a line, near side first: y to the horse's right, z up, top of the back at 0 0."
          points={undefined}
          problem={refused?.problem}
          take={(points, typed) => hand.type(stepsOf(path), { station, points }, typed)}
        />
      </details>
    ));
  if (list.path.endsWith(".repeats")) return null;
  const begin = list.path.endsWith(".alterations") ? { date: "unknown" } : {};
  return (
    <button type="button" onClick={() => hand.type(stepsOf(path), begin, "")}>
      Another one
    </button>
  );
}
