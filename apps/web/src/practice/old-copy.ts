const DAY_MS = 86_400_000;

/**
 * From so many days on a copy is called old. Working limit, no source: a week's visits are what one would still write down again
 * from memory and from the letters; and a browser may clear what it keeps after seven days in which the app was not opened.
 */
const OLD_AFTER_DAYS = 7;

/** Whole days from one moment to another, both in UTC; undefined where there was none. */
export const daysSince = (moment: string | undefined, nowMs: number): number | undefined =>
  moment === undefined || Number.isNaN(Date.parse(moment))
    ? undefined
    : Math.max(0, Math.floor((nowMs - Date.parse(moment)) / DAY_MS));

/** How long the oldest visit that is not copied has been waiting, days, once that is too long; undefined while it is not. */
export function waitsTooLong(waitsSince: string | undefined, nowMs: number): number | undefined {
  const days = daysSince(waitsSince, nowMs);
  return days !== undefined && days >= OLD_AFTER_DAYS ? days : undefined;
}
