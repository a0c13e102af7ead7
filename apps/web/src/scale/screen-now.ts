import { useSyncExternalStore } from "react";

/** What a scale hangs on. Turned on its side a screen is the same one, so its sides stand by their length. */
export interface ScreenNow {
  readonly pixelRatio: number;
  readonly longerPx: number;
  readonly shorterPx: number;
  /** Two fingers' zoom; 1 where the page stands as it is. */
  readonly zoom: number;
}

let last: ScreenNow | undefined;

function now(): ScreenNow {
  const next: ScreenNow = {
    pixelRatio: devicePixelRatio,
    longerPx: Math.max(screen.width, screen.height),
    shorterPx: Math.min(screen.width, screen.height),
    zoom: visualViewport?.scale ?? 1,
  };
  if (last === undefined || !isSameScreen(last, next) || last.zoom !== next.zoom) last = next;
  return last;
}

export const isSameScreen = (one: Omit<ScreenNow, "zoom">, other: Omit<ScreenNow, "zoom">): boolean =>
  one.pixelRatio === other.pixelRatio && one.longerPx === other.longerPx && one.shorterPx === other.shorterPx;

function listen(listener: () => void): () => void {
  // Zooming the page and moving to another screen both resize the window. A browser whose zoom leaves the pixel ratio
  // as it was cannot be heard here; the screen's words ask for a new match by hand.
  const ratio = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
  addEventListener("resize", listener);
  ratio.addEventListener("change", listener);
  visualViewport?.addEventListener("resize", listener);
  return () => {
    removeEventListener("resize", listener);
    ratio.removeEventListener("change", listener);
    visualViewport?.removeEventListener("resize", listener);
  };
}

export const useScreen = (): ScreenNow => useSyncExternalStore(listen, now);
