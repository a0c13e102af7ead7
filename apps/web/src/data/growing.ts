/** Letters that are gathered in memory before the browser takes them. Working value: some milliseconds of copying. */
const GATHERED = 1_000_000;

/** A text that grows piece by piece and lies with the browser, which may put it on its disk, and not in this page's memory. */
export class GrowingText {
  private readonly parts: Blob[] = [];
  private waiting: string[] = [];
  private letters = 0;

  add(text: string): void {
    this.waiting.push(text);
    this.letters += text.length;
    if (this.letters >= GATHERED) this.put();
  }

  whole(): Blob {
    this.put();
    return new Blob(this.parts);
  }

  private put(): void {
    this.parts.push(new Blob(this.waiting));
    this.waiting = [];
    this.letters = 0;
  }
}
