/** Calendar days, as ISO 8601 writes them. */
import { Temporal } from 'temporal-polyfill';

/** The day as written if it is a real one (no 30 February), else undefined. */
export function isoDate(text: string): string | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return undefined;
  const [, year, month, day] = parts.map(Number) as [number, number, number, number];
  if (month < 1 || month > 12 || day < 1) return undefined;
  return day <= SHORTEST_MONTH || day <= daysIn(year, month) ? text : undefined;
}

const SHORTEST_MONTH = 28;

const daysIn = (year: number, month: number): number =>
  Temporal.PlainYearMonth.from({ year, month }).daysInMonth;

/** Every day of the calendar in UTC is as long. */
const DAY_MS = 86_400_000;

/** Whole days from one ISO date to another; negative when it goes back. */
export function daysBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / DAY_MS;
}
