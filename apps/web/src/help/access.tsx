import { useWords } from "../catalogue/use-words.ts";

/** What was tested of the app's accessibility, what fails, and what nobody tested. */
export function Access() {
  const words = useWords().help.access;
  return (
    <section aria-labelledby="access">
      <h2 id="access">{words.title}</h2>
      <p>{words.aim}</p>
      <List title={words.testedTitle} items={words.tested} />
      <List title={words.failsTitle} items={words.fails} />
      <List title={words.notTestedTitle} items={words.notTested} />
      <h3>{words.tellTitle}</h3>
      <p>{words.tell}</p>
    </section>
  );
}

function List({ title, items }: { title: string; items: Readonly<Record<string, string>> }) {
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {Object.entries(items).map(([key, says]) => (
          <li key={key}>{says}</li>
        ))}
      </ul>
    </>
  );
}
