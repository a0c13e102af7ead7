/** One element with its attributes and what is in it. The owner's page has no library, so that an old phone has little to load. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>> = {},
  ...inside: readonly (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
  made.append(...inside);
  return made;
}
