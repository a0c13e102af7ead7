import { isSameScreen, type ScreenNow } from "./screen-now.ts";

const KEPT = "treewright-screen-scale";

/** What was matched, as it was read, and the screen it was read on. It stays on this device. */
export interface KeptScale {
  readonly longPx: number;
  readonly shortPx: number;
  readonly pixelRatio: number;
  readonly longerPx: number;
  readonly shorterPx: number;
}

const PARTS = ["longPx", "shortPx", "pixelRatio", "longerPx", "shorterPx"] as const;

/** What was kept; undefined where nothing was, or nothing of this form. */
export function keptScale(): KeptScale | undefined {
  const text = localStorage.getItem(KEPT);
  if (text === null) return undefined;
  try {
    const kept: unknown = JSON.parse(text);
    return isKept(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function isKept(value: unknown): value is KeptScale {
  return (
    typeof value === "object" &&
    value !== null &&
    PARTS.every((part) => typeof Object.getOwnPropertyDescriptor(value, part)?.value === "number")
  );
}

export function keepScale(longPx: number, shortPx: number, screen: ScreenNow): KeptScale {
  const { pixelRatio, longerPx, shorterPx } = screen;
  const kept: KeptScale = { longPx, shortPx, pixelRatio, longerPx, shorterPx };
  localStorage.setItem(KEPT, JSON.stringify(kept));
  return kept;
}

export const forgetScale = (): void => localStorage.removeItem(KEPT);

/** Why a kept scale does not hold now; undefined where it does. */
export function lostBy(kept: KeptScale, screen: ScreenNow): "zoom" | "screen" | undefined {
  if (screen.zoom !== 1) return "zoom";
  return isSameScreen(kept, screen) ? undefined : "screen";
}
