const MONTHS = "January February March April May June July August September October November December".split(
  " ",
);

/** A day of the case (yyyy-mm-dd) as one writes it in a letter: "12 April 2031". What is no such day is left as it is. */
export function dayInWords(day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  const name = MONTHS[Number(month) - 1];
  return name === undefined ? day : `${Number(date)} ${name} ${year}`;
}
