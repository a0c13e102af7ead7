const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** A day (yyyy-mm-dd) so many days later; what is no day is handed back as it is. */
export function daysAfter(day: string, days: number): string {
  const [, y, m, d] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  if (y === undefined) return day;
  let [year, month, date] = [Number(y), Number(m), Number(d) + days];
  for (let most = daysIn(year, month); date > most; most = daysIn(year, month)) {
    date -= most;
    month += 1;
    if (month > 12) [year, month] = [year + 1, 1];
  }
  const two = (value: number) => String(value).padStart(2, "0");
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(date)}`;
}

function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return (DAYS_IN_MONTH[month - 1] ?? 31) + (month === 2 && leap ? 1 : 0);
}
