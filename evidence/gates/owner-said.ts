/** Every accident asked for by itself, and denied. */
export const NO_ACCIDENT = {
  rolledOn: "no",
  horseFell: "no",
  fellOffRack: "no",
  drivenOver: "no",
  dragged: "no",
  dropped: "no",
  castInBox: "no",
  hungFromBars: "no",
} as const;
