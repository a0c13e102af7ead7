/*
 * The functions of Math that JavaScript engines answer differently in the last bit, built here from exact
 * operations: the same arguments give the same bits everywhere. Angles in radians. Domains and error
 * bounds stand in each file; the table that checks them in evidence/number.
 */
export { acos, asin } from "./arcsine.ts";
export { atan, atan2 } from "./arctangent.ts";
export { PI } from "./constants.ts";
export { exp, log } from "./exponential.ts";
export { hypot } from "./hypotenuse.ts";
export { pow } from "./power.ts";
export { cos, sin } from "./sine.ts";
export { tan } from "./tangent.ts";
