import { pow } from "../number/index.ts";

/**
 * A property of clear wood at a moisture content of M per cent, from its values at 12 % and green:
 * P12 (P12 / Pg)^((12 - M) / (Mp - 12)). Published: Wood Handbook FPL-GTR-190, eq. 5-3; Mp 25 % unless the wood has its own.
 */
export const atMoisture = (at12: number, green: number, percent: number, meetsGreenAt = 25): number =>
  at12 * pow(at12 / green, (12 - percent) / (meetsGreenAt - 12));
