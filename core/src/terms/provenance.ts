/** Where a rule or figure comes from. */
export type Provenance =
  | "published"
  | "from memory"
  | "common practice, no source"
  | "assumption"
  | "derived";
