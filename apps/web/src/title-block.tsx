import type { Desk } from "./desk/desk.ts";
import type { Hand } from "./desk/hand.ts";

/** Who, what, when, by whom: the title block of the drawing. The horse is chosen here. */
export function TitleBlock({ desk, hand }: { desk: Desk; hand: Hand }) {
  const { survey } = desk.read;
  return (
    <dl className="title-block">
      <Cell name={survey.invented ? "Case (invented example)" : "Case"} words={survey.title} />
      <div>
        <dt>{survey.horses.length > 1 ? <label htmlFor="horse">Horse</label> : "Horse"}</dt>
        <dd>
          {survey.horses.length > 1 ? (
            <select
              id="horse"
              value={desk.horse}
              onChange={(event) => hand.horse(Number(event.target.value))}
            >
              {survey.horses.map((horse, index) => (
                <option key={horse.name} value={index}>
                  {horse.name}
                </option>
              ))}
            </select>
          ) : (
            survey.horses[0]?.name
          )}
        </dd>
      </div>
      <Cell name="Saddle" words={survey.saddle.name} />
      <Cell
        name="Visit"
        words={[survey.visit.date, survey.visit.place].filter((part) => part !== "").join(", ")}
      />
      <Cell name="Hand" words={survey.worker.name || "not said"} />
    </dl>
  );
}

function Cell({ name, words }: { name: string; words: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </div>
  );
}
