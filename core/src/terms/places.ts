/** Near is the horse's left, off its right. Never mirrored by language or screen. */
export const SIDES = ["near", "off"] as const;
export type Side = (typeof SIDES)[number];

/** Places along the back: the tree points, the deepest seat, 40 mm before the panel's end. */
export const STATIONS = ["front", "mid", "rear"] as const;
export type Station = (typeof STATIONS)[number];

/** Thirds of the bearing's length, as the literature reports pressures. */
export const THIRDS = ["front", "middle", "rear"] as const;
export type Third = (typeof THIRDS)[number];

/** Zones of the hands-on map. */
export const ZONES = [
  "withers-top",
  "withers-side",
  "under-point",
  "mid-back",
  "last-ribs",
  "loin",
  "girth",
  "breastbone",
  "neck-base",
] as const;
export type Zone = (typeof ZONES)[number];

export type BySide<T> = { readonly [S in Side]: T };
export type ByStation<T> = { readonly [S in Station]: T };
