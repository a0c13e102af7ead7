export { asksFor, type Parsed, parseQuantity } from "./parse.ts";
export { readNumber } from "./read-number.ts";
export { show } from "./show.ts";
export { CANONICAL, type QuantityKind, UNITS, type Unit, unitCalled, usualUnit } from "./units.ts";
