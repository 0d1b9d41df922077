import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const rowOutsideTrial = rule({
  code: 'row-outside-trial',
  severity: 'warning',
  title: 'A row that belongs to no trial',
  why: 'A line that begins with a number is a row of the trial above it. The trial ends with the first other entry. Anything else begins with the word of what was set or read.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial stop hole -> vacuum advance\n    1/4 in 7 deg\n    9/32 in 9.5 deg\n',
  bad: 'session 2026-05-02\n  1/4 in 7 deg\n',
  on: ['row', 'want'],
  check({ kind, line }, { before }) {
    if (before.trial) return NO_PROBLEMS;
    const message =
      kind === 'want'
        ? 'What is wanted belongs to a trial, and none is open here: begin one with "trial ... -> ...".'
        : 'A line that begins with a number is a row of a trial, and none is open here. What was set or read? Write its word first.';
    return [{ span: lineSpan(line), message }];
  },
});
