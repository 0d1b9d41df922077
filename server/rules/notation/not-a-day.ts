import { tokenText } from '../../../grammar/index.ts';
import { isoDate } from '../../model/entry/date.ts';
import { NO_PROBLEMS, type Problem, replaceWith, rule } from '../rule.ts';

export const notADay = rule({
  code: 'not-a-day',
  severity: 'error',
  title: 'Not a valid date',
  why: 'A date is written year-month-day with two digits each for month and day, so that it means the same everywhere and sorts by itself.',
  standing: 'published',
  source: 'ISO 8601',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-5-2\n  initial 9 deg\n',
  outranks: ['no-date', 'unreadable'],
  on: ['session', 'revert'],
  check(entry) {
    if (entry.kind === 'session')
      return entry.date || !entry.dateText
        ? NO_PROBLEMS
        : [problemOf(entry.dateText.text, entry.dateText.span)];
    const { syntax } = entry.line;
    if (entry.date || syntax.kind !== 'revert' || syntax.date === undefined) return NO_PROBLEMS;
    return [problemOf(tokenText(entry.line, syntax.date), entry.dateSpan)];
  },
});

function problemOf(text: string, span: Problem['span']): Problem {
  const day = padDate(text);
  return {
    span,
    message: day
      ? `Write ${text} as ${day}: two digits each for month and day.`
      : `${text} is not a valid date. Write year-month-day, such as 2026-05-02.`,
    fixes: day ? [replaceWith(span, day)] : [],
  };
}

function padDate(text: string): string | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  if (!year || !month || !day) return undefined;
  return isoDate(`${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`);
}
