const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** Days in a month (1 to 12) of the Gregorian calendar; 0 if there is no such month. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  if (month === 4 || month === 6 || month === 9 || month === 11) return 30;
  return month >= 1 && month <= 12 ? 31 : 0;
}

/** The English name of a month, 1 to 12. */
export function monthName(month: number): string {
  return MONTHS[month - 1] ?? `month ${month}`;
}

/** Whether a text is a day that exists, written `2026-08-14`. */
export function isDay(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const day = Number(match[3]);
  return day >= 1 && day <= daysInMonth(Number(match[1]), Number(match[2]));
}
