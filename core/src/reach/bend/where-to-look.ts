/** Which face to look at and feel after a pass: the one that was stretched, and what gives there (common practice, no source). */
export function whereToLook(stuff: "wood" | "polymer", changeMm: number): readonly string[] {
  if (changeMm === 0) return [];
  if (stuff === "polymer")
    return [
      changeMm > 0
        ? "inside of the head at the shoulder of the bar: white lines, cracks at screw bosses, the bar's fixings"
        : "top of the head at the shoulder of the bar: white lines, cracks at screw bosses, the bar's fixings",
    ];
  return changeMm > 0
    ? [
        "plate under the head, at its rivet holes and edges: cracks; it is stretched by opening",
        "top of the head: layers squeezed, wrinkled or parted",
      ]
    : [
        "top of the head: outermost layers and the plate over it, at its rivet holes; they are stretched by closing",
        "plate under the head: buckled off the wood, rivets drawn",
      ];
}
