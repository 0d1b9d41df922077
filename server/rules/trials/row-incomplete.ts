import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const rowIncomplete = rule({
  code: 'row-incomplete',
  severity: 'warning',
  title: 'A trial row with only one value',
  why: 'A row gives what was tried and what came of it: both are needed to fit a line.',
  standing: 'notation',
  good: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in 12 psi\n',
  bad: 'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in\n',
  on: ['row'],
  check({ size, values, line }, { before: { trial } }) {
    if (!trial || values.length > 1 || (values.length === 1 && size.length > 0)) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `A value is missing: a row gives ${trial.knob || 'what was tried'}, then ${trial.response || 'what came of it'}.`,
      },
    ];
  },
});
