import type { Page } from "playwright-core";

/** What has the focus, as a person at a keyboard needs to know it. */
interface Focus {
  /** Tag, id and words: what a failure names. Empty where nothing has the focus. */
  readonly on: string;
  /** Some of it lies within the window and under nothing else. */
  readonly isSeen: boolean;
  /** Width of the line drawn round it, CSS pixels; 0 where none is drawn. */
  readonly linePx: number;
  /** Where it lies down the window, CSS pixels: for a failure's words. */
  readonly topPx: number;
}

export function focusOf(page: Page): Promise<Focus> {
  return page.evaluate(() => {
    const one = document.activeElement;
    if (!one || one === document.body) return { on: "", isSeen: false, linePx: 0, topPx: 0 };
    const box = one.getBoundingClientRect();
    const inside = { x: [0.1, 0.5, 0.9], y: [0.2, 0.5, 0.8] };
    const isSeen = inside.x.some((x) =>
      inside.y.some((y) => {
        const there = document.elementFromPoint(box.x + x * box.width, box.y + y * box.height);
        return there !== null && (one.contains(there) || there.closest("label")?.contains(one) === true);
      }),
    );
    const drawn = one.matches(".only-heard") ? (one.closest("label") ?? one) : one;
    const { outlineStyle, outlineWidth } = getComputedStyle(drawn);
    return {
      on: `${one.tagName.toLowerCase()}${one.id ? `#${one.id}` : ""} ${(one.getAttribute("aria-label") ?? one.textContent ?? "").slice(0, 50)}`,
      isSeen,
      topPx: Math.round(box.top),
      linePx: outlineStyle === "none" ? 0 : Number.parseFloat(outlineWidth),
    };
  });
}

/** Goes on by Tab until what matches has the focus; every stop on the way is handed to `look`, but the one outside the page, between its end and its beginning. */
export async function tabTo(page: Page, css: string, words: string, look: (focus: Focus) => void) {
  for (let steps = 0; steps < 200; steps += 1) {
    await page.keyboard.press("Tab");
    const focus = await focusOf(page);
    if (focus.on !== "") look(focus);
    const isThere = await page.evaluate(
      ([wanted, says]) => {
        const one = document.activeElement;
        return one?.matches(wanted ?? "") && (one.textContent ?? "").includes(says ?? "");
      },
      [css, words],
    );
    if (isThere) return;
  }
  throw new Error(`${css} "${words}" is not reached by Tab`);
}
