import { isBanded, valuesOutsideBand } from '../lib/expected-range.ts';
import { mixedUp } from '../lib/mixed-up.ts';
import { rule } from '../rule.ts';

export const degreesMixedUp = rule({
  code: 'degrees-mixed-up',
  severity: 'warning',
  title: 'Degrees Fahrenheit and Celsius mixed up',
  why: 'Gauges come in both. The value is outside its usual range as written, and inside it in the other degrees.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  water 82 C\n',
  bad: 'session 2026-05-02\n  water 82 F\n',
  outranks: ['missing-unit'],
  on: ['setting', 'reading', 'fact'],
  about: isBanded,
  check: (entry, context) =>
    valuesOutsideBand(entry, context).flatMap((outside) =>
      mixedUp(outside, (kind) => kind === 'temperature'),
    ),
});
