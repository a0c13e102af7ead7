import {
  type OwnerAsk,
  offeredWord,
  ownerQuestionOf,
  ownerQuestions,
} from "@treewright/core/judge/owner/asks.ts";
import { answerOwner, type OwnerAnswer } from "@treewright/core/judge/owner.ts";
import { drawingFor } from "./drawings.ts";
import { element } from "./element.ts";

const nameOf = ({ group, name }: OwnerAsk): string => `${group} ${name}`.trim();

/**
 * The owner's question as a page: what may be done at home, and whom to see. Nothing of it is a measurement, and it shows no figure for
 * press or heat. Nothing is kept and nothing is sent.
 */
export function askPage(place: HTMLElement): void {
  const asked = ownerQuestions();
  const answer = element("section", { "aria-live": "polite", id: "answer", tabindex: "-1" });
  const form = element("form", {}, ...asked.map(questionField), submitKey());
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const said = new FormData(form);
    const question = ownerQuestionOf((one) => String(said.get(nameOf(one)) ?? one.otherwise));
    answer.replaceChildren(...answerLines(answerOwner(question)));
    answer.focus();
  });
  place.append(
    element(
      "main",
      { class: "owner" },
      element("h1", {}, "Can the head of this saddle be altered?"),
      element(
        "p",
        {},
        "Say what you know; where you do not know, leave it. Nobody presses, heats or bends a head at home. At any pain, heat, ",
        "swelling, sore or lameness stop, and ring the vet first.",
      ),
      form,
      answer,
    ),
  );
}

const submitKey = (): HTMLElement => element("button", { type: "submit" }, "What may be done, and by whom?");

function questionField(asked: OwnerAsk): HTMLElement {
  const drawing = asked.group === "" ? drawingFor(asked.name) : undefined;
  const choices = asked.words.map((word) => {
    const input = element("input", { type: "radio", name: nameOf(asked), value: word });
    input.checked = word === asked.otherwise;
    return element("label", { class: "key" }, input, offeredWord(word));
  });
  const legend = element("legend", {}, asked.asks);
  const all = element("div", { class: "owner-choices" }, ...choices);
  return element("fieldset", {}, legend, ...(drawing ? [drawing] : []), all);
}

function answerLines({ stops, says, atHome, see, because }: OwnerAnswer): readonly HTMLElement[] {
  return [
    ...stops.map((text) => element("p", { class: "stop" }, text)),
    element("h2", {}, "Horse"),
    element("p", {}, says.horse),
    element("h2", {}, "Saddle"),
    element("p", {}, says.saddle),
    ...(atHome.length > 0 ? [element("h2", {}, "What you may do at home"), listOf(atHome)] : []),
    element("h2", {}, "Whom to see, in this order"),
    element(
      "ol",
      {},
      ...see.map(({ who, why }) => element("li", {}, element("strong", {}, who), `: ${why}`)),
    ),
    element("h2", {}, "Why"),
    listOf(because.map((one) => one.says)),
    element("p", {}, "This comes from what you said, not from looking: it promises nothing."),
  ];
}

const listOf = (lines: readonly string[]): HTMLElement =>
  element("ul", {}, ...lines.map((line) => element("li", {}, line)));
