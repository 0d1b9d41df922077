import { isoDate } from '../../model/entry/date.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from '../rule.ts';

export const noDate = rule({
  code: 'no-date',
  severity: 'warning',
  title: 'A session without a date',
  why: 'Settings and readings are filed by date. A session without one cannot be reverted to, and reminders leave it out.',
  standing: 'notation',
  good: 'session 2026-05-02  New springs\n  initial 9 deg\n',
  bad: 'session New springs\n  initial 9 deg\n',
  on: ['session'],
  check({ dateText, title, line }) {
    if (dateText) return NO_PROBLEMS;
    return [dayInTitle(title, line.text) ?? { span: lineSpan(line), message: MESSAGE }];
  },
});

const MESSAGE = 'This session has no date. Write year-month-day after "session", such as 2026-05-02.';

/** `2026/5/2` or `2026.05.02` or a month by name at the start of the title: in both it is sure which figure is the month. */
function dayInTitle(title: string, line: string): Problem | undefined {
  const [text, year, month, day] = /^(\d{4})[./](\d{1,2})[./](\d{1,2})(?!\d)/.exec(title) ?? [];
  const from = line.indexOf(title);
  const named = dayByName(title);
  if (named) return rewriteDate(from, named.text, named.date);
  const date = isoDate(`${year}-${month?.padStart(2, '0')}-${day?.padStart(2, '0')}`);
  if (!text || !date) return undefined;
  return rewriteDate(from, text, date);
}

function rewriteDate(from: number, text: string, date: string): Problem {
  const span = { from, to: from + text.length };
  return { span, message: `Write the date as ${date}, with hyphens.`, fixes: [replaceWith(span, date)] };
}

/** `1 Mar 2025`, `March 1, 2025`: the name leaves no doubt about the month. */
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
