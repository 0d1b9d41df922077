import { backwards } from '../lib/meters.ts';
import { rule } from '../rule.ts';

export const odometerBackwards = rule({
  code: 'odometer-backwards',
  severity: 'warning',
  title: 'An odometer that runs backwards',
  why: 'An odometer only counts up: a lower figure than last time is a typing error, or the meter was changed. Reminders count by it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  odometer 1200 mi\nsession 2026-05-09\n  odometer 1320 mi\n',
  bad: 'session 2026-05-02\n  odometer 1200 mi\nsession 2026-05-09\n  odometer 1020 mi\n',
  on: ['reading'],
  about: ({ name }) => name === 'odometer',
  check: (entry, context) => backwards(entry, context, 'km'),
});
