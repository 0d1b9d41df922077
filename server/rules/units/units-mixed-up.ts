import { isBanded, valuesOutsideBand } from '../lib/expected-range.ts';
import { mixedUp } from '../lib/mixed-up.ts';
import { rule } from '../rule.ts';

export const unitsMixedUp = rule({
  code: 'units-mixed-up',
  severity: 'warning',
  title: 'Units of two systems mixed up',
  why: 'The value is outside its usual range as written, and inside it in another unit that is often used for the same thing.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  points gap 0.4 mm\n',
  bad: 'session 2026-05-02\n  points gap 0.4 in\n',
  outranks: ['missing-unit'],
  on: ['setting', 'reading', 'fact'],
  about: isBanded,
  check: (entry, context) =>
    valuesOutsideBand(entry, context).flatMap((outside) =>
      mixedUp(outside, (kind) => kind !== 'temperature'),
    ),
});
