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

/** `2026/5/2` or `2026.05.02` at the start of the title: year first, so that the month is sure. */
function dayInTitle(title: string, line: string): Problem | undefined {
  const [text, year, month, day] = /^(\d{4})[./](\d{1,2})[./](\d{1,2})(?!\d)/.exec(title) ?? [];
  const from = line.indexOf(title);
  const date = isoDate(`${year}-${month?.padStart(2, '0')}-${day?.padStart(2, '0')}`);
  if (!text || !date) return undefined;
  const span = { from, to: from + text.length };
  return { span, message: `A day is written ${date}, with hyphens.`, fixes: [replaceWith(span, date)] };
}
