/** Types of horse for which a published equation of weight has its own divisor. */
export const BODY_TYPES = ["arabian", "pony", "stock", "warmblood", "draft", "not-said"] as const;
export type BodyType = (typeof BODY_TYPES)[number];

/** The nine grades of condition (Henneke et al. 1983, Equine Vet J 15:371-372). Names 1 to 5 read, 6 to 9 from memory. */
export const CONDITION_GRADES = [
  "poor",
  "very thin",
  "thin",
  "moderately thin",
  "moderate",
  "moderately fleshy",
  "fleshy",
  "fat",
  "extremely fat",
] as const;

/** Name of a grade from 1 to 9. */
export const conditionName = (grade: number): string => CONDITION_GRADES[grade - 1] ?? "";
