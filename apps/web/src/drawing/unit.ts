import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/**
 * Millimetres that one pixel of the screen shows in a drawing so wide. Words and marks keep their size on the screen
 * whatever the scale of the drawing is: multiply their pixels by it. `sliced`: the drawing fills its box and is cut.
 */
export function usePixel(
  widthMm: number,
  sliced?: { heightMm: number },
): { ref: RefObject<SVGSVGElement | null>; pixel: number } {
  const ref = useRef<SVGSVGElement>(null);
  const [{ width, height }, setSize] = useState({ width: 600, height: 200 });
  useLayoutEffect(() => {
    const svg = ref.current;
    if (svg === null) return;
    const look = () => {
      const box = svg.getBoundingClientRect();
      if (box.width > 0) setSize({ width: box.width, height: box.height });
    };
    look();
    const watch = new ResizeObserver(look);
    watch.observe(svg);
    return () => watch.disconnect();
  }, []);
  const pixel = sliced ? 1 / Math.max(width / widthMm, height / sliced.heightMm) : widthMm / width;
  return { ref, pixel };
}
