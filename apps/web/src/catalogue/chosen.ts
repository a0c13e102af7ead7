const KEY = "language";

/** Of these languages (BCP 47) the one that was chosen here, else the browser's where there is one, else English. */
export function chosenAmong(tags: readonly string[]): string {
  const chosen = localStorage.getItem(KEY) ?? navigator.language.slice(0, 2);
  return tags.includes(chosen) ? chosen : "en";
}

export function chooseLanguage(tag: string): void {
  localStorage.setItem(KEY, tag);
}
