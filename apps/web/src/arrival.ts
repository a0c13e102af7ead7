import { useLayoutEffect, useRef } from "react";

let hasMoved = false;
addEventListener("hashchange", () => {
  hasMoved = true;
});

/**
 * For the heading of a screen: it takes the focus when the screen is come to and what had it is gone, so that a keyboard or a voice
 * begins there and not at nothing. Not where the app opens, nor where something of the screen has the focus already.
 */
export function useArrival(at: unknown) {
  const title = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each place that is come to is an arrival
  useLayoutEffect(() => {
    if (hasMoved && (document.activeElement ?? document.body) === document.body) title.current?.focus();
  }, [at]);
  return title;
}
