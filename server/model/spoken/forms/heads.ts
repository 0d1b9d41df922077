/** Heads of a day as people date them: `4/11 truck`, `Sat 7 March 26`, `14.3.`, `9 Mai`. */
import { Temporal } from 'temporal-polyfill';
import { daysBetween } from '../../entry/date.ts';
import { dateFirst } from '../date-first.ts';
import { asked, type Habits, type SpokenReading, spokenAs } from '../habits.ts';
import { dayNamed } from './feasts.ts';
import { weekdayIndex } from './weekdays.ts';

const MONTHS = [
  'jan january jänner januar janvier januari gennaio enero janeiro',
  'feb february februar fevrier février februari febbraio febrero fev fév',
  'mar march märz mars mrz mrt maart marts marzo',
  'apr april avril aprile abril avr',
  'may mai maj mei maggio mayo',
  'jun june juni juin giugno junio',
  'jul july juli juillet luglio julio',
  'aug august août aout augustus augusti agosto',
  'sep sept september septembre settembre septiembre',
  'oct october okt oktober octobre ottobre octubre',
  'nov november novembre noviembre',
  'dec december dez dezember decembre décembre dicembre diciembre déc desember',
].map((names) => new Set(names.split(' ')));

interface Found {
  /** Days it may be, ISO 8601, the likelier first. */
  readonly dates: readonly string[];
  readonly title: string;
}

const WEEKDAY = String.raw`(?:(?:\p{L}{3,9} +)?(?<weekday>\p{L}{2,9})\.?,? +)?`;
const AFTER = String.raw`(?<rest>$|[\s.,:;!–-].*)$`;
const NUMBERED = new RegExp(
  String.raw`^${WEEKDAY}(?<a>\d{1,2})(?<sign>[./-])(?<b>\d{1,2})(?:\k<sign>(?<year>\d{4}|\d{2})(?!\d)|\.)?${AFTER}`,
  'u',
);
const DAY_MONTH = new RegExp(
  String.raw`^${WEEKDAY}(?<day>\d{1,2})(?:st|nd|rd|th|\.)? +(?:of )?(?<month>\p{L}{3,9})\.?,?(?: +'?(?<year>\d{4}|\d{2})(?!\d))?${AFTER}`,
  'u',
);
const MONTH_DAY = new RegExp(
  String.raw`^${WEEKDAY}(?<month>\p{L}{3,9})\.? +(?<day>\d{1,2})(?:st|nd|rd|th)?,?(?: +'?(?<year>\d{4}|\d{2})(?!\d))?${AFTER}`,
  'u',
);
const WEEKDAY_DAY =
  /^(?:(?<before>[\p{L} ]{3,20}), *)?(?<weekday>\p{L}{3,9}) +(?:the +)?(?<day>\d{1,2})(?:st|nd|rd|th)(?<rest>$|[\s.,:;!–-].*)$/u;

/** Undefined where the line begins with no date. */
export function headOf(text: string, habits: Habits): SpokenReading | undefined {
  const line = dateFirst(text.trim().replace(/^(?:date|session|on)\b:? */i, ''));
  const feast = dayNamed(line, habits.date);
  if (feast) return asked('Which day is that?', [`session ${feast}  ${titled(line)}`.trimEnd()]);
  const found =
    bracketed(line, habits) ??
    standard(line) ??
    numbered(line, habits) ??
    named(line, habits) ??
    weekdayAlone(line, habits);
  if (!found) return undefined;
  const heads = found.dates.map((date) => `session ${date}  ${found.title}`.trimEnd());
  const [head, ...others] = heads;
  if (!head) return undefined;
  return others.length === 0 ? spokenAs([head]) : asked('Which day is that?', heads);
}

