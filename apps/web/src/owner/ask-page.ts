import { type OwnerAsk, ownerQuestionOf, ownerQuestions } from "@treewright/core/judge/owner/asks.ts";
import { answerOwner, type OwnerAnswer } from "@treewright/core/judge/owner.ts";
import { drawingFor } from "./drawings.ts";
import { element } from "./element.ts";
import { PAGE_WORDS } from "./page-words.ts";
import { OWNER_LANGUAGES, type OwnerTongue } from "./tongues.ts";

const nameOf = ({ group, name }: OwnerAsk): string => `${group} ${name}`.trim();

/** What was chosen so far, by the names of the questions, and whether it was asked: both outlive a change of language. */
export interface OwnerChose {
  readonly words: FormData;
  readonly asked: boolean;
}
export const NOTHING_CHOSEN: OwnerChose = { words: new FormData(), asked: false };

/**
 * The owner's question as a page: what may be done at home, and whom to see. Nothing of it is a measurement, and it shows no figure for
 * press or heat. Nothing is kept but the language, and nothing is sent. speak: the page is wanted in the language with this tag.
 */
export function askPage(
  place: HTMLElement,
  tongue: OwnerTongue,
  chose: OwnerChose,
  speak: (tag: string, chose: OwnerChose) => void,
): void {
  const { said } = tongue;
  const answer = element("section", { "aria-live": "polite", id: "answer", tabindex: "-1" });
  const form = element(
    "form",
    {},
    ...ownerQuestions().map((asked) => questionField(asked, tongue, chose)),
    element("button", { type: "submit" }, said(PAGE_WORDS.ask)),
  );
  const tell = () => {
    const words = new FormData(form);
    const question = ownerQuestionOf((one) => String(words.get(nameOf(one)) ?? one.otherwise));
    answer.replaceChildren(...answerLines(answerOwner(question), tongue));
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    tell();
    answer.focus();
  });
  const now = (): OwnerChose => ({ words: new FormData(form), asked: answer.hasChildNodes() });
  const { title, intro, never, vetFirst } = PAGE_WORDS;
  place.replaceChildren(
    element(
      "main",
      { class: "owner" },
      languageKeys(tongue, (tag) => speak(tag, now())),
      element("h1", {}, said(title)),
      element("p", {}, [intro, never, vetFirst].map(said).join(" ")),
      ...(tongue.note === undefined ? [] : [element("p", { class: "quiet" }, tongue.note)]),
      form,
      answer,
    ),
  );
  if (chose.asked) tell();
}

function languageKeys({ tag }: OwnerTongue, speak: (tag: string) => void): HTMLElement {
  const keys = Object.entries(OWNER_LANGUAGES).map(([other, name]) => {
    const key = element(
      "button",
      { type: "button", lang: other, "aria-pressed": String(other === tag) },
      name,
    );
    key.addEventListener("click", () => speak(other));
    return key;
  });
  return element("div", { class: "owner-choices" }, ...keys);
}

function questionField(asked: OwnerAsk, { said, choice }: OwnerTongue, chose: OwnerChose): HTMLElement {
  const name = nameOf(asked);
  const drawing = asked.group === "" ? drawingFor(asked.name, said) : undefined;
  const chosen = chose.words.get(name) ?? asked.otherwise;
  const choices = asked.words.map((word) => {
    const input = element("input", { type: "radio", name, value: word });
    input.checked = word === chosen;
    return element("label", { class: "key" }, input, choice(word, asked.name));
  });
  const legend = element("legend", {}, said(asked.asks));
  const all = element("div", { class: "owner-choices" }, ...choices);
  return element("fieldset", {}, legend, ...(drawing ? [drawing] : []), all);
}

function answerLines(
  { stops, says, atHome, see, because }: OwnerAnswer,
  { said }: OwnerTongue,
): readonly HTMLElement[] {
  const heading = (words: string) => element("h2", {}, said(words));
  const text = (sentences: readonly string[]) => element("p", {}, sentences.map(said).join(" "));
  const list = (lines: readonly string[]) =>
    element("ul", {}, ...lines.map((line) => element("li", {}, said(line))));
  return [
    ...stops.map((stop) => element("p", { class: "stop" }, said(stop))),
    heading(PAGE_WORDS.horse),
    text(says.horse),
    heading(PAGE_WORDS.saddle),
    text(says.saddle),
    ...(atHome.length > 0 ? [heading(PAGE_WORDS.home), list(atHome)] : []),
    heading(PAGE_WORDS.see),
    element(
      "ol",
      {},
      ...see.map(({ who, why }) => element("li", {}, element("strong", {}, said(who)), `: ${said(why)}`)),
    ),
    heading(PAGE_WORDS.why),
    list(because.map((one) => one.says)),
    text([PAGE_WORDS.promise]),
  ];
}
