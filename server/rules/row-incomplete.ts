import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const rowIncomplete = rule({
  code: 'row-incomplete',
  severity: 'warning',
  title: 'A row of a trial with one value only',
  why: 'A row says what was tried and what came of it: both are needed to lay a line through.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in\n',
  on: ['row'],
  check({ size, values, line }, { before: { trial } }) {
    if (!trial || values.length > 1 || (values.length === 1 && size.length > 0)) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `One of two is missing: a row gives ${trial.knob || 'what was tried'} and then ${trial.response || 'what came of it'}.`,
      },
    ];
  },
});
