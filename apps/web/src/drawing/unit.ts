import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/**
 * Millimetres that one pixel of the screen shows in a drawing so wide. Words and marks keep their size on the screen
 * whatever the scale of the drawing is: multiply their pixels by it.
 */
export function usePixel(widthMm: number): { ref: RefObject<SVGSVGElement | null>; pixel: number } {
  const ref = useRef<SVGSVGElement>(null);
  const [px, setPx] = useState(600);
  useLayoutEffect(() => {
    const svg = ref.current;
    if (svg === null) return;
    const look = () => setPx(svg.getBoundingClientRect().width || 600);
    look();
    const watch = new ResizeObserver(look);
    watch.observe(svg);
    return () => watch.disconnect();
  }, []);
  return { ref, pixel: widthMm / px };
}