const FEAST =
  /^(?:easter|whit(?:sun)?|bank|good|may|labou?r|memorial|independence|boxing|christmas|new year'?s?|midsummer|pfingst\p{L}*|oster\p{L}*|spring|summer|autumn|harvest)(?: (?:holiday|day|bank))?(?: (?<weekday>\p{L}{3,9}))?$/iu;

/** `Easter Mon (6 April) saloon`: a day that has a name, dated in brackets. */
function bracketed(line: string, habits: Habits): Found | undefined {
  const [, before = '', date = '', rest = ''] =
    /^([\p{L}' ]{3,30}?) *\(([^()]{3,20})\)(.*)$/u.exec(line) ?? [];
  if (date === '' || !(FEAST.test(before) || weekdayIndex(before) !== undefined)) return undefined;
  const found = numbered(date, habits) ?? named(date, habits);
  return found && found.title === '' ? { ...found, title: titled(rest) } : undefined;
}

/** `2026-03-14 boat`, ISO 8601 without the word that begins a session; dots for dashes too. */
function standard(line: string): Found | undefined {
  const [, year, month, day, rest = ''] = /^(\d{4})[-.](\d{2})[-.](\d{2})(?!\d)\.?(.*)$/.exec(line) ?? [];
  const [date] = dayIn(Number(year), Number(month), Number(day));
  return date && { dates: [date.toString()], title: titled(rest) };
}

function numbered(line: string, habits: Habits): Found | undefined {
  const groups = NUMBERED.exec(line)?.groups;
  if (!groups) return undefined;
  const { weekday, a = '', b = '', sign = '', year, rest = '' } = groups;
  const day = weekdayIndex(weekday);
  if (weekday !== undefined && day === undefined) return undefined;
  const isBare = weekday === undefined && year === undefined;
  if (isBare && !looksDated(line, sign, a, b, rest)) return undefined;
  const [first, second] = [Number(a), Number(b)];
  const orders: (readonly [number, number])[] = [];
  const isGerman = sign === '.';
  if (habits.dayOrder !== 'month first' || isGerman) orders.push([second, first]);
  if (habits.dayOrder !== 'day first' && !isGerman) orders.push([first, second]);
  // No month has a number over twelve, whoever writes it.
  if (!isBare && first > 12 && orders.length === 1) orders.push([second, first]);
  const dates = orders.flatMap(([month, dayOfMonth]) => dated(month, dayOfMonth, year, habits, day));
  const isNear = !isBare || isHeaded(rest) || dates.some((date) => isSoon(date, habits));
  return dates.length === 0 || !isNear ? undefined : { dates: [...new Set(dates)], title: titled(rest) };
}

const isHeaded = (rest: string): boolean =>
  HEADED.has(/^[\s,]*(\p{L}+)/u.exec(rest)?.[1]?.toLowerCase() ?? '');

/** Within a season of the last session, where nothing else says that it is a date. */
const isSoon = (date: string, { date: last }: Habits): boolean =>
  last === undefined || Math.abs(daysBetween(last, date)) <= SEASON;

const SEASON = 100;

/** `3/8 hose` is a size and `11.2 V` a value: a bare pair of numbers dates a line only where nothing measured can be meant. */
function looksDated(line: string, sign: string, a: string, b: string, rest: string): boolean {
  if (sign === '-' || Number(a) > 31 || Number(b) > 31 || Number(a) === 0 || Number(b) === 0) return false;
  if (sign === '.') return /^\d{1,2}\.\d{1,2}\.(?!\d)/.test(line);
  const isSize = [2, 4, 8, 16, 32, 64].includes(Number(b)) && Number(a) < Number(b) && Number(a) % 2 === 1;
  const word = /^[\s,]*(\p{L}+)/u.exec(rest)?.[1]?.toLowerCase() ?? '';
  // No fraction is as large as 25/4, and no pair of sizes has a day before a month.
  if (sign === '/' && Number(a) > 12 && Number(b) <= 12 && /^\s+\d+ (?:cyl|cylinder)/i.test(rest))
    return true;
  if (rest.trim() === '') return !isSize;
  return word !== '' && !UNITS.has(word) && (!isSize || HEADED.has(word));
}

const UNITS = new Set(
  'all good ok is was turn turns in inch out on front rear at rpm deg thou mm flat flats open psi bar each both drill hose bolt tank throttle left right meter way line of a'.split(
    ' ',
  ),
);
/** What a notebook is kept of. */
const HEADED = new Set(
  'truck boat car bike tractor saloon road lake six engine van pickup sedan launch mower'.split(' '),
);

function named(line: string, habits: Habits): Found | undefined {
  for (const pattern of [DAY_MONTH, MONTH_DAY]) {
    const groups = pattern.exec(line)?.groups;
    const month = groups && MONTHS.findIndex((names) => names.has((groups.month ?? '').toLowerCase()));
    if (!groups || month === undefined || month < 0) continue;
    const day = weekdayIndex(groups.weekday);
    if (groups.weekday !== undefined && day === undefined) return undefined;
    // `9 may be low` is no day of May.
    if (month === 4 && /^\s+(?:be|have|need|not|want|do)\b/.test(groups.rest ?? '')) return undefined;
    const dates = dated(month + 1, Number(groups.day), groups.year, habits, day);
    if (dates.length > 0) return { dates, title: titled(groups.rest ?? '') };
  }
  return undefined;
}

/** `Sat 23rd`: the next month in which the 23rd is a Saturday. */
function weekdayAlone(line: string, habits: Habits): Found | undefined {
  const groups = WEEKDAY_DAY.exec(line)?.groups;
  const day = weekdayIndex(groups?.weekday);
  if (!groups || day === undefined || !habits.date) return undefined;
  const last = Temporal.PlainDate.from(habits.date);
  for (let months = 0; months < 12; months++) {
    const month = last.toPlainYearMonth().add({ months });
    if (Number(groups.day) > month.daysInMonth) continue;
    const date = month.toPlainDate({ day: Number(groups.day) });
    if (date.dayOfWeek - 1 === day && Temporal.PlainDate.compare(date, last) > 0)
      return { dates: [date.toString()], title: titled(groups.rest || groups.before || '') };
  }
  return undefined;
}

/** The year as written; else that of the last session, or the one in which the weekday is right, or the next where the year has turned. */
function dated(
  month: number,
  day: number,
  year: string | undefined,
  habits: Habits,
  weekday: number | undefined,
): readonly string[] {
  const years = year ? [fullYear(year)] : yearsFrom(habits);
  const dates = years.flatMap((each) => dayIn(each, month, day));
  const right = weekday === undefined ? dates : dates.filter((date) => date.dayOfWeek - 1 === weekday);
  const best = right.length > 0 ? right : year ? [] : dates;
  const last = habits.date ? Temporal.PlainDate.from(habits.date) : undefined;
  const isLater = (date: Temporal.PlainDate) => !last || date.since(last, { largestUnit: 'day' }).days > -60;
  const [first] = year ? best : best.filter(isLater);
  return first ? [first.toString()] : [];
}

const fullYear = (year: string): number =>
  year.length === 4 ? Number(year) : Number(year) + (Number(year) < 70 ? 2000 : 1900);

function yearsFrom({ date }: Habits): readonly number[] {
  const year = Number(date?.slice(0, 4));
  return Number.isInteger(year) ? [year, year + 1] : [];
}

function dayIn(year: number, month: number, day: number): readonly Temporal.PlainDate[] {
  if (
    !(month >= 1) ||
    year < 1900 ||
    month > 12 ||
    day < 1 ||
    day > Temporal.PlainYearMonth.from({ year, month }).daysInMonth
  )
    return [];
  return [Temporal.PlainDate.from({ year, month, day })];
}

/** What stands after the date, with a capital; a comment cannot stand in it. */
function titled(rest: string): string {
  const title = rest
    .replace(/^[\s.,:;!–-]+/, '')
    .replaceAll(';', ',')
    .trim();
  const named = title.replace(/^(\p{L})/u, (letter) => letter.toUpperCase());
  const weekday = /^(\p{L}+),? */u.exec(named);
  return weekday && weekdayIndex(weekday[1]) !== undefined ? titled(named.slice(weekday[0].length)) : named;
}
