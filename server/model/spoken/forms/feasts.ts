/** Days that have a name and no number: a weekday alone, the feasts. Which it is in the year of the last session, or the next, is asked. */
import { Temporal } from 'temporal-polyfill';
import { weekdayIndex } from './weekdays.ts';

/** By month and day. */
const FIXED: readonly (readonly [name: RegExp, month: number, day: number])[] = [
  [/^new year['’]?s? ?(?:day)?$/i, 1, 1],
  [/^new year['’]?s? eve$/i, 12, 31],
  [/^may day$/i, 5, 1],
  [/^christmas eve$/i, 12, 24],
  [/^(?:christmas|xmas)(?: day)?$/i, 12, 25],
  [/^boxing day$/i, 12, 26],
];

/** By days from Easter Sunday. */
const MOVABLE: readonly (readonly [name: RegExp, days: number])[] = [
  [/^(?:good friday|karfreitag)$/i, -2],
  [/^easter(?: sat(?:urday)?)$/i, -1],
  [/^(?:easter(?: sun(?:day)?)?|ostern|ostersonntag)$/i, 0],
  [/^(?:easter mon(?:day)?|ostermontag)$/i, 1],
  [/^(?:ascension(?: day)?|himmelfahrt)$/i, 39],
  [/^(?:whit sun(?:day)?|whitsun|pfingsten|pfingstsonntag)$/i, 49],
  [/^(?:whit mon(?:day)?|pfingstmontag)$/i, 50],
];

/** True for a line that is the name of a day and no more. */
export const isDayName = (line: string): boolean => {
  const name = nameOf(line);
  return [...FIXED, ...MOVABLE].some(([said]) => said.test(name)) || weekdayOf(line) !== undefined;
};

const nameOf = (line: string): string => line.trim().replace(/[.,:!-]$/, '');

/** A weekday in full, or shortened with a dot; `sun` and `sat` alone are other words. */
function weekdayOf(line: string): number | undefined {
  const word =
    /^(\p{L}{4,9}|\p{Lu}\p{L}{1,3}(?=\.))\.?(?: (?:morning|night|evening|arvo|afternoon))?[:-]?$/u.exec(
      line.trim(),
    )?.[1];
  return weekdayIndex(word);
}

/** The next such day after the last session, ISO 8601; undefined for any other line, or where no session is dated. */
export function dayNamed(line: string, last: string | undefined): string | undefined {
  if (!last || !isDayName(line)) return undefined;
  const from = Temporal.PlainDate.from(last);
  const weekday = weekdayOf(line);
  if (weekday !== undefined) return from.add({ days: ((weekday + 7 - from.dayOfWeek) % 7) + 1 }).toString();
  const days = [from.year, from.year + 1].flatMap((year) => dayIn(year, nameOf(line)) ?? []);
  return days.find((day) => Temporal.PlainDate.compare(day, from) > 0)?.toString();
}

function dayIn(year: number, name: string): Temporal.PlainDate | undefined {
  const fixed = FIXED.find(([said]) => said.test(name));
  if (fixed) return Temporal.PlainDate.from({ year, month: fixed[1], day: fixed[2] });
  const movable = MOVABLE.find(([said]) => said.test(name));
  return movable && easter(year).add({ days: movable[1] });
}

/** Easter Sunday of a year of the Gregorian calendar, after the anonymous rule of 1876 (Meeus, Astronomical Algorithms, chapter 8; from memory). */
function easter(year: number): Temporal.PlainDate {
  const [a, b, c] = [year % 19, Math.floor(year / 100), year % 100];
  const f = Math.floor((b + 8) / 25);
  const g = Math.floor((b - f + 1) / 3);
  const h = (19 * a + b - Math.floor(b / 4) - g + 15) % 30;
  const l = (32 + 2 * (b % 4) + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
  const m = Math.floor((a + 11 * h + 22 * l) / 451);
  const days = h + l - 7 * m + 114;
  return Temporal.PlainDate.from({ year, month: Math.floor(days / 31), day: (days % 31) + 1 });
}
