/** How a head is built, by properties; what can be done follows from them, never from a class name. */
export const ARCH = ["wood", "polymer", "composite", "unknown"] as const;
export const METAL = ["none", "bar", "plates", "unknown"] as const;
/** Spring steels along the rails; they leave the head as its own metal makes it. */
export const SPRINGS = ["none", "along-rails", "unknown"] as const;
export const EXCHANGE = ["none", "plate", "insert", "unknown"] as const;
export const MOVED_BY = ["exchange", "press", "heat", "nothing", "unknown"] as const;

/** Forms that always go to the maker, whatever their stuff. */
export const SPECIAL_FORM = [
  "none",
  "side-saddle",
  "half-tree",
  "hinge",
  "screw-head",
  "military-arch",
  "unknown",
] as const;

/** How it was told, surest first. */
export const TOLD_BY = [
  "seen-bare",
  "makers-letter",
  "radiograph",
  "seen-through-access",
  "magnet",
  "tap",
  "point-pocket",
  "owners-word",
  "not-told",
] as const;

/** Parts of a saddle that are looked at one by one. */
export const PARTS = [
  "head",
  "rails",
  "cantle",
  "bars",
  "webs",
  "girth-straps",
  "rivets",
  "layers",
  "plates",
  "panel-fixing",
] as const;
export type Part = (typeof PARTS)[number];
