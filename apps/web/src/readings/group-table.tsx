import { useCallback } from "react";
import type { Json, Path } from "../case/put.ts";
import { type Desk, typedAt } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { type FieldRecord, type Section, stepsOf } from "../road.ts";
import { Field } from "./field.tsx";
import { fieldsOf } from "./groups.ts";
import { List } from "./list.tsx";
import { labelOf, placesIn } from "./naming.ts";
import { Points } from "./trace.tsx";

const parentOf = (path: string) => path.slice(0, path.lastIndexOf("."));
const inList = (path: string, list: string) => path.startsWith(`${list}[]`);

/** The fields of one group; those of one station, side or zone stand together under its name. */
export function GroupTable({ group, desk, hand }: { group: Section; desk: Desk; hand: Hand }) {
  const fields = fieldsOf(group).map((field) => ({
    ...field,
    path: field.path.replace("horses[]", `horses[${desk.horse}]`),
  }));
  const lists = fields.filter((field) => field.kind === "list");
  const own = fields.filter((field) => !lists.some((list) => inList(field.path, list.path)));
  return <Rows title={group.title} fields={own} all={fields} desk={desk} hand={hand} />;
}

export interface RowsProps {
  /** Title of the group. */
  readonly title: string;
  readonly fields: readonly FieldRecord[];
  readonly all: readonly FieldRecord[];
  readonly desk: Desk;
  readonly hand: Hand;
}

/** Rows in the order of the case. `all` also holds what stands inside lists. */
export function Rows({ title, fields, all, desk, hand }: RowsProps) {
  const take = useCallback((path: Path, value: Json, typed: string) => hand.type(path, value, typed), [hand]);
  const clear = useCallback((path: Path) => void hand.takeOut(path), [hand]);
  let above = "";
  return fields
    .filter((field) => field.kind !== "group" && field.kind !== "fixed")
    .map((field) => {
      const places = placesIn(field.path);
      const heading = places !== "" && parentOf(field.path) !== above ? <h4>{places}</h4> : null;
      above = parentOf(field.path);
      return (
        <div key={field.path} className="row">
          {heading}
          <Row
            title={title}
            field={field}
            all={all}
            desk={desk}
            hand={hand}
            take={take}
            clear={clear}
            bare={places !== ""}
          />
        </div>
      );
    });
}

interface RowProps {
  readonly title: string;
  readonly field: FieldRecord;
  readonly all: readonly FieldRecord[];
  readonly desk: Desk;
  readonly hand: Hand;
  readonly take: (path: Path, value: Json, typed: string) => void;
  readonly clear: (path: Path) => void;
  /** Its places stand in the heading above it already. */
  readonly bare: boolean;
}

function Row({ title, field, all, desk, hand, take, clear, bare }: RowProps) {
  const { path } = field;
  const refused = desk.refused.get(path);
  if (field.kind === "list")
    return <List title={title} list={field} all={all} desk={desk} hand={hand} rows={Rows} />;
  const label = labelOf(path, title, bare || /\[\d+\]/.test(path.replace(/^horses\[\d+\]/, "")));
  if (field.kind === "points")
    return (
      <Points
        id={path}
        label={label}
        hint="One point a line, near side first; its unit stands above."
        points={typedAt(desk, path)}
        problem={refused?.problem}
        take={(points, typed) => take(stepsOf(path), points, typed)}
      />
    );
  return (
    <Field
      path={path}
      label={label}
      field={field}
      value={typedAt(desk, path)}
      refused={refused}
      take={take}
      clear={clear}
    />
  );
}
