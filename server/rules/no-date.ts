import { isoDate } from '../model/dates.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const noDate = rule({
  code: 'no-date',
  severity: 'warning',
  title: 'A session without its day',
  why: 'What was set and read is told by the day it was done. A session without one cannot be gone back to, and reminders do not count it.',
  standing: 'notation',
  good: 'session 2026-05-02  New springs\n  initial 9 deg\n',
  bad: 'session New springs\n  initial 9 deg\n',
  on: ['session'],
  check({ dateText, title, line }) {
    if (dateText) return NO_PROBLEMS;
    return [dayInTitle(title, line.text) ?? { span: lineSpan(line), message: MESSAGE }];
  },
});

const MESSAGE = 'The session has no day: write year-month-day after "session", such as 2026-05-02.';

/** `2026/5/2` or `2026.05.02` at the start of the title: year first, so that the month is sure; or its name. */
function dayInTitle(title: string, line: string): Problem | undefined {
  const [text, year, month, day] = /^(\d{4})[./](\d{1,2})[./](\d{1,2})(?!\d)/.exec(title) ?? [];
  const from = line.indexOf(title);
  const named = dayByName(title);
  if (named) return written(from, named.text, named.date);
  const date = isoDate(`${year}-${month?.padStart(2, '0')}-${day?.padStart(2, '0')}`);
  if (!text || !date) return undefined;
  return written(from, text, date);
}

function written(from: number, text: string, date: string): Problem {
  const span = { from, to: from + text.length };
  return { span, message: `A day is written ${date}, with hyphens.`, fixes: [replaceWith(span, date)] };
}

/** `1 Mar 2025`, `March 1, 2025`: the month by its name, so that it is sure. */
function dayByName(title: string): { readonly text: string; readonly date: string } | undefined {
  const first = /^(\d{1,2})(?:st|nd|rd|th)?[\s.-]+([a-z]{3,9})\.?[\s,-]+(\d{4})(?!\d)/i.exec(title);
  const second = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?!\d)/i.exec(title);
  const [day, month] = first ? [first[1], first[2]] : [second?.[2], second?.[1]];
  const at = MONTHS.findIndex((name) => month && name.startsWith(month.toLowerCase()));
  const match = first ?? second;
  if (!match || !day || at < 0) return undefined;
  const date = isoDate(`${match[3]}-${String(at + 1).padStart(2, '0')}-${day.padStart(2, '0')}`);
  return date === undefined ? undefined : { text: match[0], date };
}

const MONTHS = 'january february march april may june july august september october november december'.split(
  ' ',
);
